//! Analysis of variance of one treatment factor, with or without blocks.

use super::distributions::{f_upper_tail, t_quantile};
use super::fit::fit;
use super::problem::{Argument, StatisticsProblem as Problem};
use super::sums::{sum_of_squares, total};

/// Most treatments, and most blocks.
pub const MOST_GROUPS: usize = 200;
/// Most observations.
pub const MOST_OBSERVATIONS: usize = 20_000;
/// Largest size of an observation: its square is still a number.
const LARGEST: f64 = 1e100;
/// Sums of squares below this share of the observations' own squares are rounding.
const ROUNDING: f64 = 1e-28;

/// One observation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Observation {
    /// Treatment, counted from zero.
    pub treatment: usize,
    /// Block, counted from zero; zero throughout where there are none.
    pub block: usize,
    /// What was observed, in the caller's unit.
    pub value: f64,
}

/// A line of the table, tested against the error.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Line {
    /// Sum of squares, unit squared.
    pub sum_of_squares: f64,
    /// Degrees of freedom.
    pub freedom: usize,
    /// Sum of squares over degrees of freedom.
    pub mean_square: f64,
    /// Mean square over that of the error.
    pub f: f64,
    /// Chance of such an F or a larger one, were there no differences.
    pub p: f64,
}

/// The mean of a treatment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mean {
    /// Observations.
    pub count: usize,
    /// Mean as if the treatment had stood once in every block: with no cell missing, its plain mean.
    pub mean: f64,
    /// Standard error of that mean, from the error of the whole analysis.
    pub standard_error: f64,
}

/// The analysis.
#[derive(Clone, Debug, PartialEq)]
pub struct Anova {
    /// Differences among treatments, blocks taken out.
    pub treatments: Line,
    /// Differences among blocks, before treatments; `None` with one block.
    pub blocks: Option<Line>,
    /// Sum of squares that is left.
    pub error_sum_of_squares: f64,
    /// Its degrees of freedom.
    pub error_freedom: usize,
    /// Its mean square: the variance of one observation.
    pub error_mean_square: f64,
    /// Sum of squares of all observations about their mean.
    pub total_sum_of_squares: f64,
    /// Mean of each treatment.
    pub means: Vec<Mean>,
    /// Observation less fitted value, in the order of the observations.
    pub residuals: Vec<f64>,
    /// Fitted value of each observation.
    pub fitted: Vec<f64>,
    /// Whether some treatment is missing from some block, so that means are adjusted.
    pub adjusted: bool,
    /// Covariance of the means over the error's mean square, row by row.
    covariance: Vec<f64>,
}

impl Anova {
    /// Standard error of the difference of two means, counted from zero; `None` where there is no
    /// such treatment.
    pub fn standard_error_of_difference(&self, a: usize, b: usize) -> Option<f64> {
        let count = self.means.len();
        if a >= count || b >= count {
            return None;
        }
        let at = |i: usize, j: usize| self.covariance[i * count + j];
        let variance = (at(a, a) + at(b, b) - 2.0 * at(a, b)).max(0.0);
        Some((variance * self.error_mean_square).sqrt())
    }

    /// Share of all variation that the model explains, 0 to 1.
    pub fn explained(&self) -> f64 {
        1.0 - self.error_sum_of_squares / self.total_sum_of_squares
    }

    /// Half the width of the confidence interval of a mean; `level` such as 0.95.
    ///
    /// # Errors
    ///
    /// [`Problem::OutOfRange`] for a level that is no probability; for an unknown treatment the
    /// half width is that of no observation, refused as [`Problem::EmptyGroup`].
    pub fn half_width(&self, treatment: usize, level: f64) -> Result<f64, Problem> {
        let mean = self.means.get(treatment).ok_or(Problem::EmptyGroup {
            group: treatment,
            got: 0,
            needed: 1,
        })?;
        Ok(t_quantile(1.0 - level, self.error_freedom as f64)? * mean.standard_error)
    }
}

/// Whether a number can be an observation.
pub(super) fn usable(value: f64) -> bool {
    value.is_finite() && value.abs() <= LARGEST
}

/// Refuses what cannot be analysed, and gives how many observations each treatment has.
fn check(
    observations: &[Observation],
    treatments: usize,
    blocks: usize,
) -> Result<Vec<usize>, Problem> {
    for (got, least) in [(treatments, 2), (blocks, 1)] {
        if !(least..=MOST_GROUPS).contains(&got) {
            return Err(Problem::Size {
                got,
                least,
                most: MOST_GROUPS,
            });
        }
    }
    if observations.len() > MOST_OBSERVATIONS {
        return Err(Problem::Size {
            got: observations.len(),
            least: 2,
            most: MOST_OBSERVATIONS,
        });
    }
    let mut counts = vec![0; treatments];
    for (index, it) in observations.iter().enumerate() {
        if !usable(it.value) {
            return Err(Problem::NotUsable {
                index,
                got: it.value,
            });
        }
        for (got, limit) in [(it.treatment, treatments), (it.block, blocks)] {
            if got >= limit {
                return Err(Problem::OutOfRange {
                    argument: Argument::Groups,
                    got: got as f64,
                    low: 0.0,
                    high: limit as f64 - 1.0,
                });
            }
        }
        counts[it.treatment] += 1;
    }
    match counts.iter().position(|&count| count == 0) {
        Some(group) => Err(Problem::EmptyGroup {
            group,
            got: 0,
            needed: 1,
        }),
        None => Ok(counts),
    }
}

/// Analysis of variance of treatments, or of treatments within blocks, with any cells missing.
///
/// `observations`: independent ones, 3 to 20 000, each finite and below 1e100 in size; `treatments`
/// 2 to 200; `blocks` 1 (completely randomised) to 200; both are numbered from zero, and every
/// treatment has an observation. Blocks without any do not count. Sums of squares are in the square
/// of the observations' unit. Treatments are judged after blocks, so that missing cells do not mix
/// the two (for balanced data the order does not matter); means are adjusted to all blocks alike.
///
/// Source: Searle (1971), Linear models, chapter 7; Fisher (1925), Statistical methods for research
/// workers, for the balanced case.
///
/// ```
/// use slackwater::science::statistics::{Observation, analyse};
/// let cells = [[4.0, 5.0, 6.0], [7.0, 8.0, 10.0]];
/// let observations: Vec<Observation> = (0..6)
///     .map(|i| Observation { treatment: i / 3, block: i % 3, value: cells[i / 3][i % 3] })
///     .collect();
/// let table = analyse(&observations, 2, 3)?;
/// assert_eq!((table.treatments.freedom, table.error_freedom), (1, 2));
/// assert!((table.treatments.f - 100.0).abs() < 1e-9);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// [`Problem`] as said; besides [`Problem::NotConnected`], [`Problem::NoDegreesOfFreedom`] and
/// [`Problem::NoSpread`].
pub fn analyse(
    observations: &[Observation],
    treatments: usize,
    blocks: usize,
) -> Result<Anova, Problem> {
    let counts = check(observations, treatments, blocks)?;
    let mut present = vec![false; blocks];
    for it in observations {
        present[it.block] = true;
    }
    // Blocks are numbered anew without the empty ones.
    let places: Vec<usize> = present
        .iter()
        .scan(0, |next, &there| {
            let place = *next;
            *next += usize::from(there);
            Some(place)
        })
        .collect();
    let blocks = present.iter().filter(|&&there| there).count();
    let observations: Vec<Observation> = observations
        .iter()
        .map(|it| Observation {
            block: places[it.block],
            ..*it
        })
        .collect();
    let model = fit(&observations, treatments, blocks)?;
    let error_freedom = (observations.len() + 1)
        .checked_sub(treatments + blocks)
        .filter(|&left| left > 0)
        .ok_or(Problem::NoDegreesOfFreedom)?;

    let values: Vec<f64> = observations.iter().map(|it| it.value).collect();
    let residuals: Vec<f64> = values
        .iter()
        .zip(&model.fitted)
        .map(|(value, fitted)| (value - model.origin) - fitted)
        .collect();
    let error_sum_of_squares = total(residuals.iter().map(|r| r * r));
    let total_sum_of_squares = sum_of_squares(&values);
    let size = total(values.iter().map(|value| value * value));
    if error_sum_of_squares <= ROUNDING * size || total_sum_of_squares <= 0.0 {
        return Err(Problem::NoSpread);
    }
    let error_mean_square = error_sum_of_squares / error_freedom as f64;
    let line = |sum_of_squares: f64, freedom: usize| -> Result<Line, Problem> {
        let mean_square = sum_of_squares / freedom as f64;
        let f = mean_square / error_mean_square;
        Ok(Line {
            sum_of_squares,
            freedom,
            mean_square,
            f,
            p: f_upper_tail(f, freedom as f64, error_freedom as f64)?,
        })
    };
    // The two fits are projections, one within the other: the squares of their difference are what
    // treatments add to blocks.
    let between = total(
        model
            .fitted
            .iter()
            .zip(&model.by_block)
            .map(|(full, part)| (full - part) * (full - part)),
    );
    let treatment_line = line(between, treatments - 1)?;
    let block_line = if blocks > 1 {
        let squares = total(model.by_block.iter().map(|part| part * part));
        Some(line(squares, blocks - 1)?)
    } else {
        None
    };
    let means = (0..treatments)
        .map(|t| Mean {
            count: counts[t],
            mean: model.means[t],
            standard_error: (model.covariance[t * treatments + t].max(0.0) * error_mean_square)
                .sqrt(),
        })
        .collect();
    Ok(Anova {
        treatments: treatment_line,
        blocks: block_line,
        error_sum_of_squares,
        error_freedom,
        error_mean_square,
        total_sum_of_squares,
        means,
        residuals,
        fitted: model.fitted.iter().map(|it| it + model.origin).collect(),
        adjusted: blocks > 1 && uneven(&observations, treatments, blocks),
        covariance: model.covariance,
    })
}

/// Whether the treatments do not all stand equally often in each block.
fn uneven(observations: &[Observation], treatments: usize, blocks: usize) -> bool {
    let mut counts = vec![0_usize; treatments * blocks];
    for it in observations {
        counts[it.treatment * blocks + it.block] += 1;
    }
    counts.iter().any(|&count| count != counts[0])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(rows: &[&[f64]]) -> Vec<Observation> {
        rows.iter()
            .enumerate()
            .flat_map(|(treatment, row)| {
                row.iter()
                    .enumerate()
                    .map(move |(block, &value)| Observation {
                        treatment,
                        block,
                        value,
                    })
            })
            .filter(|it| !it.value.is_nan())
            .collect()
    }

    #[test]
    fn what_cannot_be_compared_is_refused() {
        let none = f64::NAN;
        let apart = cells(&[
            &[1.0, 2.0, none, none],
            &[2.0, 4.0, none, none],
            &[none, none, 3.0, 9.0],
            &[none, none, 5.0, 2.0],
        ]);
        assert_eq!(analyse(&apart, 4, 4), Err(Problem::NotConnected));
        let one_each = cells(&[&[1.0], &[2.0]]);
        assert_eq!(analyse(&one_each, 2, 1), Err(Problem::NoDegreesOfFreedom));
        let alike = cells(&[&[0.1, 0.1, 0.1], &[0.1, 0.1, 0.1]]);
        assert_eq!(analyse(&alike, 2, 3), Err(Problem::NoSpread));
        assert!(analyse(&cells(&[&[1.0, 2.0]]), 2, 2).is_err());
        assert!(analyse(&[], 2, 2).is_err());
    }

    #[test]
    fn an_empty_block_does_not_count() {
        let mut whole = cells(&[&[4.0, 5.0, 6.0], &[7.0, 8.0, 10.0]]);
        let expected = analyse(&whole, 2, 3).expect("sound");
        for it in &mut whole {
            it.block = 2 * it.block + 1;
        }
        assert_eq!(analyse(&whole, 2, 9), Ok(expected));
    }
}
