//! The drilling template: true scale, over pages that fit both A4 and US Letter.

use std::fmt::Write as _;

use crate::app::browser::dom::{Node, el};

use super::drawings::circle;
use crate::advice::LayoutOutcome;
use crate::app::words;
use crate::plan::UnitSystem;

/// What a page shows of the board, mm: with head and page margins it fits both kinds of paper.
const TILE: (f64, f64) = (182.0, 228.0);
/// The drawing on a page, mm.
const PAGE: (f64, f64) = (186.0, 254.0);
/// Where the tile begins on it, mm.
const CORNER: (f64, f64) = (2.0, 24.0);
/// Pages that anybody might join.
const MOST: usize = 100;
/// From the middle of a hole to the ends of its cross, mm.
const CROSS: f64 = 6.0;

/// How the board lies on the pages: along or turned by a right angle, whichever takes fewer.
struct Tiles {
    turned: bool,
    columns: usize,
    rows: usize,
}

impl Tiles {
    fn of(layout: &LayoutOutcome) -> Self {
        let count = |size: f64, tile: f64| {
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "boards are at most 100 m long"
            )]
            let number = (size / tile - 1e-9).ceil().clamp(1.0, 1e6) as usize;
            number
        };
        let (length, width) = (layout.board_length_mm, layout.board_width_mm);
        let along = (count(length, TILE.0), count(width, TILE.1));
        let across = (count(width, TILE.0), count(length, TILE.1));
        let turned = across.0 * across.1 < along.0 * along.1;
        let (columns, rows) = if turned { across } else { along };
        Self {
            turned,
            columns,
            rows,
        }
    }
}

/// How many pages the template takes; zero where it would be too many.
pub fn pages(layout: &LayoutOutcome) -> usize {
    let tiles = Tiles::of(layout);
    let pages = tiles.columns * tiles.rows;
    if layout.holes.is_empty() || pages > MOST {
        0
    } else {
        pages
    }
}

/// The pages.
pub fn template(layout: &LayoutOutcome, alarm: Option<&'static str>, units: UnitSystem) -> Node {
    if pages(layout) == 0 {
        return el("p").child(words::template_too_large());
    }
    let tiles = Tiles::of(layout);
    let (length, width) = (layout.board_length_mm, layout.board_width_mm);
    let size = if tiles.turned {
        (width, length)
    } else {
        (length, width)
    };
    // Turned, not mirrored, so that the drilled side stays the upper one.
    let holes: Vec<(f64, f64)> = layout
        .holes
        .iter()
        .map(|hole| {
            if tiles.turned {
                (width - hole.y_mm, hole.x_mm)
            } else {
                (hole.x_mm, hole.y_mm)
            }
        })
        .collect();
    let radius = layout.hole_diameter_mm / 2.0;
    (0..tiles.rows)
        .flat_map(|row| (0..tiles.columns).map(move |column| (row, column)))
        .map(|(row, column)| {
            let from = (column as f64 * TILE.0, row as f64 * TILE.1);
            page(&holes, (radius, size), from, (row, column), (alarm, units))
        })
        .collect::<Node>()
}

/// One page: head, check bar, and its part of the board.
fn page(
    holes: &[(f64, f64)],
    (radius, size): (f64, (f64, f64)),
    from: (f64, f64),
    (row, column): (usize, usize),
    (alarm, units): (Option<&'static str>, UnitSystem),
) -> Node {
    let reach = radius.max(CROSS);
    let here = |at: f64, from: f64, tile: f64| at > from - reach && at < from + tile + reach;
    let (mut round, mut crosses) = (String::new(), String::new());
    for &(x, y) in holes {
        if here(x, from.0, TILE.0) && here(y, from.1, TILE.1) {
            round.push_str(&circle(x, y, radius));
            let (left, top, both) = (x - CROSS, y - CROSS, 2.0 * CROSS);
            // Writing to a text cannot fail.
            let _ = write!(crosses, "M{left:.2} {y:.2}h{both}M{x:.2} {top:.2}v{both}");
        }
    }
    let (right, below) = (CORNER.0 + TILE.0, CORNER.1 + TILE.1);
    let middle = (CORNER.0 + TILE.0 / 2.0, CORNER.1 + TILE.1 / 2.0);
    let frame = format!(
        "M{} {}h{}v{}h-{}z",
        CORNER.0, CORNER.1, TILE.0, TILE.1, TILE.0
    );
    // Half of each cross on either page.
    let joins = format!(
        "M{0} {1}m-2 -3l4 6M{2} {1}m-2 -3l4 6M{3} {4}m-3 -2l6 4M{3} {5}m-3 -2l6 4",
        CORNER.0, middle.1, right, middle.0, CORNER.1, below
    );
    // The same letters stand on both sides of a join.
    let letter = |text: String, x: f64, y: f64| {
        el("text")
            .attr("x", format!("{x}"))
            .attr("y", format!("{y}"))
            .child(text)
    };
    let joined = |row: usize, column: usize, way: char| format!("{way}{}.{}", row + 1, column + 1);
    let letters = [
        (column > 0).then(|| letter(joined(row, column - 1, 'a'), CORNER.0 + 5.0, middle.1 - 4.0)),
        (from.0 + TILE.0 < size.0)
            .then(|| letter(joined(row, column, 'a'), right - 13.0, middle.1 - 4.0)),
        (row > 0).then(|| letter(joined(row - 1, column, 'b'), middle.0 + 4.0, CORNER.1 + 6.0)),
        (from.1 + TILE.1 < size.1)
            .then(|| letter(joined(row, column, 'b'), middle.0 + 4.0, below - 3.0)),
    ];
    let (bar, said) = words::template_check(units);
    let end = 2.0 + bar;
    let board = format!("M0 0h{:.2}v{:.2}h-{:.2}z", size.0, size.1, size.0);
    el("svg")
        .class("tile")
        .attr("width", format!("{}mm", PAGE.0))
        .attr("height", format!("{}mm", PAGE.1))
        .attr("viewBox", format!("0 0 {} {}", PAGE.0, PAGE.1))
        .attr("font-size", "3.2")
        .child(letter(
            words::template_page(row + 1, column + 1, alarm),
            2.0,
            4.0,
        ))
        .child(letter(words::template_join().to_owned(), 2.0, 9.0))
        .child(
            el("path")
                .class("check-bar")
                .attr("d", format!("M2 12v8M{end} 12v8M2 16h{bar}")),
        )
        .child(letter(said, end + 3.0, 17.0))
        .child(
            el("svg")
                .attr("x", CORNER.0)
                .attr("y", CORNER.1)
                .attr("width", TILE.0)
                .attr("height", TILE.1)
                .attr(
                    "viewBox",
                    format!("{} {} {} {}", from.0, from.1, TILE.0, TILE.1),
                )
                .child(el("path").class("board-edge").attr("d", board))
                .child(el("path").class("round").attr("d", round))
                .child(el("path").class("middle").attr("d", crosses)),
        )
        .child(el("path").class("tile-frame").attr("d", frame))
        .child(el("path").class("tile-join").attr("d", joins))
        .child(letters.into_iter().collect::<Node>())
}
