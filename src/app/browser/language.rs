//! The reader's language: `boot.js` chooses one before the page stands and fetches its texts; here
//! they are taken over, and fetched again when another is chosen.

use gloo_storage::{LocalStorage, Storage};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::system::member;
use crate::app::words;

/// Where the choice is kept; `boot.js` reads it.
const KEY: &str = "slackwater.language";

/// What `boot.js` leaves for the program.
fn left_by_boot(name: &str) -> Option<JsValue> {
    member(&member(&js_sys::global(), "slackwater")?, name)
}

fn text(of: &JsValue, name: &str) -> Option<String> {
    member(of, name)?.as_string()
}

/// Speaks what `boot.js` has fetched; false where it is not of this release.
fn take_over(fetched: &JsValue) -> bool {
    let parts = (
        text(fetched, "language"),
        text(fetched, "texts"),
        text(fetched, "mark"),
    );
    let (Some(language), Some(texts), Some(mark)) = parts else {
        return false;
    };
    let mark = mark.chars().next().unwrap_or('.');
    let spoken = words::speak(&language, &texts, mark);
    if let Some(root) = leptos::prelude::document().document_element() {
        // The page is read aloud in the right voice.
        let _ = root.set_attribute("lang", &language);
    }
    spoken
}

/// Speaks the language that `boot.js` chose.
pub fn speak_first() {
    if let Some(fetched) = left_by_boot("fetched") {
        take_over(&fetched);
    }
}

/// The languages there are: key, and name in the language itself.
pub fn languages() -> Vec<(String, String)> {
    let all = left_by_boot("languages").unwrap_or(JsValue::NULL);
    let all = all.dyn_into::<js_sys::Array>().unwrap_or_default();
    all.iter()
        .filter_map(|one| Some((text(&one, "key")?, text(&one, "name")?)))
        .collect()
}

/// Speaks another language, and remembers it; tells whether its texts could be had.
pub fn choose_language(key: &str, keep: bool, done: impl FnOnce(bool) + 'static) {
    let key = key.to_owned();
    super::go_on(async move {
        let speak = left_by_boot("speak").and_then(|it| it.dyn_into::<js_sys::Function>().ok());
        let fetched = match speak.map(|speak| speak.call1(&JsValue::NULL, &key.as_str().into())) {
            Some(Ok(promise)) => JsFuture::from(js_sys::Promise::resolve(&promise))
                .await
                .ok(),
            _ => None,
        };
        let spoken = fetched.is_some_and(|fetched| take_over(&fetched));
        if spoken && keep {
            // A browser without room asks anew next time.
            let _ = LocalStorage::raw().set_item(KEY, &key);
        }
        done(spoken);
    });
}
