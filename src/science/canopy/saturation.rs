//! Saturation of air with vapour, as a mass concentration, and its slope.

use super::{AIR_HEAT, LATENT_HEAT, OutOfRange, Quantity, within};
use crate::science::units::{
    MassConcentration, Ratio, ThermodynamicTemperature, mass_concentration::gram_per_cubic_meter,
    ratio::ratio, thermodynamic_temperature::degree_celsius,
};

/// The vapour that air at some temperature holds when saturated, and how fast that rises.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Saturation {
    /// Saturated vapour concentration χ.
    pub concentration: MassConcentration,
    /// The source's ε: change of latent heat content over change of sensible heat content of
    /// saturated air, (dχ/dT)·λ/(ρ·cp). Dimensionless.
    pub slope: Ratio,
}

impl Saturation {
    /// Vapour concentration deficit of air at a relative humidity: saturated less actual vapour
    /// concentration.
    ///
    /// `relative_humidity` dimensionless, 0 to 1.
    ///
    /// # Errors
    /// [`OutOfRange`] outside that range.
    ///
    /// Source: definition, as Graamans and others (2017) use it in Eq. 6.
    ///
    /// ```
    /// use slackwater::science::canopy::saturation;
    /// use slackwater::science::units::*;
    /// let air = ThermodynamicTemperature::new::<thermodynamic_temperature::degree_celsius>(21.0);
    /// let deficit = saturation(air)?.deficit(Ratio::new::<ratio::percent>(73.0))?;
    /// assert!((deficit.get::<mass_concentration::gram_per_cubic_meter>() - 5.0).abs() < 0.1);
    /// # Ok::<(), slackwater::science::canopy::OutOfRange>(())
    /// ```
    pub fn deficit(&self, relative_humidity: Ratio) -> Result<MassConcentration, OutOfRange> {
        let humidity = relative_humidity.get::<ratio>();
        within(Quantity::RelativeHumidity, humidity, 0.0, 1.0)?;
        Ok(self.concentration * (1.0 - humidity))
    }
}

/// Saturated vapour concentration of air and its dimensionless slope. One exponential: once per
/// hour of a season.
///
/// `air` temperature, −40 to 60 °C. Result: concentration in g m⁻³ of air, slope dimensionless.
///
/// # Errors
/// [`OutOfRange`] outside that range, NaN included.
///
/// Source: Allen, Pereira, Raes and Smith (1998), FAO Irrigation and Drainage Paper 56, Eq. 11
/// (saturation vapour pressure over water); gas law with the molar mass of water over the gas
/// constant, 2.16679 g K J⁻¹; slope in closed form, as defined with Eq. 7 of Graamans and others
/// (2017).
///
/// ```
/// use slackwater::science::canopy::saturation;
/// use slackwater::science::units::*;
/// let air = ThermodynamicTemperature::new::<thermodynamic_temperature::degree_celsius>(20.0);
/// let concentration = saturation(air)?.concentration;
/// assert!((concentration.get::<mass_concentration::gram_per_cubic_meter>() - 17.3).abs() < 0.05);
/// # Ok::<(), slackwater::science::canopy::OutOfRange>(())
/// ```
pub fn saturation(air: ThermodynamicTemperature) -> Result<Saturation, OutOfRange> {
    // °C, Pa, g m⁻³.
    let t = air.get::<degree_celsius>();
    within(Quantity::Temperature, t, -40.0, 60.0)?;
    let from_pole = t + 237.3;
    let absolute = t + 273.15;
    let pressure = 610.8 * libm::exp(17.27 * t / from_pole);
    let concentration = pressure * 2.16679 / absolute;
    // d ln e / dT less d ln T / dT.
    let relative_slope = 17.27 * 237.3 / (from_pole * from_pole) - 1.0 / absolute;
    Ok(Saturation {
        concentration: MassConcentration::new::<gram_per_cubic_meter>(concentration),
        slope: Ratio::new::<ratio>(concentration * relative_slope * LATENT_HEAT / AIR_HEAT),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(celsius: f64) -> Saturation {
        saturation(ThermodynamicTemperature::new::<degree_celsius>(celsius)).unwrap()
    }

    #[test]
    fn slope_is_the_derivative_of_the_concentration() {
        /// A central difference over 0.02 K errs by some 1e-8 of the slope.
        const DIFFERENCE: f64 = 1e-6;
        for celsius in [-30.0, 0.0, 10.0, 21.0, 35.0, 55.0] {
            let rise = at(celsius + 0.01).concentration - at(celsius - 0.01).concentration;
            let slope = rise.get::<gram_per_cubic_meter>() / 0.02 * LATENT_HEAT / AIR_HEAT;
            let relative = at(celsius).slope.get::<ratio>() / slope - 1.0;
            assert!(relative.abs() < DIFFERENCE, "{celsius}: {relative}");
        }
    }

    #[test]
    fn refuses_what_is_out_of_range() {
        for celsius in [-41.0, 61.0, f64::NAN, f64::INFINITY] {
            let refused = saturation(ThermodynamicTemperature::new::<degree_celsius>(celsius));
            assert_eq!(refused.unwrap_err().quantity, Quantity::Temperature);
        }
        for humidity in [-0.01, 1.01, f64::NAN] {
            let refused = at(20.0).deficit(Ratio::new::<ratio>(humidity));
            assert_eq!(refused.unwrap_err().quantity, Quantity::RelativeHumidity);
        }
    }

    #[test]
    fn saturated_air_has_no_deficit() {
        let deficit = at(20.0).deficit(Ratio::new::<ratio>(1.0)).unwrap();
        assert!(deficit.get::<gram_per_cubic_meter>().abs() < f64::EPSILON);
    }
}
