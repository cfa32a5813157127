//! What a fertilizer label declares, turned into nutrients by mass.

mod composition;
mod concentrations;

pub use composition::{Composition, CompositionProblem, NITROGEN, NitrogenForms, Nutrient};
pub use concentrations::{ConcentrationProblem, Concentrations};

use crate::science::formula::Element;
use crate::science::units::{Ratio, ratio};

/// Half a unit of a grade printed in whole percent: how far the forms of nitrogen may miss the
/// declared total.
const NITROGEN_ROUNDING: f64 = 0.005;

/// The least mass that the declared nutrients must have may pass the whole by one part in a
/// hundred: each of the figures of a label is rounded, mostly to 0.1 or 0.5 %.
const FULL: f64 = 1.01;

/// An oxide in which labels by custom or law declare a nutrient.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Oxide {
    /// P₂O₅, "phosphate".
    P2O5,
    /// K₂O, "potash".
    K2O,
    /// `CaO`.
    CaO,
    /// `MgO`.
    MgO,
    /// SO₃.
    SO3,
}

impl Oxide {
    /// Mass of the nutrient per mass of its oxide: P 0.4364, K 0.8301, Ca 0.7147, Mg 0.6030,
    /// S 0.4005 (a ratio from 0 to 1), from the atomic weights.
    ///
    /// ```
    /// use slackwater::science::{label::Oxide, units::ratio::ratio};
    /// assert!((Oxide::P2O5.element_fraction().get::<ratio>() - 0.4364).abs() < 1e-4);
    /// ```
    pub fn element_fraction(self) -> Ratio {
        Ratio::new::<ratio::ratio>(self.factor())
    }

    /// The same, as a plain number.
    const fn factor(self) -> f64 {
        let (element, atoms, oxygens) = match self {
            Self::P2O5 => (Element::P, 2.0, 5.0),
            Self::K2O => (Element::K, 2.0, 1.0),
            Self::CaO => (Element::Ca, 1.0, 1.0),
            Self::MgO => (Element::Mg, 1.0, 1.0),
            Self::SO3 => (Element::S, 1.0, 3.0),
        };
        let nutrient = atoms * element.grams_per_mole();
        nutrient / (nutrient + oxygens * Element::O.grams_per_mole())
    }
}

/// The figures of a fertilizer label: mass fractions of the product, from 0 to 1. Zero where
/// nothing is declared. Calcium, magnesium and sulfur as the element; where a label prints an
/// oxide, multiply by [`Oxide::element_fraction`].
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Label {
    /// Total nitrogen, where it is printed beside its forms; used only to check them.
    pub total_n: Option<Ratio>,
    /// Nitrate nitrogen, as N.
    pub nitrate_n: Ratio,
    /// Ammoniacal nitrogen, as N.
    pub ammonium_n: Ratio,
    /// Urea nitrogen, as N.
    pub urea_n: Ratio,
    /// Available phosphate, as P₂O₅.
    pub p2o5: Ratio,
    /// Soluble potash, as K₂O.
    pub k2o: Ratio,
    /// Calcium, as Ca.
    pub ca: Ratio,
    /// Magnesium, as Mg.
    pub mg: Ratio,
    /// Sulfur, as S.
    pub s: Ratio,
    /// Iron, as Fe.
    pub fe: Ratio,
    /// Manganese, as Mn.
    pub mn: Ratio,
    /// Zinc, as Zn.
    pub zn: Ratio,
    /// Copper, as Cu.
    pub cu: Ratio,
    /// Boron, as B.
    pub b: Ratio,
    /// Molybdenum, as Mo.
    pub mo: Ratio,
}

/// Nitrogen, phosphate as P₂O₅ and potash as K₂O of a label, mass fractions of the product: what
/// the three numbers on a bag say.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grade(pub [Ratio; 3]);

/// The line of a label that a problem belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LabelLine {
    /// Total nitrogen.
    TotalNitrogen,
    /// The line of one nutrient; phosphorus and potassium are declared as oxides.
    Nutrient(Nutrient),
}

/// Why a label cannot be true.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LabelProblem {
    /// A figure that is negative, above the whole, or no number.
    NotAFraction {
        /// The line.
        line: LabelLine,
        /// What it says.
        got: Ratio,
    },
    /// The forms of nitrogen do not add up to the total that is declared.
    NitrogenForms {
        /// The sum of the forms.
        forms: Ratio,
        /// The declared total.
        total: Ratio,
        /// How far the two may differ, for rounding.
        tolerance: Ratio,
    },
    /// The declared nutrients alone, in the lightest form that each can have, outweigh the
    /// product.
    OverFull {
        /// The least mass of the nutrients per mass of product.
        least: Ratio,
        /// The most that rounding explains.
        limit: Ratio,
    },
}

impl Label {
    /// The lines with the mass fraction that each declares, oxides left as they are.
    fn lines(&self) -> [(Nutrient, Ratio); 14] {
        use Nutrient::{AmmoniumN, B, Ca, Cu, Fe, K, Mg, Mn, Mo, NitrateN, P, S, UreaN, Zn};
        [
            (NitrateN, self.nitrate_n),
            (AmmoniumN, self.ammonium_n),
            (UreaN, self.urea_n),
            (P, self.p2o5),
            (K, self.k2o),
            (Ca, self.ca),
            (Mg, self.mg),
            (S, self.s),
            (Fe, self.fe),
            (Mn, self.mn),
            (Zn, self.zn),
            (Cu, self.cu),
            (B, self.b),
            (Mo, self.mo),
        ]
    }

    /// The grade; where no total is printed, nitrogen is the sum of its forms.
    pub fn grade(&self) -> Grade {
        Grade([
            self.total_n.unwrap_or_else(|| self.forms()),
            self.p2o5,
            self.k2o,
        ])
    }

    /// Nitrogen of all forms.
    fn forms(&self) -> Ratio {
        self.nitrate_n + self.ammonium_n + self.urea_n
    }

    /// Everything that cannot be true of the label; empty for a possible one.
    ///
    /// Checks that each figure is a fraction, that the forms of nitrogen meet the declared total
    /// within 0.5 % of the product, and that the nutrients, each in the lightest form it can have
    /// (nitrate NO₃, ammonium NH₄, urea whole, phosphate PO₃, else the element), do not outweigh
    /// the product by more than 1 %. Source: conservation of mass; the two allowances are common
    /// practice of rounding.
    ///
    /// ```
    /// use slackwater::science::{label::{Label, LabelProblem}, units::{Ratio, ratio::percent}};
    /// let label = Label {
    ///     total_n: Some(Ratio::new::<percent>(10.0)),
    ///     nitrate_n: Ratio::new::<percent>(7.5),
    ///     ..Label::default()
    /// };
    /// assert!(matches!(label.problems()[..], [LabelProblem::NitrogenForms { .. }]));
    /// ```
    pub fn problems(&self) -> Vec<LabelProblem> {
        let lines = self.lines();
        let mut problems: Vec<LabelProblem> = lines
            .iter()
            .map(|&(nutrient, got)| (LabelLine::Nutrient(nutrient), got))
            .chain(self.total_n.map(|got| (LabelLine::TotalNitrogen, got)))
            .filter(|(_, got)| !(0.0..=1.0).contains(&got.value))
            .map(|(line, got)| LabelProblem::NotAFraction { line, got })
            .collect();
        if !problems.is_empty() {
            // The sums below would only repeat the same fault.
            return problems;
        }
        let forms = self.forms();
        if let Some(total) = self.total_n
            // A billionth, so that 7.5 of 8 % is not refused for the last bit of a double.
            && (forms - total).value.abs() > NITROGEN_ROUNDING + 1e-9
        {
            problems.push(LabelProblem::NitrogenForms {
                forms,
                total,
                tolerance: Ratio::new::<ratio::ratio>(NITROGEN_ROUNDING),
            });
        }
        let least: f64 = lines
            .iter()
            .map(|&(nutrient, declared)| declared.value * least_mass(nutrient))
            .sum();
        if least > FULL {
            problems.push(LabelProblem::OverFull {
                least: Ratio::new::<ratio::ratio>(least),
                limit: Ratio::new::<ratio::ratio>(FULL),
            });
        }
        problems
    }
}

/// Mass of the lightest form of a nutrient per mass of what a label declares of it.
fn least_mass(nutrient: Nutrient) -> f64 {
    let (h, o) = (Element::H.grams_per_mole(), Element::O.grams_per_mole());
    let (c, n, p) = (
        Element::C.grams_per_mole(),
        Element::N.grams_per_mole(),
        Element::P.grams_per_mole(),
    );
    match nutrient {
        Nutrient::NitrateN => (n + 3.0 * o) / n,
        Nutrient::AmmoniumN => (n + 4.0 * h) / n,
        Nutrient::UreaN => (c + o + 2.0 * n + 4.0 * h) / (2.0 * n),
        Nutrient::P => (p + 3.0 * o) / p * Oxide::P2O5.factor(),
        Nutrient::K => Oxide::K2O.factor(),
        _ => 1.0,
    }
}

impl Composition {
    /// Nutrients by mass that a label declares: P = 0.4364 · P₂O₅, K = 0.8301 · K₂O, the other
    /// figures as they are.
    ///
    /// `label`: mass fractions from 0 to 1. The result: mass fractions of the nutrients. A label
    /// that cannot be true gives all its problems, see [`Label::problems`]. Source: the
    /// definition of the declared oxides.
    ///
    /// ```
    /// use slackwater::science::label::{Composition, Label, Nutrient};
    /// use slackwater::science::units::{Ratio, ratio::percent};
    /// let label = Label { p2o5: Ratio::new::<percent>(52.0), k2o: Ratio::new::<percent>(34.0),
    ///     ..Label::default() };
    /// let composition = Composition::from_label(&label).map_err(|problems| problems[0]);
    /// let phosphorus = composition.map(|it| it.fraction(Nutrient::P).get::<percent>());
    /// assert!(phosphorus.is_ok_and(|it| (it - 22.69).abs() < 0.01));
    /// ```
    ///
    /// # Errors
    ///
    /// Every [`LabelProblem`] of the label.
    pub fn from_label(label: &Label) -> Result<Self, Vec<LabelProblem>> {
        let problems = label.problems();
        if !problems.is_empty() {
            return Err(problems);
        }
        let mut composition = Self::NONE;
        for (nutrient, declared) in label.lines() {
            let factor = match nutrient {
                Nutrient::P => Oxide::P2O5.factor(),
                Nutrient::K => Oxide::K2O.factor(),
                _ => 1.0,
            };
            composition = composition.set(nutrient, declared.value * factor);
        }
        Ok(composition)
    }
}

#[cfg(test)]
mod tests {
    use super::{Composition, Label, LabelLine, LabelProblem, Nutrient};
    use crate::science::units::{Ratio, ratio::percent};

    fn pct(value: f64) -> Ratio {
        Ratio::new::<percent>(value)
    }

    #[test]
    fn all_figures_that_are_no_fractions_are_reported_at_once() {
        let label = Label {
            total_n: Some(pct(f64::NAN)),
            k2o: pct(-1.0),
            fe: pct(101.0),
            ..Label::default()
        };
        let lines: Vec<LabelLine> = label
            .problems()
            .iter()
            .filter_map(|problem| match problem {
                LabelProblem::NotAFraction { line, .. } => Some(*line),
                _ => None,
            })
            .collect();
        assert_eq!(
            lines,
            [
                LabelLine::Nutrient(Nutrient::K),
                LabelLine::Nutrient(Nutrient::Fe),
                LabelLine::TotalNitrogen
            ]
        );
    }

    #[test]
    fn forms_of_nitrogen_may_miss_a_whole_percent_by_half_of_one_only() {
        let label = |nitrate| Label {
            total_n: Some(pct(8.0)),
            nitrate_n: pct(nitrate),
            ammonium_n: pct(0.2),
            ..Label::default()
        };
        assert!(label(7.3).problems().is_empty());
        assert!(matches!(
            label(7.2).problems()[..],
            [LabelProblem::NitrogenForms { .. }]
        ));
    }

    #[test]
    fn pure_salts_fill_a_label_and_more_than_pure_is_refused() {
        let saltpetre = |purity: f64| Label {
            nitrate_n: pct(13.85 * purity),
            k2o: pct(46.58 * purity),
            ..Label::default()
        };
        assert!(saltpetre(1.0).problems().is_empty());
        assert!(matches!(
            saltpetre(1.02).problems()[..],
            [LabelProblem::OverFull { .. }]
        ));
        assert!(Composition::from_label(&saltpetre(1.02)).is_err());
    }
}
