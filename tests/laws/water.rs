//! Laws of the solution: it is conserved, it only falls, and what stands in it lifts it.

use std::f64::consts::PI;

use slackwater::advice::{Fact, Weight};
use slackwater::catalog::Keyed;
use slackwater::plan::{Entry, Example, Field, Method, Plan, Shape};
use slackwater::solve;

use crate::plans::{for_sound_plans, get, set, shapes, show_when_it_fails, sound_plan};

/// Sums of a few roundings.
const ROUNDING: f64 = 1e-9;
/// Levels are found to a nanometre, cm.
const LEVEL_CM: f64 = 2e-7;

#[test]
fn litres_in_are_litres_left_and_used() {
    for_sound_plans(10, |_, outcome| {
        let (fill, season) = (&outcome.fill, &outcome.season);
        let tolerance = ROUNDING * fill.volume_l;
        assert!((fill.volume_l - season.left_l - season.water_l).abs() <= tolerance);
        for day in &season.days {
            assert!((fill.volume_l - day.volume_l - day.water_l).abs() <= tolerance);
        }
        assert!(season.evaporated_l <= season.water_l + tolerance);
        assert!(season.water_l <= season.needed_l + tolerance);
        let last = season.days.last().expect("a day");
        assert!((last.volume_l - season.left_l).abs() <= tolerance);
        let plants = f64::from(fill.plants);
        assert!((season.water_per_plant_l * plants - season.water_l).abs() <= tolerance);
        assert!((fill.per_plant_l * plants - fill.volume_l).abs() <= tolerance);
    });
}

#[test]
fn level_and_volume_never_rise_by_themselves() {
    for_sound_plans(11, |_, outcome| {
        for pair in outcome.season.days.windows(2) {
            assert!(pair[1].volume_l <= pair[0].volume_l, "{pair:?}");
            assert!(pair[1].level_cm <= pair[0].level_cm + LEVEL_CM, "{pair:?}");
        }
        let first = &outcome.season.days[0];
        assert!((first.level_cm - outcome.fill.planted_level_cm).abs() <= LEVEL_CM);
    });
}

#[test]
fn the_gap_never_shrinks_once_the_cover_rests() {
    for_sound_plans(12, |_, outcome| {
        let rests_from = match &outcome.boards {
            None => Some(0),
            Some(boards) => boards.rest_day,
        };
        let Some(rests_from) = rests_from else { return };
        for pair in outcome.season.days.windows(2) {
            if pair[0].day >= rests_from {
                assert!(pair[1].gap_cm >= pair[0].gap_cm - LEVEL_CM, "{pair:?}");
            }
        }
    });
}

#[test]
fn the_fill_mark_is_below_the_planted_level_and_the_rim() {
    for_sound_plans(13, |_, outcome| {
        let fill = &outcome.fill;
        assert!(
            fill.depth_cm <= fill.planted_level_cm + LEVEL_CM,
            "{fill:?}"
        );
        assert!(fill.below_rim_cm >= 0.0);
        let rim_cm = fill.depth_cm + fill.below_rim_cm;
        assert!((fill.container_depth_cm - rim_cm).abs() <= ROUNDING * rim_cm);
        assert!(fill.volume_l > 0.0);
        assert!(fill.volume_l <= fill.capacity_l, "{fill:?}");
    });
}

#[test]
fn a_bucket_holds_the_frustum_of_a_cone() {
    let plan = Example::Bucket.plan();
    let [rim, floor, height] =
        [Field::TopDiameter, Field::BottomDiameter, Field::Height].map(|field| get(&plan, field));
    let litres = PI * height / 12.0 * (rim * rim + rim * floor + floor * floor) / 1000.0;
    let holds = solve(&plan).expect("a sound plan").fill.capacity_l;
    assert!(
        (holds - litres).abs() <= ROUNDING * litres,
        "{holds} L, not {litres} L"
    );
}

#[test]
fn a_deeper_mark_means_more_solution_and_no_lower_level() {
    for_sound_plans(14, |plan, outcome| {
        let rim = outcome.fill.depth_cm + outcome.fill.below_rim_cm;
        let mut last: Option<(f64, f64)> = None;
        for share in [0.3, 0.5, 0.7, 0.9] {
            let mut marked = plan.clone();
            // Below a centimetre no mark is accepted.
            set(
                &mut marked,
                Field::FillDepth,
                (share * rim).max(1.0 + share),
            );
            let Ok(outcome) = solve(&marked) else {
                continue;
            };
            let fill = outcome.fill;
            if let Some((volume, level)) = last {
                assert!(fill.volume_l >= volume, "{share}");
                assert!(fill.planted_level_cm >= level - LEVEL_CM, "{share}");
            }
            last = Some((fill.volume_l, fill.planted_level_cm));
        }
        assert!(last.is_some());
    });
}

#[test]
fn one_more_pot_never_lowers_the_planted_level() {
    let mut compared = 0;
    for method in [Method::Bottle, Method::Bucket] {
        for &shape in shapes(method) {
            for seed in 0..6 {
                let mut plan = sound_plan(seed + 15, method, shape);
                let Ok(outcome) = solve(&plan) else { continue };
                // The same litres in the vessel, whatever hangs in them.
                set(&mut plan, Field::FillDepth, outcome.fill.depth_cm);
                let mut last = 0.0;
                for pots in 1..=4_u32 {
                    set(&mut plan, Field::PlantsPerContainer, f64::from(pots));
                    let Ok(outcome) = solve(&plan) else { break };
                    let level = outcome.fill.planted_level_cm;
                    show_when_it_fails(&plan, || {
                        assert!(level >= last - LEVEL_CM, "{pots}: {level} after {last}");
                    });
                    last = level;
                    compared += u32::from(pots > 1);
                }
            }
        }
    }
    assert!(compared > 40, "only {compared} comparisons");
}

#[test]
fn more_plants_on_the_boards_never_lower_the_planted_level() {
    let mut compared = 0;
    for seed in 0..12 {
        let mut plan = sound_plan(seed, Method::FloatingBoards, Shape::Rectangular);
        let Ok(outcome) = solve(&plan) else { continue };
        set(&mut plan, Field::FillDepth, outcome.fill.depth_cm);
        let mut last: Option<(u32, f64)> = None;
        for spacing in [60.0, 45.0, 30.0, 20.0, 15.0, 10.0] {
            set(&mut plan, Field::SpacingAlong, spacing);
            let Ok(outcome) = solve(&plan) else { continue };
            let boards = outcome.boards.expect("boards");
            // Boards that go under carry nothing; their level is no level of a crop.
            if boards.draught_mm.is_none() {
                break;
            }
            let (plants, level) = (outcome.fill.plants, outcome.fill.planted_level_cm);
            if let Some((fewer, lower)) = last {
                assert!(plants >= fewer);
                show_when_it_fails(&plan, || {
                    assert!(level >= lower - LEVEL_CM, "{plants}: {level} after {lower}");
                });
                compared += 1;
            }
            last = Some((plants, level));
        }
    }
    assert!(compared > 20, "only {compared} comparisons");
}

#[test]
fn a_used_up_container_is_empty_and_never_reaches_harvest() {
    let mut ran_out = 0;
    for seed in 0..30 {
        for &method in Method::ALL {
            let mut plan = sound_plan(seed, method, shapes(method)[0]);
            if method == Method::FloatingBoards {
                continue;
            }
            set(&mut plan, Field::FillDepth, 1.0);
            let target = get(&plan, Field::TargetHead).max(500.0);
            plan.crop.target_head_g = Entry::Number(target);
            let Ok(outcome) = solve(&plan) else { continue };
            if outcome.season.left_l > 0.0 {
                continue;
            }
            ran_out += 1;
            assert_eq!(outcome.season.harvest_day, None);
            assert_eq!(outcome.calendar.harvest, None);
            let last = outcome.season.days.last().expect("a day");
            assert!(
                last.level_cm <= LEVEL_CM && last.volume_l <= 0.0,
                "{last:?}"
            );
        }
    }
    assert!(ran_out > 10, "only {ran_out} ran out");
}

#[test]
fn pots_lift_the_level_and_litres_beside_them_must_fit() {
    let mut plan = Example::Bucket.plan();
    let height = get(&plan, Field::Height);
    let level = |plan: &Plan| solve(plan).expect("sound").fill.planted_level_cm;
    set(&mut plan, Field::FillDepth, height - 1.0);
    let three = level(&plan);
    set(&mut plan, Field::PlantsPerContainer, 1.0);
    let one = level(&plan);
    // A pot of 5 cm and some 60 cm³ in a surface of some 650 cm².
    assert!(three > one + 0.05 && one > height - 1.0, "{one} {three}");
    // Filled to the rim, the pots push out what they take.
    set(&mut plan, Field::FillDepth, height);
    let outcome = solve(&plan).expect("sound");
    assert!((outcome.fill.planted_level_cm - height).abs() <= LEVEL_CM);
    assert!(outcome.fill.depth_cm < height - 0.02, "{:?}", outcome.fill);
    let told = outcome
        .findings
        .iter()
        .any(|finding| finding.fact == Fact::Overflows && finding.weight == Weight::Stop);
    assert!(told);
}
