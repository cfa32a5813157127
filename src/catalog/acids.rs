//! Acids that lower the pH of a solution or neutralise the alkalinity of raw water.

mod record;

use super::keyed::keyed;
use crate::science::formula::Formula;
use crate::science::label::Composition;
use crate::science::units::{
    MassDensity, MolarConcentration, Ratio, mass_density, molar_concentration, ratio,
};
use record::{WATER, record};

keyed! {
    /// An acid, sold as a solution in water, or as a powder.
    Acid {
        /// Nitric acid: brings nitrate.
        Nitric = "nitric_acid",
        /// Phosphoric acid: brings phosphate.
        Phosphoric = "phosphoric_acid",
        /// Sulfuric acid: brings sulfate.
        Sulfuric = "sulfuric_acid",
        /// Citric acid: brings no nutrient and is eaten by microbes, so that the pH climbs back.
        Citric = "citric_acid",
    }
}

/// Why a question about an acid has no answer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum AcidProblem {
    /// The share of acid is outside the range of the table, or no number.
    StrengthOutOfRange {
        /// What was asked.
        got: Ratio,
        /// The weakest.
        low: Ratio,
        /// The strongest.
        high: Ratio,
    },
    /// A density that no such acid has.
    DensityOutOfRange {
        /// What was asked.
        got: MassDensity,
        /// The lightest.
        low: MassDensity,
        /// The heaviest.
        high: MassDensity,
    },
    /// A pH outside of 0 to 14, or no number.
    PhOutOfRange {
        /// What was asked.
        got: f64,
    },
}

impl Acid {
    /// Atoms of one molecule, without water.
    pub fn formula(self) -> Formula {
        record(self).formula
    }

    /// Mass fractions of the nutrients of the pure acid (ratios from 0 to 1); of a solution, see
    /// [`Composition::scaled`].
    pub fn composition(self) -> Composition {
        record(self).composition
    }

    /// Mass of acid per mass of what is usually sold (a ratio), a solution, or of citric acid the
    /// dry powder: common practice, no source. The label decides.
    pub fn usual_strength(self) -> Ratio {
        Ratio::new::<ratio::percent>(record(self).usual)
    }

    /// The strongest solution that the table of densities holds (a ratio of masses).
    pub fn highest_strength(self) -> Ratio {
        let strongest = record(self)
            .densities
            .last()
            .map_or(0.0, |&(share, _)| share);
        Ratio::new::<ratio::percent>(strongest)
    }

    /// Where density and dissociation come from.
    pub fn source(self) -> &'static str {
        record(self).source
    }

    /// Density of the acid in water at 20 °C.
    ///
    /// `strength`: mass of acid per mass of solution, from 0 to [`Self::highest_strength`] (70 %
    /// nitric, 85 % phosphoric, 98 % sulfuric, 50 % citric acid). The result lies between 0.998
    /// and 1.84 kg/L. Between the points of the table a straight line, within 0.2 % of the finer
    /// table. Outside the range an [`AcidProblem`]. Source: see [`Self::source`].
    ///
    /// ```
    /// use slackwater::catalog::acids::Acid;
    /// use slackwater::science::units::{Ratio, mass_density::kilogram_per_cubic_meter, ratio::percent};
    /// let density = Acid::Phosphoric.density(Ratio::new::<percent>(85.0))?;
    /// assert!((density.get::<kilogram_per_cubic_meter>() - 1689.0).abs() < 1e-6);
    /// # Ok::<(), slackwater::catalog::acids::AcidProblem>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`AcidProblem::StrengthOutOfRange`] as said.
    pub fn density(self, strength: Ratio) -> Result<MassDensity, AcidProblem> {
        let percent = self.within_table(strength)?;
        let table = record(self).densities;
        let mut density = WATER.1;
        for pair in table.windows(2) {
            if let [(from, light), (to, heavy)] = *pair
                && (from..=to).contains(&percent)
            {
                density = light + (percent - from) / (to - from) * (heavy - light);
            }
        }
        Ok(MassDensity::new::<mass_density::gram_per_cubic_centimeter>(
            density,
        ))
    }

    /// Moles of acid per litre of the solution that is sold: strength times density over molar
    /// mass.
    ///
    /// `strength`: mass of acid per mass of solution, from 0 to [`Self::highest_strength`].
    /// `density`: of that solution, 0.9 to 2.0 kg/L, from the label or from [`Self::density`].
    /// The result: mol/L. Outside those ranges an [`AcidProblem`]. Source: definition of the
    /// amount concentration.
    ///
    /// ```
    /// use slackwater::catalog::acids::Acid;
    /// use slackwater::science::units::{Ratio, molar_concentration::mole_per_liter, ratio::percent};
    /// let strength = Ratio::new::<percent>(85.0);
    /// let amount = Acid::Phosphoric.moles_per_litre(strength, Acid::Phosphoric.density(strength)?)?;
    /// assert!((amount.get::<mole_per_liter>() - 14.65).abs() < 0.01);
    /// # Ok::<(), slackwater::catalog::acids::AcidProblem>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`AcidProblem::StrengthOutOfRange`] and [`AcidProblem::DensityOutOfRange`] as said.
    pub fn moles_per_litre(
        self,
        strength: Ratio,
        density: MassDensity,
    ) -> Result<MolarConcentration, AcidProblem> {
        let percent = self.within_table(strength)?;
        let grams_per_litre = density.get::<mass_density::gram_per_cubic_centimeter>() * 1000.0;
        if !(900.0..=2000.0).contains(&grams_per_litre) {
            let bound = MassDensity::new::<mass_density::gram_per_cubic_centimeter>;
            return Err(AcidProblem::DensityOutOfRange {
                got: density,
                low: bound(0.9),
                high: bound(2.0),
            });
        }
        Ok(
            MolarConcentration::new::<molar_concentration::mole_per_liter>(
                percent / 100.0 * grams_per_litre / record(self).formula.grams_per_mole(),
            ),
        )
    }

    /// Hydrogen ions that one mole of the acid has given off at a pH (mol per mol).
    ///
    /// `ph`: of the solution into which the acid goes, 0 to 14. The result: from 0 to 1 (nitric),
    /// 2 (sulfuric) or 3 (phosphoric and citric acid); at pH 6 close to 1.0, 2.0, 1.06 and 2.2.
    /// It is the alkalinity that a mole of acid neutralises on the way to that pH. Activities are
    /// taken as one: in a nutrient solution phosphoric acid gives a few hundredths more. Outside
    /// the range an [`AcidProblem`]. Source: the law of mass action with the constants named in
    /// [`Self::source`].
    ///
    /// ```
    /// use slackwater::catalog::acids::{Acid, AcidProblem};
    /// assert!((Acid::Sulfuric.protons_given(6.0)? - 2.0).abs() < 1e-3);
    /// assert!((Acid::Phosphoric.protons_given(7.21)? - 1.5).abs() < 1e-3);
    /// # Ok::<(), AcidProblem>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`AcidProblem::PhOutOfRange`] as said.
    pub fn protons_given(self, ph: f64) -> Result<f64, AcidProblem> {
        if !(0.0..=14.0).contains(&ph) {
            return Err(AcidProblem::PhOutOfRange { got: ph });
        }
        // Share of each ion, relative to the whole acid: 10^(n·pH − ΣpKa).
        let (mut exponent, mut given) = (0.0, 0.0);
        let (mut sum, mut weighted) = (1.0, 0.0);
        for pka in record(self).pka {
            exponent += ph - pka;
            given += 1.0;
            let share = libm::pow(10.0, exponent);
            sum += share;
            weighted += given * share;
        }
        Ok(weighted / sum)
    }

    /// The percent of a strength that the table holds.
    fn within_table(self, strength: Ratio) -> Result<f64, AcidProblem> {
        let percent = strength.get::<ratio::percent>();
        let high = self.highest_strength();
        // A billionth, so that the end of the table is not refused for its last bit.
        if (0.0..=high.get::<ratio::percent>() + 1e-9).contains(&percent) {
            Ok(percent.min(high.get::<ratio::percent>()))
        } else {
            Err(AcidProblem::StrengthOutOfRange {
                got: strength,
                low: Ratio::new::<ratio::percent>(0.0),
                high,
            })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Acid, AcidProblem, record};
    use crate::catalog::Keyed;
    use crate::science::label::Nutrient;
    use crate::science::units::{
        MassDensity, Ratio, mass_density::gram_per_cubic_centimeter, ratio::percent,
    };

    #[test]
    fn densities_rise_and_the_usual_strength_is_in_the_table() {
        for &acid in Acid::ALL {
            let record = record(acid);
            for pair in record.densities.windows(2) {
                assert!(pair[0].0 < pair[1].0 && pair[0].1 < pair[1].1, "{acid:?}");
            }
            assert!(acid.density(acid.highest_strength()).is_ok());
            // A powder is weighed: no table of solutions holds it.
            let powder = acid.usual_strength() == Ratio::new::<percent>(100.0);
            assert_eq!(powder, acid == Acid::Citric);
            assert_eq!(acid.density(acid.usual_strength()).is_err(), powder);
        }
    }

    #[test]
    fn acids_feed_what_their_name_says() {
        let share = |acid: Acid, nutrient| acid.composition().fraction(nutrient).value;
        // By hand: 14.007 of 63.012, 30.974 of 97.994, 32.06 of 98.072.
        assert!((share(Acid::Nitric, Nutrient::NitrateN) - 0.2223).abs() < 1e-4);
        assert!((share(Acid::Phosphoric, Nutrient::P) - 0.3161).abs() < 1e-4);
        assert!((share(Acid::Sulfuric, Nutrient::S) - 0.3269).abs() < 1e-4);
        for nutrient in Nutrient::ALL {
            assert!(share(Acid::Citric, nutrient).abs() < 1e-15);
        }
    }

    #[test]
    fn protons_lie_between_none_and_all() {
        for &acid in Acid::ALL {
            let mut last = 0.0;
            for step in 0..=140 {
                let given = acid.protons_given(0.1 * f64::from(step)).expect("a pH");
                // The last bit of a double where an acid has given all.
                assert!(given >= last - 1e-15 && given <= 3.0, "{acid:?}: {given}");
                last = given;
            }
            assert!(acid.protons_given(-0.1).is_err());
            assert!(acid.protons_given(f64::NAN).is_err());
        }
    }

    #[test]
    fn what_no_acid_has_is_refused() {
        let density = MassDensity::new::<gram_per_cubic_centimeter>(1.3);
        for bad in [-0.1, 70.1, f64::NAN, f64::INFINITY] {
            let strength = Ratio::new::<percent>(bad);
            assert!(matches!(
                Acid::Nitric.density(strength),
                Err(AcidProblem::StrengthOutOfRange { .. })
            ));
            assert!(Acid::Nitric.moles_per_litre(strength, density).is_err());
        }
        for bad in [0.5, 2.1, f64::NAN] {
            let density = MassDensity::new::<gram_per_cubic_centimeter>(bad);
            assert!(matches!(
                Acid::Nitric.moles_per_litre(Ratio::new::<percent>(60.0), density),
                Err(AcidProblem::DensityOutOfRange { .. })
            ));
        }
    }
}
