//! The vessel by its shape.

use super::{Rectangle, cm};
use crate::plan::check::reader::Reader;
use crate::plan::{Field, ProblemKind, Rule, Shape};
use crate::science::geometry::Vessel;
use crate::science::units::volume::liter;
use crate::science::units::{Length, Volume};

/// The sides of a vessel that was already read.
pub(super) fn rectangle(reader: &Reader, shape: Shape) -> Option<Rectangle> {
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

pub(super) fn vessel(reader: &mut Reader, shape: Shape) -> Option<Vessel> {
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
