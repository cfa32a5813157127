//! Weights that let a sample of guesses answer for what was since measured: importance weights,
//! how many equal guesses they are worth, and fair resampling.

/// Logarithm of the likelihood of a measurement under a normal error, up to a constant.
///
/// `measured`, `predicted` and the standard deviation `error` (above 0) in one unit. Result:
/// dimensionless, 0 at the prediction.
///
/// Source: definition of the normal density.
#[inline]
pub fn log_likelihood(measured: f64, predicted: f64, error: f64) -> f64 {
    let away = (measured - predicted) / error;
    -0.5 * away * away
}

/// Weights that sum to one from the logarithms of likelihoods, each raised to `power` (0 to 1;
/// 1 is the whole evidence). Where no guess explains anything (none finite), all weigh the same.
///
/// Source: Kong, Liu and Wong (1994), Journal of the American Statistical Association 89:278–288.
///
/// ```
/// use slackwater::science::importance::weights;
/// let weights = weights(&[0.0, 0.0, f64::NEG_INFINITY], 1.0);
/// assert_eq!(weights, [0.5, 0.5, 0.0]);
/// ```
pub fn weights(log_likelihoods: &[f64], power: f64) -> Vec<f64> {
    let highest = log_likelihoods
        .iter()
        .copied()
        .filter(|value| value.is_finite())
        .fold(f64::NEG_INFINITY, f64::max);
    if !highest.is_finite() {
        return vec![1.0 / log_likelihoods.len().max(1) as f64; log_likelihoods.len()];
    }
    let mut weights: Vec<f64> = log_likelihoods
        .iter()
        .map(|&value| {
            if value.is_finite() {
                libm::exp(power * (value - highest))
            } else {
                0.0
            }
        })
        .collect();
    let sum: f64 = weights.iter().sum();
    for weight in &mut weights {
        *weight /= sum;
    }
    weights
}

/// How many equally weighted guesses the `weights` (summing to one) are worth, from 1 to their
/// number; 0 of none.
///
/// Source: Kong, Liu and Wong (1994): 1 over the sum of squares.
///
/// ```
/// use slackwater::science::importance::effective_size;
/// assert_eq!(effective_size(&[0.5, 0.5, 0.0]), 2.0);
/// ```
pub fn effective_size(weights: &[f64]) -> f64 {
    let squares: f64 = weights.iter().map(|weight| weight * weight).sum();
    if squares > 0.0 { 1.0 / squares } else { 0.0 }
}

/// Systematic resampling: as many picks as there are `weights` (summing to one), each guess picked
/// within one of its weight times their number. `start`, 0 to 1, is the one random number used.
/// Result: indices in rising order.
///
/// Source: Kitagawa (1996), Journal of Computational and Graphical Statistics 5:1–25.
///
/// ```
/// use slackwater::science::importance::systematic;
/// assert_eq!(systematic(&[0.5, 0.0, 0.25, 0.25], 0.5), [0, 0, 2, 3]);
/// ```
pub fn systematic(weights: &[f64], start: f64) -> Vec<usize> {
    let count = weights.len();
    let mut picks = Vec::with_capacity(count);
    let (mut index, mut below) = (0, weights.first().copied().unwrap_or_default());
    for pick in 0..count {
        let at = (pick as f64 + start) / count as f64;
        while below < at && index + 1 < count {
            index += 1;
            below += weights[index];
        }
        picks.push(index);
    }
    picks
}

/// The largest power in `from..=1` at which the weights of the evidence between `from` and it are
/// still worth `share` of the guesses (0 to 1): how much evidence to take in at a time.
///
/// Source: Del Moral, Doucet and Jasra (2006), Journal of the Royal Statistical Society B
/// 68:411–436, with the adaptive choice of Jasra and others (2011), Scandinavian Journal of
/// Statistics 38:1–22.
pub fn next_power(log_likelihoods: &[f64], from: f64, share: f64) -> f64 {
    let wanted = share * log_likelihoods.len() as f64;
    let worth = |power: f64| effective_size(&weights(log_likelihoods, power - from));
    if worth(1.0) >= wanted {
        return 1.0;
    }
    let (mut low, mut high) = (from, 1.0);
    // 2^-30 of the evidence is far finer than matters.
    for _ in 0..30 {
        let middle = f64::midpoint(low, high);
        if worth(middle) >= wanted {
            low = middle;
        } else {
            high = middle;
        }
    }
    // Always onwards, however small the step.
    low.max(from + 1e-6).min(1.0)
}

/// The value below or at which a share of the weight lies: the smallest whose cumulated weight
/// reaches `share` (0 to 1). `sorted` holds values with their weights in rising order of the
/// values. `None` of an empty list.
///
/// Source: the inverse of the empirical distribution function (Hyndman and Fan 1996, American
/// Statistician 50:361–365, definition 1, with weights).
///
/// ```
/// use slackwater::science::importance::quantile;
/// assert_eq!(quantile(&[(1.0, 0.25), (2.0, 0.5), (3.0, 0.25)], 0.5), Some(2.0));
/// ```
pub fn quantile(sorted: &[(f64, f64)], share: f64) -> Option<f64> {
    /// Sums of a thousand weights round by less.
    const ROUNDING: f64 = 1e-12;
    let whole: f64 = sorted.iter().map(|(_, weight)| weight).sum();
    let mut sum = 0.0;
    sorted
        .iter()
        .find(|(_, weight)| {
            sum += weight;
            *weight > 0.0 && sum >= share * whole - ROUNDING * whole
        })
        .or(sorted.last())
        .map(|(value, _)| *value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weights_sum_to_one_and_survive_nonsense() {
        /// Rounding of a few sums.
        const ROUNDING: f64 = 1e-12;
        for values in [
            vec![-1e9, -1e9 - 1.0, f64::NAN],
            vec![f64::NAN, f64::NEG_INFINITY],
            vec![0.0; 7],
        ] {
            let weights = weights(&values, 1.0);
            assert!((weights.iter().sum::<f64>() - 1.0).abs() < ROUNDING);
        }
        assert!(weights(&[], 1.0).is_empty());
        assert!(systematic(&[], 0.5).is_empty());
        assert!(quantile(&[], 0.5).is_none());
    }

    #[test]
    fn systematic_picks_stay_within_one_of_their_share() {
        let weights = weights(&[0.0, -0.3, -2.0, -1.1, -0.05, -4.0], 1.0);
        for start in [0.01, 0.37, 0.99] {
            let picks = systematic(&weights, start);
            for (index, weight) in weights.iter().enumerate() {
                let count = picks.iter().filter(|&&pick| pick == index).count() as f64;
                assert!((count - weight * 6.0).abs() < 1.0);
            }
        }
    }

    #[test]
    fn evidence_is_taken_in_steps_that_keep_the_guesses_alive() {
        /// The bisection stops this near.
        const NEAR: f64 = 0.01;
        let values: Vec<f64> = (0..100).map(|i| -f64::from(i)).collect();
        let power = next_power(&values, 0.0, 0.5);
        assert!(power < 1.0);
        assert!((effective_size(&weights(&values, power)) - 50.0).abs() < NEAR);
        assert!((next_power(&[0.0; 5], 0.3, 0.5) - 1.0).abs() < f64::EPSILON);
    }
}
