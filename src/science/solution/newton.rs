//! Newton's method on the logarithms of activities.
//!
//! HOT: a solution takes some six iterations, each one exponential for each species present and one
//! small linear system; nothing is allocated.

use super::problem::SolutionProblem;
use super::records::RECORDS;
use super::species::Species;
use super::system::{LEAST_HYDROGEN, MOST_UNKNOWNS, Rule, System, Term};
use super::totals::Component;

/// Iterations allowed to each attempt.
const MOST_ITERATIONS: usize = 100;

/// Largest step of a logarithm, a little over a decade: the equations are exponential, and a step
/// from far away overshoots.
const LONGEST_STEP: f64 = 2.5;

/// Step of a logarithm that is the last: Newton's method leaves its square, under the 1e-10 that is
/// promised, and so the balances need not be added up again. The steps tell, not the misfits: where
/// the solution hardly buffers, a small misfit moves the pH far.
const LAST_STEP: f64 = 3e-6;

/// Change in the logarithm of the activity of water that may be left: it acts on few species.
const WATER_SETTLED: f64 = 1e-7;

/// The pH waits until every other balance is met to this: where it hangs on a thin difference of
/// charges, the misfits of a first guess would send it astray.
const SETTLED: f64 = 0.03;

/// Activity lost by water for each mol/kg of anything dissolved: Garrels & Christ 1965, eq. 2.61.
const WATER_LOWERING: f64 = 0.017;

/// A state of the unknowns, and what follows from it.
#[derive(Clone, Copy, Debug)]
pub(super) struct State {
    /// ln of the activity of the hydrogen ion.
    pub hydrogen: f64,
    /// ln of the activity of each component's own species; −∞ where absent.
    pub parts: [f64; Component::COUNT],
    /// mol/kg.
    pub strength: f64,
    /// ln of the activity of water.
    pub water: f64,
    /// mol/kg, by species.
    pub molal: [f64; Species::COUNT],
    /// ln of the activity coefficient, by species.
    pub ln_gamma: [f64; Species::COUNT],
    /// Iterations made.
    pub iterations: usize,
}

/// One row of the linear system: the derivatives of a balance by each unknown, and its misfit.
#[derive(Clone, Copy)]
struct Row {
    by: [f64; MOST_UNKNOWNS],
    value: f64,
    /// Σ |addend|: what the misfit of a balance of unlike signs is measured by.
    size: f64,
}

const EMPTY: Row = Row {
    by: [0.0; MOST_UNKNOWNS],
    value: 0.0,
    size: 0.0,
};

impl Row {
    /// Adds `weight` times a species' molality, which changes with the unknowns as its term says.
    #[inline]
    fn add(&mut self, share: f64, term: &Term, strength: usize, slope: f64) {
        self.value += share;
        self.size += share.abs();
        for &(column, count) in &term.unknowns[..term.count] {
            self.by[column] += share * count;
        }
        self.by[strength] -= share * slope;
    }

    #[inline]
    fn scale(&mut self, factor: f64, unknowns: usize) {
        for entry in &mut self.by[..unknowns] {
            *entry *= factor;
        }
    }
}

/// Solves from a start; the start's own hydrogen ion is kept where the system gives it.
pub(super) fn solve(system: &System, start: &State) -> Result<State, SolutionProblem> {
    let mut state = *start;
    // The unknowns in a row: components present, the hydrogen ion, ln of the ionic strength.
    let mut x = [0.0; MOST_UNKNOWNS];
    for (&place, ln) in system.columns.iter().zip(start.parts) {
        if let Some(place) = place {
            x[place] = ln;
        }
    }
    if let Some(place) = system.hydrogen_column {
        x[place] = start.hydrogen;
    }
    let strength = system.strength_column;
    let unknowns = strength + 1;
    x[strength] = libm::log(start.strength);

    for iteration in 1..=MOST_ITERATIONS {
        let i = libm::exp(x[strength]);
        let root = i.sqrt();
        let mut rows = [EMPTY; MOST_UNKNOWNS];
        let mut slopes = [0.0; Species::COUNT];
        let mut dissolved = 0.0;
        for term in &system.terms[..system.present] {
            let (ln_gamma, slope) =
                term.activity
                    .ln_coefficient(&system.constants.medium, term.charge, i, root);
            let mut ln = term.fixed + term.water * state.water - ln_gamma;
            for &(column, count) in &term.unknowns[..term.count] {
                ln += count * x[column];
            }
            let molal = libm::exp(ln);
            state.molal[term.species] = molal;
            state.ln_gamma[term.species] = ln_gamma;
            dissolved += molal;
            // By ln I, not I.
            let slope = slope * i;
            slopes[term.species] = slope;
            for &row in &term.balances[..term.balanced] {
                rows[row].add(molal, term, strength, slope);
            }
            if let Some(row) = system.alkalinity_row
                && term.alkalinity != 0.0
            {
                rows[row].add(term.alkalinity * molal, term, strength, slope);
            }
            if term.charge != 0.0 {
                if let Some(row) = system.hydrogen_column {
                    rows[row].add(term.charge * molal, term, strength, slope);
                }
                let half = 0.5 * term.charge * term.charge;
                rows[strength].add(half * molal, term, strength, slope);
            }
        }
        let others = finish(system, &mut rows, &state, i);
        let water = libm::log((1.0 - WATER_LOWERING * dissolved).max(0.1));
        state.iterations = start.iterations + iteration;
        if others > SETTLED
            && let Some(place) = system.hydrogen_column
        {
            rows[place] = EMPTY;
            rows[place].by[place] = 1.0;
        }
        if !eliminate(&mut rows, unknowns) {
            break;
        }
        let mut longest: f64 = 0.0;
        for (unknown, row) in x[..strength].iter_mut().zip(&rows) {
            longest = longest.max(row.value.abs());
            *unknown -= row.value.clamp(-LONGEST_STEP, LONGEST_STEP);
        }
        longest = longest.max(rows[strength].value.abs());
        x[strength] -= rows[strength].value.clamp(-1.0, 1.0);
        if !longest.is_finite() {
            break;
        }
        if longest < LAST_STEP && others <= SETTLED && (water - state.water).abs() < WATER_SETTLED {
            step_species(system, &mut state, &rows, &slopes);
            for (ln, &place) in state.parts.iter_mut().zip(&system.columns) {
                *ln = place.map_or(f64::NEG_INFINITY, |place| x[place]);
            }
            state.hydrogen = system.hydrogen_column.map_or(state.hydrogen, |it| x[it]);
            return Ok(state);
        }
        state.water = water;
    }
    Err(SolutionProblem::NotConverged {
        iterations: state.iterations,
    })
}

/// Takes the last step, so small that the exponential of it is its first three terms.
fn step_species(system: &System, state: &mut State, rows: &[Row], slopes: &[f64]) {
    let mut strength = 0.0;
    for term in &system.terms[..system.present] {
        let bent = slopes[term.species] * rows[system.strength_column].value;
        let mut step = bent;
        for &(column, count) in &term.unknowns[..term.count] {
            step -= count * rows[column].value;
        }
        state.molal[term.species] *= 1.0 + step * (1.0 + 0.5 * step);
        state.ln_gamma[term.species] -= bent;
        strength += 0.5 * term.charge * term.charge * state.molal[term.species];
    }
    state.strength = strength;
}

/// Turns sums into misfits of balances, scaled to the order of one; returns the largest but for that
/// of the charges.
#[inline]
fn finish(system: &System, rows: &mut [Row], state: &State, i: f64) -> f64 {
    let unknowns = system.strength_column + 1;
    let mut largest: f64 = 0.0;
    for (&place, rule) in system.columns.iter().zip(&system.rules) {
        let Some(place) = place else { continue };
        let row = &mut rows[place];
        match *rule {
            Rule::Absent => {}
            Rule::Total(total) => {
                // The logarithm of the balance is nearly linear in the unknowns.
                let sum = row.value;
                row.value = libm::log(sum / total);
                row.scale(1.0 / sum, unknowns);
            }
            Rule::Alkalinity(alkalinity) => {
                let scale = row.size.max(alkalinity.abs()).max(1e-12);
                row.value = (row.value - alkalinity) / scale;
                row.scale(1.0 / scale, unknowns);
            }
            Rule::Dissolved(ln_activity) => {
                let gas = Species::CarbonDioxide as usize;
                *row = EMPTY;
                row.value = libm::log(state.molal[gas]) + state.ln_gamma[gas] - ln_activity;
                row.by[place] = 1.0;
                if let Some(hydrogen) = system.hydrogen_column {
                    row.by[hydrogen] = RECORDS[gas].hydrogen;
                }
            }
        }
        largest = largest.max(row.value.abs());
    }
    if let Some(place) = system.hydrogen_column {
        let row = &mut rows[place];
        row.value = (row.value - system.residual) / row.size;
        row.scale(1.0 / row.size, unknowns);
    }
    let row = &mut rows[system.strength_column];
    let sum = row.value;
    row.value = libm::log(sum / i);
    row.scale(1.0 / sum, unknowns);
    row.by[system.strength_column] -= 1.0;
    largest.max(row.value.abs())
}

/// Solves without a start; if that fails, by halving the range of the pH until the equations with
/// the pH freed hold.
pub(super) fn solve_from_scratch(system: &System) -> Result<State, SolutionProblem> {
    let first = system.start(None);
    let problem = match solve(system, &first) {
        Ok(state) => return Ok(state),
        Err(problem) => problem,
    };
    if system.hydrogen_column.is_none() {
        return Err(problem);
    }
    // More hydrogen ions, more positive charge: the pH lies where the sign of the balance turns.
    let (mut low, mut high) = (LEAST_HYDROGEN, 0.0);
    let mut iterations = 0;
    for _ in 0..50 {
        let middle = 0.5 * (low + high);
        let fixed = system.at_hydrogen(middle);
        let mut state = fixed.start(Some(middle));
        state.iterations = iterations;
        let state = solve(&fixed, &state)?;
        iterations = state.iterations;
        if let Ok(state) = solve(system, &state) {
            return Ok(state);
        }
        let charge: f64 = RECORDS
            .iter()
            .zip(state.molal)
            .map(|(record, molal)| record.charge * molal)
            .sum();
        if charge > system.residual {
            high = middle;
        } else {
            low = middle;
        }
    }
    Err(SolutionProblem::NotConverged { iterations })
}

/// Gaussian elimination with row pivoting; leaves the solution in the rows' values. False when
/// singular.
fn eliminate(rows: &mut [Row; MOST_UNKNOWNS], unknowns: usize) -> bool {
    for step in 0..unknowns {
        let mut pivot = step;
        for row in step + 1..unknowns {
            if rows[row].by[step].abs() > rows[pivot].by[step].abs() {
                pivot = row;
            }
        }
        rows.swap(step, pivot);
        let leading = rows[step];
        if leading.by[step] == 0.0 || !leading.by[step].is_finite() {
            return false;
        }
        let inverse = 1.0 / leading.by[step];
        for row in &mut rows[step + 1..unknowns] {
            let factor = row.by[step] * inverse;
            if factor != 0.0 {
                for (entry, lead) in row.by[step + 1..unknowns]
                    .iter_mut()
                    .zip(&leading.by[step + 1..unknowns])
                {
                    *entry -= factor * lead;
                }
                row.value -= factor * leading.value;
            }
        }
    }
    for step in (0..unknowns).rev() {
        let mut rest = rows[step].value;
        for later in step + 1..unknowns {
            rest -= rows[step].by[later] * rows[later].value;
        }
        rows[step].value = rest / rows[step].by[step];
    }
    true
}
