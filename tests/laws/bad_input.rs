//! Every used field of every kind of plan, filled with what does not belong there: the answer names
//! that very field, or one that it is at odds with.
//!
//! Several wrong fields of one plan stand apart.

mod together;

use std::collections::BTreeSet;

use serde_json::Value;
use slackwater::catalog::Keyed;
use slackwater::catalog::climates::ClimateChoice;
use slackwater::plan::{
    AcidChoice, Example, Field, MeasuredPair, Method, Pick, Plan, Problem, ProblemKind, SaltLine,
    Shape, used_fields,
};
use slackwater::solve;

use crate::outcome::assert_presentable;
use crate::plans::{set, shapes, sound_plan};

/// Never right in any field but those of [`may_be_empty`].
const HOPELESS: &[&str] = &[r#""""#, r#""word""#, r#""NaN""#, "NaN", "1e309", "null"];
/// Wrong in most fields.
const DOUBTFUL: &[&str] = &["-1", "0", "1e300", "true", "[]", "{}", "-1e309", r#""-0""#];

/// Fields whose emptiness means something.
fn may_be_empty(field: Field, plan: &Plan) -> bool {
    let path = field.path();
    field.optional()
        || matches!(
            field,
            Field::PipeMaterial | Field::StandsOn | Field::Timber | Field::CoverMaterial
        )
        // A usual value stands in.
        || field.if_unknown(plan).is_some()
        || path.starts_with("fertilizer.label.")
        // What a report of the water leaves out was not found; a pH there is always one.
        || (path.starts_with("fertilizer.water.") && field != Field::WaterPh)
        // Prices are no condition, and a line of the shelf without a salt is none.
        || path.ends_with("price_per_kg")
        || path.starts_with("fertilizer.salts[")
}

/// Which field is blamed when this one is within its limits but at odds with it.
fn at_odds(field: Field) -> &'static [Field] {
    match field {
        // The pot is judged against what it hangs from, and the measure that is easier to change
        // is named.
        Field::CoverThickness => &[Field::PotImmersion],
        // The cover is drawn between the coldest and the warmest hour: the colder one is named.
        Field::TemperatureMax => &[Field::TemperatureMin],
        // A line of the label is at odds with the printed total, or leaves nothing that conducts.
        Field::LabelNitrate | Field::LabelAmmonium | Field::LabelUrea => &[Field::LabelNitrogen],
        Field::LabelPotash | Field::LabelMagnesium | Field::LabelCalcium => &[Field::Blend],
        // Water that brings more than the target.
        Field::RawWaterConductivity => &[Field::TargetConductivity],
        Field::WaterNitrate => &[Field::TargetNitrogen],
        _ => &[],
    }
}

/// A name and what it changes.
type Variant = (&'static str, fn(&mut Plan));

/// One plan for each method and shape, and for each choice that brings other fields into use.
pub fn plans() -> Vec<(String, Plan)> {
    let mut plans: Vec<(String, Plan)> = Example::ALL
        .iter()
        .map(|example| (example.key().to_owned(), example.plan()))
        .collect();
    for &shape in shapes(Method::Bucket) {
        let plan = sound_plan(80, Method::Bucket, shape);
        plans.push((format!("bucket, {}", shape.key()), plan));
    }
    let variants: [Variant; 13] = [
        ("heads every week", |plan| {
            plan.crop.people = 20.0.into();
        }),
        ("lamps", |plan| {
            plan.choose_climate(ClimateChoice::RoomUnderLamps);
        }),
        ("sunshine", |plan| {
            plan.climate.daylight_by = Pick::from_key("sunshine");
        }),
        ("nitrogen", |plan| {
            plan.fertilizer.strength_by = Pick::from_key("nitrogen");
        }),
        ("own pipe", |plan| {
            plan.container.pipe = Pick::from_key("own");
        }),
        ("own fill", |plan| {
            plan.container.fill_depth_cm = 13.0.into();
        }),
        ("tap", |plan| {
            plan.fertilizer.water_kind = Pick::from_key("tap");
        }),
        ("analysis", |plan| {
            plan.fertilizer.water_kind = Pick::from_key("analysis");
        }),
        ("nitrogen above an analysis", |plan| {
            plan.fertilizer.water_kind = Pick::from_key("analysis");
            plan.fertilizer.strength_by = Pick::from_key("nitrogen");
        }),
        ("nitric acid", |plan| {
            plan.fertilizer.water_kind = Pick::from_key("analysis");
            plan.choose_acid(AcidChoice::Nitric);
        }),
        ("citric acid", |plan| {
            plan.fertilizer.water_kind = Pick::from_key("tap");
            plan.choose_acid(AcidChoice::Citric);
        }),
        ("bench", |plan| {
            plan.build.stands_on = Pick::from_key("bench");
        }),
        ("salts", |plan| {
            plan.fertilizer.dosing = Pick::from_key("salts");
            plan.fertilizer.salts.truncate(6);
            plan.fertilizer.salts.push(SaltLine {
                salt: Pick::from_key("Mg(NO3)2.6H2O"),
                purity_pct: 98.0.into(),
                price_per_kg: 2.0.into(),
            });
        }),
    ];
    for (name, change) in variants {
        let mut plan = Example::FloatingBoards.plan();
        change(&mut plan);
        assert!(solve(&plan).is_ok(), "{name}");
        plans.push((name.to_owned(), plan));
    }
    plans
}

/// The document of a plan with raw JSON in place of one field's value.
fn with_raw(plan: &Plan, fields: &[Field], raw: &str) -> String {
    const MARK: &str = "@ here @";
    let mut document = serde_json::to_value(plan).expect("plans serialise");
    for field in fields {
        let pointer = format!("/{}", field.path().replace('.', "/"))
            .replace('[', "/")
            .replace(']', "");
        let slot = document.pointer_mut(&pointer).expect("a saved field");
        *slot = Value::from(MARK);
    }
    document.to_string().replace(&format!("\"{MARK}\""), raw)
}

/// Answers a document, as the command does.
fn answer(document: &str) -> Result<(), Vec<Problem>> {
    let outcome = Plan::from_json(document).and_then(|plan| solve(&plan))?;
    assert_presentable(&outcome);
    Ok(())
}

fn named(problems: &[Problem]) -> BTreeSet<Field> {
    problems
        .iter()
        .filter_map(|problem| problem.field)
        .collect()
}

/// The used fields that hold one value.
fn used(plan: &Plan) -> Vec<Field> {
    used_fields(plan)
        .into_iter()
        .filter(|field| !matches!(field, Field::Measured | Field::Salts))
        .collect()
}

#[test]
fn the_plans_reach_every_field() {
    let reached: BTreeSet<Field> = plans().iter().flat_map(|(_, plan)| used(plan)).collect();
    for field in Field::ALL {
        assert!(reached.contains(field), "{field:?} is never used");
    }
}

#[test]
fn a_hopeless_value_always_names_its_field() {
    for (name, plan) in plans() {
        for field in used(&plan) {
            for raw in HOPELESS {
                let empty = matches!(*raw, r#""""# | "null");
                let answer = answer(&with_raw(&plan, &[field], raw));
                // Sodium and nitrogen make a formula.
                let formula = raw.contains("NaN") && matches!(field, Field::SaltChoice(_));
                if formula || empty && may_be_empty(field, &plan) {
                    // Allowed; the label may then no longer add up.
                    match answer {
                        // What stands in may be at odds with another field, as if it were typed.
                        Err(problems) if field.if_unknown(&plan).is_some() => {
                            let mut typed = plan.clone();
                            let usual = field.if_unknown(&plan).expect("it stands in");
                            set(&mut typed, field, usual);
                            assert_eq!(
                                solve(&typed).expect_err("the same as typed"),
                                problems,
                                "{name}: {field:?}"
                            );
                        }
                        Err(problems) => assert_blames(&name, field, raw, &problems),
                        Ok(()) => {}
                    }
                    continue;
                }
                let problems = answer.expect_err(&format!("{name}: {field:?} = {raw}"));
                assert!(
                    named(&problems).contains(&field),
                    "{name}: {field:?} = {raw}: {problems:?}"
                );
                assert_blames(&name, field, raw, &problems);
            }
        }
    }
}

#[test]
fn a_doubtful_value_is_accepted_or_named() {
    let mut refused = 0;
    for (name, plan) in plans() {
        for field in used(&plan) {
            for raw in DOUBTFUL {
                if let Err(problems) = answer(&with_raw(&plan, &[field], raw)) {
                    refused += 1;
                    assert_blames(&name, field, raw, &problems);
                }
            }
        }
    }
    assert!(refused > 1000, "only {refused}");
}

/// The problems name the field itself or one at odds with it, and no other.
fn assert_blames(name: &str, field: Field, raw: &str, problems: &[Problem]) {
    assert!(!problems.is_empty());
    for problem in problems {
        let blamed = problem
            .field
            .unwrap_or_else(|| panic!("{name}: {field:?} = {raw}: no field named in {problem:?}"));
        assert!(
            blamed == field || at_odds(field).contains(&blamed),
            "{name}: {field:?} = {raw}: blamed on {problem:?}"
        );
    }
}

#[test]
fn too_few_readings_are_a_problem_of_the_readings() {
    let mut plan = sound_plan(82, Method::Bucket, Shape::Measured);
    plan.container.measured.truncate(2);
    let problems = solve(&plan).expect_err("two readings");
    assert_eq!(named(&problems), BTreeSet::from([Field::Measured]));
    assert!(used_fields(&plan).contains(&Field::Measured));
    // A line left empty counts as no reading; half a line is a slip.
    plan.container.measured.push(MeasuredPair::default());
    assert!(named(&solve(&plan).expect_err("still two")).contains(&Field::Measured));
    plan.container.measured[2].volume_l = 9000.0.into();
    let problems = solve(&plan).expect_err("half a reading");
    assert_eq!(named(&problems), BTreeSet::from([Field::MeasuredDepth(2)]));
}

#[test]
fn a_shelf_without_salts_is_a_problem_of_the_shelf() {
    let mut plan = Example::Bucket.plan();
    plan.fertilizer.dosing = Pick::from_key("salts");
    assert!(solve(&plan).is_ok());
    // Lines left empty count as none.
    for lines in [vec![], vec![SaltLine::default(), SaltLine::default()]] {
        plan.fertilizer.salts = lines;
        let problems = solve(&plan).expect_err("no salts");
        assert_eq!(problems, [Problem::at(Field::Salts, ProblemKind::Missing)]);
    }
    assert!(used_fields(&plan).contains(&Field::Salts));
}

#[test]
fn a_choice_that_is_none_says_what_stands_there_and_what_may() {
    for (name, plan) in plans() {
        for field in used(&plan) {
            if field.limits().is_some() {
                continue;
            }
            for (raw, stands) in [("-1", "-1"), ("true", "true"), ("\"word\"", "word")] {
                let problems = answer(&with_raw(&plan, &[field], raw)).expect_err(&name);
                let told = problems.iter().any(|problem| match &problem.kind {
                    ProblemKind::NotAChoice { got, allowed } => {
                        problem.field == Some(field) && got == stands && allowed.len() > 1
                    }
                    // Any formula will do, so there is no list to name.
                    ProblemKind::NotAFormula { got } => {
                        problem.field == Some(field)
                            && got == stands
                            && matches!(field, Field::SaltChoice(_))
                    }
                    _ => false,
                });
                assert!(told, "{name}: {field:?} = {raw}: {problems:?}");
            }
        }
    }
}
