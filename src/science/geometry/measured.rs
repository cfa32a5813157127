//! A vessel of unknown shape, known by pouring in measured volumes and reading the depth.

use super::piece::Piece;
use super::problem::GeometryProblem;
use super::{cubic_metres, metres};
use crate::science::units::{Length, Volume};

/// With fewer points the end formula has nothing to stand on.
const LEAST_POINTS: usize = 3;

/// The pieces between the measured points: volume as a monotone cubic of depth.
///
/// Slopes inside: weighted harmonic mean (Fritsch & Butland 1984, which satisfies the condition of
/// Fritsch & Carlson 1980, so volume never falls with depth). Slopes at the ends: the three-point
/// formula of Moler (2004), Numerical Computing with MATLAB, section 3.6.
pub(super) fn pieces(points: &[(Volume, Length)]) -> Result<Vec<Piece>, GeometryProblem> {
    let knots = knots(points)?;
    let spans: Vec<Span> = knots
        .windows(2)
        .map(|pair| Span {
            width: pair[1].0 - pair[0].0,
            slope: (pair[1].1 - pair[0].1) / (pair[1].0 - pair[0].0),
        })
        .collect();
    let slopes = slopes(&spans);
    Ok(knots
        .windows(2)
        .zip(&spans)
        .zip(slopes.windows(2))
        .map(|((pair, span), ends)| {
            let mut piece = Piece::cubic(
                span.width,
                [
                    ends[0],
                    (3.0 * span.slope - 2.0 * ends[0] - ends[1]) / span.width,
                    (ends[0] + ends[1] - 2.0 * span.slope) / (span.width * span.width),
                ],
            );
            piece.depth = pair[0].0;
            piece.volume = pair[0].1;
            // The measured figures stand as they were given, free of the cubic's rounding.
            piece.content = pair[1].1 - pair[0].1;
            piece
        })
        .collect())
}

/// The interval between two neighbouring points: its depth (m) and its mean area (m²).
struct Span {
    width: f64,
    slope: f64,
}

/// Depths (m) and volumes (m³) of the checked points, the empty vessel first.
fn knots(points: &[(Volume, Length)]) -> Result<Vec<(f64, f64)>, GeometryProblem> {
    if points.len() < LEAST_POINTS {
        return Err(GeometryProblem::TooFewPoints {
            got: points.len(),
            least: LEAST_POINTS,
        });
    }
    let mut knots = vec![(0.0, 0.0)];
    let mut last = (0.0, 0.0);
    for (index, &(volume, depth)) in points.iter().enumerate() {
        let next = (metres(depth), cubic_metres(volume));
        if !(next.0.is_finite() && next.1.is_finite()) {
            return Err(GeometryProblem::PointNotFinite { index });
        }
        if index == 0 && next == (0.0, 0.0) {
            continue;
        }
        if next.0 <= last.0 || next.1 <= last.1 {
            return Err(GeometryProblem::NotIncreasing { index });
        }
        knots.push(next);
        last = next;
    }
    Ok(knots)
}

/// The slope (area, m²) at each point. There are at least two spans and all their slopes are
/// positive, so the cases of the source for falling or level data cannot occur.
fn slopes(spans: &[Span]) -> Vec<f64> {
    let mut slopes = Vec::with_capacity(spans.len() + 1);
    if let [first, second, ..] = spans {
        slopes.push(end_slope(first, second));
    }
    slopes.extend(spans.windows(2).map(|pair| {
        let before = 2.0 * pair[1].width + pair[0].width;
        let after = pair[1].width + 2.0 * pair[0].width;
        (before + after) / (before / pair[0].slope + after / pair[1].slope)
    }));
    if let [.., second, last] = spans {
        slopes.push(end_slope(last, second));
    }
    slopes
}

/// The slope at an end from the span there and its neighbour, never negative.
fn end_slope(end: &Span, neighbour: &Span) -> f64 {
    let three_point = ((2.0 * end.width + neighbour.width) * end.slope
        - end.width * neighbour.slope)
        / (end.width + neighbour.width);
    three_point.max(0.0)
}
