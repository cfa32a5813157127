//! What is printed: the planting card, the build sheet or the drilling template.

use leptos::prelude::*;

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
#[component]
pub fn PrintButton() -> impl IntoView {
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
    view! {
        <div class="printing">
            <Show when=move || built.get()>
                <label for="what-to-print">{words::WHAT_TO_PRINT}</label>
                <select
                    id="what-to-print"
                    on:change:target=move |event| {
                        let place = event.target().value().parse().unwrap_or(0);
                        app.paper.set(Paper::ALL.get(place).copied().unwrap_or_default());
                    }
                >
                    {Paper::ALL
                        .into_iter()
                        .map(|paper| view! {
                            <option
                                value=paper.place().to_string()
                                selected=move || app.paper.get() == paper
                            >
                                {words::PAPERS[paper.place()]}
                            </option>
                        })
                        .collect_view()}
                </select>
            </Show>
            <button
                type="button"
                class="main print-button"
                disabled=move || app.has_problems()
                on:click=move |_| browser::print()
            >
                {name}
            </button>
            <p class="hint" role="status">{note}</p>
        </div>
    }
    .into_any()
}

/// Build sheet or template, hidden on the screen; nothing while the card is chosen.
#[component]
pub fn Sheet() -> impl IntoView {
    let app = app();
    move || {
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
                return Some(view! { <p>{words::CARD_WAITS}</p> }.into_any());
            }
            if paper == Paper::Template {
                let layout = outcome.layout.as_ref()?;
                return Some(template::template(layout, words::alarm(outcome)));
            }
            Some(
                view! {
                    <header>
                        <p>{words::NAME}" · "{title}</p>
                        <h2>{name}</h2>
                    </header>
                    {alarm(outcome, units)}
                    {body(outcome, units)}
                }
                .into_any(),
            )
        });
        Some(view! { <article class="build-paper" aria-label=title>{content}</article> }.into_any())
    }
}
