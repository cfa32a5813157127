//! The figures behind what is said of a trial, and what was checked.

use super::say::*;
use super::trial_result::{amount, between, named, p_is, p_value};
use super::{letter, measured, pct, rounded, symbol};
use crate::plan::UnitSystem;
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
    let mut text = mean_note_confidence(&pct(analysis.confidence_pct));
    if analysis.adjusted {
        text.push(' ');
        text += mean_note_adjusted();
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
            PairLess {
                larger: &letter(row.larger).to_string(),
                smaller: &letter(row.smaller).to_string(),
            }
            .text(),
            amount(of, row.difference, units),
            between(of, row.low, row.high, units),
            p_value(row.p),
        ]
    };
    analysis.pairs.iter().map(line).collect()
}

/// The analysis of variance.
pub fn variance_lines(of: Measure, analysis: &Analysis, units: UnitSystem) -> Vec<Vec<String>> {
    // Neither measure has an offset.
    let scale = measured(of).in_system(1.0, units);
    let square = |value: f64| rounded(value * scale * scale, 5);
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
            square(row.sum_of_squares),
            square(row.mean_square),
            row.f.map_or_else(String::new, |f| rounded(f, 4)),
            row.p.map_or_else(String::new, p_value),
        ]
    };
    analysis.table.iter().map(line).collect()
}

/// What was checked, and which method the conclusion rests on.
pub fn check_lines(of: Measure, analysis: &Analysis, units: UnitSystem) -> Vec<String> {
    let mut lines = Vec::new();
    let squared = match symbol(measured(of), units) {
        ratio if ratio.contains('/') => format!("({ratio})²"),
        symbol => format!("{symbol}²"),
    };
    lines.push(match of {
        Measure::HeadMass => check_lines_head_mass(&squared),
        Measure::WaterPerKg => check_lines_water_per_kg(&squared),
    });
    lines.push(match analysis.normality {
        Some(check) if check.holds => check_lines_normal(&p_is(check.p)),
        Some(check) => check_lines_not_normal(&p_is(check.p)),
        None => check_lines_normality_unknown().to_owned(),
    });
    lines.push(match (analysis.equal_spread, analysis.method) {
        (Some(check), _) if check.holds => check_lines_alike(&p_is(check.p)),
        (Some(check), Method::OwnSpreads) => check_lines_not_alike(&p_is(check.p)),
        (Some(check), Method::OneSpread) => check_lines_not_alike_in_blocks(&p_is(check.p)),
        (None, _) => check_lines_alike_unknown().to_owned(),
    });
    if let Some(welch) = &analysis.welch {
        lines.push(
            CheckLinesWelch {
                f: &rounded(welch.f, 4),
                between: &rounded(welch.between_freedom, 3),
                within: &rounded(welch.within_freedom, 3),
                p: &p_is(welch.p),
            }
            .text(),
        );
    }
    if let Some(spread) = &analysis.spread {
        lines.push(
            CheckLinesSpread {
                units: &pct(spread.units_pct),
                heads: &pct(spread.heads_pct),
            }
            .text(),
        );
    }
    let blocked = analysis
        .table
        .iter()
        .any(|row| row.source == Source::Blocks);
    lines.push(
        CheckLinesExplained {
            by: if blocked { "blocks" } else { "variants" },
            share: &pct(analysis.explained_pct),
            smallest: &amount(measured(of), analysis.detectable, units),
        }
        .text(),
    );
    lines
}
