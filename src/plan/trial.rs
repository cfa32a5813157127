//! A trial of variants of a plan: what is compared, how it is laid out, and what was recorded, as
//! entered. What follows from it is worked out in [`crate::trial`].

use super::members::{Member, Slot, Value, members};
use super::{Entry, Pick, Plan};
use crate::catalog::keyed::keyed;

/// The version of the trial document that this program writes.
pub const VERSION: u32 = 1;

keyed! {
    /// How the units are given to the treatments.
    Design {
        /// By chance among all units.
        Randomised = "randomised",
        /// By chance within each block, every treatment once in each.
        Blocks = "blocks",
    }
}

members! {
/// A whole trial.
#[derive(Clone, Debug, PartialEq)]
pub struct Trial {
    /// Version of the document.
    pub version: u32,
    /// The grower's name for the trial.
    pub name: String,
    /// The plan whose variants are compared, where there is one.
    pub plan: Option<Plan>,
    /// What is compared.
    pub treatments: Vec<Treatment>,
    /// How units are given to treatments.
    pub design: Pick<Design>,
    /// Units of each treatment; in blocks, the number of blocks.
    pub replicates: Entry,
    /// Heads of one unit; empty: those of the plan over one container.
    pub heads_per_unit: Entry,
    /// Units side by side where they stand; empty: one row for each block or replicate.
    pub columns: Entry,
    /// Where chance begins; the same seed gives the same layout.
    pub seed: Entry,
    /// Confidence of intervals and tests, per cent; empty: 95.
    pub confidence_pct: Entry,
    /// Chance with which a difference is to be seen, per cent; empty: 80.
    pub power_pct: Entry,
    /// The difference to be seen, per cent of the mean; empty: 20.
    pub difference_pct: Entry,
    /// Expected spread from unit to unit, per cent of the mean (standard deviation); empty: 10.
    pub unit_spread_pct: Entry,
    /// Expected spread from head to head within a unit, per cent of the mean; empty: 15.
    pub head_spread_pct: Entry,
    /// Where each unit stands and what it got; empty: drawn from the seed.
    pub units: Vec<UnitLine>,
    /// What was recorded.
    pub records: Vec<Record>,
}

/// One of the things compared.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Treatment {
    /// Its name on labels and in the report.
    pub name: String,
    /// What differs and is no field of the plan, such as a cultivar, in the grower's words.
    pub note: String,
    /// What differs from the plan; empty for the plan itself.
    pub changes: Vec<Change>,
}

/// One field of the plan with another value.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Change {
    /// Path of the field in the plan document, such as `container.pipe`.
    pub field: String,
    /// What stands there in this treatment.
    pub value: Entry,
}

/// One independent unit: a container, tank or group of boards that shares its solution.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct UnitLine {
    /// Its name, unlike that of any other.
    pub unit: Name,
    /// Name of its treatment.
    pub treatment: Name,
    /// Name of its block; empty where there are none.
    pub block: Name,
    /// Where it stands, counted from 1; empty: in the order of the list.
    pub row: Entry,
    /// Where it stands within the row, counted from 1.
    pub column: Entry,
}

/// Records of one unit, or a part of them: records with the same unit belong together.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Record {
    /// The unit.
    pub unit: Name,
    /// Its treatment; empty where the layout tells.
    pub treatment: Name,
    /// Fresh mass of each head, g; empty for one that is missing.
    pub heads_g: Vec<Entry>,
    /// Solution that the unit used from planting to harvest, L.
    pub water_l: Entry,
}
}

impl Default for Trial {
    fn default() -> Self {
        Self {
            version: VERSION,
            name: String::new(),
            plan: None,
            treatments: Vec::new(),
            design: Pick::default(),
            replicates: Entry::blank(),
            heads_per_unit: Entry::blank(),
            columns: Entry::blank(),
            seed: Entry::blank(),
            confidence_pct: Entry::blank(),
            power_pct: Entry::blank(),
            difference_pct: Entry::blank(),
            unit_spread_pct: Entry::blank(),
            head_spread_pct: Entry::blank(),
            units: Vec::new(),
            records: Vec::new(),
        }
    }
}

/// A short text; in a document a bare number counts as its text.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Name(pub String);

impl Name {
    /// Without spaces around it.
    pub fn text(&self) -> &str {
        self.0.trim()
    }
}

impl From<&str> for Name {
    fn from(text: &str) -> Self {
        Self(text.to_owned())
    }
}

impl Member for Name {
    fn value(&self) -> Value<'_> {
        self.0.value()
    }

    fn slot(&mut self) -> Slot<'_> {
        self.0.slot()
    }
}
