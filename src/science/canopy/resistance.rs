//! Resistances to vapour and heat between the leaves and the air.

use super::{OutOfRange, Quantity, within};
use crate::science::units::{
    InverseVelocity, Length, MolarFlux, Velocity, inverse_velocity::second_per_meter,
    length::meter, molar_flux::mole_per_square_meter_second, velocity::meter_per_second,
};

/// Stomatal resistance of lettuce under light.
///
/// `photon_flux`: photosynthetic photon flux density on the canopy, 0 to 3000 µmol m⁻² s⁻¹ (the
/// source measured 140–600 and darkness). Result: resistance per leaf area, s m⁻¹, from 450 in
/// the dark falling towards 60 under strong light.
///
/// # Errors
/// [`OutOfRange`] outside that range, NaN included.
///
/// Source: Graamans and others (2017), Eq. 9.
///
/// ```
/// use slackwater::science::canopy::stomatal_resistance;
/// use slackwater::science::units::*;
/// let dark = MolarFlux::new::<molar_flux::mole_per_square_meter_second>(0.0);
/// let resistance = stomatal_resistance(dark)?;
/// assert!((resistance.get::<inverse_velocity::second_per_meter>() - 450.0).abs() < 1e-9);
/// # Ok::<(), slackwater::science::canopy::OutOfRange>(())
/// ```
pub fn stomatal_resistance(photon_flux: MolarFlux) -> Result<InverseVelocity, OutOfRange> {
    // µmol m⁻² s⁻¹.
    let flux = photon_flux.get::<mole_per_square_meter_second>() * 1e6;
    within(Quantity::PhotonFlux, flux, 0.0, 3000.0)?;
    Ok(InverseVelocity::new::<second_per_meter>(
        60.0 * (1500.0 + flux) / (200.0 + flux),
    ))
}

/// Aerodynamic resistance of a canopy in moving air.
///
/// `leaf_diameter` mean, 1 mm to 1 m (the source: 0.11 m for lettuce); `wind` speed at the canopy,
/// 0.01 to 20 m s⁻¹; `leaf_area_index` 0.1 to 20, dimensionless. Result: resistance, s m⁻¹.
///
/// The formula has no value in still air, where free convection takes over, and grows without
/// bound as the canopy thins out; the source itself goes on with fixed values for a closed canopy
/// (leaf area index 3): 100 s m⁻¹ with forced air, 200 s m⁻¹ without. Use those where wind is not
/// known or the crop is young.
///
/// # Errors
/// [`OutOfRange`] outside those ranges, still air and NaN included.
///
/// Source: Graamans and others (2017), Eq. 10.
///
/// ```
/// use slackwater::science::canopy::aerodynamic_resistance;
/// use slackwater::science::units::*;
/// let leaf = Length::new::<length::centimeter>(11.0);
/// let wind = Velocity::new::<velocity::centimeter_per_second>(11.0);
/// let resistance = aerodynamic_resistance(leaf, wind, 3.5)?;
/// assert!((resistance.get::<inverse_velocity::second_per_meter>() - 100.0).abs() < 1e-9);
/// # Ok::<(), slackwater::science::canopy::OutOfRange>(())
/// ```
pub fn aerodynamic_resistance(
    leaf_diameter: Length,
    wind: Velocity,
    leaf_area_index: f64,
) -> Result<InverseVelocity, OutOfRange> {
    // m, m s⁻¹.
    let diameter = leaf_diameter.get::<meter>();
    let speed = wind.get::<meter_per_second>();
    within(Quantity::LeafDiameter, diameter, 0.001, 1.0)?;
    within(Quantity::Wind, speed, 0.01, 20.0)?;
    within(Quantity::LeafAreaIndex, leaf_area_index, 0.1, 20.0)?;
    Ok(InverseVelocity::new::<second_per_meter>(
        350.0 * (diameter / speed).sqrt() / leaf_area_index,
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn stomata(micromoles: f64) -> Result<InverseVelocity, OutOfRange> {
        stomatal_resistance(MolarFlux::new::<mole_per_square_meter_second>(
            micromoles * 1e-6,
        ))
    }

    fn air(diameter: f64, speed: f64, leaves: f64) -> Result<InverseVelocity, OutOfRange> {
        aerodynamic_resistance(
            Length::new::<meter>(diameter),
            Velocity::new::<meter_per_second>(speed),
            leaves,
        )
    }

    #[test]
    fn more_light_opens_the_stomata() {
        for pair in [0.0, 50.0, 140.0, 600.0, 2000.0, 3000.0].windows(2) {
            assert!(stomata(pair[1]).unwrap() < stomata(pair[0]).unwrap());
        }
    }

    #[test]
    fn more_wind_and_smaller_leaves_lower_the_resistance() {
        assert!(air(0.11, 0.4, 3.0).unwrap() < air(0.11, 0.1, 3.0).unwrap());
        assert!(air(0.05, 0.1, 3.0).unwrap() < air(0.11, 0.1, 3.0).unwrap());
    }

    #[test]
    fn refuses_what_is_out_of_range() {
        for flux in [-1.0, 3001.0, f64::NAN] {
            assert_eq!(stomata(flux).unwrap_err().quantity, Quantity::PhotonFlux);
        }
        let wrong = |diameter, speed, leaves| air(diameter, speed, leaves).unwrap_err().quantity;
        assert_eq!(wrong(0.11, 0.0, 3.0), Quantity::Wind);
        assert_eq!(wrong(0.0, 0.1, 3.0), Quantity::LeafDiameter);
        assert_eq!(wrong(0.11, 0.1, 0.0), Quantity::LeafAreaIndex);
        assert_eq!(wrong(0.11, f64::NAN, 3.0), Quantity::Wind);
    }
}
