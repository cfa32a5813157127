//! Normal, t, F and non-central F distributions.

use special::Beta;

use super::problem::{Argument, StatisticsProblem as Problem};

/// Most degrees of freedom; the incomplete beta function takes as many steps.
const MOST_FREEDOM: f64 = 100_000.0;
/// Largest non-centrality: power is 1 long before.
const MOST_NON_CENTRALITY: f64 = 100_000.0;

pub(super) fn freedom(got: f64) -> Result<f64, Problem> {
    // Below a thousandth a distribution has no quantiles that a double holds.
    Problem::within(Argument::DegreesOfFreedom, got, 0.001, MOST_FREEDOM)
}

/// A probability that is neither certain nor impossible.
pub(super) fn probability(got: f64) -> Result<f64, Problem> {
    Problem::within(Argument::Probability, got, 1e-12, 1.0 - 1e-12)
}

/// The argument at which a rising function passes zero, between two bounds, to twelve digits.
///
/// Source: Chandrupatla (1997), Advances in Engineering Software 28:145–149: inverse quadratic
/// interpolation where it is safe, halving where it is not.
pub(super) fn crossing(low: f64, high: f64, rising: &dyn Fn(f64) -> f64) -> f64 {
    let (mut x1, mut x2) = (high, low);
    let (mut f1, mut f2) = (rising(high), rising(low));
    if f2 >= 0.0 {
        return low;
    }
    let mut t = 0.5;
    // Halving alone would take fewer.
    for _ in 0..200 {
        let x = x1 + t * (x2 - x1);
        let f = rising(x);
        let (x3, f3);
        if (f < 0.0) == (f1 < 0.0) {
            (x3, f3) = (x1, f1);
        } else {
            (x3, f3) = (x2, f2);
            (x2, f2) = (x1, f1);
        }
        (x1, f1) = (x, f);
        let (best, least) = if f2.abs() < f1.abs() {
            (x2, f2)
        } else {
            (x1, f1)
        };
        let limit = 1e-12 * best.abs().max(f64::MIN_POSITIVE) / (x2 - x1).abs();
        if least == 0.0 || limit.is_nan() || limit > 0.5 {
            return best;
        }
        let (xi, phi) = ((x1 - x2) / (x3 - x2), (f1 - f2) / (f3 - f2));
        t = if phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi {
            f1 / (f2 - f1) * f3 / (f2 - f3)
                + (x3 - x1) / (x2 - x1) * f1 / (f3 - f1) * f2 / (f3 - f2)
        } else {
            0.5
        };
        t = t.clamp(limit, 1.0 - limit);
    }
    x1
}

/// The first of 1, 2, 4, … at which a rising function is above zero.
pub(super) fn beyond(rising: &dyn Fn(f64) -> f64) -> f64 {
    let mut high = 1.0;
    while rising(high) < 0.0 && high < 1e300 {
        high *= 2.0;
    }
    high
}

/// The regularised incomplete beta function: Majumder & Bhattacharjee (1973), algorithm AS 63.
fn beta_below(x: f64, p: f64, q: f64) -> f64 {
    // Rounding of the quotient behind x must not leave the interval.
    x.clamp(0.0, 1.0)
        .inc_beta(p, q, p.ln_beta(q))
        .clamp(0.0, 1.0)
}

/// Share of the standard normal distribution below `z`; any number.
pub(super) fn normal_below(z: f64) -> f64 {
    0.5 * libm::erfc(-z * std::f64::consts::FRAC_1_SQRT_2)
}

/// The standard normal deviate below which the share `below` lies.
///
/// `below`: 1e-12 to 1 − 1e-12. Result without unit. Outside: [`Problem::OutOfRange`]. The
/// complementary error function of `libm`, inverted.
///
/// ```
/// use slackwater::science::statistics::normal_quantile;
/// assert!((normal_quantile(0.975)? - 1.959964).abs() < 1e-6);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn normal_quantile(below: f64) -> Result<f64, Problem> {
    probability(below)?;
    // In the lower half small shares keep their digits.
    let low = below.min(1.0 - below);
    let size = crossing(0.0, 10.0, &|z| low - normal_below(-z));
    Ok(if below < 0.5 { -size } else { size })
}

/// Share of Student's t distribution further from zero than `t` on either side: the p value of a
/// two-sided test.
///
/// `t`: any finite number. `freedom`: degrees of freedom, 0.001 to 100 000, whole or not. Outside:
/// [`Problem::OutOfRange`].
///
/// # Errors
///
/// As said.
pub fn t_two_tails(t: f64, freedom: f64) -> Result<f64, Problem> {
    f_upper_tail(t * t, 1.0, freedom)
}

/// The t that a share `both_tails` exceeds on either side taken together: 0.05 for a confidence of
/// 95 %.
///
/// `both_tails`: 1e-12 to 1 − 1e-12; `freedom` as in [`t_two_tails`]. Outside:
/// [`Problem::OutOfRange`].
///
/// ```
/// use slackwater::science::statistics::t_quantile;
/// assert!((t_quantile(0.05, 10.0)? - 2.2281).abs() < 1e-4);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn t_quantile(both_tails: f64, freedom: f64) -> Result<f64, Problem> {
    Ok(f_quantile(both_tails, 1.0, freedom)?.sqrt())
}

/// Share of the F distribution above `f`: the p value of an analysis of variance.
///
/// `f`: zero or more, finite. `between`, `within`: degrees of freedom of numerator and denominator,
/// 0.001 to 100 000. Outside: [`Problem::OutOfRange`].
///
/// Source: Abramowitz & Stegun (1964), Eq. 26.6.2.
///
/// ```
/// use slackwater::science::statistics::f_upper_tail;
/// assert!((f_upper_tail(3.8853, 2.0, 12.0)? - 0.05).abs() < 1e-5);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn f_upper_tail(f: f64, between: f64, within: f64) -> Result<f64, Problem> {
    Problem::within(Argument::Statistic, f, 0.0, f64::MAX)?;
    freedom(between)?;
    freedom(within)?;
    Ok(upper(f, between, within))
}

fn upper(f: f64, between: f64, within: f64) -> f64 {
    beta_below(within / (within + between * f), within / 2.0, between / 2.0)
}

/// The F that a share `above` exceeds.
///
/// `above`: 1e-12 to 1 − 1e-12; degrees of freedom as in [`f_upper_tail`]. Outside:
/// [`Problem::OutOfRange`].
///
/// ```
/// use slackwater::science::statistics::f_quantile;
/// assert!((f_quantile(0.05, 2.0, 6.0)? - 5.1433).abs() < 1e-4);
/// # Ok::<(), slackwater::science::statistics::StatisticsProblem>(())
/// ```
///
/// # Errors
///
/// As said.
pub fn f_quantile(above: f64, between: f64, within: f64) -> Result<f64, Problem> {
    probability(above)?;
    freedom(between)?;
    freedom(within)?;
    let short = |f: f64| above - upper(f, between, within);
    Ok(crossing(0.0, beyond(&short), &short))
}

/// Share of the non-central F distribution below `f`.
///
/// `f` and degrees of freedom as in [`f_upper_tail`]; `non_centrality`: 0 to 100 000. Outside:
/// [`Problem::OutOfRange`].
///
/// Source: Johnson, Kotz & Balakrishnan (1995), Continuous univariate distributions 2, Eq. 30.10:
/// incomplete beta functions weighted by a Poisson distribution.
///
/// # Errors
///
/// As said.
pub fn noncentral_f_below(
    f: f64,
    between: f64,
    within: f64,
    non_centrality: f64,
) -> Result<f64, Problem> {
    Problem::within(Argument::Statistic, f, 0.0, f64::MAX)?;
    freedom(between)?;
    freedom(within)?;
    Problem::within(
        Argument::NonCentrality,
        non_centrality,
        0.0,
        MOST_NON_CENTRALITY,
    )?;
    let half = non_centrality / 2.0;
    let x = between * f / (between * f + within);
    if half == 0.0 {
        return Ok(beta_below(x, between / 2.0, within / 2.0));
    }
    // Ten standard deviations of the Poisson distribution on either side hold all its weight.
    let reach = 10.0 * half.sqrt() + 40.0;
    let mut sum = 0.0;
    let mut step = (half - reach).max(0.0).floor();
    while step <= half + reach {
        let weight = libm::exp(step * libm::log(half) - half - libm::lgamma(step + 1.0));
        sum += weight * beta_below(x, between / 2.0 + step, within / 2.0);
        step += 1.0;
    }
    Ok(sum.clamp(0.0, 1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_lies_outside_is_refused() {
        assert!(f_upper_tail(-1.0, 2.0, 3.0).is_err());
        assert!(f_upper_tail(f64::NAN, 2.0, 3.0).is_err());
        assert!(f_upper_tail(1.0, 0.0, 3.0).is_err());
        assert!(t_quantile(0.0, 3.0).is_err());
        assert!(normal_quantile(1.0).is_err());
        assert!(noncentral_f_below(1.0, 2.0, 3.0, 1e9).is_err());
    }

    #[test]
    fn the_ends_are_reached() {
        assert!((f_upper_tail(0.0, 2.0, 3.0).expect("sound") - 1.0).abs() < f64::EPSILON);
        assert!(f_upper_tail(1e300, 2.0, 3.0).expect("sound") < 1e-100);
        assert!(normal_quantile(0.5).expect("sound").abs() < 1e-9);
    }
}
