//! Bands: what most of many seasons come to.

use serde::Serialize;

use crate::science::importance::quantile;

/// Ends of a band: one in ten seasons lies below, one in ten above.
const LOW: f64 = 0.1;
const MIDDLE: f64 = 0.5;
const HIGH: f64 = 0.9;

/// What eight in ten seasons come to, in the unit of the figure's name.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Band {
    /// Mean of all.
    pub mean: f64,
    /// One season in ten lies below.
    pub low: f64,
    /// Half lie below.
    pub middle: f64,
    /// One season in ten lies above.
    pub high: f64,
}

impl Band {
    /// The band of values with weights (any sum above 0); `None` without any.
    pub fn of(values: impl IntoIterator<Item = (f64, f64)>) -> Option<Self> {
        let mut sorted: Vec<(f64, f64)> = values
            .into_iter()
            .filter(|(value, weight)| value.is_finite() && *weight > 0.0)
            .collect();
        sorted.sort_by(|a, b| a.0.total_cmp(&b.0));
        let whole: f64 = sorted.iter().map(|(_, weight)| weight).sum();
        let sum: f64 = sorted.iter().map(|(value, weight)| value * weight).sum();
        Some(Self {
            mean: sum / whole,
            low: quantile(&sorted, LOW)?,
            middle: quantile(&sorted, MIDDLE)?,
            high: quantile(&sorted, HIGH)?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_band_is_read_off_the_sorted_values() {
        let band = Band::of((1..=10).rev().map(|i| (f64::from(i), 1.0))).expect("ten values");
        assert_eq!(
            band,
            Band {
                mean: 5.5,
                low: 1.0,
                middle: 5.0,
                high: 9.0
            }
        );
        assert_eq!(Band::of([(f64::NAN, 1.0), (2.0, 0.0)]), None);
    }
}
