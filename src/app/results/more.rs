//! What unfolds beside the figures, and the papers beside the card: described only while it is
//! unfolded or chosen, by a part of the program that is fetched then.

use leptos::prelude::*;
use wasm_split_helpers::wasm_split;

use super::{details, working};
use crate::app::browser::dom::{Node, el, given};
use crate::app::browser::part::{Missing, part};
use crate::app::building::{self, Paper};
use crate::app::words::Worked;

/// The tables that unfold.
#[derive(Clone, Copy)]
pub enum Table {
    /// Supply and need.
    Nutrients,
    /// The grams.
    Doses,
    /// What a recipe aims at, and misses.
    Targets,
    /// The stocks and their mixtures.
    Stocks,
    /// Elements at the start and the end.
    Elements,
    /// What is dissolved.
    Species,
}

/// What there is more of.
#[derive(Clone, Copy)]
pub enum More {
    /// How a figure is made.
    Working(Worked),
    /// A table, and how it is made.
    Table(Table),
    /// The tank as something to build.
    Building,
    /// A paper that is not the card.
    Paper(Paper),
}

#[wasm_split(more, fallible, preload(fetch_more))]
pub fn more(what: More) -> Result<Node, Missing> {
    Ok(match what {
        More::Working(of) => working::parts(of),
        More::Building => building::body_now(),
        More::Paper(paper) => building::paper(paper),
        More::Table(table) => details::contents(table),
    })
}

/// A fold whose contents are described while it is open.
pub fn fold(
    class: &'static str,
    summary: impl Into<Node>,
    contents: impl Fn() -> Node + 'static,
) -> Node {
    let open = RwSignal::new(false);
    el("details")
        .class(class)
        .on_toggle(move |now| open.set(now))
        .child(el("summary").child(summary))
        .child(given(move || open.get(), contents))
}

/// What there is more of something, once it is here.
pub fn shown(what: More) -> Node {
    part(fetch_more, move || more(what), || ())
}

/// A fold with a table.
pub fn fold_table(summary: &'static str, table: Table) -> Node {
    fold("fold", summary, move || shown(More::Table(table)))
}
