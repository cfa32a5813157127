//! Whether the solution lasts, and how pots and boards stand in it.

use super::List;
use crate::advice::boards::{LEAST_LEFT_CM, PipeVerdict, SOUND_GAP_CM};
use crate::advice::facts::{Fact, Weight};
use crate::advice::outcome::{BoardsOutcome, Fill, SeasonOutcome};
use crate::advice::structure::findings::Structure;
use crate::advice::{fill, mend};
use crate::plan::{Field, Method, Sound};
use crate::science::units::Length;
use crate::science::units::length::centimeter;
use crate::season::{Tank, seedling};

/// Solution per plant before planting, L: common practice, no source.
const PER_PLANT_L: (f64, f64) = (4.0, 8.0);
/// Depth of the pot's foot in the solution at planting, cm: common practice, no source.
const IMMERSION_CM: (f64, f64) = (2.0, 3.0);

pub(super) fn water(list: &mut List, fill: &Fill, season: &SeasonOutcome) {
    let used_up = season.harvest_day.is_none() && season.left_l <= 0.0;
    if used_up {
        list.add(
            Weight::Stop,
            Fact::RunsOut {
                day: season.days_followed,
                short_l: (season.needed_l - fill.volume_l).max(0.0),
            },
        );
    } else if season.harvest_day.is_none() {
        list.add(
            Weight::Stop,
            Fact::NotReached {
                head_g: season.head_g,
                days: season.days_followed,
            },
        );
    } else {
        list.add(
            Weight::Sound,
            Fact::Lasts {
                left_l: season.left_l,
            },
        );
    }
    let (low_l, high_l) = PER_PLANT_L;
    // More than usual costs water and salts; whether the air gap opens in time is judged by itself.
    list.judge(
        fill.per_plant_l >= low_l,
        Fact::PerPlant {
            volume_l: fill.per_plant_l,
            low_l,
            high_l,
        },
    );
}

pub(super) fn planting(list: &mut List, sound: &Sound, fill: &Fill, overflows: bool) {
    if overflows {
        list.add(Weight::Stop, Fact::Overflows);
    }
    let immersion_cm = fill.pot_immersion_cm;
    if immersion_cm < 0.0 {
        list.add(
            Weight::Stop,
            Fact::PotsHangAbove {
                by_cm: -immersion_cm,
            },
        );
    } else if sound.container.fill_depth.is_some()
        || sound.container.method == Method::FloatingBoards
    {
        // A worked-out fill gives the immersion that was asked for; its own field is judged there.
        let (low_cm, high_cm) = IMMERSION_CM;
        // Boards set the immersion by their thickness; a little more or less does no harm.
        let slack = if sound.container.method == Method::FloatingBoards {
            0.7
        } else {
            0.05
        };
        list.judge(
            (low_cm - slack..=high_cm + slack).contains(&immersion_cm),
            Fact::Immersion {
                immersion_cm,
                low_cm,
                high_cm,
            },
        );
    }
}

pub(super) fn on_boards(
    list: &mut List,
    structure: &Structure,
    season: &SeasonOutcome,
    boards: &BoardsOutcome,
) {
    if boards.draught_mm.is_none() {
        let planted = seedling(&structure.sound.crop);
        let mends = structure.thicker(|sound, _| {
            Tank::new(sound, None)
                .is_ok_and(|tank| tank.draught(tank.floating_mass(planted)).is_some())
        });
        list.add_with(Weight::Stop, Fact::BoardsSink, mends);
        return;
    }
    if boards.floats_at_planting {
        list.add(
            Weight::Sound,
            Fact::Floats {
                clearance_cm: boards.clearance_at_planting_cm,
            },
        );
    } else {
        let mends = mend::first(
            Field::FillDepth,
            structure
                .sound
                .container
                .fill_depth
                .map_or(boards.floats_from_depth_cm, |depth| {
                    depth.get::<centimeter>()
                }),
            0.1,
            3000,
            |depth| {
                let depth = Length::new::<centimeter>(depth);
                depth <= structure.tank.basin().depth_max()
                    && fill::fill(structure.sound, structure.tank, Some(depth))
                        .is_ok_and(|filled| filled.state.afloat)
            },
        );
        list.add_with(
            Weight::Stop,
            Fact::RestAtPlanting {
                floats_from_depth_cm: boards.floats_from_depth_cm,
            },
            mends.into_iter().collect(),
        );
    }
    if boards.rest_day.is_none() {
        let mends = structure.other_pipe(boards, |_| true);
        list.add_with(Weight::Stop, Fact::NeverRest, mends.into_iter().collect());
    } else if season.left_l > 0.0 {
        let (low_cm, high_cm) = SOUND_GAP_CM;
        list.judge_with(
            (low_cm..=high_cm).contains(&boards.gap_at_harvest_cm),
            Fact::Gap {
                gap_cm: boards.gap_at_harvest_cm,
                low_cm,
                high_cm,
            },
            || structure.other_pipe(boards, |_| true).into_iter().collect(),
        );
        if boards.depth_at_harvest_cm < LEAST_LEFT_CM {
            list.add(
                Weight::Caution,
                Fact::LittleLeft {
                    depth_cm: boards.depth_at_harvest_cm,
                    low_cm: LEAST_LEFT_CM,
                },
            );
        }
    }
    if !boards
        .pipes
        .iter()
        .any(|row| row.verdict == PipeVerdict::Sound)
    {
        list.add(Weight::Caution, Fact::NoPipeFits);
    }
}
