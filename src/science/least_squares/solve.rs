//! The search for the set of unknowns that lie between their bounds.

use super::{FitProblem, MOST, Row};

/// A gain smaller than this share of what could be gained is rounding: the cosine of the angle
/// between a column and the miss.
const NO_GAIN: f64 = 1e-12;

/// A column counts as a sum of others when less than this share of its length is its own.
const DEPENDENT: f64 = 1e-11;

/// Steps allowed: each takes an unknown from or to a bound; few are taken twice.
const MOST_STEPS: usize = 20 * MOST;

/// A vector with one element for each row or unknown; those behind the last stay zero.
type Vector = [f64; MOST];

/// One mark for each unknown.
type Marks = [bool; MOST];

/// The weighted rows by columns.
pub(super) struct Columns {
    rows: usize,
    unknowns: usize,
    /// `elements[unknown][row]`.
    elements: [Vector; MOST],
    lengths: Vector,
    target: Vector,
}

impl Columns {
    /// Each row times its weight.
    pub(super) fn weighted(rows: &[Row<'_>], unknowns: usize) -> Self {
        let mut made = Self {
            rows: rows.len(),
            unknowns,
            elements: [[0.0; MOST]; MOST],
            lengths: [0.0; MOST],
            target: [0.0; MOST],
        };
        for (i, row) in rows.iter().enumerate() {
            made.target[i] = row.weight * row.target;
            for (j, coefficient) in row.coefficients.iter().enumerate() {
                made.elements[j][i] = row.weight * coefficient;
            }
        }
        for j in 0..unknowns {
            made.lengths[j] = dot(&made.elements[j], &made.elements[j]).sqrt();
        }
        made
    }

    /// The target less what the amounts bring; those that `skip` accepts bring nothing.
    fn miss(&self, amounts: &Vector, skip: impl Fn(usize) -> bool) -> Vector {
        let mut miss = self.target;
        for j in (0..self.unknowns).filter(|&j| !skip(j)) {
            for (left, element) in miss.iter_mut().zip(&self.elements[j]) {
                *left -= amounts[j] * element;
            }
        }
        miss
    }

    /// The amounts of the unknowns in `free` that come nearest to `target`, by Householder
    /// reflections; none where the columns are not independent.
    fn nearest(&self, free: &[usize], mut target: Vector) -> Option<Vector> {
        if free.len() > self.rows {
            return None;
        }
        let mut work = [[0.0; MOST]; MOST];
        for (column, &unknown) in work.iter_mut().zip(free) {
            *column = self.elements[unknown];
        }
        for k in 0..free.len() {
            let below = dot(&work[k][k..], &work[k][k..]).sqrt();
            if below <= DEPENDENT * self.lengths[free[k]] {
                return None;
            }
            // The sign that adds, so that nothing cancels.
            let pivot = if work[k][k] > 0.0 { -below } else { below };
            let mut mirror = work[k];
            mirror[..k].fill(0.0);
            mirror[k] -= pivot;
            let square = dot(&mirror, &mirror);
            for column in work[k + 1..free.len()].iter_mut().chain([&mut target]) {
                let share = 2.0 * dot(&mirror, column) / square;
                for (element, normal) in column.iter_mut().zip(&mirror) {
                    *element -= share * normal;
                }
            }
            work[k][k] = pivot;
        }
        let mut amounts = [0.0; MOST];
        for k in (0..free.len()).rev() {
            let known: f64 = (k + 1..free.len()).map(|j| work[j][k] * amounts[j]).sum();
            amounts[k] = (target[k] - known) / work[k][k];
        }
        Some(amounts)
    }
}

/// Where an unknown is.
#[derive(Clone, Copy, PartialEq)]
enum Place {
    Lower,
    Free,
    Upper,
}

/// The state of the search.
pub(super) struct Bounds<'a> {
    upper: &'a [f64],
    places: [Place; MOST],
    amounts: Vector,
}

impl<'a> Bounds<'a> {
    /// Every unknown at zero.
    pub(super) fn new(upper: &'a [f64]) -> Self {
        Self {
            upper,
            places: [Place::Lower; MOST],
            amounts: [0.0; MOST],
        }
    }

    /// Frees the unknown that gains most, again and again, until none gains.
    pub(super) fn search(mut self, columns: &Columns) -> Result<Vector, FitProblem> {
        // Unknowns whose freeing led nowhere since the last step that did.
        let mut barred = [false; MOST];
        for _ in 0..MOST_STEPS {
            let miss = columns.miss(&self.amounts, |_| false);
            let Some(entering) = self.best_gain(columns, &miss, &barred) else {
                return Ok(self.amounts);
            };
            let before = self.places[entering];
            self.places[entering] = Place::Free;
            if self.settle(columns, entering, before) {
                barred = [false; MOST];
            } else {
                self.places[entering] = before;
                barred[entering] = true;
            }
        }
        Err(FitProblem::NotConverged { steps: MOST_STEPS })
    }

    /// The unknown at a bound whose step away from it makes the miss smaller at the fastest rate.
    fn best_gain(&self, columns: &Columns, miss: &Vector, barred: &Marks) -> Option<usize> {
        let size = dot(miss, miss).sqrt().max(f64::MIN_POSITIVE);
        let scale = dot(&columns.target, &columns.target).sqrt();
        let mut best = None;
        let mut most = NO_GAIN * size.max(scale);
        for j in (0..columns.unknowns).filter(|&j| !barred[j]) {
            let length = columns.lengths[j];
            if length == 0.0 || self.upper[j] == 0.0 {
                continue;
            }
            let rate = dot(&columns.elements[j], miss) / length;
            let gain = match self.places[j] {
                Place::Lower => rate,
                Place::Upper => -rate,
                Place::Free => continue,
            };
            if gain > most {
                (best, most) = (Some(j), gain);
            }
        }
        best
    }

    /// Fits the free unknowns; those that would pass a bound stop there, and the rest is fitted
    /// again. False where the entering unknown would only turn back into its bound, or brings
    /// nothing that the free ones do not: rounding, not a gain.
    fn settle(&mut self, columns: &Columns, entering: usize, before: Place) -> bool {
        let mut first = true;
        loop {
            let mut free = [0; MOST];
            let mut count = 0;
            for j in 0..columns.unknowns {
                if self.places[j] == Place::Free {
                    free[count] = j;
                    count += 1;
                }
            }
            let free = &free[..count];
            let target = columns.miss(&self.amounts, |j| self.places[j] == Place::Free);
            let Some(wanted) = columns.nearest(free, target) else {
                return !first;
            };
            if first {
                let Some(at) = free.iter().position(|&j| j == entering) else {
                    return false;
                };
                let turned_back = match before {
                    Place::Upper => wanted[at] >= self.upper[entering],
                    _ => wanted[at] <= 0.0,
                };
                if turned_back {
                    return false;
                }
            }
            first = false;
            if !self.step(free, &wanted) {
                return true;
            }
        }
    }

    /// Moves the free unknowns towards what is wanted until the first of them meets a bound; true
    /// where one did.
    fn step(&mut self, free: &[usize], wanted: &Vector) -> bool {
        let mut share = 1.0;
        let mut stopped = None;
        for (&j, &goal) in free.iter().zip(wanted) {
            let bound = if goal < 0.0 {
                0.0
            } else if goal > self.upper[j] {
                self.upper[j]
            } else {
                continue;
            };
            let reach = (bound - self.amounts[j]) / (goal - self.amounts[j]);
            if stopped.is_none() || reach < share {
                (share, stopped) = (reach, Some((j, bound)));
            }
        }
        let Some((stopped, bound)) = stopped else {
            for (&j, &goal) in free.iter().zip(wanted) {
                self.amounts[j] = goal;
            }
            return false;
        };
        for (&j, &goal) in free.iter().zip(wanted) {
            self.amounts[j] += share * (goal - self.amounts[j]);
        }
        self.amounts[stopped] = bound;
        self.places[stopped] = if bound == 0.0 {
            Place::Lower
        } else {
            Place::Upper
        };
        true
    }
}

/// The sum of products.
fn dot(left: &[f64], right: &[f64]) -> f64 {
    left.iter().zip(right).map(|(a, b)| a * b).sum()
}
