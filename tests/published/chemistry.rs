//! Atomic weights, salts, labels, standard solutions and the sum-of-cations conductivity.

use crate::table::{Row, rows};
use slackwater::catalog::Keyed;
use slackwater::catalog::blends::BlendChoice;
use slackwater::catalog::crops::CropKind;
use slackwater::catalog::salts::Salt;
use slackwater::catalog::tissue;
use slackwater::science::formula::Element;
use slackwater::science::label::{Composition, Concentrations, Nutrient, Oxide};
use slackwater::science::units::mass_concentration::{gram_per_liter, milligram_per_liter};
use slackwater::science::units::molar_concentration::millimole_per_liter;
use slackwater::science::units::molar_mass::gram_per_mole;
use slackwater::science::units::ratio::{percent, ratio};
use slackwater::science::units::{MassConcentration, MolarConcentration, Ratio};

/// Abridged weights keep five figures: at most half a unit of the third place after the point.
const FIVE_FIGURES: f64 = 0.0005;
/// The source prints two places; its weights may be older ones.
const SALT_CONTENT_PERCENT: f64 = 0.05;
/// The source prints two places, the chelates sum forty atoms.
const SALT_MOLAR_MASS: f64 = 0.02;
/// The factors are printed to four places; K₂O is 0.83015 and printed either way.
const LABEL_FACTOR: f64 = 0.0001;
/// Printed figures were rounded at each step.
const ROUNDED_STEPS: f64 = 0.005;
/// Charges balance exactly in mmol/L; only the last bits of doubles remain.
const CHARGE: f64 = 1e-9;
/// The sums over ten are exact decimal arithmetic.
const SUM_OVER_TEN: f64 = 1e-9;
/// The tissue figures are printed to two figures.
const TISSUE_PERCENT: f64 = 0.05;

fn nutrient_of(name: &str) -> Option<Nutrient> {
    Nutrient::ALL
        .into_iter()
        .find(|nutrient| format!("{nutrient:?}") == name)
}

fn salt_of(key: &str) -> Salt {
    Salt::from_key(key).unwrap_or_else(|| panic!("no salt '{key}'"))
}

fn fraction(composition: &Composition, name: &str) -> f64 {
    match name {
        "N" => composition.nitrogen(),
        "N-nitrate" => composition.fraction(Nutrient::NitrateN),
        "N-ammonium" => composition.fraction(Nutrient::AmmoniumN),
        other => composition.fraction(nutrient_of(other).expect("a nutrient")),
    }
    .get::<percent>()
}

fn dissolve(solution: Concentrations, composition: &Composition, grams: f64) -> Concentrations {
    solution
        .add(composition, MassConcentration::new::<gram_per_liter>(grams))
        .expect("an amount that can be")
}

/// A tenth of the charge of the cations, mS/cm: the rule of thumb of Sonneveld & Voogt (2009), from
/// memory, that tables of standard solutions quote beside the measured figure.
fn rule_of_thumb(charge: MolarConcentration) -> f64 {
    charge.get::<millimole_per_liter>() / 10.0
}

/// A solution given by its ions in mmol/L.
fn solution_of_ions(row: &Row) -> Concentrations {
    [
        ("no3", Nutrient::NitrateN),
        ("nh4", Nutrient::AmmoniumN),
        ("h2po4", Nutrient::P),
        ("so4", Nutrient::S),
        ("k", Nutrient::K),
        ("ca", Nutrient::Ca),
        ("mg", Nutrient::Mg),
    ]
    .into_iter()
    .fold(Concentrations::NONE, |solution, (ion, nutrient)| {
        let weight = nutrient.element().atomic_weight().get::<gram_per_mole>();
        let amount = MassConcentration::new::<milligram_per_liter>(row.number(ion) * weight);
        solution.with(nutrient, amount).expect("an amount")
    })
}

#[test]
fn atomic_weights_lie_in_the_standard_intervals() {
    let table = rows(include_str!("data/chemistry_atomic_weights.csv"));
    assert_eq!(table.len(), Element::ALL.len());
    for (row, element) in table.iter().zip(Element::ALL) {
        assert_eq!(row.text("symbol"), element.symbol());
        let weight = element.atomic_weight().get::<gram_per_mole>();
        let low = row.number("low") - FIVE_FIGURES;
        let high = row.number("high") + FIVE_FIGURES;
        assert!(
            (low..=high).contains(&weight),
            "{}: {weight} not in {low}..{high}",
            element.symbol()
        );
    }
}

#[test]
fn salts_hold_what_stoichiometry_says() {
    let table = rows(include_str!("data/chemistry_salts.csv"));
    for row in &table {
        let salt = salt_of(row.text("salt"));
        let formula = salt.formula().expect("salts of the table have a formula");
        let molar_mass = formula.molar_mass().get::<gram_per_mole>();
        assert!(
            (molar_mass - row.number("molar_mass")).abs() <= SALT_MOLAR_MASS,
            "{salt:?}: {molar_mass} g/mol"
        );
        let got = fraction(&salt.composition(), row.text("nutrient"));
        assert!(
            (got - row.number("percent")).abs() <= SALT_CONTENT_PERCENT,
            "{salt:?} {}: {got} %",
            row.text("nutrient")
        );
    }
    for &salt in Salt::ALL {
        let listed = table.iter().any(|row| row.text("salt") == salt.key());
        // Iron EDDHA is a mixture sold by its iron content.
        assert_eq!(listed, salt != Salt::IronEddha, "{salt:?}");
    }
}

#[test]
fn label_factors_are_the_customary_ones() {
    for row in rows(include_str!("data/chemistry_label_factors.csv")) {
        let oxide = match row.text("oxide") {
            "P2O5" => Oxide::P2O5,
            "K2O" => Oxide::K2O,
            "CaO" => Oxide::CaO,
            "MgO" => Oxide::MgO,
            "SO3" => Oxide::SO3,
            other => panic!("no oxide '{other}'"),
        };
        let factor = oxide.element_fraction().get::<ratio>();
        assert!(
            (factor - row.number("factor")).abs() <= LABEL_FACTOR,
            "{oxide:?}: {factor}"
        );
    }
}

#[test]
fn hoagland_solutions_hold_the_printed_elements() {
    for row in rows(include_str!("data/chemistry_hoagland.csv")) {
        let mut solution = Concentrations::NONE;
        for key in [
            "potassium_nitrate",
            "calcium_nitrate_tetrahydrate",
            "monopotassium_phosphate",
            "monoammonium_phosphate",
            "magnesium_sulfate_heptahydrate",
        ] {
            let salt = salt_of(key);
            let formula = salt.formula().expect("a formula");
            let grams = row.number(key) * formula.molar_mass().get::<gram_per_mole>() / 1000.0;
            solution = dissolve(solution, &salt.composition(), grams);
        }
        let got = match row.text("nutrient") {
            "N" => solution.nitrogen(),
            name => solution.of(nutrient_of(name).expect("a nutrient")),
        }
        .get::<milligram_per_liter>();
        let printed = row.number("mg_per_l");
        assert!(
            (got - printed).abs() <= row.number("half_unit") + ROUNDED_STEPS * printed,
            "Hoagland {} {}: {got} mg/L",
            row.text("solution"),
            row.text("nutrient")
        );
    }
}

#[test]
fn standard_solutions_balance_and_give_the_sum_of_cations() {
    for row in rows(include_str!("data/chemistry_solutions.csv")) {
        let name = row.text("solution");
        let solution = solution_of_ions(&row);
        let (plus, minus) = (solution.cation_charge(), solution.anion_charge());
        let difference = (plus - minus).get::<millimole_per_liter>();
        assert!(difference.abs() <= CHARGE, "{name}: {difference} me/L");
        let ec = rule_of_thumb(plus);
        assert!(
            (ec - row.number("sum_over_ten")).abs() <= SUM_OVER_TEN,
            "{name}: {ec} mS/cm"
        );
    }
}

/// Common practice, no source: stock A holds 120 g/L of calcium nitrate (double salt), stock B
/// 120 g/L of 8-15-36 and 72 g/L of magnesium sulfate; 5 to 6 mL of each per litre give about
/// 1.5 mS/cm.
#[test]
fn two_stock_practice_gives_about_one_and_a_half() {
    let label = BlendChoice::Grade8x15x36.label().expect("a grade");
    let blend = Composition::from_label(&label).expect("a possible label");
    let stock_a = dissolve(
        Concentrations::NONE,
        &Salt::CalciumAmmoniumNitrate.composition(),
        120.0,
    );
    let stock_b = dissolve(Concentrations::NONE, &blend, 120.0);
    let stock_b = dissolve(stock_b, &Salt::MagnesiumSulfate.composition(), 72.0);
    let stocks = stock_a.plus(&stock_b).expect("a sum");
    let practice = 1.5;
    for millilitres in [5.0, 5.5, 6.0] {
        let tank = stocks
            .scaled(Ratio::new::<ratio>(millilitres / 1000.0))
            .expect("a dilution");
        let ec = rule_of_thumb(tank.cation_charge());
        // The estimate itself is good to 10 to 30 %; the middle holds for complete solutions.
        assert!(
            (ec / practice - 1.0).abs() <= 0.20,
            "{millilitres} mL/L each: {ec} mS/cm"
        );
    }
}

#[test]
fn tissue_contents_follow_from_the_analyses() {
    for row in rows(include_str!("data/chemistry_tissue.csv")) {
        let crop = CropKind::from_key(row.text("crop")).expect("a crop");
        let dry = tissue::dry_matter_content(crop).get::<percent>();
        assert!((dry - row.number("dry_matter")).abs() < 1e-9);
        let tissue = tissue::of(crop);
        // Nitrate adds 0.2 to 0.6 g of N per kg fresh (from memory).
        let nitrate = tissue.n.typical.get::<percent>() - row.number("protein_n");
        assert!((0.02 / dry * 100.0..=0.06 / dry * 100.0).contains(&nitrate));
        for (name, content) in [
            ("p", tissue.p),
            ("k", tissue.k),
            ("ca", tissue.ca),
            ("mg", tissue.mg),
        ] {
            let got = content.typical.get::<percent>();
            assert!(
                (got - row.number(name)).abs() <= TISSUE_PERCENT,
                "{crop:?} {name}: {got}"
            );
        }
    }
}
