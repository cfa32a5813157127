//! A label typed wrongly, in each way that it can be: the answer names the line and the figures
//! that disagree.

use slackwater::catalog::Keyed;
use slackwater::catalog::blends::BlendChoice;
use slackwater::plan::{
    Dosing, Entry, Example, Field, Pick, Plan, Problem, ProblemKind, Rule, StrengthBy,
};
use slackwater::solve;

use crate::seeded::Seeded;

/// Figures of a label go through per cents and fractions and back.
const ROUNDING: f64 = 1e-9;

const FORMS: [Field; 3] = [Field::LabelNitrate, Field::LabelAmmonium, Field::LabelUrea];

fn lines() -> impl Iterator<Item = Field> {
    let of_label = |field: &&Field| field.path().starts_with("fertilizer.label.");
    Field::ALL.iter().filter(of_label).copied()
}

fn write(plan: &mut Plan, field: Field, value: f64) {
    *field.entry_mut(plan).expect("a line of the label") = Entry::Number(value);
}

fn read(plan: &Plan, field: Field) -> f64 {
    match field.entry(plan) {
        Some(Entry::Number(value)) => *value,
        _ => 0.0,
    }
}

/// A plan with a label that holds nothing but these lines.
fn own_label(label: &[(Field, f64)]) -> Plan {
    let mut plan = Example::Bucket.plan();
    plan.fertilizer.dosing = Pick::Known(Dosing::DryBlend);
    plan.fertilizer.blend = Pick::Known(BlendChoice::Own);
    for line in lines() {
        *line.entry_mut(&mut plan).expect("a line of the label") = Entry::blank();
    }
    for &(field, value) in label {
        write(&mut plan, field, value);
    }
    plan
}

fn refused(plan: &Plan) -> Vec<Problem> {
    solve(plan).expect_err("a label that cannot be true")
}

/// As [`conflict`], whatever else is wrong.
fn forms_told(problems: &[Problem], total: f64, forms: f64) {
    let of_forms = |it: &&Problem| it.field == Some(Field::LabelNitrogen);
    let found: Vec<Problem> = problems.iter().filter(of_forms).cloned().collect();
    let (got, limit) = conflict(&found, Field::LabelNitrogen, Rule::NitrogenFormsMakeTotal);
    assert!((got - total).abs() < ROUNDING && (limit - forms).abs() < ROUNDING);
}

/// The only problem: that a field is at odds with others; what it has, and what they allow.
fn conflict(problems: &[Problem], at: Field, by: Rule) -> (f64, f64) {
    match problems {
        [
            Problem {
                field: Some(field),
                kind: ProblemKind::Conflict { got, rule, limit },
            },
        ] if *field == at && *rule == by => (*got, *limit),
        other => panic!("not {by:?} at {at:?}: {other:?}"),
    }
}

#[test]
fn forms_of_nitrogen_that_miss_the_total_are_told_with_both_figures() {
    let mut random = Seeded::new(120);
    let mut told = 0;
    for &blend in BlendChoice::ALL {
        for form in FORMS {
            for _ in 0..20 {
                let mut plan = Example::Bucket.plan();
                plan.choose_blend(blend);
                let wrong = random.between(0.0, 20.0);
                write(&mut plan, form, wrong);
                let forms: f64 = FORMS.iter().map(|&form| read(&plan, form)).sum();
                let total = read(&plan, Field::LabelNitrogen);
                // Half a per cent may be the rounding of a printed grade.
                if (forms - total).abs() <= 0.5 + ROUNDING {
                    assert!(solve(&plan).is_ok(), "{form:?} {wrong}");
                    continue;
                }
                forms_told(&refused(&plan), total, forms);
                told += 1;
            }
        }
    }
    assert!(told > 100, "only {told}");
}

#[test]
fn a_total_typed_wrongly_is_told_with_both_figures_and_a_blank_one_is_not_missed() {
    for &blend in BlendChoice::ALL {
        let mut plan = Example::Bucket.plan();
        plan.choose_blend(blend);
        let forms: f64 = FORMS.iter().map(|&form| read(&plan, form)).sum();
        // Digits swapped, a decimal point lost, another grade's total.
        for total in [forms * 2.5, forms + 1.0, forms - 1.0, 0.0] {
            write(&mut plan, Field::LabelNitrogen, total);
            forms_told(&refused(&plan), total, forms);
        }
        plan.fertilizer.label.nitrogen_pct = Entry::blank();
        assert!(solve(&plan).is_ok(), "{}", blend.key());
    }
}

#[test]
fn a_line_below_nothing_or_above_the_whole_is_named() {
    for line in lines() {
        for wrong in [-0.1, -15.0, 100.1, 1500.0] {
            let mut plan = Example::Bucket.plan();
            write(&mut plan, line, wrong);
            assert_eq!(
                refused(&plan),
                [Problem::at(
                    line,
                    ProblemKind::OutOfRange {
                        got: wrong,
                        low: 0.0,
                        high: 100.0
                    }
                )]
            );
        }
    }
}

#[test]
fn lines_that_together_outweigh_the_bag_are_told_with_the_sum_and_the_limit() {
    // By hand, in g per 100 g: 20 of nitrate nitrogen are 20 × 62.004 / 14.007 = 88.53 of nitrate,
    // 20 of potash are 20 × 0.83015 = 16.60 of potassium: 105.14 against 101 with rounding.
    let plan = own_label(&[
        (Field::LabelNitrogen, 20.0),
        (Field::LabelNitrate, 20.0),
        (Field::LabelPotash, 20.0),
    ]);
    let (got, limit) = conflict(&refused(&plan), Field::Blend, Rule::LabelWithinWhole);
    assert!((got - 105.14).abs() < 0.01, "{got}");
    assert!((limit - 101.0).abs() < ROUNDING, "{limit}");
    // Lines each within the whole, such as the 46 of potash typed into two lines.
    let plan = own_label(&[
        (Field::LabelNitrate, 13.0),
        (Field::LabelPotash, 46.0),
        (Field::LabelPhosphate, 46.0),
    ]);
    let (got, _) = conflict(&refused(&plan), Field::Blend, Rule::LabelWithinWhole);
    assert!(got > 101.0, "{got}");
}

#[test]
fn wrong_lines_are_told_together() {
    let mut plan = Example::Bucket.plan();
    write(&mut plan, Field::LabelIron, -1.0);
    write(&mut plan, Field::LabelPotash, 220.0);
    plan.fertilizer.label.s_pct = Entry::from("4 parts");
    let problems = refused(&plan);
    let named: Vec<Option<Field>> = problems.iter().map(|problem| problem.field).collect();
    let expected = [Field::LabelPotash, Field::LabelSulfur, Field::LabelIron];
    assert_eq!(named, expected.map(Some));
}

#[test]
fn a_blend_must_bring_what_its_strength_is_measured_by() {
    // Monopotassium phosphate has no nitrogen.
    let mut plan = own_label(&[(Field::LabelPhosphate, 52.0), (Field::LabelPotash, 34.0)]);
    plan.fertilizer.strength_by = Pick::Known(StrengthBy::Conductivity);
    assert!(solve(&plan).is_ok());
    plan.fertilizer.strength_by = Pick::Known(StrengthBy::Nitrogen);
    conflict(
        &refused(&plan),
        Field::LabelNitrogen,
        Rule::BlendHasNitrogen,
    );

    // Urea is no ion.
    let mut plan = own_label(&[(Field::LabelNitrogen, 46.0), (Field::LabelUrea, 46.0)]);
    plan.fertilizer.strength_by = Pick::Known(StrengthBy::Nitrogen);
    assert!(solve(&plan).is_ok());
    plan.fertilizer.strength_by = Pick::Known(StrengthBy::Conductivity);
    conflict(&refused(&plan), Field::Blend, Rule::BlendConducts);

    // Beside calcium nitrate either may do.
    plan.fertilizer.dosing = Pick::Known(Dosing::Stocks);
    assert!(solve(&plan).is_ok());
}
