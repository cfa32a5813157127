//! What can stand in a view and in a setting without more words.

use std::rc::Rc;

use wasm_bindgen::JsCast;

use super::{Kind, Node, Part, Text, Value};

impl From<&'static str> for Node {
    #[inline(never)]
    fn from(text: &'static str) -> Self {
        Self::of(Part::Text(text.into()))
    }
}

impl From<String> for Node {
    #[inline(never)]
    fn from(text: String) -> Self {
        Self::of(Part::Text(text.into()))
    }
}

impl From<Text> for Node {
    fn from(text: Text) -> Self {
        Self::of(Part::Text(text))
    }
}

impl From<usize> for Node {
    fn from(number: usize) -> Self {
        number.to_string().into()
    }
}

impl<T: Into<Node>> From<Option<T>> for Node {
    fn from(part: Option<T>) -> Self {
        part.map_or_else(Self::default, Into::into)
    }
}

impl<T: Into<Node>> From<Vec<T>> for Node {
    fn from(parts: Vec<T>) -> Self {
        parts.into_iter().collect()
    }
}

impl<T: Into<Node>, const N: usize> From<[T; N]> for Node {
    fn from(parts: [T; N]) -> Self {
        parts.into_iter().collect()
    }
}

impl<T: Into<Node>> FromIterator<T> for Node {
    fn from_iter<I: IntoIterator<Item = T>>(parts: I) -> Self {
        Self::of(Part::Many(parts.into_iter().map(Into::into).collect()))
    }
}

/// What a setting can be told by; `None` leaves it out.
pub trait Setting {
    /// Its text.
    fn text(self) -> Option<Text>;

    /// Sets an attribute of a node to it.
    fn set_on(self, node: Node, name: &'static str) -> Node
    where
        Self: Sized,
    {
        node.set(Kind::Attribute(name), Value::Fixed(self.text()))
    }
}

impl Setting for bool {
    fn text(self) -> Option<Text> {
        self.then_some(Text::Borrowed(""))
    }
}

impl Setting for &'static str {
    fn text(self) -> Option<Text> {
        Some(self.into())
    }

    // Most settings are such: called by its parts, this takes less program at each place.
    #[inline(never)]
    fn set_on(self, node: Node, name: &'static str) -> Node {
        node.set(Kind::Attribute(name), Value::Fixed(Some(self.into())))
    }
}

impl Setting for String {
    fn text(self) -> Option<Text> {
        Some(self.into())
    }

    #[inline(never)]
    fn set_on(self, node: Node, name: &'static str) -> Node {
        node.set(Kind::Attribute(name), Value::Fixed(Some(self.into())))
    }
}

impl Setting for Text {
    fn text(self) -> Option<Text> {
        Some(self)
    }
}

impl Setting for usize {
    fn text(self) -> Option<Text> {
        Some(self.to_string().into())
    }
}

impl Setting for i32 {
    fn text(self) -> Option<Text> {
        Some(self.to_string().into())
    }
}

impl Setting for f64 {
    fn text(self) -> Option<Text> {
        Some(self.to_string().into())
    }
}

impl<T: Setting> Setting for Option<T> {
    fn text(self) -> Option<Text> {
        self.and_then(Setting::text)
    }
}

/// Answers to events.
impl Node {
    /// Answers an event whatever it tells.
    pub fn on(self, event: &'static str, handler: impl Fn() + 'static) -> Self {
        self.listen(event, Rc::new(move |_| handler()))
    }

    /// Answers an event of typing or choosing with what stands in the box or list then.
    pub fn on_value(self, event: &'static str, handler: impl Fn(String) + 'static) -> Self {
        let handler = move |event: web_sys::Event| {
            keep_caret(&event);
            handler(value_of(&event));
        };
        self.listen(event, Rc::new(handler))
    }

    /// Answers the opening and closing of a fold.
    pub fn on_toggle(self, handler: impl Fn(bool) + 'static) -> Self {
        let handler = move |event: web_sys::Event| {
            let open = event
                .target()
                .and_then(|fold| js_sys::Reflect::get(&fold, &"open".into()).ok());
            handler(open.is_some_and(|open| open.is_truthy()));
        };
        self.listen("toggle", Rc::new(handler))
    }

    /// Answers an event with the event, as it is.
    pub fn on_event(
        self,
        event: &'static str,
        handler: impl Fn(&web_sys::Event) + 'static,
    ) -> Self {
        self.listen(event, Rc::new(move |event| handler(&event)))
    }

    /// Answers a pressed key.
    pub fn on_key(self, handler: impl Fn(&web_sys::KeyboardEvent) + 'static) -> Self {
        let handler = move |event: web_sys::Event| {
            if let Some(event) = event.dyn_ref() {
                handler(event);
            }
        };
        self.listen("keydown", Rc::new(handler))
    }

    /// Answers what a pointer does.
    pub fn on_pointer(
        self,
        event: &'static str,
        handler: impl Fn(&web_sys::PointerEvent) + 'static,
    ) -> Self {
        let handler = move |event: web_sys::Event| {
            if let Some(event) = event.dyn_ref() {
                handler(event);
            }
        };
        self.listen(event, Rc::new(handler))
    }
}

/// Chromium puts the caret of a box between buttons before the text where a letter is committed at
/// once, as by a phone's keyboard; what is typed next would come first. Nothing that was inserted
/// leaves the caret there, so it goes to the end.
fn keep_caret(event: &web_sys::Event) {
    let inserted = event
        .dyn_ref::<web_sys::InputEvent>()
        .is_some_and(|event| event.input_type() == "insertText");
    let Some(input) = event.target().filter(|_| inserted) else {
        return;
    };
    if let Ok(input) = input.dyn_into::<web_sys::HtmlInputElement>()
        && input.selection_start() == Ok(Some(0))
    {
        let end = u32::try_from(input.value().encode_utf16().count()).unwrap_or(u32::MAX);
        // A box of another kind has no caret to move.
        let _ = input.set_selection_range(end, end);
    }
}

/// What stands in the box or list that an event comes from.
fn value_of(event: &web_sys::Event) -> String {
    let Some(target) = event.target() else {
        return String::new();
    };
    js_sys::Reflect::get(&target, &"value".into())
        .ok()
        .and_then(|value| value.as_string())
        .unwrap_or_default()
}
