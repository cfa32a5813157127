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
    /// Most water taken up in long immersion, share of the volume.
    pub water_uptake_long: f64,
    /// Modulus of elasticity in bending, MPa: low, usual, high.
    pub modulus_mpa: (f64, f64, f64),
    /// Bending stress at which it breaks, least, kPa.
    pub flexural_strength_kpa: f64,
    /// Sag under a load of weeks over the first sag.
    pub creep_factor: f64,
    /// Whether it is extruded, with closed cells that hardly take up water.
    pub extruded: bool,
}

impl Foam {
    /// The figures of the foam.
    ///
    /// Density, water absorption (24 h, C272), flexural strength: ASTM C578-10, minimum and maximum
    /// requirements. Long immersion: EN 13164 level WL(T)0.7 for extruded, EN 13163 WL(T)5 to WL(T)2
    /// for expanded foam (the latter from memory). Modulus: extruded 8 to 20 MPa in the plane of the
    /// board (from memory); expanded by manufacturers' sheets, 180 to 220, 250 to 310, 320 to 360
    /// and 460 to 500 psi for types I, VIII, II, IX. Creep under weeks of load: assumed, no source.
    pub const fn figures(self) -> FoamFigures {
        // Extruded foams.
        const XPS: (f64, f64, f64) = (8.0, 14.0, 20.0);
        let (density, water_uptake, water_uptake_long, modulus_mpa, flexural_strength_kpa) =
            match self {
                Self::ExtrudedX => (21.0, 0.003, 0.007, XPS, 276.0),
                Self::ExtrudedIv => (25.0, 0.003, 0.007, XPS, 345.0),
                Self::ExtrudedVi => (29.0, 0.003, 0.007, XPS, 414.0),
                Self::ExpandedI => (15.0, 0.04, 0.05, (1.2, 1.4, 1.5), 173.0),
                Self::ExpandedViii => (18.0, 0.03, 0.05, (1.7, 1.9, 2.1), 208.0),
                Self::ExpandedIi => (22.0, 0.03, 0.03, (2.2, 2.35, 2.5), 240.0),
                Self::ExpandedIx => (29.0, 0.02, 0.02, (3.2, 3.3, 3.4), 345.0),
            };
        let extruded = matches!(self, Self::ExtrudedX | Self::ExtrudedIv | Self::ExtrudedVi);
        FoamFigures {
            density,
            water_uptake,
            water_uptake_long,
            modulus_mpa,
            flexural_strength_kpa,
            creep_factor: if extruded { 1.5 } else { 2.0 },
            extruded,
        }
    }
}
