//! Solar radiation that reaches the ground and the net radiation that stays there.

use super::{megajoule_per_square_metre, megajoules};
use crate::science::air::{OutOfRange, Quantity, celsius, within};
use crate::science::units::{
    Length, Pressure, RadiantExposure, ThermodynamicTemperature, Time, length, pressure, time,
};

/// Stefan-Boltzmann constant, MJ K⁻⁴ m⁻² d⁻¹: FAO-56 Eq. 39.
const STEFAN_BOLTZMANN: f64 = 4.903e-9;
/// Zero of the Celsius scale as FAO-56 Eq. 39 prints it, K.
const CELSIUS_ZERO: f64 = 273.16;
/// Share of the extraterrestrial radiation that reaches the ground under full cloud, and the share
/// that full sunshine adds: `a_s` and `b_s` of FAO-56 Eq. 35, where no local calibration exists.
const OVERCAST_SHARE: f64 = 0.25;
const SUNSHINE_SHARE: f64 = 0.50;
/// Reflected share of solar radiation for the grass reference crop: FAO-56 Eq. 38.
const REFERENCE_ALBEDO: f64 = 0.23;

/// Solar radiation at the ground, Rs, from the hours of bright sunshine.
///
/// - `extraterrestrial`: Ra of the day.
/// - `sunshine`: measured duration, 0 to `daylight`.
/// - `daylight`: possible duration N, above 0 up to 24 h.
///
/// Result: energy per area and day (MJ m⁻² d⁻¹ in the source).
///
/// # Errors
/// [`OutOfRange`] if there is no daylight or more sunshine than daylight.
///
/// Source: FAO-56 Eq. 35 with its general coefficients 0.25 and 0.50.
///
/// ```
/// use slackwater::science::sun::solar_from_sunshine;
/// use slackwater::science::units::{
///     RadiantExposure, Time, radiant_exposure::megajoule_per_square_meter, time::hour,
/// };
///
/// let ra = RadiantExposure::new::<megajoule_per_square_meter>(25.1);
/// let rs = solar_from_sunshine(ra, Time::new::<hour>(7.1), Time::new::<hour>(10.9))?;
/// assert!((rs.get::<megajoule_per_square_meter>() - 14.5).abs() < 0.1);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn solar_from_sunshine(
    extraterrestrial: RadiantExposure,
    sunshine: Time,
    daylight: Time,
) -> Result<RadiantExposure, OutOfRange> {
    let possible = within(
        Quantity::Daylight,
        daylight.get::<time::hour>(),
        f64::MIN_POSITIVE,
        24.0,
    )?;
    let actual = within(
        Quantity::Sunshine,
        sunshine.get::<time::hour>(),
        0.0,
        possible,
    )?;
    Ok(extraterrestrial * (OVERCAST_SHARE + SUNSHINE_SHARE * actual / possible))
}

/// Where the daily range of temperature tells of clouds, with the coefficient of FAO-56 Eq. 50.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AirMass {
    /// Land dominates, the air is not strongly influenced by a large body of water: 0.16 °C^-0.5.
    Interior,
    /// On or near the coast of a large land mass: 0.19 °C^-0.5.
    Coastal,
}

impl AirMass {
    /// kRs, °C^-0.5.
    fn coefficient(self) -> f64 {
        match self {
            Self::Interior => 0.16,
            Self::Coastal => 0.19,
        }
    }
}

/// The range between the daily extremes, K, not negative.
pub(crate) fn temperature_range(
    maximum: ThermodynamicTemperature,
    minimum: ThermodynamicTemperature,
) -> Result<f64, OutOfRange> {
    let range = celsius(maximum) - celsius(minimum);
    within(Quantity::TemperatureRange, range, 0.0, f64::MAX)
}

/// Solar radiation at the ground, Rs, from the range of the air temperature: cloudless days are
/// warmer by day and colder by night.
///
/// - `extraterrestrial`: Ra of the day.
/// - `maximum`, `minimum`: daily extremes of the air temperature, in this order.
/// - `air_mass`: whether land or sea governs the air.
///
/// Result: energy per area and day (MJ m⁻² d⁻¹ in the source). It is not held below the clear-sky
/// radiation; see [`clear_sky`].
///
/// # Errors
/// [`OutOfRange`] if the maximum is below the minimum.
///
/// Source: FAO-56 Eq. 50 (Hargreaves).
///
/// ```
/// use slackwater::science::sun::{AirMass, solar_from_temperature_range};
/// use slackwater::science::units::{
///     RadiantExposure, ThermodynamicTemperature, radiant_exposure::megajoule_per_square_meter,
///     thermodynamic_temperature::degree_celsius,
/// };
///
/// let t = ThermodynamicTemperature::new::<degree_celsius>;
/// let ra = RadiantExposure::new::<megajoule_per_square_meter>(40.6);
/// let rs = solar_from_temperature_range(ra, t(26.6), t(14.8), AirMass::Interior)?;
/// assert!((rs.get::<megajoule_per_square_meter>() - 22.3).abs() < 0.1);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn solar_from_temperature_range(
    extraterrestrial: RadiantExposure,
    maximum: ThermodynamicTemperature,
    minimum: ThermodynamicTemperature,
    air_mass: AirMass,
) -> Result<RadiantExposure, OutOfRange> {
    let range = temperature_range(maximum, minimum)?;
    Ok(extraterrestrial * (air_mass.coefficient() * range.sqrt()))
}

/// Solar radiation under a cloudless sky, Rso.
///
/// - `extraterrestrial`: Ra of the day.
/// - `elevation`: above sea level, −500 to 9000 m.
///
/// Result: energy per area and day (MJ m⁻² d⁻¹ in the source).
///
/// # Errors
/// [`OutOfRange`] for an elevation outside −500 to 9000 m.
///
/// Source: FAO-56 Eq. 37.
///
/// ```
/// use slackwater::science::sun::clear_sky;
/// use slackwater::science::units::{
///     Length, RadiantExposure, length::meter, radiant_exposure::megajoule_per_square_meter,
/// };
///
/// let ra = RadiantExposure::new::<megajoule_per_square_meter>(41.09);
/// let rso = clear_sky(ra, Length::new::<meter>(100.0))?;
/// assert!((rso.get::<megajoule_per_square_meter>() - 30.9).abs() < 0.05);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn clear_sky(
    extraterrestrial: RadiantExposure,
    elevation: Length,
) -> Result<RadiantExposure, OutOfRange> {
    let z = within(
        Quantity::Elevation,
        elevation.get::<length::meter>(),
        -500.0,
        9000.0,
    )?;
    Ok(extraterrestrial * (0.75 + 2e-5 * z))
}

/// Net shortwave radiation of the grass reference crop, Rns: what is not reflected.
///
/// - `solar`: Rs at the ground.
///
/// Result: energy per area, in the period of the argument.
///
/// Source: FAO-56 Eq. 38 with the albedo 0.23 of the reference crop.
///
/// ```
/// use slackwater::science::sun::net_shortwave;
/// use slackwater::science::units::{RadiantExposure, radiant_exposure::megajoule_per_square_meter};
///
/// let rns = net_shortwave(RadiantExposure::new::<megajoule_per_square_meter>(14.5));
/// assert!((rns.get::<megajoule_per_square_meter>() - 11.1).abs() < 0.15);
/// ```
pub fn net_shortwave(solar: RadiantExposure) -> RadiantExposure {
    solar * (1.0 - REFERENCE_ALBEDO)
}

/// Net longwave radiation lost by the ground in a day, Rnl.
///
/// - `maximum`, `minimum`: daily extremes of the air temperature.
/// - `actual_vapour_pressure`: ea, not negative.
/// - `solar`: Rs at the ground, not negative.
/// - `clear_sky`: Rso, above 0. As in the source, a ratio of the two above 1 counts as 1.
///
/// Result: energy per area and day (MJ m⁻² d⁻¹ in the source), positive upwards.
///
/// # Errors
/// [`OutOfRange`] for a negative vapour pressure or radiation, and for a clear sky without any sun
/// (polar night), where the ratio that stands for the clouds is undefined.
///
/// Source: FAO-56 Eq. 39.
///
/// ```
/// use slackwater::science::sun::net_longwave;
/// use slackwater::science::units::{
///     Pressure, RadiantExposure, ThermodynamicTemperature, pressure::kilopascal,
///     radiant_exposure::megajoule_per_square_meter, thermodynamic_temperature::degree_celsius,
/// };
///
/// let t = ThermodynamicTemperature::new::<degree_celsius>;
/// let exposure = RadiantExposure::new::<megajoule_per_square_meter>;
/// let ea = Pressure::new::<kilopascal>(2.1);
/// let rnl = net_longwave(t(25.1), t(19.1), ea, exposure(14.5), exposure(18.8))?;
/// assert!((rnl.get::<megajoule_per_square_meter>() - 3.5).abs() < 0.1);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn net_longwave(
    maximum: ThermodynamicTemperature,
    minimum: ThermodynamicTemperature,
    actual_vapour_pressure: Pressure,
    solar: RadiantExposure,
    clear_sky: RadiantExposure,
) -> Result<RadiantExposure, OutOfRange> {
    let ea = actual_vapour_pressure.get::<pressure::kilopascal>();
    within(Quantity::VapourPressure, ea, 0.0, f64::MAX)?;
    let rs = within(Quantity::SolarRadiation, megajoules(solar), 0.0, f64::MAX)?;
    let rso = within(
        Quantity::ClearSkyRadiation,
        megajoules(clear_sky),
        f64::MIN_POSITIVE,
        f64::MAX,
    )?;
    let fourth_power = |temperature| {
        let kelvin = celsius(temperature) + CELSIUS_ZERO;
        kelvin * kelvin * kelvin * kelvin
    };
    let emitted = STEFAN_BOLTZMANN * (fourth_power(maximum) + fourth_power(minimum)) / 2.0;
    let humidity = 0.34 - 0.14 * ea.sqrt();
    let cloudiness = 1.35 * (rs / rso).min(1.0) - 0.35;
    Ok(megajoule_per_square_metre(emitted * humidity * cloudiness))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::units::thermodynamic_temperature::degree_celsius;

    fn hours(value: f64) -> Time {
        Time::new::<time::hour>(value)
    }

    #[test]
    fn more_sunshine_than_daylight_is_named() {
        let rs = |sunshine, daylight| {
            solar_from_sunshine(
                megajoule_per_square_metre(30.0),
                hours(sunshine),
                hours(daylight),
            )
            .map_err(|error| error.quantity)
        };
        assert_eq!(rs(12.1, 12.0), Err(Quantity::Sunshine));
        assert_eq!(rs(0.0, 0.0), Err(Quantity::Daylight));
        assert_eq!(rs(12.0, 12.0), Ok(megajoule_per_square_metre(22.5)));
    }

    #[test]
    fn longwave_loss_needs_a_sky_and_counts_no_more_than_a_clear_one() {
        let t = ThermodynamicTemperature::new::<degree_celsius>;
        let loss = |rs, rso| {
            let ea = Pressure::new::<pressure::kilopascal>(1.2);
            let (rs, rso) = (
                megajoule_per_square_metre(rs),
                megajoule_per_square_metre(rso),
            );
            net_longwave(t(20.0), t(10.0), ea, rs, rso).map_err(|error| error.quantity)
        };
        assert_eq!(loss(0.0, 0.0), Err(Quantity::ClearSkyRadiation));
        assert_eq!(loss(-1.0, 20.0), Err(Quantity::SolarRadiation));
        assert_eq!(loss(22.0, 20.0), loss(20.0, 20.0));
        assert!(loss(10.0, 20.0).ok() < loss(20.0, 20.0).ok());
    }
}
