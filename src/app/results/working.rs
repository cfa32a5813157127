//! What a figure is made of, folded beside it.

use leptos::prelude::*;

use crate::app::state::app;
use crate::app::words::{self, Worked};

/// The working of a figure.
#[component]
pub fn Working(of: Worked) -> impl IntoView {
    let app = app();
    let parts = move || {
        app.outcome
            .with(|outcome| {
                outcome
                    .as_ref()
                    .map(|outcome| words::working(of, outcome, app.units.get()))
            })
            .into_iter()
            .flat_map(|texts| words::WORKING_PARTS.into_iter().zip(texts))
            .map(|(name, text)| view! { <dt>{name}</dt><dd>{text}</dd> })
            .collect_view()
    };
    view! {
        <details class="working">
            <summary>{words::working_of(of)}</summary>
            <dl>{parts}</dl>
        </details>
    }
}
