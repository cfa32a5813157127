//! Heads every week: how many containers in turn, and when each is planted.

use serde::Serialize;
use time::{Date, Duration};

use super::calendar::{HARVEST_WINDOW_DAYS, written};
use crate::plan::Sound;
use crate::science::units::length::meter;

/// Days between two plantings.
const WEEK: u32 = 7;

/// A plan of plantings that brings heads every week.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Succession {
    /// Heads wanted in a week.
    pub heads_per_week: f64,
    /// Heads that one container bears.
    pub heads_per_container: u32,
    /// Containers planted in one week, which are harvested in one week.
    pub containers_per_week: u32,
    /// Such weekly groups in turn.
    pub groups: u32,
    /// Containers in all.
    pub containers: u32,
    /// Length of tank in all, m, where tanks are rectangular and as wide as the plan's: what the
    /// heads need, without the room that is left over in whole tanks.
    pub tank_m: Option<f64>,
    /// Heads a week beyond those wanted, because containers are whole.
    pub spare_heads_per_week: f64,
    /// Days that a group is planted, harvest window included.
    pub days_in_container: u32,
    /// Days between the end of a harvest and the next planting.
    pub turnaround_days: u32,
    /// After so many days each group is planted again.
    pub again_every_days: u32,
    /// The first turn, one planting a week.
    pub plantings: Vec<Planting>,
}

/// One week's planting.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Planting {
    /// Which group, from 1.
    pub group: u32,
    /// Seed is sown, year-month-day.
    pub seeding: String,
    /// Seedlings move onto the solution.
    pub transplanting: String,
    /// The first heads are ready.
    pub harvest: String,
    /// The last day on which they are cut.
    pub harvest_until: String,
}

/// What a succession is worked out from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Demand {
    /// Heads wanted in a week, above zero.
    pub heads_per_week: f64,
    /// Heads that one container bears, at least 1.
    pub heads_per_container: u32,
    /// Length of one container, m, where its length may be chosen.
    pub container_m: Option<f64>,
    /// Days from planting to the first heads.
    pub harvest_day: u32,
    /// Days between the end of a harvest and the next planting.
    pub turnaround_days: u32,
    /// Days from seeding to planting.
    pub seedling_age: u32,
    /// The first planting.
    pub first: Date,
}

/// Works out a succession: each week as many containers are planted as bear the week's heads; a
/// group is cut through one week, cleaned and planted anew.
///
/// The least number of weekly groups whose turn is not shorter than the days that a container is
/// taken up. Arithmetic, no source; whole containers are rounded up.
///
/// ```
/// use slackwater::advice::{Demand, succession};
/// let demand = Demand {
///     heads_per_week: 10.0,
///     heads_per_container: 3,
///     container_m: None,
///     harvest_day: 40,
///     turnaround_days: 2,
///     seedling_age: 10,
///     first: time::Date::from_ordinal_date(2027, 32).expect("a date"),
/// };
/// // 4 buckets a week; 40 + 7 + 2 days are 7 weeks.
/// assert_eq!(succession(&demand).containers, 28);
/// ```
pub fn succession(demand: &Demand) -> Succession {
    let each = f64::from(demand.heads_per_container.max(1));
    let containers_per_week = whole((demand.heads_per_week / each).ceil()).max(1);
    let days_in_container = demand.harvest_day.saturating_add(HARVEST_WINDOW_DAYS);
    let taken_up = days_in_container.saturating_add(demand.turnaround_days);
    let groups = taken_up.div_ceil(WEEK).max(1);
    let tank_m = demand
        .container_m
        .map(|length| demand.heads_per_week / each * length * f64::from(groups));
    let plantings = (0..groups)
        .map(|group| {
            let after = |days: i64| {
                written(
                    demand
                        .first
                        .saturating_add(Duration::days(i64::from(group * WEEK) + days)),
                )
            };
            let harvest = i64::from(demand.harvest_day);
            Planting {
                group: group + 1,
                seeding: after(-i64::from(demand.seedling_age)),
                transplanting: after(0),
                harvest: after(harvest),
                harvest_until: after(harvest + i64::from(HARVEST_WINDOW_DAYS) - 1),
            }
        })
        .collect();
    Succession {
        heads_per_week: demand.heads_per_week,
        heads_per_container: demand.heads_per_container,
        containers_per_week,
        groups,
        containers: containers_per_week.saturating_mul(groups),
        tank_m,
        spare_heads_per_week: (f64::from(containers_per_week) * each - demand.heads_per_week)
            .max(0.0),
        days_in_container,
        turnaround_days: demand.turnaround_days,
        again_every_days: groups * WEEK,
        plantings,
    }
}

/// The succession of a plan; `None` where it asks for none, or no harvest comes.
pub(super) fn of_plan(sound: &Sound, harvest_day: Option<u32>) -> Option<Succession> {
    let crop = &sound.crop;
    let heads_per_week = crop.heads_per_week?;
    let rectangle = sound.container.rectangle.as_ref();
    let container_m = sound
        .crop
        .in_a_tank
        .then(|| rectangle.map(|sides| sides.top.0.get::<meter>()))
        .flatten();
    Some(succession(&Demand {
        heads_per_week,
        heads_per_container: crop.plants,
        container_m,
        harvest_day: harvest_day?,
        turnaround_days: crop.turnaround_days,
        seedling_age: crop.seedling_age,
        first: crop.transplanting,
    }))
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "people and heads are limited to far below u32"
)]
fn whole(value: f64) -> u32 {
    value.max(0.0) as u32
}
