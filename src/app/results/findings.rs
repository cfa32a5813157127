//! Checks, cautions and stops.

use leptos::prelude::*;

use super::mends;
use super::working::Working;
use crate::advice::{Finding, Weight};
use crate::app::state::app;
use crate::app::words;

/// The list, the gravest first.
#[component]
pub fn Findings() -> impl IntoView {
    let app = app();
    let item = move |finding: Finding| {
        let class = match finding.weight {
            Weight::Stop => "finding stop",
            Weight::Caution => "finding care",
            Weight::Sound | Weight::Reminder => "finding sound",
        };
        view! {
            <li class=class>
                <strong>{words::weight(finding.weight)}</strong>
                <div>
                    <span>{words::finding(&finding, app.units.get())}</span>
                    {mends::mends(&finding.fact)}
                    {words::worked(&finding.fact).map(|of| view! { <Working of/> })}
                </div>
            </li>
        }
    };
    view! {
        <section class="part">
            <h3 id="findings" tabindex="-1">{words::FINDINGS}</h3>
            <mends::Mended/>
            <ul class="findings">
                {move || {
                    app.outcome
                        .with(|outcome| {
                            outcome
                                .as_ref()
                                .map(|outcome| outcome.findings.clone())
                                .unwrap_or_default()
                        })
                        .into_iter()
                        .map(item)
                        .collect_view()
                }}
            </ul>
        </section>
    }
}
