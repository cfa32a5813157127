//! Floating boards: do they float when planted, and when do they settle; which pipe leaves a sound
//! gap stands apart.

mod pipes;

pub use pipes::{PipeRow, PipeVerdict};

use super::fill::{self, Filled};
use super::outcome::BoardsOutcome;
use super::structure::boards::structure;
use crate::plan::Sound;
use crate::science::units::length::{centimeter, meter, millimeter};
use crate::science::units::mass::kilogram;
use crate::science::units::volume::liter;
use crate::science::units::{Length, Mass, Volume};
use crate::season::{Beyond, Cover, PlantCourse, State, Tank, seedling};
use pipes::{draughts, pipe_table};

/// Moist air that a crop on resting boards wants at harvest, cm: common practice, no source.
pub const SOUND_GAP_CM: (f64, f64) = (3.0, 9.0);
/// Solution that should be left under the boards, cm: common practice, no source.
pub const LEAST_LEFT_CM: f64 = 2.0;

/// Follows the level through a course of the plants.
pub(super) struct Fall {
    /// At the end of each day.
    pub days: Vec<State>,
    /// Hour on which boards first rest.
    pub rest_hour: Option<usize>,
    /// Hour on which the solution is used up.
    pub dry_hour: Option<usize>,
}

impl Fall {
    /// Lives the level down from the filled state; ends with the plants' course or the last drop.
    pub fn follow(tank: &Tank, filled: &Filled, course: &PlantCourse) -> Self {
        let start = filled.volume.get::<liter>();
        let mut fall = Self {
            days: Vec::with_capacity(course.days() + 1),
            rest_hour: None,
            dry_hour: None,
        };
        let mut level = filled.state.level;
        let mut draught = filled.draught;
        for (index, hour) in course.hours.iter().enumerate() {
            let left = start - hour.drawn.get::<liter>();
            if index % 24 == 0 {
                // Heads grow by the day; the boards' draught follows.
                draught = tank
                    .draught(tank.floating_mass(hour.head))
                    .unwrap_or(draught);
            }
            let state = tank.state(Volume::new::<liter>(left), draught, level);
            level = state.level;
            if matches!(tank.cover(), Cover::Floating { .. })
                && !state.afloat
                && fall.rest_hour.is_none()
            {
                fall.rest_hour = Some(index);
            }
            if index % 24 == 0 {
                fall.days.push(state);
            }
            if left <= 0.0 {
                fall.dry_hour = Some(index);
                if index % 24 != 0 {
                    fall.days.push(state);
                }
                break;
            }
        }
        fall
    }

    /// The first day on which pots hang above the solution from its beginning, as the roots and the
    /// drawing tell it.
    pub fn pots_hang_day(&self) -> Option<u32> {
        let hang = |state: &State| state.immersion().get::<meter>() < 0.0;
        self.days.iter().position(hang).map(|day| day_of(day * 24))
    }

    /// The state at the end.
    pub fn last(&self) -> Option<&State> {
        self.days.last()
    }
}

/// Days after planting in which an hour falls.
pub(super) fn day_of(hour: usize) -> u32 {
    u32::try_from(hour / 24).unwrap_or(u32::MAX)
}

/// The boards of the plan, and the table of pipes.
///
/// # Errors
/// [`Beyond`] when the geometry refuses the measures.
pub(super) fn boards(
    sound: &Sound,
    tank: &Tank,
    filled: &Filled,
    fall: &Fall,
    course: &PlantCourse,
) -> Result<Option<BoardsOutcome>, Beyond> {
    let Some(boards) = &sound.container.boards else {
        return Ok(None);
    };
    let Cover::Floating { rest, .. } = tank.cover() else {
        return Ok(None);
    };
    let last = fall.last().ok_or(Beyond)?;
    let young = seedling(&sound.crop);
    let planted = tank.floating_mass(young);
    let head_at_end = course.hours.last().map_or(young, |hour| hour.head);
    let afloat_depth = floating_depth(tank, filled.draught, rest)?;
    let refloat = refloat(tank, last, young)?;
    Ok(Some(BoardsOutcome {
        draught_mm: tank
            .draught(planted)
            .map(|draught| draught.get::<millimeter>()),
        draught_at_end_mm: tank
            .draught(tank.floating_mass(head_at_end))
            .map(|draught| draught.get::<millimeter>()),
        floats_at_planting: filled.state.afloat && tank.draught(planted).is_some(),
        clearance_at_planting_cm: (filled.state.underside - rest).get::<centimeter>().max(0.0),
        floats_from_depth_cm: afloat_depth.get::<centimeter>(),
        rest_day: fall.rest_hour.map(day_of),
        gap_at_harvest_cm: last.gap().get::<centimeter>(),
        depth_at_harvest_cm: last.level.get::<centimeter>(),
        board_mass_kg: planted.get::<kilogram>() / f64::from(boards.count),
        refloat_l: refloat.get::<liter>(),
        pipes: pipe_table(sound, course, &draughts(tank, course))?,
        structure: structure(
            sound,
            tank,
            boards,
            (head_at_end, last.gap().get::<centimeter>()),
        )?,
    }))
}

/// Depth before the boards go in from which they float free.
fn floating_depth(tank: &Tank, draught: Length, rest: Length) -> Result<Length, Beyond> {
    let volume = tank.volume_at(rest + draught, draught)?;
    tank.basin().depth_at(volume).map_err(|_| Beyond)
}

/// Volume to add after harvest so that replanted boards float clear again.
fn refloat(tank: &Tank, last: &State, head: Mass) -> Result<Volume, Beyond> {
    let draught = tank.draught(tank.floating_mass(head)).unwrap_or_default();
    let Cover::Floating { rest, .. } = tank.cover() else {
        return Ok(Volume::default());
    };
    let afloat = (rest + draught + fill::clearance()).min(tank.basin().depth_max());
    let wanted = tank.volume_at(afloat, draught)?;
    let left = tank.volume_at(last.level, last.draught)?;
    Ok((wanted - left).max(Volume::default()))
}
