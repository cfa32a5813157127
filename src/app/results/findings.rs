//! Checks, cautions and stops, with buttons for what mends them; checks that
//! passed and good practice are folded away.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, live, several};

use super::mends;
use super::more::fold;
use super::working::working;
use crate::advice::{Finding, Weight};
use crate::app::state::app;
use crate::app::words;

/// The list, the gravest first.
pub fn findings() -> Node {
    let items = |wanted: &'static [Weight]| {
        move || {
            let app = app();
            app.listed_with(|outcome| {
                outcome
                    .as_ref()
                    .into_iter()
                    .flat_map(|outcome| &outcome.findings)
                    .filter(|finding| wanted.contains(&finding.weight))
                    .map(item)
                    .collect::<Node>()
            })
        }
    };
    let passed = move || {
        let app = app();
        app.listed_with(|outcome| {
            let all = outcome
                .as_ref()
                .into_iter()
                .flat_map(|outcome| &outcome.findings);
            words::passed(
                all.filter(|finding| finding.weight == Weight::Sound)
                    .count(),
            )
        })
    };
    several()
        .child(
            el("section")
                .class("part")
                .child(
                    el("h3")
                        .id(mends::CHECKS)
                        .attr("tabindex", "-1")
                        .child(words::findings()),
                )
                .child(mends::mended(mends::CHECKS))
                .child(
                    el("ul")
                        .class("findings")
                        .child(live(items(&[Weight::Stop, Weight::Caution]))),
                ),
        )
        .child(fold("fold", live(passed), move || {
            el("ul")
                .class("findings")
                .child(live(items(&[Weight::Sound])))
        }))
        .child(fold("fold", words::good_practice(), move || {
            el("ul")
                .class("findings")
                .child(live(items(&[Weight::Reminder])))
        }))
}

fn item(finding: &Finding) -> Node {
    let app = app();
    let class = match finding.weight {
        Weight::Stop => "finding stop",
        Weight::Caution => "finding care",
        Weight::Sound | Weight::Reminder => "finding sound",
    };
    el("li")
        .class(class)
        .child(el("strong").child(words::weight(finding)))
        .child(
            el("div")
                .child(el("span").child(words::finding(finding, app.units.get())))
                .child(mends::mends(finding))
                .child(words::worked(&finding.fact).map(working)),
        )
}
