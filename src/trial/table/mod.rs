//! Records as a table: pasted from a sheet or read from a CSV file, and written as one.

mod headings;
#[cfg(test)]
mod tests;

use serde::Serialize;

use crate::plan::{Dimension, Entry, Pick, ProblemKind, UnitSystem, reason};

use super::check::MOST_RECORDS;
use crate::plan::trial::{Design, Name, Record, Trial, UnitLine};
use headings::{Column, heading};

/// What a text was read as.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TableRead {
    /// The records, in the order of the lines. A cell that could not be read is kept as it came.
    pub records: Vec<Record>,
    /// The layout, where every line names a unit and its treatment; else empty.
    pub units: Vec<UnitLine>,
    /// Everything that could not be read.
    pub problems: Vec<TableProblem>,
}

/// What is wrong in one place of a table.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct TableProblem {
    /// Line of the text, from 1.
    pub line: usize,
    /// Column of the table, from 1; 0 for the whole line.
    pub column: usize,
    /// What.
    #[serde(flatten)]
    pub kind: TableProblemKind,
}

/// What can be wrong with a table.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum TableProblemKind {
    /// No line holds a record.
    NoRecords,
    /// A heading that names no column known here.
    UnknownColumn {
        /// What stands there.
        got: String,
    },
    /// Neither a column of masses nor one of litres.
    NoFigures,
    /// More cells than the table has columns.
    TooManyCells {
        /// Cells of the line.
        got: usize,
        /// Columns of the table.
        columns: usize,
    },
    /// More lines than are read.
    TooManyLines {
        /// Lines that are read.
        most: usize,
    },
    /// A quotation mark that is not closed.
    OpenQuote,
    /// The cell is no number with a unit that fits.
    #[serde(untagged)]
    Value(ProblemKind),
}

/// Whether a cell says that there is no value.
fn is_missing(cell: &str) -> bool {
    let lower = cell.to_ascii_lowercase();
    ["", "na", "n/a", "nan", "null", "-", "–", "—", ".", "?", "x"].contains(&lower.as_str())
}

/// Reads records from a text: cells separated by tabs, semicolons or commas (the first of these
/// that the text's first line has), with decimal commas or points, in quotation marks or not.
///
/// With headings the columns may be `unit`, `treatment`, `water_l` or `water_gal` and any number of
/// `head_g` or `head_oz`, each in any order, in English or Spanish; a unit may have one line, or one for
/// each head. Without headings the first column is the unit and the others are heads. `units`: of
/// figures whose heading does not say them. A table with units and treatments, and perhaps `block`,
/// `row` and `column`, tells a layout too. Empty cells, `NA` and dashes are missing values. Numbers
/// may carry a unit, such as `5 oz`.
///
/// ```
/// use slackwater::plan::UnitSystem;
/// use slackwater::trial::read_table;
/// let text = "unit;water_l;head_1_g;head_2_g\n1;20,5;181,2;NA\n";
/// let read = read_table(text, UnitSystem::Metric);
/// assert!(read.problems.is_empty());
/// assert_eq!(read.records[0].heads_g.len(), 2);
/// ```
pub fn read_table(text: &str, units: UnitSystem) -> TableRead {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut read = TableRead::default();
    let lines: Vec<(usize, &str)> = (1..)
        .zip(text.lines())
        .filter(|(_, line)| !line.trim().is_empty())
        .collect();
    let Some(&(first_number, first)) = lines.first() else {
        read.problem(0, 0, TableProblemKind::NoRecords);
        return read;
    };
    let separator = ['\t', ';', ',']
        .into_iter()
        .find(|&sign| first.contains(sign))
        .unwrap_or('\t');
    let (titles, _) = cells(first, separator);
    let known: Vec<Option<Column>> = titles.iter().map(|cell| heading(cell)).collect();
    let mut body = &lines[..];
    let columns = if known.iter().any(Option::is_some) {
        body = &lines[1..];
        columns_of(&mut read, first_number, &titles, &known)
    } else {
        // The widest line tells how many heads there are.
        let width = lines
            .iter()
            .map(|(_, line)| cells(line, separator).0.len())
            .max();
        let mut columns = vec![Column::Head(None); width.unwrap_or(1)];
        columns[0] = Column::Unit;
        columns
    };
    if !columns
        .iter()
        .any(|it| matches!(it, Column::Head(_) | Column::Water(_)))
    {
        read.problem(first_number, 0, TableProblemKind::NoFigures);
        return read;
    }
    for &(number, line) in body {
        if read.records.len() == MOST_RECORDS {
            read.problem(
                number,
                0,
                TableProblemKind::TooManyLines { most: MOST_RECORDS },
            );
            break;
        }
        let (found, closed) = cells(line, separator);
        if !closed {
            read.problem(number, 0, TableProblemKind::OpenQuote);
        }
        record(&mut read, number, &found, &columns, units);
    }
    if read.records.is_empty() && read.problems.is_empty() {
        read.problem(first_number, 0, TableProblemKind::NoRecords);
    }
    let told = |it: &UnitLine| !it.unit.text().is_empty() && !it.treatment.text().is_empty();
    if !read.units.iter().all(told) {
        read.units.clear();
    }
    read
}

fn columns_of(
    read: &mut TableRead,
    line: usize,
    titles: &[String],
    known: &[Option<Column>],
) -> Vec<Column> {
    // Beside a column of masses, a bare 'head' is the number of the head.
    let masses = titles
        .iter()
        .zip(known)
        .any(|(title, column)| matches!(column, Some(Column::Head(_))) && !is_bare_head(title));
    let mut columns = Vec::new();
    for (index, (title, column)) in titles.iter().zip(known).enumerate() {
        columns.push(match column {
            Some(Column::Head(_)) if masses && is_bare_head(title) => Column::Ignored,
            Some(column) => *column,
            None => {
                if !title.is_empty() {
                    let got = title.clone();
                    read.problem(line, index + 1, TableProblemKind::UnknownColumn { got });
                }
                Column::Ignored
            }
        });
    }
    columns
}

fn is_bare_head(title: &str) -> bool {
    title.trim().eq_ignore_ascii_case("head")
}

fn record(
    read: &mut TableRead,
    number: usize,
    found: &[String],
    columns: &[Column],
    units: UnitSystem,
) {
    let beyond = found.get(columns.len()..).unwrap_or_default();
    if beyond.iter().any(|cell| !cell.is_empty()) {
        read.problem(
            number,
            0,
            TableProblemKind::TooManyCells {
                got: found.len(),
                columns: columns.len(),
            },
        );
    }
    let mut record = Record::default();
    let mut unit = UnitLine::default();
    for (index, column) in columns.iter().enumerate() {
        let cell = found.get(index).map_or("", String::as_str);
        match column {
            Column::Unit => record.unit = Name::from(cell),
            Column::Treatment => record.treatment = Name::from(cell),
            Column::Block => unit.block = Name::from(cell),
            Column::Row => unit.row = Entry::from(cell),
            Column::Place => unit.column = Entry::from(cell),
            Column::Ignored => {}
            Column::Head(of) => {
                let of = of.unwrap_or(units);
                let entry = read.number(number, index + 1, cell, Dimension::Mass, of);
                record.heads_g.push(entry);
            }
            Column::Water(of) => {
                let of = of.unwrap_or(units);
                record.water_l = read.number(number, index + 1, cell, Dimension::Volume, of);
            }
        }
    }
    if read.units.iter().all(|it| it.unit != record.unit) {
        unit.unit = record.unit.clone();
        unit.treatment = record.treatment.clone();
        read.units.push(unit);
    }
    read.records.push(record);
}

impl TableRead {
    /// Puts the layout of the table in the place of a trial's: a trial that was laid out elsewhere.
    /// Treatments that the table names keep what they are; it adds those that the trial lacks.
    pub fn lay_out(&self, trial: &mut Trial) {
        let before = std::mem::take(&mut trial.treatments);
        for unit in &self.units {
            let name = unit.treatment.text();
            if trial.treatments.iter().any(|it| it.name == name) {
                continue;
            }
            let known = before.iter().find(|it| it.name.trim() == name);
            let mut treatment = known.cloned().unwrap_or_default();
            name.clone_into(&mut treatment.name);
            trial.treatments.push(treatment);
        }
        let blocks = self.units.iter().all(|it| !it.block.text().is_empty());
        trial.design = Pick::Known(if blocks {
            Design::Blocks
        } else {
            Design::Randomised
        });
        trial.units.clone_from(&self.units);
    }

    fn problem(&mut self, line: usize, column: usize, kind: TableProblemKind) {
        self.problems.push(TableProblem { line, column, kind });
    }

    fn number(
        &mut self,
        line: usize,
        column: usize,
        cell: &str,
        dimension: Dimension,
        units: UnitSystem,
    ) -> Entry {
        if is_missing(cell) {
            return Entry::blank();
        }
        match dimension.read(cell, units) {
            Ok(value) => Entry::Number(value),
            Err(why) => {
                let kind = TableProblemKind::Value(reason(why, cell));
                self.problem(line, column, kind);
                Entry::from(cell)
            }
        }
    }
}

/// The cells of a line without spaces around them, and whether its quotation marks are closed.
fn cells(line: &str, separator: char) -> (Vec<String>, bool) {
    let mut found = Vec::new();
    let mut cell = String::new();
    let mut quoted = false;
    let mut chars = line.chars().peekable();
    while let Some(c) = chars.next() {
        match c {
            // Two in a row within quotation marks stand for one.
            '"' if quoted && chars.peek() == Some(&'"') => {
                chars.next();
                cell.push('"');
            }
            '"' if quoted || cell.trim().is_empty() => quoted = !quoted,
            c if c == separator && !quoted => {
                found.push(cell.trim().to_owned());
                cell.clear();
            }
            c => cell.push(c),
        }
    }
    found.push(cell.trim().to_owned());
    (found, !quoted)
}

/// The records as a CSV table with headings `unit,treatment,water_l,head_1_g,…`, one line for each
/// record, missing values empty, in gallons and ounces where these are the units; [`read_table`] reads
/// it back.
pub fn write_table(trial: &Trial, units: UnitSystem) -> String {
    let us = units == UnitSystem::UsCustomary;
    let heads = trial.records.iter().map(|it| it.heads_g.len()).max();
    let mut titles = vec![
        "unit".to_owned(),
        "treatment".to_owned(),
        if us { "water_gal" } else { "water_l" }.to_owned(),
    ];
    let mass = if us { "oz" } else { "g" };
    titles.extend((1..=heads.unwrap_or_default()).map(|head| format!("head_{head}_{mass}")));
    let mut out = titles.join(",");
    out.push('\n');
    for record in &trial.records {
        let mut line = vec![
            quoted(record.unit.text()),
            quoted(record.treatment.text()),
            written(&record.water_l, Dimension::Volume, units),
        ];
        let heads = record.heads_g.iter();
        line.extend(heads.map(|head| written(head, Dimension::Mass, units)));
        line.resize(titles.len(), String::new());
        out.push_str(&line.join(","));
        out.push('\n');
    }
    out
}

/// An entry as a cell.
fn written(entry: &Entry, dimension: Dimension, units: UnitSystem) -> String {
    match entry {
        // Saved figures are metric.
        Entry::Number(value) if units == UnitSystem::Metric => value.to_string(),
        Entry::Number(value) => dimension.text(*value, units),
        Entry::Text(text) => quoted(text.trim()),
    }
}

/// A cell; in quotation marks where it needs them, and made harmless to sheets that would take it
/// for a formula.
pub(super) fn quoted(cell: &str) -> String {
    let formula = cell.starts_with(['=', '+', '@']) || (cell.starts_with('-') && cell.len() > 1);
    let cell = if formula {
        format!("'{cell}")
    } else {
        cell.to_owned()
    };
    if cell.contains([',', '"', '\n', '\r', '\t', ';']) {
        format!(
            "\"{}\"",
            cell.replace('"', "\"\"").replace(['\n', '\r'], " ")
        )
    } else {
        cell
    }
}
