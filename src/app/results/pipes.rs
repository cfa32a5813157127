//! The comparison of pipe sizes.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, given, live, several};

use crate::advice::{PipeRow, PipeVerdict};
use crate::app::state::{Latest, app};
use crate::app::words::{self, Worded, Worked};

use super::working::working;
use crate::plan::{Dimension, UnitSystem};

/// The table, where boards float.
pub fn pipe_table() -> Node {
    let app = app();
    let any_sound = move || {
        app.tabled_with(|outcome| {
            rows(outcome)
                .iter()
                .any(|row| row.verdict == PipeVerdict::Sound)
        })
    };
    given(
        move || app.tabled_with(|outcome| !rows(outcome).is_empty()),
        move || {
            el("section")
                .class("part")
                .id("pipes")
                .child(el("h3").child(words::pipes()))
                .child(el("p").class("hint").child(live(move || {
                    words::pipes_note(any_sound(), app.units.get())
                })))
                .child(
                    el("div")
                        .class("scroll")
                        .attr("tabindex", "0")
                        .attr("role", "region")
                        .attr("aria-label", words::pipes())
                        .child(
                            el("table")
                                .child(
                                    el("thead").child(
                                        el("tr").child(
                                            words::pipe_heads()
                                                .into_iter()
                                                .map(|head| {
                                                    el("th").attr("scope", "col").child(head)
                                                })
                                                .collect::<Node>(),
                                        ),
                                    ),
                                )
                                .child(el("tbody").child(live(move || {
                                    let units = app.units.get();
                                    app.tabled_with(|outcome| {
                                        let lines =
                                            rows(outcome).iter().map(|row| line(row, units));
                                        lines.collect::<Node>()
                                    })
                                }))),
                        ),
                )
                .child(working(Worked::Boards))
        },
    )
}

fn rows(outcome: &Latest) -> &[PipeRow] {
    let boards = outcome.as_ref().and_then(|outcome| outcome.boards.as_ref());
    boards.map_or(&[], |boards| &boards.pipes)
}

fn line(row: &PipeRow, units: UnitSystem) -> Node {
    let length = |cm| words::show(Dimension::Length, cm, units);
    let known = row.verdict != PipeVerdict::TankTooLow;
    let or_dash = |text: String| if known { text } else { "–".to_owned() };
    let verdict = row.verdict;
    el("tr")
        .class_if("chosen", row.chosen)
        .child(
            el("th")
                .attr("scope", "row")
                .child(row.size.word())
                .child(row.chosen.then(|| {
                    several()
                        .child(" ")
                        .child(el("em").class("tag").child(words::chosen_heading()))
                })),
        )
        // Before the figures: it is all that a phone shows without a swipe.
        .child(
            el("td")
                .class_if("good", verdict == PipeVerdict::Sound)
                .child(words::verdict(verdict)),
        )
        .child(el("td").child(or_dash(length(row.fill_depth_cm))))
        .child(el("td").child(or_dash(words::rest_day(row.rest_day))))
        .child(el("td").child(or_dash(length(row.gap_cm))))
        .child(el("td").child(words::show(
            Dimension::SmallLength,
            row.outside_diameter_mm,
            units,
        )))
}
