//! Plans kept in the browser, behind a probe: storage may be blocked, full or hold what cannot be
//! read, and none of that may lose a plan or blank the page.

use gloo_storage::{LocalStorage, Storage};
use serde::{Deserialize, Serialize};

use crate::catalog::Keyed;
use crate::plan::{Plan, UnitSystem};

/// Where the plans stand.
const KEY: &str = "slackwater.plans";
/// Where a value goes that could not be read, untouched.
const ASIDE: &str = "slackwater.set-aside";
/// Version of the stored list; the plans in it carry their own.
const VERSION: u32 = 1;

/// One kept plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Kept {
    /// Number that is unique on this device.
    pub id: u32,
    /// The plan.
    pub plan: Plan,
}

/// All that is kept.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Store {
    /// Version of this list.
    pub version: u32,
    /// The plans.
    pub plans: Vec<Kept>,
    /// The plan that was open.
    pub open: Option<u32>,
    /// Key of the unit system.
    pub units: String,
}

impl Store {
    /// The chosen units, if they were chosen.
    pub fn unit_system(&self) -> Option<UnitSystem> {
        UnitSystem::from_key(&self.units)
    }
}

/// What was found at the start.
pub struct Found {
    /// The kept plans.
    pub store: Store,
    /// Whether anything can be kept at all.
    pub usable: bool,
    /// A stored text that could not be read and was set aside.
    pub set_aside: Option<String>,
}

/// Whether a trial value can be written and taken away again. Asked before the storage library is
/// touched, which fails hard where the browser blocks storage.
fn usable() -> bool {
    const TRIAL: &str = "slackwater.trial";
    let window = leptos::prelude::window();
    let Ok(Some(storage)) = window.local_storage() else {
        return false;
    };
    storage.set_item(TRIAL, "1").is_ok() && storage.remove_item(TRIAL).is_ok()
}

impl Found {
    /// Looks for kept plans.
    pub fn look() -> Self {
        let nothing = |usable, set_aside| Self {
            store: Store::default(),
            usable,
            set_aside,
        };
        if !usable() {
            return nothing(false, None);
        }
        let raw = LocalStorage::raw().get_item(KEY).ok().flatten();
        let Some(raw) = raw else {
            return nothing(true, earlier_aside());
        };
        match serde_json::from_str::<Store>(&raw) {
            Ok(store) if store.version <= VERSION => Self {
                store,
                usable: true,
                set_aside: earlier_aside(),
            },
            // Damaged, or written by a later version: set aside before anything is written.
            _ => {
                let kept = LocalStorage::raw()
                    .set_item(&free_aside_key(), &raw)
                    .is_ok();
                nothing(kept, Some(raw))
            }
        }
    }
}

fn earlier_aside() -> Option<String> {
    LocalStorage::raw().get_item(ASIDE).ok().flatten()
}

/// The first set-aside key that holds nothing yet; damage that comes back a hundred times is not
/// worth another copy.
fn free_aside_key() -> String {
    let taken = |key: &str| LocalStorage::raw().get_item(key).ok().flatten().is_some();
    std::iter::once(ASIDE.to_owned())
        .chain((2..100).map(|number| format!("{ASIDE}.{number}")))
        .find(|key| !taken(key))
        .unwrap_or_else(|| ASIDE.to_owned())
}

/// Forgets what was set aside, once its owner has saved or dismissed it.
pub fn forget_set_aside() {
    let _ = LocalStorage::raw().remove_item(ASIDE);
}

/// Writes all plans; false when the browser refused.
pub fn keep(mut store: Store) -> bool {
    store.version = VERSION;
    LocalStorage::set(KEY, store).is_ok()
}
