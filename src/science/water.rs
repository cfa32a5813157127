//! Pure water: its density and the oxygen it holds in contact with air.

use crate::science::units::{
    MassConcentration, MassDensity, Pressure, ThermodynamicTemperature, mass_concentration,
    mass_density, pressure, thermodynamic_temperature,
};

/// Why water of this kind is not described.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum WaterProblem {
    /// The temperature is outside the range of the source, or not a number.
    TemperatureOutOfRange {
        /// What was asked.
        got: ThermodynamicTemperature,
        /// The lowest temperature of the source.
        low: ThermodynamicTemperature,
        /// The highest temperature of the source.
        high: ThermodynamicTemperature,
    },
    /// The air pressure is outside the range of the source, or not a number.
    PressureOutOfRange {
        /// What was asked.
        got: Pressure,
        /// The lowest pressure of the source.
        low: Pressure,
        /// The highest pressure of the source.
        high: Pressure,
    },
}

/// The density of air-free water at 101.325 kPa.
///
/// `temperature`: 0 to 40 °C. The result lies between 992.2 and 999.975 kg/m³; a nutrient solution
/// is heavier by about the mass of its salts.
///
/// # Errors
/// [`WaterProblem::TemperatureOutOfRange`] outside of 0 to 40 °C.
///
/// Source: Tanaka, Girard, Davis, Peuto & Bignell (2001), Metrologia 38:301–309, the equation of
/// page 305 with the constants of their recommended table (adopted by the CIPM).
///
/// ```
/// use slackwater::science::units::{
///     ThermodynamicTemperature, mass_density::kilogram_per_cubic_meter,
///     thermodynamic_temperature::degree_celsius,
/// };
/// use slackwater::science::water::density;
///
/// let rho = density(ThermodynamicTemperature::new::<degree_celsius>(20.0))?;
/// assert!((rho.get::<kilogram_per_cubic_meter>() - 998.207).abs() < 0.001);
/// # Ok::<(), slackwater::science::water::WaterProblem>(())
/// ```
pub fn density(temperature: ThermodynamicTemperature) -> Result<MassDensity, WaterProblem> {
    // °C and kg/m³, as the source prints them.
    let t = celsius_within_range(temperature)?;
    let from_maximum = t - 3.983_035;
    let thinning = from_maximum * from_maximum * (t + 301.797) / (522_528.9 * (t + 69.348_81));
    Ok(MassDensity::new::<mass_density::kilogram_per_cubic_meter>(
        999.974_950 * (1.0 - thinning),
    ))
}

/// The concentration of oxygen in fresh water in equilibrium with water-saturated air.
///
/// `temperature`: of the water, 0 to 40 °C. `air_pressure`: at the place, 0.5 to 1.1 atm (50.7 to
/// 111.5 kPa). The result is about 3 to 16 mg/L.
///
/// # Errors
/// [`WaterProblem::TemperatureOutOfRange`] or [`WaterProblem::PressureOutOfRange`] outside of
/// those ranges.
///
/// Source: Benson & Krause (1984), Limnol. Oceanogr. 29:620–632, equations 32 (in mg/L, without
/// salinity) and 24 (pressure), in the form of APHA (1985), Standard Methods, 4500-O.
///
/// ```
/// use slackwater::science::units::{
///     Pressure, ThermodynamicTemperature, mass_concentration::milligram_per_liter,
///     pressure::kilopascal, thermodynamic_temperature::degree_celsius,
/// };
/// use slackwater::science::water::oxygen_saturation;
///
/// let warm = ThermodynamicTemperature::new::<degree_celsius>(25.0);
/// let oxygen = oxygen_saturation(warm, Pressure::new::<kilopascal>(101.325))?;
/// assert!((oxygen.get::<milligram_per_liter>() - 8.26).abs() < 0.005);
/// # Ok::<(), slackwater::science::water::WaterProblem>(())
/// ```
pub fn oxygen_saturation(
    temperature: ThermodynamicTemperature,
    air_pressure: Pressure,
) -> Result<MassConcentration, WaterProblem> {
    let low = Pressure::new::<pressure::atmosphere>(0.5);
    let high = Pressure::new::<pressure::atmosphere>(1.1);
    // K, °C, atm and mg/L, as the source prints them.
    let celsius = celsius_within_range(temperature)?;
    let kelvin = temperature.get::<thermodynamic_temperature::kelvin>();
    if !(low..=high).contains(&air_pressure) {
        return Err(WaterProblem::PressureOutOfRange {
            got: air_pressure,
            low,
            high,
        });
    }
    let p = air_pressure.get::<pressure::atmosphere>();
    let inverse = 1.0 / kelvin;
    let at_one_atmosphere = libm::exp(
        -139.344_11
            + inverse
                * (1.575_701e5
                    + inverse * (-6.642_308e7 + inverse * (1.243_800e10 - inverse * 8.621_949e11))),
    );
    let vapour = libm::exp(11.8571 - inverse * (3_840.70 + inverse * 216_961.0));
    // How far the second virial coefficient of oxygen departs from an ideal gas.
    let theta = 0.000_975 - 1.426e-5 * celsius + 6.436e-8 * celsius * celsius;
    let pressure_factor = (p - vapour) * (1.0 - theta * p) / ((1.0 - vapour) * (1.0 - theta));
    Ok(MassConcentration::new::<
        mass_concentration::milligram_per_liter,
    >(at_one_atmosphere * pressure_factor))
}

/// The °C of a temperature within the range that both sources share.
fn celsius_within_range(got: ThermodynamicTemperature) -> Result<f64, WaterProblem> {
    use thermodynamic_temperature::degree_celsius;
    let low = ThermodynamicTemperature::new::<degree_celsius>(0.0);
    let high = ThermodynamicTemperature::new::<degree_celsius>(40.0);
    if (low..=high).contains(&got) {
        Ok(got.get::<degree_celsius>())
    } else {
        Err(WaterProblem::TemperatureOutOfRange { got, low, high })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::units::thermodynamic_temperature::degree_celsius;

    fn celsius(value: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(value)
    }

    #[test]
    fn both_ends_of_the_range_belong_to_it() {
        let sea_level = Pressure::new::<pressure::atmosphere>(1.0);
        for t in [0.0, 40.0] {
            assert!(density(celsius(t)).is_ok());
            assert!(oxygen_saturation(celsius(t), sea_level).is_ok());
        }
        for t in [-0.01, 40.01, f64::NAN, f64::INFINITY] {
            assert!(matches!(
                density(celsius(t)),
                Err(WaterProblem::TemperatureOutOfRange { .. })
            ));
            assert!(oxygen_saturation(celsius(t), sea_level).is_err());
        }
        for p in [0.5, 1.1] {
            assert!(
                oxygen_saturation(celsius(20.0), Pressure::new::<pressure::atmosphere>(p)).is_ok()
            );
        }
        for p in [0.49, 1.11, f64::NAN] {
            assert!(matches!(
                oxygen_saturation(celsius(20.0), Pressure::new::<pressure::atmosphere>(p)),
                Err(WaterProblem::PressureOutOfRange { .. })
            ));
        }
    }

    #[test]
    fn water_is_heaviest_at_four_degrees() {
        let at = |t| density(celsius(t)).expect("within range");
        assert!(at(3.983) > at(3.5) && at(3.983) > at(4.5));
    }
}
