//! Every word that a user reads, in one place. Functions take typed facts and give sentences in the
//! reader's language; nothing here decides anything.
#![expect(
    clippy::wildcard_imports,
    reason = "the texts are hundreds of functions that the build writes"
)]

mod basis;
mod build_figures;
mod build_lists;
mod building;
mod built;
mod calendar;
mod card;
mod chances;
mod choices;
mod doses;
mod fields;
mod figures;
mod finding_parts;
mod findings;
mod glossary;
mod handing_on;
mod handout;
mod notebook;
mod notebook_forecast;
mod problems;
mod results;
mod say;
mod season;
mod structure;
mod trial;
mod trial_problems;
mod trial_result;
mod trial_tables;
mod workings;

pub use basis::*;
pub use build_figures::*;
pub use build_lists::*;
pub use building::*;
pub use calendar::*;
pub use card::*;
pub use chances::*;
pub use choices::*;
pub use doses::*;
pub use fields::*;
pub use figures::*;
pub use finding_parts::{fine, mend, ph_sentences};
pub use findings::*;
pub use glossary::*;
pub use handing_on::*;
pub use handout::*;
pub use notebook::*;
pub use notebook_forecast::*;
pub use problems::*;
pub use results::*;
pub use say::*;
pub use season::*;
pub use trial::*;
pub use trial_problems::*;
pub use trial_result::*;
pub use trial_tables::*;
pub use workings::*;

use crate::app::state::Step;
use crate::catalog::Keyed;
use crate::plan::{Example, UnitSystem};

/// The name of a copy.
pub fn copy_of(name: &str) -> String {
    plan_copy_name(&or_unnamed(name))
}

/// The name, or what stands for it.
pub fn or_unnamed(name: &str) -> String {
    if name.trim().is_empty() {
        unnamed()
    } else {
        name
    }
    .to_owned()
}

/// After a plan was deleted.
pub fn deleted(name: &str) -> String {
    plan_deleted(&or_unnamed(name))
}

/// Name of the button that deletes a plan.
pub fn delete_this(name: &str) -> String {
    plan_delete_this(&or_unnamed(name))
}

/// Name of a step.
pub fn step(step: Step) -> &'static str {
    match step {
        Step::Container => step_container(),
        Step::Crop => step_crop(),
        Step::Fertilizer => step_fertilizer(),
        Step::Climate => step_climate(),
    }
}

/// What a step asks.
pub fn step_question(step: Step) -> &'static str {
    match step {
        Step::Container => step_question_container(),
        Step::Crop => step_question_crop(),
        Step::Fertilizer => step_question_fertilizer(),
        Step::Climate => step_question_climate(),
    }
}

/// How many entries of a step need a look.
pub fn step_problems(count: usize) -> String {
    step_entries_to_mend(&count.to_string())
}

/// Name of a unit system.
pub fn unit_system(units: UnitSystem) -> &'static str {
    match units {
        UnitSystem::Metric => unit_system_metric(),
        UnitSystem::UsCustomary => unit_system_us_customary(),
    }
}

/// Title of a ready example.
pub fn example(example: Example) -> &'static str {
    match example {
        Example::Bottle => example_bottle(),
        Example::Bucket => example_bucket(),
        Example::CoveredTank => example_covered_tank(),
        Example::FloatingBoards => example_floating_boards(),
    }
}

/// The name that a plan made from a ready example begins with.
pub fn example_name(example: Example) -> &'static str {
    match example {
        Example::Bottle => example_name_bottle(),
        Example::Bucket => example_name_bucket(),
        Example::CoveredTank => example_name_covered_tank(),
        Example::FloatingBoards => example_name_floating_boards(),
    }
}

/// One line about a ready example.
pub fn example_more(example: Example, units: UnitSystem) -> String {
    match example {
        Example::Bottle => example_more_bottle(units.key()),
        Example::Bucket => example_more_bucket(units.key()),
        Example::CoveredTank => example_more_covered_tank().to_owned(),
        Example::FloatingBoards => example_more_floating_boards().to_owned(),
    }
}
