//! Laws of what is built and mixed: every mend mends, nothing smaller does, and each verdict is monotone in what
//! it judges.

use slackwater::advice::{Change, Fact, Finding, StructureFact, Weight};
use slackwater::catalog::shelters::Shelter;
use slackwater::plan::{Entry, Example, Field, Pick, Plan, WaterKind};
use slackwater::{Outcome, solve};

use crate::plans::{for_sound_plans, get, set};

/// The name of what a finding judges, as in JSON.
fn kind(finding: &Finding) -> String {
    let json = serde_json::to_value(finding).expect("findings serialise");
    json["fact"].as_str().expect("a name").to_owned()
}

fn with(plan: &Plan, mend: &Change) -> Plan {
    let mut mended = plan.clone();
    mend.apply(&mut mended);
    assert_ne!(&mended, plan, "{mend:?} changes nothing");
    mended
}

/// Whether a plan still has this finding as a stop or caution.
fn still(outcome: &Outcome, kind_of: &str) -> bool {
    outcome
        .findings
        .iter()
        .any(|finding| finding.weight != Weight::Sound && kind(finding) == kind_of)
}

/// The step in which a field is mended.
fn step(field: Field) -> f64 {
    match field {
        Field::PipeSpacing
        | Field::BraceSpacing
        | Field::PipeCount
        | Field::PropRows
        | Field::BoardCount
        | Field::BoardWidth
        | Field::SheetLength
        | Field::SheetWidth
        | Field::PlantsPerContainer => 1.0,
        Field::RainShare => 5.0,
        _ => 0.1,
    }
}

/// Plans whose solution fails: too strong in the end at any start or at this one, too alkaline, cloudy,
/// of bad water.
fn badly_mixed() -> [Plan; 5] {
    let mut crowded = Example::Bucket.plan();
    crowded.choose_shelter(Shelter::Porch);
    set(&mut crowded, Field::LightThrough, 33.0);
    let mut strong = Example::Bucket.plan();
    set(&mut strong, Field::TargetConductivity, 2.5);
    let mut rainier = Example::Bucket.plan();
    set(&mut rainier, Field::RainShare, 32.0);
    let mut hard = Example::Bottle.plan();
    hard.fertilizer.water_kind = Pick::Known(WaterKind::Analysis);
    set(&mut hard, Field::WaterCalcium, 180.0);
    set(&mut hard, Field::WaterAlkalinity, 400.0);
    let mut salty = hard.clone();
    set(&mut salty, Field::WaterSodium, 190.0);
    set(&mut salty, Field::WaterChloride, 280.0);
    set(&mut salty, Field::TargetConductivity, 2.4);
    [crowded, strong, rainier, hard, salty]
}

#[test]
fn a_crowded_bucket_gives_up_a_plant_and_hard_water_takes_rain() {
    let [crowded, strong, rainier, hard, salty] = badly_mixed();
    for (plan, wanted) in [
        (&crowded, ("strong_at_end", Field::PlantsPerContainer)),
        (&crowded, ("fitting_strength", Field::PlantsPerContainer)),
        (&crowded, ("ph", Field::RainShare)),
        (&strong, ("strong_at_end", Field::TargetConductivity)),
        (&rainier, ("ph", Field::RainShare)),
        (&hard, ("ph", Field::RainShare)),
        (&salty, ("dilute_water", Field::RainShare)),
    ] {
        let outcome = solve(plan).unwrap_or_else(|problems| panic!("{problems:?}"));
        let mended = outcome
            .findings
            .iter()
            .find(|finding| kind(finding) == wanted.0)
            .unwrap_or_else(|| panic!("no {}", wanted.0));
        assert!(
            mended.mends.iter().any(|mend| mend.field == wanted.1),
            "{mended:?}"
        );
    }
}

/// Plans that fail in many ways, by what was changed in an example.
fn failing() -> Vec<Plan> {
    let change = |example: Example, fields: &[(Field, f64)]| {
        let mut plan = example.plan();
        for &(field, value) in fields {
            set(&mut plan, field, value);
        }
        plan
    };
    let boards = |fields: &[(Field, f64)]| change(Example::FloatingBoards, fields);
    let cover = |fields: &[(Field, f64)]| change(Example::CoveredTank, fields);
    let mut plans = vec![
        boards(&[(Field::PipeSpacing, 100.0)]),
        boards(&[(Field::PipeSpacing, 20.0)]),
        boards(&[(Field::PipeCount, 1.0)]),
        boards(&[(Field::FloorDrop, 4.0)]),
        boards(&[(Field::BoardCount, 10.0)]),
        boards(&[(Field::Width, 122.2)]),
        boards(&[(Field::Length, 732.2)]),
        boards(&[(Field::FillDepth, 8.0)]),
        boards(&[(Field::BraceSpacing, 700.0)]),
        boards(&[(Field::EdgeDistance, 3.0)]),
        boards(&[(Field::SheetLength, 100.0), (Field::SheetWidth, 50.0)]),
        boards(&[(Field::BoardThickness, 0.5), (Field::PipeSpacing, 90.0)]),
        // So narrow that grown heads turn them over.
        boards(&[
            (Field::BoardWidth, 10.0),
            (Field::BoardCount, 20.0),
            (Field::SpacingAcross, 10.0),
            (Field::TargetHead, 600.0),
        ]),
        cover(&[(Field::PropRows, 0.0)]),
        cover(&[(Field::FloorDrop, 1.4)]),
        cover(&[(Field::SheetLength, 110.0)]),
    ];
    plans.extend(badly_mixed());
    let mut capped = Example::FloatingBoards.plan();
    capped.container.pipe_ends = Pick::from_key("capped");
    capped.container.foam = Pick::from_key("expanded_i");
    plans.push(capped);
    for place in ["bench", "upper_floor", "balcony_or_roof"] {
        let mut plan = Example::CoveredTank.plan();
        plan.build.stands_on = Pick::from_key(place);
        plans.push(plan);
    }
    let mut fabric = Example::CoveredTank.plan();
    fabric.build.cover = Pick::from_key("fabric");
    plans.push(fabric);
    plans
}

/// Checks every mend of a plan; how many there were.
fn mends_mend(plan: &Plan, outcome: &Outcome) -> usize {
    let mut tried = 0;
    for finding in &outcome.findings {
        let kind = kind(finding);
        for mend in &finding.mends {
            tried += 1;
            let mended = solve(&with(plan, mend))
                .unwrap_or_else(|problems| panic!("{kind}: {mend:?}: {problems:?}"));
            assert!(!still(&mended, &kind), "{kind}: {mend:?} mends nothing");
        }
    }
    tried
}

#[test]
fn each_mend_of_a_failing_plan_mends_and_nothing_smaller_does() {
    let mut tried = 0;
    for plan in failing() {
        let outcome = solve(&plan).unwrap_or_else(|problems| panic!("{problems:?}"));
        tried += mends_mend(&plan, &outcome);
        for finding in &outcome.findings {
            for mend in &finding.mends {
                let (Entry::Number(value), Some(Entry::Number(now))) =
                    (&mend.value, mend.field.entry(&plan))
                else {
                    continue;
                };
                let back = step(mend.field) * (now - value).signum();
                let smaller = value + back;
                // No smaller change than none at all.
                if (smaller - now) * back >= -1e-9 {
                    continue;
                }
                let less = Change {
                    field: mend.field,
                    value: Entry::Number(smaller),
                    unit: None,
                };
                if let Ok(outcome) = solve(&with(&plan, &less)) {
                    assert!(
                        still(&outcome, &kind(finding)),
                        "{}: {less:?} mends before {mend:?}",
                        kind(finding)
                    );
                }
            }
        }
    }
    assert!(tried >= 30, "only {tried} mends");
}

#[test]
fn each_mend_of_any_sound_plan_mends() {
    for_sound_plans(90, |plan, outcome| {
        mends_mend(plan, outcome);
    });
}

/// Once a verdict fails along a rising or falling field, it fails for good.
fn monotone(example: Example, field: Field, values: &[f64], of: fn(&StructureFact) -> bool) {
    let mut failed = false;
    let mut sound = false;
    for &value in values {
        let mut plan = example.plan();
        set(&mut plan, field, value);
        let Ok(outcome) = solve(&plan) else { continue };
        let fails = outcome.findings.iter().any(|finding| {
            finding.weight != Weight::Sound
                && matches!(&finding.fact, Fact::Structure(fact) if of(fact))
        });
        assert!(fails || !failed, "{field:?} = {value} passes again");
        failed |= fails;
        sound |= !fails;
    }
    assert!(failed && sound, "{field:?}: a verdict that never changes");
}

#[test]
fn verdicts_are_monotone() {
    use StructureFact::{BoardSag, CoverSag, FloorLevel, Sides};
    monotone(
        Example::FloatingBoards,
        Field::FloorDrop,
        &[0.0, 0.5, 0.9, 1.0, 1.1, 2.0, 9.0],
        |fact| matches!(fact, FloorLevel { .. }),
    );
    monotone(
        Example::FloatingBoards,
        Field::BoardThickness,
        &[4.5, 4.0, 3.5, 3.0, 2.5, 2.0, 1.5, 1.0, 0.5],
        |fact| matches!(fact, BoardSag { .. }),
    );
    monotone(
        Example::FloatingBoards,
        Field::BraceSpacing,
        &[30.0, 60.0, 120.0, 240.0, 360.0, 500.0, 1000.0],
        |fact| matches!(fact, Sides { .. }),
    );
    monotone(
        Example::CoveredTank,
        Field::PropRows,
        &[6.0, 4.0, 3.0, 2.0, 1.0, 0.0],
        |fact| matches!(fact, CoverSag { .. }),
    );
}

#[test]
fn sag_falls_with_thickness_and_rises_with_the_heads() {
    let sag = |thickness: f64, head: f64| {
        let mut plan = Example::FloatingBoards.plan();
        set(&mut plan, Field::BoardThickness, thickness);
        set(&mut plan, Field::TargetHead, head);
        let outcome = solve(&plan).expect("sound");
        outcome
            .boards
            .expect("boards")
            .structure
            .sag_mm
            .expect("two pipes")
    };
    assert!(sag(2.0, 200.0) > sag(2.5, 200.0));
    assert!(sag(2.5, 200.0) > sag(3.0, 200.0));
    assert!(sag(2.5, 250.0) > sag(2.5, 200.0));
}

#[test]
fn a_place_that_is_not_rated_is_a_stop_and_a_rating_is_kept_to() {
    let weighed = |place: &str, rating: Option<f64>| {
        let mut plan = Example::CoveredTank.plan();
        plan.build.stands_on = Pick::from_key(place);
        if let Some(rating) = rating {
            set(&mut plan, Field::SupportRating, rating);
        }
        let outcome = solve(&plan).expect("sound");
        let load = outcome.build.as_ref().expect("a tank").load_kg_per_m2;
        (load, still(&outcome, "do_not_build_there"))
    };
    assert!(!weighed("ground", None).1);
    assert!(weighed("bench", None).1);
    assert!(weighed("upper_floor", None).1);
    let (load, _) = weighed("bench", None);
    assert!(weighed("bench", Some(load - 1.0)).1);
    assert!(!weighed("bench", Some(load + 1.0)).1);
    // Whatever it is rated for.
    assert!(weighed("balcony_or_roof", Some(20_000.0)).1);
}

#[test]
fn a_plan_without_the_fields_of_the_build_still_reads() {
    for example in [Example::CoveredTank, Example::FloatingBoards] {
        let mut json = serde_json::to_value(example.plan()).expect("plans serialise");
        let members = json.as_object_mut().expect("an object");
        members.remove("build").expect("the build");
        let container = members["container"].as_object_mut().expect("an object");
        container.remove("pipe_spacing_cm").expect("the spacing");
        container.remove("pipe_material").expect("the material");
        let old = Plan::from_json(&json.to_string()).expect("an old document");
        let outcome = solve(&old).expect("as sound as it was");
        assert!(outcome.build.is_some());
        // What the solution does is not touched by what holds it.
        let now = solve(&example.plan()).expect("sound");
        assert!((outcome.fill.volume_l - now.fill.volume_l).abs() < 1e-9);
    }
}

#[test]
fn the_layout_holds_the_plants_of_the_plan() {
    for_sound_plans(91, |plan, outcome| {
        let Some(layout) = &outcome.layout else {
            return;
        };
        let on_board = outcome.fill.plants_per_board.unwrap_or(outcome.fill.plants);
        assert_eq!(layout.holes.len(), on_board as usize);
        for board in &layout.boards {
            assert!(board.x_mm + board.length_mm <= 10.0 * get(plan, Field::Length) + 1e-6);
            assert!(board.y_mm + board.width_mm <= 10.0 * get(plan, Field::Width) + 1e-6);
        }
        let sheets: f64 = layout
            .pieces
            .iter()
            .chain(&layout.offcuts)
            .map(|piece| piece.length_mm * piece.width_mm)
            .sum();
        // Every sheet is told up to two hundred, and nothing of it is lost.
        if layout.sheets <= 200 {
            let all = f64::from(layout.sheets) * layout.sheet_mm.0 * layout.sheet_mm.1;
            assert!(
                (sheets - all).abs() <= 1e-6 * all.max(1.0),
                "{sheets} of {all}"
            );
        }
    });
}
