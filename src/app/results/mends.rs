//! Changes that mend a failing plan, each made by one button and taken back by another.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, button, el, live, several};

use crate::advice::{Change, Fact, Finding};
use crate::app::state::{Latest, Mended, app};
use crate::app::words;
use crate::plan::UnitSystem;

/// The id of the heading of the checks.
pub const CHECKS: &str = "findings";
/// The id of the way to them, under the large figures.
pub const CAUTIONS: &str = "cautions";

/// Changes, by their name.
type Way = (Vec<Change>, String);

/// The changes that a finding offers.
fn ways(finding: &Finding, units: UnitSystem) -> Vec<Way> {
    match &finding.fact {
        Fact::ContactLost { mends, .. } | Fact::RootsHang { mends, .. } => mends
            .iter()
            .map(|mend| (mend.changes.clone(), words::mend(mend, units)))
            .collect(),
        _ => finding
            .mends
            .iter()
            .map(|change| (vec![change.clone()], words::change_button(change, units)))
            .collect(),
    }
}

/// The buttons of a finding.
pub fn mends(finding: &Finding) -> Option<Node> {
    buttons(ways(finding, app().units.get()), CHECKS)
}

/// The buttons of several findings: the first way of each, one that mends two of them once.
pub fn first_mends(findings: &[&Finding]) -> Option<Node> {
    let units = app().units.get();
    let mut first: Vec<Way> = Vec::new();
    for finding in findings {
        let Some(way) = ways(finding, units).into_iter().next() else {
            continue;
        };
        if first.iter().all(|known| known.1 != way.1) {
            first.push(way);
        }
    }
    let buttons = buttons(first, CAUTIONS)?;
    Some(
        several()
            .child(el("p").child(words::mends_help()))
            .child(buttons),
    )
}

fn buttons(ways: Vec<Way>, under: &'static str) -> Option<Node> {
    if ways.is_empty() {
        return None;
    }
    let buttons = ways.into_iter().map(|it| way(it, under)).collect::<Node>();
    Some(el("div").class("mends").child(buttons))
}

/// A button that makes changes, by their name, under a heading that stays.
pub fn way((changes, name): Way, under: &'static str) -> Node {
    let app = app();
    button("mend")
        .on("click", move || app.mend(&changes, under))
        .child(name)
}

/// A change that was made, with the figures as they are now.
pub fn told(mended: &Mended) -> String {
    let app = app();
    let units = app.units.get();
    let figures = |outcome: &Latest| {
        let figures = outcome.as_ref().map(|it| words::glance(it, units));
        figures.unwrap_or_default()
    };
    let changes = words::changes(&mended.changes, units);
    words::mended(&changes, &app.listed_with(figures))
}

/// What was changed last under a heading, and the way back.
pub fn mended(under: &'static str) -> Node {
    let app = app();
    el("div").attr("role", "status").child(live(move || {
        let here = app.mended().filter(|mended| mended.under == under);
        here.map(|mended| {
            el("p")
                .class("notice")
                .child(el("span").child(told(&mended)))
                .child(
                    button("quiet")
                        .id("unmend")
                        .on("click", move || app.unmend())
                        .child(words::undo()),
                )
        })
    }))
}
