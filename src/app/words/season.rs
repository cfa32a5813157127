//! The season seen: drawing, curves, table, and what mends a failing day.

use super::figures::show;
use super::say::*;
use crate::advice::{CurveOf, Outcome, RootsDay, RootsFailureKind};
use crate::app::drawing::Mark;
use crate::plan::{Dimension, UnitSystem};

/// Heads of the season's table.
pub fn season_heads() -> [&'static str; 6] {
    [
        season_heads_1(),
        season_heads_2(),
        season_heads_3(),
        season_heads_4(),
        season_heads_5(),
        season_heads_6(),
    ]
}

/// A day of the slider.
pub fn day(day: usize) -> String {
    format!("Day {day}")
}

/// Beside the drawing.
pub fn mark(mark: Mark) -> &'static str {
    match mark {
        Mark::Fill => mark_fill(),
        Mark::Air => mark_air(),
        Mark::NeverAbove => mark_never_above(),
    }
}

/// Name of a curve.
pub fn curve(of: CurveOf) -> &'static str {
    match of {
        CurveOf::Level => curve_level(),
        CurveOf::Head => curve_head(),
        CurveOf::Conductivity => curve_conductivity(),
    }
}

/// The bar that shows the scale, mm, and its words, for a container of half a width.
pub fn scale_bar(half_width_mm: f64, units: UnitSystem) -> (f64, &'static str) {
    match (units, half_width_mm > 300.0) {
        (UnitSystem::Metric, false) => (50.0, "5\u{a0}cm"),
        (UnitSystem::Metric, true) => (200.0, "20\u{a0}cm"),
        (UnitSystem::UsCustomary, false) => (50.8, "2\u{a0}in"),
        (UnitSystem::UsCustomary, true) => (203.2, "8\u{a0}in"),
    }
}

/// What the drawing shows, a sentence for each day.
pub fn drawing_sentences(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    let days = outcome.season.days.iter().zip(&outcome.roots.days);
    days.map(|(day, roots)| {
        format!(
            "Day {}: solution {} deep, moist air gap {}, heads of about {}, EC {}. {}",
            day.day,
            show(Dimension::Length, day.level_cm, units),
            show(Dimension::Length, day.gap_cm, units),
            show(Dimension::Mass, day.head_g, units),
            show(Dimension::Conductivity, day.ec_ms_per_cm, units),
            standing(roots, units)
        )
    })
    .collect()
}

/// How pots and roots touch the solution.
fn standing(roots: &RootsDay, units: UnitSystem) -> String {
    let length = |cm| show(Dimension::Length, cm, units);
    match (roots.contact, roots.reached) {
        (true, false) => {
            "The pots stand in the solution; their roots have not come out yet.".to_owned()
        }
        (true, true) => format!(
            "The pots stand in the solution; water roots reach {} below them.",
            length(roots.water_roots_cm)
        ),
        (false, true) => format!(
            "The pots hang above the solution; air roots span {}, water roots reach {} deep.",
            length(roots.air_roots_cm),
            length(roots.water_roots_cm)
        ),
        (false, false) => {
            "Neither pots nor roots touch the solution: the plants dry out.".to_owned()
        }
    }
}

/// The first day that fails, and how.
pub fn failing_day(day: usize, kind: Option<RootsFailureKind>) -> String {
    let how = match kind {
        Some(RootsFailureKind::RootsHang) => "the solution falls away from the roots",
        _ => "the pots lose the solution before roots reach it",
    };
    format!("Day {day}: {how}")
}

/// After a mend.
pub fn mended(change: &str) -> String {
    format!("Changed: {change}.")
}
