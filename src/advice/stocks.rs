//! Stock solutions: what keeps each of them clear in the cold, and what happens where they meet.

use super::doses::calcium_nitrate;
use super::mixing::{Mixed, stock_a, stock_b};
use super::outcome::{
    Material, Saturation, StockContent, StockMixture, StockOutcome, StocksTogether,
};
use super::solution::saturation;
use crate::catalog::salts::Salt;
use crate::catalog::solubility::saturation as solubility;
use crate::plan::{Fertilizer, Mixture, Stocks};
use crate::science::label::{Concentrations, Nutrient};
use crate::science::solution::{Equilibria, Recipe, Totals};
use crate::science::units::mass_concentration::gram_per_liter;
use crate::science::units::ratio::ratio;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::volume::liter;
use crate::science::units::{MassConcentration, Ratio, ThermodynamicTemperature, Volume};
use crate::season::{Beyond, Chemistry, totals_of};

/// Volume that a gram of dissolved salt takes, mL: about 0.4 for the salts of stock solutions
/// (Laliberté 2009 gives 0.3 to 0.5).
const ML_PER_GRAM: f64 = 0.4;
/// The warmest of the table of solubilities, °C; a warmer store dissolves no less.
const TABLE_ENDS_C: f64 = 30.0;
/// Shares of stock A in mixtures of both, by volume, per cent.
const SHARES_PCT: [f64; 5] = [10.0, 25.0, 50.0, 75.0, 90.0];
/// Times by which a stock is thinned in search of the strength that stays clear.
const THINNEST: f64 = 1000.0;
/// Halvings of that search: a thousandfold to within a per cent.
const HALVINGS: u32 = 10;

/// A stock, by its ions and by the grams in a litre of it.
struct Stock {
    held: Concentrations,
    g_per_l: f64,
}

impl Stock {
    /// Two stocks poured together, the first of them taking this share of the volume.
    fn with(&self, other: &Self, share: f64) -> Result<Self, Beyond> {
        let of = |stock: &Self, share: f64| stock.held.scaled(Ratio::new::<ratio>(share));
        Ok(Self {
            held: of(self, share)
                .and_then(|part| part.plus(&of(other, 1.0 - share)?))
                .map_err(|_| Beyond)?,
            g_per_l: share * self.g_per_l + (1.0 - share) * other.g_per_l,
        })
    }

    /// What is near to falling out of it, thinned with pure water by so many times.
    fn saturation(&self, at: &Equilibria, times: f64) -> Result<Saturation, Beyond> {
        let thin = 1.0 / times;
        // Moles per litre of stock to moles per kilogram of the water in it.
        let water = 1.0 - ML_PER_GRAM * self.g_per_l * thin / 1000.0;
        if water <= 0.2 {
            return Err(Beyond);
        }
        at.solve(&Recipe::of(balanced(&self.held).scaled(thin / water)))
            .map(|solved| saturation(&solved))
            .map_err(|_| Beyond)
    }

    /// The fewest times that it is thinned until nothing can fall out; 1 where nothing can
    /// anyway, none where even the thinnest is not clear.
    fn clear_when_thinned(&self, at: &Equilibria) -> Result<Option<f64>, Beyond> {
        let clear = |times: f64| Ok(self.saturation(at, times)?.worst() <= 0.0);
        if clear(1.0)? {
            return Ok(Some(1.0));
        }
        if !clear(THINNEST)? {
            return Ok(None);
        }
        let (mut cloudy, mut thin) = (1.0_f64, THINNEST);
        for _ in 0..HALVINGS {
            let middle = (cloudy * thin).sqrt();
            if clear(middle)? {
                thin = middle;
            } else {
                cloudy = middle;
            }
        }
        Ok(Some(thin))
    }
}

/// The stocks of a plan, each and together.
///
/// # Errors
/// [`Beyond`] when a stock cannot be solved.
pub(super) fn stocks(
    fertilizer: &Fertilizer,
    mixed: &Mixed,
    volume: Volume,
    plants: u32,
) -> Result<(Vec<StockOutcome>, Option<StocksTogether>), Beyond> {
    let Mixture::Stocks(stocks) = &fertilizer.mixture else {
        return Ok((Vec::new(), None));
    };
    let cold = Equilibria::at(stocks.store_temperature).map_err(|_| Beyond)?;
    let weight = |amounts: &[MassConcentration]| -> f64 {
        amounts
            .iter()
            .map(MassConcentration::get::<gram_per_liter>)
            .sum()
    };
    let a = Stock {
        held: stock_a(stocks)?,
        g_per_l: weight(&[stocks.calcium_nitrate_strength]),
    };
    let b = Stock {
        held: stock_b(stocks, &fertilizer.blend)?,
        g_per_l: weight(&[stocks.blend_strength, stocks.magnesium_sulfate_strength]),
    };
    let limit = |salt: Salt| limit(salt, stocks.store_temperature);
    let content = |material: Material, strength: MassConcentration, limit_g_per_l| StockContent {
        material,
        g_per_l: strength.get::<gram_per_liter>(),
        limit_g_per_l,
    };
    let calcium = limit(stocks.calcium_nitrate.salt());
    let list = vec![
        outcome(
            Material::StockA,
            vec![content(
                calcium_nitrate(stocks),
                stocks.calcium_nitrate_strength,
                calcium,
            )],
            calcium.map_or(0.0, |limit| a.g_per_l / limit),
            (&a, &cold),
            batch(stocks, mixed, 0, volume),
            plants,
        )?,
        outcome(
            Material::StockB,
            vec![
                content(
                    Material::Blend(fertilizer.grade),
                    stocks.blend_strength,
                    None,
                ),
                content(
                    Material::MagnesiumSulfate,
                    stocks.magnesium_sulfate_strength,
                    limit(Salt::MagnesiumSulfate),
                ),
            ],
            dissolving(&b.held, stocks.store_temperature),
            (&b, &cold),
            batch(stocks, mixed, 1, volume),
            plants,
        )?,
    ];
    Ok((list, Some(together(&a, &b, &cold)?)))
}

/// What falls out where the stocks meet, in any proportion, and how thin they must be not to.
fn together(a: &Stock, b: &Stock, at: &Equilibria) -> Result<StocksTogether, Beyond> {
    let half = a.with(b, 0.5)?;
    let mut mixtures = Vec::with_capacity(SHARES_PCT.len());
    for stock_a_pct in SHARES_PCT {
        mixtures.push(StockMixture {
            stock_a_pct,
            saturation: a.with(b, stock_a_pct / 100.0)?.saturation(at, 1.0)?,
        });
    }
    Ok(StocksTogether {
        saturation: half.saturation(at, 1.0)?,
        mixtures,
        clear_when_thinned_times: half.clear_when_thinned(at)?,
    })
}

/// Most of a salt that dissolves at the store's coldest, g/L, alone.
fn limit(salt: Salt, temperature: ThermodynamicTemperature) -> Option<f64> {
    let celsius = temperature.get::<degree_celsius>().min(TABLE_ENDS_C);
    let at = ThermodynamicTemperature::new::<degree_celsius>(celsius);
    solubility(salt, at)
        .ok()
        .map(|limit| limit.get::<gram_per_liter>())
}

/// The share of what dissolves that a stock without calcium takes up, from 0: its potassium taken
/// as nitrate as far as there is any (the least soluble in the cold), then as phosphate, then as
/// sulfate; its magnesium as sulfate. Each salt's share of its own limit adds up. The salts that
/// a blend is really made of stay its maker's secret; once dissolved they are ions, and these are
/// the least soluble that they can join to.
fn dissolving(held: &Concentrations, temperature: ThermodynamicTemperature) -> f64 {
    let mol = |nutrient: Nutrient, grams_per_mole: f64| {
        held.of(nutrient).get::<gram_per_liter>() / grams_per_mole
    };
    // Standard atomic weights, g/mol.
    let (mut potassium, mut sulfate) = (mol(Nutrient::K, 39.0983), mol(Nutrient::S, 32.06));
    let mut load = 0.0;
    let mut take = |salt: Salt, moles: f64| {
        if let (Some(most), Some(formula)) = (limit(salt, temperature), salt.formula()) {
            load += moles * formula.grams_per_mole() / most;
        }
    };
    let nitrate = potassium.min(mol(Nutrient::NitrateN, 14.007));
    potassium -= nitrate;
    take(Salt::PotassiumNitrate, nitrate);
    let phosphate = potassium.min(mol(Nutrient::P, 30.973_762));
    potassium -= phosphate;
    take(Salt::MonopotassiumPhosphate, phosphate);
    let magnesium = sulfate.min(mol(Nutrient::Mg, 24.305));
    sulfate -= magnesium;
    take(Salt::MagnesiumSulfate, magnesium);
    take(Salt::PotassiumSulfate, sulfate.min(potassium / 2.0));
    load
}

/// Containers that one batch serves.
fn batch(stocks: &Stocks, mixed: &Mixed, part: usize, volume: Volume) -> f64 {
    let litres = mixed.shares.get(part).copied().unwrap_or_default() * volume.get::<liter>();
    if litres > 0.0 {
        stocks.volume.get::<liter>() / litres
    } else {
        0.0
    }
}

fn outcome(
    material: Material,
    contents: Vec<StockContent>,
    load: f64,
    (stock, cold): (&Stock, &Equilibria),
    serves_containers: f64,
    plants: u32,
) -> Result<StockOutcome, Beyond> {
    let saturation = stock.saturation(cold, 1.0)?;
    let thinned = stock.clear_when_thinned(cold)?;
    let strongest = |thinned: f64| 1.0 / thinned.max(load);
    Ok(StockOutcome {
        material,
        contents,
        saturation,
        dissolving_pct: 100.0 * load,
        strongest_pct: thinned.map(|times| 100.0 * strongest(times)),
        clear: load <= 1.0 && saturation.worst() <= 0.0,
        serves_containers,
        serves_heads: serves_containers * f64::from(plants),
    })
}

/// The ions of a stock, what its label leaves open balanced as in the tank.
fn balanced(held: &Concentrations) -> Totals {
    let mut totals = totals_of(held);
    Chemistry::balance(held, &mut totals);
    totals
}
