//! Shapes that hold or displace nutrient solution: vessels, pipes on the floor, pots.
//!
//! Depth is counted upward from the lowest point of the inside floor. Every shape here is a stack
//! of pieces whose volume is a cubic of depth, so that volume, free surface and the depth
//! of a given volume are cheap closed forms that a season can ask for at every hour.
//!
//! ```
//! use slackwater::science::geometry::{Basin, HorizontalPipes, Vessel};
//! use slackwater::science::units::{Length, length::centimeter, volume::liter};
//!
//! let cm = |value: f64| Length::new::<centimeter>(value);
//! let tub = Vessel::rectangular(cm(100.0), cm(50.0), cm(30.0))?;
//! let pipes = HorizontalPipes::new(cm(10.0), None, cm(40.0), 5)?;
//! let basin = Basin::new(tub, Some(pipes))?;
//! // The pipes take up 5 · 40 cm · π · (5 cm)² = 15.7 L of the 150 L.
//! assert!((basin.capacity().get::<liter>() - 134.292).abs() < 1e-3);
//! # Ok::<(), slackwater::science::geometry::GeometryProblem>(())
//! ```

mod basin;
mod constructors;
mod frustum;
mod invert;
mod measured;
mod piece;
mod pipes;
mod problem;
#[cfg(test)]
mod properties;
mod vessel;

pub use basin::Basin;
pub use frustum::{Frustum, immersed_frustum};
pub use pipes::HorizontalPipes;
pub use problem::{Dimension, GeometryProblem};
pub use vessel::Vessel;

use crate::science::units::{Area, Length, Volume, area, length, volume};

/// The bare number of metres: inside this module all numbers are SI.
fn metres(value: Length) -> f64 {
    value.get::<length::meter>()
}

/// The bare number of cubic metres.
fn cubic_metres(value: Volume) -> f64 {
    value.get::<volume::cubic_meter>()
}

/// A length from a number of metres.
fn length_of(metres: f64) -> Length {
    Length::new::<length::meter>(metres)
}

/// An area from a number of square metres.
fn area_of(square_metres: f64) -> Area {
    Area::new::<area::square_meter>(square_metres)
}

/// A volume from a number of cubic metres.
fn volume_of(cubic_metres: f64) -> Volume {
    Volume::new::<volume::cubic_meter>(cubic_metres)
}
