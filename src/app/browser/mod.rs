//! The only place that touches the browser: document, storage, clock, printing.

pub mod dom;
mod language;
pub mod part;
mod storage;
mod system;
mod update;

pub use language::{choose_language, languages, speak_first};
pub use storage::{
    Found, Written, forget_set_aside, keep, next_set_aside, on_change_elsewhere, stored_elsewhere,
};
pub use system::{
    File, ask_to_persist, can_share, chosen_file, clear_fragment, copy, fragment, on_drop,
    page_address, read_file, save_file, share,
};
pub use update::{take_update, when_update_ready};

use std::time::Duration;

use wasm_bindgen::JsCast;

/// The element that holds the page; `boot.js` leaves it in the document.
pub fn page_root() -> Option<web_sys::HtmlElement> {
    let document = leptos::prelude::document();
    document
        .get_element_by_id("app")
        .and_then(|element| element.dyn_into().ok())
        .or_else(|| document.body())
}

/// Takes away what `boot.js` shows until the page stands.
pub fn forget_boot() {
    if let Some(boot) = leptos::prelude::document().get_element_by_id("boot") {
        boot.remove();
    }
}

/// Today by the device's clock, year-month-day.
pub fn today() -> String {
    in_days(0)
}

/// So many days from today by the device's clock, year-month-day.
pub fn in_days(days: u32) -> String {
    let now = js_sys::Date::new_0();
    now.set_date(now.get_date() + days);
    format!(
        "{:04}-{:02}-{:02}",
        now.get_full_year(),
        now.get_month() + 1,
        now.get_date()
    )
}

/// Marks all that stands in the box that an event comes from.
pub fn mark_all(event: &web_sys::Event) {
    if let Some(input) = event
        .target()
        .and_then(|target| target.dyn_into::<web_sys::HtmlInputElement>().ok())
    {
        input.select();
    }
}

/// Closes a fold.
pub fn close_fold(id: &str) {
    if let Some(fold) = leptos::prelude::document().get_element_by_id(id) {
        // It is there or not; both are fine.
        let _ = fold.remove_attribute("open");
    }
}

/// Opens a fold and moves the keyboard focus to it.
pub fn open_fold(id: &str) {
    let Some(fold) = leptos::prelude::document().get_element_by_id(id) else {
        return;
    };
    let _ = fold.set_attribute("open", "");
    fold.scroll_into_view();
    // The contents may be fetched first, and make the page long enough to go there.
    let again = fold.clone();
    after_paint(move || again.scroll_into_view());
    if let Ok(Some(summary)) = fold.query_selector("summary")
        && let Ok(summary) = summary.dyn_into::<web_sys::HtmlElement>()
    {
        // It is there or not; both are fine.
        let _ = summary.focus();
    }
}

/// A number from 0 to below 1 that nobody foresees.
pub fn chance() -> f64 {
    js_sys::Math::random()
}

/// Opens the system's print dialogue.
pub fn print() {
    // A browser without printing has no dialogue to fail in.
    let _ = leptos::prelude::window().print();
}

/// Moves the keyboard focus to an element and brings it into view, unfolding what it lies in; false
/// when there is no such element.
pub fn focus(id: &str) -> bool {
    let Some(element) = leptos::prelude::document().get_element_by_id(id) else {
        return false;
    };
    // A fold's own summary is seen while it is closed.
    while let Ok(Some(inside)) = element.closest("details:not([open]) > :not(summary)") {
        let unfolded = inside
            .parent_element()
            .is_some_and(|fold| fold.set_attribute("open", "").is_ok());
        if !unfolded {
            break;
        }
    }
    element
        .dyn_into::<web_sys::HtmlElement>()
        .is_ok_and(|element| element.focus().is_ok())
}

/// As [`focus`], where nothing has the focus: what the grower went to meanwhile keeps it.
pub fn focus_if_lost(id: &str) {
    let held = leptos::prelude::document()
        .active_element()
        .is_some_and(|element| element.tag_name() != "BODY");
    if !held {
        focus(id);
    }
}

/// As [`focus`], once the page has been redrawn.
pub fn focus_soon(id: impl Into<String>) {
    let id = id.into();
    soon(move || {
        focus(&id);
    });
}

/// Brings an element to the top of the window.
pub fn scroll_to(id: &str) {
    if let Some(element) = leptos::prelude::document().get_element_by_id(id) {
        element.scroll_into_view();
    }
}

/// The device's clock, ms.
pub fn now_ms() -> f64 {
    js_sys::Date::now()
}

/// How long the page works before it listens again, ms: with what a frame takes, well below the
/// 50 ms from which a browser speaks of a long task.
const SLICE_MS: f64 = 8.0;
/// How long something must stay as it is before what takes longer, or is not looked at yet, begins.
pub const STILL: Duration = Duration::from_millis(400);

/// Works bit by bit until there is an answer or the slice is over.
pub fn for_a_slice<T>(mut bit: impl FnMut() -> Option<T>) -> Option<T> {
    let until = now_ms() + SLICE_MS;
    loop {
        let answer = bit();
        if answer.is_some() || now_ms() >= until {
            return answer;
        }
    }
}

/// Runs something as soon as the browser has seen to what waits.
pub fn next(what: impl FnOnce() + 'static) {
    leptos::prelude::set_timeout(what, Duration::ZERO);
}

/// Runs something that waits, before the page stands as well.
pub fn go_on(what: impl Future<Output = ()> + 'static) {
    wasm_bindgen_futures::spawn_local(what);
}

/// Runs something once the page has been redrawn.
pub fn soon(what: impl FnOnce() + 'static) {
    leptos::prelude::request_animation_frame(what);
}

/// Runs something once what is known now has been painted.
pub fn after_paint(what: impl FnOnce() + 'static) {
    soon(move || next(what));
}

/// Runs something whenever the page is about to be printed, hidden or left.
pub fn before_it_is_too_late(what: impl Fn() + Clone + 'static) {
    for event in ["beforeprint", "pagehide", "visibilitychange"] {
        let what = what.clone();
        // For as long as the page stands.
        let _ = leptos::prelude::window_event_listener_untyped(event, move |_| what());
    }
}

/// Whether the browser's language region is one that measures in inches and gallons.
pub fn prefers_us_units() -> bool {
    leptos::prelude::window()
        .navigator()
        .language()
        .is_some_and(|language| language.ends_with("-US"))
}

/// Whether the reader asks for as little movement as can be.
pub fn prefers_stillness() -> bool {
    leptos::prelude::window()
        .match_media("(prefers-reduced-motion: reduce)")
        .is_ok_and(|query| query.is_some_and(|query| query.matches()))
}

/// Where a pressed pointer is across the element that listens, 0 to 1 from left to right and beyond
/// while it is held; `None` for one that only passes over.
pub fn share_across(event: &web_sys::PointerEvent) -> Option<f64> {
    let element: web_sys::HtmlElement = event.current_target()?.dyn_into().ok()?;
    if event.buttons() & 1 == 0 {
        return None;
    }
    // A pointer that has gone in the meantime cannot be held, and need not be.
    let _ = element.set_pointer_capture(event.pointer_id());
    Some(f64::from(event.offset_x()) / f64::from(element.offset_width().max(1)))
}

/// The address of a file that holds a text of a media type, for a link that saves it.
pub fn file_address(media_type: &str, text: &str) -> String {
    let encoded = js_sys::encode_uri_component(text);
    format!("data:{media_type};charset=utf-8,{encoded}")
}
