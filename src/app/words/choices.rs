//! Names of the choices.

use super::figures::{rounded, show};
use super::say::*;
use crate::catalog::Keyed;
use crate::catalog::blends::BlendChoice;
use crate::catalog::climates::ClimateChoice;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::crops::CropKind;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::{PipeChoice, PipeMaterial, Series};
use crate::catalog::pots::PotChoice;
use crate::catalog::recipes::RecipeChoice;
use crate::catalog::salts::Salt;
use crate::catalog::shelters::Shelter;
use crate::catalog::timber::{Timber, TimberSeries};
use crate::catalog::vessels::VesselChoice;
use crate::plan::{
    AcidChoice, CalciumNitrate, DateMeaning, DaylightBy, Dimension, Dosing, Entry, LabelPlan,
    Method, Pattern, PipeEnds, Shape, StandsOn, StrengthBy, UnitSystem, WaterKind, figure,
};

/// A choice that has a name.
pub trait Worded {
    /// Its name.
    fn word(self) -> String;
}

/// A choice that has a name, which may tell a size in the reader's units.
pub trait Called {
    /// Its name in a system of units.
    fn called(self, units: UnitSystem) -> String;
}

impl<T: Worded> Called for T {
    fn called(self, _: UnitSystem) -> String {
        self.word()
    }
}

/// Names as plain texts; one with figures is returned at once.
macro_rules! words {
    ($type:ty { $($item:ident => $word:expr,)+ }) => {
        impl Worded for $type {
            fn word(self) -> String {
                match self { $(Self::$item => $word,)+ }.to_owned()
            }
        }
    };
}

words!(Method {
    Bottle => method_bottle(),
    Bucket => method_bucket(),
    CoveredTank => method_covered_tank(),
    FloatingBoards => method_floating_boards(),
});

words!(Shape {
    Cylinder => shape_cylinder(),
    TaperedRound => shape_tapered_round(),
    Rectangular => shape_rectangular(),
    TaperedRectangular => shape_tapered_rectangular(),
    Bottle => shape_bottle(),
    Measured => shape_measured(),
});

words!(Pattern {
    Square => pattern_square(),
    Staggered => pattern_staggered(),
    Hexagonal => pattern_hexagonal(),
});

words!(DateMeaning {
    Transplanting => date_meaning_transplanting(),
    Seeding => date_meaning_seeding(),
});

words!(Dosing {
    DryBlend => dosing_dry_blend(),
    Stocks => dosing_stocks(),
    Salts => dosing_salts(),
});

words!(WaterKind {
    Rain => water_kind_rain(),
    Tap => water_kind_tap(),
    Analysis => water_kind_analysis(),
});

words!(AcidChoice {
    None => acid_choice_none(),
    Nitric => acid_choice_nitric(),
    Phosphoric => acid_choice_phosphoric(),
    Sulfuric => acid_choice_sulfuric(),
    Citric => acid_choice_citric(),
});

words!(RecipeChoice {
    HoaglandArnon1 => recipe_choice_hoagland_arnon1(),
    HoaglandArnon2 => recipe_choice_hoagland_arnon2(),
    Steiner => recipe_choice_steiner(),
    SonneveldStraverLettuce => recipe_choice_sonneveld_straver_lettuce(),
    ModifiedSonneveld => recipe_choice_modified_sonneveld(),
});

words!(Salt {
    CalciumNitrate => salt_calcium_nitrate(),
    CalciumAmmoniumNitrate => return salt_calcium_ammonium_nitrate(&number("15.5-0-0")),
    PotassiumNitrate => salt_potassium_nitrate(),
    MonopotassiumPhosphate => salt_monopotassium_phosphate(),
    MonoammoniumPhosphate => salt_monoammonium_phosphate(),
    MagnesiumSulfate => salt_magnesium_sulfate(),
    MagnesiumNitrate => salt_magnesium_nitrate(),
    PotassiumSulfate => salt_potassium_sulfate(),
    AmmoniumNitrate => salt_ammonium_nitrate(),
    AmmoniumSulfate => salt_ammonium_sulfate(),
    PotassiumChloride => salt_potassium_chloride(),
    CalciumChloride => salt_calcium_chloride(),
    BoricAcid => salt_boric_acid(),
    Borax => salt_borax(),
    ManganeseSulfate => salt_manganese_sulfate(),
    ZincSulfate => salt_zinc_sulfate(),
    CopperSulfate => salt_copper_sulfate(),
    SodiumMolybdate => salt_sodium_molybdate(),
    IronSulfate => salt_iron_sulfate(),
    IronEdta => salt_iron_edta(),
    IronDtpa => salt_iron_dtpa(),
    IronEddha => salt_iron_eddha(),
});

words!(StrengthBy {
    Conductivity => strength_by_conductivity(),
    Nitrogen => strength_by_nitrogen(),
});

words!(CalciumNitrate {
    DoubleSalt => return calcium_nitrate_double_salt(&number("15.5-0-0")),
    Tetrahydrate => calcium_nitrate_tetrahydrate(),
});

words!(DaylightBy {
    Radiation => daylight_by_radiation(),
    Sunshine => daylight_by_sunshine(),
});

words!(PipeEnds {
    Open => pipe_ends_open(),
    Capped => pipe_ends_capped(),
    Flooded => pipe_ends_flooded(),
});

words!(PipeMaterial {
    Pvc => pipe_material_pvc(),
    Polyethylene => pipe_material_polyethylene(),
    Polypropylene => pipe_material_polypropylene(),
    Abs => pipe_material_abs(),
});

words!(StandsOn {
    Ground => stands_on_ground(),
    Slab => stands_on_slab(),
    Bench => stands_on_bench(),
    UpperFloor => stands_on_upper_floor(),
    BalconyOrRoof => stands_on_balcony_or_roof(),
});

words!(CoverMaterial {
    ExtrudedFoam => cover_material_extruded_foam(),
    ExpandedFoam => cover_material_expanded_foam(),
    Plywood => cover_material_plywood(),
    RigidPlastic => cover_material_rigid_plastic(),
    Fabric => cover_material_fabric(),
});

impl Called for Timber {
    fn called(self, units: UnitSystem) -> String {
        let figures = self.figures();
        let (thick, wide) = figures.nominal;
        let (thick, wide) = (number(thick), number(wide));
        let true_thick = figure(Dimension::SmallLength, figures.thickness_mm, units);
        let true_wide = show(Dimension::SmallLength, figures.width_mm, units);
        let size = format!("{} × {true_wide}", number(true_thick.text));
        match (figures.series, units) {
            (TimberSeries::Metric, UnitSystem::Metric) => format!("{thick} × {wide} mm"),
            (TimberSeries::Metric, UnitSystem::UsCustomary) => {
                format!("{thick} × {wide} mm ({size})")
            }
            (TimberSeries::UsDressed, _) => TimberDressed {
                thick: &thick,
                wide: &wide,
                size: &size,
            }
            .text(),
        }
    }
}

words!(CropKind {
    LeafLettuce => crop_kind_leaf_lettuce(),
    ButterheadLettuce => crop_kind_butterhead_lettuce(),
    RomaineLettuce => crop_kind_romaine_lettuce(),
    PakChoi => crop_kind_pak_choi(),
    LeafMustard => crop_kind_leaf_mustard(),
    Spinach => crop_kind_spinach(),
    Chard => crop_kind_chard(),
    Basil => crop_kind_basil(),
    Coriander => crop_kind_coriander(),
    Parsley => crop_kind_parsley(),
});

words!(Shelter {
    RainCover => shelter_rain_cover(),
    Porch => shelter_porch(),
    PlasticShelter => shelter_plastic_shelter(),
    Greenhouse => shelter_greenhouse(),
    Windowsill => shelter_windowsill(),
    Lamps => shelter_lamps(),
});

words!(ClimateChoice {
    UplandCoolHumid => climate_choice_upland_cool_humid(),
    TemperateLateSummer => climate_choice_temperate_late_summer(),
    TemperateSpring => climate_choice_temperate_spring(),
    MaritimeSummer => climate_choice_maritime_summer(),
    MildHumidCoast => climate_choice_mild_humid_coast(),
    TropicalLowland => climate_choice_tropical_lowland(),
    TropicalHighland => climate_choice_tropical_highland(),
    DrySummer => climate_choice_dry_summer(),
    DesertWinter => climate_choice_desert_winter(),
    SubtropicalWinter => climate_choice_subtropical_winter(),
    RoomUnderLamps => climate_choice_room_under_lamps(),
    Own => climate_choice_own(),
});

impl Called for Foam {
    fn called(self, units: UnitSystem) -> String {
        let (name, kg_per_m3): (fn(&str) -> String, f64) = match self {
            Self::ExtrudedX => (foam_extruded_x, 21.0),
            Self::ExtrudedIv => (foam_extruded_iv, 25.0),
            Self::ExtrudedVi => (foam_extruded_vi, 29.0),
            Self::ExpandedI => (foam_expanded_i, 15.0),
            Self::ExpandedViii => (foam_expanded_viii, 18.0),
            Self::ExpandedIi => (foam_expanded_ii, 22.0),
            Self::ExpandedIx => (foam_expanded_ix, 29.0),
        };
        name(&show(Dimension::Density, kg_per_m3, units))
    }
}

impl Called for PotChoice {
    fn called(self, units: UnitSystem) -> String {
        let (units, size) = (units.key(), &number("7.5"));
        match self {
            Self::Small => pot_choice_small(units),
            Self::Medium => PotChoiceMedium { size, units }.text(),
            Self::Deep => PotChoiceDeep { units, width: size }.text(),
        }
    }
}

impl Called for VesselChoice {
    fn called(self, units: UnitSystem) -> String {
        let units = units.key();
        match self {
            Self::Bottle4 => vessel_choice_bottle4(units),
            Self::CutBottle2 => vessel_choice_cut_bottle2(units),
            Self::Bucket19 => vessel_choice_bucket19(units),
            Self::Box45 => vessel_choice_box45(units),
            Self::Tank240 => VesselChoiceTank240 {
                units,
                length: &number("2.4"),
                width: &number("1.2"),
            }
            .text(),
            Self::Tank720 => VesselChoiceTank720 {
                units,
                length: &number("7.35"),
                width: &number("1.25"),
            }
            .text(),
        }
    }
}

impl Worded for BlendChoice {
    fn word(self) -> String {
        match self.grade() {
            Some((nitrogen, phosphate, potash)) => {
                number(format!("{nitrogen}-{phosphate}-{potash}"))
            }
            None => blend_choice_own().to_owned(),
        }
    }
}

impl Worded for PipeChoice {
    fn word(self) -> String {
        let Some(pipe) = self.pipe() else {
            return pipe_choice_own().to_owned();
        };
        let nominal = rounded(pipe.nominal, 4);
        match pipe.series {
            Series::Metric => format!("{nominal} mm"),
            Series::Inch => pipe_choice_inch(&nominal),
            Series::InchDrain => pipe_choice_drain(&nominal),
        }
    }
}

/// A choice that is not on the list.
pub fn unknown_choice(text: &str) -> String {
    if text.is_empty() {
        choice_empty().to_owned()
    } else {
        choice_unknown(text)
    }
}

/// The grade of a label, as its lines were typed.
pub fn grade(label: &LabelPlan) -> String {
    [&label.nitrogen_pct, &label.p2o5_pct, &label.k2o_pct]
        .map(|entry| match entry {
            Entry::Number(value) => rounded(*value, 3),
            Entry::Text(text) if text.trim().is_empty() => "0".to_owned(),
            Entry::Text(text) => text.trim().to_owned(),
        })
        .join("-")
}
