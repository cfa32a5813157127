//! Changes that mend a failing plan, each made by one button and taken back by another.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, button, el, live};

use crate::advice::{Change, Fact, Finding};
use crate::app::state::app;
use crate::app::words;

/// The buttons of a finding.
pub fn mends(finding: &Finding) -> Option<Node> {
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
    let buttons = ways.into_iter().map(way).collect::<Node>();
    Some(el("div").class("mends").child(buttons))
}

/// A button that makes changes, by their name.
pub fn way((changes, name): (Vec<Change>, String)) -> Node {
    let app = app();
    let said = name.clone();
    button("mend")
        .on("click", move || app.mend(&changes, said.clone()))
        .child(name)
}

/// What was changed last, and the way back.
pub fn mended() -> Node {
    let app = app();
    el("div").attr("role", "status").child(live(move || {
        app.mended().map(|mended| {
            el("p")
                .class("notice")
                .child(el("span").child(words::mended(&mended.said)))
                .child(
                    button("quiet")
                        .id("unmend")
                        .on("click", move || app.unmend())
                        .child(words::undo()),
                )
        })
    }))
}
