//! What to add, and what falls out: searches over solved solutions.

use super::equilibria::{Carbonate, Equilibria, Recipe};
use super::minerals::Mineral;
use super::problem::SolutionProblem;
use super::speciation::Speciation;
use super::totals::Component;
use crate::science::units::{MolarConcentration, molar_concentration::mole_per_liter};

/// An acid that growers add.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Acid {
    /// HNO₃.
    Nitric,
    /// H₃PO₄.
    Phosphoric,
    /// H₂SO₄.
    Sulfuric,
    /// HCl.
    Hydrochloric,
}

impl Acid {
    /// The component that comes with it.
    fn anion(self) -> Component {
        match self {
            Self::Nitric => Component::Nitrate,
            Self::Phosphoric => Component::Phosphate,
            Self::Sulfuric => Component::Sulfate,
            Self::Hydrochloric => Component::Chloride,
        }
    }
}

/// An amount and the solution that it leads to.
#[derive(Clone, Debug)]
pub struct Dose {
    /// Mol per kg of water.
    pub amount: MolarConcentration,
    /// The solution afterwards.
    pub solution: Speciation,
}

impl Dose {
    fn of(amount: f64, solution: Speciation) -> Self {
        Self {
            amount: MolarConcentration::new::<mole_per_liter>(amount),
            solution,
        }
    }
}

/// How close a search comes, in pH and saturation index: below what any meter or table tells.
const CLOSE: f64 = 1e-6;

/// The end of a search that the last step did not move.
#[derive(PartialEq)]
enum Stayed {
    Neither,
    Low,
    High,
}

/// Secants allowed to a search.
const MOST_STEPS: usize = 80;

/// Most acid tried, mol/kg.
const MOST_ACID: f64 = 5.0;

impl Equilibria {
    /// How much acid brings a solution to a pH.
    ///
    /// `recipe`: as for [`Equilibria::solve`]; it stays in contact with the air if it was, else it
    /// is closed and keeps the carbon dioxide that the acid sets free. `acid`: counted without its
    /// water. `target`: pH from 0 to 14. The result: mol of acid per kg of water, and the solution
    /// then; no acid where the solution already has that pH.
    ///
    /// # Errors
    /// Those of [`Equilibria::solve`]; [`SolutionProblem::TargetOutOfReach`] where the solution is
    /// already more acid, or 5 mol/kg do not suffice.
    ///
    /// Source: as [`Equilibria::solve`].
    ///
    /// ```
    /// use slackwater::science::solution::{
    ///     Acid, Acidity, Carbonate, Component, Equilibria, Recipe, Totals,
    /// };
    /// use slackwater::science::units::{
    ///     MolarConcentration, ThermodynamicTemperature, molar_concentration::millimole_per_liter,
    ///     thermodynamic_temperature::degree_celsius,
    /// };
    /// let mmol = MolarConcentration::new::<millimole_per_liter>;
    /// let tap = Recipe {
    ///     totals: Totals::of([(Component::Calcium, mmol(2.0))]),
    ///     carbonate: Carbonate::Alkalinity(mmol(4.0)),
    ///     acidity: Acidity::Ph(7.4),
    /// };
    /// let at = Equilibria::at(ThermodynamicTemperature::new::<degree_celsius>(20.0))?;
    /// let dose = at.acid_for(&tap, Acid::Nitric, 5.8)?;
    /// // Three quarters of the alkalinity of 4 meq/L.
    /// assert!(dose.amount > mmol(2.8) && dose.amount < mmol(3.3));
    /// # Ok::<(), slackwater::science::solution::SolutionProblem>(())
    /// ```
    pub fn acid_for(
        &self,
        recipe: &Recipe,
        acid: Acid,
        target: f64,
    ) -> Result<Dose, SolutionProblem> {
        if !(0.0..=14.0).contains(&target) {
            return Err(SolutionProblem::PhOutOfRange {
                got: target,
                low: 0.0,
                high: 14.0,
            });
        }
        let start = self.solve(recipe)?;
        let without = start.ph();
        let beyond = SolutionProblem::TargetOutOfReach { target, without };
        if without < target - CLOSE {
            return Err(beyond);
        }
        let mut base = start.closed();
        if let Carbonate::Air(_) = recipe.carbonate {
            base.totals.molal[Component::Carbonate as usize] = 0.0;
            base.carbonate = recipe.carbonate;
        }
        let with = |amount: f64, near: &Speciation| {
            let mut recipe = base;
            recipe.totals.molal[acid.anion() as usize] += amount;
            self.solve_near(&recipe, near)
        };
        let mut high = 1e-4;
        let mut reached = with(high, &start)?;
        while reached.ph() > target {
            high *= 4.0;
            if high > MOST_ACID {
                return Err(beyond);
            }
            reached = with(high, &reached)?;
        }
        let excess = |solution: &Speciation| solution.ph() - target;
        let ends = [(0.0, without - target), (high, excess(&reached))];
        search(start, ends, with, excess)
    }

    /// How much of one mineral falls out until the solution is saturated with it.
    ///
    /// `recipe`: as for [`Equilibria::solve`]; it is solved, then closed. The result: mol per kg of
    /// water, and the solution then; nothing where it is not above saturation. The water that a
    /// hydrate takes along is not subtracted: under 1 % even where 0.2 mol of gypsum falls out.
    ///
    /// # Errors
    /// Those of [`Equilibria::solve`].
    ///
    /// Source: as [`Equilibria::solve`], and [`Mineral::source`].
    ///
    /// ```
    /// use slackwater::science::solution::{Component, Equilibria, Mineral, Recipe, Totals};
    /// use slackwater::science::units::{
    ///     MolarConcentration, ThermodynamicTemperature, molar_concentration::millimole_per_liter,
    ///     thermodynamic_temperature::degree_celsius,
    /// };
    /// let mmol = MolarConcentration::new::<millimole_per_liter>;
    /// let at = Equilibria::at(ThermodynamicTemperature::new::<degree_celsius>(25.0))?;
    /// let salts = [(Component::Calcium, mmol(40.0)), (Component::Sulfate, mmol(40.0))];
    /// let fallen = at.precipitated(&Recipe::of(Totals::of(salts)), Mineral::Gypsum)?;
    /// assert!(fallen.amount > mmol(24.0) && fallen.amount < mmol(25.5)); // water keeps 15
    /// # Ok::<(), slackwater::science::solution::SolutionProblem>(())
    /// ```
    pub fn precipitated(&self, recipe: &Recipe, mineral: Mineral) -> Result<Dose, SolutionProblem> {
        let start = self.solve(recipe)?;
        let excess = |solution: &Speciation| {
            solution
                .saturation_index(mineral)
                .unwrap_or(f64::NEG_INFINITY)
        };
        let at_start = excess(&start);
        if at_start <= CLOSE {
            return Ok(Dose::of(0.0, start));
        }
        let phase = self.phases[mineral as usize];
        let base = start.closed();
        // A mineral is neutral, so the left-over charge stays as it is.
        let without = |amount: f64, near: &Speciation| {
            let mut recipe = base;
            for &(part, count) in phase.parts {
                recipe.totals.molal[part as usize] -= count * amount;
            }
            self.solve_near(&recipe, near)
        };
        // All but a millionth of the scarcer part.
        let most = phase
            .parts
            .iter()
            .map(|&(part, count)| base.totals.molal[part as usize] / count)
            .fold(f64::INFINITY, f64::min)
            * (1.0 - 1e-6);
        let ends = [(0.0, at_start), (most, excess(&without(most, &start)?))];
        search(start, ends, without, excess)
    }
}

/// The amount between two ends at which the excess, which falls, comes to nothing: the secant
/// between the ends, with the excess of an end that stays halved each time (the Illinois rule).
fn search(
    start: Speciation,
    [(mut low, mut above), (mut high, mut below)]: [(f64, f64); 2],
    solution_at: impl Fn(f64, &Speciation) -> Result<Speciation, SolutionProblem>,
    excess: impl Fn(&Speciation) -> f64,
) -> Result<Dose, SolutionProblem> {
    if above.abs() <= CLOSE {
        return Ok(Dose::of(low, start));
    }
    let mut last = start;
    let mut stayed = Stayed::Neither;
    for _ in 0..MOST_STEPS {
        let amount = (low * below - high * above) / (below - above);
        last = solution_at(amount, &last)?;
        let now = excess(&last);
        if now.abs() <= CLOSE {
            return Ok(Dose::of(amount, last));
        }
        if now > 0.0 {
            (low, above) = (amount, now);
            if stayed == Stayed::High {
                below *= 0.5;
            }
            stayed = Stayed::High;
        } else {
            (high, below) = (amount, now);
            if stayed == Stayed::Low {
                above *= 0.5;
            }
            stayed = Stayed::Low;
        }
    }
    Err(SolutionProblem::NotConverged {
        iterations: MOST_STEPS,
    })
}
