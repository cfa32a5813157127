//! The command `slackwater-solve` from outside: what it prints, and how it ends.

mod options;
mod solution;

use std::io::Write;
use std::process::{Command, Output, Stdio};

use serde_json::Value;
use solution::assert_chemistry;

const EXAMPLES: [&str; 4] = ["bottle", "bucket", "covered-tank", "floating-boards"];

fn run(arguments: &[&str], input: &[u8]) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_slackwater-solve"))
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the command starts");
    let mut stdin = child.stdin.take().expect("a pipe");
    // Written from a thread of its own, so that a long input and a long answer cannot wait for
    // each other; a command that needs no input may close the pipe.
    let input = input.to_vec();
    let writer = std::thread::spawn(move || {
        let _ = stdin.write_all(&input);
    });
    let output = child.wait_with_output().expect("the command ends");
    writer.join().expect("the writer ends");
    output
}

fn example(name: &str) -> String {
    let output = run(&["--example", name], b"");
    assert_eq!(output.status.code(), Some(0));
    String::from_utf8(output.stdout).expect("text")
}

fn solved(plan: &str) -> Value {
    let output = run(&[], plan.as_bytes());
    let error = String::from_utf8_lossy(&output.stderr);
    assert_eq!(output.status.code(), Some(0), "{error}");
    assert!(output.stderr.is_empty(), "{error}");
    serde_json::from_slice(&output.stdout).expect("the outcome is JSON")
}

/// The problems of a plan that is refused.
fn refused(input: &[u8]) -> Vec<Value> {
    let output = run(&["-"], input);
    assert_eq!(output.status.code(), Some(2));
    assert!(output.stdout.is_empty());
    let json: Value = serde_json::from_slice(&output.stderr).expect("the refusal is JSON");
    let problems = json["problems"].as_array().expect("a list of problems");
    assert!(!problems.is_empty());
    problems.clone()
}

/// The document with raw JSON at a place.
fn with_raw(plan: &str, pointer: &str, raw: &str) -> String {
    const MARK: &str = "@ here @";
    let mut json: Value = serde_json::from_str(plan).expect("a plan is JSON");
    *json.pointer_mut(pointer).expect("a field") = Value::from(MARK);
    json.to_string().replace(&format!("\"{MARK}\""), raw)
}

/// The paths of all values of a document that are no objects; of a list also those within.
fn leaves(value: &Value, pointer: &str, found: &mut Vec<String>) {
    if !value.is_object() {
        found.push(pointer.to_owned());
    }
    match value {
        Value::Object(members) => {
            for (key, member) in members {
                leaves(member, &format!("{pointer}/{key}"), found);
            }
        }
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                leaves(item, &format!("{pointer}/{index}"), found);
            }
        }
        _ => {}
    }
}

/// The path as problems name it: `/fertilizer/salts/0/salt` is `fertilizer.salts[0].salt`.
fn field_path(pointer: &str) -> String {
    pointer
        .split('/')
        .skip(1)
        .map(|part| match part.parse::<usize>() {
            Ok(index) => format!("[{index}]"),
            Err(_) => format!(".{part}"),
        })
        .collect::<String>()[1..]
        .to_owned()
}

#[test]
fn every_example_is_solved_with_all_that_is_promised() {
    for name in EXAMPLES {
        let outcome = solved(&example(name));
        let number = |pointer: &str| {
            let found = outcome.pointer(pointer).and_then(Value::as_f64);
            found.unwrap_or_else(|| panic!("{name}: no number at {pointer}"))
        };
        for pointer in [
            "/fill/volume_l",
            "/fill/depth_cm",
            "/fill/below_rim_cm",
            "/fill/per_plant_l",
            "/fertilizer/ec_ms_per_cm",
            "/fertilizer/elements_mg_per_l/n",
            "/fertilizer/elements_mg_per_l/k",
            "/season/harvest_day",
            "/season/head_g",
            "/season/water_per_plant_l",
            "/season/water_per_kg_l",
            "/season/left_l",
        ] {
            assert!(number(pointer) > 0.0, "{name}: {pointer}");
        }
        for element in ["p", "ca", "mg", "s", "fe", "mn", "zn", "cu", "b", "mo"] {
            assert!(number(&format!("/fertilizer/elements_mg_per_l/{element}")) >= 0.0);
        }
        let list = |pointer: &str| {
            let found = outcome.pointer(pointer).and_then(Value::as_array);
            found.unwrap_or_else(|| panic!("{name}: no list at {pointer}"))
        };
        let doses = list("/fertilizer/doses");
        assert!(!doses.is_empty());
        for dose in doses {
            assert!(dose["material"].is_string());
            let (mass, volume) = (dose.get("mass_g"), dose.get("volume_ml"));
            assert!(mass.is_some() != volume.is_some(), "{name}: {dose}");
            let amount = mass.or(volume).and_then(Value::as_f64);
            assert!(amount.is_some_and(|amount| amount > 0.0));
        }
        assert!(!list("/season/events").is_empty());
        let days = list("/season/days");
        let harvest = outcome["season"]["harvest_day"].as_u64();
        assert_eq!(harvest, Some(days.len() as u64 - 1));
        for (index, day) in days.iter().enumerate() {
            assert_eq!(day["day"].as_u64(), Some(index as u64));
            for key in ["level_cm", "gap_cm", "head_g"] {
                assert!(day[key].is_number(), "{name}: {key}");
            }
        }
        assert_eq!(outcome["boards"].is_object(), name == "floating-boards");
        assert_chemistry(name, &outcome);
    }
    let outcome = solved(&example("floating-boards"));
    let boards = &outcome["boards"];
    assert!(boards["draught_mm"].as_f64().is_some_and(|it| it > 0.0));
    assert_eq!(boards["floats_at_planting"], Value::Bool(true));
    assert!(boards["rest_day"].as_u64().is_some_and(|it| it > 0));
    assert!(boards["gap_at_harvest_cm"].is_number());
}

/// The figures of the solution, of stocks and of every day that are promised by name.
#[test]
fn a_file_and_standard_input_say_the_same() {
    let plan = example("bucket");
    let path = std::env::temp_dir().join(format!("slackwater-plan-{}.json", std::process::id()));
    std::fs::write(&path, &plan).expect("a writable folder");
    let from_file = run(&[path.to_str().expect("a plain path")], b"");
    std::fs::remove_file(&path).expect("the file is ours");
    assert_eq!(from_file.status.code(), Some(0));
    for arguments in [&[][..], &["-"][..]] {
        let from_input = run(arguments, plan.as_bytes());
        assert_eq!(from_input.stdout, from_file.stdout);
    }
}

#[test]
fn what_is_not_understood_ends_with_one() {
    for arguments in [
        &["--example", "unknown"][..],
        &["--example"],
        &["--example", "bottle", "bucket"],
        &["--unknown"],
        &["one.json", "two.json"],
        &["/no/such/folder/plan.json"],
    ] {
        let output = run(arguments, b"");
        assert_eq!(output.status.code(), Some(1), "{arguments:?}");
        assert!(output.stdout.is_empty() && !output.stderr.is_empty());
    }
    assert_eq!(run(&["--help"], b"").status.code(), Some(0));
}

#[test]
fn documents_that_are_no_plans_end_with_two() {
    let plan = example("covered-tank");
    let long = "[".repeat(10_000_000);
    let newer = plan.replacen("\"version\": 1", "\"version\": 99", 1);
    let documents: [(&str, &[u8]); 11] = [
        ("nothing", b""),
        ("a list", b"[]"),
        ("null", b"null"),
        ("an empty object", b"{}"),
        ("cut off", &plan.as_bytes()[..plan.len() / 2]),
        ("no text", &[0xff, 0xfe, 0x00, 0x80, 0xc3, 0x28]),
        ("zeros", &[0; 1000]),
        ("brackets", long.as_bytes()),
        ("a later version", newer.as_bytes()),
        ("a bare word", b"NaN"),
        ("a step that is no object", br#"{"crop": 7}"#),
    ];
    for (name, document) in documents {
        let problems = refused(document);
        for problem in &problems {
            assert!(problem["kind"].is_string(), "{name}: {problem}");
        }
        if name == "a later version" {
            assert_eq!(problems[0]["kind"], "newer_version");
        }
    }
}

#[test]
fn a_bad_field_is_named_on_standard_error() {
    // One value after the other on one field after the other: each value meets many fields, each
    // field is tried. The laws try them all, in one process.
    let hopeless = ["\"\"", "\"word\"", "\"NaN\"", "NaN", "1e309", "null"];
    let doubtful = ["-1", "0", "1e300", "true", "[]", "{}"];
    let (mut named, mut accepted) = (0, 0);
    for (name, dosing) in EXAMPLES.into_iter().zip(["salts", "", "salts", ""]) {
        let mut plan = example(name);
        if !dosing.is_empty() {
            plan = with_raw(&plan, "/fertilizer/dosing", &format!("\"{dosing}\""));
        }
        let mut fields = Vec::new();
        let json: Value = serde_json::from_str(&plan).expect("a plan is JSON");
        for step in ["container", "crop", "fertilizer", "climate"] {
            leaves(&json[step], &format!("/{step}"), &mut fields);
        }
        for (index, pointer) in fields.iter().enumerate() {
            let values = if index % 2 == 0 { hopeless } else { doubtful };
            let document = with_raw(&plan, pointer, values[index / 2 % values.len()]);
            let output = run(&[], document.as_bytes());
            match output.status.code() {
                // Fields that the plan does not use may hold anything.
                Some(0) => {
                    accepted += 1;
                    let _: Value = serde_json::from_slice(&output.stdout).expect("JSON");
                }
                Some(2) => {
                    let json: Value = serde_json::from_slice(&output.stderr).expect("JSON");
                    let path = field_path(pointer);
                    let problems = json["problems"].as_array().expect("problems");
                    assert!(!problems.is_empty());
                    // Something else in place of a list is a fault of the document.
                    let list = ["container.measured", "fertilizer.salts"].contains(&path.as_str());
                    if list {
                        assert_eq!(problems[0]["kind"], "not_a_plan", "{path}: {json}");
                    } else {
                        assert!(
                            problems.iter().any(|it| it["field"].is_string()),
                            "{name} {path}: {json}"
                        );
                        named += u32::from(problems.iter().any(|it| it["field"] == *path));
                    }
                }
                other => panic!("{name} {pointer}: ended with {other:?}"),
            }
        }
    }
    assert!(
        named > 60 && accepted > 60,
        "{named} named, {accepted} accepted"
    );
}

#[test]
fn several_bad_fields_are_named_together() {
    let mut plan = example("floating-boards");
    let bad = [
        "/container/height_cm",
        "/container/pipe",
        "/crop/target_head_g",
        "/crop/date",
        "/fertilizer/blend",
        "/fertilizer/label/k2o_pct",
        "/fertilizer/target_ec_ms_per_cm",
        "/climate/humidity_pct",
    ];
    for pointer in bad {
        plan = with_raw(&plan, pointer, "\"word\"");
    }
    let problems = refused(plan.as_bytes());
    for pointer in bad {
        let path = pointer[1..].replace('/', ".");
        assert!(problems.iter().any(|it| it["field"] == *path), "{path}");
    }
    assert_eq!(problems.len(), bad.len());
}
