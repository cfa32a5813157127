//! The figures of each species: what it is made of, its formation constant, its ion size.
//!
//! The set and the figures are those of the phreeqc.dat family (Parkhurst & Appelo 2013, U.S.
//! Geological Survey Techniques and Methods 6-A43), with ammonium apart from nitrate; each record
//! names the publication that the figure goes back to.

use super::medium::Activity;
use super::medium::Activity::{Davies, Sized, Uncharged};
use super::species::Species;
use super::species::Species as S;
use super::totals::Component;
use super::totals::Component::{
    Ammonium, Borate, Calcium, Carbonate, Chloride, Magnesium, Nitrate, Phosphate, Potassium,
    Sodium, Sulfate,
};

/// A formation constant as a function of temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Constant {
    /// log K = c₁ + c₂ T + c₃/T + c₄ log T + c₅/T² + c₆ T², T in K.
    Fitted([f64; 6]),
    /// log K at 25 °C and the heat of reaction, kJ/mol, by van 't Hoff.
    Heat(f64, f64),
}

impl Constant {
    /// log K at a temperature in K, whose decimal logarithm is given too.
    pub fn log(self, kelvin: f64, log_kelvin: f64) -> f64 {
        /// Gas constant, kJ/(mol K).
        const GAS: f64 = 8.314_462_618e-3;
        /// 25 °C in K.
        const STANDARD: f64 = 298.15;
        match self {
            Self::Fitted([c1, c2, c3, c4, c5, c6]) => {
                c1 + kelvin * (c2 + kelvin * c6) + (c3 + c5 / kelvin) / kelvin + c4 * log_kelvin
            }
            Self::Heat(log_k, heat) => {
                log_k - heat / (core::f64::consts::LN_10 * GAS) * (1.0 / kelvin - 1.0 / STANDARD)
            }
        }
    }
}

use Constant::{Fitted, Heat};

/// How a species forms from its components: parts + hydrogen H⁺ + water H₂O ⇌ species.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Record {
    /// Which species; equal to the place in the table.
    pub species: Species,
    /// Formula in plain letters.
    pub formula: &'static str,
    /// Charge number.
    pub charge: f64,
    /// The components that it holds one of each.
    pub parts: [Option<Component>; 2],
    /// Hydrogen ions taken up.
    pub hydrogen: f64,
    /// Water taken up.
    pub water: f64,
    /// Constants whose logarithms add up to that of the whole reaction; none for a free ion.
    pub steps: &'static [Constant],
    /// Activity coefficient.
    pub activity: Activity,
    /// Who published the figures.
    pub source: &'static str,
}

const TRUESDELL: &str = "Truesdell & Jones 1974";
const PARKHURST: &str = "Parkhurst & Appelo 2013, phreeqc.dat";
const NORDSTROM: &str = "Nordstrom et al. 1990";
const PLUMMER: &str = "Plummer & Busenberg 1982";
const KIELLAND: &str = "Kielland 1937";
const MARTELL: &str = "Martell et al. 1998, NIST 46";

/// H⁺ + CO₃²⁻ ⇌ HCO₃⁻.
const BICARBONATE: Constant =
    Fitted([107.8871, 0.032_528_49, -5151.79, -38.925_61, 563_713.9, 0.0]);

/// H⁺ + SO₄²⁻ ⇌ HSO₄⁻.
const BISULFATE: Constant = Fitted([-56.889, 0.006_473, 2307.9, 19.8858, 0.0, 0.0]);

/// H⁺ + PO₄³⁻ ⇌ HPO₄²⁻.
pub(super) const HYDROGEN_PHOSPHATE: Constant = Heat(12.346, -14.769_52);

/// 2 H⁺ + PO₄³⁻ ⇌ H₂PO₄⁻.
const DIHYDROGEN_PHOSPHATE: Constant = Heat(19.553, -18.911_68);

/// Every species, in the order of [`Species`].
// One line for each species, so that the table can be read down its columns.
#[rustfmt::skip]
pub(super) static RECORDS: [Record; Species::COUNT] = [
    Record { species: S::Hydrogen, formula: "H+", charge: 1.0, parts: [None, None], hydrogen: 1.0, water: 0.0, steps: &[], activity: Sized(9.0, 0.0), source: KIELLAND },
    Record { species: S::Calcium, formula: "Ca+2", charge: 2.0, parts: [Some(Calcium), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(5.0, 0.165), source: TRUESDELL },
    Record { species: S::Magnesium, formula: "Mg+2", charge: 2.0, parts: [Some(Magnesium), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(5.5, 0.2), source: TRUESDELL },
    Record { species: S::Sodium, formula: "Na+", charge: 1.0, parts: [Some(Sodium), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(4.08, 0.082), source: PARKHURST },
    Record { species: S::Potassium, formula: "K+", charge: 1.0, parts: [Some(Potassium), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(3.5, 0.015), source: TRUESDELL },
    Record { species: S::Ammonium, formula: "NH4+", charge: 1.0, parts: [Some(Ammonium), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(2.5, 0.0), source: KIELLAND },
    Record { species: S::Nitrate, formula: "NO3-", charge: -1.0, parts: [Some(Nitrate), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(3.0, 0.0), source: KIELLAND },
    Record { species: S::Chloride, formula: "Cl-", charge: -1.0, parts: [Some(Chloride), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(3.63, 0.017), source: PARKHURST },
    Record { species: S::Sulfate, formula: "SO4-2", charge: -2.0, parts: [Some(Sulfate), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(5.0, -0.04), source: TRUESDELL },
    Record { species: S::PhosphateIon, formula: "PO4-3", charge: -3.0, parts: [Some(Phosphate), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(4.0, 0.0), source: KIELLAND },
    Record { species: S::CarbonateIon, formula: "CO3-2", charge: -2.0, parts: [Some(Carbonate), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Sized(5.4, 0.0), source: TRUESDELL },
    Record { species: S::BoricAcid, formula: "H3BO3", charge: 0.0, parts: [Some(Borate), None], hydrogen: 0.0, water: 0.0, steps: &[], activity: Uncharged, source: PARKHURST },
    Record { species: S::Hydroxide, formula: "OH-", charge: -1.0, parts: [None, None], hydrogen: -1.0, water: 1.0, steps: &[Fitted([293.292_27, 0.136_083_3, -10_576.913, -123.731_58, 0.0, -6.996_455e-5])], activity: Sized(3.5, 0.0), source: PARKHURST },
    Record { species: S::Bicarbonate, formula: "HCO3-", charge: -1.0, parts: [Some(Carbonate), None], hydrogen: 1.0, water: 0.0, steps: &[BICARBONATE], activity: Sized(5.4, 0.0), source: PLUMMER },
    Record { species: S::CarbonDioxide, formula: "CO2", charge: 0.0, parts: [Some(Carbonate), None], hydrogen: 2.0, water: -1.0, steps: &[Fitted([464.1965, 0.093_448_13, -26_986.16, -165.759_51, 2_248_628.9, 0.0])], activity: Uncharged, source: PLUMMER },
    Record { species: S::Bisulfate, formula: "HSO4-", charge: -1.0, parts: [Some(Sulfate), None], hydrogen: 1.0, water: 0.0, steps: &[BISULFATE], activity: Davies, source: NORDSTROM },
    Record { species: S::Ammonia, formula: "NH3", charge: 0.0, parts: [Some(Ammonium), None], hydrogen: -1.0, water: 0.0, steps: &[Fitted([0.6322, -0.001_225, -2835.76, 0.0, 0.0, 0.0])], activity: Uncharged, source: NORDSTROM },
    Record { species: S::DihydrogenBorate, formula: "H2BO3-", charge: -1.0, parts: [Some(Borate), None], hydrogen: -1.0, water: 0.0, steps: &[Heat(-9.24, 13.489_216)], activity: Davies, source: NORDSTROM },
    Record { species: S::HydrogenPhosphate, formula: "HPO4-2", charge: -2.0, parts: [Some(Phosphate), None], hydrogen: 1.0, water: 0.0, steps: &[HYDROGEN_PHOSPHATE], activity: Sized(5.0, 0.0), source: NORDSTROM },
    Record { species: S::DihydrogenPhosphate, formula: "H2PO4-", charge: -1.0, parts: [Some(Phosphate), None], hydrogen: 2.0, water: 0.0, steps: &[DIHYDROGEN_PHOSPHATE], activity: Sized(5.4, 0.0), source: NORDSTROM },
    Record { species: S::PhosphoricAcid, formula: "H3PO4", charge: 0.0, parts: [Some(Phosphate), None], hydrogen: 3.0, water: 0.0, steps: &[Heat(21.721, -10.1)], activity: Uncharged, source: MARTELL },
    Record { species: S::CalciumHydroxide, formula: "CaOH+", charge: 1.0, parts: [Some(Calcium), None], hydrogen: -1.0, water: 1.0, steps: &[Heat(-12.78, 0.0)], activity: Davies, source: NORDSTROM },
    Record { species: S::CalciumCarbonate, formula: "CaCO3", charge: 0.0, parts: [Some(Calcium), Some(Carbonate)], hydrogen: 0.0, water: 0.0, steps: &[Fitted([-1228.732, -0.299_44, 35_512.75, 485.818, 0.0, 0.0])], activity: Uncharged, source: PLUMMER },
    Record { species: S::CalciumBicarbonate, formula: "CaHCO3+", charge: 1.0, parts: [Some(Calcium), Some(Carbonate)], hydrogen: 1.0, water: 0.0, steps: &[Fitted([1317.0071, 0.345_468_94, -39_916.84, -517.707_61, 563_713.9, 0.0])], activity: Sized(6.0, 0.0), source: PLUMMER },
    Record { species: S::CalciumSulfate, formula: "CaSO4", charge: 0.0, parts: [Some(Calcium), Some(Sulfate)], hydrogen: 0.0, water: 0.0, steps: &[Heat(2.25, 5.5438)], activity: Uncharged, source: PARKHURST },
    Record { species: S::CalciumBisulfate, formula: "CaHSO4+", charge: 1.0, parts: [Some(Calcium), Some(Sulfate)], hydrogen: 1.0, water: 0.0, steps: &[BISULFATE, Heat(1.08, 0.0)], activity: Davies, source: NORDSTROM },
    Record { species: S::CalciumPhosphate, formula: "CaPO4-", charge: -1.0, parts: [Some(Calcium), Some(Phosphate)], hydrogen: 0.0, water: 0.0, steps: &[Heat(6.459, 12.9704)], activity: Sized(5.4, 0.0), source: NORDSTROM },
    Record { species: S::CalciumHydrogenPhosphate, formula: "CaHPO4", charge: 0.0, parts: [Some(Calcium), Some(Phosphate)], hydrogen: 1.0, water: 0.0, steps: &[HYDROGEN_PHOSPHATE, Heat(2.739, 13.8072)], activity: Uncharged, source: NORDSTROM },
    Record { species: S::CalciumDihydrogenPhosphate, formula: "CaH2PO4+", charge: 1.0, parts: [Some(Calcium), Some(Phosphate)], hydrogen: 2.0, water: 0.0, steps: &[DIHYDROGEN_PHOSPHATE, Heat(1.408, 14.2256)], activity: Sized(5.4, 0.0), source: NORDSTROM },
    Record { species: S::MagnesiumHydroxide, formula: "MgOH+", charge: 1.0, parts: [Some(Magnesium), None], hydrogen: -1.0, water: 1.0, steps: &[Heat(-11.44, 66.743_168)], activity: Sized(6.5, 0.0), source: NORDSTROM },
    Record { species: S::MagnesiumCarbonate, formula: "MgCO3", charge: 0.0, parts: [Some(Magnesium), Some(Carbonate)], hydrogen: 0.0, water: 0.0, steps: &[Fitted([0.991, 0.006_67, 0.0, 0.0, 0.0, 0.0])], activity: Uncharged, source: NORDSTROM },
    Record { species: S::MagnesiumBicarbonate, formula: "MgHCO3+", charge: 1.0, parts: [Some(Magnesium), Some(Carbonate)], hydrogen: 1.0, water: 0.0, steps: &[Fitted([48.6721, 0.032_528_49, -2614.335, -18.002_63, 563_713.9, 0.0])], activity: Sized(4.0, 0.0), source: NORDSTROM },
    Record { species: S::MagnesiumSulfate, formula: "MgSO4", charge: 0.0, parts: [Some(Magnesium), Some(Sulfate)], hydrogen: 0.0, water: 0.0, steps: &[Heat(2.37, 19.0372)], activity: Uncharged, source: NORDSTROM },
    Record { species: S::MagnesiumPhosphate, formula: "MgPO4-", charge: -1.0, parts: [Some(Magnesium), Some(Phosphate)], hydrogen: 0.0, water: 0.0, steps: &[Heat(6.589, 12.9704)], activity: Sized(5.4, 0.0), source: NORDSTROM },
    Record { species: S::MagnesiumHydrogenPhosphate, formula: "MgHPO4", charge: 0.0, parts: [Some(Magnesium), Some(Phosphate)], hydrogen: 1.0, water: 0.0, steps: &[HYDROGEN_PHOSPHATE, Heat(2.87, 13.8072)], activity: Uncharged, source: NORDSTROM },
    Record { species: S::MagnesiumDihydrogenPhosphate, formula: "MgH2PO4+", charge: 1.0, parts: [Some(Magnesium), Some(Phosphate)], hydrogen: 2.0, water: 0.0, steps: &[DIHYDROGEN_PHOSPHATE, Heat(1.513, 14.2256)], activity: Sized(5.4, 0.0), source: NORDSTROM },
    Record { species: S::SodiumCarbonate, formula: "NaCO3-", charge: -1.0, parts: [Some(Sodium), Some(Carbonate)], hydrogen: 0.0, water: 0.0, steps: &[Heat(1.27, 37.279_44)], activity: Davies, source: NORDSTROM },
    Record { species: S::SodiumBicarbonate, formula: "NaHCO3", charge: 0.0, parts: [Some(Sodium), Some(Carbonate)], hydrogen: 1.0, water: 0.0, steps: &[BICARBONATE, Heat(-0.25, -4.184)], activity: Uncharged, source: PARKHURST },
    Record { species: S::SodiumSulfate, formula: "NaSO4-", charge: -1.0, parts: [Some(Sodium), Some(Sulfate)], hydrogen: 0.0, water: 0.0, steps: &[Heat(0.7, 4.686_08)], activity: Sized(5.4, 0.0), source: NORDSTROM },
    Record { species: S::SodiumHydrogenPhosphate, formula: "NaHPO4-", charge: -1.0, parts: [Some(Sodium), Some(Phosphate)], hydrogen: 1.0, water: 0.0, steps: &[HYDROGEN_PHOSPHATE, Heat(0.29, 0.0)], activity: Sized(5.4, 0.0), source: NORDSTROM },
    Record { species: S::PotassiumSulfate, formula: "KSO4-", charge: -1.0, parts: [Some(Potassium), Some(Sulfate)], hydrogen: 0.0, water: 0.0, steps: &[Fitted([3.106, 0.0, -673.6, 0.0, 0.0, 0.0])], activity: Sized(5.4, 0.0), source: NORDSTROM },
    Record { species: S::PotassiumHydrogenPhosphate, formula: "KHPO4-", charge: -1.0, parts: [Some(Potassium), Some(Phosphate)], hydrogen: 1.0, water: 0.0, steps: &[HYDROGEN_PHOSPHATE, Heat(0.29, 0.0)], activity: Sized(5.4, 0.0), source: NORDSTROM },
    Record { species: S::AmmoniumSulfate, formula: "NH4SO4-", charge: -1.0, parts: [Some(Ammonium), Some(Sulfate)], hydrogen: 0.0, water: 0.0, steps: &[Heat(1.11, 0.0)], activity: Davies, source: NORDSTROM },
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_record_is_at_its_place_and_carries_the_charge_of_its_parts() {
        for (place, record) in RECORDS.iter().enumerate() {
            assert_eq!(record.species as usize, place);
            assert_eq!(record.species, Species::ALL[place]);
            let charge: f64 = record
                .parts
                .iter()
                .flatten()
                .map(|&part| RECORDS[part as usize + 1].charge)
                .sum();
            let miss = record.charge - charge - record.hydrogen;
            assert!(miss.abs() < 1e-12, "{}", record.formula);
        }
    }
}
