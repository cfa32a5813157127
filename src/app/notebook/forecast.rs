//! The forecast: its sentence, its bands before and after the readings, the level as a picture, and the
//! top-up.

use std::fmt::Write as _;

use leptos::prelude::*;

use super::kept::{Desk, Shown};
use crate::advice::day_ticks;
use crate::advice::notebook::{NotebookOutcome, Picture, picture};
use crate::app::browser::dom::{Node, el, live};
use crate::app::parts::{paragraphs, part, scroll, table};
use crate::app::words;
use crate::plan::{Dimension, UnitSystem};

/// When the solution ends, told politely and large; progress beside it.
pub fn sentence(desk: Desk, shown: &Shown) -> Node {
    let known = desk.known();
    let said = if !shown.plan_problems.is_empty() {
        let problems = shown.plan_problems.iter().take(3);
        let lines = problems.map(|problem| words::problem_line(problem, shown.units));
        format!(
            "{} {}",
            words::notebook_plan_wrong(),
            lines.collect::<Vec<_>>().join(" ")
        )
    } else if shown.waits() {
        words::forecast_waits().to_owned()
    } else if known.beyond {
        words::notebook_beyond().to_owned()
    } else {
        known.after.as_ref().map_or_else(
            || words::forecasting().to_owned(),
            |after| match shown.wrong_lines() {
                0 => told(after, shown),
                lines => format!(
                    "{} {}",
                    told(after, shown),
                    words::left_out(&lines.to_string())
                ),
            },
        )
    };
    let waits = !shown.plan_problems.is_empty() || shown.waits();
    let working = move || {
        let lived = desk.lived.get().filter(|_| known.working && !waits);
        lived.map_or_else(String::new, words::weighing)
    };
    el("div")
        .child(
            el("p")
                .class("pace")
                .class_if("stale", known.working)
                .attr("role", "status")
                .child(said),
        )
        .child(el("p").class("hint weighing").child(live(working)))
}

/// The sentence of a forecast.
pub fn told(after: &NotebookOutcome, shown: &Shown) -> String {
    if shown.notebook.closed {
        words::closed(after, shown.units)
    } else {
        words::pace(after)
    }
}

/// Everything else that is forecast.
pub fn forecast(desk: Desk, shown: &Shown) -> Node {
    let known = desk.known();
    let (Some(before), Some(after)) = (&known.before, &known.after) else {
        return Node::default();
    };
    let old = known.working || shown.waits();
    el("div")
        .class("forecast")
        .class_if("stale", old)
        .child(part(
            words::forecast(),
            [
                course(before, after, shown),
                scroll(words::forecast(), bands(before, after, shown)),
            ],
        ))
        .child((!shown.notebook.closed).then(|| part(words::top_up(), top_up(after, shown))))
}

/// The sentences and the picture.
pub fn course(before: &NotebookOutcome, after: &NotebookOutcome, shown: &Shown) -> Node {
    let picture = picture(before, after, shown.units);
    [
        paragraphs(words::weighed(after)),
        levels(&picture, after.readings > 0, shown.units),
    ]
    .into()
}

/// What most seasons come to, by the plan alone and after the readings.
pub fn bands(before: &NotebookOutcome, after: &NotebookOutcome, shown: &Shown) -> Node {
    let mut rows = words::forecast_rows(before, after, shown.units);
    let mut heads = &words::forecast_heads()[..];
    // Both columns are the same where nothing was read.
    if after.readings == 0 {
        heads = &heads[..2];
        for row in &mut rows {
            row.truncate(2);
        }
    }
    table(heads, rows)
}

/// What to add, or that nothing has to be.
pub fn top_up(after: &NotebookOutcome, shown: &Shown) -> Node {
    if after.readings == 0 {
        return el("p").child(words::top_up_waits());
    }
    let Some(top_up) = &after.top_up else {
        return el("p").child(words::no_top_up());
    };
    [
        el("p")
            .class("figure")
            .child(words::top_up_figure(top_up, shown.units)),
        paragraphs(words::top_up_lines(top_up, shown.units)),
    ]
    .into()
}

/// The level day by day.
fn levels(of: &Picture, read: bool, units: UnitSystem) -> Node {
    let across = |day: usize| 100.0 * day as f64 / of.last as f64;
    let up = |share: f64| 100.0 - 100.0 * share;
    // Writing to a text cannot fail.
    let line = |days: &mut dyn Iterator<Item = (usize, f64)>| {
        let mut path = String::new();
        for (day, share) in days {
            let letter = if path.is_empty() { 'M' } else { 'L' };
            let _ = write!(path, "{letter}{:.2} {:.2}", across(day), up(share));
        }
        path
    };
    let band = |days: &[[f64; 3]]| {
        let low = days.iter().map(|day| day[0]).enumerate();
        let high = days.iter().map(|day| day[2]).enumerate();
        let mut path = line(&mut high.chain(low.rev()));
        path.push('Z');
        path
    };
    let flat = |share: f64| format!("M0 {:.2}H100", up(share));
    let mut dots = String::new();
    for (day, share) in &of.readings {
        let _ = write!(dots, "M{:.2} {:.2}h0", across(*day), up(*share));
    }
    let mut middle = of.after.iter().map(|day| day[1]).enumerate();
    let path = |class: &'static str, d: String| el("path").class(class).attr("d", d);
    let marks = [
        path("grid", "M0 0H100M0 50H100M0 100H100".to_owned()),
        path("band-before", band(&of.before)),
        path("band-after", band(&of.after)),
        path("line-mark", flat(of.mark)),
        of.underside
            .map(|at| path("line-underside", flat(at)))
            .into(),
        of.ceiling
            .filter(|_| read)
            .map(|at| path("line-ceiling", flat(at)))
            .into(),
        path("curve", line(&mut middle)),
        path("dot", dots),
    ];
    let there = [
        !of.readings.is_empty(),
        true,
        read,
        true,
        of.underside.is_some(),
        read && of.ceiling.is_some(),
    ];
    let keys = ["dot", "after", "before", "mark", "underside", "ceiling"];
    let key = words::level_key().into_iter().zip(keys).zip(there);
    let key = key.filter(|(_, there)| *there).map(|((word, key), _)| {
        el("li")
            .class(key)
            .child(el("span").attr("aria-hidden", "true"))
            .child(if key == "after" && !read {
                words::level_key_plan()
            } else {
                word
            })
    });
    let tick = |class: &'static str, cm: f64| {
        el("span")
            .class(class)
            .child(words::show(Dimension::Length, cm, units))
    };
    let days = day_ticks(of.last).into_iter().map(|day| {
        el("span")
            .style("left", format!("{:.2}%", across(day)))
            .child(day)
    });
    el("figure").class("levels curves").child([
        el("figcaption").child(words::levels()),
        el("div")
            .class("plot")
            .child(
                el("svg")
                    .attr("viewBox", "0 0 100 100")
                    .attr("preserveAspectRatio", "none")
                    .attr("aria-hidden", "true")
                    .child(marks),
            )
            .child(tick("tick top", of.ticks[1]))
            .child(tick("tick", of.ticks[0])),
        el("p").class("axis").child(days.collect::<Node>()),
        el("p").class("axis-name").child(words::curves_axis()),
        el("ul").class("key").child(key.collect::<Node>()),
    ])
}
