//! Single salts fitted to a published solution.

use super::outcome::TargetReached;
use crate::plan::ShelfSalt;
use crate::science::label::{Concentrations, Nutrient};
use crate::science::least_squares::{Row, bounded};
use crate::science::units::mass_concentration::milligram_per_liter;
use crate::science::units::ratio::ratio;
use crate::season::Beyond;

/// Nutrients that single salts are fitted to.
const FITTED: [Nutrient; 13] = [
    Nutrient::NitrateN,
    Nutrient::AmmoniumN,
    Nutrient::P,
    Nutrient::K,
    Nutrient::Ca,
    Nutrient::Mg,
    Nutrient::S,
    Nutrient::Fe,
    Nutrient::Mn,
    Nutrient::Zn,
    Nutrient::Cu,
    Nutrient::B,
    Nutrient::Mo,
];

/// Grams of each salt per litre that come nearest to a recipe, less what the water brings. Each
/// miss counts relative to its own target; a nutrient that the recipe leaves open, or asks nothing
/// of, counts relative to 50 mg/L, so that it is not piled up.
pub(super) fn fit(
    shelf: &[ShelfSalt],
    wanted: &Concentrations,
    open: &[Nutrient],
    water: &Concentrations,
) -> Result<(Vec<f64>, Vec<TargetReached>), Beyond> {
    const LEFT_OPEN_MG_PER_L: f64 = 50.0;
    let target = |nutrient: Nutrient| wanted.of(nutrient).get::<milligram_per_liter>();
    let brought = |nutrient: Nutrient| water.of(nutrient).get::<milligram_per_liter>();
    let coefficients: Vec<Vec<f64>> = FITTED
        .iter()
        .map(|&nutrient| {
            shelf
                .iter()
                .map(|salt| salt.composition.fraction(nutrient).get::<ratio>() * 1000.0)
                .collect()
        })
        .collect();
    let rows: Vec<Row> = FITTED
        .iter()
        .zip(&coefficients)
        .map(|(&nutrient, coefficients)| {
            let target = target(nutrient);
            let asked = target > 0.0 && !open.contains(&nutrient);
            Row {
                coefficients,
                target: (target - brought(nutrient)).max(0.0),
                weight: if asked {
                    1.0 / target
                } else {
                    1.0 / LEFT_OPEN_MG_PER_L
                },
            }
        })
        .collect();
    let fit = bounded(&rows, &vec![f64::INFINITY; shelf.len()]).map_err(|_| Beyond)?;
    let targets = FITTED
        .iter()
        .zip(&coefficients)
        .filter(|(nutrient, _)| !open.contains(nutrient))
        .map(|(&nutrient, coefficients)| {
            let asked = target(nutrient);
            let reached = brought(nutrient)
                + coefficients
                    .iter()
                    .zip(&fit.amounts)
                    .map(|(coefficient, amount)| coefficient * amount)
                    .sum::<f64>();
            TargetReached {
                nutrient: nutrient.element().symbol(),
                form: form_of(nutrient),
                target_mg_per_l: asked,
                reached_mg_per_l: reached,
                miss_pct: (asked > 0.0).then(|| (reached / asked - 1.0) * 100.0),
            }
        })
        .collect();
    Ok((fit.amounts, targets))
}

fn form_of(nutrient: Nutrient) -> Option<&'static str> {
    match nutrient {
        Nutrient::NitrateN => Some("nitrate"),
        Nutrient::AmmoniumN => Some("ammonium"),
        _ => None,
    }
}
