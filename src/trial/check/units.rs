//! The units of a trial and what was recorded of each.

use crate::plan::{Dimension, ProblemKind};

use super::super::layout::Unit;
use super::super::problem::{TrialField, TrialProblemKind};
use super::reader::Reader;
use super::{MOST_RECORDS, MOST_REPLICATES, Recorded};
use crate::plan::trial::{Design, Name, Trial};

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
pub(super) fn given(
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
pub(super) fn records(
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
