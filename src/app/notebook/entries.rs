//! What was read and cut, to be written down and mended.

use leptos::prelude::*;

use super::kept::{Desk, Shown};
use super::lines::sort;
use crate::app::browser;
use crate::app::browser::dom::{Node, action, button, el};
use crate::app::parts::read;
use crate::app::parts::{choice, field, row, text_box};
use crate::app::words;
use crate::catalog::Keyed;
use crate::plan::notebook::{Cut, LevelFrom, Notebook, Place, Reading, ReadingColumn};
use crate::plan::{Dimension, Entry, Pick};

/// A box for one entry; what is typed is taken when the box is left.
fn entry_box(
    desk: Desk,
    shown: &Shown,
    entry: &Entry,
    dimension: Option<Dimension>,
    write: impl Fn(&mut Notebook, Entry) + Copy + 'static,
) -> Node {
    let units = shown.units;
    let text = match (entry, dimension) {
        (Entry::Number(value), Some(dimension)) => dimension.text(*value, units),
        (Entry::Number(value), None) => value.to_string(),
        (Entry::Text(text), _) => text.clone(),
    };
    text_box(text, move |text| {
        let entry = match dimension {
            Some(dimension) => read(&text, dimension, units),
            None => Entry::from(text.as_str()),
        };
        desk.edit(|notebook| write(notebook, entry));
    })
    // A keypad without a minus or hyphen would keep a date or a level above the mark from being typed.
    .attr(
        "inputmode",
        (dimension.is_some_and(|it| it != Dimension::Length)).then_some("decimal"),
    )
}

/// Day of planting and readings.
pub fn readings(desk: Desk, shown: &Shown) -> Node {
    let notebook = &shown.notebook;
    let planted = field(
        "notebook-planted".to_owned(),
        words::planted(),
        words::planted_hint(),
        shown.problem(Place::Planted),
        entry_box(desk, shown, &notebook.planted, None, |notebook, entry| {
            notebook.planted = entry;
        }),
    );
    let lines: Node = notebook
        .readings
        .iter()
        .enumerate()
        .map(|(place, it)| reading(desk, shown, place, it))
        .collect();
    let none = notebook.readings.is_empty();
    [
        planted,
        el("p").class("hint").child(words::readings_more()),
        el("ol").class("readings").child(lines),
        none.then(|| el("p").child(words::no_reading())).into(),
        row([
            action("quiet", words::add_reading(), move || desk.add_reading()),
            action("quiet", words::undo_last(), move || {
                desk.take_back();
                browser::focus_soon("notebooks");
            })
            .id("notebook-undo")
            .attr("disabled", desk.back.get().is_none()),
        ]),
    ]
    .into()
}

/// A reading: its line, and its boxes while they are open.
fn reading(desk: Desk, shown: &Shown, place: usize, reading: &Reading) -> Node {
    let open = desk.editing.get() == Some(place);
    let wrong = shown
        .problems
        .iter()
        .any(|it| matches!(it.place, Place::Reading(at, _) if at == place));
    let line = button("reading-line")
        .id(format!("reading-{}", place + 1))
        .attr("aria-expanded", if open { "true" } else { "false" })
        .on("click", move || {
            if open {
                close(desk);
            } else {
                desk.editing.set(Some(place));
            }
        })
        .child(el("strong").child(words::reading_cells(reading, shown.units)[0].clone()))
        .child(el("span").child(words::reading_line(reading, shown.units)))
        .child(wrong.then(|| el("span").class("bad").child(words::to_mend())));
    el("li")
        .child(line)
        .child(open.then(|| boxes(desk, shown, place, reading)))
}

/// Closes the boxes; the readings then stand in the order of their days.
fn close(desk: Desk) {
    desk.editing.set(None);
    if let Some(notebook) = untrack(|| desk.notebook()) {
        let mut sorted = notebook.clone();
        sort(&mut sorted);
        if sorted != notebook {
            desk.edit(|notebook| *notebook = sorted);
        }
    }
}

fn boxes(desk: Desk, shown: &Shown, place: usize, reading: &Reading) -> Node {
    let mut entries = reading.clone();
    let fields: Node = ReadingColumn::ALL
        .iter()
        .filter(|&&column| column != ReadingColumn::Container || shown.several)
        .map(|&column| {
            let (label, mut hint) = words::column(column, shown.units);
            let marked = reading.level_from.known() == Some(LevelFrom::Mark);
            if marked && column == ReadingColumn::Level {
                words::from_mark().clone_into(&mut hint);
            }
            let dimension = column.limits().map(|limits| limits.0);
            let control = match column {
                ReadingColumn::LevelFrom => {
                    let options = LevelFrom::ALL.iter().zip(words::levels_from());
                    let options =
                        options.map(|(from, word)| (from.key().to_owned(), word.to_owned()));
                    let chosen = match reading.level_from.key() {
                        "" => LevelFrom::Rim.key(),
                        key => key,
                    };
                    choice(options.collect(), chosen.to_owned(), move |key| {
                        desk.edit(|notebook| {
                            if let Some(reading) = notebook.readings.get_mut(place) {
                                reading.level_from = Pick::from_key(&key);
                            }
                        });
                    })
                }
                ReadingColumn::Note => text_box(reading.note.clone(), move |note| {
                    desk.edit(|notebook| {
                        if let Some(reading) = notebook.readings.get_mut(place) {
                            reading.note = note;
                        }
                    });
                })
                .attr("maxlength", "200"),
                _ => {
                    let entry = entries.entry_mut(column).cloned().unwrap_or_default();
                    entry_box(desk, shown, &entry, dimension, move |notebook, entry| {
                        let reading = notebook.readings.get_mut(place);
                        if let Some(slot) = reading.and_then(|it| it.entry_mut(column)) {
                            *slot = entry;
                        }
                    })
                }
            };
            field(
                format!("reading-{}-{}", place + 1, column.key()),
                words::unit_label(label, dimension, shown.units),
                hint,
                shown.problem(Place::Reading(place, column)),
                control,
            )
        })
        .collect();
    el("div").class("reading-boxes").child([
        el("div").class("fields").child(fields),
        row([
            action("main", words::done(), move || {
                close(desk);
                browser::focus_soon("notebook-undo");
            }),
            action("quiet", words::remove_reading(), move || {
                desk.editing.set(None);
                desk.edit(|notebook| {
                    notebook.readings.remove(place);
                });
                browser::focus_soon("notebook-undo");
            }),
        ]),
    ])
}

/// The columns of heads that were cut, in the order of their labels.
const CUT_KEYS: [&str; 4] = ["date", "container", "heads", "mass_g"];

fn cut_slot(cut: &mut Cut, column: usize) -> &mut Entry {
    match column {
        0 => &mut cut.date,
        1 => &mut cut.container,
        2 => &mut cut.heads,
        _ => &mut cut.mass_g,
    }
}

/// Heads that were cut.
pub fn cuts(desk: Desk, shown: &Shown) -> Node {
    let lines: Node = shown
        .notebook
        .harvest
        .iter()
        .enumerate()
        .map(|(place, cut)| self::cut(desk, shown, place, cut))
        .collect();
    [
        el("p").class("hint").child(words::cuts_more()),
        el("ol").class("readings").child(lines),
        row(action("quiet", words::add_cut(), move || {
            let place = untrack(|| desk.notebook()).map_or(0, |it| it.harvest.len());
            desk.edit(|notebook| {
                // Cut on the day that was read last.
                let date = notebook.readings.last().map(|it| it.date.clone());
                notebook.harvest.push(Cut {
                    date: date.unwrap_or_default(),
                    ..Cut::default()
                });
            });
            browser::focus_soon(format!("cut-{}-date", place + 1));
        })),
    ]
    .into()
}

fn cut(desk: Desk, shown: &Shown, place: usize, cut: &Cut) -> Node {
    let mut entries = cut.clone();
    let fields: Node = CUT_KEYS
        .iter()
        .enumerate()
        .filter(|(column, _)| *column != 1 || shown.several)
        .map(|(column, &key)| {
            let dimension = match column {
                0 => None,
                3 => Some(Dimension::Mass),
                _ => Some(Dimension::Count),
            };
            let entry = cut_slot(&mut entries, column).clone();
            let control = entry_box(desk, shown, &entry, dimension, move |notebook, entry| {
                if let Some(cut) = notebook.harvest.get_mut(place) {
                    *cut_slot(cut, column) = entry;
                }
            });
            field(
                format!("cut-{}-{key}", place + 1),
                words::unit_label(words::cut_columns()[column], dimension, shown.units),
                "",
                shown.problem(Place::Cut(place, key)),
                control,
            )
        })
        .collect();
    el("li").class("reading-boxes").child([
        el("div").class("fields").child(fields),
        row(action("quiet", words::remove_cut(), move || {
            desk.edit(|notebook| {
                notebook.harvest.remove(place);
            });
            browser::focus_soon("notebook-undo");
        })),
    ])
}
