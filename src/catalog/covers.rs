//! What a covered tank is covered with.

use super::keyed::keyed;

keyed! {
    /// The material of a fixed cover that the pots hang from.
    CoverMaterial {
        /// Extruded polystyrene foam.
        ExtrudedFoam = "extruded_foam",
        /// Expanded polystyrene foam.
        ExpandedFoam = "expanded_foam",
        /// Plywood.
        Plywood = "plywood",
        /// A sheet of solid rigid plastic.
        RigidPlastic = "rigid_plastic",
        /// Fabric or film stretched over a frame.
        Fabric = "fabric",
    }
}

/// How a cover bears its load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Bearing {
    /// It bends, with this modulus of elasticity, MPa: low, usual, high.
    Bends {
        /// The range and what is reckoned with.
        modulus_mpa: (f64, f64, f64),
    },
    /// It hangs, with this pull for each metre of edge, N/m: low, usual, high.
    Hangs {
        /// The range and what is reckoned with.
        tension_n_per_m: (f64, f64, f64),
    },
}

/// What is known of a cover.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoverFigures {
    /// Density, kg/m³.
    pub density: f64,
    /// How it bears its load.
    pub bearing: Bearing,
    /// Sag in the long run over the first one.
    pub creep_factor: f64,
    /// Whether it keeps light out by itself.
    pub light_tight: bool,
}

impl CoverMaterial {
    /// The figures of the cover.
    ///
    /// Foam: as [`super::foams`], types IV and II. White foam lets some light through, so it counts
    /// as not tight. Plywood: mean modulus across the weaker direction 3 to 7 GPa (EN 636, from
    /// memory), creep 1 + 2.5 in service class 3 (EN 1995-1-1 table 3.2, from memory). Rigid plastic:
    /// PVC-U sheet, 2.4 to 3.3 GPa (from memory), creep of 3 (assumed). Fabric: pull of hand-stretched
    /// fabric 150 to 600 N/m, creep of 1.5 (assumed, no source).
    pub const fn figures(self) -> CoverFigures {
        use Bearing::{Bends, Hangs};
        let (density, bearing, creep_factor, light_tight) = match self {
            Self::ExtrudedFoam => (
                25.0,
                Bends {
                    modulus_mpa: (8.0, 14.0, 20.0),
                },
                1.5,
                true,
            ),
            Self::ExpandedFoam => (
                22.0,
                Bends {
                    modulus_mpa: (2.2, 2.35, 2.5),
                },
                2.0,
                false,
            ),
            Self::Plywood => (
                600.0,
                Bends {
                    modulus_mpa: (3000.0, 5000.0, 7000.0),
                },
                3.5,
                true,
            ),
            Self::RigidPlastic => (
                1400.0,
                Bends {
                    modulus_mpa: (2400.0, 2800.0, 3300.0),
                },
                3.0,
                true,
            ),
            Self::Fabric => (
                500.0,
                Hangs {
                    tension_n_per_m: (150.0, 300.0, 600.0),
                },
                1.5,
                false,
            ),
        };
        CoverFigures {
            density,
            bearing,
            creep_factor,
            light_tight,
        }
    }
}
