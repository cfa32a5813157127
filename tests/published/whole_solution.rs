//! Whole plans down to the grams: published solutions weighed from single salts, stocks that must
//! not meet, raw water and the acid that it takes, and what a head's fertilizer costs.

use slackwater::advice::{Material, Saturation, solution_of_ions};
use slackwater::catalog::Keyed;
use slackwater::catalog::recipes::RecipeChoice;
use slackwater::catalog::salts::Salt;
use slackwater::plan::{
    AcidChoice, Dosing, Example, Field, Pick, Plan, SaltLine, SoundIons, StrengthBy, WaterKind,
};
use slackwater::science::raw_water::Item;
use slackwater::{Outcome, solve};

use crate::practice::{set, solved, within};
use crate::table;

/// The demand: half of what a grower's scale and a bag's purity leave open.
const ELEMENTS: f64 = 0.01;
/// The demand on agreement with the geochemistry code; ours stands open to the air and holds trace
/// elements besides.
const CONDUCTIVITY: f64 = 0.03;
/// Salts of trace elements bring a little sulfate, for which the sulfates of the recipe make room.
const GRAMS: f64 = 0.01;
/// Beyond an ionic strength of 0.5 mol/kg, where the activity coefficients are extrapolated.
const INDEX: f64 = 0.2;

/// A published solution at full strength in rain water, from the salts of the example's shelf.
fn from_salts(recipe: RecipeChoice) -> Outcome {
    let mut plan = Example::Bucket.plan();
    plan.fertilizer.water_kind = Pick::Known(WaterKind::Rain);
    plan.fertilizer.dosing = Pick::Known(Dosing::Salts);
    plan.fertilizer.recipe = Pick::Known(recipe);
    set(&mut plan, Field::RecipeStrength, 100.0);
    solved(&plan)
}

fn recipe(row: &table::Row) -> RecipeChoice {
    let key = row.text("recipe");
    RecipeChoice::from_key(key).unwrap_or_else(|| panic!("no recipe '{key}'"))
}

fn close(what: &str, got: f64, expected: f64, relative: f64) {
    let miss = got / expected - 1.0;
    assert!(miss.abs() <= relative, "{what}: {got}, not {expected}");
}

#[test]
fn salts_make_the_published_elements() {
    for row in table::rows(include_str!("data/whole_solution_elements.csv")) {
        let elements = from_salts(recipe(&row)).fertilizer.elements_mg_per_l;
        let got = match row.text("element") {
            "n" => elements.n,
            "p" => elements.p,
            "k" => elements.k,
            "ca" => elements.ca,
            "mg" => elements.mg,
            "s" => elements.s,
            other => panic!("no element '{other}'"),
        };
        let what = format!("{} {}", row.text("recipe"), row.text("element"));
        close(&what, got, row.number("mg_per_l"), ELEMENTS);
    }
}

#[test]
fn solutions_of_salts_read_what_their_ions_read() {
    for row in table::rows(include_str!("data/whole_solution_recipes.csv")) {
        let outcome = from_salts(recipe(&row));
        let ec = outcome.solution.ec_ms_per_cm;
        println!(
            "{:28} {ec:.3} mS/cm, {}",
            row.text("recipe"),
            row.text("ms_per_cm")
        );
        close(
            row.text("recipe"),
            ec,
            row.number("ms_per_cm"),
            CONDUCTIVITY,
        );
    }
}

#[test]
fn the_salts_are_those_that_the_publications_weigh() {
    let rows = table::rows(include_str!("data/whole_solution_salts.csv"));
    for row in &rows {
        let grams = row.number("g_per_l");
        // The table's own arithmetic, to its last digit.
        let product = row.number("mmol_per_l") * row.number("molar_mass") / 1000.0;
        assert!((product - grams).abs() <= 0.6e-4, "{product}, not {grams}");
        let salt = Salt::from_key(row.text("salt")).expect("a salt of the catalog");
        let outcome = from_salts(recipe(row));
        let mut doses = outcome.fertilizer.doses.iter();
        let dose = doses.find(|it| it.material == Material::Salt(salt));
        let weighed = dose.and_then(|it| it.mass_g).unwrap_or_default();
        let what = format!("{} {}", row.text("recipe"), row.text("salt"));
        close(&what, weighed / outcome.fill.volume_l, grams, GRAMS);
    }
    // And no other salt of a major nutrient.
    for &choice in &[
        RecipeChoice::HoaglandArnon1,
        RecipeChoice::HoaglandArnon2,
        RecipeChoice::Steiner,
    ] {
        let outcome = from_salts(choice);
        let listed: Vec<&str> = rows
            .iter()
            .filter(|row| recipe(row) == choice)
            .map(|row| row.text("salt"))
            .collect();
        for dose in &outcome.fertilizer.doses {
            let Material::Salt(salt) = dose.material else {
                panic!("{dose:?} is no salt of the shelf");
            };
            let grams = dose.mass_g.unwrap_or_default() / outcome.fill.volume_l;
            assert!(
                listed.contains(&salt.key()) || grams < 0.02,
                "{}: {grams} g/L of {}",
                choice.key(),
                salt.key()
            );
        }
    }
}

#[test]
fn one_tank_of_concentrate_clouds_where_the_code_says() {
    for row in table::rows(include_str!("data/whole_solution_one_tank.csv")) {
        let factor = row.number("factor");
        let ions = ["NO3", "NH4", "PO4", "SO4", "K", "Ca", "Mg"];
        let amounts = ions.map(|ion| (ion, factor * row.number(&ion.to_lowercase())));
        let solution = solution_of_ions(&SoundIons {
            amounts: amounts.to_vec(),
            ph: None,
            temperature_c: 25.0,
        })
        .expect("a solution");
        let got = solution.saturation.gypsum.expect("calcium and sulfate");
        let expected = row.number("gypsum");
        let what = format!(
            "{} {factor} times: {got}, not {expected}",
            row.text("solution")
        );
        assert!((got - expected).abs() <= INDEX, "{what}");
        assert!(got * expected > 0.0, "{what}");
    }
}

#[test]
fn stocks_are_clear_apart_and_cloud_together() {
    // By hand: equal volumes of 120 g/L of the double salt (18.54 % Ca) and 72 g/L of magnesium
    // sulfate heptahydrate hold 0.28 mol/L of calcium and at least 0.146 mol/L of sulfate; with
    // activity coefficients of 0.03 or more at that strength their product is above
    // 10^-4.58, the solubility product of gypsum (PHREEQC, wateq4f.dat).
    for example in [Example::CoveredTank, Example::FloatingBoards] {
        let outcome = solved(&example.plan());
        assert_eq!(outcome.stocks.len(), 2);
        for stock in &outcome.stocks {
            assert!(stock.clear, "{stock:?}");
            assert!(stock.saturation.worst() <= 0.0);
        }
        // Stock A has no sulfate, stock B no calcium: neither can form gypsum by itself.
        let [a, b] = [0, 1].map(|index: usize| outcome.stocks[index].saturation);
        let none = |it: Saturation| it.gypsum.is_none();
        assert!(none(a) && none(b), "{a:?} {b:?}");
        let together = outcome.stocks_together.expect("two stocks");
        // Nor in any other proportion.
        assert!(together.mixtures.len() >= 5);
        for mixture in &together.mixtures {
            let gypsum = mixture.saturation.gypsum.expect("calcium and sulfate");
            assert!(gypsum > INDEX, "{mixture:?}");
        }
        let together_at = together.clear_when_thinned_times.expect("thin enough");
        assert!((2.0..200.0).contains(&together_at), "{together_at}");
        let gypsum = together.saturation.gypsum.expect("calcium and sulfate");
        println!("{}: gypsum {gypsum:.2} together", example.key());
        assert!(gypsum > INDEX, "{gypsum}");
        // In the tank, two hundred times thinner, everything stays dissolved.
        let tank = outcome.solution.saturation.gypsum.expect("both are there");
        assert!(tank < -INDEX, "{tank}");
    }
}

#[test]
fn salts_of_a_stock_share_what_dissolves() {
    // By hand, at 10 degrees: 120 g/L of 8-15-36 with 7.9 % of nitrate nitrogen hold 0.677 mol/L of
    // nitrate, 0.917 of potassium (36 % as K2O) and 0.254 of phosphate (15 % as P2O5). So 0.677 mol
    // of potassium nitrate (101.1 g/mol, 17.6 % of a saturated solution, CRC Handbook) and 0.240 of
    // monopotassium phosphate (136.1 g/mol, 14.91 %); their saturated solutions weigh 1.115 and
    // 1.105 kg/L (from memory). And 72 g/L of magnesium sulfate heptahydrate (21.7 % without its
    // water, 2.048 times as much with it; 1.24 kg/L, from memory).
    const DENSITIES_FROM_MEMORY: f64 = 0.02;
    let by_hand = 0.677 * 101.1 / (0.176 * 1115.0)
        + 0.240 * 136.1 / (0.1491 * 1105.0)
        + 72.0 / (0.217 * 2.048 * 1240.0);
    let outcome = solved(&Example::CoveredTank.plan());
    let got = outcome.stocks[1].dissolving_pct / 100.0;
    assert!(
        (got / by_hand - 1.0).abs() < DENSITIES_FROM_MEMORY,
        "{got}, by hand {by_hand}"
    );
}

#[test]
fn fertilizer_of_a_head_costs_less_than_two_cents_in_bulk() {
    // Common practice, no source: under 0.02 a head. The prices per kilogram are assumed, as bulk
    // bags of the trade go.
    for example in [Example::CoveredTank, Example::FloatingBoards] {
        let mut plan = example.plan();
        for (field, price) in [
            (Field::PriceBlend, 2.5),
            (Field::PriceCalciumNitrate, 0.8),
            (Field::PriceMagnesiumSulfate, 0.7),
        ] {
            set(&mut plan, field, price);
        }
        let cost = solved(&plan).fertilizer.cost.expect("prices were given");
        println!("{}: {:.4} a head", example.key(), cost.per_head);
        within(example.key(), cost.per_head, 0.001, 0.02);
    }
}

/// A plan with an analysis of its raw water: Ca, Mg, Na, K, Cl, SO4, alkalinity as `CaCO3`, NO3 in
/// mg/L, pH, and mS/cm.
fn with_water(mut plan: Plan, figures: [f64; 10]) -> Plan {
    plan.fertilizer.water_kind = Pick::Known(WaterKind::Analysis);
    let fields = [
        Field::WaterCalcium,
        Field::WaterMagnesium,
        Field::WaterSodium,
        Field::WaterPotassium,
        Field::WaterChloride,
        Field::WaterSulfate,
        Field::WaterAlkalinity,
        Field::WaterNitrate,
        Field::WaterPh,
        Field::RawWaterConductivity,
    ];
    for (field, figure) in fields.into_iter().zip(figures) {
        set(&mut plan, field, figure);
    }
    plan
}

#[test]
fn hard_water_is_judged_and_thinned_as_by_hand() {
    // By hand, me/L: Ca 120/20.04 = 5.99, Mg 30/12.15 = 2.47, Na 80/22.99 = 3.48, K 0.10: 12.04;
    // Cl 120/35.45 = 3.39, SO4 110/48.03 = 2.29, alkalinity 300/50.04 = 6.00, NO3 0.16: 11.83.
    // The error is 0.21/23.87 = 0.9 %.
    let mut plan = with_water(
        Example::CoveredTank.plan(),
        [120.0, 30.0, 80.0, 4.0, 120.0, 110.0, 300.0, 10.0, 7.6, 1.15],
    );
    plan.fertilizer.strength_by = Pick::Known(StrengthBy::Conductivity);
    set(&mut plan, Field::TargetConductivity, 2.4);
    let water = solved(&plan).water;
    within(
        "charge error",
        water.charge_error_pct.expect("ions"),
        0.8,
        1.0,
    );
    assert!(water.analysis_is_sound, "{water:?}");
    // Ayers & Westcot 1985, FAO 29 table 1: EC 0.7 dS/m, HCO3 1.5 me/L; chloride of 3.4 me/L, SAR
    // of 3.48/√(8.46/2) = 1.7 and 2.3 mg/L of nitrate nitrogen are within. Mattson & Peters 2014:
    // Na 50, Cl 70 mg/L. Oklahoma State University Extension: SO4 100 mg/L. Extension services,
    // from memory: alkalinity 75, severe from 150 mg/L; hardness of 8.46 × 50.04 = 423 over 150.
    let expected = [
        (Item::Salinity, 1.15, 0.7, false),
        (Item::Bicarbonate, 5.995, 1.5, false),
        (Item::Sodium, 80.0, 50.0, false),
        (Item::Chloride, 120.0, 70.0, false),
        (Item::Sulfate, 110.0, 100.0, false),
        (Item::Alkalinity, 300.0, 75.0, true),
        (Item::Hardness, 423.2, 150.0, false),
    ];
    assert_eq!(
        water.restricted.len(),
        expected.len(),
        "{:?}",
        water.restricted
    );
    for (got, (item, value, limit, severe)) in water.restricted.iter().zip(expected) {
        assert_eq!((got.item, got.severe), (item, severe));
        close("value", got.value, value, 1e-3);
        close("limit", got.limit, limit, 1e-9);
    }
    // The worst: alkalinity, 75 of 300 mg/L. One part in four, the rest rain.
    let share = water.raw_water_share_pct.expect("a poor water");
    close("share of raw water", share, 25.0, 1e-6);
    // So thinned, nothing restricts it.
    let thin = |value: f64| value * share / 100.0;
    let figures = [120.0, 30.0, 80.0, 4.0, 120.0, 110.0, 300.0, 10.0].map(thin);
    let [ca, mg, na, k, cl, so4, alkalinity, no3] = figures;
    let thinned = [ca, mg, na, k, cl, so4, alkalinity, no3, 7.6, thin(1.15)];
    let water = solved(&with_water(plan, thinned)).water;
    assert_eq!(water.restricted, []);
    assert_eq!(water.raw_water_share_pct, None);
}

/// Calcium bicarbonate water with 150 mg/L of alkalinity, and nitric acid to pH 6.0; mL of acid for
/// a litre of finished solution.
fn nitric_acid(mut plan: Plan) -> f64 {
    // 150 mg/L as CaCO3 are 2.997 me/L, with 60.07 mg/L of calcium.
    plan = with_water(
        plan,
        [60.07, 0.0, 0.0, 0.0, 0.0, 0.0, 150.0, 0.0, 7.5, 0.28],
    );
    plan.choose_acid(AcidChoice::Nitric);
    set(&mut plan, Field::AcidStrength, 60.0);
    set(&mut plan, Field::AcidDensity, 1.367);
    set(&mut plan, Field::TargetPh, 6.0);
    let outcome = solved(&plan);
    within("pH", outcome.solution.ph, 5.999, 6.001);
    let mut doses = outcome.fertilizer.doses.iter();
    let acid = doses.find(|it| it.material == Material::Acid(AcidChoice::Nitric));
    let ml = acid.and_then(|it| it.volume_ml).expect("acid by the jug");
    ml / outcome.fill.volume_l
}

/// mL of 60 % nitric acid (1.367 g/mL, CRC Handbook, from memory) that hold a millimole:
/// 63.01 mg / 0.60 / 1367 mg/mL.
const ML_PER_MMOL: f64 = 0.076_82;

#[test]
fn acid_neutralises_the_alkalinity_that_air_does_not_keep() {
    // Without phosphate there is nothing else to neutralise. At pH 6.0 open to air of 42 Pa, that is
    // 10^-3.38 atm, bicarbonate is 10^(6.0 - 3.38 - 1.47 - 6.35) = 10^-5.2 mol/L, 0.006 of 2.997
    // mmol/L (Plummer & Busenberg 1982, from memory): all but 0.2 % of the alkalinity goes, 2.99
    // mmol/L, 0.2297 mL of acid.
    /// A litre of water is 0.997 kg, and activities shift the last bicarbonate.
    const WATER: f64 = 0.005;
    let mut plan = Example::Bucket.plan();
    plan.fertilizer.dosing = Pick::Known(Dosing::Salts);
    plan.fertilizer.salts = [Salt::CalciumNitrate, Salt::PotassiumNitrate]
        .map(|salt| SaltLine {
            salt: Pick::Known(salt),
            ..SaltLine::default()
        })
        .to_vec();
    let got = nitric_acid(plan);
    println!("{got:.4} mL of acid to a litre without phosphate");
    close("mL/L", got, 2.991 * ML_PER_MMOL, WATER);

    // Beside a blend, dihydrogen phosphate gives up protons of its own: at pH 6.0 and an apparent
    // second constant of 10^-6.9 a ninth of it, of about 1 mmol/L; a little more where magnesium
    // pairs with what is left. So 3 to 8 % less acid.
    let mut plan = Example::Bucket.plan();
    plan.fertilizer.strength_by = Pick::Known(StrengthBy::Nitrogen);
    set(&mut plan, Field::TargetNitrogen, 130.0);
    let with_blend = nitric_acid(plan);
    println!("{with_blend:.4} mL with a blend");
    within("mL/L", with_blend, 0.92 * got, 0.97 * got);
}

#[test]
fn carbonic_water_left_to_itself_grows_alkaline() {
    // The same water without acid: open to the air, 3 mmol/L of alkalinity come to a pH of
    // 3.38 + 1.47 + 6.35 + log(0.003) = 8.68, less 0.1 or so for activities: common knowledge of
    // natural waters.
    let mut plan = Example::Bucket.plan();
    plan.fertilizer.dosing = Pick::Known(Dosing::Salts);
    plan.fertilizer.salts = vec![SaltLine {
        salt: Pick::Known(Salt::PotassiumNitrate),
        ..SaltLine::default()
    }];
    let plan = with_water(
        plan,
        [60.07, 0.0, 0.0, 0.0, 0.0, 0.0, 150.0, 0.0, 7.5, 0.28],
    );
    within("pH", solve(&plan).expect("a plan").solution.ph, 8.45, 8.7);
}
