//! Things in the world with their figures and the source of each figure. No logic.

pub mod acids;
pub mod blends;
pub mod climates;
pub mod covers;
pub mod crops;
pub mod foams;
pub(crate) mod keyed;
pub mod pipes;
pub mod pots;
pub mod recipes;
pub mod salt_tolerance;
pub mod salts;
pub mod shelters;
pub mod solubility;
pub mod timber;
pub mod tissue;
pub mod vessels;

pub use keyed::Keyed;
