//! The solutions of `phreeqc/cases.csv`, worked out and timed; `phreeqc/compare.py` judges.

use serde_json::{Value, json};
use slackwater::science::solution::{
    Acidity, Carbonate, Component, Equilibria, Mineral, Recipe, Species, Totals,
};
use slackwater::science::units::{
    MolarConcentration, Pressure, ThermodynamicTemperature,
    electrical_conductivity::siemens_per_meter, molar_concentration::millimole_per_liter,
    molar_concentration::mole_per_liter, pressure::pascal,
    thermodynamic_temperature::degree_celsius,
};
use std::hint::black_box;
use std::time::Instant;

const COLUMNS: [(&str, Component); 9] = [
    ("ca", Component::Calcium),
    ("mg", Component::Magnesium),
    ("na", Component::Sodium),
    ("k", Component::Potassium),
    ("nh4", Component::Ammonium),
    ("no3", Component::Nitrate),
    ("cl", Component::Chloride),
    ("so4", Component::Sulfate),
    ("po4", Component::Phosphate),
];

/// One solution of the table.
struct Case {
    name: String,
    temperature: ThermodynamicTemperature,
    recipe: Recipe,
}

fn cases() -> Vec<Case> {
    let mut lines = include_str!("phreeqc/cases.csv")
        .lines()
        .filter(|line| !line.starts_with('#'));
    let header: Vec<&str> = lines.next().expect("a header").split(',').collect();
    lines
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            let text = |name: &str| {
                let place = header.iter().position(|it| *it == name);
                cells[place.expect("a column of that name")]
            };
            let number = |name: &str| text(name).parse::<f64>().expect("a number");
            let mmol = MolarConcentration::new::<millimole_per_liter>;
            let mut totals =
                Totals::of(COLUMNS.map(|(name, component)| (component, mmol(number(name)))));
            let amount = number("amount");
            let carbonate = match text("carbonate") {
                "alkalinity" => Carbonate::Alkalinity(mmol(amount)),
                "air" => Carbonate::Air(Pressure::new::<pascal>(amount)),
                _ => {
                    totals.add(Component::Carbonate, mmol(amount));
                    Carbonate::Closed
                }
            };
            let acidity = match text("ph") {
                "charge" => Acidity::Balance,
                ph => Acidity::Ph(ph.parse().expect("a pH")),
            };
            Case {
                name: text("case").to_owned(),
                temperature: ThermodynamicTemperature::new::<degree_celsius>(number("celsius")),
                recipe: Recipe {
                    totals,
                    carbonate,
                    acidity,
                },
            }
        })
        .collect()
}

fn solved(case: &Case) -> Value {
    let constants = Equilibria::at(case.temperature).expect("a temperature in range");
    let solution = constants
        .solve(&case.recipe)
        .unwrap_or_else(|problem| panic!("{}: {problem:?}", case.name));
    let species: serde_json::Map<String, Value> = Species::ALL
        .into_iter()
        .map(|species| {
            let molal = solution.concentration(species).get::<mole_per_liter>();
            (species.formula().to_owned(), json!(molal))
        })
        .collect();
    json!({
        "case": case.name,
        "ms_per_cm": 10.0 * solution.conductivity().get::<siemens_per_meter>(),
        "ph": solution.ph(),
        "ionic_strength": solution.ionic_strength().get::<mole_per_liter>(),
        "gypsum": solution.saturation_index(Mineral::Gypsum),
        "brushite": solution.saturation_index(Mineral::Brushite),
        "calcite": solution.saturation_index(Mineral::Calcite),
        "hydroxyapatite": solution.saturation_index(Mineral::Hydroxyapatite),
        "iterations": solution.iterations(),
        "species": species,
    })
}

#[test]
#[ignore = "phreeqc/compare.py runs it and reads what it prints"]
fn prints_every_case() {
    for case in cases() {
        println!("OURS {}", solved(&case));
    }
}

#[test]
#[ignore = "phreeqc/compare.py runs it and reads what it prints"]
fn times_every_case() {
    /// Rounds over the whole table; the quickest counts, as on the other side.
    const ROUNDS: usize = 50;
    let cases = cases();
    let mut each = f64::INFINITY;
    for _ in 0..ROUNDS {
        let start = Instant::now();
        for case in &cases {
            // Everything that the other code does for one solution: constants for its temperature,
            // species, conductivity, saturation.
            let constants = Equilibria::at(black_box(case.temperature)).expect("in range");
            let solution = constants.solve(black_box(&case.recipe)).expect("solved");
            black_box(solution.conductivity());
            black_box(Mineral::ALL.map(|mineral| solution.saturation_index(mineral)));
        }
        each = each.min(start.elapsed().as_secs_f64() / cases.len() as f64);
    }
    println!("SECONDS {}", json!({ "each": each }));
}
