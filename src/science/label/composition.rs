//! Nutrients and their mass fractions in a substance.

use crate::science::formula::{Element, Formula};
use crate::science::units::{Ratio, ratio};

/// How many nutrients are told apart.
pub(super) const NUTRIENTS: usize = 16;

/// A nutrient, or an element that comes with one, as labels and water analyses list them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Nutrient {
    /// Nitrogen of nitrate.
    NitrateN,
    /// Nitrogen of ammonium.
    AmmoniumN,
    /// Nitrogen of urea: uncharged, so that a conductivity meter does not see it.
    UreaN,
    /// Phosphorus.
    P,
    /// Potassium.
    K,
    /// Calcium.
    Ca,
    /// Magnesium.
    Mg,
    /// Sulfur.
    S,
    /// Iron.
    Fe,
    /// Manganese.
    Mn,
    /// Zinc.
    Zn,
    /// Copper.
    Cu,
    /// Boron.
    B,
    /// Molybdenum.
    Mo,
    /// Sodium.
    Na,
    /// Chlorine, as chloride.
    Cl,
}

/// The three forms of nitrogen that plants are fed with.
pub const NITROGEN: [Nutrient; 3] = [Nutrient::NitrateN, Nutrient::AmmoniumN, Nutrient::UreaN];

impl Nutrient {
    /// Every nutrient, in the order in which arrays hold them.
    pub const ALL: [Self; NUTRIENTS] = [
        Self::NitrateN,
        Self::AmmoniumN,
        Self::UreaN,
        Self::P,
        Self::K,
        Self::Ca,
        Self::Mg,
        Self::S,
        Self::Fe,
        Self::Mn,
        Self::Zn,
        Self::Cu,
        Self::B,
        Self::Mo,
        Self::Na,
        Self::Cl,
    ];

    /// The element by whose mass the nutrient is counted: N for all forms of nitrogen.
    pub const fn element(self) -> Element {
        match self {
            Self::NitrateN | Self::AmmoniumN | Self::UreaN => Element::N,
            Self::P => Element::P,
            Self::K => Element::K,
            Self::Ca => Element::Ca,
            Self::Mg => Element::Mg,
            Self::S => Element::S,
            Self::Fe => Element::Fe,
            Self::Mn => Element::Mn,
            Self::Zn => Element::Zn,
            Self::Cu => Element::Cu,
            Self::B => Element::B,
            Self::Mo => Element::Mo,
            Self::Na => Element::Na,
            Self::Cl => Element::Cl,
        }
    }
}

/// How the nitrogen atoms of one formula unit are bound. What is left over is bound otherwise, as
/// in a chelate, and feeds no plant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct NitrogenForms {
    /// Atoms in nitrate.
    pub nitrate: u32,
    /// Atoms in ammonium.
    pub ammonium: u32,
    /// Atoms in urea.
    pub urea: u32,
}

/// Why a composition cannot be made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CompositionProblem {
    /// More nitrogen atoms are told apart than the formula holds.
    NitrogenForms {
        /// Atoms in the three forms.
        stated: u32,
        /// Nitrogen atoms of the formula.
        atoms: u32,
    },
    /// A share that is negative, above the whole, or no number.
    NotAFraction {
        /// The share.
        got: Ratio,
    },
    /// Shares of a blend that add up to more than the whole.
    OverFull {
        /// The sum.
        sum: Ratio,
    },
}

/// Mass fraction of each nutrient in a substance (ratios from 0 to 1).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Composition {
    fractions: [f64; NUTRIENTS],
}

impl Composition {
    /// A substance without nutrients, such as pure water.
    pub const NONE: Self = Self {
        fractions: [0.0; NUTRIENTS],
    };

    /// Nutrients by mass in a pure substance.
    ///
    /// `formula`: the substance as it is weighed, hydrate water included. `forms`: how its
    /// nitrogen atoms are bound, together at most as many as the formula holds, else
    /// [`CompositionProblem::NitrogenForms`]. The result: mass fractions from 0 to 1. Source:
    /// stoichiometry with the weights of [`Element::atomic_weight`]. A `const fn`, for the
    /// catalog.
    ///
    /// ```
    /// use slackwater::science::formula::Formula;
    /// use slackwater::science::label::{Composition, NitrogenForms, Nutrient};
    /// use slackwater::science::units::ratio::percent;
    /// let forms = NitrogenForms { nitrate: 1, ammonium: 1, urea: 0 };
    /// let salt = Formula::parse("NH4NO3").map(|formula| Composition::from_formula(&formula, forms));
    /// assert!(salt.is_ok_and(|salt| salt.is_ok_and(
    ///     |salt| (salt.fraction(Nutrient::NitrateN).get::<percent>() - 17.5).abs() < 0.01)));
    /// ```
    ///
    /// # Errors
    ///
    /// [`CompositionProblem::NitrogenForms`] as said.
    pub const fn from_formula(
        formula: &Formula,
        forms: NitrogenForms,
    ) -> Result<Self, CompositionProblem> {
        let atoms = formula.atoms(Element::N);
        let stated = forms
            .nitrate
            .saturating_add(forms.ammonium)
            .saturating_add(forms.urea);
        if stated > atoms {
            return Err(CompositionProblem::NitrogenForms { stated, atoms });
        }
        let mut fractions = [0.0; NUTRIENTS];
        let mut i = 0;
        while i < NUTRIENTS {
            let nutrient = Nutrient::ALL[i];
            let element = nutrient.element();
            let atoms = match nutrient {
                Nutrient::NitrateN => forms.nitrate,
                Nutrient::AmmoniumN => forms.ammonium,
                Nutrient::UreaN => forms.urea,
                _ => formula.atoms(element),
            };
            fractions[i] = formula.fraction_of_atoms(element, atoms);
            i += 1;
        }
        Ok(Self { fractions })
    }

    /// Mass fraction of one nutrient (a ratio from 0 to 1).
    pub fn fraction(&self, nutrient: Nutrient) -> Ratio {
        Ratio::new::<ratio::ratio>(self.plain(nutrient))
    }

    /// Nitrogen that feeds plants, all three forms together (a ratio from 0 to 1).
    pub fn nitrogen(&self) -> Ratio {
        Ratio::new::<ratio::ratio>(NITROGEN.iter().map(|&form| self.plain(form)).sum())
    }

    /// The nutrients of several substances mixed dry.
    ///
    /// `parts`: each substance with its share of the mass of the blend, from 0 to 1, together at
    /// most 1; what is missing to the whole carries no nutrient. The result: mass fractions of
    /// the blend. A share outside its range is a [`CompositionProblem`]. Source: conservation of
    /// mass.
    ///
    /// ```
    /// use slackwater::science::label::Composition;
    /// use slackwater::science::units::{Ratio, ratio::percent};
    /// let half = (Composition::NONE, Ratio::new::<percent>(50.0));
    /// assert_eq!(Composition::blend(&[half, half]), Ok(Composition::NONE));
    /// assert!(Composition::blend(&[half, half, half]).is_err());
    /// ```
    ///
    /// # Errors
    ///
    /// [`CompositionProblem::NotAFraction`] and [`CompositionProblem::OverFull`] as said.
    pub fn blend(parts: &[(Self, Ratio)]) -> Result<Self, CompositionProblem> {
        let mut blend = Self::NONE;
        let mut sum = 0.0;
        for (part, share) in parts {
            if !(0.0..=1.0).contains(&share.value) {
                return Err(CompositionProblem::NotAFraction { got: *share });
            }
            sum += share.value;
            for (total, fraction) in blend.fractions.iter_mut().zip(part.fractions) {
                *total += fraction * share.value;
            }
        }
        // A billionth, for shares that meet the whole but for the last bit of a double.
        if sum > 1.0 + 1e-9 {
            return Err(CompositionProblem::OverFull {
                sum: Ratio::new::<ratio::ratio>(sum),
            });
        }
        Ok(blend)
    }

    /// The substance diluted with something that carries no nutrient: a salt of a given purity,
    /// `share` from 0 to 1. Outside that range a [`CompositionProblem`].
    ///
    /// # Errors
    ///
    /// [`CompositionProblem::NotAFraction`] as said.
    pub fn scaled(&self, share: Ratio) -> Result<Self, CompositionProblem> {
        Self::blend(&[(*self, share)])
    }

    /// Mass fraction of one nutrient as a plain number.
    pub(super) const fn plain(&self, nutrient: Nutrient) -> f64 {
        self.fractions[nutrient as usize]
    }

    /// The composition with one fraction replaced; for figures that are already checked.
    pub(crate) const fn set(mut self, nutrient: Nutrient, fraction: f64) -> Self {
        self.fractions[nutrient as usize] = fraction;
        self
    }
}

#[cfg(test)]
mod tests {
    use super::{Composition, CompositionProblem, NitrogenForms, Nutrient};
    use crate::science::formula::Formula;
    use crate::science::units::{Ratio, ratio::percent};

    #[test]
    fn nutrients_stand_in_the_order_of_the_enumeration() {
        for (i, nutrient) in Nutrient::ALL.into_iter().enumerate() {
            assert_eq!(nutrient as usize, i);
        }
    }

    #[test]
    fn nitrogen_cannot_be_stated_twice() {
        let forms = NitrogenForms {
            nitrate: 1,
            ammonium: 1,
            urea: 0,
        };
        let made = Formula::parse("KNO3").map(|it| Composition::from_formula(&it, forms));
        assert_eq!(
            made,
            Ok(Err(CompositionProblem::NitrogenForms {
                stated: 2,
                atoms: 1
            }))
        );
    }

    #[test]
    fn a_blend_is_the_sum_of_its_shares() {
        let a = Composition::NONE
            .set(Nutrient::K, 0.4)
            .set(Nutrient::S, 0.2);
        let b = Composition::NONE.set(Nutrient::K, 0.1);
        let share = |value| Ratio::new::<percent>(value);
        let blend = Composition::blend(&[(a, share(50.0)), (b, share(40.0))]);
        let got = |nutrient| blend.map(|it| (it.plain(nutrient) * 1e6).round());
        assert_eq!(got(Nutrient::K), Ok(240_000.0));
        assert_eq!(got(Nutrient::S), Ok(100_000.0));
        assert!(a.scaled(share(-1.0)).is_err());
        assert!(a.scaled(share(f64::NAN)).is_err());
        assert!(a.scaled(share(101.0)).is_err());
    }
}
