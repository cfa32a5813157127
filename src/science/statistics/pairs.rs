//! Every mean against every other, at one error for all of them together.

use super::problem::StatisticsProblem as Problem;
use super::range::{range_quantile, range_upper_tail};
use super::variance::Anova;
use super::welch::groups;

/// Two treatments compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pair {
    /// The first, counted from zero.
    pub first: usize,
    /// The second.
    pub second: usize,
    /// Mean of the first less mean of the second, in the unit of the observations.
    pub difference: f64,
    /// Half the width of the joint confidence interval of the difference.
    pub half_width: f64,
    /// Chance that some pair of so many treatments lies as far apart, were there no differences.
    pub p: f64,
}

impl Pair {
    /// Whether the two differ at the level that the interval was made for.
    pub fn differ(&self) -> bool {
        self.difference.abs() > self.half_width
    }
}

fn pair(
    (first, second): (usize, usize),
    difference: f64,
    standard_error: f64,
    groups: f64,
    freedom: f64,
    quantile: f64,
) -> Result<Pair, Problem> {
    let one = standard_error / std::f64::consts::SQRT_2;
    Ok(Pair {
        first,
        second,
        difference,
        half_width: quantile * one,
        p: range_upper_tail(difference.abs() / one, groups, freedom)?,
    })
}

fn all_pairs(count: usize) -> impl Iterator<Item = (usize, usize)> {
    (0..count).flat_map(move |a| (a + 1..count).map(move |b| (a, b)))
}

/// Tukey's honest differences of the means of an analysis of variance; Kramer's form where their
/// standard errors differ.
///
/// `level`: joint confidence, 0.0001 to 0.9999, such as 0.95. Differences are in the unit of the
/// observations. Outside: [`Problem::OutOfRange`].
///
/// Source: Tukey (1953), The problem of multiple comparisons; Kramer (1956), Biometrics 12:307–310;
/// Hayter (1984), Annals of Statistics 12:61–75, for its being conservative.
///
/// ```
/// use slackwater::science::statistics::{Observation, analyse, tukey_kramer};
/// let values = [4.0, 5.0, 6.0, 7.0, 8.0, 10.0];
/// let observations: Vec<Observation> = (0..6)
///     .map(|i| Observation { treatment: i / 3, block: 0, value: values[i] })
///     .collect();
/// let pairs = tukey_kramer(&analyse(&observations, 2, 1)?, 0.95)?;
/// assert!(pairs[0].differ());
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn tukey_kramer(table: &Anova, level: f64) -> Result<Vec<Pair>, Problem> {
    let count = table.means.len();
    let freedom = table.error_freedom as f64;
    let quantile = range_quantile(1.0 - level, count as f64, freedom)?;
    all_pairs(count)
        .map(|(a, b)| {
            let error = table
                .standard_error_of_difference(a, b)
                .ok_or(Problem::NotConnected)?;
            let difference = table.means[a].mean - table.means[b].mean;
            pair((a, b), difference, error, count as f64, freedom, quantile)
        })
        .collect()
}

/// Comparisons of all groups whose spreads differ: each pair with its own standard error and
/// degrees of freedom.
///
/// `values` as in [`super::welch()`], `level` as in [`tukey_kramer`].
///
/// Source: Games & Howell (1976), Journal of Educational Statistics 1:113–125.
///
/// # Errors
///
/// As said.
pub fn games_howell(values: &[Vec<f64>], level: f64) -> Result<Vec<Pair>, Problem> {
    let groups = groups(values)?;
    let count = groups.len() as f64;
    all_pairs(groups.len())
        .map(|(a, b)| {
            let share = |it: usize| groups[it].variance / groups[it].count;
            let sum = share(a) + share(b);
            let lack = |it: usize| share(it) * share(it) / (groups[it].count - 1.0);
            // At least the smaller of the two groups' own, which is one.
            let freedom = (sum * sum / (lack(a) + lack(b))).max(1.0);
            let quantile = range_quantile(1.0 - level, count, freedom)?;
            let difference = groups[a].mean - groups[b].mean;
            pair((a, b), difference, sum.sqrt(), count, freedom, quantile)
        })
        .collect()
}
