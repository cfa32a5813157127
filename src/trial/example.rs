//! A ready trial in the invented scenario of Sandpiper School, with invented records.

use crate::plan::{Entry, Example, Pick};

use super::model::{Change, Design, Name, Record, Treatment, Trial};

/// Heads of each unit, g, in the order of the units 1 to 12; zero is missing. Invented.
const HEADS_G: [[f64; 4]; 12] = [
    [176.0, 188.0, 169.0, 181.0],
    [204.0, 191.0, 212.0, 199.0],
    [186.0, 202.0, 195.0, 179.0],
    [201.0, 218.0, 0.0, 209.0],
    [171.0, 183.0, 190.0, 174.0],
    [192.0, 186.0, 207.0, 197.0],
    [182.0, 167.0, 178.0, 172.0],
    [199.0, 214.0, 206.0, 193.0],
    [189.0, 196.0, 181.0, 203.0],
    [213.0, 198.0, 205.0, 220.0],
    [168.0, 0.0, 185.0, 177.0],
    [190.0, 184.0, 199.0, 188.0],
];
/// Litres that each unit used. Invented.
const WATER_L: [f64; 12] = [
    15.4, 15.9, 15.6, 16.3, 15.2, 15.8, 15.0, 16.1, 15.7, 16.4, 15.1, 15.5,
];

/// Three pipe sizes under small floating boards, in four blocks, with 48 head masses of which two
/// are missing.
pub fn example() -> Trial {
    let plan = Example::FloatingBoards.plan();
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
        heads_per_unit: Entry::Number(4.0),
        seed: Entry::Number(2027.0),
        records,
        ..Trial::default()
    }
}
