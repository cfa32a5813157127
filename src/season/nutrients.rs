//! What the crop takes from the solution and what that leaves, by mass balance.

use serde::Serialize;

use super::plants::PlantCourse;
use crate::catalog::Keyed;
use crate::catalog::keyed::keyed;
use crate::catalog::tissue::TissueContent;
use crate::science::conductivity::from_cation_charge;
use crate::science::label::{Concentrations, Nutrient};
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::mass::gram;
use crate::science::units::mass_concentration::{gram_per_liter, milligram_per_liter};
use crate::science::units::ratio::ratio;
use crate::science::units::volume::liter;
use crate::science::units::{ElectricalConductivity, MassConcentration, Volume};

keyed! {
    /// A nutrient that a whole crop needs by the gram.
    MajorNutrient {
        /// Nitrogen.
        Nitrogen = "n",
        /// Phosphorus.
        Phosphorus = "p",
        /// Potassium.
        Potassium = "k",
        /// Calcium.
        Calcium = "ca",
        /// Magnesium.
        Magnesium = "mg",
    }
}

impl MajorNutrient {
    /// What a harvest removes of it, per dry mass.
    fn content(self, tissue: &TissueContent) -> f64 {
        let content = match self {
            Self::Nitrogen => tissue.n,
            Self::Phosphorus => tissue.p,
            Self::Potassium => tissue.k,
            Self::Calcium => tissue.ca,
            Self::Magnesium => tissue.mg,
        };
        content.typical.get::<ratio>()
    }

    /// What the solution holds of it.
    fn held(self, solution: &Concentrations) -> MassConcentration {
        match self {
            Self::Nitrogen => solution.nitrogen(),
            Self::Phosphorus => solution.of(Nutrient::P),
            Self::Potassium => solution.of(Nutrient::K),
            Self::Calcium => solution.of(Nutrient::Ca),
            Self::Magnesium => solution.of(Nutrient::Mg),
        }
    }
}

/// One nutrient of one container over the season.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Balance {
    /// Which.
    pub nutrient: MajorNutrient,
    /// What the fertilizer brings, g.
    pub supply_g: f64,
    /// What the crop takes up to the end, g.
    pub need_g: f64,
    /// Days after planting on which the supply is used up; `None` when it lasts.
    pub runs_short_day: Option<u32>,
}

/// The nutrients of one container.
#[derive(Clone, Debug, PartialEq)]
pub struct Nutrients {
    /// One balance a nutrient.
    pub balances: Vec<Balance>,
    /// Day by day from planting.
    pub days: Vec<NutrientCourse>,
}

/// The solution at the end of a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NutrientCourse {
    /// Estimated conductivity at 25 °C.
    pub conductivity: ElectricalConductivity,
    /// What is left of each of [`MajorNutrient::ALL`], mass per volume.
    pub left: [MassConcentration; 5],
}

/// Follows the nutrients of one container.
///
/// The crop takes nutrients in step with its dry mass, by the typical content of its tissue, until
/// the supply is used up. What the raw water brings stays and is concentrated as the volume falls.
/// `solution`: what the fertilizer brings at planting. `start`: volume at planting. `raw_water`:
/// its conductivity. The conductivity of what is left is a tenth of the charge of its cations
/// (Sonneveld and Voogt 2009), an estimate.
pub fn nutrients(
    solution: &Concentrations,
    start: Volume,
    raw_water: ElectricalConductivity,
    course: &PlantCourse,
    days: usize,
    plants: u32,
    tissue: &TissueContent,
) -> Nutrients {
    let litres = start.get::<liter>();
    let supply = |nutrient: MajorNutrient| nutrient.held(solution).get::<gram_per_liter>() * litres;
    let dry_at = |day: usize| {
        course
            .at_day(day)
            .map_or(0.0, |hour| hour.dry.get::<gram>())
            * f64::from(plants)
    };
    let grown = |day: usize| (dry_at(day) - dry_at(0)).max(0.0);
    let taken = |nutrient: MajorNutrient, day: usize| grown(day) * nutrient.content(tissue);

    let balances = MajorNutrient::ALL
        .iter()
        .map(|&nutrient| {
            let supply_g = supply(nutrient);
            Balance {
                nutrient,
                supply_g,
                need_g: taken(nutrient, days),
                runs_short_day: (0..=days)
                    .find(|&day| taken(nutrient, day) > supply_g)
                    .and_then(|day| u32::try_from(day).ok()),
            }
        })
        .collect();
    let mut salts = ElectricalConductivity::default();
    let course_of_days = (0..=days)
        .map(|day| {
            let drawn = course
                .at_day(day)
                .map_or(0.0, |hour| hour.drawn.get::<liter>());
            // The last drop has no concentration.
            let left_l = (litres - drawn).max(litres * 1e-3);
            let share_left = |nutrient: MajorNutrient| {
                let supply = supply(nutrient);
                if supply > 0.0 {
                    (1.0 - taken(nutrient, day) / supply).max(0.0)
                } else {
                    0.0
                }
            };
            let mut rest = *solution;
            for (nutrient, of) in [
                (Nutrient::NitrateN, MajorNutrient::Nitrogen),
                (Nutrient::AmmoniumN, MajorNutrient::Nitrogen),
                (Nutrient::UreaN, MajorNutrient::Nitrogen),
                (Nutrient::P, MajorNutrient::Phosphorus),
                (Nutrient::K, MajorNutrient::Potassium),
                (Nutrient::Ca, MajorNutrient::Calcium),
                (Nutrient::Mg, MajorNutrient::Magnesium),
            ] {
                let now = solution.of(nutrient) * share_left(of) * (litres / left_l);
                // Beyond the strongest solution that can be held the figure stays as it was.
                rest = rest.with(nutrient, now).unwrap_or(rest);
            }
            // So does the conductivity beyond the reach of its rule.
            salts = from_cation_charge(rest.cation_charge()).unwrap_or(salts);
            let mut left = [MassConcentration::new::<milligram_per_liter>(0.0); 5];
            for (slot, &nutrient) in left.iter_mut().zip(MajorNutrient::ALL) {
                *slot = nutrient.held(&rest);
            }
            NutrientCourse {
                conductivity: ElectricalConductivity::new::<siemens_per_meter>(
                    raw_water.get::<siemens_per_meter>() * litres / left_l,
                ) + salts,
                left,
            }
        })
        .collect();
    Nutrients {
        balances,
        days: course_of_days,
    }
}
