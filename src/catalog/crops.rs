//! Crops: what a head is made of, and whether the growth model was validated for it.

use super::keyed::keyed;
use super::tissue::{self, TissueContent};
use crate::science::units::Ratio;

keyed! {
    /// A leafy crop.
    CropKind {
        /// Leaf lettuce.
        LeafLettuce = "leaf_lettuce",
        /// Butterhead lettuce.
        ButterheadLettuce = "butterhead_lettuce",
        /// Romaine lettuce.
        RomaineLettuce = "romaine_lettuce",
        /// Pak choi.
        PakChoi = "pak_choi",
        /// Leaf mustard.
        LeafMustard = "leaf_mustard",
        /// Spinach.
        Spinach = "spinach",
        /// Chard.
        Chard = "chard",
        /// Basil.
        Basil = "basil",
        /// Coriander leaf.
        Coriander = "coriander",
        /// Parsley.
        Parsley = "parsley",
    }
}

/// What is known of a crop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crop {
    /// Dry mass as a share of the fresh mass of the head.
    pub dry_matter: Ratio,
    /// Whether the growth model was published and validated for this crop.
    pub validated: bool,
    /// Temperature of the day's mean above which bolting, tip burn or poor heads are common, °C.
    pub warm_limit_c: f64,
    /// Nutrients in the dry mass.
    pub tissue: TissueContent,
}

impl CropKind {
    /// The figures of the crop.
    pub fn crop(self) -> Crop {
        let validated = matches!(
            self,
            Self::LeafLettuce | Self::ButterheadLettuce | Self::RomaineLettuce
        );
        // Lettuce: yield drops and tip burn and bolting rise above day means of 28 to 30 °C
        // (from memory); basil likes it warmer, spinach and coriander bolt sooner (common
        // practice, no source).
        let warm_limit_c = match self {
            Self::Basil => 33.0,
            Self::Spinach | Self::Coriander => 25.0,
            _ => 28.0,
        };
        Crop {
            dry_matter: tissue::dry_matter_content(self),
            validated,
            warm_limit_c,
            tissue: tissue::of(self),
        }
    }
}
