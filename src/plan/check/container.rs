//! Step 1: vessel, cover, pots, boards and pipes.

use super::reader::Reader;
use crate::catalog::Keyed;
use crate::catalog::foams::{Foam, FoamFigures};
use crate::catalog::pipes::PipeChoice;
use crate::plan::{Field, Method, PipeEnds, ProblemKind, Rule, Shape};
use crate::science::geometry::Vessel;
use crate::science::units::length::centimeter;
use crate::science::units::volume::liter;
use crate::science::units::{Length, Volume};

/// The vessel and what stands in and over it.
#[derive(Clone, Debug, PartialEq)]
pub struct Container {
    /// How the plants stand over the solution.
    pub method: Method,
    /// Identical containers.
    pub count: u32,
    /// The space for the solution.
    pub vessel: Vessel,
    /// Thickness of what the pots hang from: cover or board.
    pub cover_thickness: Length,
    /// The net pot.
    pub pot: Pot,
    /// How deep the pot's foot stands in the solution at planting; for floating boards it follows
    /// from the draught and this is `None`.
    pub pot_immersion: Option<Length>,
    /// The grower's own depth of fill.
    pub fill_depth: Option<Length>,
    /// Boards and pipes, for floating boards.
    pub boards: Option<Boards>,
    /// Length and width of a rectangular vessel.
    pub rectangle: Option<Rectangle>,
}

/// Length and width of a rectangular vessel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rectangle {
    /// At the rim.
    pub top: (Length, Length),
    /// At the floor.
    pub bottom: (Length, Length),
}

/// A net pot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pot {
    /// Foot to underside of the flange.
    pub height: Length,
    /// Just below the flange.
    pub top_diameter: Length,
    /// At the foot.
    pub bottom_diameter: Length,
    /// Over the flange.
    pub flange_diameter: Length,
}

/// Floating boards and the pipes that they come to rest on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Boards {
    /// Length of one board.
    pub length: Length,
    /// Width of one board.
    pub width: Length,
    /// Thickness.
    pub thickness: Length,
    /// Boards in one tank.
    pub count: u32,
    /// The foam.
    pub foam: Foam,
    /// Density and water uptake of the foam.
    pub foam_figures: FoamFigures,
    /// The pipes.
    pub pipes: Pipes,
    /// Length of the tank, along which the pipes lie.
    pub tank_length: Length,
    /// Width of the tank.
    pub tank_width: Length,
}

/// The pipes on the floor of the tank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pipes {
    /// Standard size or own measure.
    pub choice: PipeChoice,
    /// Outside diameter.
    pub outside_diameter: Length,
    /// Wall.
    pub wall: Length,
    /// Open or capped.
    pub ends: PipeEnds,
    /// Pipes side by side.
    pub count: u32,
}

/// Solution that boards need above the pipes to float free at planting, cm.
const ROOM_ABOVE_PIPES_CM: f64 = 2.0;

fn cm(value: f64) -> Length {
    Length::new::<centimeter>(value)
}

pub(super) fn read(reader: &mut Reader) -> Option<Container> {
    let plan = &reader.plan.container;
    let method = reader.choice(Field::Method, &plan.method);
    let shape = reader.choice(Field::Shape, &plan.shape);
    let count = reader.whole(Field::Count);
    let vessel = match (method, shape) {
        (Some(Method::FloatingBoards), Some(shape)) if shape != Shape::Rectangular => {
            // Boards jam between sloping or round walls as the level falls.
            reader.problem(
                Field::Shape,
                ProblemKind::NotAChoice {
                    got: shape.key().to_owned(),
                    allowed: vec![Shape::Rectangular.key()],
                },
            );
            None
        }
        (_, Some(shape)) => vessel(reader, shape),
        (_, None) => None,
    };
    let boards_float = method == Some(Method::FloatingBoards);
    let cover_thickness = if boards_float {
        reader.number(Field::BoardThickness)
    } else {
        reader.number(Field::CoverThickness)
    };
    let pot = pot(
        reader,
        cover_thickness,
        if boards_float {
            Field::BoardThickness
        } else {
            Field::CoverThickness
        },
    );
    let pot_immersion = if boards_float {
        None
    } else {
        reader.number(Field::PotImmersion)
    };
    let own_fill = !reader.left_out(Field::FillDepth);
    let fill_depth = if own_fill {
        reader.number(Field::FillDepth)
    } else {
        None
    };
    let boards = boards_float.then(|| boards(reader, vessel.as_ref()));

    let (vessel, pot, cover_thickness) = (vessel?, pot?, cover_thickness?);
    let height_cm = vessel.depth_max().get::<centimeter>();
    let pot_height_cm = pot.height.get::<centimeter>();
    let below_cover_cm = pot_height_cm - cover_thickness;
    if !boards_float && below_cover_cm >= height_cm {
        reader.conflict(
            Field::PotHeight,
            pot_height_cm,
            Rule::PotAboveFloor,
            height_cm + cover_thickness,
        );
    }
    if let Some(immersion) = pot_immersion
        && immersion > below_cover_cm
    {
        reader.conflict(
            Field::PotImmersion,
            immersion,
            Rule::ImmersionWithinPot,
            below_cover_cm,
        );
    }
    if let (Some(Shape::Bottle), Some(neck)) = (shape, reader.plan_number(Field::NeckDiameter)) {
        let top_cm = pot.top_diameter.get::<centimeter>();
        if top_cm > neck {
            reader.conflict(Field::PotTopDiameter, top_cm, Rule::PotPassesNeck, neck);
        }
    }
    if let Some(depth) = fill_depth
        && depth > height_cm
    {
        reader.conflict(
            Field::FillDepth,
            depth,
            Rule::FillWithinContainer,
            height_cm,
        );
    }
    Some(Container {
        method: method?,
        count: count?,
        vessel,
        cover_thickness: cm(cover_thickness),
        pot,
        pot_immersion: pot_immersion.map(cm),
        fill_depth: fill_depth.map(cm),
        boards: match boards {
            Some(boards) => Some(boards?),
            None => None,
        },
        rectangle: rectangle(reader, shape?),
    })
}

/// The sides of a vessel that was already read.
fn rectangle(reader: &Reader, shape: Shape) -> Option<Rectangle> {
    let sides = |length: Field, width: Field| {
        Some((
            cm(reader.plan_number(length)?),
            cm(reader.plan_number(width)?),
        ))
    };
    let top = || sides(Field::Length, Field::Width);
    match shape {
        Shape::Rectangular => Some(Rectangle {
            top: top()?,
            bottom: top()?,
        }),
        Shape::TaperedRectangular => Some(Rectangle {
            top: top()?,
            bottom: sides(Field::BottomLength, Field::BottomWidth)?,
        }),
        _ => None,
    }
}

fn vessel(reader: &mut Reader, shape: Shape) -> Option<Vessel> {
    match shape {
        Shape::Cylinder => {
            let (diameter, height) = (reader.number(Field::Diameter), reader.number(Field::Height));
            Vessel::cylinder(cm(diameter?), cm(height?)).ok()
        }
        Shape::TaperedRound => {
            let bottom = reader.number(Field::BottomDiameter);
            let top = reader.number(Field::TopDiameter);
            let height = reader.number(Field::Height);
            Vessel::tapered_round(cm(bottom?), cm(top?), cm(height?)).ok()
        }
        Shape::Rectangular => {
            let length = reader.number(Field::Length);
            let width = reader.number(Field::Width);
            let height = reader.number(Field::Height);
            Vessel::rectangular(cm(length?), cm(width?), cm(height?)).ok()
        }
        Shape::TaperedRectangular => {
            let bottom = (
                reader.number(Field::BottomLength),
                reader.number(Field::BottomWidth),
            );
            let top = (reader.number(Field::Length), reader.number(Field::Width));
            let height = reader.number(Field::Height);
            Vessel::tapered_rectangular(
                cm(bottom.0?),
                cm(bottom.1?),
                cm(top.0?),
                cm(top.1?),
                cm(height?),
            )
            .ok()
        }
        Shape::Bottle => bottle(reader),
        Shape::Measured => measured(reader),
    }
}

fn bottle(reader: &mut Reader) -> Option<Vessel> {
    let body_diameter = reader.number(Field::Diameter);
    let body_height = reader.number(Field::BodyHeight);
    let shoulder_height = reader.number(Field::ShoulderHeight);
    let neck_diameter = reader.number(Field::NeckDiameter);
    let neck_height = reader.number(Field::NeckHeight);
    let (body, neck) = (body_diameter?, neck_diameter?);
    if neck > body {
        reader.conflict(Field::NeckDiameter, neck, Rule::NeckNarrowerThanBody, body);
        return None;
    }
    Vessel::bottle(
        cm(body),
        cm(body_height?),
        cm(shoulder_height?),
        cm(neck),
        cm(neck_height?),
    )
    .ok()
}

/// Pairs that were left wholly empty are skipped, so that a spare line in the form is no problem.
fn measured(reader: &mut Reader) -> Option<Vessel> {
    const NEEDED: usize = 3;
    reader.used.insert(Field::Measured);
    let height = reader.number(Field::Height);
    let mut pairs: Vec<(Volume, Length)> = Vec::new();
    let mut whole = true;
    let mut last = (0.0, 0.0);
    for (index, pair) in reader.plan.container.measured.iter().enumerate() {
        let Ok(index) = u8::try_from(index) else {
            break;
        };
        if pair.volume_l.is_blank() && pair.depth_cm.is_blank() {
            continue;
        }
        let volume = reader.number(Field::MeasuredVolume(index));
        let depth = reader.number(Field::MeasuredDepth(index));
        let (Some(volume), Some(depth)) = (volume, depth) else {
            whole = false;
            continue;
        };
        // The empty vessel may be listed; it is implied.
        if volume == 0.0 && depth == 0.0 && pairs.is_empty() {
            continue;
        }
        if volume <= last.0 {
            reader.problem(
                Field::MeasuredVolume(index),
                ProblemKind::OutOfRange {
                    got: volume,
                    low: last.0,
                    high: 100_000.0,
                },
            );
            whole = false;
        }
        if depth <= last.1 {
            reader.problem(
                Field::MeasuredDepth(index),
                ProblemKind::OutOfRange {
                    got: depth,
                    low: last.1,
                    high: 300.0,
                },
            );
            whole = false;
        }
        if let Some(height) = height
            && depth > height
        {
            reader.conflict(
                Field::MeasuredDepth(index),
                depth,
                Rule::MeasuredWithinRim,
                height,
            );
            whole = false;
        }
        last = (volume.max(last.0), depth.max(last.1));
        pairs.push((Volume::new::<liter>(volume), cm(depth)));
    }
    if pairs.len() < NEEDED && whole {
        reader.problem(
            Field::Measured,
            ProblemKind::MeasuredPairs {
                got: pairs.len(),
                needed: NEEDED,
            },
        );
        return None;
    }
    if !whole {
        return None;
    }
    // Above the last reading the walls are taken to go on as between the last two.
    let (height, last) = (cm(height?), *pairs.last()?);
    if height > last.1 {
        let before = pairs[pairs.len() - 2];
        let area = (last.0 - before.0) / (last.1 - before.1);
        pairs.push((last.0 + area * (height - last.1), height));
    }
    Vessel::measured(&pairs).ok()
}

fn pot(reader: &mut Reader, cover_thickness: Option<f64>, cover_field: Field) -> Option<Pot> {
    let height = reader.number(Field::PotHeight);
    let top = reader.number(Field::PotTopDiameter);
    let bottom = reader.number(Field::PotBottomDiameter);
    let flange = reader.number(Field::PotFlangeDiameter);
    let before = reader.problems.len();
    if let (Some(height), Some(thickness)) = (height, cover_thickness)
        && thickness >= height
    {
        reader.conflict(cover_field, thickness, Rule::PotReachesBelowCover, height);
    }
    if let (Some(top), Some(bottom)) = (top, bottom)
        && bottom > top
    {
        reader.conflict(
            Field::PotBottomDiameter,
            bottom,
            Rule::PotNarrowsDownwards,
            top,
        );
    }
    if let (Some(top), Some(flange)) = (top, flange)
        && flange <= top
    {
        reader.conflict(Field::PotFlangeDiameter, flange, Rule::FlangeHoldsPot, top);
    }
    if reader.problems.len() > before {
        return None;
    }
    Some(Pot {
        height: cm(height?),
        top_diameter: cm(top?),
        bottom_diameter: cm(bottom?),
        flange_diameter: cm(flange?),
    })
}

fn boards(reader: &mut Reader, vessel: Option<&Vessel>) -> Option<Boards> {
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
    }
    Some(Pipes {
        choice,
        outside_diameter: cm(outside_cm),
        wall: cm(wall_cm),
        ends: ends?,
        count: count?,
    })
}
