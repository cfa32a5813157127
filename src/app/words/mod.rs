//! Every word that a user reads, in one place, ready for translation. Functions take typed facts
//! and give sentences; nothing here decides anything.

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
mod findings;
mod glossary;
mod handing_on;
mod handout;
mod notebook;
mod notebook_forecast;
mod problems;
mod results;
mod season;
mod structure;
mod trial;
mod trial_problems;
mod trial_result;
mod trial_tables;
mod workings;

pub use build_figures::*;
pub use build_lists::*;
pub use building::*;
pub use calendar::*;
pub use card::*;
pub use chances::*;
pub use choices::*;
pub use doses::*;
pub use fields::*;
pub use findings::*;
pub use glossary::*;
pub use handing_on::*;
pub use handout::*;
pub use notebook::*;
pub use notebook_forecast::*;
pub use problems::*;
pub use results::*;
pub use season::*;
pub use trial::*;
pub use trial_problems::*;
pub use trial_result::*;
pub use trial_tables::*;
pub use workings::*;

use crate::app::state::Step;
use crate::plan::{Example, UnitSystem};

/// While a part of the program is on its way.
pub const FETCHING: &str = "One moment: this part of the page is being fetched.";
/// When a part of the program could not be had.
pub const NOT_FETCHED: &str =
    "This part of the page could not be fetched. Check the connection, then try again.";
/// Asks for the part once more.
pub const FETCH_AGAIN: &str = "Try again";

/// The name of the page.
pub const NAME: &str = "Slackwater";
/// What it is, under its name.
pub const MOTTO: &str = "Leafy crops on still nutrient solution, worked out before you plant";
/// At the foot of the page.
pub const FOOT: &str = "Figures are forecasts from published models and your own measures. They do not replace product labels, local codes or licensed advice. Everything you enter stays on this device.";

/// Heading of the first page.
pub const WELCOME: &str = "What would you like to plan?";
/// Under it.
pub const WELCOME_MORE: &str = "Open a ready plan and change it, or start from the container you have. Nothing here needs power, a pump or the internet.";
/// Button.
pub const START_OWN: &str = "Start from what I have";
/// Name of a plan of one's own.
pub const OWN_PLAN: &str = "My plan";
/// Heading of kept plans.
pub const YOUR_PLANS: &str = "Your plans";

/// Button that opens the list of plans.
pub const PLANS: &str = "Plans";
/// Label of the plan's name.
pub const PLAN_NAME: &str = "Name of this plan";
/// Button.
pub const NEW_PLAN: &str = "New plan";
/// Button.
pub const DUPLICATE: &str = "Make a copy";
/// Button.
pub const DELETE: &str = "Delete";
/// Button.
pub const UNDO: &str = "Undo";
/// Button.
pub const DISMISS: &str = "Close";
/// Label of the unit choice.
pub const UNITS: &str = "Units";
/// Label of the steps.
pub const STEPS: &str = "Steps";
/// Button.
pub const NEXT: &str = "Next";
/// Button.
pub const BACK: &str = "Back";
/// Button after the last step.
pub const TO_RESULT: &str = "See the result";

/// A plan without a name.
pub const UNNAMED: &str = "Plan without a name";

/// The name of a copy.
pub fn copy_of(name: &str) -> String {
    format!("{} (copy)", or_unnamed(name))
}

/// The name, or what stands for it.
pub fn or_unnamed(name: &str) -> String {
    if name.trim().is_empty() {
        UNNAMED
    } else {
        name
    }
    .to_owned()
}

/// After a plan was deleted.
pub fn deleted(name: &str) -> String {
    format!("Deleted: {}.", or_unnamed(name))
}

/// Name of the button that deletes a plan.
pub fn delete_this(name: &str) -> String {
    format!("Delete {}", or_unnamed(name))
}

/// A newer release has arrived.
pub const UPDATE_READY: &str = "A newer version of Slackwater is ready. It opens by itself once this page has been closed everywhere; your plans stay.";
/// Button.
pub const TAKE_UPDATE: &str = "Change now";
/// Storage is blocked or full.
pub const NOT_KEPT: &str = "This browser does not keep plans here (storage is blocked or full). Your plan stays while this page is open. Print the card before you close it.";
/// What was kept could not be read.
pub const SET_ASIDE: &str = "The plans kept in this browser could not be read. They were set aside unchanged; save them to a file before you go on.";
/// Link.
pub const SAVE_SET_ASIDE: &str = "Save what was set aside";
/// Name of that file.
pub const SET_ASIDE_FILE: &str = "slackwater-set-aside.json";

/// Name of a step.
pub const fn step(step: Step) -> &'static str {
    match step {
        Step::Container => "Container",
        Step::Crop => "Crop",
        Step::Fertilizer => "Fertilizer",
        Step::Climate => "Climate",
    }
}

/// What a step asks.
pub const fn step_question(step: Step) -> &'static str {
    match step {
        Step::Container => "What holds the solution?",
        Step::Crop => "What grows, how many, and when?",
        Step::Fertilizer => "What do you dissolve, in what water?",
        Step::Climate => "What air and light do the plants get?",
    }
}

/// Under the question of a step.
pub const NOT_SURE: &str =
    "Not sure of a figure? Leave it empty: a usual one stands in, and is named.";

/// How many entries of a step need a look.
pub fn step_problems(count: usize) -> String {
    match count {
        1 => "1 entry to mend".to_owned(),
        count => format!("{count} entries to mend"),
    }
}

/// Name of a unit system.
pub const fn unit_system(units: UnitSystem) -> &'static str {
    match units {
        UnitSystem::Metric => "Litres, cm, °C",
        UnitSystem::UsCustomary => "Gallons, inches, °F",
    }
}

/// Title of a ready example.
pub const fn example(example: Example) -> &'static str {
    match example {
        Example::Bottle => "One head in a bottle",
        Example::Bucket => "Three heads in a bucket",
        Example::CoveredTank => "A covered tank",
        Example::FloatingBoards => "Boards that float, then rest",
    }
}

/// One line about a ready example.
pub const fn example_more(example: Example) -> &'static str {
    match example {
        Example::Bottle => "4 litres, a net pot in the neck, a porch in mild humid weather.",
        Example::Bucket => "19 litres with a lid. The usual first attempt.",
        Example::CoveredTank => "A lined timber frame under one sheet of board, 48 heads.",
        Example::FloatingBoards => "A long tank, 12 foam boards over two pipes, 144 heads.",
    }
}
