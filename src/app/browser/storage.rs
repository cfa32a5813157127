//! Plans kept in the browser, behind a probe: storage may be blocked, full or hold what cannot be
//! read, and none of that may lose a plan or blank the page.

use std::cell::RefCell;

use gloo_storage::{LocalStorage, Storage};
use wasm_bindgen::JsCast;

use crate::plan::Store;

/// Where the plans stand.
const KEY: &str = "slackwater.plans";
/// Where a value goes that could not be read, untouched.
const ASIDE: &str = "slackwater.set-aside";

thread_local! {
    /// The stored text as this tab last read or wrote it. Another one in its place was written by
    /// another tab.
    static SEEN: RefCell<Option<String>> = const { RefCell::new(None) };
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
        SEEN.set(raw.clone());
        let store = match &raw {
            None => Some(Store::default()),
            Some(raw) => Store::read(raw).ok(),
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

/// Forgets a text that was set aside, once its owner has saved it.
pub fn forget_set_aside(raw: &str) {
    for key in aside_keys().filter(|key| read(key).as_deref() == Some(raw)) {
        let _ = LocalStorage::raw().remove_item(&key);
    }
}

/// What became of plans that were to be written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Written {
    /// They are kept.
    Kept,
    /// The browser refused.
    Refused,
    /// Nothing was written: another tab wrote other plans meanwhile.
    ChangedElsewhere,
}

/// Writes all plans, over those of another tab only where `over` says so.
pub fn keep(store: &Store, over: bool) -> Written {
    if !over && stored_elsewhere(store).is_some() {
        return Written::ChangedElsewhere;
    }
    let text = store.write();
    if LocalStorage::raw().set_item(KEY, &text).is_err() {
        return Written::Refused;
    }
    SEEN.set(Some(text));
    Written::Kept
}

/// What another tab wrote, where it is not what this one has read or written and holds other
/// plans, materials or units. Which plan is open is each tab's own affair.
pub fn stored_elsewhere(mine: &Store) -> Option<String> {
    let now = read(KEY)?;
    if SEEN.with_borrow(|seen| seen.as_ref() == Some(&now)) {
        return None;
    }
    match Store::read(&now) {
        Ok(theirs)
            if theirs.plans == mine.plans
                && theirs.units == mine.units
                && theirs.materials == mine.materials
                && theirs.trials == mine.trials
                && theirs.notebooks == mine.notebooks =>
        {
            SEEN.set(Some(now));
            None
        }
        _ => Some(now),
    }
}

/// Runs something when another tab has written.
pub fn on_change_elsewhere(then: impl Fn() + 'static) {
    let listening = leptos::prelude::window_event_listener_untyped("storage", move |event| {
        let key = event
            .dyn_ref::<web_sys::StorageEvent>()
            .and_then(web_sys::StorageEvent::key);
        // Without a key everything was cleared.
        if key.is_none_or(|key| key == KEY) {
            then();
        }
    });
    // It stays as long as the page.
    std::mem::forget(listening);
}
