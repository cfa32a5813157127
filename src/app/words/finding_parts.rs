//! Parts of what the findings say.

use super::doses::capital;
use super::figures::{and_list, rounded, show};
use super::say::*;
use crate::advice::{Mend, MendWay, Saturation};
use crate::plan::{Dimension, UnitSystem};
use crate::science::raw_water::Item;

/// The pH beside what suits, and what comes of another.
pub fn ph_sentences(ph: f64, low: f64, high: f64) -> String {
    let reads = FindingPh {
        ph: &fine(ph),
        low: &fine(low),
        high: &fine(high),
    };
    let comes = if ph < low {
        finding_ph_low()
    } else if ph > high {
        finding_ph_high()
    } else {
        ""
    };
    sentences(&[Some(reads.text()), Some(comes.to_owned())])
}

/// The sentences that there are, one after the other.
pub(super) fn sentences(of: &[Option<String>]) -> String {
    let there: Vec<&str> = of
        .iter()
        .flatten()
        .map(String::as_str)
        .filter(|sentence| !sentence.is_empty())
        .collect();
    there.join(" ")
}

/// What would mend the roots.
pub(super) fn mends_text(mends: &[Mend], units: UnitSystem) -> String {
    if mends.is_empty() {
        return roots_mends_none().to_owned();
    }
    let ways: Vec<String> = mends.iter().map(|mend| way(mend, units)).collect();
    roots_mends_any(&ways.join("; "))
}

fn way(mend: &Mend, units: UnitSystem) -> String {
    let length = |cm| show(Dimension::Length, cm, units);
    match mend.way {
        MendWay::FillDepth { to_cm, .. } => roots_way_fill_depth(&length(to_cm)),
        MendWay::PotHeight { to_cm, .. } => roots_way_pot_height(&length(to_cm)),
        MendWay::Pipe {
            to_mm, fill_anew, ..
        } => {
            let across = length(to_mm / 10.0);
            if fill_anew {
                roots_way_pipe_and_fill(&across)
            } else {
                roots_way_pipe(&across)
            }
        }
    }
}

/// Button that makes a mend.
pub fn mend(mend: &Mend, units: UnitSystem) -> String {
    capital(&way(mend, units))
}

/// Minerals whose saturation index is above zero.
pub(super) fn minerals(saturation: &Saturation) -> String {
    let names: Vec<String> = [
        (saturation.gypsum, mineral_gypsum()),
        (saturation.brushite, mineral_calcium_phosphate()),
        (saturation.calcite, mineral_lime()),
    ]
    .into_iter()
    .filter(|(index, _)| index.is_some_and(|index| index > 0.0))
    .map(|(_, name)| name.to_owned())
    .collect();
    and_list(&names)
}

/// A pH to one place.
pub fn fine(ph: f64) -> String {
    rounded(ph, if ph < 10.0 { 2 } else { 3 })
}

/// Name of an item of raw water.
pub(super) fn water_item(item: Item) -> &'static str {
    match item {
        Item::Salinity => water_item_salinity(),
        Item::SodiumAdsorption => water_item_sodium_adsorption(),
        Item::ChlorideToxicity => water_item_chloride_toxicity(),
        Item::Boron => water_item_boron(),
        Item::NitrateNitrogen => water_item_nitrate_nitrogen(),
        Item::Bicarbonate => water_item_bicarbonate(),
        Item::Ph => water_item_ph(),
        Item::Sodium => water_item_sodium(),
        Item::Chloride => water_item_chloride(),
        Item::Sulfate => water_item_sulfate(),
        Item::Alkalinity => water_item_alkalinity(),
        Item::Calcium => water_item_calcium(),
        Item::Hardness => water_item_hardness(),
    }
}

pub(super) fn water_amount(item: Item, value: f64) -> String {
    let amount = rounded(value, 2);
    match item {
        Item::Salinity => format!("{amount}\u{a0}mS/cm"),
        Item::ChlorideToxicity | Item::Bicarbonate => water_amount_milliequivalents(&amount),
        Item::SodiumAdsorption | Item::Ph => amount,
        Item::Alkalinity | Item::Hardness => water_amount_as_carbonate(&amount),
        _ => format!("{amount}\u{a0}mg/L"),
    }
}

pub(super) fn charge(mmol: f64) -> String {
    format!("{}\u{a0}mmol", rounded(mmol, 3))
}
