//! The dates of the plan, a file of them, and heads every week.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, live, several};

use super::details::titled_table;
use crate::advice::{calendar_entries, calendar_file};
use crate::app::browser;
use crate::app::state::app;
use crate::app::words;

/// The calendar and the succession.
pub fn calendar() -> Node {
    let app = app();
    let entries = move || {
        app.tabled_with(|outcome| {
            outcome
                .as_ref()
                .map(|outcome| calendar_entries(&outcome.calendar))
        })
        .unwrap_or_default()
        .into_iter()
        .map(|(kind, first, _)| {
            el("li")
                .child(el("strong").child(words::date(&first.to_string())))
                .child(el("span").child(words::calendar_words(kind).summary))
        })
        .collect::<Node>()
    };
    let file = move || {
        app.plan.with_untracked(|plan| {
            app.tabled_with(|outcome| {
                let (plan, outcome) = (plan.as_ref()?, outcome.as_ref()?);
                let text = calendar_file(plan, &outcome.calendar, words::calendar_words);
                Some(browser::file_address("text/calendar", &text))
            })
        })
    };
    let succession = move || {
        let succession = app.tabled_with(|outcome| {
            outcome
                .as_ref()
                .and_then(|outcome| outcome.succession.clone())
        })?;
        let rows = succession
            .plantings
            .iter()
            .map(|planting| {
                let cells = words::planting(planting);
                el("tr").child(
                    cells
                        .into_iter()
                        .map(|cell| el("td").child(cell))
                        .collect::<Node>(),
                )
            })
            .collect::<Node>();
        let sentence = words::succession(&succession, app.units.get());
        Some(
            several()
                .child(el("h4").child(words::succession_heading()))
                .child(el("p").child(sentence))
                .child(titled_table(
                    &words::succession_heads(),
                    words::succession_heading(),
                    rows,
                )),
        )
    };
    el("section")
        .class("part")
        .id("calendar")
        .child(el("h3").child(words::calendar()))
        .child(live(move || {
            app.sowing_is_past()
                .then(|| el("p").class("care").child(words::sowing_past()))
        }))
        .child(el("ol").class("events").child(live(entries)))
        .child(
            el("p").child(
                el("a")
                    .class("save")
                    .attr("download", words::calendar_file())
                    .attr_live("href", file)
                    .child(words::save_calendar()),
            ),
        )
        .child(live(succession))
}
