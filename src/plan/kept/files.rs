//! Plans, trials and notebooks written to files and read from them.

use super::{FileError, KIND, Kept, KeptNotebook, KeptTrial, LONGEST_FILE, Store};
use crate::plan::model::Plan;
use crate::plan::notebook::Notebook;
use crate::plan::trial::{Trial, VERSION as TRIAL_VERSION};
use crate::plan::{ProblemKind, quote_bare_words};

/// Writes a file that holds these plans, trials and notebooks.
///
/// ```
/// use slackwater::plan::{Example, plans_from_file, plans_to_file};
/// let plans = [Example::Bucket.plan()];
/// assert_eq!(plans_from_file(&plans_to_file(&plans, &[], &[])).unwrap(), plans);
/// ```
pub fn plans_to_file(plans: &[Plan], trials: &[Trial], notebooks: &[Notebook]) -> String {
    let store = Store {
        kind: KIND.to_owned(),
        plans: plans
            .iter()
            .map(|plan| Kept {
                id: 0,
                plan: plan.clone(),
            })
            .collect(),
        trials: trials
            .iter()
            .map(|trial| KeptTrial {
                id: 0,
                trial: trial.clone(),
            })
            .collect(),
        notebooks: notebooks
            .iter()
            .map(|notebook| KeptNotebook {
                id: 0,
                notebook: notebook.clone(),
            })
            .collect(),
        ..Store::default()
    };
    store.write()
}

/// Reads the plans of a file: one written by [`plans_to_file`], a stored text that was set aside,
/// or a single plan document.
///
/// # Errors
/// [`FileError`]; a file gives all its plans or none.
pub fn plans_from_file(text: &str) -> Result<Vec<Plan>, FileError> {
    // A mark of the order of bytes, as some editors write.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let store = Store::read(text)?;
    if store.kind == KIND || !store.plans.is_empty() {
        return Ok(store.plans.into_iter().map(|kept| kept.plan).collect());
    }
    // Any JSON object reads as a plan in which nothing is filled in.
    let plan = Plan::from_json(text).map_err(|_| FileError::NotPlans { line: 0 })?;
    let empty = Plan {
        name: plan.name.clone(),
        version: plan.version,
        ..Plan::default()
    };
    if plan == empty {
        return Err(FileError::NotPlans { line: 0 });
    }
    Ok(vec![plan])
}

/// Reads the trials of a file, as [`plans_from_file`] does the plans; a single trial document is such
/// a file too.
///
/// # Errors
/// [`FileError`].
pub fn trials_from_file(text: &str) -> Result<Vec<Trial>, FileError> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if text.len() > LONGEST_FILE {
        return Err(FileError::TooLong);
    }
    // Any JSON object without odd members reads as a trial in which nothing is compared.
    match serde_json::from_str::<Trial>(&quote_bare_words(text)) {
        Ok(trial) if trial.treatments.is_empty() => {}
        Ok(trial) if trial.version > TRIAL_VERSION => return Err(FileError::NewerVersion),
        Ok(trial) => return Ok(vec![trial]),
        Err(_) => {}
    }
    let trials = Store::read(text)?.trials;
    Ok(trials.into_iter().map(|kept| kept.trial).collect())
}

/// Reads the notebooks of a file, as [`plans_from_file`] does the plans; a single notebook document is
/// such a file too.
///
/// # Errors
/// [`FileError`].
pub fn notebooks_from_file(text: &str) -> Result<Vec<Notebook>, FileError> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if text.len() > LONGEST_FILE {
        return Err(FileError::TooLong);
    }
    // Any JSON object without odd members reads as a notebook without a plan; a trial has one too,
    // and no readings.
    if text.contains("\"readings\"") {
        match Notebook::from_json(text) {
            Ok(notebook) if notebook.plan == Plan::default() => {}
            Ok(notebook) => return Ok(vec![notebook]),
            Err(problem) if matches!(problem.kind, ProblemKind::NewerVersion { .. }) => {
                return Err(FileError::NewerVersion);
            }
            Err(_) => {}
        }
    }
    let notebooks = Store::read(text)?.notebooks;
    Ok(notebooks.into_iter().map(|kept| kept.notebook).collect())
}

#[cfg(test)]
mod tests {
    use super::super::VERSION;
    use super::*;
    use crate::plan::Example;
    use crate::plan::trial::Treatment;

    #[test]
    fn later_versions_are_told_from_damage() {
        for text in [
            r#"{"version":2,"plans":7}"#,
            r#"{"plans":[{"id":1,"plan":{"version":99}}]}"#,
        ] {
            assert_eq!(Store::read(text), Err(FileError::NewerVersion), "{text}");
            assert_eq!(plans_from_file(text), Err(FileError::NewerVersion));
        }
        for text in ["", "[]", "7", "{", r#"{"plans":[{"plan":7}]}"#] {
            assert!(
                matches!(plans_from_file(text), Err(FileError::NotPlans { .. })),
                "{text}"
            );
        }
        assert_eq!(
            plans_from_file(r#"{"name": "of something else"}"#),
            Err(FileError::NotPlans { line: 0 })
        );
    }

    #[test]
    fn a_single_plan_and_a_text_set_aside_are_files_too() {
        let plan = Example::FloatingBoards.plan();
        assert_eq!(plans_from_file(&plan.to_json()), Ok(vec![plan.clone()]));
        let stored = Store {
            plans: vec![Kept {
                id: 3,
                plan: plan.clone(),
            }],
            ..Store::default()
        };
        assert_eq!(
            plans_from_file(&format!("\u{feff}{}", stored.write())),
            Ok(vec![plan])
        );
        assert_eq!(plans_from_file(&plans_to_file(&[], &[], &[])), Ok(vec![]));
    }

    #[test]
    fn trials_travel_with_plans_and_alone() {
        let mut trial = Trial {
            plan: Some(Example::Bottle.plan()),
            treatments: vec![Treatment::default()],
            ..Trial::default()
        };
        let file = plans_to_file(&[Example::Bucket.plan()], &[trial.clone()], &[]);
        assert_eq!(trials_from_file(&file), Ok(vec![trial.clone()]));
        assert_eq!(plans_from_file(&file).map(|plans| plans.len()), Ok(1));
        let alone = serde_json::to_string(&trial).expect("text");
        assert_eq!(trials_from_file(&alone), Ok(vec![trial.clone()]));
        assert!(plans_from_file(&alone).is_err());
        assert_eq!(
            trials_from_file(&Example::Bucket.plan().to_json()),
            Ok(vec![])
        );
        assert_eq!(trials_from_file("7"), Err(FileError::NotPlans { line: 1 }));
        trial.version = 99;
        let text = serde_json::to_string(&trial).expect("text");
        for text in [text, plans_to_file(&[], &[trial], &[])] {
            assert_eq!(trials_from_file(&text), Err(FileError::NewerVersion));
        }
    }

    #[test]
    fn notebooks_travel_with_plans_and_alone() {
        let mut notebook = Notebook::begin(&Example::Bottle.plan());
        notebook.readings = vec![crate::plan::notebook::Reading::default()];
        notebook.closed = true;
        let store = Store {
            version: VERSION,
            notebooks: vec![KeptNotebook {
                id: 4,
                notebook: notebook.clone(),
            }],
            ..Store::default()
        };
        assert_eq!(Store::read(&store.write()), Ok(store));
        let file = plans_to_file(&[Example::Bucket.plan()], &[], &[notebook.clone()]);
        assert_eq!(notebooks_from_file(&file), Ok(vec![notebook.clone()]));
        assert_eq!(plans_from_file(&file).map(|plans| plans.len()), Ok(1));
        let alone = notebook.to_json();
        assert_eq!(notebooks_from_file(&alone), Ok(vec![notebook.clone()]));
        assert_eq!(trials_from_file(&alone), Ok(vec![]));
        assert!(plans_from_file(&alone).is_err());
        for other in [Example::Bucket.plan().to_json(), "{}".to_owned()] {
            assert_eq!(notebooks_from_file(&other), Ok(vec![]));
        }
        assert!(notebooks_from_file("7").is_err());
        notebook.version = 99;
        for text in [notebook.to_json(), plans_to_file(&[], &[], &[notebook])] {
            assert_eq!(notebooks_from_file(&text), Err(FileError::NewerVersion));
        }
    }
}
