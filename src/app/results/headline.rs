//! The figures that matter, large.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, button, el, live};

use crate::advice::{Finding, Outcome, Weight};
use crate::app::state::{Latest, app};
use crate::app::words::Worked;
use crate::app::{browser, words};

use super::mends::{CAUTIONS, CHECKS, first_mends, mended};
use super::working::working;
use crate::plan::{Dimension, UnitSystem};

/// Fill, dose, harvest, what is left.
pub fn headline() -> Node {
    let app = app();
    let of = move |text: fn(&Outcome, UnitSystem) -> String| {
        move || {
            app.outcome.with(|outcome| {
                outcome
                    .as_ref()
                    .map(|outcome| text(outcome, app.units.get()))
                    .unwrap_or_default()
            })
        }
    };
    let ends = move || {
        let harvested = app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .is_none_or(|outcome| outcome.season.harvest_day.is_some())
        });
        if harvested {
            words::at_harvest()
        } else {
            words::at_end()
        }
    };
    el("dl")
        .class("headline")
        .child(
            el("div")
                .child(el("dt").child(words::fill()))
                .child(el("dd").class("figure").id("figure-fill").child(live(of(
                    |outcome, units| words::below_rim(outcome.fill.below_rim_cm, units),
                ))))
                .child(el("dd").class("meaning").child(live(of(words::fill_more))))
                .child(el("dd").child(working(Worked::Fill))),
        )
        .child(
            el("div")
                .child(el("dt").child(words::dissolve()))
                .child(
                    el("dd")
                        .class("figure")
                        .id("figure-dose")
                        .child(live(of(words::doses_line))),
                )
                .child(el("dd").class("meaning").child(live(of(words::dose_more))))
                .child(el("dd").child(working(Worked::Dose))),
        )
        .child(
            el("div")
                .child(el("dt").child(words::harvest()))
                .child(
                    el("dd")
                        .class("figure")
                        .id("figure-harvest")
                        .child(live(of(|outcome, _| words::harvest_head(outcome)))),
                )
                .child(
                    el("dd")
                        .class("meaning")
                        .child(live(of(words::harvest_more))),
                )
                .child(el("dd").child(working(Worked::Harvest))),
        )
        .child(
            el("div")
                .child(el("dt").child(live(ends)))
                .child(el("dd").class("figure").id("figure-left").child(live(of(
                    |outcome, units| words::show(Dimension::Volume, outcome.season.left_l, units),
                ))))
                .child(el("dd").class("meaning").child(live(of(words::left_more))))
                .child(el("dd").child(working(Worked::Water))),
        )
}

/// How many cautions there are, the way to them, further down, and what mends some of them at once.
pub fn cautions_below() -> Node {
    let app = app();
    let way = move || {
        let count = app.listed_with(|outcome| grave(outcome).len());
        (count > 0).then(|| {
            el("a")
                .attr("href", "#findings")
                .on_event("click", |event| {
                    // The address holds the plan.
                    event.prevent_default();
                    browser::focus_soon(CHECKS);
                })
                .child(words::cautions_count(count))
        })
    };
    el("div")
        .class("cautions-below")
        .child(el("p").id(CAUTIONS).attr("tabindex", "-1").child(live(way)))
        .child(mended(CAUTIONS))
        .child(live(move || {
            app.listed_with(|outcome| first_mends(&grave(outcome)))
        }))
}

/// What a plan is asked to change, without the cautions that every one has.
fn grave(outcome: &Latest) -> Vec<&Finding> {
    let all = outcome.as_ref().into_iter().flat_map(|it| &it.findings);
    all.filter(|it| it.weight < Weight::Sound && !it.fact.always())
        .collect()
}

/// The bar at the foot of a phone: the result at a glance, and the way to it.
pub fn glance() -> Node {
    let app = app();
    let text = move || {
        if app.has_problems() {
            return words::problems_heading(app.problems.with(Vec::len));
        }
        app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .map(|outcome| {
                    let units = app.units.get();
                    words::glance(outcome, units)
                })
                .unwrap_or_default()
        })
    };
    // Weight that a place does not bear is seen from every step, on a phone too.
    let alarm = move || {
        app.outcome
            .with(|outcome| outcome.as_ref().and_then(words::alarm))
    };
    el("div")
        .class("glance")
        .child(
            el("span")
                .class("glance-text")
                .class_live("stop", move || alarm().is_some())
                .child(live(move || alarm().map_or_else(text, str::to_owned))),
        )
        .child(
            button("main")
                .on("click", || browser::scroll_to("result"))
                .child(words::glance_heading()),
        )
}
