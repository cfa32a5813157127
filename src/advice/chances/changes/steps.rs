//! The steps of each kind of change.

use super::{Changes, Step};
use crate::advice::calendar::written;
use crate::advice::chances::change::{Edit, Reason, edit, edited};
use crate::advice::chances::judge::Judge;
use crate::advice::fill;
use crate::plan::{DateMeaning, Entry, Field, Light, Plan, Strength, UnitSystem};
use crate::science::units::Length;
use crate::science::units::length::centimeter;
use crate::season::Cover;
use time::Duration;

/// Steps of a fill mark, cm: a tape is read so.
const FILL_STEP_CM: f64 = 0.1;
/// Steps of the share of light, in percentage points: shade cloth is sold so (common practice).
const SHADE_STEP_PCT: f64 = 5.0;
/// Steps of the planting date, and how many of them are tried to either side.
const DATE_STEP_DAYS: u32 = 7;
const MOST_DATE_STEPS: u32 = 8;

impl Changes {
    pub(super) fn containers(&self) -> Step {
        let crop = &self.judge.sound.crop;
        let count = self.judge.sound.container.count;
        let counted = self.counts_plants();
        if !counted || crop.plants < 2 {
            return Step::End(Reason::NotOfThisPlan);
        }
        let all = crop.plants * count;
        let each = |count: u32| all.div_ceil(count);
        let more = count + self.step;
        if each(more - 1) == 1 {
            return Step::End(Reason::NotEnough);
        }
        if each(more) == each(more - 1) {
            return Step::Pass;
        }
        Step::Try(
            vec![
                edit(Field::Count, f64::from(more)),
                edit(Field::PlantsPerContainer, f64::from(each(more))),
            ],
            f64::from(self.step) / f64::from(count),
        )
    }

    pub(super) fn plants(&self) -> Step {
        let crop = &self.judge.sound.crop;
        if self.counts_plants() {
            let fewer = crop.plants.saturating_sub(self.step);
            return if fewer == 0 {
                Step::End(if crop.plants < 2 {
                    Reason::NotOfThisPlan
                } else {
                    Reason::NotEnough
                })
            } else {
                Step::Try(
                    vec![edit(Field::PlantsPerContainer, f64::from(fewer))],
                    f64::from(self.step) / f64::from(crop.plants),
                )
            };
        }
        // Over a tank the spacing says how many plants there are: one column fewer at a time.
        let (of, along) = match &self.judge.sound.container.boards {
            Some(boards) => (Some(boards.length.get::<centimeter>()), crop.spacing.1),
            None => (number(&self.plan, Field::Length), crop.spacing.1),
        };
        let Some(length) = of else {
            return Step::End(Reason::NotOfThisPlan);
        };
        let columns = (length / along.get::<centimeter>()).floor();
        let fewer = columns - f64::from(self.step);
        if fewer < 1.0 {
            return Step::End(if columns < 2.0 {
                Reason::NotOfThisPlan
            } else {
                Reason::NotEnough
            });
        }
        let wider = (length / fewer * 10.0).floor() / 10.0;
        Step::Try(
            vec![edit(Field::SpacingAlong, wider)],
            f64::from(self.step) / columns,
        )
    }

    pub(super) fn shade(&self) -> Step {
        let Light::Sun { .. } = self.judge.sound.climate.light else {
            return Step::End(Reason::NotOfThisPlan);
        };
        let now = number(&self.plan, Field::LightThrough);
        let (Some(now), Some(limits)) = (now, Field::LightThrough.limits()) else {
            return Step::End(Reason::NotOfThisPlan);
        };
        // Less, then more, then less again: −5, +5, −10, …
        let size = SHADE_STEP_PCT * f64::from(self.step.div_ceil(2));
        let value = if self.step % 2 == 1 {
            now - size
        } else {
            now + size
        };
        let low = limits.usual_low.min(now);
        if now - size < low && now + size > limits.high {
            Step::End(Reason::NotEnough)
        } else if (low..=limits.high).contains(&value) {
            Step::Try(vec![edit(Field::LightThrough, value)], size / now)
        } else {
            Step::Pass
        }
    }

    pub(super) fn date(&self) -> Step {
        if self.step > 2 * MOST_DATE_STEPS {
            return Step::End(Reason::NotEnough);
        }
        if matches!(self.judge.sound.climate.light, Light::Lamps { .. }) {
            return Step::End(Reason::NotOfThisPlan);
        }
        // Later, then earlier: +7, −7, +14, …
        let days = i64::from(DATE_STEP_DAYS * self.step.div_ceil(2));
        let crop = &self.judge.sound.crop;
        let now = match self.plan.crop.date_meaning.known() {
            Some(DateMeaning::Seeding) => crop.seeding,
            _ => crop.transplanting,
        };
        let by = if self.step % 2 == 1 { days } else { -days };
        let Some(date) = now.checked_add(Duration::days(by)) else {
            return Step::Pass;
        };
        Step::Try(
            vec![Edit {
                field: Field::Date,
                entry: Entry::Text(written(date)),
            }],
            days as f64 / self.days_to_harvest,
        )
    }

    /// The lowest mark, a tape's step at a time, that is high enough; plants do not feel the level.
    pub(super) fn fill(&mut self) {
        let judge = &self.judge;
        let now = judge.mark().get::<centimeter>();
        let steps_now = (now / FILL_STEP_CM + 1e-6).floor();
        // Whole steps, so that a mark is written without a tail of digits.
        let at = |step: u32| ((steps_now + f64::from(step)) * FILL_STEP_CM * 10.0).round() / 10.0;
        let failures = |step: u32| {
            let depth = Length::new::<centimeter>(at(step));
            let filled = fill::fill(&judge.sound, &judge.tank, Some(depth)).ok()?;
            let drowned = matches!(judge.tank.cover(), Cover::Fixed)
                && Field::PotImmersion.limits().is_some_and(|limits| {
                    filled.state.immersion().get::<centimeter>() > limits.usual_high
                });
            (!filled.state.overflows && !drowned).then(|| self.dry(filled.volume))
        };
        // Rises while possible, then stops being possible; enough from some step on.
        let enough = |step: u32| failures(step).is_none_or(|failures| failures <= self.allowed);
        let (mut low, mut high) = (0_u32, 4096_u32);
        while high - low > 1 {
            let middle = u32::midpoint(low, high);
            if enough(middle) {
                high = middle;
            } else {
                low = middle;
            }
        }
        let edits = vec![edit(Field::FillDepth, at(high))];
        let found = match failures(high) {
            Some(failures) if Judge::new(&edited(&self.plan, &edits)).is_ok() => {
                self.change(edits, at(high) / now - 1.0, failures)
            }
            _ => Err(Reason::NotEnough),
        };
        self.close(found);
    }

    /// One step of the search for a strength: doubled until it is enough, then halved between.
    pub(super) fn strengthen(&mut self) {
        let (field, size) = match self.judge.sound.fertilizer.strength {
            Strength::Conductivity(_) => (Field::TargetConductivity, 0.05),
            Strength::Nitrogen(_) => (Field::TargetNitrogen, 5.0),
            Strength::Recipe(..) => (Field::RecipeStrength, 1.0),
        };
        let (Some(now), Some(limits)) = (number(&self.plan, field), field.limits()) else {
            return self.close(Err(Reason::NotOfThisPlan));
        };
        let (low, high) = self.strength;
        let step = match high {
            Some(high) => u32::midpoint(low, high),
            None => (2 * low).max(1),
        };
        let of = |step: u32| ((now + size * f64::from(step)) * 100.0).round() / 100.0;
        let edits = vec![edit(field, of(step))];
        let failures = (of(step) <= limits.usual_high)
            .then(|| Judge::new(&edited(&self.plan, &edits)).ok())
            .flatten()
            .map(|judge| self.hungry(&judge));
        let enough = failures.is_none_or(|failures| failures <= self.allowed);
        if step == low {
            // Nothing lies between.
            let Some(high) = high else { return };
            let edits = vec![edit(field, of(high))];
            let found = match Judge::new(&edited(&self.plan, &edits)) {
                Ok(judge) if of(high) <= limits.usual_high => {
                    let failures = self.hungry(&judge);
                    self.change(edits, of(high) / now - 1.0, failures)
                }
                _ => Err(Reason::NotEnough),
            };
            self.close(found);
        } else if enough {
            self.strength.1 = Some(step);
        } else {
            self.strength.0 = step;
        }
    }

    /// Whether the plants of a container are counted rather than spaced.
    fn counts_plants(&self) -> bool {
        crate::plan::used_fields(&self.plan).contains(&Field::PlantsPerContainer)
    }
}

/// What a numeric field of a sound plan holds.
fn number(plan: &Plan, field: Field) -> Option<f64> {
    match field.entry(plan)? {
        entry if entry.is_blank() => field.if_unknown(plan),
        Entry::Number(value) => Some(*value),
        Entry::Text(text) => field
            .limits()?
            .dimension
            .read(text, UnitSystem::Metric)
            .ok(),
    }
}
