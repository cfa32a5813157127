//! One span of a beam: its moments, deflections and extremes.

/// Steps in which a span is searched for its lowest and highest point; a fourth-degree curve has
/// at most three extrema, none of them narrower than several steps.
const STEPS: u32 = 64;
/// Golden-section steps after that: a 64th of a span to one part in 10⁸ of it.
const REFINEMENTS: u32 = 32;

/// One span with the moments at its ends.
#[derive(Clone, Copy)]
pub(super) struct Span {
    pub(super) start: f64,
    pub(super) length: f64,
    pub(super) load: f64,
    pub(super) rigidity: f64,
    pub(super) moments: (f64, f64),
}

impl Span {
    pub(super) fn moment(&self, x: f64) -> f64 {
        let share = x / self.length;
        self.moments.0 * (1.0 - share)
            + self.moments.1 * share
            + self.load * x * (self.length - x) / 2.0
    }

    pub(super) fn greatest_moment(&self) -> f64 {
        let pull = self.load * self.length;
        let at = if pull > 0.0 {
            (self.length / 2.0 + (self.moments.1 - self.moments.0) / pull).clamp(0.0, self.length)
        } else {
            0.0
        };
        self.moment(at).abs()
    }

    pub(super) fn deflection(&self, x: f64) -> f64 {
        let (l, (m0, m1)) = (self.length, self.moments);
        let uniform = self.load * x * (l * l * l - 2.0 * l * x * x + x * x * x) / 24.0;
        let ends =
            m0 * x * (l - x) * (2.0 * l - x) / (6.0 * l) + m1 * x * (l * l - x * x) / (6.0 * l);
        (uniform + ends) / self.rigidity
    }

    pub(super) fn slope_at_start(&self) -> f64 {
        let (l, (m0, m1)) = (self.length, self.moments);
        (self.load * l * l * l / 24.0 + m0 * l / 3.0 + m1 * l / 6.0) / self.rigidity
    }

    pub(super) fn slope_at_end(&self) -> f64 {
        let (l, (m0, m1)) = (self.length, self.moments);
        -(self.load * l * l * l / 24.0 + m0 * l / 6.0 + m1 * l / 3.0) / self.rigidity
    }

    /// The lowest (`sign` 1) or highest (`sign` −1) point: deflection, and place on the beam.
    pub(super) fn extreme(&self, sign: f64) -> (f64, f64) {
        let value = |x: f64| sign * self.deflection(x);
        let step = self.length / f64::from(STEPS);
        let mut best = 0.0;
        for index in 1..=STEPS {
            let x = step * f64::from(index);
            if value(x) > value(best) {
                best = x;
            }
        }
        let golden = f64::midpoint(5.0_f64.sqrt(), -1.0);
        let (mut low, mut high) = ((best - step).max(0.0), (best + step).min(self.length));
        for _ in 0..REFINEMENTS {
            let (a, b) = (high - golden * (high - low), low + golden * (high - low));
            if value(a) < value(b) {
                low = a;
            } else {
                high = b;
            }
        }
        let at = f64::midpoint(low, high);
        (self.deflection(at), self.start + at)
    }
}
