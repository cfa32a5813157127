//! The words of a crop under way: what is read, cut and kept, and what is wrong with an entry.

use super::figures::{date, reference, rounded, show, symbol};
use super::say::*;
use super::{or_unnamed, problem_text};
use crate::catalog::Keyed;
use crate::plan::notebook::{
    CsvKind, CsvProblem, Cut, LevelFrom, Notebook, Place, Reading, ReadingColumn, TableProblem,
};
use crate::plan::{Dimension, Entry, Pick, Problem, ProblemKind, UnitSystem, double};

/// A date in words, or whatever stands there.
fn day(of: &Entry) -> String {
    match of {
        Entry::Number(value) => number(value),
        Entry::Text(text) => date(text.trim()),
    }
}

/// What a notebook is called.
pub fn notebook_name(notebook: &Notebook) -> String {
    let name = or_unnamed(&notebook.plan.name);
    if notebook.planted.is_blank() {
        name
    } else {
        NotebookPlanted {
            name: &name,
            day: &day(&notebook.planted),
        }
        .text()
    }
}

/// A notebook in the list of what a file holds.
pub fn notebook_in_file(notebook: &Notebook) -> String {
    notebook_among_plans(&notebook_name(notebook))
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
    let counted = match of {
        Entry::Number(_) => true,
        Entry::Text(text) => double(text.trim()).is_some(),
    };
    if counted {
        reading_day(&day(of))
    } else {
        day(of)
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
        level = ReadingLevel {
            from: level_from(&reading.level_from).key(),
            level: &level,
        }
        .text();
    }
    let mut when = when(&reading.date);
    if !reading.container.is_blank() {
        when = ReadingContainer {
            container: &cell(&reading.container, Dimension::Count),
            when: &when,
        }
        .text();
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
        added = reading_added(&added);
    }
    let parts = [level, ec, temperature, added, note];
    let parts = parts.into_iter().filter(|part| !part.is_empty());
    parts.collect::<Vec<_>>().join(" · ")
}

/// Heads that were cut, in a line.
pub fn cut_line(cut: &Cut, units: UnitSystem) -> String {
    CutHeads {
        heads: &entry(&cut.heads, Dimension::Count, units),
        mass: &entry(&cut.mass_g, Dimension::Mass, units),
        when: &when(&cut.date),
    }
    .text()
}

/// From where a level was read.
pub fn levels_from() -> [&'static str; 2] {
    [levels_from_1(), levels_from_2()]
}

/// What a choice means: the rim, where nothing was chosen.
fn level_from(pick: &Pick<LevelFrom>) -> LevelFrom {
    match pick.known() {
        Some(LevelFrom::Mark) => LevelFrom::Mark,
        _ => LevelFrom::Rim,
    }
}

/// Label and hint of a column of a reading.
pub fn column(column: ReadingColumn, units: UnitSystem) -> (&'static str, String) {
    let (label, hint) = match column {
        ReadingColumn::Date => (reading_date(), reading_date_hint()),
        ReadingColumn::Container => (reading_which_container(), reading_which_container_hint()),
        ReadingColumn::Level => (reading_level_label(), reading_level_hint()),
        ReadingColumn::LevelFrom => (reading_level_from(), ""),
        ReadingColumn::Conductivity => {
            return (reading_ec(), reading_ec_hint(&reference(units)));
        }
        ReadingColumn::Temperature => (reading_temperature(), reading_temperature_hint()),
        ReadingColumn::Added => (reading_then_added(), reading_then_added_hint()),
        ReadingColumn::Note => (reading_note(), ""),
    };
    (label, hint.to_owned())
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
    match dimension.map_or("", |of| symbol(of, units)) {
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
        None | Some(Dimension::Count) => rounded(value, 5),
        Some(of) => show(of, value, units),
    };
    match (kind, of) {
        (ProblemKind::OutOfRange { got, .. }, None) if *got < 0.0 => {
            day_before_planting(&rounded(-got, 5))
        }
        (ProblemKind::OutOfRange { high, .. }, None) => day_too_late(&rounded(*high, 3)),
        (ProblemKind::OutOfRange { got, low, high }, Some(_)) => {
            let outside = ReadingOutside {
                got: &amount(*got),
                low: &amount(*low),
                high: &amount(*high),
            }
            .text();
            match place {
                Place::Reading(_, ReadingColumn::Level) if got < low => {
                    format!("{outside} {}", level_above_rim())
                }
                Place::Reading(_, ReadingColumn::Level) => {
                    format!("{outside} {}", level_below_floor())
                }
                _ => outside,
            }
        }
        (ProblemKind::NotANumber { got }, Some(of)) => match symbol(of, units) {
            "" => reading_not_a_number(got),
            unit => ReadingNotANumberOf { got, unit }.text(),
        },
        (ProblemKind::NotADate { got }, _) if !matches!(place, Place::Planted) => {
            reading_no_day(got)
        }
        (ProblemKind::Missing, None) => reading_day_missing().to_owned(),
        (ProblemKind::Missing, _) => reading_missing().to_owned(),
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
        CsvKind::Table(TableProblem::NoHeader) => csv_no_header().to_owned(),
        CsvKind::Table(TableProblem::UnknownColumn { got, allowed }) => CsvUnknownColumn {
            allowed: &allowed.join(", "),
            got,
        }
        .text(),
        CsvKind::Table(TableProblem::TooManyCells { got, columns }) => CsvTooManyCells {
            cells: &got.to_string(),
            columns: &columns.to_string(),
        }
        .text(),
        CsvKind::Table(TableProblem::OpenQuote) => csv_open_quote().to_owned(),
    };
    CsvLine {
        line: &problem.line.to_string(),
        what: &what,
    }
    .text()
}

/// After a table was read.
pub fn readings_added(added: usize, known: usize) -> String {
    ReadingsTakenIn {
        added: &added.to_string(),
        known: &known.to_string(),
    }
    .text()
}
