//! The dates of the plan, a file of them, and heads every week.

use leptos::prelude::*;

use super::details::Table;
use crate::advice::{calendar_entries, calendar_file};
use crate::app::browser;
use crate::app::state::app;
use crate::app::words;

/// The calendar and the succession.
#[component]
pub fn Calendar() -> impl IntoView {
    let app = app();
    let entries = move || {
        app.outcome
            .with(|outcome| {
                outcome
                    .as_ref()
                    .map(|outcome| calendar_entries(&outcome.calendar))
            })
            .unwrap_or_default()
            .into_iter()
            .map(|(kind, first, _)| {
                view! {
                    <li>
                        <strong>{words::date(&first.to_string())}</strong>
                        <span>{words::calendar_words(kind).summary}</span>
                    </li>
                }
            })
            .collect_view()
    };
    let file = move || {
        app.plan.with(|plan| {
            app.outcome.with(|outcome| {
                let (plan, outcome) = (plan.as_ref()?, outcome.as_ref()?);
                let text = calendar_file(plan, &outcome.calendar, words::calendar_words);
                Some(browser::file_address("text/calendar", &text))
            })
        })
    };
    let succession = move || {
        let succession = app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .and_then(|outcome| outcome.succession.clone())
        })?;
        let rows = succession
            .plantings
            .iter()
            .map(|planting| {
                let cells = words::planting(planting);
                view! {
                    <tr>{cells.into_iter().map(|cell| view! { <td>{cell}</td> }).collect_view()}</tr>
                }
            })
            .collect_view();
        let sentence = words::succession(&succession, app.units.get());
        Some(
            view! {
                <h4>{words::SUCCESSION}</h4>
                <p>{sentence}</p>
                <Table heads=&words::SUCCESSION_HEADS name=words::SUCCESSION>
                    {rows}
                </Table>
            }
            .into_any(),
        )
    };
    view! {
        <section class="part" id="calendar">
            <h3>{words::CALENDAR}</h3>
            <ol class="events">{entries}</ol>
            <p>
                <a class="save" download=words::CALENDAR_FILE href=file>
                    {words::SAVE_CALENDAR}
                </a>
            </p>
            {succession}
        </section>
    }
    .into_any()
}
