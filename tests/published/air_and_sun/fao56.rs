//! The worked examples of FAO-56 (Allen et al. 1998), step by step and as whole days.

use std::collections::BTreeMap;

use slackwater::science::air::{
    OutOfRange, Psychrometer, actual_vapour_pressure_from_extremes,
    actual_vapour_pressure_from_mean_humidity, actual_vapour_pressure_from_wet_bulb,
    atmospheric_pressure, mean_saturation_vapour_pressure, psychrometric_constant,
    saturation_slope, saturation_vapour_pressure, wind_at_two_metres,
};
use slackwater::science::evapotranspiration::{
    soil_heat_flux_monthly, soil_heat_flux_monthly_from_previous,
};
use slackwater::science::sun::{
    AirMass, net_longwave, net_shortwave, solar_from_sunshine, solar_from_temperature_range,
};
use slackwater::science::units::Ratio;
use slackwater::science::units::{
    angle::radian,
    pressure::kilopascal,
    ratio::{percent, ratio},
    time::hour,
    velocity::meter_per_second,
};

use super::{
    Day, Figures, assert_close, figures, hours, in_kpa_per_kelvin, in_mj, kpa, metres,
    metres_per_second, mj, sun, t,
};
use crate::table::rows;

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
    for row in rows(include_str!("../data/air_and_sun_fao56_steps.csv")) {
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
    for row in rows(include_str!("../data/air_and_sun_fao56_days.csv")) {
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
