//! Laws of many seasons: the same seed gives the same seasons in however many pieces, more
//! solution never lowers the chance, and each offered change is enough while none smaller is.

use std::sync::OnceLock;

use slackwater::advice::chances::{Aim, Chances, ChangeKind, ChangesOutcome, Reason, WANTED};
use slackwater::catalog::Keyed;
use slackwater::plan::{DateMeaning, Entry, Example, Field, Pick, Plan};
use slackwater::solve;

use crate::plans::{get, set};

/// Enough seasons that one in twenty is ten of them.
const SEASONS: usize = 200;

fn lived(plan: &Plan, size: usize) -> Chances {
    let mut chances = Chances::new(plan, size).expect("a sound plan");
    while !chances.advance(usize::MAX).expect("within the models") {}
    chances
}

fn changes(chances: &Chances) -> ChangesOutcome {
    let mut changes = chances.changes();
    while !changes.advance(usize::MAX) {}
    changes.outcome().clone()
}

/// The examples with less solution than they need, so that there is something to mend.
fn thirsty() -> &'static [(Example, Plan, ChangesOutcome)] {
    static PLANS: OnceLock<Vec<(Example, Plan, ChangesOutcome)>> = OnceLock::new();
    PLANS.get_or_init(|| {
        Example::ALL
            .iter()
            .map(|&example| {
                let mut plan = example.plan();
                set(&mut plan, Field::Humidity, 55.0);
                let found = changes(&lived(&plan, SEASONS));
                (example, plan, found)
            })
            .collect()
    })
}

#[test]
fn pieces_make_the_same_whole() {
    for &example in Example::ALL {
        let plan = example.plan();
        let whole = lived(&plan, 40);
        let mut pieces = Chances::new(&plan, 40).expect("sound");
        let mut asked = 0;
        while !pieces.advance(1 + asked % 7).expect("within the models") {
            asked += 1;
        }
        assert_eq!(whole.fates(), pieces.fates());
        assert_eq!(whole.outcome(), pieces.outcome());
        // And the first members do not depend on how many follow.
        assert_eq!(lived(&plan, 10).fates(), &whole.fates()[..10]);
        // The search comes to the same in pieces, too.
        let mut search = whole.changes();
        while !search.advance(3) {}
        assert_eq!(search.outcome(), &changes(&whole));
    }
}

#[test]
fn more_solution_never_lowers_the_chance() {
    for &example in Example::ALL {
        let mut plan = example.plan();
        set(&mut plan, Field::Humidity, 55.0);
        let depth = solve(&plan).expect("sound").fill.depth_cm;
        let mut before = -1.0;
        for share in [0.75, 0.85, 0.95, 1.0] {
            set(&mut plan, Field::FillDepth, depth * share);
            let Ok(mut chances) = Chances::new(&plan, 60) else {
                continue;
            };
            while !chances.advance(60).expect("within the models") {}
            let lasts = chances.outcome().lasts;
            assert!(lasts >= before, "{}: {lasts} after {before}", example.key());
            before = lasts;
        }
        assert!(before >= 0.0);
    }
}

#[test]
fn a_season_without_chance_is_the_plan_s_own() {
    // The middle of many seasons lies near the one that `solve` tells.
    /// Persistent weather is curved around its mean, and radiation is cut at the clear sky.
    const NEAR: f64 = 0.12;
    for &example in Example::ALL {
        let plan = example.plan();
        let one = solve(&plan).expect("sound").season;
        let many = lived(&plan, SEASONS).outcome();
        let needed = many.needed_l.expect("a harvest").middle;
        assert!(
            (needed / one.needed_l - 1.0).abs() < NEAR,
            "{needed} {}",
            one.needed_l
        );
        let day = many.harvest_day.expect("a harvest").middle;
        let own = f64::from(one.harvest_day.expect("a harvest"));
        assert!((day / own - 1.0).abs() < NEAR, "{day} {own}");
    }
}

#[test]
fn each_offered_change_is_enough() {
    let mut offered = 0;
    for (example, plan, found) in thirsty() {
        assert_eq!(
            found.offered.len() + found.left_out.len(),
            ChangeKind::ALL.len()
        );
        for change in &found.offered {
            let outcome = lived(&change.applied(plan), SEASONS).outcome();
            let chance = match change.aim {
                Aim::Lasts => outcome.lasts,
                Aim::Feeds => outcome.feeds,
            };
            println!("{} {:?} {chance}", example.key(), change);
            assert!(chance >= WANTED - 1e-9, "{}: {change:?}", example.key());
            assert!((chance - change.chance).abs() < 1e-9, "{change:?}");
            offered += 1;
        }
        let sizes: Vec<f64> = found.offered.iter().map(|change| change.relative).collect();
        assert!(sizes.is_sorted(), "{sizes:?}");
    }
    assert!(offered >= Example::ALL.len(), "only {offered}");
}

#[test]
fn nothing_smaller_of_the_same_kind_is() {
    for (example, plan, found) in thirsty() {
        for change in &found.offered {
            for smaller in smaller(change.kind, plan, &change.applied(plan)) {
                let Ok(mut chances) = Chances::new(&smaller, SEASONS) else {
                    continue;
                };
                while !chances.advance(SEASONS).expect("within the models") {}
                let outcome = chances.outcome();
                let chance = match change.aim {
                    Aim::Lasts => outcome.lasts,
                    Aim::Feeds => outcome.feeds,
                };
                assert!(chance < WANTED, "{}: less than {change:?}", example.key());
            }
        }
    }
}

/// Plans with a smaller change of the same kind, worked out apart from the search.
fn smaller(kind: ChangeKind, plan: &Plan, changed: &Plan) -> Vec<Plan> {
    let with = |field: Field, value: f64| {
        let mut plan = plan.clone();
        set(&mut plan, field, value);
        plan
    };
    match kind {
        ChangeKind::FillDepth => vec![with(Field::FillDepth, get(changed, Field::FillDepth) - 0.1)],
        ChangeKind::Containers => {
            let count = get(plan, Field::Count);
            let all = count * get(plan, Field::PlantsPerContainer);
            let mut plans = Vec::new();
            let mut more = count + 1.0;
            while more < get(changed, Field::Count) {
                let mut plan = with(Field::Count, more);
                set(&mut plan, Field::PlantsPerContainer, (all / more).ceil());
                plans.push(plan);
                more += 1.0;
            }
            plans
        }
        ChangeKind::Plants => {
            let now = get(changed, Field::PlantsPerContainer);
            if now < get(plan, Field::PlantsPerContainer) - 1.0 {
                vec![with(Field::PlantsPerContainer, now + 1.0)]
            } else {
                Vec::new()
            }
        }
        ChangeKind::Strength => {
            let (field, step) = (Field::TargetConductivity, 0.05);
            vec![with(field, get(changed, field) - step)]
        }
        ChangeKind::Shade => {
            let (now, then) = (
                get(plan, Field::LightThrough),
                get(changed, Field::LightThrough),
            );
            let mut plans = Vec::new();
            let mut by = 5.0;
            while by < (then - now).abs() {
                plans.push(with(Field::LightThrough, now - by));
                if now + by <= 100.0 {
                    plans.push(with(Field::LightThrough, now + by));
                }
                by += 5.0;
            }
            plans
        }
        ChangeKind::PlantingDate => Vec::new(),
    }
}

#[test]
fn a_sure_plan_needs_no_change() {
    let mut plan = Example::Bucket.plan();
    set(&mut plan, Field::PlantsPerContainer, 1.0);
    set(&mut plan, Field::TargetConductivity, 2.0);
    let found = changes(&lived(&plan, SEASONS));
    assert!(found.offered.is_empty(), "{:?}", found.offered);
    assert!(found.left_out.iter().all(|out| out.reason == Reason::Sure));
}

#[test]
fn a_date_is_moved_in_the_meaning_that_it_has() {
    let mut plan = Example::Bucket.plan();
    plan.crop.date_meaning = Pick::Known(DateMeaning::Seeding);
    set(&mut plan, Field::Humidity, 60.0);
    for change in changes(&lived(&plan, 40)).offered {
        if change.kind == ChangeKind::PlantingDate {
            assert!(matches!(change.edits[0].entry, Entry::Text(_)));
        }
    }
}
