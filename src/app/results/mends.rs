//! Changes that mend a failing plan, each made by one button and taken back by another.

use leptos::prelude::*;

use crate::advice::{Fact, Mend};
use crate::app::state::app;
use crate::app::words;

/// The buttons of a finding.
pub fn mends(fact: &Fact) -> Option<AnyView> {
    let app = app();
    let (Fact::ContactLost { mends, .. } | Fact::RootsHang { mends, .. }) = fact else {
        return None;
    };
    let button = |mend: &Mend| {
        let mend = mend.clone();
        let name = words::mend(&mend, app.units.get());
        view! {
            <button type="button" class="mend" on:click=move |_| app.mend(mend.clone())>
                {name}
            </button>
        }
    };
    let buttons = mends.iter().map(button).collect_view();
    Some(view! { <div class="mends">{buttons}</div> }.into_any())
}

/// What was changed last, and the way back.
#[component]
pub fn Mended() -> impl IntoView {
    let app = app();
    view! {
        <div role="status">
            {move || app.mended().map(|mended| view! {
                <p class="notice">
                    <span>{words::mended(&words::mend(&mended.mend, app.units.get()))}</span>
                    <button type="button" class="quiet" id="unmend" on:click=move |_| app.unmend()>
                        {words::UNDO}
                    </button>
                </p>
            })}
        </div>
    }
}
