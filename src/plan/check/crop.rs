//! Step 2: the crop, its number, spacing and dates.

use time::{Date, Duration};

use super::reader::Reader;
use crate::catalog::crops::{self, CropKind};
use crate::plan::{DateMeaning, Field, Method, Pattern, Rule, Shape};
use crate::science::layout::hole_rows;
use crate::science::units::area::square_centimeter;
use crate::science::units::length::centimeter;
use crate::science::units::mass::gram;
use crate::science::units::{Area, Length, Mass};

/// The crop of one container.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crop {
    /// Which crop.
    pub kind: CropKind,
    /// Its figures.
    pub figures: crops::Crop,
    /// Plants over one container.
    pub plants: u32,
    /// Plants on one board, where boards float.
    pub plants_per_board: Option<u32>,
    /// Spacing across and along.
    pub spacing: (Length, Length),
    /// How the holes are arranged.
    pub pattern: Pattern,
    /// Least distance from the middle of a hole to the edge of its board or cover; `None`: half the
    /// spacing.
    pub edge: Option<Length>,
    /// Ground that one plant may cover.
    pub area_per_plant: Area,
    /// Day of seeding.
    pub seeding: Date,
    /// Day of transplanting, the first day over the solution.
    pub transplanting: Date,
    /// Days from seeding to transplanting.
    pub seedling_age: u32,
    /// Fresh mass at which a head is harvested.
    pub target_head: Mass,
    /// Multiplies gross photosynthesis.
    pub growth_factor: f64,
    /// Multiplies the water drawn.
    pub water_factor: f64,
    /// Heads wanted every week; `None` where no succession is asked for.
    pub heads_per_week: Option<f64>,
    /// Days between the end of a harvest and the next planting.
    pub turnaround_days: u32,
    /// Whether the plants stand over a tank whose measures say how many there are.
    pub in_a_tank: bool,
}

/// Days to drain, clean and fill where none are given: common practice, no source.
const USUAL_TURNAROUND_DAYS: u32 = 2;

pub(super) fn read(reader: &mut Reader) -> Option<Crop> {
    let plan = reader.plan;
    let kind = reader.choice(Field::CropKind, &plan.crop.kind);
    let method = plan.container.method.known();
    // Over a rectangle the spacing says how many plants there are; elsewhere they are counted.
    let rectangle = matches!(
        plan.container.shape.known(),
        Some(Shape::Rectangular | Shape::TaperedRectangular)
    );
    let in_a_tank = method == Some(Method::FloatingBoards)
        || (method == Some(Method::CoveredTank) && rectangle);
    let pattern = if in_a_tank {
        reader.choice(Field::Pattern, &plan.crop.pattern)
    } else {
        Some(Pattern::Square)
    };
    let across = reader.number(Field::SpacingAcross);
    // Hexagonal neighbours all keep the spacing across.
    let along = if pattern == Some(Pattern::Hexagonal) {
        across
    } else {
        reader.number(Field::SpacingAlong)
    };
    let edge = if in_a_tank {
        reader.optional(Field::EdgeDistance)
    } else {
        Some(None)
    };
    let plants = if in_a_tank {
        across
            .zip(along)
            .zip(edge.zip(pattern))
            .and_then(|(spacing, (edge, pattern))| {
                plants_in_tank(reader, method, spacing, edge, pattern)
            })
    } else {
        reader
            .whole(Field::PlantsPerContainer)
            .map(|plants| (plants, None))
    };
    let date = reader.date(Field::Date);
    let meaning = reader.choice(Field::DateMeaning, &plan.crop.date_meaning);
    let seedling_age = reader.whole(Field::SeedlingAge);
    let target_head = reader.number(Field::TargetHead);
    let growth_factor = reader.number(Field::GrowthFactor);
    let water_factor = reader.number(Field::WaterFactor);
    let heads_per_week = heads_per_week(reader);
    let turnaround_days = if reader.left_out(Field::TurnaroundDays) {
        Some(USUAL_TURNAROUND_DAYS)
    } else {
        reader.whole(Field::TurnaroundDays)
    };

    let (kind, (plants, plants_per_board), across, along) = (kind?, plants?, across?, along?);
    let (date, seedling_age) = (date?, seedling_age?);
    let nursery = Duration::days(i64::from(seedling_age));
    let (seeding, transplanting) = match meaning? {
        DateMeaning::Transplanting => (date.checked_sub(nursery)?, date),
        DateMeaning::Seeding => (date, date.checked_add(nursery)?),
    };
    Some(Crop {
        kind,
        figures: kind.crop(),
        plants,
        plants_per_board,
        spacing: (
            Length::new::<centimeter>(across),
            Length::new::<centimeter>(along),
        ),
        pattern: pattern?,
        edge: edge?.map(Length::new::<centimeter>),
        area_per_plant: Area::new::<square_centimeter>(match pattern? {
            Pattern::Hexagonal => across * across * 3.0_f64.sqrt() / 2.0,
            Pattern::Square | Pattern::Staggered => across * along,
        }),
        seeding,
        transplanting,
        seedling_age,
        target_head: Mass::new::<gram>(target_head?),
        growth_factor: growth_factor?,
        water_factor: water_factor?,
        heads_per_week,
        turnaround_days: turnaround_days?,
        in_a_tank,
    })
}

/// Nobody to feed is no problem; people without an appetite are.
fn heads_per_week(reader: &mut Reader) -> Option<f64> {
    let each = reader.number(Field::HeadsPerPersonWeek);
    if reader.left_out(Field::People) {
        return None;
    }
    Some(f64::from(reader.whole(Field::People)?) * each?)
}

/// Plants over a tank, and on one board where boards float.
fn plants_in_tank(
    reader: &mut Reader,
    method: Option<Method>,
    spacing: (f64, f64),
    edge: Option<f64>,
    pattern: Pattern,
) -> Option<(u32, Option<u32>)> {
    let floats = method == Some(Method::FloatingBoards);
    let (long_field, short_field) = if floats {
        (Field::BoardLength, Field::BoardWidth)
    } else {
        (Field::Length, Field::Width)
    };
    let (length, width) = (
        reader.plan_number(long_field)?,
        reader.plan_number(short_field)?,
    );
    let (across, along) = spacing;
    let cm = Length::new::<centimeter>;
    let (columns, rows) = hole_rows(
        (cm(length), cm(width)),
        (cm(along), cm(across)),
        edge.map(cm),
        pattern.arrangement(),
    );
    if rows < 1 || columns < 1 {
        let side = if rows < 1 { width } else { length };
        if let Some(edge) = edge.filter(|edge| side < 2.0 * edge) {
            reader.conflict(Field::EdgeDistance, edge, Rule::OnePlantFits, side / 2.0);
        } else if rows < 1 || pattern == Pattern::Hexagonal {
            reader.conflict(Field::SpacingAcross, across, Rule::OnePlantFits, side);
        } else {
            reader.conflict(Field::SpacingAlong, along, Rule::OnePlantFits, side);
        }
        return None;
    }
    let each = u32::try_from(rows * columns).ok()?;
    if floats {
        let boards = reader.plan_number(Field::BoardCount)?;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "limited to 2000"
        )]
        let boards = boards as u32;
        Some((each.saturating_mul(boards), Some(each)))
    } else {
        Some((each, None))
    }
}
