//! Step 2: the crop, its number, spacing and dates.

use time::{Date, Duration};

use super::reader::Reader;
use crate::catalog::crops::{self, CropKind};
use crate::plan::{DateMeaning, Field, Method, Pattern, Rule, Shape};
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
    let across = reader.number(Field::SpacingAcross);
    let along = reader.number(Field::SpacingAlong);
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
    let plants = if in_a_tank {
        across
            .zip(along)
            .and_then(|spacing| plants_in_tank(reader, method, spacing))
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
        area_per_plant: Area::new::<square_centimeter>(across * along),
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
    if reader.left_out(Field::People) {
        return None;
    }
    let people = reader.whole(Field::People);
    let each = reader.number(Field::HeadsPerPersonWeek);
    Some(f64::from(people?) * each?)
}

/// Plants over a tank, and on one board where boards float. A staggered row is shifted by a
/// quarter of the spacing to either side, so both patterns hold as many.
fn plants_in_tank(
    reader: &mut Reader,
    method: Option<Method>,
    spacing: (f64, f64),
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
    let (rows, columns) = ((width / across).floor(), (length / along).floor());
    if rows < 1.0 {
        reader.conflict(Field::SpacingAcross, across, Rule::OnePlantFits, width);
        return None;
    }
    if columns < 1.0 {
        reader.conflict(Field::SpacingAlong, along, Rule::OnePlantFits, length);
        return None;
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "lengths of at most 100 m over spacings of at least 3 cm"
    )]
    let each = (rows * columns) as u32;
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
