//! The tank as something to build: on the screen folded beside the figures, on paper as a build sheet
//! and a drilling template.

mod drawings;
mod paper;
mod template;

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, given, live, several};

pub use paper::{Paper, paper, print_button, sheet};

use super::browser;
use super::results::{More, fold, shown, titled_table};
use super::state::app;
use super::words;
use crate::advice::{Outcome, materials_csv};
use crate::plan::UnitSystem;

/// What of an outcome is shown, made anew when it changes.
fn of_outcome(what: fn(&Outcome, UnitSystem) -> Option<Node>) -> impl Fn() -> Option<Node> {
    let app = app();
    move || {
        let units = app.units.get();
        app.outcome
            .with(|outcome| outcome.as_ref().and_then(|outcome| what(outcome, units)))
    }
}

/// What must not be missed, over everything else.
pub fn alarms() -> Node {
    live(of_outcome(alarm))
}

fn alarm(outcome: &Outcome, units: UnitSystem) -> Option<Node> {
    let lines = words::alarms(outcome, units);
    (!lines.is_empty()).then(|| {
        el("section")
            .class("alarm")
            .attr("role", "alert")
            .attr("aria-label", words::alarm_heading())
            .child(el("strong").child(words::alarm_heading()))
            .child(
                lines
                    .into_iter()
                    .map(|line| el("p").child(line))
                    .collect::<Node>(),
            )
    })
}

/// The folded section.
pub fn building() -> Node {
    let app = app();
    let built = Memo::new(move |_| {
        app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .is_some_and(|outcome| outcome.build.is_some())
        })
    });
    given(
        move || built.get(),
        move || {
            fold("fold building", words::building(), || {
                [
                    el("p").class("hint").child(words::building_more()),
                    shown(More::Building),
                ]
                .into()
            })
            .id("building")
        },
    )
}

/// What stands in it.
pub fn body_now() -> Node {
    live(of_outcome(body))
}

fn list(lines: Vec<String>) -> Node {
    lines
        .into_iter()
        .map(|line| el("li").child(line))
        .collect::<Node>()
}

fn table(heads: &[&'static str], name: &'static str, rows: Vec<Vec<String>>) -> Node {
    let line = |row: Vec<String>| {
        let cells = row.into_iter().map(|cell| el("td").child(cell));
        el("tr").child(cells.collect::<Node>())
    };
    titled_table(heads, name, rows.into_iter().map(line).collect::<Node>())
}

/// A part under its heading.
fn part(heading: &'static str, content: Node) -> Node {
    el("section")
        .class("build-part")
        .child(el("h3").child(heading))
        .child(content)
}

/// Drawings, figures, parts, materials and running, alike on screen and paper.
fn body(outcome: &Outcome, units: UnitSystem) -> Option<Node> {
    let (build, layout) = (outcome.build.as_ref()?, outcome.layout.as_ref()?);
    let materials = browser::file_address("text/csv", &materials_csv(outcome, units));
    let running = outcome.running.as_ref().map(|running| {
        let steps = running
            .work
            .iter()
            .map(|&step| words::work_step(step).to_owned())
            .collect();
        several()
            .child(part(
                words::build_running_heading(),
                el("ul").child(list(words::build_running(running, units))),
            ))
            .child(part(
                words::build_work(),
                el("ol").class("work").child(list(steps)),
            ))
    });
    let got = several()
        .child(table(
            &words::build_material_heads(),
            words::build_materials_heading(),
            words::build_materials(build, units),
        ))
        .child(
            el("p").class("save-csv").child(
                el("a")
                    .class("save")
                    .attr("download", words::materials_file())
                    .attr("href", materials)
                    .child(words::save_materials()),
            ),
        );
    let made = several()
        .child(
            el("ol")
                .class("work")
                .child(list(words::build_parts(outcome, units))),
        )
        .child(el("p").child(words::hole_rows_heading()))
        .child(
            el("ul")
                .class("holes")
                .child(list(words::hole_rows(layout, units))),
        );
    let checks = table(
        &words::build_check_heads(),
        words::build_checks_heading(),
        words::build_checks(outcome, units),
    );
    Some(
        several()
            .child(part(
                words::build_drawings(),
                drawings::drawings(outcome, layout, units),
            ))
            .child(part(words::build_checks_heading(), checks))
            .child(part(words::build_parts_heading(), made))
            .child(part(words::build_materials_heading(), got))
            .child(running),
    )
}
