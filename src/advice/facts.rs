//! What can be said of a plan: facts with their figures and their weight.

use serde::Serialize;

use super::outcome::{Material, NextCrop, Saturation, StockContent, WaterItem};
use super::roots::{Change, Mend};
use super::structure::StructureFact;
use crate::plan::Field;
use crate::season::MajorNutrient;

/// How grave a finding is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Weight {
    /// The plan fails here.
    Stop,
    /// It may work, look again.
    Caution,
    /// A check that passed.
    Sound,
    /// Good practice that belongs to every such plan; nothing is wrong.
    Reminder,
}

/// One finding.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Finding {
    /// How grave.
    pub weight: Weight,
    /// What, with its figures.
    #[serde(flatten)]
    pub fact: Fact,
    /// Changes of one field, each of which alone mends it; the one that asks least first.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub mends: Vec<Change>,
}

/// What was found. Figures are in the unit that their name ends with.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "fact", rename_all = "snake_case")]
#[expect(missing_docs, reason = "the names of the figures say what they are")]
pub enum Fact {
    /// The charge lasts to harvest.
    Lasts { left_l: f64 },
    /// The charge is used up before harvest.
    RunsOut { day: u32, short_l: f64 },
    /// The target mass is not reached within the days that are followed.
    NotReached { head_g: f64, days: u32 },
    /// Solution per plant against common practice.
    PerPlant {
        volume_l: f64,
        low_l: f64,
        high_l: f64,
    },
    /// The pots stand deeper or less deep in the solution than is usual at planting.
    Immersion {
        immersion_cm: f64,
        low_cm: f64,
        high_cm: f64,
    },
    /// The pots hang above the solution at planting.
    PotsHangAbove { by_cm: f64 },
    /// The container cannot hold what was planned.
    Overflows,
    /// The moist air gap at harvest against common practice.
    Gap {
        gap_cm: f64,
        low_cm: f64,
        high_cm: f64,
    },
    /// The boards sink.
    BoardsSink,
    /// The boards lie on the pipes from the first day.
    RestAtPlanting { floats_from_depth_cm: f64 },
    /// The boards float when planted.
    Floats { clearance_cm: f64 },
    /// The boards still float at the end, so no air gap opens.
    NeverRest,
    /// Little solution is left under the boards.
    LittleLeft { depth_cm: f64, low_cm: f64 },
    /// No pipe size leaves a sound gap.
    NoPipeFits,
    /// A nutrient runs short before harvest.
    Short {
        nutrient: MajorNutrient,
        supply_g: f64,
        need_g: f64,
        day: Option<u32>,
    },
    /// All five major nutrients last.
    NutrientsLast,
    /// The solution is strong at the end.
    StrongAtEnd {
        ec_ms_per_cm: f64,
        limit_ms_per_cm: f64,
        /// The strongest start, in tenths, that does not pass the limit, where nothing runs out
        /// before harvest then.
        start_ms_per_cm: Option<f64>,
    },
    /// Much of the nitrogen is urea.
    Urea { share_pct: f64 },
    /// The container is too heavy to lift.
    Heavy { mass_kg: f64, limit_kg: f64 },
    /// The load on the floor.
    FloorLoad {
        load_kg_per_m2: f64,
        limit_kg_per_m2: f64,
    },
    /// Open water that children can reach.
    OpenWater,
    /// Fertilizer and stock solutions.
    Salts,
    /// Lamps and electricity near water.
    Electricity,
    /// Acids and how to pour them.
    Acid,
    /// Stocks never meet undiluted: what would fall out, and how thin they must be not to.
    StocksApart {
        saturation: Saturation,
        clear_when_thinned_times: Option<f64>,
    },
    /// Whether a stock stays clear at the store's coldest.
    StockClear {
        stock: Material,
        contents: Vec<StockContent>,
        saturation: Saturation,
        dissolving_pct: f64,
        strongest_pct: Option<f64>,
    },
    /// The span of strengths that fit.
    FittingStrength {
        low_ms_per_cm: f64,
        high_ms_per_cm: f64,
    },
    /// A target that the salts on the shelf miss.
    TargetMissed {
        nutrient: &'static str,
        form: Option<&'static str>,
        target_mg_per_l: f64,
        reached_mg_per_l: f64,
    },
    /// A label whose anions far outweigh its cations, in mmol of charge per gram of blend.
    LabelCharges {
        cations_mmol_per_g: f64,
        anions_mmol_per_g: f64,
    },
    /// The pH after mixing.
    Ph { ph: f64, low: f64, high: f64 },
    /// Where uptake takes the pH.
    PhDrift {
        from: f64,
        to: f64,
        ammonium_share_pct: f64,
        steady_ammonium_share_pct: Option<f64>,
    },
    /// The solution is already at or below the wanted pH.
    NoAcidNeeded { ph: f64 },
    /// A mineral can fall out in the tank.
    FallsOut { saturation: Saturation },
    /// Whether an analysis of raw water agrees with itself.
    WaterAnalysis {
        charge_error_pct: Option<f64>,
        ec_ratio: Option<f64>,
    },
    /// An item of the raw water outside 'no restriction'.
    Water { item: WaterItem },
    /// How much raw water a mixture with rain may hold.
    DiluteWater { share_pct: f64 },
    /// Yield that sodium chloride leaves.
    SaltYield { yield_pct: f64 },
    /// One more crop on the same solution.
    GrowOn { next: NextCrop },
    /// The season is warmer than the crop likes.
    Warm { mean_c: f64, limit_c: f64 },
    /// Pots and roots keep touch with the solution all season.
    RootsReach {
        day: Option<u32>,
        contact_lost_day: Option<u32>,
    },
    /// The pots lose the solution before the roots have reached it.
    ContactLost {
        day: u32,
        short_cm: f64,
        mends: Vec<Mend>,
    },
    /// The level falls away from the roots.
    RootsHang {
        day: u32,
        short_cm: f64,
        mends: Vec<Mend>,
    },
    /// Warm solution holds little oxygen.
    WarmSolution {
        solution_c: f64,
        limit_c: f64,
        oxygen_mg_per_l: f64,
    },
    /// Mosquitoes can reach the solution and grow up in it.
    Mosquitoes {
        mean_c: f64,
        culex_days: f64,
        aedes_days: f64,
        season_days: u32,
    },
    /// A clear container lets light through to the solution.
    AlgaeInClearWall,
    /// A dose small enough that somebody may measure it out by spoons: what a level teaspoon of such salts
    /// may hold, and how far the dose can be off by it, per cent.
    Spoons {
        least_g: f64,
        most_g: f64,
        error_pct: f64,
    },
    /// Light falls on the solution beside the boards.
    AlgaeAtEdges { open_cm2: f64 },
    /// Hot, dry middays.
    MiddayWilt {
        max_c: f64,
        deficit_kpa: f64,
        limit_kpa: f64,
    },
    /// Tip burn: strong light, warm and moist air.
    TipBurn {
        light_mol: f64,
        limit_mol: f64,
        mean_c: f64,
        humidity_pct: f64,
    },
    /// Rain can reach the solution.
    RainDilutes,
    /// When to drain and clean.
    DrainInterval { crops: u32, days: u32 },
    /// What a used container may have held.
    FoodContainer,
    /// What a tank is lined with.
    TankLiner,
    /// Clean hands and washed leaves.
    CleanHarvest,
    /// Where spent solution may go.
    SpentSolution { volume_l: f64 },
    /// Little light.
    Dim { light_mol: f64, limit_mol: f64 },
    /// More radiation than a clear sky gives.
    BrighterThanClearSky,
    /// The growth model was not validated for this crop.
    NotValidated,
    /// A value that is allowed but seldom met.
    Unusual {
        field: Field,
        got: f64,
        low: f64,
        high: f64,
    },
    /// What wood, foam and pipes do.
    #[serde(untagged)]
    Structure(StructureFact),
}

impl Fact {
    /// Whether it is a caution that stands in every plan of its kind, whatever its figures.
    pub const fn always(&self) -> bool {
        matches!(
            self,
            Self::Salts | Self::Acid | Self::OpenWater | Self::Electricity
        )
    }
}
