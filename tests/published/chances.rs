//! Chances and weights against what is known outside: exact answers of Bayes' rule, surveyed water
//! use, and the bands that growers tell.

use slackwater::advice::chances::{Chances, ChancesOutcome};
use slackwater::catalog::climates::ClimateChoice;
use slackwater::catalog::crops::CropKind;
use slackwater::plan::{Entry, Example, Field, Pick, Plan};
use slackwater::science::importance::{
    effective_size, log_likelihood, next_power, systematic, weights,
};
use slackwater::science::normal::{Normals, normal_quantile};

use crate::practice::{elsewhere, set, within};
use crate::table;

/// Enough that an end of a band moves by a few per cent from one seed to another.
const SEASONS: usize = 300;

fn outcome(plan: &Plan) -> ChancesOutcome {
    let mut chances = Chances::new(plan, SEASONS).expect("sound");
    while !chances.advance(SEASONS).expect("within the models") {}
    chances.outcome()
}

/// Prior N(m, s²), measurements with error e: the posterior of a normal mean is normal, with
/// precision 1/s² + n/e² and mean the precision-weighted mean (textbook; worked by hand below).
struct Conjugate {
    mean: f64,
    variance: f64,
}

fn conjugate(prior: (f64, f64), measured: &[f64], error: f64) -> Conjugate {
    let precision = 1.0 / (prior.1 * prior.1) + measured.len() as f64 / (error * error);
    let sum: f64 = measured.iter().sum();
    Conjugate {
        mean: (prior.0 / (prior.1 * prior.1) + sum / (error * error)) / precision,
        variance: 1.0 / precision,
    }
}

fn moments(values: &[f64], weights: &[f64]) -> (f64, f64) {
    let mean: f64 = values.iter().zip(weights).map(|(v, w)| v * w).sum();
    let variance = values
        .iter()
        .zip(weights)
        .map(|(v, w)| w * (v - mean) * (v - mean))
        .sum();
    (mean, variance)
}

#[test]
fn weights_are_those_of_an_exact_case() {
    // By hand: prior N(0, 1), measured 1.2 and 0.8 with error 1: precision 1 + 2 = 3, mean
    // (0 + 2.0) / 3 = 0.6667, variance 0.3333.
    /// 4000 evenly spread guesses integrate a normal curve this well.
    const NEAR: f64 = 2e-3;
    let exact = conjugate((0.0, 1.0), &[1.2, 0.8], 1.0);
    assert!((exact.mean - 2.0 / 3.0).abs() < 1e-12 && (exact.variance - 1.0 / 3.0).abs() < 1e-12);
    let count = 4000;
    let guesses: Vec<f64> = (0..count)
        .map(|i| normal_quantile((f64::from(i) + 0.5) / f64::from(count)))
        .collect();
    let logs: Vec<f64> = guesses
        .iter()
        .map(|guess| log_likelihood(1.2, *guess, 1.0) + log_likelihood(0.8, *guess, 1.0))
        .collect();
    let weights = weights(&logs, 1.0);
    let (mean, variance) = moments(&guesses, &weights);
    assert!((mean - exact.mean).abs() < NEAR, "{mean}");
    assert!((variance - exact.variance).abs() < NEAR, "{variance}");
    assert!((weights.iter().sum::<f64>() - 1.0).abs() < 1e-12);
    // By hand: the effective share of guesses is 1 / ∫ w² p = for precision 3 against 1 and mean
    // 2/3: the weight is N(x; 2/3, 1/3) / N(x; 0, 1); ∫ N(2/3, 1/3)² / N(0, 1) dx =
    // 3 / √5 · exp(4/9 · 3 / 5) = 1.3416 · 1.3056 = 1.7517, so 0.5709 of the guesses.
    let share = effective_size(&weights) / f64::from(count);
    assert!((share - 0.5709).abs() < 5e-3, "{share}");
}

#[test]
fn drawing_again_keeps_to_the_exact_case_where_weights_collapse() {
    // Measured far out and sharply: 3.0 with error 0.1 of a prior N(0, 1). By hand: precision 101,
    // mean 300 / 101 = 2.9703, deviation 0.0995.
    /// Three standard errors of 2000 guesses.
    const MEAN: f64 = 0.007;
    const DEVIATION: f64 = 0.006;
    let mut chance = Normals::stream(5, 5);
    let mut guesses: Vec<f64> = (0..2000).map(|_| chance.draw()).collect();
    let likelihood = |guess: f64| log_likelihood(3.0, guess, 0.1);
    let logs: Vec<f64> = guesses.iter().map(|guess| likelihood(*guess)).collect();
    assert!(effective_size(&weights(&logs, 1.0)) < 100.0, "no collapse");
    let mut power = 0.0;
    while power < 1.0 {
        let logs: Vec<f64> = guesses.iter().map(|guess| likelihood(*guess)).collect();
        let next = next_power(&logs, power, 0.5);
        let picks = systematic(&weights(&logs, next - power), chance.share());
        guesses = picks.iter().map(|&pick| guesses[pick]).collect();
        power = next;
        for _ in 0..6 {
            for i in 0..guesses.len() {
                let old = guesses[i];
                let pick = |chance: &mut Normals, guesses: &[f64]| {
                    guesses[usize::try_from(chance.seed() % guesses.len() as u64).expect("small")]
                };
                let step = pick(&mut chance, &guesses) - pick(&mut chance, &guesses);
                let new = old + 1.2 * step + 0.01 * chance.draw();
                let target = |guess: f64| power * likelihood(guess) - 0.5 * guess * guess;
                if libm::log(chance.share()) < target(new) - target(old) {
                    guesses[i] = new;
                }
            }
        }
    }
    let alike = vec![1.0 / guesses.len() as f64; guesses.len()];
    let (mean, variance) = moments(&guesses, &alike);
    assert!((mean - 300.0 / 101.0).abs() < MEAN, "{mean}");
    assert!((variance.sqrt() - 0.0995).abs() < DEVIATION, "{variance}");
}

#[test]
fn surveyed_water_use_lies_within_the_band_of_a_like_climate() {
    // Barbosa et al. 2015, Int. J. Environ. Res. Public Health 12:6879: 20 ± 3.8 L/kg over many
    // hydroponic farms, mild to warm; Pennisi et al. 2019, Scientific Reports 9:14127: 13.3 L/kg
    // at best, indoors under lamps of 215 µmol m⁻² s⁻¹ for 16 h.
    let mut plan = Example::FloatingBoards.plan();
    plan.crop.kind = Pick::Known(CropKind::LeafLettuce);
    plan.choose_climate(ClimateChoice::TemperateLateSummer);
    let (month, day) = ClimateChoice::TemperateLateSummer
        .climate()
        .expect("a ready climate")
        .season;
    plan.crop.date = Entry::Text(format!("2027-{month:02}-{day:02}"));
    let band = outcome(&plan).water_per_kg_l.expect("a band");
    println!("late summer {band:?}");
    within("surveyed mean", 20.0, band.low, band.high);

    plan.choose_shelter(slackwater::catalog::shelters::Shelter::Lamps);
    for (field, value) in [
        (Field::LampFlux, 215.0),
        (Field::LampHours, 16.0),
        (Field::TemperatureMin, 21.0),
        (Field::TemperatureMax, 24.0),
        (Field::Humidity, 70.0),
    ] {
        set(&mut plan, field, value);
    }
    // A best is no middle: it lies below that, and yet some of the seasons go as low.
    let mut chances = Chances::new(&plan, SEASONS).expect("sound");
    while !chances.advance(SEASONS).expect("within the models") {}
    let middle = chances.outcome().water_per_kg_l.expect("a band").middle;
    let least = chances
        .fates()
        .iter()
        .map(|fate| fate.water_per_kg_l)
        .fold(f64::INFINITY, f64::min);
    println!("lamps {least} to {middle}");
    within("best of a chamber", 13.3, least, middle);
}

#[test]
fn what_growers_tell_lies_within_the_bands_of_like_climates() {
    // Common practice, no source. A told band holds for climates like its own: the nights, days
    // and light that it was told for span a few kelvins and MJ/m² to either side.
    const KELVIN: f64 = 2.5;
    const MEGAJOULES: f64 = 3.0;
    for row in table::rows(include_str!("data/practice_water_use.csv")) {
        let n = |column: &str| row.number(column);
        let (mut least, mut most) = (f64::INFINITY, 0.0_f64);
        for by in [-1.0, 0.0, 1.0] {
            for example in [Example::CoveredTank, Example::FloatingBoards] {
                let mut plan = example.plan();
                plan.crop.kind = Pick::Known(CropKind::LeafLettuce);
                let plan = elsewhere(
                    plan,
                    [
                        n("minimum_c") + by * KELVIN,
                        n("maximum_c") + by * KELVIN,
                        n("humidity_pct"),
                    ],
                    n("solar_mj_per_m2") + by * MEGAJOULES,
                    [n("latitude_deg"), n("elevation_m")],
                    row.text("date"),
                );
                let band = outcome(&plan).water_per_kg_l.expect("a band");
                least = least.min(band.low);
                most = most.max(band.high);
            }
        }
        let (low, high) = (n("low_l_per_kg"), n("high_l_per_kg"));
        println!(
            "{}: {least:.1} to {most:.1} holds {low} to {high}",
            row.text("place")
        );
        assert!(least <= low && most >= high, "{least} to {most}");
        // A band that holds anything would say nothing.
        assert!(least > 0.4 * low && most < 2.0 * high, "{least} to {most}");
    }
}
