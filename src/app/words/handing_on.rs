//! The words of handing a plan on, and of plans that come from outside.

use super::choices::Worded;
use super::{
    below_rim, doses_line, notebook_in_file, or_unnamed, problems_heading, result_sentence,
    trial_in_file,
};
use crate::advice::Outcome;
use crate::plan::notebook::Notebook;
use crate::plan::trial::Trial;
use crate::plan::{FileError, LinkError, Plan, Problem, UnitSystem};

/// Heading.
pub const HAND_ON: &str = "Hand on";
/// Under it.
pub const HAND_ON_MORE: &str = "The link holds the whole plan. Whoever opens it sees a preview first. Nothing is sent to a server.";
/// Label.
pub const LINK: &str = "Link to this plan";
/// Button.
pub const COPY: &str = "Copy link";
/// Button.
pub const SHARE: &str = "Share";
/// After copying.
pub const COPIED: &str = "Copied.";
/// Where the browser did not copy.
pub const NOT_COPIED: &str = "The browser did not copy. Select the link and copy it yourself.";
/// Name of the code.
pub const CODE: &str = "QR code of the link";
/// Where a plan has no link.
pub const NO_LINK: &str = "This plan holds too much text for a link. Hand it on as a file.";
/// Where the link is too long for a code that paper can show.
pub const NO_CODE: &str = "This link is too long for a code that can be scanned.";
/// Beside the code on the card.
pub const SCAN: &str = "Scan to open this plan";

/// Heading over a plan from a link.
pub const FROM_LINK: &str = "A plan from a link";
/// Heading over plans from a file.
pub const FROM_FILE: &str = "Plans from a file";
/// Button.
pub const KEEP_NEW: &str = "Keep as a new plan";
/// Button.
pub const DO_NOT_KEEP: &str = "Do not keep";
/// Button.
pub const ADD_THEM: &str = "Add to my plans";
/// Button.
pub const REPLACE_ALL: &str = "Replace all my plans";
/// Beside it.
pub const REPLACE_MORE: &str = "Plans that you have already are not added twice. Replacing saves your present plans to a file first.";

/// Button.
pub const SAVE_PLAN: &str = "Save this plan to a file";
/// Button.
pub const SAVE_ALL: &str = "Save all plans to a file";
/// Label of the choice of a file.
pub const OPEN_FILE: &str = "Open a file of plans";
/// Name of a file.
pub const PLAN_FILE: &str = "slackwater-plan.json";
/// Name of a file.
pub const PLANS_FILE: &str = "slackwater-plans.json";

/// Another tab wrote other plans.
pub const ELSEWHERE: &str =
    "Your plans were changed in another tab. Nothing more is kept from this tab until you choose.";
/// Button.
pub const TAKE_THEIRS: &str = "Take the other tab's plans";
/// Button.
pub const KEEP_MINE: &str = "Keep this tab's plans";

/// Stored by a later version.
pub const SET_ASIDE_NEWER: &str = "The plans kept in this browser were written by a later version of this page and could not be read here. They were set aside unchanged; save them to a file before you go on.";
/// Button, once it was saved.
pub const FORGET_SET_ASIDE: &str = "Saved: remove it from this browser";

/// A link that gives no plan.
pub fn link_error(error: LinkError) -> String {
    match error {
        LinkError::NotALink => {
            "The end of this address is not a link to a plan. Ask for the link again.".to_owned()
        }
        LinkError::Damaged => "This link was damaged on its way: letters are missing or changed. Ask for it again, or for a file.".to_owned(),
        LinkError::TooLong { most, .. } => {
            format!("This link is longer than {most} letters, which no plan takes. Ask for it again, or for a file.")
        }
        LinkError::NewerVersion => "This link was made by a later version of this page. Reload the page while you are online, then open the link again.".to_owned(),
    }
}

/// A file that gives no plans.
pub fn file_error(error: FileError) -> String {
    match error {
        FileError::NotPlans { line: 0 } => "This file holds no plans.".to_owned(),
        FileError::NotPlans { line } => {
            format!("This file holds no plans that can be read: look at line {line}.")
        }
        FileError::TooLong => "This file is too large to be a file of plans, or could not be read.".to_owned(),
        FileError::NewerVersion => "This file was written by a later version of this page. Reload the page while you are online, then open the file again. Your own plans were not touched.".to_owned(),
    }
}

/// What a plan from outside is about: its name, container and crop, and its figures or how much is
/// to be mended.
pub fn preview(
    plan: &Plan,
    solved: &Result<Outcome, Vec<Problem>>,
    units: UnitSystem,
) -> Vec<String> {
    let mut lines = vec![or_unnamed(&plan.name)];
    let method = plan.container.method.known().map(Worded::word);
    let crop = plan.crop.kind.known().map(Worded::word);
    lines.push(
        [method, crop]
            .into_iter()
            .flatten()
            .collect::<Vec<_>>()
            .join(" · "),
    );
    match solved {
        Ok(outcome) => {
            lines.push(below_rim(outcome.fill.below_rim_cm, units));
            lines.push(doses_line(outcome, units));
            lines.push(result_sentence(outcome, units));
        }
        Err(problems) => lines.push(problems_heading(problems.len())),
    }
    lines
}

/// The plans, trials and notebooks of a file.
pub fn in_file(plans: &[Plan], trials: &[Trial], notebooks: &[Notebook]) -> Vec<String> {
    let plans = plans.iter().map(|plan| or_unnamed(&plan.name));
    let trials = trials.iter().map(|trial| trial_in_file(&trial.name));
    let notebooks = notebooks.iter().map(notebook_in_file);
    plans.chain(trials).chain(notebooks).collect()
}
