//! The command `slackwater-solve` from outside: what it prints, and how it ends.

use std::io::Write;
use std::process::{Command, Output, Stdio};

use serde_json::Value;

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
fn assert_chemistry(name: &str, outcome: &Value) {
    let solution = &outcome["solution"];
    assert_eq!(
        solution["ec_ms_per_cm"],
        outcome["fertilizer"]["ec_ms_per_cm"]
    );
    assert_solution(name, solution);
    let stocks = outcome["stocks"].as_array().expect("a list");
    let two = ["covered-tank", "floating-boards"].contains(&name);
    assert_eq!(stocks.len(), if two { 2 } else { 0 }, "{name}");
    for stock in stocks {
        assert!(["stock_a", "stock_b"].contains(&stock["material"].as_str().unwrap_or("")));
        assert_eq!(stock["clear"], Value::Bool(true), "{name}: {stock}");
        assert!(stock["serves_heads"].as_f64().is_some_and(|it| it > 1.0));
        let contents = stock["contents"].as_array().expect("a list");
        assert!(
            contents
                .iter()
                .all(|it| it["g_per_l"].is_number() && it["material"].is_string())
        );
        assert!(stock["saturation"].is_object());
    }
    assert_eq!(
        outcome["stocks_together"]["gypsum"].is_number(),
        two,
        "{name}"
    );
    let season = &outcome["season"];
    let short = &season["shortfall"];
    let told = short["nutrient"].is_string() && short["day"].is_u64();
    let runs_short = season["nutrients"].as_array().expect("a list");
    let any = runs_short.iter().any(|it| it["runs_short_day"].is_u64());
    assert!(
        season.get("shortfall").is_some() && told == any,
        "{name}: {short}"
    );
    for day in season["days"].as_array().expect("a list") {
        assert!(
            day["ec_ms_per_cm"].as_f64().is_some_and(|it| it > 0.0),
            "{name}: {day}"
        );
        assert!(
            day["ph"].as_f64().is_some_and(|it| it > 3.0 && it < 10.0),
            "{name}: {day}"
        );
        let elements = day["elements_mg_per_l"].as_object().expect("elements");
        for element in ["n", "p", "k", "ca", "mg", "s"] {
            assert!(
                elements[element].as_f64().is_some_and(|it| it >= 0.0),
                "{name}: {day}"
            );
        }
    }
    assert!(outcome["water"]["ec_ms_per_cm"].is_number());
    assert!(outcome["growing_on"].is_array());
}

/// What stands in a `solution`, of a plan or of a bare list of ions.
fn assert_solution(name: &str, solution: &Value) {
    let number = |key: &str| {
        let found = solution[key].as_f64();
        found.unwrap_or_else(|| panic!("{name}: no number at {key}"))
    };
    assert!(number("ec_ms_per_cm") > 0.0 && number("ec_at_temperature_ms_per_cm") > 0.0);
    assert!(number("ph") > 3.0 && number("ph") < 10.0, "{name}");
    assert!(number("ionic_strength_mol_per_kg") > 0.0);
    let species = solution["species"].as_array().expect("a list");
    let amounts: Vec<f64> = species
        .iter()
        .filter_map(|it| it["mmol_per_kg"].as_f64())
        .collect();
    assert_eq!(amounts.len(), species.len());
    assert!(amounts.windows(2).all(|pair| pair[0] >= pair[1]), "{name}");
    for ion in ["NO3-", "K+"] {
        assert!(
            species.iter().any(|it| it["species"] == *ion),
            "{name}: {ion}"
        );
    }
    for mineral in ["gypsum", "brushite", "calcite"] {
        let index = solution["saturation"].get(mineral);
        assert!(
            index.is_some_and(|it| it.is_number() || it.is_null()),
            "{name}: {mineral}"
        );
    }
}

/// Hoagland & Arnon 1950, solution 2, mmol/L.
const HOAGLAND_2: &str = r#"{"NO3": 14, "NH4": 1, "PO4": 1, "SO4": 2, "K": 6, "Ca": 4, "Mg": 2}"#;

#[test]
fn a_list_of_ions_is_read_like_the_solution_of_a_plan() {
    let solved = |document: &str| -> Value {
        let output = run(&["--solution"], document.as_bytes());
        let error = String::from_utf8_lossy(&output.stderr);
        assert_eq!(output.status.code(), Some(0), "{error}");
        let from_file = run(&["--solution", "-"], document.as_bytes());
        assert_eq!(from_file.stdout, output.stdout);
        let json: Value = serde_json::from_slice(&output.stdout).expect("JSON");
        json["solution"].clone()
    };
    let number = |solution: &Value, key: &str| solution[key].as_f64().expect("a number");
    // phreeqpython 1.6.2, vitens.dat: 2.0908 mS/cm, pH 4.94; gypsum -1.20 (the same).
    let document = format!(r#"{{"ions": {HOAGLAND_2}, "ph": "charge", "temperature_c": 25}}"#);
    let hoagland = solved(&document);
    assert_solution("Hoagland 2", &hoagland);
    let ec = number(&hoagland, "ec_ms_per_cm");
    assert!((ec / 2.0908 - 1.0).abs() <= 0.03, "{ec}");
    let ph = number(&hoagland, "ph");
    assert!((ph - 4.94).abs() <= 0.05, "{ph}");
    let gypsum = number(&hoagland["saturation"], "gypsum");
    assert!((gypsum + 1.20).abs() <= 0.05, "{gypsum}");
    // What is left out counts as the balance of charges at 25 °C; `pH` is `ph`.
    assert_eq!(solved(&format!(r#"{{"ions": {HOAGLAND_2}}}"#)), hoagland);
    let given = solved(&format!(r#"{{"ions": {HOAGLAND_2}, "pH": 6.5}}"#));
    assert!((number(&given, "ph") - 6.5).abs() < 1e-9);
    // Potassium chloride of 0.01 mol/kg at 15 °C, Pratt et al. 2001 (IUPAC): 1.14145 mS/cm; a meter
    // that shows the value at 25 °C shows 1.40823.
    let chloride = solved(r#"{"ions": {"K": 10, "Cl": 10}, "temperature_c": 15}"#);
    for (key, expected) in [
        ("ec_at_temperature_ms_per_cm", 1.141_45),
        ("ec_ms_per_cm", 1.408_23),
    ] {
        let ec = number(&chloride, key);
        assert!((ec / expected - 1.0).abs() <= 0.01, "{key}: {ec}");
    }
    assert!((number(&chloride, "temperature_c") - 15.0).abs() < 1e-9);
    // Pure water has neither minerals nor ions to speak of.
    let water = solved("{}");
    assert!((number(&water, "ph") - 7.0).abs() < 0.01);
    assert!(
        water["saturation"]
            .as_object()
            .is_some_and(|it| it.values().all(Value::is_null))
    );
}

#[test]
fn a_bad_list_of_ions_ends_with_two_and_names_its_lines() {
    let cases: [(&str, &[&str]); 9] = [
        (r#"{"ions": {"K": -1, "NO3": 6}}"#, &["K"]),
        (r#"{"ions": {"K": "six", "NO3": 1e309}}"#, &["K", "NO3"]),
        (r#"{"ions": {"K": null, "NO3": [1]}}"#, &["K", "NO3"]),
        (r#"{"ions": {"Nitrate": 6, "k": 6}}"#, &["Nitrate", "k"]),
        (r#"{"ions": {"K": 20000}}"#, &["K"]),
        (r#"{"ions": {"K": 6}, "ph": 15}"#, &["ph"]),
        (r#"{"ions": {"K": 6}, "ph": "acid"}"#, &["ph"]),
        (
            r#"{"ions": {"K": 6}, "temperature_c": 60}"#,
            &["temperature_c"],
        ),
        (
            r#"{"ions": {"Ca": 1, "alkalinity": 2, "CO3": 2}}"#,
            &["alkalinity", "ph"],
        ),
    ];
    let refused = |document: &str| -> Vec<Value> {
        let output = run(&["--solution"], document.as_bytes());
        assert_eq!(output.status.code(), Some(2), "{document}");
        assert!(output.stdout.is_empty());
        let json: Value = serde_json::from_slice(&output.stderr).expect("JSON");
        json["problems"].as_array().expect("problems").clone()
    };
    for (document, lines) in cases {
        let problems = refused(document);
        let named: Vec<&str> = problems
            .iter()
            .filter_map(|it| it["field"].as_str())
            .collect();
        assert_eq!(named, lines, "{document}");
        for problem in problems {
            assert!(problem["got"].is_string(), "{problem}");
            assert!(problem["allowed"].as_str().is_some_and(|it| !it.is_empty()));
        }
    }
    let deep = "[".repeat(1_000_000);
    for document in [
        "",
        "[]",
        "null",
        "7",
        "{",
        "NaN",
        r#"{"ions": 7}"#,
        r#"{"temp": 20}"#,
        &deep,
    ] {
        let problems = refused(document);
        assert_eq!(problems.len(), 1);
        assert!(problems[0]["field"].is_null(), "{document}");
    }
    // Lines that are each possible, but no solution together.
    let problems = refused(r#"{"ions": {"Ca": 1, "alkalinity": 0}, "ph": 10}"#);
    assert!(problems[0]["field"].is_null());
    let missing = run(&["--solution", "/no/such/folder/ions.json"], b"");
    assert_eq!(missing.status.code(), Some(1));
    assert_eq!(
        run(&["--solution", "one.json", "two.json"], b"")
            .status
            .code(),
        Some(1)
    );
}

#[test]
fn poor_water_is_told_item_by_item() {
    let mut plan = example("bucket");
    for (pointer, raw) in [
        ("/fertilizer/water_kind", "\"analysis\""),
        ("/fertilizer/water/na_mg_per_l", "120"),
        ("/fertilizer/water/cl_mg_per_l", "185"),
        ("/fertilizer/raw_water_ec_ms_per_cm", "1.0"),
        ("/fertilizer/target_ec_ms_per_cm", "2.2"),
    ] {
        plan = with_raw(&plan, pointer, raw);
    }
    let outcome = solved(&plan);
    let water = &outcome["water"];
    let items = water["restricted"].as_array().expect("a list");
    for (item, severe) in [("sodium_mg_per_l", false), ("chloride_mg_per_l", true)] {
        let found = items.iter().find(|it| it["item"] == *item);
        let found = found.unwrap_or_else(|| panic!("no {item} in {water}"));
        assert_eq!(found["severe"], Value::Bool(severe));
        assert!(found["value"].as_f64() > found["limit"].as_f64());
    }
    // 70 of 185 mg/L of chloride.
    let share = water["raw_water_share_pct"].as_f64().expect("a share");
    assert!((share - 100.0 * 70.0 / 185.0).abs() < 1e-6, "{share}");
}

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

#[test]
fn many_seasons_are_answered_with_chances_and_changes() {
    let plan = example("bucket");
    let output = run(&["--ensemble", "40"], plan.as_bytes());
    assert_eq!(output.status.code(), Some(0));
    let json: Value = serde_json::from_slice(&output.stdout).expect("JSON");
    assert_eq!(json["chances"]["seasons"], 40);
    let lasts = json["chances"]["lasts"].as_f64().expect("a share");
    assert!((0.0..=1.0).contains(&lasts));
    let changes = &json["changes"];
    let (offered, left_out) = (
        changes["offered"].as_array().expect("a list"),
        changes["left_out"].as_array().expect("a list"),
    );
    assert_eq!(offered.len() + left_out.len(), 6);
    // The same again is the same, to the last digit.
    assert_eq!(
        run(&["--ensemble", "40", "-"], plan.as_bytes()).stdout,
        output.stdout
    );
    for arguments in [
        ["--ensemble", "0"],
        ["--ensemble", "many"],
        ["--ensemble", "10001"],
    ] {
        assert_eq!(run(&arguments, plan.as_bytes()).status.code(), Some(1));
    }
}

#[test]
fn readings_and_notebooks_are_forecast_alike() {
    let plan = example("bucket");
    let folder = std::env::temp_dir().join(format!("slackwater-readings-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("a folder");
    let table = folder.join("readings.csv");
    let path = table.to_str().expect("text");
    std::fs::write(&table, "date,level_cm,ec_ms_per_cm\n10,6.1,\n20,9,1.4\n").expect("written");
    let output = run(&["--ensemble", "30", "--readings", path], plan.as_bytes());
    assert_eq!(output.status.code(), Some(0));
    let json: Value = serde_json::from_slice(&output.stdout).expect("JSON");
    assert_eq!(json["notebook"]["readings"], 2);
    assert_eq!(json["notebook"]["day"], 20);
    let notebook = serde_json::json!({
        "plan": serde_json::from_str::<Value>(&plan).expect("JSON"),
        "readings": [
            {"date": 10, "level_cm": 6.1},
            {"date": 20, "level_cm": "9", "ec_ms_per_cm": 1.4},
        ],
    })
    .to_string();
    let whole = run(&["--notebook", "--ensemble", "30"], notebook.as_bytes());
    assert_eq!(whole.stdout, output.stdout);

    // A fault names its line and column, or its path.
    std::fs::write(&table, "date,level_cm\n10,deep\n").expect("written");
    let output = run(&["--readings", path], plan.as_bytes());
    assert_eq!(output.status.code(), Some(2));
    let json: Value = serde_json::from_slice(&output.stderr).expect("JSON");
    let problem = &json["problems"][0];
    assert_eq!(
        (&problem["line"], &problem["column"]),
        (&Value::from(2), &Value::from("level_cm"))
    );
    assert_eq!(problem["kind"], "not_a_number");
    let output = run(
        &["--notebook"],
        notebook.replace("6.1", "\"6.1 kg\"").as_bytes(),
    );
    assert_eq!(output.status.code(), Some(2));
    let json: Value = serde_json::from_slice(&output.stderr).expect("JSON");
    assert_eq!(json["problems"][0]["field"], "readings[0].level_cm");
    assert_eq!(run(&["--readings"], b"").status.code(), Some(1));
    assert_eq!(
        run(&["--readings", "/no/such"], plan.as_bytes())
            .status
            .code(),
        Some(1)
    );
    std::fs::remove_dir_all(&folder).expect("removed");
}

#[test]
fn a_plan_becomes_a_link_and_a_link_a_plan() {
    for name in EXAMPLES {
        let plan = example(name);
        let output = run(&["--link"], plan.as_bytes());
        assert_eq!(output.status.code(), Some(0));
        let link = String::from_utf8(output.stdout).expect("letters");
        let back = run(&["--from-link", link.trim()], b"");
        assert_eq!(back.status.code(), Some(0));
        let read = |text: &[u8]| serde_json::from_slice::<Value>(text).expect("JSON");
        assert_eq!(read(&back.stdout), read(plan.as_bytes()));
    }
    let damaged = run(&["--from-link", "P-0405HGH3QQ"], b"");
    assert_eq!(damaged.status.code(), Some(2));
    let problems: Value = serde_json::from_slice(&damaged.stderr).expect("JSON");
    assert_eq!(problems["problems"][0]["kind"], "damaged");
}

#[test]
fn a_trial_is_worked_out_with_records_and_without() {
    let printed = run(&["--example-trial"], b"");
    assert_eq!(printed.status.code(), Some(0));
    let solved = |json: &[u8]| -> Value {
        let output = run(&["--trial", "-"], json);
        let error = String::from_utf8_lossy(&output.stderr);
        assert_eq!(output.status.code(), Some(0), "{error}");
        serde_json::from_slice(&output.stdout).expect("the outcome is JSON")
    };
    let outcome = solved(&printed.stdout);
    let units = outcome["units"].as_array().expect("units");
    assert_eq!(units.len(), 12);
    let heads: usize = outcome["reports"][0]["units"]
        .as_array()
        .expect("values")
        .iter()
        .map(|unit| unit["heads_g"].as_array().expect("heads").len())
        .sum();
    assert_eq!(heads, 46);
    assert_eq!(outcome["reports"][0]["conclusion"]["kind"], "differs");
    assert_eq!(
        outcome["reports"][1]["conclusion"]["kind"],
        "cannot_be_told"
    );

    let mut trial: Value = serde_json::from_slice(&printed.stdout).expect("a trial");
    trial["records"] = Value::Array(Vec::new());
    let outcome = solved(trial.to_string().as_bytes());
    assert_eq!(outcome["reports"], Value::Array(Vec::new()));
    assert!(outcome["needed"]["expected"]["replicates"].is_u64());

    trial["design"] = Value::from("by eye");
    let output = run(&["--trial"], trial.to_string().as_bytes());
    assert_eq!(output.status.code(), Some(2));
    let refusal: Value = serde_json::from_slice(&output.stderr).expect("the refusal is JSON");
    assert_eq!(refusal["problems"][0]["field"], "design");
    assert_eq!(refusal["problems"][0]["kind"], "not_a_choice");
}

#[test]
fn the_calendar_file_holds_the_dates_of_the_outcome() {
    for name in EXAMPLES {
        let plan = example(name);
        let calendar = &solved(&plan)["calendar"];
        for arguments in [&["--calendar"][..], &["--calendar", "-"][..]] {
            let output = run(arguments, plan.as_bytes());
            assert_eq!(output.status.code(), Some(0));
            let file = String::from_utf8(output.stdout).expect("text");
            assert!(file.starts_with("BEGIN:VCALENDAR\r\n"), "{name}");
            assert!(file.ends_with("END:VCALENDAR\r\n"), "{name}");
            let harvest = calendar["harvest"].as_str().expect("a harvest");
            let day = format!("DTSTART;VALUE=DATE:{}\r\n", harvest.replace('-', ""));
            assert!(file.contains(&day), "{name}");
        }
    }
    let output = run(&["--calendar"], b"{}");
    assert_eq!(output.status.code(), Some(2));
    assert!(output.stdout.is_empty());
}

#[test]
fn roots_and_succession_are_in_the_outcome() {
    let mut plan: Value = serde_json::from_str(&example("bucket")).expect("JSON");
    let outcome = solved(&plan.to_string());
    let days = outcome["season"]["days"].as_array().map(Vec::len);
    assert_eq!(outcome["roots"]["days"].as_array().map(Vec::len), days);
    assert!(outcome["roots"]["failure"].is_null() && outcome["succession"].is_null());
    plan["crop"]["people"] = 20.into();
    assert_eq!(solved(&plan.to_string())["succession"]["containers"], 98);
    plan["container"]["fill_depth_cm"] = 30.into();
    let failure = &solved(&plan.to_string())["roots"]["failure"];
    assert_eq!(failure["kind"], "contact_lost");
    assert_eq!(failure["mends"][0]["mend"], "fill_depth");
}
