//! What a resting solution does to the sides of its tank and to boards loaded unevenly, and what a
//! load does to a stretched sheet.

use super::structure::{
    STANDARD_GRAVITY, StructureProblem, StructureQuantity, above_zero, metres, newtons,
    not_negative, within,
};
use crate::science::units::linear_mass_density::kilogram_per_meter;
use crate::science::units::mass_density::kilogram_per_cubic_meter;
use crate::science::units::pressure::pascal;
use crate::science::units::ratio::ratio;
use crate::science::units::{
    Force, ForcePerLength, Length, LinearMassDensity, MassDensity, Pressure, Ratio,
};

/// What the solution does to one metre of an upright side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SidePressure {
    /// Pressure at the foot of the side.
    pub at_foot: Pressure,
    /// Push outwards, ρ g h²/2, for each metre of side.
    pub force: ForcePerLength,
    /// Its moment about the foot, ρ g h³/6, for each metre of side: newton metres per metre.
    pub moment: Force,
}

/// Pressure, push and moment of a resting solution on an upright side.
///
/// `density`: of the solution, kg/m³, above zero. `depth`: of the solution, m, zero or more.
///
/// # Errors
/// [`StructureProblem::OutOfRange`] for the first argument out of range.
///
/// Source: hydrostatics, p = ρ g h (Pascal 1663; White, Fluid Mechanics, Eq. 2.38, from memory).
///
/// ```
/// use slackwater::science::hydrostatics::side_pressure;
/// use slackwater::science::units::{
///     Length, MassDensity, length::meter, mass_density::kilogram_per_cubic_meter,
/// };
///
/// let side = side_pressure(
///     MassDensity::new::<kilogram_per_cubic_meter>(1000.0),
///     Length::new::<meter>(0.2),
/// )?;
/// assert!((side.force.value - 196.133).abs() < 1e-9);
/// # Ok::<(), slackwater::science::structure::StructureProblem>(())
/// ```
pub fn side_pressure(
    density: MassDensity,
    depth: Length,
) -> Result<SidePressure, StructureProblem> {
    let weight = specific_weight(density)?;
    let depth = not_negative(StructureQuantity::Length, depth.value)?;
    Ok(SidePressure {
        at_foot: Pressure::new::<pascal>(weight * depth),
        force: newtons(weight * depth * depth / 2.0) / metres(1.0),
        moment: newtons(weight * depth * depth * depth / 6.0),
    })
}

/// Push of a resting solution on a band of an upright side, such as one board of it.
///
/// `density`: kg/m³, above zero. `depth`: of the solution above the floor, m, zero or more. `low`,
/// `high`: the lower and upper edge of the band above the floor, m, zero or more, `high` no lower
/// than `low`; what stands above the surface bears nothing. The result is for each metre of side.
///
/// # Errors
/// [`StructureProblem::OutOfRange`] for the first argument out of range.
///
/// Source: as [`side_pressure`], integrated between the edges.
///
/// ```
/// use slackwater::science::hydrostatics::band_force;
/// use slackwater::science::units::{
///     Length, MassDensity, length::meter, mass_density::kilogram_per_cubic_meter,
/// };
///
/// let m = |value: f64| Length::new::<meter>(value);
/// let water = MassDensity::new::<kilogram_per_cubic_meter>(1000.0);
/// let lower = band_force(water, m(0.2), m(0.0), m(0.1))?;
/// let upper = band_force(water, m(0.2), m(0.1), m(0.3))?;
/// assert!((lower.value / upper.value - 3.0).abs() < 1e-12);
/// # Ok::<(), slackwater::science::structure::StructureProblem>(())
/// ```
pub fn band_force(
    density: MassDensity,
    depth: Length,
    low: Length,
    high: Length,
) -> Result<ForcePerLength, StructureProblem> {
    let weight = specific_weight(density)?;
    let depth = not_negative(StructureQuantity::Length, depth.value)?;
    let low = not_negative(StructureQuantity::Length, low.value)?;
    let high = within(StructureQuantity::Length, high.value, low, f64::MAX)?;
    let below = |edge: f64| (depth - edge).max(0.0);
    let (at_low, at_high) = (below(low), below(high));
    Ok(newtons(weight * (at_low * at_low - at_high * at_high) / 2.0) / metres(1.0))
}

/// How far the centre of mass of a floating board may rise before it turns over: metacentric height
/// of a board of upright sides, d/2 + b²/(12 d) − h.
///
/// `draught`: d, of the underside, m, above zero. `width`: b, of the board at the surface in the
/// direction in which it tilts, m, above zero. `centre_of_mass`: h, of board and load above the
/// underside, m. The result is in m; at or below zero the board turns over.
///
/// # Errors
/// [`StructureProblem::OutOfRange`] for the first argument out of range.
///
/// Source: Bouguer 1746; White, Fluid Mechanics, Eq. 2.52 (from memory).
///
/// ```
/// use slackwater::science::hydrostatics::metacentric_height;
/// use slackwater::science::units::{Length, length::meter};
///
/// let m = |value: f64| Length::new::<meter>(value);
/// let height = metacentric_height(m(0.01), m(0.6), m(0.055))?;
/// assert!((height.get::<meter>() - 2.95).abs() < 1e-12);
/// # Ok::<(), slackwater::science::structure::StructureProblem>(())
/// ```
pub fn metacentric_height(
    draught: Length,
    width: Length,
    centre_of_mass: Length,
) -> Result<Length, StructureProblem> {
    let d = above_zero(StructureQuantity::Length, draught.value)?;
    let b = above_zero(StructureQuantity::Length, width.value)?;
    let h = within(
        StructureQuantity::Length,
        centre_of_mass.value,
        -f64::MAX,
        f64::MAX,
    )?;
    Ok(metres(d / 2.0 + b * b / (12.0 * d) - h))
}

/// How far one edge of a floating board lies lower than its middle when the load sits off the
/// middle: b/2 times the tilt, e / height.
///
/// `offset`: e, of the centre of mass from the middle, m, zero or more. `width`: b, in the direction
/// of the tilt, m, above zero. `metacentric_height`: m, above zero. The result is in m. For tilts
/// below a tenth; the board must keep its edges between wet and dry.
///
/// # Errors
/// [`StructureProblem::OutOfRange`] for the first argument out of range.
///
/// Source: as [`metacentric_height`], righting moment at small tilt.
///
/// ```
/// use slackwater::science::hydrostatics::edge_dip;
/// use slackwater::science::units::{Length, length::meter};
///
/// let m = |value: f64| Length::new::<meter>(value);
/// assert!((edge_dip(m(0.1), m(0.6), m(3.0))?.get::<meter>() - 0.01).abs() < 1e-12);
/// # Ok::<(), slackwater::science::structure::StructureProblem>(())
/// ```
pub fn edge_dip(
    offset: Length,
    width: Length,
    metacentric_height: Length,
) -> Result<Length, StructureProblem> {
    let e = not_negative(StructureQuantity::Length, offset.value)?;
    let b = above_zero(StructureQuantity::Length, width.value)?;
    let height = above_zero(StructureQuantity::Length, metacentric_height.value)?;
    Ok(metres(b / 2.0 * e / height))
}

/// Sag of a sheet stretched between two edges, q L² / (8 T).
///
/// `load`: on an area, Pa, zero or more. `span`: between the edges, m, above zero. `tension`: pull
/// for each metre of edge, N/m, above zero. The result is in m, for sags below a tenth of the span.
///
/// # Errors
/// [`StructureProblem::OutOfRange`] for the first argument out of range.
///
/// Source: parabolic cable (Hibbeler, Structural Analysis, Eq. 5-8, from memory).
///
/// ```
/// use slackwater::science::hydrostatics::sheet_sag;
/// use slackwater::science::units::{
///     Force, Length, Pressure, force::newton, length::meter, pressure::pascal,
/// };
///
/// let m = |value: f64| Length::new::<meter>(value);
/// let sag = sheet_sag(Pressure::new::<pascal>(40.0), m(1.0), Force::new::<newton>(500.0) / m(1.0))?;
/// assert!((sag.get::<meter>() - 0.01).abs() < 1e-12);
/// # Ok::<(), slackwater::science::structure::StructureProblem>(())
/// ```
pub fn sheet_sag(
    load: Pressure,
    span: Length,
    tension: ForcePerLength,
) -> Result<Length, StructureProblem> {
    let load = not_negative(StructureQuantity::Pressure, load.value)?;
    let span = above_zero(StructureQuantity::Length, span.value)?;
    let tension = above_zero(StructureQuantity::Tension, tension.value)?;
    Ok(metres(load * span * span / (8.0 * tension)))
}

/// Mass that keeps a metre of pipe down, dry, when it lies inside the pipe: what the pipe would
/// lift, ρ π D²/4 − m, times the margin; zero where the pipe sinks by itself.
///
/// `density`: of the solution, kg/m³, above zero. `outside_diameter`: D, m, above zero.
/// `mass_per_metre`: m, of the pipe and of what fills it, kg, zero or more. `margin`: one or more.
/// The result is in kg for each metre.
///
/// # Errors
/// [`StructureProblem::OutOfRange`] for the first argument out of range.
///
/// Source: Archimedes' principle.
///
/// ```
/// use slackwater::science::hydrostatics::ballast_per_metre;
/// use slackwater::science::units::{
///     Length, LinearMassDensity, MassDensity, Ratio, length::meter,
///     linear_mass_density::kilogram_per_meter, mass_density::kilogram_per_cubic_meter,
///     ratio::ratio,
/// };
///
/// let ballast = ballast_per_metre(
///     MassDensity::new::<kilogram_per_cubic_meter>(1000.0),
///     Length::new::<meter>(0.1),
///     LinearMassDensity::new::<kilogram_per_meter>(1.85),
///     Ratio::new::<ratio>(1.2),
/// )?;
/// assert!((ballast.get::<kilogram_per_meter>() - 1.2 * (7.853_981_634 - 1.85)).abs() < 1e-6);
/// # Ok::<(), slackwater::science::structure::StructureProblem>(())
/// ```
pub fn ballast_per_metre(
    density: MassDensity,
    outside_diameter: Length,
    mass_per_metre: LinearMassDensity,
    margin: Ratio,
) -> Result<LinearMassDensity, StructureProblem> {
    let density = above_zero(
        StructureQuantity::Density,
        density.get::<kilogram_per_cubic_meter>(),
    )?;
    let outside = above_zero(StructureQuantity::Length, outside_diameter.value)?;
    let mass = not_negative(
        StructureQuantity::Mass,
        mass_per_metre.get::<kilogram_per_meter>(),
    )?;
    let margin = within(
        StructureQuantity::Margin,
        margin.get::<ratio>(),
        1.0,
        f64::MAX,
    )?;
    let displaced = density * std::f64::consts::FRAC_PI_4 * outside * outside;
    Ok(LinearMassDensity::new::<kilogram_per_meter>(
        ((displaced - mass) * margin).max(0.0),
    ))
}

fn specific_weight(density: MassDensity) -> Result<f64, StructureProblem> {
    above_zero(
        StructureQuantity::Density,
        density.get::<kilogram_per_cubic_meter>(),
    )
    .map(|density| density * STANDARD_GRAVITY)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bands_make_up_the_whole_side() {
        let water = MassDensity::new::<kilogram_per_cubic_meter>(998.0);
        let whole = side_pressure(water, metres(0.31)).expect("in range");
        let bands: f64 = [(0.0, 0.1), (0.1, 0.25), (0.25, 0.4)]
            .into_iter()
            .map(|(low, high)| {
                band_force(water, metres(0.31), metres(low), metres(high))
                    .expect("in range")
                    .value
            })
            .sum();
        assert!((bands - whole.force.value).abs() < 1e-9);
    }

    #[test]
    fn names_what_is_out_of_range() {
        let water = MassDensity::new::<kilogram_per_cubic_meter>(1000.0);
        assert!(side_pressure(water, metres(-0.1)).is_err());
        assert!(side_pressure(water * f64::NAN, metres(0.1)).is_err());
        assert!(band_force(water, metres(0.1), metres(0.2), metres(0.1)).is_err());
        assert!(metacentric_height(metres(0.0), metres(1.0), metres(0.1)).is_err());
        assert!(edge_dip(metres(0.1), metres(1.0), metres(-0.1)).is_err());
        assert!(
            ballast_per_metre(
                water,
                metres(0.1),
                LinearMassDensity::new::<kilogram_per_meter>(1.0),
                Ratio::new::<ratio>(0.9)
            )
            .is_err()
        );
    }
}
