//! Four ready plans in an invented scenario: the gardens of Sandpiper School.

use super::choice::{
    AcidChoice, CalciumNitrate, DateMeaning, Dosing, Method, Pattern, PipeEnds, StandsOn,
    StrengthBy, WaterKind,
};
use super::model::{Plan, SaltLine, VERSION};
use super::{Entry, Pick};
use crate::catalog::Keyed;
use crate::catalog::blends::BlendChoice;
use crate::catalog::climates::ClimateChoice;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::crops::CropKind;
use crate::catalog::foams::Foam;
use crate::catalog::keyed::keyed;
use crate::catalog::pipes::{PipeChoice, PipeMaterial};
use crate::catalog::pots::PotChoice;
use crate::catalog::recipes::RecipeChoice;
use crate::catalog::salts::Salt;
use crate::catalog::shelters::Shelter;
use crate::catalog::timber::Timber;
use crate::catalog::vessels::VesselChoice;

keyed! {
    /// A ready plan, one for each way of standing the plants over the solution.
    Example {
        /// One head in a bottle on a porch.
        Bottle = "bottle",
        /// Three heads in a bucket.
        Bucket = "bucket",
        /// A covered tank of one plywood sheet.
        CoveredTank = "covered-tank",
        /// A long tank with floating boards.
        FloatingBoards = "floating-boards",
    }
}

impl Example {
    /// The plan.
    pub fn plan(self) -> Plan {
        let mut plan = common();
        match self {
            Self::Bottle => bottle(&mut plan),
            Self::Bucket => bucket(&mut plan),
            Self::CoveredTank => covered_tank(&mut plan),
            Self::FloatingBoards => floating_boards(&mut plan),
        }
        plan
    }

    /// The plan for where the plants will stand, if that is known.
    pub fn plan_under(self, shelter: Option<Shelter>) -> Plan {
        let mut plan = self.plan();
        if let Some(shelter) = shelter {
            plan.choose_shelter(shelter);
            // In so little light three draw one charge for so long that its end is too strong; a law
            // holds this to the season.
            if self == Self::Bucket && shelter == Shelter::Porch {
                plan.crop.plants_per_container = Entry::Number(2.0);
            }
        }
        plan
    }
}

/// What the four plans share, with a sound value in every field so that any other choice made from
/// them starts from something sensible.
fn common() -> Plan {
    let mut plan = Plan {
        version: VERSION,
        ..Plan::default()
    };
    let container = &mut plan.container;
    container.count = Entry::Number(1.0);
    container.cover_thickness_cm = Entry::Number(0.3);
    container.pot_immersion_cm = Entry::Number(2.5);
    container.board_length_cm = Entry::Number(122.0);
    container.board_width_cm = Entry::Number(61.0);
    container.board_thickness_cm = Entry::Number(2.5);
    container.board_count = Entry::Number(1.0);
    container.foam = Pick::Known(Foam::ExtrudedIv);
    container.pipe = Pick::Known(PipeChoice::Metric110);
    container.pipe_outside_diameter_cm = Entry::Number(11.0);
    container.pipe_wall_cm = Entry::Number(0.3);
    container.pipe_ends = Pick::Known(PipeEnds::Open);
    container.pipe_count = Entry::Number(2.0);
    container.pipe_material = Pick::Known(PipeMaterial::Pvc);
    let build = &mut plan.build;
    build.stands_on = Pick::Known(StandsOn::Ground);
    build.leg_count = Entry::Number(6.0);
    build.floor_drop_cm = Entry::Number(0.5);
    build.timber = Pick::Known(Timber::Metric47x200);
    build.brace_spacing_cm = Entry::Number(120.0);
    build.liner_layers = Entry::Number(2.0);
    build.cover = Pick::Known(CoverMaterial::ExtrudedFoam);
    build.prop_rows = Entry::Number(0.0);
    build.sheet_length_cm = Entry::Number(244.0);
    build.sheet_width_cm = Entry::Number(122.0);
    // Every shape gets its measures once, the last is the one in use.
    for vessel in [
        VesselChoice::Bottle4,
        VesselChoice::Tank240,
        VesselChoice::Box45,
        VesselChoice::Bucket19,
    ] {
        plan.choose_vessel(vessel);
    }
    plan.choose_pot(PotChoice::Small);
    let crop = &mut plan.crop;
    crop.kind = Pick::Known(CropKind::LeafLettuce);
    crop.plants_per_container = Entry::Number(1.0);
    crop.spacing_across_cm = Entry::Number(20.0);
    crop.spacing_along_cm = Entry::Number(30.0);
    crop.pattern = Pick::Known(Pattern::Staggered);
    crop.date_meaning = Pick::Known(DateMeaning::Transplanting);
    crop.seedling_age_days = Entry::Number(10.0);
    crop.target_head_g = Entry::Number(200.0);
    crop.growth_factor = Entry::Number(0.75);
    crop.water_factor = Entry::Number(1.0);
    crop.heads_per_person_week = Entry::Number(2.0);
    crop.turnaround_days = Entry::Number(2.0);
    let fertilizer = &mut plan.fertilizer;
    fertilizer.dosing = Pick::Known(Dosing::DryBlend);
    fertilizer.strength_by = Pick::Known(StrengthBy::Conductivity);
    fertilizer.target_ec_ms_per_cm = Entry::Number(1.3);
    fertilizer.target_n_mg_per_l = Entry::Number(150.0);
    fertilizer.water_kind = Pick::Known(WaterKind::Rain);
    fertilizer.raw_water_ec_ms_per_cm = Entry::Number(0.4);
    fertilizer.rain_pct = Entry::Number(0.0);
    let water = &mut fertilizer.water;
    water.ca_mg_per_l = Entry::Number(50.0);
    water.mg_mg_per_l = Entry::Number(10.0);
    water.na_mg_per_l = Entry::Number(10.0);
    water.k_mg_per_l = Entry::Number(2.0);
    water.cl_mg_per_l = Entry::Number(15.0);
    water.so4_mg_per_l = Entry::Number(20.0);
    water.alkalinity_mg_per_l_caco3 = Entry::Number(150.0);
    water.no3_mg_per_l = Entry::Number(1.0);
    water.ph = Entry::Number(7.5);
    fertilizer.acid = Pick::Known(AcidChoice::None);
    fertilizer.acid_pct = Entry::Number(60.0);
    fertilizer.acid_density_g_per_ml = Entry::Number(1.37);
    fertilizer.target_ph = Entry::Number(6.0);
    fertilizer.stock_volume_l = Entry::Number(10.0);
    fertilizer.store_temperature_c = Entry::Number(10.0);
    fertilizer.recipe = Pick::Known(RecipeChoice::ALL[0]);
    fertilizer.recipe_strength_pct = Entry::Number(75.0);
    fertilizer.salts = shelf();
    fertilizer.crops_in_a_row = Entry::Number(1.0);
    "$".clone_into(&mut fertilizer.currency);
    fertilizer.calcium_nitrate = Pick::Known(CalciumNitrate::DoubleSalt);
    fertilizer.stock_a_calcium_nitrate_g_per_l = Entry::Number(120.0);
    fertilizer.stock_b_blend_g_per_l = Entry::Number(120.0);
    fertilizer.stock_b_magnesium_sulfate_g_per_l = Entry::Number(72.0);
    plan.choose_blend(BlendChoice::Grade10x8x22);
    plan.climate.sunshine_h = Entry::Number(6.0);
    plan.climate.lamp_ppfd_umol_per_m2_s = Entry::Number(200.0);
    plan.climate.lamp_hours_h = Entry::Number(16.0);
    plan.climate.co2_ppm = Entry::Number(420.0);
    plan
}

fn bottle(plan: &mut Plan) {
    "Sandpiper School: a bottle on the porch".clone_into(&mut plan.name);
    plan.choose_method(Method::Bottle);
    plan.choose_vessel(VesselChoice::Bottle4);
    plan.choose_pot(PotChoice::Medium);
    plan.container.cover_thickness_cm = Entry::Number(0.0);
    plan.container.pot_immersion_cm = Entry::Number(3.0);
    plan.crop.date = Entry::from("2027-02-01");
    plan.crop.target_head_g = Entry::Number(160.0);
    plan.fertilizer.target_ec_ms_per_cm = Entry::Number(1.5);
    plan.choose_climate(ClimateChoice::MildHumidCoast);
    tap(plan);
}

fn bucket(plan: &mut Plan) {
    "Sandpiper School: three heads in a bucket".clone_into(&mut plan.name);
    plan.choose_method(Method::Bucket);
    plan.choose_vessel(VesselChoice::Bucket19);
    plan.crop.plants_per_container = Entry::Number(3.0);
    plan.crop.spacing_across_cm = Entry::Number(22.0);
    plan.crop.spacing_along_cm = Entry::Number(25.0);
    plan.crop.date = Entry::from("2027-02-01");
    plan.choose_climate(ClimateChoice::MildHumidCoast);
    tap(plan);
}

fn covered_tank(plan: &mut Plan) {
    "Sandpiper School: the covered tank".clone_into(&mut plan.name);
    plan.choose_method(Method::CoveredTank);
    plan.choose_vessel(VesselChoice::Tank240);
    plan.choose_pot(PotChoice::Small);
    plan.container.cover_thickness_cm = Entry::Number(1.0);
    plan.build.cover = Pick::Known(CoverMaterial::Plywood);
    plan.build.prop_rows = Entry::Number(1.0);
    plan.crop.kind = Pick::Known(CropKind::ButterheadLettuce);
    plan.crop.date = Entry::from("2027-02-01");
    plan.choose_climate(ClimateChoice::UplandCoolHumid);
    stocks(plan);
}

fn floating_boards(plan: &mut Plan) {
    "Sandpiper School: the long tank with boards".clone_into(&mut plan.name);
    plan.choose_method(Method::FloatingBoards);
    plan.choose_vessel(VesselChoice::Tank720);
    plan.container.board_count = Entry::Number(12.0);
    plan.crop.date = Entry::from("2027-02-01");
    plan.choose_climate(ClimateChoice::UplandCoolHumid);
    stocks(plan);
}

/// Stock solutions A and B to about 1.5 mS/cm: common practice, no source.
fn stocks(plan: &mut Plan) {
    plan.fertilizer.dosing = Pick::Known(Dosing::Stocks);
    plan.fertilizer.target_ec_ms_per_cm = Entry::Number(1.5);
    plan.choose_blend(BlendChoice::Grade8x15x36);
}

/// Salts that make every ready recipe.
fn shelf() -> Vec<SaltLine> {
    [
        Salt::CalciumNitrate,
        Salt::PotassiumNitrate,
        Salt::MonopotassiumPhosphate,
        Salt::MonoammoniumPhosphate,
        Salt::MagnesiumSulfate,
        Salt::PotassiumSulfate,
        Salt::IronDtpa,
        Salt::ManganeseSulfate,
        Salt::ZincSulfate,
        Salt::CopperSulfate,
        Salt::BoricAcid,
        Salt::SodiumMolybdate,
    ]
    .into_iter()
    .map(|salt| SaltLine {
        salt: Pick::Known(salt),
        ..SaltLine::default()
    })
    .collect()
}

/// A tap of which only the conductivity is known.
fn tap(plan: &mut Plan) {
    plan.fertilizer.water_kind = Pick::Known(WaterKind::Tap);
    plan.fertilizer.raw_water_ec_ms_per_cm = Entry::Number(0.3);
}
