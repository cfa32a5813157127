//! The energy balance of the canopy and the radiation that enters it.

use super::{AIR_HEAT, LATENT_HEAT, OutOfRange, Quantity, within};
use crate::science::units::{
    HeatFluxDensity, InverseVelocity, MassConcentration, MassFlux, Ratio, TemperatureInterval,
    heat_flux_density::watt_per_square_meter, inverse_velocity::second_per_meter,
    mass_concentration::gram_per_cubic_meter, mass_flux::kilogram_per_square_meter_second,
    ratio::ratio, temperature_interval,
};

/// What the energy balance of a canopy is solved for. All that costs an exponential comes
/// prepared, from [`saturation`](super::saturation).
///
/// Source: Graamans and others (2017), Eqs 4–7.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CanopyConditions {
    /// Net radiation absorbed by the canopy per ground area, from [`net_radiation`]. Valid range:
    /// −500 to 1500 W m⁻² (negative only where a caller subtracts thermal loss, which the source
    /// leaves out).
    pub net_radiation: HeatFluxDensity,
    /// Vapour concentration deficit: saturated at air temperature less actual. Valid range: −50
    /// to 150 g m⁻³; negative is supersaturated air (mist).
    pub deficit: MassConcentration,
    /// Slope ε of the saturation curve at air temperature, dimensionless. Valid range: 0 to 50.
    pub slope: Ratio,
    /// Leaf area per ground area, dimensionless. Valid range: 1e-6 to 20. Without leaves the
    /// balance has no solution: a bare bed is not asked.
    pub leaf_area_index: f64,
    /// Stomatal resistance, from [`stomatal_resistance`](super::stomatal_resistance). Valid range:
    /// 0 to 1e5 s m⁻¹.
    pub stomatal_resistance: InverseVelocity,
    /// Aerodynamic resistance, from [`aerodynamic_resistance`](super::aerodynamic_resistance) or
    /// the fixed values told there. Valid range: 1 to 1e5 s m⁻¹.
    pub aerodynamic_resistance: InverseVelocity,
}

/// Heat and water that a canopy gives to the air, per ground area.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CanopyExchange {
    /// Latent heat flux λE, positive when water evaporates. It is negative, and water condenses
    /// on the leaves, only in supersaturated air or with negative net radiation.
    pub latent: HeatFluxDensity,
    /// Sensible heat flux H, positive from leaf to air. Leaves cooler than the air take heat up.
    pub sensible: HeatFluxDensity,
    /// Transpired water, λE divided by the latent heat of evaporation.
    pub water: MassFlux,
    /// Leaf surface temperature less air temperature.
    pub surface_excess: TemperatureInterval,
}

/// Transpiration and sensible heat of a canopy. HOT: once per hour of a season; no transcendental
/// function inside.
///
/// `conditions` in the ranges that its fields state. Result: fluxes per ground area in W m⁻² and
/// kg m⁻² s⁻¹, temperature difference in K. Constants as in the source: air density 1.2 kg m⁻³,
/// specific heat 1005 J kg⁻¹ K⁻¹, latent heat 2450 J g⁻¹.
///
/// With the saturation curve linearised about air temperature (Eq. 7), Eqs 4–6 are two linear
/// equations, solved here in closed form; the sum of both heats is the net radiation exactly.
///
/// # Errors
/// [`OutOfRange`] for the first field outside its range, NaN included.
///
/// Source: Graamans and others (2017), Eqs 4–7.
///
/// ```
/// use slackwater::science::canopy::{CanopyConditions, transpiration};
/// use slackwater::science::units::*;
/// let exchange = transpiration(&CanopyConditions {
///     net_radiation: HeatFluxDensity::new::<heat_flux_density::watt_per_square_meter>(108.3),
///     deficit: MassConcentration::new::<mass_concentration::gram_per_cubic_meter>(5.0),
///     slope: Ratio::new::<ratio::ratio>(2.15),
///     leaf_area_index: 3.0,
///     stomatal_resistance: InverseVelocity::new::<inverse_velocity::second_per_meter>(157.5),
///     aerodynamic_resistance: InverseVelocity::new::<inverse_velocity::second_per_meter>(100.0),
/// })?;
/// let latent = exchange.latent.get::<heat_flux_density::watt_per_square_meter>();
/// assert!((latent - 126.1).abs() < 2.0);
/// # Ok::<(), slackwater::science::canopy::OutOfRange>(())
/// ```
#[inline]
pub fn transpiration(conditions: &CanopyConditions) -> Result<CanopyExchange, OutOfRange> {
    // W m⁻², g m⁻³, dimensionless, s m⁻¹.
    let radiation = conditions.net_radiation.get::<watt_per_square_meter>();
    let deficit = conditions.deficit.get::<gram_per_cubic_meter>();
    let slope = conditions.slope.get::<ratio>();
    let leaves = conditions.leaf_area_index;
    let stomatal = conditions.stomatal_resistance.get::<second_per_meter>();
    let aerodynamic = conditions.aerodynamic_resistance.get::<second_per_meter>();
    within(Quantity::NetRadiation, radiation, -500.0, 1500.0)?;
    within(Quantity::VapourDeficit, deficit, -50.0, 150.0)?;
    within(Quantity::SaturationSlope, slope, 0.0, 50.0)?;
    within(Quantity::LeafAreaIndex, leaves, 1e-6, 20.0)?;
    within(Quantity::StomatalResistance, stomatal, 0.0, 1e5)?;
    within(Quantity::AerodynamicResistance, aerodynamic, 1.0, 1e5)?;

    // Eliminating the surface temperature from Eqs 4–7:
    // λE = (ε·Rnet + LAI·λ·deficit/ra) / (1 + ε + rs/ra).
    let latent = (slope * radiation + leaves * LATENT_HEAT * deficit / aerodynamic)
        / (1.0 + slope + stomatal / aerodynamic);
    let sensible = radiation - latent;
    // Eq. 5.
    let surface_excess = sensible * aerodynamic / (leaves * AIR_HEAT);
    Ok(CanopyExchange {
        latent: HeatFluxDensity::new::<watt_per_square_meter>(latent),
        sensible: HeatFluxDensity::new::<watt_per_square_meter>(sensible),
        water: MassFlux::new::<kilogram_per_square_meter_second>(latent / (LATENT_HEAT * 1000.0)),
        surface_excess: TemperatureInterval::new::<temperature_interval::kelvin>(surface_excess),
    })
}

/// Net radiation of a canopy: what it absorbs of the photosynthetically active radiation.
///
/// `photosynthetic_radiation` on top of the canopy, 0 to 1000 W m⁻²; `reflection` share that the
/// leaves reflect, dimensionless, 0 to 1 (the source: 0.05 for lettuce); `cover` share of the
/// ground that the leaves cover, dimensionless, 0 to 1 (the source: 0.90–0.95 over a crop; see
/// [`cover`](crate::science::growth::GrowthModel::cover)). Result: W m⁻² of ground.
///
/// # Errors
/// [`OutOfRange`] outside those ranges, NaN included.
///
/// Source: Graamans and others (2017), Eq. 8.
///
/// ```
/// use slackwater::science::canopy::net_radiation;
/// use slackwater::science::units::{HeatFluxDensity, heat_flux_density::watt_per_square_meter};
/// let net = net_radiation(HeatFluxDensity::new::<watt_per_square_meter>(120.0), 0.05, 0.95)?;
/// assert!((net.get::<watt_per_square_meter>() - 108.3).abs() < 1e-9);
/// # Ok::<(), slackwater::science::canopy::OutOfRange>(())
/// ```
pub fn net_radiation(
    photosynthetic_radiation: HeatFluxDensity,
    reflection: f64,
    cover: f64,
) -> Result<HeatFluxDensity, OutOfRange> {
    let radiation = photosynthetic_radiation.get::<watt_per_square_meter>();
    within(Quantity::PhotosyntheticRadiation, radiation, 0.0, 1000.0)?;
    within(Quantity::Reflection, reflection, 0.0, 1.0)?;
    within(Quantity::Cover, cover, 0.0, 1.0)?;
    Ok(photosynthetic_radiation * ((1.0 - reflection) * cover))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::canopy::saturation;
    use crate::science::units::{
        ThermodynamicTemperature, thermodynamic_temperature::degree_celsius,
    };

    fn conditions(radiation: f64, deficit: f64, celsius: f64) -> CanopyConditions {
        let air = ThermodynamicTemperature::new::<degree_celsius>(celsius);
        CanopyConditions {
            net_radiation: HeatFluxDensity::new::<watt_per_square_meter>(radiation),
            deficit: MassConcentration::new::<gram_per_cubic_meter>(deficit),
            slope: saturation(air).unwrap().slope,
            leaf_area_index: 3.0,
            stomatal_resistance: InverseVelocity::new::<second_per_meter>(200.0),
            aerodynamic_resistance: InverseVelocity::new::<second_per_meter>(100.0),
        }
    }

    fn latent(conditions: &CanopyConditions) -> f64 {
        let exchange = transpiration(conditions).unwrap();
        exchange.latent.get::<watt_per_square_meter>()
    }

    #[test]
    fn both_heats_add_up_to_the_net_radiation() {
        for radiation in [-20.0, 0.0, 80.0, 500.0] {
            for deficit in [-1.0, 0.0, 5.0, 20.0] {
                let exchange = transpiration(&conditions(radiation, deficit, 22.0)).unwrap();
                let sum = (exchange.latent + exchange.sensible).get::<watt_per_square_meter>();
                assert!((sum - radiation).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn light_dry_air_and_open_stomata_raise_transpiration() {
        let base = conditions(80.0, 5.0, 22.0);
        let open = CanopyConditions {
            stomatal_resistance: base.stomatal_resistance * 0.5,
            ..base
        };
        assert!(latent(&conditions(90.0, 5.0, 22.0)) > latent(&base));
        assert!(latent(&conditions(80.0, 6.0, 22.0)) > latent(&base));
        assert!(latent(&open) > latent(&base));
    }

    #[test]
    fn dew_forms_only_in_mist_or_under_thermal_loss() {
        assert!(latent(&conditions(0.0, -1.0, 15.0)) < 0.0);
        assert!(latent(&conditions(-30.0, 0.0, 15.0)) < 0.0);
        assert!(latent(&conditions(0.0, 0.0, 15.0)).abs() < f64::MIN_POSITIVE);
        assert!(latent(&conditions(0.0, 0.1, 15.0)) > 0.0);
    }

    #[test]
    fn refuses_what_is_out_of_range() {
        let base = conditions(80.0, 5.0, 22.0);
        let refused = |wrong: CanopyConditions| transpiration(&wrong).unwrap_err().quantity;
        assert_eq!(
            refused(CanopyConditions {
                leaf_area_index: 0.0,
                ..base
            }),
            Quantity::LeafAreaIndex
        );
        assert_eq!(
            refused(CanopyConditions {
                aerodynamic_resistance: base.aerodynamic_resistance * 0.0,
                ..base
            }),
            Quantity::AerodynamicResistance
        );
        assert_eq!(
            refused(CanopyConditions {
                net_radiation: base.net_radiation * f64::NAN,
                ..base
            }),
            Quantity::NetRadiation
        );
        let sun = HeatFluxDensity::new::<watt_per_square_meter>(100.0);
        assert_eq!(
            net_radiation(sun, 1.1, 0.9).unwrap_err().quantity,
            Quantity::Reflection
        );
        assert_eq!(
            net_radiation(sun, 0.05, -0.1).unwrap_err().quantity,
            Quantity::Cover
        );
    }
}
