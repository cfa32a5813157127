//! The first page: four ready plans, or a start of one's own.

use std::cell::Cell;
use std::rc::Rc;

use leptos::prelude::*;

use crate::app::browser::dom::{Node, button, el, given, live, several};

use super::state::app;
use super::words::{self, Worded};
use crate::catalog::Keyed;
use crate::catalog::shelters::Shelter;
use crate::plan::Example;

/// Shown while no plan is open.
pub fn welcome() -> Node {
    let app = app();
    // Light decides more than anything else that a ready plan takes for granted. No signal, as nothing
    // on this page follows it.
    let place = Rc::new(Cell::new(None));
    let (chosen, own) = (Rc::clone(&place), Rc::clone(&place));
    let standing = el("div")
        .class("field standing")
        .child(
            el("label")
                .attr("for", "standing")
                .child(words::stand_where()),
        )
        .child(
            el("select")
                .id("standing")
                .on_value("change", move |key| chosen.set(Shelter::from_key(&key)))
                .child(el("option").attr("value", "").child(words::stand_as_said()))
                .child(
                    Shelter::ALL
                        .iter()
                        .map(|shelter| {
                            el("option")
                                .attr("value", shelter.key())
                                .child(shelter.word())
                        })
                        .collect::<Node>(),
                ),
        );
    el("section")
        .class("welcome")
        .child(
            el("h2")
                .attr("tabindex", "-1")
                .id("welcome")
                .child(words::welcome()),
        )
        .child(el("p").class("lead").child(words::welcome_more()))
        .child(standing)
        .child(
            el("ul").class("examples").child(
                Example::ALL
                    .iter()
                    .map(|&example| {
                        let place = Rc::clone(&place);
                        el("li").child(
                            button("example")
                                .on("click", move || app.add_example(example, place.get()))
                                .child(sketch(example))
                                .child(el("strong").child(words::example(example)))
                                .child(el("span").child(live(move || {
                                    words::example_more(example, app.units.get())
                                }))),
                        )
                    })
                    .collect::<Node>(),
            ),
        )
        .child(
            button("main")
                .on("click", move || app.add_own(words::own_plan(), own.get()))
                .child(words::start_own()),
        )
        .child(given(
            move || !app.shelf().is_empty(),
            move || {
                several()
                    .child(el("h3").child(words::your_plans()))
                    .child(super::shelf::plan_list(None))
            },
        ))
        .child(super::hand_on::files())
}

/// A small drawing of each way of standing plants over solution: vessel, solution, leaves.
fn sketch(example: Example) -> Node {
    let (vessel, solution, leaves) = match example {
        Example::Bottle => (
            "M48 20v8q-14 6-14 14v30h52v-30q0-8-14-14v-8z",
            "M34 44h52v28h-52z",
            "M60 22q-16-4-18-16q14 0 18 12q4-12 18-12q-2 12-18 16z",
        ),
        Example::Bucket => (
            "M30 24h60l-6 48h-48z",
            "M32 38h56l-4 34h-48z",
            "M46 24q-11-3-12-12q10 0 12 9q2-9 12-9q-1 9-12 12zM74 24q-11-3-12-12q10 0 12 9q2-9 12-9q-1 9-12 12z",
        ),
        Example::CoveredTank => (
            "M10 36h100v36h-100z",
            "M10 46h100v26h-100z",
            "M28 36q-9-3-10-10q8 0 10 7q2-7 10-7q-1 7-10 10zM60 36q-9-3-10-10q8 0 10 7q2-7 10-7q-1 7-10 10zM92 36q-9-3-10-10q8 0 10 7q2-7 10-7q-1 7-10 10z",
        ),
        Example::FloatingBoards => (
            "M10 32h100v40h-100z",
            "M10 52h100v20h-100z",
            "M28 40q-9-3-10-10q8 0 10 7q2-7 10-7q-1 7-10 10zM60 40q-9-3-10-10q8 0 10 7q2-7 10-7q-1 7-10 10zM92 40q-9-3-10-10q8 0 10 7q2-7 10-7q-1 7-10 10z",
        ),
    };
    let boards = (example == Example::FloatingBoards).then(|| {
        several()
            .child(
                el("path")
                    .class("sketch-board")
                    .attr("d", "M14 40h44v6h-44zM62 40h44v6h-44z"),
            )
            .child(
                el("circle")
                    .class("sketch-line")
                    .attr("cx", "36")
                    .attr("cy", "59")
                    .attr("r", "13"),
            )
            .child(
                el("circle")
                    .class("sketch-line")
                    .attr("cx", "84")
                    .attr("cy", "59")
                    .attr("r", "13"),
            )
    });
    el("svg")
        .class("sketch")
        .attr("viewBox", "0 0 120 80")
        .attr("aria-hidden", "true")
        .child(el("path").class("sketch-water").attr("d", solution))
        .child(boards)
        .child(el("path").class("sketch-line").attr("d", vessel))
        .child(el("path").class("sketch-leaf").attr("d", leaves))
}
