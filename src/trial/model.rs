//! Trial documents as JSON text.

use crate::plan::quote_bare_words;
use crate::plan::trial::Trial;

use super::problem::{TrialField, TrialProblem, TrialProblemKind};

impl Trial {
    /// Reads a trial document. An entry of a wrong kind does not fail here: it is kept as it came
    /// and judged by [`super::solve_trial`].
    ///
    /// # Errors
    /// One problem of the whole document when the text is no such JSON object.
    pub fn from_json(text: &str) -> Result<Self, Vec<TrialProblem>> {
        let not_a_trial = |line, column| {
            vec![TrialProblem {
                field: TrialField::Document,
                kind: TrialProblemKind::NotATrial { line, column },
            }]
        };
        // A list would be taken for the members of a trial in their order.
        if text.trim_start().starts_with('[') {
            return Err(not_a_trial(1, 1));
        }
        serde_json::from_str(&quote_bare_words(text))
            .map_err(|error| not_a_trial(error.line(), error.column()))
    }

    /// Writes the trial document.
    pub fn to_json(&self) -> String {
        // Texts, finite numbers and lists of them always serialise.
        serde_json::to_string_pretty(self).unwrap_or_default()
    }
}
