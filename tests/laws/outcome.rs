//! What every outcome must be: finite, not negative, complete, the same each time.

use serde_json::Value;
use slackwater::advice::{Fact, Weight};
use slackwater::catalog::Keyed;
use slackwater::plan::{
    DateMeaning, Dosing, Entry, Example, Field, Pick, Plan, ProblemKind, WaterKind, used_fields,
};
use slackwater::{Outcome, solve};

use time::{Date, Month};

use crate::plans::{for_sound_plans, get, set, show_when_it_fails, wild_plan};

/// Wild plans that are tried; most of them are refused.
const WILD: u64 = 4000;

/// Figures that may be below zero, each with the reason.
const SIGNED: &[(&str, &str)] = &[
    ("pot_immersion_cm", "pots may hang above the solution"),
    ("immersion_cm", "the same, in a finding"),
    ("mean_temperature_c", "a temperature"),
    ("mean_c", "a temperature"),
    ("got", "a field of its own, such as a latitude"),
    ("low", "the same"),
    ("high", "the same"),
    (
        "gypsum",
        "a saturation index: below zero the mineral dissolves",
    ),
    ("brushite", "the same"),
    ("calcite", "the same"),
    (
        "charge_error_pct",
        "anions of an analysis may outweigh its cations",
    ),
    ("miss_pct", "salts may reach less than a recipe asks"),
    (
        "sag_middles_mm",
        "a span between long overhangs bends upwards",
    ),
    ("sag_tips_mm", "an end beyond a long span rises"),
    ("clear_gap_cm", "a board may sag into the solution"),
    ("lift_kg_per_m", "a heavy pipe sinks by itself"),
    ("lift_by_ends_kg_per_m", "the same"),
    ("metacentric_height_cm", "a board may turn over"),
    ("metacentric_height_at_end_cm", "the same"),
    ("edge_left_mm", "a hole may reach over the edge"),
    ("foam_mm", "the same"),
    ("between_holes_mm", "holes may meet"),
];

/// Members that may be absent, which JSON writes as null.
const OPTIONAL: &[&str] = &[
    "air_roots_top_cm",
    "alone_g_per_l",
    "ballast_kg_per_m",
    "between_holes_mm",
    "boards",
    "boards_rest",
    "brushite",
    "build",
    "calcite",
    "charge_error_pct",
    "clean",
    "clear_when_thinned_times",
    "contact_lost_day",
    "cost",
    "cover",
    "cover_hole_cm",
    "day",
    "draught_at_end_mm",
    "draught_mm",
    "ec_ratio",
    "edge_dip_mm",
    "failure",
    "fitting",
    "form",
    "freeboard_mm",
    "gypsum",
    "harvest",
    "harvest_day",
    "harvest_until",
    "layout",
    "limit_g_per_l",
    "load_per_leg_kg",
    "metacentric_height_at_end_cm",
    "metacentric_height_cm",
    "miss_pct",
    "never_above_cm",
    "plants_per_board",
    "pots_leave",
    "price",
    "rating_kg_per_m2",
    "raw_water_share_pct",
    "reached_day",
    "refill",
    "refloat_l",
    "replant",
    "rest_day",
    "running",
    "runs_short_day",
    "sag_mm",
    "sag_range_mm",
    "sag_tips_mm",
    "seed_next",
    "shortfall",
    "start_ms_per_cm",
    "stocks_together",
    "stop",
    "stress_pct",
    "strongest_pct",
    "succession",
    "tank_m",
    "unit_price",
    "yield_under_salt_pct",
];

/// Walks through an outcome: no null but where it means 'none', no number that is not finite, and
/// none below zero but where that has a sense.
pub fn assert_presentable(outcome: &Outcome) {
    let json = serde_json::to_value(outcome).expect("outcomes serialise");
    walk("outcome", "", &json);
    // The section is drawn, not written; its text would show what is no number.
    let section = format!("{:?}", outcome.section);
    assert!(
        !section.contains("NaN") && !section.contains("inf"),
        "{section}"
    );
}

fn walk(path: &str, name: &str, value: &Value) {
    match value {
        Value::Null => assert!(OPTIONAL.contains(&name), "{path} is null"),
        Value::Number(number) => {
            let text = number.to_string();
            let figure: f64 = text.parse().expect("a number");
            assert!(figure.is_finite(), "{path} is {text}");
            // Also −0, which a person would read as '-0'.
            let signed = SIGNED.iter().any(|(allowed, _)| *allowed == name);
            assert!(signed || !text.starts_with('-'), "{path} is {text}");
        }
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                walk(&format!("{path}[{index}]"), name, item);
            }
        }
        Value::Object(members) => {
            for (key, member) in members {
                walk(&format!("{path}.{key}"), key, member);
            }
        }
        Value::Bool(_) | Value::String(_) => {}
    }
}

/// What holds for any answer, sound or not.
fn assert_answer(plan: &Plan) -> bool {
    match solve(plan) {
        Ok(outcome) => {
            assert_presentable(&outcome);
            true
        }
        Err(problems) => {
            assert!(!problems.is_empty());
            let used = used_fields(plan);
            for problem in &problems {
                let Some(field) = problem.field else {
                    assert_eq!(problem.kind, ProblemKind::BeyondModels);
                    continue;
                };
                assert!(used.contains(&field), "{problem:?} is of an unused field");
                // Every field holds something readable, so 'missing' would be an excuse.
                assert_ne!(problem.kind, ProblemKind::Missing, "{problem:?}");
            }
            false
        }
    }
}

#[test]
fn sound_plans_have_presentable_outcomes() {
    for_sound_plans(1, |_, outcome| assert_presentable(outcome));
}

#[test]
fn no_plan_within_the_limits_makes_nonsense() {
    let mut solved = 0;
    for seed in 0..WILD {
        let plan = wild_plan(seed);
        show_when_it_fails(&plan, || solved += u64::from(assert_answer(&plan)));
    }
    // Else the test would see refusals only.
    assert!(solved * 50 > WILD, "only {solved} of {WILD} were solved");
}

#[test]
fn what_is_none_has_its_reason() {
    for_sound_plans(5, |plan, outcome| {
        let fertilizer = &plan.fertilizer;
        let analysed = fertilizer.water_kind == Pick::Known(WaterKind::Analysis);
        let stocks = fertilizer.dosing == Pick::Known(Dosing::Stocks);
        assert_eq!(outcome.stocks_together.is_some(), stocks);
        assert_eq!(outcome.stocks.len(), if stocks { 2 } else { 0 });
        assert_eq!(outcome.water.ec_ratio.is_some(), analysed);
        let salts = fertilizer.dosing == Pick::Known(Dosing::Salts);
        assert_eq!(outcome.fertilizer.targets.is_empty(), !salts);

        let held = &outcome.fertilizer.elements_mg_per_l;
        let saturation = &outcome.solution.saturation;
        let has = |amount: f64| amount > 0.0;
        assert_eq!(saturation.brushite.is_some(), has(held.ca) && has(held.p));
        // The air brings carbonate to any solution.
        assert_eq!(saturation.calcite.is_some(), has(held.ca));
        // Anions that a label leaves open are counted as sulfate.
        assert!(saturation.gypsum.is_some() || !(has(held.ca) && has(held.s)));
        assert!(has(held.ca) || saturation.gypsum.is_none());

        let season = &outcome.season;
        let lasted = season.harvest_day.is_some();
        assert!(lasted || outcome.fertilizer.fitting.is_none());
        assert!(lasted || outcome.growing_on.is_empty());
        let days = season.nutrients.iter().filter_map(|it| it.runs_short_day);
        assert_eq!(season.shortfall.map(|it| it.day), days.min());
    });
}

#[test]
fn the_same_plan_gives_the_same_outcome() {
    for_sound_plans(2, |plan, outcome| {
        assert_eq!(solve(plan).as_ref(), Ok(outcome));
    });
}

#[test]
fn events_are_in_order_and_within_the_season() {
    for_sound_plans(3, |_, outcome| {
        let season = &outcome.season;
        assert!(
            season
                .events
                .windows(2)
                .all(|pair| pair[0].day <= pair[1].day)
        );
        let last = season.days.last().expect("a season has days");
        assert!(season.events.iter().all(|event| event.day <= last.day));
        assert_eq!(season.events[0].date, outcome.calendar.transplanting);
        assert_eq!(last.day, season.days_followed);
    });
}

#[test]
fn dates_are_as_many_days_apart_as_they_say() {
    let day = |text: &str| {
        let part = |range: std::ops::Range<usize>| text[range].parse::<u16>().expect("digits");
        let month = Month::try_from(u8::try_from(part(5..7)).expect("small")).expect("a month");
        let day = u8::try_from(part(8..10)).expect("small");
        Date::from_calendar_date(part(0..4).into(), month, day)
            .expect("a date")
            .to_julian_day()
    };
    for_sound_plans(4, |plan, outcome| {
        let calendar = &outcome.calendar;
        let planted = day(&calendar.transplanting);
        let after = |days: u32| planted + i32::try_from(days).expect("a season");
        for event in &outcome.season.events {
            assert_eq!(day(&event.date), after(event.day), "{event:?}");
        }
        assert_eq!(
            calendar.harvest.as_deref().map(day),
            outcome.season.harvest_day.map(after)
        );
        let rests = outcome.boards.as_ref().and_then(|boards| boards.rest_day);
        assert_eq!(calendar.boards_rest.as_deref().map(day), rests.map(after));
        // One day for the same thing, in the calendar and where the roots are told.
        if let Some(leave) = calendar.pots_leave.as_deref() {
            assert_eq!(outcome.roots.contact_lost_day.map(after), Some(day(leave)));
        }
        let nursery = f64::from(planted - day(&calendar.seeding));
        assert!((nursery - get(plan, Field::SeedlingAge)).abs() < 0.5);
        let Entry::Text(own) = &plan.crop.date else {
            panic!("a date is a text");
        };
        let meant = match plan.crop.date_meaning.known() {
            Some(DateMeaning::Seeding) => &calendar.seeding,
            _ => &calendar.transplanting,
        };
        assert_eq!(meant, own);
    });
}

#[test]
fn a_target_out_of_reach_is_told_with_the_mass_that_is_reached() {
    // Months of growth at close spacing make more leaves than any light gets through.
    for &example in Example::ALL {
        let mut plan = example.plan();
        set(&mut plan, Field::TargetHead, 2000.0);
        set(&mut plan, Field::CarbonDioxide, 1000.0);
        set(&mut plan, Field::Count, 1.0);
        let outcome = solve(&plan).expect("a plan for giants is a plan");
        assert_eq!(outcome.season.harvest_day, None);
        let told = outcome.findings.iter().any(|finding| {
            finding.weight == Weight::Stop
                && matches!(finding.fact, Fact::NotReached { .. } | Fact::RunsOut { .. })
        });
        assert!(told, "{:?}", outcome.findings);
    }
}
