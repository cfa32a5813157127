//! What the records of a trial allow to be said: typed, with the figures.

use serde::Serialize;

use crate::science::statistics::Check;

/// What was measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Measure {
    /// Fresh mass of a head, g: the mean of each unit's heads.
    HeadMass,
    /// Solution used for fresh mass, L/kg: a unit's litres over its heads' mass.
    WaterPerKg,
}

/// Everything about one measure. Figures are in the unit of the measure.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MeasureReport {
    /// Which.
    pub measure: Measure,
    /// The value of each unit that has one.
    pub units: Vec<UnitValue>,
    /// Treatments that could not be judged, counted from zero.
    pub left_out: Vec<LeftOut>,
    /// What may be said.
    pub conclusion: Conclusion,
    /// The figures behind it; `None` where nothing may be said.
    pub analysis: Option<Analysis>,
}

/// One unit's value.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct UnitValue {
    /// Its name.
    pub unit: String,
    /// Treatment, counted from zero.
    pub treatment: usize,
    /// Block, counted from zero.
    pub block: usize,
    /// The value.
    pub value: f64,
    /// The heads behind it, g.
    pub heads_g: Vec<f64>,
    /// Heads that are missing.
    pub missing: usize,
}

/// A treatment that could not be judged.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct LeftOut {
    /// Treatment, counted from zero.
    pub treatment: usize,
    /// Units of it with a value: none or one.
    pub units: usize,
}

/// What may be said.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Conclusion {
    /// Some treatments differ.
    Differs {
        /// The chance of such differences among all, were there none.
        p: f64,
        /// Those that differ, the larger first, the widest apart first.
        pairs: Vec<PairRow>,
    },
    /// Treatments differ, but no two can be named.
    DiffersSomewhere {
        /// The chance of such differences, were there none.
        p: f64,
    },
    /// Nothing can be told from these records; which is not to say that treatments are alike.
    CannotBeTold {
        /// The chance of such differences, were there none.
        p: f64,
        /// The smallest difference that a trial of this size and spread shows with the power
        /// wanted.
        detectable: f64,
        /// Half the width of the widest interval of a difference.
        half_width: f64,
    },
    /// No test is allowed.
    NotAllowed {
        /// Why.
        reason: Refusal,
        /// What would be claimed if every head counted as independent.
        naive: Option<Naive>,
    },
}

/// Why no test is allowed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Refusal {
    /// Nothing was recorded.
    NoRecords,
    /// All heads of a treatment shared one unit: its heads are subsamples and not replicates, and
    /// what the unit did cannot be told from what the treatment did.
    OneUnitEach,
    /// Heads were recorded without the unit that they stood in.
    HeadsWithoutUnit,
    /// Fewer than two treatments have values.
    OneTreatment,
    /// Units and blocks leave nothing to judge the spread by.
    NothingLeftForError,
    /// Too many cells are missing: treatments and blocks cannot be taken apart.
    NotConnected,
    /// All units agree to the last digit, as copied numbers do.
    NoSpread,
    /// Numbers beyond what the method covers.
    BeyondMethod,
}

/// What a test that takes every head for a replicate would claim.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Naive {
    /// Heads counted.
    pub heads: usize,
    /// Containers in which they really stood; `None` where that was not written down.
    pub units: Option<usize>,
    /// F.
    pub f: f64,
    /// Degrees of freedom between treatments.
    pub between_freedom: usize,
    /// Degrees of freedom that are no such thing.
    pub within_freedom: usize,
    /// The chance that it would claim.
    pub p: f64,
}

/// The figures behind a conclusion.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Analysis {
    /// Which method the conclusion rests on.
    pub method: Method,
    /// Confidence of all intervals, per cent.
    pub confidence_pct: f64,
    /// Means, in the order of the treatments.
    pub means: Vec<MeanRow>,
    /// The table of the analysis of variance of unit means.
    pub table: Vec<TableRow>,
    /// Share of all variation that blocks and treatments explain, per cent.
    pub explained_pct: f64,
    /// Whether means are adjusted because cells are missing from blocks.
    pub adjusted: bool,
    /// Welch's test, where every treatment has a spread of its own to go by.
    pub welch: Option<WelchRow>,
    /// Every two treatments compared.
    pub pairs: Vec<PairRow>,
    /// Whether the residuals look normal (Shapiro and Wilk); `None` with too few.
    pub normality: Option<CheckRow>,
    /// Whether treatments spread alike (Brown and Forsythe); `None` where that cannot be seen.
    pub equal_spread: Option<CheckRow>,
    /// The residual of each unit, in the order of their size.
    pub residuals: Vec<Residual>,
    /// Where the spread comes from; `None` without subsamples.
    pub spread: Option<SpreadRow>,
    /// Standard deviation of a unit over the mean of all, per cent.
    pub variation_pct: f64,
    /// The smallest difference that a trial of this size and spread shows with the power wanted.
    pub detectable: f64,
}

/// The method that a conclusion rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Method {
    /// Analysis of variance and Tukey's differences: one spread for all.
    OneSpread,
    /// Welch's analysis and Games and Howell's differences: spreads differ.
    OwnSpreads,
}

/// The mean of a treatment.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MeanRow {
    /// Treatment, counted from zero.
    pub treatment: usize,
    /// Its name.
    pub name: String,
    /// Units behind it.
    pub units: usize,
    /// Heads behind it.
    pub heads: usize,
    /// Mean; adjusted where cells are missing from blocks.
    pub mean: f64,
    /// Lower end of its confidence interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// Standard deviation of its units; `None` for one unit.
    pub deviation: Option<f64>,
    /// Letters: treatments that share one cannot be told apart.
    pub letters: String,
}

/// Where a line of the table comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Source {
    /// Blocks.
    Blocks,
    /// Treatments, blocks taken out.
    Treatments,
    /// Units of one treatment: the error that treatments are judged by.
    Units,
    /// Heads of one unit, on the scale of single heads; judges units, never treatments.
    Heads,
}

/// A line of the analysis of variance.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct TableRow {
    /// Of what.
    pub source: Source,
    /// Degrees of freedom.
    pub freedom: usize,
    /// Sum of squares.
    pub sum_of_squares: f64,
    /// Mean square.
    pub mean_square: f64,
    /// F, where the line is tested. That of units tests them against their heads.
    pub f: Option<f64>,
    /// Its chance.
    pub p: Option<f64>,
}

/// Welch's test.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct WelchRow {
    /// F.
    pub f: f64,
    /// Degrees of freedom between.
    pub between_freedom: f64,
    /// Degrees of freedom within.
    pub within_freedom: f64,
    /// Its chance.
    pub p: f64,
}

/// Two treatments compared.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct PairRow {
    /// The one with the larger mean, counted from zero.
    pub larger: usize,
    /// The other.
    pub smaller: usize,
    /// Larger less smaller.
    pub difference: f64,
    /// Lower end of the joint interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// Difference over the smaller mean, per cent.
    pub difference_pct: f64,
    /// Chance that some two of so many lie as far apart, were there no differences.
    pub p: f64,
    /// Whether the two differ at the confidence asked.
    pub differ: bool,
}

/// A check of an assumption.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CheckRow {
    /// The statistic.
    pub statistic: f64,
    /// Chance of one as extreme, did the assumption hold.
    pub p: f64,
    /// Whether the assumption stands: the chance is 5 % or more.
    pub holds: bool,
}

impl From<Check> for CheckRow {
    fn from(check: Check) -> Self {
        Self {
            statistic: check.statistic,
            p: check.p,
            holds: check.p >= 0.05,
        }
    }
}

/// One unit's residual, and where it would stand in a normal sample.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Residual {
    /// The unit.
    pub unit: String,
    /// What the analysis expects of it.
    pub fitted: f64,
    /// Value less that.
    pub residual: f64,
    /// Normal score of its rank (Blom 1958), in standard deviations.
    pub score: f64,
}

/// Standard deviations from unit to unit and from head to head.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SpreadRow {
    /// Between units of one treatment.
    pub units: f64,
    /// Between heads of one unit.
    pub heads: f64,
    /// The same over the mean of all, per cent.
    pub units_pct: f64,
    /// The same over the mean of all, per cent.
    pub heads_pct: f64,
    /// Heads of a unit (harmonic mean).
    pub heads_per_unit: f64,
}
