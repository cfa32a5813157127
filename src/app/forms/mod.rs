//! The four step forms.

mod build;
mod choice;
mod climate;
mod container;
mod crop;
mod fertilizer;
mod number;
mod salts;

use leptos::prelude::*;

use super::browser;
use super::state::{Step, app};
use super::words;
use crate::plan::Field;

pub use choice::{ChoiceField, Options, PresetField, options};
pub use number::{DateField, NumberField};

/// Steps, the form of the present step, and the way to the next.
#[component]
pub fn Forms() -> impl IntoView {
    let app = app();
    view! {
        <section class="forms" aria-label=words::STEPS>
            <ol class="steps">
                {Step::ALL
                    .into_iter()
                    .map(|step| view! { <li><StepButton step/></li> })
                    .collect_view()}
            </ol>
            {Step::ALL
                .into_iter()
                .map(|step| {
                    view! {
                        <div class="step" hidden=move || app.step.get() != step>
                            <h2 tabindex="-1" id=heading_id(step)>{words::step_question(step)}</h2>
                            <p class="hint">{words::NOT_SURE}</p>
                            {match step {
                                Step::Container => view! { <container::ContainerForm/> }.into_any(),
                                Step::Crop => view! { <crop::CropForm/> }.into_any(),
                                Step::Fertilizer => view! { <fertilizer::FertilizerForm/> }.into_any(),
                                Step::Climate => view! { <climate::ClimateForm/> }.into_any(),
                            }}
                            <StepEnd step/>
                        </div>
                    }
                })
                .collect_view()}
        </section>
    }
}

fn number_of(step: Step) -> usize {
    Step::ALL
        .iter()
        .position(|item| *item == step)
        .unwrap_or_default()
}

fn heading_id(step: Step) -> String {
    format!("step-{}", number_of(step) + 1)
}

/// Shows a step and moves the focus to its heading, so that a screen reader follows.
fn show(step: Step) {
    app().step.set(step);
    browser::focus_soon(heading_id(step));
}

#[component]
fn StepButton(step: Step) -> impl IntoView {
    let app = app();
    let wrong = Memo::new(move |_| {
        app.problems.with(|problems| {
            problems
                .iter()
                .filter(|problem| problem.field.map(Step::of) == Some(step))
                .count()
        })
    });
    view! {
        <button
            type="button"
            class="step-button"
            class:wrong=move || wrong.get() != 0
            aria-current=move || (app.step.get() == step).then_some("step")
            on:click=move |_| show(step)
        >
            <span class="step-number">{number_of(step) + 1}</span>
            <span>{words::step(step)}</span>
            <Show when=move || wrong.get() != 0>
                <span class="step-wrong">{move || words::step_problems(wrong.get())}</span>
            </Show>
        </button>
    }
}

#[component]
fn StepEnd(step: Step) -> impl IntoView {
    let place = number_of(step);
    let before = place
        .checked_sub(1)
        .and_then(|place| Step::ALL.get(place).copied());
    let after = Step::ALL.get(place + 1).copied();
    view! {
        <div class="step-end">
            {before.map(|step| view! {
                <button type="button" class="quiet" on:click=move |_| show(step)>
                    {words::BACK}
                </button>
            })}
            {match after {
                Some(step) => view! {
                    <button type="button" class="main" on:click=move |_| show(step)>
                        {words::NEXT}": "{words::step(step)}
                    </button>
                }
                .into_any(),
                None => view! {
                    <button type="button" class="main" on:click=|_| {
                        browser::scroll_to("result");
                        browser::focus("result-heading");
                    }>
                        {words::TO_RESULT}
                    </button>
                }
                .into_any(),
            }}
        </div>
    }
}

/// A named group of fields.
#[component]
pub fn Group(#[prop(into)] name: Signal<&'static str>, children: Children) -> impl IntoView {
    view! {
        <fieldset class="group">
            <legend>{move || name.get()}</legend>
            <div class="fields">{children()}</div>
        </fieldset>
    }
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
