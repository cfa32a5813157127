//! Published nutrient solutions, as targets to mix to.

use super::keyed::keyed;
use crate::science::label::Nutrient::{
    AmmoniumN, B, Ca, Cu, Fe, K, Mg, Mn, Mo, NitrateN, P, S, Zn,
};
use crate::science::label::{Concentrations, Nutrient};
use crate::science::units::{
    ElectricalConductivity, MassConcentration, electrical_conductivity, mass_concentration,
    molar_mass::gram_per_mole,
};

keyed! {
    /// A published nutrient solution.
    RecipeChoice {
        /// Hoagland & Arnon, solution 1: all nitrogen as nitrate.
        HoaglandArnon1 = "hoagland_arnon_1",
        /// Hoagland & Arnon, solution 2: one part in fifteen of the nitrogen as ammonium.
        HoaglandArnon2 = "hoagland_arnon_2",
        /// Steiner, the universal solution, rich in sulfate.
        Steiner = "steiner",
        /// Sonneveld & Straver, lettuce in water culture, the strongest of these.
        SonneveldStraverLettuce = "sonneveld_straver_lettuce",
        /// Mattson & Peters, the solution of Sonneveld changed for leafy greens; its sulfur is
        /// left open.
        ModifiedSonneveld = "modified_sonneveld_leafy_greens",
    }
}

/// How sure the figures of a recipe are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Status {
    /// Checked against a copy of the publication, or recomputed from its salts.
    Verified,
    /// The nutrients that decide are checked, some of the others are from memory.
    PartlyVerified,
    /// From memory.
    FromMemory,
}

/// What is known of one recipe.
struct Record {
    /// mmol/L of the atom.
    millimoles: &'static [(Nutrient, f64)],
    /// mg/L of the element.
    milligrams: &'static [(Nutrient, f64)],
    /// Nutrients that the publication does not state.
    open: &'static [Nutrient],
    /// mS/cm at 25 °C, as published.
    conductivity: Option<f64>,
    status: Status,
    source: &'static str,
}

/// The micronutrients of Hoagland & Arnon, mg/L: 1 mL per litre of a stock with 2.86 g H₃BO₃,
/// 1.81 g MnCl₂·4H₂O, 0.22 g ZnSO₄·7H₂O, 0.08 g CuSO₄·5H₂O and 0.02 g H₂MoO₄·H₂O per litre, and
/// 1 mL of 0.5 % iron(III) tartrate, a dose that the circular repeats as the iron falls out.
const HOAGLAND_TRACE: &[(Nutrient, f64)] = &[
    (Fe, 1.0),
    (Mn, 0.50),
    (Zn, 0.05),
    (Cu, 0.02),
    (B, 0.50),
    (Mo, 0.011),
];

/// mmol/L: potassium nitrate 5, calcium nitrate 5, monopotassium phosphate 1, magnesium sulfate 2.
const HOAGLAND_ARNON_1: Record = Record {
    millimoles: &[
        (NitrateN, 15.0),
        (P, 1.0),
        (S, 2.0),
        (K, 6.0),
        (Ca, 5.0),
        (Mg, 2.0),
    ],
    milligrams: HOAGLAND_TRACE,
    open: &[],
    conductivity: None,
    status: Status::Verified,
    source: "Hoagland & Arnon (1950), California Agricultural Experiment Station Circular \
             347, solution 1",
};

/// mmol/L: potassium nitrate 6, calcium nitrate 4, monoammonium phosphate 1, magnesium sulfate 2.
const HOAGLAND_ARNON_2: Record = Record {
    millimoles: &[
        (NitrateN, 14.0),
        (AmmoniumN, 1.0),
        (P, 1.0),
        (S, 2.0),
        (K, 6.0),
        (Ca, 4.0),
        (Mg, 2.0),
    ],
    milligrams: HOAGLAND_TRACE,
    open: &[],
    conductivity: None,
    status: Status::Verified,
    source: "Hoagland & Arnon (1950), California Agricultural Experiment Station Circular \
             347, solution 2",
};

/// Anions 12 + 1 + 7, cations 7 + 9 + 4 me/L; an osmotic pressure of 72 kPa.
const STEINER: Record = Record {
    millimoles: &[
        (NitrateN, 12.0),
        (P, 1.0),
        (S, 3.5),
        (K, 7.0),
        (Ca, 4.5),
        (Mg, 2.0),
    ],
    milligrams: &[
        (Fe, 1.34),
        (Mn, 0.62),
        (Zn, 0.11),
        (Cu, 0.01),
        (B, 0.44),
        (Mo, 0.048),
    ],
    open: &[],
    conductivity: Some(2.0),
    status: Status::PartlyVerified,
    source: "Steiner (1984), Proceedings of the 6th International Congress on Soilless \
             Culture 633-650; iron, manganese, zinc and copper as in De Rijck & Schrevens \
             (1998), Journal of Plant Nutrition 21:2115-2125; boron, molybdenum and the \
             conductivity from memory",
};

/// As handed down.
const SONNEVELD_STRAVER: Record = Record {
    millimoles: &[
        (NitrateN, 19.0),
        (AmmoniumN, 1.25),
        (P, 2.0),
        (S, 1.125),
        (K, 11.0),
        (Ca, 4.5),
        (Mg, 1.0),
        (Fe, 0.040),
        (Mn, 0.005),
        (Zn, 0.004),
        (B, 0.030),
        (Cu, 0.000_75),
        (Mo, 0.000_5),
    ],
    milligrams: &[],
    open: &[],
    conductivity: Some(2.6),
    status: Status::FromMemory,
    source: "Sonneveld & Straver (1994), Nutrient solutions for vegetables and flowers \
             grown in water or substrates, Naaldwijk, lettuce; from memory",
};

/// 150 mg/L of nitrogen, 5 % of it ammonium as Sharkey et al. (2024) mixed it.
const MODIFIED_SONNEVELD: Record = Record {
    millimoles: &[],
    milligrams: &[
        (NitrateN, 142.5),
        (AmmoniumN, 7.5),
        (P, 31.0),
        (K, 210.0),
        (Ca, 90.0),
        (Mg, 24.0),
        (Fe, 1.0),
        (Mn, 0.25),
        (Zn, 0.13),
        (Cu, 0.023),
        (B, 0.16),
        (Mo, 0.024),
    ],
    open: &[S],
    conductivity: None,
    status: Status::PartlyVerified,
    source: "Mattson & Peters (2014), Inside Grower, modified Sonneveld's solution; forms \
             of nitrogen after Sharkey et al. (2024), Agriculture 14:1358",
};

/// The record of a recipe.
const fn record(recipe: RecipeChoice) -> &'static Record {
    match recipe {
        RecipeChoice::HoaglandArnon1 => &HOAGLAND_ARNON_1,
        RecipeChoice::HoaglandArnon2 => &HOAGLAND_ARNON_2,
        RecipeChoice::Steiner => &STEINER,
        RecipeChoice::SonneveldStraverLettuce => &SONNEVELD_STRAVER,
        RecipeChoice::ModifiedSonneveld => &MODIFIED_SONNEVELD,
    }
}

impl RecipeChoice {
    /// The concentrations to aim at (mass of the element per volume; nitrogen by form). A nutrient
    /// that the publication does not state is zero and listed by [`left_open`](Self::left_open).
    ///
    /// ```
    /// use slackwater::catalog::recipes::RecipeChoice;
    /// use slackwater::science::label::Nutrient;
    /// use slackwater::science::units::mass_concentration::milligram_per_liter;
    /// let calcium = RecipeChoice::HoaglandArnon1.targets().of(Nutrient::Ca);
    /// assert!((calcium.get::<milligram_per_liter>() - 200.4).abs() < 0.1);
    /// ```
    pub fn targets(self) -> Concentrations {
        let record = record(self);
        let moles = record.millimoles.iter().map(|&(nutrient, millimoles)| {
            let weight = nutrient.element().atomic_weight().get::<gram_per_mole>();
            (nutrient, millimoles * weight)
        });
        let all = moles.chain(record.milligrams.iter().copied());
        all.fold(Concentrations::NONE, |solution, (nutrient, mg_per_l)| {
            let amount =
                MassConcentration::new::<mass_concentration::milligram_per_liter>(mg_per_l);
            // The figures of this file are far below the limit of `with`; a test reads them all.
            solution.with(nutrient, amount).unwrap_or(solution)
        })
    }

    /// Nutrients that the publication says nothing of: no target, not a target of zero.
    pub fn left_open(self) -> &'static [Nutrient] {
        record(self).open
    }

    /// Electrical conductivity at 25 °C as published; `None` where the publication gives none.
    pub fn published_conductivity(self) -> Option<ElectricalConductivity> {
        // 1 mS/cm is 0.1 S/m.
        record(self).conductivity.map(|value| {
            ElectricalConductivity::new::<electrical_conductivity::siemens_per_meter>(value / 10.0)
        })
    }

    /// How sure the figures are.
    pub fn status(self) -> Status {
        record(self).status
    }

    /// The publication.
    pub fn source(self) -> &'static str {
        record(self).source
    }
}

#[cfg(test)]
mod tests {
    use super::{Nutrient, RecipeChoice, record};
    use crate::catalog::Keyed;
    use crate::science::units::mass_concentration::milligram_per_liter;

    #[test]
    fn every_figure_becomes_a_target_and_is_listed_once() {
        for &recipe in RecipeChoice::ALL {
            let record = record(recipe);
            let listed: Vec<Nutrient> = record
                .millimoles
                .iter()
                .chain(record.milligrams)
                .map(|&(nutrient, _)| nutrient)
                .collect();
            let targets = recipe.targets();
            for nutrient in Nutrient::ALL {
                let times = listed.iter().filter(|&&it| it == nutrient).count();
                assert!(times <= 1, "{recipe:?} {nutrient:?}");
                let aimed = targets.of(nutrient).get::<milligram_per_liter>() > 0.0;
                assert_eq!(aimed, times == 1, "{recipe:?} {nutrient:?}");
                assert!(!(aimed && recipe.left_open().contains(&nutrient)));
            }
            assert!(!recipe.source().is_empty());
        }
    }

    #[test]
    fn memory_is_admitted_in_the_source() {
        for &recipe in RecipeChoice::ALL {
            if recipe.status() == super::Status::FromMemory {
                assert!(recipe.source().contains("from memory"), "{recipe:?}");
            }
        }
    }
}
