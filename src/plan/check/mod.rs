//! From a plan as it was entered to one that can be worked out, or to all that is wrong with it.

mod build;
mod climate;
mod container;
mod crop;
mod fertilizer;
mod label;
mod reader;
mod salts;
mod water;

pub use build::{Build, BuildPrices, FixedCover};
pub use climate::{Climate, Daylight, Light};
pub use container::{Boards, Container, Pipes, Pot, Rectangle};
pub use crop::Crop;
pub use fertilizer::{AcidDose, Fertilizer, Mixture, Prices, Stocks, Strength};
pub(in crate::plan) use reader::read_date;
pub use reader::{Assumed, Unusual, read_text};
pub(crate) use reader::{reason, within};
pub use salts::ShelfSalt;
pub use water::RawWater;

use std::collections::BTreeSet;

use super::Rule;
use super::{Field, Plan, Problem, ProblemKind, VERSION};
use crate::science::units::length::centimeter;
use crate::science::units::ratio::ratio;
use reader::Reader;

/// A plan whose every used field is within its limits and agrees with the others.
#[derive(Clone, Debug, PartialEq)]
pub struct Sound {
    /// Step 1.
    pub container: Container,
    /// Step 2.
    pub crop: Crop,
    /// Step 3.
    pub fertilizer: Fertilizer,
    /// Step 4.
    pub climate: Climate,
    /// How a rectangular tank is built.
    pub build: Option<Build>,
    /// What is allowed but seldom met.
    pub unusual: Vec<Unusual>,
    /// What was left empty, and the value that stands in.
    pub assumed: Vec<Assumed>,
}

/// Judges a plan field by field.
///
/// # Errors
/// All problems of the plan at once, in the order of the forms.
pub fn check(plan: &Plan) -> Result<Sound, Vec<Problem>> {
    if plan.version > VERSION {
        return Err(vec![Problem {
            field: None,
            kind: ProblemKind::NewerVersion {
                got: plan.version,
                supported: VERSION,
            },
        }]);
    }
    let mut reader = Reader::new(plan);
    let sound = read(&mut reader);
    if let Some(sound) = sound
        && reader.problems.is_empty()
    {
        return Ok(Sound {
            unusual: reader.unusual,
            assumed: reader.assumed,
            ..sound
        });
    }
    if reader.problems.is_empty() {
        // Not met by any field's limits alone, such as a date at the end of the calendar.
        reader.problem(Field::Date, ProblemKind::Missing);
    }
    Err(reader.problems)
}

/// The fields that count under the plan's present choices. The others keep what they hold, but
/// neither their values nor their faults matter.
pub fn used_fields(plan: &Plan) -> BTreeSet<Field> {
    let mut reader = Reader::new(plan);
    read(&mut reader);
    reader.used
}

fn read(reader: &mut Reader) -> Option<Sound> {
    // Each step is read even when an earlier one failed, so that all problems come at once.
    let container = container::read(reader);
    let crop = crop::read(reader);
    let fertilizer = fertilizer::read(reader);
    let climate = climate::read(reader, crop.as_ref().map(|crop| crop.transplanting));
    let build = build::read(reader, container.as_ref());
    if let (Some(container), Some(crop)) = (&container, &crop) {
        pots_fit(reader, container, crop);
    }
    Some(Sound {
        container: container?,
        crop: crop?,
        fertilizer: fertilizer?,
        climate: climate?,
        build: build?,
        unusual: Vec::new(),
        assumed: Vec::new(),
    })
}

/// Flanges side by side take at least the square around each of them.
fn pots_fit(reader: &mut Reader, container: &Container, crop: &Crop) {
    let flange = container.pot.flange_diameter;
    let (room, pots, field) = match &container.boards {
        Some(boards) => (
            boards.length * boards.width,
            crop.plants_per_board.unwrap_or(crop.plants),
            Field::SpacingAcross,
        ),
        None => (
            container
                .vessel
                .area_at(container.vessel.depth_max())
                .unwrap_or_default(),
            crop.plants,
            if reader.used.contains(&Field::PlantsPerContainer) {
                Field::PlantsPerContainer
            } else {
                Field::SpacingAcross
            },
        ),
    };
    // One pot may sit in a mouth narrower than its flange.
    if pots > 1 && flange * flange * f64::from(pots) > room {
        let most = (room / (flange * flange)).get::<ratio>().floor();
        let got = reader.plan_number(field).unwrap_or_default();
        let limit = if field == Field::PlantsPerContainer {
            most
        } else {
            flange.get::<centimeter>()
        };
        reader.conflict(field, got, Rule::PotsFitCover, limit);
    }
}
