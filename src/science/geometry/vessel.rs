//! Vessels that hold nutrient solution: what can be asked of them.

use std::f64::consts::PI;

use super::piece::Piece;
use super::problem::{depth_within, volume_within};
use super::{GeometryProblem, area_of, length_of, metres, volume_of};
use crate::science::units::{Area, Length, Volume};

/// How wide the section is drawn at a depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Section {
    /// The radius of the circle of the same area.
    Round,
    /// Half of the length at the floor, m, and what each metre of depth adds to it.
    Rectangular { bottom: f64, slope: f64 },
}

/// The inside of a container, by depth above its floor.
///
/// Volume grows with depth without a gap; the free surface may jump where the outline does.
#[derive(Clone, Debug, PartialEq)]
pub struct Vessel {
    section: Section,
    /// At least one, from the floor up, each beginning where the one before ends.
    pieces: Vec<Piece>,
    depth_max: f64,
    capacity: f64,
}

impl Vessel {
    /// Puts pieces that all stand on the floor on top of each other.
    pub(super) fn stacked(
        section: Section,
        mut pieces: Vec<Piece>,
    ) -> Result<Self, GeometryProblem> {
        let mut depth_max = 0.0;
        let mut capacity = 0.0;
        for piece in &mut pieces {
            piece.depth = depth_max;
            piece.volume = capacity;
            depth_max = piece.top();
            capacity += piece.content;
        }
        Self::checked(section, pieces, depth_max, capacity)
    }

    pub(super) fn checked(
        section: Section,
        pieces: Vec<Piece>,
        depth_max: f64,
        capacity: f64,
    ) -> Result<Self, GeometryProblem> {
        if pieces.is_empty() || !depth_max.is_finite() || !pieces.iter().all(Piece::is_usable) {
            return Err(GeometryProblem::Unrepresentable);
        }
        Ok(Self {
            section,
            pieces,
            depth_max,
            capacity,
        })
    }

    /// The inside height.
    pub fn depth_max(&self) -> Length {
        length_of(self.depth_max)
    }

    /// The volume when full to the rim.
    pub fn capacity(&self) -> Volume {
        volume_of(self.capacity)
    }

    /// The depths at which the outline may bend, floor and rim included, from the floor up.
    pub fn bends(&self) -> impl Iterator<Item = Length> + '_ {
        let starts = self.pieces.iter().map(|piece| length_of(piece.depth));
        starts.chain(std::iter::once(self.depth_max()))
    }

    /// The volume of solution at a depth. HOT.
    ///
    /// `depth`: from 0 to [`depth_max`](Self::depth_max).
    ///
    /// # Errors
    /// [`GeometryProblem::DepthOutside`] below the floor, above the rim, or for a depth that is not
    /// a number.
    ///
    /// Source: the closed form of the constructor.
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let tray = Vessel::rectangular(cm(120.0), cm(60.0), cm(20.0))?;
    /// assert!((tray.volume_at(cm(5.0))?.get::<liter>() - 36.0).abs() < 1e-9);
    /// assert!(tray.volume_at(cm(21.0)).is_err());
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn volume_at(&self, depth: Length) -> Result<Volume, GeometryProblem> {
        Ok(volume_of(
            self.content_at(depth_within(depth, self.depth_max)?).0,
        ))
    }

    /// The free surface at a depth: the slope of volume. Where the outline jumps, the surface just
    /// above. HOT.
    ///
    /// `depth`: from 0 to [`depth_max`](Self::depth_max).
    ///
    /// # Errors
    /// [`GeometryProblem::DepthOutside`] below the floor, above the rim, or for a depth that is not
    /// a number.
    ///
    /// Source: the closed form of the constructor.
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, area::square_centimeter, length::centimeter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let tote = Vessel::tapered_rectangular(cm(50.0), cm(30.0), cm(60.0), cm(40.0), cm(30.0))?;
    /// let middle = tote.area_at(cm(15.0))?.get::<square_centimeter>();
    /// assert!((middle - 55.0 * 35.0).abs() < 1e-9);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn area_at(&self, depth: Length) -> Result<Area, GeometryProblem> {
        Ok(area_of(
            self.content_at(depth_within(depth, self.depth_max)?).1,
        ))
    }

    /// The depth that a volume reaches, exact to 1e-12 of itself (where the free surface shrinks to
    /// zero, at a rounded rim of measured points: as exact as the volume tells).
    ///
    /// `volume`: from 0 to [`capacity`](Self::capacity).
    ///
    /// # Errors
    /// [`GeometryProblem::VolumeOutside`] for a negative volume, more than the capacity, or not a
    /// number.
    ///
    /// Source: inverse of [`volume_at`](Self::volume_at) by Newton's method within a bracket (Press
    /// et al. 2007, Numerical Recipes, section 9.4).
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, Volume, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let tray = Vessel::rectangular(cm(120.0), cm(60.0), cm(20.0))?;
    /// let depth = tray.depth_at(Volume::new::<liter>(36.0))?;
    /// assert!((depth.get::<centimeter>() - 5.0).abs() < 1e-12);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn depth_at(&self, volume: Volume) -> Result<Length, GeometryProblem> {
        let volume = volume_within(volume, self.capacity)?;
        // No height is negative, so this guess is never taken.
        Ok(length_of(self.depth_of(volume, -1.0)))
    }

    /// The same as [`depth_at`](Self::depth_at), faster when `guess` is near: the level an hour
    /// ago. HOT.
    ///
    /// `volume`: from 0 to [`capacity`](Self::capacity). `guess`: any depth; a useless one costs
    /// time, never accuracy.
    ///
    /// # Errors
    /// [`GeometryProblem::VolumeOutside`] for a negative volume, more than the capacity, or not a
    /// number.
    ///
    /// Source: as [`depth_at`](Self::depth_at).
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, Volume, length::centimeter, volume::liter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let bucket = Vessel::tapered_round(cm(24.0), cm(30.0), cm(36.0))?;
    /// let depth = bucket.depth_near(bucket.volume_at(cm(20.0))?, cm(20.1))?;
    /// assert!((depth.get::<centimeter>() - 20.0).abs() < 1e-11);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn depth_near(&self, volume: Volume, guess: Length) -> Result<Length, GeometryProblem> {
        let volume = volume_within(volume, self.capacity)?;
        Ok(length_of(self.depth_of(volume, metres(guess))))
    }

    /// Half of the width of the outline at a depth, for drawing the vessel in section: the radius
    /// of a round vessel, half of the length of a rectangular one, the radius of the circle of the
    /// same area for measured points. Where the outline jumps, the width just above.
    ///
    /// `depth`: from 0 to [`depth_max`](Self::depth_max).
    ///
    /// # Errors
    /// [`GeometryProblem::DepthOutside`] below the floor, above the rim, or for a depth that is not
    /// a number.
    ///
    /// Source: the closed form of the constructor.
    ///
    /// ```
    /// use slackwater::science::geometry::Vessel;
    /// use slackwater::science::units::{Length, length::centimeter};
    ///
    /// let cm = |value: f64| Length::new::<centimeter>(value);
    /// let bucket = Vessel::tapered_round(cm(24.0), cm(30.0), cm(36.0))?;
    /// assert!((bucket.width_at(cm(18.0))?.get::<centimeter>() - 13.5).abs() < 1e-12);
    /// # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
    /// ```
    pub fn width_at(&self, depth: Length) -> Result<Length, GeometryProblem> {
        let depth = depth_within(depth, self.depth_max)?;
        let half = match self.section {
            Section::Round => (self.content_at(depth).1 / PI).sqrt(),
            Section::Rectangular { bottom, slope } => bottom + slope * depth,
        };
        Ok(length_of(half))
    }

    /// Volume (m³) and free surface (m²) at a checked depth (m).
    pub(super) fn content_at(&self, depth: f64) -> (f64, f64) {
        let above = self.pieces.partition_point(|piece| piece.depth <= depth);
        let piece = &self.pieces[above.saturating_sub(1)];
        let t = depth - piece.depth;
        // At the rim the cubic may miss the capacity by a rounding, at a rounded rim or floor its
        // slope may miss zero by one.
        let volume = if depth < self.depth_max {
            (piece.volume + piece.content_at(t)).min(self.capacity)
        } else {
            self.capacity
        };
        (volume, piece.area_at(t).max(0.0))
    }

    /// The depth (m) of a checked volume (m³), beginning at `guess` (m) if that is of any use.
    pub(super) fn depth_of(&self, volume: f64, guess: f64) -> f64 {
        if volume >= self.capacity {
            return self.depth_max;
        }
        let above = self.pieces.partition_point(|piece| piece.volume <= volume);
        let piece = &self.pieces[above.saturating_sub(1)];
        piece.depth + piece.height_at(volume - piece.volume, guess - piece.depth)
    }
}
