//! The end of a crop: what it measured, and its correction for the next plan.

use leptos::prelude::*;

use super::kept::{Desk, Shown, changes, next_plan};
use crate::advice::notebook::NotebookOutcome;
use crate::app::browser;
use crate::app::browser::dom::{Node, action, button, el};
use crate::app::parts::{paragraphs, row};
use crate::app::results::{CHECKS, told};
use crate::app::words;

/// Closing, and what it offers.
pub fn closing(desk: Desk, shown: &Shown) -> Node {
    let closed = shown.notebook.closed;
    let close = action(
        if closed { "quiet" } else { "main" },
        if closed {
            words::reopen_crop()
        } else {
            words::close_crop()
        },
        move || desk.edit(|notebook| notebook.closed = !notebook.closed),
    )
    .id("notebook-close");
    let known = desk.known();
    let sound = shown.problems.is_empty() && !known.working;
    let after = known.after.filter(|_| closed && sound);
    [
        (!closed)
            .then(|| el("p").class("hint").child(words::close_more()))
            .into(),
        after.as_ref().map(|after| measured(after, shown)).into(),
        after
            .filter(|after| after.readings > 0)
            .map(|after| offer(desk, shown, &after))
            .into(),
        row(close),
    ]
    .into()
}

/// Litres for a kilogram, and what was taught.
pub fn measured(after: &NotebookOutcome, shown: &Shown) -> Node {
    let units = shown.units;
    let figures: Node = match &after.closing {
        None => el("p").child(words::not_measured()),
        Some(closing) => [
            el("p")
                .class("figure")
                .child(words::measured_figure(closing, units)),
            el("p").child(words::measured_more(closing, units)),
        ]
        .into(),
    };
    let taught = (after.readings > 0).then(|| {
        let lines = after.learnt.iter().map(words::learnt);
        [el("h4").child(words::taught()), paragraphs(lines.collect())]
    });
    [figures, taught.map(Node::from).into()].into()
}

/// The correction for the open plan, or for a new one where none is open; and the way back.
fn offer(desk: Desk, shown: &Shown, after: &NotebookOutcome) -> Node {
    let app = desk.app;
    if let Some(mended) = app.mended() {
        return el("div").attr("role", "status").child(
            el("p")
                .class("notice")
                .child(el("span").child(told(&mended)))
                .child(
                    action("quiet", words::undo(), move || {
                        app.unmend();
                        browser::focus_soon("notebook-correct");
                    })
                    .id("notebook-uncorrect"),
                ),
        );
    }
    let changes = changes(after);
    let name = app
        .plan
        .with(|plan| plan.as_ref().map(|plan| plan.name.clone()));
    let Some(name) = name else {
        let plan = next_plan(&shown.notebook, after);
        return action("main", words::plan_with_it(), move || app.add(plan.clone()))
            .id("notebook-correct");
    };
    button("mend")
        .id("notebook-correct")
        .on("click", move || {
            app.mend(&changes, CHECKS);
            browser::focus_soon("notebook-uncorrect");
        })
        .child(words::correct(&name))
}
