//! What the parts of a trial's view are made of.

use crate::app::browser::dom::{Node, Text, el};

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
    hint: &'static str,
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
        .child(el("p").class("hint").id(hint_id).child(hint))
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
