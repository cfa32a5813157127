//! Grams and millilitres for a target strength.

use super::outcome::{Dose, Doses, Elements, Material, NitrogenForms, Stock, StockContent};
use crate::catalog::salts::Salt;
use crate::plan::{CalciumNitrate, Fertilizer, Mixture, Strength};
use crate::science::conductivity::{from_cation_charge, to_cation_charge};
use crate::science::label::{Composition, Concentrations, Nutrient};
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::mass_concentration::{gram_per_liter, milligram_per_liter};
use crate::science::units::molar_concentration::millimole_per_liter;
use crate::science::units::ratio::ratio;
use crate::science::units::volume::liter;
use crate::science::units::{ElectricalConductivity, MassConcentration, Ratio, Volume};
use crate::season::Beyond;

/// The finished solution: what the fertilizer brings, and how much of what was dissolved.
#[derive(Clone, Debug, PartialEq)]
pub struct Mixed {
    /// What the fertilizer brings at planting.
    pub solution: Concentrations,
    /// Grams of blend, or litres of each stock, per litre of solution.
    share: f64,
}

/// Works out the strength of the mixture per litre of solution.
///
/// # Errors
/// [`Beyond`] when the target asks for more than any solution holds.
pub fn mix(fertilizer: &Fertilizer) -> Result<Mixed, Beyond> {
    let one = one_share(fertilizer)?;
    let share = match fertilizer.strength {
        Strength::Conductivity(target) => {
            let wanted = to_cation_charge(target - fertilizer.raw_water).map_err(|_| Beyond)?;
            wanted.get::<millimole_per_liter>() / one.cation_charge().get::<millimole_per_liter>()
        }
        Strength::Nitrogen(target) => {
            target.get::<gram_per_liter>() / one.nitrogen().get::<gram_per_liter>()
        }
    };
    if !share.is_finite() || share < 0.0 {
        return Err(Beyond);
    }
    let solution = one.scaled(Ratio::new::<ratio>(share)).map_err(|_| Beyond)?;
    // A nitrogen target can ask for a solution whose conductivity cannot be told.
    from_cation_charge(solution.cation_charge()).map_err(|_| Beyond)?;
    Ok(Mixed { solution, share })
}

/// What one gram of blend, or one litre of each stock, brings to a litre. Litres of stock are
/// scaled down to fractions later, so the figure may be far stronger than any solution that is
/// used.
fn one_share(fertilizer: &Fertilizer) -> Result<Concentrations, Beyond> {
    let add = |to: Concentrations, what: &Composition, amount: MassConcentration| {
        to.add(what, amount).map_err(|_| Beyond)
    };
    match fertilizer.mixture {
        Mixture::DryBlend => add(
            Concentrations::NONE,
            &fertilizer.blend,
            MassConcentration::new::<gram_per_liter>(1.0),
        ),
        Mixture::Stocks {
            calcium_nitrate,
            calcium_nitrate_strength,
            blend_strength,
            magnesium_sulfate_strength,
        } => {
            let a = add(
                Concentrations::NONE,
                &salt_of(calcium_nitrate).composition(),
                calcium_nitrate_strength,
            )?;
            let b = add(a, &fertilizer.blend, blend_strength)?;
            add(
                b,
                &Salt::MagnesiumSulfate.composition(),
                magnesium_sulfate_strength,
            )
        }
    }
}

fn salt_of(choice: CalciumNitrate) -> Salt {
    match choice {
        CalciumNitrate::DoubleSalt => Salt::CalciumAmmoniumNitrate,
        CalciumNitrate::Tetrahydrate => Salt::CalciumNitrate,
    }
}

/// The doses of containers of this volume each.
pub fn doses(fertilizer: &Fertilizer, mixed: &Mixed, volume: Volume, containers: u32) -> Doses {
    let litres = volume.get::<liter>();
    let (doses, stocks) = match fertilizer.mixture {
        Mixture::DryBlend => (
            vec![Dose {
                material: Material::Blend,
                mass_g: Some(mixed.share * litres),
                volume_ml: None,
            }],
            Vec::new(),
        ),
        Mixture::Stocks {
            calcium_nitrate,
            calcium_nitrate_strength,
            blend_strength,
            magnesium_sulfate_strength,
        } => {
            let millilitres = |material| Dose {
                material,
                mass_g: None,
                volume_ml: Some(mixed.share * litres * 1000.0),
            };
            let content = |material, strength: MassConcentration| StockContent {
                material,
                g_per_l: strength.get::<gram_per_liter>(),
            };
            let calcium = match calcium_nitrate {
                CalciumNitrate::DoubleSalt => Material::CalciumNitrateDoubleSalt,
                CalciumNitrate::Tetrahydrate => Material::CalciumNitrateTetrahydrate,
            };
            (
                vec![millilitres(Material::StockA), millilitres(Material::StockB)],
                vec![
                    Stock {
                        material: Material::StockA,
                        contents: vec![content(calcium, calcium_nitrate_strength)],
                    },
                    Stock {
                        material: Material::StockB,
                        contents: vec![
                            content(Material::Blend, blend_strength),
                            content(Material::MagnesiumSulfate, magnesium_sulfate_strength),
                        ],
                    },
                ],
            )
        }
    };
    let solution = &mixed.solution;
    let of = |nutrient: Nutrient| solution.of(nutrient).get::<milligram_per_liter>();
    let raw = millisiemens(fertilizer.raw_water);
    let for_all = f64::from(containers);
    Doses {
        doses_for_all: doses
            .iter()
            .map(|dose| Dose {
                material: dose.material,
                mass_g: dose.mass_g.map(|mass| mass * for_all),
                volume_ml: dose.volume_ml.map(|volume| volume * for_all),
            })
            .collect(),
        doses,
        ec_ms_per_cm: raw + from_cation_charge(solution.cation_charge()).map_or(0.0, millisiemens),
        ec_is_estimate: true,
        raw_water_ec_ms_per_cm: raw,
        elements_mg_per_l: Elements {
            n: solution.nitrogen().get::<milligram_per_liter>(),
            p: of(Nutrient::P),
            k: of(Nutrient::K),
            ca: of(Nutrient::Ca),
            mg: of(Nutrient::Mg),
            s: of(Nutrient::S),
            fe: of(Nutrient::Fe),
            mn: of(Nutrient::Mn),
            zn: of(Nutrient::Zn),
            cu: of(Nutrient::Cu),
            b: of(Nutrient::B),
            mo: of(Nutrient::Mo),
        },
        nitrogen_forms_mg_per_l: NitrogenForms {
            nitrate: of(Nutrient::NitrateN),
            ammonium: of(Nutrient::AmmoniumN),
            urea: of(Nutrient::UreaN),
        },
        stocks,
    }
}

/// 1 mS/cm = 0.1 S/m.
pub(super) fn millisiemens(conductivity: ElectricalConductivity) -> f64 {
    conductivity.get::<siemens_per_meter>() * 10.0
}
