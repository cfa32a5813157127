//! A plan lived through hour by hour, from planting to harvest.
//!
//! Two courses that do not feed back on each other: the plants draw water by climate and leaf
//! area ([`plants`]), and the solution falls in its container ([`Tank`]). So one course of the
//! plants serves every pipe size and fill that is asked about.

mod chemistry;
mod day;
pub mod ensemble;
mod nutrients;
mod plants;
mod roots;
mod solution;

pub use chemistry::{Background, Chemistry, totals_of};
pub use nutrients::{Balance, Charge, MajorNutrient, NutrientDay, Nutrients, nutrients};
pub use plants::{Beyond, Hour, PlantCourse, plants, seedling};
pub use roots::{RootDay, Roots, roots};
pub use solution::{Cover, State, Tank};

/// Seasons are followed for at most this many days; a crop that is not ready by then will not be.
pub const LONGEST_DAYS: u32 = 150;
