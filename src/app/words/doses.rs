//! What is measured out, and what it costs.

use super::say::*;
use crate::advice::{Dose, Material, Outcome, StockOutcome};
use crate::plan::{Dimension, UnitSystem};
use crate::science::label::Grade;
use crate::science::units::ratio::percent;

use super::choices::Worded;
use super::figures::{on_scale, places, reference, rounded, show};
use super::finding_parts::{fine, sentences};

/// A dose as it is measured out: grams and millilitres everywhere, with US units beside what is not
/// too small for them.
pub fn dose(dose: &Dose, units: UnitSystem) -> String {
    /// A tenth of an ounce.
    const LEAST_G: f64 = 2.8;
    let us = units == UnitSystem::UsCustomary;
    if let Some(mass) = dose.mass_g {
        let text = on_scale(mass);
        return if us && mass >= LEAST_G {
            format!("{text} ({})", show(Dimension::Mass, mass, units))
        } else {
            text
        };
    }
    let millilitres = dose.volume_ml.unwrap_or_default();
    let text = show(Dimension::Volume, millilitres / 1000.0, UnitSystem::Metric);
    beside(text, millilitres, units)
}

/// Millilitres as they are measured out, with US units beside what is not too small for them.
pub fn millilitres(volume_ml: f64, units: UnitSystem) -> String {
    let text = format!("{}\u{a0}mL", places(volume_ml, 0));
    beside(text, volume_ml, units)
}

fn beside(text: String, millilitres: f64, units: UnitSystem) -> String {
    /// A fluid ounce.
    const LEAST_ML: f64 = 30.0;
    if units == UnitSystem::UsCustomary && millilitres >= LEAST_ML {
        let litres = millilitres / 1000.0;
        format!("{text} ({})", show(Dimension::Volume, litres, units))
    } else {
        text
    }
}

/// What is measured out.
pub fn material(material: &Material) -> String {
    match material {
        Material::Blend(Grade(shares)) => {
            let numbers = shares.map(|share| rounded(share.get::<percent>(), 3));
            // No line ends at these hyphens.
            material_blend(&numbers.join("\u{2011}"))
        }
        Material::StockA => material_stock_a().to_owned(),
        Material::StockB => material_stock_b().to_owned(),
        Material::CalciumNitrateDoubleSalt => {
            material_calcium_nitrate_double_salt(&number("15.5-0-0"))
        }
        Material::CalciumNitrateTetrahydrate => material_calcium_nitrate_tetrahydrate().to_owned(),
        Material::MagnesiumSulfate => material_magnesium_sulfate().to_owned(),
        Material::Salt(salt) => small(&salt.word()),
        Material::OwnSalt(formula) => formula.clone(),
        Material::Acid(acid) => small(&acid.word()),
    }
}

/// What a stock solution holds, in one line.
pub fn stock_parts(stock: &StockOutcome, units: UnitSystem) -> String {
    let parts = stock.contents.iter().map(|content| {
        CardStockPart {
            strength: &show(Dimension::StockStrength, content.g_per_l, units),
            material: &material(&content.material),
        }
        .text()
    });
    parts.collect::<Vec<_>>().join(" + ")
}

/// First letter as a capital.
pub fn capital(text: &str) -> String {
    first_as(text, |letter| match letter {
        'à'..='ö' | 'ø'..='þ' => moved(letter, -CASES_APART),
        other => other.to_ascii_uppercase(),
    })
}

/// First letter as a small one.
fn small(text: &str) -> String {
    first_as(text, |letter| match letter {
        'À'..='Ö' | 'Ø'..='Þ' => moved(letter, CASES_APART),
        other => other.to_ascii_lowercase(),
    })
}

/// From a capital to its small letter, among the letters with accents that stand in one row.
const CASES_APART: i32 = 0x20;

fn moved(letter: char, by: i32) -> char {
    u32::from(letter)
        .checked_add_signed(by)
        .and_then(char::from_u32)
        .unwrap_or(letter)
}

fn first_as(text: &str, change: impl Fn(char) -> char) -> String {
    let mut letters = text.chars();
    letters
        .next()
        .map(change)
        .into_iter()
        .chain(letters)
        .collect()
}

/// Doses in one line, or in a line for each where ends of lines count: in large type.
fn line_of(doses: &[Dose], units: UnitSystem) -> String {
    doses
        .iter()
        .map(|item| {
            DoseOf {
                dose: &dose(item, units),
                material: &material(&item.material),
            }
            .text()
        })
        .collect::<Vec<_>>()
        .join(" +\n")
}

/// The doses of one container in one line; a long list of salts in short.
pub fn doses_line(outcome: &Outcome, units: UnitSystem) -> String {
    short_line_of(&outcome.fertilizer.doses, units)
}

/// What is dissolved in one container in one line. Acid, which goes in last and bit by bit, is not
/// named where somebody might pour in all of it.
pub fn card_dose(outcome: &Outcome, units: UnitSystem) -> String {
    let doses = outcome.fertilizer.doses.iter();
    let dissolved = doses.filter(|dose| !matches!(dose.material, Material::Acid(_)));
    short_line_of(&dissolved.cloned().collect::<Vec<_>>(), units)
}

fn short_line_of(doses: &[Dose], units: UnitSystem) -> String {
    if doses.len() > 3 {
        salts_in_all(&doses.len().to_string())
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
    let count = &outcome.fill.containers.to_string();
    (outcome.fill.containers > 1).then(|| {
        if doses.len() > 3 {
            return all_doses_as_often(count);
        }
        AllDoses {
            count,
            doses: &line_of(doses, units),
        }
        .text()
    })
}

/// Under the doses.
pub fn dose_more(outcome: &Outcome, units: UnitSystem) -> String {
    let fertilizer = &outcome.fertilizer;
    let nitrogen = fertilizer.elements_mg_per_l.n;
    sentences(&[
        Some(
            DoseMore {
                ec: &show(Dimension::Conductivity, fertilizer.ec_ms_per_cm, units),
                reference: &reference(units),
                ph: &fine(outcome.solution.ph),
                nitrogen: &show(Dimension::Concentration, nitrogen, units),
            }
            .text(),
        ),
        all_doses_line(outcome, units),
        cost_line(outcome),
        kind_of_blend(outcome),
    ])
}

/// Which kind of fertilizer serves, where a blend is weighed.
pub(super) fn kind_of_blend(outcome: &Outcome) -> Option<String> {
    let doses = &outcome.fertilizer.doses;
    let blend = doses
        .iter()
        .any(|item| matches!(item.material, Material::Blend(_)));
    blend.then(|| card_prepare_blend().to_owned())
}

/// What the charge costs, where prices were given.
fn cost_line(outcome: &Outcome) -> Option<String> {
    let cost = outcome.fertilizer.cost.as_ref()?;
    let money = |amount: f64| {
        let written = places(amount, if amount < 1.0 { 3 } else { 2 });
        format!("{}{written}", cost.currency)
    };
    let line = CostLine {
        charge: &money(cost.charge),
        head: &money(cost.per_head),
    };
    Some(line.text())
}
