//! Air, sun, the course of a day and reference evapotranspiration against the worked examples of
//! FAO-56 and against general-purpose programs that others wrote.
//!
//! Long, because the worked examples of one book follow one another and use each other's results.

use std::collections::BTreeMap;

use slackwater::science::air::{
    OutOfRange, Psychrometer, actual_vapour_pressure_from_extremes,
    actual_vapour_pressure_from_mean_humidity, actual_vapour_pressure_from_wet_bulb,
    atmospheric_pressure, mean_saturation_vapour_pressure, psychrometric_constant,
    saturation_slope, saturation_vapour_pressure, vapour_concentration, wind_at_two_metres,
};
use slackwater::science::diurnal::{Lags, TemperatureCourse};
use slackwater::science::evapotranspiration::{
    PenmanMonteith, hargreaves, penman_monteith_daily, soil_heat_flux_monthly,
    soil_heat_flux_monthly_from_previous,
};
use slackwater::science::sun::{
    AirMass, Sun, clear_sky, net_longwave, net_shortwave, solar_from_sunshine,
    solar_from_temperature_range,
};
use slackwater::science::units::{
    Angle, Length, Pressure, PressurePerTemperature, RadiantExposure, Ratio,
    ThermodynamicTemperature, Time, Velocity,
};
use slackwater::science::units::{
    angle::{degree, radian},
    length::{meter, millimeter},
    mass_density::gram_per_cubic_meter,
    pressure::{kilopascal, pascal},
    radiant_exposure::megajoule_per_square_meter,
    ratio::{percent, ratio},
    thermodynamic_temperature::degree_celsius,
    time::hour,
    velocity::meter_per_second,
};

use crate::table::{Row, rows};

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

/// One step of a worked example, in the units that FAO-56 prints.
fn step(name: &str, inputs: &[f64]) -> Result<f64, OutOfRange> {
    Ok(match (name, inputs) {
        ("atmospheric_pressure_kpa", &[z]) => atmospheric_pressure(metres(z))?.get::<kilopascal>(),
        ("psychrometric_constant_kpa_per_k", &[p]) => {
            in_kpa_per_kelvin(psychrometric_constant(kpa(p)))
        }
        ("saturation_kpa", &[at]) => saturation_vapour_pressure(t(at)).get::<kilopascal>(),
        ("mean_saturation_kpa", &[max, min]) => {
            mean_saturation_vapour_pressure(t(max), t(min)).get::<kilopascal>()
        }
        ("slope_kpa_per_k", &[at]) => in_kpa_per_kelvin(saturation_slope(t(at))),
        (
            "wet_bulb_ventilated_kpa" | "wet_bulb_natural_kpa" | "wet_bulb_indoor_kpa",
            &[dry, wet, p],
        ) => {
            let kind = match name {
                "wet_bulb_ventilated_kpa" => Psychrometer::Ventilated,
                "wet_bulb_natural_kpa" => Psychrometer::NaturallyVentilated,
                _ => Psychrometer::Indoor,
            };
            actual_vapour_pressure_from_wet_bulb(t(dry), t(wet), kpa(p), kind)?.get::<kilopascal>()
        }
        ("extremes_kpa", &[max, min, high, low]) => {
            let (high, low) = (Ratio::new::<percent>(high), Ratio::new::<percent>(low));
            actual_vapour_pressure_from_extremes(t(max), t(min), high, low)?.get::<kilopascal>()
        }
        ("mean_humidity_kpa", &[max, min, mean]) => {
            let mean = Ratio::new::<percent>(mean);
            actual_vapour_pressure_from_mean_humidity(t(max), t(min), mean)?.get::<kilopascal>()
        }
        ("distance", &[at, day]) => sun(at, day)?.inverse_relative_distance().get::<ratio>(),
        ("declination_rad", &[at, day]) => sun(at, day)?.declination().get::<radian>(),
        ("sunset_rad", &[at, day]) => sun(at, day)?.sunset_hour_angle().get::<radian>(),
        ("daylight_h", &[at, day]) => sun(at, day)?.daylight().get::<hour>(),
        ("extraterrestrial_mj", &[at, day]) => in_mj(sun(at, day)?.extraterrestrial_daily()),
        ("extraterrestrial_between_mj", &[at, day, start, end]) => {
            in_mj(sun(at, day)?.extraterrestrial_between(hours(start), hours(end))?)
        }
        ("solar_from_sunshine_mj", &[ra, shine, daylight]) => {
            in_mj(solar_from_sunshine(mj(ra), hours(shine), hours(daylight))?)
        }
        ("solar_from_temperature_mj", &[ra, max, min]) => in_mj(solar_from_temperature_range(
            mj(ra),
            t(max),
            t(min),
            AirMass::Interior,
        )?),
        ("solar_from_temperature_coastal_mj", &[ra, max, min]) => in_mj(
            solar_from_temperature_range(mj(ra), t(max), t(min), AirMass::Coastal)?,
        ),
        ("net_longwave_mj", &[max, min, ea, rs, rso]) => {
            in_mj(net_longwave(t(max), t(min), kpa(ea), mj(rs), mj(rso))?)
        }
        ("net_shortwave_mj", &[rs]) => in_mj(net_shortwave(mj(rs))),
        ("net_radiation_mj", &[rs, max, min, ea, rso]) => {
            let lost = net_longwave(t(max), t(min), kpa(ea), mj(rs), mj(rso))?;
            in_mj(net_shortwave(mj(rs)) - lost)
        }
        ("soil_heat_mj", &[before, after]) => in_mj(soil_heat_flux_monthly(t(before), t(after))),
        ("soil_heat_from_previous_mj", &[before, now]) => {
            in_mj(soil_heat_flux_monthly_from_previous(t(before), t(now)))
        }
        ("wind_m_s", &[speed, height]) => {
            wind_at_two_metres(metres_per_second(speed), metres(height))?.get::<meter_per_second>()
        }
        (other, _) => panic!("no step '{other}' with {} inputs", inputs.len()),
    })
}

/// FAO-56 (Allen et al. 1998), Examples 2 to 5, 8 to 15, 17 and 19, step by step.
#[test]
fn the_steps_of_fao_56_come_out_as_printed() -> Result<(), OutOfRange> {
    for row in rows(include_str!("data/air_and_sun_fao56_steps.csv")) {
        let inputs: Vec<f64> = row
            .text("inputs")
            .split_whitespace()
            .map(|number| number.parse().expect("a number"))
            .collect();
        let found = step(row.text("step"), &inputs)?;
        let what = format!("{} of {}", row.text("step"), row.text("source"));
        assert_close(
            found,
            row.number("expected"),
            row.number("tolerance"),
            &what,
        );
    }
    Ok(())
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

/// FAO-56 Example 17: a month of April at 13°44' N, from mean extremes and sunshine.
fn example_17() -> Result<Figures, OutOfRange> {
    let day = Day {
        latitude: 13.0 + 44.0 / 60.0,
        elevation: 2.0,
        number: 105.0,
        maximum: 34.8,
        minimum: 25.6,
        ea: kpa(2.85),
        wind: metres_per_second(2.0),
        soil_heat: soil_heat_flux_monthly_from_previous(t(29.2), t(30.2)),
    };
    figures(&day, |sun| {
        solar_from_sunshine(sun.extraterrestrial_daily(), hours(8.5), sun.daylight())
    })
}

/// FAO-56 Example 18: 6 July at 50°48' N, from extremes, sunshine and wind at 10 m.
fn example_18() -> Result<Figures, OutOfRange> {
    let (maximum, minimum) = (21.5, 12.3);
    let (high, low) = (Ratio::new::<percent>(84.0), Ratio::new::<percent>(63.0));
    let day = Day {
        latitude: 50.0 + 48.0 / 60.0,
        elevation: 100.0,
        number: 187.0,
        maximum,
        minimum,
        ea: actual_vapour_pressure_from_extremes(t(maximum), t(minimum), high, low)?,
        wind: wind_at_two_metres(metres_per_second(2.78), metres(10.0))?,
        soil_heat: mj(0.0),
    };
    figures(&day, |sun| {
        solar_from_sunshine(sun.extraterrestrial_daily(), hours(9.25), sun.daylight())
    })
}

/// FAO-56 Example 20: July at 45°43' N with nothing known but the temperatures.
fn example_20() -> Result<Figures, OutOfRange> {
    let (maximum, minimum) = (26.6, 14.8);
    let day = Day {
        latitude: 45.0 + 43.0 / 60.0,
        elevation: 200.0,
        number: 196.0,
        maximum,
        minimum,
        ea: saturation_vapour_pressure(t(minimum)),
        wind: metres_per_second(2.0),
        soil_heat: mj(0.0),
    };
    figures(&day, |sun| {
        let ra = sun.extraterrestrial_daily();
        solar_from_temperature_range(ra, t(maximum), t(minimum), AirMass::Interior)
    })
}

/// FAO-56 (Allen et al. 1998), Examples 17, 18 and 20 as wholes.
#[test]
fn the_days_of_fao_56_come_out_as_printed() -> Result<(), OutOfRange> {
    let days = BTreeMap::from([
        ("17", example_17()?),
        ("18", example_18()?),
        ("20", example_20()?),
    ]);
    for row in rows(include_str!("data/air_and_sun_fao56_days.csv")) {
        let quantity = row.text("quantity");
        let found = days[row.text("example")][quantity];
        let what = format!("{quantity} of {}", row.text("source"));
        assert_close(
            found,
            row.number("expected"),
            row.number("tolerance"),
            &what,
        );
    }
    Ok(())
}

/// Saturation pressure changes by some 6 % per K, so 0.3 % is half of the last digit of a thermometer
/// that reads to 0.1 °C: no reading that goes into the simple FAO-56 form could tell the two apart.
const HALF_A_TENTH_OF_A_DEGREE: f64 = 0.003;
/// The ASHRAE constants, 0.621945 over 287.042 J kg⁻¹ K⁻¹, make 2.16674 g K J⁻¹; the 2.16679 in common
/// use lies 2 in 100 000 above.
const GAS_CONSTANT_ROUNDING: f64 = 5e-5;

/// psychrolib 2.5.0 uses the formulation of Hyland and Wexler (1983) as ASHRAE (2017) prints it.
#[test]
fn moist_air_agrees_with_psychrolib() -> Result<(), OutOfRange> {
    for row in rows(include_str!("data/air_and_sun_psychrometrics.csv")) {
        let at = t(row.number("temperature_c"));
        let humidity = Ratio::new::<ratio>(row.number("relative_humidity"));
        let what = format!("{} °C, {:?}", row.text("temperature_c"), humidity);
        let saturated = saturation_vapour_pressure(at);
        let vapour = actual_vapour_pressure_from_mean_humidity(at, at, humidity)?;
        let printed = Pressure::new::<pascal>(row.number("vapour_pressure_pa"));
        let pairs = [
            (
                "saturation_pa",
                saturated.get::<pascal>(),
                HALF_A_TENTH_OF_A_DEGREE,
            ),
            (
                "slope_pa_per_k",
                saturation_slope(at).value,
                HALF_A_TENTH_OF_A_DEGREE,
            ),
            (
                "vapour_pressure_pa",
                vapour.get::<pascal>(),
                HALF_A_TENTH_OF_A_DEGREE,
            ),
            (
                "deficit_pa",
                (saturated - vapour).get::<pascal>(),
                HALF_A_TENTH_OF_A_DEGREE,
            ),
            (
                "concentration_g_per_m3",
                vapour_concentration(printed, at).get::<gram_per_cubic_meter>(),
                GAS_CONSTANT_ROUNDING,
            ),
        ];
        for (column, found, relative) in pairs {
            let expected = row.number(column);
            assert_close(
                found,
                expected,
                relative * expected,
                &format!("{column} at {what}"),
            );
        }
    }
    Ok(())
}

/// The same equations with the same constants, printed to seven decimals.
const SAME_EQUATION: f64 = 1e-7;
/// ASCE-EWRI (2005) prints 2503 for 4098 × 0.6108 = 2503.06.
const SLOPE_ROUNDING: f64 = 3e-5;
/// ASCE-EWRI (2005) prints 4.901e-9 for the Stefan-Boltzmann constant, FAO-56 4.903e-9.
const BOLTZMANN_ROUNDING: f64 = 4.1e-4;
/// What the two roundings above do to a day's depth: at most 4.1e-4 of a longwave loss of 10 MJ m⁻²
/// times 0.408 mm per MJ m⁻².
const DEPTH_ROUNDING_MM: f64 = 0.002;

fn refet_day(row: &Row) -> Result<(Sun, Figures), OutOfRange> {
    let wind = metres_per_second(row.number("wind_m_s"));
    let day = Day {
        latitude: row.number("latitude_deg"),
        elevation: row.number("elevation_m"),
        number: row.number("day"),
        maximum: row.number("tmax_c"),
        minimum: row.number("tmin_c"),
        ea: kpa(row.number("ea_kpa")),
        wind: wind_at_two_metres(wind, metres(row.number("wind_height_m")))?,
        soil_heat: mj(0.0),
    };
    let figures = figures(&day, |_| Ok(mj(row.number("rs_mj"))))?;
    Ok((sun(day.latitude, day.number)?, figures))
}

/// refet 0.5.0, method 'asce': ASCE-EWRI (2005), whose short reference is that of FAO-56.
#[test]
fn days_agree_with_refet() -> Result<(), OutOfRange> {
    const SAME: [&str; 7] = [
        "distance",
        "declination_rad",
        "sunset_rad",
        "ra_mj",
        "rso_mj",
        "es_kpa",
        "gamma_kpa_per_k",
    ];
    for row in rows(include_str!(
        "data/air_and_sun_reference_evapotranspiration.csv"
    )) {
        let (sun, found) = refet_day(&row)?;
        let what = format!("day {} at {}°", row.text("day"), row.text("latitude_deg"));
        for column in SAME {
            assert_close(found[column], row.number(column), SAME_EQUATION, &what);
        }
        assert_close(
            found["wind_m_s"],
            row.number("wind_2m_m_s"),
            SAME_EQUATION,
            &what,
        );
        let (slope, lost) = (row.number("slope_kpa_per_k"), row.number("rnl_mj"));
        assert_close(
            found["slope_kpa_per_k"],
            slope,
            SLOPE_ROUNDING * slope,
            &what,
        );
        assert_close(found["rnl_mj"], lost, BOLTZMANN_ROUNDING * lost, &what);
        assert_close(
            found["rn_mj"],
            row.number("rn_mj"),
            BOLTZMANN_ROUNDING * lost,
            &what,
        );
        assert_close(
            found["et0_mm"],
            row.number("et0_mm"),
            DEPTH_ROUNDING_MM,
            &what,
        );

        let daylight = row.number("sunset_rad") * 24.0 / core::f64::consts::PI;
        assert_close(
            sun.daylight().get::<hour>(),
            daylight,
            10.0 * SAME_EQUATION,
            &what,
        );
        for start in [4.0, 7.0, 10.0, 11.0, 14.0, 18.0, 20.0] {
            let ra = sun.extraterrestrial_between(hours(start), hours(start + 1.0))?;
            let expected = row.number(&format!("ra_hour_{start}_mj"));
            assert_close(
                in_mj(ra),
                expected,
                SAME_EQUATION,
                &format!("{what}, {start} h"),
            );
        }
    }
    Ok(())
}

/// The programs print five decimals.
const FIFTH_DECIMAL: f64 = 1e-5;

/// Parton and Logan (1981) as two public programs compute it. Neither displaces the night, so the
/// printed night first goes through the displacement of Kimball and Bellamy (1986): the share of
/// the fall that is left at the end, exp(−b), is taken off and the rest stretched to the whole.
#[test]
fn the_course_of_a_day_agrees_with_public_programs() -> Result<(), OutOfRange> {
    for row in rows(include_str!("data/air_and_sun_diurnal.csv")) {
        let (minimum, daylight) = (row.number("minimum_c"), row.number("daylight_h"));
        let decay = row.number("b");
        let lags = Lags {
            maximum: hours(row.number("a_h")),
            night_decay: Ratio::new::<ratio>(decay),
            minimum: hours(row.number("c_h")),
        };
        let maximum = t(row.number("maximum_c"));
        let course = TemperatureCourse::with_lags(maximum, t(minimum), hours(daylight), lags)?;
        let printed = row.number("expected_c");
        let expected = match row.text("part") {
            "day" => printed,
            "night" => {
                let sunset = course
                    .at(hours(12.0 + daylight / 2.0))
                    .get::<degree_celsius>();
                let left = libm::exp(-decay);
                let share = (printed - minimum) / (sunset - minimum);
                minimum + (sunset - minimum) * (share - left) / (1.0 - left)
            }
            other => panic!("no part of the day is called '{other}'"),
        };
        let found = course.at(hours(row.number("hour"))).get::<degree_celsius>();
        let what = format!("{} h of {}", row.text("hour"), row.text("source"));
        assert_close(found, expected, FIFTH_DECIMAL, &what);
    }
    Ok(())
}

/// Parton and Logan (1981), Table 1, air at 150 cm: 1.86 h, 2.20, −0.17 h.
#[test]
fn the_air_lags_as_parton_and_logan_found() {
    let air = Lags::air();
    assert_close(air.maximum.get::<hour>(), 1.86, 1e-12, "a");
    assert_close(air.night_decay.get::<ratio>(), 2.20, 1e-12, "b");
    assert_close(air.minimum.get::<hour>(), -0.17, 1e-12, "c");
}
