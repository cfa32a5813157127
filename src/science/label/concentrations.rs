//! Nutrients in solution.

use super::composition::{Composition, NITROGEN, NUTRIENTS, Nutrient};
use crate::science::units::{
    MassConcentration, MolarConcentration, Ratio, mass_concentration, molar_concentration,
};

/// No aqueous solution holds more of one nutrient than this, mg/L: it bounds every figure and
/// keeps infinity out.
const MOST: f64 = 2e6;

/// A concentration that cannot be: negative, no number, or above two kilograms per litre.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConcentrationProblem {
    /// The nutrient.
    pub nutrient: Nutrient,
    /// What came out.
    pub got: MassConcentration,
    /// The most that is accepted; the least is zero.
    pub high: MassConcentration,
}

/// Mass of each nutrient per volume of solution.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Concentrations {
    /// mg/L, as analyses print them.
    mg_per_l: [f64; NUTRIENTS],
}

impl Concentrations {
    /// Pure water.
    pub const NONE: Self = Self {
        mg_per_l: [0.0; NUTRIENTS],
    };

    /// Concentration of one nutrient (mass per volume; nitrogen as N).
    pub fn of(&self, nutrient: Nutrient) -> MassConcentration {
        mass_per_volume(self.mg_per_l[nutrient as usize])
    }

    /// Nitrogen of all three forms together (mass per volume, as N).
    pub fn nitrogen(&self) -> MassConcentration {
        mass_per_volume(NITROGEN.iter().map(|&it| self.mg_per_l[it as usize]).sum())
    }

    /// The solution with the concentration of one nutrient replaced: from 0 to 2 kg/L, else a
    /// [`ConcentrationProblem`].
    ///
    /// # Errors
    ///
    /// [`ConcentrationProblem`] as said.
    pub fn with(
        mut self,
        nutrient: Nutrient,
        amount: MassConcentration,
    ) -> Result<Self, ConcentrationProblem> {
        self.mg_per_l[nutrient as usize] = amount.get::<mass_concentration::milligram_per_liter>();
        self.checked()
    }

    /// The solution after a fertilizer is dissolved in it.
    ///
    /// `composition`: mass fractions of the nutrients in the fertilizer. `amount`: mass of
    /// fertilizer per volume of finished solution (g/L), zero or more. The result: mass per
    /// volume of each nutrient. An amount that is negative, no number, or takes a nutrient above
    /// 2 kg/L gives a [`ConcentrationProblem`]. Whether so much dissolves is not judged here.
    /// Source: conservation of mass.
    ///
    /// ```
    /// use slackwater::science::label::{Composition, Concentrations, NitrogenForms, Nutrient};
    /// use slackwater::science::{formula::Formula, units::MassConcentration};
    /// use slackwater::science::units::mass_concentration::{gram_per_liter, milligram_per_liter};
    /// let gypsum = Formula::parse("CaSO4.2H2O")
    ///     .map(|it| Composition::from_formula(&it, NitrogenForms::default()));
    /// if let Ok(Ok(gypsum)) = gypsum {
    ///     let tank = Concentrations::NONE.add(&gypsum, MassConcentration::new::<gram_per_liter>(1.0));
    ///     let calcium = tank.map(|it| it.of(Nutrient::Ca).get::<milligram_per_liter>());
    ///     assert!(calcium.is_ok_and(|it| (it - 232.8).abs() < 0.1));
    /// }
    /// ```
    ///
    /// # Errors
    ///
    /// [`ConcentrationProblem`] as said.
    pub fn add(
        mut self,
        composition: &Composition,
        amount: MassConcentration,
    ) -> Result<Self, ConcentrationProblem> {
        let amount = amount.get::<mass_concentration::milligram_per_liter>();
        for nutrient in Nutrient::ALL {
            self.mg_per_l[nutrient as usize] += amount * composition.plain(nutrient);
        }
        self.checked()
    }

    /// Two solutes in one volume: the sum for each nutrient, as of raw water and fertilizer.
    /// Above 2 kg/L a [`ConcentrationProblem`].
    ///
    /// # Errors
    ///
    /// [`ConcentrationProblem`] as said.
    pub fn plus(mut self, other: &Self) -> Result<Self, ConcentrationProblem> {
        for (mine, theirs) in self.mg_per_l.iter_mut().zip(other.mg_per_l) {
            *mine += theirs;
        }
        self.checked()
    }

    /// Every concentration times a factor, zero or more: below one for a dilution (volume of
    /// stock per volume of finished solution), above one for water lost. A factor that leaves a
    /// nutrient outside 0 to 2 kg/L gives a [`ConcentrationProblem`].
    ///
    /// # Errors
    ///
    /// [`ConcentrationProblem`] as said.
    pub fn scaled(mut self, factor: Ratio) -> Result<Self, ConcentrationProblem> {
        for mine in &mut self.mg_per_l {
            *mine *= factor.value;
        }
        self.checked()
    }

    /// Positive charge per volume (moles of charge; mmol/L equals milliequivalents per litre) of
    /// ammonium, potassium, calcium, magnesium and sodium.
    ///
    /// Iron, manganese, zinc and copper are left out: together below 0.1 me/L in a nutrient
    /// solution, and iron is chelated. So is the hydrogen ion, below 0.01 me/L above pH 5.
    /// Source: definition of the milliequivalent.
    ///
    /// ```
    /// use slackwater::science::label::{Concentrations, Nutrient};
    /// use slackwater::science::units::{MassConcentration, molar_concentration::millimole_per_liter};
    /// use slackwater::science::units::mass_concentration::milligram_per_liter;
    /// let calcium = MassConcentration::new::<milligram_per_liter>(200.39);
    /// let solution = Concentrations::NONE.with(Nutrient::Ca, calcium);
    /// let charge = solution.map(|it| it.cation_charge().get::<millimole_per_liter>());
    /// assert!(charge.is_ok_and(|it| (it - 10.0).abs() < 1e-3));
    /// ```
    pub fn cation_charge(&self) -> MolarConcentration {
        self.charge(&[
            (Nutrient::AmmoniumN, 1.0),
            (Nutrient::K, 1.0),
            (Nutrient::Ca, 2.0),
            (Nutrient::Mg, 2.0),
            (Nutrient::Na, 1.0),
        ])
    }

    /// Negative charge per volume (moles of charge; mmol/L equals milliequivalents per litre) of
    /// nitrate, phosphate, sulfate and chloride.
    ///
    /// Phosphate counts as H₂PO₄⁻, which is nearly all of it below pH 6.5. Source: definition of
    /// the milliequivalent.
    pub fn anion_charge(&self) -> MolarConcentration {
        self.charge(&[
            (Nutrient::NitrateN, 1.0),
            (Nutrient::P, 1.0),
            (Nutrient::S, 2.0),
            (Nutrient::Cl, 1.0),
        ])
    }

    /// Sum of charges over molar mass, in mmol of charge per litre.
    fn charge(&self, ions: &[(Nutrient, f64)]) -> MolarConcentration {
        let sum = ions
            .iter()
            .map(|&(ion, charge)| {
                charge * self.mg_per_l[ion as usize] / ion.element().grams_per_mole()
            })
            .sum();
        MolarConcentration::new::<molar_concentration::millimole_per_liter>(sum)
    }

    /// The solution itself, or the first nutrient whose concentration cannot be.
    fn checked(self) -> Result<Self, ConcentrationProblem> {
        for nutrient in Nutrient::ALL {
            let got = self.mg_per_l[nutrient as usize];
            if !(0.0..=MOST).contains(&got) {
                return Err(ConcentrationProblem {
                    nutrient,
                    got: mass_per_volume(got),
                    high: mass_per_volume(MOST),
                });
            }
        }
        Ok(self)
    }
}

/// A figure in mg/L with its dimension.
fn mass_per_volume(mg_per_l: f64) -> MassConcentration {
    MassConcentration::new::<mass_concentration::milligram_per_liter>(mg_per_l)
}

#[cfg(test)]
mod tests {
    use super::{Concentrations, Nutrient, mass_per_volume};
    use crate::science::label::Composition;
    use crate::science::units::{
        MassConcentration, Ratio, mass_concentration::gram_per_liter,
        molar_concentration::millimole_per_liter, ratio::ratio,
    };

    #[test]
    fn amounts_that_cannot_be_are_refused() {
        let salt = Composition::NONE.set(Nutrient::K, 0.5);
        for grams in [-1.0, f64::NAN, f64::INFINITY, 1e9] {
            let amount = MassConcentration::new::<gram_per_liter>(grams);
            let made = Concentrations::NONE.add(&salt, amount);
            assert!(made.is_err(), "{grams} g/L");
        }
        let most = Concentrations::NONE.with(Nutrient::K, mass_per_volume(2e6));
        assert!(most.is_ok());
        assert!(most.and_then(|it| it.plus(&it)).is_err());
        assert!(
            most.and_then(|it| it.scaled(Ratio::new::<ratio>(-0.5)))
                .is_err()
        );
    }

    #[test]
    fn urea_carries_no_charge() {
        let urea = Concentrations::NONE.with(Nutrient::UreaN, mass_per_volume(200.0));
        let charge =
            urea.map(|it| (it.cation_charge() + it.anion_charge()).get::<millimole_per_liter>());
        assert_eq!(charge, Ok(0.0));
        assert_eq!(urea.map(|it| it.nitrogen()), Ok(mass_per_volume(200.0)));
    }

    #[test]
    fn dissolving_adds_and_diluting_divides() {
        let salt = Composition::NONE.set(Nutrient::K, 0.39098);
        let amount = MassConcentration::new::<gram_per_liter>(1.0);
        let charge = Concentrations::NONE
            .add(&salt, amount)
            .and_then(|it| it.add(&salt, amount))
            .and_then(|it| it.scaled(Ratio::new::<ratio>(0.25)))
            .map(|it| (it.cation_charge().get::<millimole_per_liter>() * 1e9).round() / 1e9);
        assert_eq!(charge, Ok(5.0));
    }
}
