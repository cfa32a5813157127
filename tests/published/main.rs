//! Checks against something outside the project. Each names its source beside it, or says
//! 'common practice, no source' or 'from memory'. Tables are CSV files with a `source` column.

mod air_and_sun;
mod building;
mod chances;
mod chemistry;
mod fertility;
mod geometry;
mod growth_and_canopy;
mod practice;
mod roots_and_mosquitoes;
mod speciation;
mod statistics;
mod table;
mod whole_solution;
