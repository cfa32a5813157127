//! A ready trial in the invented scenario of Sandpiper School, with invented records.

use crate::plan::{Entry, Example, Pick};

use crate::plan::trial::{Change, Design, Name, Record, Treatment, Trial};

/// Heads of each unit, g, in the order of the units 1 to 12; zero is missing. Invented.
const HEADS_G: [[f64; 4]; 12] = [
    [163.0, 171.0, 150.0, 139.0],
    [213.0, 180.0, 179.0, 207.0],
    [230.0, 215.0, 213.0, 253.0],
    [161.0, 178.0, 0.0, 172.0],
    [166.0, 171.0, 159.0, 131.0],
    [182.0, 163.0, 184.0, 173.0],
    [171.0, 184.0, 154.0, 168.0],
    [182.0, 178.0, 162.0, 184.0],
    [195.0, 212.0, 202.0, 215.0],
    [196.0, 216.0, 207.0, 200.0],
    [175.0, 0.0, 163.0, 176.0],
    [208.0, 208.0, 197.0, 191.0],
];
/// Litres that each unit used. Invented.
const WATER_L: [f64; 12] = [
    8.4, 10.8, 11.5, 9.4, 8.6, 10.0, 9.5, 9.1, 10.6, 10.3, 9.2, 10.8,
];

/// Three pipe sizes under small floating boards, in four blocks, with 48 head masses of which two
/// are missing.
pub fn example() -> Trial {
    let mut plan = Example::FloatingBoards.plan();
    "Sandpiper School: a small tank with one board".clone_into(&mut plan.name);
    let container = &mut plan.container;
    container.length_cm = Entry::Number(64.0);
    container.width_cm = Entry::Number(44.0);
    container.board_length_cm = Entry::Number(60.0);
    container.board_width_cm = Entry::Number(40.0);
    container.board_count = Entry::Number(1.0);
    let treatment = |name: &str, pipe: &str| Treatment {
        name: name.to_owned(),
        note: String::new(),
        changes: vec![Change {
            field: "container.pipe".to_owned(),
            value: Entry::from(pipe),
        }],
    };
    let records = (1_u32..)
        .zip(HEADS_G.iter().zip(WATER_L))
        .map(|(unit, (heads, water))| Record {
            unit: Name(unit.to_string()),
            treatment: Name::default(),
            heads_g: heads
                .iter()
                .map(|&mass| {
                    if mass > 0.0 {
                        Entry::Number(mass)
                    } else {
                        Entry::blank()
                    }
                })
                .collect(),
            water_l: Entry::Number(water),
        })
        .collect();
    Trial {
        name: "Sandpiper School: three pipe sizes".to_owned(),
        plan: Some(plan),
        treatments: vec![
            treatment("75 mm", "metric_75"),
            treatment("90 mm", "metric_90"),
            treatment("110 mm", "metric_110"),
        ],
        design: Pick::Known(Design::Blocks),
        replicates: Entry::Number(4.0),
        seed: Entry::Number(2027.0),
        records,
        ..Trial::default()
    }
}
