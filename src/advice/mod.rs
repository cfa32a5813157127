//! From a plan to what the grower should do and know: fill mark, doses, boards and pipes, calendar,
//! checks and cautions, each typed and with its figures.

mod boards;
mod calendar;
mod doses;
mod fill;
mod findings;
mod outcome;
mod section;

pub use boards::{LEAST_LEFT_CM, PipeRow, PipeVerdict, SOUND_GAP_CM};
pub use calendar::Calendar;
pub use findings::{Fact, Finding, Weight};
pub use outcome::{
    BoardsOutcome, DayOutcome, Dose, Doses, Elements, Event, EventKind, Fill, Material,
    NitrogenForms, Outcome, SeasonOutcome, Stock, StockContent,
};
pub use section::{Moment, Point, PotShape, Section};

use crate::plan::{Daylight, Field, Light, Plan, Problem, ProblemKind, Sound, Strength, check};
use crate::science::sun::{Sun, clear_sky};
use crate::science::units::area::square_meter;
use crate::science::units::length::{centimeter, meter};
use crate::science::units::mass::{gram, kilogram};
use crate::science::units::mass_density::kilogram_per_cubic_meter;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::volume::{cubic_meter, liter};
use crate::science::units::{Area, Length, Volume};
use crate::season::{Beyond, PlantCourse, Tank, nutrients, plants};
use boards::{Fall, day_of};
use fill::Filled;

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
    let sound = check(plan)?;
    let beyond = |field| {
        vec![Problem {
            field,
            kind: ProblemKind::BeyondModels,
        }]
    };
    let mixed = doses::mix(&sound.fertilizer).map_err(|Beyond| {
        beyond(Some(match sound.fertilizer.strength {
            Strength::Conductivity(_) => Field::TargetConductivity,
            Strength::Nitrogen(_) => Field::TargetNitrogen,
        }))
    })?;
    work_out(&sound, &mixed).map_err(|Beyond| beyond(None))
}

fn work_out(sound: &Sound, mixed: &doses::Mixed) -> Result<Outcome, Beyond> {
    let tank = Tank::new(sound, None)?;
    let filled = fill::fill(sound, &tank, sound.container.fill_depth)?;
    let course = plants(sound, open_area(sound))?;
    let fall = Fall::follow(&tank, &filled, &course);

    let fill = fill_outcome(sound, &tank, &filled)?;
    let doses = doses::doses(
        &sound.fertilizer,
        mixed,
        filled.volume,
        sound.container.count,
    );
    let boards = boards::boards(sound, &tank, &filled, &fall, &course)?;
    let season = season_outcome(sound, &filled, &course, &fall, mixed);
    let calendar = calendar::calendar(
        &sound.crop,
        boards.as_ref().and_then(|boards| boards.rest_day),
        season.harvest_day,
    );
    let findings = findings::findings(
        sound,
        &fill,
        filled.state.overflows,
        &doses,
        &season,
        boards.as_ref(),
    );
    let target = sound.crop.target_head.get::<gram>();
    let head_shares: Vec<f64> = season
        .days
        .iter()
        .map(|day| (day.head_g / target).min(1.0))
        .collect();
    let section = section::section(sound, &tank, filled.depth, &fall.days, &head_shares);
    Ok(Outcome {
        fill,
        fertilizer: doses,
        season,
        boards,
        calendar,
        findings,
        section,
    })
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
        below_rim_cm: (rim - filled.depth).get::<centimeter>(),
        planted_level_cm: filled.state.level.get::<centimeter>(),
        pot_immersion_cm: filled.state.immersion().get::<centimeter>(),
        mass_kg,
        // A measured vessel may end in a point; its load is then not known.
        load_kg_per_m2: if floor > 0.0 { mass_kg / floor } else { 0.0 },
        containers: sound.container.count,
        plants: sound.crop.plants,
        plants_per_board: sound.crop.plants_per_board,
    })
}

fn season_outcome(
    sound: &Sound,
    filled: &Filled,
    course: &PlantCourse,
    fall: &Fall,
    mixed: &doses::Mixed,
) -> SeasonOutcome {
    let start_l = filled.volume.get::<liter>();
    let plants = f64::from(sound.crop.plants);
    let days = fall.days.len().saturating_sub(1);
    let end_hour = fall
        .dry_hour
        .unwrap_or(course.hours.len().saturating_sub(1));
    let end = course.hours.get(end_hour);
    let drawn_l = |volume: Volume| volume.get::<liter>().min(start_l);
    let water_l = end.map_or(0.0, |hour| drawn_l(hour.drawn));
    let head_g = end.map_or(0.0, |hour| hour.head.get::<gram>());
    let heads_kg = end.map_or(0.0, |hour| hour.head.get::<kilogram>()) * plants;
    let followed = nutrients(
        &mixed.solution,
        filled.volume,
        sound.fertilizer.raw_water,
        course,
        end_hour / 24,
        sound.crop.plants,
        &sound.crop.figures.tissue,
    );
    let conductivity = |day: usize| {
        followed
            .days
            .get(day)
            .or(followed.days.last())
            .map_or(0.0, |day| doses::millisiemens(day.conductivity))
    };
    let day_outcomes = fall
        .days
        .iter()
        .enumerate()
        .map(|(day, state)| {
            // The last day may end early, with the last drop.
            let hour = course.hours.get((day * 24).min(end_hour));
            let lost = hour.map_or(0.0, |hour| drawn_l(hour.drawn));
            DayOutcome {
                day: u32::try_from(day).unwrap_or(u32::MAX),
                level_cm: state.level.get::<centimeter>(),
                gap_cm: state.gap().get::<centimeter>(),
                volume_l: start_l - lost,
                head_g: hour.map_or(0.0, |hour| hour.head.get::<gram>()),
                water_l: lost,
                ec_ms_per_cm: conductivity(day),
            }
        })
        .collect();
    let harvest_day = course.harvest_day.filter(|_| fall.dry_hour.is_none());
    SeasonOutcome {
        harvest_day,
        days_followed: u32::try_from(days).unwrap_or(u32::MAX),
        head_g,
        water_per_plant_l: water_l / plants,
        water_per_kg_l: if heads_kg > 0.0 {
            water_l / heads_kg
        } else {
            0.0
        },
        water_l,
        evaporated_l: course.evaporated.get::<liter>().min(water_l),
        left_l: start_l - water_l,
        needed_l: course
            .hours
            .last()
            .map_or(0.0, |hour| hour.drawn.get::<liter>()),
        gap_at_end_cm: fall
            .last()
            .map_or(0.0, |state| state.gap().get::<centimeter>()),
        ec_at_end_ms_per_cm: conductivity(days),
        mean_temperature_c: course.mean_temperature.get::<degree_celsius>(),
        daily_light_mol_per_m2: course.light_integral,
        events: events(sound, fall, harvest_day),
        days: day_outcomes,
        nutrients: followed.balances,
    }
}

fn events(sound: &Sound, fall: &Fall, harvest_day: Option<u32>) -> Vec<Event> {
    let mut events: Vec<Event> = [
        (EventKind::Planted, Some(0)),
        (EventKind::BoardsRest, fall.rest_hour.map(day_of)),
        (EventKind::PotFootLeaves, fall.foot_hour.map(day_of)),
        (EventKind::UsedUp, fall.dry_hour.map(day_of)),
        (EventKind::TargetReached, harvest_day),
    ]
    .into_iter()
    .filter_map(|(kind, day)| {
        let day = day?;
        Some(Event {
            kind,
            day,
            date: calendar::date_after(sound.crop.transplanting, day),
        })
    })
    .collect();
    // Stable: what falls on one day stays in the order above.
    events.sort_by_key(|event| event.day);
    events
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
