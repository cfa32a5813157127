//! A plan survives its saved form exactly, whatever was typed into it.

use slackwater::catalog::Keyed;
use slackwater::plan::{
    Entry, Example, Field, FileError, MeasuredPair, Pick, Plan, SaltLine, Store, UnitSystem, check,
    plans_from_file, plans_to_file, used_fields,
};

use crate::plans::{for_sound_plans, wild_plan};
use crate::seeded::Seeded;

fn round_trip(plan: &Plan) {
    let json = plan.to_json();
    let back = Plan::from_json(&json).unwrap_or_else(|problems| panic!("{problems:?}\n{json}"));
    assert_eq!(&back, plan, "{json}");
    assert_eq!(back.to_json(), json);
    // Saved again without white space, as in a link.
    let compact = serde_json::to_string(plan).expect("plans serialise");
    assert_eq!(Plan::from_json(&compact).as_ref(), Ok(plan));
}

#[test]
fn examples_and_sound_plans_survive() {
    round_trip(&Plan::default());
    for example in Example::ALL {
        round_trip(&example.plan());
    }
    for_sound_plans(70, |plan, _| round_trip(plan));
}

#[test]
fn a_store_tells_its_version_and_is_read_up_to_it() {
    let mut store = Store {
        units: "us".to_owned(),
        ..Store::default()
    };
    assert_eq!(store.unit_system(), Some(UnitSystem::UsCustomary));
    store.units = "cubits".to_owned();
    assert_eq!(store.unit_system(), None);
    let text = store.write();
    let versioned = |version: u64| {
        let mut document: serde_json::Value = serde_json::from_str(&text).expect("JSON");
        assert!(document["version"].as_u64().is_some_and(|now| now > 0));
        document["version"] = (document["version"].as_u64().unwrap_or_default() + version).into();
        Store::read(&document.to_string())
    };
    assert!(versioned(0).is_ok());
    assert_eq!(versioned(1), Err(FileError::NewerVersion));
    assert_eq!(versioned(2), Err(FileError::NewerVersion));
}

#[test]
fn a_store_from_before_notebooks_opens_and_odd_ones_hide_no_plan() {
    let mut plan = Example::Bucket.plan();
    plan.name = "kept".to_owned();
    let plan = plan.to_json();
    let text = |rest: &str| {
        format!("{{\"version\":1,\"plans\":[{{\"id\":3,\"plan\":{plan}}}],\"open\":3{rest}}}")
    };
    let before = Store::read(&text(",\"trials\":[]")).expect("as it was written");
    assert!(before.notebooks.is_empty());
    assert_eq!(before.plans[0].plan.name, "kept");
    // What holds no notebook does not write of any: an older release reads it as before.
    assert!(!before.write().contains("notebooks"));
    for odd in [
        "[]",
        "[{}]",
        "[{\"id\":1,\"notebook\":{\"readings\":[{\"level_cm\":{\"a\":[1]},\"note\":7},{}]}}]",
        "[{\"notebook\":{\"planted\":1e309,\"harvest\":[{\"heads\":null}],\"closed\":true}}]",
    ] {
        let store = Store::read(&text(&format!(",\"notebooks\":{odd}"))).expect(odd);
        assert_eq!(store.plans[0].plan.name, "kept");
        let again = Store::read(&store.write());
        assert_eq!(again.as_ref(), Ok(&store), "{odd}");
    }
    let later = text(",\"notebooks\":[{\"notebook\":{\"version\":2}}]");
    assert_eq!(Store::read(&later), Err(FileError::NewerVersion));
}

#[test]
fn a_file_of_several_plans_keeps_them_all_in_order() {
    let plans: Vec<Plan> = Example::ALL.iter().map(|example| example.plan()).collect();
    assert_eq!(
        plans_from_file(&plans_to_file(&plans, &[], &[])).as_deref(),
        Ok(plans.as_slice())
    );
}

#[test]
fn plans_within_the_limits_survive() {
    for seed in 0..500 {
        round_trip(&wild_plan(seed));
    }
}

/// Texts that have tripped readers of JSON, of numbers or of Unicode.
const PIECES: &[&str] = &[
    "NaN",
    "Infinity",
    "-Infinity",
    "\"",
    "\\",
    "\\\"",
    "\\u0000",
    "\u{0}",
    "\n",
    "\t",
    "{",
    "}",
    "[",
    "]",
    ":",
    ",",
    "null",
    "true",
    "1e309",
    "1",
    "-0",
    "é",
    "−",
    "½",
    "🥬",
    "\u{202e}",
    "\u{feff}",
    "\u{2028}",
    "$serde_json::private::Number",
    "</script>",
    " ",
    "%",
    "#",
    "&",
];

fn text(random: &mut Seeded) -> String {
    if random.chance(0.5) {
        (0..random.whole(0, 8))
            .map(|_| random.pick(PIECES))
            .collect()
    } else {
        (0..random.whole(0, 20))
            .filter_map(|_| char::from_u32(random.whole(0, 0x1_FFFF)))
            .collect()
    }
}

fn number(random: &mut Seeded) -> f64 {
    // Any bits that make a finite number, denormal ones and −0 included.
    loop {
        let value = f64::from_bits(random.bits());
        if value.is_finite() {
            return if random.chance(0.5) {
                value
            } else {
                random.pick(&[
                    0.0,
                    -0.0,
                    0.1,
                    1e300,
                    5e-324,
                    f64::MAX,
                    f64::MIN,
                    1e22,
                    123.0,
                ])
            };
        }
    }
}

fn entry(random: &mut Seeded) -> Entry {
    if random.chance(0.5) {
        Entry::Number(number(random))
    } else {
        Entry::Text(text(random))
    }
}

/// A ready plan with anything at all in every field.
pub fn odd_plan(random: &mut Seeded) -> Plan {
    let mut plan = random.pick(Example::ALL).plan();
    plan.name = text(random);
    plan.container.measured = (0..random.whole(0, 4))
        .map(|_| MeasuredPair {
            volume_l: entry(random),
            depth_cm: entry(random),
        })
        .collect();
    for &field in Field::ALL {
        if let Some(slot) = field.entry_mut(&mut plan) {
            *slot = entry(random);
        }
    }
    plan.fertilizer.salts = (0..random.whole(0, 4))
        .map(|_| SaltLine {
            salt: Pick::from_key(&text(random)),
            purity_pct: entry(random),
            price_per_kg: entry(random),
        })
        .collect();
    plan.fertilizer.currency = text(random);
    plan.fertilizer.dosing = Pick::from_key(random.pick(&["salts", "stocks", "NaN"]));
    plan.container.method = Pick::from_key(&text(random));
    plan.fertilizer.blend = Pick::from_key(&text(random));
    plan.climate.shelter = Pick::from_key(&text(random));
    plan
}

#[test]
fn any_text_and_any_number_survive_in_any_field() {
    let mut random = Seeded::new(71);
    for _ in 0..2000 {
        let plan = odd_plan(&mut random);
        round_trip(&plan);
        // And whatever it holds, judging it answers.
        let fields = used_fields(&plan);
        for problem in check(&plan).expect_err("nonsense") {
            assert!(problem.field.is_some_and(|field| fields.contains(&field)));
        }
    }
}

#[test]
fn what_version_1_stored_and_saved_still_opens() {
    let stored = Store::read(include_str!("files/stored-1.json")).expect("version 1");
    let file = plans_from_file(include_str!("files/plans-1.json")).expect("version 1");
    assert_eq!((stored.open, stored.units.as_str()), (Some(2), "us"));
    let kept: Vec<Plan> = stored.plans.into_iter().map(|kept| kept.plan).collect();
    assert_eq!(kept, file);
    let [bottle, boards] = &file[..] else {
        panic!("two plans");
    };
    assert_eq!(bottle.name, "Sandpiper School: a bottle on the porch");
    assert_eq!(Field::Height.entry(bottle), Some(&Entry::from("12 in")));
    assert_eq!(Field::BoardCount.entry(boards), Some(&Entry::Number(12.0)));
    assert_eq!(boards.container.method.key(), "floating_boards");
}
