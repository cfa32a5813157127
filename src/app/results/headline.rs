//! The figures that matter, large.

use leptos::prelude::*;

use crate::advice::Outcome;
use crate::app::state::app;
use crate::app::words::Worked;
use crate::app::{browser, words};

use super::working::Working;
use crate::plan::{Dimension, UnitSystem};

/// Fill, dose, harvest, what is left.
#[component]
pub fn Headline() -> impl IntoView {
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
            words::AT_HARVEST
        } else {
            words::AT_END
        }
    };
    view! {
        <dl class="headline">
            <div>
                <dt>{words::FILL}</dt>
                <dd class="figure" id="figure-fill">
                    {of(|outcome, units| words::below_rim(outcome.fill.below_rim_cm, units))}
                </dd>
                <dd class="meaning">{of(words::fill_more)}</dd>
                <dd><Working of=Worked::Fill/></dd>
            </div>
            <div>
                <dt>{words::DISSOLVE}</dt>
                <dd class="figure" id="figure-dose">{of(words::doses_line)}</dd>
                <dd class="meaning">{of(words::dose_more)}</dd>
                <dd><Working of=Worked::Dose/></dd>
            </div>
            <div>
                <dt>{words::HARVEST}</dt>
                <dd class="figure" id="figure-harvest">
                    {of(|outcome, _| words::harvest_head(outcome))}
                </dd>
                <dd class="meaning">{of(words::harvest_more)}</dd>
                <dd><Working of=Worked::Harvest/></dd>
            </div>
            <div>
                <dt>{ends}</dt>
                <dd class="figure" id="figure-left">
                    {of(|outcome, units| {
                        words::show(Dimension::Volume, outcome.season.left_l, units)
                    })}
                </dd>
                <dd class="meaning">{of(words::left_more)}</dd>
                <dd><Working of=Worked::Water/></dd>
            </div>
        </dl>
    }
}

/// The bar at the foot of a phone: the result at a glance, and the way to it.
#[component]
pub fn Glance() -> impl IntoView {
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
    view! {
        <div class="glance">
            <span class="glance-text" class:stop=move || alarm().is_some()>
                {move || alarm().map_or_else(text, str::to_owned)}
            </span>
            <button type="button" class="main" on:click=|_| browser::scroll_to("result")>
                {words::GLANCE}
            </button>
        </div>
    }
}
