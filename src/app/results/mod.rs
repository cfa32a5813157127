//! What comes of the plan, beside the forms.

mod basis;
mod calendar;
mod details;
mod findings;
mod headline;
mod mends;
mod more;
mod pipes;
mod working;

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, given, live};

use super::building;
use super::drawing::drawing;
use super::state::{Latest, app};
use super::words;
use crate::plan::Problem;

pub use details::titled_table;
pub use headline::glance;
pub use mends::{CHECKS, told, way};
pub use more::{More, fetch_more, fold, shown};
pub use working::working;

/// The result column.
pub fn results() -> Node {
    let app = app();
    // One sentence for screen readers, only of a sound plan.
    let sentence = move || {
        if app.has_problems() {
            return String::new();
        }
        app.listed_with(|outcome| {
            outcome
                .as_ref()
                .map(|outcome| words::result_sentence(outcome, app.units.get()))
                .unwrap_or_default()
        })
    };
    el("section")
        .class("result")
        .id("result")
        .attr("aria-labelledby", "result-heading")
        .child(
            el("h2")
                .id("result-heading")
                .attr("tabindex", "-1")
                .child(words::result()),
        )
        .child(
            el("p")
                .class("unseen")
                .attr("role", "status")
                .attr("aria-live", "polite")
                .child(live(sentence)),
        )
        .child(problem_summary())
        .child(building::alarms())
        .child(
            el("div")
                .class("figures")
                .class_live("stale", move || app.has_problems())
                .child(basis::basis())
                .child(headline::headline())
                .child(headline::cautions_below())
                .child(building::print_button())
                .child(findings::findings())
                .child(drawing())
                .child(crate::app::chances::chances())
                .child(details::events())
                .child(calendar::calendar())
                .child(pipes::pipe_table())
                .child(building::building())
                .child(details::details())
                .child(crate::app::hand_on::hand_on()),
        )
}

/// All problems, each leading to its field.
fn problem_summary() -> Node {
    let app = app();
    let line = move |problem: Problem| {
        let text = words::problem_line(&problem, app.units.get());
        match problem.field {
            Some(field) => el("li").child(
                el("a")
                    .attr("href", format!("#{}", super::state::field_id(field)))
                    .on_event("click", move |event| {
                        event.prevent_default();
                        app.go_to(field);
                    })
                    .child(text),
            ),
            None => el("li").child(text),
        }
    };
    given(
        move || app.has_problems(),
        move || {
            el("div")
                .class("summary")
                .attr("role", "group")
                .attr("aria-labelledby", "problems-heading")
                .child(el("h3").id("problems-heading").child(live(move || {
                    words::problems_heading(app.problems.with(Vec::len))
                })))
                .child(el("ul").child(live(move || {
                    app.problems.get().into_iter().map(line).collect::<Node>()
                })))
                .child(given(
                    move || app.outcome.with(Latest::is_some),
                    move || el("p").child(words::stale()),
                ))
        },
    )
}
