//! The dates that a grower writes on the wall.

use serde::Serialize;
use time::{Date, Duration};

use crate::plan::Crop;

/// Days through which ready heads are cut from the container: common practice, no source.
pub const HARVEST_WINDOW_DAYS: u32 = 7;

/// Dates, year-month-day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Calendar {
    /// Seed is sown.
    pub seeding: String,
    /// Seedlings move onto the solution; the tank is filled and mixed before.
    pub transplanting: String,
    /// Boards come to rest.
    pub boards_rest: Option<String>,
    /// The foot of the pots leaves the solution.
    pub pots_leave: Option<String>,
    /// Heads reach their target mass.
    pub harvest: Option<String>,
    /// The last day of the harvest.
    pub harvest_until: Option<String>,
    /// The container is drained and cleaned; `None` where another crop follows on the same
    /// solution.
    pub clean: Option<String>,
    /// The same solution is topped up for the next crop, and boards float off; `None` where it is
    /// drained.
    pub refill: Option<String>,
    /// Seed of the next crop is sown.
    pub seed_next: Option<String>,
    /// The next crop moves onto the solution.
    pub replant: Option<String>,
}

/// The days after planting on which things happen.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Days {
    pub boards_rest: Option<u32>,
    pub pots_leave: Option<u32>,
    pub harvest: Option<u32>,
    /// Whether another crop follows on the same solution.
    pub grows_on: bool,
}

/// The calendar of a crop.
pub(super) fn calendar(crop: &Crop, days: Days) -> Calendar {
    let after = |day: u32| date_after(crop.transplanting, day);
    // The day after the last of the harvest.
    let free = days.harvest.map(|day| day + HARVEST_WINDOW_DAYS);
    let replant = free.map(|day| day + crop.turnaround_days);
    Calendar {
        seeding: written(crop.seeding),
        transplanting: written(crop.transplanting),
        boards_rest: days.boards_rest.map(after),
        pots_leave: days.pots_leave.map(after),
        harvest: days.harvest.map(after),
        harvest_until: free.map(|day| after(day - 1)),
        clean: free.filter(|_| !days.grows_on).map(after),
        refill: free.filter(|_| days.grows_on).map(after),
        seed_next: replant.map(|day| {
            let sown = i64::from(day) - i64::from(crop.seedling_age);
            written(crop.transplanting.saturating_add(Duration::days(sown)))
        }),
        replant: replant.map(after),
    }
}

/// The date some days after another.
pub(super) fn date_after(start: Date, days: u32) -> String {
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
