//! From a plan to what the grower should do and know: fill mark, doses, boards and pipes, calendar,
//! checks and cautions, each typed and with its figures.

mod boards;
mod calendar;
mod calendar_file;
pub mod chances;
mod curves;
mod doses;
mod facts;
mod fill;
mod findings;
mod group;
mod growing_on;
mod mend;
mod mixing;
pub mod notebook;
mod outcome;
mod practice;
mod protons;
mod recipe;
mod record;
mod roots;
mod season;
mod section;
mod solution;
mod solution_mends;
mod stocks;
mod structure;
mod succession;

pub use boards::{LEAST_LEFT_CM, PipeRow, PipeVerdict, SOUND_GAP_CM};
pub use calendar::{Calendar, HARVEST_WINDOW_DAYS};
pub use calendar_file::{CalendarKind, CalendarWords, calendar_entries, calendar_file};
pub use curves::{Curve, CurveOf, curves, day_ticks};
pub use facts::{Fact, Finding, Weight};
pub use group::{Group, GroupStock};
pub use outcome::{
    BoardPlace, BoardStructure, BuildItem, BuildOutcome, CoverOutcome, GapAt, HolePlace, ItemKind,
    ItemUnit, LayoutOutcome, LevelBy, LinerOutcome, LoadStop, PipeStructure, RunningOutcome,
    SheetPiece, TimberOutcome, WorkStep,
};
pub use outcome::{
    BoardsOutcome, Cost, DayOutcome, Dose, Doses, Elements, Event, EventKind, Fill, FirstWater,
    Fitting, Material, NextCrop, NitrogenForms, Outcome, Saturation, SeasonOutcome, Shortfall,
    SolutionOutcome, SpeciesAmount, StockContent, StockOutcome, TargetReached, WaterItem,
    WaterOutcome,
};
pub use protons::ProtonOutcome;
pub use record::WeekReading;
pub use roots::{Change, Mend, MendWay, RootsDay, RootsFailure, RootsFailureKind, RootsOutcome};
pub use section::{Moment, Point, PotShape, Section};
pub use solution::of_ions as solution_of_ions;
pub use structure::StructureFact;
pub use structure::materials::materials_csv;
pub use succession::{Demand, Planting, Succession, succession};

use crate::plan::{
    Daylight, Fertilizer, Field, Light, Method, Plan, Problem, ProblemKind, Sound, Strength, check,
};
use crate::science::sun::{Sun, clear_sky};
use crate::science::units::area::square_meter;
use crate::science::units::length::{centimeter, meter};
use crate::science::units::mass::gram;
use crate::science::units::mass_density::kilogram_per_cubic_meter;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::volume::{cubic_meter, liter};
use crate::science::units::{Area, Length, ThermodynamicTemperature};
pub use crate::season::Beyond;
use crate::season::{Charge, Chemistry, Tank, nutrients, plants, seedling};
use boards::Fall;
use fill::Filled;
use mixing::Mixed;

/// Works out a plan: the one door between what the grower decides and what will happen.
///
/// Pure: the same plan gives the same outcome on every device, and nothing is remembered.
///
/// # Errors
/// All problems of the plan at once, each with the field to mend.
///
/// ```
/// use slackwater::{plan::Example, solve};
/// let outcome = solve(&Example::Bottle.plan()).expect("a ready plan is sound");
/// assert!(outcome.fill.volume_l > 3.0);
/// ```
pub fn solve(plan: &Plan) -> Result<Outcome, Vec<Problem>> {
    let (sound, chemistry, mixed) = prepare(plan)?;
    let mut outcome = work_out(plan, &sound, &chemistry, &mixed).map_err(|Beyond| beyond(None))?;
    solution_mends::add(plan, &sound, (&chemistry, &mixed), &mut outcome);
    Ok(outcome)
}

/// The problem of a plan that lies beyond the models.
fn beyond(field: Option<Field>) -> Vec<Problem> {
    vec![Problem {
        field,
        kind: ProblemKind::BeyondModels,
    }]
}

/// Checks a plan and mixes its solution.
fn prepare(plan: &Plan) -> Result<(Sound, Chemistry, Mixed), Vec<Problem>> {
    let sound = check(plan)?;
    let temperature = season_temperature(&sound);
    let Fertilizer { water, rain, .. } = &sound.fertilizer;
    let chemistry = Chemistry::new(water, *rain, temperature)
        .map_err(|Beyond| beyond(Some(Field::WaterKind)))?;
    let mixed = mixing::mix(&sound.fertilizer, &chemistry).map_err(|Beyond| {
        beyond(Some(match sound.fertilizer.strength {
            Strength::Conductivity(_) => Field::TargetConductivity,
            Strength::Nitrogen(_) => Field::TargetNitrogen,
            Strength::Recipe(..) => Field::Recipe,
        }))
    })?;
    Ok((sound, chemistry, mixed))
}

/// The solution is taken to follow the mean of the air.
fn season_temperature(sound: &Sound) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(f64::midpoint(
        sound.climate.temperature_min.get::<degree_celsius>(),
        sound.climate.temperature_max.get::<degree_celsius>(),
    ))
}

#[expect(
    clippy::too_many_lines,
    reason = "the parts of an outcome in the order in which they need one another"
)]
fn work_out(
    plan: &Plan,
    sound: &Sound,
    chemistry: &Chemistry,
    mixed: &Mixed,
) -> Result<Outcome, Beyond> {
    let tank = Tank::new(sound, None)?;
    let filled = fill::fill(sound, &tank, sound.container.fill_depth)?;
    let course = plants(sound, open_area(sound))?;
    let fall = Fall::follow(&tank, &filled, &course);
    let charge = Charge {
        nutrients: mixed.nutrients,
        background: mixed.background,
        volume: filled.volume,
        tissue: &sound.crop.figures.tissue,
        plants: sound.crop.plants,
    };
    let end_hour = fall
        .dry_hour
        .unwrap_or(course.hours.len().saturating_sub(1));
    let followed = nutrients(chemistry, &charge, &course, end_hour / 24)?;

    let fill = fill_outcome(sound, &tank, &filled)?;
    // A container that runs dry has no harvest to be strong at, nor a crop after it.
    let lasts = fall.dry_hour.is_none();
    let fitting = lasts
        .then(|| growing_on::fitting(sound, chemistry, mixed, filled.volume, &course, &followed))
        .flatten();
    let growing_on = if lasts {
        growing_on::growing_on(sound, chemistry, mixed, filled.volume, &course)?
    } else {
        Vec::new()
    };
    let mut doses = doses::doses(
        &sound.fertilizer,
        chemistry,
        mixed,
        filled.volume,
        sound.container.count,
        fitting,
    );
    doses.cost = doses::cost(
        &sound.fertilizer,
        &plan.fertilizer.currency,
        mixed,
        filled.volume,
        &doses.doses,
        sound.crop.plants,
    );
    let (stocks, stocks_together) =
        stocks::stocks(&sound.fertilizer, mixed, filled.volume, sound.crop.plants)?;
    let water = solution::water(&sound.fertilizer, chemistry, filled.volume);
    let solution = solution::mixed(mixed);
    let boards = boards::boards(sound, &tank, &filled, &fall, &course)?;
    let season = season::season_outcome(sound, &filled, &course, &fall, &charge, &followed);
    let calendar = calendar::calendar(
        &sound.crop,
        calendar::Days {
            boards_rest: boards.as_ref().and_then(|boards| boards.rest_day),
            pots_leave: fall.pots_hang_day(),
            harvest: season.harvest_day,
            grows_on: growing_on.first().is_some_and(|next| !next.drain),
        },
    );
    let roots = roots::outcome(plan, sound, &filled, &fall, &course)?;
    let succession = succession::of_plan(sound, season.harvest_day);
    let target = sound.crop.target_head.get::<gram>();
    let head_shares: Vec<f64> = season
        .days
        .iter()
        .map(|day| (day.head_g / target).min(1.0))
        .collect();
    let head = course
        .hours
        .last()
        .map_or_else(|| seedling(&sound.crop), |hour| hour.head);
    let (layout, build) = structure::built(
        sound,
        &tank,
        (&fill, boards.as_ref()),
        (head, season.gap_at_end_cm),
        &plan.fertilizer.currency,
    )?;
    let mut outcome = Outcome {
        running: structure::running::running(sound, &fill, &season, boards.as_ref()),
        pipes: boards
            .as_ref()
            .map(|boards| boards.pipes.clone())
            .unwrap_or_default(),
        ballast_kg_per_m: boards
            .as_ref()
            .map(|boards| boards.structure.pipe.ballast_kg_per_m),
        layout,
        build,
        section: section::section(
            sound,
            &tank,
            filled.depth,
            &fall.days,
            &roots.days,
            &head_shares,
        ),
        growing_on,
        group: group::group(
            sound.crop.plants,
            sound.container.count,
            (&doses.doses, &doses.doses_for_all),
            &stocks,
        ),
        weeks: record::weeks(&fill, &season.days, sound.crop.transplanting),
        fill,
        fertilizer: doses,
        solution,
        protons: protons::protons(&sound.crop.figures.tissue, mixed),
        stocks,
        stocks_together,
        water,
        season,
        roots,
        boards,
        calendar,
        succession,
        assumed: sound.assumed.clone(),
        findings: Vec::new(),
    };
    let structure = structure::findings::Structure {
        sound,
        tank: &tank,
        head,
    };
    outcome.findings = findings::findings(&structure, &outcome, filled.state.overflows);
    Ok(outcome)
}

/// Where solution or wet medium meets the air: the tops of the pots, and around boards the part of
/// the tank that they leave open.
fn open_area(sound: &Sound) -> Area {
    let pot = sound.container.pot.top_diameter;
    let pots = pot * pot * (std::f64::consts::FRAC_PI_4 * f64::from(sound.crop.plants));
    let edges = sound
        .container
        .boards
        .as_ref()
        .map_or_else(Area::default, |boards| {
            let covered = boards.length * boards.width * f64::from(boards.count);
            (boards.tank_length * boards.tank_width - covered).max(Area::default())
        });
    pots + edges
}

fn fill_outcome(sound: &Sound, tank: &Tank, filled: &Filled) -> Result<Fill, Beyond> {
    let litres = filled.volume.get::<liter>();
    let mass_kg =
        filled.volume.get::<cubic_meter>() * tank.density().get::<kilogram_per_cubic_meter>();
    let floor = tank
        .basin()
        .vessel()
        .area_at(Length::new::<meter>(0.0))
        .map_err(|_| Beyond)?
        .get::<square_meter>();
    let rim = tank.basin().depth_max();
    Ok(Fill {
        volume_l: litres,
        total_volume_l: litres * f64::from(sound.container.count),
        per_plant_l: litres / f64::from(sound.crop.plants),
        depth_cm: filled.depth.get::<centimeter>(),
        container_depth_cm: rim.get::<centimeter>(),
        capacity_l: tank.basin().capacity().get::<liter>(),
        below_rim_cm: (rim - filled.depth).get::<centimeter>(),
        planted_level_cm: filled.state.level.get::<centimeter>(),
        pot_immersion_cm: filled.state.immersion().get::<centimeter>(),
        mass_kg,
        // A measured vessel may end in a point; its load is then not known.
        load_kg_per_m2: if floor > 0.0 { mass_kg / floor } else { 0.0 },
        containers: sound.container.count,
        plants: sound.crop.plants,
        plants_per_board: sound.crop.plants_per_board,
        pot_height_cm: sound.container.pot.height.get::<centimeter>(),
        cover_hole_cm: match sound.container.method {
            Method::Bottle | Method::FloatingBoards => None,
            Method::Bucket | Method::CoveredTank => {
                Some(sound.container.pot.top_diameter.get::<centimeter>())
            }
        },
    })
}

/// Whether the given radiation is more than a clear sky lets through at the planting date.
fn brighter_than_clear_sky(sound: &Sound) -> bool {
    let Light::Sun {
        daylight: Daylight::Radiation(solar),
        ..
    } = sound.climate.light
    else {
        return false;
    };
    Sun::new(sound.climate.latitude, sound.crop.transplanting.ordinal())
        .ok()
        .and_then(|sun| clear_sky(sun.extraterrestrial_daily(), sound.climate.elevation).ok())
        .is_some_and(|clear| solar > clear)
}
