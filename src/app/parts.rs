//! What the pages of trials and notebooks are made of.

use std::rc::Rc;

use crate::app::browser::dom::{Node, Text, button, el};
use crate::plan::{Dimension, Entry, UnitSystem};

/// Things side by side.
pub fn row(parts: impl Into<Node>) -> Node {
    el("div").class("row").child(parts)
}

/// A heading that takes the focus.
pub fn heading(level: &'static str, id: &'static str, text: impl Into<Text>) -> Node {
    el(level).id(id).attr("tabindex", "-1").child(text.into())
}

/// A part under its heading.
pub fn part(title: &'static str, parts: impl Into<Node>) -> Node {
    el("section")
        .class("part")
        .child(el("h3").child(title))
        .child(parts)
}

/// Lines of a list.
pub fn items(lines: Vec<String>) -> Node {
    let item = |line| el("li").child(el("span").child(line));
    lines.into_iter().map(item).collect()
}

/// Paragraphs.
pub fn paragraphs(lines: Vec<String>) -> Node {
    lines.into_iter().map(|line| el("p").child(line)).collect()
}

/// A table; the first cell of a row names it.
pub fn table<T: AsRef<str>>(heads: &[T], rows: Vec<Vec<String>>) -> Node {
    let head: Node = heads
        .iter()
        .map(|head| {
            el("th")
                .attr("scope", "col")
                .child(head.as_ref().to_owned())
        })
        .collect();
    let line = |cells: Vec<String>| -> Node {
        let cell = |(place, cell): (usize, String)| {
            if place == 0 {
                el("th").attr("scope", "row").child(cell)
            } else {
                el("td").child(cell)
            }
        };
        el("tr").child(cells.into_iter().enumerate().map(cell).collect::<Node>())
    };
    el("table")
        .child(el("thead").child(el("tr").child(head)))
        .child(el("tbody").child(rows.into_iter().map(line).collect::<Node>()))
}

/// A frame that scrolls sideways.
pub fn scroll(name: &'static str, content: Node) -> Node {
    el("div")
        .class("scroll")
        .attr("tabindex", "0")
        .attr("role", "region")
        .attr("aria-label", name)
        .child(content)
}

/// A field: label, hint, control and what is wrong with it. The control answers to `id`.
pub fn field(
    id: String,
    label: impl Into<Text>,
    hint: impl Into<Text>,
    problem: Option<String>,
    control: Node,
) -> Node {
    let (hint_id, problem_id) = (format!("{id}-hint"), format!("{id}-problem"));
    let wrong = problem.is_some();
    let control = control
        .attr("aria-describedby", format!("{hint_id} {problem_id}"))
        .attr("aria-invalid", wrong.then_some("true"))
        .id(id.clone());
    el("div")
        .class(if wrong { "field wrong" } else { "field" })
        .child(el("label").attr("for", id).child(label.into()))
        .child(el("p").class("hint").id(hint_id).child(hint.into()))
        .child(control)
        .child(
            el("p")
                .class("problem")
                .id(problem_id)
                .child(problem.map(|text| el("span").class("bad").child(text))),
        )
}

/// A box to type into; what is typed is taken when it is left.
pub fn text_box(value: String, take: impl Fn(String) + 'static) -> Node {
    el("input")
        .attr("type", "text")
        .attr("autocomplete", "off")
        .attr("spellcheck", "false")
        .on_value("change", take)
        .value_live(move || value.clone())
}

/// A list to choose from: keys and names.
pub fn choice(
    options: Vec<(String, String)>,
    chosen: String,
    take: impl Fn(String) + 'static,
) -> Node {
    let option = |(key, name): (String, String)| el("option").attr("value", key).child(name);
    el("select")
        .child(options.into_iter().map(option).collect::<Node>())
        .on_value("change", take)
        .value_live(move || chosen.clone())
}

/// What was typed: a number in the page's units where it is one.
pub fn read(text: &str, dimension: Dimension, units: UnitSystem) -> Entry {
    dimension
        .read(text, units)
        .map_or_else(|_| Entry::from(text), Entry::from)
}

/// What is kept of a kind, and the way to a new one.
pub struct Kept {
    /// Id of the heading.
    pub id: &'static str,
    /// Heading, what it is about, and the name of the list.
    pub names: [&'static str; 3],
    /// Number and name of each.
    pub all: Vec<(usize, String)>,
    /// Shows one.
    pub open: Box<dyn Fn(usize)>,
    /// Button for a new one, where there is something to begin with.
    pub begin: Option<Node>,
    /// That one was deleted, and the way back.
    pub deleted: Option<[Node; 2]>,
}

impl Kept {
    /// The list; nothing where there is nothing to say.
    pub fn list(self) -> Node {
        let none = self.all.is_empty();
        if none && self.begin.is_none() && self.deleted.is_none() {
            return Node::default();
        }
        let [heading_text, more, name] = self.names;
        let open: Rc<dyn Fn(usize)> = self.open.into();
        let item = |(id, name): (usize, String)| {
            let open = Rc::clone(&open);
            el("li").child(button("plan").on("click", move || open(id)).child(name))
        };
        let list = (!none).then(|| {
            el("ul")
                .class("plans")
                .attr("aria-label", name)
                .child(self.all.into_iter().map(item).collect::<Node>())
        });
        let deleted = self
            .deleted
            .map(|parts| el("p").class("notice").child(parts));
        el("section")
            .class("kept-list")
            .attr("aria-labelledby", self.id)
            .child(heading("h2", self.id, heading_text))
            .child(el("p").class("hint").child(more))
            .child(el("div").attr("role", "status").child(deleted))
            .child(self.begin)
            .child(list)
    }
}
