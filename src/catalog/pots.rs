//! Net pots of common sizes: common practice, no source. Measure your own.

use super::keyed::keyed;

/// Density of a net pot filled with wet growing medium, kg/m³: coir, perlite or mineral wool at
/// container capacity hold 500 to 900 kg/m³; assumed, no source.
pub const WET_MEDIUM_DENSITY: f64 = 700.0;

keyed! {
    /// A common net pot.
    PotChoice {
        /// About 5 cm across, 5 cm deep.
        Small = "small",
        /// About 7.5 cm across, 7.5 cm deep.
        Medium = "medium",
        /// About 7.5 cm across, 10 cm deep.
        Deep = "deep",
    }
}

/// The measures of a net pot, cm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pot {
    /// Foot to underside of the flange.
    pub height_cm: f64,
    /// Just below the flange.
    pub top_diameter_cm: f64,
    /// At the foot.
    pub bottom_diameter_cm: f64,
    /// Over the flange.
    pub flange_diameter_cm: f64,
}

impl PotChoice {
    /// The measures of the pot.
    pub const fn pot(self) -> Pot {
        let (height_cm, top_diameter_cm, bottom_diameter_cm, flange_diameter_cm) = match self {
            Self::Small => (5.0, 4.6, 3.2, 5.6),
            Self::Medium => (7.5, 6.8, 4.6, 7.8),
            Self::Deep => (10.0, 6.8, 4.2, 7.8),
        };
        Pot {
            height_cm,
            top_diameter_cm,
            bottom_diameter_cm,
            flange_diameter_cm,
        }
    }
}
