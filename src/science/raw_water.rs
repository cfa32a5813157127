//! Raw water: what an analysis says, whether it can be true, and what it is good for.

mod balance;
mod judgement;

pub use balance::{ChargeBalance, ConductivityCheck, Equivalents, conductivity_check};
pub use judgement::{Dilution, Guideline, Item, Judgement, Restriction};

use crate::science::formula::Element;
use crate::science::label::{Concentrations, Nutrient};
use crate::science::units::{
    ElectricalConductivity, MassConcentration, MolarConcentration, Ratio,
    electrical_conductivity::siemens_per_meter, mass_concentration::milligram_per_liter,
    molar_concentration::millimole_per_liter, ratio::ratio,
};

/// Highest concentration of one item that is accepted, mg/L: brine.
const MOST: f64 = 100_000.0;

/// Highest conductivity that is accepted, mS/cm.
const MOST_CONDUCTIVITY: f64 = 200.0;

/// Mass of calcium carbonate per mole of charge, g.
const HALF_CALCIUM_CARBONATE: f64 = (Element::Ca.grams_per_mole()
    + Element::C.grams_per_mole()
    + 3.0 * Element::O.grams_per_mole())
    / 2.0;

/// An analysis of raw water, as laboratories print it: mass per volume.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Analysis {
    /// Calcium, Ca.
    pub calcium: MassConcentration,
    /// Magnesium, Mg.
    pub magnesium: MassConcentration,
    /// Sodium, Na.
    pub sodium: MassConcentration,
    /// Potassium, K.
    pub potassium: MassConcentration,
    /// Chloride, Cl.
    pub chloride: MassConcentration,
    /// Sulfate, as SO₄; where the report gives S, multiply by 2.996.
    pub sulfate: MassConcentration,
    /// Alkalinity, as `CaCO₃`; where the report gives bicarbonate, multiply by 0.820.
    pub alkalinity: MassConcentration,
    /// Nitrate, as NO₃; where the report gives nitrate nitrogen, multiply by 4.427.
    pub nitrate: MassConcentration,
    /// Boron, B, where it was measured.
    pub boron: Option<MassConcentration>,
    /// pH, where it was measured.
    pub ph: Option<f64>,
    /// Electrical conductivity at 25 °C, where it was measured.
    pub conductivity: Option<ElectricalConductivity>,
}

/// A figure of an analysis.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Figure {
    /// Calcium.
    Calcium,
    /// Magnesium.
    Magnesium,
    /// Sodium.
    Sodium,
    /// Potassium.
    Potassium,
    /// Chloride.
    Chloride,
    /// Sulfate.
    Sulfate,
    /// Alkalinity.
    Alkalinity,
    /// Nitrate.
    Nitrate,
    /// Boron.
    Boron,
}

/// Why an analysis cannot be used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RawWaterProblem {
    /// A concentration that is negative, no number, or that of no water.
    ConcentrationOutOfRange {
        /// The figure.
        figure: Figure,
        /// What it says.
        got: MassConcentration,
        /// The highest accepted; the lowest is zero.
        high: MassConcentration,
    },
    /// A pH outside of 0 to 14, or no number.
    PhOutOfRange {
        /// What it says.
        got: f64,
    },
    /// A conductivity that is negative, no number, or above brine.
    ConductivityOutOfRange {
        /// What it says.
        got: ElectricalConductivity,
        /// The highest accepted; the lowest is zero.
        high: ElectricalConductivity,
    },
}

impl Analysis {
    /// Charges of the ions: mass over molar mass times charge.
    ///
    /// The result: mmol/L of charge. A figure that is negative, no number or above 100 g/L, a pH
    /// outside of 0 to 14 or a conductivity above 200 mS/cm is a [`RawWaterProblem`]. Source:
    /// definition of the milliequivalent.
    ///
    /// ```
    /// use slackwater::science::raw_water::{Analysis, RawWaterProblem};
    /// use slackwater::science::units::MassConcentration;
    /// use slackwater::science::units::mass_concentration::milligram_per_liter;
    /// use slackwater::science::units::molar_concentration::millimole_per_liter;
    /// let alkalinity = MassConcentration::new::<milligram_per_liter>(100.0);
    /// let ions = Analysis { alkalinity, ..Analysis::default() }.equivalents()?;
    /// assert!((ions.alkalinity.get::<millimole_per_liter>() - 2.0).abs() < 0.002);
    /// # Ok::<(), RawWaterProblem>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`RawWaterProblem`] as said, the first that is met.
    pub fn equivalents(&self) -> Result<Equivalents, RawWaterProblem> {
        self.check()?;
        let oxygen = Element::O.grams_per_mole();
        let charge = |mass: MassConcentration, grams_per_charge: f64| {
            MolarConcentration::new::<millimole_per_liter>(
                mass.get::<milligram_per_liter>() / grams_per_charge,
            )
        };
        Ok(Equivalents {
            calcium: charge(self.calcium, Element::Ca.grams_per_mole() / 2.0),
            magnesium: charge(self.magnesium, Element::Mg.grams_per_mole() / 2.0),
            sodium: charge(self.sodium, Element::Na.grams_per_mole()),
            potassium: charge(self.potassium, Element::K.grams_per_mole()),
            chloride: charge(self.chloride, Element::Cl.grams_per_mole()),
            sulfate: charge(
                self.sulfate,
                0.5 * (Element::S.grams_per_mole() + 4.0 * oxygen),
            ),
            alkalinity: charge(self.alkalinity, HALF_CALCIUM_CARBONATE),
            nitrate: charge(self.nitrate, Element::N.grams_per_mole() + 3.0 * oxygen),
        })
    }

    /// What the water brings to a nutrient solution (mass of the element per volume): nitrate as
    /// N, sulfate as S. Alkalinity is no nutrient and is left out.
    ///
    /// # Errors
    ///
    /// [`RawWaterProblem`], as for [`Self::equivalents`].
    pub fn nutrients(&self) -> Result<Concentrations, RawWaterProblem> {
        self.check()?;
        let oxygen = Element::O.grams_per_mole();
        let (n, s) = (Element::N.grams_per_mole(), Element::S.grams_per_mole());
        let nitrogen = self.nitrate * (n / (n + 3.0 * oxygen));
        let sulfur = self.sulfate * (s / (s + 4.0 * oxygen));
        let parts = [
            (Nutrient::Ca, self.calcium),
            (Nutrient::Mg, self.magnesium),
            (Nutrient::Na, self.sodium),
            (Nutrient::K, self.potassium),
            (Nutrient::Cl, self.chloride),
            (Nutrient::S, sulfur),
            (Nutrient::NitrateN, nitrogen),
            (Nutrient::B, self.boron.unwrap_or_default()),
        ];
        // Checked figures are below the limit of `with`.
        Ok(parts
            .into_iter()
            .fold(Concentrations::NONE, |solution, (nutrient, amount)| {
                solution.with(nutrient, amount).unwrap_or(solution)
            }))
    }

    /// The analysis of a mixture with pure water, of which `share` (0 to 1) is this water. The pH is
    /// kept, since what buffers it thins in one proportion; so is a conductivity that falls with the
    /// share, though it falls a few per cent slower. Source: conservation of mass.
    ///
    /// ```
    /// use slackwater::science::raw_water::Analysis;
    /// use slackwater::science::units::{MassConcentration, Ratio, ratio::percent};
    /// use slackwater::science::units::mass_concentration::milligram_per_liter;
    /// let sodium = MassConcentration::new::<milligram_per_liter>(200.0);
    /// let water = Analysis { sodium, ..Analysis::default() };
    /// let thin = water.thinned(Ratio::new::<percent>(25.0));
    /// assert!((thin.sodium.get::<milligram_per_liter>() - 50.0).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn thinned(&self, share: Ratio) -> Self {
        let share = share.get::<ratio>();
        Self {
            calcium: self.calcium * share,
            magnesium: self.magnesium * share,
            sodium: self.sodium * share,
            potassium: self.potassium * share,
            chloride: self.chloride * share,
            sulfate: self.sulfate * share,
            alkalinity: self.alkalinity * share,
            nitrate: self.nitrate * share,
            boron: self.boron.map(|boron| boron * share),
            ph: self.ph,
            conductivity: self.conductivity.map(|conductivity| conductivity * share),
        }
    }

    /// Hardness: calcium and magnesium, as `CaCO₃` (mass per volume).
    ///
    /// # Errors
    ///
    /// [`RawWaterProblem`], as for [`Self::equivalents`].
    pub fn hardness(&self) -> Result<MassConcentration, RawWaterProblem> {
        let ions = self.equivalents()?;
        let charge = (ions.calcium + ions.magnesium).get::<millimole_per_liter>();
        Ok(MassConcentration::new::<milligram_per_liter>(
            charge * HALF_CALCIUM_CARBONATE,
        ))
    }

    /// The figures with their values; a boron that was not measured is none.
    fn figures(&self) -> [(Figure, MassConcentration); 9] {
        [
            (Figure::Calcium, self.calcium),
            (Figure::Magnesium, self.magnesium),
            (Figure::Sodium, self.sodium),
            (Figure::Potassium, self.potassium),
            (Figure::Chloride, self.chloride),
            (Figure::Sulfate, self.sulfate),
            (Figure::Alkalinity, self.alkalinity),
            (Figure::Nitrate, self.nitrate),
            (Figure::Boron, self.boron.unwrap_or_default()),
        ]
    }

    /// Refuses an analysis of no water.
    fn check(&self) -> Result<(), RawWaterProblem> {
        for (figure, got) in self.figures() {
            if !(0.0..=MOST).contains(&got.get::<milligram_per_liter>()) {
                return Err(RawWaterProblem::ConcentrationOutOfRange {
                    figure,
                    got,
                    high: MassConcentration::new::<milligram_per_liter>(MOST),
                });
            }
        }
        if let Some(got) = self.ph
            && !(0.0..=14.0).contains(&got)
        {
            return Err(RawWaterProblem::PhOutOfRange { got });
        }
        self.conductivity.map_or(Ok(()), conductivity_in_range)
    }
}

fn conductivity_in_range(got: ElectricalConductivity) -> Result<(), RawWaterProblem> {
    if (0.0..=MOST_CONDUCTIVITY).contains(&(got.get::<siemens_per_meter>() * 10.0)) {
        Ok(())
    } else {
        Err(conductivity_out_of_range(got))
    }
}

fn conductivity_out_of_range(got: ElectricalConductivity) -> RawWaterProblem {
    RawWaterProblem::ConductivityOutOfRange {
        got,
        high: ElectricalConductivity::new::<siemens_per_meter>(MOST_CONDUCTIVITY / 10.0),
    }
}

#[cfg(test)]
mod tests {
    use super::{Analysis, Figure, RawWaterProblem, conductivity_check};
    use crate::science::units::{
        ElectricalConductivity, MassConcentration, electrical_conductivity::siemens_per_meter,
        mass_concentration::milligram_per_liter, molar_concentration::millimole_per_liter,
    };

    fn mg(value: f64) -> MassConcentration {
        MassConcentration::new::<milligram_per_liter>(value)
    }

    /// 2 me/L of calcium, 1 of magnesium, 1 of sodium; 2 of alkalinity, 1 of chloride, 1 of
    /// sulfate: balanced.
    pub(crate) fn hard() -> Analysis {
        Analysis {
            calcium: mg(40.078),
            magnesium: mg(12.1525),
            sodium: mg(22.99),
            alkalinity: mg(100.086),
            chloride: mg(35.45),
            sulfate: mg(48.028),
            ..Analysis::default()
        }
    }

    #[test]
    fn charges_follow_from_molar_masses() {
        let ions = hard().equivalents().expect("water");
        let balance = ions.charge_balance();
        assert!((balance.cations.get::<millimole_per_liter>() - 4.0).abs() < 1e-3);
        assert!((balance.anions.get::<millimole_per_liter>() - 4.0).abs() < 1e-3);
        assert!(balance.is_sound());
        // √(3/2) by hand.
        let ratio = ions.sodium_adsorption_ratio().expect("hard water");
        assert!((ratio - 1.0 / 1.5_f64.sqrt()).abs() < 1e-3);
        let hardness = hard()
            .hardness()
            .expect("water")
            .get::<milligram_per_liter>();
        assert!((hardness - 150.13).abs() < 0.01);
    }

    #[test]
    fn a_missing_ion_shows() {
        let lost = Analysis {
            sulfate: mg(0.0),
            ..hard()
        };
        let balance = lost.equivalents().expect("water").charge_balance();
        assert!(!balance.is_sound());
        // 1 of 7 me/L.
        assert!(
            balance
                .error()
                .is_some_and(|it| (it.value - 1.0 / 7.0).abs() < 1e-3)
        );
        // Between 3 and 10 me/L of anions 2 % of the sum: 0.16 of 8 passes, 0.17 does not.
        for (more, sound) in [(0.15, true), (0.18, false)] {
            let off = Analysis {
                sodium: mg(22.99 * (1.0 + more)),
                ..hard()
            };
            let balance = off.equivalents().expect("water").charge_balance();
            assert_eq!(balance.is_sound(), sound, "{more}");
        }
        let soft = Analysis::default().equivalents().expect("water");
        assert_eq!(soft.charge_balance().error(), None);
        assert_eq!(soft.sodium_adsorption_ratio(), None);
    }

    #[test]
    fn nutrients_are_counted_as_elements() {
        use crate::science::label::Nutrient;
        let water = Analysis {
            nitrate: mg(62.004),
            boron: Some(mg(0.3)),
            ..hard()
        };
        let brought = water.nutrients().expect("water");
        let of = |nutrient| brought.of(nutrient).get::<milligram_per_liter>();
        assert!((of(Nutrient::NitrateN) - 14.007).abs() < 1e-3);
        assert!((of(Nutrient::S) - 16.03).abs() < 1e-3);
        assert!((of(Nutrient::Ca) - 40.078).abs() < 1e-9);
        assert!((of(Nutrient::B) - 0.3).abs() < 1e-9);
    }

    #[test]
    fn what_is_no_water_is_refused() {
        for bad in [-1.0, f64::NAN, f64::INFINITY, 2e5] {
            let sodium = mg(bad);
            let made = Analysis { sodium, ..hard() }.equivalents();
            assert!(matches!(
                made,
                Err(RawWaterProblem::ConcentrationOutOfRange {
                    figure: Figure::Sodium,
                    ..
                })
            ));
            let boron = Some(mg(bad));
            assert!(Analysis { boron, ..hard() }.nutrients().is_err());
            let ph = Some(bad);
            assert!(Analysis { ph, ..hard() }.hardness().is_err());
            let one = ElectricalConductivity::new::<siemens_per_meter>(0.1);
            let off = ElectricalConductivity::new::<siemens_per_meter>(bad);
            assert!(conductivity_check(one, off).is_err());
            assert!(conductivity_check(off, one).is_err());
        }
        let none = ElectricalConductivity::new::<siemens_per_meter>(0.0);
        assert!(conductivity_check(none, none).is_err());
    }
}
