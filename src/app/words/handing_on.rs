//! The words of handing a plan on, and of plans that come from outside.

use super::choices::Worded;
use super::say::*;
use super::{
    below_rim, doses_line, notebook_in_file, or_unnamed, problems_heading, result_sentence,
    trial_in_file,
};
use crate::advice::Outcome;
use crate::plan::notebook::Notebook;
use crate::plan::trial::Trial;
use crate::plan::{FileError, LinkError, Plan, Problem, UnitSystem};

/// A link that gives no plan.
pub fn link_error(error: LinkError) -> String {
    match error {
        LinkError::NotALink => link_error_not_alink().to_owned(),
        LinkError::Damaged => link_error_damaged().to_owned(),
        LinkError::TooLong { most, .. } => link_error_too_long(&most.to_string()),
        LinkError::NewerVersion => link_error_newer_version().to_owned(),
    }
}

/// A file that gives no plans.
pub fn file_error(error: FileError) -> String {
    match error {
        FileError::NotPlans { line: 0 } => file_error_not_plans().to_owned(),
        FileError::NotPlans { line } => file_error_line(&line.to_string()),
        FileError::TooLong => file_error_too_long().to_owned(),
        FileError::NewerVersion => file_error_newer_version().to_owned(),
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
