//! What the crop takes from the solution and what that leaves: mass balance and equilibria, day by
//! day.

use serde::Serialize;

use super::chemistry::{Background, Chemistry};
use super::plants::{Beyond, PlantCourse};
use crate::catalog::Keyed;
use crate::catalog::keyed::keyed;
use crate::catalog::tissue::TissueContent;
use crate::science::label::{Concentrations, Nutrient};
use crate::science::solution::Speciation;
use crate::science::units::mass::gram;
use crate::science::units::mass_concentration::gram_per_liter;
use crate::science::units::ratio::ratio;
use crate::science::units::volume::liter;
use crate::science::units::{ElectricalConductivity, Mass, MassConcentration, Volume};

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

    /// What a solution holds of it.
    pub fn held(self, solution: &Concentrations) -> MassConcentration {
        match self {
            Self::Nitrogen => solution.nitrogen(),
            Self::Phosphorus => solution.of(Nutrient::P),
            Self::Potassium => solution.of(Nutrient::K),
            Self::Calcium => solution.of(Nutrient::Ca),
            Self::Magnesium => solution.of(Nutrient::Mg),
        }
    }
}

/// The forms in which the crop takes a nutrient.
const TAKEN_AS: [(Nutrient, MajorNutrient); 7] = [
    (Nutrient::NitrateN, MajorNutrient::Nitrogen),
    (Nutrient::AmmoniumN, MajorNutrient::Nitrogen),
    (Nutrient::UreaN, MajorNutrient::Nitrogen),
    (Nutrient::P, MajorNutrient::Phosphorus),
    (Nutrient::K, MajorNutrient::Potassium),
    (Nutrient::Ca, MajorNutrient::Calcium),
    (Nutrient::Mg, MajorNutrient::Magnesium),
];

/// One nutrient of one container over the season.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Balance {
    /// Which.
    pub nutrient: MajorNutrient,
    /// What fertilizer and raw water bring, g.
    pub supply_g: f64,
    /// What the crop would take up to the end, g.
    pub need_g: f64,
    /// Days after planting on which the supply is used up; `None` when it lasts.
    pub runs_short_day: Option<u32>,
}

/// The nutrients of one container.
#[derive(Clone, Debug)]
pub struct Nutrients {
    /// One balance a nutrient.
    pub balances: Vec<Balance>,
    /// Day by day from planting.
    pub days: Vec<NutrientDay>,
    /// The solution at the end, at 25 °C.
    pub last: Speciation,
}

/// The solution at the end of a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NutrientDay {
    /// Conductivity at 25 °C.
    pub conductivity: ElectricalConductivity,
    /// pH at 25 °C.
    pub ph: f64,
    /// What is left, mass per volume.
    pub left: Concentrations,
}

/// What goes into a season's nutrients.
pub struct Charge<'a> {
    /// Everything nutritious that is dissolved at planting, raw water included.
    pub nutrients: Concentrations,
    /// What stays in the water.
    pub background: Background,
    /// Volume at planting.
    pub volume: Volume,
    /// Nutrients in the crop's dry mass.
    pub tissue: &'a TissueContent,
    /// Plants over the container.
    pub plants: u32,
}

impl Charge<'_> {
    /// Grams that the crop has taken at the end of a day, by the typical content of its tissue,
    /// however much there is.
    fn taken(&self, nutrient: MajorNutrient, course: &PlantCourse, day: usize) -> f64 {
        self.taken_by(nutrient, Self::grown(course, day))
    }

    /// Dry mass that one plant has gained at the end of a day.
    fn grown(course: &PlantCourse, day: usize) -> Mass {
        let dry = |day: usize| course.at_day(day).map_or(Mass::default(), |hour| hour.dry);
        dry(day) - dry(0)
    }

    /// Grams that the crop takes while each plant gains some dry mass.
    fn taken_by(&self, nutrient: MajorNutrient, grown: Mass) -> f64 {
        grown.get::<gram>().max(0.0) * f64::from(self.plants) * nutrient.content(self.tissue)
    }

    fn supply(&self, nutrient: MajorNutrient) -> f64 {
        nutrient.held(&self.nutrients).get::<gram_per_liter>() * self.volume.get::<liter>()
    }

    /// Whether there is enough of a nutrient for each plant to gain some dry mass.
    pub fn feeds(&self, nutrient: MajorNutrient, grown: Mass) -> bool {
        self.taken_by(nutrient, grown) <= self.supply(nutrient)
    }

    /// Share of the water that is left at the end of a day; the last drop has no concentration.
    pub fn water_left(&self, course: &PlantCourse, day: usize) -> f64 {
        self.left_of(
            course
                .at_day(day)
                .map_or(Volume::default(), |hour| hour.drawn),
        )
    }

    /// Share of the water that is left when some has been drawn; as [`Self::water_left`].
    pub fn left_of(&self, drawn: Volume) -> f64 {
        const LAST: f64 = 0.02;
        (1.0 - drawn.get::<liter>() / self.volume.get::<liter>()).max(LAST)
    }

    /// What is left at the end of a day, concentrated by the water that has gone.
    ///
    /// The forms of nitrogen are taken in step with what there is of each.
    pub fn left(&self, course: &PlantCourse, day: usize) -> Concentrations {
        let drawn = course
            .at_day(day)
            .map_or(Volume::default(), |hour| hour.drawn);
        self.left_after(Self::grown(course, day), drawn)
    }

    /// What is left when each plant has gained some dry mass and some water was drawn; as
    /// [`Self::left`].
    pub fn left_after(&self, grown: Mass, drawn: Volume) -> Concentrations {
        let concentrated = 1.0 / self.left_of(drawn);
        let mut left = self.nutrients;
        for nutrient in Nutrient::ALL {
            let share =
                TAKEN_AS
                    .iter()
                    .find(|(form, _)| *form == nutrient)
                    .map_or(1.0, |&(_, of)| {
                        let supply = self.supply(of);
                        if supply > 0.0 {
                            (1.0 - self.taken_by(of, grown) / supply).max(0.0)
                        } else {
                            0.0
                        }
                    });
            let now = self.nutrients.of(nutrient) * share * concentrated;
            // Stronger than any solution can be held, the figure stays as it was.
            left = left.with(nutrient, now).unwrap_or(left);
        }
        left
    }
}

/// Follows the nutrients of one container to the end of a day.
///
/// The crop takes nutrients in step with its dry mass, until the supply is used up. What the water
/// brings beside nutrients is concentrated as the volume falls. Each day's solution is solved for
/// its equilibria in contact with the air.
///
/// # Errors
/// [`Beyond`] when a solution cannot be solved.
pub fn nutrients(
    chemistry: &Chemistry,
    charge: &Charge,
    course: &PlantCourse,
    days: usize,
) -> Result<Nutrients, Beyond> {
    let balances = MajorNutrient::ALL
        .iter()
        .map(|&nutrient| {
            let supply_g = charge.supply(nutrient);
            Balance {
                nutrient,
                supply_g,
                need_g: charge.taken(nutrient, course, days),
                runs_short_day: (0..=days)
                    .find(|&day| charge.taken(nutrient, course, day) > supply_g)
                    .and_then(|day| u32::try_from(day).ok()),
            }
        })
        .collect();
    let mut followed = Vec::with_capacity(days + 1);
    let mut near: Option<Speciation> = None;
    for day in 0..=days {
        let left = charge.left(course, day);
        let factor = 1.0 / charge.water_left(course, day);
        let recipe = chemistry.recipe(&left, &charge.background, factor);
        let solution = match &near {
            Some(near) => chemistry.standard().solve_near(&recipe, near),
            None => chemistry.standard().solve(&recipe),
        }
        .map_err(|_| Beyond)?;
        followed.push(NutrientDay {
            conductivity: solution.conductivity(),
            ph: solution.ph(),
            left,
        });
        near = Some(solution);
    }
    Ok(Nutrients {
        balances,
        days: followed,
        last: near.ok_or(Beyond)?,
    })
}
