//! What the figures rest on, in the fewest words.

use super::choices::{Worded, grade};
use super::figures::{date, show};
use super::say::*;
use crate::advice::Outcome;
use crate::catalog::blends::BlendChoice;
use crate::plan::{Dimension, Dosing, FertilizerPlan, Pick, UnitSystem, WaterKind};

/// How deep the container is, which a tape tells at once.
pub fn basis_container(outcome: &Outcome, units: UnitSystem) -> String {
    let deep = outcome.fill.container_depth_cm;
    basis_deep(&show(Dimension::Length, deep, units))
}

/// How many plants share a container.
pub fn basis_plants(outcome: &Outcome) -> String {
    basis_plants_each(&outcome.fill.plants.to_string())
}

/// The day of sowing, from which everything counts. `today`: year-month-day.
pub fn basis_date(outcome: &Outcome, today: &str) -> String {
    let day = &outcome.calendar.seeding;
    if day == today {
        basis_sown_today(&date(day))
    } else {
        basis_sown(&date(day))
    }
}

/// The blend by its grade, or what stands in its place.
pub fn basis_fertilizer(fertilizer: &FertilizerPlan) -> Option<String> {
    let dosing = fertilizer.dosing.known()?;
    match (dosing, fertilizer.blend.known()) {
        (Dosing::DryBlend, Some(BlendChoice::Own)) => Some(grade(&fertilizer.label)),
        (Dosing::DryBlend, blend) => blend.map(Worded::word),
        (Dosing::Stocks | Dosing::Salts, _) => Some(dosing.word()),
    }
}

/// The raw water.
pub fn basis_water(kind: &Pick<WaterKind>) -> Option<String> {
    let water = match kind.known()? {
        WaterKind::Rain => basis_water_rain(),
        WaterKind::Tap => basis_water_tap(),
        WaterKind::Analysis => basis_water_analysis(),
    };
    Some(water.to_owned())
}
