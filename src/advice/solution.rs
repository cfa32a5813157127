//! What the solution and the raw water read and hold.

use super::doses::millisiemens;
use super::mixing::Mixed;
use super::outcome::{
    FirstWater, Saturation, SolutionOutcome, SpeciesAmount, WaterItem, WaterOutcome,
};
use crate::plan::{Fertilizer, RawWater, SoundIons};
use crate::science::raw_water::{Restriction, conductivity_check};
use crate::science::solution::{
    Acidity, Carbonate, Component, Equilibria, Mineral, Recipe, Speciation, Species, Totals,
};
use crate::science::units::molar_concentration::{millimole_per_liter, mole_per_liter};
use crate::science::units::ratio::{percent, ratio};
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::volume::liter;
use crate::science::units::{MolarConcentration, Ratio, ThermodynamicTemperature, Volume};
use crate::season::{Beyond, Chemistry};

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

pub(super) fn saturation(solution: &Speciation) -> Saturation {
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

fn first_water(fertilizer: &Fertilizer, chemistry: &Chemistry) -> FirstWater {
    /// Conductivity below which a meter shows nothing worth a word: common practice, no source.
    const PURE_MS_PER_CM: f64 = 0.05;
    let rain = fertilizer.rain.get::<ratio>();
    if rain > 0.0 && rain < 1.0 {
        if rain < 0.5 {
            FirstWater::RainAndRaw
        } else {
            FirstWater::Rain
        }
    } else if millisiemens(chemistry.filled_in().conductivity()) < PURE_MS_PER_CM {
        FirstWater::Pure
    } else {
        FirstWater::Raw
    }
}

/// The raw water, judged as far as it is known: the analysis as it stands, its limits as it is filled
/// in. `fill`: of one container.
pub(super) fn water(fertilizer: &Fertilizer, chemistry: &Chemistry, fill: Volume) -> WaterOutcome {
    let computed = chemistry.raw_water().conductivity();
    let mut outcome = WaterOutcome {
        ec_ms_per_cm: millisiemens(computed),
        rain_l: (fill * fertilizer.rain).get::<liter>(),
        first: first_water(fertilizer, chemistry),
        ec_ratio: None,
        charge_error_pct: None,
        analysis_is_sound: true,
        restricted: Vec::new(),
        raw_water_share_pct: None,
    };
    let RawWater::Analysis(analysis) = &fertilizer.water else {
        return outcome;
    };
    if let Ok(ions) = analysis.equivalents() {
        let balance = ions.charge_balance();
        outcome.charge_error_pct = balance.error().map(|error| error.get::<percent>());
        outcome.analysis_is_sound = balance.is_sound();
    }
    let conductivity = analysis.conductivity.unwrap_or(computed);
    let raw_share = Ratio::new::<ratio>(1.0) - fertilizer.rain;
    let (filled_in, strength) = (analysis.thinned(raw_share), conductivity * raw_share);
    if let Ok(check) = conductivity_check(computed, conductivity) {
        outcome.ec_ratio = Some(check.ratio.get::<ratio>());
        outcome.analysis_is_sound &= check.agrees;
    }
    if let Ok(lines) = filled_in.judge(strength) {
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
    if let Ok(dilution) = filled_in.dilution(strength) {
        let share = dilution.raw_water * raw_share;
        outcome.raw_water_share_pct =
            (dilution.raw_water.get::<percent>() < 100.0).then_some(share.get::<percent>());
    }
    outcome
}
