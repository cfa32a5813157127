//! What comes of the plan, beside the forms.

mod calendar;
mod details;
mod findings;
mod headline;
mod mends;
mod pipes;
mod working;

use leptos::prelude::*;

use super::browser;
use super::drawing::Drawing;
use super::state::app;
use super::words;
use crate::plan::Problem;

pub use details::Table;
pub use headline::Glance;
pub use working::Working;

/// The result column.
#[component]
pub fn Results() -> impl IntoView {
    let app = app();
    // One sentence for screen readers, only of a sound plan.
    let sentence = move || {
        if app.has_problems() {
            return String::new();
        }
        app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .map(|outcome| words::result_sentence(outcome, app.units.get()))
                .unwrap_or_default()
        })
    };
    view! {
        <section class="result" id="result" aria-labelledby="result-heading">
            <h2 id="result-heading" tabindex="-1">{words::RESULT}</h2>
            <p class="unseen" role="status" aria-live="polite">{sentence}</p>
            <ProblemSummary/>
            <div class="figures" class:stale=move || app.has_problems()>
                <headline::Headline/>
                <button
                    type="button"
                    class="main print-button"
                    disabled=move || app.has_problems()
                    on:click=move |_| browser::print()
                >
                    {words::PRINT}
                </button>
                <Drawing/>
                <findings::Findings/>
                <details::Events/>
                <calendar::Calendar/>
                <pipes::PipeTable/>
                <details::Details/>
                <crate::app::hand_on::HandOn/>
            </div>
        </section>
    }
}

/// All problems, each leading to its field.
#[component]
fn ProblemSummary() -> impl IntoView {
    let app = app();
    let line = move |problem: Problem| {
        let text = words::problem_line(&problem, app.units.get());
        match problem.field {
            Some(field) => view! {
                <li>
                    <a
                        href=format!("#{}", super::state::field_id(field))
                        on:click=move |event| {
                            event.prevent_default();
                            app.go_to(field);
                        }
                    >
                        {text}
                    </a>
                </li>
            }
            .into_any(),
            None => view! { <li>{text}</li> }.into_any(),
        }
    };
    view! {
        <Show when=move || app.has_problems()>
            <div class="summary" role="group" aria-labelledby="problems-heading">
                <h3 id="problems-heading">
                    {move || words::problems_heading(app.problems.with(Vec::len))}
                </h3>
                <ul>{move || app.problems.get().into_iter().map(line).collect_view()}</ul>
                <Show when=move || app.outcome.with(Option::is_some)>
                    <p>{words::STALE}</p>
                </Show>
            </div>
        </Show>
    }
}
