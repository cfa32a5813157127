//! Strengths that fit the season, and more crops on the same solution.

use super::doses::millisiemens;
use super::mixing::{self, Mixed};
use super::outcome::{Fitting, NextCrop};
use crate::catalog::Keyed;
use crate::plan::Sound;
use crate::science::formula::Element;
use crate::science::label::Concentrations;
use crate::science::units::mass_concentration::gram_per_liter;
use crate::science::units::ratio::ratio;
use crate::science::units::volume::liter;
use crate::science::units::{Ratio, Volume};
use crate::season::{Background, Beyond, Charge, Chemistry, MajorNutrient, Nutrients, PlantCourse};

/// Conductivity above which lettuce grows less, mS/cm: about twice the 1.3 dS/m of a soil extract
/// (Maas 1990) at which yield begins to fall.
pub(super) const STRONG_MS_PER_CM: f64 = 2.6;
/// Sodium and chloride from which a reused solution is drained, mg/L: twice what raw water may have
/// (Mattson and Peters 2014: 50 and 70).
const DRAIN_SODIUM: f64 = 100.0;
const DRAIN_CHLORIDE: f64 = 140.0;

fn times(nutrients: &Concentrations, factor: f64) -> Result<Concentrations, Beyond> {
    nutrients
        .scaled(Ratio::new::<ratio>(factor))
        .map_err(|_| Beyond)
}

/// The span of strengths at which nothing that the mixture brings runs short, and the solution is
/// not too strong at harvest.
pub(super) fn fitting(
    sound: &Sound,
    chemistry: &Chemistry,
    mixed: &Mixed,
    volume: Volume,
    course: &PlantCourse,
    balances: &Nutrients,
) -> Option<Fitting> {
    /// Times the present charge.
    const FAR_TOO_MUCH: f64 = 1e4;
    let days = course.days();
    course.harvest_day?;
    let litres = volume.get::<liter>();
    // Raw water is the same at any strength. The acid that it takes changes in step with the charge,
    // from what the water takes alone: most fertilizers are a little acid themselves.
    let (acid, acid_charge) = &mixed.acid;
    let alone = if mixed.acid_mol_per_l > 0.0 {
        let alone = mixing::water_alone(&sound.fertilizer, chemistry).ok()?;
        alone.acid_mol_per_l / mixed.acid_mol_per_l
    } else {
        1.0
    };
    let acid_at = |share: f64| (alone + (1.0 - alone) * share).max(0.0);
    let charge_at = |share: f64| -> Result<Charge, Beyond> {
        let fertilizer = times(&mixed.fertilizer, share)?;
        let acid = times(acid, acid_at(share))?;
        Ok(Charge {
            nutrients: fertilizer
                .plus(chemistry.water_nutrients())
                .and_then(|held| held.plus(&acid))
                .map_err(|_| Beyond)?,
            background: chemistry
                .background(&fertilizer)
                .with_unlisted_anions(acid_charge * acid_at(share)),
            volume,
            tissue: &sound.crop.figures.tissue,
            plants: sound.crop.plants,
        })
    };
    let reading = |nutrients: &Concentrations, background: &Background, factor: f64| {
        chemistry
            .conductivity(&chemistry.recipe(nutrients, background, factor))
            .map(millisiemens)
    };
    let at_planting = |share: f64| {
        let charge = charge_at(share)?;
        reading(&charge.nutrients, &charge.background, 1.0)
    };
    let at_harvest = |share: f64| {
        let charge = charge_at(share)?;
        reading(
            &charge.left(course, days),
            &charge.background,
            1.0 / charge.water_left(course, days),
        )
    };
    // What each nutrient asks of the fertilizer, as a share of the present charge.
    let least = MajorNutrient::ALL
        .iter()
        .zip(&balances.balances)
        .filter_map(|(&nutrient, balance)| {
            let held = |what: &Concentrations| nutrient.held(what).get::<gram_per_liter>() * litres;
            let (brought, by_acid) = (held(&mixed.fertilizer), held(acid));
            let given = held(chemistry.water_nutrients()) + by_acid * alone;
            let with_each_share = brought + by_acid * (1.0 - alone);
            (brought > 0.0 && with_each_share > 0.0)
                .then(|| (balance.need_g - given).max(0.0) / with_each_share)
        })
        .fold(0.0, f64::max);
    // The reading at harvest rises with the charge: find one that is too much, then narrow the span
    // below it. Urea alone never is.
    let excess = |share: f64| at_harvest(share).map(|reading| reading - STRONG_MS_PER_CM);
    let (mut low, mut high) = (0.0, 1.0);
    let (mut below, mut above) = (excess(low).ok()?, excess(high).ok()?);
    while above <= 0.0 {
        if high > FAR_TOO_MUCH {
            return None;
        }
        (low, below, high) = (high, above, 2.0 * high);
        above = excess(high).ok()?;
    }
    let share = if below > 0.0 {
        low
    } else {
        illinois(&excess, (low, below), (high, above))?
    };
    Some(Fitting {
        low_ms_per_cm: at_planting(least).ok()?,
        high_ms_per_cm: at_planting(share).ok()?,
    })
}

/// Where a rising function of a charge passes zero between two charges, each with its value: false
/// position, with the value of an end that stays halved (Dowell and Jarratt 1971, 'Illinois').
fn illinois(
    excess: &impl Fn(f64) -> Result<f64, Beyond>,
    (mut low, mut below): (f64, f64),
    (mut high, mut above): (f64, f64),
) -> Option<f64> {
    /// Far below what a meter shows, mS/cm.
    const CLOSE: f64 = 1e-6;
    let mut share = low;
    for _ in 0..60 {
        share = (low * above - high * below) / (above - below);
        let here = excess(share).ok()?;
        if here.abs() <= CLOSE {
            break;
        }
        if here > 0.0 {
            (high, above) = (share, here);
            below /= 2.0;
        } else {
            (low, below) = (share, here);
            above /= 2.0;
        }
    }
    Some(share)
}

/// The crops after the first: refilled with raw water after each harvest, and as much of the first
/// charge added back as brings nitrogen to where it was.
pub(super) fn growing_on(
    sound: &Sound,
    chemistry: &Chemistry,
    mixed: &Mixed,
    volume: Volume,
    course: &PlantCourse,
) -> Result<Vec<NextCrop>, Beyond> {
    let mut crops = Vec::new();
    if course.harvest_day.is_none() {
        return Ok(crops);
    }
    let days = course.days();
    let mut charge = Charge {
        nutrients: mixed.nutrients,
        background: mixed.background,
        volume,
        tissue: &sound.crop.figures.tissue,
        plants: sound.crop.plants,
    };
    let wanted = mixed.nutrients.nitrogen().get::<gram_per_liter>();
    let one_charge = mixed.fertilizer.nitrogen().get::<gram_per_liter>();
    // Water that has passed through, in fillings: what it brings beside nutrients stays.
    let mut fillings = 1.0;
    let mut added = 1.0;
    for crop in 2..=sound.fertilizer.crops_in_a_row {
        let left_share = charge.water_left(course, days);
        let refill_share = 1.0 - left_share;
        fillings += refill_share;
        let kept = times(&charge.left(course, days), left_share)?;
        let watered = times(chemistry.water_nutrients(), refill_share)?;
        let before = kept.plus(&watered).map_err(|_| Beyond)?;
        let lacking = wanted - before.nitrogen().get::<gram_per_liter>();
        let add_back = if one_charge > 0.0 {
            (lacking / one_charge).max(0.0)
        } else {
            0.0
        };
        added += add_back;
        charge.nutrients = before
            .plus(&times(&mixed.fertilizer, add_back)?)
            .map_err(|_| Beyond)?;
        charge.background = chemistry.background_after(fillings, &times(&mixed.fertilizer, added)?);
        let recipe = chemistry.recipe(&charge.nutrients, &charge.background, 1.0);
        let ec_ms_per_cm = millisiemens(chemistry.conductivity(&recipe)?);
        let (sodium, chloride) = charge.background.salt();
        let sodium_mg_per_l = sodium * Element::Na.grams_per_mole();
        let chloride_mg_per_l = chloride * Element::Cl.grams_per_mole();
        crops.push(NextCrop {
            crop,
            refill_l: refill_share * volume.get::<liter>(),
            add_back_pct: add_back * 100.0,
            ec_ms_per_cm,
            sodium_mg_per_l,
            chloride_mg_per_l,
            drain: sodium_mg_per_l > DRAIN_SODIUM
                || chloride_mg_per_l > DRAIN_CHLORIDE
                || ec_ms_per_cm > STRONG_MS_PER_CM,
        });
    }
    Ok(crops)
}

/// Conductivity that sodium and chloride make, mS/cm, for the yield under salt: 1 mmol/L of sodium
/// chloride is about 0.118 mS/cm (CRC Handbook, 0.01 N: 118.45 S cm² per equivalent; from memory).
pub(super) fn salt_conductivity(background: &Background, factor: f64) -> f64 {
    let (sodium, chloride) = background.salt();
    sodium.min(chloride) * factor * 0.118
}
