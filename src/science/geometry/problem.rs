//! What can be wrong with a shape, or with a question put to it.

use super::{length_of, metres};
use crate::science::units::{Area, Length, Volume};

/// The dimension of a shape that a problem speaks of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Dimension {
    /// The one diameter of a cylinder, or the outside diameter of a pipe.
    Diameter,
    /// The diameter at the floor of a tapered round shape.
    BottomDiameter,
    /// The diameter at the rim of a tapered round shape.
    TopDiameter,
    /// The inside height of a vessel, or the height of a pot.
    Height,
    /// The length of a rectangular vessel, or of one pipe.
    Length,
    /// The width of a rectangular vessel.
    Width,
    /// The length at the floor of a tapered rectangular vessel.
    BottomLength,
    /// The width at the floor of a tapered rectangular vessel.
    BottomWidth,
    /// The length at the rim of a tapered rectangular vessel.
    TopLength,
    /// The width at the rim of a tapered rectangular vessel.
    TopWidth,
    /// The diameter of the body of a bottle.
    BodyDiameter,
    /// The height of the body of a bottle.
    BodyHeight,
    /// The height of the conical shoulder of a bottle.
    ShoulderHeight,
    /// The diameter of the neck of a bottle.
    NeckDiameter,
    /// The height of the neck of a bottle.
    NeckHeight,
    /// The wall thickness of a pipe.
    Wall,
    /// How much of a pot is under the surface.
    Immersion,
}

/// Why a shape cannot be built, or why it cannot answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum GeometryProblem {
    /// A dimension is not a number, or infinite.
    NotFinite {
        /// The dimension at fault.
        dimension: Dimension,
    },
    /// A dimension is zero or negative.
    NotPositive {
        /// The dimension at fault.
        dimension: Dimension,
        /// What was given.
        got: Length,
    },
    /// A dimension that may be zero is negative.
    Negative {
        /// The dimension at fault.
        dimension: Dimension,
        /// What was given.
        got: Length,
    },
    /// A dimension is larger than another one of the same shape allows: a neck wider than the
    /// body, a wall as thick as the radius.
    TooLarge {
        /// The dimension at fault.
        dimension: Dimension,
        /// What was given.
        got: Length,
        /// The most that the other dimensions allow.
        most: Length,
    },
    /// The dimensions are so large or so small that their volume is no longer a usable number.
    Unrepresentable,
    /// A table of measured points is too short.
    TooFewPoints {
        /// How many points were given.
        got: usize,
        /// The least number of points.
        least: usize,
    },
    /// A measured point is not a number, or infinite.
    PointNotFinite {
        /// Which of the given points, counted from 0.
        index: usize,
    },
    /// A measured point does not lie above the one before it (or above the empty vessel) in both
    /// volume and depth.
    NotIncreasing {
        /// Which of the given points, counted from 0.
        index: usize,
    },
    /// There are no pipes where pipes were announced.
    NoPipes,
    /// The pipes leave no free surface at some depth.
    PipesDoNotFit {
        /// The depth at which they do not fit.
        depth: Length,
        /// The plan area that the pipes take up there.
        pipes: Area,
        /// The plan area that the vessel offers there.
        vessel: Area,
    },
    /// A depth below the floor, above the rim, or not a number.
    DepthOutside {
        /// What was asked.
        got: Length,
        /// The inside height of the vessel.
        most: Length,
    },
    /// A volume below zero, above the capacity, or not a number.
    VolumeOutside {
        /// What was asked.
        got: Volume,
        /// The capacity.
        most: Volume,
    },
}

/// The metres of a dimension that must be finite and above zero.
pub(super) fn positive(dimension: Dimension, got: Length) -> Result<f64, GeometryProblem> {
    let value = finite(dimension, got)?;
    if value > 0.0 {
        Ok(value)
    } else {
        Err(GeometryProblem::NotPositive { dimension, got })
    }
}

/// The metres of a dimension that must be finite and may be zero.
pub(super) fn not_negative(dimension: Dimension, got: Length) -> Result<f64, GeometryProblem> {
    let value = finite(dimension, got)?;
    if value >= 0.0 {
        Ok(value)
    } else {
        Err(GeometryProblem::Negative { dimension, got })
    }
}

/// The metres of a dimension that must be finite.
pub(super) fn finite(dimension: Dimension, got: Length) -> Result<f64, GeometryProblem> {
    let value = metres(got);
    if value.is_finite() {
        Ok(value)
    } else {
        Err(GeometryProblem::NotFinite { dimension })
    }
}

/// The metres of a depth that must lie between the floor and the rim, both included.
pub(super) fn depth_within(got: Length, most: f64) -> Result<f64, GeometryProblem> {
    let value = metres(got);
    if (0.0..=most).contains(&value) {
        Ok(value)
    } else {
        Err(GeometryProblem::DepthOutside {
            got,
            most: length_of(most),
        })
    }
}

/// The cubic metres of a volume that must lie between zero and the capacity, both included.
pub(super) fn volume_within(got: Volume, most: f64) -> Result<f64, GeometryProblem> {
    let value = super::cubic_metres(got);
    if (0.0..=most).contains(&value) {
        Ok(value)
    } else {
        Err(GeometryProblem::VolumeOutside {
            got,
            most: super::volume_of(most),
        })
    }
}
