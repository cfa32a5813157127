//! The kept plans: opened, added, copied, deleted and brought back.

use leptos::prelude::*;

use super::{App, Deleted, Step};
use crate::app::{browser, words};
use crate::catalog::shelters::Shelter;
use crate::plan::{DateMeaning, Entry, Example, Kept, Pick, Plan};

impl App {
    /// Adds plans, less those that are kept already.
    pub fn add_all(self, plans: Vec<Plan>) {
        self.store.update(|store| {
            add_new(
                &mut store.plans,
                plans,
                |kept| (kept.id, &kept.plan),
                |id, plan| Kept { id, plan },
            );
        });
        self.open_plan(None);
    }

    /// Puts plans in the place of all kept ones.
    pub fn replace_all(self, plans: Vec<Plan>) {
        self.store.update(|store| {
            store.plans = (1..)
                .zip(plans)
                .map(|(id, plan)| Kept { id, plan })
                .collect();
            store.open = None;
        });
        self.open_plan(None);
    }

    /// All kept plans.
    pub fn all_plans(self) -> Vec<Plan> {
        self.store
            .with_untracked(|store| store.plans.iter().map(|kept| kept.plan.clone()).collect())
    }

    /// Names and numbers of the kept plans.
    pub fn shelf(self) -> Vec<(u32, String)> {
        self.store.with(|store| {
            store
                .plans
                .iter()
                .map(|kept| (kept.id, kept.plan.name.clone()))
                .collect()
        })
    }

    /// The number of the open plan.
    pub fn open_id(self) -> Option<u32> {
        self.store.with(|store| store.open)
    }

    /// Opens a kept plan, or none (the welcome page). The button that did it may be gone then, so
    /// the focus moves to the heading of what is shown.
    pub fn open_plan(self, id: Option<u32>) {
        self.day.set(None);
        self.trial.set(None);
        self.notebook.set(None);
        self.step.set(Step::Container);
        self.store.update(|store| store.open = id);
        let heading = if id.is_some() { "step-1" } else { "welcome" };
        browser::focus_soon(heading);
    }

    /// Keeps a new plan and opens it.
    pub fn add(self, plan: Plan) {
        let id = self.store.try_update(|store| {
            let id = next_id(store.plans.iter().map(|kept| kept.id));
            store.plans.push(Kept { id, plan });
            id
        });
        self.open_plan(id);
    }

    /// Opens a copy of a ready example.
    pub fn add_example(self, example: Example, shelter: Option<Shelter>) {
        let mut plan = example.plan_under(shelter);
        words::example_name(example).clone_into(&mut plan.name);
        sow_today(&mut plan);
        self.add(plan);
    }

    /// Opens a plan of the grower's own: the bucket, sown today, with the sizes that are sold where
    /// the page's units are used.
    pub fn add_own(self, name: &str, shelter: Option<Shelter>) {
        let mut plan = Example::Bucket.plan_under(shelter);
        plan.choose_sizes(self.units.get_untracked());
        name.clone_into(&mut plan.name);
        sow_today(&mut plan);
        self.add(plan);
    }

    /// Keeps a copy of the open plan under another name and opens it.
    pub fn duplicate(self, name: String) {
        if let Some(mut plan) = self.plan.get_untracked() {
            plan.name = name;
            self.add(plan);
        }
    }

    /// Deletes a plan; it can be taken back.
    pub fn delete(self, id: u32) {
        let found = self.store.with_untracked(|store| {
            store
                .plans
                .iter()
                .enumerate()
                .find(|(_, kept)| kept.id == id)
                .map(|(place, kept)| (place, kept.clone()))
        });
        if let Some((place, kept)) = found {
            self.store.update(|store| {
                store.plans.remove(place);
                if store.open == Some(id) {
                    store.open = None;
                }
            });
            self.deleted.set(Some(Deleted { place, kept }));
            // The button that did it is gone.
            browser::focus_soon("undo");
        }
    }

    /// Takes the last deletion back.
    pub fn undelete(self) {
        if let Some(Deleted { place, kept }) = self.deleted.get_untracked() {
            self.deleted.set(None);
            let id = kept.id;
            self.store.update(|store| {
                let place = place.min(store.plans.len());
                store.plans.insert(place, kept);
            });
            self.open_plan(Some(id));
        }
    }
}

/// Whoever begins has no seedlings yet.
fn sow_today(plan: &mut Plan) {
    plan.crop.date = Entry::from(browser::today().as_str());
    plan.crop.date_meaning = Pick::Known(DateMeaning::Seeding);
}

/// A number that none has.
fn next_id(ids: impl Iterator<Item = u32>) -> u32 {
    ids.max().unwrap_or(0).saturating_add(1)
}

/// Keeps what is not kept already, each under a number of its own.
pub(super) fn add_new<K, T: PartialEq>(
    kept: &mut Vec<K>,
    all: Vec<T>,
    parts: fn(&K) -> (u32, &T),
    keep: fn(u32, T) -> K,
) {
    for one in all {
        if kept.iter().all(|kept| *parts(kept).1 != one) {
            let id = next_id(kept.iter().map(|kept| parts(kept).0));
            kept.push(keep(id, one));
        }
    }
}
