//! Readings as a table of comma-separated values, out and in.

use leptos::prelude::*;

use super::kept::{Desk, Shown};
use super::lines::{finished, sort};
use crate::app::browser;
use crate::app::browser::dom::{Node, action, el};
use crate::app::parts::{paragraphs, part, row};
use crate::app::words;
use crate::plan::notebook::{check_notebook, readings_from_csv, readings_to_csv};
use crate::plan::{LONGEST_FILE, check};

/// Problems of a table that are named.
const MOST_NAMED: usize = 10;

/// Paper, files, and what came of the last one read.
pub fn files(desk: Desk, shown: &Shown) -> Node {
    let csv = readings_to_csv(&finished(&shown.notebook).readings, shown.units);
    let file = el("label")
        .class("file")
        .child(el("span").child(words::open_readings()))
        .child(
            el("input")
                .id("notebook-file")
                .attr("type", "file")
                .attr("accept", ".csv,.txt,text/csv,text/plain")
                .on_event("change", move |event| {
                    if let Some(file) = browser::chosen_file(event) {
                        browser::read_file(file, LONGEST_FILE, move |text| take_in(desk, text));
                    }
                }),
        );
    let said = desk.said.get().unwrap_or_default();
    let json = finished(&shown.notebook).to_json();
    part(
        words::keep(),
        [
            row([
                action("quiet", words::print_notebook(), browser::print),
                action("quiet", words::save_notebook(), move || {
                    browser::save_file(words::notebook_file(), &json);
                }),
                action("quiet", words::save_readings(), move || {
                    browser::save_file(words::readings_file(), &csv);
                }),
            ]),
            file,
            el("div")
                .attr("role", "status")
                .class("taken-in")
                .child(paragraphs(said.lines().map(str::to_owned).collect())),
            row(action("quiet", words::delete_notebook(), move || {
                desk.delete();
            })),
        ],
    )
}

/// Adds the readings of a table, less those that stand there already.
fn take_in(desk: Desk, text: Option<String>) {
    let Some(notebook) = untrack(|| desk.notebook()) else {
        return;
    };
    let Some(text) = text else {
        return desk.said.set(Some(words::no_table().to_owned()));
    };
    // Dates count from the notebook's own day of planting.
    let mut bare = finished(&notebook);
    bare.readings.clear();
    bare.harvest.clear();
    let planted = check_notebook(&bare)
        .ok()
        .and_then(|sound| check(&sound.plan).ok())
        .map(|sound| sound.crop.transplanting);
    let Some(planted) = planted else {
        return desk.said.set(Some(words::forecast_waits().to_owned()));
    };
    let units = desk.app.units.get_untracked();
    desk.said.set(Some(match readings_from_csv(&text, planted) {
        Err(problems) => {
            let lines = problems.iter().take(MOST_NAMED);
            let lines = lines.map(|problem| words::csv_problem(problem, units));
            lines.collect::<Vec<_>>().join("\n")
        }
        Ok(readings) => {
            let all = readings.len();
            let new: Vec<_> = readings
                .into_iter()
                .filter(|reading| !notebook.readings.contains(reading))
                .collect();
            let added = new.len();
            desk.editing.set(None);
            desk.edit(|notebook| {
                notebook.readings.extend(new);
                sort(notebook);
            });
            words::readings_added(added, all - added)
        }
    }));
}
