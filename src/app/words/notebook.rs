//! The words of a crop under way: what is read, cut and kept, and what is wrong with an entry.

use super::figures::date;
use super::say::*;
use super::{or_unnamed, problem_text, show};
use crate::catalog::Keyed;
use crate::plan::notebook::{
    CsvKind, CsvProblem, Cut, LevelFrom, Notebook, Place, Reading, ReadingColumn, TableProblem,
};
use crate::plan::{Dimension, Entry, Pick, Problem, ProblemKind, UnitSystem, double, significant};

/// A date in words, or whatever stands there.
fn day(of: &Entry) -> String {
    match of {
        Entry::Number(value) => value.to_string(),
        Entry::Text(text) => date(text.trim()),
    }
}

/// What a notebook is called.
pub fn notebook_name(notebook: &Notebook) -> String {
    let name = or_unnamed(&notebook.plan.name);
    if notebook.planted.is_blank() {
        name
    } else {
        format!("{name}, planted {}", day(&notebook.planted))
    }
}

/// A notebook in the list of what a file holds.
pub fn notebook_in_file(notebook: &Notebook) -> String {
    format!("{} (a notebook)", notebook_name(notebook))
}

/// What stands in an entry, as it is read: with its unit where it is a number.
fn entry(of: &Entry, dimension: Dimension, units: UnitSystem) -> String {
    match of {
        Entry::Number(value) => show(dimension, *value, units),
        Entry::Text(text) => text.trim().to_owned(),
    }
}

/// When: a date, or a day.
pub fn when(of: &Entry) -> String {
    let text = day(of);
    if double(&text).is_some() {
        format!("Day {text}")
    } else {
        text
    }
}

/// The columns of a reading on paper and in its line.
pub fn reading_heads() -> [&'static str; 6] {
    [
        reading_heads_1(),
        reading_heads_2(),
        reading_heads_3(),
        reading_heads_4(),
        reading_heads_5(),
        reading_heads_6(),
    ]
}

/// The cells of a reading under these heads.
pub fn reading_cells(reading: &Reading, units: UnitSystem) -> [String; 6] {
    let cell = |of: &Entry, dimension| entry(of, dimension, units);
    let mut level = cell(&reading.level_cm, Dimension::Length);
    if !level.is_empty() {
        level.push(' ');
        level.push_str(level_from(&reading.level_from));
    }
    let mut when = when(&reading.date);
    if !reading.container.is_blank() {
        when.push_str(", container ");
        when.push_str(&cell(&reading.container, Dimension::Count));
    }
    [
        when,
        level,
        cell(&reading.ec_ms_per_cm, Dimension::Conductivity),
        cell(&reading.temperature_c, Dimension::Temperature),
        cell(&reading.added_l, Dimension::Volume),
        reading.note.trim().to_owned(),
    ]
}

/// A reading in a line, without its day.
pub fn reading_line(reading: &Reading, units: UnitSystem) -> String {
    let [_, level, ec, temperature, mut added, note] = reading_cells(reading, units);
    if !added.is_empty() {
        added.push_str(" added");
    }
    let parts = [level, ec, temperature, added, note];
    let parts = parts.into_iter().filter(|part| !part.is_empty());
    parts.collect::<Vec<_>>().join(" · ")
}

/// Heads that were cut, in a line.
pub fn cut_line(cut: &Cut, units: UnitSystem) -> String {
    format!(
        "{}: {} heads, {}",
        when(&cut.date),
        entry(&cut.heads, Dimension::Count, units),
        entry(&cut.mass_g, Dimension::Mass, units)
    )
}

/// From where a level was read.
pub fn levels_from() -> [&'static str; 2] {
    [levels_from_1(), levels_from_2()]
}

/// The same of one choice.
pub fn level_from(pick: &Pick<LevelFrom>) -> &'static str {
    levels_from()[usize::from(pick.known() == Some(LevelFrom::Mark))]
}

/// Label and hint of a column of a reading.
pub fn column(column: ReadingColumn) -> (&'static str, &'static str) {
    match column {
        ReadingColumn::Date => ("Day or date", "Days since planting, or year-month-day."),
        ReadingColumn::Container => ("Container", "Its number. Empty: all alike."),
        ReadingColumn::Level => ("Level", "Down to the surface."),
        ReadingColumn::LevelFrom => ("This level is", ""),
        ReadingColumn::Conductivity => ("EC", "At 25 °C, as meters show it."),
        ReadingColumn::Temperature => ("Solution temperature", "Kept, not reckoned with."),
        ReadingColumn::Added => ("Then added", "To one container."),
        ReadingColumn::Note => ("Note", ""),
    }
}

/// Labels of the columns of a cut: day, container, heads, mass.
pub fn cut_columns() -> [&'static str; 4] {
    [
        cut_columns_1(),
        cut_columns_2(),
        cut_columns_3(),
        cut_columns_4(),
    ]
}

/// A label with the unit of its dimension.
pub fn unit_label(label: &str, dimension: Option<Dimension>, units: UnitSystem) -> String {
    match dimension.map_or("", |of| of.symbol(units)) {
        "" => label.to_owned(),
        symbol => format!("{label}, {symbol}"),
    }
}

fn dimension(place: Place) -> Option<Dimension> {
    match place {
        Place::Reading(_, column) => Some(column.limits()?.0),
        Place::Cut(_, "heads") => Some(Dimension::Count),
        Place::Cut(_, "mass_g") => Some(Dimension::Mass),
        _ => None,
    }
}

/// The sentence beside an entry of a notebook.
pub fn notebook_problem(place: Place, kind: &ProblemKind, units: UnitSystem) -> String {
    let of = dimension(place);
    let amount = |value: f64| match of {
        None | Some(Dimension::Count) => significant(value, 5),
        Some(of) => show(of, value, units),
    };
    match (kind, of) {
        (ProblemKind::OutOfRange { got, .. }, None) if *got < 0.0 => {
            format!("That is {} days before planting.", significant(-got, 5))
        }
        (ProblemKind::OutOfRange { high, .. }, None) => format!(
            "From the day of planting to day {} after it.",
            significant(*high, 3)
        ),
        (ProblemKind::OutOfRange { got, low, high }, Some(_)) => {
            let why = match place {
                Place::Reading(_, ReadingColumn::Level) if got < low => {
                    " A surface is never above the rim."
                }
                Place::Reading(_, ReadingColumn::Level) => notebook_problem_reading(),
                _ => "",
            };
            format!(
                "{} is outside what is allowed: {} to {}.{why}",
                amount(*got),
                amount(*low),
                amount(*high)
            )
        }
        (ProblemKind::NotANumber { got }, Some(of)) => {
            let symbol = of.symbol(units);
            let of = if symbol.is_empty() { "" } else { " of " };
            format!("'{got}' is not a number. Write a number{of}{symbol}, or leave it empty.")
        }
        (ProblemKind::NotADate { got }, _) if !matches!(place, Place::Planted) => format!(
            "'{got}' is no day. Write days since planting, such as 12, or a date, such as 2027-03-01."
        ),
        (ProblemKind::Missing, None) => "Write the day.".to_owned(),
        (ProblemKind::Missing, _) => "Fill this in, or remove the line.".to_owned(),
        _ => problem_text(
            &Problem {
                field: None,
                kind: kind.clone(),
            },
            units,
        ),
    }
}

/// A line of a table that could not be read.
pub fn csv_problem(problem: &CsvProblem, units: UnitSystem) -> String {
    let what = match &problem.kind {
        CsvKind::Value(kind) => {
            let column = problem.column.unwrap_or(ReadingColumn::Note);
            let said = notebook_problem(Place::Reading(0, column), kind, units);
            format!("{}: {said}", column.key())
        }
        CsvKind::Table(TableProblem::NoHeader) => csv_problem_table().to_owned(),
        CsvKind::Table(TableProblem::UnknownColumn { got, allowed }) => format!(
            "The column '{got}' is not known. Known are {}.",
            allowed.join(", ")
        ),
        CsvKind::Table(TableProblem::TooManyCells { got, columns }) => {
            format!("{got} cells, but the table has {columns} columns.")
        }
        CsvKind::Table(TableProblem::OpenQuote) => csv_problem_table_2().to_owned(),
    };
    format!("Line {}: {what}", problem.line)
}

/// After a table was read.
pub fn readings_added(added: usize, known: usize) -> String {
    format!("{added} readings were added; {known} were there already.")
}
