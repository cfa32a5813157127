//! Plans as JSON text.

use super::model::Plan;
use super::problem::{Problem, ProblemKind};

impl Plan {
    /// Reads a plan document. A field of a wrong kind does not fail here: it is kept as it came
    /// and judged by [`super::check`].
    ///
    /// # Errors
    /// One problem without a field when the text is no JSON object at all, with line and column.
    pub fn from_json(text: &str) -> Result<Self, Vec<Problem>> {
        let no_plan = |line, column| {
            vec![Problem {
                field: None,
                kind: ProblemKind::NotAPlan { line, column },
            }]
        };
        // A list would be taken for the members of a plan in their order.
        if text.trim_start().starts_with('[') {
            return Err(no_plan(1, 1));
        }
        serde_json::from_str(&quote_bare_words(text))
            .map_err(|error| no_plan(error.line(), error.column()))
    }

    /// Writes the plan document.
    pub fn to_json(&self) -> String {
        // Texts, finite numbers and lists of them always serialise.
        serde_json::to_string_pretty(self).unwrap_or_default()
    }
}

/// Puts quotes around `NaN`, `Infinity` and `-Infinity` outside of texts. Several programs write
/// them although JSON has no such numbers; quoted, they become a problem of their own field
/// rather than of the whole document.
pub fn quote_bare_words(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    let mut in_text = false;
    while let Some(first) = rest.chars().next() {
        if in_text {
            let escaped = first == '\\';
            let taken = if escaped {
                rest.char_indices()
                    .nth(2)
                    .map_or(rest.len(), |(index, _)| index)
            } else {
                first.len_utf8()
            };
            out.push_str(&rest[..taken]);
            rest = &rest[taken..];
            in_text = first != '"';
            continue;
        }
        if let Some(word) = ["-Infinity", "Infinity", "NaN"]
            .iter()
            .find(|word| rest.starts_with(**word))
        {
            out.push('"');
            out.push_str(word);
            out.push('"');
            rest = &rest[word.len()..];
            continue;
        }
        in_text = first == '"';
        out.push(first);
        rest = &rest[first.len_utf8()..];
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{Entry, Field};

    #[test]
    fn bare_words_become_the_text_of_their_field() {
        let json = r#"{"name": "a \"NaN\" b", "crop": {"target_head_g": NaN}, "container": {"height_cm": -Infinity}}"#;
        let plan = Plan::from_json(json).expect("readable");
        assert_eq!(plan.name, "a \"NaN\" b");
        assert_eq!(Field::TargetHead.entry(&plan), Some(&Entry::from("NaN")));
        assert_eq!(Field::Height.entry(&plan), Some(&Entry::from("-Infinity")));
    }

    #[test]
    fn what_is_no_json_says_where() {
        let problems = Plan::from_json("{\n  \"name\": }").expect_err("a syntax error");
        assert_eq!(
            problems[0].kind,
            ProblemKind::NotAPlan {
                line: 2,
                column: 11
            }
        );
    }
}
