//! A crop under way: what the grower reads off it, as it was entered, and the check of it.

mod check;
mod csv;

pub use check::{
    Harvested, NotebookProblem, NotebookRefusal, Observed, Place, ReadingColumn, SoundNotebook,
    check_notebook,
};
pub use csv::{CsvKind, CsvProblem, TableProblem, readings_from_csv, readings_to_csv};

use super::members::members;
use super::{Entry, Pick, Plan, ProblemKind};
use crate::catalog::keyed::keyed;

/// The version of the notebook document that this program writes.
pub const NOTEBOOK_VERSION: u32 = 1;

keyed! {
    /// From where a level was measured.
    LevelFrom {
        /// Down from the rim of the container.
        Rim = "rim",
        /// Down from the fill mark; above it counts negative.
        Mark = "mark",
    }
}

members! {
/// A crop under way.
#[derive(Clone, Debug, PartialEq)]
pub struct Notebook {
    /// Version of the document.
    pub version: u32,
    /// The plan that the crop was planted by, as it was that day.
    pub plan: Plan,
    /// Date of planting, year-month-day; empty for the plan's own.
    pub planted: Entry,
    /// What was read.
    pub readings: Vec<Reading>,
    /// What was cut.
    pub harvest: Vec<Cut>,
    /// Whether the crop is over.
    pub closed: bool,
}

/// One reading; what was not read stays empty.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Reading {
    /// A date, year-month-day, or days since planting.
    pub date: Entry,
    /// Number of the container, from 1; empty for the group.
    pub container: Entry,
    /// How far the surface lies below the rim or the fill mark, cm, before anything is added.
    pub level_cm: Entry,
    /// From where; empty for the rim.
    pub level_from: Pick<LevelFrom>,
    /// Electrical conductivity at 25 °C.
    pub ec_ms_per_cm: Entry,
    /// Temperature of the solution.
    pub temperature_c: Entry,
    /// What was added to one container after the reading, L.
    pub added_l: Entry,
    /// The grower's words.
    pub note: String,
}

/// Heads cut on one day.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Cut {
    /// A date, year-month-day, or days since planting.
    pub date: Entry,
    /// Number of the container, from 1; empty for the group.
    pub container: Entry,
    /// How many heads.
    pub heads: Entry,
    /// Their fresh mass together, g.
    pub mass_g: Entry,
}
}

impl Default for Notebook {
    fn default() -> Self {
        Self {
            version: NOTEBOOK_VERSION,
            plan: Plan::default(),
            planted: Entry::default(),
            readings: Vec::new(),
            harvest: Vec::new(),
            closed: false,
        }
    }
}

impl Reading {
    /// The entry of a column; `None` for the choice and the note.
    pub fn entry_mut(&mut self, column: ReadingColumn) -> Option<&mut Entry> {
        Some(match column {
            ReadingColumn::Date => &mut self.date,
            ReadingColumn::Container => &mut self.container,
            ReadingColumn::Level => &mut self.level_cm,
            ReadingColumn::Conductivity => &mut self.ec_ms_per_cm,
            ReadingColumn::Temperature => &mut self.temperature_c,
            ReadingColumn::Added => &mut self.added_l,
            ReadingColumn::LevelFrom | ReadingColumn::Note => return None,
        })
    }
}

impl Notebook {
    /// Begins a notebook for a plan.
    pub fn begin(plan: &Plan) -> Self {
        Self {
            plan: plan.clone(),
            ..Self::default()
        }
    }

    /// Reads a notebook document. A field of a wrong kind is kept as it came and judged by
    /// [`check_notebook`].
    ///
    /// # Errors
    /// That the text is no notebook, with line and column; or one of a later version.
    ///
    /// ```
    /// use slackwater::plan::{Example, notebook::Notebook};
    /// let notebook = Notebook::begin(&Example::Bottle.plan());
    /// assert_eq!(Notebook::from_json(&notebook.to_json()), Ok(notebook));
    /// ```
    pub fn from_json(text: &str) -> Result<Self, NotebookProblem> {
        let whole = |kind| NotebookProblem {
            place: Place::Document,
            kind,
        };
        // A list would be taken for the members of a notebook in their order.
        if text.trim_start().starts_with('[') {
            return Err(whole(ProblemKind::NotAPlan { line: 1, column: 1 }));
        }
        let notebook: Self = serde_json::from_str(text).map_err(|error| {
            whole(ProblemKind::NotAPlan {
                line: error.line(),
                column: error.column(),
            })
        })?;
        if notebook.version > NOTEBOOK_VERSION {
            return Err(whole(ProblemKind::NewerVersion {
                got: notebook.version,
                supported: NOTEBOOK_VERSION,
            }));
        }
        Ok(notebook)
    }

    /// Writes the notebook document.
    pub fn to_json(&self) -> String {
        // Texts, finite numbers and lists of them always serialise.
        serde_json::to_string_pretty(self).unwrap_or_default()
    }
}
