//! Readings as a table of comma-separated values (RFC 4180), to and from spreadsheets.

use serde::Serialize;
use time::Date;

use super::Reading;
use super::check::{ReadingColumn, judge};
use crate::catalog::Keyed;
use crate::plan::{Entry, Pick, ProblemKind, UnitSystem, double};

/// What is wrong with one line of a table.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CsvProblem {
    /// The line, from 1.
    pub line: usize,
    /// The column; `None` for the line as a whole.
    pub column: Option<ReadingColumn>,
    /// What is wrong.
    #[serde(flatten)]
    pub kind: CsvKind,
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(untagged)]
pub enum CsvKind {
    /// With the value of a cell.
    Value(ProblemKind),
    /// With the table.
    Table(TableProblem),
}

/// What is wrong with the form of a table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum TableProblem {
    /// There is no line of column names.
    NoHeader,
    /// A column name that is not known.
    UnknownColumn {
        /// What stands there.
        got: String,
        /// The names that are allowed.
        allowed: Vec<&'static str>,
    },
    /// More cells than columns.
    TooManyCells {
        /// How many there are.
        got: usize,
        /// How many columns.
        columns: usize,
    },
    /// A quotation mark that is not closed.
    OpenQuote,
}

/// Reads readings from a table. The first line names the columns, in any order: `date` (or days
/// after planting), `container`, `level_cm` or `level_in`, `level_from`, `ec_ms_per_cm`, `temperature_c`
/// or `temperature_f`, `added_l` or `added_gal`, `note`. Empty lines and lines that begin with `#` are passed over; cells are split
/// at commas, or at semicolons where the first line has more of these.
///
/// # Errors
/// Everything that is wrong, line by line.
pub fn readings_from_csv(text: &str, planted: Date) -> Result<Vec<Reading>, Vec<CsvProblem>> {
    let table = |line, kind| CsvProblem {
        line,
        column: None,
        kind: CsvKind::Table(kind),
    };
    let text = text.trim_start_matches('\u{feff}');
    let first = text
        .lines()
        .find(|line| !line.trim().is_empty() && !line.starts_with('#'))
        .unwrap_or_default();
    let separator = if first.matches(';').count() > first.matches(',').count() {
        ';'
    } else {
        ','
    };
    let mut rows = rows(text, separator)
        .map_err(|line| vec![table(line, TableProblem::OpenQuote)])?
        .into_iter();
    let Some((line, header)) = rows.next() else {
        return Err(vec![table(1, TableProblem::NoHeader)]);
    };
    let mut problems = Vec::new();
    let columns: Vec<Option<(ReadingColumn, UnitSystem)>> = header
        .iter()
        .map(|name| {
            let column = named(&name.trim().to_ascii_lowercase());
            if column.is_none() {
                problems.push(table(
                    line,
                    TableProblem::UnknownColumn {
                        got: name.clone(),
                        allowed: names().collect(),
                    },
                ));
            }
            column
        })
        .collect();
    if !problems.is_empty() {
        return Err(problems);
    }
    let mut readings = Vec::new();
    for (line, cells) in rows {
        if cells.len() > columns.len() {
            problems.push(table(
                line,
                TableProblem::TooManyCells {
                    got: cells.len(),
                    columns: columns.len(),
                },
            ));
            continue;
        }
        let mut reading = Reading::default();
        for (&(column, units), cell) in columns.iter().flatten().zip(&cells) {
            write(&mut reading, column, units, cell);
        }
        let mut found = Vec::new();
        judge(&reading, planted, f64::INFINITY, &mut found);
        problems.extend(found.into_iter().map(|(column, kind)| CsvProblem {
            line,
            column: Some(column),
            kind: CsvKind::Value(kind),
        }));
        readings.push(reading);
    }
    if problems.is_empty() {
        Ok(readings)
    } else {
        Err(problems)
    }
}

/// A column by its name, and the units that the name means.
fn named(name: &str) -> Option<(ReadingColumn, UnitSystem)> {
    let customary = ReadingColumn::ALL
        .iter()
        .find(|column| column.customary_key() == Some(name));
    match customary {
        Some(&column) => Some((column, UnitSystem::UsCustomary)),
        None => Some((ReadingColumn::from_key(name)?, UnitSystem::Metric)),
    }
}

/// All names that a column may have.
fn names() -> impl Iterator<Item = &'static str> {
    let both = |column: &ReadingColumn| [Some(column.key()), column.customary_key()];
    ReadingColumn::ALL.iter().flat_map(both).flatten()
}

/// Writes readings as such a table, in the units of a system; what was typed with a unit of its own
/// stays as it is.
pub fn readings_to_csv(readings: &[Reading], units: UnitSystem) -> String {
    let name = |column: &ReadingColumn| match (units, column.customary_key()) {
        (UnitSystem::UsCustomary, Some(key)) => key,
        _ => column.key(),
    };
    let names: Vec<&str> = ReadingColumn::ALL.iter().map(name).collect();
    let mut out = names.join(",");
    out.push('\n');
    for reading in readings {
        let cells: Vec<String> = ReadingColumn::ALL
            .iter()
            .map(|&column| quoted(&cell(reading, column, units)))
            .collect();
        out.push_str(&cells.join(","));
        out.push('\n');
    }
    out
}

fn write(reading: &mut Reading, column: ReadingColumn, units: UnitSystem, text: &str) {
    match column {
        ReadingColumn::LevelFrom => reading.level_from = Pick::from_key(text.trim()),
        ReadingColumn::Note => text.clone_into(&mut reading.note),
        _ => {
            if let Some(entry) = reading.entry_mut(column) {
                let number = match (units, column.limits()) {
                    (UnitSystem::UsCustomary, Some((dimension, ..))) => {
                        dimension.read(text, units).ok()
                    }
                    _ => double(text.trim()),
                };
                *entry = match number {
                    Some(value) if value.is_finite() => Entry::Number(value),
                    _ => Entry::Text(text.trim().to_owned()),
                };
            }
        }
    }
}

fn cell(reading: &Reading, column: ReadingColumn, units: UnitSystem) -> String {
    match column {
        ReadingColumn::LevelFrom => reading.level_from.key().to_owned(),
        ReadingColumn::Note => reading.note.clone(),
        _ => match reading.clone().entry_mut(column) {
            Some(Entry::Number(value)) => match (units, column.limits()) {
                (UnitSystem::UsCustomary, Some((dimension, ..)))
                    if column.customary_key().is_some() =>
                {
                    dimension.text(*value, units)
                }
                _ => value.to_string(),
            },
            Some(Entry::Text(text)) => text.clone(),
            None => String::new(),
        },
    }
}

fn quoted(text: &str) -> String {
    if text.contains([',', ';', '"', '\n', '\r']) || text.starts_with('#') {
        format!("\"{}\"", text.replace('"', "\"\""))
    } else {
        text.to_owned()
    }
}

/// A line number and the cells of its row.
type Row = (usize, Vec<String>);

/// Splits a table; the error is the line of a quotation mark that is not closed.
fn rows(text: &str, separator: char) -> Result<Vec<Row>, usize> {
    let mut rows: Vec<Row> = Vec::new();
    let (mut line, mut begun) = (1, 1);
    let mut cells = Vec::new();
    let mut cell = String::new();
    let (mut quoted, mut was_quoted, mut remark) = (false, false, false);
    let mut characters = text.chars().peekable();
    // A last line needs no end of its own.
    while let Some(character) = characters
        .next()
        .or_else(|| (!cells.is_empty() || !cell.is_empty() || was_quoted || quoted).then_some('\n'))
    {
        let at_end = characters.peek().is_none();
        if quoted {
            if character == '"' {
                if characters.peek() == Some(&'"') {
                    characters.next();
                    cell.push('"');
                } else {
                    quoted = false;
                }
            } else if at_end && character == '\n' {
                return Err(begun);
            } else {
                line += usize::from(character == '\n');
                cell.push(character);
                if at_end {
                    return Err(begun);
                }
            }
            continue;
        }
        match character {
            '\n' => {
                cells.push(std::mem::take(&mut cell));
                let empty = cells.len() == 1 && cells[0].trim().is_empty() && !was_quoted;
                if !empty && !remark {
                    rows.push((begun, std::mem::take(&mut cells)));
                }
                cells.clear();
                line += 1;
                (begun, was_quoted, remark) = (line, false, false);
            }
            '\r' => {}
            '#' if cells.is_empty() && cell.is_empty() => remark = true,
            _ if remark => {}
            '"' if cell.is_empty() => (quoted, was_quoted) = (true, true),
            _ if character == separator => cells.push(std::mem::take(&mut cell)),
            _ => cell.push(character),
        }
    }
    Ok(rows)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day() -> Date {
        Date::from_ordinal_date(2027, 32).expect("a date")
    }

    #[test]
    fn readings_survive_as_a_table() {
        let text = "date,level_cm,level_from,note\n\
                    2027-02-08,4.5,rim,\"green, \"\"sound\"\"\nand moist\"\n\
                    \n# a remark\n14,2 in,mark,\n";
        let readings = readings_from_csv(text, day()).expect("sound");
        assert_eq!(readings.len(), 2);
        assert_eq!(readings[0].note, "green, \"sound\"\nand moist");
        assert_eq!(readings[1].level_cm, Entry::from("2 in"));
        let again = readings_from_csv(&readings_to_csv(&readings, UnitSystem::Metric), day());
        assert_eq!(again, Ok(readings));
        // Decimal commas come with semicolons.
        let comma = readings_from_csv("date;level_cm\n3;4,5", day()).expect("sound");
        assert_eq!(comma[0].level_cm, Entry::from("4,5"));
    }

    #[test]
    fn a_table_may_be_in_inches_gallons_and_fahrenheit() {
        // Exact by definition: 2.54 cm, 3.785411784 L (NIST SP 811, appendix B); 68 °F is 20 °C.
        let text = "date,level_in,temperature_f,added_gal,ec_ms_per_cm\n3,2 1/2,68,1,1.2\n";
        let readings = readings_from_csv(text, day()).expect("sound");
        let number = |entry: &Entry| match entry {
            Entry::Number(value) => *value,
            Entry::Text(text) => panic!("{text}"),
        };
        // The last bits of a product of doubles.
        let close = |entry: &Entry, wanted: f64| assert!((number(entry) - wanted).abs() < 1e-12);
        close(&readings[0].level_cm, 6.35);
        close(&readings[0].temperature_c, 20.0);
        close(&readings[0].added_l, 3.785_411_784);
        close(&readings[0].ec_ms_per_cm, 1.2);
        let written = readings_to_csv(&readings, UnitSystem::UsCustomary);
        let (heads, line) = written.split_once('\n').expect("two lines");
        assert_eq!(
            heads,
            "date,container,level_in,level_from,ec_ms_per_cm,temperature_f,added_gal,note"
        );
        assert_eq!(line, "3,,2.5,,1.2,68,1,\n");
    }

    #[test]
    fn each_fault_names_its_line() {
        let faults = |text: &str| {
            readings_from_csv(text, day())
                .expect_err("a fault")
                .iter()
                .map(|problem| (problem.line, problem.column))
                .collect::<Vec<_>>()
        };
        assert_eq!(faults(""), [(1, None)]);
        assert_eq!(faults("date,depth\n1,2"), [(1, None)]);
        assert_eq!(faults("date\n1,2\n\n2\n3,3"), [(2, None), (5, None)]);
        assert_eq!(faults("date,note\n1,\"open"), [(2, None)]);
        assert_eq!(
            faults("date,level_cm,ec_ms_per_cm\nsoon,deep,99\n2027-01-01,1,1"),
            [
                (2, Some(ReadingColumn::Date)),
                (2, Some(ReadingColumn::Level)),
                (2, Some(ReadingColumn::Conductivity)),
                (3, Some(ReadingColumn::Date)),
            ]
        );
    }
}
