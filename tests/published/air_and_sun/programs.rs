//! Moist air, days and the course of a day against general-purpose programs, and the lags that the
//! course takes.

use slackwater::science::air::{
    OutOfRange, actual_vapour_pressure_from_mean_humidity, saturation_slope,
    saturation_vapour_pressure, vapour_concentration, wind_at_two_metres,
};
use slackwater::science::diurnal::{Lags, TemperatureCourse};
use slackwater::science::sun::Sun;
use slackwater::science::units::{Pressure, Ratio};
use slackwater::science::units::{
    mass_density::gram_per_cubic_meter, pressure::pascal, ratio::ratio,
    thermodynamic_temperature::degree_celsius, time::hour,
};

use super::{
    Day, Figures, assert_close, figures, hours, in_mj, kpa, metres, metres_per_second, mj, sun, t,
};
use crate::table::{Row, rows};

/// Saturation pressure changes by some 6 % per K, so 0.3 % is half of the last digit of a thermometer
/// that reads to 0.1 °C: no reading that goes into the simple FAO-56 form could tell the two apart.
const HALF_A_TENTH_OF_A_DEGREE: f64 = 0.003;
/// The ASHRAE constants, 0.621945 over 287.042 J kg⁻¹ K⁻¹, make 2.16674 g K J⁻¹; the 2.16679 in common
/// use lies 2 in 100 000 above.
const GAS_CONSTANT_ROUNDING: f64 = 5e-5;

/// psychrolib 2.5.0 uses the formulation of Hyland and Wexler (1983) as ASHRAE (2017) prints it.
#[test]
fn moist_air_agrees_with_psychrolib() -> Result<(), OutOfRange> {
    for row in rows(include_str!("../data/air_and_sun_psychrometrics.csv")) {
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
        "../data/air_and_sun_reference_evapotranspiration.csv"
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
    for row in rows(include_str!("../data/air_and_sun_diurnal.csv")) {
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
