//! Step 1: vessel, cover, pots, boards and pipes.

mod boards;
mod vessel;

use super::reader::Reader;
use crate::catalog::Keyed;
use crate::catalog::foams::{Foam, FoamFigures};
use crate::catalog::pipes::{PipeChoice, PipeMaterial};
use crate::plan::{Field, Method, PipeEnds, ProblemKind, Rule, Shape};
use crate::science::geometry::Vessel;
use crate::science::units::Length;
use crate::science::units::length::centimeter;

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
    /// From middle to middle; `None`: spread evenly over the width.
    pub spacing: Option<Length>,
    /// What they are made of.
    pub material: PipeMaterial,
}

impl Pipes {
    /// Middles of the pipes across a tank, from one side.
    pub fn middles(&self, tank_width: Length) -> Vec<Length> {
        let count = f64::from(self.count);
        let pitch = self.spacing.unwrap_or(tank_width / count);
        (0..self.count)
            .map(|index| tank_width / 2.0 + pitch * (f64::from(index) - (count - 1.0) / 2.0))
            .collect()
    }
}

impl Boards {
    /// The side of a board that lies across the tank: the long one if it fits.
    pub fn across(&self) -> Length {
        let (long, short) = if self.length >= self.width {
            (self.length, self.width)
        } else {
            (self.width, self.length)
        };
        if long <= self.tank_width { long } else { short }
    }

    /// The side of a board that lies along the tank.
    pub fn along(&self) -> Length {
        if self.across() == self.length {
            self.width
        } else {
            self.length
        }
    }
}

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
        (_, Some(shape)) => vessel::vessel(reader, shape),
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
    let boards = boards_float.then(|| boards::boards(reader, vessel.as_ref()));

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
        rectangle: vessel::rectangle(reader, shape?),
    })
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
