//! What must hold for any trial and any records.

use slackwater::plan::{Entry, Pick, UnitSystem};
use slackwater::science::statistics::{Observation, analyse, tukey_kramer};
use slackwater::trial::{
    Conclusion, Design, Measure, Name, Record, Refusal, Treatment, Trial, TrialOutcome, UnitLine,
    VERSION, example, read_table, solve_trial, write_table,
};

use crate::seeded::Seeded;

/// Rounding of sums of a few dozen numbers that were moved by a constant of their own size.
const SAME: f64 = 1e-7;

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= SAME * (a.abs() + b.abs()) + 1e-12
}

/// A trial without a plan, with records drawn by chance.
fn drawn(random: &mut Seeded, design: Design) -> Trial {
    let treatments = random.whole(2, 5);
    let replicates = random.whole(3, 6);
    let heads = random.whole(1, 5);
    let mut trial = Trial {
        treatments: (0..treatments)
            .map(|t| Treatment {
                name: format!("treatment {t}"),
                ..Treatment::default()
            })
            .collect(),
        design: Pick::Known(design),
        replicates: f64::from(replicates).into(),
        heads_per_unit: f64::from(heads).into(),
        seed: f64::from(random.whole(0, 9999)).into(),
        ..Trial::default()
    };
    trial.records = (1..=treatments * replicates)
        .map(|unit| Record {
            unit: Name(unit.to_string()),
            heads_g: (0..heads)
                .map(|_| random.between(100.0, 250.0).into())
                .collect(),
            water_l: random.between(5.0, 30.0).into(),
            ..Record::default()
        })
        .collect();
    trial
}

fn solved(trial: &Trial) -> TrialOutcome {
    solve_trial(trial).unwrap_or_else(|problems| panic!("{problems:?} of {}", trial.to_json()))
}

fn changed(trial: &Trial, change: impl Fn(f64) -> f64) -> Trial {
    let mut other = trial.clone();
    for entry in other.records.iter_mut().flat_map(|it| &mut it.heads_g) {
        if let Entry::Number(value) = entry {
            *value = change(*value);
        }
    }
    other
}

/// p of each line of the table of head masses, and of each pair.
fn chances(outcome: &TrialOutcome) -> Vec<f64> {
    let analysis = outcome.reports[0].analysis.as_ref().expect("an analysis");
    let lines = analysis.table.iter().filter_map(|row| row.p);
    lines
        .chain(analysis.pairs.iter().map(|pair| pair.p))
        .collect()
}

#[test]
fn adding_a_constant_or_another_unit_changes_no_test() {
    let mut random = Seeded::new(10);
    for case in 0..120 {
        let design = if case % 2 == 0 {
            Design::Blocks
        } else {
            Design::Randomised
        };
        let trial = drawn(&mut random, design);
        let expected = chances(&solved(&trial));
        for other in [
            changed(&trial, |value| value + 1000.0),
            changed(&trial, |value| value * 28.349_523_125),
        ] {
            let found = chances(&solved(&other));
            assert_eq!(found.len(), expected.len());
            for (a, b) in found.iter().zip(&expected) {
                assert!(near(*a, *b), "{a} {b}: {}", trial.to_json());
            }
        }
    }
}

#[test]
fn the_order_of_treatments_and_records_does_not_matter() {
    let mut random = Seeded::new(11);
    for _ in 0..60 {
        let mut trial = drawn(&mut random, Design::Blocks);
        let first = solved(&trial);
        // The layout is written out, so that it stays as it is.
        trial.units = first
            .units
            .iter()
            .map(|unit| UnitLine {
                unit: Name(unit.unit.clone()),
                treatment: Name(format!("treatment {}", unit.treatment)),
                block: Name(first.blocks[unit.block].clone()),
                row: f64::from(unit.row).into(),
                column: f64::from(unit.column).into(),
            })
            .collect();
        assert_eq!(solved(&trial).units, first.units);
        trial.treatments.reverse();
        trial.records.reverse();
        let second = solved(&trial);
        let (a, b) = (&first.reports[0], &second.reports[0]);
        let (a, b) = (
            a.analysis.as_ref().expect("one"),
            b.analysis.as_ref().expect("one"),
        );
        assert!(near(a.table[1].f.expect("f"), b.table[1].f.expect("f")));
        for mean in &a.means {
            let other = b.means.iter().find(|it| it.name == mean.name);
            let other = other.expect("the same treatment");
            assert!(near(mean.mean, other.mean) && near(mean.low, other.low));
            assert_eq!(mean.letters, other.letters);
        }
    }
}

#[test]
fn two_treatments_share_a_letter_exactly_when_they_do_not_differ() {
    let mut random = Seeded::new(12);
    let mut apart = 0;
    for case in 0..80 {
        let mut trial = drawn(&mut random, Design::Randomised);
        // Effects of their own, so that some do differ.
        let laid_out = solved(&trial).units;
        for (record, unit) in trial.records.iter_mut().zip(&laid_out) {
            for entry in &mut record.heads_g {
                if let Entry::Number(value) = entry {
                    *value += f64::from(case) * 4.0 * unit.treatment as f64;
                }
            }
        }
        let outcome = solved(&trial);
        let analysis = outcome.reports[0].analysis.as_ref().expect("one");
        let letters = |t: usize| {
            let row = analysis.means.iter().find(|row| row.treatment == t);
            row.expect("a mean").letters.clone()
        };
        for pair in &analysis.pairs {
            let second = letters(pair.smaller);
            let shared = letters(pair.larger).chars().any(|it| second.contains(it));
            assert_eq!(shared, !pair.differ);
            assert_eq!(pair.low > 0.0, pair.differ);
            apart += u32::from(pair.differ);
        }
    }
    assert!(apart > 50, "only {apart} differ");
}

#[test]
fn heads_never_count_as_replicates() {
    // All heads of a treatment in one tank, told apart clearly.
    let mut trial = drawn(&mut Seeded::new(13), Design::Randomised);
    trial.treatments.truncate(2);
    trial.replicates = Entry::Number(1.0);
    trial.heads_per_unit = Entry::Number(12.0);
    let heads = |centre: f64| (0..12).map(|i| (centre + f64::from(i)).into()).collect();
    trial.records = (1..=2)
        .map(|unit| Record {
            unit: Name(unit.to_string()),
            heads_g: heads(100.0 + 20.0 * f64::from(unit)),
            ..Record::default()
        })
        .collect();
    let refused = |trial: &Trial, expected: Refusal, units: Option<usize>| {
        let report = &solved(trial).reports[0];
        assert_eq!(report.measure, Measure::HeadMass);
        assert!(report.analysis.is_none());
        let Conclusion::NotAllowed { reason, naive } = report.conclusion else {
            panic!("a test was made: {:?}", report.conclusion);
        };
        assert_eq!(reason, expected);
        let naive = naive.expect("the naive test");
        // What it would have claimed, and with how many false degrees of freedom.
        assert!(naive.p < 1e-6, "{naive:?}");
        assert_eq!(
            (naive.heads, naive.units, naive.within_freedom),
            (24, units, 22)
        );
    };
    refused(&trial, Refusal::OneUnitEach, Some(2));
    // The same heads without the tanks they stood in.
    for (record, treatment) in trial.records.iter_mut().zip(&trial.treatments) {
        record.unit = Name::default();
        record.treatment = Name(treatment.name.clone());
    }
    refused(&trial, Refusal::HeadsWithoutUnit, None);
}

#[test]
fn more_heads_of_the_same_units_leave_the_degrees_of_freedom() {
    let trial = drawn(&mut Seeded::new(14), Design::Blocks);
    let mut more = trial.clone();
    more.heads_per_unit = Entry::Number(20.0);
    for record in &mut more.records {
        let own = record.heads_g.clone();
        record.heads_g.extend(own.iter().cloned());
        record.heads_g.extend(own);
    }
    let error = |trial: &Trial| {
        let outcome = solved(trial);
        let row = outcome.reports[0].analysis.as_ref().expect("one").table[2];
        (row.freedom, row.mean_square)
    };
    let (before, after) = (error(&trial), error(&more));
    assert_eq!(before.0, after.0);
    assert!(near(before.1, after.1));
}

/// Without any differences a test at 5 % errs about once in twenty: counts within four standard
/// errors of a binomial of 600 (common practice, no source).
#[test]
fn the_level_of_the_tests_is_kept() {
    const TRIALS: u32 = 600;
    let mut random = Seeded::new(15);
    let (mut by_f, mut by_pairs) = (0, 0);
    for _ in 0..TRIALS {
        let bell = |random: &mut Seeded| (0..12).map(|_| random.share()).sum::<f64>() - 6.0;
        let observations: Vec<Observation> = (0..16)
            .filter(|i| *i != 5)
            .map(|i| Observation {
                treatment: i % 4,
                block: i / 4,
                value: 100.0 + bell(&mut random),
            })
            .collect();
        let table = analyse(&observations, 4, 4).expect("sound");
        by_f += u32::from(table.treatments.p < 0.05);
        let pairs = tukey_kramer(&table, 0.95).expect("sound");
        by_pairs += u32::from(
            pairs
                .iter()
                .any(slackwater::science::statistics::Pair::differ),
        );
    }
    assert!((9..=51).contains(&by_f), "{by_f} of {TRIALS}");
    assert!((9..=51).contains(&by_pairs), "{by_pairs} of {TRIALS}");
}

#[test]
fn the_seed_alone_decides_the_layout() {
    let mut trial = example();
    let first = solved(&trial).units;
    assert_eq!(solved(&trial).units, first);
    let mut others = 0;
    for seed in 0..20 {
        trial.seed = f64::from(seed).into();
        others += u32::from(solved(&trial).units != first);
    }
    assert!(others > 15);
}

#[test]
fn a_trial_survives_its_saved_form_and_its_records_a_table() {
    let trial = example();
    assert_eq!(Trial::from_json(&trial.to_json()), Ok(trial.clone()));
    let read = read_table(&write_table(&trial, UnitSystem::Metric), UnitSystem::Metric);
    assert!(read.problems.is_empty());
    assert_eq!(read.records, trial.records);
    let bare = Trial {
        records: Vec::new(),
        ..trial
    };
    assert!(solved(&bare).reports.is_empty());
}

#[test]
fn every_problem_names_its_field() {
    let named = |change: &dyn Fn(&mut Trial)| -> Vec<String> {
        let mut trial = example();
        change(&mut trial);
        let problems = solve_trial(&trial).expect_err("a problem");
        problems.iter().map(|it| it.field.path()).collect()
    };
    assert_eq!(named(&|it| it.treatments.truncate(1)), ["treatments"]);
    assert_eq!(
        named(&|it| it.treatments[1].name = "75 mm".into()),
        ["treatments[1].name"]
    );
    assert_eq!(
        named(&|it| it.design = Pick::from_key("square")),
        ["design"]
    );
    assert_eq!(named(&|it| it.replicates = "many".into()), ["replicates"]);
    assert_eq!(named(&|it| it.seed = Entry::Number(1.5)), ["seed"]);
    assert_eq!(
        named(&|it| it.records[2].unit = "99".into()),
        ["records[2].unit"]
    );
    assert_eq!(
        named(&|it| it.records[2].heads_g[1] = "x".into()),
        ["records[2].heads_g[1]"]
    );
    assert_eq!(
        named(&|it| it.records[0].water_l = Entry::Number(-1.0)),
        ["records[0].water_l"]
    );
    assert_eq!(
        named(&|it| it.records[0].treatment = "110 mm".into()),
        ["records[0].treatment"]
    );
    assert_eq!(named(&|it| it.version = VERSION + 1), [""]);
    assert_eq!(
        named(&|it| it.treatments[2].changes[0].field = "container".into()),
        ["treatments[2].changes[0]"]
    );
    assert_eq!(
        named(&|it| it.treatments[2].changes[0].value = "wood".into()),
        ["treatments[2].changes[0]"]
    );
}

#[test]
fn damaged_trials_and_tables_never_panic() {
    let whole = example();
    let table = write_table(&whole, UnitSystem::Metric);
    // Without the plan, whose own damage other laws look at, a run is short.
    let mut bare = Trial {
        plan: None,
        ..whole
    };
    for treatment in &mut bare.treatments {
        treatment.changes.clear();
    }
    bare.heads_per_unit = Entry::Number(4.0);
    let json = bare.to_json();
    let mut random = Seeded::new(16);
    let (mut read, mut worked) = (0, 0);
    for _ in 0..1500 {
        let damaged = |random: &mut Seeded, text: &str| {
            let mut bytes = text.as_bytes().to_vec();
            for _ in 0..random.whole(1, 5) {
                let at = random.index(bytes.len());
                match random.index(3) {
                    0 => bytes[at] = random.bits().to_le_bytes()[0],
                    1 => {
                        bytes.remove(at);
                    }
                    _ => bytes.insert(at, b"0123456789,;\t\"-.eN"[random.index(18)]),
                }
            }
            String::from_utf8_lossy(&bytes).into_owned()
        };
        let _ = read_table(&damaged(&mut random, &table), UnitSystem::Metric);
        if let Ok(trial) = Trial::from_json(&damaged(&mut random, &json)) {
            read += 1;
            if let Ok(outcome) = solve_trial(&trial) {
                worked += 1;
                let text = serde_json::to_string(&outcome).expect("serialises");
                // serde_json writes what is no number as null; only options may be null.
                for report in &outcome.reports {
                    if let Some(analysis) = &report.analysis {
                        assert!(analysis.means.iter().all(|it| it.low.is_finite()), "{text}");
                    }
                }
            }
        }
    }
    assert!(
        read > 200 && worked > 50,
        "{read} read, {worked} worked out"
    );
    for text in ["", "[]", "null", "7", "{", "\"", "NaN"] {
        assert!(Trial::from_json(text).is_err(), "{text}");
    }
    assert!(solve_trial(&Trial::default()).is_err());
}
