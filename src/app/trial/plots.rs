//! Every figure of a trial as a dot, with means and intervals; and what the analysis leaves over.

use std::fmt::Write as _;

use crate::app::browser::dom::{Node, el};
use crate::app::words;
use crate::plan::UnitSystem;
use crate::trial::{Measure, MeasureReport, Residual, TrialOutcome};

/// Room for the scale, for a variant, and for the plot itself.
const LEFT: f64 = 64.0;
const COLUMN: f64 = 96.0;
const TOP: f64 = 12.0;
const HIGH: f64 = 220.0;
const FOOT: f64 = 28.0;

/// A round scale over a range: its lines.
fn ticks(low: f64, high: f64) -> Vec<f64> {
    let span = high - low;
    if !(span.is_finite() && span > 0.0) {
        return vec![low];
    }
    // A step of 1, 2 or 5 in its decade that gives up to six lines.
    let mut step = 1e-6;
    for factor in [2.0, 2.5, 2.0].into_iter().cycle().take(60) {
        if span / step <= 6.0 {
            break;
        }
        step *= factor;
    }
    let mut found = Vec::new();
    let mut at = (low / step).ceil() * step;
    while at <= high && found.len() < 10 {
        found.push(at);
        at += step;
    }
    found
}

fn circle(into: &mut String, x: f64, y: f64, radius: f64) {
    let both = 2.0 * radius;
    let left = x - radius;
    // Writing to a text cannot fail.
    let _ = write!(
        into,
        "M{left:.1} {y:.1}a{radius} {radius} 0 1 0 {both} 0a{radius} {radius} 0 1 0 -{both} 0"
    );
}

fn path(class: &'static str, d: String) -> Node {
    el("path").class(class).attr("d", d)
}

fn text(x: f64, y: f64, anchor: &'static str, content: String) -> Node {
    el("text")
        .attr("x", x)
        .attr("y", y)
        .attr("text-anchor", anchor)
        .child(content)
}

fn figure(told: String, width: f64, height: f64, parts: Vec<Node>, note: &'static str) -> Node {
    el("figure")
        .class("trial-plot")
        .child(
            el("svg")
                .attr("role", "img")
                .attr("aria-label", told)
                .attr("viewBox", format!("0 0 {width} {height}"))
                .attr("width", width)
                .attr("height", height)
                .child(parts),
        )
        .child(el("figcaption").child(note))
}

/// All figures of a measure beside one another, a column for each variant.
pub fn dots(outcome: &TrialOutcome, report: &MeasureReport, units: UnitSystem) -> Node {
    let of = words::measured(report.measure);
    let heads = report.measure == Measure::HeadMass;
    let means = report.analysis.iter().flat_map(|it| &it.means);
    let mut all: Vec<f64> = report.units.iter().map(|unit| unit.value).collect();
    if heads {
        all.extend(report.units.iter().flat_map(|unit| &unit.heads_g));
    }
    all.extend(means.clone().flat_map(|mean| [mean.low, mean.high]));
    if all.is_empty() {
        return Node::default();
    }
    let shown = |value: f64| of.in_system(value, units);
    let all = all.into_iter().map(shown);
    let low = all.clone().fold(f64::INFINITY, f64::min);
    let high = all.fold(f64::NEG_INFINITY, f64::max);
    let edge = (0.05 * (high - low)).max(1e-6 * high.abs()).max(1e-9);
    let (low, high) = (low - edge, high + edge);
    let y = |value: f64| TOP + HIGH * (high - value) / (high - low);
    let x = |treatment: usize| LEFT + COLUMN * (treatment as f64 + 0.5);
    let width = LEFT + COLUMN * outcome.treatments.len() as f64;

    let (mut lines, mut small, mut rings, mut bars) =
        (String::new(), String::new(), String::new(), String::new());
    let mut parts = Vec::new();
    for tick in ticks(low, high) {
        let _ = write!(lines, "M{LEFT} {:.1}H{width}", y(tick));
        let value = words::rounded(tick, 4);
        parts.push(text(LEFT - 6.0, y(tick) + 4.0, "end", value));
    }
    for (treatment, it) in outcome.treatments.iter().enumerate() {
        let own = report
            .units
            .iter()
            .filter(|unit| unit.treatment == treatment);
        let count = own.clone().count() as f64;
        for (place, unit) in own.enumerate() {
            let at = x(treatment) + (place as f64 - (count - 1.0) / 2.0) * (48.0 / count);
            circle(&mut rings, at, y(shown(unit.value)), 4.0);
            if heads {
                for &head in &unit.heads_g {
                    circle(&mut small, at, y(shown(head)), 1.5);
                }
            }
        }
        let name: String = it.name.chars().take(11).collect();
        let label = format!("{} {name}", words::letter(treatment));
        parts.push(text(x(treatment), TOP + HIGH + 20.0, "middle", label));
    }
    for mean in means {
        let (middle, side) = (x(mean.treatment), x(mean.treatment) + 36.0);
        let (mean, low, high) = (y(shown(mean.mean)), y(shown(mean.low)), y(shown(mean.high)));
        let _ = write!(
            bars,
            "M{:.1} {mean:.1}H{:.1}M{side} {low:.1}V{high:.1}M{:.1} {low:.1}h8M{:.1} {high:.1}h8",
            middle - 30.0,
            side + 6.0,
            side - 4.0,
            side - 4.0
        );
    }
    let drawn = [
        path("plot-line", lines),
        path("plot-dot", small),
        path("plot-ring", rings),
        path("plot-mean", bars),
        text(
            4.0,
            TOP + HIGH + 20.0,
            "start",
            words::symbol(of, units).to_owned(),
        ),
    ];
    let all = drawn.into_iter().chain(parts).collect();
    figure(
        words::dots(report.measure),
        width,
        TOP + HIGH + FOOT,
        all,
        words::dots_note(report.measure),
    )
}

/// What is left over, in order, against what chance would leave: near a line where all is well.
pub fn residuals(all: &[Residual]) -> Node {
    let most = |of: fn(&Residual) -> f64| all.iter().map(|it| of(it).abs()).fold(0.0, f64::max);
    let (wide, high) = (most(|it| it.score), most(|it| it.residual));
    if !(wide > 0.0 && high > 0.0) {
        return Node::default();
    }
    let (width, middle) = (280.0, TOP + HIGH / 2.0);
    let x = |score: f64| width / 2.0 + 0.45 * width * score / wide;
    let y = |residual: f64| middle - 0.45 * HIGH * residual / high;
    // Through the middle with the slope of least squares: scores and residuals both have mean zero.
    let square: f64 = all.iter().map(|it| it.score * it.score).sum();
    let slope = all.iter().map(|it| it.score * it.residual).sum::<f64>() / square;
    let mut rings = String::new();
    for it in all {
        circle(&mut rings, x(it.score), y(it.residual), 3.5);
    }
    let line = format!(
        "M{:.1} {:.1}L{:.1} {:.1}",
        x(-wide),
        y(-wide * slope),
        x(wide),
        y(wide * slope)
    );
    let farthest = [all.first(), all.last()].into_iter().flatten();
    let names = farthest.map(|it| {
        let at = y(it.residual) + if it.residual > 0.0 { 16.0 } else { -8.0 };
        text(x(it.score), at, "middle", it.unit.clone())
    });
    let mut parts = vec![
        path("plot-line", format!("M0 {middle}H{width}")),
        path("plot-mean", line),
        path("plot-ring", rings),
    ];
    parts.extend(names);
    figure(
        words::residuals().to_owned(),
        width,
        TOP + HIGH + TOP,
        parts,
        words::residuals_note(),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_scale_is_round_and_within_its_range() {
        assert_eq!(ticks(151.0, 254.0), [160.0, 180.0, 200.0, 220.0, 240.0]);
        assert_eq!(ticks(5.0, 5.0), [5.0]);
        for (low, high) in [(0.0, 1e6), (-3.0, 3.0), (11.98, 12.02), (0.1, 20_000.0)] {
            let found = ticks(low, high);
            assert!((2..=7).contains(&found.len()), "{found:?}");
            assert!(found.iter().all(|&at| at >= low && at <= high));
        }
    }
}
