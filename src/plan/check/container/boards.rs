//! Floating boards and their pipes.

use super::{Boards, Pipes, cm};
use crate::catalog::pipes::{PipeChoice, PipeMaterial};
use crate::plan::check::reader::Reader;
use crate::plan::{Field, Rule};
use crate::science::geometry::Vessel;
use crate::science::units::length::centimeter;

/// Solution that boards need above the pipes to float free at planting, cm.
const ROOM_ABOVE_PIPES_CM: f64 = 2.0;

pub(super) fn boards(reader: &mut Reader, vessel: Option<&Vessel>) -> Option<Boards> {
    let length = reader.number(Field::BoardLength);
    let width = reader.number(Field::BoardWidth);
    let count = reader.whole(Field::BoardCount);
    let foam = reader.choice(Field::Foam, &reader.plan.container.foam);
    let pipes = pipes(reader, vessel);
    let (length, width, count) = (length?, width?, count?);
    if vessel.is_some() {
        // Read again without repeating their problems: the vessel exists, so both are sound.
        let tank = |field: Field| reader.plan_number(field);
        let (tank_length, tank_width) = (tank(Field::Length)?, tank(Field::Width)?);
        // A board may lie along or across the tank.
        let (short, long) = if length < width {
            (length, width)
        } else {
            (width, length)
        };
        let (tank_short, tank_long) = if tank_length < tank_width {
            (tank_length, tank_width)
        } else {
            (tank_width, tank_length)
        };
        if long > tank_long {
            reader.conflict(
                if length >= width {
                    Field::BoardLength
                } else {
                    Field::BoardWidth
                },
                long,
                Rule::BoardsFitLength,
                tank_long,
            );
        } else if short > tank_short {
            reader.conflict(
                if length >= width {
                    Field::BoardWidth
                } else {
                    Field::BoardLength
                },
                short,
                Rule::BoardsFitWidth,
                tank_short,
            );
        } else {
            let room = (tank_length * tank_width / (length * width)).floor();
            if f64::from(count) > room {
                reader.conflict(
                    Field::BoardCount,
                    f64::from(count),
                    Rule::BoardsFitArea,
                    room,
                );
            }
        }
    }
    let foam = foam?;
    Some(Boards {
        length: cm(length),
        width: cm(width),
        thickness: cm(reader.plan_number(Field::BoardThickness)?),
        count,
        foam,
        foam_figures: foam.figures(),
        pipes: pipes?,
        tank_length: cm(reader.plan_number(Field::Length)?),
        tank_width: cm(reader.plan_number(Field::Width)?),
    })
}

fn pipes(reader: &mut Reader, vessel: Option<&Vessel>) -> Option<Pipes> {
    let choice = reader.choice(Field::Pipe, &reader.plan.container.pipe);
    let ends = reader.choice(Field::PipeEnds, &reader.plan.container.pipe_ends);
    let count = reader.whole(Field::PipeCount);
    let spacing = reader.optional(Field::PipeSpacing);
    let material = reader.choice_or(
        Field::PipeMaterial,
        &reader.plan.container.pipe_material,
        PipeMaterial::Pvc,
    );
    let choice = choice?;
    let (outside_cm, wall_cm) = if let Some(pipe) = choice.pipe() {
        (pipe.outside_diameter_mm / 10.0, pipe.wall_mm / 10.0)
    } else {
        let outside = reader.number(Field::PipeOutsideDiameter);
        let wall = reader.number(Field::PipeWall);
        let (outside, wall) = (outside?, wall?);
        if wall * 2.0 >= outside {
            reader.conflict(Field::PipeWall, wall, Rule::WallWithinPipe, outside / 2.0);
            return None;
        }
        (outside, wall)
    };
    let field = if choice == PipeChoice::Own {
        Field::PipeOutsideDiameter
    } else {
        Field::Pipe
    };
    if let Some(vessel) = vessel {
        let height = vessel.depth_max().get::<centimeter>();
        if outside_cm + ROOM_ABOVE_PIPES_CM > height {
            reader.conflict(
                field,
                outside_cm,
                Rule::PipeWithinTank,
                height - ROOM_ABOVE_PIPES_CM,
            );
            return None;
        }
        if let (Some(count), Some(width)) = (count, reader.plan_number(Field::Width))
            && f64::from(count) * outside_cm > width
        {
            reader.conflict(
                Field::PipeCount,
                f64::from(count),
                Rule::PipesFitWidth,
                (width / outside_cm).floor(),
            );
            return None;
        }
        if let (Some(count), Some(width), Some(Some(spacing))) =
            (count, reader.plan_number(Field::Width), spacing)
            && count > 1
        {
            let most = (width - outside_cm) / f64::from(count - 1);
            if spacing > most {
                reader.conflict(Field::PipeSpacing, spacing, Rule::PipesReachWalls, most);
                return None;
            }
        }
    }
    Some(Pipes {
        choice,
        outside_diameter: cm(outside_cm),
        wall: cm(wall_cm),
        ends: ends?,
        count: count?,
        spacing: spacing?.map(cm),
        material: material?,
    })
}
