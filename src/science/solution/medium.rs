//! Water as the medium of ions: dielectric constant, viscosity, Debye–Hückel parameters.

use super::problem::SolutionProblem;
use crate::science::units::{
    ThermodynamicTemperature, mass_density::kilogram_per_cubic_meter, thermodynamic_temperature,
};
use crate::science::water;

/// Water of one temperature at atmospheric pressure, in the units that the sources print.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Medium {
    /// K.
    pub kelvin: f64,
    /// kg/L.
    pub density: f64,
    /// Relative permittivity.
    pub permittivity: f64,
    /// mPa s.
    pub viscosity: f64,
    /// Debye–Hückel A, (kg/mol)^½, for decimal logarithms.
    pub a: f64,
    /// Debye–Hückel B, (kg/mol)^½ per ångström.
    pub b: f64,
}

impl Medium {
    /// Water at a temperature from 0 to 40 °C.
    pub fn at(temperature: ThermodynamicTemperature) -> Result<Self, SolutionProblem> {
        let density = water::density(temperature)
            .map_err(|_| SolutionProblem::temperature(temperature))?
            .get::<kilogram_per_cubic_meter>()
            / 1000.0;
        let t = temperature.get::<thermodynamic_temperature::kelvin>();
        let permittivity = permittivity(t);
        let et = permittivity * t;
        Ok(Self {
            kelvin: t,
            density,
            permittivity,
            viscosity: viscosity(t),
            // Debye & Hückel's limiting law with the constants worked out; Parkhurst & Appelo 2013.
            a: 1.824_83e6 * density.sqrt() / (et * et.sqrt()),
            b: 50.2905 * (density / et).sqrt(),
        })
    }
}

/// Relative permittivity of water at 1 atm; Bradley & Pitzer 1979, J. Phys. Chem. 83:1599, table I.
fn permittivity(kelvin: f64) -> f64 {
    /// 1 atm in bar.
    const PRESSURE: f64 = 1.013_25;
    let at_1000_bar = 342.79 * libm::exp(kelvin * (-5.0866e-3 + kelvin * 9.4690e-7));
    let c = -2.0525 + 3115.9 / (-182.89 + kelvin);
    let b = -8032.5 + 4.2142e6 / kelvin + 2.1417 * kelvin;
    at_1000_bar + c * libm::log((b + PRESSURE) / (b + 1000.0))
}

/// Viscosity of water at 0.1 MPa in mPa s; Pátek, Hrubý, Klomfar, Součková & Harvey 2009, J. Phys.
/// Chem. Ref. Data 38:21, equation 8 and table 7 (IAPWS SR6-08).
fn viscosity(kelvin: f64) -> f64 {
    let tau = kelvin / 300.0;
    1e-3 * (280.68 * libm::pow(tau, -1.9)
        + 511.45 * libm::pow(tau, -7.7)
        + 61.131 * libm::pow(tau, -19.6)
        + 0.459_03 * libm::pow(tau, -40.0))
}

/// How the activity coefficient of a species depends on the ionic strength.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Activity {
    /// log γ = −A z² √I / (1 + B å √I) + b I; Truesdell & Jones 1974. The size å is in ångström.
    Sized(f64, f64),
    /// log γ = −A z² (√I / (1 + √I) − 0.3 I); Davies 1962.
    Davies,
    /// log γ = 0.1 I: uncharged species.
    Uncharged,
}

impl Activity {
    /// ln γ and its slope d ln γ / d I, at an ionic strength (mol/kg) whose root is given too.
    #[inline]
    pub fn ln_coefficient(self, medium: &Medium, charge: f64, i: f64, root: f64) -> (f64, f64) {
        let slope = medium.a * charge * charge;
        let (log, by_strength) = match self {
            Self::Sized(size, b) => {
                let spread = 1.0 + medium.b * size * root;
                (
                    b * i - slope * root / spread,
                    b - slope / (2.0 * root * spread * spread),
                )
            }
            Self::Davies => {
                let spread = 1.0 + root;
                (
                    -slope * (root / spread - 0.3 * i),
                    -slope * (1.0 / (2.0 * root * spread * spread) - 0.3),
                )
            }
            Self::Uncharged => (0.1 * i, 0.1),
        };
        (
            log * core::f64::consts::LN_10,
            by_strength * core::f64::consts::LN_10,
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::units::thermodynamic_temperature::degree_celsius;

    fn at(celsius: f64) -> Medium {
        Medium::at(ThermodynamicTemperature::new::<degree_celsius>(celsius)).expect("in range")
    }

    #[test]
    fn water_at_25_degrees_is_as_tabulated() {
        // Bradley & Pitzer 1979 print 78.38; IAPWS SR6-08 table 3 prints 889.996 8 µPa s.
        assert!((at(25.0).permittivity - 78.38).abs() < 0.01);
        assert!((at(25.0).viscosity - 0.889_996_8).abs() < 1e-7);
        // Every textbook: 0.51 and 0.33.
        assert!((at(25.0).a - 0.51).abs() < 0.001);
        assert!((at(25.0).b - 0.3285).abs() < 0.0005);
    }

    #[test]
    fn the_slope_of_an_activity_coefficient_is_its_derivative() {
        let medium = at(15.0);
        let value = |kind: Activity, i: f64| kind.ln_coefficient(&medium, 2.0, i, i.sqrt());
        for kind in [
            Activity::Sized(5.0, 0.165),
            Activity::Davies,
            Activity::Uncharged,
        ] {
            for i in [1e-6, 0.03, 3.0] {
                let h = 1e-5 * i;
                let numeric = (value(kind, i + h).0 - value(kind, i - h).0) / (2.0 * h);
                assert!((value(kind, i).1 - numeric).abs() <= 1e-6 * numeric.abs());
            }
        }
    }
}
