//! What boards and pipes do, and how holes and boards lie and are cut.

use serde::Serialize;

use crate::catalog::pipes::PipeChoice;
use crate::plan::PipeEnds;

/// What floating boards do under an uneven load, at rest, and along the tank.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BoardStructure {
    /// Boards side by side across the tank.
    pub boards_across: u32,
    /// Side of a board across the tank, which the pipes carry, mm.
    pub across_mm: f64,
    /// Load on one resting board at the end, with wet medium, heads and wet roots, kg.
    pub resting_load_kg: f64,
    /// Water that the foam takes up in long immersion, kg for one board.
    pub water_uptake_kg: f64,
    /// Whether the foam is extruded: closed cells, hardly any water.
    pub extruded: bool,
    /// Pipes under a board: middles from its edge, mm.
    pub supports_mm: Vec<f64>,
    /// How far the lowest point of a resting board lies below its pipes at the end, mm, with the
    /// usual modulus and creep; `None` where fewer than two pipes carry it.
    pub sag_mm: Option<f64>,
    /// The same for the stiffest and the softest foam of the type, mm.
    pub sag_range_mm: Option<(f64, f64)>,
    /// Deflection in the middle of each span, mm, downwards.
    pub sag_middles_mm: Vec<f64>,
    /// Deflection of both ends, mm, downwards.
    pub sag_tips_mm: Option<(f64, f64)>,
    /// Greatest bending stress against the strength of the foam, per cent.
    pub stress_pct: Option<f64>,
    /// Most sag that is taken, mm.
    pub sag_limit_mm: f64,
    /// Distance from pipe to pipe at which a board sags least, mm.
    pub best_pipe_spacing_mm: f64,
    /// Moist air at the end below the lowest point of a board, cm.
    pub clear_gap_cm: f64,
    /// Moist air at the end from the higher end of the floor to the lower, cm.
    pub gap_along_cm: Vec<GapAt>,
    /// How much lower one end of the floor lies, cm.
    pub floor_drop_cm: f64,
    /// Most that the floor may be out of level, cm.
    pub floor_drop_limit_cm: f64,
    /// Metacentric height across the narrower side at planting, cm; `None` when the boards sink.
    pub metacentric_height_cm: Option<f64>,
    /// The same at the end, with grown heads.
    pub metacentric_height_at_end_cm: Option<f64>,
    /// How much lower an edge lies when only one half of the board carries grown heads, mm.
    pub edge_dip_mm: Option<f64>,
    /// What of the board stands above the solution at the end, while afloat, mm.
    pub freeboard_mm: Option<f64>,
    /// Room between boards and sides together, across the tank, mm.
    pub clearance_across_mm: f64,
    /// The same along the tank, with whatever the boards leave uncovered.
    pub clearance_along_mm: f64,
    /// Least room so that boards do not jam, and most so that light and mosquitoes stay out, mm.
    pub clearance_limits_mm: (f64, f64),
    /// The open strips that a flap must close, mm.
    pub strip_mm: f64,
    /// Pipes and what holds them down.
    pub pipe: PipeStructure,
}

/// Moist air at one place along the tank.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct GapAt {
    /// From the higher end of the floor, cm.
    pub at_cm: f64,
    /// Between solution and boards, cm.
    pub gap_cm: f64,
}

/// What the pipes weigh, lift and need.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PipeStructure {
    /// The size.
    pub size: PipeChoice,
    /// Open, capped or filled.
    pub ends: PipeEnds,
    /// Pipes side by side.
    pub count: u32,
    /// From middle to middle, mm.
    pub spacing_mm: f64,
    /// All pipes together, m.
    pub total_length_m: f64,
    /// Mass of the bare pipe, kg/m.
    pub mass_kg_per_m: f64,
    /// What it lifts with the ends as planned, kg/m; negative where it sinks by itself.
    pub lift_kg_per_m: f64,
    /// The same for open, capped and filled ends, kg/m.
    pub lift_by_ends_kg_per_m: Vec<(PipeEnds, f64)>,
    /// Ballast inside the pipe that keeps it down, with margin, kg/m; zero where none is needed.
    pub ballast_kg_per_m: f64,
    /// The same laid outside as stone or concrete, dry, kg/m: it is lifted too.
    pub ballast_outside_kg_per_m: f64,
    /// All ballast inside, kg.
    pub ballast_total_kg: f64,
    /// The margin.
    pub ballast_margin: f64,
}

/// How holes and boards lie, and how they are cut.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LayoutOutcome {
    /// One board, or a whole cover: length, mm.
    pub board_length_mm: f64,
    /// Width, mm.
    pub board_width_mm: f64,
    /// Diameter of the holes: they hold a pot just below its flange, mm.
    pub hole_diameter_mm: f64,
    /// Middles of the holes of one board (of the whole cover where it is fixed), from its corner.
    pub holes: Vec<HolePlace>,
    /// Holes in all.
    pub hole_count: u32,
    /// Plants on a square metre of the tank.
    pub plants_per_m2: f64,
    /// Foam between a hole and the nearest edge, mm.
    pub edge_left_mm: f64,
    /// Foam between two neighbouring holes, mm; `None` for a single hole.
    pub between_holes_mm: Option<f64>,
    /// The boards in the tank, from the corner of the tank.
    pub boards: Vec<BoardPlace>,
    /// Boards asked for that find no place when laid in rows.
    pub boards_without_place: u32,
    /// Length and width of a stock sheet, mm.
    pub sheet_mm: (f64, f64),
    /// Stock sheets needed.
    pub sheets: u32,
    /// Where each piece is cut from.
    pub pieces: Vec<SheetPiece>,
    /// What is left of the sheets.
    pub offcuts: Vec<SheetPiece>,
    /// What is left, per cent of all sheets.
    pub waste_pct: f64,
}

/// The middle of a hole from the corner of its board.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct HolePlace {
    /// Along the length, mm.
    pub x_mm: f64,
    /// Along the width, mm.
    pub y_mm: f64,
}

/// A board in its tank.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct BoardPlace {
    /// From one end of the tank, mm.
    pub x_mm: f64,
    /// From one side of the tank, mm.
    pub y_mm: f64,
    /// Along the tank, mm.
    pub length_mm: f64,
    /// Across the tank, mm.
    pub width_mm: f64,
    /// Whether it is a strip without holes that closes the rest of the tank.
    pub strip: bool,
}

/// A rectangle on a stock sheet.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SheetPiece {
    /// Which sheet, from 1.
    pub sheet: u32,
    /// Along its length, mm.
    pub x_mm: f64,
    /// Along its width, mm.
    pub y_mm: f64,
    /// Size along the length, mm.
    pub length_mm: f64,
    /// Size along the width, mm.
    pub width_mm: f64,
}
