//! What the records of a trial allow to be said, in words that a class understands.

use super::say::*;
use super::{pct, variant_of};
use crate::plan::{Dimension, UnitSystem, significant};
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
    let text = significant(of.in_system(value, units), 3).replace('-', "−");
    format!("{text}\u{a0}{}", of.symbol(units))
}

pub(super) fn between(of: Dimension, low: f64, high: f64, units: UnitSystem) -> String {
    format!("{} and {}", amount(of, low, units), amount(of, high, units))
}

/// A chance as a share of such trials.
fn chance(p: f64) -> String {
    if p < 0.001 {
        "less than 1 in 1000".to_owned()
    } else if p < 0.1 {
        format!("about 1 in {}", significant(1.0 / p, 2))
    } else {
        format!("about {} in 100", significant(100.0 * p, 2))
    }
}

/// A chance as statisticians write it.
pub(super) fn p_value(p: f64) -> String {
    if p < 0.0001 {
        "< 0.0001".to_owned()
    } else {
        significant(p, 2)
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
    let by = amount(measured(of), pair.difference, units);
    let range = between(measured(of), pair.low, pair.high, units);
    let more = pct(pair.difference_pct);
    match of {
        Measure::HeadMass => format!(
            "{larger} brought heavier heads than {smaller}: by {by} ({more}); with {sure} confidence the true difference lies between {range}."
        ),
        Measure::WaterPerKg => format!(
            "{larger} used more water for the same mass than {smaller}: by {by} ({more}); with {sure} confidence the true difference lies between {range}."
        ),
    }
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
    let stood = naive
        .units
        .map_or_else(String::new, |units| format!(" in {units} containers"));
    format!(
        "A test that took each of the {} heads{stood} for a replicate would claim F = {} with {} and {} degrees of freedom, {}. That would be a lie: these heads are not independent of one another.",
        naive.heads,
        significant(naive.f, 3),
        naive.between_freedom,
        naive.within_freedom,
        p_is(naive.p),
    )
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
            lines.push(format!(
                "How sure: were all variants alike, means as far apart as these would come up in {} of such trials.",
                chance(*p)
            ));
        }
        Conclusion::DiffersSomewhere { p } => lines.push(format!(
            "The variants do not all do the same, but no two of them can be named: were all alike, means as far apart would come up in {} of such trials.",
            chance(*p)
        )),
        Conclusion::CannotBeTold { p, detectable, half_width } => {
            lines.push(format!(
                "No difference can be told. That does not mean that the variants are alike: means as far apart come up in {} of such trials by luck alone.",
                chance(*p)
            ));
            lines.push(format!(
                "A trial of this size and spread finds a difference of {} or more in {} of 100 cases and easily misses smaller ones; a difference here is uncertain by {} either way.",
                amount(of, *detectable, units),
                significant(outcome.needed.power_pct, 2),
                amount(of, *half_width, units)
            ));
        }
        Conclusion::NotAllowed { reason, naive } => {
            lines.push(refusal(*reason).to_owned());
            lines.extend(naive.as_ref().map(naive_line));
        }
    }
    for left in &report.left_out {
        if report.analysis.is_some() {
            lines.push(format!(
                "{} was left out: {} container with a figure is too few.",
                named(outcome, left.treatment),
                left.units
            ));
        }
    }
    lines
}

/// Name of the picture of all figures.
pub fn dots(of: Measure) -> String {
    format!("{}: every container and its mean", measure(of))
}

/// Explains that picture.
pub fn dots_note(of: Measure) -> &'static str {
    match of {
        Measure::HeadMass => dots_note_head_mass(),
        Measure::WaterPerKg => dots_note_water_per_kg(),
    }
}
