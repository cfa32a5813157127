//! What mends a solution: rain among the water, a weaker start, fewer plants on one charge.

use super::facts::{Fact, Weight};
use super::growing_on::STRONG_MS_PER_CM;
use super::mend::number;
use super::mixing::{self, Mixed};
use super::outcome::{Outcome, SolutionOutcome};
use super::{Change, prepare, solution, work_out};
use crate::plan::{Fertilizer, Field, Plan, RawWater, Sound, Strength};
use crate::science::units::Ratio;
use crate::science::units::ratio::percent;
use crate::season::{Beyond, Chemistry};

/// Steps of the share of rain, per cent: what a bucket can measure.
const RAIN_STEP: f64 = 5.0;
/// The most of such steps that leave some of the raw water.
const MOST_RAIN: u32 = 19;

/// What a plan mixes, and of what.
struct Prepared<'a> {
    fertilizer: &'a Fertilizer,
    chemistry: &'a Chemistry,
    mixed: &'a Mixed,
}

/// Gives the cautions about the solution the changes of one field that mend them.
pub(super) fn add(
    plan: &Plan,
    sound: &Sound,
    mixture: (&Chemistry, &Mixed),
    outcome: &mut Outcome,
) {
    let prepared = Prepared {
        fertilizer: &sound.fertilizer,
        chemistry: mixture.0,
        mixed: mixture.1,
    };
    let mut fewer = Fewer {
        plan,
        now: sound.crop.plants,
        known: Vec::new(),
    };
    let mut rain_for_ph = false;
    let mut mends = |fact: &Fact| -> Option<Change> {
        match fact {
            Fact::Ph { ph, low, high } if ph > high => {
                let change = rain(&prepared, &|solution| (*low..=*high).contains(&solution.ph));
                rain_for_ph = change.is_some();
                change
            }
            // A lower pH keeps everything in solution.
            Fact::FallsOut { .. } if !rain_for_ph => {
                rain(&prepared, &|solution| solution.saturation.worst() <= 0.0)
            }
            Fact::DiluteWater { share_pct } => Some(number(
                Field::RainShare,
                ((100.0 - share_pct) / RAIN_STEP).ceil() * RAIN_STEP,
            )),
            Fact::StrongAtEnd {
                start_ms_per_cm, ..
            } => match (start_ms_per_cm, sound.fertilizer.strength) {
                (Some(start), Strength::Conductivity(_)) => {
                    Some(number(Field::TargetConductivity, *start))
                }
                (Some(_), _) => None,
                (None, _) => fewer.most(|crowd| !crowd.strong),
            },
            Fact::FittingStrength { .. } => fewer.most(|crowd| crowd.fits),
            _ => None,
        }
    };
    for finding in &mut outcome.findings {
        if finding.weight == Weight::Caution {
            finding.mends.extend(mends(&finding.fact));
        }
    }
}

/// The least whole value of `lowest..=highest` that does, where every value above one that does does
/// too; none where even the highest does not.
fn least(lowest: u32, highest: u32, does: &mut dyn FnMut(u32) -> bool) -> Option<u32> {
    if lowest > highest || !does(highest) {
        return None;
    }
    let (mut fails_below, mut good) = (lowest, highest);
    while fails_below < good {
        let middle = fails_below.midpoint(good);
        if does(middle) {
            good = middle;
        } else {
            fails_below = middle + 1;
        }
    }
    Some(good)
}

/// The least share of rain, in steps, at which the solution does.
fn rain(prepared: &Prepared, does: &dyn Fn(&SolutionOutcome) -> bool) -> Option<Change> {
    let Prepared {
        fertilizer,
        chemistry,
        mixed,
    } = prepared;
    // An acid is the other way, and rain would change how much of it is wanted.
    if fertilizer.water == RawWater::Rain || fertilizer.acid.is_some() {
        return None;
    }
    let share = |step: u32| Ratio::new::<percent>(f64::from(step) * RAIN_STEP);
    let does = |step: u32, mixed_in: &dyn Fn(&Chemistry) -> Result<Mixed, Beyond>| {
        chemistry
            .with_rain(share(step))
            .and_then(|chemistry| mixed_in(&chemistry))
            .is_ok_and(|mixed| does(&solution::mixed(&mixed)))
    };
    let lowest = (1..=MOST_RAIN).find(|&step| share(step) > fertilizer.rain)?;
    // First with the amounts as they are, which is quick and right to a step or two.
    let about = least(lowest, MOST_RAIN, &mut |step| {
        does(step, &|chemistry| mixing::in_other_water(mixed, chemistry))
    })?;
    (about.saturating_sub(2).max(lowest)..=MOST_RAIN.min(about + 2))
        .find(|&step| does(step, &|chemistry| mixing::mix(fertilizer, chemistry)))
        .map(|step| number(Field::RainShare, f64::from(step) * RAIN_STEP))
}

/// What comes of fewer plants, each number worked out once.
struct Fewer<'a> {
    plan: &'a Plan,
    now: u32,
    known: Vec<(u32, Crowd)>,
}

/// What is asked of an outcome with fewer plants.
#[derive(Clone, Copy)]
struct Crowd {
    strong: bool,
    fits: bool,
}

impl Fewer<'_> {
    fn change(plants: u32) -> Change {
        number(Field::PlantsPerContainer, f64::from(plants))
    }

    fn crowd(&mut self, plants: u32) -> Crowd {
        if let Some((_, crowd)) = self.known.iter().find(|(known, _)| *known == plants) {
            return *crowd;
        }
        let crowd = self.tried(plants).unwrap_or(Crowd {
            strong: true,
            fits: false,
        });
        self.known.push((plants, crowd));
        crowd
    }

    fn tried(&self, plants: u32) -> Option<Crowd> {
        let mut plan = self.plan.clone();
        Self::change(plants).apply(&mut plan);
        let (sound, chemistry, mixed) = prepare(&plan).ok()?;
        // Where the measures of a tank say how many there are, the field changes nothing.
        if sound.crop.plants >= self.now {
            return None;
        }
        let outcome = work_out(&plan, &sound, &chemistry, &mixed).ok()?;
        let span = outcome.fertilizer.fitting;
        Some(Crowd {
            strong: outcome.season.ec_at_end_ms_per_cm > STRONG_MS_PER_CM,
            fits: span.is_some_and(|span| span.low_ms_per_cm <= span.high_ms_per_cm),
        })
    }

    /// The most plants, fewer than now, at which the outcome does.
    fn most(&mut self, does: fn(Crowd) -> bool) -> Option<Change> {
        let now = self.now;
        least(1, now.saturating_sub(1), &mut |fewer| {
            does(self.crowd(now - fewer))
        })
        .map(|fewer| Self::change(now - fewer))
    }
}
