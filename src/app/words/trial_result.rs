//! What the records of a trial allow to be said, in words that a class understands.

use super::say::*;
use super::{pct, rounded, symbol, variant_of};
use crate::plan::{Dimension, UnitSystem};
use crate::trial::{Conclusion, Measure, MeasureReport, Naive, PairRow, Refusal, TrialOutcome};

/// Name of a measure.
pub fn measure(measure: Measure) -> &'static str {
    match measure {
        Measure::HeadMass => measure_head_mass(),
        Measure::WaterPerKg => measure_water_per_kg(),
    }
}

/// Name of the table of means.
pub fn means_of(of: Measure) -> &'static str {
    match of {
        Measure::HeadMass => means_of_head_mass(),
        Measure::WaterPerKg => means_of_water_per_kg(),
    }
}

/// Name of the table of comparisons.
pub fn pairs_of(of: Measure) -> &'static str {
    match of {
        Measure::HeadMass => pairs_of_head_mass(),
        Measure::WaterPerKg => pairs_of_water_per_kg(),
    }
}

/// The kind of quantity that a measure is.
pub const fn measured(measure: Measure) -> Dimension {
    match measure {
        Measure::HeadMass => Dimension::Mass,
        Measure::WaterPerKg => Dimension::WaterUse,
    }
}

/// A figure to three digits: rounder ones, good for a jug or a scale, would hide what is compared.
pub(super) fn amount(of: Dimension, value: f64, units: UnitSystem) -> String {
    let text = rounded(of.in_system(value, units), 3).replace('-', "−");
    format!("{text}\u{a0}{}", symbol(of, units))
}

pub(super) fn between(of: Dimension, low: f64, high: f64, units: UnitSystem) -> String {
    BetweenAmounts {
        low: &amount(of, low, units),
        high: &amount(of, high, units),
    }
    .text()
}

/// A chance as a share of such trials.
fn chance(p: f64) -> String {
    if p < 0.001 {
        share_tiny().to_owned()
    } else if p < 0.1 {
        share_one_in(&rounded(1.0 / p, 2))
    } else {
        share_in_hundred(&rounded(100.0 * p, 2))
    }
}

/// A chance as statisticians write it.
pub(super) fn p_value(p: f64) -> String {
    if p < 0.0001 {
        format!("< {}", number(0.0001))
    } else {
        rounded(p, 2)
    }
}

/// The same in a sentence.
pub(super) fn p_is(p: f64) -> String {
    let value = p_value(p);
    if value.starts_with('<') {
        format!("P {value}")
    } else {
        format!("P = {value}")
    }
}

pub(super) fn named(outcome: &TrialOutcome, treatment: usize) -> String {
    let name = outcome.treatments.get(treatment);
    variant_of(treatment, name.map_or("", |it| it.name.as_str()))
}

fn pair_line(
    outcome: &TrialOutcome,
    report: &MeasureReport,
    pair: &PairRow,
    units: UnitSystem,
) -> String {
    let of = report.measure;
    let sure = report.analysis.as_ref().map_or(0.0, |it| it.confidence_pct);
    let sure = pct(sure);
    let (larger, smaller) = (named(outcome, pair.larger), named(outcome, pair.smaller));
    let shown = |value: f64| amount(measured(of), value, units);
    PairLine {
        measure: match of {
            Measure::HeadMass => "mass",
            Measure::WaterPerKg => "water",
        },
        larger: &larger,
        smaller: &smaller,
        by: &shown(pair.difference),
        more: &pct(pair.difference_pct),
        sure: &sure,
        low: &shown(pair.low),
        high: &shown(pair.high),
    }
    .text()
}

fn refusal(reason: Refusal) -> &'static str {
    match reason {
        Refusal::NoRecords => nothing_yet(),
        Refusal::OneUnitEach => refusal_one_unit_each(),
        Refusal::HeadsWithoutUnit => refusal_heads_without_unit(),
        Refusal::OneTreatment => refusal_one_treatment(),
        Refusal::NothingLeftForError => refusal_nothing_left_for_error(),
        Refusal::NotConnected => refusal_not_connected(),
        Refusal::NoSpread => refusal_no_spread(),
        Refusal::BeyondMethod => refusal_beyond_method(),
    }
}

fn naive_line(naive: &Naive) -> String {
    let heads = naive.heads.to_string();
    let between = naive.between_freedom.to_string();
    let within = naive.within_freedom.to_string();
    let (f, p) = (rounded(naive.f, 3), p_is(naive.p));
    match naive.units {
        Some(units) => NaiveInContainers {
            heads: &heads,
            containers: &units.to_string(),
            f: &f,
            between: &between,
            within: &within,
            p: &p,
        }
        .text(),
        None => NaiveWithoutContainers {
            heads: &heads,
            f: &f,
            between: &between,
            within: &within,
            p: &p,
        }
        .text(),
    }
}

/// What may be said of one measure: what differs, by how much, how sure.
pub fn conclusion(
    outcome: &TrialOutcome,
    report: &MeasureReport,
    units: UnitSystem,
) -> Vec<String> {
    let of = measured(report.measure);
    let mut lines = Vec::new();
    match &report.conclusion {
        Conclusion::Differs { p, pairs } => {
            lines.extend(
                pairs
                    .iter()
                    .map(|pair| pair_line(outcome, report, pair, units)),
            );
            lines.push(how_sure(&chance(*p)));
        }
        Conclusion::DiffersSomewhere { p } => lines.push(differs_somewhere(&chance(*p))),
        Conclusion::CannotBeTold {
            p,
            detectable,
            half_width,
        } => {
            lines.push(cannot_be_told(&chance(*p)));
            lines.push(
                TrialFinds {
                    detectable: &amount(of, *detectable, units),
                    cases: &rounded(outcome.needed.power_pct, 2),
                    half_width: &amount(of, *half_width, units),
                }
                .text(),
            );
        }
        Conclusion::NotAllowed { reason, naive } => {
            lines.push(refusal(*reason).to_owned());
            lines.extend(naive.as_ref().map(naive_line));
        }
    }
    for left in &report.left_out {
        if report.analysis.is_some() {
            lines.push(
                VariantLeftOut {
                    variant: &named(outcome, left.treatment),
                    containers: &left.units.to_string(),
                }
                .text(),
            );
        }
    }
    lines
}

/// Name of the picture of all figures.
pub fn dots(of: Measure) -> String {
    dots_of(measure(of))
}

/// Explains that picture.
pub fn dots_note(of: Measure) -> &'static str {
    match of {
        Measure::HeadMass => dots_note_head_mass(),
        Measure::WaterPerKg => dots_note_water_per_kg(),
    }
}
