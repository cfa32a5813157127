//! Moist air: vapour pressure, its slope, pressure of the atmosphere, wind at the reference height.
//!
//! All equations are those of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith,
//! 1998), cited below as FAO-56, unless another source is named.
//!
//! The saturation functions are evaluated for every hour of a season, so they check nothing: they
//! are defined above −237.3 °C, the pole of the formula, and describe vapour over liquid water, also
//! below 0 °C. Functions with a narrower domain return [`OutOfRange`].

use crate::science::units::{
    Length, MassDensity, Pressure, PressurePerTemperature, TemperatureInterval,
    ThermodynamicTemperature, Velocity, length, mass_density, pressure, temperature_interval,
    thermodynamic_temperature, velocity,
};

mod humidity;

pub use humidity::{
    Psychrometer, actual_vapour_pressure_from_extremes, actual_vapour_pressure_from_mean_humidity,
    actual_vapour_pressure_from_wet_bulb,
};

/// A quantity of the weather or of the sun whose valid range a function checks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// Elevation above sea level, m.
    Elevation,
    /// Height of the wind measurement above the ground, m.
    WindHeight,
    /// Wind speed, m s⁻¹.
    WindSpeed,
    /// Relative humidity, a fraction of 1.
    RelativeHumidity,
    /// Wet bulb temperature, °C.
    WetBulbTemperature,
    /// Partial pressure of water vapour, kPa.
    VapourPressure,
    /// Latitude, degrees, north positive.
    Latitude,
    /// Day of the year, 1 January is 1.
    DayOfYear,
    /// Solar time, h.
    SolarTime,
    /// Duration of bright sunshine, h.
    Sunshine,
    /// Time between sunrise and sunset, h.
    Daylight,
    /// Daily maximum less daily minimum of the air temperature, K.
    TemperatureRange,
    /// Solar radiation at the ground, MJ m⁻² d⁻¹.
    SolarRadiation,
    /// Solar radiation under a cloudless sky, MJ m⁻² d⁻¹.
    ClearSkyRadiation,
}

/// An argument outside the range in which its formula holds. Numbers are in the quantity's unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutOfRange {
    /// Which argument.
    pub quantity: Quantity,
    /// Its value.
    pub got: f64,
    /// The lowest value that the formula accepts.
    pub low: f64,
    /// The highest value that the formula accepts.
    pub high: f64,
}

impl core::fmt::Display for OutOfRange {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let Self {
            quantity,
            got,
            low,
            high,
        } = self;
        write!(f, "{quantity:?}: {got} is not within {low} to {high}")
    }
}

impl core::error::Error for OutOfRange {}

/// Passes a number through if it lies within its range. NaN lies in no range.
pub(crate) fn within(quantity: Quantity, got: f64, low: f64, high: f64) -> Result<f64, OutOfRange> {
    if (low..=high).contains(&got) {
        Ok(got)
    } else {
        Err(OutOfRange {
            quantity,
            got,
            low,
            high,
        })
    }
}

/// °C of a temperature.
pub(crate) fn celsius(temperature: ThermodynamicTemperature) -> f64 {
    temperature.get::<thermodynamic_temperature::degree_celsius>()
}

fn kilopascal(value: f64) -> Pressure {
    Pressure::new::<pressure::kilopascal>(value)
}

fn kilopascal_per_kelvin(value: f64) -> PressurePerTemperature {
    kilopascal(value) / TemperatureInterval::new::<temperature_interval::kelvin>(1.0)
}

/// e°(T) in kPa from °C, FAO-56 Eq. 11.
fn saturation_kpa(t: f64) -> f64 {
    0.6108 * libm::exp(17.27 * t / (t + 237.3))
}

/// Saturation vapour pressure over liquid water.
///
/// - `temperature`: of the air, above −237.3 °C (not checked).
///
/// Result: pressure (kPa in the source). Within 0.12 % of the Hyland and Wexler (1983) formulation
/// from 0 to 50 °C.
///
/// Source: FAO-56 Eq. 11 (after Tetens 1930).
///
/// ```
/// use slackwater::science::air::saturation_vapour_pressure;
/// use slackwater::science::units::{
///     ThermodynamicTemperature, pressure::kilopascal, thermodynamic_temperature::degree_celsius,
/// };
///
/// let e = saturation_vapour_pressure(ThermodynamicTemperature::new::<degree_celsius>(24.5));
/// assert!((e.get::<kilopascal>() - 3.075).abs() < 0.001);
/// ```
pub fn saturation_vapour_pressure(temperature: ThermodynamicTemperature) -> Pressure {
    kilopascal(saturation_kpa(celsius(temperature)))
}

/// Slope of the saturation vapour pressure curve, Δ.
///
/// - `temperature`: of the air, above −237.3 °C (not checked).
///
/// Result: pressure per temperature (kPa °C⁻¹ in the source).
///
/// Source: FAO-56 Eq. 13.
///
/// ```
/// use slackwater::science::air::saturation_slope;
/// use slackwater::science::units::{
///     ThermodynamicTemperature, thermodynamic_temperature::degree_celsius,
/// };
///
/// let slope = saturation_slope(ThermodynamicTemperature::new::<degree_celsius>(30.2));
/// assert!((slope.value - 246.0).abs() < 0.5); // Pa K⁻¹
/// ```
pub fn saturation_slope(temperature: ThermodynamicTemperature) -> PressurePerTemperature {
    let t = celsius(temperature);
    kilopascal_per_kelvin(4098.0 * saturation_kpa(t) / ((t + 237.3) * (t + 237.3)))
}

/// Mean saturation vapour pressure of a day, es: the mean of the pressures at the two extremes,
/// because the curve is convex and the pressure at the mean temperature would be too low.
///
/// - `maximum`, `minimum`: daily extremes of the air temperature, above −237.3 °C (not checked).
///
/// Result: pressure (kPa in the source).
///
/// Source: FAO-56 Eq. 12.
///
/// ```
/// use slackwater::science::air::mean_saturation_vapour_pressure;
/// use slackwater::science::units::{
///     ThermodynamicTemperature, pressure::kilopascal, thermodynamic_temperature::degree_celsius,
/// };
///
/// let t = ThermodynamicTemperature::new::<degree_celsius>;
/// let es = mean_saturation_vapour_pressure(t(24.5), t(15.0));
/// assert!((es.get::<kilopascal>() - 2.39).abs() < 0.005);
/// ```
pub fn mean_saturation_vapour_pressure(
    maximum: ThermodynamicTemperature,
    minimum: ThermodynamicTemperature,
) -> Pressure {
    (saturation_vapour_pressure(maximum) + saturation_vapour_pressure(minimum)) / 2.0
}

/// Mean pressure of the atmosphere at an elevation, for air of 20 °C at sea level.
///
/// - `elevation`: above sea level, −500 to 9000 m (the land surface).
///
/// Result: pressure (kPa in the source).
///
/// # Errors
/// [`OutOfRange`] for an elevation outside −500 to 9000 m.
///
/// Source: FAO-56 Eq. 7.
///
/// ```
/// use slackwater::science::air::atmospheric_pressure;
/// use slackwater::science::units::{Length, length::meter, pressure::kilopascal};
///
/// let air = atmospheric_pressure(Length::new::<meter>(1800.0))?;
/// assert!((air.get::<kilopascal>() - 81.8).abs() < 0.1);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn atmospheric_pressure(elevation: Length) -> Result<Pressure, OutOfRange> {
    let z = within(
        Quantity::Elevation,
        elevation.get::<length::meter>(),
        -500.0,
        9000.0,
    )?;
    Ok(kilopascal(
        101.3 * libm::pow((293.0 - 0.0065 * z) / 293.0, 5.26),
    ))
}

/// Psychrometric constant, γ.
///
/// - `atmospheric`: pressure of the air, any.
///
/// Result: pressure per temperature (kPa °C⁻¹ in the source).
///
/// Source: FAO-56 Eq. 8, with its latent heat of 2.45 MJ kg⁻¹.
///
/// ```
/// use slackwater::science::air::psychrometric_constant;
/// use slackwater::science::units::{Pressure, pressure::kilopascal};
///
/// let gamma = psychrometric_constant(Pressure::new::<kilopascal>(81.8));
/// assert!((gamma.value - 54.4).abs() < 0.1); // Pa K⁻¹
/// ```
pub fn psychrometric_constant(atmospheric: Pressure) -> PressurePerTemperature {
    kilopascal_per_kelvin(0.665e-3 * atmospheric.get::<pressure::kilopascal>())
}

/// Wind speed at 2 m above short grass from a measurement at another height.
///
/// - `speed`: measured, not negative.
/// - `height`: of the measurement above the ground, 0.12 m (the top of the reference grass) to
///   100 m (about the depth of the surface layer in which the logarithmic profile holds).
///
/// Result: velocity (m s⁻¹ in the source).
///
/// # Errors
/// [`OutOfRange`] for a negative speed or a height outside 0.12 to 100 m.
///
/// Source: FAO-56 Eq. 47.
///
/// ```
/// use slackwater::science::air::wind_at_two_metres;
/// use slackwater::science::units::{Length, Velocity, length::meter, velocity::meter_per_second};
///
/// let measured = Velocity::new::<meter_per_second>(3.2);
/// let wind = wind_at_two_metres(measured, Length::new::<meter>(10.0))?;
/// assert!((wind.get::<meter_per_second>() - 2.4).abs() < 0.05);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn wind_at_two_metres(speed: Velocity, height: Length) -> Result<Velocity, OutOfRange> {
    let u = speed.get::<velocity::meter_per_second>();
    within(Quantity::WindSpeed, u, 0.0, f64::MAX)?;
    let z = within(
        Quantity::WindHeight,
        height.get::<length::meter>(),
        0.12,
        100.0,
    )?;
    Ok(speed * (4.87 / libm::log(67.8 * z - 5.42)))
}

/// Mass of water vapour in a volume of air (absolute humidity), by the ideal gas law.
///
/// - `vapour_pressure`: partial pressure of the vapour, any.
/// - `temperature`: of the air, above 0 K (not checked).
///
/// Result: mass per volume of moist air (g m⁻³ for a pressure in Pa).
///
/// Source: the ideal gas law, χ = 2.16679 e / T. The constant, in g K J⁻¹, is the one in common use
/// for the molar mass of water over the gas constant (18.0153 / 8.31446 = 2.16674).
///
/// ```
/// use slackwater::science::air::{saturation_vapour_pressure, vapour_concentration};
/// use slackwater::science::units::{
///     ThermodynamicTemperature, mass_density::gram_per_cubic_meter,
///     thermodynamic_temperature::degree_celsius,
/// };
///
/// let t = ThermodynamicTemperature::new::<degree_celsius>(20.0);
/// let saturated = vapour_concentration(saturation_vapour_pressure(t), t);
/// assert!((saturated.get::<gram_per_cubic_meter>() - 17.3).abs() < 0.05);
/// ```
pub fn vapour_concentration(
    vapour_pressure: Pressure,
    temperature: ThermodynamicTemperature,
) -> MassDensity {
    let e = vapour_pressure.get::<pressure::pascal>();
    let kelvin = temperature.get::<thermodynamic_temperature::kelvin>();
    MassDensity::new::<mass_density::gram_per_cubic_meter>(2.16679 * e / kelvin)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn t(celsius: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<thermodynamic_temperature::degree_celsius>(celsius)
    }

    #[test]
    fn the_slope_is_the_derivative_of_the_curve() {
        const STEP: f64 = 1e-3;
        for tenths in -200..=500 {
            let at = f64::from(tenths) / 10.0;
            let secant =
                (saturation_kpa(at + STEP) - saturation_kpa(at - STEP)) / (2.0 * STEP) * 1e3;
            let slope = saturation_slope(t(at)).value;
            // 4098 is 17.27 × 237.3 = 4098.17 rounded to four digits: 4.2e-5.
            assert!(
                (slope / secant - 1.0).abs() < 5e-5,
                "{at}: {slope} {secant}"
            );
        }
    }

    #[test]
    fn the_mean_of_the_extremes_lies_above_the_pressure_at_the_mean() {
        let mean = mean_saturation_vapour_pressure(t(24.5), t(15.0));
        assert!(mean > saturation_vapour_pressure(t(19.75)));
    }

    #[test]
    fn arguments_outside_their_range_are_named() {
        let metre = Length::new::<length::meter>;
        let speed = Velocity::new::<velocity::meter_per_second>;
        let cases = [
            (
                atmospheric_pressure(metre(9001.0)).err(),
                Quantity::Elevation,
            ),
            (
                atmospheric_pressure(metre(f64::NAN)).err(),
                Quantity::Elevation,
            ),
            (
                wind_at_two_metres(speed(1.0), metre(0.05)).err(),
                Quantity::WindHeight,
            ),
            (
                wind_at_two_metres(speed(-1.0), metre(2.0)).err(),
                Quantity::WindSpeed,
            ),
        ];
        for (error, quantity) in cases {
            assert_eq!(error.map(|error| error.quantity), Some(quantity));
        }
    }
}
