//! The studentized range: how far apart the largest and the smallest of several means lie by
//! chance, counted in standard errors.

use super::distributions::{beyond, crossing, freedom, normal_below, probability};
use super::problem::{Argument, StatisticsProblem as Problem};

/// Most groups.
const MOST_GROUPS: f64 = 200.0;
/// Steps along the normal deviate. The error falls as exp(−2π²(σ/step)²), σ being the width of the
/// integrand: below 1e-10 even for 200 groups.
const STEP: f64 = 0.35;
/// The normal density beyond this is below 1e-16.
const REACH: f64 = 8.4;

/// Density and share below, of the standard normal distribution along equal steps.
fn normal_steps() -> Vec<(f64, f64, f64)> {
    let mut steps = Vec::new();
    let mut z = -REACH;
    while z <= REACH {
        let density = libm::exp(-z * z / 2.0) / (2.0 * std::f64::consts::PI).sqrt();
        steps.push((z, density, normal_below(z)));
        z += STEP;
    }
    steps
}

/// Chance that the range of `groups` standard normal deviates is at most `width`.
fn range_below(width: f64, groups: f64, steps: &[(f64, f64, f64)]) -> f64 {
    let sum: f64 = steps
        .iter()
        .map(|&(z, density, below)| {
            density * libm::pow((normal_below(z + width) - below).max(0.0), groups - 1.0)
        })
        .sum();
    (groups * STEP * sum).min(1.0)
}

fn below(q: f64, groups: f64, freedom: f64, steps: &[(f64, f64, f64)]) -> f64 {
    let half = freedom / 2.0;
    // Logarithm of the density of u = ln(s), s² being chi square over its degrees of freedom.
    let scale = std::f64::consts::LN_2 + half * libm::log(half) - libm::lgamma(half);
    let log_density = |u: f64| scale + freedom * u - half * libm::exp(2.0 * u);
    // Half the width of the peak; below 3 degrees of freedom the far side falls steeper than that.
    let step = 0.35 / freedom.max(3.0).sqrt();
    let mut sum = 0.0;
    for direction in [-1.0, 1.0] {
        // The peak, at zero, counts once.
        let mut place = if direction < 0.0 { 0.0 } else { 1.0 };
        loop {
            let u = direction * step * place;
            let log = log_density(u);
            if log < -32.0 {
                break;
            }
            sum += libm::exp(log) * range_below(q * libm::exp(u), groups, steps);
            place += 1.0;
        }
    }
    (sum * step).clamp(0.0, 1.0)
}

fn check(groups: f64, within: f64) -> Result<(), Problem> {
    Problem::within(Argument::Groups, groups, 2.0, MOST_GROUPS)?;
    freedom(within)?;
    // With less than one the variance is hardly known at all, and the sum grows long.
    Problem::within(Argument::DegreesOfFreedom, within, 1.0, f64::MAX)?;
    Ok(())
}

/// Share of the studentized range distribution above `q`: the p value of Tukey's comparison.
///
/// `q`: difference of two means over the standard error of one mean, zero or more, finite.
/// `groups`: how many means, 2 to 200. `within`: degrees of freedom of the error, 1 to 100 000,
/// whole or not. Outside: [`Problem::OutOfRange`]. Good to 1e-9.
///
/// Source: the double integral of Copenhaver & Holland (1988), Journal of Statistical Computation
/// and Simulation 30:1–15, Eqs 1 and 2, by equal steps along the deviate and along the logarithm
/// of the standard deviation as Lund & Lund (1983), Applied Statistics 32:204–210 (AS 190), with
/// steps fine enough for the fast convergence that Trefethen & Weideman (2014), SIAM Review
/// 56:385–458, show for such integrands.
///
/// ```
/// use slackwater::science::statistics::range_upper_tail;
/// assert!((range_upper_tail(3.8768, 3.0, 10.0)? - 0.05).abs() < 1e-5);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn range_upper_tail(q: f64, groups: f64, within: f64) -> Result<f64, Problem> {
    Problem::within(Argument::Statistic, q, 0.0, f64::MAX)?;
    check(groups, within)?;
    Ok(1.0 - below(q, groups, within, &normal_steps()))
}

/// The studentized range that a share `above` exceeds.
///
/// `above`: 0.0001 to 0.9999; the rest and the source as in [`range_upper_tail`].
///
/// ```
/// use slackwater::science::statistics::range_quantile;
/// assert!((range_quantile(0.05, 4.0, 12.0)? - 4.1987).abs() < 1e-4);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn range_quantile(above: f64, groups: f64, within: f64) -> Result<f64, Problem> {
    probability(above)?;
    Problem::within(Argument::Probability, above, 0.0001, 0.9999)?;
    check(groups, within)?;
    let steps = normal_steps();
    let short = |q: f64| below(q, groups, within, &steps) - (1.0 - above);
    Ok(crossing(0.0, beyond(&short), &short))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::statistics::t_two_tails;

    /// The quadrature's own error.
    const CLOSE: f64 = 1e-9;

    #[test]
    fn two_groups_are_students_t() {
        for (q, within) in [(0.5, 1.0), (3.0, 4.0), (2.0, 30.0), (4.0, 2000.0)] {
            let tail = range_upper_tail(q, 2.0, within).expect("sound");
            let t = q / std::f64::consts::SQRT_2;
            let expected = t_two_tails(t, within).expect("sound");
            assert!(
                (tail - expected).abs() < CLOSE,
                "{q} {within}: {tail} {expected}"
            );
        }
    }
}
