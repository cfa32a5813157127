//! The table of atomic weights.

use crate::science::units::{MolarMass, molar_mass};

/// How many elements the table of atomic weights holds.
pub(super) const ELEMENTS: usize = 21;

/// A chemical element that fertilizers, chelates and water analyses contain.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[expect(missing_docs, reason = "the variants are the international symbols")]
pub enum Element {
    H,
    B,
    C,
    N,
    O,
    F,
    Na,
    Mg,
    Si,
    P,
    S,
    Cl,
    K,
    Ca,
    Mn,
    Fe,
    Co,
    Ni,
    Cu,
    Zn,
    Mo,
}

/// Symbol and atomic weight in g/mol, in the order of [`Element`].
pub(super) const WEIGHTS: [(&str, f64); ELEMENTS] = [
    ("H", 1.008),
    ("B", 10.81),
    ("C", 12.011),
    ("N", 14.007),
    ("O", 15.999),
    ("F", 18.998),
    ("Na", 22.990),
    ("Mg", 24.305),
    ("Si", 28.085),
    ("P", 30.974),
    ("S", 32.06),
    ("Cl", 35.45),
    ("K", 39.098),
    ("Ca", 40.078),
    ("Mn", 54.938),
    ("Fe", 55.845),
    ("Co", 58.933),
    ("Ni", 58.693),
    ("Cu", 63.546),
    ("Zn", 65.38),
    ("Mo", 95.95),
];

impl Element {
    /// Every element of the table, by atomic number.
    pub const ALL: [Self; ELEMENTS] = [
        Self::H,
        Self::B,
        Self::C,
        Self::N,
        Self::O,
        Self::F,
        Self::Na,
        Self::Mg,
        Self::Si,
        Self::P,
        Self::S,
        Self::Cl,
        Self::K,
        Self::Ca,
        Self::Mn,
        Self::Fe,
        Self::Co,
        Self::Ni,
        Self::Cu,
        Self::Zn,
        Self::Mo,
    ];

    /// The international symbol, such as `"Fe"`.
    pub const fn symbol(self) -> &'static str {
        WEIGHTS[self as usize].0
    }

    /// Standard atomic weight as molar mass (g/mol), abridged to five figures.
    ///
    /// Source: IUPAC Commission on Isotopic Abundances and Atomic Weights, Standard atomic
    /// weights 2021 (Prohaska et al. 2022, Pure Appl. Chem. 94:573, abridged values of table 1).
    ///
    /// ```
    /// use slackwater::science::{formula::Element, units::molar_mass::gram_per_mole};
    /// assert!((Element::N.atomic_weight().get::<gram_per_mole>() - 14.007).abs() < 1e-9);
    /// ```
    pub fn atomic_weight(self) -> MolarMass {
        MolarMass::new::<molar_mass::gram_per_mole>(self.grams_per_mole())
    }

    /// Atomic weight in g/mol, usable while compiling.
    pub(crate) const fn grams_per_mole(self) -> f64 {
        WEIGHTS[self as usize].1
    }
}

#[cfg(test)]
mod tests {
    use super::Element;

    #[test]
    fn symbols_stand_in_the_order_of_the_enumeration() {
        for (i, element) in Element::ALL.into_iter().enumerate() {
            assert_eq!(element as usize, i);
            assert_eq!(format!("{element:?}"), element.symbol());
        }
    }
}
