//! The figures behind what is said of a trial, and what was checked.

use super::say::*;
use super::trial_result::{amount, between, named, p_is, p_value};
use super::{letter, measured, pct};
use crate::plan::{UnitSystem, significant};
use crate::trial::{Analysis, Measure, Method, PairRow, Source, TrialOutcome};

/// Columns of the means.
pub fn mean_heads() -> [&'static str; 6] {
    [
        mean_heads_1(),
        mean_heads_2(),
        mean_heads_3(),
        mean_heads_4(),
        mean_heads_5(),
        mean_heads_6(),
    ]
}
/// Columns of the comparisons.
pub fn pair_heads() -> [&'static str; 4] {
    [
        pair_heads_1(),
        pair_heads_2(),
        pair_heads_3(),
        pair_heads_4(),
    ]
}
/// Columns of the analysis of variance.
pub fn variance_heads() -> [&'static str; 6] {
    [
        variance_heads_1(),
        variance_heads_2(),
        variance_heads_3(),
        variance_heads_4(),
        variance_heads_5(),
        variance_heads_6(),
    ]
}

/// The table of means.
pub fn mean_lines(
    outcome: &TrialOutcome,
    of: Measure,
    analysis: &Analysis,
    units: UnitSystem,
) -> Vec<Vec<String>> {
    let of = measured(of);
    let line = |row: &crate::trial::MeanRow| {
        vec![
            named(outcome, row.treatment),
            amount(of, row.mean, units),
            between(of, row.low, row.high, units),
            row.units.to_string(),
            row.heads.to_string(),
            row.letters.clone(),
        ]
    };
    analysis.means.iter().map(line).collect()
}

/// Under the table of means.
pub fn mean_note(analysis: &Analysis) -> String {
    let mut text = format!(
        "Each interval holds the true mean with {} confidence.",
        pct(analysis.confidence_pct)
    );
    if analysis.adjusted {
        text.push_str(
            " Means are adjusted to all blocks alike, because containers are missing from some.",
        );
    }
    text
}

/// Under the table of comparisons.
pub fn pair_note(method: Method) -> &'static str {
    match method {
        Method::OneSpread => pair_note_one_spread(),
        Method::OwnSpreads => pair_note_own_spreads(),
    }
}

/// The table of comparisons.
pub fn pair_lines(of: Measure, analysis: &Analysis, units: UnitSystem) -> Vec<Vec<String>> {
    let of = measured(of);
    let line = |row: &PairRow| {
        vec![
            format!("{} less {}", letter(row.larger), letter(row.smaller)),
            amount(of, row.difference, units),
            between(of, row.low, row.high, units),
            p_value(row.p),
        ]
    };
    analysis.pairs.iter().map(line).collect()
}

/// The analysis of variance.
pub fn variance_lines(analysis: &Analysis) -> Vec<Vec<String>> {
    let line = |row: &crate::trial::TableRow| {
        let source = match row.source {
            Source::Blocks => variance_lines_blocks(),
            Source::Treatments => variance_lines_treatments(),
            Source::Units => variance_lines_units(),
            Source::Heads => variance_lines_heads(),
        };
        vec![
            source.to_owned(),
            row.freedom.to_string(),
            significant(row.sum_of_squares, 5),
            significant(row.mean_square, 5),
            row.f.map_or_else(String::new, |f| significant(f, 4)),
            row.p.map_or_else(String::new, p_value),
        ]
    };
    analysis.table.iter().map(line).collect()
}

/// What was checked, and which method the conclusion rests on.
pub fn check_lines(of: Measure, analysis: &Analysis, units: UnitSystem) -> Vec<String> {
    let mut lines = Vec::new();
    lines.push(
        match of {
            Measure::HeadMass => check_lines_head_mass(),
            Measure::WaterPerKg => check_lines_water_per_kg(),
        }
        .to_owned(),
    );
    lines.push(match analysis.normality {
        Some(check) if check.holds => format!(
            "What is left over scatters as chance does (Shapiro and Wilk, {}): the points below lie near the line.",
            p_is(check.p)
        ),
        Some(check) => format!(
            "What is left over does not scatter as chance does (Shapiro and Wilk, {}): look for a container that went wrong, such as the point far off the line. Take the result with care.",
            p_is(check.p)
        ),
        None => "There are too few containers to check how the figures scatter.".to_owned(),
    });
    lines.push(match (analysis.equal_spread, analysis.method) {
        (Some(check), _) if check.holds => format!(
            "The variants spread alike (Brown and Forsythe, {}).",
            p_is(check.p)
        ),
        (Some(check), Method::OwnSpreads) => format!(
            "The variants do not spread alike (Brown and Forsythe, {}), so Welch's analysis and the differences of Games and Howell are used, which allow for that.",
            p_is(check.p)
        ),
        (Some(check), Method::OneSpread) => format!(
            "The variants do not spread alike (Brown and Forsythe, {}). Within blocks there is no remedy for that: take the result with care.",
            p_is(check.p)
        ),
        (None, _) => "Whether the variants spread alike cannot be seen from so few containers.".to_owned(),
    });
    if let Some(welch) = &analysis.welch {
        lines.push(format!(
            "Welch's analysis, which needs no equal spread: F = {} with {} and {} degrees of freedom, {}.",
            significant(welch.f, 4),
            significant(welch.between_freedom, 3),
            significant(welch.within_freedom, 3),
            p_is(welch.p)
        ));
    }
    if let Some(spread) = &analysis.spread {
        lines.push(format!(
            "Spread from container to container {}, from head to head {}: what to plan the next trial with.",
            pct(spread.units_pct),
            pct(spread.heads_pct)
        ));
    }
    let blocked = analysis
        .table
        .iter()
        .any(|row| row.source == Source::Blocks);
    lines.push(format!(
        "{} explain {} of all variation between containers; the smallest difference that this trial shows reliably is {}.",
        if blocked {
            "Blocks and variants"
        } else {
            "Variants"
        },
        pct(analysis.explained_pct),
        amount(measured(of), analysis.detectable, units)
    ));
    lines
}
