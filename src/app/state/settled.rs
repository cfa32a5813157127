//! What comes a frame after an edit, so that a key press is answered first, with the four figures and
//! what is wrong: drawing, lists and tables, the link, the papers, the kept text.

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
        at_leisure(move || self.store.track(), write, false);
    }

    /// Lets all else follow the plan.
    pub(super) fn settle_from_now_on(self) {
        let follow = move || {
            self.engine.track();
            self.plan.track();
            self.outcome.track();
            self.language.track();
        };
        let settle = move || {
            let outcome = self.outcome.get_untracked();
            if self.settled.with_untracked(|settled| *settled != outcome) {
                self.settled.set(outcome);
            }
            let address = self.engine.get_untracked().and_then(|engine| {
                let link = self
                    .plan
                    .with_untracked(|plan| (engine.link)(plan.as_ref()?))?;
                Some(format!("{}#{link}{}", browser::page_address(), spoken()))
            });
            if self.address.with_untracked(|known| *known != address) {
                self.address.set(address);
            }
        };
        // What a plan that was left open comes to is known before anything follows it.
        at_leisure(follow, settle, true);
    }

    /// The outcome, a frame behind that of the figures.
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

/// Does something once the page was painted after a change of what `follow` reads; at once when the
/// page is printed or left. `at_first`: also for what there is to begin with.
fn at_leisure(follow: impl Fn() + 'static, act: impl Fn() + 'static, at_first: bool) {
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
    Effect::watch(
        follow,
        move |(), _, _| {
            if !due.replace(true) {
                browser::after_paint(when_due.clone());
            }
        },
        at_first,
    );
}
