//! What a small trial allows to be said: distributions, analysis of variance of randomised and
//! blocked designs with missing cells, comparisons of many means, checks of residuals, power.
//!
//! Observations are plain numbers in the caller's own unit, because the same analysis serves heads
//! in grams and water in litres per kilogram; every result in the unit of the observations says so.

mod distributions;
mod fit;
mod letters;
mod nested;
mod pairs;
mod power;
mod problem;
mod range;
mod residuals;
mod sums;
mod variance;
mod welch;

pub use distributions::{
    f_quantile, f_upper_tail, noncentral_f_below, normal_quantile, t_quantile, t_two_tails,
};
pub use letters::letters;
pub use nested::{Components, Nested, nested};
pub use pairs::{Pair, games_howell, tukey_kramer};
pub use power::{Layout, MOST_REPLICATES, Spread, detectable, power, replicates, trial_power};
pub use problem::{Argument, StatisticsProblem};
pub use range::{range_quantile, range_upper_tail};
pub use residuals::{Check, brown_forsythe, levene, shapiro_wilk};
pub use sums::{mean, sum_of_squares};
pub use variance::{Anova, Line, MOST_GROUPS, MOST_OBSERVATIONS, Mean, Observation, analyse};
pub use welch::{Welch, welch};
