//! A flat strip: its stiffness and its stress in bending.

use crate::science::structure::{StructureProblem, StructureQuantity, above_zero, not_negative};
use crate::science::units::{BendingMoment, FlexuralRigidity, Length, Pressure};

/// Bending stiffness of a flat strip, E b t³ / 12.
///
/// `modulus`: of elasticity in bending, Pa, above zero. `width`: across the load, m, above zero.
/// `thickness`: along the load, m, above zero. The result is in N m².
///
/// # Errors
/// [`StructureProblem::OutOfRange`] for the first argument out of range.
///
/// Source: Young and Budynas, Roark's Formulas for Stress and Strain, table A.1 (from memory).
///
/// ```
/// use slackwater::science::beam::strip_rigidity;
/// use slackwater::science::units::{
///     Length, Pressure, length::millimeter, pressure::megapascal,
/// };
///
/// let mm = |value: f64| Length::new::<millimeter>(value);
/// let stiffness = strip_rigidity(Pressure::new::<megapascal>(12.0), mm(600.0), mm(25.0))?;
/// assert!((stiffness.value - 9.375).abs() < 1e-12);
/// # Ok::<(), slackwater::science::structure::StructureProblem>(())
/// ```
pub fn strip_rigidity(
    modulus: Pressure,
    width: Length,
    thickness: Length,
) -> Result<FlexuralRigidity, StructureProblem> {
    above_zero(StructureQuantity::Modulus, modulus.value)?;
    above_zero(StructureQuantity::Length, width.value)?;
    above_zero(StructureQuantity::Thickness, thickness.value)?;
    let stiffness = modulus * width * thickness * thickness * thickness / 12.0;
    above_zero(StructureQuantity::Rigidity, stiffness.value)?;
    Ok(stiffness)
}

/// Greatest bending stress of a flat strip, 6 M / (b t²).
///
/// `moment`: N m, its sign does not matter. `width`: across the load, m, above zero. `thickness`:
/// along the load, m, above zero. The result is in Pa.
///
/// # Errors
/// [`StructureProblem::OutOfRange`] for the first argument out of range.
///
/// Source: Young and Budynas, Roark's Formulas for Stress and Strain, chapter 8 (from memory).
///
/// ```
/// use slackwater::science::beam::strip_stress;
/// use slackwater::science::units::{Force, Length, force::newton, length::meter};
///
/// let moment = Force::new::<newton>(50.0) * Length::new::<meter>(1.0);
/// let stress = strip_stress(moment, Length::new::<meter>(0.15), Length::new::<meter>(0.04))?;
/// assert!((stress.value - 1.25e6).abs() < 1e-6);
/// # Ok::<(), slackwater::science::structure::StructureProblem>(())
/// ```
pub fn strip_stress(
    moment: BendingMoment,
    width: Length,
    thickness: Length,
) -> Result<Pressure, StructureProblem> {
    above_zero(StructureQuantity::Length, width.value)?;
    above_zero(StructureQuantity::Thickness, thickness.value)?;
    not_negative(StructureQuantity::Load, moment.value.abs())?;
    Ok(moment.abs() * 6.0 / (width * thickness * thickness))
}
