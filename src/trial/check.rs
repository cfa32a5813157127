//! From a trial as it was entered to one that can be worked out, or to all that is wrong with it.

use crate::plan::{Dimension, Entry, NotRead, ProblemKind, UnitSystem};

use super::layout::{Unit, draw};
use super::model::{Design, Name, Trial, VERSION};
use super::problem::{TrialField, TrialProblem, TrialProblemKind};
use crate::catalog::Keyed;

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

/// Reads entries and gathers problems on the way.
struct Reader {
    problems: Vec<TrialProblem>,
}

impl Reader {
    fn problem(&mut self, field: TrialField, kind: TrialProblemKind) {
        self.problems.push(TrialProblem { field, kind });
    }

    fn value(&mut self, field: TrialField, kind: ProblemKind) {
        self.problem(field, TrialProblemKind::Value(kind));
    }

    /// A number within bounds; an empty entry is `missing`, or a problem where there is none.
    fn number(
        &mut self,
        field: TrialField,
        entry: &Entry,
        (dimension, low, high): (Dimension, f64, f64),
        missing: Option<f64>,
    ) -> Option<f64> {
        let value = match entry {
            Entry::Number(value) => *value,
            _ if entry.is_blank() && missing.is_some() => return missing,
            Entry::Text(text) => match dimension.read(text, UnitSystem::Metric) {
                Ok(value) => value,
                Err(reason) => {
                    self.value(field, not_read(reason, text));
                    return None;
                }
            },
        };
        if !(low..=high).contains(&value) {
            self.value(
                field,
                ProblemKind::OutOfRange {
                    got: value,
                    low,
                    high,
                },
            );
            return None;
        }
        Some(value)
    }

    /// A whole number within bounds.
    fn whole(
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
    fn count(
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
    fn share(
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

    fn size(&mut self, field: TrialField, got: usize, low: usize, high: usize) -> bool {
        let fits = (low..=high).contains(&got);
        if !fits {
            self.problem(field, TrialProblemKind::Count { got, low, high });
        }
        fits
    }
}

pub(super) fn not_read(reason: NotRead, text: &str) -> ProblemKind {
    let got = text.to_owned();
    match reason {
        NotRead::Empty => ProblemKind::Missing,
        NotRead::NotANumber => ProblemKind::NotANumber { got },
        NotRead::UnknownUnit => ProblemKind::UnknownUnit { got },
        NotRead::CommaOrThousands => ProblemKind::CommaOrThousands { got },
        NotRead::TooLarge => ProblemKind::TooLarge { got },
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

fn treatment_named(
    reader: &mut Reader,
    field: TrialField,
    name: &Name,
    names: &[String],
) -> Option<usize> {
    let found = names.iter().position(|it| it == name.text());
    if found.is_none() {
        let got = name.text().to_owned();
        if got.is_empty() {
            reader.value(field, ProblemKind::Missing);
        } else {
            reader.problem(field, TrialProblemKind::UnknownTreatment { got });
        }
    }
    found
}

/// A layout that stands in the document.
fn given(
    trial: &Trial,
    reader: &mut Reader,
    design: Design,
    names: &[String],
    columns: u32,
) -> Option<(Vec<Unit>, Vec<String>)> {
    let most = names.len() * MOST_REPLICATES as usize;
    if !reader.size(TrialField::Units, trial.units.len(), names.len(), most) {
        return None;
    }
    let mut units: Vec<Unit> = Vec::new();
    let mut blocks: Vec<String> = Vec::new();
    let mut seen = std::collections::BTreeSet::new();
    for (index, line) in trial.units.iter().enumerate() {
        let name = line.unit.text().to_owned();
        if name.is_empty() {
            reader.value(TrialField::UnitName(index), ProblemKind::Missing);
        } else if !seen.insert(name.clone()) {
            reader.problem(
                TrialField::UnitName(index),
                TrialProblemKind::Repeated { got: name.clone() },
            );
        }
        let treatment = treatment_named(
            reader,
            TrialField::UnitTreatment(index),
            &line.treatment,
            names,
        );
        let block = match (design, line.block.text()) {
            (Design::Randomised, _) => "",
            (Design::Blocks, "") => {
                reader.value(TrialField::UnitBlock(index), ProblemKind::Missing);
                ""
            }
            (Design::Blocks, block) => block,
        };
        let block = blocks.iter().position(|it| it == block).unwrap_or_else(|| {
            blocks.push(block.to_owned());
            blocks.len() - 1
        });
        let place = u32::try_from(index).unwrap_or_default();
        let row = reader.count(
            TrialField::UnitRow(index),
            &line.row,
            1000,
            Some(place / columns + 1),
        );
        let column = reader.count(
            TrialField::UnitColumn(index),
            &line.column,
            1000,
            Some(place % columns + 1),
        );
        if let (Some(treatment), Some(row), Some(column)) = (treatment, row, column) {
            units.push(Unit {
                unit: name,
                treatment,
                block,
                row,
                column,
            });
        }
    }
    for (index, name) in names.iter().enumerate() {
        if reader.problems.is_empty() && !units.iter().any(|unit| unit.treatment == index) {
            let got = name.clone();
            reader.problem(
                TrialField::Units,
                TrialProblemKind::UnknownTreatment { got },
            );
        }
    }
    Some((units, blocks))
}

/// Records by unit, and heads by treatment where no unit was written down.
fn records(
    trial: &Trial,
    reader: &mut Reader,
    names: &[String],
    units: &[Unit],
    heads_per_unit: Option<u32>,
) -> (Vec<Recorded>, Vec<Vec<f64>>) {
    let mut recorded = vec![Recorded::default(); units.len()];
    let mut without_unit = vec![Vec::new(); names.len()];
    if !reader.size(TrialField::Records, trial.records.len(), 0, MOST_RECORDS) {
        return (recorded, without_unit);
    }
    for (index, record) in trial.records.iter().enumerate() {
        let heads: Vec<Option<f64>> = record
            .heads_g
            .iter()
            .enumerate()
            .map(|(head, entry)| {
                if entry.is_blank() {
                    return None;
                }
                let field = TrialField::RecordHead(index, head);
                reader.number(field, entry, (Dimension::Mass, 0.1, 20_000.0), None)
            })
            .collect();
        let water = if record.water_l.is_blank() {
            None
        } else {
            let field = TrialField::RecordWater(index);
            reader.number(
                field,
                &record.water_l,
                (Dimension::Volume, 0.001, 1e6),
                None,
            )
        };
        let name = record.unit.text();
        if name.is_empty() {
            let field = TrialField::RecordTreatment(index);
            if record.treatment.text().is_empty() {
                reader.value(TrialField::RecordUnit(index), ProblemKind::Missing);
            } else if let Some(treatment) = treatment_named(reader, field, &record.treatment, names)
            {
                without_unit[treatment].extend(heads.into_iter().flatten());
            }
            continue;
        }
        let Some(place) = units.iter().position(|unit| unit.unit == name) else {
            let got = name.to_owned();
            reader.problem(
                TrialField::RecordUnit(index),
                TrialProblemKind::UnknownUnit { got },
            );
            continue;
        };
        let laid_out = &names[units[place].treatment];
        let named = record.treatment.text();
        if !named.is_empty() && named != laid_out {
            reader.problem(
                TrialField::RecordTreatment(index),
                TrialProblemKind::OtherTreatment {
                    got: named.to_owned(),
                    laid_out: laid_out.clone(),
                },
            );
        }
        let own = &mut recorded[place];
        own.heads.extend(heads);
        if let Some(most) = heads_per_unit {
            let (got, high) = (own.heads.len(), most as usize);
            if !reader.size(TrialField::RecordHeads(index), got, 0, high) {
                own.heads.truncate(high);
            }
        }
        match (own.water, water) {
            (Some(before), Some(got)) if (before - got).abs() > 1e-9 * before => {
                reader.problem(
                    TrialField::RecordWater(index),
                    TrialProblemKind::WaterTwice { got, before },
                );
            }
            (None, Some(_)) => own.water = water,
            _ => {}
        }
    }
    (recorded, without_unit)
}
