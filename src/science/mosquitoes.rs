//! How fast mosquitoes grow up in standing water.

use crate::science::units::thermodynamic_temperature::{degree_celsius, kelvin};
use crate::science::units::time::day;
use crate::science::units::{ThermodynamicTemperature, Time};

/// Molar gas constant, cal/(mol K), as the source rounds it.
const GAS: f64 = 1.987;
/// The coldest and the warmest of the source's experiments, °C.
const STUDIED_C: (f64, f64) = (15.0, 34.0);

/// A mosquito that breeds in containers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mosquito {
    /// *Culex quinquefasciatus*, the southern house mosquito.
    CulexQuinquefasciatus,
    /// *Aedes aegypti*, the yellow fever mosquito.
    AedesAegypti,
}

/// A temperature outside of the source's experiments, or not a number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TemperatureOutOfRange {
    /// What was asked.
    pub got: ThermodynamicTemperature,
    /// The coldest that was studied.
    pub low: ThermodynamicTemperature,
    /// The warmest that was studied.
    pub high: ThermodynamicTemperature,
}

/// The parameters of the rate of development.
struct Development {
    /// Rate at 25 °C without inactivation, per day.
    at_25: f64,
    /// Enthalpy of activation, cal/mol.
    activation: f64,
    /// Temperature at which heat has inactivated one half, K.
    half: f64,
    /// Enthalpy of inactivation by heat, cal/mol.
    inactivation: f64,
}

impl Mosquito {
    const fn development(self) -> Development {
        match self {
            Self::CulexQuinquefasciatus => Development {
                at_25: 0.219_45,
                activation: 28_049.98,
                half: 298.60,
                inactivation: 35_362.18,
            },
            Self::AedesAegypti => Development {
                at_25: 0.154_60,
                activation: 33_255.57,
                half: 301.67,
                inactivation: 50_543.49,
            },
        }
    }
}

/// The time from egg to adult at a constant temperature of the water.
///
/// `temperature`: 15 to 34 °C. The result is about 6 to 50 days.
///
/// # Errors
/// [`TemperatureOutOfRange`] outside of 15 to 34 °C, the span of the experiments.
///
/// Source: Rueda, Patel, Axtell & Stinner (1990), J. Med. Entomol. 27:892–898, the model of Sharpe
/// and `DeMichele` without inhibition by cold, parameters of their table for total development.
///
/// ```
/// use slackwater::science::mosquitoes::{Mosquito, egg_to_adult};
/// use slackwater::science::units::{
///     ThermodynamicTemperature, thermodynamic_temperature::degree_celsius, time::day,
/// };
/// let warm = ThermodynamicTemperature::new::<degree_celsius>(25.0);
/// let time = egg_to_adult(Mosquito::CulexQuinquefasciatus, warm)?;
/// assert!((time.get::<day>() - 8.7).abs() < 0.1);
/// # Ok::<(), slackwater::science::mosquitoes::TemperatureOutOfRange>(())
/// ```
pub fn egg_to_adult(
    mosquito: Mosquito,
    temperature: ThermodynamicTemperature,
) -> Result<Time, TemperatureOutOfRange> {
    let celsius = ThermodynamicTemperature::new::<degree_celsius>;
    let (low, high) = (celsius(STUDIED_C.0), celsius(STUDIED_C.1));
    if !(low..=high).contains(&temperature) {
        return Err(TemperatureOutOfRange {
            got: temperature,
            low,
            high,
        });
    }
    // K, cal/mol and per day, as the source prints them.
    let k = temperature.get::<kelvin>();
    let own = mosquito.development();
    let activated = libm::exp(own.activation / GAS * (1.0 / 298.15 - 1.0 / k));
    let inactivated = libm::exp(own.inactivation / GAS * (1.0 / own.half - 1.0 / k));
    let rate = own.at_25 * (k / 298.15) * activated / (1.0 + inactivated);
    Ok(Time::new::<day>(1.0 / rate))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_span_of_the_experiments_is_answered() {
        let at = |celsius: f64| {
            egg_to_adult(
                Mosquito::AedesAegypti,
                ThermodynamicTemperature::new::<degree_celsius>(celsius),
            )
        };
        for celsius in [15.0, 34.0] {
            assert!(at(celsius).is_ok());
        }
        for celsius in [14.99, 34.01, f64::NAN, f64::INFINITY] {
            assert!(at(celsius).is_err());
        }
    }
}
