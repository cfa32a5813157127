//! The salts that fall out, and how close a solution is to that.

use super::newton::State;
use super::records::{Constant, HYDROGEN_PHOSPHATE};
use super::totals::Component;

/// A salt that falls out of nutrient solutions.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mineral {
    /// CaSO₄·2H₂O: where calcium meets sulfate in a stock solution.
    Gypsum,
    /// CaHPO₄·2H₂O: the first calcium phosphate to appear.
    Brushite,
    /// CaCO₃: from hard water at high pH.
    Calcite,
    /// Ca₅(PO₄)₃OH: the least soluble calcium phosphate; forms too slowly to matter in a season,
    /// so most nutrient solutions stand above its saturation.
    Hydroxyapatite,
}

impl Mineral {
    /// Every mineral, in the order of the declaration.
    pub const ALL: [Self; 4] = [
        Self::Gypsum,
        Self::Brushite,
        Self::Calcite,
        Self::Hydroxyapatite,
    ];

    /// How many minerals there are.
    pub const COUNT: usize = Self::ALL.len();

    /// Where the solubility was published.
    pub fn source(self) -> &'static str {
        match self {
            Self::Gypsum | Self::Hydroxyapatite => "Nordstrom et al. 1990",
            Self::Brushite => "Allison et al. 1991, MINTEQA2 version 4, minteq.v4.dat",
            Self::Calcite => "Plummer & Busenberg 1982",
        }
    }

    /// The equilibrium at a temperature in K, whose decimal logarithm is given too.
    pub(super) fn phase(self, kelvin: f64, log_kelvin: f64) -> Phase {
        let (log_k, parts, hydrogen, water): (f64, &'static [(Component, f64)], f64, f64) =
            match self {
                Self::Gypsum => (
                    Constant::Fitted([68.2401, 0.0, -3221.51, -25.0627, 0.0, 0.0])
                        .log(kelvin, log_kelvin),
                    &[(Component::Calcium, 1.0), (Component::Sulfate, 1.0)],
                    0.0,
                    2.0,
                ),
                Self::Brushite => (
                    Constant::Heat(-18.995, 23.0).log(kelvin, log_kelvin),
                    &[(Component::Calcium, 1.0), (Component::Phosphate, 1.0)],
                    1.0,
                    2.0,
                ),
                Self::Calcite => (
                    Constant::Fitted([-171.9065, -0.077_993, 2839.319, 71.595, 0.0, 0.0])
                        .log(kelvin, log_kelvin),
                    &[(Component::Calcium, 1.0), (Component::Carbonate, 1.0)],
                    0.0,
                    0.0,
                ),
                // Published with HPO₄²⁻ and 4 H⁺ on the side of the mineral.
                Self::Hydroxyapatite => (
                    Constant::Heat(-3.421, -151.272_52).log(kelvin, log_kelvin)
                        - 3.0 * HYDROGEN_PHOSPHATE.log(kelvin, log_kelvin),
                    &[(Component::Calcium, 5.0), (Component::Phosphate, 3.0)],
                    -1.0,
                    1.0,
                ),
            };
        Phase {
            log_k,
            parts,
            hydrogen,
            water,
        }
    }
}

/// Mineral ⇌ parts + hydrogen H⁺ + water H₂O.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Phase {
    /// Decimal logarithm of the solubility product.
    pub log_k: f64,
    /// Ions set free, by component.
    pub parts: &'static [(Component, f64)],
    /// Hydrogen ions set free.
    pub hydrogen: f64,
    /// Water set free.
    pub water: f64,
}

impl Phase {
    /// log (ion activity product / solubility product); none where a part is absent.
    pub fn saturation(&self, state: &State) -> Option<f64> {
        let mut ln = self.hydrogen * state.hydrogen + self.water * state.water;
        for &(part, count) in self.parts {
            ln += count * state.parts[part as usize];
        }
        ln.is_finite()
            .then(|| ln / core::f64::consts::LN_10 - self.log_k)
    }
}
