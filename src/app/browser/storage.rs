//! Plans kept in the browser, behind a probe: storage may be blocked, full or hold what cannot be
//! read, and none of that may lose a plan or blank the page.

use gloo_storage::{LocalStorage, Storage};
use serde::{Deserialize, Serialize};

use crate::app::materials::Materials;
use crate::catalog::Keyed;
use crate::plan::{Plan, UnitSystem, VERSION as PLAN_VERSION};

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
    /// Blends and salts that all plans share.
    pub materials: Materials,
}

impl Store {
    /// The chosen units, if they were chosen.
    pub fn unit_system(&self) -> Option<UnitSystem> {
        UnitSystem::from_key(&self.units)
    }

    /// Whether this program knows the versions of the list and of each plan in it. A later one may
    /// hold what would be lost when it is written again.
    fn is_ours(&self) -> bool {
        self.version <= VERSION
            && self
                .plans
                .iter()
                .all(|kept| kept.plan.version <= PLAN_VERSION)
    }
}

/// What was found at the start.
pub struct Found {
    /// The kept plans.
    pub store: Store,
    /// Whether plans may be written: never over a text that could not be set aside.
    pub usable: bool,
    /// Whether there is room: a trial value could be written.
    pub keeps: bool,
    /// A stored text that could not be read and was set aside.
    pub set_aside: Option<String>,
}

/// Whether the browser lets the page at its storage. Asked before the storage library is touched,
/// which fails hard where the browser blocks storage.
fn reachable() -> bool {
    let storage = leptos::prelude::window().local_storage().ok().flatten();
    storage.is_some_and(|storage| storage.get_item(KEY).is_ok())
}

/// Whether a trial value can be written and taken away again. Full storage can still be read.
fn keeps() -> bool {
    const TRIAL: &str = "slackwater.trial";
    let storage = LocalStorage::raw();
    storage.set_item(TRIAL, "1").is_ok() && storage.remove_item(TRIAL).is_ok()
}

fn read(key: &str) -> Option<String> {
    LocalStorage::raw().get_item(key).ok().flatten()
}

impl Found {
    /// Looks for kept plans.
    pub fn look() -> Self {
        if !reachable() {
            return Self {
                store: Store::default(),
                usable: false,
                keeps: false,
                set_aside: None,
            };
        }
        let raw = read(KEY);
        let store = match &raw {
            None => Some(Store::default()),
            Some(raw) => serde_json::from_str(raw).ok().filter(Store::is_ours),
        };
        // Damaged, or written by a later version: set aside before anything is written.
        let safe = match (&store, &raw) {
            (None, Some(raw)) => set_aside(raw),
            _ => true,
        };
        Self {
            set_aside: match (&store, raw) {
                (None, raw @ Some(_)) => raw,
                _ => next_set_aside(),
            },
            store: store.unwrap_or_default(),
            usable: safe,
            keeps: safe && keeps(),
        }
    }
}

/// Where texts are set aside; more than one only where damage comes back before the first is saved.
fn aside_keys() -> impl Iterator<Item = String> {
    std::iter::once(ASIDE.to_owned()).chain((2..100).map(|number| format!("{ASIDE}.{number}")))
}

/// Puts a text under a key that holds nothing yet, or finds it there; false when it cannot be kept.
fn set_aside(raw: &str) -> bool {
    if aside_keys().any(|key| read(&key).as_deref() == Some(raw)) {
        return true;
    }
    aside_keys()
        .find(|key| read(key).is_none())
        .is_some_and(|key| LocalStorage::raw().set_item(&key, raw).is_ok())
}

/// A text that was set aside, now or earlier.
pub fn next_set_aside() -> Option<String> {
    aside_keys().find_map(|key| read(&key))
}

/// Forgets a text that was set aside, once its owner has saved or dismissed it.
pub fn forget_set_aside(raw: &str) {
    for key in aside_keys().filter(|key| read(key).as_deref() == Some(raw)) {
        let _ = LocalStorage::raw().remove_item(&key);
    }
}

/// Writes all plans; false when the browser refused.
pub fn keep(mut store: Store) -> bool {
    store.version = VERSION;
    LocalStorage::set(KEY, store).is_ok()
}
