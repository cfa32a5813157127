//! Grams and millilitres for one container, and what they cost.

use super::mixing::{Mixed, material_of};
use super::outcome::{Cost, Dose, Doses, Elements, Fitting, Material, NitrogenForms};
use crate::plan::{AcidChoice, AcidDose, Fertilizer, Mixture, ShelfSalt, Stocks};
use crate::science::label::{Concentrations, Nutrient};
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::mass_concentration::{gram_per_liter, milligram_per_liter};
use crate::science::units::mass_density::gram_per_cubic_centimeter;
use crate::science::units::molar_mass::gram_per_mole;
use crate::science::units::ratio::ratio;
use crate::science::units::volume::liter;
use crate::science::units::{ElectricalConductivity, Volume};
use crate::season::Chemistry;

/// What roundings of the fit leave of a salt that it does not use, g per litre. A trace element
/// of a weak solution takes a thousand times more.
const UNUSED_G_PER_L: f64 = 1e-9;

/// The doses of containers of this volume each.
pub(super) fn doses(
    fertilizer: &Fertilizer,
    chemistry: &Chemistry,
    mixed: &Mixed,
    volume: Volume,
    containers: u32,
    fitting: Option<Fitting>,
) -> Doses {
    let litres = volume.get::<liter>();
    let mut doses = match &fertilizer.mixture {
        Mixture::DryBlend => vec![weighed(
            Material::Blend(fertilizer.grade),
            share(mixed, 0) * litres,
        )],
        Mixture::Stocks(_) => [(Material::StockA, 0), (Material::StockB, 1)]
            .map(|(material, part)| Dose {
                material,
                mass_g: None,
                volume_ml: Some(share(mixed, part) * litres * 1000.0),
                brings_calcium: part == 0,
            })
            .into(),
        Mixture::Salts(shelf) => shelf
            .iter()
            .zip(&mixed.shares)
            .filter(|(_, share)| **share > UNUSED_G_PER_L)
            .map(|(salt, share)| Dose {
                brings_calcium: salt.composition.fraction(Nutrient::Ca).value > 0.0,
                ..weighed(material(salt), share * litres)
            })
            .collect(),
    };
    if let Some(acid) = &fertilizer.acid
        && mixed.acid_mol_per_l > 0.0
    {
        doses.push(acid_dose(acid, mixed.acid_mol_per_l * litres));
    }
    let for_all = f64::from(containers);
    let alone = match doses.as_slice() {
        [only] => only.mass_g,
        _ => None,
    };
    Doses {
        alone_g_per_l: alone.map(|grams| grams / litres),
        doses_for_all: doses
            .iter()
            .map(|dose| Dose {
                material: dose.material.clone(),
                mass_g: dose.mass_g.map(|mass| mass * for_all),
                volume_ml: dose.volume_ml.map(|volume| volume * for_all),
                brings_calcium: dose.brings_calcium,
            })
            .collect(),
        doses,
        ec_ms_per_cm: millisiemens(mixed.standard.conductivity()),
        raw_water_ec_ms_per_cm: millisiemens(chemistry.filled_in().conductivity()),
        elements_mg_per_l: elements(&mixed.nutrients),
        nitrogen_forms_mg_per_l: NitrogenForms {
            nitrate: of(&mixed.nutrients, Nutrient::NitrateN),
            ammonium: of(&mixed.nutrients, Nutrient::AmmoniumN),
            urea: of(&mixed.nutrients, Nutrient::UreaN),
        },
        targets: mixed.targets.clone(),
        no_acid_needed: mixed.already_acid,
        fitting,
        cost: None,
    }
}

fn weighed(material: Material, mass_g: f64) -> Dose {
    Dose {
        material,
        mass_g: Some(mass_g),
        volume_ml: None,
        brings_calcium: false,
    }
}

fn share(mixed: &Mixed, part: usize) -> f64 {
    mixed.shares.get(part).copied().unwrap_or_default()
}

fn material(salt: &ShelfSalt) -> Material {
    salt.salt
        .map_or_else(|| Material::OwnSalt(salt.name.clone()), Material::Salt)
}

/// An acid by volume, a solid one by mass.
fn acid_dose(acid: &AcidDose, moles: f64) -> Dose {
    let grams_of_product = moles * molar_mass(acid.acid) / acid.strength.get::<ratio>();
    let material = Material::Acid(acid.acid);
    if acid.acid == AcidChoice::Citric {
        return weighed(material, grams_of_product);
    }
    Dose {
        material,
        mass_g: None,
        volume_ml: Some(grams_of_product / acid.density.get::<gram_per_cubic_centimeter>()),
        brings_calcium: false,
    }
}

fn molar_mass(acid: AcidChoice) -> f64 {
    acid.figures().map_or(0.0, |acid| {
        acid.formula().molar_mass().get::<gram_per_mole>()
    })
}

/// What the charge of one container costs, where any price was given.
pub(super) fn cost(
    fertilizer: &Fertilizer,
    currency: &str,
    mixed: &Mixed,
    volume: Volume,
    doses: &[Dose],
    plants: u32,
) -> Option<Cost> {
    let prices = &fertilizer.prices;
    let of_stock = |stocks: &Stocks, dose: &Dose| {
        let litres = dose.volume_ml.unwrap_or_default() / 1000.0;
        let kg = |strength: crate::science::units::MassConcentration| {
            strength.get::<gram_per_liter>() * litres / 1000.0
        };
        if dose.material == Material::StockA {
            kg(stocks.calcium_nitrate_strength) * prices.calcium_nitrate
        } else {
            kg(stocks.blend_strength) * prices.blend
                + kg(stocks.magnesium_sulfate_strength) * prices.magnesium_sulfate
        }
    };
    let kilograms = |dose: &Dose| dose.mass_g.unwrap_or_default() / 1000.0;
    let price_of = |dose: &Dose| match (&dose.material, &fertilizer.mixture) {
        (Material::Acid(_), _) => {
            let density = fertilizer
                .acid
                .map_or(1.0, |acid| acid.density.get::<gram_per_cubic_centimeter>());
            let by_volume = dose.volume_ml.unwrap_or_default() * density / 1000.0;
            (kilograms(dose) + by_volume) * prices.acid
        }
        (Material::StockA | Material::StockB, Mixture::Stocks(stocks)) => of_stock(stocks, dose),
        // Below, by the line of the shelf: the same salt may stand there at two prices.
        (_, Mixture::Salts(_)) => 0.0,
        _ => kilograms(dose) * prices.blend,
    };
    let mut charge: f64 = doses.iter().map(price_of).sum();
    if let Mixture::Salts(shelf) = &fertilizer.mixture {
        let grams_per_l = shelf.iter().zip(&mixed.shares);
        charge += grams_per_l
            .map(|(salt, share)| salt.price * share / 1000.0)
            .sum::<f64>()
            * volume.get::<liter>();
    }
    (charge > 0.0).then(|| Cost {
        currency: currency.to_owned(),
        charge,
        per_head: charge / f64::from(plants),
    })
}

/// Elements of a solution, mg/L.
pub(super) fn elements(nutrients: &Concentrations) -> Elements {
    Elements {
        n: nutrients.nitrogen().get::<milligram_per_liter>(),
        p: of(nutrients, Nutrient::P),
        k: of(nutrients, Nutrient::K),
        ca: of(nutrients, Nutrient::Ca),
        mg: of(nutrients, Nutrient::Mg),
        s: of(nutrients, Nutrient::S),
        fe: of(nutrients, Nutrient::Fe),
        mn: of(nutrients, Nutrient::Mn),
        zn: of(nutrients, Nutrient::Zn),
        cu: of(nutrients, Nutrient::Cu),
        b: of(nutrients, Nutrient::B),
        mo: of(nutrients, Nutrient::Mo),
    }
}

fn of(nutrients: &Concentrations, nutrient: Nutrient) -> f64 {
    nutrients.of(nutrient).get::<milligram_per_liter>()
}

/// 1 mS/cm = 0.1 S/m.
pub(super) fn millisiemens(conductivity: ElectricalConductivity) -> f64 {
    conductivity.get::<siemens_per_meter>() * 10.0
}

/// The calcium nitrate of a stock, as something to measure out.
pub(super) fn calcium_nitrate(stocks: &Stocks) -> Material {
    material_of(stocks.calcium_nitrate)
}
