//! The page: four forms, the result beside them, the printed card, and every word that a user reads
//! (in `words`). It computes nothing about the crop; that is [`crate::solve`]'s work.

mod browser;
mod building;
mod card;
mod drawing;
mod forms;
mod hand_on;
mod materials;
mod results;
mod shelf;
mod state;
mod trial;
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
    // What the address brings is looked at once the page stands, so that a place on it is known.
    browser::soon(move || app.look_at_address());
    let arriving = window_event_listener_untyped("hashchange", move |_| app.look_at_address());
    on_cleanup(move || arriving.remove());
    browser::on_drop(move |file| hand_on::take_file(app, file));
    view! {
        <shelf::Header/>
        <shelf::Notices/>
        <hand_on::Offer/>
        <Show when=move || app.plan_is_open() fallback=welcome::Welcome>
            <div class="bench">
                <forms::Forms/>
                <results::Results/>
            </div>
            <card::Card/>
            <building::Sheet/>
            <results::Glance/>
        </Show>
        <trial::Trials/>
        <footer class="foot"><p>{words::FOOT}</p></footer>
    }
}
