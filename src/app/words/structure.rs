//! Verdicts on boards, covers and frames as sentences.

use super::figures::show;
use super::say::*;
use crate::advice::{LevelBy, LoadStop, StructureFact};
use crate::plan::{Dimension, UnitSystem};

/// A verdict in words.
#[expect(
    clippy::too_many_lines,
    reason = "one sentence a fact; several functions would only scatter the wording"
)]
pub fn fact(fact: StructureFact, good: bool, units: UnitSystem) -> String {
    let length = |cm| show(Dimension::Length, cm, units);
    let small = |mm| show(Dimension::SmallLength, mm, units);
    let weight = |kg| show(Dimension::Weight, kg, units);
    let load = |kg_per_m2| show(Dimension::FloorLoad, kg_per_m2, units);
    match fact {
        StructureFact::TooFewPipes { pipes } => format!(
            "At rest a board lies on {pipes} of the pipes and tips over. Each board needs two under it."
        ),
        StructureFact::BoardSag {
            sag_mm,
            limit_mm,
            stress_pct,
        } => {
            let figures = format!(
                "Resting boards sag {} under grown heads, at {} of the strength of the foam; up to {} is taken.",
                small(sag_mm),
                show(Dimension::Percent, stress_pct, units),
                small(limit_mm)
            );
            if good {
                figures
            } else {
                format!("{figures} Move the pipes, add one, or take thicker boards.")
            }
        }
        StructureFact::ClearGap {
            clear_gap_cm,
            sag_mm,
            floor_cm,
            low_cm,
        } => format!(
            "After {} of sag and {} for a floor out of level, {} of moist air is left at its least; {} or more is wanted.",
            small(sag_mm),
            length(floor_cm),
            length(clear_gap_cm),
            length(low_cm)
        ),
        StructureFact::TurnsOver { .. } => fact_turns_over().to_owned(),
        StructureFact::EdgeDip {
            dip_mm,
            freeboard_mm,
        } => {
            let figures = format!(
                "With heads on one half only, the edge dips by {}; {} of the board stands above the solution.",
                small(dip_mm),
                small(freeboard_mm)
            );
            if good {
                figures
            } else {
                format!(
                    "{figures} It goes under: harvest from both halves in turn, or take thicker boards."
                )
            }
        }
        StructureFact::Jam {
            clearance_mm,
            low_mm,
        } => {
            let figures = format!(
                "The boards have {} of room between the sides; at least {} keeps them from jamming.",
                small(clearance_mm),
                small(low_mm)
            );
            if good {
                figures
            } else {
                format!("{figures} A board that jams hangs in the air or is drowned.")
            }
        }
        StructureFact::OpenStrips { strip_mm, limit_mm } => {
            if good {
                format!(
                    "No open strip beside the boards is wider than {}.",
                    small(limit_mm)
                )
            } else {
                format!(
                    "A strip of {} stays open beside the boards. Light grows algae there and mosquitoes breed: close it with a strip of board or a flap of liner.",
                    small(strip_mm)
                )
            }
        }
        StructureFact::BoardsWithoutPlace { boards } => format!(
            "{boards} of the boards find no place when they lie in rows. Take fewer, or another size of board."
        ),
        StructureFact::PipesLift {
            lift_kg_per_m,
            ballast_kg_per_m,
        } => {
            if good {
                "The pipes stay down by themselves.".to_owned()
            } else {
                format!(
                    "Each metre of pipe lifts {}. Put {} of clean stone or sand into each metre before it is closed, or leave the ends open.",
                    weight(lift_kg_per_m),
                    weight(ballast_kg_per_m)
                )
            }
        }
        StructureFact::WaterUptake {
            uptake_kg,
            board_kg,
        } => {
            if good {
                "Extruded foam: its closed cells take up hardly any water.".to_owned()
            } else {
                format!(
                    "Expanded (beaded) foam takes up to {} of water into a board of {} over the weeks, so it floats lower each crop and roots grow into it. Extruded foam does not.",
                    weight(uptake_kg),
                    weight(board_kg)
                )
            }
        }
        StructureFact::HolesWeaken { foam_mm, low_mm } => format!(
            "Only {} of foam is left beside a hole; less than {} breaks out. Move the holes apart or away from the edge.",
            small(foam_mm),
            small(low_mm)
        ),
        StructureFact::SheetTooSmall => fact_sheet_too_small().to_owned(),
        StructureFact::CoverSag {
            sag_mm,
            limit_mm,
            prop_rows,
            prop_height_mm,
        } => {
            let figures = format!(
                "The cover sags {} under grown heads; up to {} is taken.",
                small(sag_mm),
                small(limit_mm)
            );
            if good && prop_rows == 0 {
                figures
            } else if good {
                format!(
                    "{figures} Props stand {} tall on the floor.",
                    small(prop_height_mm)
                )
            } else {
                format!("{figures} Prop it from below.")
            }
        }
        StructureFact::CoverLight => fact_cover_light().to_owned(),
        StructureFact::FloorLevel {
            drop_cm,
            limit_cm,
            length_cm,
            by,
        } => {
            let how = match by {
                LevelBy::SpiritLevel => fact_spirit_level(),
                LevelBy::WaterLevel => fact_water_level(),
            };
            format!(
                "The floor is {} out of level over {}; up to {} is taken. Level it with {how} before the liner goes in.",
                length(drop_cm),
                length(length_cm),
                length(limit_cm)
            )
        }
        StructureFact::Sides {
            bulge_mm,
            limit_mm,
            stress_mpa,
            stress_limit_mpa,
        } => {
            let figures = format!(
                "Between braces the sides bulge {} (up to {} is taken) and bear {} of what wet softwood may.",
                small(bulge_mm),
                small(limit_mm),
                show(
                    Dimension::Percent,
                    100.0 * stress_mpa / stress_limit_mpa,
                    units
                )
            );
            if good {
                figures
            } else {
                format!(
                    "{figures} Set more braces or take thicker timber, and have a competent person look at it."
                )
            }
        }
        StructureFact::AskCompetentPerson { depth_cm, limit_cm } => format!(
            "{} of solution is deep. From about {} a competent person should look at the sides and their joints before you fill.",
            length(depth_cm),
            length(limit_cm)
        ),
        StructureFact::DoNotBuildThere {
            stop,
            load_kg_per_m2,
            total_kg,
            rating_kg_per_m2,
        } => {
            let why = match (stop, rating_kg_per_m2) {
                (LoadStop::BalconyOrRoof, _) => {
                    "Balconies, decks and roofs are not for tanks.".to_owned()
                }
                (LoadStop::AboveRating, Some(rating)) => {
                    format!("It is rated for {} only.", load(rating))
                }
                (LoadStop::AboveRating | LoadStop::RatingUnknown, _) => {
                    fact_above_rating().to_owned()
                }
            };
            format!(
                "Do not build it there. The tank weighs {} and loads each square metre with {}. {why} Build on firm level ground, or let a licensed engineer rate the place and follow local code.",
                weight(total_kg),
                load(load_kg_per_m2)
            )
        }
    }
}
