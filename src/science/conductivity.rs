//! Electrical conductivity of a nutrient solution from its charge.

use crate::science::units::{
    ElectricalConductivity, MolarConcentration, electrical_conductivity, molar_concentration,
};

/// Milliequivalents per litre of cations that raise the conductivity by 1 mS/cm.
const CHARGE_PER_CONDUCTIVITY: f64 = 10.0;

/// Strongest solution that the rule is used for, me/L: beyond it are stock solutions, whose ions
/// hinder each other too much for any proportion to hold.
const STRONGEST: f64 = 100.0;

/// One mS/cm in S/m.
const SIEMENS_PER_METRE: f64 = 0.1;

/// The share by which a measured conductivity may lie above or below the estimate: 10 to 30 %.
/// Sum-of-cations estimates read low by 5 to 13 % for complete nutrient solutions, by 29 % for
/// potassium chloride, and high by a fifth where magnesium sulfate pairs.
pub const UNCERTAINTY: (f64, f64) = (0.10, 0.30);

/// A charge or a conductivity outside the range of the rule.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ConductivityProblem {
    /// The charge is negative, no number, or that of a stock solution.
    Charge {
        /// The charge.
        got: MolarConcentration,
        /// The highest accepted; the lowest is zero.
        high: MolarConcentration,
    },
    /// The conductivity is negative, no number, or that of a stock solution.
    Conductivity {
        /// The conductivity.
        got: ElectricalConductivity,
        /// The highest accepted; the lowest is zero.
        high: ElectricalConductivity,
    },
}

/// Electrical conductivity at 25 °C of a nutrient solution, estimated from its cations.
///
/// `charge`: positive charge per volume (mmol/L of charge = me/L), from 0 to 100. The result:
/// conductivity, EC (mS/cm) = Σ cations (me/L) / 10, good to 10–30 %. Outside the range a
/// [`ConductivityProblem::Charge`]. Source: Sonneveld & Voogt 2009, Plant Nutrition of Greenhouse
/// Crops, chapter 3 (the rule of one tenth).
///
/// ```
/// use slackwater::science::conductivity::from_cation_charge;
/// use slackwater::science::units::MolarConcentration;
/// use slackwater::science::units::electrical_conductivity::siemens_per_meter;
/// use slackwater::science::units::molar_concentration::millimole_per_liter;
/// let charge = MolarConcentration::new::<millimole_per_liter>(19.0);
/// let ec = from_cation_charge(charge).map(|it| it.get::<siemens_per_meter>());
/// assert!(ec.is_ok_and(|it| (it - 0.19).abs() < 1e-12)); // 1.9 mS/cm
/// ```
///
/// # Errors
///
/// [`ConductivityProblem::Charge`] as said.
pub fn from_cation_charge(
    charge: MolarConcentration,
) -> Result<ElectricalConductivity, ConductivityProblem> {
    let me_per_l = charge.get::<molar_concentration::millimole_per_liter>();
    if !(0.0..=STRONGEST).contains(&me_per_l) {
        return Err(ConductivityProblem::Charge {
            got: charge,
            high: charge_of(STRONGEST),
        });
    }
    Ok(conductivity_of(me_per_l / CHARGE_PER_CONDUCTIVITY))
}

/// Positive charge per volume of the nutrient solution that has a given conductivity at 25 °C:
/// the inverse of [`from_cation_charge`].
///
/// `conductivity`: from 0 to 10 mS/cm. The result: moles of charge per volume (mmol/L = me/L), good
/// to 10–30 %. Outside the range a [`ConductivityProblem::Conductivity`]. Source: as there.
///
/// ```
/// use slackwater::science::conductivity::to_cation_charge;
/// use slackwater::science::units::ElectricalConductivity;
/// use slackwater::science::units::electrical_conductivity::siemens_per_meter;
/// use slackwater::science::units::molar_concentration::millimole_per_liter;
/// let ec = ElectricalConductivity::new::<siemens_per_meter>(0.2); // 2 mS/cm
/// let charge = to_cation_charge(ec).map(|it| it.get::<millimole_per_liter>());
/// assert!(charge.is_ok_and(|it| (it - 20.0).abs() < 1e-9));
/// ```
///
/// # Errors
///
/// [`ConductivityProblem::Conductivity`] as said.
pub fn to_cation_charge(
    conductivity: ElectricalConductivity,
) -> Result<MolarConcentration, ConductivityProblem> {
    let ms_per_cm =
        conductivity.get::<electrical_conductivity::siemens_per_meter>() / SIEMENS_PER_METRE;
    let high = STRONGEST / CHARGE_PER_CONDUCTIVITY;
    if !(0.0..=high).contains(&ms_per_cm) {
        return Err(ConductivityProblem::Conductivity {
            got: conductivity,
            high: conductivity_of(high),
        });
    }
    Ok(charge_of(ms_per_cm * CHARGE_PER_CONDUCTIVITY))
}

/// A figure in me/L with its dimension.
fn charge_of(me_per_l: f64) -> MolarConcentration {
    MolarConcentration::new::<molar_concentration::millimole_per_liter>(me_per_l)
}

/// A figure in mS/cm with its dimension.
fn conductivity_of(ms_per_cm: f64) -> ElectricalConductivity {
    ElectricalConductivity::new::<electrical_conductivity::siemens_per_meter>(
        ms_per_cm * SIEMENS_PER_METRE,
    )
}

#[cfg(test)]
mod tests {
    use super::{charge_of, conductivity_of, from_cation_charge, to_cation_charge};
    use crate::science::units::molar_concentration::millimole_per_liter;

    #[test]
    fn the_inverse_undoes_the_estimate() {
        for me_per_l in [0.0, 0.3, 12.5, 23.25, 99.0] {
            let back = from_cation_charge(charge_of(me_per_l))
                .and_then(to_cation_charge)
                .map(|it| (it.get::<millimole_per_liter>() - me_per_l).abs() < 1e-9);
            assert_eq!(back, Ok(true), "{me_per_l} me/L");
        }
    }

    #[test]
    fn stock_solutions_and_nonsense_are_refused() {
        for wrong in [-0.1, 100.1, f64::NAN, f64::INFINITY] {
            assert!(
                from_cation_charge(charge_of(wrong)).is_err(),
                "{wrong} me/L"
            );
            assert!(
                to_cation_charge(conductivity_of(wrong / 10.0)).is_err(),
                "{wrong} me/L"
            );
        }
    }
}
