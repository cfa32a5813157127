//! A solved solution and what can be read from it.

use super::conductivity;
use super::equilibria::{Acidity, Carbonate, Equilibria, Recipe};
use super::medium::Medium;
use super::minerals::{Mineral, Phase};
use super::newton::State;
use super::records::RECORDS;
use super::species::Species;
use super::system::alkalinity_of;
use super::totals::Totals;
use crate::science::units::{
    ElectricalConductivity, MolarConcentration, Pressure, Ratio, ThermodynamicTemperature,
    electrical_conductivity::siemens_per_meter, molar_concentration::mole_per_liter,
    pressure::atmosphere, ratio,
};

/// A solved solution: every species at equilibrium, all balances met to a part in 10¹².
///
/// Concentrations are per kilogram of water, as in [`Totals`].
#[derive(Clone, Debug)]
pub struct Speciation {
    temperature: ThermodynamicTemperature,
    medium: Medium,
    phases: [Phase; Mineral::COUNT],
    ln_henry: f64,
    pub(super) state: State,
}

impl Speciation {
    pub(super) fn new(constants: &Equilibria, state: &State) -> Self {
        Self {
            temperature: constants.temperature,
            medium: constants.medium,
            phases: constants.phases,
            ln_henry: constants.ln_henry,
            state: *state,
        }
    }

    /// The temperature that it was solved for.
    pub fn temperature(&self) -> ThermodynamicTemperature {
        self.temperature
    }

    /// The pH: less the decimal logarithm of the activity of the hydrogen ion.
    pub fn ph(&self) -> f64 {
        -self.state.hydrogen / core::f64::consts::LN_10
    }

    /// The ionic strength ½ Σ m z² (mol per kg of water).
    pub fn ionic_strength(&self) -> MolarConcentration {
        MolarConcentration::new::<mole_per_liter>(self.state.strength)
    }

    /// The concentration of one species (mol per kg of water).
    pub fn concentration(&self, species: Species) -> MolarConcentration {
        MolarConcentration::new::<mole_per_liter>(self.state.molal[species as usize])
    }

    /// The activity coefficient of one species; one for a species that is absent.
    pub fn activity_coefficient(&self, species: Species) -> Ratio {
        Ratio::new::<ratio::ratio>(libm::exp(self.state.ln_gamma[species as usize]))
    }

    /// The activity of water: one in pure water.
    pub fn water_activity(&self) -> Ratio {
        Ratio::new::<ratio::ratio>(libm::exp(self.state.water))
    }

    /// The total of each component over all its species.
    pub fn totals(&self) -> Totals {
        let mut totals = Totals::default();
        for (record, molal) in RECORDS.iter().zip(self.state.molal) {
            for &part in record.parts.iter().flatten() {
                totals.molal[part as usize] += molal;
            }
        }
        totals
    }

    /// The sum of all charges (eq per kg of water): zero when the pH came from the balance.
    pub fn residual_charge(&self) -> MolarConcentration {
        self.sum(Species::charge)
    }

    /// The alkalinity (eq per kg of water), as titrated to dissolved CO₂ and H₂PO₄⁻.
    pub fn alkalinity(&self) -> MolarConcentration {
        self.sum(alkalinity_of)
    }

    /// The pressure of carbon dioxide that air in equilibrium with the solution would have; zero
    /// without carbonate.
    pub fn carbon_dioxide_pressure(&self) -> Pressure {
        let place = Species::CarbonDioxide as usize;
        let fugacity =
            self.state.molal[place] * libm::exp(self.state.ln_gamma[place] - self.ln_henry);
        Pressure::new::<atmosphere>(fugacity)
    }

    /// How far the solution is from saturation with a mineral: log₁₀ of the ion activity product
    /// over the solubility product. Above zero it can fall out, below it cannot; none where the
    /// solution lacks a part of it.
    pub fn saturation_index(&self, mineral: Mineral) -> Option<f64> {
        self.phases[mineral as usize].saturation(&self.state)
    }

    /// The electrical conductivity at the solution's own temperature (mS/cm = 0.1 S/m).
    ///
    /// Within 1 % of the potassium chloride standards of 0.01 and 0.1 mol/kg from 0 to 35 °C, 3.5 %
    /// of that of 1 mol/kg, and 2.5 % of handbook values of single salts up to 0.1 eq/L. A meter
    /// shows the value at 25 °C: solve the same recipe there. Not for stock solutions: beyond
    /// 0.5 mol/kg the volume of the salts and their viscosity count, which are left out, and the
    /// figure is an upper bound.
    ///
    /// Source: the Debye–Hückel–Onsager equation with finite ion sizes, Robinson & Stokes 1959,
    /// Electrolyte Solutions, chapter 7; limiting conductivities of the CRC Handbook (Vanýsek); how
    /// they change with temperature: McCleskey et al. 2012, Geochim. Cosmochim. Acta 77:369.
    pub fn conductivity(&self) -> ElectricalConductivity {
        ElectricalConductivity::new::<siemens_per_meter>(
            0.1 * conductivity::ms_per_cm(&self.medium, &self.state.molal, self.state.strength),
        )
    }

    /// The solution closed to the air, to go on from: its totals, and the charge that is left over.
    pub fn closed(&self) -> Recipe {
        Recipe {
            totals: self.totals(),
            carbonate: Carbonate::Closed,
            acidity: Acidity::Residual(self.residual_charge()),
        }
    }

    /// Iterations that the solution took.
    pub fn iterations(&self) -> usize {
        self.state.iterations
    }

    /// Σ weight × concentration over all species.
    fn sum(&self, weight: impl Fn(Species) -> f64) -> MolarConcentration {
        let sum = Species::ALL
            .into_iter()
            .zip(self.state.molal)
            .map(|(species, molal)| weight(species) * molal)
            .sum();
        MolarConcentration::new::<mole_per_liter>(sum)
    }
}

/// What results when solutions are poured together, closed to the air: their totals and their
/// left-over charges, added up. Solve it for the pH after mixing.
///
/// `parts`: the water of each solution, as a share of the mixture's; shares that add up to one give
/// the mixture per kilogram of water.
///
/// ```
/// use slackwater::science::solution::{Component, Equilibria, Recipe, Totals, mixed};
/// use slackwater::science::units::{
///     MolarConcentration, Ratio, ThermodynamicTemperature,
///     molar_concentration::millimole_per_liter, ratio::percent,
///     thermodynamic_temperature::degree_celsius,
/// };
/// let at = Equilibria::at(ThermodynamicTemperature::new::<degree_celsius>(20.0))?;
/// let mmol = MolarConcentration::new::<millimole_per_liter>;
/// let salts = [(Component::Potassium, mmol(10.0)), (Component::Nitrate, mmol(10.0))];
/// let strong = at.solve(&Recipe::of(Totals::of(salts)))?;
/// let rain = at.solve(&Recipe::of(Totals::default()))?;
/// let share = Ratio::new::<percent>;
/// let mixture = mixed([(share(25.0), &strong), (share(75.0), &rain)]);
/// assert!((mixture.totals.get(Component::Potassium) - mmol(2.5)).abs() < mmol(1e-9));
/// # Ok::<(), slackwater::science::solution::SolutionProblem>(())
/// ```
pub fn mixed<'a>(parts: impl IntoIterator<Item = (Ratio, &'a Speciation)>) -> Recipe {
    let mut totals = Totals::default();
    let mut charge = MolarConcentration::new::<mole_per_liter>(0.0);
    for (share, solution) in parts {
        let share = share.get::<ratio::ratio>();
        totals = totals.with(&solution.totals().scaled(share));
        charge += solution.residual_charge() * share;
    }
    Recipe {
        totals,
        carbonate: Carbonate::Closed,
        acidity: Acidity::Residual(charge),
    }
}
