//! How the figures of a tank that is built are made.

use super::figures::show;
use super::say::*;
use crate::advice::{Outcome, StructureFact};
use crate::plan::{Dimension, UnitSystem, significant};

/// A verdict on what is built whose working can be opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Built {
    /// Sag and stress of resting boards.
    Sag,
    /// The clear gap along the tank.
    ClearGap,
    /// How boards lie under an uneven load.
    Trim,
    /// Room between boards and sides.
    Room,
    /// What holds pipes down.
    Ballast,
    /// Water in the foam.
    Uptake,
    /// Holes and cuts.
    Cuts,
    /// The cover.
    Cover,
    /// The floor.
    Level,
    /// The sides.
    Sides,
    /// What the place must bear.
    Load,
}

/// The working behind a verdict.
pub const fn built(fact: StructureFact) -> Built {
    match fact {
        StructureFact::TooFewPipes { .. } | StructureFact::BoardSag { .. } => Built::Sag,
        StructureFact::ClearGap { .. } => Built::ClearGap,
        StructureFact::TurnsOver { .. } | StructureFact::EdgeDip { .. } => Built::Trim,
        StructureFact::Jam { .. }
        | StructureFact::OpenStrips { .. }
        | StructureFact::BoardsWithoutPlace { .. } => Built::Room,
        StructureFact::PipesLift { .. } => Built::Ballast,
        StructureFact::WaterUptake { .. } => Built::Uptake,
        StructureFact::HolesWeaken { .. } | StructureFact::SheetTooSmall => Built::Cuts,
        StructureFact::CoverSag { .. } | StructureFact::CoverLight => Built::Cover,
        StructureFact::FloorLevel { .. } => Built::Level,
        StructureFact::Sides { .. } | StructureFact::AskCompetentPerson { .. } => Built::Sides,
        StructureFact::DoNotBuildThere { .. } => Built::Load,
    }
}

/// The button that opens it.
pub fn built_name(of: Built) -> &'static str {
    match of {
        Built::Sag => built_name_sag(),
        Built::ClearGap => built_name_clear_gap(),
        Built::Trim => built_name_trim(),
        Built::Room => built_name_room(),
        Built::Ballast => built_name_ballast(),
        Built::Uptake => built_name_uptake(),
        Built::Cuts => built_name_cuts(),
        Built::Cover => built_name_cover(),
        Built::Level => built_name_level(),
        Built::Sides => built_name_sides(),
        Built::Load => built_name_load(),
    }
}

/// What goes into it; empty where the plan has nothing of the kind.
pub fn built_inputs(of: Built, outcome: &Outcome, units: UnitSystem) -> String {
    match of {
        Built::Sag
        | Built::ClearGap
        | Built::Trim
        | Built::Room
        | Built::Ballast
        | Built::Uptake => boards_inputs(of, outcome, units),
        Built::Cuts | Built::Cover | Built::Level | Built::Sides | Built::Load => {
            frame_inputs(of, outcome, units)
        }
    }
    .unwrap_or_default()
}

fn boards_inputs(of: Built, outcome: &Outcome, units: UnitSystem) -> Option<String> {
    let length = |cm| show(Dimension::Length, cm, units);
    let small = |mm| show(Dimension::SmallLength, mm, units);
    let weight = |kg| show(Dimension::Weight, kg, units);
    let boards = outcome.boards.as_ref()?;
    let made = &boards.structure;
    Some(match of {
        Built::Sag => {
            let places: Vec<String> = made.supports_mm.iter().map(|&at| small(at)).collect();
            let range = made.sag_range_mm.map_or_else(String::new, |(least, most)| {
                format!(
                    " The stiffest foam of the type sags {}, the softest {}.",
                    small(least),
                    small(most)
                )
            });
            format!(
                "{} on a board {} wide; pipes under it at {} from its edge.{range}",
                weight(made.resting_load_kg),
                small(made.across_mm),
                places.join(", ")
            )
        }
        Built::ClearGap => format!(
            "{} of moist air between solution and pipes at the end, less the sag of {} and half of the {} that the floor is out of level.",
            length(boards.gap_at_harvest_cm),
            made.sag_mm.map_or_else(|| "a board".to_owned(), small),
            length(made.floor_drop_cm)
        ),
        Built::Trim => format!(
            "One board with pots and seedlings weighs {}; it lies {} deep at planting and {} at the end, {} wide.",
            weight(boards.board_mass_kg),
            small(boards.draught_mm?),
            small(boards.draught_at_end_mm?),
            small(made.across_mm)
        ),
        Built::Room => format!(
            "Inside measures of the tank less the boards in rows: {} is left across, {} along.",
            small(made.clearance_across_mm),
            small(made.clearance_along_mm)
        ),
        Built::Ballast => format!(
            "A metre of the bare pipe weighs {} and lifts {} with its ends as planned; margin {}.",
            weight(made.pipe.mass_kg_per_m),
            weight(made.pipe.lift_kg_per_m),
            significant(made.pipe.ballast_margin, 3)
        ),
        _ => format!(
            "Volume of one board and the water that foam of its type takes up in long immersion: {}.",
            weight(made.water_uptake_kg)
        ),
    })
}

fn frame_inputs(of: Built, outcome: &Outcome, units: UnitSystem) -> Option<String> {
    let length = |cm| show(Dimension::Length, cm, units);
    let small = |mm| show(Dimension::SmallLength, mm, units);
    let weight = |kg| show(Dimension::Weight, kg, units);
    let build = outcome.build.as_ref()?;
    let layout = outcome.layout.as_ref()?;
    Some(match of {
        Built::Cuts => format!(
            "Holes of {} by the spacing of the plants and the distance from the edge; stock sheets of {} × {}.",
            small(layout.hole_diameter_mm),
            length(layout.sheet_mm.0 / 10.0),
            length(layout.sheet_mm.1 / 10.0)
        ),
        Built::Cover => {
            let cover = build.cover.as_ref()?;
            format!(
                "A free span of {} under {}, {} thick. The stiffest of the material sags {}, the softest {}.",
                small(cover.span_mm),
                show(Dimension::FloorLoad, cover.load_kg_per_m2, units),
                small(cover.thickness_mm),
                small(cover.sag_range_mm.0),
                small(cover.sag_range_mm.1)
            )
        }
        Built::Level => frame_inputs_level().to_owned(),
        Built::Sides => format!(
            "{} of solution presses with {} N on each metre of side (moment about its foot {} N m); braces leave {} free; the lowest board is {} × {}.",
            length(build.depth_cm),
            significant(build.side_force_n_per_m, 3),
            significant(build.side_moment_n_m, 3),
            small(build.timber.span_mm),
            small(build.timber.thickness_mm),
            small(build.timber.width_mm)
        ),
        _ => format!(
            "Solution {}; with boards or cover, grown heads and timber {}; over the area of the floor.",
            weight(build.solution_mass_kg),
            weight(build.total_mass_kg)
        ),
    })
}

/// Equation, source and certainty.
pub const fn built_method(of: Built) -> (&'static str, &'static str, &'static str) {
    const PRACTICE: &str = "Limits: common practice, no source.";
    match of {
        Built::Sag => (
            "The board as a beam on its pipes with ends beyond them, under an even load: bending moment over stiffness, summed twice, times creep.",
            "Three-moment equation (Clapeyron 1857); strength by ASTM C578; moduli by makers' sheets. The limit and the creep factors (1.5 extruded, 2 expanded) are assumed.",
            "Within a third for foam as sold: the modulus varies. What the solution bears is left out, which errs to the safe side.",
        ),
        Built::ClearGap => (
            "Gap less sag, less half of the drop: the solution stays level, while pipes and boards follow the floor down.",
            "Geometry. Least gap: common practice, no source.",
            "As sure as sag and water use.",
        ),
        Built::Trim => (
            "Metacentric height = centre of buoyancy + second moment of the water line over the displaced volume − centre of mass; the dip of an edge = half the width times heeling moment over (weight times metacentric height).",
            "Archimedes; Bouguer 1746. Centres of mass of heads: assumed.",
            "A guide: grown heads lean on their neighbours, and boards on theirs.",
        ),
        Built::Room => (
            "Inside measure less as many boards as fit.",
            PRACTICE,
            "As sure as your tape; timber and liner move with the wet.",
        ),
        Built::Ballast => (
            "Lift = displaced water less pipe, less what fills it; ballast inside the pipe = lift times the margin.",
            "Archimedes; diameters and walls of ISO 161-1, EN ISO 1452, ASTM D1785, D2729 and D3034. The margin of 1.25 is assumed.",
            "Within a tenth.",
        ),
        Built::Uptake => (
            "Volume of the board times the long-term uptake of its foam.",
            "Limits for long immersion of EN 13164 (extruded) and EN 13163 (expanded).",
            "An upper limit; what roots open up is not counted.",
        ),
        Built::Cuts => (
            "Rows by spacing and edge distance, spread evenly; sheets by straight cuts through, of every pattern of up to three blocks the one with most pieces.",
            "Geometry; 20 mm of foam beside a hole is common practice, no source.",
            "Exact; saw cuts take 2 to 4 mm each.",
        ),
        Built::Cover => (
            "A strip of cover across the tank as a beam on sides and rows of props under an even load, times creep; fabric as a hanging cable.",
            "Clapeyron 1857; moduli after EN 636 (plywood) and makers' sheets; creep of plywood by EN 1995-1-1, of the others assumed, as is the limit.",
            "Within a third; moist plywood sags more.",
        ),
        Built::Level => (
            "The drop against the most that leaves roots room and contact at both ends.",
            PRACTICE,
            "As sure as the level that you use.",
        ),
        Built::Sides => (
            "Pressure = density × gravity × depth; the lowest board as a beam hinged at the braces; stress = moment over section modulus; bulge times creep.",
            "Hydrostatics; strength class C16 of EN 338, wet and in the long run by EN 1995-1-1.",
            "Errs to the safe side for sound wood. Screws and joints are not counted.",
        ),
        Built::Load => (
            "Mass over the area of the floor, against what the place is rated to carry.",
            "Archimedes and the scale; ratings come from the builder or maker only.",
            "Within a tenth. It judges no building: an engineer does.",
        ),
    }
}
