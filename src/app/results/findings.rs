//! Checks, cautions and stops, with buttons for what mends them; checks that
//! passed and good practice are folded away.

use leptos::prelude::*;

use super::mends;
use super::working::Working;
use crate::advice::{Finding, Weight};
use crate::app::state::app;
use crate::app::words;

/// The list, the gravest first.
#[component]
pub fn Findings() -> impl IntoView {
    let items = |wanted: &'static [Weight]| {
        move || {
            let app = app();
            app.outcome.with(|outcome| {
                outcome
                    .as_ref()
                    .into_iter()
                    .flat_map(|outcome| &outcome.findings)
                    .filter(|finding| wanted.contains(&finding.weight))
                    .map(item)
                    .collect_view()
            })
        }
    };
    let passed = move || {
        let app = app();
        app.outcome.with(|outcome| {
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
    view! {
        <section class="part">
            <h3 id="findings" tabindex="-1">{words::FINDINGS}</h3>
            <mends::Mended/>
            <ul class="findings">{items(&[Weight::Stop, Weight::Caution])}</ul>
        </section>
        <details class="fold">
            <summary>{passed}</summary>
            <ul class="findings">{items(&[Weight::Sound])}</ul>
        </details>
        <details class="fold">
            <summary>{words::GOOD_PRACTICE}</summary>
            <ul class="findings">{items(&[Weight::Reminder])}</ul>
        </details>
    }
    .into_any()
}

fn item(finding: &Finding) -> AnyView {
    let app = app();
    let class = match finding.weight {
        Weight::Stop => "finding stop",
        Weight::Caution => "finding care",
        Weight::Sound | Weight::Reminder => "finding sound",
    };
    view! {
        <li class=class>
            <strong>{words::weight(finding.weight)}</strong>
            <div>
                <span>{words::finding(finding, app.units.get())}</span>
                {mends::mends(finding)}
                {words::worked(&finding.fact).map(|of| view! { <Working of/> })}
            </div>
        </li>
    }
    .into_any()
}
