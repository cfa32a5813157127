//! Every piece of advice: a plan in which it appears, and one in which it must not.
//!
//! Verdicts on what is built stand apart.

mod built;

use std::collections::BTreeSet;

use slackwater::advice::{Fact, StructureFact, Weight};
use slackwater::catalog::Keyed;
use slackwater::catalog::climates::ClimateChoice;
use slackwater::catalog::crops::CropKind;
use slackwater::catalog::pipes::PipeChoice;
use slackwater::catalog::shelters::Shelter;
use slackwater::plan::{AcidChoice, Dosing, Example, Field, Pick, Plan, WaterKind};
use slackwater::solve;

use built::narrow_boards;

use crate::plans::{for_sound_plans, set};
use crate::roots::{fill_too_low, pipe_too_thick, thin_bottle};

/// A name for each fact. Neither match has a catch-all: a new fact does not compile before it is
/// listed, and once listed it needs plans on either side.
macro_rules! facts {
    ($($name:ident,)+; built $($built:ident,)+) => {
        const FACTS: &[&str] = &[$(stringify!($name),)+ $(stringify!($built)),+];
        const BUILT: &[&str] = &[$(stringify!($built)),+];

        fn name(fact: &Fact) -> &'static str {
            match fact {
                $(Fact::$name { .. } => stringify!($name),)+
                Fact::Structure(fact) => match fact {
                    $(StructureFact::$built { .. } => stringify!($built),)+
                },
            }
        }
    };
}

facts! {
    Lasts,
    RunsOut,
    NotReached,
    PerPlant,
    Immersion,
    PotsHangAbove,
    Overflows,
    Gap,
    BoardsSink,
    RestAtPlanting,
    Floats,
    NeverRest,
    LittleLeft,
    NoPipeFits,
    Short,
    NutrientsLast,
    StrongAtEnd,
    Urea,
    Heavy,
    FloorLoad,
    OpenWater,
    Salts,
    Electricity,
    Acid,
    StocksApart,
    StockClear,
    FittingStrength,
    TargetMissed,
    LabelCharges,
    Ph,
    PhDrift,
    NoAcidNeeded,
    FallsOut,
    WaterAnalysis,
    Water,
    DiluteWater,
    SaltYield,
    GrowOn,
    Warm,
    RootsReach,
    ContactLost,
    RootsHang,
    WarmSolution,
    Mosquitoes,
    Spoons,
    AlgaeInClearWall,
    AlgaeAtEdges,
    MiddayWilt,
    TipBurn,
    RainDilutes,
    DrainInterval,
    FoodContainer,
    TankLiner,
    CleanHarvest,
    SpentSolution,
    Dim,
    BrighterThanClearSky,
    NotValidated,
    Unusual,
    ; built
    TooFewPipes,
    BoardSag,
    ClearGap,
    TurnsOver,
    EdgeDip,
    Jam,
    OpenStrips,
    BoardsWithoutPlace,
    PipesLift,
    WaterUptake,
    HolesWeaken,
    SheetTooSmall,
    CoverSag,
    CoverLight,
    FloorLevel,
    Sides,
    AskCompetentPerson,
    DoNotBuildThere,
}

/// Said of every plan: two figures that are judged either way, and fertilizer is always in the house.
const ALWAYS: &[&str] = &["PerPlant", "Salts", "Ph"];

fn said(plan: &Plan) -> BTreeSet<&'static str> {
    let outcome = solve(plan).unwrap_or_else(|problems| panic!("{problems:?}"));
    outcome
        .findings
        .iter()
        .map(|finding| name(&finding.fact))
        .collect()
}

fn with(example: Example, change: impl FnOnce(&mut Plan)) -> Plan {
    let mut plan = example.plan();
    change(&mut plan);
    plan
}

/// Air of a plan: coldest, warmest, humidity.
fn air(example: Example, low: f64, high: f64, humidity: f64) -> Plan {
    with(example, |plan| {
        plan.climate.kind = Pick::Known(ClimateChoice::Own);
        set(plan, Field::TemperatureMin, low);
        set(plan, Field::TemperatureMax, high);
        set(plan, Field::Humidity, humidity);
    })
}

fn under_lamps(example: Example) -> Plan {
    with(example, |plan| {
        plan.choose_climate(ClimateChoice::RoomUnderLamps);
    })
}

fn under_film(example: Example) -> Plan {
    with(example, |plan| plan.choose_shelter(Shelter::PlasticShelter))
}

/// Boards that leave no water open.
fn boards_from_wall_to_wall() -> Plan {
    with(Example::FloatingBoards, |plan| {
        let cover = |plan: &Plan, field: Field| match field.entry(plan) {
            Some(slackwater::plan::Entry::Number(value)) => *value,
            other => panic!("{other:?}"),
        };
        let count = cover(plan, Field::BoardCount);
        let length = cover(plan, Field::Length);
        let width = cover(plan, Field::Width);
        set(plan, Field::BoardLength, width);
        set(plan, Field::BoardWidth, length / count);
    })
}

/// A crop that does not end before the solution does.
fn giants() -> Plan {
    with(Example::Bucket, |plan| set(plan, Field::TargetHead, 2000.0))
}

#[test]
fn advice_appears_where_it_applies_and_nowhere_else() {
    let ready = |example: Example| example.plan();
    let rows: Vec<(&str, Plan, Plan)> = vec![
        ("RootsReach", ready(Example::Bucket), fill_too_low()),
        ("ContactLost", fill_too_low(), ready(Example::Bottle)),
        ("RootsHang", thin_bottle(), ready(Example::Bottle)),
        (
            "WarmSolution",
            air(Example::CoveredTank, 24.0, 34.0, 70.0),
            air(Example::CoveredTank, 14.0, 24.0, 70.0),
        ),
        (
            "Mosquitoes",
            air(Example::CoveredTank, 20.0, 30.0, 70.0),
            under_lamps(Example::CoveredTank),
        ),
        (
            "Mosquitoes",
            air(Example::FloatingBoards, 20.0, 30.0, 70.0),
            // A lid closes the bucket.
            air(Example::Bucket, 20.0, 30.0, 70.0),
        ),
        // Colder than any of the experiments: too slow to matter.
        (
            "Mosquitoes",
            air(Example::CoveredTank, 16.0, 24.0, 70.0),
            air(Example::CoveredTank, 5.0, 15.0, 70.0),
        ),
        (
            "Spoons",
            ready(Example::Bucket),
            ready(Example::CoveredTank),
        ),
        (
            "AlgaeInClearWall",
            ready(Example::Bottle),
            ready(Example::Bucket),
        ),
        (
            "AlgaeAtEdges",
            ready(Example::FloatingBoards),
            boards_from_wall_to_wall(),
        ),
        (
            "MiddayWilt",
            air(Example::Bucket, 18.0, 34.0, 35.0),
            air(Example::Bucket, 14.0, 22.0, 75.0),
        ),
        (
            "TipBurn",
            ready(Example::Bottle),
            air(Example::Bottle, 10.0, 18.0, 60.0),
        ),
        (
            "TipBurn",
            ready(Example::Bucket),
            with(Example::Bucket, |plan| {
                plan.crop.kind = Pick::Known(CropKind::Spinach);
            }),
        ),
        (
            "RainDilutes",
            ready(Example::Bucket),
            under_film(Example::Bucket),
        ),
        ("DrainInterval", ready(Example::Bucket), giants()),
        (
            "FoodContainer",
            ready(Example::Bucket),
            ready(Example::CoveredTank),
        ),
        (
            "TankLiner",
            ready(Example::CoveredTank),
            ready(Example::Bottle),
        ),
        ("CleanHarvest", ready(Example::Bucket), giants()),
        ("SpentSolution", ready(Example::CoveredTank), giants()),
    ];
    for (fact, there, elsewhere) in &rows {
        assert!(FACTS.contains(fact), "{fact}");
        assert!(said(there).contains(fact), "{fact} is missing");
        assert!(!said(elsewhere).contains(fact), "{fact} is out of place");
    }
}

#[test]
fn every_fact_is_met_in_some_plan_and_missing_in_another() {
    let mut met = BTreeSet::new();
    let mut missed = BTreeSet::new();
    let mut note = |said: &BTreeSet<&'static str>| {
        met.extend(said.iter().copied());
        missed.extend(FACTS.iter().copied().filter(|fact| !said.contains(fact)));
    };
    for plan in several().into_iter().chain([narrow_boards()]) {
        note(&said(&plan));
    }
    let drawn = std::cell::RefCell::new(Vec::new());
    for seed in [31, 32, 33] {
        for_sound_plans(seed, |_, outcome| {
            let said = outcome.findings.iter().map(|finding| name(&finding.fact));
            drawn.borrow_mut().push(said.collect::<BTreeSet<_>>());
        });
    }
    for said in drawn.borrow().iter() {
        note(said);
    }
    let unmet: Vec<_> = FACTS.iter().filter(|fact| !met.contains(*fact)).collect();
    assert!(unmet.is_empty(), "never said: {unmet:?}");
    let always: Vec<_> = FACTS
        .iter()
        .filter(|fact| !missed.contains(*fact))
        .collect();
    assert_eq!(always, ALWAYS.iter().collect::<Vec<_>>());
}

/// Plans for what is seldom met.
fn several() -> Vec<Plan> {
    let mut plans: Vec<Plan> = Example::ALL.iter().map(|example| example.plan()).collect();
    plans.extend(vec![
        fill_too_low(),
        thin_bottle(),
        pipe_too_thick(),
        giants(),
        // Pipes so thin that boards come down on hardly any solution.
        with(Example::FloatingBoards, |plan| {
            plan.container.pipe = Pick::Known(PipeChoice::Metric50);
        }),
        air(Example::CoveredTank, 24.0, 34.0, 35.0),
        under_lamps(Example::Bucket),
        with(Example::Bucket, |plan| {
            plan.fertilizer.dosing = Pick::Known(Dosing::Salts);
        }),
        with(Example::CoveredTank, |plan| {
            plan.fertilizer.water_kind = Pick::Known(WaterKind::Analysis);
            plan.choose_acid(AcidChoice::Nitric);
        }),
    ]);
    plans
}

#[test]
fn good_practice_stays_quiet() {
    // A ready plan of a tank has cautions to read first; what belongs to every plan comes last.
    for &example in Example::ALL {
        let outcome = solve(&example.plan()).expect("a ready plan");
        let weights: Vec<Weight> = outcome.findings.iter().map(|found| found.weight).collect();
        assert!(weights.is_sorted(), "{weights:?}");
        for finding in &outcome.findings {
            let quiet = matches!(
                finding.fact,
                Fact::FoodContainer
                    | Fact::TankLiner
                    | Fact::CleanHarvest
                    | Fact::SpentSolution { .. }
                    | Fact::DrainInterval { .. }
                    | Fact::RainDilutes
                    | Fact::Spoons { .. }
                    | Fact::AlgaeInClearWall
                    | Fact::AlgaeAtEdges { .. }
            );
            assert_eq!(quiet, finding.weight == Weight::Reminder, "{finding:?}");
        }
    }
}
