//! The closed choices of a plan that are no entry of the catalog.

use crate::catalog::acids::Acid;
use crate::catalog::keyed::keyed;
use crate::catalog::salts::Salt;
use crate::science::layout::Arrangement;

keyed! {
    /// How the plants stand over the solution.
    Method {
        /// One plant in the mouth of a bottle or jar.
        Bottle = "bottle",
        /// Several plants in the lid of a bucket.
        Bucket = "bucket",
        /// A tank whose cover rests on its frame.
        CoveredTank = "covered_tank",
        /// A tank whose boards float first and later rest on pipes.
        FloatingBoards = "floating_boards",
    }
}

keyed! {
    /// The shape of the space that holds the solution.
    Shape {
        /// An upright cylinder.
        Cylinder = "cylinder",
        /// A round vessel wider at one end.
        TaperedRound = "tapered_round",
        /// A rectangular box.
        Rectangular = "rectangular",
        /// A rectangular box with sloping walls.
        TaperedRectangular = "tapered_rectangular",
        /// A bottle with body, shoulder and neck.
        Bottle = "bottle",
        /// Any vessel, known by litres poured and depths read.
        Measured = "measured",
    }
}

keyed! {
    /// How the holes of a board or cover are arranged.
    Pattern {
        /// Rows in line.
        Square = "square",
        /// Every other row shifted by half the spacing.
        Staggered = "staggered",
        /// Every neighbour at the same distance, the spacing across.
        Hexagonal = "hexagonal",
    }
}

impl Pattern {
    /// The arrangement as geometry knows it.
    pub const fn arrangement(self) -> Arrangement {
        match self {
            Self::Square => Arrangement::Square,
            Self::Staggered => Arrangement::Staggered,
            Self::Hexagonal => Arrangement::Hexagonal,
        }
    }
}

keyed! {
    /// What the date of the plan means.
    DateMeaning {
        /// The day on which the seedlings move onto the solution.
        Transplanting = "transplanting",
        /// The day on which the seed is sown.
        Seeding = "seeding",
    }
}

keyed! {
    /// How the fertilizer is measured out.
    Dosing {
        /// One dry blend, weighed.
        DryBlend = "dry_blend",
        /// Two stock solutions, A and B, in equal volumes.
        Stocks = "stocks",
        /// Single salts towards a published solution.
        Salts = "salts",
    }
}

keyed! {
    /// What fixes the strength of the solution.
    StrengthBy {
        /// A target electrical conductivity.
        Conductivity = "ec",
        /// A target concentration of nitrogen.
        Nitrogen = "nitrogen",
    }
}

keyed! {
    /// Which calcium nitrate stock A is made of.
    CalciumNitrate {
        /// The granular double salt with ammonium nitrate, 5Ca(NO3)2·NH4NO3·10H2O.
        DoubleSalt = "double_salt",
        /// Calcium nitrate tetrahydrate.
        Tetrahydrate = "tetrahydrate",
    }
}

keyed! {
    /// How the light of a day is known.
    DaylightBy {
        /// Solar radiation of the day outside.
        Radiation = "radiation",
        /// Hours of bright sunshine.
        Sunshine = "sunshine",
    }
}

keyed! {
    /// The ends of the pipes that carry resting boards.
    PipeEnds {
        /// Open: the solution enters, only the wall displaces it.
        Open = "open",
        /// Capped with air inside: the whole pipe displaces solution, and wants to float.
        Capped = "capped",
        /// Filled with solution, then capped: it displaces all of itself and lifts little.
        Flooded = "flooded",
    }
}

keyed! {
    /// What a tank stands on.
    StandsOn {
        /// Firm ground outdoors or in a greenhouse.
        Ground = "ground",
        /// A ground slab of a building.
        Slab = "slab",
        /// A bench or table.
        Bench = "bench",
        /// A floor with a room or air below it.
        UpperFloor = "upper_floor",
        /// A balcony, deck, terrace or roof.
        BalconyOrRoof = "balcony_or_roof",
    }
}

keyed! {
    /// What is known of the raw water.
    WaterKind {
        /// Rain or other nearly pure water.
        Rain = "rain",
        /// A tap of which only the conductivity is known.
        Tap = "tap",
        /// A full analysis.
        Analysis = "analysis",
    }
}

keyed! {
    /// The acid that brings the solution to its pH, if any.
    AcidChoice {
        /// None: the pH is left as it comes.
        None = "none",
        /// Nitric acid.
        Nitric = "nitric",
        /// Phosphoric acid.
        Phosphoric = "phosphoric",
        /// Sulfuric acid.
        Sulfuric = "sulfuric",
        /// Citric acid, a solid.
        Citric = "citric",
    }
}

impl CalciumNitrate {
    /// The salt of the catalog.
    pub const fn salt(self) -> Salt {
        match self {
            Self::DoubleSalt => Salt::CalciumAmmoniumNitrate,
            Self::Tetrahydrate => Salt::CalciumNitrate,
        }
    }
}

impl AcidChoice {
    /// The acid's figures; `None` where none is used.
    pub const fn figures(self) -> Option<Acid> {
        match self {
            Self::None => None,
            Self::Nitric => Some(Acid::Nitric),
            Self::Phosphoric => Some(Acid::Phosphoric),
            Self::Sulfuric => Some(Acid::Sulfuric),
            Self::Citric => Some(Acid::Citric),
        }
    }
}
