//! The plan itself: what the grower decides, field by field, as it was entered.
//!
//! Every field stays in the document whether or not the present choices use it, so that trying
//! another shape and coming back loses nothing. The unit of a number is part of its name.

use super::choice::{
    AcidChoice, CalciumNitrate, DateMeaning, DaylightBy, Dosing, Method, Pattern, PipeEnds, Shape,
    StandsOn, StrengthBy, WaterKind,
};
use super::members::members;
use super::{Entry, Pick};
use crate::catalog::blends::BlendChoice;
use crate::catalog::climates::ClimateChoice;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::crops::CropKind;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::{PipeChoice, PipeMaterial};
use crate::catalog::recipes::RecipeChoice;
use crate::catalog::salts::Salt;
use crate::catalog::shelters::Shelter;
use crate::catalog::timber::Timber;

/// The version of the plan document that this program writes.
pub const VERSION: u32 = 1;

members! {
/// A whole plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// Version of the document.
    pub version: u32,
    /// The grower's name for the plan.
    pub name: String,
    /// Step 1.
    pub container: ContainerPlan,
    /// Step 2.
    pub crop: CropPlan,
    /// Step 3.
    pub fertilizer: FertilizerPlan,
    /// Step 4.
    pub climate: ClimatePlan,
    /// How a tank is built.
    pub build: BuildPlan,
}

/// Step 1: the vessel, its cover and pots, and for floating boards the boards and pipes.
#[derive(Clone, Debug, Default, PartialEq)]
#[expect(
    missing_docs,
    reason = "each field's meaning stands at its variant of `Field`"
)]
pub struct ContainerPlan {
    pub method: Pick<Method>,
    pub shape: Pick<Shape>,
    pub count: Entry,
    pub height_cm: Entry,
    pub diameter_cm: Entry,
    pub top_diameter_cm: Entry,
    pub bottom_diameter_cm: Entry,
    pub length_cm: Entry,
    pub width_cm: Entry,
    pub bottom_length_cm: Entry,
    pub bottom_width_cm: Entry,
    pub body_height_cm: Entry,
    pub shoulder_height_cm: Entry,
    pub neck_diameter_cm: Entry,
    pub neck_height_cm: Entry,
    pub measured: Vec<MeasuredPair>,
    pub cover_thickness_cm: Entry,
    pub pot_height_cm: Entry,
    pub pot_top_diameter_cm: Entry,
    pub pot_bottom_diameter_cm: Entry,
    pub pot_flange_diameter_cm: Entry,
    pub pot_immersion_cm: Entry,
    pub fill_depth_cm: Entry,
    pub board_length_cm: Entry,
    pub board_width_cm: Entry,
    pub board_thickness_cm: Entry,
    pub board_count: Entry,
    pub foam: Pick<Foam>,
    pub pipe: Pick<PipeChoice>,
    pub pipe_outside_diameter_cm: Entry,
    pub pipe_wall_cm: Entry,
    pub pipe_ends: Pick<PipeEnds>,
    pub pipe_count: Entry,
    pub pipe_spacing_cm: Entry,
    pub pipe_material: Pick<PipeMaterial>,
}

/// One pouring of water into a vessel of unknown shape: litres in all so far, and the depth read.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MeasuredPair {
    /// Litres in the vessel.
    pub volume_l: Entry,
    /// Depth of the water, cm.
    pub depth_cm: Entry,
}

/// Step 2: the crop.
#[derive(Clone, Debug, Default, PartialEq)]
#[expect(
    missing_docs,
    reason = "each field's meaning stands at its variant of `Field`"
)]
pub struct CropPlan {
    pub kind: Pick<CropKind>,
    pub plants_per_container: Entry,
    pub spacing_across_cm: Entry,
    pub spacing_along_cm: Entry,
    pub pattern: Pick<Pattern>,
    pub date: Entry,
    pub date_meaning: Pick<DateMeaning>,
    pub seedling_age_days: Entry,
    pub target_head_g: Entry,
    pub growth_factor: Entry,
    pub water_factor: Entry,
    pub people: Entry,
    pub heads_per_person_week: Entry,
    pub turnaround_days: Entry,
}

/// Step 3: the fertilizer and the raw water.
#[derive(Clone, Debug, Default, PartialEq)]
#[expect(
    missing_docs,
    reason = "each field's meaning stands at its variant of `Field`"
)]
pub struct FertilizerPlan {
    pub dosing: Pick<Dosing>,
    pub blend: Pick<BlendChoice>,
    pub label: LabelPlan,
    pub strength_by: Pick<StrengthBy>,
    pub target_ec_ms_per_cm: Entry,
    pub target_n_mg_per_l: Entry,
    pub water_kind: Pick<WaterKind>,
    pub raw_water_ec_ms_per_cm: Entry,
    pub rain_pct: Entry,
    pub water: WaterPlan,
    pub acid: Pick<AcidChoice>,
    pub acid_pct: Entry,
    pub acid_density_g_per_ml: Entry,
    pub target_ph: Entry,
    pub calcium_nitrate: Pick<CalciumNitrate>,
    pub stock_a_calcium_nitrate_g_per_l: Entry,
    pub stock_b_blend_g_per_l: Entry,
    pub stock_b_magnesium_sulfate_g_per_l: Entry,
    pub stock_volume_l: Entry,
    pub store_temperature_c: Entry,
    pub recipe: Pick<RecipeChoice>,
    pub recipe_strength_pct: Entry,
    pub salts: Vec<SaltLine>,
    pub crops_in_a_row: Entry,
    pub currency: String,
    pub blend_price_per_kg: Entry,
    pub calcium_nitrate_price_per_kg: Entry,
    pub magnesium_sulfate_price_per_kg: Entry,
    pub acid_price_per_kg: Entry,
}

/// The analysis of the raw water.
#[derive(Clone, Debug, Default, PartialEq)]
#[expect(
    missing_docs,
    reason = "each field's meaning stands at its variant of `Field`"
)]
pub struct WaterPlan {
    pub ca_mg_per_l: Entry,
    pub mg_mg_per_l: Entry,
    pub na_mg_per_l: Entry,
    pub k_mg_per_l: Entry,
    pub cl_mg_per_l: Entry,
    pub so4_mg_per_l: Entry,
    pub alkalinity_mg_per_l_caco3: Entry,
    pub no3_mg_per_l: Entry,
    pub ph: Entry,
}

/// One salt on the grower's shelf.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SaltLine {
    /// Key of a salt of the catalog, or the formula of one of the grower's own.
    pub salt: Pick<Salt>,
    /// Purity, per cent by mass.
    pub purity_pct: Entry,
    /// Price of a kilogram.
    pub price_per_kg: Entry,
}

/// The guaranteed analysis of the blend, in per cent by mass, as printed on its bag.
#[derive(Clone, Debug, Default, PartialEq)]
#[expect(
    missing_docs,
    reason = "each field's meaning stands at its variant of `Field`"
)]
pub struct LabelPlan {
    pub nitrogen_pct: Entry,
    pub nitrate_n_pct: Entry,
    pub ammonium_n_pct: Entry,
    pub urea_n_pct: Entry,
    pub p2o5_pct: Entry,
    pub k2o_pct: Entry,
    pub ca_pct: Entry,
    pub mg_pct: Entry,
    pub s_pct: Entry,
    pub fe_pct: Entry,
    pub mn_pct: Entry,
    pub zn_pct: Entry,
    pub cu_pct: Entry,
    pub b_pct: Entry,
    pub mo_pct: Entry,
}

/// Step 4: the climate around the plants.
#[derive(Clone, Debug, Default, PartialEq)]
#[expect(
    missing_docs,
    reason = "each field's meaning stands at its variant of `Field`"
)]
pub struct ClimatePlan {
    pub kind: Pick<ClimateChoice>,
    pub latitude_deg: Entry,
    pub elevation_m: Entry,
    pub temperature_min_c: Entry,
    pub temperature_max_c: Entry,
    pub humidity_pct: Entry,
    pub daylight_by: Pick<DaylightBy>,
    pub solar_mj_per_m2: Entry,
    pub sunshine_h: Entry,
    pub shelter: Pick<Shelter>,
    pub light_through_pct: Entry,
    pub lamp_ppfd_umol_per_m2_s: Entry,
    pub lamp_hours_h: Entry,
    pub co2_ppm: Entry,
}

/// How a rectangular tank is built, covered and stood up. Every field may stay empty.
#[derive(Clone, Debug, Default, PartialEq)]
#[expect(
    missing_docs,
    reason = "each field's meaning stands at its variant of `Field`"
)]
pub struct BuildPlan {
    pub stands_on: Pick<StandsOn>,
    pub leg_count: Entry,
    pub support_rating_kg_per_m2: Entry,
    pub floor_drop_cm: Entry,
    pub timber: Pick<Timber>,
    pub brace_spacing_cm: Entry,
    pub liner_layers: Entry,
    pub cover: Pick<CoverMaterial>,
    pub prop_rows: Entry,
    pub edge_distance_cm: Entry,
    pub sheet_length_cm: Entry,
    pub sheet_width_cm: Entry,
    pub sheet_price: Entry,
    pub pipe_price_per_m: Entry,
    pub timber_price_per_m: Entry,
    pub liner_price_per_m2: Entry,
    pub pot_price: Entry,
}
}

impl Default for Plan {
    /// An empty plan: every field is still to be filled.
    fn default() -> Self {
        Self {
            version: VERSION,
            name: String::new(),
            container: ContainerPlan::default(),
            crop: CropPlan::default(),
            fertilizer: FertilizerPlan::default(),
            climate: ClimatePlan::default(),
            build: BuildPlan::default(),
        }
    }
}
