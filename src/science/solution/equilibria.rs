//! The equations of a solution, ready for one temperature, and their solution by Newton's method.

use super::medium::Medium;
use super::minerals::{Mineral, Phase};
use super::newton;
use super::problem::SolutionProblem;
use super::records::RECORDS;
use super::speciation::Speciation;
use super::species::Species;
use super::system::System;
use super::totals::{Component, Totals};
use crate::science::units::{
    MolarConcentration, Pressure, ThermodynamicTemperature,
    molar_concentration::millimole_per_liter, pressure::atmosphere,
};

/// Most of any component, mol per kg of water: stronger than any stock solution.
const MOST: f64 = 10.0;

/// The pH that a balance of charges may come to: no nutrient, water or stock is beyond, and nothing
/// is known of activities there.
const FOUND: core::ops::RangeInclusive<f64> = -1.0..=15.0;

/// What sets the carbonate of the solution.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Carbonate {
    /// Its total, as listed in the totals: nothing enters or leaves.
    Closed,
    /// The alkalinity of the solution, as titrated (meq/L); the total follows from it.
    Alkalinity(MolarConcentration),
    /// Contact with air that has carbon dioxide at this pressure (42 Pa outdoors).
    Air(Pressure),
}

/// What sets the pH of the solution.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Acidity {
    /// It is known. The charge left over is a result.
    Ph(f64),
    /// The charges of all species add up to zero.
    Balance,
    /// The charges of all species add up to this (meq per kg of water), which stands for ions that
    /// were not listed: what was left over when the pH of the raw water was given.
    Residual(MolarConcentration),
}

/// What is known of a solution.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Recipe {
    /// What is dissolved in it. Each total from 0 to 10 mol per kg of water.
    pub totals: Totals,
    /// What sets its carbonate.
    pub carbonate: Carbonate,
    /// What sets its pH.
    pub acidity: Acidity,
}

impl Recipe {
    /// Salts in pure water: no carbonate but what is listed, pH by the balance of charges.
    pub fn of(totals: Totals) -> Self {
        Self {
            totals,
            carbonate: Carbonate::Closed,
            acidity: Acidity::Balance,
        }
    }
}

/// The constants of every equilibrium at one temperature.
///
/// Building it takes about as long as solving one solution, so keep it for a series.
#[derive(Clone, Debug, PartialEq)]
pub struct Equilibria {
    pub(super) temperature: ThermodynamicTemperature,
    pub(super) medium: Medium,
    /// ln of the formation constant, by species.
    pub(super) ln_k: [f64; Species::COUNT],
    /// What minerals are in equilibrium with.
    pub(super) phases: [Phase; Mineral::COUNT],
    /// ln of the activity of dissolved CO₂ over its fugacity in atm.
    pub(super) ln_henry: f64,
}

impl Equilibria {
    /// The constants at a temperature.
    ///
    /// `temperature`: 0 to 40 °C.
    ///
    /// # Errors
    /// [`SolutionProblem::TemperatureOutOfRange`] outside of that range.
    ///
    /// Source: each record's own; see [`Species::source`].
    pub fn at(temperature: ThermodynamicTemperature) -> Result<Self, SolutionProblem> {
        use super::records::Constant;
        /// CO₂(g) ⇌ CO₂(aq); Plummer & Busenberg 1982.
        const HENRY: Constant =
            Constant::Fitted([109.534, 1.9913e-2, -6986.04, -40.83, 669_370.0, 0.0]);
        let medium = Medium::at(temperature)?;
        let log_kelvin = libm::log10(medium.kelvin);
        let ln = |log: f64| log * core::f64::consts::LN_10;
        let mut ln_k = [0.0; Species::COUNT];
        for (value, record) in ln_k.iter_mut().zip(&RECORDS) {
            *value = ln(record
                .steps
                .iter()
                .map(|step| step.log(medium.kelvin, log_kelvin))
                .sum());
        }
        Ok(Self {
            temperature,
            medium,
            ln_k,
            phases: Mineral::ALL.map(|mineral| mineral.phase(medium.kelvin, log_kelvin)),
            ln_henry: ln(HENRY.log(medium.kelvin, log_kelvin)),
        })
    }

    /// The temperature that the constants are for.
    pub fn temperature(&self) -> ThermodynamicTemperature {
        self.temperature
    }

    /// How the components of a solution spread over their species.
    ///
    /// `recipe`: totals from 0 to 10 mol per kg of water; a pH from 0 to 14; an alkalinity or
    /// residual up to 10 eq; a CO₂ pressure above 0 and up to 1 atm. The result holds for ionic
    /// strengths up to about 1 mol/kg; beyond, as in stock solutions, the activity coefficients are
    /// extrapolated and saturation indices are good to ±0.2.
    ///
    /// # Errors
    /// What is out of range, a pH found by balance included (−1 to 15);
    /// [`SolutionProblem::CarbonateTwice`] when a total of carbonate stands
    /// beside an alkalinity or air; [`SolutionProblem::NotConverged`] when nothing fits.
    ///
    /// Source: mass-action, mass and charge balances with the activity coefficients of Truesdell &
    /// Jones 1974 and Davies 1962, water activity 1 − 0.017 Σm (Garrels & Christ 1965, eq. 2.61),
    /// as in Parkhurst & Appelo 2013; solved for the logarithms of activities by Newton's method.
    ///
    /// ```
    /// use slackwater::science::solution::{Component, Equilibria, Recipe, Species, Totals};
    /// use slackwater::science::units::{
    ///     MolarConcentration, ThermodynamicTemperature, molar_concentration::millimole_per_liter,
    ///     thermodynamic_temperature::degree_celsius,
    /// };
    /// let mmol = MolarConcentration::new::<millimole_per_liter>;
    /// let at = Equilibria::at(ThermodynamicTemperature::new::<degree_celsius>(25.0))?;
    /// let salts = [(Component::Calcium, mmol(5.0)), (Component::Sulfate, mmol(5.0))];
    /// let solution = at.solve(&Recipe::of(Totals::of(salts)))?;
    /// // About a fifth of the calcium is paired with sulfate.
    /// let paired = solution.concentration(Species::CalciumSulfate) / mmol(5.0);
    /// assert!(paired.value > 0.2 && paired.value < 0.3);
    /// # Ok::<(), slackwater::science::solution::SolutionProblem>(())
    /// ```
    pub fn solve(&self, recipe: &Recipe) -> Result<Speciation, SolutionProblem> {
        self.solve_from(recipe, None)
    }

    /// As [`Equilibria::solve`], starting from the solution of a similar recipe: faster in a series.
    ///
    /// # Errors
    /// As there.
    pub fn solve_near(
        &self,
        recipe: &Recipe,
        near: &Speciation,
    ) -> Result<Speciation, SolutionProblem> {
        self.solve_from(recipe, Some(near))
    }

    fn solve_from(
        &self,
        recipe: &Recipe,
        near: Option<&Speciation>,
    ) -> Result<Speciation, SolutionProblem> {
        check(recipe)?;
        let system = System::new(self, recipe);
        let state =
            match near.and_then(|near| newton::solve(&system, &system.near(&near.state)).ok()) {
                Some(state) => state,
                None => newton::solve_from_scratch(&system)?,
            };
        let solution = Speciation::new(self, &state);
        let ph = solution.ph();
        if FOUND.contains(&ph) {
            Ok(solution)
        } else {
            let (low, high) = (*FOUND.start(), *FOUND.end());
            Err(SolutionProblem::PhOutOfRange { got: ph, low, high })
        }
    }
}

/// Refuses what no solution can be.
fn check(recipe: &Recipe) -> Result<(), SolutionProblem> {
    let mmol = MolarConcentration::new::<millimole_per_liter>;
    for (component, molal) in Component::ALL.into_iter().zip(recipe.totals.molal) {
        if !(0.0..=MOST).contains(&molal) {
            return Err(SolutionProblem::TotalOutOfRange {
                component,
                got: recipe.totals.get(component),
                high: mmol(1e3 * MOST),
            });
        }
    }
    let charge = |got: MolarConcentration| {
        if got.abs() <= mmol(1e3 * MOST) {
            Ok(())
        } else {
            let high = mmol(1e3 * MOST);
            Err(SolutionProblem::ChargeOutOfRange { got, high })
        }
    };
    let listed = recipe.totals.molal[Component::Carbonate as usize] > 0.0;
    match recipe.carbonate {
        Carbonate::Closed => {}
        _ if listed => return Err(SolutionProblem::CarbonateTwice),
        Carbonate::Alkalinity(got) => charge(got)?,
        Carbonate::Air(got) => {
            let high = Pressure::new::<atmosphere>(1.0);
            if !(got.value > 0.0 && got <= high) {
                return Err(SolutionProblem::PressureOutOfRange { got, high });
            }
        }
    }
    match recipe.acidity {
        Acidity::Ph(got) if !(0.0..=14.0).contains(&got) => Err(SolutionProblem::PhOutOfRange {
            got,
            low: 0.0,
            high: 14.0,
        }),
        Acidity::Ph(_) | Acidity::Balance => Ok(()),
        Acidity::Residual(got) => charge(got),
    }
}
