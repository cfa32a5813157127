//! What a weighed notebook comes to.

use serde::Serialize;

use super::Tracker;
use super::top_up::{TopUp, top_up};
use crate::advice::chances::{Band, ChancesOutcome, Edit, WANTED};
use crate::plan::{Entry, Field};
use crate::science::importance::effective_size;
use crate::science::units::Length;
use crate::science::units::Volume;
use crate::science::units::length::centimeter;
use crate::science::units::mass::kilogram;
use crate::science::units::volume::liter;
use crate::season::Hour;

/// Standard deviations to either side of the mean that hold 95 % of a normal distribution.
const BOTH_ENDS: f64 = 1.96;

/// A factor that a crop taught.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Learnt {
    /// The field of the plan.
    pub field: Field,
    /// What the plan had.
    pub was: f64,
    /// The middle of what the readings leave possible.
    pub now: f64,
    /// It lies between these with 95 % probability.
    pub low: f64,
    /// As above.
    pub high: f64,
}

/// What a crop that is over measured.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Closing {
    /// What one container lost to the last level read, L.
    pub water_l: f64,
    /// Heads weighed.
    pub heads: u32,
    /// Mean fresh mass of a head, g.
    pub head_g: f64,
    /// Water per fresh mass of heads, L/kg.
    pub water_per_kg_l: f64,
}

/// A level that was read: the mean of the containers read on one day.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct LevelRead {
    /// Days after planting.
    pub day: u32,
    /// Surface above the floor, cm.
    pub level_cm: f64,
}

/// A crop under way, forecast from what was read.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NotebookOutcome {
    /// Date of planting.
    pub planted: String,
    /// Days after planting of the last reading.
    pub day: u32,
    /// Readings that were weighed; containers read on one day are one.
    pub readings: usize,
    /// The levels among them.
    pub levels: Vec<LevelRead>,
    /// The fill mark above the floor, cm.
    pub mark_cm: f64,
    /// How many equally likely seasons the weighed ones are worth.
    pub effective_size: f64,
    /// Whether that was too few, so that seasons were drawn again nearer to what was read.
    pub resampled: bool,
    /// The forecast, as of a plan.
    pub chances: ChancesOutcome,
    /// Days after planting on which the solution ends at the pace of the last day followed.
    pub solution_ends_day: Option<Band>,
    /// The middle of these less the middle of the harvest days: how many days after harvest.
    pub ends_after_harvest_days: Option<f64>,
    /// What to add, where the solution may not last.
    pub top_up: Option<TopUp>,
    /// What was measured, once heads were weighed.
    pub closing: Option<Closing>,
    /// What the crop taught about growth and water.
    pub learnt: [Learnt; 2],
    /// The same for the next plan's fields.
    pub next_plan: Vec<Edit>,
}

pub(super) fn outcome(
    tracker: &Tracker,
    weights: &[f64],
    chances: ChancesOutcome,
) -> NotebookOutcome {
    let ends = Band::of(tracker.ensemble.members().iter().zip(weights).filter_map(
        |(member, weight)| {
            Some((
                end_day(tracker.ensemble.days(member), tracker.judge.start())?,
                *weight,
            ))
        },
    ));
    let crop = &tracker.judge.sound.crop;
    let spreads = tracker.seasons.spreads();
    let learnt = [
        learn(
            tracker,
            weights,
            Field::GrowthFactor,
            (crop.growth_factor, spreads.growth, 0),
        ),
        learn(
            tracker,
            weights,
            Field::WaterFactor,
            (crop.water_factor, spreads.water, 1),
        ),
    ];
    NotebookOutcome {
        planted: crate::advice::calendar::written(crop.transplanting),
        day: tracker.evidence.day,
        readings: tracker.evidence.seen.len(),
        levels: tracker
            .evidence
            .seen
            .iter()
            .filter_map(|seen| {
                Some(LevelRead {
                    day: u32::try_from(seen.day).unwrap_or_default(),
                    level_cm: seen.level_cm?,
                })
            })
            .collect(),
        mark_cm: tracker.judge.mark().get::<centimeter>(),
        effective_size: tracker.effective_size,
        resampled: tracker.resampled(),
        ends_after_harvest_days: ends
            .zip(chances.harvest_day)
            .map(|(ends, harvest)| ends.middle - harvest.middle),
        solution_ends_day: ends,
        top_up: (!tracker.notebook.closed && chances.lasts < WANTED)
            .then(|| top_up(tracker, weights))
            .flatten(),
        closing: closing(tracker),
        next_plan: learnt
            .iter()
            .map(|learnt| Edit {
                field: learnt.field,
                entry: Entry::Number((learnt.now * 100.0).round() / 100.0),
            })
            .collect(),
        learnt,
        chances,
    }
}

/// The day on which nothing is left: followed, or at the pace of the last day.
fn end_day(days: &[Hour], start: Volume) -> Option<f64> {
    let dry = days.partition_point(|day| day.drawn < start);
    let [.., before, last] = days else {
        return None;
    };
    if dry < days.len() {
        return Some(dry as f64);
    }
    let pace = (last.drawn - before.drawn).get::<liter>();
    let left = (start - last.drawn).get::<liter>();
    (pace > 0.0).then(|| (days.len() - 1) as f64 + (left / pace).ceil())
}

fn learn(
    tracker: &Tracker,
    weights: &[f64],
    field: Field,
    (was, spread, index): (f64, f64, usize),
) -> Learnt {
    // Mean and deviation rather than the outermost of a few hundred seasons: in the logarithm,
    // where the factor is normal beforehand, it stays nearly so.
    let values = || tracker.draws.iter().map(|draw| draw.normals[index]);
    let mean: f64 = values()
        .zip(weights)
        .map(|(value, weight)| value * weight)
        .sum();
    let variance: f64 = values()
        .zip(weights)
        .map(|(value, weight)| weight * (value - mean) * (value - mean))
        .sum();
    // A sample has less than the whole variance.
    let alive = (1.0 - 1.0 / effective_size(weights).max(2.0)).max(0.5);
    let away = BOTH_ENDS * (variance / alive).sqrt();
    let at = |normal: f64| was * libm::exp(spread * normal);
    Learnt {
        field,
        was,
        now: at(mean),
        low: at(mean - away),
        high: at(mean + away),
    }
}

/// Water and heads as they were measured; `None` before heads were weighed and a level was read.
fn closing(tracker: &Tracker) -> Option<Closing> {
    let judge = &tracker.judge;
    let harvest = &tracker.notebook.harvest;
    let heads: u32 = harvest.iter().map(|cut| cut.heads).sum();
    let kilograms: f64 = harvest.iter().map(|cut| cut.mass.get::<kilogram>()).sum();
    if heads == 0 || kilograms <= 0.0 {
        return None;
    }
    let last = tracker
        .evidence
        .seen
        .iter()
        .rev()
        .find(|seen| seen.level_cm.is_some())?;
    let level = Length::new::<centimeter>(last.level_cm?.max(0.0));
    let head_kg = kilograms / f64::from(heads);
    let draught = judge
        .tank
        .draught(
            judge
                .tank
                .floating_mass(crate::science::units::Mass::new::<kilogram>(head_kg)),
        )
        .unwrap_or_default();
    let left = judge.tank.volume_at(level, draught).ok()?;
    let water_l = (last.start - left).get::<liter>();
    Some(Closing {
        water_l,
        heads,
        head_g: head_kg * 1000.0,
        water_per_kg_l: water_l / (head_kg * f64::from(judge.sound.crop.plants)),
    })
}
