//! Roots, oxygen and mosquitoes against published figures.

use slackwater::catalog::Keyed;
use slackwater::plan::Example;
use slackwater::science::mosquitoes::{Mosquito, egg_to_adult};
use slackwater::science::roots::{Elongation, oxygen_diffusion};
use slackwater::science::units::diffusion_coefficient::square_meter_per_second;
use slackwater::science::units::mass_concentration::milligram_per_liter;
use slackwater::science::units::pressure::kilopascal;
use slackwater::science::units::thermodynamic_temperature::degree_celsius;
use slackwater::science::units::time::day;
use slackwater::science::units::velocity::millimeter_per_second;
use slackwater::science::units::{Pressure, ThermodynamicTemperature};
use slackwater::science::water::oxygen_saturation;
use slackwater::solve;

use crate::table;

/// EN 25 814 rounds to three digits, from 10 mg/L on to one place.
const OXYGEN_MG_PER_L: f64 = 0.02;
const OXYGEN_ROUNDED: f64 = 0.05;
/// Measured diffusion coefficients of oxygen lie this far apart among authors.
const DIFFUSION_SHARE: f64 = 0.2;
/// Days printed to one place.
const DAYS_ROUNDED: f64 = 0.1;
/// The model against other species and laboratories: the same order, no more.
const SPECIES_FACTOR: f64 = 2.5;

fn celsius(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(value)
}

fn culex(temperature: f64) -> f64 {
    egg_to_adult(Mosquito::CulexQuinquefasciatus, celsius(temperature))
        .expect("within the experiments")
        .get::<day>()
}

#[test]
fn saturation_of_oxygen_is_that_of_the_printed_table() {
    for row in table::rows(include_str!("data/oxygen_saturation.csv")) {
        let got = oxygen_saturation(
            celsius(row.number("temperature_c")),
            Pressure::new::<kilopascal>(101.325),
        )
        .expect("within range")
        .get::<milligram_per_liter>();
        let printed = row.number("oxygen_mg_per_l");
        let allowed = if printed >= 10.0 {
            OXYGEN_ROUNDED + OXYGEN_MG_PER_L
        } else {
            OXYGEN_MG_PER_L
        };
        assert!((got - printed).abs() < allowed, "{got} {printed}");
    }
}

#[test]
fn diffusion_of_oxygen_is_that_of_other_sources() {
    for row in table::rows(include_str!("data/oxygen_diffusion.csv")) {
        let got = oxygen_diffusion(celsius(row.number("temperature_c")))
            .expect("within range")
            .get::<square_meter_per_second>();
        let printed = row.number("diffusion_m2_per_s");
        assert!(
            (got / printed - 1.0).abs() < DIFFUSION_SHARE,
            "{}: {got} {printed}",
            row.text("source")
        );
    }
}

#[test]
fn tips_grow_as_fast_as_is_measured_and_planned_with() {
    let rate = |temperature| {
        Elongation::lettuce()
            .rate(celsius(temperature))
            .expect("within range")
            .get::<millimeter_per_second>()
            * 86_400.0
    };
    // Rooting front of lettuce: 12 to 18 mm a day at 20 °C; from memory.
    assert!((12.0..=18.0).contains(&rate(20.0)), "{}", rate(20.0));
    // Solution culture: 10 to 25 mm a day; common practice, no source.
    for temperature in [15.0, 18.0, 22.0, 26.0, 30.0, 40.0] {
        assert!((10.0..=25.0).contains(&rate(temperature)), "{temperature}");
    }
    // Per degree-day between carrot (0.7) and cabbage (2.5): Pedersen et al. (2010).
    assert!((0.7..=2.5).contains(&(rate(16.0) - rate(15.0))));
    // Radicles of lettuce in the dark at 24.5 °C, 40 to 60 mm in 120 h: US-EPA OPPTS 850.4230, the
    // number from memory. A radicle is no established root: within a factor of two.
    let (low, high) = (40.0 / 5.0 / 2.0, 60.0 / 5.0 * 2.0);
    assert!((low..=high).contains(&rate(24.5)));
}

#[test]
fn mosquitoes_grow_up_as_fast_as_the_source_says() {
    for row in table::rows(include_str!("data/mosquitoes.csv")) {
        let mosquito = match row.text("species") {
            "Culex quinquefasciatus" => Mosquito::CulexQuinquefasciatus,
            "Aedes aegypti" => Mosquito::AedesAegypti,
            other => panic!("which is '{other}'?"),
        };
        let temperature = row.number("temperature_c");
        let got = egg_to_adult(mosquito, celsius(temperature))
            .expect("within the experiments")
            .get::<day>();
        assert!(
            (got - row.number("days")).abs() < DAYS_ROUNDED,
            "{temperature}: {got}"
        );
    }
}

#[test]
fn other_measurements_are_of_the_same_order() {
    // Spanoudis et al. (2018), J. Med. Entomol., Culex pipiens f. molestus; and IOSR J. Pharm. Biol.
    // Sci. 10(6), 2015, Culex pipiens complex: slower, but the same course.
    for (temperature, days) in [
        (15.0, 49.2),
        (20.0, 34.0),
        (25.0, 17.0),
        (30.0, 14.3),
        (20.0, 26.3),
        (24.0, 19.4),
        (28.0, 12.8),
    ] {
        let ratio = days / culex(temperature);
        assert!(
            (1.0 / SPECIES_FACTOR..SPECIES_FACTOR).contains(&ratio),
            "{temperature}: {ratio}"
        );
    }
    // CDC fact sheet CS310257-A: 7 to 10 days from egg to adult, in warm weather.
    for temperature in [25.0, 27.0, 30.0] {
        assert!((7.0..=10.0).contains(&culex(temperature)), "{temperature}");
    }
}

#[test]
fn roots_reach_the_solution_before_contact_is_lost_in_every_ready_example() {
    // Common practice, no source.
    for &example in Example::ALL {
        let roots = solve(&example.plan()).expect("a ready plan").roots;
        assert_eq!(roots.failure, None, "{}", example.key());
        let reached = roots.reached_day.expect("roots reach the solution");
        let lost = roots.contact_lost_day.expect("the level falls");
        assert!(reached + 3 < lost, "{}: {reached} {lost}", example.key());
        assert!(roots.days[0].contact, "{}", example.key());
    }
}

#[test]
fn the_lowest_two_to_three_centimetres_of_the_pots_stand_in_solution_at_planting() {
    // Common practice, no source.
    for &example in Example::ALL {
        let fill = solve(&example.plan()).expect("a ready plan").fill;
        assert!(
            (2.0..=3.0 + 1e-9).contains(&fill.pot_immersion_cm),
            "{}",
            example.key()
        );
    }
}
