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
    season_day(&day.to_string())
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
pub fn scale_bar(half_width_mm: f64, units: UnitSystem) -> (f64, String) {
    let mm = match (units, half_width_mm > 300.0) {
        (UnitSystem::Metric, false) => 50.0,
        (UnitSystem::Metric, true) => 200.0,
        (UnitSystem::UsCustomary, false) => 50.8,
        (UnitSystem::UsCustomary, true) => 203.2,
    };
    (mm, show(Dimension::Length, mm / 10.0, units))
}

/// What the drawing shows, a sentence for each day.
pub fn drawing_sentences(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    let days = outcome.season.days.iter().zip(&outcome.roots.days);
    days.map(|(day, roots)| {
        let drawn = DrawnDay {
            day: &day.day.to_string(),
            level: &show(Dimension::Length, day.level_cm, units),
            gap: &show(Dimension::Length, day.gap_cm, units),
            head: &show(Dimension::Mass, day.head_g, units),
            ec: &show(Dimension::Conductivity, day.ec_ms_per_cm, units),
        };
        [drawn.text(), standing(roots, units)].join(" ")
    })
    .collect()
}

/// How pots and roots touch the solution.
fn standing(roots: &RootsDay, units: UnitSystem) -> String {
    let length = |cm| show(Dimension::Length, cm, units);
    match (roots.contact, roots.reached) {
        (true, false) => standing_no_roots().to_owned(),
        (true, true) => standing_in_solution(&length(roots.water_roots_cm)),
        (false, true) => StandingAbove {
            air: &length(roots.air_roots_cm),
            water: &length(roots.water_roots_cm),
        }
        .text(),
        (false, false) => standing_dry().to_owned(),
    }
}

/// The first day that fails, and how.
pub fn failing_day(day: usize, kind: Option<RootsFailureKind>) -> String {
    let day = day.to_string();
    match kind {
        Some(RootsFailureKind::RootsHang) => failing_roots(&day),
        _ => failing_pots(&day),
    }
}

/// After a mend, with the figures as they are then.
pub fn mended(change: &str, figures: &str) -> String {
    ChangeMade { change, figures }.text()
}
