//! Pots: frusta of cones that hang into the solution.

use super::piece::Piece;
use super::problem::{finite, positive};
use super::{Dimension, GeometryProblem, area_of, metres, volume_of};
use crate::science::units::{Area, Length, Volume};

/// The outside of a tapered round pot, hanging upright.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frustum {
    piece: Piece,
}

impl Frustum {
    /// A pot by its outside lengths, all finite and above zero.
    ///
    /// # Errors
    /// The first dimension that is out of range, or volumes beyond the range of numbers.
    ///
    /// Source: closed form, V = π h (R² + R r + r²) / 3.
    ///
    /// ```
    /// use slackwater::science::geometry::Frustum;
    /// use slackwater::science::units::{Length, length::centimeter, volume::cubic_centimeter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let pot = Frustum::new(cm(4.0), cm(6.0), cm(6.0))?;
    /// // π · 6 · (4 + 6 + 9) / 3 = 38 π cm³
    /// assert!((pot.volume().get::<cubic_centimeter>() - 119.381).abs() < 1e-3);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn new(
        bottom_diameter: Length,
        top_diameter: Length,
        height: Length,
    ) -> Result<Self, GeometryProblem> {
        let bottom = positive(Dimension::BottomDiameter, bottom_diameter)? / 2.0;
        let top = positive(Dimension::TopDiameter, top_diameter)? / 2.0;
        let height = positive(Dimension::Height, height)?;
        let piece = Piece::round(bottom, top, height);
        if piece.is_usable() {
            Ok(Self { piece })
        } else {
            Err(GeometryProblem::Unrepresentable)
        }
    }

    /// The volume of the whole pot.
    pub fn volume(&self) -> Volume {
        volume_of(self.piece.content)
    }

    /// The volume of the part that is under the surface. HOT.
    ///
    /// `immersion`: how far the bottom of the pot is below the surface; nothing is immersed at zero
    /// and below, all of it at its height and above. An immersion that is not a number gives a
    /// volume that is not a number.
    ///
    /// Source: closed form, V = π t (r² + r s + s²) / 3 with s the radius at the surface.
    ///
    /// ```
    /// use slackwater::science::geometry::Frustum;
    /// use slackwater::science::units::{Length, length::centimeter, volume::cubic_centimeter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let pot = Frustum::new(cm(4.0), cm(6.0), cm(6.0))?;
    /// // radius 2.5 cm at the surface: π · 3 · (4 + 5 + 6.25) / 3 = 15.25 π cm³
    /// assert!((pot.immersed_volume(cm(3.0)).get::<cubic_centimeter>() - 47.909).abs() < 1e-3);
    /// assert_eq!(pot.immersed_volume(cm(-1.0)).get::<cubic_centimeter>(), 0.0);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn immersed_volume(&self, immersion: Length) -> Volume {
        let t = metres(immersion);
        volume_of(if t <= 0.0 {
            0.0
        } else if t >= self.piece.height {
            self.piece.content
        } else {
            self.piece.content_at(t)
        })
    }

    /// The area that the pot takes out of the surface: the slope of
    /// [`immersed_volume`](Self::immersed_volume), zero when the surface is not between its bottom
    /// and its rim. HOT.
    ///
    /// `immersion`: as there.
    ///
    /// Source: closed form, π s² with s the radius at the surface.
    ///
    /// ```
    /// use slackwater::science::geometry::Frustum;
    /// use slackwater::science::units::{Length, area::square_centimeter, length::centimeter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let pot = Frustum::new(cm(4.0), cm(6.0), cm(6.0))?;
    /// assert!((pot.area_at(cm(3.0)).get::<square_centimeter>() - 19.635).abs() < 1e-3);
    /// assert_eq!(pot.area_at(cm(9.0)).get::<square_centimeter>(), 0.0);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn area_at(&self, immersion: Length) -> Area {
        let t = metres(immersion);
        area_of(if t <= 0.0 || t >= self.piece.height {
            0.0
        } else {
            self.piece.area_at(t)
        })
    }
}

/// The volume of the part of one pot that is under the surface, for a single question; where the
/// same pot is asked again and again, keep a [`Frustum`].
///
/// `bottom_diameter`, `top_diameter`, `height`: outside lengths, finite and above zero.
/// `immersion`: how far the bottom is below the surface; zero and below gives no volume, the height
/// and above the whole.
///
/// # Errors
/// The first dimension that is out of range, or an immersion that is not finite.
///
/// Source: closed form, as [`Frustum::immersed_volume`].
///
/// ```
/// use slackwater::science::geometry::immersed_frustum;
/// use slackwater::science::units::{Length, length::centimeter, volume::cubic_centimeter};
///
/// let cm = |value: f64| Length::new::<centimeter>(value);
/// let whole = immersed_frustum(cm(4.0), cm(6.0), cm(6.0), cm(7.0))?;
/// assert!((whole.get::<cubic_centimeter>() - 119.381).abs() < 1e-3);
/// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
/// ```
pub fn immersed_frustum(
    bottom_diameter: Length,
    top_diameter: Length,
    height: Length,
    immersion: Length,
) -> Result<Volume, GeometryProblem> {
    let pot = Frustum::new(bottom_diameter, top_diameter, height)?;
    finite(Dimension::Immersion, immersion)?;
    Ok(pot.immersed_volume(immersion))
}
