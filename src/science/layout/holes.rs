//! Holes on a board.

use super::{EQUAL, whole};
use crate::science::units::Length;
use crate::science::units::length::meter;

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
        m(across) * 3.0_f64.sqrt() / 2.0
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

#[cfg(test)]
mod tests {
    use super::super::cm;
    use super::*;
    use crate::science::units::length::centimeter;

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
}
