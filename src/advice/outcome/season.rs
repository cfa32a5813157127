//! What happens from planting to harvest.

use serde::Serialize;

use super::boards::BoardStructure;
use super::mixture::Elements;
use crate::advice::boards::PipeRow;
use crate::season::{Balance, MajorNutrient};

/// The season of one container.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SeasonOutcome {
    /// Days from planting to the target mass; `None` when it is not reached, or not before the
    /// solution is used up.
    pub harvest_day: Option<u32>,
    /// Days that the season lasts: to harvest, to the last drop, or the longest that is followed.
    pub days_followed: u32,
    /// Fresh mass of a head at the end, g.
    pub head_g: f64,
    /// Water that one plant's share of the container lost, L.
    pub water_per_plant_l: f64,
    /// Water per fresh mass of heads, L/kg.
    pub water_per_kg_l: f64,
    /// What the whole container lost, L.
    pub water_l: f64,
    /// What of it evaporated through openings, L.
    pub evaporated_l: f64,
    /// Solution left in one container, L.
    pub left_l: f64,
    /// Water that the crop would draw from planting to its target mass, L, had it enough.
    pub needed_l: f64,
    /// Moist air between solution and cover at the end, cm.
    pub gap_at_end_cm: f64,
    /// Conductivity at the end, mS/cm at 25 °C.
    pub ec_at_end_ms_per_cm: f64,
    /// pH at the end.
    pub ph_at_end: f64,
    /// The first nutrient to run short, and the day.
    pub shortfall: Option<Shortfall>,
    /// Yield that sodium chloride leaves at the end, per cent of the full (Maas and Hoffman);
    /// `None` for a crop without published tolerance.
    pub yield_under_salt_pct: Option<f64>,
    /// Mean of the air temperature, °C.
    pub mean_temperature_c: f64,
    /// Photosynthetic light at the plants, mol/m² a day.
    pub daily_light_mol_per_m2: f64,
    /// Events in their order.
    pub events: Vec<Event>,
    /// Day by day from planting.
    pub days: Vec<DayOutcome>,
    /// Supply and need of the major nutrients.
    pub nutrients: Vec<Balance>,
}

/// Something that happens on a day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Event {
    /// What.
    pub kind: EventKind,
    /// Days after planting.
    pub day: u32,
    /// The calendar day, year-month-day.
    pub date: String,
}

/// What can happen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum EventKind {
    /// The seedlings move onto the solution.
    Planted,
    /// The foot of the pots hangs above the solution.
    PotFootLeaves,
    /// The boards come to rest on the pipes.
    BoardsRest,
    /// The heads have reached their target mass.
    TargetReached,
    /// The solution is used up.
    UsedUp,
}

/// The end of one day.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct DayOutcome {
    /// Days after planting.
    pub day: u32,
    /// Solution above the floor, cm.
    pub level_cm: f64,
    /// Moist air between solution and cover, cm.
    pub gap_cm: f64,
    /// Solution left in one container, L.
    pub volume_l: f64,
    /// Fresh mass of a head, g.
    pub head_g: f64,
    /// Water lost since planting by one container, L.
    pub water_l: f64,
    /// Conductivity, mS/cm at 25 °C.
    pub ec_ms_per_cm: f64,
    /// pH.
    pub ph: f64,
    /// Elements left, mg/L.
    pub elements_mg_per_l: Elements,
    /// Sodium, mg/L: it builds up as the water leaves.
    pub sodium_mg_per_l: f64,
    /// Chloride, mg/L.
    pub chloride_mg_per_l: f64,
}

/// A nutrient that runs short.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Shortfall {
    /// Which.
    pub nutrient: MajorNutrient,
    /// Days after planting.
    pub day: u32,
}

/// Floating boards and their pipes.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BoardsOutcome {
    /// Depth of the underside in the solution at planting, mm; `None` when the boards sink.
    pub draught_mm: Option<f64>,
    /// The same at the end, while afloat.
    pub draught_at_end_mm: Option<f64>,
    /// Whether the boards float free of the pipes at planting.
    pub floats_at_planting: bool,
    /// Water between pipes and boards at planting, cm.
    pub clearance_at_planting_cm: f64,
    /// Depth above the floor from which the boards float free, cm.
    pub floats_from_depth_cm: f64,
    /// Days after planting on which the boards rest; `None` when they still float at the end.
    pub rest_day: Option<u32>,
    /// Moist air at the end, cm.
    pub gap_at_harvest_cm: f64,
    /// Solution under the boards at the end, cm.
    pub depth_at_harvest_cm: f64,
    /// Mass of one board with pots and seedlings, kg.
    pub board_mass_kg: f64,
    /// Volume that brings boards afloat again after harvest, L.
    pub refloat_l: f64,
    /// The standard sizes compared.
    pub pipes: Vec<PipeRow>,
    /// Sag, trim, clearance, floor and ballast.
    #[serde(flatten)]
    pub structure: BoardStructure,
}
