//! The page: four forms, the result beside them, the printed card, and every word that a user reads
//! (in `words`). It computes nothing about the crop; that is [`crate::solve`]'s work.

mod browser;
mod card;
mod drawing;
mod forms;
mod materials;
mod results;
mod shelf;
mod state;
mod welcome;
mod words;

use leptos::prelude::*;

use state::App;

/// Puts the page into the document.
pub fn mount() {
    console_error_panic_hook::set_once();
    // Without a document there is nobody to show a page to.
    if let Some(root) = browser::page_root() {
        leptos::mount::mount_to(root, Page).forget();
    }
}

#[component]
fn Page() -> impl IntoView {
    let app = App::open();
    provide_context(app);
    view! {
        <shelf::Header/>
        <shelf::Notices/>
        <Show when=move || app.plan_is_open() fallback=welcome::Welcome>
            <div class="bench">
                <forms::Forms/>
                <results::Results/>
            </div>
            <card::Card/>
            <results::Glance/>
        </Show>
        <footer class="foot"><p>{words::FOOT}</p></footer>
    }
}
