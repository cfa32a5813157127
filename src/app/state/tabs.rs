//! Several tabs with the same plans: none writes over another's unasked.

use leptos::prelude::*;

use super::App;
use crate::app::browser::{self, Found, Written};

impl App {
    pub(super) fn note(self, written: Written) {
        match written {
            Written::ChangedElsewhere => self.elsewhere.set(true),
            written => self.keeps.set(written == Written::Kept),
        }
    }

    /// Takes the plans of the other tab in place of this one's.
    pub fn take_theirs(self) {
        let found = Found::look();
        self.elsewhere.set(false);
        self.set_aside.set(found.set_aside);
        self.store.update(|store| {
            let open = store.open;
            *store = found.store;
            if store.plans.iter().any(|kept| Some(kept.id) == open) {
                store.open = open;
            }
        });
    }

    /// Writes this tab's plans over those of the other.
    pub fn keep_mine(self) {
        self.elsewhere.set(false);
        let written = self
            .store
            .with_untracked(|store| browser::keep(store, true));
        self.note(written);
    }
}
