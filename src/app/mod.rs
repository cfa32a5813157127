//! The page: four forms, the result beside them, the printed card, and every word that a user reads
//! (in `words`). It computes nothing about the crop; that is [`crate::solve`]'s work.

mod browser;
mod building;
mod card;
mod chances;
mod drawing;
mod forms;
mod hand_on;
mod handout;
mod materials;
mod notebook;
mod results;
mod shelf;
mod state;
mod trial;
mod welcome;
mod words;

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, given_or, several};

use state::App;

/// Puts the page into the document.
pub fn mount() {
    console_error_panic_hook::set_once();
    // Without a document there is nobody to show a page to.
    if let Some(root) = browser::page_root() {
        browser::dom::stand(root, page);
    }
}

fn page() -> Node {
    let app = App::open();
    provide_context(app);
    // What the address brings is looked at once the page stands, so that a place on it is known.
    browser::soon(move || app.look_at_address());
    let arriving = window_event_listener_untyped("hashchange", move |_| app.look_at_address());
    on_cleanup(move || arriving.remove());
    browser::on_drop(move |file| hand_on::take_file(app, file));
    several()
        .child(shelf::header())
        .child(shelf::notices())
        .child(hand_on::offer())
        .child(given_or(
            move || app.plan_is_open(),
            move || {
                several()
                    .child(
                        el("div")
                            .class("bench")
                            .child(forms::forms())
                            .child(results::results()),
                    )
                    .child(card::card())
                    .child(building::sheet())
                    .child(results::glance())
            },
            welcome::welcome,
        ))
        .child(el("div").class("notebooks").child(notebook::page(app)))
        .child(el("div").class("trials").child(trial::trials(app)))
        .child(el("footer").class("foot").child(el("p").child(words::FOOT)))
}
