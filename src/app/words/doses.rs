//! What is measured out, and what it costs.

use super::say::*;
use crate::advice::{Dose, Material, Outcome};
use crate::plan::{Dimension, UnitSystem, grams};

use super::choices::Worded;
use super::figures::show;
use super::findings::fine;

/// A dose as it is measured out: grams and millilitres everywhere, with US units beside what is not
/// too small for them.
pub fn dose(dose: &Dose, units: UnitSystem) -> String {
    /// A tenth of an ounce, and a fluid ounce.
    const LEAST_G: f64 = 2.8;
    const LEAST_ML: f64 = 30.0;
    let us = units == UnitSystem::UsCustomary;
    if let Some(mass) = dose.mass_g {
        let text = grams(mass).to_string();
        return if us && mass >= LEAST_G {
            format!("{text} ({})", show(Dimension::Mass, mass, units))
        } else {
            text
        };
    }
    let millilitres = dose.volume_ml.unwrap_or_default();
    let litres = millilitres / 1000.0;
    let text = show(Dimension::Volume, litres, UnitSystem::Metric);
    if us && millilitres >= LEAST_ML {
        format!("{text} ({})", show(Dimension::Volume, litres, units))
    } else {
        text
    }
}

/// What is measured out.
pub fn material(material: &Material) -> String {
    match material {
        Material::Blend => material_blend().to_owned(),
        Material::StockA => material_stock_a().to_owned(),
        Material::StockB => material_stock_b().to_owned(),
        Material::CalciumNitrateDoubleSalt => material_calcium_nitrate_double_salt().to_owned(),
        Material::CalciumNitrateTetrahydrate => material_calcium_nitrate_tetrahydrate().to_owned(),
        Material::MagnesiumSulfate => material_magnesium_sulfate().to_owned(),
        Material::Salt(salt) => {
            let name = salt.word();
            small(&name)
        }
        Material::OwnSalt(formula) => formula.clone(),
        Material::Acid(acid) => small(&acid.word()),
    }
}

/// First letter as a capital.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters
        .next()
        .map(|first| format!("{}{}", first.to_ascii_uppercase(), letters.as_str()))
        .unwrap_or_default()
}

/// First letter as a small one.
fn small(text: &str) -> String {
    let mut letters = text.chars();
    letters
        .next()
        .map(|first| format!("{}{}", first.to_ascii_lowercase(), letters.as_str()))
        .unwrap_or_default()
}

/// Doses in one line.
fn line_of(doses: &[Dose], units: UnitSystem) -> String {
    doses
        .iter()
        .map(|item| format!("{} {}", dose(item, units), material(&item.material)))
        .collect::<Vec<_>>()
        .join(" + ")
}

/// The doses of one container in one line; a long list of salts in short.
pub fn doses_line(outcome: &Outcome, units: UnitSystem) -> String {
    let doses = &outcome.fertilizer.doses;
    if doses.len() > 3 {
        format!("{} salts", doses.len())
    } else {
        line_of(doses, units)
    }
}

/// Every dose of one container.
pub fn dose_lines(outcome: &Outcome, units: UnitSystem) -> Vec<Vec<String>> {
    outcome
        .fertilizer
        .doses
        .iter()
        .map(|item| vec![capital(&material(&item.material)), dose(item, units)])
        .collect()
}

/// The doses of all containers, where there are several.
pub fn all_doses_line(outcome: &Outcome, units: UnitSystem) -> Option<String> {
    let doses = &outcome.fertilizer.doses_for_all;
    (outcome.fill.containers > 1).then(|| {
        if doses.len() > 3 {
            return format!(
                "{} containers take {0} times as much.",
                outcome.fill.containers
            );
        }
        format!(
            "{} containers take {}.",
            outcome.fill.containers,
            line_of(doses, units)
        )
    })
}

/// Under the doses.
pub fn dose_more(outcome: &Outcome, units: UnitSystem) -> String {
    let fertilizer = &outcome.fertilizer;
    format!(
        "{} at 25 °C, pH {}, {} nitrogen. For one container. {}{}",
        show(Dimension::Conductivity, fertilizer.ec_ms_per_cm, units),
        fine(outcome.solution.ph),
        show(
            Dimension::Concentration,
            fertilizer.elements_mg_per_l.n,
            units
        ),
        all_doses_line(outcome, units).unwrap_or_default(),
        cost_line(outcome)
    )
}

/// What the charge costs, where prices were given.
pub fn cost_line(outcome: &Outcome) -> String {
    outcome
        .fertilizer
        .cost
        .as_ref()
        .map_or_else(String::new, |cost| {
            let money = |amount: f64| {
                let places = if amount < 1.0 { 3 } else { 2 };
                format!("{}{amount:.places$}", cost.currency)
            };
            format!(
                " It costs about {}, {} a head.",
                money(cost.charge),
                money(cost.per_head)
            )
        })
}
