//! The first page: four ready plans, or a start of one's own.

use leptos::prelude::*;

use super::state::app;
use super::words;
use crate::catalog::Keyed;
use crate::plan::Example;

/// Shown while no plan is open.
#[component]
pub fn Welcome() -> impl IntoView {
    let app = app();
    view! {
        <section class="welcome">
            <h2 tabindex="-1" id="welcome">{words::WELCOME}</h2>
            <p class="lead">{words::WELCOME_MORE}</p>
            <ul class="examples">
                {Example::ALL
                    .iter()
                    .map(|&example| {
                        view! {
                            <li>
                                <button
                                    type="button"
                                    class="example"
                                    on:click=move |_| app.add_example(example)
                                >
                                    <Sketch example/>
                                    <strong>{words::example(example)}</strong>
                                    <span>{words::example_more(example)}</span>
                                </button>
                            </li>
                        }
                    })
                    .collect_view()}
            </ul>
            <button type="button" class="main" on:click=move |_| app.add_own(words::OWN_PLAN)>
                {words::START_OWN}
            </button>
            <Show when=move || !app.shelf().is_empty()>
                <h3>{words::YOUR_PLANS}</h3>
                <super::shelf::PlanList/>
            </Show>
            <super::hand_on::Files/>
        </section>
    }
}

/// A small drawing of each way of standing plants over solution: vessel, solution, leaves.
#[component]
fn Sketch(example: Example) -> impl IntoView {
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
        view! {
            <path class="sketch-board" d="M14 40h44v6h-44zM62 40h44v6h-44z"/>
            <circle class="sketch-line" cx="36" cy="59" r="13"/>
            <circle class="sketch-line" cx="84" cy="59" r="13"/>
        }
    });
    view! {
        <svg class="sketch" viewBox="0 0 120 80" aria-hidden="true">
            <path class="sketch-water" d=solution/>
            {boards}
            <path class="sketch-line" d=vessel/>
            <path class="sketch-leaf" d=leaves/>
        </svg>
    }
}
