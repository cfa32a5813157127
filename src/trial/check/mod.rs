//! From a trial as it was entered to one that can be worked out, or to all that is wrong with it.

mod reader;
mod units;

use crate::catalog::Keyed;
use crate::plan::ProblemKind;

use super::layout::{Unit, draw};
use super::problem::{TrialField, TrialProblem, TrialProblemKind};
use crate::plan::trial::{Design, Trial, VERSION};
use reader::Reader;
use units::{given, records};

/// Most treatments: more cannot be told apart in a small trial.
pub const MOST_TREATMENTS: usize = 12;
/// Most units of one treatment.
pub const MOST_REPLICATES: u32 = 50;
/// Most heads of one unit.
pub const MOST_HEADS: u32 = 200;
/// Most records.
pub const MOST_RECORDS: usize = 10_000;

/// What was recorded of one unit.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Recorded {
    /// Fresh mass of each head, g; `None` for one that is missing.
    pub heads: Vec<Option<f64>>,
    /// Solution used, L.
    pub water: Option<f64>,
}

impl Recorded {
    /// The heads that were weighed, g.
    pub fn weighed(&self) -> Vec<f64> {
        self.heads.iter().copied().flatten().collect()
    }
}

/// A trial that can be worked out.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Sound {
    pub design: Design,
    pub names: Vec<String>,
    pub replicates: u32,
    pub heads_per_unit: u32,
    /// Error of intervals and tests, 0 to 1.
    pub alpha: f64,
    /// Chance wanted, 0 to 1.
    pub power: f64,
    /// Shares of the mean.
    pub difference: f64,
    pub unit_spread: f64,
    pub head_spread: f64,
    pub units: Vec<Unit>,
    pub blocks: Vec<String>,
    /// One for each unit.
    pub recorded: Vec<Recorded>,
    /// Heads of each treatment whose unit was not written down, g.
    pub without_unit: Vec<Vec<f64>>,
}

impl Sound {
    pub fn has_records(&self) -> bool {
        let any = |it: &Recorded| it.water.is_some() || it.heads.iter().any(Option::is_some);
        self.recorded.iter().any(any) || self.without_unit.iter().any(|own| !own.is_empty())
    }
}

/// Judges a trial field by field.
pub(super) fn check(trial: &Trial) -> Result<Sound, Vec<TrialProblem>> {
    let mut reader = Reader {
        problems: Vec::new(),
    };
    if trial.version > VERSION {
        reader.value(
            TrialField::Document,
            ProblemKind::NewerVersion {
                got: trial.version,
                supported: VERSION,
            },
        );
        return Err(reader.problems);
    }
    match read(trial, &mut reader) {
        Some(sound) if reader.problems.is_empty() => Ok(sound),
        _ => Err(reader.problems),
    }
}

fn read(trial: &Trial, reader: &mut Reader) -> Option<Sound> {
    let names = names(trial, reader);
    let design = match trial.design.known() {
        Some(design) => Some(design),
        None if trial.design.key().is_empty() => {
            reader.value(TrialField::Design, ProblemKind::Missing);
            None
        }
        None => {
            let got = trial.design.key().to_owned();
            let allowed = Design::ALL.iter().map(|it| it.key()).collect();
            reader.value(TrialField::Design, ProblemKind::NotAChoice { got, allowed });
            None
        }
    };
    let laid_out = !trial.units.is_empty();
    // Where the layout is given, it says how often each treatment stands there.
    let replicates = reader.count(
        TrialField::Replicates,
        &trial.replicates,
        MOST_REPLICATES,
        laid_out.then_some(1),
    );
    // Left empty, as many as the plan has over one container.
    let planned = || {
        let plan = crate::plan::check(trial.plan.as_ref()?).ok()?;
        Some(plan.crop.plants).filter(|plants| (1..=MOST_HEADS).contains(plants))
    };
    let heads = &trial.heads_per_unit;
    let planned = heads.is_blank().then(planned).flatten();
    let heads = reader.count(TrialField::HeadsPerUnit, heads, MOST_HEADS, planned);
    let side_by_side = u32::try_from(names.as_ref().map_or(1, Vec::len)).unwrap_or(1);
    let columns = reader.count(TrialField::Columns, &trial.columns, 100, Some(side_by_side));
    // Larger whole numbers have gaps in JSON.
    let seed = reader.whole(
        TrialField::Seed,
        &trial.seed,
        9_007_199_254_740_991.0,
        Some(1.0),
    );
    let confidence = reader.share(
        TrialField::Confidence,
        &trial.confidence_pct,
        50.0,
        99.9,
        95.0,
    );
    let power = reader.share(TrialField::Power, &trial.power_pct, 50.0, 99.0, 80.0);
    let difference = reader.share(
        TrialField::Difference,
        &trial.difference_pct,
        1.0,
        200.0,
        20.0,
    );
    let unit_spread = reader.share(
        TrialField::UnitSpread,
        &trial.unit_spread_pct,
        0.1,
        100.0,
        10.0,
    );
    let head_spread = reader.share(
        TrialField::HeadSpread,
        &trial.head_spread_pct,
        0.0,
        100.0,
        15.0,
    );
    let (names, design) = (names?, design?);
    let (units, blocks) = if laid_out {
        given(trial, reader, design, &names, columns?)?
    } else {
        let units = draw(design, names.len(), replicates? as usize, columns?, seed?);
        let blocks = match design {
            Design::Randomised => 1,
            Design::Blocks => replicates?,
        };
        (units, (1..=blocks).map(|block| block.to_string()).collect())
    };
    let (recorded, without_unit) = records(trial, reader, &names, &units, heads);
    let fewest = (0..names.len())
        .map(|t| units.iter().filter(|unit| unit.treatment == t).count())
        .min();
    Some(Sound {
        design,
        replicates: if laid_out {
            u32::try_from(fewest.unwrap_or_default()).unwrap_or(MOST_REPLICATES)
        } else {
            replicates?
        },
        heads_per_unit: heads?,
        alpha: 1.0 - confidence?,
        power: power?,
        difference: difference?,
        unit_spread: unit_spread?,
        head_spread: head_spread?,
        names,
        units,
        blocks,
        recorded,
        without_unit,
    })
}

/// Names of the treatments, each different.
fn names(trial: &Trial, reader: &mut Reader) -> Option<Vec<String>> {
    if !reader.size(
        TrialField::Treatments,
        trial.treatments.len(),
        2,
        MOST_TREATMENTS,
    ) {
        return None;
    }
    let mut names: Vec<String> = Vec::new();
    for (index, treatment) in trial.treatments.iter().enumerate() {
        let name = treatment.name.trim().to_owned();
        let field = TrialField::TreatmentName(index);
        if name.is_empty() {
            reader.value(field, ProblemKind::Missing);
        } else if names.contains(&name) {
            reader.problem(field, TrialProblemKind::Repeated { got: name.clone() });
        }
        names.push(name);
        if !treatment.changes.is_empty() && trial.plan.is_none() {
            reader.problem(
                TrialField::TreatmentChange(index, 0),
                TrialProblemKind::NoPlan,
            );
        }
    }
    Some(names)
}
