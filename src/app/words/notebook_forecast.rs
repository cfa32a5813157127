//! What a crop under way comes to: the forecast bent to its readings, the top-up, the close.

use super::figures::{places, rounded, show};
use super::say::*;
use super::{chances_rows, label, or_unnamed};
use crate::advice::notebook::{Closing, Learnt, NotebookOutcome, TopUp};
use crate::plan::{Dimension, UnitSystem};

/// What stands in the picture, in the order of its marks.
pub fn level_key() -> [&'static str; 6] {
    [
        level_key_1(),
        level_key_2(),
        level_key_3(),
        level_key_4(),
        level_key_5(),
        level_key_6(),
    ]
}
/// Heads of the table.
pub fn forecast_heads() -> [&'static str; 3] {
    [forecast_heads_1(), forecast_heads_2(), forecast_heads_3()]
}
/// Name of the plan that this makes.
pub fn next_of(name: &str) -> String {
    next_crop_of(&or_unnamed(name))
}

/// Button that puts the correction into the open plan.
pub fn correct(name: &str) -> String {
    correct_plan(&or_unnamed(name))
}

/// Progress.
pub fn weighing(seasons: usize) -> String {
    seasons_weighed(&seasons.to_string())
}

/// The key of what a forecast goes by: the plan alone, or the readings too.
fn basis(outcome: &NotebookOutcome) -> &'static str {
    if outcome.readings == 0 {
        "plan"
    } else {
        "readings"
    }
}

/// What a closed crop came to.
pub fn closed(outcome: &NotebookOutcome, units: UnitSystem) -> String {
    match &outcome.closing {
        Some(closing) => crop_closed_with(&measured_figure(closing, units)),
        None => crop_closed().to_owned(),
    }
}

/// When the solution ends, beside the harvest.
pub fn pace(outcome: &NotebookOutcome) -> String {
    let basis = basis(outcome);
    let Some(ends) = outcome.solution_ends_day else {
        return pace_endless(basis);
    };
    let day = &places(ends.middle, 0);
    match outcome.ends_after_harvest_days.map(f64::round) {
        None => PaceNoHarvest { basis, day }.text(),
        Some(after) if after > 0.0 => PaceAfter {
            basis,
            day,
            days: &places(after, 0),
        }
        .text(),
        Some(after) if after < 0.0 => PaceBefore {
            basis,
            day,
            days: &places(-after, 0),
        }
        .text(),
        Some(_) => PaceSameDay { basis, day }.text(),
    }
}

/// How often it lasts, and how much the readings leave.
pub fn weighed(outcome: &NotebookOutcome) -> Vec<String> {
    let lasts = LastsInSeasons {
        basis: basis(outcome),
        lasts: &outcome.chances.lasts_of_100.to_string(),
    };
    let mut lines = vec![lasts.text()];
    if outcome.readings > 0 {
        let seasons = &outcome.chances.seasons.to_string();
        let worth = &rounded(outcome.effective_size, 2);
        lines.push(if outcome.resampled {
            SeasonsDrawnAnew { seasons, worth }.text()
        } else {
            SeasonsThatAgree { seasons, worth }.text()
        });
    }
    lines
}

/// The lines of the table: what, by the plan alone, after the readings.
pub fn forecast_rows(
    before: &NotebookOutcome,
    after: &NotebookOutcome,
    units: UnitSystem,
) -> Vec<Vec<String>> {
    let mut rows = Vec::new();
    let ends = |outcome: &NotebookOutcome| {
        outcome.solution_ends_day.map_or_else(String::new, |band| {
            DaysFromTo {
                low: &places(band.low, 0),
                high: &places(band.high, 0),
            }
            .text()
        })
    };
    rows.push(vec![solution_ends().to_owned(), ends(before), ends(after)]);
    let old = chances_rows(&before.chances, units);
    for (name, [low, _, high]) in chances_rows(&after.chances, units) {
        let was = old.iter().find(|row| row.0 == name);
        rows.push(vec![
            name.to_owned(),
            was.map_or_else(String::new, |(_, [low, _, high])| range(low, high)),
            range(&low, &high),
        ]);
    }
    rows
}

fn range(low: &str, high: &str) -> String {
    // Unit or year once.
    let split = |text| str::rsplit_once(text, [' ', '\u{a0}']);
    let low = match (split(low), split(high)) {
        _ if low == high => return low.to_owned(),
        (Some((short, unit)), Some((_, same))) if unit == same => short,
        _ => low,
    };
    LowToHigh { high, low }.text()
}

/// What to add, large.
pub fn top_up_figure(top_up: &TopUp, units: UnitSystem) -> String {
    if top_up.litres > 0.0 {
        top_up_add(&show(Dimension::Volume, top_up.litres, units))
    } else {
        add_nothing().to_owned()
    }
}

/// What to add: strength, ceiling and why.
pub fn top_up_lines(top_up: &TopUp, units: UnitSystem) -> Vec<String> {
    let mut lines = Vec::new();
    if top_up.litres > 0.0 {
        lines.push(if top_up.mixture <= 0.0 {
            top_up_raw_water().to_owned()
        } else {
            TopUpMixed {
                ec: &show(Dimension::Conductivity, top_up.ec_ms_per_cm, units),
                percent: &places(top_up.mixture * 100.0, 0),
            }
            .text()
        });
    }
    lines.push(top_up_ceiling(&show(
        Dimension::Length,
        top_up.ceiling_below_rim_cm,
        units,
    )));
    if !top_up.enough {
        lines.push(top_up_not_enough(&show(
            Dimension::Volume,
            top_up.needed_l,
            units,
        )));
    }
    lines
}

/// What a crop measured, large.
pub fn measured_figure(closing: &Closing, units: UnitSystem) -> String {
    show(Dimension::WaterUse, closing.water_per_kg_l, units)
}

/// What that means.
pub fn measured_more(closing: &Closing, units: UnitSystem) -> String {
    WaterMeasured {
        heads: &closing.heads.to_string(),
        mass: &show(Dimension::Mass, closing.head_g, units),
        water: &show(Dimension::Volume, closing.water_l, units),
    }
    .text()
}

/// A factor that was taught.
pub fn learnt(learnt: &Learnt) -> String {
    FactorLearnt {
        factor: &label(learnt.field),
        was: &rounded(learnt.was, 3),
        now: &rounded(learnt.now, 3),
        low: &rounded(learnt.low, 3),
        high: &rounded(learnt.high, 3),
    }
    .text()
}
