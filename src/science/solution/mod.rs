//! What is really in a nutrient solution: the species that its salts form, its pH, its electrical
//! conductivity, and which salts are about to fall out.
//!
//! Build [`Equilibria`] for a temperature, describe the solution by a [`Recipe`], and
//! [`Equilibria::solve`] it into a [`Speciation`].

// Formulae and the names of authors (KCl, NaHCO₃, McCleskey) look like code to this lint.
#![allow(clippy::doc_markdown)]

mod conductivity;
mod dosing;
mod equilibria;
mod medium;
mod minerals;
mod newton;
mod problem;
mod records;
mod speciation;
mod species;
mod system;
#[cfg(test)]
mod tests;
mod totals;

pub use dosing::{Acid, Dose};
pub use equilibria::{Acidity, Carbonate, Equilibria, Recipe};
pub use minerals::Mineral;
pub use problem::SolutionProblem;
pub use speciation::{Speciation, mixed};
pub use species::Species;
pub use totals::{Component, Totals};
