//! The linear model 'block plus treatment', with any cells missing or repeated.

use super::problem::StatisticsProblem as Problem;
use super::sums::{mean, total};
use super::variance::Observation;

/// What the model leaves of the observations, and what it makes of the treatments.
pub(super) struct Fit {
    /// Mean of each treatment as if it had stood in every block.
    pub means: Vec<f64>,
    /// Covariance of these means, in squares of the error's standard deviation, row by row.
    pub covariance: Vec<f64>,
    /// Fitted value of each observation, less the origin.
    pub fitted: Vec<f64>,
    /// Fitted value of each observation by blocks alone, less the origin.
    pub by_block: Vec<f64>,
    /// What all observations are counted from.
    pub origin: f64,
}

/// Fits by the reduced normal equations: each block's own mean is taken out, which leaves one
/// equation per treatment (John 1971, Statistical design and analysis of experiments, chapter 11).
pub(super) fn fit(
    observations: &[Observation],
    treatments: usize,
    blocks: usize,
) -> Result<Fit, Problem> {
    let values: Vec<f64> = observations.iter().map(|it| it.value).collect();
    // Counted from the mean of all, sums stay small.
    let origin = mean(&values).unwrap_or_default();
    let mut counts = vec![0.0; treatments * blocks];
    for it in observations {
        counts[it.treatment * blocks + it.block] += 1.0;
    }
    let block_means: Vec<f64> = (0..blocks)
        .map(|block| {
            let own: Vec<f64> = observations
                .iter()
                .filter(|it| it.block == block)
                .map(|it| it.value - origin)
                .collect();
            mean(&own).unwrap_or_default()
        })
        .collect();
    let block_sizes: Vec<f64> = (0..blocks)
        .map(|block| (0..treatments).map(|t| counts[t * blocks + block]).sum())
        .collect();

    // The equations do not tell the effects' common level; adding one to every coefficient asks
    // that the effects sum to zero, and keeps the matrix positive definite.
    let mut matrix = vec![1.0; treatments * treatments];
    let mut right = vec![0.0; treatments];
    for t in 0..treatments {
        for block in 0..blocks {
            let count = counts[t * blocks + block];
            matrix[t * treatments + t] += count;
            if block_sizes[block] > 0.0 {
                for other in 0..treatments {
                    matrix[t * treatments + other] -=
                        count * counts[other * blocks + block] / block_sizes[block];
                }
            }
        }
        right[t] = total(
            observations
                .iter()
                .filter(|it| it.treatment == t)
                .map(|it| (it.value - origin) - block_means[it.block]),
        );
    }
    let inverse = inverse(matrix, treatments).ok_or(Problem::NotConnected)?;
    let row = |t: usize| &inverse[t * treatments..(t + 1) * treatments];
    let effects: Vec<f64> = (0..treatments)
        .map(|t| total(row(t).iter().zip(&right).map(|(a, b)| a * b)))
        .collect();

    // A block's effect is its mean less the effects of the treatments that stood in it.
    let block_effects: Vec<f64> = (0..blocks)
        .map(|block| {
            let stood: f64 = (0..treatments)
                .map(|t| counts[t * blocks + block] * effects[t])
                .sum();
            block_means[block] - stood / block_sizes[block].max(1.0)
        })
        .collect();
    let level = mean(&block_effects).unwrap_or_default();
    Ok(Fit {
        means: effects
            .iter()
            .map(|effect| origin + level + effect)
            .collect(),
        covariance: covariance(&inverse, &counts, &block_sizes, treatments, blocks),
        fitted: observations
            .iter()
            .map(|it| effects[it.treatment] + block_effects[it.block])
            .collect(),
        by_block: observations
            .iter()
            .map(|it| block_means[it.block])
            .collect(),
        origin,
    })
}

/// Covariance of the adjusted means. With effects e = G r (G the inverse, r the right sides, which
/// do not depend on the block means) a mean is level + e, and level = mean over blocks of
/// (block mean − share · e).
fn covariance(
    inverse: &[f64],
    counts: &[f64],
    block_sizes: &[f64],
    treatments: usize,
    blocks: usize,
) -> Vec<f64> {
    let n = blocks as f64;
    // How much of each treatment's effect the level takes off.
    let share: Vec<f64> = (0..treatments)
        .map(|t| {
            (0..blocks)
                .map(|block| counts[t * blocks + block] / block_sizes[block].max(1.0) / n)
                .sum()
        })
        .collect();
    // Variance of the mean of the block means.
    let level: f64 = block_sizes
        .iter()
        .map(|size| 1.0 / size.max(1.0))
        .sum::<f64>()
        / (n * n);
    // The added ones put 1/treatments² on every element of G; G less that is the covariance of e.
    let common = 1.0 / (treatments * treatments) as f64;
    let effects = |a: usize, b: usize| inverse[a * treatments + b] - common;
    let with_share: Vec<f64> = (0..treatments)
        .map(|a| (0..treatments).map(|b| share[b] * effects(a, b)).sum())
        .collect();
    let shares: f64 = share.iter().zip(&with_share).map(|(a, b)| a * b).sum();
    let mut all = Vec::with_capacity(treatments * treatments);
    for a in 0..treatments {
        for b in 0..treatments {
            all.push(level + effects(a, b) - with_share[a] - with_share[b] + shares);
        }
    }
    all
}

/// Inverse of a symmetric positive definite matrix by Gauss–Jordan elimination; `None` where a
/// pivot vanishes. Elements are of the size of counts.
fn inverse(mut a: Vec<f64>, n: usize) -> Option<Vec<f64>> {
    let mut inverse = vec![0.0; n * n];
    for i in 0..n {
        inverse[i * n + i] = 1.0;
    }
    for column in 0..n {
        let pivot = a[column * n + column];
        if pivot <= 1e-9 {
            return None;
        }
        for k in 0..n {
            a[column * n + k] /= pivot;
            inverse[column * n + k] /= pivot;
        }
        for row in (0..n).filter(|&row| row != column) {
            let factor = a[row * n + column];
            for k in 0..n {
                a[row * n + k] -= factor * a[column * n + k];
                inverse[row * n + k] -= factor * inverse[column * n + k];
            }
        }
    }
    Some(inverse)
}
