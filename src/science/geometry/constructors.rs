//! Vessels by their shape and inside lengths, or by what was poured into them.

use super::piece::Piece;
use super::problem::{not_negative, positive};
use super::vessel::Section;
use super::{Dimension, GeometryProblem, Vessel, cubic_metres, measured, metres};
use crate::science::units::{Length, Volume};

impl Vessel {
    /// A vessel with upright walls and a round floor.
    ///
    /// `diameter` and `height`: inside lengths, finite and above zero.
    ///
    /// # Errors
    /// The first dimension that is out of range, or volumes beyond the range of numbers.
    ///
    /// Source: closed form, V = π d² h / 4.
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let vessel = Vessel::cylinder(cm(20.0), cm(10.0))?;
    /// assert!((vessel.capacity().get::<liter>() - 3.14159).abs() < 1e-5);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn cylinder(diameter: Length, height: Length) -> Result<Self, GeometryProblem> {
        let radius = positive(Dimension::Diameter, diameter)? / 2.0;
        let height = positive(Dimension::Height, height)?;
        Self::stacked(Section::Round, vec![Piece::round(radius, radius, height)])
    }

    /// A bucket: the frustum of a cone, standing on either end.
    ///
    /// `bottom_diameter`, `top_diameter`, `height`: inside lengths, finite and above zero.
    ///
    /// # Errors
    /// The first dimension that is out of range, or volumes beyond the range of numbers.
    ///
    /// Source: closed form, V = π h (R² + R r + r²) / 3.
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let bucket = Vessel::tapered_round(cm(24.0), cm(30.0), cm(36.0))?;
    /// // π · 36 · (12² + 12 · 15 + 15²) / 3 = 6588 π cm³
    /// assert!((bucket.capacity().get::<liter>() - 20.6968).abs() < 1e-4);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn tapered_round(
        bottom_diameter: Length,
        top_diameter: Length,
        height: Length,
    ) -> Result<Self, GeometryProblem> {
        let bottom = positive(Dimension::BottomDiameter, bottom_diameter)? / 2.0;
        let top = positive(Dimension::TopDiameter, top_diameter)? / 2.0;
        let height = positive(Dimension::Height, height)?;
        Self::stacked(Section::Round, vec![Piece::round(bottom, top, height)])
    }

    /// A box with upright walls. The section is drawn along its length.
    ///
    /// `length`, `width`, `height`: inside lengths, finite and above zero.
    ///
    /// # Errors
    /// The first dimension that is out of range, or volumes beyond the range of numbers.
    ///
    /// Source: closed form, V = L W h.
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let tray = Vessel::rectangular(cm(120.0), cm(60.0), cm(20.0))?;
    /// assert!((tray.capacity().get::<liter>() - 144.0).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn rectangular(
        length: Length,
        width: Length,
        height: Length,
    ) -> Result<Self, GeometryProblem> {
        let length = positive(Dimension::Length, length)?;
        let width = positive(Dimension::Width, width)?;
        let height = positive(Dimension::Height, height)?;
        Self::rectangular_piece((length, width), (length, width), height)
    }

    /// A storage box: rectangular floor and rim, four flat walls that lean linearly (a prismatoid,
    /// which need not be part of a pyramid). The section is drawn along its length.
    ///
    /// `bottom_length`, `bottom_width`, `top_length`, `top_width`, `height`: inside lengths, finite
    /// and above zero.
    ///
    /// # Errors
    /// The first dimension that is out of range, or volumes beyond the range of numbers.
    ///
    /// Source: closed form (prismoidal formula): h/6 times the sum of the area of the floor, that of
    /// the rim and four times the one halfway up.
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let tote = Vessel::tapered_rectangular(cm(50.0), cm(30.0), cm(60.0), cm(40.0), cm(30.0))?;
    /// // 30 · (1500 + 4 · 1925 + 2400) / 6 = 58 000 cm³
    /// assert!((tote.capacity().get::<liter>() - 58.0).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn tapered_rectangular(
        bottom_length: Length,
        bottom_width: Length,
        top_length: Length,
        top_width: Length,
        height: Length,
    ) -> Result<Self, GeometryProblem> {
        let bottom = (
            positive(Dimension::BottomLength, bottom_length)?,
            positive(Dimension::BottomWidth, bottom_width)?,
        );
        let top = (
            positive(Dimension::TopLength, top_length)?,
            positive(Dimension::TopWidth, top_width)?,
        );
        let height = positive(Dimension::Height, height)?;
        Self::rectangular_piece(bottom, top, height)
    }

    /// A bottle or jug: cylindrical body, conical shoulder, cylindrical neck.
    ///
    /// `body_diameter`, `body_height`, `neck_diameter`: inside lengths, finite and above zero, the
    /// neck no wider than the body. `shoulder_height`, `neck_height`: finite, zero or more (zero:
    /// there is no such part).
    ///
    /// # Errors
    /// The first dimension that is out of range, a neck wider than the body, or volumes beyond the
    /// range of numbers.
    ///
    /// Source: closed form, the sum of two cylinders and the frustum of a cone.
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let jug = Vessel::bottle(cm(16.0), cm(15.0), cm(6.0), cm(4.0), cm(3.0))?;
    /// // π · (64 · 15 + 6 · (64 + 16 + 4) / 3 + 4 · 3) = 1140 π cm³
    /// assert!((jug.capacity().get::<liter>() - 3.58142).abs() < 1e-5);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn bottle(
        body_diameter: Length,
        body_height: Length,
        shoulder_height: Length,
        neck_diameter: Length,
        neck_height: Length,
    ) -> Result<Self, GeometryProblem> {
        let body = positive(Dimension::BodyDiameter, body_diameter)? / 2.0;
        let body_height = positive(Dimension::BodyHeight, body_height)?;
        let shoulder_height = not_negative(Dimension::ShoulderHeight, shoulder_height)?;
        let neck = positive(Dimension::NeckDiameter, neck_diameter)? / 2.0;
        let neck_height = not_negative(Dimension::NeckHeight, neck_height)?;
        if neck > body {
            return Err(GeometryProblem::TooLarge {
                dimension: Dimension::NeckDiameter,
                got: neck_diameter,
                most: body_diameter,
            });
        }
        let mut pieces = vec![Piece::round(body, body, body_height)];
        if shoulder_height > 0.0 {
            pieces.push(Piece::round(body, neck, shoulder_height));
        }
        if neck_height > 0.0 {
            pieces.push(Piece::round(neck, neck, neck_height));
        }
        Self::stacked(Section::Round, pieces)
    }

    /// A vessel of any shape, known by pouring: volume is a monotone cubic of depth through the
    /// measured points, the free surface its slope. The section is drawn as if it were round.
    ///
    /// `points`: volume poured so far and the depth it reached, at least three points, both figures
    /// strictly increasing; the empty vessel (0, 0) may stand first and is implied otherwise. The
    /// last point is taken as the rim.
    ///
    /// Where the points ask for a rounded floor or rim, the free surface there is zero.
    ///
    /// # Errors
    /// Too few points, or the first point that is not finite or not above the one before it.
    ///
    /// Source: Fritsch & Carlson (1980), SIAM J. Numer. Anal. 17:238–246; inner slopes by Fritsch &
    /// Butland (1984), SIAM J. Sci. Stat. Comput. 5:300–304; end slopes by Moler (2004), Numerical
    /// Computing with MATLAB, section 3.6 (as in SciPy's `PchipInterpolator`).
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, Volume, length::centimeter, volume::liter};
    ///
    /// let point = |l: f64, cm: f64| (Volume::new::<liter>(l), Length::new::<centimeter>(cm));
    /// let vessel = Vessel::measured(&[point(4.0, 10.0), point(9.0, 20.0), point(15.0, 30.0)])?;
    /// assert_eq!(vessel.volume_at(Length::new::<centimeter>(20.0))?, Volume::new::<liter>(9.0));
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn measured(points: &[(Volume, Length)]) -> Result<Self, GeometryProblem> {
        let pieces = measured::pieces(points)?;
        let (capacity, depth_max) = points
            .last()
            .map(|&(volume, depth)| (cubic_metres(volume), metres(depth)))
            .ok_or(GeometryProblem::Unrepresentable)?;
        Self::checked(Section::Round, pieces, depth_max, capacity)
    }

    fn rectangular_piece(
        bottom: (f64, f64),
        top: (f64, f64),
        height: f64,
    ) -> Result<Self, GeometryProblem> {
        let section = Section::Rectangular {
            bottom: bottom.0 / 2.0,
            slope: (top.0 - bottom.0) / (2.0 * height),
        };
        Self::stacked(section, vec![Piece::rectangular(bottom, top, height)])
    }
}
