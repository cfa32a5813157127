//! What the page asks of the system around it: its own address, the clipboard, the share sheet,
//! files.

use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The page's own address without what follows `#`.
pub fn page_address() -> String {
    let address = leptos::prelude::window().location().href();
    let address = address.unwrap_or_default();
    address.split('#').next().unwrap_or_default().to_owned()
}

/// What follows `#` in the address, where it is not the id of something on the page.
pub fn fragment() -> Option<String> {
    let document = leptos::prelude::document();
    let hash = document.location()?.hash().ok()?;
    let fragment = hash.strip_prefix('#')?;
    // A link names the language that it was made in; `boot.js` has looked at that.
    let fragment = fragment.split('.').next()?;
    let is_place = document.get_element_by_id(fragment).is_some();
    (!fragment.is_empty() && !is_place).then(|| fragment.to_owned())
}

/// Takes the fragment out of the address, so that reading the page again does not offer it again.
pub fn clear_fragment() {
    if let Ok(history) = leptos::prelude::window().history() {
        // A browser that refuses only offers the plan once more.
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&page_address()));
    }
}

/// A member of an object that older browsers, or pages without encryption, do not have.
pub(super) fn member(of: &JsValue, name: &str) -> Option<JsValue> {
    js_sys::Reflect::get(of, &name.into())
        .ok()
        .filter(JsValue::is_truthy)
}

fn navigator() -> JsValue {
    leptos::prelude::window().navigator().into()
}

/// Calls a method of an object, if there is one, and waits for its promise; whether all went well.
async fn asked(of: JsValue, name: &str, argument: Option<JsValue>) -> bool {
    let Some(method) = member(&of, name).and_then(|it| it.dyn_into::<js_sys::Function>().ok())
    else {
        return false;
    };
    let arguments: js_sys::Array = argument.into_iter().collect();
    match method.apply(&of, &arguments) {
        Ok(promise) => JsFuture::from(js_sys::Promise::resolve(&promise))
            .await
            .is_ok(),
        Err(_) => false,
    }
}

/// Whether the system has a sheet to share with.
pub fn can_share() -> bool {
    member(&navigator(), "share").is_some()
}

/// Opens that sheet; closing it without sharing is no fault.
pub fn share(title: &str, url: &str) {
    let data = js_sys::Object::new();
    for (name, value) in [("title", title), ("url", url)] {
        // A new plain object takes any member.
        let _ = js_sys::Reflect::set(&data, &name.into(), &value.into());
    }
    leptos::task::spawn_local(async move {
        asked(navigator(), "share", Some(data.into())).await;
    });
}

/// Copies a text, then tells whether it could.
pub fn copy(text: &str, done: impl FnOnce(bool) + 'static) {
    let text = JsValue::from_str(text);
    leptos::task::spawn_local(async move {
        done(match member(&navigator(), "clipboard") {
            Some(clipboard) => asked(clipboard, "writeText", Some(text)).await,
            None => false,
        });
    });
}

/// Asks the browser not to throw away what is kept here. It may say no.
pub fn ask_to_persist() {
    leptos::task::spawn_local(async {
        if let Some(storage) = member(&navigator(), "storage") {
            asked(storage, "persist", None).await;
        }
    });
}

/// Hands a text to the browser as a file to save.
pub fn save_file(name: &str, text: &str) {
    let parts = js_sys::Array::of1(&text.into());
    let saved = web_sys::Blob::new_with_str_sequence(&parts).and_then(|blob| {
        let address = web_sys::Url::create_object_url_with_blob(&blob)?;
        let link: web_sys::HtmlAnchorElement = leptos::prelude::document()
            .create_element("a")?
            .unchecked_into();
        link.set_href(&address);
        link.set_download(name);
        link.click();
        Ok(address)
    });
    if let Ok(address) = saved {
        // The browser has taken the file by then.
        leptos::prelude::set_timeout(
            move || {
                let _ = web_sys::Url::revoke_object_url(&address);
            },
            std::time::Duration::from_secs(60),
        );
    }
}

/// Reads a file; `None` where it is larger than `longest` bytes, or cannot be read.
pub fn read_file(file: web_sys::File, longest: usize, done: impl FnOnce(Option<String>) + 'static) {
    leptos::task::spawn_local(async move {
        let text = if file.size() <= longest as f64 {
            JsFuture::from(file.text()).await.ok()
        } else {
            None
        };
        done(text.and_then(|text| text.as_string()));
    });
}

/// Runs something with each file that is dropped anywhere on the page.
pub fn on_drop(take: impl Fn(web_sys::File) + 'static) {
    let holds_file = |event: &web_sys::DragEvent| {
        event
            .data_transfer()
            .is_some_and(|data| data.types().includes(&"Files".into(), 0))
    };
    let over = leptos::prelude::window_event_listener_untyped("dragover", move |event| {
        if event.dyn_ref().is_some_and(holds_file) {
            event.prevent_default();
        }
    });
    let drop = leptos::prelude::window_event_listener_untyped("drop", move |event| {
        let Some(event) = event.dyn_ref::<web_sys::DragEvent>() else {
            return;
        };
        if holds_file(event) {
            event.prevent_default();
            let files = event.data_transfer().and_then(|data| data.files());
            if let Some(file) = files.and_then(|files| files.get(0)) {
                take(file);
            }
        }
    });
    // Both stay as long as the page.
    std::mem::forget((over, drop));
}

pub use web_sys::File;

/// The file that was chosen in a file box, which is then empty again: the same file is a change too.
pub fn chosen_file(event: &web_sys::Event) -> Option<File> {
    let input: web_sys::HtmlInputElement = event.target()?.dyn_into().ok()?;
    let file = input.files()?.get(0);
    input.set_value("");
    file
}
