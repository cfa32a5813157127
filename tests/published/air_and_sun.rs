//! Air, sun, the course of a day and reference evapotranspiration against the worked examples of
//! FAO-56 and against general-purpose programs that others wrote.

mod fao56;
mod programs;

use std::collections::BTreeMap;

use slackwater::science::air::{
    OutOfRange, atmospheric_pressure, mean_saturation_vapour_pressure, psychrometric_constant,
    saturation_slope,
};
use slackwater::science::evapotranspiration::{PenmanMonteith, hargreaves, penman_monteith_daily};
use slackwater::science::sun::{Sun, clear_sky, net_longwave, net_shortwave};
use slackwater::science::units::{
    Angle, Length, Pressure, PressurePerTemperature, RadiantExposure, ThermodynamicTemperature,
    Time, Velocity,
};
use slackwater::science::units::{
    angle::{degree, radian},
    length::{meter, millimeter},
    pressure::kilopascal,
    radiant_exposure::megajoule_per_square_meter,
    ratio::ratio,
    thermodynamic_temperature::degree_celsius,
    time::hour,
    velocity::meter_per_second,
};

fn t(celsius: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(celsius)
}

fn kpa(value: f64) -> Pressure {
    Pressure::new::<kilopascal>(value)
}

fn mj(value: f64) -> RadiantExposure {
    RadiantExposure::new::<megajoule_per_square_meter>(value)
}

fn hours(value: f64) -> Time {
    Time::new::<hour>(value)
}

fn metres(value: f64) -> Length {
    Length::new::<meter>(value)
}

fn metres_per_second(value: f64) -> Velocity {
    Velocity::new::<meter_per_second>(value)
}

fn in_mj(exposure: RadiantExposure) -> f64 {
    exposure.get::<megajoule_per_square_meter>()
}

fn in_kpa_per_kelvin(slope: PressurePerTemperature) -> f64 {
    slope.value / 1000.0
}

/// The path of the sun; the day comes from a table.
fn sun(latitude: f64, day: f64) -> Result<Sun, OutOfRange> {
    let day = (1..=366).find(|number| (f64::from(*number) - day).abs() < 0.5);
    Sun::new(
        Angle::new::<degree>(latitude),
        day.expect("a day of the year"),
    )
}

fn assert_close(found: f64, expected: f64, tolerance: f64, what: &str) {
    assert!(
        (found - expected).abs() <= tolerance,
        "{what}: {found}, not {expected} within {tolerance}"
    );
}

/// A day from its weather to its reference evapotranspiration.
struct Day {
    latitude: f64,
    elevation: f64,
    number: f64,
    maximum: f64,
    minimum: f64,
    ea: Pressure,
    wind: Velocity,
    soil_heat: RadiantExposure,
}

type Figures = BTreeMap<&'static str, f64>;

/// Every figure on the way, by the name that the tables give it.
fn figures(
    day: &Day,
    solar: impl Fn(&Sun) -> Result<RadiantExposure, OutOfRange>,
) -> Result<Figures, OutOfRange> {
    let sun = sun(day.latitude, day.number)?;
    let (maximum, minimum) = (t(day.maximum), t(day.minimum));
    let mean = t(f64::midpoint(day.maximum, day.minimum));
    let ra = sun.extraterrestrial_daily();
    let rs = solar(&sun)?;
    let rso = clear_sky(ra, metres(day.elevation))?;
    let lost = net_longwave(maximum, minimum, day.ea, rs, rso)?;
    let weather = PenmanMonteith {
        net_radiation: net_shortwave(rs) - lost,
        soil_heat_flux: day.soil_heat,
        mean_temperature: mean,
        wind: day.wind,
        saturation_vapour_pressure: mean_saturation_vapour_pressure(maximum, minimum),
        actual_vapour_pressure: day.ea,
        slope: saturation_slope(mean),
        psychrometric_constant: psychrometric_constant(atmospheric_pressure(metres(
            day.elevation,
        ))?),
    };
    let deficit = weather.saturation_vapour_pressure - day.ea;
    let hargreaves = hargreaves(mean, maximum, minimum, ra)?;
    Ok(BTreeMap::from([
        ("distance", sun.inverse_relative_distance().get::<ratio>()),
        ("declination_rad", sun.declination().get::<radian>()),
        ("sunset_rad", sun.sunset_hour_angle().get::<radian>()),
        ("ra_mj", in_mj(ra)),
        ("rs_mj", in_mj(rs)),
        ("rso_mj", in_mj(rso)),
        (
            "es_kpa",
            weather.saturation_vapour_pressure.get::<kilopascal>(),
        ),
        ("ea_kpa", day.ea.get::<kilopascal>()),
        ("deficit_kpa", deficit.get::<kilopascal>()),
        ("slope_kpa_per_k", in_kpa_per_kelvin(weather.slope)),
        (
            "gamma_kpa_per_k",
            in_kpa_per_kelvin(weather.psychrometric_constant),
        ),
        ("wind_m_s", day.wind.get::<meter_per_second>()),
        ("soil_heat_mj", in_mj(day.soil_heat)),
        ("rnl_mj", in_mj(lost)),
        ("rn_mj", in_mj(weather.net_radiation)),
        ("hargreaves_mm", hargreaves.get::<millimeter>()),
        (
            "et0_mm",
            penman_monteith_daily(&weather).get::<millimeter>(),
        ),
    ]))
}
