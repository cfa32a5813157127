//! Plans as they are kept in a browser and as they travel in files.
//!
//! Here stands the store that holds them; writing and reading files stand apart.

mod files;

pub use files::{notebooks_from_file, plans_from_file, plans_to_file, trials_from_file};

use serde::{Deserialize, Serialize};

use super::members::members;
use super::model::{LabelPlan, Plan, SaltLine, VERSION as PLAN_VERSION};
use super::notebook::{NOTEBOOK_VERSION, Notebook};
use super::trial::{Trial, VERSION as TRIAL_VERSION};
use super::{Entry, UnitSystem};
use crate::catalog::Keyed;

/// Version of the stored list and of files; the plans in them carry their own.
const VERSION: u32 = 1;
/// What a file of plans says of itself.
const KIND: &str = "slackwater.plans";
/// The longest file that is read, in bytes; a browser keeps no more either.
pub const LONGEST_FILE: usize = 5_000_000;

/// One kept plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Kept {
    /// Number that is unique on this device; 0 in files.
    #[serde(default)]
    pub id: u32,
    /// The plan.
    pub plan: Plan,
}

/// All that is kept on a device, or in a file.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Store {
    /// What it is: only in files.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub kind: String,
    /// Version of this list.
    pub version: u32,
    /// The plans.
    pub plans: Vec<Kept>,
    /// The plan that was open.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub open: Option<u32>,
    /// Key of the unit system.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub units: String,
    /// Blends and salts that all plans share.
    #[serde(skip_serializing_if = "Materials::is_empty")]
    pub materials: Materials,
    /// The trials.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub trials: Vec<KeptTrial>,
    /// The notebooks of crops under way.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub notebooks: Vec<KeptNotebook>,
}

members! {
/// One kept trial.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct KeptTrial {
    /// Number that is unique among the trials of this device; 0 in files.
    pub id: u32,
    /// The trial.
    pub trial: Trial,
}

/// One kept notebook.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct KeptNotebook {
    /// Number that is unique among the notebooks of this device; 0 in files.
    pub id: u32,
    /// The notebook.
    pub notebook: Notebook,
}

/// Blends and salts of the grower's own, which all plans share.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Materials {
    /// Blends, by the label of their bag.
    pub blends: Vec<KeptBlend>,
    /// Salts, by their formula.
    pub salts: Vec<SaltLine>,
}

/// A blend that was kept.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct KeptBlend {
    /// The grower's name for it.
    pub name: String,
    /// Its label.
    pub label: LabelPlan,
    /// Price of a kilogram.
    pub price_per_kg: Entry,
}
}

impl Materials {
    fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// Why a text holds no plans that can be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum FileError {
    /// It is not JSON, or not of this kind.
    NotPlans {
        /// Line of the first fault, from 1; 0 where unknown.
        line: usize,
    },
    /// Longer than a file of plans can be.
    TooLong,
    /// Written by a later version.
    NewerVersion,
}

impl Store {
    /// The chosen units, if they were chosen.
    pub fn unit_system(&self) -> Option<UnitSystem> {
        UnitSystem::from_key(&self.units)
    }

    /// Reads a stored text.
    ///
    /// # Errors
    /// [`FileError`]. A later version may hold what would be lost when it is written again, so it
    /// is not read.
    pub fn read(text: &str) -> Result<Self, FileError> {
        /// The versions alone, which a later version still writes.
        #[derive(Deserialize)]
        struct Versions {
            #[serde(default)]
            version: u32,
        }
        if text.len() > LONGEST_FILE {
            return Err(FileError::TooLong);
        }
        let not_plans = |error: serde_json::Error| FileError::NotPlans { line: error.line() };
        // A list would be taken for the members of a store in their order.
        if !text.trim_start().starts_with('{') {
            return Err(FileError::NotPlans { line: 1 });
        }
        let Versions { version } = serde_json::from_str(text).map_err(not_plans)?;
        if version > VERSION {
            return Err(FileError::NewerVersion);
        }
        let store: Self = serde_json::from_str(text).map_err(not_plans)?;
        if store
            .plans
            .iter()
            .any(|kept| kept.plan.version > PLAN_VERSION)
            || store
                .trials
                .iter()
                .any(|kept| kept.trial.version > TRIAL_VERSION)
            || store
                .notebooks
                .iter()
                .any(|kept| kept.notebook.version > NOTEBOOK_VERSION)
        {
            return Err(FileError::NewerVersion);
        }
        Ok(store)
    }

    /// Writes the text to store.
    pub fn write(&self) -> String {
        let now = Self {
            version: VERSION,
            ..self.clone()
        };
        // Texts, finite numbers and lists of them always serialise.
        serde_json::to_string(&now).unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Example;

    #[test]
    fn a_stored_text_survives() {
        let store = Store {
            version: VERSION,
            plans: vec![Kept {
                id: 7,
                plan: Example::Bottle.plan(),
            }],
            open: Some(7),
            units: "us".to_owned(),
            ..Store::default()
        };
        assert_eq!(Store::read(&store.write()), Ok(store));
        assert_eq!(Store::read("{}"), Ok(Store::default()));
    }
}
