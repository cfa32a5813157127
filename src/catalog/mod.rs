//! Things in the world with their figures and the source of each figure. No logic.

pub mod blends;
pub mod climates;
pub mod crops;
pub mod foams;
pub(crate) mod keyed;
pub mod pipes;
pub mod pots;
pub mod salts;
pub mod shelters;
pub mod tissue;
pub mod vessels;

pub use keyed::Keyed;
