//! How each figure is made: from what, by which equation, after whom, and how sure.

use super::built::{Built, built, built_inputs, built_method, built_name};
use super::doses::doses_line;
use super::figures::show;
use super::findings::fine;
use super::results::saturation_line;
use super::say::*;
use crate::advice::{Fact, Outcome};
use crate::plan::{Dimension, UnitSystem};

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
    let (equation, source, sure) = method(worked);
    [inputs(worked, outcome, units), equation, source, sure]
}

#[expect(
    clippy::too_many_lines,
    reason = "one sentence a working; several functions would only scatter the wording"
)]
fn inputs(worked: Worked, outcome: &Outcome, units: UnitSystem) -> String {
    let length = |cm| show(Dimension::Length, cm, units);
    let volume = |litres| show(Dimension::Volume, litres, units);
    let (fill, season) = (&outcome.fill, &outcome.season);
    match worked {
        Worked::Fill => format!(
            "Your measures of container, cover and pots. With everything in place the solution stands {} above the floor and the pots {} deep in it; without them the same {} stand {} deep.",
            length(fill.planted_level_cm),
            length(fill.pot_immersion_cm),
            volume(fill.volume_l),
            length(fill.depth_cm)
        ),
        Worked::Dose => format!(
            "{} of solution, raw water of {}, and the strength you asked for; the solution then reads {} with {} nitrogen. That takes {}.",
            volume(fill.volume_l),
            show(Dimension::Conductivity, outcome.fertilizer.raw_water_ec_ms_per_cm, units),
            show(Dimension::Conductivity, outcome.fertilizer.ec_ms_per_cm, units),
            show(Dimension::Concentration, outcome.fertilizer.elements_mg_per_l.n, units),
            doses_line(outcome, units)
        ),
        Worked::Harvest => format!(
            "Mean temperature {}, light {} a day at the plants, seedling age, spacing, the growth factor, and {} as the mass of a head at the end.",
            show(Dimension::Temperature, season.mean_temperature_c, units),
            show(Dimension::DailyLight, season.daily_light_mol_per_m2, units),
            show(Dimension::Mass, season.head_g, units)
        ),
        Worked::Water => format!(
            "{} at planting; the crop draws {} to the end, {} of it through openings; {} of fresh heads.",
            volume(fill.volume_l),
            volume(season.water_l),
            volume(season.evaporated_l),
            show(Dimension::WaterUse, season.water_per_kg_l, units)
        ),
        Worked::Solution => format!(
            "Every ion of fertilizer, acid and raw water. Ionic strength {} mol/kg; pH {}; {}.",
            crate::plan::significant(outcome.solution.ionic_strength_mol_per_kg, 3),
            fine(outcome.solution.ph),
            saturation_line(&outcome.solution.saturation)
        ),
        Worked::Nutrients => format!(
            "Dry mass of {} {} of {} at the end, and the content of the tissue.",
            fill.plants,
            if fill.plants == 1 { "head" } else { "heads" },
            show(Dimension::Mass, season.head_g, units)
        ),
        Worked::Stocks => {
            inputs_stocks().to_owned()
        }
        Worked::Days => format!(
            "{} of solution at planting, the water drawn on each day, the shape of the container, and what the crop takes up; {} days in all.",
            volume(fill.volume_l),
            season.days.len().saturating_sub(1)
        ),
        Worked::Recipe => inputs_recipe().to_owned(),
        Worked::Strength => format!(
            "Water of {} of fresh heads, uptake by the crop, and {} at planting; the end of the season at each trial strength.",
            show(Dimension::WaterUse, season.water_per_kg_l, units),
            show(Dimension::Conductivity, outcome.fertilizer.ec_ms_per_cm, units)
        ),
        Worked::RawWater => format!(
            "Your figures of the raw water; it computes to {}.",
            show(Dimension::Conductivity, outcome.water.ec_ms_per_cm, units)
        ),
        Worked::Drift => format!(
            "Cations and anions that the crop takes up, and a pH of {} at planting.",
            fine(outcome.solution.ph)
        ),
        Worked::Salt => inputs_salt().to_owned(),
        Worked::NextCrops => format!(
            "What is left at harvest: {}, and {} of EC.",
            volume(season.left_l),
            show(
                Dimension::Conductivity,
                season.days.last().map_or(0.0, |day| day.ec_ms_per_cm),
                units
            )
        ),
        Worked::Load => format!(
            "{} in one container, {} in it, over the area of its floor.",
            volume(fill.volume_l),
            show(Dimension::Weight, fill.mass_kg, units)
        ),
        Worked::Roots => format!(
            "Tips that grow {} a day at the season's mean temperature; {} of oxygen at the surface; the level of each day.",
            show(
                Dimension::SmallLength,
                outcome.roots.growth_mm_per_day,
                units
            ),
            show(
                Dimension::Concentration,
                outcome.roots.oxygen_mg_per_l,
                units
            )
        ),
        Worked::Mosquitoes => format!(
            "Solution at the mean of the air, {}.",
            show(Dimension::Temperature, season.mean_temperature_c, units)
        ),
        Worked::Built(of) => built_inputs(of, outcome, units),
        Worked::Boards => outcome.boards.as_ref().map_or_else(String::new, |boards| {
            format!(
                "One board with pots weighs {} at planting and lies {} deep; the level falls with the water drawn.",
                show(Dimension::Weight, boards.board_mass_kg, units),
                show(Dimension::SmallLength, boards.draught_mm.unwrap_or_default(), units)
            )
        }),
    }
}

/// Equation, source and certainty.
fn method(worked: Worked) -> (String, String, String) {
    let (equation, source, sure) = match worked {
        Worked::Built(of) => return built_method(of),
        Worked::Fill => (
            "Volume of the shape up to the level, less what pots, boards and pipes push aside; inverted by Newton's method.",
            "Solid geometry; monotone cubic interpolation for a vessel measured with a jug (Fritsch and Butland 1984).",
            "As sure as your tape.",
        ),
        Worked::Dose => (
            "Composition of label or salt times grams, until EC or nitrogen meets the target; single salts by bounded least squares on the recipe.",
            "IUPAC standard atomic weights; P = 0.436 P2O5, K = 0.830 K2O; Lawson and Hanson 1974.",
            "As sure as the label and the scale. An unknown tap is taken as calcium bicarbonate water of its EC.",
        ),
        Worked::Harvest => (
            "Two stores of dry mass, sugars and structure; photosynthesis from light, carbon dioxide and temperature, hour by hour, times the growth factor.",
            "Van Henten 1994, with its published parameters; air and light by FAO Irrigation and Drainage Paper 56; dry matter by USDA food composition tables.",
            "Validated for lettuce in greenhouses; about a week either way.",
        ),
        Worked::Water => (
            "Energy balance of the canopy: heat and vapour flow against stomatal and aerodynamic resistances; pots and edges evaporate 1.05 times the reference.",
            "Graamans and others 2017; FAO Irrigation and Drainage Paper 56.",
            "20 to 30% either way; a hot dry spell takes more than the mean.",
        ),
        Worked::Solution => (
            "Mass action of ions and pairs with activities, open to the air's carbon dioxide; conductivity from the species; saturation index = log of activity product over solubility product.",
            "Truesdell and Jones 1974; Robinson and Stokes 1959; McCleskey and others 2012; Nordstrom and others 1990. Checked against PHREEQC.",
            "EC within 3% of a known solution, 10% of a label; pH within 0.3 in weakly buffered water.",
        ),
        Worked::Nutrients => (
            "Dry mass times content of the tissue, against grams brought by fertilizer and raw water.",
            "USDA food composition tables, nitrate added.",
            "About 30% either way.",
        ),
        Worked::Stocks => (
            "Each salt against its solubility at the coldest, and the saturation of gypsum and calcium phosphate in each stock and in both together.",
            "CRC Handbook solubilities; equilibria as for the tank.",
            "Solubility within 5% for one salt alone; saturation index within 0.2.",
        ),
        Worked::Boards => (
            "Displaced water equals floating mass; gap = height of the pipes less the level.",
            "Archimedes; ASTM C578 foam densities; ISO 161-1, ASTM D1785, D2729 and D3034 pipe diameters.",
            "A few millimetres on a level floor; sag and a floor out of level are told apart.",
        ),
        Worked::Days => (
            "Solution of a day = that of the day before less transpiration, evaporation; level from the shape of the container; each nutrient less uptake; EC and pH from the ions left.",
            "Mass balance over the sources of harvest, water, nutrients and solution.",
            "As sure as water and harvest: 20 to 30%, and about a week.",
        ),
        Worked::Recipe => (
            "Grams of each salt, none below zero, that bring the least sum of squared misses, each relative to its target.",
            "Lawson and Hanson 1974, non-negative least squares; recipes as published, named in the list.",
            "Exact for pure salts; as sure as their purity.",
        ),
        Worked::Strength => (
            "From the weakest with which no nutrient ends before harvest to the strongest whose EC at harvest the crop still bears.",
            "Mass balance of the season; tissue contents by USDA food composition tables.",
            "About 30% either way, as water use and uptake.",
        ),
        Worked::RawWater => (
            "Each item against its limit; charges of cations against anions; computed against measured EC; the share of rain that brings every item below its limit.",
            "FAO Irrigation and Drainage Paper 29 (Ayers and Westcot 1985), Table 1; alkalinity practice of soilless culture.",
            "As sure as the analysis.",
        ),
        Worked::Drift => (
            "Each charge that roots take in is paid with one of hydrogen or bicarbonate; nitrate takes the pH up, ammonium down.",
            "Charge balance of uptake; equilibria as for the tank.",
            "The direction is sure, the size an outer bound: roots and their breath damp it.",
        ),
        Worked::Salt => (
            "Yield falls by a set share for each unit of salinity above a threshold.",
            "Maas and Hoffman 1977; of the part of the EC that sodium and chloride make up, half counts as the soil extract they measured.",
            "A few per cent of yield.",
        ),
        Worked::NextCrops => (
            "Refill with raw water to the first mark, add back what the next crop takes of nitrogen; drain once sodium, chloride or EC is past its limit.",
            "Mass balance of the season.",
            "Measure EC before each crop: it counts more than the forecast.",
        ),
        Worked::Roots => (
            "Tips start from a 3 cm (1 1/4 in) plug, grow 1 mm for each degree above 5 °C a day, and stop where less than 2 mg/L of oxygen diffuses down to them.",
            "Degree-days after Kage and others 2000; diffusion after Han and Bartels 1996; the figures for lettuce, the plug and the least oxygen are assumed.",
            "A guide: real solution stirs a little at night, so roots may go deeper.",
        ),
        Worked::Mosquitoes => (
            "Rate of development at a constant temperature, from egg to adult.",
            "Rueda and others 1990, for Culex quinquefasciatus and Aedes aegypti.",
            "Other species and hungry larvae take longer, up to three times.",
        ),
        Worked::Load => (
            "Volume times density; mass over area.",
            "Density of water by Tanaka and others 2001; loads of floors vary, so ask who knows the building.",
            "Within 2%, container, boards and crop not counted.",
        ),
    };
    (equation.to_owned(), source.to_owned(), sure.to_owned())
}
