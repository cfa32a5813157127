//! Holes on a board and pieces on a stock sheet: plane geometry, in any one unit of length.
//!
//! Here stands what both share: when two lengths are equal, and counting whole parts.

mod cutting;
mod holes;

pub use cutting::{Cutting, Piece, cut};
pub use holes::{Arrangement, Place, hole_rows, holes};

/// Two lengths closer than this count as equal, as a share of the longer: a board cut from half a
/// sheet is half a sheet.
const EQUAL: f64 = 1e-9;
/// Most pieces along one side that are looked at.
const MOST_ALONG: f64 = 10_000.0;

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
fn cm(value: f64) -> crate::science::units::Length {
    crate::science::units::Length::new::<crate::science::units::length::centimeter>(value)
}
