//! Writes the page. A view is a [`Node`]: a plain description, of one type whatever it describes,
//! so that the program holds the code that writes and compares views once. (Leptos' own views are a
//! type for each shape: they took more than a third of the program.) Signals, memos and effects are
//! Leptos'.
//!
//! What is described again is compared with what stands there, by place and tag: elements stay, and
//! with them focus, caret and open folds.

mod convert;
mod stand;

use std::borrow::Cow;
use std::rc::Rc;

use leptos::prelude::*;

pub use convert::Setting;
use stand::Standing;

/// A text, borrowed for as long as the program runs or owned.
pub type Text = Cow<'static, str>;

/// What answers an event.
type Handler = Rc<dyn Fn(web_sys::Event)>;

/// A part of the page, described. No wider than a pointer, because a description is handed on with
/// every setting that it gets: that makes much less program than handing on the parts of one.
#[derive(Default)]
pub struct Node(Box<Part>);

/// What a part is.
#[derive(Default)]
enum Part {
    /// Nothing is shown.
    #[default]
    Nothing,
    /// A text.
    Text(Text),
    /// An element.
    Element(Element),
    /// Several, one after the other.
    Many(Vec<Node>),
    /// What follows the signals that it reads.
    Live(Box<dyn FnMut() -> Node>),
}

/// An element, described.
struct Element {
    tag: &'static str,
    settings: Vec<(Kind, Value)>,
    handlers: Vec<(&'static str, Handler)>,
    parts: Vec<Node>,
}

/// What a setting of an element is.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// An attribute: absent without a value.
    Attribute(&'static str),
    /// One class among others: there when there is a value.
    Class(&'static str),
    /// A property of the style sheet, set by the script: a policy may forbid the attribute.
    Style(&'static str),
    /// A property of the element that its reader changes too: it is written last, because what can
    /// be chosen has to stand first.
    Value,
    /// Whether a fold is open, which its reader changes too.
    Open,
}

/// The value of a setting.
enum Value {
    Fixed(Option<Text>),
    Live(Box<dyn FnMut() -> Option<Text>>),
}

/// An element without anything in it.
#[inline(never)]
pub fn el(tag: &'static str) -> Node {
    Node::of(Part::Element(Element {
        tag,
        settings: Vec::new(),
        handlers: Vec::new(),
        parts: Vec::new(),
    }))
}

/// A button of a class, still without words and without what it does.
#[inline(never)]
pub fn button(class: &'static str) -> Node {
    el("button").attr("type", "button").class(class)
}

/// A button with its words, that does something.
pub fn action(class: &'static str, text: &'static str, act: impl Fn() + 'static) -> Node {
    button(class).on("click", act).child(text)
}

/// Several parts, one after the other, without an element around them.
pub fn several() -> Node {
    Node::of(Part::Many(Vec::new()))
}

/// A part that is described again whenever a signal changes that `part` reads.
pub fn live<T: Into<Node>>(part: impl Fn() -> T + 'static) -> Node {
    Node::of(Part::Live(Box::new(move || part().into())))
}

/// A part that stands while a condition holds, and is described anew only when it begins to hold.
pub fn given(
    when: impl Fn() -> bool + Send + Sync + 'static,
    part: impl Fn() -> Node + 'static,
) -> Node {
    let when: Box<dyn Fn() -> bool + Send + Sync> = Box::new(when);
    one_of(
        Memo::new(move |_| when()),
        Box::new(part),
        Box::new(Node::default),
    )
}

/// One part while a condition holds, and another while it does not.
pub fn given_or(
    when: impl Fn() -> bool + Send + Sync + 'static,
    part: impl Fn() -> Node + 'static,
    other: impl Fn() -> Node + 'static,
) -> Node {
    let when: Box<dyn Fn() -> bool + Send + Sync> = Box::new(when);
    one_of(Memo::new(move |_| when()), Box::new(part), Box::new(other))
}

fn one_of(when: Memo<bool>, part: Box<dyn Fn() -> Node>, other: Box<dyn Fn() -> Node>) -> Node {
    Node::of(Part::Live(Box::new(move || {
        // What a part reads while it is described does not describe it anew.
        let described = if when.get() { &part } else { &other };
        untrack(described)
    })))
}

/// Puts a view into an element of the document, for good.
pub fn stand(root: web_sys::HtmlElement, view: impl FnOnce() -> Node + 'static) {
    // Leptos starts what runs its effects, and owns the signals that the view makes.
    let below = root.clone();
    leptos::mount::mount_to(root, move || {
        let standing = Standing::of(view(), false);
        standing.put(&below, None);
        // Effects end with what they write to, and the page never ends.
        std::mem::forget(standing);
    })
    .forget();
}

impl Node {
    #[inline(never)]
    fn of(part: Part) -> Self {
        Self(Box::new(part))
    }

    /// Changes an element's description; a view that is no element has none.
    fn with(mut self, change: impl FnOnce(&mut Element)) -> Self {
        if let Part::Element(element) = &mut *self.0 {
            change(element);
        }
        self
    }

    #[inline(never)]
    fn set(self, kind: Kind, value: Value) -> Self {
        self.with(|element| element.settings.push((kind, value)))
    }

    #[inline(never)]
    fn set_live(self, kind: Kind, value: Box<dyn FnMut() -> Option<Text>>) -> Self {
        self.set(kind, Value::Live(value))
    }

    #[inline(never)]
    fn listen(self, event: &'static str, handler: Handler) -> Self {
        // What answers finds what its view found.
        let owner = Owner::current();
        let handler: Handler = Rc::new(move |event| match &owner {
            Some(owner) => owner.with(|| handler(event)),
            None => handler(event),
        });
        self.with(|element| element.handlers.push((event, handler)))
    }

    /// Adds a part at the end of an element or of several.
    pub fn child(self, part: impl Into<Self>) -> Self {
        self.push(part.into())
    }

    #[inline(never)]
    fn push(mut self, part: Self) -> Self {
        match &mut *self.0 {
            Part::Element(element) => element.parts.push(part),
            Part::Many(parts) => parts.push(part),
            _ => {}
        }
        self
    }

    /// Sets an attribute; `false` and `None` leave it out.
    pub fn attr(self, name: &'static str, value: impl Setting) -> Self {
        value.set_on(self, name)
    }

    /// An attribute that follows signals.
    pub fn attr_live<T: Setting>(
        self,
        name: &'static str,
        value: impl Fn() -> T + 'static,
    ) -> Self {
        self.set_live(Kind::Attribute(name), Box::new(move || value().text()))
    }

    /// The class.
    pub fn class(self, names: impl Setting) -> Self {
        self.attr("class", names)
    }

    /// A class that is there while a condition holds.
    pub fn class_live(self, name: &'static str, on: impl Fn() -> bool + 'static) -> Self {
        self.set_live(Kind::Class(name), Box::new(move || on().text()))
    }

    /// A class that is there or not.
    pub fn class_if(self, name: &'static str, on: bool) -> Self {
        self.set(Kind::Class(name), Value::Fixed(on.text()))
    }

    /// The id.
    pub fn id(self, id: impl Setting) -> Self {
        self.attr("id", id)
    }

    /// A style property.
    pub fn style(self, name: &'static str, value: impl Setting) -> Self {
        self.set(Kind::Style(name), Value::Fixed(value.text()))
    }

    /// A style property that follows signals.
    pub fn style_live<T: Setting>(
        self,
        name: &'static str,
        value: impl Fn() -> T + 'static,
    ) -> Self {
        self.set_live(Kind::Style(name), Box::new(move || value().text()))
    }

    /// What stands in a box or is chosen from a list.
    pub fn value_live(self, value: impl Fn() -> String + 'static) -> Self {
        self.set_live(Kind::Value, Box::new(move || value().text()))
    }

    /// Whether a fold is open.
    pub fn open_live(self, open: impl Fn() -> bool + 'static) -> Self {
        self.set_live(Kind::Open, Box::new(move || open().text()))
    }
}
