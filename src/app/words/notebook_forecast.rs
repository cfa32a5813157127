//! What a crop under way comes to: the forecast bent to its readings, the top-up, the close.

use super::say::*;
use super::{chances_rows, label, show};
use crate::advice::notebook::{Closing, Learnt, NotebookOutcome, TopUp};
use crate::plan::{Dimension, UnitSystem, significant};

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
    format!("{} (next crop)", super::or_unnamed(name))
}

/// Button that puts the correction into the open plan.
pub fn correct(name: &str) -> String {
    format!(
        "Use this correction for the next plan: {}",
        super::or_unnamed(name)
    )
}

/// Progress.
pub fn weighing(seasons: usize) -> String {
    format!("{seasons} seasons weighed so far.")
}

/// Whole days.
fn days(count: f64) -> String {
    match format!("{count:.0}").as_str() {
        "1" => "1\u{a0}day".to_owned(),
        count => format!("{count}\u{a0}days"),
    }
}

/// What a closed crop came to.
pub fn closed(outcome: &NotebookOutcome, units: UnitSystem) -> String {
    match &outcome.closing {
        Some(closing) => format!(
            "This crop is closed. It took {} of fresh heads.",
            measured_figure(closing, units)
        ),
        None => "This crop is closed.".to_owned(),
    }
}

/// When the solution ends, beside the harvest.
pub fn pace(outcome: &NotebookOutcome) -> String {
    let begin = if outcome.readings == 0 {
        "By the plan alone"
    } else {
        "At this pace"
    };
    let Some(ends) = outcome.solution_ends_day else {
        return format!("{begin} the solution does not end.");
    };
    let after = match outcome.ends_after_harvest_days.map(f64::round) {
        None => "; the head mass you aim for is not reached in time".to_owned(),
        Some(after) if after > 0.0 => format!(", {} after harvest", days(after)),
        Some(after) if after < 0.0 => format!(", {} before harvest", days(-after)),
        Some(_) => ", on the day of harvest".to_owned(),
    };
    format!(
        "{begin} the solution ends on day\u{a0}{:.0}{after}.",
        ends.middle
    )
}

/// How often it lasts, and how much the readings leave.
pub fn weighed(outcome: &NotebookOutcome) -> Vec<String> {
    let seasons = outcome.chances.seasons;
    let mut lines = vec![format!(
        "It lasts to harvest in {} of 100 seasons{}.",
        outcome.chances.lasts_of_100,
        if outcome.readings == 0 {
            ""
        } else {
            " that agree with what you read"
        }
    )];
    if outcome.readings > 0 {
        let worth = outcome.effective_size;
        lines.push(if outcome.resampled {
            format!(
                "Few of {seasons} seasons of the plan agree with your readings: together they are worth {} equally likely ones. So {seasons} new ones were drawn that agree.",
                significant(worth, 2)
            )
        } else {
            format!(
                "Of {seasons} seasons of the plan, those that agree with your readings are worth {} equally likely ones.",
                significant(worth, 2)
            )
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
            format!("day {:.0} to {:.0}", band.low, band.high)
        })
    };
    rows.push(vec!["Solution ends".to_owned(), ends(before), ends(after)]);
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
    match (split(low), split(high)) {
        _ if low == high => low.to_owned(),
        (Some((short, unit)), Some((_, same))) if unit == same => format!("{short} to {high}"),
        _ => format!("{low} to {high}"),
    }
}

/// What to add, large.
pub fn top_up_figure(top_up: &TopUp, units: UnitSystem) -> String {
    if top_up.litres > 0.0 {
        format!("Add {}", show(Dimension::Volume, top_up.litres, units))
    } else {
        add_nothing().to_owned()
    }
}

/// What to add: strength, ceiling and why.
pub fn top_up_lines(top_up: &TopUp, units: UnitSystem) -> Vec<String> {
    let mut lines = Vec::new();
    if top_up.litres > 0.0 {
        lines.push(if top_up.mixture <= 0.0 {
            "To each container, as raw water: the solution ends strong enough.".to_owned()
        } else {
            format!(
                "To each container, mixed at {:.0}\u{a0}% of the plan's doses for each litre: EC {}.",
                top_up.mixture * 100.0,
                show(Dimension::Conductivity, top_up.ec_ms_per_cm, units)
            )
        });
    }
    lines.push(format!(
        "Never above {} below the rim. Air roots have formed down to there, and they drown when they are covered.",
        show(Dimension::Length, top_up.ceiling_below_rim_cm, units)
    ));
    if !top_up.enough {
        lines.push(format!(
            "{} would be needed to be sure. More may not go in now: let the level fall, read it, and add again.",
            show(Dimension::Volume, top_up.needed_l, units)
        ));
    }
    lines
}

/// What a crop measured, large.
pub fn measured_figure(closing: &Closing, units: UnitSystem) -> String {
    show(Dimension::WaterUse, closing.water_per_kg_l, units)
}

/// What that means.
pub fn measured_more(closing: &Closing, units: UnitSystem) -> String {
    format!(
        "Water for fresh heads, as measured: one container lost {}; {} heads weighed {} on average.",
        show(Dimension::Volume, closing.water_l, units),
        closing.heads,
        show(Dimension::Mass, closing.head_g, units)
    )
}

/// A factor that was taught.
pub fn learnt(learnt: &Learnt) -> String {
    format!(
        "{}: {} in this plan, {} by what you read; with 95\u{a0}% probability between {} and {}.",
        label(learnt.field),
        significant(learnt.was, 3),
        significant(learnt.now, 3),
        significant(learnt.low, 3),
        significant(learnt.high, 3)
    )
}
