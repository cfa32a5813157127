//! How the figures of a tank that is built are made.

use super::build_figures::push;
use super::figures::{on_length, places, rounded, show};
use super::say::*;
use crate::advice::{Outcome, StructureFact};
use crate::catalog::Keyed;
use crate::plan::{Dimension, UnitSystem};

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

/// Foam that common practice leaves beside a hole, mm.
const LEAST_FOAM_MM: f64 = 20.0;

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
            let supports: Vec<String> = made.supports_mm.iter().map(|&at| small(at)).collect();
            let sag = BuiltInputsSag {
                load: &weight(made.resting_load_kg),
                width: &small(made.across_mm),
                places: &supports.join(", "),
            }
            .text();
            let Some((least, most)) = made.sag_range_mm else {
                return Some(sag);
            };
            let range = BuiltInputsSagRange {
                least: &small(least),
                most: &small(most),
            };
            format!("{sag} {}", range.text())
        }
        Built::ClearGap => {
            let gap = length(boards.gap_at_harvest_cm);
            let drop = length(made.floor_drop_cm);
            match made.sag_mm {
                Some(sag) => BuiltInputsClearGap {
                    gap: &gap,
                    sag: &small(sag),
                    drop: &drop,
                }
                .text(),
                None => BuiltInputsClearGapNoSag {
                    gap: &gap,
                    drop: &drop,
                }
                .text(),
            }
        }
        Built::Trim => BuiltInputsTrim {
            weight: &weight(boards.board_mass_kg),
            draught: &small(boards.draught_mm?),
            draught_at_end: &small(boards.draught_at_end_mm?),
            width: &small(made.across_mm),
        }
        .text(),
        Built::Room => BuiltInputsRoom {
            across: &small(made.clearance_across_mm),
            along: &small(made.clearance_along_mm),
        }
        .text(),
        Built::Ballast => BuiltInputsBallast {
            units: units.key(),
            weight: &on_length(made.pipe.mass_kg_per_m, units),
            lift: &on_length(made.pipe.lift_kg_per_m, units),
            margin: &rounded(made.pipe.ballast_margin, 3),
        }
        .text(),
        _ => built_inputs_uptake(&weight(made.water_uptake_kg)),
    })
}

fn frame_inputs(of: Built, outcome: &Outcome, units: UnitSystem) -> Option<String> {
    let length = |cm| show(Dimension::Length, cm, units);
    let small = |mm| show(Dimension::SmallLength, mm, units);
    let weight = |kg| show(Dimension::Weight, kg, units);
    let build = outcome.build.as_ref()?;
    let layout = outcome.layout.as_ref()?;
    Some(match of {
        Built::Cuts => BuiltInputsCuts {
            hole: &small(layout.hole_diameter_mm),
            length: &length(layout.sheet_mm.0 / 10.0),
            width: &length(layout.sheet_mm.1 / 10.0),
        }
        .text(),
        Built::Cover => {
            let cover = build.cover.as_ref()?;
            BuiltInputsCover {
                span: &small(cover.span_mm),
                load: &show(Dimension::FloorLoad, cover.load_kg_per_m2, units),
                thickness: &small(cover.thickness_mm),
                least: &small(cover.sag_range_mm.0),
                most: &small(cover.sag_range_mm.1),
            }
            .text()
        }
        Built::Level => frame_inputs_level().to_owned(),
        Built::Sides => {
            let (force, moment) = push(build, units);
            BuiltInputsSides {
                units: units.key(),
                depth: &length(build.depth_cm),
                force: &force,
                moment: &moment,
                span: &small(build.timber.span_mm),
                thickness: &small(build.timber.thickness_mm),
                width: &small(build.timber.width_mm),
            }
            .text()
        }
        _ => BuiltInputsLoad {
            solution: &weight(build.solution_mass_kg),
            total: &weight(build.total_mass_kg),
        }
        .text(),
    })
}

/// Equation, source and certainty.
pub fn built_method(of: Built, units: UnitSystem) -> (String, String, String) {
    (equation(of).to_owned(), source(of, units), sure(of, units))
}

fn equation(of: Built) -> &'static str {
    match of {
        Built::Sag => built_equation_sag(),
        Built::ClearGap => built_equation_clear_gap(),
        Built::Trim => built_equation_trim(),
        Built::Room => built_equation_room(),
        Built::Ballast => built_equation_ballast(),
        Built::Uptake => built_equation_uptake(),
        Built::Cuts => built_equation_cuts(),
        Built::Cover => built_equation_cover(),
        Built::Level => built_equation_level(),
        Built::Sides => built_equation_sides(),
        Built::Load => built_equation_load(),
    }
}

fn source(of: Built, units: UnitSystem) -> String {
    match of {
        Built::Sag => {
            return BuiltSourceSag {
                extruded: &places(1.5, 1),
                expanded: &places(2.0, 0),
            }
            .text();
        }
        Built::Ballast => return built_source_ballast(&places(1.25, 2)),
        Built::ClearGap => built_source_clear_gap(),
        Built::Trim => built_source_trim(),
        Built::Room | Built::Level => built_source_practice(),
        Built::Uptake => built_source_uptake(),
        Built::Cuts => {
            return built_source_cuts(&show(Dimension::SmallLength, LEAST_FOAM_MM, units));
        }
        Built::Cover => built_source_cover(),
        Built::Sides => built_source_sides(),
        Built::Load => built_source_load(),
    }
    .to_owned()
}

fn sure(of: Built, units: UnitSystem) -> String {
    match of {
        Built::Sag => built_sure_sag(),
        Built::ClearGap => built_sure_clear_gap(),
        Built::Trim => built_sure_trim(),
        Built::Room => built_sure_room(),
        Built::Ballast => built_sure_ballast(),
        Built::Uptake => built_sure_uptake(),
        Built::Cuts => {
            return BuiltSureCuts {
                low: &show(Dimension::SmallLength, 2.0, units),
                high: &show(Dimension::SmallLength, 4.0, units),
            }
            .text();
        }
        Built::Cover => built_sure_cover(),
        Built::Level => built_sure_level(),
        Built::Sides => built_sure_sides(),
        Built::Load => built_sure_load(),
    }
    .to_owned()
}
