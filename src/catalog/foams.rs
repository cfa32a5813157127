//! Foam boards by type.

use super::keyed::keyed;

keyed! {
    /// Rigid polystyrene foam by its type in ASTM C578.
    Foam {
        /// Extruded, type X.
        ExtrudedX = "extruded_x",
        /// Extruded, type IV: the usual insulation board.
        ExtrudedIv = "extruded_iv",
        /// Extruded, type VI.
        ExtrudedVi = "extruded_vi",
        /// Expanded, type I.
        ExpandedI = "expanded_i",
        /// Expanded, type VIII.
        ExpandedViii = "expanded_viii",
        /// Expanded, type II.
        ExpandedIi = "expanded_ii",
        /// Expanded, type IX.
        ExpandedIx = "expanded_ix",
    }
}

/// What is known of a foam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FoamFigures {
    /// Least density, kg/m³.
    pub density: f64,
    /// Most water taken up, share of the volume.
    pub water_uptake: f64,
}

impl Foam {
    /// The figures of the foam: ASTM C578-10, minimum density and maximum water absorption
    /// (24 h, C272).
    pub const fn figures(self) -> FoamFigures {
        let (density, water_uptake) = match self {
            Self::ExtrudedX => (21.0, 0.003),
            Self::ExtrudedIv => (25.0, 0.003),
            Self::ExtrudedVi => (29.0, 0.003),
            Self::ExpandedI => (15.0, 0.04),
            Self::ExpandedViii => (18.0, 0.03),
            Self::ExpandedIi => (22.0, 0.03),
            Self::ExpandedIx => (29.0, 0.02),
        };
        FoamFigures {
            density,
            water_uptake,
        }
    }
}
