//! Actual vapour pressure from what a hygrometer or a psychrometer shows.

use super::{
    OutOfRange, Quantity, celsius, kilopascal, mean_saturation_vapour_pressure, saturation_kpa,
    saturation_vapour_pressure, within,
};
use crate::science::units::{Pressure, Ratio, ThermodynamicTemperature, pressure, ratio};

fn humidity(relative_humidity: Ratio) -> Result<f64, OutOfRange> {
    let fraction = relative_humidity.get::<ratio::ratio>();
    within(Quantity::RelativeHumidity, fraction, 0.0, 1.0)
}

/// Actual vapour pressure of a day, ea, from the mean relative humidity.
///
/// - `maximum`, `minimum`: daily extremes of the air temperature, above −237.3 °C (not checked).
/// - `mean_relative_humidity`: 0 to 1.
///
/// Result: pressure (kPa in the source).
///
/// # Errors
/// [`OutOfRange`] for a humidity outside 0 to 1.
///
/// Source: FAO-56 Eq. 19.
///
/// ```
/// use slackwater::science::air::actual_vapour_pressure_from_mean_humidity;
/// use slackwater::science::units::{
///     Ratio, ThermodynamicTemperature, pressure::kilopascal, ratio::percent,
///     thermodynamic_temperature::degree_celsius,
/// };
///
/// let t = ThermodynamicTemperature::new::<degree_celsius>;
/// let humidity = Ratio::new::<percent>(68.0);
/// let ea = actual_vapour_pressure_from_mean_humidity(t(25.0), t(18.0), humidity)?;
/// assert!((ea.get::<kilopascal>() - 1.78).abs() < 0.01);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn actual_vapour_pressure_from_mean_humidity(
    maximum: ThermodynamicTemperature,
    minimum: ThermodynamicTemperature,
    mean_relative_humidity: Ratio,
) -> Result<Pressure, OutOfRange> {
    Ok(mean_saturation_vapour_pressure(maximum, minimum) * humidity(mean_relative_humidity)?)
}

/// Actual vapour pressure of a day, ea, from the extremes of the relative humidity. The highest
/// humidity falls on the lowest temperature and the other way round.
///
/// - `maximum`, `minimum`: daily extremes of the air temperature, above −237.3 °C (not checked).
/// - `maximum_humidity`, `minimum_humidity`: daily extremes, 0 to 1.
///
/// Result: pressure (kPa in the source).
///
/// # Errors
/// [`OutOfRange`] for a humidity outside 0 to 1.
///
/// Source: FAO-56 Eq. 17.
///
/// ```
/// use slackwater::science::air::actual_vapour_pressure_from_extremes;
/// use slackwater::science::units::{
///     Ratio, ThermodynamicTemperature, pressure::kilopascal, ratio::percent,
///     thermodynamic_temperature::degree_celsius,
/// };
///
/// let (t, humidity) = (ThermodynamicTemperature::new::<degree_celsius>, Ratio::new::<percent>);
/// let ea = actual_vapour_pressure_from_extremes(t(25.0), t(18.0), humidity(82.0), humidity(54.0))?;
/// assert!((ea.get::<kilopascal>() - 1.70).abs() < 0.01);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn actual_vapour_pressure_from_extremes(
    maximum: ThermodynamicTemperature,
    minimum: ThermodynamicTemperature,
    maximum_humidity: Ratio,
    minimum_humidity: Ratio,
) -> Result<Pressure, OutOfRange> {
    let morning = saturation_vapour_pressure(minimum) * humidity(maximum_humidity)?;
    let afternoon = saturation_vapour_pressure(maximum) * humidity(minimum_humidity)?;
    Ok((morning + afternoon) / 2.0)
}

/// How the wet bulb of a psychrometer is ventilated, with the coefficient of FAO-56 Eq. 16.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Psychrometer {
    /// Drawn past by a fan at some 5 m s⁻¹ (Assmann type): 0.000662 °C⁻¹.
    Ventilated,
    /// Natural ventilation of about 1 m s⁻¹: 0.000800 °C⁻¹.
    NaturallyVentilated,
    /// Indoors, unventilated: 0.001200 °C⁻¹.
    Indoor,
}

impl Psychrometer {
    /// Coefficient, °C⁻¹.
    fn coefficient(self) -> f64 {
        match self {
            Self::Ventilated => 0.000_662,
            Self::NaturallyVentilated => 0.000_800,
            Self::Indoor => 0.001_200,
        }
    }
}

/// Actual vapour pressure, ea, from a dry and a wet thermometer.
///
/// - `dry`, `wet`: readings, the wet one at or below the dry one.
/// - `atmospheric`: pressure of the air.
/// - `psychrometer`: how the wet bulb is ventilated.
///
/// Result: pressure (kPa in the source).
///
/// # Errors
/// [`OutOfRange`] if the wet bulb is the warmer one, or if it is so much colder that no air could
/// be that dry (a negative vapour pressure).
///
/// Source: FAO-56 Eq. 15 and 16.
///
/// ```
/// use slackwater::science::air::{Psychrometer, actual_vapour_pressure_from_wet_bulb};
/// use slackwater::science::units::{
///     Pressure, ThermodynamicTemperature, pressure::kilopascal,
///     thermodynamic_temperature::degree_celsius,
/// };
///
/// let t = ThermodynamicTemperature::new::<degree_celsius>;
/// let air = Pressure::new::<kilopascal>(87.9);
/// let ea =
///     actual_vapour_pressure_from_wet_bulb(t(25.6), t(19.5), air, Psychrometer::Ventilated)?;
/// assert!((ea.get::<kilopascal>() - 1.91).abs() < 0.01);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn actual_vapour_pressure_from_wet_bulb(
    dry: ThermodynamicTemperature,
    wet: ThermodynamicTemperature,
    atmospheric: Pressure,
    psychrometer: Psychrometer,
) -> Result<Pressure, OutOfRange> {
    let dry = celsius(dry);
    let wet = within(Quantity::WetBulbTemperature, celsius(wet), -237.3, dry)?;
    let saturated = saturation_kpa(wet);
    let psychrometric = psychrometer.coefficient() * atmospheric.get::<pressure::kilopascal>();
    let actual = saturated - psychrometric * (dry - wet);
    within(Quantity::VapourPressure, actual, 0.0, saturated).map(kilopascal)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::units::thermodynamic_temperature::degree_celsius;

    fn t(celsius: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(celsius)
    }

    #[test]
    fn a_humidity_is_a_fraction_of_one() {
        let fraction = Ratio::new::<ratio::ratio>;
        for wrong in [1.01, -0.01, f64::NAN] {
            let errors = [
                actual_vapour_pressure_from_mean_humidity(t(20.0), t(10.0), fraction(wrong)),
                actual_vapour_pressure_from_extremes(
                    t(9.0),
                    t(5.0),
                    fraction(0.5),
                    fraction(wrong),
                ),
                actual_vapour_pressure_from_extremes(
                    t(9.0),
                    t(5.0),
                    fraction(wrong),
                    fraction(0.5),
                ),
            ];
            for error in errors {
                let quantity = error.err().map(|error| error.quantity);
                assert_eq!(quantity, Some(Quantity::RelativeHumidity));
            }
        }
    }

    #[test]
    fn a_wet_bulb_is_neither_warmer_nor_colder_than_air_allows() {
        let ea = |dry, wet| {
            let air = kilopascal(101.3);
            actual_vapour_pressure_from_wet_bulb(t(dry), t(wet), air, Psychrometer::Ventilated)
                .map_err(|error| error.quantity)
        };
        assert_eq!(ea(20.0, 20.1), Err(Quantity::WetBulbTemperature));
        assert_eq!(ea(20.0, 1.0), Err(Quantity::VapourPressure));
        assert_eq!(ea(20.0, 20.0), Ok(saturation_vapour_pressure(t(20.0))));
    }

    #[test]
    fn less_ventilation_of_the_wet_bulb_means_drier_air() {
        let ea = |kind| {
            actual_vapour_pressure_from_wet_bulb(t(25.6), t(19.5), kilopascal(87.9), kind).ok()
        };
        assert!(ea(Psychrometer::Ventilated) > ea(Psychrometer::NaturallyVentilated));
        assert!(ea(Psychrometer::NaturallyVentilated) > ea(Psychrometer::Indoor));
    }
}
