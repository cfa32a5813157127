//! Common containers, inner measures in cm: common practice, no source. Measure your own.

use super::keyed::keyed;

keyed! {
    /// A common container.
    VesselChoice {
        /// A 4 L bottle with a wide neck.
        Bottle4 = "bottle_4",
        /// A 2 L bottle whose top was cut off where the shoulder begins.
        CutBottle2 = "cut_bottle_2",
        /// A bucket of about 19 L (5 US gallons).
        Bucket19 = "bucket_19",
        /// A storage box of about 45 L.
        Box45 = "box_45",
        /// A timber tank of one plywood sheet, lined.
        Tank240 = "tank_240",
        /// A long timber tank for boards, lined.
        Tank720 = "tank_720",
    }
}

/// The shape of a common container.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum VesselFigures {
    /// Body diameter and height, shoulder height, neck diameter and height.
    Bottle([f64; 5]),
    /// Diameter and height.
    Cylinder([f64; 2]),
    /// Bottom diameter, top diameter, height.
    TaperedRound([f64; 3]),
    /// Bottom length and width, top length and width, height.
    TaperedRectangular([f64; 5]),
    /// Length, width, height.
    Rectangular([f64; 3]),
}

impl VesselChoice {
    /// The measures of the container.
    pub const fn figures(self) -> VesselFigures {
        match self {
            Self::Bottle4 => VesselFigures::Bottle([15.4, 20.0, 4.5, 8.0, 3.0]),
            Self::CutBottle2 => VesselFigures::Cylinder([10.5, 19.0]),
            Self::Bucket19 => VesselFigures::TaperedRound([26.0, 29.0, 35.0]),
            Self::Box45 => VesselFigures::TaperedRectangular([49.0, 33.0, 55.0, 38.0, 27.0]),
            Self::Tank240 => VesselFigures::Rectangular([240.0, 120.0, 14.0]),
            Self::Tank720 => VesselFigures::Rectangular([735.0, 125.0, 19.0]),
        }
    }
}
