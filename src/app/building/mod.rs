//! The tank as something to build: on the screen folded beside the figures, on paper as a build sheet
//! and a drilling template.

mod drawings;
mod paper;
mod template;

use leptos::prelude::*;

pub use paper::{Paper, PrintButton, Sheet};

use super::browser;
use super::results::Table;
use super::state::app;
use super::words;
use crate::advice::{Outcome, materials_csv};
use crate::plan::UnitSystem;

/// What of an outcome is shown, made anew when it changes.
fn of_outcome(what: fn(&Outcome, UnitSystem) -> Option<AnyView>) -> impl Fn() -> Option<AnyView> {
    let app = app();
    move || {
        let units = app.units.get();
        app.outcome
            .with(|outcome| outcome.as_ref().and_then(|outcome| what(outcome, units)))
    }
}

/// What must not be missed, over everything else.
#[component]
pub fn Alarm() -> impl IntoView {
    of_outcome(alarm)
}

fn alarm(outcome: &Outcome, units: UnitSystem) -> Option<AnyView> {
    let lines = words::alarms(outcome, units);
    (!lines.is_empty()).then(|| {
        view! {
            <section class="alarm" role="alert" aria-label=words::ALARM>
                <strong>{words::ALARM}</strong>
                {lines.into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
            </section>
        }
        .into_any()
    })
}

/// The folded section.
#[component]
pub fn Building() -> impl IntoView {
    let app = app();
    let built = Memo::new(move |_| {
        app.outcome.with(|outcome| {
            outcome
                .as_ref()
                .is_some_and(|outcome| outcome.build.is_some())
        })
    });
    view! {
        <Show when=move || built.get()>
            <details class="fold building" id="building">
                <summary>{words::BUILDING}</summary>
                <p class="hint">{words::BUILDING_MORE}</p>
                {of_outcome(body)}
            </details>
        </Show>
    }
    .into_any()
}

fn list(lines: Vec<String>) -> AnyView {
    lines
        .into_iter()
        .map(|line| view! { <li>{line}</li> })
        .collect_view()
        .into_any()
}

fn table(heads: &'static [&'static str], name: &'static str, rows: Vec<Vec<String>>) -> AnyView {
    let line = |row: Vec<String>| {
        let cells = row.into_iter().map(|cell| view! { <td>{cell}</td> });
        view! { <tr>{cells.collect_view()}</tr> }
    };
    view! {
        <Table heads name>{rows.into_iter().map(line).collect_view()}</Table>
    }
    .into_any()
}

/// A part under its heading.
fn part(heading: &'static str, content: AnyView) -> AnyView {
    view! { <section class="build-part"><h3>{heading}</h3>{content}</section> }.into_any()
}

/// Drawings, figures, parts, materials and running, alike on screen and paper.
fn body(outcome: &Outcome, units: UnitSystem) -> Option<AnyView> {
    let (build, layout) = (outcome.build.as_ref()?, outcome.layout.as_ref()?);
    let materials = browser::file_address("text/csv", &materials_csv(outcome));
    let running = outcome.running.as_ref().map(|running| {
        let steps = running
            .work
            .iter()
            .map(|&step| words::work_step(step).to_owned())
            .collect();
        view! {
            {part(
                words::BUILD_RUNNING,
                view! { <ul>{list(words::build_running(running, units))}</ul> }.into_any(),
            )}
            {part(words::BUILD_WORK, view! { <ol class="work">{list(steps)}</ol> }.into_any())}
        }
    });
    let got = view! {
        {table(
            &words::BUILD_MATERIAL_HEADS,
            words::BUILD_MATERIALS,
            words::build_materials(build, units),
        )}
        <p class="save-csv">
            <a class="save" download=words::MATERIALS_FILE href=materials>{words::SAVE_MATERIALS}</a>
        </p>
    };
    let made = view! {
        <ol class="work">{list(words::build_parts(outcome, units))}</ol>
        <p>{words::HOLE_ROWS}</p>
        <ul class="holes">{list(words::hole_rows(layout, units))}</ul>
    };
    let checks = table(
        &words::BUILD_CHECK_HEADS,
        words::BUILD_CHECKS,
        words::build_checks(outcome, units),
    );
    Some(
        view! {
            {part(words::BUILD_DRAWINGS, drawings::drawings(outcome, layout, units))}
            {part(words::BUILD_CHECKS, checks)}
            {part(words::BUILD_PARTS, made.into_any())}
            {part(words::BUILD_MATERIALS, got.into_any())}
            {running}
        }
        .into_any(),
    )
}
