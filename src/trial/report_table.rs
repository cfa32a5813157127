//! What the records allow to be said, as one table for a spreadsheet.

use super::TrialOutcome;
use super::report::{Analysis, Measure, MeasureReport, Source};
use super::table::quoted;
use crate::plan::{Dimension, UnitSystem};

/// Headings of the table. `row` says what a line is: `mean`, `difference` or `variance`.
const HEADINGS: [&str; 18] = [
    "measure",
    "unit",
    "row",
    "treatment",
    "less",
    "containers",
    "heads",
    "mean",
    "deviation",
    "low",
    "high",
    "letters",
    "percent",
    "freedom",
    "sum_of_squares",
    "mean_square",
    "f",
    "p",
];

/// Means with their intervals and letters, differences of all pairs, and the analysis of variance of
/// every measure that could be judged, as CSV (RFC 4180); figures in the units of a system, with a
/// point, every digit that they have. Headings are keys and belong to no language.
pub fn report_table(outcome: &TrialOutcome, units: UnitSystem) -> String {
    let mut out = HEADINGS.join(",");
    out.push('\n');
    for report in &outcome.reports {
        if let Some(analysis) = &report.analysis {
            for line in lines(report, analysis, units) {
                out.push_str(&line.join(","));
                out.push('\n');
            }
        }
    }
    out
}

type Line = [String; HEADINGS.len()];

fn lines(report: &MeasureReport, analysis: &Analysis, units: UnitSystem) -> Vec<Line> {
    let (measure, dimension) = match report.measure {
        Measure::HeadMass => ("head_mass", Dimension::Mass),
        Measure::WaterPerKg => ("water_per_kg", Dimension::WaterUse),
    };
    // Neither measure has an offset, so that differences scale as the figures do.
    let scale = dimension.in_system(1.0, units);
    let figure = |value: f64| (value * scale).to_string();
    let square = |value: f64| (value * scale * scale).to_string();
    let maybe = |value: Option<f64>| value.map_or_else(String::new, |value| value.to_string());
    let name = |treatment: usize| {
        let found = analysis.means.iter().find(|it| it.treatment == treatment);
        found.map_or_else(String::new, |it| quoted(&it.name))
    };
    let line = |row: &str, cells: &[(&str, String)]| -> Line {
        HEADINGS.map(|heading| match heading {
            "measure" => measure.to_owned(),
            "unit" => dimension.symbol(units).to_owned(),
            "row" => row.to_owned(),
            _ => {
                let cell = cells.iter().find(|(of, _)| *of == heading);
                cell.map_or_else(String::new, |(_, text)| text.clone())
            }
        })
    };
    let means = analysis.means.iter().map(|it| {
        line(
            "mean",
            &[
                ("treatment", quoted(&it.name)),
                ("containers", it.units.to_string()),
                ("heads", it.heads.to_string()),
                ("mean", figure(it.mean)),
                ("deviation", it.deviation.map_or_else(String::new, &figure)),
                ("low", figure(it.low)),
                ("high", figure(it.high)),
                ("letters", it.letters.clone()),
            ],
        )
    });
    let differences = analysis.pairs.iter().map(|it| {
        line(
            "difference",
            &[
                ("treatment", name(it.larger)),
                ("less", name(it.smaller)),
                ("mean", figure(it.difference)),
                ("low", figure(it.low)),
                ("high", figure(it.high)),
                ("percent", it.difference_pct.to_string()),
                ("p", it.p.to_string()),
            ],
        )
    });
    let variance = analysis.table.iter().map(|it| {
        let source = match it.source {
            Source::Blocks => "blocks",
            Source::Treatments => "treatments",
            Source::Units => "units",
            Source::Heads => "heads",
        };
        line(
            "variance",
            &[
                ("treatment", source.to_owned()),
                ("freedom", it.freedom.to_string()),
                ("sum_of_squares", square(it.sum_of_squares)),
                ("mean_square", square(it.mean_square)),
                ("f", maybe(it.f)),
                ("p", maybe(it.p)),
            ],
        )
    });
    means.chain(differences).chain(variance).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::trial::{example, solve_trial};

    /// Rows of one kind, as numbers where they are.
    fn rows(table: &str, row: &str) -> Vec<Vec<String>> {
        let cells = |line: &str| line.split(',').map(str::to_owned).collect::<Vec<_>>();
        let all = table.lines().skip(1).map(cells);
        all.filter(|cells| cells[2] == row).collect()
    }

    fn number(cell: &str) -> f64 {
        cell.parse().expect("a number")
    }

    #[test]
    fn every_mean_difference_and_line_of_variance_is_told() {
        let outcome = solve_trial(&example()).expect("sound");
        let table = report_table(&outcome, UnitSystem::Metric);
        let width = HEADINGS.len();
        assert!(table.lines().all(|line| line.split(',').count() == width));
        let analyses: Vec<_> = outcome
            .reports
            .iter()
            .filter_map(|report| report.analysis.as_ref())
            .collect();
        assert_eq!(analyses.len(), 2, "both measures of the example are judged");
        let count = |of: fn(&Analysis) -> usize| analyses.iter().map(|it| of(it)).sum::<usize>();
        assert_eq!(rows(&table, "mean").len(), count(|it| it.means.len()));
        assert_eq!(rows(&table, "difference").len(), count(|it| it.pairs.len()));
        assert_eq!(rows(&table, "variance").len(), count(|it| it.table.len()));
        // Every sum of squares over its freedom is its mean square: what the words mean.
        for row in rows(&table, "variance") {
            let (freedom, sum, mean) = (number(&row[13]), number(&row[14]), number(&row[15]));
            assert!((sum / freedom - mean).abs() <= 1e-12 * mean, "{row:?}");
        }
    }

    #[test]
    fn other_units_scale_figures_once_and_squares_twice() {
        // Exact by definition (NIST SP 811, appendix B): 28.349523125 g an ounce.
        const OUNCE: f64 = 28.349_523_125;
        let outcome = solve_trial(&example()).expect("sound");
        let [metric, us] = [UnitSystem::Metric, UnitSystem::UsCustomary]
            .map(|units| report_table(&outcome, units));
        // The last bits of a few products.
        let close = |a: f64, b: f64| assert!((a - b).abs() <= 1e-12 * b.abs(), "{a} for {b}");
        for (a, b) in rows(&metric, "mean").iter().zip(rows(&us, "mean")) {
            if a[1] == "g" {
                assert_eq!(b[1], "oz");
                close(number(&b[7]), number(&a[7]) / OUNCE);
            }
        }
        for (a, b) in rows(&metric, "variance").iter().zip(rows(&us, "variance")) {
            if a[1] == "g" {
                close(number(&b[14]), number(&a[14]) / OUNCE / OUNCE);
                assert_eq!((&a[16], &a[17]), (&b[16], &b[17]), "F and P have no unit");
            }
        }
    }
}
