//! Documents that are no plans: one problem each, never a panic.

use slackwater::plan::{Example, Plan, Problem, ProblemKind, VERSION};
use slackwater::solve;

use crate::seeded::Seeded;

fn refused(text: &str) -> Vec<Problem> {
    Plan::from_json(text)
        .and_then(|plan| solve(&plan))
        .expect_err("no plan")
}

#[test]
fn what_is_no_object_is_no_plan() {
    for text in [
        "", " ", "[]", "null", "1", "true", "\"plan\"", "{", "NaN", "[NaN", "\"", "\\",
    ] {
        let problems = refused(text);
        assert_eq!(problems.len(), 1, "{text}: {problems:?}");
        assert_eq!(problems[0].field, None);
        let not_a_plan = matches!(problems[0].kind, ProblemKind::NotAPlan { .. });
        assert!(not_a_plan, "{text}: {problems:?}");
    }
}

#[test]
fn an_empty_object_is_a_plan_with_everything_missing() {
    let problems = refused("{}");
    assert!(problems.len() > 10);
    for problem in problems {
        assert!(problem.field.is_some());
        assert_eq!(problem.kind, ProblemKind::Missing);
    }
}

#[test]
fn a_plan_of_a_later_version_says_so() {
    let mut plan = Example::Bucket.plan();
    plan.version = 99;
    let problems = refused(&plan.to_json());
    assert_eq!(
        problems[0].kind,
        ProblemKind::NewerVersion {
            got: 99,
            supported: VERSION
        }
    );
}

#[test]
fn a_plan_cut_off_anywhere_is_refused() {
    let json = Example::FloatingBoards.plan().to_json();
    for length in 0..json.len() - 1 {
        if let Some(part) = json.get(..length) {
            assert!(Plan::from_json(part).is_err(), "{length}");
        }
    }
}

#[test]
fn a_damaged_plan_never_panics() {
    let whole = Example::CoveredTank.plan().to_json().into_bytes();
    let mut random = Seeded::new(90);
    let mut read = 0;
    for _ in 0..3000 {
        let mut bytes = whole.clone();
        for _ in 0..random.whole(1, 6) {
            let at = random.index(bytes.len());
            match random.index(3) {
                0 => bytes[at] = random.bits().to_le_bytes()[0],
                1 => {
                    bytes.remove(at);
                }
                _ => bytes.insert(at, random.bits().to_le_bytes()[0]),
            }
        }
        let text = String::from_utf8_lossy(&bytes);
        if let Ok(plan) = Plan::from_json(&text) {
            read += 1;
            if let Ok(outcome) = solve(&plan) {
                crate::outcome::assert_presentable(&outcome);
            }
        }
    }
    assert!(read > 300, "only {read} could be read at all");
}

#[test]
fn deep_and_long_documents_end_quickly() {
    for piece in ["[", "{\"a\":", "\"", "\\", "NaN", "{\"crop\":{\"date\":["] {
        let text = piece.repeat(10_000_000 / piece.len());
        let problems = refused(&text);
        assert!(matches!(problems[0].kind, ProblemKind::NotAPlan { .. }));
    }
}
