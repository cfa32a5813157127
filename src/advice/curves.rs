//! The season as curves to be drawn: each from nothing at its foot to a round figure at its top.

use super::outcome::SeasonOutcome;
use crate::plan::{Dimension, UnitSystem};

/// What a curve shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CurveOf {
    /// Depth of the solution.
    Level,
    /// Mean fresh mass of a head.
    Head,
    /// Electrical conductivity.
    Conductivity,
}

/// One curve.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// What.
    pub of: CurveOf,
    /// The kind of quantity.
    pub dimension: Dimension,
    /// The value in the middle and at the top of the scale, as saved: round in the reader's unit.
    pub ticks: [f64; 2],
    /// Day by day: the value, as saved, and its share of the scale's top, 0 to 1.
    pub days: Vec<(f64, f64)>,
}

/// The three curves of a season, their scales round in a system of units.
///
/// ```
/// use slackwater::{advice::curves, plan::{Example, UnitSystem}, solve};
/// let outcome = solve(&Example::Bottle.plan()).expect("a ready plan is sound");
/// let [level, ..] = curves(&outcome.season, UnitSystem::Metric);
/// assert_eq!(level.ticks, [15.0, 30.0]);
/// ```
pub fn curves(season: &SeasonOutcome, units: UnitSystem) -> [Curve; 3] {
    let curve = |of, dimension: Dimension, values: Vec<f64>| {
        let most = values.iter().copied().fold(0.0, f64::max);
        let half = round_up(dimension.in_system(most, units) / 2.0);
        let top = dimension.saved(half * 2.0, units);
        Curve {
            of,
            dimension,
            ticks: [dimension.saved(half, units), top],
            days: values
                .into_iter()
                .map(|value| (value, value / top))
                .collect(),
        }
    };
    let days = &season.days;
    [
        curve(
            CurveOf::Level,
            Dimension::Length,
            days.iter().map(|day| day.level_cm).collect(),
        ),
        curve(
            CurveOf::Head,
            Dimension::Mass,
            days.iter().map(|day| day.head_g).collect(),
        ),
        curve(
            CurveOf::Conductivity,
            Dimension::Conductivity,
            days.iter().map(|day| day.ec_ms_per_cm).collect(),
        ),
    ]
}

/// The least of a few round figures times a power of ten that is not below a value; 1 for nothing.
pub(super) fn round_up(value: f64) -> f64 {
    const STEPS: [f64; 10] = [1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0];
    if !(value.is_finite() && value > 0.0) {
        return 1.0;
    }
    let power = libm::pow(10.0, libm::log10(value).floor());
    STEPS
        .into_iter()
        .map(|step| step * power)
        .find(|&step| step >= value)
        .unwrap_or(power * 10.0)
}

/// Days to name under the curves: whole weeks, at most eight of them, from planting on.
///
/// ```
/// assert_eq!(slackwater::advice::day_ticks(30), [0, 7, 14, 21, 28]);
/// ```
pub fn day_ticks(last: usize) -> Vec<usize> {
    const MOST: usize = 7;
    let mut step = 7;
    while last / step > MOST {
        step *= 2;
    }
    (0..=last).step_by(step).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::advice::solve;
    use crate::catalog::Keyed;
    use crate::plan::Example;

    #[test]
    fn a_scale_holds_its_curve_and_is_at_least_half_used() {
        for &example in Example::ALL {
            let outcome = solve(&example.plan()).expect("a ready plan is sound");
            for units in [UnitSystem::Metric, UnitSystem::UsCustomary] {
                for curve in curves(&outcome.season, units) {
                    assert_eq!(curve.days.len(), outcome.season.days.len());
                    let most = curve.days.iter().map(|day| day.1).fold(0.0, f64::max);
                    assert!((0.5..=1.0).contains(&most), "{:?}: {most}", curve.of);
                    for (value, share) in &curve.days {
                        assert!((value - share * curve.ticks[1]).abs() < 1e-9);
                    }
                }
            }
        }
    }

    #[test]
    fn scales_end_at_round_figures() {
        for (value, round) in [
            (0.0, 1.0),
            (1.0, 1.0),
            (1.01, 1.5),
            (5.3, 6.0),
            (9.1, 10.0),
            (103.0, 150.0),
            (0.07, 0.08),
        ] {
            assert!((round_up(value) - round).abs() < 1e-12, "{value}");
        }
        assert!((round_up(f64::NAN) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn ticks_are_weeks_and_few() {
        assert_eq!(day_ticks(0), [0]);
        assert_eq!(day_ticks(38), [0, 7, 14, 21, 28, 35]);
        assert_eq!(day_ticks(120), [0, 28, 56, 84, 112]);
        assert!((0..400).all(|last| day_ticks(last).len() <= 8));
    }
}
