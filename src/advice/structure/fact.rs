//! What can be said of boards, covers and frames.

use serde::Serialize;

use crate::advice::outcome::{LevelBy, LoadStop};

/// What was found. Figures are in the unit that their name ends with.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "fact", rename_all = "snake_case")]
#[expect(missing_docs, reason = "the names of the figures say what they are")]
pub enum StructureFact {
    /// Fewer than two pipes carry a board at rest.
    TooFewPipes { pipes: u32 },
    /// How far resting boards sag between and beyond their pipes.
    BoardSag {
        sag_mm: f64,
        limit_mm: f64,
        stress_pct: f64,
    },
    /// What sag and floor leave of the moist air gap at its least.
    ClearGap {
        clear_gap_cm: f64,
        sag_mm: f64,
        floor_cm: f64,
        low_cm: f64,
    },
    /// A loaded board turns over.
    TurnsOver { metacentric_height_cm: f64 },
    /// How far an edge dips under an uneven load, against what stands above the solution.
    EdgeDip { dip_mm: f64, freeboard_mm: f64 },
    /// Whether boards have room to fall and rise between the sides.
    Jam { clearance_mm: f64, low_mm: f64 },
    /// Open strips beside the boards, for light and mosquitoes.
    OpenStrips { strip_mm: f64, limit_mm: f64 },
    /// Boards that find no place in rows.
    BoardsWithoutPlace { boards: u32 },
    /// Whether pipes stay down.
    PipesLift {
        lift_kg_per_m: f64,
        ballast_kg_per_m: f64,
    },
    /// Foam that takes up water.
    WaterUptake { uptake_kg: f64, board_kg: f64 },
    /// Foam left around the holes.
    HolesWeaken { foam_mm: f64, low_mm: f64 },
    /// Boards or cover cannot be cut from the sheet.
    SheetTooSmall,
    /// How far the cover sags under grown heads.
    CoverSag {
        sag_mm: f64,
        limit_mm: f64,
        prop_rows: u32,
        prop_height_mm: f64,
    },
    /// The cover lets light through.
    CoverLight,
    /// How far the floor is out of level.
    FloorLevel {
        drop_cm: f64,
        limit_cm: f64,
        length_cm: f64,
        by: LevelBy,
    },
    /// How the sides stand up to the solution.
    Sides {
        bulge_mm: f64,
        limit_mm: f64,
        stress_mpa: f64,
        stress_limit_mpa: f64,
    },
    /// A tank so deep that a competent person should look at its sides.
    AskCompetentPerson { depth_cm: f64, limit_cm: f64 },
    /// The tank must not stand where it is planned.
    DoNotBuildThere {
        stop: LoadStop,
        load_kg_per_m2: f64,
        total_kg: f64,
        rating_kg_per_m2: Option<f64>,
    },
}
