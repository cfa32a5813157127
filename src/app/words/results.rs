//! What stands beside the figures.

use super::figures::{date, reference, rounded, show};
use super::say::*;
use crate::advice::{EventKind, Outcome, PipeVerdict, Saturation, TargetReached};
use crate::plan::{Dimension, UnitSystem};
use crate::season::MajorNutrient;

use super::doses::doses_line;
use super::finding_parts::fine;

/// The way to the cautions.
pub fn cautions_count(count: usize) -> String {
    cautions_below(&count.to_string())
}

/// Heading of the checks that passed.
pub fn passed(count: usize) -> String {
    checks_passed(&count.to_string())
}

/// Under the fill figure.
pub fn below_rim(cm: f64, units: UnitSystem) -> String {
    fill_below_rim(&show(Dimension::Length, cm, units))
}

/// Under the fill figure.
pub fn fill_more(outcome: &Outcome, units: UnitSystem) -> String {
    let fill = &outcome.fill;
    let volume = |litres| show(Dimension::Volume, litres, units);
    let brim = &volume(fill.capacity_l);
    let mass = &show(Dimension::Weight, fill.mass_kg, units);
    let deep = FillDeep {
        depth: &show(Dimension::Length, fill.depth_cm, units),
        parts: if outcome.boards.is_some() {
            "boards"
        } else {
            "pots"
        },
    };
    let holds = if fill.plants > 1 {
        FillHoldsEach {
            volume: &volume(fill.volume_l),
            brim,
            each: &volume(fill.per_plant_l),
            plants: &fill.plants.to_string(),
            mass,
        }
        .text()
    } else {
        FillHolds {
            volume: &volume(fill.volume_l),
            brim,
            mass,
        }
        .text()
    };
    let all = (fill.containers > 1).then(|| {
        FillAllContainers {
            containers: &fill.containers.to_string(),
            volume: &volume(fill.total_volume_l),
        }
        .text()
    });
    let rain = (outcome.water.rain_l > 0.0).then(|| fill_rain(&volume(outcome.water.rain_l)));
    let sentences: Vec<String> = [deep.text(), holds]
        .into_iter()
        .chain(rain)
        .chain(all)
        .collect();
    sentences.join(" ")
}

/// The harvest headline.
pub fn harvest_head(outcome: &Outcome) -> String {
    match (outcome.season.harvest_day, &outcome.calendar.harvest) {
        (Some(_), Some(written)) => date(written),
        _ => harvest_not_reached().to_owned(),
    }
}

/// Under the harvest headline.
pub fn harvest_more(outcome: &Outcome, units: UnitSystem) -> String {
    let season = &outcome.season;
    let head = &show(Dimension::Mass, season.head_g, units);
    match season.harvest_day {
        Some(day) => HarvestAfter {
            days: &day.to_string(),
            planted: &date(&outcome.calendar.transplanting),
            sown: &date(&outcome.calendar.seeding),
            head,
        }
        .text(),
        None => HarvestMissing {
            days: &season.days_followed.to_string(),
            head,
        }
        .text(),
    }
}

/// Under the figure of what is left.
pub fn left_more(outcome: &Outcome, units: UnitSystem) -> String {
    let season = &outcome.season;
    LeftUses {
        each: &show(Dimension::Volume, season.water_per_plant_l, units),
        use_per_mass: &show(Dimension::WaterUse, season.water_per_kg_l, units),
        gap: &show(Dimension::Length, season.gap_at_end_cm, units),
    }
    .text()
}

/// The one polite sentence for those who cannot see the figures change.
pub fn result_sentence(outcome: &Outcome, units: UnitSystem) -> String {
    ResultTold {
        volume: &show(Dimension::Volume, outcome.fill.volume_l, units),
        mark: &below_rim(outcome.fill.below_rim_cm, units),
        doses: &doses_line(outcome, units),
        harvest: &harvest_head(outcome),
        left: &show(Dimension::Volume, outcome.season.left_l, units),
    }
    .text()
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
    DayDated {
        day: &day.to_string(),
        date: &date(written),
    }
    .text()
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
    day.map_or_else(
        || rests_never().to_owned(),
        |day| rests_on_day(&day.to_string()),
    )
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
pub fn pipes_note(any_sound: bool, units: UnitSystem) -> String {
    let length = |cm| show(Dimension::Length, cm, units);
    if any_sound {
        PipesNoteSound {
            clear: &length(1.0),
            low: &length(3.0),
            high: &length(9.0),
        }
        .text()
    } else {
        pipes_note_none().to_owned()
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
    day.map_or_else(
        || nutrient_short().to_owned(),
        |day| nutrient_short_from(&day.to_string()),
    )
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
        Some(form) => TargetForm {
            element: target.nutrient,
            form,
        }
        .text(),
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
    share_in_per_cent(&share.round().to_string())
}

/// What one batch of a stock serves.
pub fn serves(containers: f64, heads: f64) -> String {
    StockServes {
        containers: &rounded(containers, 2),
        heads: &rounded(heads, 2),
    }
    .text()
}

/// Saturation indices in one line.
pub fn saturation_line(saturation: &Saturation) -> String {
    let one = |text: fn(&str) -> String, index: Option<f64>| {
        index.map(|index| text(&show(Dimension::Fine, index, UnitSystem::Metric)))
    };
    let lines: Vec<String> = [
        one(saturation_gypsum, saturation.gypsum),
        one(saturation_calcium_phosphate, saturation.brushite),
        one(saturation_lime, saturation.calcite),
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
    let conductivity = |ms_per_cm| show(Dimension::Conductivity, ms_per_cm, units);
    SolutionReadings {
        ec: &conductivity(solution.ec_ms_per_cm),
        reference: &reference(units),
        ec_at_temperature: &conductivity(solution.ec_at_temperature_ms_per_cm),
        temperature: &show(Dimension::Temperature, solution.temperature_c, units),
        ph: &fine(solution.ph),
        saturation: &saturation_line(&solution.saturation),
    }
    .text()
}

/// The bar at the foot of a phone.
pub fn glance(outcome: &Outcome, units: UnitSystem) -> String {
    format!(
        "{} · {} · {}: {}",
        below_rim(outcome.fill.below_rim_cm, units),
        doses_line(outcome, units),
        harvest(),
        harvest_head(outcome)
    )
}
