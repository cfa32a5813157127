//! The lines of a notebook: which are only begun, which are wrong, and their order.

use crate::plan::Entry;
use crate::plan::notebook::{Cut, Notebook, NotebookRefusal, Place, Reading, check_notebook};

/// Whether nothing was read yet.
pub fn is_begun(reading: &Reading) -> bool {
    let entries = [
        &reading.level_cm,
        &reading.ec_ms_per_cm,
        &reading.temperature_c,
        &reading.added_l,
    ];
    entries.into_iter().all(Entry::is_blank) && reading.note.trim().is_empty()
}

/// Whether nothing was cut yet.
pub fn cut_is_begun(cut: &Cut) -> bool {
    cut.heads.is_blank() && cut.mass_g.is_blank()
}

/// A notebook without the lines that are only begun.
pub fn finished(notebook: &Notebook) -> Notebook {
    let mut notebook = notebook.clone();
    notebook.readings.retain(|reading| !is_begun(reading));
    notebook.harvest.retain(|cut| !cut_is_begun(cut));
    notebook
}

/// A notebook without the lines that are only begun or wrong: what can be weighed of it.
pub fn sound_lines(notebook: &Notebook) -> Notebook {
    let mut notebook = finished(notebook);
    if let Err(NotebookRefusal::Notebook(problems)) = check_notebook(&notebook) {
        let wrong = |of: fn(Place) -> Option<usize>, line: usize| {
            problems.iter().any(|it| of(it.place) == Some(line))
        };
        let mut line = 0..;
        let mut sound = |of| !wrong(of, line.next().unwrap_or_default());
        notebook.readings.retain(|_| sound(reading_of));
        let mut line = 0..;
        let mut sound = |of| !wrong(of, line.next().unwrap_or_default());
        notebook.harvest.retain(|_| sound(cut_of));
    }
    notebook
}

/// The reading that a place is in.
pub fn reading_of(place: Place) -> Option<usize> {
    match place {
        Place::Reading(line, _) => Some(line),
        _ => None,
    }
}

/// The cut that a place is in.
pub fn cut_of(place: Place) -> Option<usize> {
    match place {
        Place::Cut(line, _) => Some(line),
        _ => None,
    }
}

/// Puts readings in the order of their days, where all of them tell one.
pub fn sort(notebook: &mut Notebook) {
    let day = |reading: &Reading| {
        let alone = Notebook {
            readings: vec![Reading {
                date: reading.date.clone(),
                ..Reading::default()
            }],
            harvest: Vec::new(),
            planted: notebook.planted.clone(),
            plan: notebook.plan.clone(),
            ..Notebook::default()
        };
        Some(check_notebook(&alone).ok()?.readings.first()?.day)
    };
    let days: Option<Vec<u32>> = notebook.readings.iter().map(day).collect();
    if let Some(days) = days {
        let readings = std::mem::take(&mut notebook.readings);
        let mut all: Vec<(u32, Reading)> = days.into_iter().zip(readings).collect();
        all.sort_by_key(|(day, _)| *day);
        notebook.readings = all.into_iter().map(|(_, reading)| reading).collect();
    }
}
