//! The trial itself: what is compared, how it is laid out, and what was recorded, as entered.

use serde::{Deserialize, Serialize};

use crate::catalog::keyed::keyed;
use crate::plan::{Entry, Pick, Plan, quote_bare_words};

use super::problem::{TrialField, TrialProblem, TrialProblemKind};

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

/// A whole trial.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
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

/// One of the things compared.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Treatment {
    /// Its name on labels and in the report.
    pub name: String,
    /// What differs and is no field of the plan, such as a cultivar, in the grower's words.
    pub note: String,
    /// What differs from the plan; empty for the plan itself.
    pub changes: Vec<Change>,
}

/// One field of the plan with another value.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Change {
    /// Path of the field in the plan document, such as `container.pipe`.
    pub field: String,
    /// What stands there in this treatment.
    pub value: Entry,
}

/// One independent unit: a container, tank or group of boards that shares its solution.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
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
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
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

/// A short text; in a document a bare number counts as its text.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(transparent)]
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

impl<'de> Deserialize<'de> for Name {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Ok(Self(match Entry::deserialize(deserializer)? {
            Entry::Text(text) => text,
            Entry::Number(value) => value.to_string(),
        }))
    }
}

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
