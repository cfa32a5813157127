//! The calendar, its file, and heads every week.

use super::figures::show;
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
        CalendarKind::Seeding => ("Sow", "Sow the seed in plugs."),
        CalendarKind::Transplanting => (
            "Fill, mix and plant",
            "Fill to the mark, mix in the fertilizer, set the pots in place.",
        ),
        CalendarKind::BoardsRest => (
            "Boards come to rest",
            "Moist air opens under the boards from now on. Do not top up.",
        ),
        CalendarKind::PotsLeave => (
            "Pots hang above the solution",
            "Water roots carry on. Do not top up: air roots drown.",
        ),
        CalendarKind::Harvest => ("Harvest", "Clean hands, a clean knife, a week to finish."),
        CalendarKind::Clean => (
            "Drain and clean",
            "Spread the rest on soil that can use it; never into a stream or storm drain.",
        ),
        CalendarKind::Refill => (
            "Top up for the next crop",
            "Add the raw water and fertilizer that the plan names until the boards or pots stand as at the first planting.",
        ),
        CalendarKind::SeedNext => ("Sow the next crop", "In time for the next planting."),
        CalendarKind::Replant => ("Plant the next crop", "As the first time."),
    };
    CalendarWords {
        summary: summary.to_owned(),
        description: description.to_owned(),
    }
}

/// The succession in a sentence.
pub fn succession(plan: &Succession, units: UnitSystem) -> String {
    let tank = plan.tank_m.map_or_else(String::new, |metres| {
        format!(
            ", or {} of tank as wide as this one",
            show(Dimension::Length, metres * 100.0, units)
        )
    });
    format!(
        "{} heads a week take {} of these containers in turn{tank}: plant {} every week, each again after {} days.",
        plan.heads_per_week.ceil(),
        plan.containers,
        plan.containers_per_week,
        plan.again_every_days
    )
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
