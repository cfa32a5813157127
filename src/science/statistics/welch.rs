//! Welch's analysis of variance, for groups whose spreads differ.

use super::distributions::f_upper_tail;
use super::problem::StatisticsProblem as Problem;
use super::sums::{mean, sum_of_squares};
use super::variance::usable;

/// Welch's test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Welch {
    /// The statistic.
    pub f: f64,
    /// Degrees of freedom of the numerator.
    pub between_freedom: f64,
    /// Degrees of freedom of the denominator, seldom whole.
    pub within_freedom: f64,
    /// Chance of such an F or a larger one, were there no differences.
    pub p: f64,
}

/// Count, mean and variance of one group.
#[derive(Clone, Copy, Debug)]
pub(super) struct Group {
    pub count: f64,
    pub mean: f64,
    pub variance: f64,
}

/// The groups, each with a spread of its own.
pub(super) fn groups(values: &[Vec<f64>]) -> Result<Vec<Group>, Problem> {
    if values.len() < 2 {
        return Err(Problem::Size {
            got: values.len(),
            least: 2,
            most: usize::MAX,
        });
    }
    values
        .iter()
        .enumerate()
        .map(|(group, own)| {
            if let Some(index) = own.iter().position(|it| !usable(*it)) {
                return Err(Problem::NotUsable {
                    index,
                    got: own[index],
                });
            }
            let (Some(mean), true) = (mean(own), own.len() > 1) else {
                return Err(Problem::EmptyGroup {
                    group,
                    got: own.len(),
                    needed: 2,
                });
            };
            let variance = sum_of_squares(own) / (own.len() as f64 - 1.0);
            // Its weight would be infinite.
            if variance <= mean * mean * f64::EPSILON * f64::EPSILON {
                return Err(Problem::NoSpread);
            }
            Ok(Group {
                count: own.len() as f64,
                mean,
                variance,
            })
        })
        .collect()
}

/// Welch's analysis of variance of groups with spreads of their own.
///
/// `values`: two or more groups of two or more finite observations, in the caller's unit. No group
/// may consist of equal observations ([`Problem::NoSpread`]).
///
/// Source: Welch (1951), On the comparison of several mean values, Biometrika 38:330–336.
///
/// ```
/// use slackwater::science::statistics::welch;
/// let test = welch(&[vec![1.0, 2.0, 3.0], vec![2.0, 6.0, 10.0]])?;
/// assert!((test.within_freedom - 2.2491).abs() < 1e-3);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn welch(values: &[Vec<f64>]) -> Result<Welch, Problem> {
    let groups = groups(values)?;
    let k = groups.len() as f64;
    let weight = |it: &Group| it.count / it.variance;
    let weights: f64 = groups.iter().map(weight).sum();
    let centre = groups.iter().map(|it| weight(it) * it.mean).sum::<f64>() / weights;
    let between = groups
        .iter()
        .map(|it| weight(it) * (it.mean - centre) * (it.mean - centre))
        .sum::<f64>()
        / (k - 1.0);
    let lack = groups
        .iter()
        .map(|it| {
            let off = 1.0 - weight(it) / weights;
            off * off / (it.count - 1.0)
        })
        .sum::<f64>();
    let f = between / (1.0 + 2.0 * (k - 2.0) / (k * k - 1.0) * lack);
    let within_freedom = (k * k - 1.0) / (3.0 * lack);
    Ok(Welch {
        f,
        between_freedom: k - 1.0,
        within_freedom,
        p: f_upper_tail(f, k - 1.0, within_freedom)?,
    })
}
