//! What the records of a trial allow to be said, in words that a class understands.

use super::{pct, variant_of};
use crate::plan::{Dimension, UnitSystem, significant};
use crate::trial::{Conclusion, Measure, MeasureReport, Naive, PairRow, Refusal, TrialOutcome};

/// Heading.
pub const SAID: &str = "What the records say";
/// Under the heading while nothing is recorded.
pub const NOTHING_YET: &str = "Nothing is recorded yet.";
/// Fold.
pub const VARIANCE: &str = "Analysis of variance and checks";
/// Name of a picture.
pub const RESIDUALS: &str = "What the analysis does not explain, in order";
/// Explains it.
pub const RESIDUALS_NOTE: &str = "What is left over in each container, in order. Near the line: as chance scatters. The outermost two bear the numbers of their containers.";
/// Explains the letters.
pub const LETTERS: &str = "Variants that share a small letter cannot be told apart.";

/// Name of a measure.
pub const fn measure(measure: Measure) -> &'static str {
    match measure {
        Measure::HeadMass => "Head mass",
        Measure::WaterPerKg => "Water per mass of heads",
    }
}

/// Name of the table of means.
pub const fn means_of(of: Measure) -> &'static str {
    match of {
        Measure::HeadMass => "Mean head mass",
        Measure::WaterPerKg => "Mean water per mass of heads",
    }
}

/// Name of the table of comparisons.
pub const fn pairs_of(of: Measure) -> &'static str {
    match of {
        Measure::HeadMass => "Head mass compared",
        Measure::WaterPerKg => "Water per mass compared",
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
        Refusal::NoRecords => NOTHING_YET,
        Refusal::OneUnitEach => {
            "Nothing can be said: all heads of a variant shared one container. Its heads are parts of one unit, not replicates, and what the container did cannot be told from what the variant did. Repeat the trial with at least two containers of each variant, better four."
        }
        Refusal::HeadsWithoutUnit => {
            "Nothing can be said: heads were recorded without the container that they stood in. Heads of one container are alike for reasons of their own, so they may not count one by one. Write down the container of each head."
        }
        Refusal::OneTreatment => {
            "Nothing can be compared yet: fewer than two variants have at least two containers with a figure."
        }
        Refusal::NothingLeftForError => {
            "Nothing can be said: containers and blocks leave nothing to judge the spread by. More containers of each variant are needed."
        }
        Refusal::NotConnected => {
            "Nothing can be said: so many containers are missing that variants and blocks cannot be taken apart."
        }
        Refusal::NoSpread => {
            "Nothing can be said: all containers treated alike agree to the last digit, as copied figures do."
        }
        Refusal::BeyondMethod => {
            "Nothing can be said: these figures lie beyond what the method covers."
        }
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
        Measure::HeadMass => {
            "Small dots: heads. Rings: means of containers. Bar: mean of the variant with its interval."
        }
        Measure::WaterPerKg => "Rings: containers. Bar: mean of the variant with its interval.",
    }
}
