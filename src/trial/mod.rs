//! Small fair trials: lay out variants of a plan by chance, record heads and litres, and say what
//! the numbers allow to be said. Typed, with the figures behind each; no sentences.
//!
//! The independent unit is the container: heads of one container share its solution and are
//! subsamples. Nothing here lets them count as replicates.

mod check;
mod example;
mod layout;
mod measure;
mod model;
mod needed;
mod problem;
mod report;
mod report_table;
mod sheet;
mod table;
mod variants;

pub use crate::plan::trial::{Change, Design, Name, Record, Treatment, Trial, UnitLine, VERSION};
pub use check::{MOST_HEADS, MOST_RECORDS, MOST_REPLICATES, MOST_TREATMENTS};
pub use example::example;
pub use layout::Unit;
pub use needed::{Needed, Size};
pub use problem::{TrialField, TrialProblem, TrialProblemKind};
pub use report::{
    Analysis, CheckRow, Conclusion, LeftOut, MeanRow, Measure, MeasureReport, Method, Naive,
    PairRow, Refusal, Residual, Source, SpreadRow, TableRow, UnitValue, WelchRow,
};
pub use report_table::report_table;
pub use sheet::{joined, sheet};
pub use table::{TableProblem, TableProblemKind, TableRead, read_table, write_table};
pub use variants::{Expectations, Expected, expectations};

use serde::Serialize;

/// Everything that follows from a sound trial.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct TrialOutcome {
    /// The trial's name.
    pub name: String,
    /// How units are given to treatments.
    pub design: Design,
    /// What is compared.
    pub treatments: Vec<TreatmentOutcome>,
    /// Names of the blocks; one where there are none.
    pub blocks: Vec<String>,
    /// Where each unit stands and what it gets.
    pub units: Vec<Unit>,
    /// Heads of one unit.
    pub heads_per_unit: u32,
    /// How many replicates it takes.
    pub needed: Needed,
    /// Head mass and water; empty without records.
    pub reports: Vec<MeasureReport>,
}

/// One of the things compared.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct TreatmentOutcome {
    /// Its name.
    pub name: String,
    /// What differs and is no field of the plan.
    pub note: String,
    /// What its plan comes to; `None` without a plan.
    pub expected: Option<Expected>,
}

/// Works out a trial: the layout, what to expect, how many replicates it takes, and with records
/// what they allow to be said.
///
/// Pure: the same trial gives the same outcome on every device.
///
/// ```
/// let outcome = slackwater::trial::solve_trial(&slackwater::trial::example()).expect("sound");
/// assert_eq!(outcome.units.len(), 12);
/// ```
///
/// # Errors
/// All problems of the trial at once, each with the field to mend.
pub fn solve_trial(trial: &Trial) -> Result<TrialOutcome, Vec<TrialProblem>> {
    solve_expecting(trial, || expectations(trial))
}

/// As [`solve_trial`], where what the plans come to is known already: it takes nearly all of the time
/// and does not change with the records.
///
/// # Errors
/// As [`solve_trial`].
pub fn solve_expecting(
    trial: &Trial,
    expected: impl FnOnce() -> Expectations,
) -> Result<TrialOutcome, Vec<TrialProblem>> {
    let sound = check::check(trial)?;
    let expected = expected()?;
    let reports: Vec<MeasureReport> = if sound.has_records() {
        [Measure::HeadMass, Measure::WaterPerKg]
            .into_iter()
            .map(|measure| measure::report(&sound, measure))
            .collect()
    } else {
        Vec::new()
    };
    let needed = needed::needed(&sound, &reports);
    Ok(TrialOutcome {
        name: trial.name.clone(),
        design: sound.design,
        treatments: sound
            .names
            .into_iter()
            .zip(&trial.treatments)
            .zip(expected)
            .map(|((name, treatment), expected)| TreatmentOutcome {
                name,
                note: treatment.note.trim().to_owned(),
                expected,
            })
            .collect(),
        blocks: sound.blocks,
        units: sound.units,
        heads_per_unit: sound.heads_per_unit,
        needed,
        reports,
    })
}
