//! Verdicts on boards, covers and frames as sentences.

use super::figures::{on_length, show};
use super::say::*;
use crate::advice::{LevelBy, LoadStop, StructureFact};
use crate::catalog::Keyed;
use crate::plan::{Dimension, UnitSystem};

/// A verdict in words.
#[expect(
    clippy::too_many_lines,
    reason = "one sentence a fact; several functions would only scatter the choice"
)]
pub fn fact(fact: StructureFact, good: bool, units: UnitSystem) -> String {
    let length = |cm| show(Dimension::Length, cm, units);
    let small = |mm| show(Dimension::SmallLength, mm, units);
    let weight = |kg| show(Dimension::Weight, kg, units);
    let percent = |of_100| show(Dimension::Percent, of_100, units);
    match fact {
        StructureFact::TooFewPipes { pipes } => fact_too_few_pipes(&pipes.to_string()),
        StructureFact::BoardSag {
            sag_mm,
            limit_mm,
            stress_pct,
        } => {
            let figures = FactBoardSag {
                sag: &small(sag_mm),
                stress: &percent(stress_pct),
                limit: &small(limit_mm),
            };
            with_more(figures.text(), (!good).then(fact_board_sag_mend))
        }
        StructureFact::ClearGap {
            clear_gap_cm,
            sag_mm,
            floor_cm,
            low_cm,
        } => FactClearGap {
            sag: &small(sag_mm),
            floor: &length(floor_cm),
            gap: &length(clear_gap_cm),
            least: &length(low_cm),
        }
        .text(),
        StructureFact::TurnsOver { .. } => fact_turns_over().to_owned(),
        StructureFact::EdgeDip {
            dip_mm,
            freeboard_mm,
        } => {
            let figures = FactEdgeDip {
                dip: &small(dip_mm),
                freeboard: &small(freeboard_mm),
            };
            with_more(figures.text(), (!good).then(fact_edge_dip_mend))
        }
        StructureFact::Jam {
            clearance_mm,
            low_mm,
        } => {
            let figures = FactJam {
                room: &small(clearance_mm),
                least: &small(low_mm),
            };
            with_more(figures.text(), (!good).then(fact_jam_mend))
        }
        StructureFact::OpenStrips { limit_mm, .. } if good => fact_no_open_strips(&small(limit_mm)),
        StructureFact::OpenStrips { strip_mm, .. } => fact_open_strips(&small(strip_mm)),
        StructureFact::BoardsWithoutPlace { boards } => {
            fact_boards_without_place(&boards.to_string())
        }
        StructureFact::PipesLift { .. } if good => fact_pipes_stay_down().to_owned(),
        StructureFact::PipesLift {
            lift_kg_per_m,
            ballast_kg_per_m,
        } => FactPipesLift {
            units: units.key(),
            lift: &on_length(lift_kg_per_m, units),
            ballast: &on_length(ballast_kg_per_m, units),
        }
        .text(),
        StructureFact::WaterUptake { .. } if good => fact_extruded_foam().to_owned(),
        StructureFact::WaterUptake {
            uptake_kg,
            board_kg,
        } => FactWaterUptake {
            uptake: &weight(uptake_kg),
            board: &weight(board_kg),
        }
        .text(),
        StructureFact::HolesWeaken { foam_mm, low_mm } => FactHolesWeaken {
            foam: &small(foam_mm),
            least: &small(low_mm),
        }
        .text(),
        StructureFact::SheetTooSmall => fact_sheet_too_small().to_owned(),
        StructureFact::CoverSag {
            sag_mm,
            limit_mm,
            prop_rows,
            prop_height_mm,
        } => {
            let figures = FactCoverSag {
                sag: &small(sag_mm),
                limit: &small(limit_mm),
            };
            let more = match (good, prop_rows) {
                (true, 0) => None,
                (true, _) => Some(fact_cover_props(&small(prop_height_mm))),
                (false, _) => Some(fact_cover_sag_mend().to_owned()),
            };
            with_more(figures.text(), more)
        }
        StructureFact::CoverLight => fact_cover_light().to_owned(),
        StructureFact::FloorLevel {
            drop_cm,
            limit_cm,
            length_cm,
            by,
        } => FactFloorLevel {
            drop: &length(drop_cm),
            length: &length(length_cm),
            limit: &length(limit_cm),
            by: match by {
                LevelBy::SpiritLevel => "spirit",
                LevelBy::WaterLevel => "water",
            },
        }
        .text(),
        StructureFact::Sides {
            bulge_mm,
            limit_mm,
            stress_mpa,
            stress_limit_mpa,
        } => {
            let figures = FactSides {
                bulge: &small(bulge_mm),
                limit: &small(limit_mm),
                stress: &percent(100.0 * stress_mpa / stress_limit_mpa),
            };
            with_more(figures.text(), (!good).then(fact_sides_mend))
        }
        StructureFact::AskCompetentPerson { depth_cm, limit_cm } => FactAskCompetentPerson {
            depth: &length(depth_cm),
            limit: &length(limit_cm),
        }
        .text(),
        StructureFact::DoNotBuildThere {
            stop,
            load_kg_per_m2,
            total_kg,
            rating_kg_per_m2,
        } => {
            let load = |kg_per_m2| show(Dimension::FloorLoad, kg_per_m2, units);
            let figures = FactDoNotBuildThere {
                total: &weight(total_kg),
                load: &load(load_kg_per_m2),
            }
            .text();
            let why = match (stop, rating_kg_per_m2) {
                (LoadStop::BalconyOrRoof, _) => fact_balcony_or_roof().to_owned(),
                (LoadStop::AboveRating, Some(rating)) => fact_above_rating(&load(rating)),
                (LoadStop::AboveRating | LoadStop::RatingUnknown, _) => {
                    fact_rating_unknown().to_owned()
                }
            };
            format!("{figures} {why} {}", fact_build_elsewhere())
        }
    }
}

/// A sentence, and the one that follows it where there is one.
fn with_more(sentence: String, more: Option<impl std::fmt::Display>) -> String {
    match more {
        Some(more) => format!("{sentence} {more}"),
        None => sentence,
    }
}
