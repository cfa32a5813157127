//! Changes that mend a failing plan, each made by one button and taken back by another.

use leptos::prelude::*;

use crate::advice::{Change, Fact, Finding};
use crate::app::state::app;
use crate::app::words;

/// The buttons of a finding.
pub fn mends(finding: &Finding) -> Option<AnyView> {
    let units = app().units.get();
    let ways: Vec<(Vec<Change>, String)> = match &finding.fact {
        Fact::ContactLost { mends, .. } | Fact::RootsHang { mends, .. } => mends
            .iter()
            .map(|mend| (mend.changes.clone(), words::mend(mend, units)))
            .collect(),
        _ => finding
            .mends
            .iter()
            .map(|change| (vec![change.clone()], words::change(change, units)))
            .collect(),
    };
    if ways.is_empty() {
        return None;
    }
    let buttons = ways.into_iter().map(button).collect_view();
    Some(view! { <div class="mends">{buttons}</div> }.into_any())
}

fn button((changes, name): (Vec<Change>, String)) -> AnyView {
    let app = app();
    let said = name.clone();
    view! {
        <button
            type="button"
            class="mend"
            on:click=move |_| app.mend(&changes, said.clone())
        >
            {name}
        </button>
    }
    .into_any()
}

/// What was changed last, and the way back.
#[component]
pub fn Mended() -> impl IntoView {
    let app = app();
    view! {
        <div role="status">
            {move || app.mended().map(|mended| view! {
                <p class="notice">
                    <span>{words::mended(&mended.said)}</span>
                    <button type="button" class="quiet" id="unmend" on:click=move |_| app.unmend()>
                        {words::UNDO}
                    </button>
                </p>
            })}
        </div>
    }
}
