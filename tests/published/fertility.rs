//! Least squares, recipes, solubility and acids; then what the crop and the water make of them.

mod crop_and_water;

use crate::table::{Row, rows};
use slackwater::catalog::Keyed;
use slackwater::catalog::acids::Acid;
use slackwater::catalog::recipes::RecipeChoice;
use slackwater::catalog::salts::Salt;
use slackwater::catalog::solubility::{saturated_mass_fraction, saturation};
use slackwater::science::label::{Concentrations, Nutrient};
use slackwater::science::least_squares::{self, bounded};
use slackwater::science::units::electrical_conductivity::siemens_per_meter;
use slackwater::science::units::mass_concentration::{gram_per_liter, milligram_per_liter};
use slackwater::science::units::mass_density::gram_per_cubic_centimeter;
use slackwater::science::units::molar_concentration::{millimole_per_liter, mole_per_liter};
use slackwater::science::units::ratio::percent;
use slackwater::science::units::thermodynamic_temperature::degree_celsius;
use slackwater::science::units::{Ratio, ThermodynamicTemperature};

/// Both programs solve to the last bits of doubles; the systems magnify them a thousandfold, and
/// the table keeps ten decimals.
const SAME_FIT: f64 = 1e-8;
/// The model holds one volume per salt for all temperatures; that of the calcium salts moves most.
const ONE_VOLUME_PERCENT: f64 = 2.0;
/// Charges of exact decimals in mmol/L; only the last bits of doubles remain.
const CHARGE: f64 = 1e-9;
/// The hand calculations keep four decimals.
const FOUR_DECIMALS: f64 = 0.6e-4;

fn celsius(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(value)
}

fn keyed<K: Keyed>(row: &Row, column: &str) -> K {
    let key = row.text(column);
    K::from_key(key).unwrap_or_else(|| panic!("no '{key}'"))
}

fn numbers(row: &Row, column: &str) -> Vec<f64> {
    row.text(column)
        .split(' ')
        .map(|word| word.parse().expect("a number"))
        .collect()
}

fn concentration(solution: &Concentrations, name: &str) -> f64 {
    if name == "N" {
        return solution.nitrogen().get::<milligram_per_liter>();
    }
    let nutrient = Nutrient::ALL
        .into_iter()
        .find(|it| format!("{it:?}") == name)
        .expect("a nutrient");
    solution.of(nutrient).get::<milligram_per_liter>()
}

#[test]
fn least_squares_agree_with_scipy() {
    let table = rows(include_str!("data/fertility_least_squares.csv"));
    let mut cases: Vec<&str> = table.iter().map(|row| row.text("case")).collect();
    cases.dedup();
    assert!(cases.len() >= 10);
    for case in cases {
        let unknowns: Vec<&Row> = table.iter().filter(|it| it.text("case") == case).collect();
        let columns: Vec<Vec<f64>> = unknowns
            .iter()
            .map(|row| numbers(row, "coefficients"))
            .collect();
        let weights = numbers(unknowns[0], "weights");
        let targets = numbers(unknowns[0], "targets");
        let matrix: Vec<Vec<f64>> = (0..targets.len())
            .map(|i| columns.iter().map(|column| column[i]).collect())
            .collect();
        let system: Vec<least_squares::Row<'_>> = matrix
            .iter()
            .zip(targets.iter().zip(&weights))
            .map(|(coefficients, (&target, &weight))| least_squares::Row {
                coefficients,
                target,
                weight,
            })
            .collect();
        let upper: Vec<f64> = unknowns.iter().map(|row| row.number("upper")).collect();
        let fit = bounded(&system, &upper).unwrap_or_else(|it| panic!("{case}: {it:?}"));
        for (row, amount) in unknowns.iter().zip(&fit.amounts) {
            let expected = row.number("amount");
            assert!(
                (amount - expected).abs() <= SAME_FIT * (1.0 + expected),
                "{case} {}: {amount}, not {expected}",
                row.text("unknown")
            );
        }
        let total = unknowns[0].number("sum_of_squares");
        assert!(
            (fit.sum_of_squares - total).abs() <= SAME_FIT * (1.0 + total),
            "{case}: {}, not {total}",
            fit.sum_of_squares
        );
    }
}

#[test]
fn recipes_hold_the_published_elements() {
    for row in rows(include_str!("data/fertility_recipes.csv")) {
        let recipe: RecipeChoice = keyed(&row, "recipe");
        let got = concentration(&recipe.targets(), row.text("nutrient"));
        assert!(
            (got - row.number("mg_per_l")).abs() <= row.number("tolerance"),
            "{recipe:?} {}: {got} mg/L",
            row.text("nutrient")
        );
    }
}

/// Cations less anions, me/L.
fn excess_of_cations(recipe: RecipeChoice) -> f64 {
    let targets = recipe.targets();
    (targets.cation_charge() - targets.anion_charge()).get::<millimole_per_liter>()
}

#[test]
fn charges_of_the_recipes_balance_where_they_are_said_to() {
    for recipe in [
        RecipeChoice::HoaglandArnon1,
        RecipeChoice::HoaglandArnon2,
        RecipeChoice::Steiner,
        RecipeChoice::SonneveldStraverLettuce,
    ] {
        let excess = excess_of_cations(recipe);
        assert!(excess.abs() < CHARGE, "{recipe:?}: {excess} me/L");
    }
    // The sulfate that is left open fills the gap, and magnesium sulfate brings enough of it.
    let open = RecipeChoice::ModifiedSonneveld;
    let magnesium = 2.0 * concentration(&open.targets(), "Mg") / 24.305;
    assert_eq!(open.left_open(), [Nutrient::S]);
    assert!((0.0..magnesium).contains(&excess_of_cations(open)));
}

#[test]
fn recipes_read_what_their_authors_say() {
    // Sum of cations in me/L over ten, within a fifth: common practice (Sonneveld & Voogt 2009).
    for &recipe in RecipeChoice::ALL {
        let Some(published) = recipe.published_conductivity() else {
            continue;
        };
        let cations = recipe.targets().cation_charge();
        let rule = cations.get::<millimole_per_liter>() / 10.0;
        let published = published.get::<siemens_per_meter>() * 10.0;
        assert!(
            (published / rule - 1.0).abs() < 0.2,
            "{recipe:?}: {published} mS/cm, {rule} by the rule"
        );
    }
}

#[test]
fn solubilities_meet_other_tables() {
    for row in rows(include_str!("data/fertility_solubility.csv")) {
        let salt: Salt = keyed(&row, "salt");
        let printed = row.number("g_per_100_g_water");
        let expected = 100.0 * printed / (100.0 + printed);
        let got = saturated_mass_fraction(salt, celsius(row.number("temperature_c")))
            .unwrap_or_else(|it| panic!("{salt:?}: {it:?}"))
            .get::<percent>();
        assert!(
            (got / expected - 1.0).abs() <= row.number("tolerance_percent") / 100.0,
            "{salt:?}: {got} %, not {expected} %"
        );
    }
}

#[test]
fn saturated_solutions_hold_what_their_density_says() {
    for row in rows(include_str!("data/fertility_saturation.csv")) {
        let salt: Salt = keyed(&row, "salt");
        let t = row.number("temperature_c");
        let got = saturation(salt, celsius(t))
            .unwrap_or_else(|it| panic!("{salt:?}: {it:?}"))
            .get::<gram_per_liter>();
        let off = 100.0 * (got / row.number("g_per_l") - 1.0);
        assert!(
            off.abs() <= ONE_VOLUME_PERCENT,
            "{salt:?} at {t} °C: {got} g/L, off by {off} %"
        );
    }
}

#[test]
fn acids_have_the_published_density_and_strength() {
    for row in rows(include_str!("data/fertility_acids.csv")) {
        let acid: Acid = keyed(&row, "acid");
        let strength = Ratio::new::<percent>(row.number("mass_percent"));
        let density = acid.density(strength).expect("in the table");
        let amount = acid.moles_per_litre(strength, density).expect("an acid");
        let allowed = row.number("tolerance_percent") / 100.0;
        for (got, expected) in [
            (
                density.get::<gram_per_cubic_centimeter>(),
                row.number("density"),
            ),
            (
                amount.get::<mole_per_liter>(),
                row.number("moles_per_litre"),
            ),
        ] {
            assert!(
                (got / expected - 1.0).abs() <= allowed,
                "{acid:?} {} %: {got}, not {expected}",
                row.text("mass_percent")
            );
        }
    }
}

#[test]
fn acids_give_their_protons() {
    for row in rows(include_str!("data/fertility_protons.csv")) {
        let acid: Acid = keyed(&row, "acid");
        let got = acid.protons_given(row.number("ph")).expect("a pH");
        assert!(
            (got - row.number("protons")).abs() <= FOUR_DECIMALS,
            "{acid:?} at pH {}: {got}",
            row.text("ph")
        );
    }
}
