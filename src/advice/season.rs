//! What the season comes to: day by day, at its end, and the events on the way.

use super::boards::{Fall, day_of};
use super::fill::Filled;
use super::outcome::{DayOutcome, Event, EventKind, SeasonOutcome, Shortfall};
use super::{calendar, doses, growing_on};
use crate::catalog::salt_tolerance;
use crate::plan::Sound;
use crate::science::formula::Element;
use crate::science::salinity::paste_extract;
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::length::centimeter;
use crate::science::units::mass::{gram, kilogram};
use crate::science::units::ratio::percent;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::volume::liter;
use crate::science::units::{ElectricalConductivity, Volume};
use crate::season::{Charge, Nutrients, PlantCourse};

pub(super) fn season_outcome(
    sound: &Sound,
    filled: &Filled,
    course: &PlantCourse,
    fall: &Fall,
    charge: &Charge,
    followed: &Nutrients,
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
    let chemistry_of = |day: usize| followed.days.get(day).or(followed.days.last());
    let conductivity =
        |day: usize| chemistry_of(day).map_or(0.0, |day| doses::millisiemens(day.conductivity));
    // Neither is taken up in any amount, so both grow stronger in step with the water that leaves.
    let salt = |day: usize| {
        let (sodium, chloride) = charge.background.salt();
        let factor = 1.0 / charge.water_left(course, day.min(end_hour / 24));
        (
            sodium * factor * Element::Na.grams_per_mole(),
            chloride * factor * Element::Cl.grams_per_mole(),
        )
    };
    let ph = |day: usize| chemistry_of(day).map_or(0.0, |day| day.ph);
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
                ph: ph(day),
                elements_mg_per_l: chemistry_of(day)
                    .map(|day| doses::elements(&day.left))
                    .unwrap_or_default(),
                sodium_mg_per_l: salt(day).0,
                chloride_mg_per_l: salt(day).1,
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
        ph_at_end: ph(days),
        shortfall: followed
            .balances
            .iter()
            .filter_map(|balance| {
                Some(Shortfall {
                    nutrient: balance.nutrient,
                    day: balance.runs_short_day?,
                })
            })
            .min_by_key(|shortfall| shortfall.day),
        yield_under_salt_pct: yield_under_salt(sound, charge, course, end_hour / 24),
        mean_temperature_c: course.mean_temperature.get::<degree_celsius>(),
        daily_light_mol_per_m2: course.light_integral,
        events: events(sound, fall, harvest_day),
        days: day_outcomes,
        nutrients: followed.balances.clone(),
    }
}

/// Yield that sodium chloride leaves at the end of the season, by Maas and Hoffman.
fn yield_under_salt(
    sound: &Sound,
    charge: &Charge,
    course: &PlantCourse,
    day: usize,
) -> Option<f64> {
    let tolerance = salt_tolerance::of(sound.crop.kind)?;
    let factor = 1.0 / charge.water_left(course, day);
    let salt = growing_on::salt_conductivity(&charge.background, factor);
    // 1 mS/cm = 0.1 S/m.
    let salt = ElectricalConductivity::new::<siemens_per_meter>(salt / 10.0);
    let extract = paste_extract(salt).ok()?;
    let share = tolerance.relative_yield(extract).ok()?;
    Some(share.get::<percent>())
}

fn events(sound: &Sound, fall: &Fall, harvest_day: Option<u32>) -> Vec<Event> {
    let mut events: Vec<Event> = [
        (EventKind::Planted, Some(0)),
        (EventKind::BoardsRest, fall.rest_hour.map(day_of)),
        (EventKind::PotFootLeaves, fall.pots_hang_day()),
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
