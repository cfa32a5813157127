//! What the solution, the stocks and the raw water read and hold.

use super::doses::{calcium_nitrate, millisiemens};
use super::mixing::{Mixed, salt_of, stock_a, stock_b};
use super::outcome::{
    Material, Saturation, SolutionOutcome, SpeciesAmount, StockContent, StockOutcome, WaterItem,
    WaterOutcome,
};
use crate::catalog::salts::Salt;
use crate::catalog::solubility::saturation as solubility;
use crate::plan::{Fertilizer, Mixture, RawWater, SoundIons, Stocks};
use crate::science::label::Concentrations;
use crate::science::raw_water::{Restriction, conductivity_check};
use crate::science::solution::{
    Acidity, Carbonate, Component, Equilibria, Mineral, Recipe, Speciation, Species, Totals,
};
use crate::science::units::mass_concentration::gram_per_liter;
use crate::science::units::molar_concentration::{millimole_per_liter, mole_per_liter};
use crate::science::units::ratio::{percent, ratio};
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::volume::liter;
use crate::science::units::{
    MassConcentration, MolarConcentration, Ratio, ThermodynamicTemperature, Volume,
};
use crate::season::{Beyond, Chemistry, totals_of};

/// Species rarer than this are left out of the list, mmol/kg.
const TRACE_MMOL: f64 = 1e-6;

/// What a solution reads and holds.
pub(super) fn solution(standard: &Speciation, own: &Speciation) -> SolutionOutcome {
    let mut species: Vec<SpeciesAmount> = Species::ALL
        .into_iter()
        .map(|species| SpeciesAmount {
            species: species.formula(),
            mmol_per_kg: standard.concentration(species).get::<millimole_per_liter>(),
        })
        .filter(|amount| amount.mmol_per_kg > TRACE_MMOL)
        .collect();
    species.sort_by(|a, b| b.mmol_per_kg.total_cmp(&a.mmol_per_kg));
    SolutionOutcome {
        ec_ms_per_cm: millisiemens(standard.conductivity()),
        ec_at_temperature_ms_per_cm: millisiemens(own.conductivity()),
        temperature_c: own.temperature().get::<degree_celsius>(),
        ph: standard.ph(),
        ionic_strength_mol_per_kg: standard.ionic_strength().get::<mole_per_liter>(),
        species,
        saturation: saturation(own),
    }
}

fn saturation(solution: &Speciation) -> Saturation {
    Saturation {
        gypsum: solution.saturation_index(Mineral::Gypsum),
        brushite: solution.saturation_index(Mineral::Brushite),
        calcite: solution.saturation_index(Mineral::Calcite),
    }
}

/// The mixed solution of a plan.
pub(super) fn mixed(mixed: &Mixed) -> SolutionOutcome {
    solution(&mixed.standard, &mixed.own)
}

/// What a bare list of ions reads and holds: at its own pH and temperature, closed to the air.
///
/// # Errors
/// [`Beyond`] when it cannot be solved.
pub fn of_ions(ions: &SoundIons) -> Result<SolutionOutcome, Beyond> {
    let mut totals = Totals::default();
    let mut carbonate = Carbonate::Closed;
    for &(key, mmol) in &ions.amounts {
        let amount = MolarConcentration::new::<millimole_per_liter>(mmol);
        let component = match key {
            "Ca" => Component::Calcium,
            "Mg" => Component::Magnesium,
            "Na" => Component::Sodium,
            "K" => Component::Potassium,
            "NH4" => Component::Ammonium,
            "NO3" => Component::Nitrate,
            "Cl" => Component::Chloride,
            "SO4" => Component::Sulfate,
            "PO4" => Component::Phosphate,
            "CO3" => Component::Carbonate,
            "B" => Component::Borate,
            _ => {
                carbonate = Carbonate::Alkalinity(amount);
                continue;
            }
        };
        totals.add(component, amount);
    }
    let recipe = Recipe {
        totals,
        carbonate,
        acidity: ions.ph.map_or(Acidity::Balance, Acidity::Ph),
    };
    let solve = |recipe: &Recipe, celsius: f64| {
        Equilibria::at(ThermodynamicTemperature::new::<degree_celsius>(celsius))
            .and_then(|at| at.solve(recipe))
            .map_err(|_| Beyond)
    };
    let own = solve(&recipe, ions.temperature_c)?;
    // A meter shows 25 °C: the same water warmed or cooled, its charges kept.
    let standard = solve(&own.closed(), 25.0)?;
    Ok(SolutionOutcome {
        ph: own.ph(),
        ..solution(&standard, &own)
    })
}

/// Volume that a gram of dissolved salt takes, mL: about 0.4 for the salts of stock solutions
/// (Laliberté 2009 gives 0.3 to 0.5).
const ML_PER_GRAM: f64 = 0.4;

/// The stocks of a plan, each and together.
///
/// # Errors
/// [`Beyond`] when a stock cannot be solved.
pub(super) fn stocks(
    fertilizer: &Fertilizer,
    mixed: &Mixed,
    volume: Volume,
    plants: u32,
) -> Result<(Vec<StockOutcome>, Option<Saturation>), Beyond> {
    let Mixture::Stocks(stocks) = &fertilizer.mixture else {
        return Ok((Vec::new(), None));
    };
    let celsius = stocks.store_temperature.get::<degree_celsius>();
    let cold = Equilibria::at(stocks.store_temperature).map_err(|_| Beyond)?;
    let (a, b) = (stock_a(stocks)?, stock_b(stocks, &fertilizer.blend)?);
    let weight = |amounts: &[MassConcentration]| -> f64 {
        amounts
            .iter()
            .map(MassConcentration::get::<gram_per_liter>)
            .sum()
    };
    let weight_a = weight(&[stocks.calcium_nitrate_strength]);
    let weight_b = weight(&[stocks.blend_strength, stocks.magnesium_sulfate_strength]);
    let solve = |held: &Concentrations, weight: f64| {
        // Moles per litre of stock to moles per kilogram of the water in it.
        let water = 1.0 - ML_PER_GRAM * weight / 1000.0;
        if water <= 0.2 {
            return Err(Beyond);
        }
        cold.solve(&Recipe::of(balanced(held).scaled(1.0 / water)))
            .map_err(|_| Beyond)
    };
    let (solved_a, solved_b) = (solve(&a, weight_a)?, solve(&b, weight_b)?);
    let together = a
        .plus(&b)
        .and_then(|sum| sum.scaled(Ratio::new::<ratio>(0.5)))
        .map_err(|_| Beyond)?;
    let solved_together = solve(&together, f64::midpoint(weight_a, weight_b))?;
    let limit = |salt: Salt| {
        solubility(
            salt,
            ThermodynamicTemperature::new::<degree_celsius>(celsius.min(30.0)),
        )
        .ok()
        .map(|limit| limit.get::<gram_per_liter>())
    };
    let content = |material: Material, strength: MassConcentration, limit_g_per_l| StockContent {
        material,
        g_per_l: strength.get::<gram_per_liter>(),
        limit_g_per_l,
    };
    let list = vec![
        outcome(
            stocks,
            Material::StockA,
            vec![content(
                calcium_nitrate(stocks),
                stocks.calcium_nitrate_strength,
                limit(salt_of(stocks.calcium_nitrate)),
            )],
            saturation(&solved_a),
            per_container(mixed, 0, volume),
            plants,
        ),
        outcome(
            stocks,
            Material::StockB,
            vec![
                content(Material::Blend, stocks.blend_strength, None),
                content(
                    Material::MagnesiumSulfate,
                    stocks.magnesium_sulfate_strength,
                    limit(Salt::MagnesiumSulfate),
                ),
            ],
            saturation(&solved_b),
            per_container(mixed, 1, volume),
            plants,
        ),
    ];
    Ok((list, Some(saturation(&solved_together))))
}

fn per_container(mixed: &Mixed, part: usize, volume: Volume) -> f64 {
    mixed.shares.get(part).copied().unwrap_or_default() * volume.get::<liter>()
}

fn outcome(
    stocks: &Stocks,
    material: Material,
    contents: Vec<StockContent>,
    saturation: Saturation,
    litres_per_container: f64,
    plants: u32,
) -> StockOutcome {
    let serves = if litres_per_container > 0.0 {
        stocks.volume.get::<liter>() / litres_per_container
    } else {
        0.0
    };
    let dissolves = contents.iter().all(|content| {
        content
            .limit_g_per_l
            .is_none_or(|limit| content.g_per_l <= limit)
    });
    StockOutcome {
        material,
        contents,
        saturation,
        clear: dissolves && saturation.worst() <= 0.0,
        serves_containers: serves,
        serves_heads: serves * f64::from(plants),
    }
}

/// The ions of a stock, what its label leaves open balanced as in the tank.
fn balanced(held: &Concentrations) -> Totals {
    let mut totals = totals_of(held);
    Chemistry::balance(held, &mut totals);
    totals
}

/// The raw water, judged as far as it is known.
pub(super) fn water(water: &RawWater, chemistry: &Chemistry) -> WaterOutcome {
    let computed = chemistry.raw_water().conductivity();
    let mut outcome = WaterOutcome {
        ec_ms_per_cm: millisiemens(computed),
        ec_ratio: None,
        charge_error_pct: None,
        analysis_is_sound: true,
        restricted: Vec::new(),
        raw_water_share_pct: None,
    };
    let RawWater::Analysis(analysis) = water else {
        return outcome;
    };
    if let Ok(ions) = analysis.equivalents() {
        let balance = ions.charge_balance();
        outcome.charge_error_pct = balance.error().map(|error| error.get::<percent>());
        outcome.analysis_is_sound = balance.is_sound();
    }
    let conductivity = analysis.conductivity.unwrap_or(computed);
    if let Ok(check) = conductivity_check(computed, conductivity) {
        outcome.ec_ratio = Some(check.ratio.get::<ratio>());
        outcome.analysis_is_sound &= check.agrees;
    }
    if let Ok(lines) = analysis.judge(conductivity) {
        outcome.restricted = lines
            .iter()
            .filter(|line| line.restriction != Restriction::None)
            .map(|line| WaterItem {
                item: line.item,
                value: line.value,
                limit: line.none_below,
                severe: line.restriction == Restriction::Severe,
            })
            .collect();
    }
    if let Ok(dilution) = analysis.dilution(conductivity) {
        let share = dilution.raw_water.get::<percent>();
        outcome.raw_water_share_pct = (share < 100.0).then_some(share);
    }
    outcome
}
