//! The season's curves over one axis of days, and their twin in a table.

use std::fmt::Write as _;

use leptos::prelude::*;

use super::Days;
use crate::advice::{Curve, curves, day_ticks};
use crate::app::browser;
use crate::app::results::{Table, Working};
use crate::app::state::app;
use crate::app::words::{self, Worked};
use crate::plan::Dimension;

/// Level, head and conductivity one above the other; a finger or mouse on them sets the day.
#[component]
pub fn Curves(days: Days) -> impl IntoView {
    let app = app();
    let all = Memo::new(move |_| {
        app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .map(|outcome| curves(&outcome.season, app.units.get()).to_vec())
                .unwrap_or_default()
        })
    });
    let across = move |day: usize| {
        let last = days.last.get().max(1);
        100.0 * day as f64 / last as f64
    };
    let set = move |event: leptos::ev::PointerEvent| {
        if let Some(share) = browser::share_across(&event) {
            days.go_to_share(share);
        }
    };
    let axis = move || {
        day_ticks(days.last.get())
            .into_iter()
            .map(|day| view! { <span style:left=format!("{:.3}%", across(day))>{day}</span> })
            .collect_view()
    };
    let line =
        move |class, day: usize| view! { <path class=class d=format!("M{} 0V100", across(day))/> };
    view! {
        <div class="curves" role="group" aria-label=words::CURVES id="curves">
            {move || all.get().into_iter().map(|curve| plot(curve, days, across)).collect_view()}
            <p class="axis">{axis}</p>
            <p class="axis-name">{words::CURVES_AXIS}</p>
            <div class="across" on:pointerdown=set on:pointermove=set>
                <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
                    {move || days.failing.get().map(|day| line("failing", day))}
                    {move || line("now", days.day.get())}
                </svg>
            </div>
        </div>
    }
}

/// One curve with its name, the day's figure and its scale.
fn plot(
    curve: Curve,
    days: Days,
    across: impl Fn(usize) -> f64 + Copy + Send + 'static,
) -> AnyView {
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
    view! {
        <p class="curve-name">
            {name}
            <strong>{move || words::show(dimension, now().1.0, app.units.get())}</strong>
        </p>
        <div class="plot">
            <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
                <path class="grid" d="M0 0H100M0 50H100M0 100H100"/>
                <path class="curve" d=path/>
                <path
                    class="dot"
                    d=move || {
                        let (day, (_, share)) = now();
                        format!("M{:.3} {:.3}h0", across(day), 100.0 - 100.0 * share)
                    }
                />
            </svg>
            <span class="tick top">{words::show(dimension, ticks[1], units)}</span>
            <span class="tick">{words::show(dimension, ticks[0], units)}</span>
        </div>
    }
    .into_any()
}

/// Every day of the season in figures, the shown one marked.
#[component]
pub fn DayTable(days: Days) -> impl IntoView {
    let app = app();
    let rows = move || {
        let units = app.units.get();
        let each = app.outcome.with(|outcome| {
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
                view! {
                    <tr aria-current=shown>
                        <td>{day.day}</td>
                        {cells.map(|cell| view! { <td>{cell}</td> })}
                    </tr>
                }
            })
            .collect_view()
    };
    view! {
        <details class="fold" id="day-table">
            <summary>{words::SEASON_TABLE}</summary>
            <Table heads=&words::SEASON_HEADS name=words::SEASON_TABLE>{rows}</Table>
            <Working of=Worked::Days/>
        </details>
    }
}
