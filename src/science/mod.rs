//! Laws of nature and published models, as plain functions of physical quantities.
//!
//! This floor knows no plan, no clock, no global state and no word that a user reads.

pub mod air;
pub mod beam;
pub mod canopy;
pub mod diurnal;
pub mod evapotranspiration;
pub mod flotation;
pub mod formula;
pub mod geometry;
pub mod growth;
pub mod hydrostatics;
pub mod importance;
pub mod label;
pub mod layout;
pub mod least_squares;
pub mod mosquitoes;
pub mod normal;
pub mod proton_balance;
pub mod random;
pub mod raw_water;
pub mod roots;
pub mod salinity;
pub mod solution;
pub mod statistics;
pub mod structure;
pub mod sun;
pub mod units;
pub mod water;

/// A value, or 0 where it is below that or no number. A comparison: `f64::max` is a call in
/// WebAssembly.
#[inline]
pub(crate) fn positive(value: f64) -> f64 {
    if value > 0.0 { value } else { 0.0 }
}
