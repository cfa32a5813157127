//! Fields that come in lines of their own, as many as the grower adds.

use leptos::prelude::*;

use crate::app::browser;
use crate::app::browser::dom::{Node, button, el, live};
use crate::app::state::{app, field_id};
use crate::app::words;
use crate::plan::{Field, Plan};

/// A list that grows and shrinks at its end.
#[derive(Clone, Copy)]
pub struct Lines {
    /// The field of the list as a whole.
    pub field: Field,
    /// Most lines that the form shows: a link or a file may hold more.
    pub most: usize,
    /// How many a plan has.
    pub count: fn(&Plan) -> usize,
    /// Adds an empty one.
    pub add: fn(&mut Plan),
    /// Takes the last away.
    pub remove: fn(&mut Plan),
    /// The field of a line that is filled in first.
    pub first: fn(u8) -> Field,
    /// What a line looks like.
    pub line: fn(u8) -> Node,
}

impl Lines {
    /// The list, what is wrong with it, and its two buttons.
    pub fn form(self) -> Node {
        let app = app();
        let lines = Memo::new(move |_| {
            app.plan
                .with(|plan| plan.as_ref().map_or(0, |plan| (self.count)(plan)))
        });
        let add = move || {
            app.edit(|plan| {
                if (self.count)(plan) < self.most {
                    (self.add)(plan);
                }
            });
            let last = lines.get_untracked().saturating_sub(1);
            let index = u8::try_from(last).unwrap_or(u8::MAX);
            browser::focus_soon(field_id((self.first)(index)));
        };
        let problem = move || {
            app.problem_of(self.field).map(|problem| {
                el("span")
                    .class("bad")
                    .child(words::problem_text(&problem, app.units.get()))
            })
        };
        el("div")
            .class("measured")
            .id(field_id(self.field))
            .attr("tabindex", "-1")
            .child(
                el("p")
                    .class("hint")
                    .child(live(move || words::hint(self.field, app.units.get()))),
            )
            .child(live(move || {
                (0..lines.get().min(self.most))
                    .filter_map(|index| u8::try_from(index).ok())
                    .map(self.line)
                    .collect::<Node>()
            }))
            .child(el("p").class("problem").child(live(problem)))
            .child(
                el("div")
                    .class("row")
                    .child(button("quiet").on("click", add).child(words::add_line()))
                    .child(
                        button("quiet")
                            .attr_live("disabled", move || lines.get() == 0)
                            .on("click", move || app.edit(self.remove))
                            .child(words::remove_line()),
                    ),
            )
    }
}
