//! Four ready plans in an invented scenario: the gardens of Sandpiper School.

use super::choice::{
    AcidChoice, CalciumNitrate, DateMeaning, Dosing, Method, Pattern, PipeEnds, StandsOn,
    StrengthBy, WaterKind,
};
use super::model::{Plan, SaltLine, VERSION};
use super::{Entry, Field, Pick};
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

/// Figures that the four plans share, in the units of the fields.
const USUAL: [(Field, f64); 53] = [
    (Field::Count, 1.0),
    (Field::CoverThickness, 0.3),
    (Field::PotImmersion, 2.5),
    (Field::BoardLength, 122.0),
    (Field::BoardWidth, 61.0),
    (Field::BoardThickness, 2.5),
    (Field::BoardCount, 1.0),
    (Field::PipeOutsideDiameter, 11.0),
    (Field::PipeWall, 0.3),
    (Field::PipeCount, 2.0),
    (Field::LegCount, 6.0),
    (Field::FloorDrop, 0.5),
    (Field::BraceSpacing, 120.0),
    (Field::LinerLayers, 2.0),
    (Field::PropRows, 0.0),
    (Field::SheetLength, 244.0),
    (Field::SheetWidth, 122.0),
    (Field::PlantsPerContainer, 1.0),
    (Field::SpacingAcross, 20.0),
    (Field::SpacingAlong, 30.0),
    (Field::SeedlingAge, 10.0),
    (Field::TargetHead, 200.0),
    (Field::GrowthFactor, 0.75),
    (Field::WaterFactor, 1.0),
    (Field::HeadsPerPersonWeek, 2.0),
    (Field::TurnaroundDays, 2.0),
    (Field::TargetConductivity, 1.3),
    (Field::TargetNitrogen, 150.0),
    (Field::RawWaterConductivity, 0.4),
    (Field::RainShare, 0.0),
    (Field::WaterCalcium, 50.0),
    (Field::WaterMagnesium, 10.0),
    (Field::WaterSodium, 10.0),
    (Field::WaterPotassium, 2.0),
    (Field::WaterChloride, 15.0),
    (Field::WaterSulfate, 20.0),
    (Field::WaterAlkalinity, 150.0),
    (Field::WaterNitrate, 1.0),
    (Field::WaterPh, 7.5),
    (Field::AcidStrength, 60.0),
    (Field::AcidDensity, 1.37),
    (Field::TargetPh, 6.0),
    (Field::StockVolume, 10.0),
    (Field::StoreTemperature, 10.0),
    (Field::RecipeStrength, 75.0),
    (Field::CropsInARow, 1.0),
    (Field::StockACalciumNitrate, 120.0),
    (Field::StockBBlend, 120.0),
    (Field::StockBMagnesiumSulfate, 72.0),
    (Field::Sunshine, 6.0),
    (Field::LampFlux, 200.0),
    (Field::LampHours, 16.0),
    (Field::CarbonDioxide, 420.0),
];

/// What the four plans share, with a sound value in every field so that any other choice made from
/// them starts from something sensible.
fn common() -> Plan {
    let mut plan = Plan {
        version: VERSION,
        ..Plan::default()
    };
    for (field, value) in USUAL {
        plan.set(field, value);
    }
    let container = &mut plan.container;
    container.foam = Pick::Known(Foam::ExtrudedIv);
    container.pipe = Pick::Known(PipeChoice::Metric110);
    container.pipe_ends = Pick::Known(PipeEnds::Open);
    container.pipe_material = Pick::Known(PipeMaterial::Pvc);
    let build = &mut plan.build;
    build.stands_on = Pick::Known(StandsOn::Ground);
    build.timber = Pick::Known(Timber::Metric47x200);
    build.cover = Pick::Known(CoverMaterial::ExtrudedFoam);
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
    crop.pattern = Pick::Known(Pattern::Staggered);
    crop.date_meaning = Pick::Known(DateMeaning::Transplanting);
    let fertilizer = &mut plan.fertilizer;
    fertilizer.dosing = Pick::Known(Dosing::DryBlend);
    fertilizer.strength_by = Pick::Known(StrengthBy::Conductivity);
    fertilizer.water_kind = Pick::Known(WaterKind::Rain);
    fertilizer.acid = Pick::Known(AcidChoice::None);
    fertilizer.recipe = Pick::Known(RecipeChoice::ALL[0]);
    fertilizer.salts = shelf();
    "$".clone_into(&mut fertilizer.currency);
    fertilizer.calcium_nitrate = Pick::Known(CalciumNitrate::DoubleSalt);
    plan.choose_blend(BlendChoice::Grade10x8x22);
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
