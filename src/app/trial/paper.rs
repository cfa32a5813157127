//! What is printed of a trial: labels, layout with a sheet to fill in, or the report.

use leptos::prelude::*;

use super::kept::{Bench, Shown, is_filled};
use super::{layout, result};
use crate::app::browser;
use crate::app::browser::dom::{Node, button, el};
use crate::app::parts::{choice as list, items, part, row, table};
use crate::app::words;
use crate::plan::Dimension;
use crate::trial::TrialOutcome;

/// The report's place in the list of papers, which is chosen at first.
const REPORT: usize = 2;

impl Bench {
    fn printed(self) -> usize {
        self.paper.get().unwrap_or(REPORT).min(REPORT)
    }
}

/// The choice of a paper, and the button.
pub fn choice(bench: Bench) -> Node {
    let options = words::trial_papers().into_iter().enumerate();
    let options = options.map(|(place, name)| (place.to_string(), name.to_owned()));
    let chosen = bench.printed();
    let papers = list(options.collect(), chosen.to_string(), move |place| {
        bench.paper.set(place.parse().ok());
    })
    .id("trial-paper");
    part(
        words::trial_print(),
        row([
            el("label")
                .attr("for", "trial-paper")
                .child(words::what_to_print()),
            papers,
            button("main")
                .id("trial-print")
                .on("click", browser::print)
                .child(words::trial_prints()[chosen]),
        ]),
    )
}

/// The paper that is chosen, hidden on the screen.
pub fn paper(bench: Bench, shown: &Shown) -> Node {
    let chosen = bench.printed();
    let title = words::trial_papers()[chosen];
    let Some(outcome) = &shown.outcome else {
        return Node::default();
    };
    let content = match chosen {
        0 => layout::labels(shown, outcome),
        1 => [layout::bench(outcome), sheet(shown, outcome, "")].into(),
        _ => report(shown, outcome),
    };
    let head = el("header")
        .child(el("p").child(format!("{} · {title}", words::name())))
        .child(el("h2").child(words::trial_or_unnamed(&shown.trial.name)));
    el("article")
        .class("trial-paper")
        .attr("aria-label", title)
        .child((chosen > 0).then_some(head))
        .child(content)
}

/// The records so far; `missing` stands where a head is, in a container of which something was recorded.
fn sheet(shown: &Shown, outcome: &TrialOutcome, missing: &'static str) -> Node {
    let units = shown.units;
    let mut heads = vec![
        words::container_heading().to_owned(),
        words::with_unit(words::used(), Dimension::Volume, units),
    ];
    heads.extend(
        (1..=shown.columns)
            .map(|head| words::with_unit(&words::head_number(head), Dimension::Mass, units)),
    );
    let cell = |entry: &crate::plan::Entry, dimension: Dimension| match entry {
        crate::plan::Entry::Number(value) => words::number(dimension.text(*value, units)),
        crate::plan::Entry::Text(text) => text.clone(),
    };
    let lines = outcome.units.iter().zip(&shown.trial.records);
    let rows = lines.map(|(unit, record)| {
        let name = outcome.treatments.get(unit.treatment);
        let name = words::variant_of(unit.treatment, name.map_or("", |it| it.name.as_str()));
        let mut row = vec![
            format!("{} {name}", unit.unit),
            cell(&record.water_l, Dimension::Volume),
        ];
        row.extend(
            record
                .heads_g
                .iter()
                .map(|head| match cell(head, Dimension::Mass) {
                    text if text.is_empty() && is_filled(record) => missing.to_owned(),
                    text => text,
                }),
        );
        row
    });
    el("div")
        .class("sheet-to-fill")
        .child(table(&heads, rows.collect()))
}

fn report(shown: &Shown, outcome: &TrialOutcome) -> Node {
    let all = shown.trial.treatments.iter().enumerate();
    let variants = all.map(|(place, it)| words::variant_line(place, it, shown.units));
    [
        part(
            words::compared(),
            el("ul").class("plain").child(items(variants.collect())),
        ),
        part(words::bench(), layout::bench(outcome)),
        layout::needed(outcome),
        part(
            words::said(),
            if !shown.problems.is_empty() {
                el("p").child(words::result_waits())
            } else if outcome.reports.is_empty() {
                el("p").child(words::nothing_yet())
            } else {
                result::reports(outcome, shown.units, false)
            },
        ),
        part(
            words::record_table(),
            sheet(shown, outcome, words::missing()),
        ),
    ]
    .into()
}
