//! How sure the plan is: many seasons of it, lived through between the reader's touches, and what
//! would make it sure. Everything runs in slices short enough that no key press waits for one.

use std::sync::Arc;

use leptos::prelude::*;
use wasm_split_helpers::wasm_split;

use super::browser;
use super::browser::dom::{Node, el, given, live, several};
use super::browser::part::{Missing, part};
use super::results::{CHECKS, titled_table, way};
use super::state::{App, Latest, app};
use super::words;
use crate::advice::Change as FieldChange;
use crate::advice::chances::{
    Aim, Chances, ChancesOutcome, Change, Changes, ChangesOutcome, SEASONS,
};
use crate::plan::{Plan, UnitSystem};

/// What is known so far.
#[derive(Clone, Default)]
struct Known {
    done: usize,
    /// Whether changes are still looked for.
    looking: bool,
    /// Whether this is of an earlier state of the plan.
    stale: bool,
    /// Whether the models do not reach so far.
    beyond: bool,
    chances: Option<Arc<ChancesOutcome>>,
    changes: Option<Arc<ChangesOutcome>>,
}

/// The seasons that are being lived through.
#[derive(Clone, Copy)]
struct Run {
    app: App,
    /// Counts the states of the plan: what belongs to an earlier one stops by itself.
    round: StoredValue<u32>,
    known: RwSignal<Known>,
}

/// The fold with the chances. Nothing is worked out, nor fetched, while it is closed.
pub fn chances() -> Node {
    let app = app();
    let open = RwSignal::new(false);
    // What became known stays when the fold is closed.
    let opened = Memo::new(move |before: Option<&bool>| open.get() || before == Some(&true));
    given(
        move || app.outcome.with(Latest::is_some),
        move || {
            el("details")
                .class("fold chances")
                .id("chances")
                .on_toggle(move |now| open.set(now))
                .child(el("summary").child(words::chances()))
                .child(el("p").class("hint").child(words::chances_more(SEASONS)))
                .child(given(
                    move || opened.get(),
                    move || part(fetch_chances, move || seasons(open), || ()),
                ))
        },
    )
}

/// What the fold holds.
#[wasm_split(chances, fallible, preload(fetch_chances))]
fn seasons(open: RwSignal<bool>) -> Result<Node, Missing> {
    let app = app();
    let run = Run {
        app,
        round: StoredValue::new(0),
        known: RwSignal::new(Known::default()),
    };
    Effect::new(move |_| {
        let plan = app.plan.get();
        let wanted = open.get() && !app.has_problems();
        run.begin(plan.filter(|_| wanted));
    });
    Ok(several()
        .child(
            el("p")
                .class("hint")
                .attr("role", "status")
                .child(live(move || run.progress())),
        )
        .child(
            el("div")
                .class_live("stale", move || run.known.with(|known| known.stale))
                .child(live(move || run.result()))
                .child(live(move || run.offers())),
        )
        .child(
            el("details")
                .class("assumed")
                .child(el("summary").child(words::chances_assumed()))
                .child(live(move || {
                    words::spreads_text(app.units.get()).map(|line| el("p").child(line))
                })),
        ))
}

impl Run {
    /// Begins anew with another state of the plan; what runs for an earlier one ends.
    fn begin(self, plan: Option<Plan>) {
        self.round
            .update_value(|round| *round = round.wrapping_add(1));
        let Some(plan) = plan else {
            // Nothing is under way while a field is mended or the fold is closed.
            return self.known.update(|known| known.looking = false);
        };
        let round = self.round.get_value();
        self.known.update(|known| {
            known.stale = true;
            known.done = 0;
            known.looking = true;
            known.beyond = false;
        });
        set_timeout(
            move || {
                if self.goes_on(round) {
                    match Chances::new(&plan, SEASONS) {
                        Ok(chances) => self.live_on(round, Box::new(chances)),
                        Err(_) => self.give_up(),
                    }
                }
            },
            browser::STILL,
        );
    }

    /// Whether a round is still the present one; none is once the page shows another plan.
    fn goes_on(self, round: u32) -> bool {
        self.round.try_get_value() == Some(round)
    }

    fn give_up(self) {
        self.known.set(Known {
            beyond: true,
            ..Known::default()
        });
    }

    /// Lives through seasons for one slice.
    fn live_on(self, round: u32, mut chances: Box<Chances>) {
        if !self.goes_on(round) {
            return;
        }
        let done = match browser::for_a_slice(|| {
            let lived = chances.advance(1);
            lived.map(|all| all.then_some(())).transpose()
        }) {
            Some(Err(_)) => return self.give_up(),
            end => end.is_some(),
        };
        if done {
            let outcome = Arc::new(chances.outcome());
            self.known.set(Known {
                done: SEASONS,
                looking: true,
                chances: Some(outcome),
                ..Known::default()
            });
            browser::next(move || self.look_on(round, Box::new(chances.changes())));
        } else {
            self.known.update(|known| known.done = chances.progress().0);
            browser::next(move || self.live_on(round, chances));
        }
    }

    /// Looks for changes for one slice.
    fn look_on(self, round: u32, mut changes: Box<Changes>) {
        if !self.goes_on(round) {
            return;
        }
        let done = browser::for_a_slice(|| changes.advance(1).then_some(())).is_some();
        if done {
            let found = Arc::new(changes.outcome().clone());
            self.known.update(|known| {
                known.looking = false;
                known.changes = Some(found);
            });
        } else {
            browser::next(move || self.look_on(round, changes));
        }
    }

    fn progress(self) -> String {
        self.known.with(|known| {
            if known.beyond {
                words::chances_beyond().to_owned()
            } else if !known.looking {
                String::new()
            } else if known.done < SEASONS {
                words::seasons_so_far(known.done / 100 * 100, SEASONS)
            } else {
                words::looking().to_owned()
            }
        })
    }

    fn result(self) -> Option<Node> {
        let units = self.app.units.get();
        let chances = self.known.with(|known| known.chances.clone())?;
        let sentences = words::chances_sentences(&chances);
        let rows = words::chances_rows(&chances, units)
            .into_iter()
            .map(|(name, cells)| {
                el("tr")
                    .child(el("th").attr("scope", "row").child(name))
                    .child(cells.map(|cell| el("td").child(cell)))
            });
        Some(
            several()
                .child(
                    sentences
                        .into_iter()
                        .map(|line| el("p").class("chance").child(line))
                        .collect::<Node>(),
                )
                .child(titled_table(
                    &words::chances_heads(),
                    words::chances(),
                    rows.collect::<Node>(),
                )),
        )
    }

    fn offers(self) -> Option<Node> {
        let units = self.app.units.get();
        let (chances, changes) = self
            .known
            .with(|known| Some((known.chances.clone()?, known.changes.clone()?)))?;
        let of = |aim: Aim| {
            let offers: Vec<Node> = changes
                .offered
                .iter()
                .filter(|change| change.aim == aim)
                .map(|change| offer(change, units))
                .collect();
            let none = offers.is_empty();
            several()
                .child(el("h3").child(words::offers(aim)))
                .child(none.then(|| el("p").child(words::no_offer(aim, &chances))))
                .child(el("div").class("mends").child(offers))
        };
        Some(of(Aim::Lasts).child(of(Aim::Feeds)))
    }
}

/// The button of a change that is offered.
fn offer(change: &Change, units: UnitSystem) -> Node {
    let edits: Vec<FieldChange> = change
        .edits
        .iter()
        .map(|edit| FieldChange {
            field: edit.field,
            value: edit.entry.clone(),
            unit: None,
        })
        .collect();
    let name = words::changes(&edits, units);
    way((edits, name), CHECKS)
}
