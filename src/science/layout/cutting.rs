//! Pieces on a stock sheet, and what is left of it.

use super::{EQUAL, MOST_ALONG, whole};
use crate::science::units::Length;
use crate::science::units::length::meter;

/// A rectangle on a sheet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// Corner nearest to the sheet's own, along its length.
    pub x: Length,
    /// The same, along its width.
    pub y: Length,
    /// Along the sheet's length.
    pub length: Length,
    /// Along the sheet's width.
    pub width: Length,
}

/// How equal pieces lie on one sheet, and what is left of it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Cutting {
    /// The pieces.
    pub pieces: Vec<Piece>,
    /// What is left, as rectangles that straight cuts through leave.
    pub offcuts: Vec<Piece>,
}

/// A [`Piece`] in plain metres.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Rectangle {
    x: f64,
    y: f64,
    length: f64,
    width: f64,
}

impl Rectangle {
    fn piece(self) -> Piece {
        let m = Length::new::<meter>;
        Piece {
            x: m(self.x),
            y: m(self.y),
            length: m(self.length),
            width: m(self.width),
        }
    }
}

/// A [`Cutting`] in plain metres.
#[derive(Default)]
struct Cuts {
    pieces: Vec<Rectangle>,
    offcuts: Vec<Rectangle>,
}

/// The most equal pieces that straight cuts right through can get from one sheet when it is cut into
/// at most three blocks, each with its pieces lying one way: every first cut along and across, every
/// cut of the larger rest, is tried, and the best kept; among equals the one with the largest single
/// offcut.
///
/// `sheet`, `piece`: length and width, m, above zero; a piece may be turned. No piece where none
/// fits.
///
/// Source: exhaustive search over guillotine patterns of blocks (method stated; for pieces of half,
/// a third or a quarter of a sheet it is exact).
///
/// ```
/// use slackwater::science::layout::cut;
/// use slackwater::science::units::{Length, length::centimeter};
///
/// let cm = |value: f64| Length::new::<centimeter>(value);
/// let sheet = cut((cm(244.0), cm(122.0)), (cm(122.0), cm(61.0)));
/// assert_eq!((sheet.pieces.len(), sheet.offcuts.len()), (4, 0));
/// ```
pub fn cut(sheet: (Length, Length), piece: (Length, Length)) -> Cutting {
    let m = |(a, b): (Length, Length)| (a.get::<meter>(), b.get::<meter>());
    let (sheet, piece) = (m(sheet), m(piece));
    if [sheet.0, sheet.1, piece.0, piece.1]
        .iter()
        .any(|&value| !(value.is_finite() && value > 0.0))
        || sheet.0 / piece.0.min(piece.1) > MOST_ALONG
        || sheet.1 / piece.0.min(piece.1) > MOST_ALONG
    {
        return Cutting::default();
    }
    let whole_sheet = Rectangle {
        x: 0.0,
        y: 0.0,
        length: sheet.0,
        width: sheet.1,
    };
    let found = best(whole_sheet, piece, 2);
    let shown = |list: Vec<Rectangle>| list.into_iter().map(Rectangle::piece).collect();
    Cutting {
        pieces: shown(found.pieces),
        offcuts: shown(found.offcuts),
    }
}

/// The best of one block, or of two parts of which each is cut again.
fn best(room: Rectangle, piece: (f64, f64), cuts: u32) -> Cuts {
    let turned = (piece.1, piece.0);
    let mut found = better(block(room, piece), block(room, turned));
    if cuts == 0 || found.pieces.is_empty() {
        return found;
    }
    for side in [piece.0, piece.1] {
        for along in [true, false] {
            let long = if along { room.length } else { room.width };
            for count in 1..=whole(long / side).min(60) {
                let at = side * count as f64;
                if at > long * (1.0 - EQUAL) || at <= 0.0 {
                    break;
                }
                let (mut near, mut far) = (room, room);
                if along {
                    near.length = at;
                    far.x += at;
                    far.length -= at;
                } else {
                    near.width = at;
                    far.y += at;
                    far.width -= at;
                }
                found = better(found, joined(near, far, piece, cuts));
            }
        }
    }
    found
}

fn joined(near: Rectangle, far: Rectangle, piece: (f64, f64), cuts: u32) -> Cuts {
    let mut both = best(near, piece, 0);
    let far = if both.pieces.is_empty() {
        return both;
    } else {
        best(far, piece, cuts - 1)
    };
    both.pieces.extend(far.pieces);
    both.offcuts.extend(far.offcuts);
    both
}

/// Rectangles that all lie one way, in rows from the corner.
fn block(room: Rectangle, (length, width): (f64, f64)) -> Cuts {
    let columns = whole_or_none(room.length / length);
    let rows = whole_or_none(room.width / width);
    if columns == 0 || rows == 0 {
        return Cuts {
            pieces: Vec::new(),
            offcuts: vec![room],
        };
    }
    let mut pieces = Vec::with_capacity(columns * rows);
    for row in 0..rows {
        for column in 0..columns {
            pieces.push(Rectangle {
                x: room.x + length * column as f64,
                y: room.y + width * row as f64,
                length,
                width,
            });
        }
    }
    let (used_length, used_width) = (length * columns as f64, width * rows as f64);
    let (end, side) = (room.length - used_length, room.width - used_width);
    let mut offcuts = Vec::new();
    // The larger of both strips keeps the corner.
    let end_is_whole = end * room.width >= side * room.length;
    if end > room.length * EQUAL {
        offcuts.push(Rectangle {
            x: room.x + used_length,
            y: room.y,
            length: end,
            width: if end_is_whole { room.width } else { used_width },
        });
    }
    if side > room.width * EQUAL {
        offcuts.push(Rectangle {
            x: room.x,
            y: room.y + used_width,
            length: if end_is_whole {
                used_length
            } else {
                room.length
            },
            width: side,
        });
    }
    Cuts { pieces, offcuts }
}

fn better(one: Cuts, other: Cuts) -> Cuts {
    let largest = |cutting: &Cuts| {
        cutting
            .offcuts
            .iter()
            .map(|offcut| offcut.length * offcut.width)
            .fold(0.0, f64::max)
    };
    let more = other.pieces.len() > one.pieces.len();
    let as_many = other.pieces.len() == one.pieces.len();
    // What rounding leaves of two equal areas is no reason to turn a board.
    if more || as_many && largest(&other) > largest(&one) * (1.0 + 1e-6) {
        other
    } else {
        one
    }
}

fn whole_or_none(value: f64) -> usize {
    if value + EQUAL < 1.0 { 0 } else { whole(value) }
}

#[cfg(test)]
mod tests {
    use super::super::cm;
    use super::*;

    #[test]
    fn pieces_lie_apart_within_the_sheet_and_nothing_is_lost() {
        for piece in [
            (122.0, 61.0),
            (100.0, 60.0),
            (70.0, 45.0),
            (244.0, 122.0),
            (90.0, 30.0),
        ] {
            let cutting = cut((cm(244.0), cm(122.0)), (cm(piece.0), cm(piece.1)));
            let all: Vec<Piece> = cutting
                .pieces
                .iter()
                .chain(&cutting.offcuts)
                .copied()
                .collect();
            let all: Vec<Rectangle> = all
                .iter()
                .map(|piece| Rectangle {
                    x: piece.x.value,
                    y: piece.y.value,
                    length: piece.length.value,
                    width: piece.width.value,
                })
                .collect();
            let area: f64 = all.iter().map(|piece| piece.length * piece.width).sum();
            assert!((area - 2.44 * 1.22).abs() < 1e-9, "{piece:?}: {area}");
            for (index, a) in all.iter().enumerate() {
                assert!(a.x >= 0.0 && a.x + a.length <= 2.44 + 1e-9);
                assert!(a.y >= 0.0 && a.y + a.width <= 1.22 + 1e-9);
                for b in &all[..index] {
                    let apart = a.x + a.length <= b.x + 1e-9
                        || b.x + b.length <= a.x + 1e-9
                        || a.y + a.width <= b.y + 1e-9
                        || b.y + b.width <= a.y + 1e-9;
                    assert!(apart, "{a:?} {b:?}");
                }
            }
        }
        assert_eq!(
            cut((cm(244.0), cm(122.0)), (cm(300.0), cm(10.0)))
                .pieces
                .len(),
            0
        );
        // Five by turning one strip, counted by hand: 2 × 2 of 80 × 60 and one turned in the rest.
        assert_eq!(
            cut((cm(220.0), cm(120.0)), (cm(80.0), cm(60.0)))
                .pieces
                .len(),
            5
        );
    }
}
