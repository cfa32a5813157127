//! What comes of a plan: figures in the trade's units, each with its unit in its name.

mod boards;
mod build;
mod mixture;
mod season;

pub use boards::*;
pub use build::*;
pub use mixture::*;
pub use season::*;

use serde::Serialize;

use super::boards::PipeRow;
use super::calendar::Calendar;
use super::facts::Finding;
use super::group::Group;
use super::protons::ProtonOutcome;
use super::record::WeekReading;
use super::roots::RootsOutcome;
use super::section::Section;
use super::succession::Succession;
use crate::plan::Assumed;

/// Everything that follows from a sound plan.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Outcome {
    /// How deep to fill.
    pub fill: Fill,
    /// What to dissolve.
    pub fertilizer: Doses,
    /// What the finished solution reads and holds.
    pub solution: SolutionOutcome,
    /// Whether feeding drives the pH up or down.
    pub protons: Option<ProtonOutcome>,
    /// Stock solutions, where they are used.
    pub stocks: Vec<StockOutcome>,
    /// What would fall out where both stocks meet undiluted.
    pub stocks_together: Option<StocksTogether>,
    /// The raw water, judged.
    pub water: WaterOutcome,
    /// Growing on with the same solution.
    pub growing_on: Vec<NextCrop>,
    /// What all containers take together.
    pub group: Group,
    /// What the crop is expected to read, week by week.
    pub weeks: Vec<WeekReading>,
    /// What will happen.
    pub season: SeasonOutcome,
    /// Whether the roots reach the solution and follow it.
    pub roots: RootsOutcome,
    /// Boards and pipes, where boards float.
    pub boards: Option<BoardsOutcome>,
    /// The standard pipe sizes compared, where boards float.
    pub pipes: Vec<PipeRow>,
    /// Ballast inside the pipes, kg/m, where boards float.
    pub ballast_kg_per_m: Option<f64>,
    /// How holes and boards lie and are cut, for rectangular tanks.
    pub layout: Option<LayoutOutcome>,
    /// The build sheet of a rectangular tank.
    pub build: Option<BuildOutcome>,
    /// How tanks are run one after another.
    pub running: Option<RunningOutcome>,
    /// Dates.
    pub calendar: Calendar,
    /// Heads every week, where the plan says for how many people.
    pub succession: Option<Succession>,
    /// Fields left empty, and the usual value that stands in for each.
    pub assumed: Vec<Assumed>,
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
    /// Depth of the container from floor to rim, cm.
    pub container_depth_cm: f64,
    /// Solution that one container holds up to its rim beside its pipes, without pots and boards, L.
    pub capacity_l: f64,
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
    /// Height of a pot below its flange, cm.
    pub pot_height_cm: f64,
    /// Diameter of the holes in the cover, cm: they hold a pot just below its flange. None where
    /// pots hang in a neck or in boards.
    pub cover_hole_cm: Option<f64>,
}
