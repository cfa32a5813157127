//! Sums that keep their digits.

/// Mean of a list, in its unit; `None` of an empty one. Numbers must be finite.
///
/// The list is first moved so that its first member is zero, which is exact for numbers that lie
/// near each other, and then added up with the compensation of Neumaier (1974), Zeitschrift für
/// Angewandte Mathematik und Mechanik 54:39–51.
///
/// ```
/// use slackwater::science::statistics::mean;
/// assert_eq!(mean(&[1e9 + 1.0, 1e9 + 3.0]), Some(1e9 + 2.0));
/// ```
pub fn mean(values: &[f64]) -> Option<f64> {
    let &origin = values.first()?;
    Some(origin + total(values.iter().map(|value| value - origin)) / values.len() as f64)
}

/// Sum of the squares of a list's distances from its own mean, in the square of its unit; zero of
/// an empty list. Numbers must be finite.
///
/// Two passes, with the correction for the rounding of the mean of Chan and others (1983), The
/// American Statistician 37:242–247, Eq. 1.7.
///
/// ```
/// use slackwater::science::statistics::sum_of_squares;
/// assert_eq!(sum_of_squares(&[1e9, 1e9 + 2.0]), 2.0);
/// ```
pub fn sum_of_squares(values: &[f64]) -> f64 {
    let Some(&origin) = values.first() else {
        return 0.0;
    };
    let count = values.len() as f64;
    let moved = total(values.iter().map(|value| value - origin)) / count;
    let distance = |value: &f64| (value - origin) - moved;
    let squares = total(values.iter().map(|value| distance(value) * distance(value)));
    let left = total(values.iter().map(distance));
    squares - left * left / count
}

/// A compensated sum.
pub(super) fn total(values: impl Iterator<Item = f64>) -> f64 {
    let (mut sum, mut lost) = (0.0_f64, 0.0_f64);
    for value in values {
        let next = sum + value;
        lost += if sum.abs() >= value.abs() {
            (sum - next) + value
        } else {
            (value - next) + sum
        };
        sum = next;
    }
    sum + lost
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn small_terms_among_large_ones_are_kept() {
        let sum = total([1e16, 1.0, -1e16].into_iter());
        assert!((sum - 1.0).abs() < f64::EPSILON);
        assert_eq!(mean(&[]), None);
    }
}
