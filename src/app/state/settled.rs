//! What comes a frame after an edit, so that a key press is answered first, with the four figures and
//! what is wrong: the section and the kept text, then curves and findings, then tables and the calendar,
//! each a frame later, so that none holds the next key press up. And what comes once the grower rests: the
//! card, which nobody sees before it is printed, and the link with its code.

use std::cell::Cell;
use std::rc::Rc;

use leptos::prelude::*;

use super::{App, Latest};
use crate::app::browser;
use crate::app::words;

impl App {
    /// Keeps the plans whenever they change, where the browser lets it.
    pub(super) fn keep_from_now_on(self) {
        let asked = Cell::new(false);
        let write = move || {
            if self.elsewhere.get_untracked() {
                return;
            }
            let written = self
                .store
                .with_untracked(|store| browser::keep(store, false));
            self.note(written);
            let any = self.store.with_untracked(|store| !store.plans.is_empty());
            if self.keeps.get_untracked() && any && !asked.replace(true) {
                browser::ask_to_persist();
            }
        };
        at_leisure(1, move || self.store.track(), write, false);
    }

    /// Lets all else follow the plan.
    pub(super) fn settle_from_now_on(self) {
        let follow = move || {
            self.engine.track();
            self.plan.track();
            self.outcome.track();
            self.language.track();
        };
        let catch_up = move |behind: RwSignal<Latest>| {
            let outcome = self.outcome.get_untracked();
            if behind.with_untracked(|behind| *behind != outcome) {
                behind.set(outcome);
            }
        };
        let rest = move || {
            catch_up(self.rested);
            let address = self.address_now();
            if self.address.with_untracked(|known| *known != address) {
                self.address.set(address);
            }
        };
        // What a plan that was left open comes to is known before anything follows it.
        at_leisure(1, follow, move || catch_up(self.settled), true);
        at_leisure(2, follow, move || catch_up(self.listed), true);
        at_leisure(3, follow, move || catch_up(self.tabled), true);
        at_rest(follow, rest);
    }

    /// The open plan's link with the page's address before it, as the plan is at this moment.
    pub fn address_now(self) -> Option<String> {
        let engine = self.engine.get_untracked()?;
        let link = self
            .plan
            .with_untracked(|plan| (engine.link)(plan.as_ref()?))?;
        Some(format!("{}#{link}{}", browser::page_address(), spoken()))
    }

    /// The outcome as it is once the grower rests.
    pub fn rested_with<T>(self, read: impl FnOnce(&Latest) -> T) -> T {
        self.rested.with(read)
    }

    /// The outcome as tables and the calendar have it, three frames behind the figures.
    pub fn tabled_with<T>(self, read: impl FnOnce(&Latest) -> T) -> T {
        self.tabled.with(read)
    }

    /// The outcome as curves and findings have it, two frames behind the figures.
    pub fn listed_with<T>(self, read: impl FnOnce(&Latest) -> T) -> T {
        self.listed.with(read)
    }

    /// The outcome as the drawing has it, a frame behind the figures.
    pub fn settled_with<T>(self, read: impl FnOnce(&Latest) -> T) -> T {
        self.settled.with(read)
    }
}

/// What a link says of the language that it was made in: nothing of the first one. In capitals,
/// which a QR code packs like the letters before it.
fn spoken() -> String {
    match words::language() {
        "en" | "" => String::new(),
        language => format!(".{}", language.to_ascii_uppercase()),
    }
}

/// Whether something is due, and what does it then; it is done at once when the page is printed or left.
fn once_due(act: impl Fn() + 'static) -> (Rc<Cell<bool>>, impl Fn() + Clone + 'static) {
    let due = Rc::new(Cell::new(false));
    let act = Rc::new(act);
    let when_due = {
        let due = due.clone();
        move || {
            if due.replace(false) {
                act();
            }
        }
    };
    browser::before_it_is_too_late(when_due.clone());
    (due, when_due)
}

/// Does something once nothing of what `follow` reads has changed for a moment; at once when the page
/// is printed or left.
fn at_rest(follow: impl Fn() + 'static, act: impl Fn() + 'static) {
    let round = Rc::new(Cell::new(0_u32));
    let (due, when_due) = once_due(act);
    Effect::watch(
        follow,
        move |(), _, _| {
            due.set(true);
            let this = round.get().wrapping_add(1);
            round.set(this);
            let (round, when_due) = (round.clone(), when_due.clone());
            let still = move || {
                if round.get() == this {
                    when_due();
                }
            };
            set_timeout(still, browser::STILL);
        },
        true,
    );
}

/// Does something once the page was painted so often after a change of what `follow` reads; at once when
/// the page is printed or left. `at_first`: also for what there is to begin with.
fn at_leisure(paints: u32, follow: impl Fn() + 'static, act: impl Fn() + 'static, at_first: bool) {
    let (due, when_due) = once_due(act);
    Effect::watch(
        follow,
        move |(), _, _| {
            if !due.replace(true) {
                after_paints(paints, when_due.clone());
            }
        },
        at_first,
    );
}

/// Does something once the page was painted so often.
fn after_paints(paints: u32, act: impl FnOnce() + 'static) {
    browser::after_paint(move || match paints {
        0 | 1 => act(),
        more => after_paints(more - 1, act),
    });
}
