//! The standard pipe sizes compared, against the same crop.

use serde::Serialize;

use super::{LEAST_LEFT_CM, SOUND_GAP_CM, day_of};
use crate::advice::fill::{self, Filled};
use crate::catalog::Keyed;
use crate::catalog::pipes::PipeChoice;
use crate::plan::Sound;
use crate::science::units::Length;
use crate::science::units::length::{centimeter, millimeter};
use crate::science::units::volume::liter;
use crate::season::{Beyond, Cover, PlantCourse, State, Tank};

/// One pipe size in the comparison.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct PipeRow {
    /// The size.
    pub size: PipeChoice,
    /// True outside diameter, mm.
    pub outside_diameter_mm: f64,
    /// Depth of fill that floats the boards clear of this pipe, cm.
    pub fill_depth_cm: f64,
    /// Days after planting on which the boards rest; `None` when they still float at harvest.
    pub rest_day: Option<u32>,
    /// Moist air at harvest, cm.
    pub gap_cm: f64,
    /// Solution under the boards at harvest, cm.
    pub left_depth_cm: f64,
    /// Whether this size does.
    pub verdict: PipeVerdict,
    /// Whether it is the plan's own.
    pub chosen: bool,
}

/// Whether a pipe size does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum PipeVerdict {
    /// The gap is sound and solution is left.
    Sound,
    /// The boards sink under their load.
    BoardsSink,
    /// The tank is too low to float boards above this pipe.
    TankTooLow,
    /// The boards lie on the pipes from the first day.
    RestsAtPlanting,
    /// The boards still float at harvest.
    NeverRests,
    /// The solution ends before harvest.
    RunsOut,
    /// Less moist air than the crop wants.
    GapTooSmall,
    /// More moist air than the water roots reach through.
    GapTooLarge,
    /// Too little solution left under the roots.
    TooLittleLeft,
}

/// How a fall ends, without its days: what the comparison of pipes needs, in a twentieth of the work.
struct Ends {
    /// Days after planting in which the boards come to rest.
    rest_day: Option<u32>,
    last: State,
    dry: bool,
}

impl Ends {
    /// As [`Fall::follow`] ends; looks once a day. `draughts`: of free boards, day by day.
    fn follow(
        tank: &Tank,
        filled: &Filled,
        course: &PlantCourse,
        draughts: &[Option<Length>],
    ) -> Option<Self> {
        let floats = matches!(tank.cover(), Cover::Floating { .. });
        let hours = &course.hours;
        let left = |index: usize| filled.volume - hours[index].drawn;
        let dry = (0..hours.len()).find(|&index| left(index).get::<liter>() <= 0.0);
        let until = dry.map_or(hours.len(), |hour| hour + 1);
        let looks = (0..until)
            .step_by(24)
            .chain(dry.filter(|hour| hour % 24 != 0));
        let mut draught = filled.draught;
        let mut last: Option<State> = None;
        let mut rest_day = None;
        for index in looks {
            let yesterday = draught;
            if index % 24 == 0 {
                draught = draughts
                    .get(index / 24)
                    .copied()
                    .flatten()
                    .unwrap_or(draught);
            }
            let guess = last.map_or(filled.state.level, |state| state.level);
            let state = tank.state(left(index), draught, guess);
            if floats && rest_day.is_none() && !state.afloat {
                // Within a day the level only falls: it happened in the hours since the last look
                // when the hour before this one finds the boards at rest.
                let before = index
                    .checked_sub(1)
                    .filter(|&hour| !tank.state(left(hour), yesterday, state.level).afloat);
                rest_day = Some(day_of(before.unwrap_or(index)));
            }
            last = Some(state);
        }
        Some(Self {
            rest_day,
            last: last?,
            dry: dry.is_some(),
        })
    }
}

/// How deep free boards float, day by day: the same over any pipes.
pub(super) fn draughts(tank: &Tank, course: &PlantCourse) -> Vec<Option<Length>> {
    let days = course.hours.iter().step_by(24);
    days.map(|hour| tank.draught(tank.floating_mass(hour.head)))
        .collect()
}

/// Every standard size, filled so that its boards float clear, against the same crop; the plan's
/// own pipe with the plan's own fill.
pub(super) fn pipe_table(
    sound: &Sound,
    course: &PlantCourse,
    draughts: &[Option<Length>],
) -> Result<Vec<PipeRow>, Beyond> {
    let Some(boards) = &sound.container.boards else {
        return Ok(Vec::new());
    };
    let own = &boards.pipes;
    let mut rows = Vec::new();
    for &size in PipeChoice::ALL {
        let chosen = size == own.choice;
        let (outside, wall) = match size.pipe() {
            Some(pipe) => (
                Length::new::<millimeter>(pipe.outside_diameter_mm),
                Length::new::<millimeter>(pipe.wall_mm),
            ),
            None if chosen => (own.outside_diameter, own.wall),
            None => continue,
        };
        rows.push(pipe_row(
            sound,
            (course, draughts),
            size,
            (outside, wall),
            chosen,
        )?);
    }
    rows.sort_by(|a, b| a.outside_diameter_mm.total_cmp(&b.outside_diameter_mm));
    Ok(rows)
}

fn pipe_row(
    sound: &Sound,
    (course, draughts): (&PlantCourse, &[Option<Length>]),
    size: PipeChoice,
    pipe: (Length, Length),
    chosen: bool,
) -> Result<PipeRow, Beyond> {
    let row = |fill_depth: f64, rest_day, gap_cm, left_depth_cm, verdict| PipeRow {
        size,
        outside_diameter_mm: pipe.0.get::<millimeter>(),
        fill_depth_cm: fill_depth,
        rest_day,
        gap_cm,
        left_depth_cm,
        verdict,
        chosen,
    };
    let too_low = row(0.0, None, 0.0, 0.0, PipeVerdict::TankTooLow);
    // A pipe that does not fit into the tank has no geometry at all.
    let Ok(tank) = Tank::new(sound, Some(pipe)) else {
        return Ok(too_low);
    };
    let own_fill = sound.container.fill_depth.filter(|_| chosen);
    let Ok(filled) = fill::fill(sound, &tank, own_fill) else {
        return Ok(too_low);
    };
    let ends = Ends::follow(&tank, &filled, course, draughts).ok_or(Beyond)?;
    let last = ends.last;
    let (gap, left) = (
        last.gap().get::<centimeter>(),
        last.level.get::<centimeter>(),
    );
    let verdict = if filled.sinks {
        PipeVerdict::BoardsSink
    } else if filled.state.overflows {
        PipeVerdict::TankTooLow
    } else if !filled.state.afloat {
        PipeVerdict::RestsAtPlanting
    } else if ends.dry {
        PipeVerdict::RunsOut
    } else if ends.rest_day.is_none() {
        PipeVerdict::NeverRests
    } else if gap < SOUND_GAP_CM.0 {
        PipeVerdict::GapTooSmall
    } else if gap > SOUND_GAP_CM.1 {
        PipeVerdict::GapTooLarge
    } else if left < LEAST_LEFT_CM {
        PipeVerdict::TooLittleLeft
    } else {
        PipeVerdict::Sound
    };
    Ok(row(
        filled.depth.get::<centimeter>(),
        ends.rest_day,
        gap,
        left,
        verdict,
    ))
}

#[cfg(test)]
mod tests {
    use super::super::Fall;
    use super::*;
    use crate::plan::{Example, check};
    use crate::season;

    /// Looking once a day finds what living every hour finds, for every size of pipe, whether boards
    /// rest early, late or never, and whether the tank runs dry.
    #[test]
    fn looking_once_a_day_ends_as_living_every_hour_does() {
        let mut rests = 0;
        for (height, target) in [("30", "150"), ("22", "150"), ("40", "600"), ("25", "900")] {
            let mut plan = Example::FloatingBoards.plan();
            plan.container.height_cm = height.into();
            plan.crop.target_head_g = target.into();
            let Ok(sound) = check(&plan) else { continue };
            let own = Tank::new(&sound, None).expect("the plan's own tank");
            for size in PipeChoice::ALL.iter().filter_map(|size| size.pipe()) {
                let pipe = (
                    Length::new::<millimeter>(size.outside_diameter_mm),
                    Length::new::<millimeter>(size.wall_mm),
                );
                let Ok(tank) = Tank::new(&sound, Some(pipe)) else {
                    continue;
                };
                let Ok(course) = season::plants(&sound, crate::advice::open_area(&sound)) else {
                    continue;
                };
                let Ok(filled) = fill::fill(&sound, &tank, None) else {
                    continue;
                };
                let hourly = Fall::follow(&tank, &filled, &course);
                // As the plan's own pipes have it.
                let draughts = draughts(&own, &course);
                let daily = Ends::follow(&tank, &filled, &course, &draughts).expect("a first day");
                let last = hourly.last().expect("a first day");
                assert_eq!(daily.rest_day, hourly.rest_hour.map(day_of));
                assert_eq!(daily.dry, hourly.dry_hour.is_some());
                // Both find the level within a nanometre, from different guesses.
                let apart = (daily.last.level - last.level).get::<millimeter>().abs();
                assert!(apart < 1e-5, "{apart} mm");
                rests += usize::from(daily.rest_day.is_some_and(|day| day > 0));
            }
        }
        assert!(rests > 10, "boards hardly ever rest: {rests}");
    }
}
