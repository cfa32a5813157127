//! Sawn timber for the sides of a tank, by its true size.

use super::keyed::keyed;

keyed! {
    /// A common board for the side of a tank.
    Timber {
        /// Metric, sawn, 25 × 150 mm.
        Metric25x150 = "metric_25x150",
        /// Metric, sawn, 38 × 150 mm.
        Metric38x150 = "metric_38x150",
        /// Metric, sawn, 38 × 200 mm.
        Metric38x200 = "metric_38x200",
        /// Metric, sawn, 47 × 150 mm.
        Metric47x150 = "metric_47x150",
        /// Metric, sawn, 47 × 200 mm.
        Metric47x200 = "metric_47x200",
        /// Metric, sawn, 47 × 225 mm.
        Metric47x225 = "metric_47x225",
        /// US, nominal 1 × 6 inches.
        Us1x6 = "us_1x6",
        /// US, nominal 1 × 8 inches.
        Us1x8 = "us_1x8",
        /// US, nominal 2 × 4 inches.
        Us2x4 = "us_2x4",
        /// US, nominal 2 × 6 inches.
        Us2x6 = "us_2x6",
        /// US, nominal 2 × 8 inches.
        Us2x8 = "us_2x8",
        /// US, nominal 2 × 10 inches.
        Us2x10 = "us_2x10",
        /// US, nominal 2 × 12 inches.
        Us2x12 = "us_2x12",
    }
}

/// The series of a board.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum TimberSeries {
    /// EN 1313-1: the nominal size is the true size of the sawn timber at 20 % moisture.
    Metric,
    /// PS 20 (American Softwood Lumber Standard): the dressed size is less than the nominal one.
    UsDressed,
}

/// What is known of a board.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TimberFigures {
    /// The series.
    pub series: TimberSeries,
    /// Nominal thickness and width in the series' own unit, mm or inches.
    pub nominal: (f64, f64),
    /// True thickness, mm.
    pub thickness_mm: f64,
    /// True width, mm.
    pub width_mm: f64,
}

impl Timber {
    /// The figures of the board. Metric: EN 1313-1, table of preferred sizes. US: PS 20-20, table
    /// 3, dry dressed sizes in their metric equivalents. From memory.
    pub const fn figures(self) -> TimberFigures {
        use TimberSeries::{Metric, UsDressed};
        let (series, nominal, thickness_mm, width_mm) = match self {
            Self::Metric25x150 => (Metric, (25.0, 150.0), 25.0, 150.0),
            Self::Metric38x150 => (Metric, (38.0, 150.0), 38.0, 150.0),
            Self::Metric38x200 => (Metric, (38.0, 200.0), 38.0, 200.0),
            Self::Metric47x150 => (Metric, (47.0, 150.0), 47.0, 150.0),
            Self::Metric47x200 => (Metric, (47.0, 200.0), 47.0, 200.0),
            Self::Metric47x225 => (Metric, (47.0, 225.0), 47.0, 225.0),
            Self::Us1x6 => (UsDressed, (1.0, 6.0), 19.0, 140.0),
            Self::Us1x8 => (UsDressed, (1.0, 8.0), 19.0, 184.0),
            Self::Us2x4 => (UsDressed, (2.0, 4.0), 38.0, 89.0),
            Self::Us2x6 => (UsDressed, (2.0, 6.0), 38.0, 140.0),
            Self::Us2x8 => (UsDressed, (2.0, 8.0), 38.0, 184.0),
            Self::Us2x10 => (UsDressed, (2.0, 10.0), 38.0, 235.0),
            Self::Us2x12 => (UsDressed, (2.0, 12.0), 38.0, 286.0),
        };
        TimberFigures {
            series,
            nominal,
            thickness_mm,
            width_mm,
        }
    }
}

/// Softwood of strength class C16, EN 338: mean modulus of elasticity along the grain, MPa; from
/// memory.
pub const MODULUS_MPA: f64 = 8000.0;
/// Bending stress that wet softwood may bear for good, MPa: class C16, 16 MPa, × 0.5 for a permanent
/// load in service class 3 / 1.3 (EN 338, EN 1995-1-1 tables 3.1 and 2.3; from memory).
pub const ALLOWED_STRESS_MPA: f64 = 6.0;
/// Deflection in the long run over the first one: 1 + k of 2.0 for solid timber in service class 3
/// (EN 1995-1-1 table 3.2; from memory).
pub const CREEP_FACTOR: f64 = 3.0;
/// Density of softwood as built, kg/m³: mean of class C16, 370, and some moisture; from memory.
pub const DENSITY: f64 = 450.0;
