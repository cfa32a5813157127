//! Crops under way: what a grower reads, the forecast that bends to it, and what the crop taught. A
//! notebook that is shown stands alone on the page.

mod closing;
mod entries;
mod files;
mod forecast;
mod kept;
mod lines;
mod paper;
mod weigh;

use std::rc::Rc;

use leptos::prelude::*;
use wasm_split_helpers::wasm_split;

use super::browser::dom::{Node, action, el, given_or, live};
use super::browser::part::{Missing, part};
use super::parts::{self, Kept, heading, row};
use super::state::App;
use super::words;
use crate::plan::KeptNotebook;
use kept::{Desk, Shown};

/// The notebooks, or the one that is shown.
pub fn page(app: App) -> Node {
    let desk = Desk::new(app);
    given_or(
        move || desk.shows(),
        move || part(fetch_notebook, move || notebook(desk), kept::look_at),
        move || live(move || list(desk)),
    )
}

/// The notebook that is shown, with its paper.
#[wasm_split(notebook, fallible, preload(fetch_notebook))]
fn notebook(desk: Desk) -> Result<Node, Missing> {
    desk.begin_anew();
    Effect::new(move |_| desk.weigh(desk.notebook().as_ref()));
    // What is weighed for a page that was left ends.
    on_cleanup(move || desk.weigh(None));
    Ok(live(move || match desk.notebook() {
        None => Node::default(),
        Some(notebook) => {
            let shown = Rc::new(Shown::of(notebook, desk.app.units.get()));
            let page = open(desk, &shown);
            [page, live(move || paper::paper(desk, &shown))].into()
        }
    }))
}

/// The kept notebooks, and the way to a new one.
fn list(desk: Desk) -> Node {
    let app = desk.app;
    let kept = app.store.with(|store| {
        let name = |kept: &KeptNotebook| (kept.id as usize, words::notebook_name(&kept.notebook));
        store.notebooks.iter().map(name).collect()
    });
    Kept {
        id: "notebooks",
        names: [
            words::notebooks(),
            words::notebooks_more(),
            words::your_notebooks(),
        ],
        all: kept,
        open: Box::new(move |id| desk.open(Some(id))),
        begin: (app.plan_is_open() && !app.has_problems())
            .then(|| action("main", words::new_notebook(), move || desk.begin())),
        deleted: desk.deleted.get().map(|_| {
            [
                el("span").child(words::notebook_deleted()),
                action("quiet", words::undo(), move || desk.undelete()).id("notebook-undelete"),
            ]
        }),
    }
    .list()
}

/// A notebook, part by part.
fn open(desk: Desk, shown: &Rc<Shown>) -> Node {
    let tools = row([
        action("main", words::add_reading(), move || desk.add_reading()),
        action("quiet", words::leave_notebook(), move || desk.open(None)),
    ]);
    let (hero, now, over) = (Rc::clone(shown), Rc::clone(shown), Rc::clone(shown));
    el("article")
        .class("notebook trial")
        .attr("aria-labelledby", "notebooks")
        .child(heading(
            "h2",
            "notebooks",
            words::notebook_name(&shown.notebook),
        ))
        .child(tools)
        .child(live(move || forecast::sentence(desk, &hero)))
        .child(
            el("div")
                .class("notebook-bench")
                .child(parts::part(
                    words::readings_heading(),
                    entries::readings(desk, shown),
                ))
                .child(
                    el("div")
                        .class("notebook-forecast")
                        .child(live(move || forecast::forecast(desk, &now))),
                )
                .child(parts::part(
                    words::close(),
                    [
                        entries::cuts(desk, shown),
                        live(move || closing::closing(desk, &over)),
                    ],
                ))
                .child(files::files(desk, shown)),
        )
}
