//! What is printed: the planting card, what a group takes along, the build sheet or the drilling
//! template.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, button, el, live, several};

use super::{alarm, body, template};
use crate::app::browser;
use crate::app::handout;
use crate::app::results::{More, fetch_more, shown};
use crate::app::state::{App, app};
use crate::app::words;
use crate::plan::UnitSystem;

/// What is printed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Paper {
    /// The planting card.
    #[default]
    Card,
    /// Small cards for a class.
    Cards,
    /// What to get and mix for all.
    Group,
    /// What is read week by week.
    Record,
    /// The build sheet.
    Sheet,
    /// The drilling template.
    Template,
}

impl Paper {
    const ALL: [Self; 6] = [
        Self::Card,
        Self::Cards,
        Self::Group,
        Self::Record,
        Self::Sheet,
        Self::Template,
    ];

    fn place(self) -> usize {
        self as usize
    }

    /// Whether there is such a paper only of a tank.
    fn of_tank(self) -> bool {
        matches!(self, Self::Sheet | Self::Template)
    }
}

impl App {
    /// What is printed of the present plan: a tank has papers that others have not.
    fn printed(self) -> Paper {
        let built = self.outcome.with(|outcome| {
            outcome
                .as_ref()
                .is_some_and(|outcome| outcome.build.is_some())
        });
        let paper = self.paper.get();
        if built || !paper.of_tank() {
            paper
        } else {
            Paper::Card
        }
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
        Paper::Card => words::print(),
        other => words::print_other()[other.place() - 1],
    };
    // Nothing is printed half: a paper whose part of the program is still to come waits for it.
    let on_its_way = RwSignal::new(false);
    let choose = move |paper: Paper| {
        app.paper.set(paper);
        on_its_way.set(paper != Paper::Card);
        if paper != Paper::Card {
            leptos::task::spawn_local(async move {
                let came = fetch_more().await.is_ok();
                on_its_way.try_set(!came);
            });
        }
    };
    let note = move || {
        if on_its_way.get() {
            return Some(words::fetching().to_owned());
        }
        (app.printed() == Paper::Template).then(|| {
            app.outcome.with(|outcome| {
                let layout = outcome.as_ref().and_then(|outcome| outcome.layout.as_ref());
                words::template_note(layout.map_or(0, template::pages))
            })
        })
    };
    el("div")
        .class("printing")
        .child(
            el("label")
                .attr("for", "what-to-print")
                .child(words::what_to_print()),
        )
        .child(
            el("select")
                .id("what-to-print")
                .on_value("change", move |value| {
                    let place = value.parse().unwrap_or(0);
                    choose(Paper::ALL.get(place).copied().unwrap_or_default());
                })
                .child(live(move || {
                    Paper::ALL
                        .into_iter()
                        .filter(|paper| built.get() || !paper.of_tank())
                        .map(|paper| {
                            el("option")
                                .attr("value", paper.place().to_string())
                                .attr_live("selected", move || app.printed() == paper)
                                .child(words::papers()[paper.place()])
                        })
                        .collect::<Node>()
                })),
        )
        .child(
            button("main print-button")
                .attr_live("disabled", move || app.has_problems() || on_its_way.get())
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

/// Whatever paper is chosen beside the card, hidden on the screen; nothing while the card is chosen.
pub fn sheet() -> Node {
    let app = app();
    live(move || match app.printed() {
        Paper::Card => Node::default(),
        paper => el("article")
            .class("build-paper")
            .attr("aria-label", words::papers()[paper.place()])
            .child(shown(More::Paper(paper))),
    })
}

/// What stands on such a paper.
pub fn paper(paper: Paper) -> Node {
    let app = app();
    live(move || {
        let units: UnitSystem = app.units.get();
        let name = app.plan.with(|plan| {
            plan.as_ref()
                .map(|plan| words::or_unnamed(&plan.name))
                .unwrap_or_default()
        });
        let named = name.clone();
        let title = words::papers()[paper.place()];
        app.tabled_with(|outcome| {
            let outcome = outcome.as_ref()?;
            if app.has_problems() {
                return Some(el("p").child(words::card_waits()));
            }
            if paper == Paper::Template {
                let layout = outcome.layout.as_ref()?;
                return Some(template::template(layout, words::alarm(outcome), units));
            }
            Some(
                several()
                    .child(
                        el("header")
                            .child(el("p").child(words::name()).child(" · ").child(title))
                            .child(el("h2").child(name)),
                    )
                    .child(alarm(outcome, units))
                    .child(el("div").class("handout").child(match paper {
                        Paper::Cards => handout::cards(outcome, units, &named),
                        Paper::Group => handout::group(outcome, units),
                        Paper::Record => handout::record(outcome, units),
                        _ => body(outcome, units).into(),
                    })),
            )
        })
    })
}
