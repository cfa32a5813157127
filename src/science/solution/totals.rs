//! What was dissolved: the total of each component, however it sits in species.

use crate::science::units::{MolarConcentration, molar_concentration::millimole_per_liter};

/// A component: what is weighed in and can only be moved between species, never made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Component {
    /// Ca²⁺ and its pairs.
    Calcium,
    /// Mg²⁺ and its pairs.
    Magnesium,
    /// Na⁺ and its pairs.
    Sodium,
    /// K⁺ and its pairs.
    Potassium,
    /// NH₄⁺ and NH₃: not oxidised by nitrate.
    Ammonium,
    /// NO₃⁻.
    Nitrate,
    /// Cl⁻.
    Chloride,
    /// SO₄²⁻, HSO₄⁻ and their pairs.
    Sulfate,
    /// PO₄³⁻ and its acids down to H₃PO₄, and their pairs.
    Phosphate,
    /// CO₃²⁻, HCO₃⁻, dissolved CO₂ and their pairs.
    Carbonate,
    /// H₃BO₃ and H₂BO₃⁻.
    Borate,
}

impl Component {
    /// Every component, in the order of the declaration.
    pub const ALL: [Self; 11] = [
        Self::Calcium,
        Self::Magnesium,
        Self::Sodium,
        Self::Potassium,
        Self::Ammonium,
        Self::Nitrate,
        Self::Chloride,
        Self::Sulfate,
        Self::Phosphate,
        Self::Carbonate,
        Self::Borate,
    ];

    /// How many components there are.
    pub const COUNT: usize = Self::ALL.len();
}

/// The total of each component per kilogram of water.
///
/// Amounts are written as concentrations (mmol/L) and read as mmol per kilogram of water, the
/// measure in which equilibria are stated. For a tank the two differ by 0.3 % (the density of
/// water at 25 °C) and by what the salts swell: under 0.5 % in all up to 50 mmol/L of salts. For
/// a stock solution count the salts against the water they are stirred into.
///
/// ```
/// use slackwater::science::solution::{Component, Totals};
/// use slackwater::science::units::MolarConcentration;
/// use slackwater::science::units::molar_concentration::millimole_per_liter;
/// let mmol = MolarConcentration::new::<millimole_per_liter>;
/// let half = Totals::of([(Component::Potassium, mmol(6.0))]).scaled(0.5);
/// assert!((half.get(Component::Potassium) - mmol(3.0)).abs() < mmol(1e-12));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Totals {
    /// mol per kg of water, by component.
    pub(super) molal: [f64; Component::COUNT],
}

impl Totals {
    /// The totals that are listed; of a component listed twice, the sum; of one not listed, none.
    pub fn of(amounts: impl IntoIterator<Item = (Component, MolarConcentration)>) -> Self {
        let mut totals = Self::default();
        for (component, amount) in amounts {
            totals.add(component, amount);
        }
        totals
    }

    /// Adds to one component (mmol per kg of water).
    pub fn add(&mut self, component: Component, amount: MolarConcentration) {
        self.molal[component as usize] += 1e-3 * amount.get::<millimole_per_liter>();
    }

    /// The total of one component (mmol per kg of water).
    pub fn get(&self, component: Component) -> MolarConcentration {
        MolarConcentration::new::<millimole_per_liter>(1e3 * self.molal[component as usize])
    }

    /// All totals times `factor`: the same recipe at another strength.
    #[must_use]
    pub fn scaled(mut self, factor: f64) -> Self {
        for amount in &mut self.molal {
            *amount *= factor;
        }
        self
    }

    /// The totals of two recipes dissolved in the same water.
    #[must_use]
    pub fn with(mut self, other: &Self) -> Self {
        for (amount, more) in self.molal.iter_mut().zip(other.molal) {
            *amount += more;
        }
        self
    }
}
