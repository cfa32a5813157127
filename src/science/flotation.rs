//! Boards that float on the solution and carry the crop.

use crate::science::units::{Area, Length, Mass, MassDensity, area, length, mass, mass_density};

/// The quantity that a problem of flotation speaks of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FlotationQuantity {
    /// The thickness of the board, m.
    Thickness,
    /// The area of the board at the surface, m².
    WaterPlaneArea,
    /// The mass of the board, or of the board and its load, kg.
    Mass,
    /// The density of the solution, kg/m³.
    Density,
}

/// Why no answer about a floating board can be given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FlotationProblem {
    /// A quantity is not above its lower limit (a mass: below it), infinite, or not a number.
    OutOfRange {
        /// The quantity at fault.
        quantity: FlotationQuantity,
        /// What was given, in the SI unit of the quantity.
        got: f64,
        /// The lower limit, in the same unit.
        low: f64,
        /// The upper limit, in the same unit.
        high: f64,
    },
    /// The board sinks before anything is loaded on it.
    SinksUnloaded {
        /// The mass that the solution does not carry.
        excess: Mass,
    },
}

/// What a loaded board does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Flotation {
    /// It floats.
    Floats {
        /// How deep its bottom lies below the surface.
        draught: Length,
        /// How high its top stands above the surface.
        freeboard: Length,
    },
    /// It goes under.
    Sinks {
        /// The mass that the solution does not carry.
        excess: Mass,
    },
}

/// How deep a board of upright sides sinks into the solution, if it is thick enough.
///
/// `total_mass`: of the board and everything it carries, kg, zero or more. `water_plane_area`: the
/// area of the board at the surface, m², above zero; holes are left out of it. `density`: of the
/// solution, kg/m³, above zero. The result is in m.
///
/// # Errors
/// [`FlotationProblem::OutOfRange`] for the first argument out of range.
///
/// Source: Archimedes' principle, d = m / (ρ A).
///
/// ```
/// use slackwater::science::flotation::draught;
/// use slackwater::science::units::{
///     Area, Length, Mass, MassDensity, area::square_meter, length::millimeter, mass::kilogram,
///     mass_density::kilogram_per_cubic_meter,
/// };
///
/// let depth = draught(
///     Mass::new::<kilogram>(7.2),
///     Area::new::<square_meter>(0.72),
///     MassDensity::new::<kilogram_per_cubic_meter>(1000.0),
/// )?;
/// assert!((depth.get::<millimeter>() - 10.0).abs() < 1e-12);
/// # Ok::<(), slackwater::science::flotation::FlotationProblem>(())
/// ```
pub fn draught(
    total_mass: Mass,
    water_plane_area: Area,
    density: MassDensity,
) -> Result<Length, FlotationProblem> {
    checked_mass(total_mass)?;
    let carried_per_depth = checked_area(water_plane_area)? * checked_density(density)?;
    let depth = total_mass.get::<mass::kilogram>() / carried_per_depth;
    if depth.is_finite() {
        Ok(Length::new::<length::meter>(depth))
    } else {
        // Only an area or a density next to zero gets here.
        Err(out_of_range(
            FlotationQuantity::WaterPlaneArea,
            water_plane_area.get::<area::square_meter>(),
        ))
    }
}

/// The mass that a board carries before its top is level with the surface.
///
/// `thickness`: m, above zero. `water_plane_area`: m², above zero; holes are left out of it.
/// `board_mass`: of the bare board, kg, zero or more. `density`: of the solution, kg/m³, above
/// zero. The result is in kg.
///
/// # Errors
/// [`FlotationProblem::OutOfRange`] for the first argument out of range,
/// [`FlotationProblem::SinksUnloaded`] when the bare board sinks.
///
/// Source: Archimedes' principle, ρ A t − m.
///
/// ```
/// use slackwater::science::flotation::maximum_load;
/// use slackwater::science::units::{
///     Area, Length, Mass, MassDensity, area::square_meter, length::millimeter, mass::kilogram,
///     mass_density::kilogram_per_cubic_meter,
/// };
///
/// let load = maximum_load(
///     Length::new::<millimeter>(50.0),
///     Area::new::<square_meter>(0.72),
///     Mass::new::<kilogram>(1.0),
///     MassDensity::new::<kilogram_per_cubic_meter>(1000.0),
/// )?;
/// assert!((load.get::<kilogram>() - 35.0).abs() < 1e-9);
/// # Ok::<(), slackwater::science::flotation::FlotationProblem>(())
/// ```
pub fn maximum_load(
    thickness: Length,
    water_plane_area: Area,
    board_mass: Mass,
    density: MassDensity,
) -> Result<Mass, FlotationProblem> {
    checked_mass(board_mass)?;
    let spare = buoyancy(thickness, water_plane_area, density)? - board_mass;
    if spare < Mass::new::<mass::kilogram>(0.0) {
        Err(FlotationProblem::SinksUnloaded { excess: -spare })
    } else {
        Ok(spare)
    }
}

/// Whether a loaded board floats, and how.
///
/// `thickness`: m, above zero. `water_plane_area`: m², above zero; holes are left out of it.
/// `total_mass`: of the board and everything it carries, kg, zero or more. `density`: of the
/// solution, kg/m³, above zero. A board whose top is just level with the surface still floats.
///
/// # Errors
/// [`FlotationProblem::OutOfRange`] for the first argument out of range.
///
/// Source: Archimedes' principle.
///
/// ```
/// use slackwater::science::flotation::{Flotation, floats};
/// use slackwater::science::units::{
///     Area, Length, Mass, MassDensity, area::square_meter, length::millimeter, mass::kilogram,
///     mass_density::kilogram_per_cubic_meter,
/// };
///
/// let board = |kg: f64| {
///     floats(
///         Length::new::<millimeter>(50.0),
///         Area::new::<square_meter>(0.72),
///         Mass::new::<kilogram>(kg),
///         MassDensity::new::<kilogram_per_cubic_meter>(1000.0),
///     )
/// };
/// assert!(matches!(board(7.2)?, Flotation::Floats { .. }));
/// assert!(matches!(board(40.0)?, Flotation::Sinks { .. }));
/// # Ok::<(), slackwater::science::flotation::FlotationProblem>(())
/// ```
pub fn floats(
    thickness: Length,
    water_plane_area: Area,
    total_mass: Mass,
    density: MassDensity,
) -> Result<Flotation, FlotationProblem> {
    checked_mass(total_mass)?;
    let carried = buoyancy(thickness, water_plane_area, density)?;
    if total_mass > carried {
        return Ok(Flotation::Sinks {
            excess: total_mass - carried,
        });
    }
    let depth = thickness * (total_mass / carried);
    Ok(Flotation::Floats {
        draught: depth,
        freeboard: thickness - depth,
    })
}

/// The mass of solution that the whole board displaces, finite and above zero.
fn buoyancy(
    thickness: Length,
    water_plane_area: Area,
    density: MassDensity,
) -> Result<Mass, FlotationProblem> {
    let metres = above_zero(
        FlotationQuantity::Thickness,
        thickness.get::<length::meter>(),
    )?;
    let carried = metres * checked_area(water_plane_area)? * checked_density(density)?;
    if carried.is_finite() && carried > 0.0 {
        Ok(Mass::new::<mass::kilogram>(carried))
    } else {
        Err(out_of_range(FlotationQuantity::Mass, carried))
    }
}

fn checked_mass(got: Mass) -> Result<(), FlotationProblem> {
    let kilograms = got.get::<mass::kilogram>();
    if kilograms.is_finite() && kilograms >= 0.0 {
        Ok(())
    } else {
        Err(out_of_range(FlotationQuantity::Mass, kilograms))
    }
}

fn checked_area(got: Area) -> Result<f64, FlotationProblem> {
    above_zero(
        FlotationQuantity::WaterPlaneArea,
        got.get::<area::square_meter>(),
    )
}

fn checked_density(got: MassDensity) -> Result<f64, FlotationProblem> {
    above_zero(
        FlotationQuantity::Density,
        got.get::<mass_density::kilogram_per_cubic_meter>(),
    )
}

fn above_zero(quantity: FlotationQuantity, got: f64) -> Result<f64, FlotationProblem> {
    if got.is_finite() && got > 0.0 {
        Ok(got)
    } else {
        Err(out_of_range(quantity, got))
    }
}

fn out_of_range(quantity: FlotationQuantity, got: f64) -> FlotationProblem {
    FlotationProblem::OutOfRange {
        quantity,
        got,
        low: 0.0,
        high: f64::MAX,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::units::{
        area::square_meter, length::meter, mass::kilogram, mass_density::kilogram_per_cubic_meter,
    };

    fn board(t: f64, a: f64, m: f64, rho: f64) -> (Length, Area, Mass, MassDensity) {
        (
            Length::new::<meter>(t),
            Area::new::<square_meter>(a),
            Mass::new::<kilogram>(m),
            MassDensity::new::<kilogram_per_cubic_meter>(rho),
        )
    }

    #[test]
    fn draught_and_freeboard_make_up_the_thickness() {
        let (t, a, _, rho) = board(0.04, 0.7, 0.0, 998.0);
        for step in 0..=10 {
            let m =
                Mass::new::<kilogram>(0.04 * 0.7 * 998.0 * f64::from(step) / 10.0 * (1.0 - 1e-15));
            let Ok(Flotation::Floats {
                draught: deep,
                freeboard,
            }) = floats(t, a, m, rho)
            else {
                panic!("step {step} must float");
            };
            assert!(freeboard.get::<meter>() >= 0.0);
            assert!(((deep + freeboard) - t).get::<meter>().abs() < 1e-16);
            let alone = draught(m, a, rho).expect("in range");
            assert!((alone - deep).get::<meter>().abs() < 1e-16);
        }
    }

    #[test]
    fn the_largest_load_is_where_floating_ends() {
        let (t, a, m, rho) = board(0.04, 0.7, 0.9, 998.0);
        let load = maximum_load(t, a, m, rho).expect("floats bare");
        assert!(matches!(
            floats(t, a, m + load * 0.999, rho),
            Ok(Flotation::Floats { .. })
        ));
        assert!(matches!(
            floats(t, a, m + load * 1.001, rho),
            Ok(Flotation::Sinks { .. })
        ));
        let heavy = Mass::new::<kilogram>(30.0);
        let Err(FlotationProblem::SinksUnloaded { excess }) = maximum_load(t, a, heavy, rho) else {
            panic!("30 kg must sink");
        };
        assert!((excess.get::<kilogram>() - (30.0 - 27.944)).abs() < 1e-9);
    }

    #[test]
    fn names_the_quantity_that_is_out_of_range() {
        let cases = [
            (board(0.0, 1.0, 1.0, 1000.0), FlotationQuantity::Thickness),
            (
                board(0.1, -1.0, 1.0, 1000.0),
                FlotationQuantity::WaterPlaneArea,
            ),
            (board(0.1, 1.0, f64::NAN, 1000.0), FlotationQuantity::Mass),
            (board(0.1, 1.0, -1.0, 1000.0), FlotationQuantity::Mass),
            (
                board(0.1, 1.0, 1.0, f64::INFINITY),
                FlotationQuantity::Density,
            ),
            (board(1e-200, 1e-200, 1.0, 1000.0), FlotationQuantity::Mass),
        ];
        for ((t, a, m, rho), expected) in cases {
            let Err(FlotationProblem::OutOfRange { quantity, .. }) = floats(t, a, m, rho) else {
                panic!("{expected:?} must be refused");
            };
            assert_eq!(quantity, expected);
        }
        let (_, a, m, rho) = board(0.1, 1e-300, 1e300, 1e-300);
        assert!(draught(m, a, rho).is_err());
    }
}
