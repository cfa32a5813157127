//! What stands under a field: what is wrong with it, else what is to be said of it. Each field follows
//! a signal of its own, so that a change of one is no work for all others.

use std::collections::BTreeMap;

use leptos::prelude::*;

use super::{App, Latest};
use crate::advice::{Fact, Finding};
use crate::plan::{AcidChoice, Entry, Field, Problem};

/// What is to be said of a field that is not wrong.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Remark {
    /// It was left empty, and this usual value stands in.
    Assumed(f64),
    /// Its value lies outside these usual bounds.
    Unusual(f64, f64),
}

/// What stands under a field.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Note {
    /// What is wrong.
    pub problem: Option<Problem>,
    /// What else is to be said.
    pub remark: Option<Remark>,
}

/// A solution without acid whose pH is too high.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AcidIsWanted {
    /// The pH.
    pub ph: f64,
    /// The lowest that suits.
    pub low: f64,
    /// The highest that suits.
    pub high: f64,
    /// The share of rain in the water, per cent, that mends it too.
    pub rain_pct: Option<f64>,
}

/// The notes of all fields that were ever shown.
pub type Notes = StoredValue<BTreeMap<Field, ArcRwSignal<Note>>>;

fn unusual(finding: &Finding) -> Option<(Field, Remark)> {
    match finding.fact {
        Fact::Unusual {
            field, low, high, ..
        } => Some((field, Remark::Unusual(low, high))),
        _ => None,
    }
}

impl App {
    /// The note of a field.
    pub fn note_of(self, field: Field) -> Note {
        let known = self.notes.with_value(|notes| notes.get(&field).cloned());
        let signal = known.unwrap_or_else(|| {
            let note = ArcRwSignal::new(untrack(|| self.notes_now()(field)));
            self.notes.update_value(|notes| {
                notes.insert(field, note.clone());
            });
            note
        });
        signal.get()
    }

    /// The first problem of a field.
    pub fn problem_of(self, field: Field) -> Option<Problem> {
        self.note_of(field).problem
    }

    /// Says what is to be said of each field now.
    fn notes_now(self) -> impl Fn(Field) -> Note {
        let problems = self.problems.get();
        let findings: BTreeMap<Field, Remark> = if problems.is_empty() {
            let of = |outcome: &Latest| {
                let outcome = outcome.as_ref()?;
                Some(outcome.findings.iter().filter_map(unusual).collect())
            };
            self.outcome.with(of).unwrap_or_default()
        } else {
            BTreeMap::new()
        };
        move |field| Note {
            problem: problems
                .iter()
                .find(|problem| problem.field == Some(field))
                .cloned(),
            remark: self
                .assumed(field)
                .map(Remark::Assumed)
                .or_else(|| findings.get(&field).copied()),
        }
    }

    /// Keeps the notes as the plan is.
    pub(super) fn note_from_now_on(self) {
        Effect::new(move |_| {
            self.plan.track();
            let now = self.notes_now();
            let notes = self.notes.get_value();
            for (field, signal) in notes {
                let note = untrack(|| now(field));
                if signal.with_untracked(|before| *before != note) {
                    signal.set(note);
                }
            }
        });
    }

    /// What a solution without acid reads, where that is too high.
    pub fn acid_is_wanted(self) -> Option<AcidIsWanted> {
        let none = self.plan.with(|plan| {
            plan.as_ref().and_then(|plan| plan.fertilizer.acid.known()) == Some(AcidChoice::None)
        });
        let of = |outcome: &Latest| {
            let findings = &outcome.as_ref()?.findings;
            findings.iter().find_map(|finding| match finding.fact {
                Fact::Ph { ph, low, high } if ph > high => Some(AcidIsWanted {
                    ph,
                    low,
                    high,
                    rain_pct: finding.mends.iter().find_map(|mend| match mend.value {
                        Entry::Number(value) if mend.field == Field::RainShare => Some(value),
                        _ => None,
                    }),
                }),
                _ => None,
            })
        };
        self.listed_with(of).filter(|_| none)
    }
}
