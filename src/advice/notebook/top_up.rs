//! What to add to a crop whose solution may not last, without drowning its air roots.

use serde::Serialize;

use super::Tracker;
use crate::advice::chances::WANTED;
use crate::advice::chances::judge::grown;
use crate::advice::doses::millisiemens;
use crate::science::importance::quantile;
use crate::science::units::length::centimeter;
use crate::science::units::mass::gram;
use crate::science::units::ratio::ratio;
use crate::science::units::volume::liter;
use crate::science::units::{Length, Mass, Ratio, Volume};
use crate::season::{Beyond, Charge, Cover, Hour, State};

/// Days that roots laid open to moist air take to become air roots, which drown when covered:
/// assumed. Above the level of so many days ago no solution may rise.
pub const AIR_ROOT_DAYS: u32 = 3;
/// The strongest top-up that is looked at, in strengths of the plan's own mixture.
const STRONGEST: f64 = 2.0;

/// What to add to one container.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct TopUp {
    /// Litres that make the crop sure.
    pub needed_l: f64,
    /// Litres that may be added now: the needed ones, or as many as stay below the air roots.
    pub litres: f64,
    /// The most that stays below the air roots, L.
    pub most_l: f64,
    /// The surface may rise to this height above the floor, cm: the lowest at which air roots
    /// have formed.
    pub ceiling_cm: f64,
    /// The same, cm below the rim.
    pub ceiling_below_rim_cm: f64,
    /// Whether what may be added is enough.
    pub enough: bool,
    /// Strength of the top-up as a share of the plan's own mixture, so that the solution ends as
    /// strong as it began, or as near as raw water or twice the mixture brings it.
    pub mixture: f64,
    /// Electrical conductivity of the top-up, mS/cm at 25 °C.
    pub ec_ms_per_cm: f64,
}

/// The top-up of a crop that may not last; `None` before anything was read.
pub(super) fn top_up(tracker: &Tracker, weights: &[f64]) -> Option<TopUp> {
    let judge = &tracker.judge;
    let start = judge.start();
    let now = usize::try_from(tracker.evidence.day).ok()?;
    let members = tracker.ensemble.members();
    let sorted = |figure: &dyn Fn(&[Hour]) -> Option<f64>| {
        let mut values: Vec<(f64, f64)> = members
            .iter()
            .zip(weights)
            .filter_map(|(member, weight)| Some((figure(tracker.ensemble.days(member))?, *weight)))
            .collect();
        values.sort_by(|a, b| a.0.total_cmp(&b.0));
        values
    };
    let mut needs: Vec<(f64, f64)> = tracker
        .fates
        .iter()
        .zip(weights)
        .map(|(fate, weight)| (fate.needed_l, *weight))
        .collect();
    needs.sort_by(|a, b| a.0.total_cmp(&b.0));
    // A tenth of a litre in a hundred more, because the last drop cannot be drawn.
    let needed_l = (quantile(&needs, WANTED)? * 1.001 - start.get::<liter>()).max(0.0);

    let drawn_by = |day: usize| {
        let values = sorted(&|days| Some(days.get(day)?.drawn.get::<liter>()));
        quantile(&values, 0.5)
    };
    let head_now = quantile(
        &sorted(&|days| Some(days.get(now)?.head.get::<gram>())),
        0.5,
    )?;
    let state_of = |drawn: f64, start: Volume| {
        let hour = Hour {
            head: Mass::new::<gram>(head_now),
            dry: Mass::default(),
            drawn: Volume::new::<liter>(drawn),
        };
        judge.state(&hour, start)
    };
    let present = state_of(drawn_by(now)?, start);
    // What had been added by a day: a reading knows what was there before it.
    let state_on = |day: usize| {
        let seen = &tracker.evidence.seen;
        let next = seen.iter().find(|seen| seen.day >= day);
        Some(state_of(
            drawn_by(day)?,
            next.map_or(start, |seen| seen.start),
        ))
    };
    let ceiling = ceiling(tracker, &state_on, now)?;
    let left = (start - Volume::new::<liter>(drawn_by(now)?)).max(Volume::default());
    let room = judge.tank.volume_at(ceiling, present.draught).ok()? - left;
    let most_l = room.get::<liter>().max(0.0);
    let litres = needed_l.min(most_l);
    let (mixture, ec_ms_per_cm) = strength(tracker, weights, Volume::new::<liter>(litres)).ok()?;
    Some(TopUp {
        needed_l,
        litres,
        most_l,
        ceiling_cm: ceiling.get::<centimeter>(),
        ceiling_below_rim_cm: (judge.tank.basin().depth_max() - ceiling).get::<centimeter>(),
        enough: most_l >= needed_l,
        mixture,
        ec_ms_per_cm,
    })
}

/// The lowest surface at which air roots have formed: the lowest up to some days ago, as read or
/// else as the seasons say. What was added since does not raise it. Free boards have no air under
/// them yet: they may float as high as they were planted.
fn ceiling(
    tracker: &Tracker,
    state_on: &dyn Fn(usize) -> Option<State>,
    now: usize,
) -> Option<Length> {
    let judge = &tracker.judge;
    let formed = now.saturating_sub(usize::try_from(AIR_ROOT_DAYS).ok()?);
    let then = state_on(formed)?;
    if matches!(judge.tank.cover(), Cover::Floating { .. }) && then.afloat {
        return Some(judge.filled.state.level);
    }
    let lowest = (0..formed)
        .filter_map(state_on)
        .fold(then.level, |lowest, state| lowest.min(state.level));
    let lowest_read = tracker
        .evidence
        .seen
        .iter()
        .filter(|seen| seen.day <= formed)
        .filter_map(|seen| seen.level_cm)
        .fold(f64::INFINITY, f64::min);
    Some(lowest.min(Length::new::<centimeter>(lowest_read)))
}

/// The strength of a top-up, as a share of the plan's mixture, and its conductivity.
fn strength(tracker: &Tracker, weights: &[f64], added: Volume) -> Result<(f64, f64), Beyond> {
    let judge = &tracker.judge;
    let (chemistry, mixed) = (&judge.chemistry, &judge.mixed);
    let whole = judge.start() + added;
    let first = (judge.filled.volume / whole).get::<ratio>();
    let times = |of: &crate::science::label::Concentrations, by: f64| {
        of.scaled(Ratio::new::<ratio>(by)).map_err(|_| Beyond)
    };
    // The season in the middle stands for all.
    let mut order: Vec<(f64, f64, usize)> = tracker
        .fates
        .iter()
        .zip(weights)
        .enumerate()
        .map(|(i, (fate, weight))| (fate.needed_l, *weight, i))
        .collect();
    order.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut sum = 0.0;
    let middle = order
        .iter()
        .find(|(_, weight, _)| {
            sum += weight;
            sum >= 0.5
        })
        .or(order.last())
        .ok_or(Beyond)?
        .2;
    let member = tracker.ensemble.members().get(middle).ok_or(Beyond)?;
    let days = tracker.ensemble.days(member);
    let end = days.len().saturating_sub(1);
    let taken = grown(days, end);
    let drawn = days.last().ok_or(Beyond)?.drawn;
    let at_end = |share: f64| -> Result<f64, Beyond> {
        // All litres together, as if mixed from the first day: what is added earlier counts as
        // raw water.
        let salts = times(
            &mixed.fertilizer,
            first + share * (added / whole).get::<ratio>(),
        )?;
        let charge = Charge {
            nutrients: salts
                .plus(chemistry.water_nutrients())
                .and_then(|sum| sum.plus(&mixed.acid.0))
                .map_err(|_| Beyond)?,
            background: chemistry
                .background(&salts)
                .with_unlisted_anions(mixed.acid.1),
            volume: whole,
            tissue: &judge.sound.crop.figures.tissue,
            plants: judge.sound.crop.plants,
        };
        let recipe = chemistry.recipe(
            &charge.left_after(taken, drawn),
            &charge.background,
            1.0 / charge.left_of(drawn),
        );
        chemistry.conductivity(&recipe).map(millisiemens)
    };
    let wanted = millisiemens(mixed.standard.conductivity());
    let (mut low, mut high) = (0.0, STRONGEST);
    if added <= Volume::default() || at_end(0.0)? >= wanted {
        high = 0.0;
    } else if at_end(STRONGEST)? <= wanted {
        low = STRONGEST;
    } else {
        // A thousandth of the mixture is finer than a scale.
        for _ in 0..11 {
            let middle = f64::midpoint(low, high);
            if at_end(middle)? < wanted {
                low = middle;
            } else {
                high = middle;
            }
        }
    }
    let share = f64::midpoint(low, high);
    let salts = times(&mixed.fertilizer, share)?;
    let nutrients = salts
        .plus(chemistry.water_nutrients())
        .map_err(|_| Beyond)?;
    let recipe = chemistry.recipe(&nutrients, &chemistry.background(&salts), 1.0);
    Ok((share, chemistry.conductivity(&recipe).map(millisiemens)?))
}
