//! Changes that mend the open plan, and the way back.

use leptos::prelude::*;

use super::App;
use crate::advice::Change;
use crate::app::browser;
use crate::plan::Plan;

/// A change that mended a plan, until the plan is changed again.
#[derive(Clone, Debug, PartialEq)]
pub struct Mended {
    before: Plan,
    after: Plan,
    /// What was changed.
    pub changes: Vec<Change>,
    /// The id of the heading under which it was made, and can be taken back.
    pub under: &'static str,
}

impl App {
    /// Makes a change that mends the open plan; it can be taken back under the heading of that id.
    pub fn mend(self, changes: &[Change], under: &'static str) {
        if let Some(before) = self.plan.get_untracked() {
            let mut after = before.clone();
            for change in changes {
                change.apply(&mut after);
            }
            self.edit(|plan| plan.clone_from(&after));
            self.mended.set(Some(Mended {
                before,
                after,
                changes: changes.to_vec(),
                under,
            }));
            // The button that did it is gone.
            browser::focus_soon("unmend");
        }
    }

    /// The last mend, while the plan is as it left it.
    pub fn mended(self) -> Option<Mended> {
        let mended = self.mended.get()?;
        self.plan
            .with(|plan| plan.as_ref() == Some(&mended.after))
            .then_some(mended)
    }

    /// Takes the last mend back.
    pub fn unmend(self) {
        if let Some(mended) = self.mended.get_untracked() {
            self.mended.set(None);
            self.edit(|plan| *plan = mended.before);
            browser::focus_soon(mended.under);
        }
    }
}
