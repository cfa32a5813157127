//! Reference evapotranspiration: water lost in a day by a short, well-watered lawn.
//!
//! All equations are those of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith,
//! 1998), cited below as FAO-56.

use crate::science::air::{OutOfRange, celsius};
use crate::science::sun::{megajoule_per_square_metre, megajoules, temperature_range};
use crate::science::units::{
    Length, Pressure, PressurePerTemperature, RadiantExposure, ThermodynamicTemperature, Velocity,
    length, pressure, velocity,
};

/// Depth of water that 1 MJ m⁻² evaporates, mm: FAO-56 Eq. 20, the inverse of 2.45 MJ kg⁻¹.
const MILLIMETRES_PER_MEGAJOULE: f64 = 0.408;

/// What the Penman-Monteith equation needs to know of a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PenmanMonteith {
    /// Rn: net shortwave less net longwave radiation of the day.
    pub net_radiation: RadiantExposure,
    /// G: heat stored in the ground over the day; 0 for a single day.
    pub soil_heat_flux: RadiantExposure,
    /// T: mean of the daily extremes of the air temperature at 2 m.
    pub mean_temperature: ThermodynamicTemperature,
    /// u2: mean wind speed at 2 m, not negative.
    pub wind: Velocity,
    /// es: mean saturation vapour pressure.
    pub saturation_vapour_pressure: Pressure,
    /// ea: actual vapour pressure.
    pub actual_vapour_pressure: Pressure,
    /// Δ at the mean temperature.
    pub slope: PressurePerTemperature,
    /// γ at the place.
    pub psychrometric_constant: PressurePerTemperature,
}

/// Reference evapotranspiration of a day, ET0, by Penman and Monteith.
///
/// - `day`: its weather, any; the temperature above −273 °C (not checked).
///
/// Result: depth of water lost in the day (mm d⁻¹ in the source). Negative where the equation gives
/// dew.
///
/// Source: FAO-56 Eq. 6.
///
/// ```
/// use slackwater::science::air::{psychrometric_constant, saturation_slope};
/// use slackwater::science::evapotranspiration::{PenmanMonteith, penman_monteith_daily};
/// use slackwater::science::units::{
///     Pressure, RadiantExposure, ThermodynamicTemperature, Velocity, length::millimeter,
///     pressure::kilopascal, radiant_exposure::megajoule_per_square_meter,
///     thermodynamic_temperature::degree_celsius, velocity::meter_per_second,
/// };
///
/// let mean = ThermodynamicTemperature::new::<degree_celsius>(16.9);
/// let et0 = penman_monteith_daily(&PenmanMonteith {
///     net_radiation: RadiantExposure::new::<megajoule_per_square_meter>(13.28),
///     soil_heat_flux: RadiantExposure::default(),
///     mean_temperature: mean,
///     wind: Velocity::new::<meter_per_second>(2.078),
///     saturation_vapour_pressure: Pressure::new::<kilopascal>(1.997),
///     actual_vapour_pressure: Pressure::new::<kilopascal>(1.409),
///     slope: saturation_slope(mean),
///     psychrometric_constant: psychrometric_constant(Pressure::new::<kilopascal>(100.1)),
/// });
/// assert!((et0.get::<millimeter>() - 3.88).abs() < 0.05);
/// ```
pub fn penman_monteith_daily(day: &PenmanMonteith) -> Length {
    // kPa °C⁻¹ for the slope and the constant, kPa for the pressures.
    let slope = day.slope.value / 1000.0;
    let gamma = day.psychrometric_constant.value / 1000.0;
    let wind = day.wind.get::<velocity::meter_per_second>();
    let deficit =
        (day.saturation_vapour_pressure - day.actual_vapour_pressure).get::<pressure::kilopascal>();
    let energy = megajoules(day.net_radiation - day.soil_heat_flux);
    let radiation_term = MILLIMETRES_PER_MEGAJOULE * slope * energy;
    let aerodynamic_term = gamma * 900.0 / (celsius(day.mean_temperature) + 273.0) * wind * deficit;
    millimetres((radiation_term + aerodynamic_term) / (slope + gamma * (1.0 + 0.34 * wind)))
}

fn millimetres(depth: f64) -> Length {
    Length::new::<length::millimeter>(depth)
}

/// Reference evapotranspiration of a day, ET0, from temperatures alone, by Hargreaves.
///
/// - `mean`, `maximum`, `minimum`: air temperature, the maximum not below the minimum.
/// - `extraterrestrial`: Ra of the day.
///
/// Result: depth of water lost in the day (mm d⁻¹ in the source). Negative below −17.8 °C.
///
/// # Errors
/// [`OutOfRange`] if the maximum is below the minimum.
///
/// Source: FAO-56 Eq. 52, with Ra in mm d⁻¹ by Eq. 20.
///
/// ```
/// use slackwater::science::evapotranspiration::hargreaves;
/// use slackwater::science::units::{
///     RadiantExposure, ThermodynamicTemperature, length::millimeter,
///     radiant_exposure::megajoule_per_square_meter, thermodynamic_temperature::degree_celsius,
/// };
///
/// let t = ThermodynamicTemperature::new::<degree_celsius>;
/// let ra = RadiantExposure::new::<megajoule_per_square_meter>(40.55);
/// let et0 = hargreaves(t(20.7), t(26.6), t(14.8), ra)?;
/// assert!((et0.get::<millimeter>() - 5.0).abs() < 0.05);
/// # Ok::<(), slackwater::science::air::OutOfRange>(())
/// ```
pub fn hargreaves(
    mean: ThermodynamicTemperature,
    maximum: ThermodynamicTemperature,
    minimum: ThermodynamicTemperature,
    extraterrestrial: RadiantExposure,
) -> Result<Length, OutOfRange> {
    let range = temperature_range(maximum, minimum)?;
    let evaporable = MILLIMETRES_PER_MEGAJOULE * megajoules(extraterrestrial);
    Ok(millimetres(
        0.0023 * (celsius(mean) + 17.8) * range.sqrt() * evaporable,
    ))
}

/// Heat stored in the ground per day of a month, G, from the months on either side.
///
/// - `previous`, `next`: mean air temperature of the month before and of the month after.
///
/// Result: energy per area and day (MJ m⁻² d⁻¹ in the source), positive while the ground warms.
///
/// Source: FAO-56 Eq. 43.
///
/// ```
/// use slackwater::science::evapotranspiration::soil_heat_flux_monthly;
/// use slackwater::science::units::{
///     ThermodynamicTemperature, radiant_exposure::megajoule_per_square_meter,
///     thermodynamic_temperature::degree_celsius,
/// };
///
/// let t = ThermodynamicTemperature::new::<degree_celsius>;
/// let g = soil_heat_flux_monthly(t(14.1), t(18.8)).get::<megajoule_per_square_meter>();
/// assert!((g - 0.33).abs() < 0.005);
/// ```
pub fn soil_heat_flux_monthly(
    previous: ThermodynamicTemperature,
    next: ThermodynamicTemperature,
) -> RadiantExposure {
    megajoule_per_square_metre(0.07 * (celsius(next) - celsius(previous)))
}

/// Heat stored in the ground per day of a month, G, where the month after is not known.
///
/// - `previous`, `current`: mean air temperature of the month before and of the month itself.
///
/// Result: energy per area and day (MJ m⁻² d⁻¹ in the source), positive while the ground warms.
///
/// Source: FAO-56 Eq. 44.
///
/// ```
/// use slackwater::science::evapotranspiration::soil_heat_flux_monthly_from_previous;
/// use slackwater::science::units::{
///     ThermodynamicTemperature, radiant_exposure::megajoule_per_square_meter,
///     thermodynamic_temperature::degree_celsius,
/// };
///
/// let t = ThermodynamicTemperature::new::<degree_celsius>;
/// let g = soil_heat_flux_monthly_from_previous(t(29.2), t(30.2));
/// assert!((g.get::<megajoule_per_square_meter>() - 0.14).abs() < 0.005);
/// ```
pub fn soil_heat_flux_monthly_from_previous(
    previous: ThermodynamicTemperature,
    current: ThermodynamicTemperature,
) -> RadiantExposure {
    megajoule_per_square_metre(0.14 * (celsius(current) - celsius(previous)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::air::{
        Quantity, psychrometric_constant, saturation_slope, saturation_vapour_pressure,
    };
    use crate::science::units::thermodynamic_temperature::degree_celsius;

    fn t(celsius: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(celsius)
    }

    fn day(net_radiation: f64, wind: f64, humidity: f64) -> PenmanMonteith {
        let saturated = saturation_vapour_pressure(t(20.0));
        PenmanMonteith {
            net_radiation: megajoule_per_square_metre(net_radiation),
            soil_heat_flux: RadiantExposure::default(),
            mean_temperature: t(20.0),
            wind: Velocity::new::<velocity::meter_per_second>(wind),
            saturation_vapour_pressure: saturated,
            actual_vapour_pressure: saturated * humidity,
            slope: saturation_slope(t(20.0)),
            psychrometric_constant: psychrometric_constant(Pressure::new::<pressure::kilopascal>(
                101.3,
            )),
        }
    }

    #[test]
    fn more_sun_and_drier_air_evaporate_more() {
        let usual = penman_monteith_daily(&day(12.0, 2.0, 0.6));
        assert!(penman_monteith_daily(&day(13.0, 2.0, 0.6)) > usual);
        assert!(penman_monteith_daily(&day(12.0, 2.0, 0.5)) > usual);
    }

    #[test]
    fn without_sun_saturated_air_takes_up_nothing() {
        assert_eq!(
            penman_monteith_daily(&day(0.0, 3.0, 1.0)),
            Length::default()
        );
    }

    #[test]
    fn heat_kept_by_the_ground_evaporates_nothing() {
        let mut kept = day(12.0, 2.0, 0.6);
        kept.soil_heat_flux = megajoule_per_square_metre(2.0);
        let less = day(10.0, 2.0, 0.6);
        assert_eq!(penman_monteith_daily(&kept), penman_monteith_daily(&less));
    }

    #[test]
    fn a_maximum_below_the_minimum_is_named() {
        let ra = megajoule_per_square_metre(30.0);
        let error = hargreaves(t(20.0), t(15.0), t(25.0), ra).map_err(|error| error.quantity);
        assert_eq!(error, Err(Quantity::TemperatureRange));
    }
}
