//! Why a solution cannot be worked out.

use super::totals::Component;
use crate::science::units::{
    MolarConcentration, Pressure, ThermodynamicTemperature,
    thermodynamic_temperature::degree_celsius,
};

/// Why a solution cannot be worked out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SolutionProblem {
    /// The temperature is outside the range of the constants, or not a number.
    TemperatureOutOfRange {
        /// What was asked.
        got: ThermodynamicTemperature,
        /// The lowest accepted.
        low: ThermodynamicTemperature,
        /// The highest accepted.
        high: ThermodynamicTemperature,
    },
    /// A total is negative, not a number, or beyond any solution.
    TotalOutOfRange {
        /// The component.
        component: Component,
        /// What was asked.
        got: MolarConcentration,
        /// The highest accepted; the lowest is zero.
        high: MolarConcentration,
    },
    /// The pH, given or found by the balance of charges, is outside the range, or not a number.
    PhOutOfRange {
        /// What was asked or found.
        got: f64,
        /// The lowest accepted.
        low: f64,
        /// The highest accepted.
        high: f64,
    },
    /// The alkalinity, or the charge left over, is not a number or beyond any solution.
    ChargeOutOfRange {
        /// What was asked.
        got: MolarConcentration,
        /// The size accepted.
        high: MolarConcentration,
    },
    /// The pressure of carbon dioxide is not positive or above one atmosphere.
    PressureOutOfRange {
        /// What was asked.
        got: Pressure,
        /// The highest accepted; the lowest is above zero.
        high: Pressure,
    },
    /// Both the total carbonate and what else sets the carbonate were given.
    CarbonateTwice,
    /// No acid of this kind, or none within the range, brings the solution to the target.
    TargetOutOfReach {
        /// The pH aimed at.
        target: f64,
        /// The pH without acid.
        without: f64,
    },
    /// The equations were not solved within the iterations allowed: an alkalinity that the pH does
    /// not allow, or charges that no pH balances.
    NotConverged {
        /// Iterations made.
        iterations: usize,
    },
}

impl SolutionProblem {
    /// A temperature outside of 0 to 40 °C.
    pub(super) fn temperature(got: ThermodynamicTemperature) -> Self {
        Self::TemperatureOutOfRange {
            got,
            low: ThermodynamicTemperature::new::<degree_celsius>(0.0),
            high: ThermodynamicTemperature::new::<degree_celsius>(40.0),
        }
    }
}
