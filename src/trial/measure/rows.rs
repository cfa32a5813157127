//! The rows of a report.

use std::cmp::Ordering;

use crate::science::statistics::{
    Anova, Line, Nested, Pair, StatisticsProblem, letters, mean, normal_quantile, sum_of_squares,
    t_quantile,
};

use super::super::check::Sound;
use super::super::report::{MeanRow, Method, PairRow, Residual, Source, TableRow, UnitValue};

pub(super) fn table_rows(table: &Anova, subsamples: Option<&Nested>) -> Vec<TableRow> {
    let tested = |source, line: &Line| TableRow {
        source,
        freedom: line.freedom,
        sum_of_squares: line.sum_of_squares,
        mean_square: line.mean_square,
        f: Some(line.f),
        p: Some(line.p),
    };
    let mut rows = Vec::new();
    rows.extend(
        table
            .blocks
            .as_ref()
            .map(|line| tested(Source::Blocks, line)),
    );
    rows.push(tested(Source::Treatments, &table.treatments));
    rows.push(TableRow {
        source: Source::Units,
        freedom: table.error_freedom,
        sum_of_squares: table.error_sum_of_squares,
        mean_square: table.error_mean_square,
        f: subsamples.map(|it| it.f),
        p: subsamples.map(|it| it.p),
    });
    rows.extend(subsamples.map(|it| TableRow {
        source: Source::Heads,
        freedom: it.freedom,
        sum_of_squares: it.sum_of_squares,
        mean_square: it.mean_square,
        f: None,
        p: None,
    }));
    rows
}

/// The means that a method compares.
fn compared(table: &Anova, groups: &[Vec<f64>], method: Method) -> Vec<f64> {
    match method {
        Method::OneSpread => table.means.iter().map(|it| it.mean).collect(),
        Method::OwnSpreads => groups
            .iter()
            .map(|own| mean(own).unwrap_or_default())
            .collect(),
    }
}

pub(super) fn mean_rows(
    sound: &Sound,
    table: &Anova,
    groups: &[Vec<f64>],
    own: &[(usize, &UnitValue)],
    pairs: &[Pair],
    method: Method,
    kept: &[usize],
) -> Result<Vec<MeanRow>, StatisticsProblem> {
    let means = compared(table, groups, method);
    let letters = letters(&means, pairs);
    let mut rows = Vec::new();
    for (t, &treatment) in kept.iter().enumerate() {
        let count = groups[t].len() as f64;
        let variance = sum_of_squares(&groups[t]) / (count - 1.0);
        let half = match method {
            Method::OneSpread => table.half_width(t, 1.0 - sound.alpha)?,
            Method::OwnSpreads => t_quantile(sound.alpha, count - 1.0)? * (variance / count).sqrt(),
        };
        rows.push(MeanRow {
            treatment,
            name: sound.names[treatment].clone(),
            units: groups[t].len(),
            heads: own
                .iter()
                .filter(|(place, _)| *place == t)
                .map(|(_, unit)| unit.heads_g.len())
                .sum(),
            mean: means[t],
            low: means[t] - half,
            high: means[t] + half,
            deviation: Some(variance.sqrt()),
            letters: letters[t].iter().map(|&letter| named(letter)).collect(),
        });
    }
    Ok(rows)
}

/// a to z, then A to Z; twelve treatments never need more.
fn named(letter: usize) -> char {
    let all = (b'a'..=b'z').chain(b'A'..=b'Z');
    all.map(char::from).nth(letter).unwrap_or('*')
}

pub(super) fn pair_rows(
    pairs: &[Pair],
    table: &Anova,
    groups: &[Vec<f64>],
    method: Method,
    kept: &[usize],
) -> Vec<PairRow> {
    let means = compared(table, groups, method);
    let mut rows: Vec<PairRow> = pairs
        .iter()
        .map(|it| {
            let (larger, smaller) = if it.difference < 0.0 {
                (it.second, it.first)
            } else {
                (it.first, it.second)
            };
            let difference = it.difference.abs();
            PairRow {
                larger: kept[larger],
                smaller: kept[smaller],
                difference,
                low: difference - it.half_width,
                high: difference + it.half_width,
                difference_pct: 100.0 * difference / means[smaller],
                p: it.p,
                differ: it.differ(),
            }
        })
        .collect();
    rows.sort_by(|a, b| {
        b.difference
            .partial_cmp(&a.difference)
            .unwrap_or(Ordering::Equal)
    });
    rows
}

pub(super) fn residuals(
    own: &[(usize, &UnitValue)],
    table: &Anova,
) -> Result<Vec<Residual>, StatisticsProblem> {
    let mut rows: Vec<Residual> = own
        .iter()
        .zip(table.fitted.iter().zip(&table.residuals))
        .map(|((_, unit), (&fitted, &residual))| Residual {
            unit: unit.unit.clone(),
            fitted,
            residual,
            score: 0.0,
        })
        .collect();
    rows.sort_by(|a, b| a.residual.total_cmp(&b.residual));
    let count = rows.len() as f64;
    for (rank, row) in (1_u32..).zip(&mut rows) {
        row.score = normal_quantile((f64::from(rank) - 0.375) / (count + 0.25))?;
    }
    Ok(rows)
}
