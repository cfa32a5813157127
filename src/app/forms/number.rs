//! Fields that are typed into.

use leptos::prelude::*;

use crate::app::browser;
use crate::app::browser::dom::{Node, action, button, el, given, live};

use super::lines::Lines;
use crate::app::state::{Note, Remark, app, field_id};
use crate::app::words;
use crate::plan::{Dimension, Entry, Field, MeasuredPair, Shape, UnitSystem, read_text};

/// A number with its unit, its label and what is wrong with it.
pub fn number_field(field: Field) -> Node {
    field_frame(field, move || quantity_box(field))
}

/// The box that a number is typed into. What is typed stays as typed while the box has the focus;
/// a number is then shown in the page's units, anything else word for word.
fn quantity_box(field: Field) -> Node {
    let app = app();
    let dimension = field
        .limits()
        .map_or(Dimension::Factor, |limits| limits.dimension);
    let typed = RwSignal::new(None::<String>);
    let text = move || {
        typed.get().unwrap_or_else(|| {
            app.written.track();
            match untrack(|| app.entry(field)) {
                Entry::Number(value) => words::number(dimension.text(value, app.units.get())),
                Entry::Text(text) => text,
            }
        })
    };
    let type_in = move |text: String| {
        let entry = match read_text(field, &words::as_typed(&text), app.units.get_untracked()) {
            Ok(value) => Entry::from(value),
            Err(_) => Entry::Text(text.clone()),
        };
        typed.set(Some(text));
        app.set_typed(field, entry);
    };
    // Minus signs and letters are missing on a phone's number pad.
    let signed = matches!(
        field,
        Field::Latitude | Field::Elevation | Field::TemperatureMin
    );
    // From the value that is entered, or that stands in.
    let step = move |up: bool| {
        let from = match app.entry(field) {
            Entry::Number(value) => Some(value),
            Entry::Text(_) => app.assumed(field),
        };
        if let Some(next) = from.and_then(|from| field.nudged(from, up, app.units.get_untracked()))
        {
            typed.set(None);
            app.set_entry(field, Entry::from(next));
        }
    };
    let stepper = move |up: bool| {
        field.has_steps().then(|| {
            button("step-by")
                .attr("tabindex", "-1")
                .attr("aria-label", words::step_by(field, up))
                .on("click", move || step(up))
                .child(if up { "+" } else { "−" })
        })
    };
    el("span")
        .class("box")
        .child(
            text_box(field, text)
                .attr("inputmode", if signed { "text" } else { "decimal" })
                .on_value("input", type_in)
                .on("blur", move || typed.set(None))
                .on_key(move |event| {
                    let up = match event.key().as_str() {
                        "ArrowUp" => true,
                        "ArrowDown" => false,
                        _ => return,
                    };
                    if field.has_steps() {
                        event.prevent_default();
                        step(up);
                    }
                }),
        )
        .child(
            el("span")
                .class("steps-by")
                .child(stepper(false))
                .child(stepper(true)),
        )
        .child(
            el("span")
                .class("unit")
                .attr("aria-hidden", "true")
                .child(live(move || words::symbol(dimension, app.units.get()))),
        )
}

/// The box of a field for what is typed.
fn text_box(field: Field, text: impl Fn() -> String + 'static) -> Node {
    let app = app();
    el("input")
        .id(field_id(field))
        .attr("name", field_id(field))
        .attr("type", "text")
        .attr("autocomplete", "off")
        .attr("spellcheck", "false")
        .value_live(text)
        .attr("aria-describedby", described_by(field))
        .attr_live("aria-invalid", move || {
            app.problem_of(field).map(|_| "true")
        })
}

/// A date: typed, or picked from the browser's own calendar.
pub fn date_field(field: Field) -> Node {
    let app = app();
    let text = move || match app.entry(field) {
        Entry::Text(text) => text,
        Entry::Number(value) => value.to_string(),
    };
    let write = move |text: String| app.set_entry(field, Entry::Text(text));
    // The browser complains of anything but a whole date.
    let picked = move || {
        if app.problem_of(field).is_some() {
            String::new()
        } else {
            text().trim().to_owned()
        }
    };
    field_frame(field, move || {
        el("span")
            .class("box")
            .child(text_box(field, text).on_value("input", write))
            .child(
                el("span").class("pick").child(calendar()).child(
                    el("input")
                        .class("picker")
                        .attr("type", "date")
                        .attr("aria-label", words::pick_date())
                        .value_live(picked)
                        .on_value("change", move |value| {
                            let picked = value;
                            // An emptied picker says nothing; the typed text stays.
                            if !picked.is_empty() {
                                write(picked);
                            }
                        }),
                ),
            )
            .child(action("quiet today", words::today(), move || {
                write(browser::today());
            }))
    })
}

/// What the button of a calendar shows; small screens' browsers draw nothing of their own.
fn calendar() -> Node {
    el("svg")
        .attr("viewBox", "0 0 24 24")
        .attr("aria-hidden", "true")
        .child(el("path").attr("d", "M4 6h16v14H4zM4 10h16M8 3v5M16 3v5"))
}

/// Ids of what explains a field.
pub fn described_by(field: Field) -> String {
    let id = field_id(field);
    format!("{id}-hint {id}-problem")
}

/// Label, hint, the control, and what is wrong with it. Absent while the plan's choices do not use
/// the field.
pub fn field_frame(field: Field, children: impl Fn() -> Node + 'static) -> Node {
    let app = app();
    let used = Memo::new(move |_| app.used.with(|used| used.contains(&field)));
    let id = field_id(field);
    let unit_in_words = move || {
        let symbol = field.limits().map_or("", |limits| {
            words::symbol(limits.dimension, app.units.get())
        });
        if symbol.is_empty() {
            String::new()
        } else {
            format!(" ({symbol})")
        }
    };
    given(
        move || used.get(),
        move || {
            el("div")
                .class("field")
                .class_live("wrong", move || app.problem_of(field).is_some())
                .child(
                    el("label")
                        .attr("for", id.clone())
                        .child(words::label(field))
                        .child(el("span").class("label-unit").child(live(unit_in_words))),
                )
                .child(
                    el("p")
                        .class("hint")
                        .id(format!("{id}-hint"))
                        .child(live(move || words::hint(field, app.units.get()))),
                )
                .child(children())
                .child(
                    el("p")
                        .class("problem")
                        .id(format!("{id}-problem"))
                        .child(live(move || {
                            message(app.note_of(field), field, app.units.get())
                        })),
                )
        },
    )
}

fn message(note: Note, field: Field, units: UnitSystem) -> Option<Node> {
    if let Some(problem) = note.problem {
        return Some(
            el("span")
                .class("bad")
                .child(words::problem_text(&problem, units)),
        );
    }
    if field == Field::Acid
        && let Some(wanted) = app().acid_is_wanted()
    {
        let text = words::acid_wanted_text(&wanted, units);
        return Some(el("span").class("care").child(text));
    }
    if field == Field::Date && app().sowing_is_past() {
        return Some(el("span").class("care").child(words::sowing_past()));
    }
    if field == Field::Date && app().sowing_is_far() {
        let today = words::date(&browser::today());
        return Some(el("span").class("hint").child(words::sowing_far(&today)));
    }
    Some(match note.remark? {
        Remark::Assumed(value) => el("span")
            .class("hint")
            .child(words::assumed_text(field, value, units)),
        Remark::Unusual(low, high) => el("span")
            .class("care")
            .child(words::unusual_text(field, low, high, units)),
    })
}

/// The lines of a vessel measured with a jug.
pub fn measured_pairs() -> Node {
    let app = app();
    let used = move || {
        app.plan.with(|plan| {
            plan.as_ref().and_then(|plan| plan.container.shape.known()) == Some(Shape::Measured)
        })
    };
    let pair = |index| {
        el("div")
            .class("pair")
            .child(pair_field(Field::MeasuredVolume(index)))
            .child(pair_field(Field::MeasuredDepth(index)))
    };
    let lines = Lines {
        field: Field::Measured,
        most: 60,
        count: |plan| plan.container.measured.len(),
        add: |plan| plan.container.measured.push(MeasuredPair::default()),
        remove: |plan| {
            plan.container.measured.pop();
        },
        first: Field::MeasuredVolume,
        line: pair,
    };
    given(used, move || lines.form())
}

/// One figure of a measured line; shown even while the line is empty and so not in use.
fn pair_field(field: Field) -> Node {
    let app = app();
    let id = field_id(field);
    el("div")
        .class("field")
        .child(
            el("label")
                .attr("for", id.clone())
                .child(words::label(field)),
        )
        .child(quantity_box(field))
        .child(
            el("p")
                .class("problem")
                .id(format!("{id}-problem"))
                .child(live(move || {
                    message(app.note_of(field), field, app.units.get())
                })),
        )
}
