//! Solutions and raw water as the command tells them.

use serde_json::Value;

use crate::*;

pub fn assert_chemistry(name: &str, outcome: &Value) {
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
