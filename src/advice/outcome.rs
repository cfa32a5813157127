//! What comes of a plan: figures in the trade's units, each with its unit in its name.

use serde::Serialize;

use super::boards::PipeRow;
use super::calendar::Calendar;
use super::findings::Finding;
use super::section::Section;
use crate::season::Balance;

/// Everything that follows from a sound plan.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Outcome {
    /// How deep to fill.
    pub fill: Fill,
    /// What to dissolve.
    pub fertilizer: Doses,
    /// What will happen.
    pub season: SeasonOutcome,
    /// Boards and pipes, where boards float.
    pub boards: Option<BoardsOutcome>,
    /// Dates.
    pub calendar: Calendar,
    /// Checks, cautions and notes, the gravest first.
    pub findings: Vec<Finding>,
    /// The container in section, to scale.
    #[serde(skip)]
    pub section: Section,
}

/// How deep to fill one container.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Fill {
    /// Solution in one container, L.
    pub volume_l: f64,
    /// Solution in all containers, L.
    pub total_volume_l: f64,
    /// Solution for one plant, L.
    pub per_plant_l: f64,
    /// Depth of the fill mark above the floor, before pots or boards go in, cm.
    pub depth_cm: f64,
    /// Fill mark below the rim, cm.
    pub below_rim_cm: f64,
    /// Level above the floor once everything is in place, cm.
    pub planted_level_cm: f64,
    /// How deep the foot of a pot stands in the solution at planting, cm.
    pub pot_immersion_cm: f64,
    /// Mass of the solution in one container, kg.
    pub mass_kg: f64,
    /// Load of the solution on the floor below, kg/m².
    pub load_kg_per_m2: f64,
    /// Number of identical containers.
    pub containers: u32,
    /// Plants over one container.
    pub plants: u32,
    /// Plants on one board.
    pub plants_per_board: Option<u32>,
}

/// What to dissolve.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Doses {
    /// For one container, in the order of mixing.
    pub doses: Vec<Dose>,
    /// The same for all containers together.
    pub doses_for_all: Vec<Dose>,
    /// Estimated conductivity of the finished solution at 25 °C, mS/cm.
    pub ec_ms_per_cm: f64,
    /// Always true: the figure is a tenth of the charge of the cations, good to 10 to 30 %.
    pub ec_is_estimate: bool,
    /// Conductivity of the raw water, mS/cm.
    pub raw_water_ec_ms_per_cm: f64,
    /// Elements that the fertilizer brings, mg/L.
    pub elements_mg_per_l: Elements,
    /// How nitrogen is shared among its forms, mg/L.
    pub nitrogen_forms_mg_per_l: NitrogenForms,
    /// What each litre of stock solution holds, where stocks are used.
    pub stocks: Vec<Stock>,
}

/// One thing to measure out.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Dose {
    /// What.
    pub material: Material,
    /// By the scale, g.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mass_g: Option<f64>,
    /// By the jug, mL.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub volume_ml: Option<f64>,
}

/// What is measured out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Material {
    /// The dry blend.
    Blend,
    /// Stock solution A.
    StockA,
    /// Stock solution B.
    StockB,
    /// Calcium nitrate, granular double salt.
    CalciumNitrateDoubleSalt,
    /// Calcium nitrate tetrahydrate.
    CalciumNitrateTetrahydrate,
    /// Magnesium sulfate heptahydrate.
    MagnesiumSulfate,
}

/// A stock solution.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Stock {
    /// A or B.
    pub material: Material,
    /// Content, g/L.
    pub contents: Vec<StockContent>,
}

/// One salt of a stock solution.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct StockContent {
    /// Which.
    pub material: Material,
    /// Strength, g/L.
    pub g_per_l: f64,
}

/// Elements in solution, mg/L.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
#[expect(missing_docs, reason = "chemical symbols")]
pub struct Elements {
    pub n: f64,
    pub p: f64,
    pub k: f64,
    pub ca: f64,
    pub mg: f64,
    pub s: f64,
    pub fe: f64,
    pub mn: f64,
    pub zn: f64,
    pub cu: f64,
    pub b: f64,
    pub mo: f64,
}

/// Nitrogen by form, mg/L.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct NitrogenForms {
    /// As nitrate.
    pub nitrate: f64,
    /// As ammonium.
    pub ammonium: f64,
    /// As urea.
    pub urea: f64,
}

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
    /// Estimated conductivity at the end, mS/cm at 25 °C.
    pub ec_at_end_ms_per_cm: f64,
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
    /// Estimated conductivity, mS/cm at 25 °C.
    pub ec_ms_per_cm: f64,
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
}
