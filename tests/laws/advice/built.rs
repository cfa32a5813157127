//! Each verdict on what is built: a plan that fails it, and one that passes.

use std::collections::BTreeSet;

use slackwater::advice::Weight;
use slackwater::plan::{Example, Field, Pick, Plan};
use slackwater::solve;

use super::{BUILT, name, said, with};
use crate::plans::set;

/// An example with figures changed.
fn changed(example: Example, fields: &[(Field, f64)]) -> Plan {
    with(example, |plan| {
        for &(field, value) in fields {
            set(plan, field, value);
        }
    })
}

/// Each verdict on what is built: a plan in which it is said, or fails where it is said of every
/// such plan, and one in which it is not said, or passes.
#[test]
#[expect(clippy::too_many_lines, reason = "two rows a verdict")]
fn verdicts_on_what_is_built_appear_where_they_apply_and_nowhere_else() {
    let boards = |fields: &[(Field, f64)]| changed(Example::FloatingBoards, fields);
    let cover = |fields: &[(Field, f64)]| changed(Example::CoveredTank, fields);
    let standing = |place: &str| {
        with(Example::CoveredTank, |plan| {
            plan.build.stands_on = Pick::from_key(place);
        })
    };
    let foam = |key: &str| {
        with(Example::FloatingBoards, |plan| {
            plan.container.foam = Pick::from_key(key);
        })
    };
    let ends = |key: &str| {
        with(Example::FloatingBoards, |plan| {
            plan.container.pipe_ends = Pick::from_key(key);
        })
    };
    let covered = |key: &str| {
        with(Example::CoveredTank, |plan| {
            plan.build.cover = Pick::from_key(key);
        })
    };
    let rows: Vec<(&str, Plan, Plan)> = vec![
        (
            "TooFewPipes",
            boards(&[(Field::PipeCount, 1.0)]),
            boards(&[]),
        ),
        (
            "BoardSag",
            boards(&[(Field::BoardThickness, 1.5)]),
            boards(&[(Field::PipeSpacing, 68.0)]),
        ),
        (
            "ClearGap",
            boards(&[(Field::FloorDrop, 12.0)]),
            boards(&[(Field::FloorDrop, 0.0)]),
        ),
        ("TurnsOver", narrow_boards(), boards(&[])),
        (
            "EdgeDip",
            boards(&[(Field::TargetHead, 900.0)]),
            boards(&[(Field::TargetHead, 60.0)]),
        ),
        (
            "Jam",
            boards(&[(Field::Width, 122.2)]),
            boards(&[(Field::Width, 123.0)]),
        ),
        (
            "OpenStrips",
            boards(&[(Field::BoardCount, 10.0)]),
            boards(&[(Field::Length, 734.0)]),
        ),
        (
            "BoardsWithoutPlace",
            boards(&[(Field::BoardLength, 123.0), (Field::BoardWidth, 62.0)]),
            boards(&[]),
        ),
        ("PipesLift", ends("capped"), ends("open")),
        ("WaterUptake", foam("expanded_i"), foam("extruded_iv")),
        (
            "HolesWeaken",
            boards(&[(Field::EdgeDistance, 3.0)]),
            boards(&[]),
        ),
        (
            "SheetTooSmall",
            boards(&[(Field::SheetLength, 60.0)]),
            boards(&[]),
        ),
        (
            "CoverSag",
            cover(&[(Field::PropRows, 0.0)]),
            cover(&[(Field::PropRows, 4.0)]),
        ),
        ("CoverLight", covered("fabric"), covered("plywood")),
        (
            "FloorLevel",
            boards(&[(Field::FloorDrop, 1.1)]),
            boards(&[(Field::FloorDrop, 1.0)]),
        ),
        (
            "Sides",
            boards(&[(Field::BraceSpacing, 700.0)]),
            boards(&[]),
        ),
        (
            "AskCompetentPerson",
            cover(&[(Field::Height, 60.0)]),
            cover(&[]),
        ),
        (
            "DoNotBuildThere",
            standing("balcony_or_roof"),
            standing("ground"),
        ),
    ];
    let fails = |plan: &Plan, fact: &str| {
        let outcome = solve(plan).unwrap_or_else(|problems| panic!("{fact}: {problems:?}"));
        outcome
            .findings
            .iter()
            .any(|finding| finding.weight < Weight::Sound && name(&finding.fact) == fact)
    };
    let wrong: Vec<&str> = rows
        .iter()
        .filter(|(fact, there, elsewhere)| !fails(there, fact) || fails(elsewhere, fact))
        .map(|(fact, ..)| *fact)
        .collect();
    assert!(wrong.is_empty(), "{wrong:?}");
    let met: BTreeSet<&str> = rows.iter().map(|(fact, ..)| *fact).collect();
    let unmet: Vec<_> = BUILT.iter().filter(|fact| !met.contains(*fact)).collect();
    assert!(unmet.is_empty(), "{unmet:?}");
    // Nobody builds a bottle or a bucket.
    for example in [Example::Bottle, Example::Bucket] {
        let said = said(&example.plan());
        assert!(!BUILT.iter().any(|fact| said.contains(fact)), "{said:?}");
    }
}

/// One row of plants on boards so narrow that grown heads turn them over.
pub(super) fn narrow_boards() -> Plan {
    changed(
        Example::FloatingBoards,
        &[
            (Field::BoardLength, 122.0),
            (Field::BoardWidth, 10.0),
            (Field::BoardCount, 20.0),
            (Field::SpacingAcross, 10.0),
            (Field::TargetHead, 600.0),
        ],
    )
}
