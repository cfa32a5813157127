//! The words of a crop under way: what is read, cut and kept, and what is wrong with an entry.

use super::results::date;
use super::{or_unnamed, problem_text, show};
use crate::catalog::Keyed;
use crate::plan::notebook::{
    CsvKind, CsvProblem, Cut, LevelFrom, Notebook, Place, Reading, ReadingColumn, TableProblem,
};
use crate::plan::{Dimension, Entry, Pick, Problem, ProblemKind, UnitSystem, double, significant};

/// Heading of the part of the page.
pub const NOTEBOOKS: &str = "A crop under way";
/// Under it.
pub const NOTEBOOKS_MORE: &str = "Once the crop is planted, write down what you read: the level, and EC where you have a meter. The forecast bends to it, says whether to top up and how far, and what the crop taught for the next one. A notebook keeps the plan as it stands on the day it is begun.";
/// Button.
pub const NEW_NOTEBOOK: &str = "Begin a notebook of this plan";
/// Name of the list.
pub const YOUR_NOTEBOOKS: &str = "Your notebooks";
/// Button.
pub const LEAVE_NOTEBOOK: &str = "Leave this notebook";
/// Heading of the files and the paper.
pub const KEEP: &str = "On paper and in files";
/// Button.
pub const SAVE_NOTEBOOK: &str = "Save this notebook to a file";
/// Name of that file.
pub const NOTEBOOK_FILE: &str = "slackwater-notebook.json";
/// Button.
pub const DELETE_NOTEBOOK: &str = "Delete this notebook";
/// Button.
pub const PRINT_NOTEBOOK: &str = "Print this notebook";
/// Heading of the paper.
pub const NOTEBOOK: &str = "Notebook";
/// After a notebook was deleted.
pub const NOTEBOOK_DELETED: &str = "The notebook was deleted.";

/// Label.
pub const PLANTED: &str = "Planted on";
/// Under it.
pub const PLANTED_HINT: &str = "Year-month-day: the day the seedlings moved onto the solution. Empty: the day that the plan says.";

/// Heading.
pub const READINGS: &str = "What you read";
/// Under it.
pub const READINGS_MORE: &str = "Hold a ruler against the inside of the container and read down to the surface, before you add anything. What you did not read stays empty.";
/// Button.
pub const ADD_READING: &str = "Add a reading";
/// Button that closes the boxes of a reading.
pub const DONE: &str = "Done";
/// Button.
pub const REMOVE_READING: &str = "Remove this reading";
/// Button.
pub const UNDO_LAST: &str = "Undo the last change";
/// Where nothing was read.
pub const NO_READING: &str = "Nothing yet.";
/// Of a reading with something wrong.
pub const TO_MEND: &str = "to mend";

/// Heading.
pub const CUTS: &str = "What you cut";
/// Under it.
pub const CUTS_MORE: &str = "Heads cut on one day, and what they weigh together.";
/// Button.
pub const ADD_CUT: &str = "Add heads that were cut";
/// Button.
pub const REMOVE_CUT: &str = "Remove these heads";

/// Button.
pub const SAVE_READINGS: &str = "Save the readings as CSV";
/// Name of that file.
pub const READINGS_FILE: &str = "slackwater-readings.csv";
/// Label.
pub const OPEN_READINGS: &str = "Add readings from a CSV file";
/// Where the file is too large or cannot be read.
pub const NO_TABLE: &str = "This file is too large, or could not be read.";

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
pub const READING_HEADS: [&str; 6] = ["Day", "Level", "EC", "Temperature", "Added", "Note"];

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
pub const LEVELS_FROM: [&str; 2] = ["below the rim", "below the fill mark"];

/// The same of one choice.
pub fn level_from(pick: &Pick<LevelFrom>) -> &'static str {
    LEVELS_FROM[usize::from(pick.known() == Some(LevelFrom::Mark))]
}

/// Hint of a level that is read from the fill mark.
pub const FROM_MARK: &str = "Down to the surface; above the mark with a minus.";

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
pub const CUT_COLUMNS: [&str; 4] = ["Day or date", "Container", "Heads", "Mass together"];

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
                Place::Reading(_, ReadingColumn::Level) => " The container is not deeper.",
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
        CsvKind::Table(TableProblem::NoHeader) => "There is nothing to read.".to_owned(),
        CsvKind::Table(TableProblem::UnknownColumn { got, allowed }) => format!(
            "The column '{got}' is not known. Known are {}.",
            allowed.join(", ")
        ),
        CsvKind::Table(TableProblem::TooManyCells { got, columns }) => {
            format!("{got} cells, but the table has {columns} columns.")
        }
        CsvKind::Table(TableProblem::OpenQuote) => "A quotation mark is not closed.".to_owned(),
    };
    format!("Line {}: {what}", problem.line)
}

/// After a table was read.
pub fn readings_added(added: usize, known: usize) -> String {
    format!("{added} readings were added; {known} were there already.")
}
