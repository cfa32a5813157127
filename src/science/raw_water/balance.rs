//! Whether an analysis can be true.

use super::{RawWaterProblem, conductivity_in_range, conductivity_out_of_range};
use crate::science::units::{
    ElectricalConductivity, MolarConcentration, Ratio, molar_concentration::millimole_per_liter,
    ratio,
};

/// Charges of the ions per volume (mmol/L of charge, that is milliequivalents per litre).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Equivalents {
    /// Ca²⁺.
    pub calcium: MolarConcentration,
    /// Mg²⁺.
    pub magnesium: MolarConcentration,
    /// Na⁺.
    pub sodium: MolarConcentration,
    /// K⁺.
    pub potassium: MolarConcentration,
    /// Cl⁻.
    pub chloride: MolarConcentration,
    /// SO₄²⁻.
    pub sulfate: MolarConcentration,
    /// HCO₃⁻ and what else neutralises acid.
    pub alkalinity: MolarConcentration,
    /// NO₃⁻.
    pub nitrate: MolarConcentration,
}

/// The charges of an analysis against each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChargeBalance {
    /// Positive charge per volume.
    pub cations: MolarConcentration,
    /// Negative charge per volume.
    pub anions: MolarConcentration,
    /// How far the two may differ in a sound analysis.
    pub allowed: MolarConcentration,
}

/// A measured conductivity against that of the ions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConductivityCheck {
    /// Measured over computed (a ratio).
    pub ratio: Ratio,
    /// Whether the ratio lies from 0.9 to 1.1.
    pub agrees: bool,
}

impl Equivalents {
    /// Positive against negative charge.
    ///
    /// The result says how far the two may differ: 0.2 me/L up to 3 me/L of anions, 2 % of the
    /// sum of both up to 10 me/L, 5 % above. Source: APHA, Standard Methods for the Examination of
    /// Water and Wastewater, 1030 E, correctness of analyses (from memory).
    ///
    /// ```
    /// use slackwater::science::raw_water::{Analysis, RawWaterProblem};
    /// let rain = Analysis::default().equivalents()?;
    /// assert!(rain.charge_balance().is_sound());
    /// # Ok::<(), RawWaterProblem>(())
    /// ```
    pub fn charge_balance(&self) -> ChargeBalance {
        let cations = self.calcium + self.magnesium + self.sodium + self.potassium;
        let anions = self.chloride + self.sulfate + self.alkalinity + self.nitrate;
        let size = anions.get::<millimole_per_liter>();
        let allowed = if size <= 3.0 {
            MolarConcentration::new::<millimole_per_liter>(0.2)
        } else if size <= 10.0 {
            (cations + anions) * 0.02
        } else {
            (cations + anions) * 0.05
        };
        ChargeBalance {
            cations,
            anions,
            allowed,
        }
    }

    /// Sodium adsorption ratio: Na / √((Ca + Mg) / 2), all in me/L (a plain number whose unit is
    /// √(me/L)).
    ///
    /// `None` below 0.001 me/L of calcium and magnesium together, where it means nothing. Source: Ayers & Westcot
    /// (1985), FAO Irrigation and Drainage Paper 29 rev. 1, equation 10.
    pub fn sodium_adsorption_ratio(&self) -> Option<f64> {
        let hardness = (self.calcium + self.magnesium).get::<millimole_per_liter>();
        let sodium = self.sodium.get::<millimole_per_liter>();
        (hardness > 0.001).then(|| sodium / (hardness / 2.0).sqrt())
    }
}

impl ChargeBalance {
    /// Cations less anions: positive where anions are missing.
    pub fn difference(&self) -> MolarConcentration {
        self.cations - self.anions
    }

    /// The difference over the sum (a ratio from -1 to 1); `None` without any charge.
    pub fn error(&self) -> Option<Ratio> {
        let sum = self.cations + self.anions;
        (sum.value > 0.0).then(|| self.difference() / sum)
    }

    /// Whether the difference is within what a sound analysis may show.
    pub fn is_sound(&self) -> bool {
        self.difference().abs() <= self.allowed
    }
}

/// A measured conductivity against the one computed from the ions.
///
/// `computed`: of the analysis, at 25 °C, above zero. `measured`: at 25 °C. Both up to 200 mS/cm,
/// else a [`RawWaterProblem`]. The result: measured over computed, sound from 0.9 to 1.1. Source:
/// APHA, Standard Methods, 1030 E (from memory).
///
/// ```
/// use slackwater::science::raw_water::conductivity_check;
/// use slackwater::science::units::ElectricalConductivity;
/// use slackwater::science::units::electrical_conductivity::siemens_per_meter;
/// let of = ElectricalConductivity::new::<siemens_per_meter>;
/// assert!(conductivity_check(of(0.050), of(0.052))?.agrees);
/// assert!(!conductivity_check(of(0.050), of(0.060))?.agrees);
/// # Ok::<(), slackwater::science::raw_water::RawWaterProblem>(())
/// ```
///
/// # Errors
///
/// [`RawWaterProblem::ConductivityOutOfRange`] as said.
pub fn conductivity_check(
    computed: ElectricalConductivity,
    measured: ElectricalConductivity,
) -> Result<ConductivityCheck, RawWaterProblem> {
    conductivity_in_range(computed)?;
    conductivity_in_range(measured)?;
    if computed.value <= 0.0 {
        return Err(conductivity_out_of_range(computed));
    }
    let of_computed = measured / computed;
    Ok(ConductivityCheck {
        ratio: of_computed,
        agrees: (0.9..=1.1).contains(&of_computed.get::<ratio::ratio>()),
    })
}
