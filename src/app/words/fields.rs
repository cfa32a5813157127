//! Labels of the fields, and how to measure what they ask for.

use super::figures::show;
use super::finding_parts::{fine, sentences};
use super::say::*;
use crate::app::state::AcidIsWanted;
use crate::plan::{Dimension, Field, UnitSystem};

/// The label above a field.
#[expect(
    clippy::too_many_lines,
    reason = "one line a field, all of them in one place"
)]
pub fn label(field: Field) -> String {
    match field {
        Field::Count => label_count(),
        Field::Height => label_height(),
        Field::Diameter => label_diameter(),
        Field::TopDiameter => label_top_diameter(),
        Field::BottomDiameter => label_bottom_diameter(),
        Field::Length => label_length(),
        Field::Width => label_width(),
        Field::BottomLength => label_bottom_length(),
        Field::BottomWidth => label_bottom_width(),
        Field::BodyHeight => label_body_height(),
        Field::ShoulderHeight => label_shoulder_height(),
        Field::NeckDiameter => label_neck_diameter(),
        Field::NeckHeight => label_neck_height(),
        Field::CoverThickness => label_cover_thickness(),
        Field::PotHeight => label_pot_height(),
        Field::PotTopDiameter => label_pot_top_diameter(),
        Field::PotBottomDiameter => label_pot_bottom_diameter(),
        Field::PotFlangeDiameter => label_pot_flange_diameter(),
        Field::PotImmersion => label_pot_immersion(),
        Field::FillDepth => label_fill_depth(),
        Field::BoardLength => label_board_length(),
        Field::BoardWidth => label_board_width(),
        Field::BoardThickness => label_board_thickness(),
        Field::BoardCount => label_board_count(),
        Field::PipeOutsideDiameter => label_pipe_outside_diameter(),
        Field::PipeWall => label_pipe_wall(),
        Field::PipeCount => label_pipe_count(),
        Field::PipeSpacing => label_pipe_spacing(),
        Field::PipeMaterial => label_pipe_material(),
        Field::StandsOn => label_stands_on(),
        Field::LegCount => label_leg_count(),
        Field::SupportRating => label_support_rating(),
        Field::FloorDrop => label_floor_drop(),
        Field::Timber => label_timber(),
        Field::BraceSpacing => label_brace_spacing(),
        Field::LinerLayers => label_liner_layers(),
        Field::CoverMaterial => label_cover_material(),
        Field::PropRows => label_prop_rows(),
        Field::EdgeDistance => label_edge_distance(),
        Field::SheetLength => label_sheet_length(),
        Field::SheetWidth => label_sheet_width(),
        Field::SheetPrice => label_sheet_price(),
        Field::PipePrice => label_pipe_price(),
        Field::TimberPrice => label_timber_price(),
        Field::LinerPrice => label_liner_price(),
        Field::PotPrice => label_pot_price(),
        Field::PlantsPerContainer => label_plants_per_container(),
        Field::SpacingAcross => label_spacing_across(),
        Field::SpacingAlong => label_spacing_along(),
        Field::Date => label_date(),
        Field::SeedlingAge => label_seedling_age(),
        Field::TargetHead => label_target_head(),
        Field::GrowthFactor => label_growth_factor(),
        Field::WaterFactor => label_water_factor(),
        Field::People => label_people(),
        Field::HeadsPerPersonWeek => label_heads_per_person_week(),
        Field::TurnaroundDays => label_turnaround_days(),
        Field::LabelNitrogen => label_label_nitrogen(),
        Field::LabelNitrate => label_label_nitrate(),
        Field::LabelAmmonium => label_label_ammonium(),
        Field::LabelUrea => label_label_urea(),
        Field::LabelPhosphate => label_label_phosphate(),
        Field::LabelPotash => label_label_potash(),
        Field::LabelCalcium | Field::WaterCalcium => label_label_calcium(),
        Field::LabelMagnesium | Field::WaterMagnesium => label_label_magnesium(),
        Field::LabelSulfur => label_label_sulfur(),
        Field::LabelIron => label_label_iron(),
        Field::LabelManganese => label_label_manganese(),
        Field::LabelZinc => label_label_zinc(),
        Field::LabelCopper => label_label_copper(),
        Field::LabelBoron => label_label_boron(),
        Field::LabelMolybdenum => label_label_molybdenum(),
        Field::TargetConductivity => label_target_conductivity(),
        Field::TargetNitrogen => label_target_nitrogen(),
        Field::RawWaterConductivity => label_raw_water_conductivity(),
        Field::RainShare => label_rain_share(),
        Field::StockACalciumNitrate => label_stock_acalcium_nitrate(),
        Field::StockBBlend => label_stock_bblend(),
        Field::StockBMagnesiumSulfate => label_stock_bmagnesium_sulfate(),
        Field::WaterSodium => label_water_sodium(),
        Field::WaterPotassium => label_water_potassium(),
        Field::WaterChloride => label_water_chloride(),
        Field::WaterSulfate => label_water_sulfate(),
        Field::WaterAlkalinity => label_water_alkalinity(),
        Field::WaterNitrate => label_water_nitrate(),
        Field::WaterPh => label_water_ph(),
        Field::AcidStrength => label_acid_strength(),
        Field::AcidDensity => label_acid_density(),
        Field::TargetPh => label_target_ph(),
        Field::StockVolume => label_stock_volume(),
        Field::StoreTemperature => label_store_temperature(),
        Field::RecipeStrength => label_recipe_strength(),
        Field::CropsInARow => label_crops_in_arow(),
        Field::PriceBlend => label_price_blend(),
        Field::PriceCalciumNitrate => label_price_calcium_nitrate(),
        Field::PriceMagnesiumSulfate => label_price_magnesium_sulfate(),
        Field::PriceAcid => label_price_acid(),
        Field::WaterKind => label_water_kind(),
        Field::Acid => label_acid(),
        Field::Recipe => label_recipe(),
        Field::Salts => label_salts(),
        Field::SaltChoice(index) => return label_salt_choice(&place(index)),
        Field::SaltPurity(index) => return label_salt_purity(&place(index)),
        Field::SaltPrice(index) => return label_salt_price(&place(index)),
        Field::Latitude => label_latitude(),
        Field::Elevation => label_elevation(),
        Field::TemperatureMin => label_temperature_min(),
        Field::TemperatureMax => label_temperature_max(),
        Field::Humidity => label_humidity(),
        Field::SolarRadiation => label_solar_radiation(),
        Field::Sunshine => label_sunshine(),
        Field::LightThrough => label_light_through(),
        Field::LampFlux => label_lamp_flux(),
        Field::LampHours => label_lamp_hours(),
        Field::CarbonDioxide => label_carbon_dioxide(),
        Field::Method => label_method(),
        Field::Shape => label_shape(),
        Field::Foam => label_foam(),
        Field::Pipe => label_pipe(),
        Field::PipeEnds => label_pipe_ends(),
        Field::CropKind => label_crop_kind(),
        Field::Pattern => label_pattern(),
        Field::DateMeaning => label_date_meaning(),
        Field::Dosing => label_dosing(),
        Field::Blend => label_blend(),
        Field::StrengthBy => label_strength_by(),
        Field::CalciumNitrate => label_calcium_nitrate(),
        Field::ClimateKind => label_climate_kind(),
        Field::DaylightBy => label_daylight_by(),
        Field::Shelter => label_shelter(),
        Field::MeasuredVolume(index) => return label_measured_volume(&place(index)),
        Field::MeasuredDepth(index) => return label_measured_depth(&place(index)),
        Field::Measured => label_measured(),
    }
    .to_owned()
}

/// The number of a line, as people count.
fn place(index: u8) -> String {
    (index + 1).to_string()
}

/// Name of the button that takes a value one step up or down.
pub fn step_by(field: Field, up: bool) -> String {
    let label = label(field);
    if up {
        label_step_up(&label)
    } else {
        label_step_down(&label)
    }
}

/// How to find the value; empty where the label says it all.
#[expect(
    clippy::too_many_lines,
    reason = "one line a field, all of them in one place"
)]
pub fn hint(field: Field, units: UnitSystem) -> String {
    let strength = |g_per_l| show(Dimension::StockStrength, g_per_l, units);
    match field {
        Field::Count => hint_count(),
        Field::Height => hint_height(),
        Field::Diameter | Field::TopDiameter | Field::BottomDiameter => hint_diameter(),
        Field::Length | Field::Width => hint_length(),
        Field::BottomLength | Field::BottomWidth => hint_bottom_length(),
        Field::BodyHeight => hint_body_height(),
        Field::ShoulderHeight => hint_shoulder_height(),
        Field::CoverThickness => hint_cover_thickness(),
        Field::PotHeight => hint_pot_height(),
        Field::PotFlangeDiameter => hint_pot_flange_diameter(),
        Field::PotImmersion => {
            return HintPotImmersion {
                low: &show(Dimension::Length, 2.0, units),
                high: &show(Dimension::Length, 3.0, units),
            }
            .text();
        }
        Field::FillDepth => hint_fill_depth(),
        Field::BoardCount => hint_board_count(),
        Field::PipeOutsideDiameter => hint_pipe_outside_diameter(),
        Field::PipeSpacing => hint_pipe_spacing(),
        Field::EdgeDistance => hint_edge_distance(),
        Field::SupportRating => hint_support_rating(),
        Field::FloorDrop => return hint_floor_drop(&show(Dimension::Length, 0.5, units)),
        Field::BraceSpacing => hint_brace_spacing(),
        Field::PropRows => hint_prop_rows(),
        Field::SheetLength | Field::SheetWidth => hint_sheet_length(),
        Field::PipeCount => hint_pipe_count(),
        Field::SpacingAcross | Field::SpacingAlong => hint_spacing_across(),
        Field::Date => hint_date(),
        Field::SeedlingAge => hint_seedling_age(),
        Field::TargetHead => {
            return HintTargetHead {
                low: &show(Dimension::Mass, 150.0, units),
                high: &show(Dimension::Mass, 250.0, units),
            }
            .text();
        }
        Field::GrowthFactor => return hint_growth_factor(&number("0.75")),
        Field::WaterFactor => hint_water_factor(),
        Field::People => hint_people(),
        Field::TurnaroundDays => hint_turnaround_days(),
        Field::LabelNitrogen => hint_label_nitrogen(),
        Field::TargetConductivity => {
            return HintTargetConductivity {
                low: &number("1.2"),
                high: &number("1.8"),
            }
            .text();
        }
        Field::TargetNitrogen => hint_target_nitrogen(),
        Field::RawWaterConductivity => {
            return HintRawWaterConductivity {
                rain: &number("0.02"),
                low: &number("0.2"),
                high: &number("0.6"),
            }
            .text();
        }
        Field::RainShare => hint_rain_share(),
        Field::WaterKind => hint_water_kind(),
        Field::WaterAlkalinity => return hint_water_alkalinity(&number("0.82")),
        Field::WaterSulfate => hint_water_sulfate(),
        Field::WaterNitrate => return hint_water_nitrate(&number("4.43")),
        Field::Acid => hint_acid(),
        Field::AcidStrength | Field::AcidDensity => hint_acid_strength(),
        Field::TargetPh => {
            return HintTargetPh {
                low: &number("5.5"),
                high: &number("6.5"),
            }
            .text();
        }
        Field::StoreTemperature => hint_store_temperature(),
        Field::RecipeStrength => hint_recipe_strength(),
        Field::CropsInARow => hint_crops_in_arow(),
        Field::SheetPrice
        | Field::PipePrice
        | Field::TimberPrice
        | Field::LinerPrice
        | Field::PotPrice
        | Field::PriceBlend
        | Field::PriceCalciumNitrate
        | Field::PriceMagnesiumSulfate
        | Field::PriceAcid => hint_sheet_price(),
        Field::Salts => hint_salts(),
        Field::StockACalciumNitrate => return hint_stock_acalcium_nitrate(&strength(120.0)),
        Field::StockBBlend => return hint_stock_bblend(&strength(120.0)),
        Field::StockBMagnesiumSulfate => {
            return hint_stock_bmagnesium_sulfate(&strength(72.0));
        }
        Field::Latitude => hint_latitude(),
        Field::TemperatureMin | Field::TemperatureMax => hint_temperature_min(),
        Field::Humidity => hint_humidity(),
        Field::SolarRadiation => hint_solar_radiation(),
        Field::LightThrough => hint_light_through(),
        Field::LampFlux => hint_lamp_flux(),
        Field::CarbonDioxide => hint_carbon_dioxide(),
        Field::ClimateKind => hint_climate_kind(),
        Field::Blend => hint_blend(),
        Field::Pipe => hint_pipe(),
        Field::Shape => hint_shape(),
        Field::Measured => hint_measured(),
        _ => "",
    }
    .to_owned()
}

/// Under the list of acids, where none is chosen and the pH is high.
pub fn acid_wanted_text(wanted: &AcidIsWanted, units: UnitSystem) -> String {
    let text = AcidWanted {
        ph: &fine(wanted.ph),
        low: &fine(wanted.low),
        high: &fine(wanted.high),
    };
    let rain = wanted
        .rain_pct
        .map(|share| acid_rain(&show(Dimension::Percent, share, units)));
    sentences(&[Some(text.text()), rain])
}
