//! The dates that a grower writes on the wall.

use serde::Serialize;
use time::{Date, Duration};

use crate::plan::Crop;

/// Dates, year-month-day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Calendar {
    /// Seed is sown.
    pub seeding: String,
    /// Seedlings move onto the solution; the tank is filled and mixed before.
    pub transplanting: String,
    /// Boards come to rest.
    pub boards_rest: Option<String>,
    /// Heads reach their target mass.
    pub harvest: Option<String>,
}

/// The calendar of a crop.
pub fn calendar(crop: &Crop, rest_day: Option<u32>, harvest_day: Option<u32>) -> Calendar {
    let after = |day: u32| date_after(crop.transplanting, day);
    Calendar {
        seeding: written(crop.seeding),
        transplanting: written(crop.transplanting),
        boards_rest: rest_day.map(after),
        harvest: harvest_day.map(after),
    }
}

/// The date some days after another.
pub fn date_after(start: Date, days: u32) -> String {
    written(start.saturating_add(Duration::days(i64::from(days))))
}

pub(super) fn written(date: Date) -> String {
    format!(
        "{:04}-{:02}-{:02}",
        date.year(),
        u8::from(date.month()),
        date.day()
    )
}
