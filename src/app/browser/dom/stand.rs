//! What stands in the document, and how it comes to agree with a new description.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::Reflect;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

use super::{Element, Handler, Kind, Node, Part, Text, Value};

/// A part of the document. Each holds one node of the document at least, so that its place is known.
pub enum Standing {
    /// Marks the place of nothing.
    Nothing(web_sys::Node),
    Text(web_sys::Node, Text),
    Element(StandingElement),
    /// Several, and the mark of their end.
    Many(Vec<Standing>, web_sys::Node),
    Live(RenderEffect<Standing>),
}

/// An element of the document.
pub struct StandingElement {
    tag: &'static str,
    node: web_sys::Element,
    settings: Vec<(Kind, Set)>,
    listeners: Vec<Listener>,
    parts: Vec<Standing>,
}

/// A setting as it stands.
enum Set {
    Fixed(Option<Text>),
    Live(RenderEffect<Option<Text>>),
}

/// A registered answer to an event; the answer itself can be exchanged.
struct Listener {
    event: &'static str,
    handler: Rc<RefCell<Handler>>,
    closure: Closure<dyn Fn(web_sys::Event)>,
}

fn mark() -> web_sys::Node {
    document().create_comment("").into()
}

impl Standing {
    /// Makes what is described, outside of the document; `drawing`: inside an `svg` element.
    pub fn of(node: Node, drawing: bool) -> Self {
        match *node.0 {
            Part::Nothing => Self::Nothing(mark()),
            Part::Text(text) => Self::Text(document().create_text_node(&text).into(), text),
            Part::Element(element) => match StandingElement::of(element, drawing) {
                Some(element) => Self::Element(element),
                None => Self::Nothing(mark()),
            },
            Part::Many(nodes) => {
                let parts = nodes.into_iter().map(|node| Self::of(node, drawing));
                Self::Many(parts.collect(), mark())
            }
            Part::Live(describe) => Self::Live(follow(describe, None, drawing)),
        }
    }

    /// The first node of the document that belongs to it.
    fn first(&self) -> Option<web_sys::Node> {
        match self {
            Self::Nothing(node) | Self::Text(node, _) => Some(node.clone()),
            Self::Element(element) => Some(element.node.clone().into()),
            Self::Many(parts, end) => match parts.first() {
                Some(part) => part.first(),
                None => Some(end.clone()),
            },
            Self::Live(effect) => effect.with_value_mut(|standing| standing.first()).flatten(),
        }
    }

    /// Puts it below `parent`, before a node there or at the end.
    pub fn put(&self, parent: &web_sys::Node, before: Option<&web_sys::Node>) {
        let place = |node: &web_sys::Node| {
            // Both come from here; a document that refuses shows less, and says so itself.
            let _ = parent.insert_before(node, before);
        };
        match self {
            Self::Nothing(node) | Self::Text(node, _) => place(node),
            Self::Element(element) => place(&element.node),
            Self::Many(parts, end) => {
                for part in parts {
                    part.put(parent, before);
                }
                place(end);
            }
            Self::Live(effect) => {
                effect.with_value_mut(|standing| standing.put(parent, before));
            }
        }
    }

    /// Takes it out of the document.
    fn remove(self) {
        let take = |node: &web_sys::Node| {
            if let Some(parent) = node.parent_node() {
                // It is a child of this parent.
                let _ = parent.remove_child(node);
            }
        };
        match self {
            Self::Nothing(node) | Self::Text(node, _) => take(&node),
            Self::Element(mut element) => {
                element.end();
                take(&element.node);
            }
            Self::Many(parts, end) => {
                for part in parts {
                    part.remove();
                }
                take(&end);
            }
            Self::Live(effect) => {
                if let Some(standing) = effect.take_value() {
                    standing.remove();
                }
            }
        }
    }

    /// Makes it agree with a description: what is of the same kind stays and changes, what is not
    /// gives way.
    fn become_like(&mut self, node: Node, drawing: bool) {
        match (&mut *self, *node.0) {
            (Self::Nothing(_), Part::Nothing) => {}
            (Self::Text(standing, text), Part::Text(now)) => {
                if *text != now {
                    standing.set_text_content(Some(&now));
                    *text = now;
                }
            }
            (Self::Element(standing), Part::Element(element)) if standing.can_become(&element) => {
                standing.become_like(element, drawing);
            }
            (Self::Many(parts, end), Part::Many(nodes)) => {
                let end = end.clone();
                match_up(parts, nodes, drawing, &|part| {
                    if let Some(parent) = end.parent_node() {
                        part.put(&parent, Some(&end));
                    }
                });
            }
            (Self::Live(effect), Part::Live(describe)) => {
                // What the old effect wrote is the new one's beginning.
                let before = effect.take_value();
                *effect = follow(describe, before, drawing);
            }
            (_, part) => self.give_way(Node::of(part), drawing),
        }
    }

    fn give_way(&mut self, node: Node, drawing: bool) {
        let new = Self::of(node, drawing);
        if let Some(first) = self.first()
            && let Some(parent) = first.parent_node()
        {
            new.put(&parent, Some(&first));
        }
        std::mem::replace(self, new).remove();
    }
}

/// Follows the signals that a description reads, from what stands there or from nothing.
fn follow(
    mut describe: Box<dyn FnMut() -> Node>,
    before: Option<Standing>,
    drawing: bool,
) -> RenderEffect<Standing> {
    let again = move |before: Option<Standing>| {
        let node = describe();
        match before {
            Some(mut standing) => {
                standing.become_like(node, drawing);
                standing
            }
            None => Standing::of(node, drawing),
        }
    };
    RenderEffect::new_with_value(again, before)
}

/// Makes a row of parts agree with a row of descriptions, place by place; `add` puts a new one at
/// the end.
fn match_up(parts: &mut Vec<Standing>, nodes: Vec<Node>, drawing: bool, add: &dyn Fn(&Standing)) {
    for gone in parts.drain(nodes.len().min(parts.len())..) {
        gone.remove();
    }
    let standing = parts.len();
    for (place, node) in nodes.into_iter().enumerate() {
        if place < standing {
            parts[place].become_like(node, drawing);
        } else {
            let part = Standing::of(node, drawing);
            add(&part);
            parts.push(part);
        }
    }
}

impl StandingElement {
    fn of(element: Element, drawing: bool) -> Option<Self> {
        let drawing = drawing || element.tag == "svg";
        let document = document();
        let node = if drawing {
            document.create_element_ns(Some("http://www.w3.org/2000/svg"), element.tag)
        } else {
            document.create_element(element.tag)
        };
        let node = node.ok()?;
        let parts: Vec<Standing> = element
            .parts
            .into_iter()
            .map(|part| Standing::of(part, drawing))
            .collect();
        for part in &parts {
            part.put(&node, None);
        }
        let settings = element
            .settings
            .into_iter()
            .map(|(kind, value)| (kind, Set::of(kind, value, &node, None)))
            .collect();
        let listeners = element
            .handlers
            .into_iter()
            .map(|(event, handler)| Listener::new(&node, event, handler))
            .collect();
        Some(Self {
            tag: element.tag,
            node,
            settings,
            listeners,
            parts,
        })
    }

    /// Whether the description is one of the same element: the same tag, settings and events, and of the
    /// same thing where it says of what it is (`data-of`), so that a fold that was opened never stands
    /// open for something else.
    fn can_become(&self, element: &Element) -> bool {
        let kinds = self.settings.iter().map(|(kind, _)| kind);
        let events = self.listeners.iter().map(|listener| listener.event);
        self.tag == element.tag
            && kinds.eq(element.settings.iter().map(|(kind, _)| kind))
            && events.eq(element.handlers.iter().map(|(event, _)| *event))
            && self.settings.iter().zip(&element.settings).all(|(was, is)| {
                was.0 != Kind::Attribute("data-of")
                    || matches!((&was.1, &is.1), (Set::Fixed(was), Value::Fixed(is)) if was == is)
            })
    }

    fn become_like(&mut self, element: Element, drawing: bool) {
        let drawing = drawing || self.tag == "svg";
        let node = &self.node;
        for (listener, (_, handler)) in self.listeners.iter().zip(element.handlers) {
            listener.handler.replace(handler);
        }
        // Who describes a fold anew must know that it stands open before its contents are compared.
        if self.tag == "details"
            && node.has_attribute("open")
            && let Ok(event) = web_sys::Event::new("toggle")
        {
            // Nobody can forbid a fold to be open.
            let _ = node.dispatch_event(&event);
        }
        match_up(&mut self.parts, element.parts, drawing, &|part| {
            part.put(node, None);
        });
        for ((kind, set), (_, value)) in self.settings.iter_mut().zip(element.settings) {
            let before = match set {
                Set::Fixed(text) => text.take(),
                Set::Live(effect) => effect.take_value().flatten(),
            };
            *set = Set::of(*kind, value, node, before);
        }
    }

    /// No event of an element that goes away finds its answer any more.
    fn end(&mut self) {
        for listener in self.listeners.drain(..) {
            // It was registered so.
            let _ = self.node.remove_event_listener_with_callback(
                listener.event,
                listener.closure.as_ref().unchecked_ref(),
            );
        }
        for part in &mut self.parts {
            part.end();
        }
    }
}

impl Standing {
    /// Ends what an element holds. What stands in a live part is taken from its effect: that would
    /// keep it, and let it read signals that are gone, until its own end is told to it.
    fn end(&mut self) {
        match self {
            Self::Nothing(_) | Self::Text(..) => {}
            Self::Element(element) => element.end(),
            Self::Many(parts, _) => parts.iter_mut().for_each(Self::end),
            Self::Live(effect) => {
                if let Some(mut standing) = effect.take_value() {
                    standing.end();
                }
            }
        }
    }
}

impl Set {
    /// Writes a setting and keeps it; `before` is what stands there already.
    fn of(kind: Kind, value: Value, node: &web_sys::Element, before: Option<Text>) -> Self {
        match value {
            Value::Fixed(now) => {
                // Nothing stands where nothing has been written.
                if kind == Kind::Value || before != now {
                    write(node, kind, now.as_deref());
                }
                Self::Fixed(now)
            }
            Value::Live(mut value) => {
                let node = node.clone();
                let mut begins = Some(before);
                let again = move |before: Option<Option<Text>>| {
                    let before = begins.take().or(before).flatten();
                    let now = value();
                    // What stands in a box may have been bent by its limits or its reader.
                    if kind == Kind::Value || before != now {
                        write(&node, kind, now.as_deref());
                    }
                    now
                };
                Self::Live(RenderEffect::new(again))
            }
        }
    }
}

/// Writes a setting into the document. The names come from here, so the document takes them.
fn write(node: &web_sys::Element, kind: Kind, value: Option<&str>) {
    match (kind, value) {
        (Kind::Attribute(name), Some(value)) => {
            let _ = node.set_attribute(name, value);
        }
        (Kind::Attribute(name), None) => {
            let _ = node.remove_attribute(name);
        }
        (Kind::Class(name), value) => {
            let _ = node.class_list().toggle_with_force(name, value.is_some());
        }
        (Kind::Style(name), value) => {
            if let Some(node) = node.dyn_ref::<web_sys::HtmlElement>() {
                let _ = node.style().set_property(name, value.unwrap_or_default());
            }
        }
        // Written only where it differs: writing moves the caret.
        (Kind::Value, value) => {
            let name = "value".into();
            let value = value.unwrap_or_default().into();
            if Reflect::get(node, &name).ok().as_ref() != Some(&value) {
                let _ = Reflect::set(node, &name, &value);
            }
        }
        (Kind::Open, value) => {
            let _ = Reflect::set(node, &"open".into(), &value.is_some().into());
        }
    }
}

impl Listener {
    fn new(node: &web_sys::Element, event: &'static str, handler: Handler) -> Self {
        let handler = Rc::new(RefCell::new(handler));
        let answer = Rc::clone(&handler);
        let closure = Closure::<dyn Fn(web_sys::Event)>::new(move |event| {
            // Cloned first: what it does may exchange it.
            let handler = Rc::clone(&answer.borrow());
            handler(event);
        });
        // An event that the browser does not know never comes.
        let _ = node.add_event_listener_with_callback(event, closure.as_ref().unchecked_ref());
        Self {
            event,
            handler,
            closure,
        }
    }
}
