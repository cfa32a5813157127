//! Holes on a board and pieces on a stock sheet: plane geometry, in any one unit of length.
//!
//! Long, because holes and pieces share the same few shapes and their tests.

use crate::science::units::Length;
use crate::science::units::length::meter;

/// Two lengths closer than this count as equal, as a share of the longer: a board cut from half a
/// sheet is half a sheet.
const EQUAL: f64 = 1e-9;
/// Most pieces along one side that are looked at.
const MOST_ALONG: f64 = 10_000.0;

/// How holes are arranged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Arrangement {
    /// Rows in line.
    Square,
    /// Every other row shifted by half the spacing along.
    Staggered,
    /// Every neighbour at the same distance: rows closer by √3/2, every other one shifted by half.
    Hexagonal,
}

/// A point on a board, from its corner: along the length, along the width.
pub type Place = (Length, Length);

/// The places of the holes on a board: as many as the spacing allows, spread evenly, so that no two
/// are closer than the spacing.
///
/// `length`, `width`: of the board, m. `along`, `across`: least spacing in the direction of the
/// length and of the width, m; hexagonal holes keep `across` in every direction. `edge`: least
/// distance from the middle of a hole to an edge, m; `None`: half the spacing, so that the pattern
/// runs on from board to board. Rows run along the length. No hole where none fits, or where a
/// length is not above zero.
///
/// Source: closed form; hexagonal rows lie √3/2 of the spacing apart.
///
/// ```
/// use slackwater::science::layout::{Arrangement, holes};
/// use slackwater::science::units::{Length, length::centimeter};
///
/// let cm = |value: f64| Length::new::<centimeter>(value);
/// let board = holes((cm(122.0), cm(61.0)), (cm(30.0), cm(20.0)), None, Arrangement::Square);
/// assert_eq!(board.len(), 12);
/// ```
pub fn holes(
    (length, width): (Length, Length),
    (along, across): (Length, Length),
    edge: Option<Length>,
    arrangement: Arrangement,
) -> Vec<Place> {
    let Some(lines) = lines((length, width), (along, across), edge, arrangement) else {
        return Vec::new();
    };
    let mut places = Vec::with_capacity(lines.rows.len() * lines.columns.len());
    for (index, &y) in lines.rows.iter().enumerate() {
        let offset = if index % 2 == 1 { lines.offset } else { 0.0 };
        for &x in &lines.columns {
            places.push((Length::new::<meter>(x + offset), Length::new::<meter>(y)));
        }
    }
    places
}

/// How many holes there are in a row along the length, and how many rows; as [`holes`].
///
/// ```
/// use slackwater::science::layout::{Arrangement, hole_rows};
/// use slackwater::science::units::{Length, length::centimeter};
///
/// let cm = |value: f64| Length::new::<centimeter>(value);
/// let board = hole_rows((cm(122.0), cm(61.0)), (cm(30.0), cm(20.0)), None, Arrangement::Square);
/// assert_eq!(board, (4, 3));
/// ```
pub fn hole_rows(
    board: (Length, Length),
    spacing: (Length, Length),
    edge: Option<Length>,
    arrangement: Arrangement,
) -> (usize, usize) {
    lines(board, spacing, edge, arrangement)
        .map_or((0, 0), |lines| (lines.columns.len(), lines.rows.len()))
}

/// Where rows and columns of holes run, m.
struct Lines {
    rows: Vec<f64>,
    columns: Vec<f64>,
    /// How far every other row is shifted.
    offset: f64,
}

fn lines(
    (length, width): (Length, Length),
    (along, across): (Length, Length),
    edge: Option<Length>,
    arrangement: Arrangement,
) -> Option<Lines> {
    let m = |value: Length| value.get::<meter>();
    let (length, width) = (m(length), m(width));
    let hexagonal = arrangement == Arrangement::Hexagonal;
    let along = if hexagonal { m(across) } else { m(along) };
    let between_rows = if hexagonal {
        m(across) * libm::sqrt(3.0) / 2.0
    } else {
        m(across)
    };
    if [length, width, along, between_rows]
        .iter()
        .any(|&value| !(value.is_finite() && value > 0.0))
    {
        return None;
    }
    let shifted = arrangement != Arrangement::Square;
    let rows = row(width, between_rows, edge.map(m), 0.0);
    // A shifted row needs half a spacing more; a single row has no neighbour to keep clear of.
    let shift = if shifted && rows.len() > 1 { 0.5 } else { 0.0 };
    let columns = row(length, along, edge.map(m), shift);
    let pitch = match columns[..] {
        [first, second, ..] => second - first,
        _ => along,
    };
    Some(Lines {
        rows,
        columns,
        offset: shift * pitch,
    })
}

/// Places along one side. `shift`: room for a shifted row, as a share of the pitch.
fn row(side: f64, spacing: f64, edge: Option<f64>, shift: f64) -> Vec<f64> {
    match edge {
        None => {
            let count = whole(side / spacing);
            let pitch = side / count as f64;
            // A quarter of the pitch to either side for rows that are shifted by half.
            let first = pitch * (0.5 - shift / 2.0);
            (0..count).map(|i| first + pitch * i as f64).collect()
        }
        Some(edge) => {
            let room = side - 2.0 * edge;
            if room < 0.0 {
                return Vec::new();
            }
            let gaps = (room / spacing - shift + EQUAL).floor();
            if gaps < 0.0 {
                return Vec::new();
            }
            let count = whole(gaps) + 1;
            let parts = gaps + shift;
            if parts <= 0.0 {
                return vec![side / 2.0];
            }
            let pitch = room / parts;
            (0..count).map(|i| edge + pitch * i as f64).collect()
        }
    }
}

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

/// At least one, at most [`MOST_ALONG`].
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped"
)]
fn whole(value: f64) -> usize {
    (value + EQUAL).floor().clamp(0.0, MOST_ALONG) as usize
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::units::length::centimeter;

    fn cm(value: f64) -> Length {
        Length::new::<centimeter>(value)
    }

    fn least_distance(places: &[Place]) -> f64 {
        let mut least = f64::INFINITY;
        for (index, a) in places.iter().enumerate() {
            for b in &places[..index] {
                let (x, y) = (a.0 - b.0, a.1 - b.1);
                least = least.min(libm::hypot(x.get::<centimeter>(), y.get::<centimeter>()));
            }
        }
        least
    }

    #[test]
    fn no_two_holes_are_closer_than_the_spacing_nor_nearer_to_the_edge() {
        for edge in [None, Some(cm(5.0)), Some(cm(12.0))] {
            for (length, width) in [(122.0, 61.0), (100.0, 33.0), (250.0, 125.0), (60.0, 60.0)] {
                for arrangement in [
                    Arrangement::Square,
                    Arrangement::Staggered,
                    Arrangement::Hexagonal,
                ] {
                    let places = holes(
                        (cm(length), cm(width)),
                        (cm(25.0), cm(20.0)),
                        edge,
                        arrangement,
                    );
                    assert!(!places.is_empty());
                    if places.len() > 1 {
                        assert!(least_distance(&places) >= 20.0 - 1e-9);
                    }
                    for (x, y) in places {
                        let (x, y) = (x.get::<centimeter>(), y.get::<centimeter>());
                        let edge = edge.map_or(5.0, |edge| edge.get::<centimeter>()) - 1e-9;
                        assert!(x >= edge && x <= length - edge, "{x} of {length}");
                        assert!(y >= edge && y <= width - edge, "{y} of {width}");
                    }
                }
            }
        }
    }

    #[test]
    fn hexagonal_holes_on_a_large_board_are_a_seventh_more() {
        // 2/√3 = 1.155: closest packing of circles in the plane.
        let count = |arrangement| {
            holes(
                (cm(4000.0), cm(4000.0)),
                (cm(20.0), cm(20.0)),
                None,
                arrangement,
            )
            .len() as f64
        };
        let ratio = count(Arrangement::Hexagonal) / count(Arrangement::Square);
        assert!((ratio - 1.1547).abs() < 0.01, "{ratio}");
    }

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
