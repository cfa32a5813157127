//! The depth that belongs to a volume: Newton's method kept inside a bracket.

/// A relative step below which the next one is lost in rounding: the error after a Newton step
/// grows with the square of the step, so what is left is far below 1e-12.
const LAST_STEP: f64 = 1e-10;

/// Bisection alone gets from any bracket to the last bit of a double within this many steps;
/// Newton's method needs three to six.
const MOST_STEPS: u32 = 200;

/// The place in `low..=high` where an increasing function has the value `target`.
///
/// `evaluate` gives value and slope; `guess` is where to start (taken only if inside the bracket).
/// A step that leaves the bracket, or that is not at most half of the one before, is replaced by
/// a bisection, so the search ends for any increasing function, also where its slope is zero.
///
/// Method: Press, Teukolsky, Vetterling & Flannery (2007), Numerical Recipes, section 9.4.
pub(super) fn invert(
    evaluate: impl Fn(f64) -> (f64, f64),
    target: f64,
    mut low: f64,
    mut high: f64,
    guess: f64,
) -> f64 {
    let mut place = if guess > low && guess < high {
        guess
    } else {
        f64::midpoint(low, high)
    };
    let mut last_step = high - low;
    for _ in 0..MOST_STEPS {
        let (value, slope) = evaluate(place);
        let excess = value - target;
        if excess > 0.0 {
            high = place;
        } else {
            low = place;
        }
        let step = excess / slope;
        if step.abs() <= LAST_STEP * place {
            return (place - step).clamp(low, high);
        }
        let newton = place - step;
        // Written so that a step that is not a number (slope zero) also leads to bisection.
        let next = if newton > low && newton < high && step.abs() <= 0.5 * last_step {
            newton
        } else {
            f64::midpoint(low, high)
        };
        last_step = (next - place).abs();
        if last_step == 0.0 {
            return next;
        }
        place = next;
    }
    place
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The function is exact here; only the last rounding is left.
    const ROUNDING: f64 = 1e-14;

    #[test]
    fn finds_roots_worked_by_hand() {
        let square = |x: f64| (x * x, 2.0 * x);
        assert!((invert(square, 2.0, 0.0, 10.0, 9.0) - 2f64.sqrt()).abs() < ROUNDING);
        let cube = |x: f64| (x * x * x, 3.0 * x * x);
        assert!((invert(cube, 27e-15, 0.0, 1.0, 0.5) - 3e-5).abs() < 3e-5 * ROUNDING);
    }

    #[test]
    fn survives_a_slope_of_zero_and_a_step() {
        let flat_in_the_middle = |x: f64| {
            let y = x - 0.5;
            (y * y * y, 3.0 * y * y)
        };
        // At a triple root a double resolves only the cube root of its rounding.
        assert!((invert(flat_in_the_middle, 0.0, 0.0, 1.0, 0.5) - 0.5).abs() < 1e-5);
        let kink = |x: f64| {
            if x < 0.3 {
                (x, 1.0)
            } else {
                (0.3 + 1e6 * (x - 0.3), 1e6)
            }
        };
        let expected = 0.3 + 0.2e-6;
        assert!((invert(kink, 0.5, 0.0, 1.0, 0.01) - expected).abs() < 1e-12);
    }

    #[test]
    fn a_guess_outside_the_bracket_is_not_taken() {
        let line = |x: f64| (2.0 * x, 2.0);
        for guess in [f64::NAN, -1.0, 5.0, f64::INFINITY] {
            assert!((invert(line, 0.5, 0.0, 1.0, guess) - 0.25).abs() < ROUNDING);
        }
    }
}
