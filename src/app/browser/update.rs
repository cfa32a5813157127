//! A newer release that waits on the device. `boot.js` watches the service worker; the two speak by
//! events of the window.

use leptos::prelude::{window, window_event_listener_untyped};

/// Runs something whenever a newer release has arrived whole.
pub fn when_update_ready(what: impl Fn() + 'static) {
    window_event_listener_untyped("slackwater-update-ready", move |_| what());
}

/// Changes to the newer release and loads the page anew, this tab only.
pub fn take_update() {
    if let Ok(event) = web_sys::Event::new("slackwater-take-update") {
        // Nothing cancels this event, so that the answer says nothing.
        let _ = window().dispatch_event(&event);
    }
}
