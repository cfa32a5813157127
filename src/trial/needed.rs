//! How many replicates it takes to see a difference.

use serde::Serialize;

use crate::science::statistics::{Spread, detectable, replicates, trial_power};

use super::check::Sound;
use super::report::{Measure, MeasureReport};

/// Sizes of the trial, by the spread that was expected and by the one that was met. The hardest
/// case is taken: two treatments apart, the others half way between.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Needed {
    /// The difference to be seen, per cent of the mean.
    pub difference_pct: f64,
    /// The chance wanted, per cent.
    pub power_pct: f64,
    /// By the spread that the trial's fields expect.
    pub expected: Size,
    /// By the spread of this trial's own records; `None` without subsamples recorded.
    pub recorded: Option<Size>,
}

/// Sizes by one spread of head mass.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Size {
    /// Spread from unit to unit, per cent of the mean.
    pub unit_spread_pct: f64,
    /// Spread from head to head within a unit, per cent of the mean.
    pub head_spread_pct: f64,
    /// Spread of a unit's mean, per cent of the mean.
    pub unit_mean_spread_pct: f64,
    /// Fewest units of each treatment (blocks, where there are any); `None` where even 200 are too
    /// few.
    pub replicates: Option<u32>,
    /// The chance with the units that the trial has, per cent; `None` where there is nothing to
    /// judge by.
    pub power_as_planned_pct: Option<f64>,
    /// The smallest difference seen with the power wanted, per cent of the mean.
    pub detectable_pct: Option<f64>,
}

pub(super) fn needed(sound: &Sound, reports: &[MeasureReport]) -> Needed {
    let recorded = reports
        .iter()
        .find(|report| report.measure == Measure::HeadMass)
        .and_then(|report| report.analysis.as_ref()?.spread)
        .and_then(|it| size(sound, it.units_pct / 100.0, it.heads_pct / 100.0));
    let expected = size(sound, sound.unit_spread, sound.head_spread);
    Needed {
        difference_pct: 100.0 * sound.difference,
        power_pct: 100.0 * sound.power,
        // The limits of the fields keep the expected spread within what the method covers.
        expected: expected.unwrap_or_else(|| bare(sound.unit_spread, sound.head_spread)),
        recorded,
    }
}

fn bare(units: f64, heads: f64) -> Size {
    Size {
        unit_spread_pct: 100.0 * units,
        head_spread_pct: 100.0 * heads,
        unit_mean_spread_pct: 100.0 * units,
        replicates: None,
        power_as_planned_pct: None,
        detectable_pct: None,
    }
}

/// `None` where the spread is none at all, or beyond what the method covers.
fn size(sound: &Sound, units: f64, heads: f64) -> Option<Size> {
    let spread = Spread {
        units,
        heads,
        heads_per_unit: sound.heads_per_unit,
    };
    let layout = sound.design.into();
    let treatments = u32::try_from(sound.names.len()).ok()?;
    let (alpha, wanted) = (sound.alpha, sound.power);
    let fewest = replicates(layout, treatments, sound.difference, &spread, alpha, wanted);
    let chance = trial_power(
        layout,
        treatments,
        sound.replicates,
        sound.difference,
        &spread,
        alpha,
    );
    let smallest = detectable(layout, treatments, sound.replicates, &spread, alpha, wanted);
    Some(Size {
        unit_mean_spread_pct: 100.0 * spread.of_unit_mean().sqrt(),
        replicates: fewest.ok()?,
        power_as_planned_pct: chance.ok().map(|it| 100.0 * it),
        detectable_pct: smallest.ok().map(|it| 100.0 * it),
        ..bare(units, heads)
    })
}
