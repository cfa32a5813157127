//! Subsamples: several heads of one unit say how heads vary, not how units do.

use super::distributions::f_upper_tail;
use super::problem::StatisticsProblem as Problem;
use super::sums::sum_of_squares;

/// What the subsamples say beside an analysis of unit means.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nested {
    /// Sum of squares of subsamples about the mean of their own unit.
    pub sum_of_squares: f64,
    /// Its degrees of freedom.
    pub freedom: usize,
    /// Its mean square: the variance of one subsample within its unit.
    pub mean_square: f64,
    /// Harmonic mean of the number of subsamples of a unit.
    pub per_unit: f64,
    /// Mean square of units over that of subsamples: exact where all units have equally many, else
    /// approximate.
    pub f: f64,
    /// Chance of such an F or a larger one, did units differ by no more than their subsamples.
    pub p: f64,
    /// The two parts of the spread.
    pub components: Components,
}

/// Where the spread comes from, as standard deviations in the unit of the observations.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Components {
    /// From unit to unit; zero where the units differ by less than their subsamples explain.
    pub between_units: f64,
    /// From subsample to subsample within a unit.
    pub within_units: f64,
}

/// Splits the spread of unit means into that of units and that of subsamples.
///
/// `units`: the subsamples of each unit that has any, finite, in the caller's unit.
/// `error_mean_square`, `error_freedom`: of the analysis of the unit means, in the square of that
/// unit. `None` where no unit has two subsamples, or all agree within their units. The test of
/// treatments stays that of the unit means: for equally many subsamples it is the same as
/// treatments over units on the scale of the subsamples.
///
/// Source: Snedecor & Cochran (1989), Statistical methods, 8th edition, sections 13.3 to 13.5;
/// unit means for unequal numbers after Searle (1971), Linear models, section 11.3.
///
/// # Errors
///
/// [`Problem::OutOfRange`] for degrees of freedom or a mean square that cannot be.
pub fn nested(
    units: &[Vec<f64>],
    error_mean_square: f64,
    error_freedom: usize,
) -> Result<Option<Nested>, Problem> {
    let filled: Vec<&Vec<f64>> = units.iter().filter(|own| !own.is_empty()).collect();
    let freedom = filled.iter().map(|own| own.len() - 1).sum::<usize>();
    let squares: f64 = filled.iter().map(|own| sum_of_squares(own)).sum();
    if freedom == 0 || squares <= 0.0 {
        return Ok(None);
    }
    let mean_square = squares / freedom as f64;
    let inverse: f64 = filled.iter().map(|own| 1.0 / own.len() as f64).sum();
    let per_unit = filled.len() as f64 / inverse;
    let f = error_mean_square * per_unit / mean_square;
    Ok(Some(Nested {
        sum_of_squares: squares,
        freedom,
        mean_square,
        per_unit,
        f,
        p: f_upper_tail(f, error_freedom as f64, freedom as f64)?,
        components: Components {
            between_units: (error_mean_square - mean_square / per_unit).max(0.0).sqrt(),
            within_units: mean_square.sqrt(),
        },
    }))
}
