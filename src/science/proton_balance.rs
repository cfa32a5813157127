//! Whether a crop drives the pH of its solution up or down: the balance of the charges it takes up.
//!
//! A root stays neutral: where it takes up more negative than positive charge it gives off as much
//! bicarbonate or hydroxide, and the solution turns alkaline; where it takes up more positive
//! charge it gives off hydrogen ions. Nitrogen, the largest share, decides by its form.

use crate::science::label::Nutrient;
use crate::science::units::{Ratio, ratio};

/// Amount of charge per dry mass: mol/kg, which is mmol/g.
pub type ChargePerDryMass = uom::si::f64::Molality;

/// Units of [`ChargePerDryMass`].
pub use uom::si::molality;

/// Imbalance below this share of all charge counts as none: judgement, no source; analyses of
/// plants are good to about 5 %.
const STEADY: f64 = 0.05;

/// What a crop takes up: mass of each element per dry mass grown (ratios from 0 to 1), nitrogen by
/// the form in which it enters the root.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Uptake {
    /// Nitrogen taken up as nitrate.
    pub nitrate_n: Ratio,
    /// Nitrogen taken up as ammonium.
    pub ammonium_n: Ratio,
    /// Phosphorus, taken up as H₂PO₄⁻.
    pub p: Ratio,
    /// Sulfur, taken up as sulfate.
    pub s: Ratio,
    /// Chlorine, taken up as chloride.
    pub cl: Ratio,
    /// Potassium.
    pub k: Ratio,
    /// Calcium.
    pub ca: Ratio,
    /// Magnesium.
    pub mg: Ratio,
    /// Sodium.
    pub na: Ratio,
}

/// An uptake that cannot be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum UptakeProblem {
    /// A share that is negative, above the whole, or no number.
    NotAFraction {
        /// The nutrient.
        nutrient: Nutrient,
        /// The share.
        got: Ratio,
    },
}

/// Which way the pH goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Drift {
    /// More negative charge is taken up: the roots give off base.
    Rises,
    /// The two are alike within 5 % of all charge.
    Steady,
    /// More positive charge is taken up: the roots give off hydrogen ions.
    Falls,
}

/// The charges that a crop takes up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProtonBalance {
    /// Negative charge: nitrate, H₂PO₄⁻, sulfate, chloride.
    pub anions: ChargePerDryMass,
    /// Positive charge: ammonium, potassium, calcium, magnesium, sodium.
    pub cations: ChargePerDryMass,
    /// The part of the cations that is ammonium.
    ammonium: ChargePerDryMass,
    /// All nitrogen, one charge for each atom.
    nitrogen: ChargePerDryMass,
}

impl Uptake {
    /// The charges of an uptake.
    ///
    /// The result: mol of charge per kg of dry mass grown. A share outside of 0 to 1 is an
    /// [`UptakeProblem`]. Urea carries no charge and is left out; phosphate counts one charge,
    /// right within a few hundredths of all charge up to pH 7. Source: Haynes (1990), Plant and
    /// Soil 126:247–264; Marschner (2012), Mineral Nutrition of Higher Plants, chapter 2.
    ///
    /// ```
    /// use slackwater::science::proton_balance::{Drift, Uptake};
    /// use slackwater::science::units::{Ratio, ratio::percent};
    /// let (n, k) = (Ratio::new::<percent>(5.0), Ratio::new::<percent>(6.0));
    /// let nitrate = Uptake { nitrate_n: n, k, ..Uptake::default() };
    /// assert_eq!(nitrate.balance()?.drift(), Drift::Rises);
    /// let ammonium = Uptake { ammonium_n: n, k, ..Uptake::default() };
    /// assert_eq!(ammonium.balance()?.drift(), Drift::Falls);
    /// # Ok::<(), slackwater::science::proton_balance::UptakeProblem>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`UptakeProblem::NotAFraction`] as said.
    pub fn balance(&self) -> Result<ProtonBalance, UptakeProblem> {
        let anions = [
            (Nutrient::NitrateN, self.nitrate_n, 1.0),
            (Nutrient::P, self.p, 1.0),
            (Nutrient::S, self.s, 2.0),
            (Nutrient::Cl, self.cl, 1.0),
        ];
        let cations = [
            (Nutrient::AmmoniumN, self.ammonium_n, 1.0),
            (Nutrient::K, self.k, 1.0),
            (Nutrient::Ca, self.ca, 2.0),
            (Nutrient::Mg, self.mg, 2.0),
            (Nutrient::Na, self.na, 1.0),
        ];
        Ok(ProtonBalance {
            anions: charge(&anions)?,
            cations: charge(&cations)?,
            ammonium: charge(&cations[..1])?,
            nitrogen: charge(&[anions[0], cations[0]])?,
        })
    }
}

/// Sum of shares over molar mass times charge.
fn charge(ions: &[(Nutrient, Ratio, f64)]) -> Result<ChargePerDryMass, UptakeProblem> {
    let mut sum = 0.0;
    for &(nutrient, got, charge) in ions {
        if !(0.0..=1.0).contains(&got.value) {
            return Err(UptakeProblem::NotAFraction { nutrient, got });
        }
        sum += charge * got.value / nutrient.element().grams_per_mole();
    }
    Ok(per_dry_mass(sum))
}

/// mol per gram with its dimension.
fn per_dry_mass(moles_per_gram: f64) -> ChargePerDryMass {
    ChargePerDryMass::new::<molality::mole_per_kilogram>(1000.0 * moles_per_gram)
}

impl ProtonBalance {
    /// Base that the roots give off per dry mass grown (mol/kg); negative for hydrogen ions. Times
    /// the dry mass grown and over the volume of solution it is what the alkalinity changes by.
    pub fn net_base(&self) -> ChargePerDryMass {
        self.anions - self.cations
    }

    /// Negative over positive charge taken up (a ratio); `None` where no positive charge is.
    pub fn ratio(&self) -> Option<Ratio> {
        (self.cations.value > 0.0).then(|| self.anions / self.cations)
    }

    /// Which way the pH of an unbuffered solution goes; steady while the two charges differ by
    /// less than 5 % of their sum.
    pub fn drift(&self) -> Drift {
        let net = self.net_base().value;
        if net.abs() <= STEADY * (self.anions + self.cations).value {
            Drift::Steady
        } else if net > 0.0 {
            Drift::Rises
        } else {
            Drift::Falls
        }
    }

    /// The share of the nitrogen that must enter as ammonium for the charges to balance, with all
    /// else as it is: (N + A − C) / 2N, where A and C are the other anions and cations.
    ///
    /// The result: a ratio from 0 to 1; `None` where no share does it, or without nitrogen. What
    /// enters is not what is offered: roots take ammonium first, so that a solution needs a lower
    /// share of it. Source: the balance of charges, as in [`Uptake::balance`].
    ///
    /// ```
    /// use slackwater::science::proton_balance::Uptake;
    /// use slackwater::science::units::{Ratio, ratio::ratio};
    /// // 1 mol of nitrogen beside 0.4 mol of potassium charge: a = (1 - 0.4) / 2.
    /// let share = Ratio::new::<ratio>;
    /// let crop = Uptake { nitrate_n: share(0.014_007), k: share(0.4 * 0.039_098), ..Uptake::default() };
    /// let steady = crop.balance()?.steady_ammonium_share();
    /// assert!(steady.is_some_and(|it| (it.get::<ratio>() - 0.3).abs() < 1e-4));
    /// # Ok::<(), slackwater::science::proton_balance::UptakeProblem>(())
    /// ```
    pub fn steady_ammonium_share(&self) -> Option<Ratio> {
        let nitrogen = self.nitrogen.value;
        // Moving a mole of nitrogen from nitrate to ammonium moves the balance by two.
        let ammonium = self.ammonium.value + self.net_base().value / 2.0;
        let share = ammonium / nitrogen;
        (nitrogen > 0.0 && (0.0..=1.0).contains(&share)).then(|| Ratio::new::<ratio::ratio>(share))
    }
}

#[cfg(test)]
mod tests {
    use super::{Drift, Uptake, molality::mole_per_kilogram};
    use crate::science::units::{Ratio, ratio::ratio};

    fn share(value: f64) -> Ratio {
        Ratio::new::<ratio>(value)
    }

    /// 4 mol/kg of nitrogen, 0.2 of phosphate, 0.1 of sulfate; 1.4 of potassium, 0.2 of calcium
    /// and 0.1 of magnesium: anions 4.4, cations 2.0 mol of charge per kg while all is nitrate.
    fn leaf(ammonium: f64) -> Uptake {
        let grams = |moles: f64, weight: f64| share(moles * weight / 1000.0);
        Uptake {
            nitrate_n: grams(4.0 * (1.0 - ammonium), 14.007),
            ammonium_n: grams(4.0 * ammonium, 14.007),
            p: grams(0.2, 30.974),
            s: grams(0.1, 32.06),
            k: grams(1.4, 39.098),
            ca: grams(0.2, 40.078),
            mg: grams(0.1, 24.305),
            ..Uptake::default()
        }
    }

    #[test]
    fn the_form_of_nitrogen_decides() {
        for (ammonium, net, drift) in [
            (0.0, 2.4, Drift::Rises),
            (0.3, 0.0, Drift::Steady),
            (0.25, 0.4, Drift::Rises),
            (0.35, -0.4, Drift::Falls),
            (1.0, -5.6, Drift::Falls),
        ] {
            let balance = leaf(ammonium).balance().expect("an uptake");
            let got = balance.net_base().get::<mole_per_kilogram>();
            assert!((got - net).abs() < 1e-9, "{ammonium}: {got}");
            assert_eq!(balance.drift(), drift, "{ammonium}");
            // By hand (4 + 0.4 - 2.0) / 8, whatever the present share.
            let steady = balance.steady_ammonium_share().expect("a share");
            assert!((steady.value - 0.3).abs() < 1e-9);
        }
    }

    #[test]
    fn the_ratio_is_that_of_the_charges() {
        let balance = leaf(0.0).balance().expect("an uptake");
        assert!(
            balance
                .ratio()
                .is_some_and(|it| (it.value - 2.2).abs() < 1e-9)
        );
        let nothing = Uptake::default().balance().expect("an uptake");
        assert_eq!(nothing.ratio(), None);
        assert_eq!(nothing.drift(), Drift::Steady);
        assert_eq!(nothing.steady_ammonium_share(), None);
    }

    #[test]
    fn without_enough_nitrogen_no_share_balances() {
        let mut hungry = leaf(0.0);
        hungry.nitrate_n = share(0.01);
        let balance = hungry.balance().expect("an uptake");
        assert_eq!(balance.drift(), Drift::Falls);
        assert_eq!(balance.steady_ammonium_share(), None);
    }

    #[test]
    fn shares_that_cannot_be_are_refused() {
        for bad in [-0.01, 1.01, f64::NAN, f64::INFINITY] {
            let k = share(bad);
            assert!(Uptake { k, ..leaf(0.0) }.balance().is_err());
            let ammonium_n = share(bad);
            assert!(
                Uptake {
                    ammonium_n,
                    ..leaf(0.0)
                }
                .balance()
                .is_err()
            );
        }
    }
}
