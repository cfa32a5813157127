//! Trials: variants of a plan laid out by chance, recorded, and judged. A trial that is shown stands
//! alone on the page.

mod design;
mod kept;
mod layout;
mod paper;
mod places;
mod plots;
mod record;
mod result;

use std::rc::Rc;

use leptos::prelude::*;
use wasm_split_helpers::wasm_split;

use super::browser;
use super::browser::dom::{Node, action, el, given_or, live};
use super::browser::part::{Missing, part};
use super::parts::{Kept, heading, row};
use super::state::App;
use super::words;
use crate::plan::KeptTrial;
use kept::{Bench, Shown};

/// The trials, or the one that is shown.
pub fn trials(app: App) -> Node {
    let bench = Bench::new(app);
    given_or(
        move || bench.shows(),
        move || part(fetch_trial, move || trial(bench), kept::look_at),
        move || live(move || list(bench)),
    )
}

/// The trial that is shown, with its paper.
#[wasm_split(trial, fallible, preload(fetch_trial))]
fn trial(bench: Bench) -> Result<Node, Missing> {
    Ok(live(move || match bench.trial() {
        None => Node::default(),
        Some(trial) => {
            let shown = Rc::new(Shown::of(trial, bench.app.units.get()));
            let page = open(bench, &shown);
            [page, live(move || paper::paper(bench, &shown))].into()
        }
    }))
}

/// The kept trials, and the way to a new one.
fn list(bench: Bench) -> Node {
    let app = bench.app;
    let kept = app.store.with(|store| {
        let name = |kept: &KeptTrial| (kept.id as usize, words::trial_or_unnamed(&kept.trial.name));
        store.trials.iter().map(name).collect()
    });
    Kept {
        id: "trials",
        names: [words::trials(), words::trials_more(), words::your_trials()],
        all: kept,
        open: Box::new(move |id| bench.open(Some(id))),
        begin: app
            .plan_is_open()
            .then(|| action("main", words::new_trial(), move || bench.begin())),
        deleted: bench.deleted.get().map(|_| {
            [
                el("span").child(words::trial_deleted()),
                action("quiet", words::undo(), move || bench.undelete()).id("trial-undelete"),
            ]
        }),
    }
    .list()
}

/// A trial, part by part.
fn open(bench: Bench, shown: &Shown) -> Node {
    let (name, json) = (shown.trial.name.clone(), shown.trial.to_json());
    let title = words::trial_or_unnamed(&name);
    let tools = row([
        action("quiet", words::leave_trial(), move || bench.open(None)),
        action("quiet", words::save_trial(), move || {
            browser::save_file(words::trial_file(), &json);
        }),
        action("quiet", words::delete_trial(), move || bench.delete()),
    ]);
    let box_of_name = el("label")
        .class("plan-name")
        .child(el("span").child(words::trial_name()))
        .child(
            el("input")
                .id("trial-name")
                .attr("type", "text")
                .attr("autocomplete", "off")
                .attr("maxlength", "80")
                .on_value("input", move |name| bench.edit(|trial| trial.name = name))
                .value_live(move || name.clone()),
        );
    el("article")
        .class("trial")
        .attr("aria-labelledby", "trials")
        .child(heading("h2", "trials", title))
        .child(tools)
        .child(box_of_name)
        .child(design::design(bench, shown))
        .child(shown.outcome.as_ref().map(|outcome| {
            [
                layout::drawing(outcome),
                layout::expected(outcome, shown.units),
                layout::needed(outcome),
                record::record(bench, shown, outcome),
                result::result(shown, outcome),
                paper::choice(bench),
            ]
        }))
}
