//! The calendar, its file, and heads every week.

use super::figures::{places, show};
use super::say::*;
use crate::advice::{CalendarKind, CalendarWords, Planting, Succession};
use crate::plan::{Dimension, UnitSystem};

/// Heads of the table of plantings.
pub fn succession_heads() -> [&'static str; 4] {
    [
        succession_heads_1(),
        succession_heads_2(),
        succession_heads_3(),
        succession_heads_4(),
    ]
}

/// What an entry of the calendar says.
pub fn calendar_words(kind: CalendarKind) -> CalendarWords {
    let (summary, description) = match kind {
        CalendarKind::Seeding => (calendar_seeding(), calendar_seeding_more()),
        CalendarKind::Transplanting => (calendar_transplanting(), calendar_transplanting_more()),
        CalendarKind::BoardsRest => (calendar_boards_rest(), calendar_boards_rest_more()),
        CalendarKind::PotsLeave => (calendar_pots_leave(), calendar_pots_leave_more()),
        CalendarKind::Harvest => (calendar_harvest(), calendar_harvest_more()),
        CalendarKind::Clean => (calendar_clean(), calendar_clean_more()),
        CalendarKind::Refill => (calendar_refill(), calendar_refill_more()),
        CalendarKind::SeedNext => (calendar_seed_next(), calendar_seed_next_more()),
        CalendarKind::Replant => (calendar_replant(), calendar_replant_more()),
    };
    CalendarWords {
        summary: summary.to_owned(),
        description: description.to_owned(),
    }
}

/// The succession in a sentence.
pub fn succession(plan: &Succession, units: UnitSystem) -> String {
    let heads = &places(plan.heads_per_week.ceil(), 0);
    let containers = &plan.containers.to_string();
    let each_week = &plan.containers_per_week.to_string();
    let days = &plan.again_every_days.to_string();
    match plan.tank_m {
        Some(metres) => SuccessionOrTank {
            heads,
            containers,
            tank: &show(Dimension::Length, metres * 100.0, units),
            each_week,
            days,
        }
        .text(),
        None => SuccessionContainers {
            containers,
            days,
            each_week,
            heads,
        }
        .text(),
    }
}

/// A row of the table of plantings.
pub fn planting(planting: &Planting) -> Vec<String> {
    vec![
        planting.group.to_string(),
        super::date(&planting.seeding),
        super::date(&planting.transplanting),
        super::date(&planting.harvest),
    ]
}
