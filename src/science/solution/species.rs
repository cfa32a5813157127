//! The species that a solution may hold, as a closed list with names.

/// A species of the solution: a free ion, an acid or base of it, or an ion pair.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Species {
    /// H⁺.
    Hydrogen,
    /// Ca²⁺.
    Calcium,
    /// Mg²⁺.
    Magnesium,
    /// Na⁺.
    Sodium,
    /// K⁺.
    Potassium,
    /// NH₄⁺.
    Ammonium,
    /// NO₃⁻.
    Nitrate,
    /// Cl⁻.
    Chloride,
    /// SO₄²⁻.
    Sulfate,
    /// PO₄³⁻.
    PhosphateIon,
    /// CO₃²⁻.
    CarbonateIon,
    /// H₃BO₃.
    BoricAcid,
    /// OH⁻.
    Hydroxide,
    /// HCO₃⁻.
    Bicarbonate,
    /// Dissolved CO₂, hydrated or not.
    CarbonDioxide,
    /// HSO₄⁻.
    Bisulfate,
    /// NH₃.
    Ammonia,
    /// H₂BO₃⁻, which is B(OH)₄⁻ less its water.
    DihydrogenBorate,
    /// HPO₄²⁻.
    HydrogenPhosphate,
    /// H₂PO₄⁻.
    DihydrogenPhosphate,
    /// H₃PO₄.
    PhosphoricAcid,
    /// CaOH⁺.
    CalciumHydroxide,
    /// CaCO₃, dissolved.
    CalciumCarbonate,
    /// CaHCO₃⁺.
    CalciumBicarbonate,
    /// CaSO₄, dissolved.
    CalciumSulfate,
    /// CaHSO₄⁺.
    CalciumBisulfate,
    /// CaPO₄⁻.
    CalciumPhosphate,
    /// CaHPO₄, dissolved.
    CalciumHydrogenPhosphate,
    /// CaH₂PO₄⁺.
    CalciumDihydrogenPhosphate,
    /// MgOH⁺.
    MagnesiumHydroxide,
    /// MgCO₃, dissolved.
    MagnesiumCarbonate,
    /// MgHCO₃⁺.
    MagnesiumBicarbonate,
    /// MgSO₄, dissolved.
    MagnesiumSulfate,
    /// MgPO₄⁻.
    MagnesiumPhosphate,
    /// MgHPO₄, dissolved.
    MagnesiumHydrogenPhosphate,
    /// MgH₂PO₄⁺.
    MagnesiumDihydrogenPhosphate,
    /// NaCO₃⁻.
    SodiumCarbonate,
    /// NaHCO₃, dissolved.
    SodiumBicarbonate,
    /// NaSO₄⁻.
    SodiumSulfate,
    /// NaHPO₄⁻.
    SodiumHydrogenPhosphate,
    /// KSO₄⁻.
    PotassiumSulfate,
    /// KHPO₄⁻.
    PotassiumHydrogenPhosphate,
    /// NH₄SO₄⁻.
    AmmoniumSulfate,
}

impl Species {
    /// Every species, in the order of the declaration.
    pub const ALL: [Self; 43] = [
        Self::Hydrogen,
        Self::Calcium,
        Self::Magnesium,
        Self::Sodium,
        Self::Potassium,
        Self::Ammonium,
        Self::Nitrate,
        Self::Chloride,
        Self::Sulfate,
        Self::PhosphateIon,
        Self::CarbonateIon,
        Self::BoricAcid,
        Self::Hydroxide,
        Self::Bicarbonate,
        Self::CarbonDioxide,
        Self::Bisulfate,
        Self::Ammonia,
        Self::DihydrogenBorate,
        Self::HydrogenPhosphate,
        Self::DihydrogenPhosphate,
        Self::PhosphoricAcid,
        Self::CalciumHydroxide,
        Self::CalciumCarbonate,
        Self::CalciumBicarbonate,
        Self::CalciumSulfate,
        Self::CalciumBisulfate,
        Self::CalciumPhosphate,
        Self::CalciumHydrogenPhosphate,
        Self::CalciumDihydrogenPhosphate,
        Self::MagnesiumHydroxide,
        Self::MagnesiumCarbonate,
        Self::MagnesiumBicarbonate,
        Self::MagnesiumSulfate,
        Self::MagnesiumPhosphate,
        Self::MagnesiumHydrogenPhosphate,
        Self::MagnesiumDihydrogenPhosphate,
        Self::SodiumCarbonate,
        Self::SodiumBicarbonate,
        Self::SodiumSulfate,
        Self::SodiumHydrogenPhosphate,
        Self::PotassiumSulfate,
        Self::PotassiumHydrogenPhosphate,
        Self::AmmoniumSulfate,
    ];

    /// How many species there are.
    pub const COUNT: usize = Self::ALL.len();

    /// The formula in plain letters, as chemists' programs write it: `Ca+2`, `H2PO4-`.
    pub fn formula(self) -> &'static str {
        RECORDS[self as usize].formula
    }

    /// The charge number: +2 for Ca²⁺.
    pub fn charge(self) -> f64 {
        RECORDS[self as usize].charge
    }

    /// Where the formation constant and the ion size were published.
    pub fn source(self) -> &'static str {
        RECORDS[self as usize].source
    }
}

use super::records::RECORDS;
