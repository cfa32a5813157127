//! Whether residuals look normal, and whether groups spread alike.

use super::distributions::{normal_below, normal_quantile};
use super::problem::StatisticsProblem as Problem;
use super::sums::{mean, sum_of_squares, total};
use super::variance::{Observation, analyse, usable};

/// A statistic and its p value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Check {
    /// The statistic.
    pub statistic: f64,
    /// Chance of one as extreme, did the assumption hold.
    pub p: f64,
}

/// A polynomial, its constant first.
fn polynomial(coefficients: &[f64], x: f64) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

/// Shapiro and Wilk's test of whether a sample comes from a normal distribution.
///
/// `values`: 3 to 5000 finite ones, in any unit, not all equal ([`Problem::NoSpread`]). The
/// statistic W is 0 to 1, near 1 for a normal sample.
///
/// Source: Royston (1995), Remark AS R94, Applied Statistics 44:547–551, after Shapiro & Wilk
/// (1965), Biometrika 52:591–611.
///
/// ```
/// use slackwater::science::statistics::shapiro_wilk;
/// let check = shapiro_wilk(&[1.0, 2.0, 3.0, 4.0, 30.0])?;
/// assert!(check.p < 0.01);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said; [`Problem::Size`], [`Problem::NotUsable`].
pub fn shapiro_wilk(values: &[f64]) -> Result<Check, Problem> {
    let count = values.len();
    if !(3..=5000).contains(&count) {
        return Err(Problem::Size {
            got: count,
            least: 3,
            most: 5000,
        });
    }
    if let Some(index) = values.iter().position(|it| !usable(*it)) {
        return Err(Problem::NotUsable {
            index,
            got: values[index],
        });
    }
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let squares = sum_of_squares(&sorted);
    let centre = mean(&sorted).unwrap_or_default();
    if squares <= centre * centre * count as f64 * f64::EPSILON * f64::EPSILON {
        return Err(Problem::NoSpread);
    }
    let weights = weights(count)?;
    let line = total(
        sorted
            .iter()
            .zip(&weights)
            .map(|(value, weight)| (value - centre) * weight),
    );
    let statistic = (line * line / squares).min(1.0);
    Ok(Check {
        statistic,
        p: shapiro_p(statistic, count as f64),
    })
}

/// Weights of the ordered sample, Royston's approximation.
fn weights(count: usize) -> Result<Vec<f64>, Problem> {
    const LAST: [f64; 6] = [
        0.0, 0.221_157, -0.147_981, -2.071_190, 4.434_685, -2.706_056,
    ];
    const LAST_BUT_ONE: [f64; 6] = [
        0.0, 0.042_981, -0.293_762, -1.752_461, 5.682_633, -3.582_633,
    ];
    if count == 3 {
        let end = std::f64::consts::FRAC_1_SQRT_2;
        return Ok(vec![-end, 0.0, end]);
    }
    let n = count as f64;
    let scores: Vec<f64> = (1..=count)
        .map(|i| normal_quantile((i as f64 - 0.375) / (n + 0.25)))
        .collect::<Result<_, _>>()?;
    let squares: f64 = scores.iter().map(|m| m * m).sum();
    let root = squares.sqrt();
    let x = 1.0 / n.sqrt();
    let (top, next) = (scores[count - 1], scores[count - 2]);
    let last = polynomial(&LAST, x) + top / root;
    let mut weights;
    if count > 5 {
        let last_but_one = polynomial(&LAST_BUT_ONE, x) + next / root;
        let scale = ((squares - 2.0 * top * top - 2.0 * next * next)
            / (1.0 - 2.0 * last * last - 2.0 * last_but_one * last_but_one))
            .sqrt();
        weights = scores.iter().map(|m| m / scale).collect::<Vec<f64>>();
        weights[1] = -last_but_one;
        weights[count - 2] = last_but_one;
    } else {
        let scale = ((squares - 2.0 * top * top) / (1.0 - 2.0 * last * last)).sqrt();
        weights = scores.iter().map(|m| m / scale).collect();
    }
    weights[0] = -last;
    weights[count - 1] = last;
    Ok(weights)
}

fn shapiro_p(statistic: f64, n: f64) -> f64 {
    if n < 3.5 {
        // Exact for three.
        let p = 6.0 / std::f64::consts::PI
            * (libm::asin(statistic.sqrt()) - libm::asin(0.75_f64.sqrt()));
        return p.clamp(0.0, 1.0);
    }
    let off = libm::log(1.0 - statistic);
    let (y, centre, spread) = if n < 11.5 {
        let most = polynomial(&[-2.273, 0.459], n);
        if off >= most {
            return 0.0;
        }
        (
            -libm::log(most - off),
            polynomial(&[0.5440, -0.39978, 0.025_054, -0.000_671_4], n),
            libm::exp(polynomial(&[1.3822, -0.77857, 0.062_767, -0.002_032_2], n)),
        )
    } else {
        let x = libm::log(n);
        (
            off,
            polynomial(&[-1.5861, -0.31082, -0.083_751, 0.003_891_5], x),
            libm::exp(polynomial(&[-0.4803, -0.082_676, 0.003_030_2], x)),
        )
    };
    // A W of exactly 1 has no logarithm, and no doubt either.
    normal_below(-(y - centre) / spread).clamp(0.0, 1.0)
}

fn spread_test(values: &[Vec<f64>], centre: fn(&[f64]) -> f64) -> Result<Check, Problem> {
    let mut distances = Vec::new();
    for (treatment, own) in values.iter().enumerate() {
        let middle = centre(own);
        for &value in own {
            if !usable(value) {
                return Err(Problem::NotUsable {
                    index: distances.len(),
                    got: value,
                });
            }
            distances.push(Observation {
                treatment,
                block: 0,
                value: (value - middle).abs(),
            });
        }
    }
    let table = analyse(&distances, values.len(), 1)?;
    Ok(Check {
        statistic: table.treatments.f,
        p: table.treatments.p,
    })
}

fn median(values: &[f64]) -> f64 {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let half = sorted.len() / 2;
    match (
        sorted.get(half),
        half.checked_sub(1).and_then(|i| sorted.get(i)),
    ) {
        (Some(&upper), Some(&lower)) if sorted.len().is_multiple_of(2) => {
            f64::midpoint(lower, upper)
        }
        (Some(&middle), _) => middle,
        _ => 0.0,
    }
}

/// Brown and Forsythe's test of whether groups spread alike: an analysis of variance of the
/// distances from each group's median.
///
/// `values`: groups as in [`super::welch()`].
///
/// Source: Brown & Forsythe (1974), Journal of the American Statistical Association 69:364–367.
///
/// # Errors
///
/// Those of [`analyse`]; [`Problem::NoSpread`] where all distances agree, as with two in a group.
pub fn brown_forsythe(values: &[Vec<f64>]) -> Result<Check, Problem> {
    spread_test(values, median)
}

/// Levene's test: as [`brown_forsythe`], with distances from each group's mean.
///
/// Source: Levene (1960), in Contributions to probability and statistics, 278–292.
///
/// # Errors
///
/// As [`brown_forsythe`].
pub fn levene(values: &[Vec<f64>]) -> Result<Check, Problem> {
    spread_test(values, |own| mean(own).unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn samples_that_say_nothing_are_refused() {
        assert!(shapiro_wilk(&[1.0, 2.0]).is_err());
        assert_eq!(shapiro_wilk(&[0.3; 9]), Err(Problem::NoSpread));
        assert!(shapiro_wilk(&[1.0, f64::NAN, 2.0]).is_err());
        assert!(brown_forsythe(&[vec![1.0, 2.0], vec![5.0, 9.0]]).is_err());
        assert!(brown_forsythe(&[vec![], vec![5.0, 9.0, 2.0]]).is_err());
    }

    #[test]
    fn a_line_is_as_normal_as_can_be() {
        let check = shapiro_wilk(&[-1.0, 0.0, 1.0]).expect("sound");
        assert!((check.statistic - 1.0).abs() < 1e-12 && (check.p - 1.0).abs() < 1e-6);
    }
}
