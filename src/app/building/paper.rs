//! What is printed: the planting card, the build sheet or the drilling template.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, given, live, several};

use super::{alarm, body, template};
use crate::app::browser;
use crate::app::state::{App, app};
use crate::app::words;
use crate::plan::UnitSystem;

/// What is printed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Paper {
    /// The planting card.
    #[default]
    Card,
    /// The build sheet.
    Sheet,
    /// The drilling template.
    Template,
}

impl Paper {
    const ALL: [Self; 3] = [Self::Card, Self::Sheet, Self::Template];

    fn place(self) -> usize {
        self as usize
    }
}

impl App {
    /// What is printed of the present plan: only of a tank there is more than the card.
    fn printed(self) -> Paper {
        let built = self.outcome.with(|outcome| {
            outcome
                .as_ref()
                .is_some_and(|outcome| outcome.build.is_some())
        });
        if built { self.paper.get() } else { Paper::Card }
    }
}

/// The choice, where there is one, and the button.
pub fn print_button() -> Node {
    let app = app();
    let built = Memo::new(move |_| {
        app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .is_some_and(|outcome| outcome.build.is_some())
        })
    });
    let name = move || match app.printed() {
        Paper::Card => words::PRINT,
        Paper::Sheet => words::PRINT_OTHER[0],
        Paper::Template => words::PRINT_OTHER[1],
    };
    let note = move || {
        (app.printed() == Paper::Template).then(|| {
            app.outcome.with(|outcome| {
                let layout = outcome.as_ref().and_then(|outcome| outcome.layout.as_ref());
                words::template_note(layout.map_or(0, template::pages))
            })
        })
    };
    el("div")
        .class("printing")
        .child(given(
            move || built.get(),
            move || {
                several()
                    .child(
                        el("label")
                            .attr("for", "what-to-print")
                            .child(words::WHAT_TO_PRINT),
                    )
                    .child(
                        el("select")
                            .id("what-to-print")
                            .on_value("change", move |value| {
                                let place = value.parse().unwrap_or(0);
                                app.paper
                                    .set(Paper::ALL.get(place).copied().unwrap_or_default());
                            })
                            .child(
                                Paper::ALL
                                    .into_iter()
                                    .map(|paper| {
                                        el("option")
                                            .attr("value", paper.place().to_string())
                                            .attr_live("selected", move || app.paper.get() == paper)
                                            .child(words::PAPERS[paper.place()])
                                    })
                                    .collect::<Node>(),
                            ),
                    )
            },
        ))
        .child(
            el("button")
                .attr("type", "button")
                .class("main print-button")
                .attr_live("disabled", move || app.has_problems())
                .on("click", browser::print)
                .child(live(name)),
        )
        .child(
            el("p")
                .class("hint")
                .attr("role", "status")
                .child(live(note)),
        )
}

/// Build sheet or template, hidden on the screen; nothing while the card is chosen.
pub fn sheet() -> Node {
    let app = app();
    live(move || {
        let paper = app.printed();
        if paper == Paper::Card {
            return None;
        }
        let units: UnitSystem = app.units.get();
        let name = app.plan.with(|plan| {
            plan.as_ref()
                .map(|plan| words::or_unnamed(&plan.name))
                .unwrap_or_default()
        });
        let title = words::PAPERS[paper.place()];
        let content = app.outcome.with(|outcome| {
            let outcome = outcome.as_ref()?;
            if app.has_problems() {
                return Some(el("p").child(words::CARD_WAITS));
            }
            if paper == Paper::Template {
                let layout = outcome.layout.as_ref()?;
                return Some(template::template(layout, words::alarm(outcome)));
            }
            Some(
                several()
                    .child(
                        el("header")
                            .child(el("p").child(words::NAME).child(" · ").child(title))
                            .child(el("h2").child(name)),
                    )
                    .child(alarm(outcome, units))
                    .child(body(outcome, units)),
            )
        });
        Some(
            el("article")
                .class("build-paper")
                .attr("aria-label", title)
                .child(content),
        )
    })
}
