//! What the options of the command answer.

use serde_json::Value;

use crate::*;

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
