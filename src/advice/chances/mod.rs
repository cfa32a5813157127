//! Chances instead of single numbers: many seasons of one plan, what most of them come to, and
//! what would make the crop sure.

mod bands;
mod change;
mod changes;
pub(super) mod judge;

pub use bands::Band;
pub use change::{Aim, Change, ChangeKind, ChangesOutcome, Edit, LeftOut, Reason, WANTED};
pub use changes::Changes;
pub use judge::Fate;

use serde::Serialize;

use super::calendar::date_after;
use crate::plan::{Plan, Problem};
use crate::science::units::length::centimeter;
use crate::science::units::mass::gram;
use crate::science::units::volume::liter;
use crate::science::units::{Mass, Volume};
use crate::season::ensemble::Ensemble;
use crate::season::{Beyond, Hour};
use judge::Judge;

/// Seasons that the page lives through.
pub const SEASONS: usize = 1000;

/// Many seasons of a plan, lived through in pieces.
#[derive(Clone, Debug)]
pub struct Chances {
    plan: Plan,
    judge: Judge,
    ensemble: Ensemble,
    fates: Vec<Fate>,
}

impl Chances {
    /// Makes ready to live through `size` seasons of a plan (at least one).
    ///
    /// # Errors
    /// All problems of the plan, as [`solve`](crate::advice::solve).
    ///
    /// ```
    /// use slackwater::advice::chances::Chances;
    /// use slackwater::plan::Example;
    /// let mut chances = Chances::new(&Example::Bottle.plan(), 20)?;
    /// while !chances.advance(7)? {}
    /// let outcome = chances.outcome();
    /// assert_eq!(outcome.seasons, 20);
    /// # Ok::<(), Vec<slackwater::plan::Problem>>(())
    /// ```
    pub fn new(plan: &Plan, size: usize) -> Result<Self, Vec<Problem>> {
        let judge = Judge::new(plan)?;
        let ensemble = Ensemble::new(judge.seasons(), size.max(1));
        Ok(Self {
            plan: plan.clone(),
            fates: Vec::with_capacity(ensemble.size()),
            judge,
            ensemble,
        })
    }

    /// Lives through up to `count` more seasons; result: whether all are done.
    ///
    /// # Errors
    /// That the plan lies beyond the models.
    pub fn advance(&mut self, count: usize) -> Result<bool, Vec<Problem>> {
        self.try_advance(count)
            .map_err(|Beyond| super::beyond(None))
    }

    fn try_advance(&mut self, count: usize) -> Result<bool, Beyond> {
        let done = self.ensemble.advance(count)?;
        let spreads = *self.ensemble.seasons().spreads();
        for member in &self.ensemble.members()[self.fates.len()..] {
            self.fates.push(self.judge.fate(
                self.ensemble.days(member),
                member.harvest_day,
                &member.draw,
                &spreads,
            )?);
        }
        Ok(done)
    }

    /// Seasons lived through, and asked for.
    pub fn progress(&self) -> (usize, usize) {
        (self.fates.len(), self.ensemble.size())
    }

    /// What the seasons lived through so far came to, one by one.
    pub fn fates(&self) -> &[Fate] {
        &self.fates
    }

    /// The seasons behind the fates.
    pub fn ensemble(&self) -> &Ensemble {
        &self.ensemble
    }

    /// What the seasons lived through so far come to together.
    pub fn outcome(&self) -> ChancesOutcome {
        summary(&self.judge, &self.ensemble, &self.fates, None)
    }

    /// Begins to look for changes that make the crop sure.
    pub fn changes(&self) -> Changes {
        Changes::new(&self.plan, self)
    }
}

/// What many seasons of a plan come to. A band is left out where no season has the figure.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ChancesOutcome {
    /// Seasons that were lived through.
    pub seasons: usize,
    /// Share of the seasons in which the crop is ready before its solution is used up.
    pub lasts: f64,
    /// The same in whole seasons of a hundred.
    pub lasts_of_100: u32,
    /// Share of the seasons in which what the mixture brings of each nutrient is enough.
    pub feeds: f64,
    /// The same in whole seasons of a hundred.
    pub feeds_of_100: u32,
    /// Share of the seasons in which the target mass is reached at all.
    pub ready: f64,
    /// Days from planting to the target mass.
    pub harvest_day: Option<Band>,
    /// Dates of the harvest: one in ten is earlier than the first; the middle; one in ten later.
    pub harvest_dates: Option<[String; 3]>,
    /// Days from planting to the last drop, of the seasons that do not last.
    pub used_up_day: Option<Band>,
    /// Days from planting until boards come to rest, of the seasons in which they do.
    pub rest_day: Option<Band>,
    /// Share of the seasons in which boards come to rest.
    pub rests: f64,
    /// Fresh mass of a head at the end, g.
    pub head_g: Option<Band>,
    /// What one container loses to the end, L.
    pub water_l: Option<Band>,
    /// What the crop would draw to its target mass, L, had it enough.
    pub needed_l: Option<Band>,
    /// Water per fresh mass of heads, L/kg, had the crop enough.
    pub water_per_kg_l: Option<Band>,
    /// Moist air at the end, cm.
    pub gap_at_end_cm: Option<Band>,
    /// Surface above the floor at the end, cm: the lowest of the season.
    pub level_at_end_cm: Option<Band>,
    /// Electrical conductivity at the end, mS/cm at 25 °C, of the seasons that last.
    pub ec_at_end_ms_per_cm: Option<Band>,
    /// Day by day, as long as most seasons are under way.
    pub days: Vec<DayBand>,
}

/// One day of many seasons.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct DayBand {
    /// Days after planting.
    pub day: u32,
    /// Surface of the solution above the floor, cm.
    pub level_cm: Band,
    /// Solution in one container, L.
    pub volume_l: Band,
    /// Fresh mass of a head, g.
    pub head_g: Band,
}

/// Sums up seasons that weigh alike, or as the caller says (weights that sum to one).
pub(super) fn summary(
    judge: &Judge,
    ensemble: &Ensemble,
    fates: &[Fate],
    weights: Option<&[f64]>,
) -> ChancesOutcome {
    let alike = 1.0 / fates.len().max(1) as f64;
    let weight = |i: usize| weights.map_or(alike, |weights| weights.get(i).copied().unwrap_or(0.0));
    let weighed = || fates.iter().enumerate().map(|(i, fate)| (fate, weight(i)));
    let share = |holds: fn(&Fate) -> bool| -> f64 {
        if weights.is_none() {
            return fates.iter().filter(|fate| holds(fate)).count() as f64
                / fates.len().max(1) as f64;
        }
        let sum: f64 = weighed()
            .filter(|(fate, _)| holds(fate))
            .map(|(_, weight)| weight)
            .sum();
        // Rounding of the sum must not make a certainty less than one.
        if sum > 1.0 - 1e-9 { 1.0 } else { sum }
    };
    let band = |figure: fn(&Fate) -> Option<f64>| {
        Band::of(weighed().filter_map(|(fate, weight)| Some((figure(fate)?, weight))))
    };
    let harvest_day = band(|fate| fate.harvest_day.map(f64::from));
    let lasts = share(|fate| fate.lasts);
    let feeds = share(|fate| fate.feeds);
    ChancesOutcome {
        seasons: fates.len(),
        lasts,
        lasts_of_100: whole(lasts * 100.0),
        feeds,
        feeds_of_100: whole(feeds * 100.0),
        ready: share(|fate| fate.harvest_day.is_some()),
        harvest_dates: harvest_day.map(|band| {
            [band.low, band.middle, band.high]
                .map(|day| date_after(judge.sound.crop.transplanting, whole(day)))
        }),
        harvest_day,
        used_up_day: band(|fate| fate.used_up_day.map(f64::from)),
        rest_day: band(|fate| fate.rest_day.map(f64::from)),
        rests: share(|fate| fate.rest_day.is_some()),
        head_g: band(|fate| Some(fate.head_g)),
        water_l: band(|fate| Some(fate.water_l)),
        needed_l: band(|fate| Some(fate.needed_l)),
        water_per_kg_l: band(|fate| Some(fate.water_per_kg_l)),
        gap_at_end_cm: band(|fate| Some(fate.gap_at_end_cm)),
        level_at_end_cm: band(|fate| Some(fate.level_at_end_cm)),
        ec_at_end_ms_per_cm: band(|fate| fate.ec_at_end_ms_per_cm),
        days: day_bands(judge, ensemble, &weight),
    }
}

/// Day by day, as long as at least half of the weight is still under way.
fn day_bands(judge: &Judge, ensemble: &Ensemble, weight: &dyn Fn(usize) -> f64) -> Vec<DayBand> {
    let start = judge.start();
    let mut bands = Vec::new();
    for day in 0.. {
        let under_way: Vec<(&Hour, f64)> = ensemble
            .members()
            .iter()
            .enumerate()
            .filter(|(_, member)| {
                member
                    .harvest_day
                    .is_none_or(|harvest| u32::try_from(day).is_ok_and(|day| day <= harvest))
            })
            .filter_map(|(i, member)| Some((ensemble.days(member).get(day)?, weight(i))))
            .collect();
        let sum: f64 = under_way.iter().map(|(_, weight)| weight).sum();
        if sum < 0.5 {
            break;
        }
        let litres = |hour: &Hour| (start - hour.drawn).max(Volume::default()).get::<liter>();
        let (Some(volume_l), Some(head_g)) = (
            Band::of(under_way.iter().map(|(hour, w)| (litres(hour), *w))),
            Band::of(
                under_way
                    .iter()
                    .map(|(hour, w)| (hour.head.get::<gram>(), *w)),
            ),
        ) else {
            break;
        };
        // The level follows the volume; boards lie as deep as under the middle head.
        let level = |litres: f64| {
            let hour = Hour {
                head: Mass::new::<gram>(head_g.middle),
                dry: Mass::default(),
                drawn: start - Volume::new::<liter>(litres),
            };
            judge.state(&hour, start).level.get::<centimeter>()
        };
        bands.push(DayBand {
            day: u32::try_from(day).unwrap_or(u32::MAX),
            level_cm: Band {
                mean: level(volume_l.mean),
                low: level(volume_l.low),
                middle: level(volume_l.middle),
                high: level(volume_l.high),
            },
            volume_l,
            head_g,
        });
    }
    bands
}

/// The nearest whole number of days or seasons.
fn whole(value: f64) -> u32 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "days and hundredths, never negative and small"
    )]
    let whole = value.round() as u32;
    whole
}
