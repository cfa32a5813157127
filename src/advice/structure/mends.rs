//! Changes of boards and pipes that are tried until a verdict on them is sound.

use super::boards;
use super::findings::{Structure, cm, whole};
use super::mm;
use crate::advice::Change;
use crate::advice::mend::{self, first};
use crate::advice::outcome::BoardsOutcome;
use crate::plan::{Boards, Field, Sound};
use crate::science::units::length::centimeter;
use crate::season::Tank;

impl Structure<'_> {
    /// Thicker boards, in steps of a millimetre, as far as the pots still reach below them.
    pub fn thicker(&self, mended: impl Fn(&Sound, &Boards) -> bool) -> Vec<Change> {
        let Some(plan) = self.sound.container.boards else {
            return Vec::new();
        };
        let pot_cm = self.sound.container.pot.height.get::<centimeter>();
        first(
            Field::BoardThickness,
            plan.thickness.get::<centimeter>(),
            0.1,
            200,
            |thickness| {
                if thickness >= pot_cm {
                    return false;
                }
                let boards = Boards {
                    thickness: cm(thickness),
                    ..plan
                };
                let mut sound = self.sound.clone();
                sound.container.boards = Some(boards);
                sound.container.cover_thickness = cm(thickness);
                mended(&sound, &boards)
            },
        )
        .into_iter()
        .collect()
    }

    /// Boards whose narrow side is longer, in steps of a centimetre, with the same heads on them.
    pub fn wider(&self) -> Option<Change> {
        let plan = self.sound.container.boards?;
        let lengthwise = plan.length < plan.width;
        let (field, from) = if lengthwise {
            (Field::BoardLength, plan.length)
        } else {
            (Field::BoardWidth, plan.width)
        };
        first(field, from.get::<centimeter>(), 1.0, 500, |side| {
            let mut boards = plan;
            if lengthwise {
                boards.length = cm(side);
            } else {
                boards.width = cm(side);
            }
            let mut sound = self.sound.clone();
            sound.container.boards = Some(boards);
            Tank::new(&sound, None)
                .is_ok_and(|tank| boards::keeps_upright(&sound, &tank, &boards, self.head))
        })
    }

    /// The standard pipe nearest in diameter whose gap does. With a fill of the grower's own the
    /// table tells nothing of other sizes.
    pub fn other_pipe(&self, made: &BoardsOutcome, does: impl Fn(f64) -> bool) -> Option<Change> {
        if self.sound.container.fill_depth.is_some() {
            return None;
        }
        let plan = self.sound.container.boards?;
        let own = mm(plan.pipes.outside_diameter);
        // As the plan's check has it: side by side, within the sides, with room above.
        let count = f64::from(plan.pipes.count);
        let fits = |outside_mm: f64| {
            let reach = plan
                .pipes
                .spacing
                .map_or(0.0, |spacing| mm(spacing) * (count - 1.0) + outside_mm);
            outside_mm * count <= mm(plan.tank_width)
                && reach <= mm(plan.tank_width)
                && outside_mm + 20.0 <= mm(self.tank.basin().depth_max())
        };
        made.pipes
            .iter()
            .filter(|row| {
                fits(row.outside_diameter_mm)
                    && !row.chosen
                    && row.verdict == crate::advice::PipeVerdict::Sound
                    && does(row.gap_cm)
            })
            .min_by(|a, b| {
                let far = |diameter: f64| (diameter - own).abs();
                far(a.outside_diameter_mm).total_cmp(&far(b.outside_diameter_mm))
            })
            .map(|row| mend::choice(Field::Pipe, row.size))
    }
}

/// Pipes nearer together or further apart by whole centimetres: the least change of both ways.
pub fn rearranged_apart(plan: &Boards, does: impl Fn(&Boards) -> bool) -> Option<Change> {
    if plan.pipes.count < 2 {
        return None;
    }
    let middles = plan.pipes.middles(plan.tank_width);
    let now = match middles[..] {
        [first, second, ..] => (second - first).get::<centimeter>(),
        _ => return None,
    };
    let outside = plan.pipes.outside_diameter.get::<centimeter>();
    let between = f64::from(plan.pipes.count - 1);
    let most = (plan.tank_width.get::<centimeter>() - outside) / between;
    let tried = |spacing: f64| {
        let mut boards = *plan;
        boards.pipes.spacing = Some(cm(spacing));
        spacing >= outside && spacing <= most && does(&boards)
    };
    let nearer = first(Field::PipeSpacing, now, -1.0, 1000, tried);
    let further = first(Field::PipeSpacing, now, 1.0, 1000, tried);
    let far = |mend: &Change| match mend.value {
        crate::plan::Entry::Number(value) => (value - now).abs(),
        crate::plan::Entry::Text(_) => f64::INFINITY,
    };
    nearer
        .into_iter()
        .chain(further)
        .min_by(|a, b| far(a).total_cmp(&far(b)))
}

/// As [`rearranged_apart`], and more pipes.
pub fn rearranged(plan: &Boards, does: impl Fn(&Boards) -> bool) -> Vec<Change> {
    let mut mends: Vec<Change> = rearranged_apart(plan, &does).into_iter().collect();
    let count = f64::from(plan.pipes.count);
    mends.extend(first(Field::PipeCount, count, 1.0, 20, |count| {
        let mut boards = *plan;
        boards.pipes.count = whole(count);
        let outside = plan.pipes.outside_diameter;
        let taken = boards
            .pipes
            .spacing
            .map_or(outside * count, |spacing| spacing * (count - 1.0) + outside);
        taken <= plan.tank_width && outside * count <= plan.tank_width && does(&boards)
    }));
    mends
}
