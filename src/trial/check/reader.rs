//! Reads entries one by one and gathers every problem on the way.

use crate::plan::{Dimension, Entry, ProblemKind, within};

use super::super::problem::{TrialField, TrialProblem, TrialProblemKind};

/// Reads entries and gathers problems on the way.
pub(super) struct Reader {
    pub(super) problems: Vec<TrialProblem>,
}

impl Reader {
    pub(super) fn problem(&mut self, field: TrialField, kind: TrialProblemKind) {
        self.problems.push(TrialProblem { field, kind });
    }

    pub(super) fn value(&mut self, field: TrialField, kind: ProblemKind) {
        self.problem(field, TrialProblemKind::Value(kind));
    }

    /// A number within bounds; an empty entry is `missing`, or a problem where there is none.
    pub(super) fn number(
        &mut self,
        field: TrialField,
        entry: &Entry,
        (dimension, low, high): (Dimension, f64, f64),
        missing: Option<f64>,
    ) -> Option<f64> {
        if entry.is_blank() && missing.is_some() {
            return missing;
        }
        match within(entry, dimension, low, high) {
            Ok(value) => Some(value),
            Err(kind) => {
                self.value(field, kind);
                None
            }
        }
    }

    /// A whole number within bounds.
    pub(super) fn whole(
        &mut self,
        field: TrialField,
        entry: &Entry,
        high: f64,
        missing: Option<f64>,
    ) -> Option<u64> {
        let low = if field == TrialField::Seed { 0.0 } else { 1.0 };
        let value = self.number(field, entry, (Dimension::Count, low, high), missing)?;
        if value.fract() != 0.0 {
            self.value(field, ProblemKind::NotWhole { got: value });
            return None;
        }
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "whole, and within bounds"
        )]
        Some(value as u64)
    }

    /// A whole number within bounds that fit 32 bits.
    pub(super) fn count(
        &mut self,
        field: TrialField,
        entry: &Entry,
        high: u32,
        missing: Option<u32>,
    ) -> Option<u32> {
        self.whole(field, entry, f64::from(high), missing.map(f64::from))
            .and_then(|value| u32::try_from(value).ok())
    }

    /// A percentage as a share.
    pub(super) fn share(
        &mut self,
        field: TrialField,
        entry: &Entry,
        low: f64,
        high: f64,
        empty: f64,
    ) -> Option<f64> {
        self.number(field, entry, (Dimension::Percent, low, high), Some(empty))
            .map(|percent| percent / 100.0)
    }

    pub(super) fn size(&mut self, field: TrialField, got: usize, low: usize, high: usize) -> bool {
        let fits = (low..=high).contains(&got);
        if !fits {
            self.problem(field, TrialProblemKind::Count { got, low, high });
        }
        fits
    }
}
