//! Nonsense in a notebook: it is told by its path and never a panic.

use slackwater::advice::notebook::Tracker;
use slackwater::catalog::Keyed;
use slackwater::plan::notebook::{
    Cut, Notebook, NotebookRefusal, Place, Reading, ReadingColumn, check_notebook,
    readings_from_csv, readings_to_csv,
};
use slackwater::plan::{Entry, Example, Pick, UnitSystem, check};

use super::reading;
use crate::seeded::Seeded;

/// Any entry that a person, a program or a file might leave.
fn anything(random: &mut Seeded) -> Entry {
    match random.whole(0, 5) {
        0 => Entry::blank(),
        1 => Entry::from(random.between(-50.0, 400.0)),
        2 => Entry::from(f64::from_bits(random.bits())),
        3 => Entry::from(random.pick(&[
            "NaN",
            "2027-02-30",
            "2027-02-20",
            "12 in",
            "1,5",
            "é🥬",
            "-",
        ])),
        4 => Entry::Number(f64::from(random.whole(0, 60))),
        _ => Entry::from("99999999999999999999999999"),
    }
}

#[test]
fn nonsense_is_told_and_never_a_panic() {
    let mut random = Seeded::new(88);
    let mut sound = 0;
    for _ in 0..400 {
        let plan = random.pick(Example::ALL).plan();
        let mut notebook = Notebook::begin(&plan);
        for _ in 0..random.whole(0, 3) {
            let mut reading = Reading {
                date: anything(&mut random),
                level_cm: anything(&mut random),
                ec_ms_per_cm: anything(&mut random),
                added_l: anything(&mut random),
                ..Reading::default()
            };
            if random.chance(0.3) {
                reading.container = anything(&mut random);
                reading.temperature_c = anything(&mut random);
                reading.level_from = Pick::from_key(random.pick(&["mark", "rim", "moon"]));
                reading.note = "\"a\", \n;".to_owned();
            }
            notebook.readings.push(reading);
        }
        if random.chance(0.3) {
            notebook.planted = anything(&mut random);
            notebook.harvest.push(Cut {
                date: anything(&mut random),
                heads: anything(&mut random),
                mass_g: anything(&mut random),
                ..Cut::default()
            });
        }
        let json = notebook.to_json();
        assert_eq!(Notebook::from_json(&json).as_ref(), Ok(&notebook), "{json}");
        match Tracker::new(&notebook, 6) {
            Ok(mut tracker) => {
                sound += 1;
                while !tracker.advance(50).expect("within the models") {}
                let outcome = serde_json::to_string(&tracker.outcome()).expect("JSON");
                assert!(!outcome.contains("NaN"));
            }
            Err(NotebookRefusal::Plan(problems)) => panic!("{problems:?}"),
            Err(NotebookRefusal::Notebook(problems)) => assert!(!problems.is_empty()),
        }
    }
    assert!(sound > 40, "{sound}");
}

#[test]
fn garbage_is_no_notebook_and_no_table() {
    let mut random = Seeded::new(89);
    let notebook = Notebook::begin(&Example::Bottle.plan());
    let json = notebook.to_json();
    let planted = check(&notebook.plan).expect("sound").crop.transplanting;
    let table = readings_to_csv(&[reading(3, 4.0), reading(9, 5.5)], UnitSystem::Metric);
    for _ in 0..2000 {
        let mut bytes = if random.chance(0.5) {
            json.clone()
        } else {
            table.clone()
        }
        .into_bytes();
        for _ in 0..random.whole(1, 12) {
            let at = random.index(bytes.len());
            bytes[at] = random.pick(b"\"\\,;{}[]\n\r#0-e\xff ");
        }
        bytes.truncate(1 + random.index(bytes.len()));
        let text = String::from_utf8_lossy(&bytes);
        let _ = Notebook::from_json(&text).map(|notebook| check_notebook(&notebook));
        let _ = readings_from_csv(&text, planted);
    }
    for text in [
        "",
        "[",
        "[1]",
        "{\"version\": 99}",
        "{\"readings\": 3}",
        "null",
    ] {
        assert!(Notebook::from_json(text).is_err(), "{text}");
    }
}

#[test]
fn each_fault_is_named_by_its_path() {
    let mut notebook = Notebook::begin(&Example::Bottle.plan());
    notebook.planted = Entry::from("yesterday");
    notebook.readings = vec![reading(3, 1.0), reading(4, 999.0)];
    let refusal = check_notebook(&notebook).expect_err("two faults");
    let NotebookRefusal::Notebook(problems) = &refusal else {
        panic!("{refusal:?}");
    };
    let places: Vec<Place> = problems.iter().map(|problem| problem.place).collect();
    assert_eq!(
        places,
        [Place::Planted, Place::Reading(1, ReadingColumn::Level)]
    );
    let json = serde_json::to_value(&refusal).expect("JSON");
    assert_eq!(json[1]["field"], "readings[1].level_cm");
    assert_eq!(json[1]["kind"], "out_of_range");
}

#[test]
fn no_surface_lies_above_the_rim_or_below_the_floor() {
    // The ready bucket is 35 cm high.
    let plan = Example::Bucket.plan();
    let refused = |level: f64, from: &str| {
        let mut notebook = Notebook::begin(&plan);
        notebook.readings = vec![Reading {
            level_from: Pick::from_key(from),
            ..reading(3, level)
        }];
        match check_notebook(&notebook) {
            Ok(_) => false,
            Err(NotebookRefusal::Notebook(problems)) => {
                assert_eq!(problems[0].place, Place::Reading(0, ReadingColumn::Level));
                true
            }
            Err(NotebookRefusal::Plan(problems)) => panic!("{problems:?}"),
        }
    };
    for from in ["", "rim"] {
        assert!(!refused(0.0, from) && !refused(35.0, from));
        assert!(refused(-0.1, from) && refused(35.1, from));
    }
    // Above the fill mark a level is negative.
    assert!(!refused(-2.0, "mark") && refused(-35.1, "mark") && refused(35.1, "mark"));
}
