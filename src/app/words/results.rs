//! What stands beside the figures.
//!
//! Long, because all that is said beside figures is read, and one day translated, together.

use super::figures::{date, show};
use super::say::*;
use crate::advice::{EventKind, Outcome, PipeVerdict, Saturation, TargetReached};
use crate::plan::{Dimension, UnitSystem, significant};
use crate::season::MajorNutrient;

use super::doses::doses_line;
use super::findings::fine;

/// Heading of the checks that passed.
pub fn passed(count: usize) -> String {
    match count {
        1 => "1 check passed".to_owned(),
        count => format!("{count} checks passed"),
    }
}

/// Under the fill figure.
pub fn below_rim(cm: f64, units: UnitSystem) -> String {
    format!("{} below the rim", show(Dimension::Length, cm, units))
}

/// Under the fill figure.
pub fn fill_more(outcome: &Outcome, units: UnitSystem) -> String {
    let fill = &outcome.fill;
    let volume = |litres| show(Dimension::Volume, litres, units);
    let each = if fill.plants > 1 {
        format!(
            ", {} for each of {} plants",
            volume(fill.per_plant_l),
            fill.plants
        )
    } else {
        String::new()
    };
    let all = if fill.containers > 1 {
        format!(
            " {} containers take {}.",
            fill.containers,
            volume(fill.total_volume_l)
        )
    } else {
        String::new()
    };
    format!(
        "{} deep, before the {} go in. {}{each}, weighing {}.{all}",
        show(Dimension::Length, fill.depth_cm, units),
        if outcome.boards.is_some() {
            "boards"
        } else {
            "pots"
        },
        volume(fill.volume_l),
        show(Dimension::Weight, fill.mass_kg, units),
    )
}

/// The harvest headline.
pub fn harvest_head(outcome: &Outcome) -> String {
    match (outcome.season.harvest_day, &outcome.calendar.harvest) {
        (Some(_), Some(written)) => date(written),
        _ => "Not reached".to_owned(),
    }
}

/// Under the harvest headline.
pub fn harvest_more(outcome: &Outcome, units: UnitSystem) -> String {
    let season = &outcome.season;
    let head = show(Dimension::Mass, season.head_g, units);
    match season.harvest_day {
        Some(day) => format!("{day} days after planting, heads of about {head}."),
        None => format!(
            "Followed for {} days; heads reach about {head}.",
            season.days_followed
        ),
    }
}

/// Under the figure of what is left.
pub fn left_more(outcome: &Outcome, units: UnitSystem) -> String {
    let season = &outcome.season;
    format!(
        "The crop draws {} a plant, {} of fresh heads. Moist air gap {}.",
        show(Dimension::Volume, season.water_per_plant_l, units),
        show(Dimension::WaterUse, season.water_per_kg_l, units),
        show(Dimension::Length, season.gap_at_end_cm, units)
    )
}

/// The one polite sentence for those who cannot see the figures change.
pub fn result_sentence(outcome: &Outcome, units: UnitSystem) -> String {
    format!(
        "Fill {}, {}. Dissolve {}. Harvest: {}. Left: {}.",
        show(Dimension::Volume, outcome.fill.volume_l, units),
        below_rim(outcome.fill.below_rim_cm, units),
        doses_line(outcome, units),
        harvest_head(outcome),
        show(Dimension::Volume, outcome.season.left_l, units)
    )
}

/// What happens on a day.
pub fn event(kind: EventKind) -> &'static str {
    match kind {
        EventKind::Planted => event_planted(),
        EventKind::PotFootLeaves => event_pot_foot_leaves(),
        EventKind::BoardsRest => event_boards_rest(),
        EventKind::TargetReached => event_target_reached(),
        EventKind::UsedUp => event_used_up(),
    }
}

/// A day and its date.
pub fn day_and_date(day: u32, written: &str) -> String {
    format!("Day {day} · {}", date(written))
}

/// Heads of the pipe table.
pub fn pipe_heads() -> [&'static str; 6] {
    [
        pipe_heads_1(),
        pipe_heads_2(),
        pipe_heads_3(),
        pipe_heads_4(),
        pipe_heads_5(),
        pipe_heads_6(),
    ]
}

/// A day, or that there is none.
pub fn rest_day(day: Option<u32>) -> String {
    day.map_or_else(|| "never".to_owned(), |day| format!("day {day}"))
}

/// Whether a pipe does.
pub fn verdict(verdict: PipeVerdict) -> &'static str {
    match verdict {
        PipeVerdict::Sound => verdict_sound(),
        PipeVerdict::BoardsSink => verdict_boards_sink(),
        PipeVerdict::TankTooLow => verdict_tank_too_low(),
        PipeVerdict::RestsAtPlanting => verdict_rests_at_planting(),
        PipeVerdict::NeverRests => verdict_never_rests(),
        PipeVerdict::RunsOut => verdict_runs_out(),
        PipeVerdict::GapTooSmall => verdict_gap_too_small(),
        PipeVerdict::GapTooLarge => verdict_gap_too_large(),
        PipeVerdict::TooLittleLeft => verdict_too_little_left(),
    }
}

/// Under the pipe table.
pub fn pipes_note(any_sound: bool) -> &'static str {
    if any_sound {
        "Each size is filled so that its boards float 1 cm (3/8 in) clear. The air gap comes from the water that the crop draws, so it hardly changes with the pipe; a thicker pipe leaves more solution. 3 to 9 cm (1 1/8 to 3 1/2 in) of moist air at harvest is usual."
    } else {
        "No size gives a sound air gap with this crop and climate. The gap comes from the water that the crop draws: fewer or more plants, a longer or shorter crop, or another tank changes it; the pipe alone does not."
    }
}

/// Heads of the nutrient table.
pub fn nutrient_heads() -> [&'static str; 4] {
    [
        nutrient_heads_1(),
        nutrient_heads_2(),
        nutrient_heads_3(),
        "",
    ]
}
/// A nutrient does not.
pub fn short_from(day: Option<u32>) -> String {
    day.map_or_else(|| "short".to_owned(), |day| format!("short from day {day}"))
}

/// Name of a nutrient.
pub fn nutrient(nutrient: MajorNutrient) -> &'static str {
    match nutrient {
        MajorNutrient::Nitrogen => nutrient_nitrogen(),
        MajorNutrient::Phosphorus => nutrient_phosphorus(),
        MajorNutrient::Potassium => nutrient_potassium(),
        MajorNutrient::Calcium => nutrient_calcium(),
        MajorNutrient::Magnesium => nutrient_magnesium(),
    }
}

/// Heads of the table of elements.
pub fn element_heads() -> [&'static str; 3] {
    [element_heads_1(), element_heads_2(), element_heads_3()]
}
/// Heads of the table of species.
pub fn species_heads() -> [&'static str; 2] {
    [species_heads_1(), species_heads_2()]
}
/// Heads of the table of doses.
pub fn dose_heads() -> [&'static str; 2] {
    [dose_heads_1(), dose_heads_2()]
}
/// Heads of the table of targets.
pub fn target_heads() -> [&'static str; 4] {
    [
        target_heads_1(),
        target_heads_2(),
        target_heads_3(),
        target_heads_4(),
    ]
}

/// A target by its element and form.
pub fn target(target: &TargetReached) -> String {
    match target.form {
        Some(form) => format!("{} as {form}", target.nutrient),
        None => target.nutrient.to_owned(),
    }
}

/// By how much a target is missed.
pub fn miss(target: &TargetReached) -> String {
    target.miss_pct.map_or_else(
        || "–".to_owned(),
        |pct| show(Dimension::Percent, pct, UnitSystem::Metric),
    )
}
/// Heads of the table of stocks.
pub fn stock_heads() -> [&'static str; 4] {
    [
        stock_heads_1(),
        stock_heads_2(),
        stock_heads_3(),
        stock_heads_4(),
    ]
}

/// Heads of that table.
pub fn mixture_heads() -> [&'static str; 3] {
    [mixture_heads_1(), mixture_heads_2(), mixture_heads_3()]
}

/// A whole share.
pub fn per_cent(share: f64) -> String {
    format!("{}%", share.round())
}

/// What one batch of a stock serves.
pub fn serves(containers: f64, heads: f64) -> String {
    format!(
        "{} containers, {} heads",
        significant(containers, 2),
        significant(heads, 2)
    )
}

/// Saturation indices in one line.
pub fn saturation_line(saturation: &Saturation) -> String {
    let one = |name: &str, index: Option<f64>| {
        index.map(|index| {
            format!(
                "{name} {}",
                show(Dimension::Fine, index, UnitSystem::Metric)
            )
        })
    };
    let lines: Vec<String> = [
        one("gypsum", saturation.gypsum),
        one("calcium phosphate", saturation.brushite),
        one("lime", saturation.calcite),
    ]
    .into_iter()
    .flatten()
    .collect();
    if lines.is_empty() {
        "–".to_owned()
    } else {
        lines.join(", ")
    }
}

/// The solution's readings in one line.
pub fn readings(outcome: &Outcome, units: UnitSystem) -> String {
    let solution = &outcome.solution;
    format!(
        "EC {} at 25 °C ({} at its own {}), pH {}; saturation: {}.",
        show(Dimension::Conductivity, solution.ec_ms_per_cm, units),
        show(
            Dimension::Conductivity,
            solution.ec_at_temperature_ms_per_cm,
            units
        ),
        show(Dimension::Temperature, solution.temperature_c, units),
        fine(solution.ph),
        saturation_line(&solution.saturation)
    )
}

/// The bar at the foot of a phone.
pub fn glance(outcome: &Outcome, units: UnitSystem) -> String {
    format!(
        "{} · {} · {}",
        show(Dimension::Volume, outcome.fill.volume_l, units),
        doses_line(outcome, units),
        harvest_head(outcome)
    )
}
