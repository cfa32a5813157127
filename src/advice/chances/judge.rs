//! What becomes of one season: whether its solution lasts, and what it leaves.

use serde::Serialize;

use crate::advice::fill::{self, Filled};
use crate::advice::mixing::Mixed;
use crate::advice::{beyond, doses, open_area, prepare};
use crate::catalog::Keyed;
use crate::plan::{Plan, Problem, Sound};
use crate::science::units::length::centimeter;
use crate::science::units::mass::{gram, kilogram};
use crate::science::units::mass_concentration::gram_per_liter;
use crate::science::units::volume::liter;
use crate::science::units::{Area, Length, Mass, Volume};
use crate::season::ensemble::{Draw, Seasons, Spreads};
use crate::season::{
    Beyond, Charge, Chemistry, Cover, Hour, LONGEST_DAYS, MajorNutrient, State, Tank,
};

/// What one season came to.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Fate {
    /// Whether the crop is ready before its solution is used up.
    pub lasts: bool,
    /// Whether what the mixture brings of each nutrient is enough to the end.
    pub feeds: bool,
    /// Days from planting to the target mass, had the crop enough solution.
    pub harvest_day: Option<u32>,
    /// Days after planting on which the solution is used up before harvest.
    pub used_up_day: Option<u32>,
    /// Days after planting on which boards come to rest.
    pub rest_day: Option<u32>,
    /// Fresh mass of a head at the end: at harvest, or with the last drop.
    pub head_g: f64,
    /// What one container loses to the end, L.
    pub water_l: f64,
    /// What the crop would draw to its target mass, L, had it enough.
    pub needed_l: f64,
    /// Water per fresh mass of heads, L/kg, had the crop enough.
    pub water_per_kg_l: f64,
    /// Moist air at the end, cm.
    pub gap_at_end_cm: f64,
    /// Surface above the floor at the end, cm: the lowest of the season.
    pub level_at_end_cm: f64,
    /// Electrical conductivity at the end, mS/cm at 25 °C; `None` of a solution that is used up, or
    /// was topped up.
    pub ec_at_end_ms_per_cm: Option<f64>,
}

/// A plan made ready to judge any season by.
#[derive(Clone, Debug)]
pub(in crate::advice) struct Judge {
    pub sound: Sound,
    pub chemistry: Chemistry,
    pub mixed: Mixed,
    pub tank: Tank,
    pub filled: Filled,
    /// What has been added to one container since planting.
    pub added: Volume,
}

impl Judge {
    /// # Errors
    /// All problems of the plan.
    pub fn new(plan: &Plan) -> Result<Self, Vec<Problem>> {
        let (sound, chemistry, mixed) = prepare(plan)?;
        let ready = |sound: &Sound| {
            let tank = Tank::new(sound, None)?;
            let filled = fill::fill(sound, &tank, sound.container.fill_depth)?;
            Ok((tank, filled))
        };
        let (tank, filled) = ready(&sound).map_err(|Beyond| beyond(None))?;
        Ok(Self {
            sound,
            chemistry,
            mixed,
            tank,
            filled,
            added: Volume::default(),
        })
    }

    /// What the crop may draw on.
    pub fn start(&self) -> Volume {
        self.filled.volume + self.added
    }

    /// Where solution or wet medium meets the air.
    pub fn open_area(&self) -> Area {
        open_area(&self.sound)
    }

    /// The seasons of the plan.
    pub fn seasons(&self) -> Seasons {
        Seasons::new(&self.sound, self.open_area(), Spreads::default())
    }

    /// What the container is charged with.
    pub fn charge(&self) -> Charge<'_> {
        Charge {
            nutrients: self.mixed.nutrients,
            background: self.mixed.background,
            volume: self.filled.volume,
            tissue: &self.sound.crop.figures.tissue,
            plants: self.sound.crop.plants,
        }
    }

    /// Whether the filled solution outlasts a harvest.
    pub fn lasts(&self, harvest: Option<&Hour>) -> bool {
        harvest.is_some_and(|hour| hour.drawn < self.start())
    }

    /// Whether what the mixture brings is enough until each plant has gained a dry mass
    /// (times its uptake).
    pub fn feeds_on(&self, taken: Mass) -> bool {
        let charge = self.charge();
        MajorNutrient::ALL.iter().all(|&nutrient| {
            nutrient
                .held(&self.mixed.fertilizer)
                .get::<gram_per_liter>()
                <= 0.0
                || charge.feeds(nutrient, taken)
        })
    }

    /// Where everything stands at the end of a day of a season.
    pub fn state(&self, day: &Hour, start: Volume) -> State {
        let draught = self
            .tank
            .draught(self.tank.floating_mass(day.head))
            .unwrap_or(self.filled.draught);
        self.tank
            .state(start - day.drawn, draught, self.filled.state.level * 0.5)
    }

    /// Conductivity at the end of a day of a season, mS/cm.
    pub fn conductivity(&self, days: &[Hour], day: usize, uptake: f64) -> Option<f64> {
        let drawn = days.get(day)?.drawn;
        let charge = self.charge();
        let recipe = self.chemistry.recipe(
            &charge.left_after(grown(days, day) * uptake, drawn),
            &charge.background,
            1.0 / charge.left_of(drawn),
        );
        let solution = self
            .chemistry
            .standard()
            .solve_near(&recipe, &self.mixed.standard)
            .ok()?;
        Some(doses::millisiemens(solution.conductivity()))
    }

    /// What a season comes to.
    ///
    /// # Errors
    /// [`Beyond`] of a season without days.
    pub fn fate(
        &self,
        days: &[Hour],
        harvest_day: Option<u32>,
        draw: &Draw,
        spreads: &Spreads,
    ) -> Result<Fate, Beyond> {
        let uptake = draw.factors(spreads)[2];
        let ready = harvest_day
            .and_then(|day| usize::try_from(day).ok())
            .unwrap_or(usize::MAX)
            .min(days.len().saturating_sub(1));
        let needed = days.get(ready).ok_or(Beyond)?;
        let start = self.start();
        // The first evening on which nothing is left.
        let dry = days[..=ready].partition_point(|day| day.drawn < start);
        let runs_dry = dry <= ready;
        let end = dry.min(ready);
        let last = &days[end];
        let state = self.state(last, start);
        let plants = f64::from(self.sound.crop.plants);
        let boards = matches!(self.tank.cover(), Cover::Floating { .. });
        let afloat = |day: &Hour| self.state(day, start).afloat;
        let rest_day = (boards && !state.afloat).then(|| {
            // Once at rest, boards stay so: the level only falls.
            before(days[..end].partition_point(afloat))
        });
        Ok(Fate {
            lasts: harvest_day.is_some() && !runs_dry,
            feeds: self.feeds_on(grown(days, end) * uptake),
            harvest_day,
            used_up_day: runs_dry.then(|| before(dry)),
            rest_day,
            head_g: last.head.get::<gram>(),
            water_l: last.drawn.min(start).get::<liter>(),
            needed_l: needed.drawn.get::<liter>(),
            water_per_kg_l: needed.drawn.get::<liter>() / (needed.head.get::<kilogram>() * plants),
            gap_at_end_cm: state.gap().get::<centimeter>(),
            level_at_end_cm: state.level.get::<centimeter>(),
            ec_at_end_ms_per_cm: (!runs_dry && self.added <= Volume::default())
                .then(|| self.conductivity(days, end, uptake))
                .flatten(),
        })
    }

    /// Height of the fill mark above the floor: before pots and boards go in.
    pub fn mark(&self) -> Length {
        self.filled.depth
    }
}

/// Dry mass that one plant has gained by the end of a day.
pub(in crate::advice) fn grown(days: &[Hour], day: usize) -> Mass {
    let dry = |day: usize| days.get(day).map_or(Mass::default(), |hour| hour.dry);
    dry(day) - dry(0)
}

/// The day during which what is first true at the end of a day came about: the day counts from
/// planting, as in the outcome of a plan.
fn before(day: usize) -> u32 {
    u32::try_from(day.saturating_sub(1)).unwrap_or(LONGEST_DAYS)
}
