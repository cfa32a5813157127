//! Checks, cautions and stops, with buttons for what mends them; good practice is folded away.

use leptos::prelude::*;

use super::mends;
use super::working::Working;
use crate::advice::{Finding, Weight};
use crate::app::state::app;
use crate::app::words;

/// The list, the gravest first.
#[component]
pub fn Findings() -> impl IntoView {
    let items = |reminders: bool| {
        move || {
            let app = app();
            app.outcome
                .with(|outcome| {
                    outcome
                        .as_ref()
                        .map(|outcome| outcome.findings.clone())
                        .unwrap_or_default()
                })
                .into_iter()
                .filter(|finding| (finding.weight == Weight::Reminder) == reminders)
                .map(|finding| item(&finding))
                .collect_view()
        }
    };
    view! {
        <section class="part">
            <h3 id="findings" tabindex="-1">{words::FINDINGS}</h3>
            <mends::Mended/>
            <ul class="findings">{items(false)}</ul>
        </section>
        <details class="fold">
            <summary>{words::GOOD_PRACTICE}</summary>
            <ul class="findings">{items(true)}</ul>
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
                {mends::mends(&finding.fact)}
                {words::worked(&finding.fact).map(|of| view! { <Working of/> })}
            </div>
        </li>
    }
    .into_any()
}
