//! Laws of what is mixed: strength, acid, stocks, recipes and cost.

use std::cell::Cell;

use slackwater::advice::{Dose, Material};
use slackwater::catalog::Keyed;
use slackwater::catalog::salts::Salt;
use slackwater::plan::{
    AcidChoice, Dosing, Entry, Example, Field, Method, Mixture, Pick, Plan, Problem, ProblemKind,
    RawWater, Rule, SaltLine, Shape, StrengthBy, WaterKind, check,
};
use slackwater::science::label::{Concentrations, Nutrient};
use slackwater::science::units::ThermodynamicTemperature;
use slackwater::science::units::electrical_conductivity::siemens_per_meter;
use slackwater::science::units::mass_concentration::milligram_per_liter;
use slackwater::science::units::ratio::ratio;
use slackwater::science::units::thermodynamic_temperature::degree_celsius;
use slackwater::season::Chemistry;
use slackwater::{Outcome, solve};

use crate::plans::{for_sound_plans, get, set, show_when_it_fails, sound_plan};

/// The search for a strength ends a millionth of it away.
const STRENGTH: f64 = 1.1e-6;
/// Two such searches; the dose follows the strength more than in step.
pub const SEARCHES: f64 = 5e-6;
/// Sums of a few roundings.
pub const ROUNDING: f64 = 1e-9;
/// A tenth of what a good meter tells.
pub const PH: f64 = 1e-3;
/// Salts of less than a billionth of a gram per litre are not listed: some twenty of them, mg/L.
const UNLISTED_MG_PER_L: f64 = 2e-5;

pub fn close(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * a.abs().max(b.abs()) + f64::MIN_POSITIVE
}

fn amount(dose: &Dose) -> f64 {
    dose.mass_g.or(dose.volume_ml).unwrap_or_default()
}

fn acid(outcome: &Outcome) -> f64 {
    let is_acid = |dose: &&Dose| matches!(dose.material, Material::Acid(_));
    outcome
        .fertilizer
        .doses
        .iter()
        .filter(is_acid)
        .map(amount)
        .sum()
}

/// Counts how often a law was put to the test.
pub fn count(tally: &Cell<u32>) {
    tally.set(tally.get() + 1);
}

#[test]
fn less_nitrogen_than_the_water_has_is_told_with_both_figures() {
    let mut plan = Example::Bucket.plan();
    plan.fertilizer.water_kind = Pick::Known(WaterKind::Analysis);
    plan.fertilizer.strength_by = Pick::Known(StrengthBy::Nitrogen);
    // 62.00 mg/L of nitrate hold 14.007 of nitrogen.
    set(&mut plan, Field::WaterNitrate, 2.0 * 62.004);
    for (target, enough) in [(28.0, false), (28.1, true)] {
        set(&mut plan, Field::TargetNitrogen, target);
        match solve(&plan) {
            Ok(outcome) => {
                assert!(enough);
                assert!(close(
                    outcome.fertilizer.elements_mg_per_l.n,
                    target,
                    STRENGTH
                ));
            }
            Err(problems) => {
                assert!(!enough, "{problems:?}");
                let [
                    Problem {
                        field: Some(Field::TargetNitrogen),
                        kind: ProblemKind::Conflict { got, rule, limit },
                    },
                ] = problems[..]
                else {
                    panic!("{problems:?}");
                };
                assert_eq!(rule, Rule::TargetAboveRawWater);
                assert!(close(got, target, ROUNDING) && close(limit, 28.014, 1e-4));
            }
        }
    }
}

/// What the raw water of a plan reads open to the air, mS/cm.
fn water_alone(plan: &Plan) -> f64 {
    let sound = check(plan).expect("a sound plan");
    let warm = ThermodynamicTemperature::new::<degree_celsius>(25.0);
    let chemistry =
        Chemistry::new(&sound.fertilizer.water, sound.fertilizer.rain, warm).expect("a water");
    let background = chemistry.background(&Concentrations::NONE);
    let recipe = chemistry.recipe(chemistry.water_nutrients(), &background, 1.0);
    let reading = chemistry.conductivity(&recipe).expect("a water");
    10.0 * reading.get::<siemens_per_meter>()
}

#[test]
fn the_solution_reads_its_target_unless_the_water_alone_reads_more() {
    let (mut read, mut refused) = (0, 0);
    for &method in Method::ALL {
        for seed in 0..40 {
            let mut plan = sound_plan(seed + 100, method, Shape::Rectangular);
            if plan.fertilizer.dosing == Pick::Known(Dosing::Salts) {
                plan.fertilizer.dosing = Pick::Known(Dosing::Stocks);
            }
            plan.fertilizer.strength_by = Pick::Known(StrengthBy::Conductivity);
            for target in [0.4, 1.2, 2.4] {
                set(&mut plan, Field::TargetConductivity, target);
                // A tap whose meter reading is known is compared before anything is worked out.
                if check(&plan).is_err() {
                    continue;
                }
                let outcome = solve(&plan);
                show_when_it_fails(&plan, || match &outcome {
                    Ok(outcome) => {
                        let ec = outcome.solution.ec_ms_per_cm;
                        assert!(close(ec, target, STRENGTH), "{ec}, not {target}");
                        assert!(outcome.fertilizer.doses.iter().all(|it| amount(it) > 0.0));
                    }
                    Err(problems) if problems[0].field.is_some() => {
                        let problem =
                            Problem::at(Field::TargetConductivity, ProblemKind::BeyondModels);
                        assert_eq!(problems[..], [problem]);
                        let water = water_alone(&plan);
                        // Acid turns bicarbonate into an ion that conducts up to 1.8 times as well.
                        let acid = plan.fertilizer.acid != Pick::Known(AcidChoice::None);
                        let most = if acid { 1.8 * water } else { water };
                        assert!(most >= target, "{water} mS/cm, yet refused {target}");
                    }
                    // Beyond what is known of plants and vessels.
                    Err(_) => {}
                });
                match outcome {
                    Ok(_) => read += 1,
                    Err(_) => refused += 1,
                }
            }
        }
    }
    assert!(read > 250 && refused > 10, "{read} read, {refused} refused");
}

#[test]
fn acid_brings_the_ph_down_to_its_target_and_no_further() {
    let (dosed, not_needed, turn) = (Cell::new(0), Cell::new(0), Cell::new(0));
    for_sound_plans(101, |plan, _| {
        let mut plan = plan.clone();
        // One acid after the other, and each with plans of every kind.
        count(&turn);
        let place = turn.get() as usize % AcidChoice::ALL.len();
        for &choice in &AcidChoice::ALL[place..=place] {
            plan.choose_acid(choice);
            let mut last = f64::INFINITY;
            for target in [4.5, 6.5, 7.3] {
                set(&mut plan, Field::TargetPh, target);
                let Ok(outcome) = solve(&plan) else { continue };
                let (ph, dose) = (outcome.solution.ph, acid(&outcome));
                let what = format!("{} to {target}: {dose}, {ph}", choice.key());
                if choice == AcidChoice::None {
                    assert!(dose <= 0.0 && !outcome.fertilizer.no_acid_needed);
                    continue;
                }
                assert!(ph <= target + PH, "{what}");
                assert!(dose >= 0.0 && dose <= last, "{what} after {last}");
                if outcome.fertilizer.no_acid_needed {
                    assert!(dose <= 0.0, "{what}");
                    count(&not_needed);
                } else {
                    assert!(dose > 0.0 && (ph - target).abs() <= PH, "{what}");
                    count(&dosed);
                }
                last = dose;
            }
        }
    });
    assert!(
        dosed.get() > 80 && not_needed.get() > 80,
        "{} dosed, {} not",
        dosed.get(),
        not_needed.get()
    );
}

#[test]
fn what_is_reached_is_what_water_and_salts_bring() {
    let compared = Cell::new(0);
    for_sound_plans(104, |plan, _| {
        let mut plan = plan.clone();
        plan.fertilizer.dosing = Pick::Known(Dosing::Salts);
        let Ok(outcome) = solve(&plan) else { return };
        let sound = check(&plan).expect("it was solved");
        let Mixture::Salts(shelf) = &sound.fertilizer.mixture else {
            panic!("salts were chosen");
        };
        let brought = match &sound.fertilizer.water {
            RawWater::Rain => None,
            RawWater::Analysis(analysis) => Some(analysis.nutrients().expect("a water")),
            // What an unknown tap brings is assumed.
            RawWater::Tap(_) => return,
        };
        count(&compared);
        assert!(!outcome.fertilizer.targets.is_empty());
        for target in &outcome.fertilizer.targets {
            let nutrient = nutrient(target.nutrient, target.form);
            let raw_share = 1.0 - sound.fertilizer.rain.get::<ratio>();
            let water = brought.map_or(0.0, |it| {
                it.of(nutrient).get::<milligram_per_liter>() * raw_share
            });
            let doses = outcome.fertilizer.doses.iter();
            let salts: f64 = doses
                .filter_map(|dose| {
                    let salt = shelf.iter().find(|salt| match &dose.material {
                        Material::Salt(it) => salt.salt == Some(*it),
                        Material::OwnSalt(formula) => salt.name == *formula,
                        _ => false,
                    })?;
                    let share = salt.composition.fraction(nutrient).get::<ratio>();
                    Some(1000.0 * share * dose.mass_g? / outcome.fill.volume_l)
                })
                .sum();
            let (reached, sum) = (target.reached_mg_per_l, water + salts);
            assert!(
                (reached - sum).abs() <= UNLISTED_MG_PER_L + ROUNDING * sum,
                "{target:?}: {water} of water and {salts} of salts"
            );
        }
    });
    assert!(compared.get() > 80, "only {} comparisons", compared.get());
}

fn nutrient(symbol: &str, form: Option<&str>) -> Nutrient {
    match form {
        Some("nitrate") => Nutrient::NitrateN,
        Some("ammonium") => Nutrient::AmmoniumN,
        _ => Nutrient::ALL
            .into_iter()
            .find(|it| it.element().symbol() == symbol)
            .expect("a nutrient"),
    }
}

#[test]
fn no_other_mass_of_one_salt_comes_nearer_to_the_recipe() {
    // The fit is a least: the misses, weighed as they are, do not shrink when any one salt is
    // changed a little. Rain and no acid, so that the salts alone decide.
    let compared = Cell::new(0);
    for_sound_plans(105, |plan, _| {
        let mut plan = plan.clone();
        plan.fertilizer.dosing = Pick::Known(Dosing::Salts);
        let Ok(outcome) = solve(&plan) else { return };
        let sound = check(&plan).expect("it was solved");
        let Mixture::Salts(shelf) = &sound.fertilizer.mixture else {
            panic!("salts were chosen");
        };
        let targets = &outcome.fertilizer.targets;
        // A recipe that leaves a nutrient open weighs that too; it is not among the targets.
        if targets.len() < 13 {
            return;
        }
        // What the water brings too much is not taken out again, and does not count.
        if !matches!(sound.fertilizer.water, RawWater::Rain) {
            return;
        }
        count(&compared);
        let misses = |salt: usize, change_g_per_l: f64| -> f64 {
            let squares = targets.iter().map(|target| {
                let nutrient = nutrient(target.nutrient, target.form);
                let share = shelf[salt].composition.fraction(nutrient).get::<ratio>();
                let reached = target.reached_mg_per_l + 1000.0 * share * change_g_per_l;
                let asked = target.target_mg_per_l;
                let weight = if asked > 0.0 { asked } else { 50.0 };
                (reached - asked) / weight
            });
            squares.map(|it| it * it).sum()
        };
        for (index, salt) in shelf.iter().enumerate() {
            let used = outcome
                .fertilizer
                .doses
                .iter()
                .find(|dose| match &dose.material {
                    Material::Salt(it) => salt.salt == Some(*it),
                    Material::OwnSalt(formula) => salt.name == *formula,
                    _ => false,
                });
            let grams = used.and_then(|it| it.mass_g).unwrap_or_default() / outcome.fill.volume_l;
            let best = misses(index, 0.0);
            for change in [1e-3, -0.5 * grams] {
                let other = misses(index, change);
                assert!(best <= other + ROUNDING, "{}: {best}, {other}", salt.name);
            }
        }
    });
    assert!(compared.get() > 50, "only {} comparisons", compared.get());
}

const PRICES: [Field; 4] = [
    Field::PriceBlend,
    Field::PriceCalciumNitrate,
    Field::PriceMagnesiumSulfate,
    Field::PriceAcid,
];

/// The plan with all its prices: of blend, calcium nitrate, magnesium sulfate, acid, and the salts.
fn priced(plan: &Plan, prices: [f64; 4], salt: f64) -> Plan {
    let mut plan = plan.clone();
    for (field, price) in PRICES.into_iter().zip(prices) {
        set(&mut plan, field, price);
    }
    for line in &mut plan.fertilizer.salts {
        line.price_per_kg = Entry::Number(salt);
    }
    plan
}

#[test]
fn a_charge_costs_what_its_kilograms_cost() {
    let compared = Cell::new(0);
    for_sound_plans(106, |plan, outcome| {
        let cost = |prices: [f64; 4], salt: f64| {
            solve(&priced(plan, prices, salt))
                .expect("a price spoils no plan")
                .fertilizer
                .cost
        };
        assert_eq!(cost([0.0; 4], 0.0), None);
        let prices = [2.5, 0.8, 0.7, 1.1];
        let once = cost(prices, 3.0).expect("prices");
        let twice = cost(prices.map(|it| 2.0 * it), 6.0).expect("prices");
        assert!(close(2.0 * once.charge, twice.charge, ROUNDING));
        let plants = f64::from(outcome.fill.plants);
        assert!(close(once.per_head * plants, once.charge, ROUNDING));
        let by_hand: f64 = outcome
            .fertilizer
            .doses
            .iter()
            .map(|dose| {
                let grams = dose.mass_g.unwrap_or_default();
                let ml = dose.volume_ml.unwrap_or_default();
                let strength = |field| ml * get(plan, field) / 1000.0;
                let per_kg = match &dose.material {
                    Material::Blend(_) => grams * prices[0],
                    Material::StockA => strength(Field::StockACalciumNitrate) * prices[1],
                    Material::StockB => {
                        strength(Field::StockBBlend) * prices[0]
                            + strength(Field::StockBMagnesiumSulfate) * prices[2]
                    }
                    Material::Acid(AcidChoice::Citric) => grams * prices[3],
                    Material::Acid(_) => ml * get(plan, Field::AcidDensity) * prices[3],
                    _ => grams * 3.0,
                };
                per_kg / 1000.0
            })
            .sum();
        assert!(close(by_hand, once.charge, ROUNDING), "{by_hand} {once:?}");
        count(&compared);
    });
    assert!(compared.get() > 100);
}

#[test]
fn a_salt_that_stands_on_the_shelf_twice_costs_what_its_own_line_says() {
    let mut plan = Example::Bucket.plan();
    plan.fertilizer.dosing = Pick::Known(Dosing::Salts);
    let line = |purity: f64, price: f64| SaltLine {
        salt: Pick::Known(Salt::PotassiumNitrate),
        purity_pct: Entry::Number(purity),
        price_per_kg: Entry::Number(price),
    };
    plan.fertilizer.salts = vec![line(100.0, 1.0)];
    let pure = solve(&plan).expect("one salt");
    let kilograms = amount(&pure.fertilizer.doses[0]) / 1000.0;
    for (first, second) in [((50.0, 2.0), (100.0, 9.0)), ((100.0, 9.0), (50.0, 2.0))] {
        plan.fertilizer.salts = vec![line(first.0, first.1), line(second.0, second.1)];
        let both = solve(&plan).expect("the same salt twice");
        let cost = both.fertilizer.cost.expect("prices").charge;
        // Twice as much of the impure one, or the pure one.
        let allowed = [2.0 * kilograms * 2.0, kilograms * 9.0];
        assert!(
            allowed.iter().any(|it| close(cost, *it, SEARCHES)),
            "{cost}, not one of {allowed:?}"
        );
    }
}
