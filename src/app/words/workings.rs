//! How each figure is made: from what, by which equation, after whom, and how sure.

use super::built::{Built, built, built_inputs, built_method, built_name};
use super::doses::doses_line;
use super::figures::{counted, rounded, show};
use super::finding_parts::fine;
use super::results::saturation_line;
use super::say::*;
use crate::advice::{Fact, Outcome};
use crate::plan::{Dimension, UnitSystem, significant, temperature_difference};

/// A figure whose working can be opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Worked {
    /// Depth and litres.
    Fill,
    /// Grams or millilitres.
    Dose,
    /// The day and mass of the harvest.
    Harvest,
    /// Water drawn and left, and the air gap.
    Water,
    /// EC, pH and saturation.
    Solution,
    /// Whether the nutrients last.
    Nutrients,
    /// Stock solutions.
    Stocks,
    /// Boards and pipes.
    Boards,
    /// Level, gap, heads, EC and pH of each day.
    Days,
    /// What the salts reach of a recipe.
    Recipe,
    /// Strengths that fit the crop in its climate.
    Strength,
    /// The raw water against its limits.
    RawWater,
    /// Where uptake takes the pH.
    Drift,
    /// What salt costs in yield.
    Salt,
    /// More crops on the same solution.
    NextCrops,
    /// Weight of the solution.
    Load,
    /// Tips, contact and oxygen.
    Roots,
    /// From egg to adult.
    Mosquitoes,
    /// Boards, cover, sides and load as bodies.
    Built(Built),
}

/// The working behind a finding; none where it holds no figure of ours.
pub const fn worked(fact: &Fact) -> Option<Worked> {
    Some(match fact {
        Fact::Lasts { .. }
        | Fact::RunsOut { .. }
        | Fact::PerPlant { .. }
        | Fact::SpentSolution { .. } => Worked::Water,
        Fact::NotReached { .. }
        | Fact::Warm { .. }
        | Fact::Dim { .. }
        | Fact::BrighterThanClearSky
        | Fact::NotValidated => Worked::Harvest,
        Fact::Immersion { .. } | Fact::PotsHangAbove { .. } | Fact::Overflows => Worked::Fill,
        Fact::Gap { .. } | Fact::LittleLeft { .. } => Worked::Days,
        Fact::BoardsSink
        | Fact::RestAtPlanting { .. }
        | Fact::Floats { .. }
        | Fact::NeverRest
        | Fact::NoPipeFits => Worked::Boards,
        Fact::Short { .. } | Fact::NutrientsLast => Worked::Nutrients,
        Fact::StrongAtEnd { .. } | Fact::FittingStrength { .. } => Worked::Strength,
        Fact::Urea { .. } | Fact::LabelCharges { .. } => Worked::Dose,
        Fact::Heavy { .. } | Fact::FloorLoad { .. } => Worked::Load,
        Fact::StocksApart { .. } | Fact::StockClear { .. } => Worked::Stocks,
        Fact::TargetMissed { .. } => Worked::Recipe,
        Fact::Ph { .. } | Fact::NoAcidNeeded { .. } | Fact::FallsOut { .. } => Worked::Solution,
        Fact::PhDrift { .. } => Worked::Drift,
        Fact::WaterAnalysis { .. } | Fact::Water { .. } | Fact::DiluteWater { .. } => {
            Worked::RawWater
        }
        Fact::SaltYield { .. } => Worked::Salt,
        Fact::GrowOn { .. } => Worked::NextCrops,
        Fact::RootsReach { .. }
        | Fact::ContactLost { .. }
        | Fact::RootsHang { .. }
        | Fact::WarmSolution { .. } => Worked::Roots,
        Fact::Mosquitoes { .. } => Worked::Mosquitoes,
        Fact::Structure(fact) => Worked::Built(built(*fact)),
        Fact::OpenWater
        | Fact::Salts
        | Fact::Electricity
        | Fact::Acid
        | Fact::Unusual { .. }
        | Fact::Spoons { .. }
        | Fact::AlgaeInClearWall
        | Fact::AlgaeAtEdges { .. }
        | Fact::MiddayWilt { .. }
        | Fact::TipBurn { .. }
        | Fact::RainDilutes
        | Fact::DrainInterval { .. }
        | Fact::FoodContainer
        | Fact::TankLiner
        | Fact::CleanHarvest => {
            return None;
        }
    })
}

/// Names of the four parts of a working.
pub fn working_parts() -> [&'static str; 4] {
    [
        working_parts_1(),
        working_parts_2(),
        working_parts_3(),
        working_parts_4(),
    ]
}

/// The button that opens a working.
pub fn working_of(worked: Worked) -> &'static str {
    match worked {
        Worked::Fill => working_of_fill(),
        Worked::Dose => working_of_dose(),
        Worked::Harvest => working_of_harvest(),
        Worked::Water => working_of_water(),
        Worked::Solution => working_of_solution(),
        Worked::Nutrients => working_of_nutrients(),
        Worked::Stocks => working_of_stocks(),
        Worked::Boards => working_of_boards(),
        Worked::Days => working_of_days(),
        Worked::Recipe => working_of_recipe(),
        Worked::Strength => working_of_strength(),
        Worked::RawWater => working_of_raw_water(),
        Worked::Drift => working_of_drift(),
        Worked::Salt => working_of_salt(),
        Worked::NextCrops => working_of_next_crops(),
        Worked::Load => working_of_load(),
        Worked::Roots => working_of_roots(),
        Worked::Mosquitoes => working_of_mosquitoes(),
        Worked::Built(of) => built_name(of),
    }
}

/// Inputs, equation, source, how sure.
pub fn working(worked: Worked, outcome: &Outcome, units: UnitSystem) -> [String; 4] {
    let [equation, source, sure] = method(worked, units);
    [inputs(worked, outcome, units), equation, source, sure]
}

#[expect(
    clippy::too_many_lines,
    reason = "one text a working, with its figures; several functions would only scatter them"
)]
fn inputs(worked: Worked, outcome: &Outcome, units: UnitSystem) -> String {
    let length = |cm| show(Dimension::Length, cm, units);
    let volume = |litres| show(Dimension::Volume, litres, units);
    let conductivity = |ms_per_cm| show(Dimension::Conductivity, ms_per_cm, units);
    let (fill, season) = (&outcome.fill, &outcome.season);
    match worked {
        Worked::Fill => InputsFill {
            level: &length(fill.planted_level_cm),
            immersion: &length(fill.pot_immersion_cm),
            volume: &volume(fill.volume_l),
            depth: &length(fill.depth_cm),
        }
        .text(),
        Worked::Dose => InputsDose {
            volume: &volume(fill.volume_l),
            raw: &conductivity(outcome.fertilizer.raw_water_ec_ms_per_cm),
            solution: &conductivity(outcome.fertilizer.ec_ms_per_cm),
            nitrogen: &show(
                Dimension::Concentration,
                outcome.fertilizer.elements_mg_per_l.n,
                units,
            ),
            doses: &doses_line(outcome, units),
        }
        .text(),
        Worked::Harvest => InputsHarvest {
            temperature: &show(Dimension::Temperature, season.mean_temperature_c, units),
            light: &show(Dimension::DailyLight, season.daily_light_mol_per_m2, units),
            head: &show(Dimension::Mass, season.head_g, units),
        }
        .text(),
        Worked::Water => InputsWater {
            volume: &volume(fill.volume_l),
            drawn: &volume(season.water_l),
            evaporated: &volume(season.evaporated_l),
            use_per_mass: &show(Dimension::WaterUse, season.water_per_kg_l, units),
        }
        .text(),
        Worked::Solution => InputsSolution {
            ionic_strength: &rounded(outcome.solution.ionic_strength_mol_per_kg, 3),
            ph: &fine(outcome.solution.ph),
            saturation: &saturation_line(&outcome.solution.saturation),
        }
        .text(),
        Worked::Nutrients => InputsNutrients {
            plants: &fill.plants.to_string(),
            head: &show(Dimension::Mass, season.head_g, units),
        }
        .text(),
        Worked::Stocks => inputs_stocks().to_owned(),
        Worked::Days => InputsDays {
            volume: &volume(fill.volume_l),
            days: &season.days.len().saturating_sub(1).to_string(),
        }
        .text(),
        Worked::Recipe => inputs_recipe().to_owned(),
        Worked::Strength => InputsStrength {
            use_per_mass: &show(Dimension::WaterUse, season.water_per_kg_l, units),
            solution: &conductivity(outcome.fertilizer.ec_ms_per_cm),
        }
        .text(),
        Worked::RawWater => inputs_raw_water(&conductivity(outcome.water.ec_ms_per_cm)),
        Worked::Drift => inputs_drift(&fine(outcome.solution.ph)),
        Worked::Salt => inputs_salt().to_owned(),
        Worked::NextCrops => InputsNextCrops {
            volume: &volume(season.left_l),
            solution: &conductivity(season.days.last().map_or(0.0, |day| day.ec_ms_per_cm)),
        }
        .text(),
        Worked::Load => InputsLoad {
            volume: &volume(fill.volume_l),
            mass: &show(Dimension::Weight, fill.mass_kg, units),
        }
        .text(),
        Worked::Roots => InputsRoots {
            growth: &show(
                Dimension::SmallLength,
                outcome.roots.growth_mm_per_day,
                units,
            ),
            oxygen: &show(
                Dimension::Concentration,
                outcome.roots.oxygen_mg_per_l,
                units,
            ),
        }
        .text(),
        Worked::Mosquitoes => inputs_mosquitoes(&show(
            Dimension::Temperature,
            season.mean_temperature_c,
            units,
        )),
        Worked::Built(of) => built_inputs(of, outcome, units),
        Worked::Boards => outcome.boards.as_ref().map_or_else(String::new, |boards| {
            InputsBoards {
                mass: &show(Dimension::Weight, boards.board_mass_kg, units),
                draught: &show(
                    Dimension::SmallLength,
                    boards.draught_mm.unwrap_or_default(),
                    units,
                ),
            }
            .text()
        }),
    }
}

/// Equation, source and certainty.
fn method(worked: Worked, units: UnitSystem) -> [String; 3] {
    let three = |by: &str, after: &str, sure: &str| [by, after, sure].map(str::to_owned);
    match worked {
        Worked::Built(of) => built_method(of, units).into(),
        Worked::Fill => three(working_fill_by(), working_fill_after(), working_fill_sure()),
        Worked::Dose => three(
            working_dose_by(),
            &WorkingDoseAfter {
                phosphorus: &number("0.436"),
                potassium: &number("0.830"),
            }
            .text(),
            working_dose_sure(),
        ),
        Worked::Harvest => three(
            working_harvest_by(),
            working_harvest_after(),
            working_harvest_sure(),
        ),
        Worked::Water => three(
            &working_water_by(&number("1.05")),
            working_water_after(),
            working_water_sure(),
        ),
        Worked::Solution => three(
            working_solution_by(),
            working_solution_after(),
            &working_solution_sure(&number("0.3")),
        ),
        Worked::Nutrients => three(
            working_nutrients_by(),
            working_nutrients_after(),
            working_nutrients_sure(),
        ),
        Worked::Stocks => three(
            working_stocks_by(),
            working_stocks_after(),
            &working_stocks_sure(&number("0.2")),
        ),
        Worked::Boards => three(
            working_boards_by(),
            working_boards_after(),
            &working_boards_sure(&show(Dimension::SmallLength, 3.0, units)),
        ),
        Worked::Days => three(working_days_by(), working_days_after(), working_days_sure()),
        Worked::Recipe => three(
            working_recipe_by(),
            working_recipe_after(),
            working_recipe_sure(),
        ),
        Worked::Strength => three(
            working_strength_by(),
            working_strength_after(),
            working_strength_sure(),
        ),
        Worked::RawWater => three(
            working_raw_water_by(),
            working_raw_water_after(),
            working_raw_water_sure(),
        ),
        Worked::Drift => three(
            working_drift_by(),
            working_drift_after(),
            working_drift_sure(),
        ),
        Worked::Salt => three(working_salt_by(), working_salt_after(), working_salt_sure()),
        Worked::NextCrops => three(
            working_next_crops_by(),
            working_next_crops_after(),
            working_next_crops_sure(),
        ),
        Worked::Roots => three(
            &roots_grow(units),
            working_roots_after(),
            working_roots_sure(),
        ),
        Worked::Mosquitoes => three(
            working_mosquitoes_by(),
            working_mosquitoes_after(),
            working_mosquitoes_sure(),
        ),
        Worked::Load => three(working_load_by(), working_load_after(), working_load_sure()),
    }
}

/// How tips grow: a millimetre a day for each degree of the reader's scale.
fn roots_grow(units: UnitSystem) -> String {
    let (degrees, _) = temperature_difference(1.0, units);
    let growth = Dimension::SmallLength.in_system(1.0, units) / degrees;
    WorkingRootsBy {
        plug: &show(Dimension::Length, 3.0, units),
        growth: &counted(
            &significant(growth, 2),
            Dimension::SmallLength.symbol(units),
        ),
        from: &show(Dimension::Temperature, 5.0, units),
    }
    .text()
}
