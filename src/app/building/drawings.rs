//! Drawings with dimensions: tank, board and stock sheets, in millimetres of the real thing.

use std::fmt::Write as _;

use crate::app::browser::dom::{Node, el};

use crate::advice::{LayoutOutcome, Outcome, SheetPiece};
use crate::app::words;
use crate::plan::UnitSystem;

/// Sheets that are cut in different ways and drawn; what is left is told in the list.
const MOST_SHEETS: usize = 4;

/// A drawing in the making.
struct Plan {
    /// What is drawn in one class of line each.
    paths: Vec<(&'static str, String)>,
    /// Place, turn and text.
    texts: Vec<(f64, f64, bool, String)>,
    /// Length and width of what is drawn.
    size: (f64, f64),
    units: UnitSystem,
}

impl Plan {
    fn new(size: (f64, f64), units: UnitSystem) -> Self {
        let outline = rectangle(0.0, 0.0, size.0, size.1);
        Self {
            paths: vec![("outline", outline)],
            texts: Vec::new(),
            size,
            units,
        }
    }

    /// Height of a letter.
    fn letter(&self) -> f64 {
        self.size.0.max(self.size.1 * 0.6) / 27.0
    }

    /// A dimension line across, from `from` to `to` at height `at`.
    fn across(&mut self, from: f64, to: f64, at: f64) {
        let tick = self.letter() * 0.4;
        let line = format!(
            "M{from:.1} {:.1}v{:.1}M{to:.1} {:.1}v{:.1}M{from:.1} {at:.1}H{to:.1}",
            at - tick,
            2.0 * tick,
            at - tick,
            2.0 * tick
        );
        self.paths.push(("measure", line));
        let text = words::drawn_length(to - from, self.units);
        self.texts
            .push((f64::midpoint(from, to), at - tick * 1.2, false, text));
    }

    /// A dimension line down.
    fn down(&mut self, from: f64, to: f64, at: f64) {
        let tick = self.letter() * 0.4;
        let line = format!(
            "M{:.1} {from:.1}h{:.1}M{:.1} {to:.1}h{:.1}M{at:.1} {from:.1}V{to:.1}",
            at - tick,
            2.0 * tick,
            at - tick,
            2.0 * tick
        );
        self.paths.push(("measure", line));
        let text = words::drawn_length(to - from, self.units);
        self.texts
            .push((at - tick * 1.2, f64::midpoint(from, to), true, text));
    }

    fn figure(self, caption: String) -> Node {
        let letter = self.letter();
        let margin = letter * 4.2;
        let (length, width) = self.size;
        let frame = format!(
            "{:.1} {:.1} {:.1} {:.1}",
            -margin,
            -margin,
            length + 2.0 * margin,
            width + 2.0 * margin
        );
        let paths = self
            .paths
            .into_iter()
            .map(|(class, d)| el("path").class(class).attr("d", d))
            .collect::<Node>();
        let texts = self
            .texts
            .into_iter()
            .map(|(x, y, turned, text)| {
                let turn = turned.then(|| format!("rotate(-90 {x:.1} {y:.1})"));
                el("text")
                    .attr("x", format!("{x:.1}"))
                    .attr("y", format!("{y:.1}"))
                    .attr("transform", turn)
                    .child(text)
            })
            .collect::<Node>();
        el("figure")
            .class("plan-drawing")
            .child(
                el("svg")
                    .attr("viewBox", frame)
                    .attr("role", "img")
                    .attr("aria-label", caption.clone())
                    .attr("font-size", format!("{letter:.1}"))
                    .attr("text-anchor", "middle")
                    .child(paths)
                    .child(texts),
            )
            .child(el("figcaption").child(caption))
    }
}

/// A rectangle as a path.
fn rectangle(x: f64, y: f64, length: f64, width: f64) -> String {
    format!("M{x:.1} {y:.1}h{length:.1}v{width:.1}h-{length:.1}z")
}

/// A circle as a path.
pub(super) fn circle(x: f64, y: f64, radius: f64) -> String {
    let across = 2.0 * radius;
    format!(
        "M{:.2} {y:.2}a{radius:.2} {radius:.2} 0 1 0 {across:.2} 0a{radius:.2} {radius:.2} 0 1 0 -{across:.2} 0z",
        x - radius
    )
}

/// Tank, board and sheets.
pub fn drawings(outcome: &Outcome, layout: &LayoutOutcome, units: UnitSystem) -> Node {
    el("div")
        .class("plan-drawings")
        .child(tank(outcome, layout, units))
        .child(board(outcome, layout, units))
        .child(sheets(layout, units))
}

fn tank(outcome: &Outcome, layout: &LayoutOutcome, units: UnitSystem) -> Option<Node> {
    let timber = &outcome.build.as_ref()?.timber;
    // The long sides run over the ends.
    let size = (timber.long_mm - 2.0 * timber.thickness_mm, timber.short_mm);
    let mut plan = Plan::new(size, units);
    let letter = plan.letter();
    let [mut boards, mut strips, mut rows] = [const { String::new() }; 3];
    for place in &layout.boards {
        let (x, y) = (place.x_mm, place.y_mm);
        let shape = rectangle(x, y, place.length_mm, place.width_mm);
        if place.strip {
            strips.push_str(&shape);
        } else {
            boards.push_str(&shape);
        }
    }
    let mut lengthwise = |at: f64| {
        // Writing to a text cannot fail.
        let _ = write!(rows, "M0 {at:.1}H{:.1}", size.0);
    };
    if let Some(boards) = &outcome.boards {
        let pipe = &boards.structure.pipe;
        for index in 0..pipe.count {
            let from_middle = f64::from(index) - f64::from(pipe.count - 1) / 2.0;
            lengthwise(size.1 / 2.0 + pipe.spacing_mm * from_middle);
        }
    }
    let props = outcome
        .build
        .as_ref()
        .and_then(|build| build.cover.as_ref());
    for &at in props.map_or(&[][..], |cover| &cover.props_at_mm) {
        lengthwise(at);
    }
    plan.paths.push(("piece", boards));
    plan.paths.push(("offcut", strips));
    plan.paths.push(("support", rows));
    plan.across(0.0, size.0, size.1 + letter * 2.0);
    plan.down(0.0, size.1, -letter);
    if let Some(first) = layout.boards.first() {
        plan.across(first.x_mm, first.x_mm + first.length_mm, -letter);
        plan.down(
            first.y_mm,
            first.y_mm + first.width_mm,
            size.0 + letter * 2.2,
        );
    }
    Some(plan.figure(words::tank_caption(outcome, units)))
}

fn board(outcome: &Outcome, layout: &LayoutOutcome, units: UnitSystem) -> Node {
    let size = (layout.board_length_mm, layout.board_width_mm);
    let mut plan = Plan::new(size, units);
    let letter = plan.letter();
    let radius = layout.hole_diameter_mm / 2.0;
    let holes = layout
        .holes
        .iter()
        .map(|hole| circle(hole.x_mm, hole.y_mm, radius))
        .collect();
    plan.paths.push(("hole", holes));
    plan.across(0.0, size.0, size.1 + letter * 2.0);
    plan.down(0.0, size.1, size.0 + letter * 2.2);
    if let Some(first) = layout.holes.first() {
        // Further out than the next, so that their texts do not meet.
        plan.across(0.0, first.x_mm, -letter * 2.5);
        plan.down(0.0, first.y_mm, -letter * 2.5);
        let same_row = |y: f64| (y - first.y_mm).abs() < 0.01;
        let next = layout.holes.get(1).filter(|next| same_row(next.y_mm));
        if let Some(next) = next {
            plan.across(first.x_mm, next.x_mm, -letter);
        }
        if let Some(below) = layout.holes.iter().find(|hole| !same_row(hole.y_mm)) {
            plan.down(first.y_mm, below.y_mm, -letter);
        }
    }
    plan.figure(words::board_caption(
        layout,
        outcome.boards.is_some(),
        units,
    ))
}

/// Sheets that are cut alike are drawn once.
fn sheets(layout: &LayoutOutcome, units: UnitSystem) -> Node {
    let on = |all: &[SheetPiece], sheet: u32| -> Vec<SheetPiece> {
        let here = all.iter().filter(|piece| piece.sheet == sheet);
        here.copied()
            .map(|piece| SheetPiece { sheet: 0, ..piece })
            .collect()
    };
    let mut ways: Vec<(usize, Vec<SheetPiece>, Vec<SheetPiece>)> = Vec::new();
    // Sheets beyond those that are told piece by piece are cut like them.
    let told = layout.pieces.iter().map(|piece| piece.sheet).max();
    for sheet in 1..=told.unwrap_or(0) {
        let (pieces, offcuts) = (on(&layout.pieces, sheet), on(&layout.offcuts, sheet));
        match ways
            .iter_mut()
            .find(|way| way.1 == pieces && way.2 == offcuts)
        {
            Some(way) => way.0 += 1,
            None => ways.push((1, pieces, offcuts)),
        }
    }
    ways.into_iter()
        .take(MOST_SHEETS)
        .map(|(count, pieces, offcuts)| {
            let mut plan = Plan::new(layout.sheet_mm, units);
            let letter = plan.letter();
            let caption = words::sheet_caption(count, pieces.len(), offcuts.len());
            for (class, all) in [("piece", pieces), ("offcut", offcuts)] {
                let mut shapes = String::new();
                for piece in all {
                    let (x, y) = (piece.x_mm, piece.y_mm);
                    shapes.push_str(&rectangle(x, y, piece.length_mm, piece.width_mm));
                    let middle = (
                        x + piece.length_mm / 2.0,
                        y + piece.width_mm / 2.0 + letter / 3.0,
                    );
                    // A text that would not fit says nothing.
                    if piece.length_mm > letter * 10.0 && piece.width_mm > letter * 1.2 {
                        let text = format!(
                            "{} × {}",
                            words::drawn_length(piece.length_mm, units),
                            words::drawn_length(piece.width_mm, units)
                        );
                        plan.texts.push((middle.0, middle.1, false, text));
                    }
                }
                plan.paths.push((class, shapes));
            }
            plan.across(0.0, layout.sheet_mm.0, layout.sheet_mm.1 + letter * 2.0);
            plan.down(0.0, layout.sheet_mm.1, -letter);
            plan.figure(caption)
        })
        .collect::<Node>()
}
