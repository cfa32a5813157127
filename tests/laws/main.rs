//! Properties that must hold for any plan. Plans are drawn from a seeded generator, so that a run
//! can be repeated exactly; a failure names the seed and prints the plan.

mod advice;
mod bad_input;
mod boards;
mod building;
mod chances;
mod chemistry;
mod dates;
mod feeding;
mod fuzz;
mod garbage;
mod group;
mod labels;
mod links;
mod notebook;
mod outcome;
mod plans;
mod rain;
mod roots;
mod saved;
mod scaling;
mod season;
mod seeded;
mod stocks;
mod trial;
mod units;
mod water;
