//! The season's curves over one axis of days, and their twin in a table.

use std::fmt::Write as _;

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, live, several};

use super::{Days, last_day};
use crate::advice::{Curve, curves, day_ticks};
use crate::app::browser;
use crate::app::results::{fold, titled_table, working};
use crate::app::state::app;
use crate::app::words::{self, Worked};
use crate::plan::Dimension;

/// Level, head and conductivity one above the other; a finger or mouse on them sets the day.
pub fn curve_chart(days: Days) -> Node {
    let app = app();
    let all = Memo::new(move |_| {
        app.listed_with(|outcome| {
            outcome
                .as_ref()
                .map(|outcome| curves(&outcome.season, app.units.get()).to_vec())
                .unwrap_or_default()
        })
    });
    // The curves come a frame later than the section whose days the slider has.
    let last = Memo::new(move |_| app.listed_with(last_day));
    let across = move |day: usize| 100.0 * day as f64 / last.get().max(1) as f64;
    let set = move |event: &leptos::ev::PointerEvent| {
        if let Some(share) = browser::share_across(event) {
            days.go_to_share(share);
        }
    };
    let axis = move || {
        day_ticks(last.get())
            .into_iter()
            .map(|day| {
                el("span")
                    .style("left", format!("{:.3}%", across(day)))
                    .child(day)
            })
            .collect::<Node>()
    };
    let line = move |class, day: usize| {
        el("path")
            .class(class)
            .attr("d", format!("M{} 0V100", across(day)))
    };
    el("div")
        .class("curves")
        .attr("role", "group")
        .attr("aria-label", words::curves())
        .id("curves")
        .child(live(move || {
            all.get()
                .into_iter()
                .map(|curve| plot(curve, days, across))
                .collect::<Node>()
        }))
        .child(el("p").class("axis").child(live(axis)))
        .child(el("p").class("axis-name").child(words::curves_axis()))
        .child(
            el("div")
                .class("across")
                .on_pointer("pointerdown", set)
                .on_pointer("pointermove", set)
                .child(
                    el("svg")
                        .attr("viewBox", "0 0 100 100")
                        .attr("preserveAspectRatio", "none")
                        .attr("aria-hidden", "true")
                        .child(live(move || {
                            days.failing.get().map(|day| line("failing", day))
                        }))
                        .child(live(move || line("now", days.day.get()))),
                ),
        )
}

/// One curve with its name, the day's figure and its scale.
fn plot(curve: Curve, days: Days, across: impl Fn(usize) -> f64 + Copy + Send + 'static) -> Node {
    let app = app();
    let mut path = String::new();
    for (day, (_, share)) in curve.days.iter().enumerate() {
        let letter = if day == 0 { 'M' } else { 'L' };
        let _ = write!(
            path,
            "{letter}{:.3} {:.3}",
            across(day),
            100.0 - 100.0 * share
        );
    }
    let dimension = curve.dimension;
    let units = app.units.get();
    let ticks = curve.ticks;
    let name = words::curve(curve.of);
    let values = StoredValue::new(curve.days);
    let now = move || {
        let day = days.day.get();
        values.with_value(|values| (day, values.get(day).copied().unwrap_or_default()))
    };
    several()
        .child(
            el("p")
                .class("curve-name")
                .child(name)
                .child(el("strong").child(live(move || {
                    words::show(dimension, now().1.0, app.units.get())
                }))),
        )
        .child(
            el("div")
                .class("plot")
                .child(
                    el("svg")
                        .attr("viewBox", "0 0 100 100")
                        .attr("preserveAspectRatio", "none")
                        .attr("aria-hidden", "true")
                        .child(
                            el("path")
                                .class("grid")
                                .attr("d", "M0 0H100M0 50H100M0 100H100"),
                        )
                        .child(el("path").class("curve").attr("d", path))
                        .child(el("path").class("dot").attr_live("d", move || {
                            let (day, (_, share)) = now();
                            format!("M{:.3} {:.3}h0", across(day), 100.0 - 100.0 * share)
                        })),
                )
                .child(
                    el("span")
                        .class("tick top")
                        .child(words::show(dimension, ticks[1], units)),
                )
                .child(
                    el("span")
                        .class("tick")
                        .child(words::show(dimension, ticks[0], units)),
                ),
        )
}

/// Every day of the season in figures, the shown one marked.
pub fn day_table(days: Days) -> Node {
    let app = app();
    let rows = move || {
        let units = app.units.get();
        let each = app.listed_with(|outcome| {
            outcome
                .as_ref()
                .map(|outcome| outcome.season.days.clone())
                .unwrap_or_default()
        });
        each.into_iter()
            .enumerate()
            .map(|(index, day)| {
                let cells = [
                    words::show(Dimension::Length, day.level_cm, units),
                    words::show(Dimension::Length, day.gap_cm, units),
                    words::show(Dimension::Mass, day.head_g, units),
                    words::show(Dimension::Conductivity, day.ec_ms_per_cm, units),
                    words::fine(day.ph),
                ];
                let shown = move || (days.day.get() == index).then_some("true");
                el("tr")
                    .attr_live("aria-current", shown)
                    .child(el("td").child(day.day.to_string()))
                    .child(cells.map(|cell| el("td").child(cell)))
            })
            .collect::<Node>()
    };
    fold("fold", words::season_table(), move || {
        [
            titled_table(&words::season_heads(), words::season_table(), live(rows)),
            working(Worked::Days),
        ]
        .into()
    })
    .id("day-table")
}
