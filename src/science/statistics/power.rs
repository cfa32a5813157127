//! How likely a trial is to show a difference, and how many replicates that takes.

use super::distributions::{beyond, crossing, f_quantile, noncentral_f_below, probability};
use super::problem::{Argument, StatisticsProblem as Problem};

/// Most replicates that are considered.
pub const MOST_REPLICATES: u32 = 200;

/// How the units are given to the treatments.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layout {
    /// By chance among all.
    Randomised,
    /// By chance within each block, every treatment once in each.
    Blocks,
}

impl Layout {
    /// Degrees of freedom of the error with so many treatments and replicates; `None` where none
    /// are left.
    pub fn error_freedom(self, treatments: u32, replicates: u32) -> Option<u32> {
        let left = match self {
            Self::Randomised => treatments.checked_mul(replicates.checked_sub(1)?)?,
            Self::Blocks => treatments
                .checked_sub(1)?
                .checked_mul(replicates.checked_sub(1)?)?,
        };
        (left > 0).then_some(left)
    }
}

/// Standard deviations, in the unit of the difference to be seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// From unit to unit (within a block).
    pub units: f64,
    /// From head to head within a unit.
    pub heads: f64,
    /// Heads of one unit; one or more.
    pub heads_per_unit: u32,
}

impl Spread {
    /// Variance of the mean of one unit, in the square of its unit.
    pub fn of_unit_mean(&self) -> f64 {
        self.units * self.units + self.heads * self.heads / f64::from(self.heads_per_unit.max(1))
    }
}

/// Chance that an F test finds what is there.
///
/// `non_centrality`: 0 to 100 000; degrees of freedom as in [`super::f_upper_tail`]; `alpha`: the
/// level of the test, such as 0.05. Result 0 to 1. Outside: [`Problem::OutOfRange`].
///
/// Source: Cohen (1988), Statistical power analysis for the behavioral sciences, chapter 8.
///
/// ```
/// use slackwater::science::statistics::power;
/// // Without a difference the test errs at its own level.
/// assert!((power(0.0, 2.0, 9.0, 0.05)? - 0.05).abs() < 1e-9);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn power(non_centrality: f64, between: f64, within: f64, alpha: f64) -> Result<f64, Problem> {
    let critical = f_quantile(alpha, between, within)?;
    Ok(1.0 - noncentral_f_below(critical, between, within, non_centrality)?)
}

/// Chance that a trial shows that treatments differ, when two of them lie `difference` apart and
/// the others half way between, which is the hardest case.
///
/// `treatments` 2 to 200; `replicates` 2 to 200; `difference` and `spread` in one unit, the spread
/// of a unit mean above zero; `alpha` as in [`power`]. Result 0 to 1. Source as in [`power`].
///
/// ```
/// use slackwater::science::statistics::{Layout, Spread, trial_power};
/// let spread = Spread { units: 10.0, heads: 0.0, heads_per_unit: 1 };
/// assert!(trial_power(Layout::Randomised, 2, 6, 20.0, &spread, 0.05)? > 0.8);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// [`Problem::OutOfRange`], [`Problem::NoDegreesOfFreedom`].
pub fn trial_power(
    layout: Layout,
    treatments: u32,
    replicates: u32,
    difference: f64,
    spread: &Spread,
    alpha: f64,
) -> Result<f64, Problem> {
    check(treatments, spread, alpha, 0.5)?;
    let within = layout
        .error_freedom(treatments, replicates)
        .ok_or(Problem::NoDegreesOfFreedom)?;
    // Sum of squares of the treatments' distances from their mean is difference²/2.
    let non_centrality =
        f64::from(replicates) * difference * difference / (2.0 * spread.of_unit_mean());
    power(
        // Power is 1 long before.
        non_centrality.min(10_000.0),
        f64::from(treatments - 1),
        f64::from(within),
        alpha,
    )
}

fn check(treatments: u32, spread: &Spread, alpha: f64, wanted: f64) -> Result<(), Problem> {
    Problem::within(Argument::Groups, f64::from(treatments), 2.0, 200.0)?;
    probability(alpha)?;
    probability(wanted)?;
    let variance = spread.of_unit_mean();
    Problem::within(Argument::Size, variance, f64::MIN_POSITIVE, f64::MAX)?;
    Ok(())
}

/// The fewest replicates with which a trial shows a difference with the power wanted; `None` where
/// even 200 are too few.
///
/// `treatments`: 2 to 200. `difference`: between two of them, the others half way between, in the
/// unit of `spread`, above zero. `alpha`: level of the test. `wanted`: power, such as 0.8. Outside:
/// [`Problem::OutOfRange`]. Source as in [`power`].
///
/// ```
/// use slackwater::science::statistics::{Layout, Spread, replicates};
/// let spread = Spread { units: 10.0, heads: 0.0, heads_per_unit: 1 };
/// let few = replicates(Layout::Randomised, 2, 20.0, &spread, 0.05, 0.8)?;
/// assert_eq!(few, Some(6));
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn replicates(
    layout: Layout,
    treatments: u32,
    difference: f64,
    spread: &Spread,
    alpha: f64,
    wanted: f64,
) -> Result<Option<u32>, Problem> {
    check(treatments, spread, alpha, wanted)?;
    Problem::within(Argument::Size, difference, f64::MIN_POSITIVE, f64::MAX)?;
    let enough = |count| -> Result<bool, Problem> {
        Ok(trial_power(layout, treatments, count, difference, spread, alpha)? >= wanted)
    };
    let (mut low, mut high) = (2, MOST_REPLICATES);
    if !enough(high)? {
        return Ok(None);
    }
    while low < high {
        let middle = u32::midpoint(low, high);
        if enough(middle)? {
            high = middle;
        } else {
            low = middle + 1;
        }
    }
    Ok(Some(high))
}

/// The smallest difference that a trial shows with the power wanted, in the unit of `spread`.
///
/// `replicates`: 2 to 200; the rest as in [`replicates`].
///
/// # Errors
///
/// As said; [`Problem::NoDegreesOfFreedom`].
pub fn detectable(
    layout: Layout,
    treatments: u32,
    replicates: u32,
    spread: &Spread,
    alpha: f64,
    wanted: f64,
) -> Result<f64, Problem> {
    check(treatments, spread, alpha, wanted)?;
    let within = layout
        .error_freedom(treatments, replicates)
        .ok_or(Problem::NoDegreesOfFreedom)?;
    let (between, within) = (f64::from(treatments - 1), f64::from(within));
    let critical = f_quantile(alpha, between, within)?;
    let short = |non_centrality: f64| {
        let below = noncentral_f_below(critical, between, within, non_centrality.min(10_000.0));
        1.0 - below.unwrap_or_default() - wanted
    };
    let needed = crossing(0.0, beyond(&short), &short);
    Ok((2.0 * needed * spread.of_unit_mean() / f64::from(replicates)).sqrt())
}
