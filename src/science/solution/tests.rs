//! What holds for any solution, and how the parts work together.

use super::*;
use crate::science::units::{
    MolarConcentration, Pressure, Ratio, ThermodynamicTemperature,
    electrical_conductivity::siemens_per_meter,
    molar_concentration::{millimole_per_liter, mole_per_liter},
    pressure::pascal,
    ratio::ratio,
    thermodynamic_temperature::degree_celsius,
};

/// Balances are promised to this, relative to what is balanced.
const BALANCED: f64 = 1e-10;

fn mmol(value: f64) -> MolarConcentration {
    MolarConcentration::new::<millimole_per_liter>(value)
}

fn at(celsius: f64) -> Equilibria {
    Equilibria::at(ThermodynamicTemperature::new::<degree_celsius>(celsius)).expect("in range")
}

/// Hoagland & Arnon's solution 2 at some strength.
fn hoagland(strength: f64) -> Totals {
    Totals::of([
        (Component::Nitrate, mmol(14.0)),
        (Component::Ammonium, mmol(1.0)),
        (Component::Phosphate, mmol(1.0)),
        (Component::Sulfate, mmol(2.0)),
        (Component::Potassium, mmol(6.0)),
        (Component::Calcium, mmol(4.0)),
        (Component::Magnesium, mmol(2.0)),
    ])
    .scaled(strength)
}

/// A hard tap water of alkalinity 4 and pH 7.4.
fn tap() -> Recipe {
    Recipe {
        totals: Totals::of([
            (Component::Calcium, mmol(2.0)),
            (Component::Magnesium, mmol(0.5)),
            (Component::Sodium, mmol(1.0)),
            (Component::Chloride, mmol(1.0)),
            (Component::Sulfate, mmol(0.5)),
        ]),
        carbonate: Carbonate::Alkalinity(mmol(4.0)),
        acidity: Acidity::Ph(7.4),
    }
}

/// The free ion of a component.
fn own_species(component: Component) -> Species {
    Species::ALL[component as usize + 1]
}

/// Numbers that look like chance and are the same every time, from 0 to 1.
fn chance(seed: &mut u64) -> f64 {
    *seed = seed
        .wrapping_mul(6_364_136_223_846_793_005)
        .wrapping_add(1_442_695_040_888_963_407);
    (*seed >> 11) as f64 / (1_u64 << 53) as f64
}

/// Salts in proportions and strengths from a ten-millionth to over one mol/kg, charges balanced by
/// a last ion.
fn any_recipe(seed: &mut u64) -> Recipe {
    let mut totals = Totals::default();
    let mut charge = 0.0;
    let strength = libm::pow(10.0, -7.0 + 6.5 * chance(seed));
    for component in Component::ALL {
        if component != Component::Carbonate && chance(seed) < 0.6 {
            let amount = strength * chance(seed);
            totals.add(component, MolarConcentration::new::<mole_per_liter>(amount));
            charge += amount * own_species(component).charge();
        }
    }
    let (ion, size) = if charge > 0.0 {
        (Component::Chloride, charge)
    } else {
        (Component::Potassium, -charge)
    };
    totals.add(
        ion,
        MolarConcentration::new::<mole_per_liter>(size * chance(seed)),
    );
    let carbonate = if chance(seed) < 0.3 {
        Carbonate::Air(Pressure::new::<pascal>(42.0))
    } else {
        Carbonate::Closed
    };
    Recipe {
        totals,
        carbonate,
        acidity: Acidity::Balance,
    }
}

#[test]
fn balances_hold_for_any_salts_at_any_strength() {
    let mut seed = 1;
    let constants = [at(2.0), at(25.0), at(38.0)];
    let mut strongest: f64 = 0.0;
    for round in 0..3000 {
        let recipe = any_recipe(&mut seed);
        let solution = constants[round % 3]
            .solve(&recipe)
            .unwrap_or_else(|problem| panic!("{problem:?}: {recipe:?}"));
        let charged: f64 = Species::ALL
            .iter()
            .map(|&it| it.charge().abs() * solution.concentration(it).value)
            .sum();
        let left = solution.residual_charge().value / charged;
        assert!(left.abs() < BALANCED, "charge {left}: {recipe:?}");
        let totals = solution.totals();
        for component in Component::ALL {
            let wanted = recipe.totals.get(component).value;
            if component != Component::Carbonate {
                let miss = (totals.get(component).value - wanted).abs();
                assert!(miss <= BALANCED * wanted, "{component:?}: {recipe:?}");
            }
        }
        let ionic: f64 = Species::ALL
            .iter()
            .map(|&it| 0.5 * it.charge() * it.charge() * solution.concentration(it).value)
            .sum();
        let strength = solution.ionic_strength().value;
        assert!((ionic / strength - 1.0).abs() < BALANCED);
        strongest = strongest.max(solution.ionic_strength().get::<mole_per_liter>());
        // Strong acid may be left over, and cold water is neutral at 7.5.
        assert!((-1.0..=15.0).contains(&solution.ph()), "{recipe:?}");
    }
    assert!(strongest > 0.5, "the salts of this test are all dilute");
}

#[test]
fn stocks_up_to_three_hundred_times_are_solved() {
    let constants = at(5.0);
    for strength in [50.0, 100.0, 200.0, 300.0] {
        let solution = constants.solve(&Recipe::of(hoagland(strength)));
        let solution = solution.unwrap_or_else(|it| panic!("{strength}: {it:?}"));
        assert!(solution.saturation_index(Mineral::Gypsum) > Some(0.0));
    }
}

#[test]
fn the_order_of_the_list_does_not_matter() {
    let mut list: Vec<_> = Component::ALL
        .into_iter()
        .map(|it| (it, hoagland(1.0).get(it)))
        .collect();
    let constants = at(20.0);
    let first = constants.solve(&Recipe::of(Totals::of(list.clone())));
    list.reverse();
    let second = constants.solve(&Recipe::of(Totals::of(list)));
    let bits = |it: Result<Speciation, SolutionProblem>| it.map(|it| it.ph().to_bits());
    assert_eq!(bits(first), bits(second));
}

#[test]
fn more_salt_never_lowers_conductivity_in_a_tank() {
    let constants = at(25.0);
    let ec = |totals: Totals| {
        let solution = constants.solve(&Recipe::of(totals)).expect("a solution");
        solution.conductivity().get::<siemens_per_meter>()
    };
    let salts: [&[(Component, f64)]; 5] = [
        &[(Component::Potassium, 1.0), (Component::Nitrate, 1.0)],
        &[(Component::Calcium, 1.0), (Component::Nitrate, 2.0)],
        &[(Component::Magnesium, 1.0), (Component::Sulfate, 1.0)],
        &[(Component::Potassium, 1.0), (Component::Phosphate, 1.0)],
        &[(Component::Ammonium, 2.0), (Component::Sulfate, 1.0)],
    ];
    for salt in salts {
        let mut last = 0.0;
        for step in 0..40 {
            let amount = 0.5 * f64::from(step);
            let more = Totals::of(salt.iter().map(|&(it, count)| (it, mmol(count * amount))));
            let now = ec(hoagland(0.5).with(&more));
            assert!(now > last, "{salt:?} at {amount} mmol");
            last = now;
        }
    }
}

#[test]
fn solving_near_another_solution_comes_to_the_same() {
    let constants = at(25.0);
    let near = constants
        .solve(&Recipe::of(hoagland(1.0)))
        .expect("a solution");
    for recipe in [Recipe::of(hoagland(1.1)), tap(), Recipe::of(hoagland(30.0))] {
        let cold = constants.solve(&recipe).expect("a solution");
        let warm = constants.solve_near(&recipe, &near).expect("a solution");
        assert!((cold.ph() - warm.ph()).abs() < 1e-9);
        let share = cold.ionic_strength() / warm.ionic_strength();
        assert!((share.get::<ratio>() - 1.0).abs() < BALANCED);
    }
}

#[test]
fn alkalinity_and_carbon_dioxide_come_back() {
    let constants = at(15.0);
    let solution = constants.solve(&tap()).expect("a solution");
    assert!(((solution.alkalinity() / mmol(4.0)).get::<ratio>() - 1.0).abs() < BALANCED);
    let open = Recipe {
        carbonate: Carbonate::Air(solution.carbon_dioxide_pressure()),
        ..tap()
    };
    let again = constants.solve(&open).expect("a solution");
    let carbonate = |it: &Speciation| it.totals().get(Component::Carbonate);
    assert!(((carbonate(&again) / carbonate(&solution)).get::<ratio>() - 1.0).abs() < 1e-9);
}

#[test]
fn acid_brings_tap_water_to_its_target() {
    let constants = at(20.0);
    for acid in [
        Acid::Nitric,
        Acid::Phosphoric,
        Acid::Sulfuric,
        Acid::Hydrochloric,
    ] {
        let dose = constants.acid_for(&tap(), acid, 5.8).expect("within reach");
        assert!((dose.solution.ph() - 5.8).abs() < 1e-5, "{acid:?}");
        // Most of the alkalinity of 4 meq/L goes; sulfuric acid has two hydrogen ions.
        let meq = dose.amount / mmol(1.0) * if acid == Acid::Sulfuric { 2.0 } else { 1.0 };
        let meq = meq.get::<ratio>();
        assert!((2.8..4.4).contains(&meq), "{acid:?}: {meq}");
    }
    assert!(matches!(
        constants.acid_for(&tap(), Acid::Nitric, 8.0),
        Err(SolutionProblem::TargetOutOfReach { .. })
    ));
    assert!(constants.acid_for(&tap(), Acid::Nitric, f64::NAN).is_err());
}

#[test]
fn what_falls_out_leaves_a_saturated_solution() {
    let constants = at(10.0);
    let stock = Recipe::of(hoagland(100.0));
    let dose = constants
        .precipitated(&stock, Mineral::Gypsum)
        .expect("a solution");
    let index = dose.solution.saturation_index(Mineral::Gypsum);
    assert!(index.is_some_and(|it| it.abs() < 1e-5));
    let left = dose.solution.totals().get(Component::Sulfate) + dose.amount;
    assert!(((left / stock.totals.get(Component::Sulfate)).get::<ratio>() - 1.0).abs() < 1e-9);
    let none = constants.precipitated(&Recipe::of(hoagland(1.0)), Mineral::Gypsum);
    assert!(none.is_ok_and(|it| it.amount == mmol(0.0)));
    let lime = constants.precipitated(
        &Recipe {
            acidity: Acidity::Ph(8.6),
            ..tap()
        },
        Mineral::Calcite,
    );
    assert!(lime.is_ok_and(|it| it.amount > mmol(0.3) && it.solution.ph() < 8.5));
}

#[test]
fn a_mixture_with_itself_is_itself() {
    let constants = at(25.0);
    let solution = constants.solve(&tap()).expect("a solution");
    let share = |value| Ratio::new::<ratio>(value);
    let recipe = mixed([(share(0.3), &solution), (share(0.7), &solution)]);
    let mixture = constants.solve(&recipe).expect("a solution");
    assert!((mixture.ph() - 7.4).abs() < 1e-8);
    let rain = constants
        .solve(&Recipe::of(Totals::default()))
        .expect("water");
    let half = mixed([(share(0.5), &solution), (share(0.5), &rain)]);
    let half = constants.solve(&half).expect("a solution");
    assert!(half.alkalinity() < mmol(2.01) && half.alkalinity() > mmol(1.99));
}

#[test]
fn what_cannot_be_is_refused_by_name() {
    let constants = at(25.0);
    let refusal = |recipe: Recipe| constants.solve(&recipe).map(|it| it.ph());
    let with = |amount: f64| Recipe::of(Totals::of([(Component::Sodium, mmol(amount))]));
    for amount in [-1.0, 10_001.0, f64::NAN, f64::INFINITY] {
        assert!(matches!(
            refusal(with(amount)),
            Err(SolutionProblem::TotalOutOfRange {
                component: Component::Sodium,
                ..
            })
        ));
    }
    for ph in [-0.1, 14.1, f64::NAN] {
        let recipe = Recipe {
            acidity: Acidity::Ph(ph),
            ..tap()
        };
        assert!(matches!(
            refusal(recipe),
            Err(SolutionProblem::PhOutOfRange { .. })
        ));
    }
    for pressure in [0.0, -1.0, 2e5, f64::NAN] {
        let carbonate = Carbonate::Air(Pressure::new::<pascal>(pressure));
        assert!(matches!(
            refusal(Recipe { carbonate, ..tap() }),
            Err(SolutionProblem::PressureOutOfRange { .. })
        ));
    }
    for charge in [f64::NAN, 2e4] {
        let acidity = Acidity::Residual(mmol(charge));
        assert!(matches!(
            refusal(Recipe { acidity, ..tap() }),
            Err(SolutionProblem::ChargeOutOfRange { .. })
        ));
    }
    let mut twice = tap();
    twice.totals.add(Component::Carbonate, mmol(1.0));
    assert_eq!(refusal(twice), Err(SolutionProblem::CarbonateTwice));
    // At pH 11, hydroxide alone is more alkalinity than this.
    let hopeless = Recipe {
        carbonate: Carbonate::Alkalinity(mmol(0.1)),
        acidity: Acidity::Ph(11.0),
        totals: Totals::default(),
    };
    assert!(matches!(
        refusal(hopeless),
        Err(SolutionProblem::NotConverged { .. })
    ));
    for celsius in [-0.1, 40.1, f64::NAN] {
        let temperature = ThermodynamicTemperature::new::<degree_celsius>(celsius);
        assert!(matches!(
            Equilibria::at(temperature),
            Err(SolutionProblem::TemperatureOutOfRange { .. })
        ));
    }
}
