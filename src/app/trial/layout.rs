//! The bench from above, the labels, and what is to be expected.

use super::kept::Shown;
use crate::app::browser::dom::{Node, el};
use crate::app::parts::{items, part, scroll, table};
use crate::app::words;
use crate::plan::UnitSystem;
use crate::trial::{TrialOutcome, Unit};

/// A container of the drawing: width, height, and the gap to the next.
const CELL: (u32, u32) = (120, 84);
const GAP: u32 = 10;
/// Letters of a name that fit into a container.
const FITS: usize = 16;

/// The drawing under its heading.
pub fn drawing(outcome: &TrialOutcome) -> Node {
    part(words::bench(), scroll(words::bench(), bench(outcome)))
}

/// A text in the drawing.
fn text(class: &'static str, x: u32, y: u32, content: String) -> Node {
    el("text")
        .class(class)
        .attr("x", x as usize)
        .attr("y", y as usize)
        .child(content)
}

/// Every container in its place, with number, letter, name and block: readable without colours.
pub fn bench(outcome: &TrialOutcome) -> Node {
    let rows = outcome.units.iter().map(|unit| unit.row).max().unwrap_or(1);
    let columns = outcome.units.iter().map(|unit| unit.column).max();
    let columns = columns.unwrap_or(1);
    let (wide, high) = (columns * (CELL.0 + GAP) + GAP, rows * (CELL.1 + GAP) + GAP);
    let all = outcome.units.iter().map(|unit| words::place(outcome, unit));
    let told = format!("{}: {}", words::bench(), all.collect::<Vec<_>>().join("; "));
    el("svg")
        .class("bench-plan")
        .attr("role", "img")
        .attr("aria-label", told)
        .attr("viewBox", format!("0 0 {wide} {high}"))
        .attr("width", wide as usize)
        .attr("height", high as usize)
        .child(
            outcome
                .units
                .iter()
                .map(|unit| cell(outcome, unit))
                .collect::<Node>(),
        )
}

fn cell(outcome: &TrialOutcome, unit: &Unit) -> Node {
    let x = GAP + (unit.column - 1) * (CELL.0 + GAP);
    let y = GAP + (unit.row - 1) * (CELL.1 + GAP);
    let name = outcome.treatments.get(unit.treatment);
    let name = name.map_or("", |it| it.name.as_str());
    let short = if name.chars().count() > FITS {
        name.chars().take(FITS - 1).chain(['…']).collect()
    } else {
        name.to_owned()
    };
    let (w, h) = CELL;
    el("g").child([
        el("path").attr("d", format!("M{x} {y}h{w}v{h}h-{w}z")),
        text("number", x + 8, y + 24, unit.unit.clone()),
        text(
            "letter",
            x + w - 8,
            y + 32,
            words::letter(unit.treatment).to_string(),
        ),
        text("name", x + 8, y + 54, short),
        text("name", x + 8, y + 74, words::block(outcome, unit)),
    ])
}

/// A label for each container.
pub fn labels(shown: &Shown, outcome: &TrialOutcome) -> Node {
    let label = |unit: &Unit| {
        let name = outcome.treatments.get(unit.treatment);
        let name = name.map_or("", |it| it.name.as_str());
        let place = [words::block(outcome, unit), words::row_and_place(unit)];
        let place = place.into_iter().filter(|it| !it.is_empty());
        el("li").child([
            el("p").child(words::trial_or_unnamed(&shown.trial.name)),
            el("p")
                .class("label-unit-number")
                .child(words::container_number(&unit.unit)),
            el("p")
                .class("label-variant")
                .child(words::variant_of(unit.treatment, name)),
            el("p").child(place.collect::<Vec<_>>().join(" · ")),
        ])
    };
    el("ul")
        .class("unit-labels")
        .child(outcome.units.iter().map(label).collect::<Node>())
}

/// What each variant is expected to bring; nothing without a plan.
pub fn expected(outcome: &TrialOutcome, units: UnitSystem) -> Node {
    let rows = words::expected_rows(outcome, units);
    if rows.is_empty() {
        return Node::default();
    }
    let rows = table(&words::expected_heads(), rows);
    part(
        words::expected(),
        [
            scroll(words::expected(), rows),
            el("p").class("hint").child(words::expected_more()),
        ],
    )
}

/// How many containers it takes.
pub fn needed(outcome: &TrialOutcome) -> Node {
    let lines = items(words::needed_lines(outcome));
    part(words::how_many(), el("ul").class("plain").child(lines))
}
