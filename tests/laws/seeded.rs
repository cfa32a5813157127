//! Draws from the core's seeded generator: the same seed gives the same plans on every device.

use slackwater::science::random::Random;

/// The generator.
pub struct Seeded(Random);

impl Seeded {
    /// Begins at a seed.
    pub fn new(seed: u64) -> Self {
        Self(Random::new(seed))
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.0.bits()
    }

    /// From 0 up to but without 1.
    pub fn share(&mut self) -> f64 {
        // 53 bits, as many as a double holds exactly.
        (self.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// A number between two bounds.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        (low + (high - low) * self.share()).clamp(low, high)
    }

    /// A whole number between two bounds, both included.
    pub fn whole(&mut self, low: u32, high: u32) -> u32 {
        low + u32::try_from(self.bits() % u64::from(high - low + 1)).unwrap_or_default()
    }

    /// True with this likelihood.
    pub fn chance(&mut self, share: f64) -> bool {
        self.share() < share
    }

    /// A place in a list of this length.
    pub fn index(&mut self, length: usize) -> usize {
        usize::try_from(self.bits() % length.max(1) as u64).unwrap_or_default()
    }

    /// A member of a list that is not empty.
    pub fn pick<T: Copy>(&mut self, list: &[T]) -> T {
        list[self.index(list.len())]
    }
}
