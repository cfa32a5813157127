//! The salts on the grower's shelf: from the list, or by a formula of one's own.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, button, el, given, live};

use super::lines::Lines;
use super::number_field;
use crate::app::state::{app, field_id, own_id};
use crate::app::words::{self, Worded};
use crate::catalog::Keyed;
use crate::catalog::salts::Salt;
use crate::plan::{Field, Pick, SaltLine};

/// The shelf.
pub fn salt_shelf() -> Node {
    Lines {
        field: Field::Salts,
        most: 24,
        count: |plan| plan.fertilizer.salts.len(),
        add: |plan| plan.fertilizer.salts.push(SaltLine::default()),
        remove: |plan| {
            plan.fertilizer.salts.pop();
        },
        first: Field::SaltChoice,
        line: salt_row,
    }
    .form()
}

#[expect(
    clippy::too_many_lines,
    reason = "one view, top to bottom, as it is seen"
)]
fn salt_row(index: u8) -> Node {
    let app = app();
    let field = Field::SaltChoice(index);
    let id = field_id(field);
    let key = Memo::new(move |_| {
        app.plan.with(|plan| {
            plan.as_ref()
                .and_then(|plan| plan.fertilizer.salts.get(usize::from(index)))
                .map(|line| line.salt.key().to_owned())
                .unwrap_or_default()
        })
    });
    let write = move |text: &str| {
        app.edit(|plan| {
            if let Some(line) = plan.fertilizer.salts.get_mut(usize::from(index)) {
                line.salt = Pick::from_key(text);
            }
        });
    };
    // A kept salt brings its purity and price with it.
    let choose = move |text: &str| match app.kept_salt(text) {
        None => write(text),
        Some(kept) => app.edit(|plan| {
            if let Some(line) = plan.fertilizer.salts.get_mut(usize::from(index)) {
                *line = kept;
            }
        }),
    };
    let listed = move || Salt::from_key(&key.get()).is_some();
    let kept = move || app.kept_salt(&key.get()).is_some();
    let line = move || {
        app.plan.with(|plan| {
            plan.as_ref()
                .and_then(|plan| plan.fertilizer.salts.get(usize::from(index)).cloned())
        })
    };
    el("div")
        .class("salt")
        .child(
            el("div")
                .class("field")
                .child(
                    el("label")
                        .attr("for", id.clone())
                        .child(words::label(field)),
                )
                .child(
                    el("select")
                        .id(id.clone())
                        .on_value("change", move |value| choose(&value))
                        .attr("aria-describedby", format!("{id}-problem"))
                        .attr_live("aria-invalid", move || {
                            app.problem_of(field).filter(|_| listed()).map(|_| "true")
                        })
                        .child(
                            el("option")
                                .attr("value", "")
                                .attr_live("selected", move || !listed() && !kept())
                                .child(words::choose_salt()),
                        )
                        .child(
                            Salt::ALL
                                .iter()
                                .map(|&salt| {
                                    el("option")
                                        .attr("value", salt.key())
                                        .attr_live("selected", move || key.get() == salt.key())
                                        .child(salt.word())
                                })
                                .collect::<Node>(),
                        )
                        .child(live(move || {
                            app.kept_salts()
                                .into_iter()
                                .map(|formula| {
                                    let chosen = key.get() == formula;
                                    el("option")
                                        .attr("value", formula.clone())
                                        .attr("selected", chosen)
                                        .child(formula.clone())
                                })
                                .collect::<Node>()
                        })),
                )
                .child(
                    el("p")
                        .class("problem")
                        .id(format!("{id}-problem"))
                        .child(live(move || {
                            app.problem_of(field).map(|problem| {
                                el("span")
                                    .class("bad")
                                    .child(words::problem_text(&problem, app.units.get()))
                            })
                        })),
                ),
        )
        .child(given(
            move || !listed(),
            move || {
                el("div")
                    .class("field")
                    .child(
                        el("label")
                            .attr("for", own_id(field))
                            .child(words::own_formula()),
                    )
                    .child(
                        el("input")
                            .id(own_id(field))
                            .attr("type", "text")
                            .attr("aria-describedby", format!("{}-problem", field_id(field)))
                            .attr_live("aria-invalid", move || {
                                app.problem_of(field).map(|_| "true")
                            })
                            .attr("autocomplete", "off")
                            .attr("spellcheck", "false")
                            .value_live(move || key.get())
                            .on_value("input", move |value| write(value.trim())),
                    )
            },
        ))
        .child(number_field(Field::SaltPurity(index)))
        .child(number_field(Field::SaltPrice(index)))
        .child(given(
            move || !listed() && !key.get().is_empty() && app.problem_of(field).is_none(),
            move || {
                button("quiet")
                    .on("click", move || {
                        if let Some(line) = line() {
                            app.keep_salt(line, !kept());
                        }
                    })
                    .child(live(move || {
                        if kept() {
                            words::forget_salt()
                        } else {
                            words::keep_salt()
                        }
                    }))
            },
        ))
}
