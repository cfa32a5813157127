//! What a tank is built of, and how it is run.

use serde::Serialize;

use crate::catalog::covers::CoverMaterial;
use crate::catalog::keyed::keyed;
use crate::catalog::timber::Timber;
use crate::plan::StandsOn;

/// A fixed cover under its load.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CoverOutcome {
    /// What it is made of.
    pub material: CoverMaterial,
    /// Thickness, mm.
    pub thickness_mm: f64,
    /// Rows of props lengthwise.
    pub prop_rows: u32,
    /// Middles of the rows from one side, mm.
    pub props_at_mm: Vec<f64>,
    /// How tall props are, from the floor to the underside of the cover, mm.
    pub prop_height_mm: f64,
    /// Free span between sides and props, mm.
    pub span_mm: f64,
    /// Load of cover, pots, wet medium, grown heads and roots, kg/m².
    pub load_kg_per_m2: f64,
    /// Sag under it in the long run, mm.
    pub sag_mm: f64,
    /// The same for the stiffest and the softest of the material, mm.
    pub sag_range_mm: (f64, f64),
    /// Most sag that is taken, mm.
    pub sag_limit_mm: f64,
    /// Moist air at the end below the lowest point, cm.
    pub clear_gap_cm: f64,
    /// Whether it keeps light out by itself.
    pub light_tight: bool,
}

/// The build sheet of one tank.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BuildOutcome {
    /// Sides and braces.
    pub timber: TimberOutcome,
    /// Liner and what lies under it.
    pub liner: LinerOutcome,
    /// The fixed cover.
    pub cover: Option<CoverOutcome>,
    /// Deepest solution that the sides hold, cm.
    pub depth_cm: f64,
    /// Pressure at the foot of the sides, Pa.
    pub foot_pressure_pa: f64,
    /// Push on a metre of side, N.
    pub side_force_n_per_m: f64,
    /// Its moment about the foot, N m for a metre of side.
    pub side_moment_n_m: f64,
    /// How the floor is brought level.
    pub level_by: LevelBy,
    /// Solution, boards or cover, heads and timber together, kg.
    pub total_mass_kg: f64,
    /// Of it the solution, kg.
    pub solution_mass_kg: f64,
    /// On each square metre of floor or bench under the tank.
    pub load_kg_per_m2: f64,
    /// What it stands on.
    pub stands_on: StandsOn,
    /// What that is rated to carry, kg/m², where known.
    pub rating_kg_per_m2: Option<f64>,
    /// On each leg of the bench, kg.
    pub load_per_leg_kg: Option<f64>,
    /// Whether this must not be built as planned.
    pub stop: Option<LoadStop>,
    /// What a hose of 25 mm drains in, minutes, with its end a half metre below the floor.
    pub drain_minutes: f64,
    /// What to get, for all tanks together.
    pub materials: Vec<BuildItem>,
    /// Sum of those that have a price.
    pub price: Option<f64>,
    /// The plan's own currency.
    pub currency: String,
}

/// Why a tank must not be built where it is planned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum LoadStop {
    /// Balconies, decks and roofs are not for tanks.
    BalconyOrRoof,
    /// It is rated for less.
    AboveRating,
    /// Nobody knows what it carries.
    RatingUnknown,
}

/// The sides of the tank and how they stand up to the solution.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct TimberOutcome {
    /// The size.
    pub size: Timber,
    /// Nominal thickness and width, in the series' own unit (mm or inches).
    pub nominal: (f64, f64),
    /// True thickness, mm.
    pub thickness_mm: f64,
    /// True width, mm.
    pub width_mm: f64,
    /// Boards above one another.
    pub courses: u32,
    /// Height of the sides as built, mm.
    pub height_mm: f64,
    /// Each long side, mm: over the ends.
    pub long_mm: f64,
    /// Each short side, mm: between the long ones.
    pub short_mm: f64,
    /// Timber in all, m.
    pub total_m: f64,
    /// From brace to brace as planned, mm.
    pub brace_spacing_mm: f64,
    /// Braces between the corners, on both long sides together.
    pub mid_braces: u32,
    /// Posts in the corners.
    pub corner_braces: u32,
    /// Longest free length between braces, mm.
    pub span_mm: f64,
    /// Bending moment in the lowest board between braces, N m.
    pub bending_n_m: f64,
    /// Its stress, MPa.
    pub stress_mpa: f64,
    /// What wet softwood may bear, MPa.
    pub stress_limit_mpa: f64,
    /// How far it bulges in the long run, mm.
    pub bulge_mm: f64,
    /// Most bulge that is taken, mm.
    pub bulge_limit_mm: f64,
    /// Whether a competent person should look at it.
    pub ask_competent_person: bool,
}

/// The liner and what lies under it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct LinerOutcome {
    /// Length of one sheet, cm: floor, two sides, both overlaps.
    pub length_cm: f64,
    /// Width of one sheet, cm.
    pub width_cm: f64,
    /// What goes over the rim and down outside, cm.
    pub overlap_cm: f64,
    /// Layers.
    pub layers: u32,
    /// All layers, m².
    pub area_m2: f64,
    /// Cushion under floor and sides, m².
    pub cushion_m2: f64,
    /// Staples or tacks, on the outside of the rim only.
    pub staples: u32,
}

/// How a frame is brought level.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum LevelBy {
    /// A spirit level on a straight edge.
    SpiritLevel,
    /// A clear hose filled with water: a frame too long for a straight edge.
    WaterLevel,
}

/// One line of the list of materials.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct BuildItem {
    /// What.
    pub item: ItemKind,
    /// How much.
    pub quantity: f64,
    /// In what.
    pub unit: ItemUnit,
    /// First measure, mm: thickness, diameter or length; zero where none applies.
    pub size_mm: (f64, f64, f64),
    /// Price of one unit, in the plan's own currency.
    pub unit_price: Option<f64>,
    /// Price of all.
    pub price: Option<f64>,
}

keyed! {
    /// What the list of materials can hold.
    ItemKind {
        /// Sheets that boards or cover are cut from.
        StockSheet = "stock_sheet",
        /// Fabric for a cover.
        CoverFabric = "cover_fabric",
        /// Net pots.
        NetPot = "net_pot",
        /// Pipe.
        Pipe = "pipe",
        /// Ballast in the pipes.
        Ballast = "ballast",
        /// Caps for both ends of each pipe.
        PipeCap = "pipe_cap",
        /// Timber of the sides.
        SideTimber = "side_timber",
        /// Posts in the corners.
        CornerBrace = "corner_brace",
        /// Braces along the sides.
        MidBrace = "mid_brace",
        /// Props under the cover.
        Prop = "prop",
        /// Liner.
        Liner = "liner",
        /// Cushion under the liner.
        Cushion = "cushion",
        /// Staples or tacks.
        Staple = "staple",
        /// Growing medium for all pots.
        Medium = "medium",
    }
}

keyed! {
    /// What an item is counted in.
    ItemUnit {
        /// Pieces.
        Piece = "piece",
        /// Metres.
        Metre = "metre",
        /// Square metres.
        SquareMetre = "square_metre",
        /// Kilograms.
        Kilogram = "kilogram",
        /// Litres.
        Litre = "litre",
    }
}

/// How tanks are run one after another.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RunningOutcome {
    /// Solution for the first fill of one tank, L.
    pub initial_fill_l: f64,
    /// What the tank takes at harvest so that its boards float again, L; `None` under a cover.
    pub refloat_l: Option<f64>,
    /// Tanks in turn.
    pub tanks: u32,
    /// Days from one planting of a tank to the next.
    pub cycle_days: u32,
    /// Days between the plantings of two tanks, so that harvests come evenly.
    pub days_between_tanks: f64,
    /// Heads from all tanks in a week, in the long run.
    pub heads_per_week: f64,
    /// What is done on the day of harvest, in order.
    pub work: Vec<WorkStep>,
}

/// A step of the day on which boards are pulled in, washed, planted anew and floated back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum WorkStep {
    /// Pull the boards in to one end.
    PullBoards,
    /// Cut the heads.
    CutHeads,
    /// Take out pots and roots.
    ClearPots,
    /// Wash and dry boards or cover.
    WashBoards,
    /// Drain through a siphon where the solution is not used again.
    Drain,
    /// Fill up to the mark.
    FillUp,
    /// Stir in what the next crop needs.
    AddFertilizer,
    /// Check pH and EC.
    Measure,
    /// Look for leaks, trapped air under the liner and larvae.
    Inspect,
    /// Put in pots with seedlings.
    Plant,
    /// Float the boards back, or lay the cover on.
    FloatBoards,
    /// Close the gaps at the edges.
    CloseEdges,
}
