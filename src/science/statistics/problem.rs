//! Why a statistic cannot be given.

/// What a number is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Argument {
    /// A probability.
    Probability,
    /// A test statistic.
    Statistic,
    /// Degrees of freedom.
    DegreesOfFreedom,
    /// How many groups.
    Groups,
    /// A non-centrality.
    NonCentrality,
    /// A standard deviation or a difference to be seen.
    Size,
}

/// Why a statistic cannot be given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StatisticsProblem {
    /// A number outside what the method covers.
    OutOfRange {
        /// Which.
        argument: Argument,
        /// What was given.
        got: f64,
        /// The least allowed.
        low: f64,
        /// The most allowed.
        high: f64,
    },
    /// An observation that is no finite number, or too large to be squared.
    NotUsable {
        /// Its place, counted from zero.
        index: usize,
        /// What was given.
        got: f64,
    },
    /// More observations or groups than are accepted, or none.
    Size {
        /// How many were given.
        got: usize,
        /// The least.
        least: usize,
        /// The most.
        most: usize,
    },
    /// A group without observations, or with too few for its own spread.
    EmptyGroup {
        /// The group, counted from zero.
        group: usize,
        /// How many observations it has.
        got: usize,
        /// How many it needs.
        needed: usize,
    },
    /// Treatments and blocks overlap too little for all treatments to be compared.
    NotConnected,
    /// No degree of freedom is left for the error.
    NoDegreesOfFreedom,
    /// All observations agree to the last digit, so that there is no error to compare with.
    NoSpread,
}

impl StatisticsProblem {
    /// Lets a number through that lies between two bounds.
    pub(super) fn within(argument: Argument, got: f64, low: f64, high: f64) -> Result<f64, Self> {
        if (low..=high).contains(&got) {
            Ok(got)
        } else {
            Err(Self::OutOfRange {
                argument,
                got,
                low,
                high,
            })
        }
    }
}
