//! The page: four forms, the result beside them, the printed card, and every word that a user reads
//! (in `words`). It computes nothing about the crop; that is [`crate::solve`]'s work.

mod bench;
mod browser;
mod building;
mod card;
mod chances;
mod drawing;
mod forms;
mod glossary;
mod hand_on;
mod handout;
mod materials;
mod notebook;
mod parts;
mod results;
mod shelf;
mod state;
mod trial;
mod welcome;
mod words;

use leptos::prelude::*;

use bench::{Piece, fetch_plan, plan_part};
use browser::Found;
use browser::dom::{Node, el, given, given_or, live, several};
use browser::part::part;
use state::App;

/// Puts the page into the document.
pub fn mount() {
    console_error_panic_hook::set_once();
    browser::speak_first();
    let found = Found::look();
    // Nothing may move on a page that shows a plan at once: it stands when all of it is here.
    let at_once = found.store.open.is_some() || browser::fragment().is_some();
    let show = move || {
        // Without a document there is nobody to show a page to.
        if let Some(root) = browser::page_root() {
            browser::forget_boot();
            browser::dom::stand(root, move || page(found));
        }
    };
    if at_once {
        browser::go_on(async move {
            // What could not be fetched is asked for once more where it is to be shown.
            let _ = fetch_plan().await;
            show();
        });
    } else {
        show();
        // While the first page is read, and not in the way of it.
        browser::after_paint(|| {
            browser::go_on(async {
                let _ = fetch_plan().await;
            });
        });
    }
}

fn page(found: Found) -> Node {
    let app = App::open(found);
    provide_context(app);
    // What the address brings is looked at once the page stands, so that a place on it is known.
    browser::soon(move || app.look_at_address());
    let arriving = window_event_listener_untyped("hashchange", move |_| app.look_at_address());
    on_cleanup(move || arriving.remove());
    browser::on_drop(move |file| hand_on::take_file(app, file));
    let shown =
        move |piece: Piece, focus: fn()| part(fetch_plan, move || plan_part(app, piece), focus);
    // Another language describes all of it anew.
    live(move || {
        app.language.track();
        content(app, shown)
    })
}

/// All that stands on the page.
fn content(app: App, shown: impl Fn(Piece, fn()) -> Node + Copy + 'static) -> Node {
    several()
        .child(shelf::header())
        .child(shelf::notices())
        .child(given(
            move || app.brought.with(Option::is_some),
            move || shown(Piece::Offer, || browser::focus_if_lost("brought")),
        ))
        .child(given_or(
            move || app.plan_is_open(),
            move || shown(Piece::Plan, || browser::focus_if_lost("step-1")),
            welcome::welcome,
        ))
        .child(el("div").class("notebooks").child(notebook::page(app)))
        .child(el("div").class("trials").child(trial::trials(app)))
        .child(glossary::glossary())
        .child(
            el("footer")
                .class("foot")
                .child(el("p").child(words::foot())),
        )
}
