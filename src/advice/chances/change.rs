//! What a change is that makes a crop sure, and what it does to a plan.

use serde::Serialize;

use crate::catalog::keyed::keyed;
use crate::plan::{Entry, Field, Plan};

/// The share of seasons that counts as sure.
pub const WANTED: f64 = 0.95;

keyed! {
    /// What can be changed.
    ChangeKind {
        /// The fill mark, higher.
        FillDepth = "fill_depth",
        /// More containers for the same plants.
        Containers = "containers",
        /// Fewer plants over one container.
        Plants = "plants",
        /// A stronger solution.
        Strength = "strength",
        /// Less light, or more.
        Shade = "shade",
        /// Another planting date in the same climate.
        PlantingDate = "planting_date",
    }
}

impl ChangeKind {
    /// What a change of this kind can better.
    pub const fn aim(self) -> Aim {
        match self {
            Self::Strength => Aim::Feeds,
            _ => Aim::Lasts,
        }
    }
}

/// What a change is to bring about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Aim {
    /// The solution lasts to harvest.
    Lasts,
    /// The nutrients of the mixture last to harvest.
    Feeds,
}

/// A new entry for a field of the plan.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Edit {
    /// The field.
    pub field: Field,
    /// What to write into it.
    pub entry: Entry,
}

/// A change that makes the crop sure.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Change {
    /// What is changed.
    pub kind: ChangeKind,
    /// What it brings about.
    pub aim: Aim,
    /// The fields to write.
    pub edits: Vec<Edit>,
    /// How large the change is beside what stands there: of a date, beside the days to harvest.
    pub relative: f64,
    /// Share of the same seasons that then last, or are fed.
    pub chance: f64,
}

/// Why no change of a kind is offered.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Reason {
    /// The crop is sure as it is.
    Sure,
    /// This plan has no such thing to change.
    NotOfThisPlan,
    /// No step within the limits is enough.
    NotEnough,
}

/// A kind of change that is not offered.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct LeftOut {
    /// What would be changed.
    pub kind: ChangeKind,
    /// Why it is not.
    pub reason: Reason,
}

/// What would make the crop sure.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ChangesOutcome {
    /// The share of seasons that counts as sure.
    pub wanted: f64,
    /// The smallest change of each kind, the relatively smallest first.
    pub offered: Vec<Change>,
    /// The kinds that are not offered.
    pub left_out: Vec<LeftOut>,
}

impl Change {
    /// The plan with this change made.
    pub fn applied(&self, plan: &Plan) -> Plan {
        edited(plan, &self.edits)
    }
}

pub(super) fn edit(field: Field, value: f64) -> Edit {
    Edit {
        field,
        entry: Entry::from(value),
    }
}

pub(super) fn edited(plan: &Plan, edits: &[Edit]) -> Plan {
    let mut plan = plan.clone();
    for edit in edits {
        if let Some(entry) = edit.field.entry_mut(&mut plan) {
            entry.clone_from(&edit.entry);
        }
    }
    plan
}
