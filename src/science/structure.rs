//! What boards, covers and sides do under their load: quantities and problems that the laws of
//! beams, sheets, side pressure and trim share.

use crate::science::units::Force;
use crate::science::units::Length;
use crate::science::units::force::newton;
use crate::science::units::length::meter;

/// Standard acceleration of free fall, m/s² (exact, General Conference on Weights and Measures,
/// 1901).
pub const STANDARD_GRAVITY: f64 = 9.806_65;

/// The quantity that a problem of structures speaks of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StructureQuantity {
    /// A length, width, span or depth, m.
    Length,
    /// The thickness of a section, m.
    Thickness,
    /// The place of a support, m from the left end.
    Support,
    /// Modulus of elasticity, Pa.
    Modulus,
    /// Bending stiffness, N m².
    Rigidity,
    /// Load per length, N/m.
    Load,
    /// Load per area, Pa.
    Pressure,
    /// Pull per width of a stretched sheet, N/m.
    Tension,
    /// Density, kg/m³.
    Density,
    /// Mass, kg, or mass of a metre, kg/m.
    Mass,
    /// A safety margin, a plain number of one or more.
    Margin,
}

/// Why no answer about a structure can be given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StructureProblem {
    /// A quantity is outside its range, infinite, or not a number.
    OutOfRange {
        /// The quantity at fault.
        quantity: StructureQuantity,
        /// What was given, in the SI unit of the quantity.
        got: f64,
        /// The lower limit, in the same unit.
        low: f64,
        /// The upper limit, in the same unit.
        high: f64,
    },
    /// Fewer than two supports hold nothing level.
    TooFewSupports {
        /// How many there are.
        got: usize,
    },
}

/// A finite number above zero.
pub(super) fn above_zero(quantity: StructureQuantity, got: f64) -> Result<f64, StructureProblem> {
    within(quantity, got, f64::MIN_POSITIVE, f64::MAX)
}

/// A finite number of zero or more.
pub(super) fn not_negative(quantity: StructureQuantity, got: f64) -> Result<f64, StructureProblem> {
    within(quantity, got, 0.0, f64::MAX)
}

/// A number from `low` to `high`, both included.
pub(super) fn within(
    quantity: StructureQuantity,
    got: f64,
    low: f64,
    high: f64,
) -> Result<f64, StructureProblem> {
    if (low..=high).contains(&got) {
        Ok(got)
    } else {
        Err(StructureProblem::OutOfRange {
            quantity,
            got,
            low,
            high,
        })
    }
}

pub(super) fn metres(value: f64) -> Length {
    Length::new::<meter>(value)
}

pub(super) fn newtons(value: f64) -> Force {
    Force::new::<newton>(value)
}
