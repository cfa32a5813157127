//! What a crop under way is expected to read, week by week: beside it stands what is read.

use serde::Serialize;
use time::Date;

use super::calendar::date_after;
use super::outcome::{DayOutcome, Fill};
use crate::science::positive;

/// Days from one reading to the next.
const DAYS: usize = 7;

/// A day on which a crop is read.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WeekReading {
    /// Days after planting.
    pub day: u32,
    /// The calendar day, year-month-day.
    pub date: String,
    /// The surface of the solution below the rim, cm.
    pub below_rim_cm: f64,
    /// Conductivity, mS/cm at 25 °C.
    pub ec_ms_per_cm: f64,
}

/// Every seventh day from planting, and the last day of the season.
pub(super) fn weeks(fill: &Fill, days: &[DayOutcome], planted: Date) -> Vec<WeekReading> {
    let rim_cm = fill.depth_cm + fill.below_rim_cm;
    let last = days.len().saturating_sub(1);
    days.iter()
        .enumerate()
        .filter(|(at, _)| at.is_multiple_of(DAYS) || *at == last)
        .map(|(_, day)| WeekReading {
            day: day.day,
            date: date_after(planted, day.day),
            // A container that is full to its rim leaves a rounding.
            below_rim_cm: positive(rim_cm - day.level_cm),
            ec_ms_per_cm: day.ec_ms_per_cm,
        })
        .collect()
}
