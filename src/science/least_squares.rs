//! Small dense least squares with bounds: which amounts, none of them negative, come nearest to a
//! set of targets.

mod solve;

use solve::{Bounds, Columns};

/// Most rows, and most unknowns, that are accepted.
pub const MOST: usize = 24;

/// One target of a fit: coefficients times amounts should come to `target`.
///
/// All rows share the order of their coefficients. Numbers are plain because each row may have a
/// unit of its own; the caller keeps `coefficients · amounts` and `target` in the same one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row<'a> {
    /// What one unit of each unknown brings to this row; finite.
    pub coefficients: &'a [f64],
    /// What the row should come to; finite.
    pub target: f64,
    /// How much a miss of this row counts: the miss is multiplied by it before it is squared.
    /// Zero or more, finite; zero leaves the row out of the fit but still reports its miss.
    pub weight: f64,
}

/// The nearest amounts.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// Each unknown, from zero to its upper bound.
    pub amounts: Vec<f64>,
    /// Of each row what the amounts come to less the target, in the unit of the row and without
    /// its weight: positive is too much.
    pub misses: Vec<f64>,
    /// Sum of the squares of the weighted misses: what was made least.
    pub sum_of_squares: f64,
}

/// Why there is no fit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FitProblem {
    /// No rows, no unknowns, or more than [`MOST`] of either.
    Size {
        /// Rows given.
        rows: usize,
        /// Upper bounds given, one for each unknown.
        unknowns: usize,
        /// The most of either; the least is one.
        most: usize,
    },
    /// A row with another number of coefficients than there are unknowns.
    RowLength {
        /// The row, counted from zero.
        row: usize,
        /// Coefficients that it has.
        got: usize,
        /// Unknowns.
        unknowns: usize,
    },
    /// A coefficient or target that is no finite number, or a weight that is negative or not finite.
    NotUsable {
        /// The row, counted from zero.
        row: usize,
        /// The number.
        got: f64,
    },
    /// An upper bound that is negative or no number.
    UpperBound {
        /// The unknown, counted from zero.
        unknown: usize,
        /// The bound.
        got: f64,
    },
    /// The search did not end within the steps allowed: numbers of very different sizes.
    NotConverged {
        /// Steps made.
        steps: usize,
    },
}

/// Amounts between zero and upper bounds that bring the rows nearest to their targets: the least
/// sum of squares of weight · (coefficients · amounts − target).
///
/// `rows`: 1 to 24, each with one coefficient for each unknown. `upper`: the upper bound of each
/// of 1 to 24 unknowns, zero or more, [`f64::INFINITY`] for none; with no bound at all this is
/// non-negative least squares. The units are the caller's, see [`Row`]. The result is found
/// without chance, in a finite number of steps; where several amounts come equally near (more
/// unknowns than rows, or two alike) it is one of them. Anything else is a [`FitProblem`].
///
/// Source: Lawson & Hanson (1974), Solving Least Squares Problems, chapter 23, algorithm NNLS,
/// with upper bounds after Stark & Parker (1995), Computational Statistics 10:129–141.
///
/// ```
/// use slackwater::science::least_squares::{Row, bounded};
/// // Two salts, two nutrients; the second salt alone would bring too much of the first nutrient.
/// let rows = [
///     Row { coefficients: &[0.5, 0.25], target: 100.0, weight: 1.0 },
///     Row { coefficients: &[0.0, 0.50], target: 150.0, weight: 1.0 },
/// ];
/// let fit = bounded(&rows, &[f64::INFINITY; 2])?;
/// assert!((fit.amounts[0] - 50.0).abs() < 1e-9 && (fit.amounts[1] - 300.0).abs() < 1e-9);
/// assert!(fit.misses.iter().all(|miss| miss.abs() < 1e-9));
/// # Ok::<(), slackwater::science::least_squares::FitProblem>(())
/// ```
///
/// # Errors
///
/// [`FitProblem`] as said.
pub fn bounded(rows: &[Row<'_>], upper: &[f64]) -> Result<Fit, FitProblem> {
    check(rows, upper)?;
    let columns = Columns::weighted(rows, upper.len());
    let amounts = Bounds::new(upper).search(&columns)?;
    let amounts = amounts[..upper.len()].to_vec();
    let misses: Vec<f64> = rows
        .iter()
        .map(|row| {
            let sum: f64 = row
                .coefficients
                .iter()
                .zip(&amounts)
                .map(|(coefficient, amount)| coefficient * amount)
                .sum();
            sum - row.target
        })
        .collect();
    let sum_of_squares = rows
        .iter()
        .zip(&misses)
        .map(|(row, miss)| (row.weight * miss) * (row.weight * miss))
        .sum();
    Ok(Fit {
        amounts,
        misses,
        sum_of_squares,
    })
}

/// Refuses what the search cannot take.
fn check(rows: &[Row<'_>], upper: &[f64]) -> Result<(), FitProblem> {
    let sizes = 1..=MOST;
    if !sizes.contains(&rows.len()) || !sizes.contains(&upper.len()) {
        return Err(FitProblem::Size {
            rows: rows.len(),
            unknowns: upper.len(),
            most: MOST,
        });
    }
    for (unknown, &got) in upper.iter().enumerate() {
        if got.is_nan() || got < 0.0 {
            return Err(FitProblem::UpperBound { unknown, got });
        }
    }
    for (at, row) in rows.iter().enumerate() {
        if row.coefficients.len() != upper.len() {
            return Err(FitProblem::RowLength {
                row: at,
                got: row.coefficients.len(),
                unknowns: upper.len(),
            });
        }
        // Squares of weighted figures must stay finite, too.
        let usable = |got: &&f64| (**got * row.weight).abs() < 1e100 && got.abs() < 1e100;
        let mut figures = row.coefficients.iter().chain([&row.target, &row.weight]);
        if let Some(&got) = figures.find(|got| !usable(got)) {
            return Err(FitProblem::NotUsable { row: at, got });
        }
        if row.weight < 0.0 {
            return Err(FitProblem::NotUsable {
                row: at,
                got: row.weight,
            });
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{FitProblem, MOST, Row, bounded};

    const FREE: [f64; 2] = [f64::INFINITY; 2];

    fn row(coefficients: &[f64], target: f64) -> Row<'_> {
        Row {
            coefficients,
            target,
            weight: 1.0,
        }
    }

    #[test]
    fn an_amount_that_would_be_negative_stays_at_zero() {
        // Without bounds the answer is (-1, 2); with x0 = 0 the best x1 is 6/5 by hand.
        let rows = [row(&[1.0, 1.0], 1.0), row(&[3.0, 2.0], 1.0)];
        let fit = bounded(&rows, &FREE).expect("a fit");
        assert!(fit.amounts[0].abs() < 1e-15);
        assert!((fit.amounts[1] - 0.6).abs() < 1e-12);
        assert!((fit.misses[0] + 0.4).abs() < 1e-12);
        assert!((fit.misses[1] - 0.2).abs() < 1e-12);
        assert!((fit.sum_of_squares - 0.2).abs() < 1e-12);
    }

    #[test]
    fn an_upper_bound_holds_and_the_rest_is_fitted_again() {
        let rows = [row(&[1.0, 0.5], 4.0), row(&[0.0, 1.0], 1.0)];
        let fit = bounded(&rows, &[2.0, f64::INFINITY]).expect("a fit");
        // x0 = 2 leaves (0.5 x1 - 2)^2 + (x1 - 1)^2: x1 = 2 / 1.25 by hand.
        assert!((fit.amounts[0] - 2.0).abs() < 1e-15);
        assert!((fit.amounts[1] - 1.6).abs() < 1e-12);
        let shut = bounded(&rows, &[0.0, 0.0]).expect("a fit");
        assert_eq!(shut.amounts, [0.0, 0.0]);
        assert_eq!(shut.misses, [-4.0, -1.0]);
    }

    #[test]
    fn a_row_without_weight_is_reported_and_not_fitted() {
        let silent = Row {
            weight: 0.0,
            ..row(&[1.0, 1.0], 100.0)
        };
        let fit = bounded(&[row(&[1.0, 0.0], 3.0), silent], &FREE).expect("a fit");
        assert!((fit.amounts[0] - 3.0).abs() < 1e-12);
        assert!((fit.misses[1] + 97.0).abs() < 1e-12);
    }

    #[test]
    fn unknowns_that_are_alike_do_not_disturb_the_search() {
        let rows = [row(&[2.0, 2.0], 4.0), row(&[1.0, 1.0], 2.0)];
        let fit = bounded(&rows, &[0.5, f64::INFINITY]).expect("a fit");
        assert!((fit.amounts[0] + fit.amounts[1] - 2.0).abs() < 1e-12);
        assert!(fit.sum_of_squares < 1e-20);
        let zero = bounded(&[row(&[0.0, 0.0], 1.0)], &FREE).expect("a fit");
        assert_eq!(zero.amounts, [0.0, 0.0]);
    }

    #[test]
    fn what_cannot_be_fitted_is_refused() {
        let rows = [row(&[1.0, 1.0], 1.0)];
        let most = FitProblem::Size {
            rows: 1,
            unknowns: 0,
            most: MOST,
        };
        assert_eq!(bounded(&rows, &[]), Err(most));
        assert!(matches!(bounded(&[], &FREE), Err(FitProblem::Size { .. })));
        let many = vec![row(&[1.0, 1.0], 1.0); MOST + 1];
        assert!(matches!(
            bounded(&many, &FREE),
            Err(FitProblem::Size { .. })
        ));
        assert!(matches!(
            bounded(&rows, &[1.0]),
            Err(FitProblem::RowLength { got: 2, .. })
        ));
        for bad in [f64::NAN, -1.0, f64::NEG_INFINITY] {
            assert!(matches!(
                bounded(&rows, &[1.0, bad]),
                Err(FitProblem::UpperBound { unknown: 1, .. })
            ));
        }
        for bad in [f64::NAN, f64::INFINITY] {
            assert!(bounded(&[row(&[1.0, bad], 1.0)], &FREE).is_err());
            assert!(bounded(&[row(&[1.0, 1.0], bad)], &FREE).is_err());
        }
        for weight in [f64::NAN, -1.0, f64::INFINITY] {
            let rows = [Row { weight, ..rows[0] }];
            assert!(matches!(
                bounded(&rows, &FREE),
                Err(FitProblem::NotUsable { .. })
            ));
        }
    }
}
