//! Step 3: raw water, blend, stocks or salts, and the strength.

use super::label::label;
use super::reader::Reader;
use super::salts::{self, ShelfSalt};
use super::water::{self, RawWater, millisiemens};
use crate::catalog::recipes::RecipeChoice;
use crate::catalog::salts::Salt;
use crate::catalog::solubility::saturation;
use crate::plan::{AcidChoice, CalciumNitrate, Dosing, Field, Rule, StrengthBy};
use crate::science::label::{Composition, Concentrations, Grade, Label};
use crate::science::units::mass_concentration::{gram_per_liter, milligram_per_liter};
use crate::science::units::mass_density::gram_per_cubic_centimeter;
use crate::science::units::ratio::{percent, ratio};
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::volume::liter;
use crate::science::units::{
    ElectricalConductivity, MassConcentration, MassDensity, Ratio, ThermodynamicTemperature, Volume,
};

/// What is dissolved, and how strong.
#[derive(Clone, Debug, PartialEq)]
pub struct Fertilizer {
    /// What is measured out.
    pub mixture: Mixture,
    /// Nutrients of the blend, by mass; none where single salts are used.
    pub blend: Composition,
    /// The three numbers on the bag of the blend.
    pub grade: Grade,
    /// What fixes the strength.
    pub strength: Strength,
    /// The raw water.
    pub water: RawWater,
    /// Share of rain in what is filled in; the rest is the raw water.
    pub rain: Ratio,
    /// The acid and the pH that it brings about.
    pub acid: Option<AcidDose>,
    /// Crops that grow on one charge.
    pub crops_in_a_row: u32,
    /// Prices in the plan's currency; zero where none was given.
    pub prices: Prices,
}

/// What is measured out.
#[derive(Clone, Debug, PartialEq)]
pub enum Mixture {
    /// The blend alone, weighed.
    DryBlend,
    /// Equal volumes of two stock solutions.
    Stocks(Stocks),
    /// Single salts towards a published solution.
    Salts(Vec<ShelfSalt>),
}

/// Two stock solutions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stocks {
    /// Which calcium nitrate stock A holds.
    pub calcium_nitrate: CalciumNitrate,
    /// Calcium nitrate in stock A.
    pub calcium_nitrate_strength: MassConcentration,
    /// Blend in stock B.
    pub blend_strength: MassConcentration,
    /// Magnesium sulfate heptahydrate in stock B.
    pub magnesium_sulfate_strength: MassConcentration,
    /// Volume of each that is made up.
    pub volume: Volume,
    /// Coldest temperature of the store.
    pub store_temperature: ThermodynamicTemperature,
}

/// What fixes the strength of the solution.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Strength {
    /// Conductivity of the finished solution at 25 °C.
    Conductivity(ElectricalConductivity),
    /// Nitrogen of the finished solution, in all its forms.
    Nitrogen(MassConcentration),
    /// A published solution at a share of its own strength.
    Recipe(RecipeChoice, Ratio),
}

/// An acid and what it is to do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AcidDose {
    /// Which.
    pub acid: AcidChoice,
    /// Share of acid in the product, by mass.
    pub strength: Ratio,
    /// Density of the product; of no account for a solid.
    pub density: MassDensity,
    /// The pH wanted.
    pub target_ph: f64,
}

/// Prices of a kilogram.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Prices {
    /// Of the blend.
    pub blend: f64,
    /// Of the calcium nitrate.
    pub calcium_nitrate: f64,
    /// Of the magnesium sulfate.
    pub magnesium_sulfate: f64,
    /// Of the acid.
    pub acid: f64,
}

pub(super) fn read(reader: &mut Reader) -> Option<Fertilizer> {
    let plan = &reader.plan.fertilizer;
    let (water, rain) = water::read(reader).unzip();
    let dosing = reader.choice(Field::Dosing, &plan.dosing);
    let crops_in_a_row = reader.whole(Field::CropsInARow);
    let acid = acid(reader);
    let (mixture, blend, strength) = if dosing == Some(Dosing::Salts) {
        (
            salts::salts(reader).map(Mixture::Salts),
            Some((Composition::NONE, Label::default().grade())),
            recipe(reader),
        )
    } else {
        // An unknown way of dosing hides no problem of the blend that most ways use.
        let named = reader.choice(Field::Blend, &plan.blend);
        let blend = label(reader);
        let mixture = match dosing {
            Some(Dosing::Stocks) => stocks(reader).map(Mixture::Stocks),
            Some(_) => Some(Mixture::DryBlend),
            None => None,
        };
        let blend = blend.filter(|_| named.is_some());
        (mixture, blend, strength(reader, water.as_ref(), rain))
    };
    let prices = prices(reader, dosing, &acid);
    let (mixture, (blend, grade)) = (mixture?, blend?);
    // Calcium nitrate alone would carry both targets, so only a lone blend must.
    if mixture == Mixture::DryBlend {
        carries(reader, &blend, strength);
    }
    Some(Fertilizer {
        mixture,
        blend,
        grade,
        strength: strength?,
        water: water?,
        rain: rain?,
        acid: match acid {
            AcidRead::Unused => None,
            AcidRead::Sound(dose) => Some(dose),
            AcidRead::Wrong => return None,
        },
        crops_in_a_row: crops_in_a_row?,
        prices,
    })
}

fn strength(
    reader: &mut Reader,
    water: Option<&RawWater>,
    rain: Option<Ratio>,
) -> Option<Strength> {
    let raw_share = 1.0 - rain.map_or(0.0, |rain| rain.get::<ratio>());
    match reader.choice(Field::StrengthBy, &reader.plan.fertilizer.strength_by)? {
        StrengthBy::Conductivity => {
            let target = reader.number(Field::TargetConductivity)?;
            let raw = match water {
                Some(RawWater::Tap(conductivity)) => reader
                    .plan_number(Field::RawWaterConductivity)
                    .filter(|_| conductivity.value > 0.0),
                Some(RawWater::Analysis(_)) => reader.plan_number(Field::RawWaterConductivity),
                _ => None,
            };
            if let Some(raw) = raw.map(|raw| raw * raw_share)
                && target <= raw
            {
                reader.conflict(
                    Field::TargetConductivity,
                    target,
                    Rule::TargetAboveRawWater,
                    raw,
                );
            }
            Some(Strength::Conductivity(millisiemens(target)))
        }
        StrengthBy::Nitrogen => {
            let target = reader.number(Field::TargetNitrogen)?;
            if let Some(RawWater::Analysis(analysis)) = water
                && let Ok(brought) = analysis.nutrients()
            {
                let raw = brought.nitrogen().get::<milligram_per_liter>() * raw_share;
                if target <= raw {
                    reader.conflict(
                        Field::TargetNitrogen,
                        target,
                        Rule::TargetAboveRawWater,
                        raw,
                    );
                }
            }
            Some(Strength::Nitrogen(MassConcentration::new::<
                milligram_per_liter,
            >(target)))
        }
    }
}

fn recipe(reader: &mut Reader) -> Option<Strength> {
    let recipe = reader.choice(Field::Recipe, &reader.plan.fertilizer.recipe);
    let share = reader.number(Field::RecipeStrength);
    Some(Strength::Recipe(recipe?, Ratio::new::<percent>(share?)))
}

/// A blend must bring what its strength is measured by.
fn carries(reader: &mut Reader, blend: &Composition, strength: Option<Strength>) {
    let conducts = Concentrations::NONE
        .add(blend, MassConcentration::new::<gram_per_liter>(1.0))
        .is_ok_and(|solution| solution.cation_charge().value > 0.0);
    match strength {
        Some(Strength::Conductivity(_)) if !conducts => {
            reader.conflict(Field::Blend, 0.0, Rule::BlendConducts, 0.0);
        }
        Some(Strength::Nitrogen(_)) if blend.nitrogen().value <= 0.0 => {
            reader.conflict(Field::LabelNitrogen, 0.0, Rule::BlendHasNitrogen, 0.0);
        }
        _ => {}
    }
}

fn stocks(reader: &mut Reader) -> Option<Stocks> {
    let calcium_nitrate = reader.choice(
        Field::CalciumNitrate,
        &reader.plan.fertilizer.calcium_nitrate,
    );
    let strength = |value: Option<f64>| value.map(MassConcentration::new::<gram_per_liter>);
    let a = strength(reader.number(Field::StockACalciumNitrate));
    let b = strength(reader.number(Field::StockBBlend));
    let magnesium = strength(reader.number(Field::StockBMagnesiumSulfate));
    let volume = reader.number(Field::StockVolume);
    let cold = reader.number(Field::StoreTemperature);
    if let Some(cold) = cold {
        dissolves(
            reader,
            Field::StockACalciumNitrate,
            calcium_nitrate.map(CalciumNitrate::salt),
            cold,
        );
        let epsom = Some(Salt::MagnesiumSulfate);
        dissolves(reader, Field::StockBMagnesiumSulfate, epsom, cold);
    }
    Some(Stocks {
        calcium_nitrate: calcium_nitrate?,
        calcium_nitrate_strength: a?,
        blend_strength: b?,
        magnesium_sulfate_strength: magnesium?,
        volume: Volume::new::<liter>(volume?),
        store_temperature: ThermodynamicTemperature::new::<degree_celsius>(cold?),
    })
}

/// A salt alone must dissolve at the store's coldest, `cold` in °C; a warmer store than the table
/// of solubilities reaches dissolves no less than its warmest.
fn dissolves(reader: &mut Reader, field: Field, salt: Option<Salt>, cold: f64) {
    let at = ThermodynamicTemperature::new::<degree_celsius>(cold.min(30.0));
    let limit = salt.and_then(|salt| saturation(salt, at).ok());
    if let (Some(strength), Some(limit)) = (reader.plan_number(field), limit) {
        let most = limit.get::<gram_per_liter>();
        if strength > most {
            reader.conflict(field, strength, Rule::DissolvesInStore, most);
        }
    }
}

/// What was read of the acid.
enum AcidRead {
    /// None is used.
    Unused,
    /// It is used, and sound.
    Sound(AcidDose),
    /// It is used, or not known to be; something about it is wrong.
    Wrong,
}

fn acid(reader: &mut Reader) -> AcidRead {
    match reader.choice(Field::Acid, &reader.plan.fertilizer.acid) {
        None => AcidRead::Wrong,
        Some(AcidChoice::None) => AcidRead::Unused,
        Some(acid) => {
            let strength = reader.number(Field::AcidStrength);
            // A solid is weighed.
            let density = if acid == AcidChoice::Citric {
                Some(1.0)
            } else {
                reader.number(Field::AcidDensity)
            };
            let target_ph = reader.number(Field::TargetPh);
            match (strength, density, target_ph) {
                (Some(strength), Some(density), Some(target_ph)) => AcidRead::Sound(AcidDose {
                    acid,
                    strength: Ratio::new::<percent>(strength),
                    density: MassDensity::new::<gram_per_cubic_centimeter>(density),
                    target_ph,
                }),
                _ => AcidRead::Wrong,
            }
        }
    }
}

/// Prices are no condition of a sound plan: what is left empty costs nothing.
fn prices(reader: &mut Reader, dosing: Option<Dosing>, acid: &AcidRead) -> Prices {
    let mut price = |field: Field| reader.number_or_zero(field).unwrap_or_default();
    let mut prices = Prices::default();
    if matches!(dosing, Some(Dosing::DryBlend | Dosing::Stocks)) {
        prices.blend = price(Field::PriceBlend);
    }
    if dosing == Some(Dosing::Stocks) {
        prices.calcium_nitrate = price(Field::PriceCalciumNitrate);
        prices.magnesium_sulfate = price(Field::PriceMagnesiumSulfate);
    }
    if !matches!(acid, AcidRead::Unused) {
        prices.acid = price(Field::PriceAcid);
    }
    prices
}
