//! The level of a crop under way day by day, as a picture: what the plan alone says, what is left of
//! it after the readings, and the readings.

use super::NotebookOutcome;
use crate::advice::chances::ChancesOutcome;
use crate::advice::curves::round_up;
use crate::plan::{Dimension, UnitSystem};

/// The picture; heights are shares of its top.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    /// The height in the middle and at the top, cm above the floor: round in the reader's unit.
    pub ticks: [f64; 2],
    /// The last day, counted from planting.
    pub last: usize,
    /// Low, middle and high of each day by the plan alone.
    pub before: Vec<[f64; 3]>,
    /// The same after the readings.
    pub after: Vec<[f64; 3]>,
    /// Days and heights of the readings.
    pub readings: Vec<(usize, f64)>,
    /// The fill mark.
    pub mark: f64,
    /// Where moist air ends above: the underside of cover or boards at the end.
    pub underside: Option<f64>,
    /// What no top-up may rise above.
    pub ceiling: Option<f64>,
}

/// Draws what two weighings of a crop came to: without its readings, and with them.
pub fn picture(before: &NotebookOutcome, after: &NotebookOutcome, units: UnitSystem) -> Picture {
    let of = &after.chances;
    let underside = of
        .level_at_end_cm
        .zip(of.gap_at_end_cm)
        .map(|(level, gap)| level.middle + gap.middle);
    let levels = |chances: &ChancesOutcome| -> Vec<[f64; 3]> {
        let bands = chances.days.iter().map(|day| day.level_cm);
        bands
            .map(|band| [band.low, band.middle, band.high])
            .collect()
    };
    let (old, new) = (levels(&before.chances), levels(of));
    let most = old
        .iter()
        .chain(&new)
        .map(|day| day[2])
        .chain(after.levels.iter().map(|read| read.level_cm))
        .chain(underside)
        .fold(after.mark_cm, f64::max);
    let half = round_up(Dimension::Length.in_system(most, units) / 2.0);
    let top = Dimension::Length.saved(half * 2.0, units);
    let days = |index: u32| usize::try_from(index).unwrap_or_default();
    let share = |cm: f64| cm / top;
    let shares = |levels: Vec<[f64; 3]>| levels.iter().map(|day| day.map(share)).collect();
    let last = old.len().max(new.len()).saturating_sub(1);
    Picture {
        ticks: [Dimension::Length.saved(half, units), top],
        last: last.max(days(after.day)).max(1),
        before: shares(old),
        after: shares(new),
        readings: after
            .levels
            .iter()
            .map(|read| (days(read.day), share(read.level_cm)))
            .collect(),
        mark: share(after.mark_cm),
        underside: underside.map(share),
        ceiling: after.top_up.map(|top_up| share(top_up.ceiling_cm)),
    }
}
