//! Laws of the roots, and plans that fail on purpose with what mends them.

use std::cell::Cell;

use slackwater::advice::{Fact, MendWay, RootsFailureKind, Weight};
use slackwater::catalog::Keyed;
use slackwater::catalog::pipes::PipeChoice;
use slackwater::plan::{Entry, Example, Field, Method, Pick, Plan};
use slackwater::{Outcome, solve};

use crate::plans::{for_sound_plans, set, show_when_it_fails};

/// A level found to a nanometre, cm.
const LEVEL_CM: f64 = 1e-6;

/// Fails on purpose: the bottle is filled so low that the pot loses the solution within days.
pub fn fill_too_low() -> Plan {
    let mut plan = Example::Bottle.plan();
    set(&mut plan, Field::FillDepth, 20.0);
    plan
}

/// Fails on purpose: pots too short to reach the fill mark.
pub fn pot_too_short() -> Plan {
    let mut plan = Example::CoveredTank.plan();
    set(&mut plan, Field::PotHeight, 4.0);
    set(&mut plan, Field::FillDepth, 11.0);
    plan
}

/// Fails on purpose: boards that rest on a thick pipe while the level falls away.
pub fn pipe_too_thick() -> Plan {
    let mut plan = Example::FloatingBoards.plan();
    plan.container.pipe = Pick::Known(PipeChoice::Metric160);
    set(&mut plan, Field::FillDepth, 13.5);
    plan
}

/// A bottle so thin that its level outruns the roots; nothing but another container helps.
pub fn thin_bottle() -> Plan {
    let mut plan = Example::Bottle.plan();
    set(&mut plan, Field::Diameter, 10.0);
    plan
}

fn solved(plan: &Plan) -> Outcome {
    solve(plan).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn stops(outcome: &Outcome) -> Vec<std::mem::Discriminant<Fact>> {
    outcome
        .findings
        .iter()
        .filter(|finding| finding.weight == Weight::Stop)
        .map(|finding| std::mem::discriminant(&finding.fact))
        .collect()
}

/// Every mend of a plan that fails makes the failure disappear and brings no other; the number of
/// mends is given back.
fn mended(plan: &Plan, outcome: &Outcome) -> usize {
    let Some(failure) = &outcome.roots.failure else {
        return 0;
    };
    let before = stops(outcome);
    for mend in &failure.mends {
        let mut changed = plan.clone();
        mend.apply(&mut changed);
        assert_ne!(&changed, plan, "{mend:?}");
        let after = solved(&changed);
        assert_eq!(after.roots.failure, None, "{mend:?}");
        let fresh = after.findings.iter().filter(|finding| {
            finding.weight == Weight::Stop
                && !before.contains(&std::mem::discriminant(&finding.fact))
                // A charge that now lasts may show that the heads stay small.
                && !matches!(finding.fact, Fact::NotReached { .. })
        });
        assert_eq!(fresh.count(), 0, "{mend:?} {:?}", after.findings);
        // The entries that are printed are the change.
        for change in &mend.changes {
            if let Some(entry) = change.field.entry(&changed) {
                assert_eq!(entry, &change.value);
            } else {
                assert_eq!(change.field, Field::Pipe);
                let MendWay::Pipe { size, .. } = mend.way else {
                    panic!("{mend:?}");
                };
                assert_eq!(change.value, size.key().into());
            }
        }
    }
    failure.mends.len()
}

/// A pot falls through no hole, and fits into it.
#[test]
fn the_holes_of_a_cover_hold_their_pots() {
    let holes = Cell::new(0);
    for_sound_plans(123, |plan, outcome| {
        let method = plan.container.method.known();
        let covered = matches!(method, Some(Method::Bucket | Method::CoveredTank));
        assert_eq!(outcome.fill.cover_hole_cm.is_some(), covered);
        let Some(hole) = outcome.fill.cover_hole_cm else {
            return;
        };
        let measure = |field: Field| match field.entry(plan) {
            Some(Entry::Number(cm)) => *cm,
            _ => field.if_unknown(plan).expect("a small pot stands in"),
        };
        // Through the metre and back.
        let pot = measure(Field::PotTopDiameter);
        assert!((hole - pot).abs() <= 1e-9 * pot, "{hole} {pot}");
        assert!(hole < measure(Field::PotFlangeDiameter));
        holes.set(holes.get() + 1);
    });
    assert!(holes.get() > 40, "only {} covers", holes.get());
}

#[test]
fn plans_that_fail_on_purpose_name_day_reason_and_mend() {
    type Way = fn(&MendWay) -> bool;
    let rows: [(Plan, u32, Way); 3] = [
        (fill_too_low(), 1, |way| {
            matches!(way, MendWay::FillDepth { .. })
        }),
        (pot_too_short(), 0, |way| {
            matches!(way, MendWay::PotHeight { .. })
        }),
        (
            pipe_too_thick(),
            1,
            |way| matches!(way, MendWay::Pipe { to_mm, from_mm, .. } if to_mm < from_mm),
        ),
    ];
    for (plan, day, way) in rows {
        let outcome = solved(&plan);
        let failure = outcome.roots.failure.as_ref().expect("it fails on purpose");
        assert_eq!(failure.kind, RootsFailureKind::ContactLost);
        assert_eq!(failure.day, day, "{failure:?}");
        assert!(failure.short_cm > 0.0);
        assert!(
            failure.mends.iter().any(|mend| way(&mend.way)),
            "{failure:?}"
        );
        assert!(mended(&plan, &outcome) >= 1);
    }
    let failure = solved(&thin_bottle()).roots.failure.expect("too thin");
    assert_eq!(failure.kind, RootsFailureKind::RootsHang);
}

#[test]
fn a_mend_of_a_length_is_the_smallest() {
    for plan in [fill_too_low(), pot_too_short()] {
        let failure = solved(&plan).roots.failure.expect("it fails");
        for mend in &failure.mends {
            let (field, to_cm) = match mend.way {
                MendWay::FillDepth { to_cm, .. } => (Field::FillDepth, to_cm),
                MendWay::PotHeight { to_cm, .. } => (Field::PotHeight, to_cm),
                MendWay::Pipe { .. } => continue,
            };
            let mut less = plan.clone();
            mend.apply(&mut less);
            // A millimetre less, and no more than a hair beyond.
            set(&mut less, field, to_cm - 0.101);
            assert!(solved(&less).roots.failure.is_some(), "{mend:?}");
        }
    }
}

#[test]
fn whatever_fails_is_mended_by_every_mend_that_is_named() {
    let count = std::cell::Cell::new(0);
    for seed in [41, 42] {
        for_sound_plans(seed, |plan, outcome| {
            count.set(count.get() + mended(plan, outcome));
        });
    }
    assert!(count.get() >= 10, "only {} mends", count.get());
}

#[test]
fn each_day_of_the_roots_agrees_with_the_season_and_the_section() {
    for_sound_plans(43, |_, outcome| {
        let roots = &outcome.roots.days;
        assert_eq!(roots.len(), outcome.season.days.len());
        assert_eq!(roots.len(), outcome.section.days.len());
        let mut never_above = f64::INFINITY;
        let mut fails = None;
        for ((root, day), moment) in roots
            .iter()
            .zip(&outcome.season.days)
            .zip(&outcome.section.days)
        {
            assert_eq!(root.day, day.day);
            // In the solution or above it, never both.
            if day.volume_l > 0.0 && day.level_cm > 0.0 {
                assert_eq!(root.contact, moment.level_mm >= moment.foot_mm);
                assert_eq!(root.air_roots_top_cm.is_some(), root.air_roots_cm > 0.0);
                if root.contact {
                    assert!(root.air_roots_cm <= LEVEL_CM, "{root:?}");
                } else if !root.reached {
                    fails = fails.or(Some(root.day));
                }
            }
            if root.reached {
                assert!(root.tip_cm <= day.level_cm + LEVEL_CM);
            }
            if let Some(limit) = root.never_above_cm {
                assert!(limit <= never_above);
                assert!(limit <= day.level_cm + LEVEL_CM);
                never_above = limit;
            }
            assert_eq!(moment.contact, root.contact);
            assert_eq!(moment.reached, root.reached);
            assert!((moment.tip_mm - 10.0 * root.tip_cm).abs() < LEVEL_CM);
        }
        let failure = outcome.roots.failure.as_ref();
        assert_eq!(failure.map(|failure| failure.day), fails);
    });
}

#[test]
fn warmer_solution_holds_less_oxygen() {
    for &example in Example::ALL {
        let mut before = f64::INFINITY;
        for mean in [8.0, 14.0, 20.0, 26.0, 32.0] {
            let mut plan = example.plan();
            set(&mut plan, Field::TemperatureMin, mean - 3.0);
            set(&mut plan, Field::TemperatureMax, mean + 3.0);
            let oxygen = solved(&plan).roots.oxygen_mg_per_l;
            show_when_it_fails(&plan, || assert!(oxygen < before));
            before = oxygen;
        }
    }
}
