//! Laws of floating boards: Archimedes, and what a thicker or heavier load does.

use slackwater::plan::{Field, Method, Shape, Sound, check};
use slackwater::science::units::length::{centimeter, meter};
use slackwater::science::units::mass::{gram, kilogram};
use slackwater::science::units::volume::{cubic_meter, liter};
use slackwater::science::units::{Length, Mass, Volume, mass_density::kilogram_per_cubic_meter};
use slackwater::season::{Cover, Tank};
use slackwater::solve;

use crate::plans::{for_sound_plans, set, show_when_it_fails, sound_plan};

/// A draught is found to some 1e-18 of the thickness, a displaced volume is a difference of two
/// volumes of the tank.
const ROUNDING: f64 = 1e-9;
/// Levels are found to a nanometre, m.
const LEVEL_M: f64 = 2e-9;
/// One figure told in two places, cm; levels are found to a nanometre.
const SAME_CM: f64 = 1e-6;

fn tanks(seed: u64, law: impl Fn(&Sound, &Tank)) {
    for index in 0..40 {
        let plan = sound_plan(seed + index, Method::FloatingBoards, Shape::Rectangular);
        let sound = check(&plan).expect("sound");
        let tank = Tank::new(&sound, None).expect("a tank");
        show_when_it_fails(&plan, || law(&sound, &tank));
    }
}

#[test]
fn boards_displace_the_mass_that_floats() {
    tanks(40, |sound, tank| {
        let Cover::Floating { rest, .. } = tank.cover() else {
            panic!("boards");
        };
        for head in [0.0, 20.0, 100.0, 250.0] {
            let floating = tank.floating_mass(Mass::new::<gram>(head));
            let Some(draught) = tank.draught(floating) else {
                continue;
            };
            assert!(draught <= sound.container.cover_thickness);
            let level = rest + draught + Length::new::<centimeter>(0.5);
            if level > tank.basin().depth_max() {
                continue;
            }
            let whole = tank.basin().volume_at(level).expect("within");
            let solution = tank.volume_at(level, draught).expect("within");
            let displaced = (whole - solution) * tank.density();
            let (displaced, floating) = (displaced.get::<kilogram>(), floating.get::<kilogram>());
            let exact = ROUNDING
                * (whole.get::<cubic_meter>() * tank.density().get::<kilogram_per_cubic_meter>());
            // A load so light that the pots alone bear it is the one exception: boards do not fly.
            let held_down = draught.get::<meter>() <= 0.0 && displaced > floating;
            assert!(
                held_down || (displaced - floating).abs() <= exact,
                "head {head} g: {displaced} kg displaced, {floating} kg float"
            );
        }
    });
}

#[test]
fn a_heavier_load_lies_deeper() {
    tanks(41, |_, tank| {
        let mut last = Length::default();
        for head in [0.0, 5.0, 50.0, 150.0, 300.0] {
            let floating = tank.floating_mass(Mass::new::<gram>(head));
            let Some(draught) = tank.draught(floating) else {
                break;
            };
            assert!(draught >= last);
            last = draught;
        }
    });
}

#[test]
fn boards_follow_the_level_then_rest_for_good() {
    tanks(42, |_, tank| {
        let Cover::Floating { rest, .. } = tank.cover() else {
            panic!("boards");
        };
        let draught = tank
            .draught(tank.floating_mass(Mass::default()))
            .unwrap_or_default();
        let full = tank
            .volume_at(tank.basin().depth_max(), draught)
            .expect("within")
            .get::<liter>();
        let mut rested = false;
        let mut level = tank.basin().depth_max();
        for step in 0..=400 {
            let left = Volume::new::<liter>(full * (1.0 - f64::from(step) / 400.0));
            let state = tank.state(left, draught, level);
            assert!((state.level - level).get::<meter>() <= LEVEL_M);
            level = state.level;
            assert!(state.underside >= rest);
            if state.afloat {
                assert!(!rested, "resting boards do not rise by themselves");
                let lies = (state.level - state.underside - draught).get::<meter>();
                assert!(lies.abs() <= LEVEL_M, "{lies}");
                assert!(state.gap() <= Length::default());
            } else {
                rested = true;
                assert_eq!(state.underside, rest);
            }
        }
        assert!(rested);
    });
}

#[test]
fn the_report_agrees_with_itself() {
    for_sound_plans(43, |plan, outcome| {
        let floats = outcome.boards.is_some();
        assert_eq!(
            plan.container.method.known() == Some(Method::FloatingBoards),
            floats
        );
        let Some(boards) = &outcome.boards else {
            return;
        };
        let (first, last) = (&outcome.season.days[0], outcome.season.days.last());
        let last = last.expect("a day");
        for (told, shown) in [
            (boards.gap_at_harvest_cm, last.gap_cm),
            (boards.gap_at_harvest_cm, outcome.season.gap_at_end_cm),
            (boards.depth_at_harvest_cm, last.level_cm),
        ] {
            assert!((told - shown).abs() <= SAME_CM, "{told} {shown}");
        }
        if boards.floats_at_planting {
            assert!(boards.draught_mm.is_some());
            assert!(first.gap_cm <= 0.0);
        } else {
            assert!(boards.draught_mm.is_none() || boards.rest_day == Some(0));
        }
        assert_eq!(
            boards.rest_day.is_none(),
            outcome.calendar.boards_rest.is_none()
        );
        let chosen: Vec<_> = boards.pipes.iter().filter(|row| row.chosen).collect();
        assert_eq!(chosen.len(), 1);
        // The plan's own row is the plan's own season.
        assert_eq!(chosen[0].rest_day, boards.rest_day);
        for (row, own) in [
            (chosen[0].gap_cm, boards.gap_at_harvest_cm),
            (chosen[0].left_depth_cm, boards.depth_at_harvest_cm),
            (chosen[0].fill_depth_cm, outcome.fill.depth_cm),
        ] {
            // The table reads the catalog in mm, the plan in cm.
            assert!((row - own).abs() <= SAME_CM, "{row} {own}");
        }
    });
}

#[test]
fn a_fill_of_that_depth_just_floats_the_boards() {
    let mut compared = 0;
    for seed in 0..30 {
        let mut plan = sound_plan(seed + 44, Method::FloatingBoards, Shape::Rectangular);
        let Ok(outcome) = solve(&plan) else { continue };
        let boards = outcome.boards.expect("boards");
        if boards.draught_mm.is_none() {
            continue;
        }
        let least = boards.floats_from_depth_cm;
        let floats_at = |plan: &mut slackwater::plan::Plan, depth: f64| {
            set(plan, Field::FillDepth, depth);
            let outcome = solve(plan).ok()?;
            Some(outcome.boards?.floats_at_planting)
        };
        if let (Some(below), Some(above)) = (
            floats_at(&mut plan, least - 0.01),
            floats_at(&mut plan, least + 0.01),
        ) {
            compared += 1;
            show_when_it_fails(&plan, || assert!(!below && above, "from {least} cm"));
        }
    }
    assert!(compared > 15, "only {compared} comparisons");
}
