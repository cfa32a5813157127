//! What is wrong with a trial: typed, naming the field, for the page to word.

use serde::Serialize;
use serde::ser::Serializer;

use crate::plan::{Entry, Problem, ProblemKind};

use crate::plan::trial::Trial;

/// A field of a trial.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum TrialField {
    /// The document as a whole.
    Document,
    /// The plan.
    Plan,
    /// The treatments together.
    Treatments,
    /// The name of a treatment.
    TreatmentName(usize),
    /// A change of a treatment.
    TreatmentChange(usize, usize),
    /// The design.
    Design,
    /// Units of each treatment.
    Replicates,
    /// Heads of a unit.
    HeadsPerUnit,
    /// Units side by side.
    Columns,
    /// Where chance begins.
    Seed,
    /// Confidence.
    Confidence,
    /// Power.
    Power,
    /// The difference to be seen.
    Difference,
    /// Spread from unit to unit.
    UnitSpread,
    /// Spread from head to head.
    HeadSpread,
    /// The units together.
    Units,
    /// The name of a unit.
    UnitName(usize),
    /// The treatment of a unit.
    UnitTreatment(usize),
    /// The block of a unit.
    UnitBlock(usize),
    /// The row in which a unit stands.
    UnitRow(usize),
    /// The column in which a unit stands.
    UnitColumn(usize),
    /// The records together.
    Records,
    /// The unit of a record.
    RecordUnit(usize),
    /// The treatment of a record.
    RecordTreatment(usize),
    /// The heads of a record together.
    RecordHeads(usize),
    /// One head of a record.
    RecordHead(usize, usize),
    /// The litres of a record.
    RecordWater(usize),
}

impl TrialField {
    /// The numeric fields of the trial itself, in the order of a form.
    pub const NUMBERS: [Self; 9] = [
        Self::Replicates,
        Self::HeadsPerUnit,
        Self::Columns,
        Self::Seed,
        Self::Difference,
        Self::Power,
        Self::Confidence,
        Self::UnitSpread,
        Self::HeadSpread,
    ];

    /// The path of the field in a trial document, such as `treatments[0].name`.
    pub fn path(self) -> String {
        let fixed = match self {
            Self::Document => "",
            Self::Plan => "plan",
            Self::Treatments => "treatments",
            Self::Design => "design",
            Self::Replicates => "replicates",
            Self::HeadsPerUnit => "heads_per_unit",
            Self::Columns => "columns",
            Self::Seed => "seed",
            Self::Confidence => "confidence_pct",
            Self::Power => "power_pct",
            Self::Difference => "difference_pct",
            Self::UnitSpread => "unit_spread_pct",
            Self::HeadSpread => "head_spread_pct",
            Self::Units => "units",
            Self::Records => "records",
            Self::TreatmentName(i) => return format!("treatments[{i}].name"),
            Self::TreatmentChange(i, j) => return format!("treatments[{i}].changes[{j}]"),
            Self::UnitName(i) => return format!("units[{i}].unit"),
            Self::UnitTreatment(i) => return format!("units[{i}].treatment"),
            Self::UnitBlock(i) => return format!("units[{i}].block"),
            Self::UnitRow(i) => return format!("units[{i}].row"),
            Self::UnitColumn(i) => return format!("units[{i}].column"),
            Self::RecordUnit(i) => return format!("records[{i}].unit"),
            Self::RecordTreatment(i) => return format!("records[{i}].treatment"),
            Self::RecordHeads(i) => return format!("records[{i}].heads_g"),
            Self::RecordHead(i, j) => return format!("records[{i}].heads_g[{j}]"),
            Self::RecordWater(i) => return format!("records[{i}].water_l"),
        };
        fixed.to_owned()
    }

    /// The entry of a numeric field, to be changed; `None` for the others, and where there is no
    /// such line.
    pub fn entry_mut(self, trial: &mut Trial) -> Option<&mut Entry> {
        Some(match self {
            Self::Replicates => &mut trial.replicates,
            Self::HeadsPerUnit => &mut trial.heads_per_unit,
            Self::Columns => &mut trial.columns,
            Self::Seed => &mut trial.seed,
            Self::Confidence => &mut trial.confidence_pct,
            Self::Power => &mut trial.power_pct,
            Self::Difference => &mut trial.difference_pct,
            Self::UnitSpread => &mut trial.unit_spread_pct,
            Self::HeadSpread => &mut trial.head_spread_pct,
            Self::UnitRow(i) => &mut trial.units.get_mut(i)?.row,
            Self::UnitColumn(i) => &mut trial.units.get_mut(i)?.column,
            Self::RecordHead(i, j) => trial.records.get_mut(i)?.heads_g.get_mut(j)?,
            Self::RecordWater(i) => &mut trial.records.get_mut(i)?.water_l,
            _ => return None,
        })
    }
}

/// One thing that keeps a trial from being worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct TrialProblem {
    /// The field to mend.
    pub field: TrialField,
    /// What is wrong with it.
    pub kind: TrialProblemKind,
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum TrialProblemKind {
    /// The text is no trial at all.
    NotATrial {
        /// Line of the first fault, from 1; 0 where unknown.
        line: usize,
        /// Column of the first fault, from 1; 0 where unknown.
        column: usize,
    },
    /// Too few or too many of something.
    Count {
        /// How many there are.
        got: usize,
        /// The least.
        low: usize,
        /// The most.
        high: usize,
    },
    /// The same name as an earlier line.
    Repeated {
        /// The name.
        got: String,
    },
    /// No unit of the layout has this name.
    UnknownUnit {
        /// What stands there.
        got: String,
    },
    /// No treatment has this name.
    UnknownTreatment {
        /// What stands there.
        got: String,
    },
    /// The record names another treatment than the layout gives its unit.
    OtherTreatment {
        /// What stands there.
        got: String,
        /// What the layout says.
        laid_out: String,
    },
    /// The litres of a unit stand in two records and do not agree.
    WaterTwice {
        /// Here.
        got: f64,
        /// There.
        before: f64,
    },
    /// A change without a plan to change.
    NoPlan,
    /// The plan has no single field at this path.
    UnknownField {
        /// What stands there.
        got: String,
    },
    /// The plan, with the changes of a treatment, cannot be worked out.
    PlanProblems {
        /// Its own problems.
        problems: Vec<Problem>,
    },
    /// A fault that a field of a plan can have too.
    #[serde(untagged)]
    Value(ProblemKind),
}

impl Serialize for TrialProblem {
    /// `{"field": "replicates", "kind": "out_of_range", "got": …, "low": …, "high": …}`
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Flat<'a> {
            field: String,
            #[serde(flatten)]
            kind: &'a TrialProblemKind,
        }
        Flat {
            field: self.field.path(),
            kind: &self.kind,
        }
        .serialize(serializer)
    }
}
