//! Laws of a season hour by hour, through the public functions of `season`.

use slackwater::advice::Elements;
use slackwater::catalog::Keyed;
use slackwater::catalog::shelters::Shelter;
use slackwater::plan::{Field, Method, Plan, Shape, Sound, check};
use slackwater::science::label::{Concentrations, Nutrient};
use slackwater::science::units::length::{centimeter, meter};
use slackwater::science::units::mass::gram;
use slackwater::science::units::mass_concentration::gram_per_liter;
use slackwater::science::units::volume::liter;
use slackwater::science::units::{
    Area, Length, Mass, MassConcentration, Volume, area::square_meter,
};
use slackwater::season::{
    Charge, Chemistry, LONGEST_DAYS, MajorNutrient, PlantCourse, Tank, nutrients, plants,
};
use slackwater::solve;

use crate::plans::{for_sound_plans, get, set, shapes, show_when_it_fails, sound_plan};

/// Levels are found to a nanometre, m.
const LEVEL_M: f64 = 2e-9;
/// Sums of a few thousand roundings.
const ROUNDING: f64 = 1e-9;

fn sound(plan: &Plan) -> Sound {
    check(plan).expect("a sound plan")
}

fn course(plan: &Plan) -> Option<PlantCourse> {
    plants(&sound(plan), Area::new::<square_meter>(0.01)).ok()
}

/// Runs a law on pairs of seasons that differ in one field. `change` gives the new number.
fn for_changed(
    seed: u64,
    field: Field,
    change: impl Fn(f64) -> f64,
    law: impl Fn(&PlantCourse, &PlantCourse),
) {
    for_changed_by(course, seed, field, change, law);
}

/// As [`for_changed`], the seasons lived by `course`.
fn for_changed_by(
    course: impl Fn(&Plan) -> Option<PlantCourse>,
    seed: u64,
    field: Field,
    change: impl Fn(f64) -> f64,
    law: impl Fn(&PlantCourse, &PlantCourse),
) {
    let mut compared = 0;
    for &method in Method::ALL {
        for &shape in shapes(method) {
            for index in 0..6 {
                let plan = sound_plan(seed ^ (index << 40), method, shape);
                let mut changed = plan.clone();
                set(&mut changed, field, change(get(&plan, field)));
                if check(&changed).is_err() {
                    continue;
                }
                if let (Some(one), Some(other)) = (course(&plan), course(&changed)) {
                    compared += 1;
                    show_when_it_fails(&plan, || law(&one, &other));
                }
            }
        }
    }
    assert!(compared >= 40, "only {compared} comparisons");
}

#[test]
fn plants_only_draw_and_roots_and_shoot_are_never_negative() {
    for_sound_plans(30, |plan, _| {
        let course = course(plan).expect("the plan was solved");
        assert_eq!(course.hours.len(), course.days() * 24 + 1);
        assert!(course.days() <= LONGEST_DAYS as usize);
        assert!(course.hours[0].drawn.get::<liter>() <= 0.0);
        for pair in course.hours.windows(2) {
            assert!(pair[1].drawn >= pair[0].drawn);
        }
        for hour in &course.hours {
            assert!(hour.head > Mass::default() && hour.dry > Mass::default());
        }
        if let Some(day) = course.harvest_day {
            assert_eq!(day as usize, course.days());
            let target = sound(plan).crop.target_head;
            let last = course.hours.last().expect("an hour");
            assert!(last.head >= target);
            // Nor was the target there a day before.
            let before = course.at_day(course.days() - 1).expect("a day before");
            assert!(before.head < target || course.days() == 1);
        }
    });
}

/// Part of the way to saturated air.
fn moister(humidity: f64) -> f64 {
    humidity + 0.4 * (100.0 - humidity)
}

fn never_draws_more(drier: &PlantCourse, moister: &PlantCourse) {
    for (drier, moister) in drier.hours.iter().zip(&moister.hours) {
        let allowed = drier.drawn * (1.0 + ROUNDING);
        assert!(moister.drawn <= allowed, "{moister:?} {drier:?}");
        // Humidity is no factor of growth in the model.
        assert_eq!(drier.head, moister.head);
    }
}

// Open surfaces under the sky are left out: by FAO-56 Eq. 39 moister air also holds back more of the
// heat that they lose, and in hot still air this can outweigh the drying (by hand: at 50 °C and
// 0.5 m/s, 89 to 93 %, 3.393 and 3.395 mm a day). The law is the leaves' own, and that of openings
// where there is no sky.
#[test]
fn moister_air_never_lets_leaves_draw_more_by_any_hour() {
    let leaves = |plan: &Plan| plants(&sound(plan), Area::default()).ok();
    for_changed_by(leaves, 31, Field::Humidity, moister, never_draws_more);
}

#[test]
fn moister_air_under_lamps_never_draws_more_by_any_hour() {
    let under_lamps = |plan: &Plan| {
        let mut plan = plan.clone();
        plan.choose_shelter(Shelter::Lamps);
        course(&plan)
    };
    for_changed_by(under_lamps, 32, Field::Humidity, moister, never_draws_more);
}

#[test]
fn more_light_never_slows_growth() {
    for_changed(
        32,
        Field::LightThrough,
        |percent| percent + 0.5 * (100.0 - percent),
        never_slower,
    );
}

#[test]
fn more_carbon_dioxide_never_slows_growth() {
    for_changed(33, Field::CarbonDioxide, |ppm| ppm * 1.3, never_slower);
}

#[test]
fn a_better_growth_factor_never_slows_growth() {
    for_changed(34, Field::GrowthFactor, |factor| factor * 1.2, never_slower);
}

#[test]
fn an_older_seedling_is_never_behind() {
    for_changed(
        35,
        Field::SeedlingAge,
        |days| days + 2.0,
        |younger, older| {
            assert!(older.hours[0].head > younger.hours[0].head);
        },
    );
}

#[test]
fn a_heavier_target_is_never_reached_sooner() {
    for_changed(
        36,
        Field::TargetHead,
        |grams| grams * 1.2,
        |lighter, heavier| {
            let last_day = |course: &PlantCourse| course.harvest_day.unwrap_or(u32::MAX);
            assert!(last_day(heavier) >= last_day(lighter));
            for (a, b) in lighter.hours.iter().zip(&heavier.hours) {
                assert_eq!(a, b);
            }
        },
    );
}

fn never_slower(slower: &PlantCourse, faster: &PlantCourse) {
    let day = |course: &PlantCourse| course.harvest_day.unwrap_or(u32::MAX);
    assert!(day(faster) <= day(slower));
    for (slower, faster) in slower.hours.iter().zip(&faster.hours) {
        assert!(
            faster.head.get::<gram>() >= slower.head.get::<gram>() * (1.0 - ROUNDING),
            "{faster:?} {slower:?}"
        );
    }
}

#[test]
fn the_level_never_rises_from_hour_to_hour() {
    for_sound_plans(37, |plan, outcome| {
        let sound = sound(plan);
        let tank = Tank::new(&sound, None).expect("the plan was solved");
        let course = course(plan).expect("the plan was solved");
        // Boards as they float at planting: only the solution changes.
        let draught = tank
            .draught(tank.floating_mass(Mass::default()))
            .unwrap_or_default();
        let start = outcome.fill.volume_l;
        let mut level = Length::new::<centimeter>(outcome.fill.planted_level_cm);
        let mut gap = -1.0;
        for (index, hour) in course.hours.iter().enumerate() {
            let volume = Volume::new::<liter>(start - hour.drawn.get::<liter>());
            let state = tank.state(volume, draught, level);
            let rise = (state.level - level).get::<meter>();
            // The first hour also settles the level that was given, rounded, as the start.
            assert!(index == 0 || rise <= LEVEL_M, "hour {index}: {rise} m");
            let now = state.gap().get::<meter>();
            assert!(now >= gap - LEVEL_M, "hour {index}: gap {now} after {gap}");
            (level, gap) = (state.level, now);
            // The way back: what stands at this level is the volume that was asked for.
            if volume > Volume::default() && !state.overflows {
                let back = tank.volume_at(level, draught).expect("within the vessel");
                let error = (back - volume).get::<liter>().abs();
                let surface = tank.basin().vessel().area_at(level).expect("within");
                let most = surface.get::<square_meter>() * LEVEL_M * 1000.0;
                assert!(error <= most + ROUNDING * start, "hour {index}: {error} L");
            }
        }
    });
}

fn solution_of(elements: &Elements) -> Concentrations {
    let all = [
        (Nutrient::NitrateN, elements.n),
        (Nutrient::P, elements.p),
        (Nutrient::K, elements.k),
        (Nutrient::Ca, elements.ca),
        (Nutrient::Mg, elements.mg),
    ];
    all.into_iter()
        .try_fold(Concentrations::NONE, |solution, (nutrient, mg_per_l)| {
            solution.with(
                nutrient,
                MassConcentration::new::<gram_per_liter>(mg_per_l / 1000.0),
            )
        })
        .expect("a nutrient solution")
}

#[test]
fn nutrients_are_in_the_crop_or_in_the_solution() {
    for &shape in Shape::ALL {
        for seed in 0..8 {
            let plan = sound_plan(seed, Method::CoveredTank, shape);
            let Ok(outcome) = solve(&plan) else { continue };
            let sound = sound(&plan);
            let course = course(&plan).expect("the plan was solved");
            // Enough that no drop is the last.
            let start = course.hours.last().expect("an hour").drawn * 2.0;
            let solution = solution_of(&outcome.fertilizer.elements_mg_per_l);
            let mean = sound.climate.temperature_max;
            let chemistry = Chemistry::new(&sound.fertilizer.water, sound.fertilizer.rain, mean)
                .expect("a water");
            let charge = Charge {
                nutrients: solution,
                background: chemistry.background(&solution),
                volume: start,
                tissue: &sound.crop.figures.tissue,
                plants: sound.crop.plants,
            };
            let followed = nutrients(&chemistry, &charge, &course, course.days())
                .expect("a solution that can be solved");
            show_when_it_fails(&plan, || {
                for (index, balance) in followed.balances.iter().enumerate() {
                    assert_eq!(balance.nutrient, MajorNutrient::ALL[index]);
                    let end = followed.days.last().expect("a day");
                    let drawn = course.hours.last().expect("an hour").drawn;
                    let left = balance.nutrient.held(&end.left).get::<gram_per_liter>()
                        * (start - drawn).get::<liter>();
                    let taken = balance.need_g.min(balance.supply_g);
                    assert!(
                        (balance.supply_g - taken - left).abs()
                            <= ROUNDING * (1.0 + balance.supply_g),
                        "{balance:?}: {left} g left"
                    );
                    assert_eq!(
                        balance.runs_short_day.is_some(),
                        balance.need_g > balance.supply_g
                    );
                }
            });
        }
    }
}
