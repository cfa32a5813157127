//! Laws of the solution through the season: nothing is lost, and each day has its reading.

use std::cell::Cell;

use slackwater::advice::{DayOutcome, Elements, Fact, Finding, Weight};
use slackwater::catalog::Keyed;
use slackwater::catalog::shelters::Shelter;
use slackwater::plan::{AcidChoice, Dosing, Entry, Example, Field, Pick, Plan, StrengthBy};
use slackwater::{Outcome, solve};

use crate::plans::{for_sound_plans, set};

/// Sums of a few roundings.
const ROUNDING: f64 = 1e-9;
/// The last fiftieth of a charge has no concentration of its own: the figures stay as they were.
const LAST_DROP: f64 = 0.02;
/// The reading at harvest that counts as too strong, mS/cm: as `advice` says it.
const STRONG: f64 = 2.6;

/// The major nutrients in the order of `season.nutrients`, mg/L.
fn majors(elements: &Elements) -> [f64; 5] {
    [elements.n, elements.p, elements.k, elements.ca, elements.mg]
}

/// What no crop of the model takes, mg/L.
fn others(elements: &Elements) -> [f64; 7] {
    [
        elements.s,
        elements.fe,
        elements.mn,
        elements.zn,
        elements.cu,
        elements.b,
        elements.mo,
    ]
}

/// The days on which more than the last drop is left.
fn days(outcome: &Outcome) -> impl Iterator<Item = &DayOutcome> {
    let least = LAST_DROP * outcome.fill.volume_l;
    outcome
        .season
        .days
        .iter()
        .filter(move |day| day.volume_l > least)
}

#[test]
fn what_is_not_in_the_crop_is_in_the_solution() {
    for_sound_plans(110, |_, outcome| {
        let start = outcome.fill.volume_l;
        let at_planting = &outcome.fertilizer.elements_mg_per_l;
        for (index, balance) in outcome.season.nutrients.iter().enumerate() {
            let mut last = 0.0;
            for day in days(outcome) {
                let left = majors(&day.elements_mg_per_l)[index] * day.volume_l / 1000.0;
                let taken = balance.supply_g - left;
                let slack = ROUNDING * balance.supply_g;
                // The crop takes, and gives nothing back; no more than it needs or there is.
                assert!(taken >= last - slack, "{balance:?} {day:?}");
                assert!(taken <= balance.need_g.min(balance.supply_g) + slack);
                last = taken;
            }
            let all_days = days(outcome).count() == outcome.season.days.len();
            if all_days && outcome.season.left_l > 0.0 {
                let taken = balance.need_g.min(balance.supply_g);
                assert!(
                    (last - taken).abs() <= ROUNDING * (1.0 + taken),
                    "{balance:?}"
                );
            }
        }
        for day in days(outcome) {
            for (left, first) in others(&day.elements_mg_per_l)
                .iter()
                .zip(others(at_planting))
            {
                let (left, first) = (left * day.volume_l, first * start);
                assert!((left - first).abs() <= ROUNDING * first, "{day:?}");
            }
        }
    });
}

#[test]
fn every_day_has_its_reading() {
    for_sound_plans(111, |_, outcome| {
        let (season, solution) = (&outcome.season, &outcome.solution);
        for day in &season.days {
            assert!(
                day.ec_ms_per_cm.is_finite() && day.ec_ms_per_cm > 0.0,
                "{day:?}"
            );
            assert!((0.0..=14.0).contains(&day.ph), "{day:?}");
        }
        let first = &season.days[0];
        assert!((first.ec_ms_per_cm / solution.ec_ms_per_cm - 1.0).abs() < ROUNDING);
        assert!(
            (first.ph - solution.ph).abs() < 1e-6,
            "{} {}",
            first.ph,
            solution.ph
        );
        let (planted, mixed) = (
            &first.elements_mg_per_l,
            &outcome.fertilizer.elements_mg_per_l,
        );
        let majors = majors(planted).into_iter().zip(majors(mixed));
        let others = others(planted).into_iter().zip(others(mixed));
        for (planted, mixed) in majors.chain(others) {
            assert!(
                (planted - mixed).abs() <= ROUNDING * mixed,
                "{planted} {mixed}"
            );
        }
        let last = season.days.last().expect("a day");
        assert!((last.ec_ms_per_cm / season.ec_at_end_ms_per_cm - 1.0).abs() < ROUNDING);
        assert!((last.ph - season.ph_at_end).abs() < ROUNDING);
    });
}

#[test]
fn the_first_to_run_short_is_told() {
    let told = Cell::new(0);
    for_sound_plans(112, |_, outcome| {
        let season = &outcome.season;
        for balance in &season.nutrients {
            assert_eq!(
                balance.runs_short_day.is_some(),
                balance.need_g > balance.supply_g
            );
        }
        let Some(short) = season.shortfall else {
            return;
        };
        told.set(told.get() + 1);
        // It is gone by then, and was still there the day before.
        let index = season
            .nutrients
            .iter()
            .position(|it| it.nutrient == short.nutrient)
            .expect("one of the five");
        let left = |day: usize| majors(&season.days[day].elements_mg_per_l)[index];
        let day = short.day as usize;
        assert!(left(day) <= 0.0, "{short:?}: {}", left(day));
        assert!(day == 0 || left(day - 1) > 0.0 || season.nutrients[index].supply_g <= 0.0);
    });
    assert!(told.get() > 20, "only {} shortfalls", told.get());
}

#[test]
fn more_crops_never_lower_sodium_or_chloride() {
    let (followed, drained) = (Cell::new(0), Cell::new(0));
    for_sound_plans(113, |plan, _| {
        let crops = |count: f64| {
            let mut plan = plan.clone();
            set(&mut plan, Field::CropsInARow, count);
            solve(&plan).expect("as sound as one crop").growing_on
        };
        assert!(crops(1.0).is_empty());
        let five = crops(5.0);
        assert_eq!(crops(3.0)[..], five[..five.len().min(2)]);
        let (mut sodium, mut chloride) = (0.0, 0.0);
        for (index, crop) in five.iter().enumerate() {
            assert_eq!(crop.crop as usize, index + 2);
            assert!(
                crop.sodium_mg_per_l >= sodium * (1.0 - ROUNDING),
                "{crop:?}"
            );
            assert!(
                crop.chloride_mg_per_l >= chloride * (1.0 - ROUNDING),
                "{crop:?}"
            );
            assert!(crop.refill_l > 0.0 && crop.add_back_pct >= 0.0, "{crop:?}");
            (sodium, chloride) = (crop.sodium_mg_per_l, crop.chloride_mg_per_l);
            followed.set(followed.get() + 1);
            drained.set(drained.get() + u32::from(crop.drain));
        }
    });
    assert!(
        followed.get() > 200 && drained.get() > 20 && drained.get() < followed.get(),
        "{} crops, {} drained",
        followed.get(),
        drained.get()
    );
}

/// The plan with its strength set by conductivity, if it can be.
fn at_conductivity(plan: &Plan, ms_per_cm: f64) -> Option<Outcome> {
    let mut plan = plan.clone();
    plan.fertilizer.strength_by = Pick::Known(StrengthBy::Conductivity);
    set(&mut plan, Field::TargetConductivity, ms_per_cm);
    solve(&plan).ok()
}

#[test]
fn within_the_fitting_span_a_charge_ends_neither_starved_nor_salty() {
    // A little inside and outside: the acid changes with the charge and is held constant for the
    // span.
    let (fed, starved, fresh, salty) = (Cell::new(0), Cell::new(0), Cell::new(0), Cell::new(0));
    for_sound_plans(114, |plan, _| {
        let mut plan = plan.clone();
        if plan.fertilizer.dosing == Pick::Known(Dosing::Salts) {
            plan.fertilizer.dosing = Pick::Known(Dosing::DryBlend);
        }
        let Ok(outcome) = solve(&plan) else { return };
        let Some(fitting) = outcome.fertilizer.fitting else {
            return;
        };
        // A nutrient that the mixture does not bring runs short at any strength.
        let brought = |outcome: &Outcome| {
            let elements = majors(&outcome.fertilizer.elements_mg_per_l);
            let balances = outcome.season.nutrients.iter().zip(elements);
            balances
                .filter(|(_, mg_per_l)| *mg_per_l > 0.0)
                .any(|(balance, _)| balance.runs_short_day.is_some())
        };
        let water = plan.fertilizer.water_kind.key() != "rain";
        if let Some(at) = at_conductivity(&plan, fitting.low_ms_per_cm * 1.03) {
            // Water may bring a nutrient that the fertilizer lacks, in traces.
            assert!(water || !brought(&at), "{fitting:?}");
            fed.set(fed.get() + 1);
        }
        if let Some(at) = at_conductivity(&plan, fitting.low_ms_per_cm * 0.95) {
            assert!(brought(&at), "{fitting:?}");
            starved.set(starved.get() + 1);
        }
        if let Some(at) = at_conductivity(&plan, fitting.high_ms_per_cm * 0.97) {
            assert!(at.season.ec_at_end_ms_per_cm <= STRONG, "{fitting:?}");
            fresh.set(fresh.get() + 1);
        }
        if let Some(at) = at_conductivity(&plan, fitting.high_ms_per_cm * 1.05) {
            assert!(at.season.ec_at_end_ms_per_cm > STRONG, "{fitting:?}");
            salty.set(salty.get() + 1);
        }
    });
    let counts = [fed.get(), starved.get(), fresh.get(), salty.get()];
    assert!(counts.iter().all(|&it| it > 30), "{counts:?}");
}

#[test]
fn a_solution_that_starts_as_advised_does_not_end_too_strong() {
    let followed = Cell::new(0);
    let follow = |plan: &Plan, outcome: &Outcome| {
        let advised = |finding: &Finding| match finding.fact {
            Fact::StrongAtEnd {
                start_ms_per_cm, ..
            } => start_ms_per_cm,
            _ => None,
        };
        let Some(start) = outcome.findings.iter().find_map(advised) else {
            return;
        };
        // Single salts are weighed for a recipe, which no reading is entered for.
        if plan.fertilizer.dosing == Pick::Known(Dosing::Salts) {
            return;
        }
        let Some(at) = at_conductivity(plan, start) else {
            return;
        };
        let strong = |finding: &Finding| matches!(finding.fact, Fact::StrongAtEnd { .. });
        let end = at.season.ec_at_end_ms_per_cm;
        assert!(!at.findings.iter().any(strong), "{start} ends at {end}");
        followed.set(followed.get() + 1);
    };
    for seed in 117..120 {
        for_sound_plans(seed, follow);
    }
    assert!(followed.get() > 40, "only {} starts", followed.get());
}

/// Each ready plan but the bottle, whose head of common practice takes all it holds, is fed by its one
/// charge, whenever it is sown; the bucket under a solid roof with two heads, and not with three.
#[test]
fn ready_plans_hold_as_many_as_one_charge_feeds() {
    let fed = |plan: &Plan| {
        let outcome = solve(plan).expect("ready plans are sound");
        let mut cautions = outcome
            .findings
            .iter()
            .filter(|it| it.weight < Weight::Sound);
        !cautions.any(|finding| {
            matches!(
                finding.fact,
                Fact::StrongAtEnd { .. }
                    | Fact::FittingStrength { .. }
                    | Fact::Short { .. }
                    | Fact::RunsOut { .. }
            )
        })
    };
    let porch = Example::Bucket.plan_under(Some(Shelter::Porch));
    let larger = Example::ALL.iter().filter(|it| **it != Example::Bottle);
    let ready = larger.map(|example| example.plan_under(None));
    for plan in ready.chain([porch.clone()]) {
        for month in 1..=12 {
            let mut plan = plan.clone();
            plan.crop.date = Entry::Text(format!("2027-{month:02}-10"));
            assert!(fed(&plan), "{} in month {month}", plan.name);
        }
    }
    let mut three = porch;
    set(&mut three, Field::PlantsPerContainer, 3.0);
    assert!(!fed(&three));
}

#[test]
fn the_fitting_span_does_not_depend_on_the_present_strength() {
    /// Each span ends where a search from another side ended.
    const SPAN: f64 = 1e-4;
    let compared = Cell::new(0);
    for_sound_plans(116, |plan, _| {
        let mut plan = plan.clone();
        // Acid is held constant while the charge changes.
        plan.fertilizer.acid = Pick::Known(AcidChoice::None);
        if plan.fertilizer.dosing == Pick::Known(Dosing::Salts) {
            plan.fertilizer.dosing = Pick::Known(Dosing::Stocks);
        }
        let spans = [0.3, 1.2, 5.0].map(|ec| at_conductivity(&plan, ec));
        let mut spans = spans
            .iter()
            .flatten()
            .filter_map(|it| it.fertilizer.fitting);
        let Some(first) = spans.next() else { return };
        for other in spans {
            compared.set(compared.get() + 1);
            let near = |a: f64, b: f64| (a - b).abs() <= SPAN * a.max(b);
            assert!(
                near(first.low_ms_per_cm, other.low_ms_per_cm),
                "{first:?} {other:?}"
            );
            assert!(
                near(first.high_ms_per_cm, other.high_ms_per_cm),
                "{first:?} {other:?}"
            );
        }
    });
    assert!(compared.get() > 80, "only {} comparisons", compared.get());
}

#[test]
fn salt_that_lowers_the_yield_is_in_the_water() {
    let seen = Cell::new(0);
    for_sound_plans(115, |plan, outcome| {
        let Some(percent) = outcome.season.yield_under_salt_pct else {
            return;
        };
        seen.set(seen.get() + 1);
        assert!((0.0..=100.0).contains(&percent));
        if plan.fertilizer.water_kind.key() == "rain" {
            assert!(
                percent >= 100.0,
                "rain brings no sodium chloride: {percent}"
            );
        }
    });
    assert!(seen.get() > 50);
}
