//! Standard pipes by their true outside diameter.

use super::keyed::keyed;

keyed! {
    /// A standard pipe size, or the grower's own measure.
    PipeChoice {
        /// Metric, 50 mm.
        Metric50 = "metric_50",
        /// Metric, 63 mm.
        Metric63 = "metric_63",
        /// Metric, 75 mm.
        Metric75 = "metric_75",
        /// Metric, 90 mm.
        Metric90 = "metric_90",
        /// Metric, 110 mm.
        Metric110 = "metric_110",
        /// Metric, 125 mm.
        Metric125 = "metric_125",
        /// Metric, 140 mm.
        Metric140 = "metric_140",
        /// Metric, 160 mm.
        Metric160 = "metric_160",
        /// Inch series, schedule 40, nominal 2.
        Inch2 = "inch_2",
        /// Inch series, schedule 40, nominal 3.
        Inch3 = "inch_3",
        /// Inch series, schedule 40, nominal 4.
        Inch4 = "inch_4",
        /// Inch series, schedule 40, nominal 6.
        Inch6 = "inch_6",
        /// Sewer and drain pipe, nominal 3 inches.
        Drain3 = "drain_3",
        /// Sewer and drain pipe, nominal 4 inches.
        Drain4 = "drain_4",
        /// Sewer and drain pipe, nominal 6 inches.
        Drain6 = "drain_6",
        /// A pipe that the grower measured.
        Own = "own",
    }
}

keyed! {
    /// What a pipe is made of.
    PipeMaterial {
        /// Unplasticised PVC.
        Pvc = "pvc",
        /// High-density polyethylene.
        Polyethylene = "polyethylene",
        /// Polypropylene.
        Polypropylene = "polypropylene",
        /// ABS.
        Abs = "abs",
    }
}

impl PipeMaterial {
    /// Density, kg/m³: middle of the range of 1380 to 1410, 945 to 960, 905, and 1040 to 1060; from
    /// memory.
    pub const fn density(self) -> f64 {
        match self {
            Self::Pvc => 1395.0,
            Self::Polyethylene => 950.0,
            Self::Polypropylene => 905.0,
            Self::Abs => 1050.0,
        }
    }
}

/// The series of a pipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Series {
    /// ISO 161-1, EN ISO 1452: nominal size = least mean outside diameter.
    Metric,
    /// ASTM D1785 and D2665, schedule 40.
    Inch,
    /// ASTM D2729 and D3034.
    InchDrain,
}

/// What is known of a pipe.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pipe {
    /// The series.
    pub series: Series,
    /// Nominal size in the series' own unit (mm or inch).
    pub nominal: f64,
    /// Outside diameter, mm.
    pub outside_diameter_mm: f64,
    /// Wall, mm.
    pub wall_mm: f64,
}

impl PipeChoice {
    /// The figures of the pipe; `None` for the grower's own.
    ///
    /// Outside diameters: ISO 161-1 / EN ISO 1452, ASTM D1785 table 1, ASTM D3034 and D2729.
    /// Walls: schedule 40 minimum from ASTM D1785; the others from memory (EN 1329-1 and EN 1401-1
    /// drain pipe, ASTM D2729 and D3034 SDR 35). A wall decides only how much solution an open
    /// pipe displaces, a small figure.
    pub const fn pipe(self) -> Option<Pipe> {
        use Series::{Inch, InchDrain, Metric};
        let (series, nominal, outside_diameter_mm, wall_mm) = match self {
            Self::Metric50 => (Metric, 50.0, 50.0, 3.0),
            Self::Metric63 => (Metric, 63.0, 63.0, 3.0),
            Self::Metric75 => (Metric, 75.0, 75.0, 3.0),
            Self::Metric90 => (Metric, 90.0, 90.0, 3.0),
            Self::Metric110 => (Metric, 110.0, 110.0, 3.2),
            Self::Metric125 => (Metric, 125.0, 125.0, 3.2),
            Self::Metric140 => (Metric, 140.0, 140.0, 3.5),
            Self::Metric160 => (Metric, 160.0, 160.0, 4.0),
            Self::Inch2 => (Inch, 2.0, 60.33, 3.91),
            Self::Inch3 => (Inch, 3.0, 88.90, 5.49),
            Self::Inch4 => (Inch, 4.0, 114.30, 6.02),
            Self::Inch6 => (Inch, 6.0, 168.28, 7.11),
            Self::Drain3 => (InchDrain, 3.0, 82.55, 1.78),
            Self::Drain4 => (InchDrain, 4.0, 107.06, 1.91),
            Self::Drain6 => (InchDrain, 6.0, 159.39, 4.55),
            Self::Own => return None,
        };
        Some(Pipe {
            series,
            nominal,
            outside_diameter_mm,
            wall_mm,
        })
    }
}
