//! The four step forms.

mod build;
mod choice;
mod climate;
mod container;
mod crop;
mod fertilizer;
mod lines;
mod number;
mod salts;

use leptos::prelude::*;

use crate::app::browser::dom::{Node, action, button, el, given, live};

use super::browser;
use super::state::{Step, app};
use super::words;
use crate::plan::Field;

pub use choice::{Options, choice_field, options, preset_field};
pub use number::{date_field, number_field};

/// Steps, the form of the present step, and the way to the next.
pub fn forms() -> Node {
    let app = app();
    el("section")
        .class("forms")
        .attr("aria-label", words::steps())
        .child(
            el("ol").class("steps").id("steps").child(
                Step::ALL
                    .into_iter()
                    .map(|step| el("li").child(step_button(step)))
                    .collect::<Node>(),
            ),
        )
        .child(
            Step::ALL
                .into_iter()
                .map(|step| {
                    el("div")
                        .class("step")
                        .attr_live("hidden", move || app.step.get() != step)
                        .child(
                            el("h2")
                                .attr("tabindex", "-1")
                                .id(heading_id(step))
                                .child(words::step_question(step)),
                        )
                        .child(
                            el("p")
                                .class("hint")
                                .child(format!("{} ", words::not_sure()))
                                .child(action("quiet explain", words::words_explained(), || {
                                    browser::open_fold("glossary");
                                })),
                        )
                        .child(match step {
                            Step::Container => container::container_form(),
                            Step::Crop => crop::crop_form(),
                            Step::Fertilizer => fertilizer::fertilizer_form(),
                            Step::Climate => climate::climate_form(),
                        })
                        .child(step_end(step))
                })
                .collect::<Node>(),
        )
}

fn number_of(step: Step) -> usize {
    Step::ALL
        .iter()
        .position(|item| *item == step)
        .unwrap_or_default()
}

/// The id of the heading of a step.
pub fn heading_id(step: Step) -> String {
    format!("step-{}", number_of(step) + 1)
}

/// Shows a step and moves the focus to its heading, so that a screen reader follows.
fn show(step: Step) {
    app().step.set(step);
    browser::soon(move || {
        browser::focus(&heading_id(step));
        // With the steps above the question, wherever the last form was left.
        browser::scroll_to("steps");
    });
}

fn step_button(step: Step) -> Node {
    let app = app();
    let wrong = Memo::new(move |_| {
        app.problems.with(|problems| {
            problems
                .iter()
                .filter(|problem| problem.field.map(Step::of) == Some(step))
                .count()
        })
    });
    button("step-button")
        .class_live("wrong", move || wrong.get() != 0)
        .attr_live("aria-current", move || {
            (app.step.get() == step).then_some("step")
        })
        .on("click", move || show(step))
        .child(el("span").class("step-number").child(number_of(step) + 1))
        .child(el("span").child(words::step(step)))
        .child(given(
            move || wrong.get() != 0,
            move || {
                el("span")
                    .class("step-wrong")
                    .child(live(move || words::step_problems(wrong.get())))
            },
        ))
}

fn step_end(step: Step) -> Node {
    let place = number_of(step);
    let before = place
        .checked_sub(1)
        .and_then(|place| Step::ALL.get(place).copied());
    let after = Step::ALL.get(place + 1).copied();
    el("div")
        .class("step-end")
        .child(before.map(|step| {
            button("quiet")
                .on("click", move || show(step))
                .child(words::back())
        }))
        .child(match after {
            Some(step) => button("main")
                .on("click", move || show(step))
                .child(words::next())
                .child(": ")
                .child(words::step(step)),
            None => button("main")
                .on("click", || {
                    browser::scroll_to("result");
                    browser::focus("result-heading");
                })
                .child(words::to_result()),
        })
}

/// A named group of fields.
pub fn group(name: impl Into<Node>, children: Node) -> Node {
    el("fieldset")
        .class("group")
        .child(el("legend").child(name))
        .child(el("div").class("fields").child(children))
}

/// Whether a fold has to be open: once a field of it was wrong, from then on. Closing it when the
/// field is mended would take the focus from who is still typing there.
fn wrong_within(of: fn(Field) -> bool) -> Memo<bool> {
    let app = app();
    Memo::new(move |before: Option<&bool>| {
        before == Some(&true)
            || app
                .problems
                .with(|problems| problems.iter().any(|problem| problem.field.is_some_and(of)))
    })
}
