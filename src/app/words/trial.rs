//! The words of a trial: what is compared, how it is laid out, what is recorded.

use super::choices::Called;
use super::say::*;
use super::{label, rounded, show, symbol};
use crate::catalog::Keyed;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::crops::CropKind;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::PipeChoice;
use crate::plan::trial::{Change, Treatment};
use crate::plan::{Dimension, Entry, Field, UnitSystem};
use crate::trial::{Size, TrialField, TrialOutcome, Unit};

/// The name of a trial of a plan.
pub fn trial_of(plan: &str) -> String {
    named_trial(&super::or_unnamed(plan))
}

/// The name of a trial, or what stands for it.
pub fn trial_or_unnamed(name: &str) -> String {
    let name = name.trim();
    if name.is_empty() {
        unnamed_trial()
    } else {
        name
    }
    .to_owned()
}

/// A trial in the list of what a file holds.
pub fn trial_in_file(name: &str) -> String {
    listed_trial(&trial_or_unnamed(name))
}

/// What a variant is called in drawings, beside its name.
pub fn letter(treatment: usize) -> char {
    ('A'..='Z').nth(treatment).unwrap_or('?')
}

/// Name of a variant that has none yet.
pub fn variant(treatment: usize) -> String {
    lettered_variant(&letter(treatment).to_string())
}

/// Legend of a variant.
pub fn variant_of(treatment: usize, name: &str) -> String {
    if name == variant(treatment) {
        name.to_owned()
    } else {
        format!("{}: {name}", letter(treatment))
    }
}

/// The value that a variant gives to a field.
pub fn changed_value(field: Field, value: &Entry, units: UnitSystem) -> String {
    match (value, field.limits()) {
        (Entry::Number(value), Some(limits)) => show(limits.dimension, *value, units),
        (Entry::Number(value), None) => number(value),
        (Entry::Text(key), _) => match field {
            Field::Pipe => PipeChoice::from_key(key).map(|it| it.called(units)),
            Field::Foam => Foam::from_key(key).map(|it| it.called(units)),
            Field::CoverMaterial => CoverMaterial::from_key(key).map(|it| it.called(units)),
            Field::CropKind => CropKind::from_key(key).map(|it| it.called(units)),
            _ => None,
        }
        .unwrap_or_else(|| key.clone()),
    }
}

/// A change in words.
pub fn change_line(change: &Change, units: UnitSystem) -> String {
    let field = Field::ALL.iter().find(|it| it.path() == change.field);
    match field {
        Some(&field) => format!(
            "{}: {}",
            label(field),
            changed_value(field, &change.value, units)
        ),
        None => change.field.clone(),
    }
}

/// A variant in the report: its letter, its name, and how it differs.
pub fn variant_line(place: usize, treatment: &Treatment, units: UnitSystem) -> String {
    let mut line = variant_of(place, treatment.name.trim());
    let note = treatment.note.trim();
    let changes = treatment.changes.iter().map(|it| change_line(it, units));
    for more in changes.chain((!note.is_empty()).then(|| note.to_owned())) {
        line.push_str(". ");
        line.push_str(&more);
    }
    line
}

/// The two ways, in the order of their list.
pub fn designs() -> [&'static str; 2] {
    [designs_1(), designs_2()]
}

/// The label of a field of a trial.
pub fn trial_label(field: TrialField) -> &'static str {
    match field {
        TrialField::Replicates => trial_label_replicates(),
        TrialField::HeadsPerUnit => trial_label_heads_per_unit(),
        TrialField::Columns => trial_label_columns(),
        TrialField::Seed => trial_label_seed(),
        TrialField::Difference => trial_label_difference(),
        TrialField::Power => trial_label_power(),
        TrialField::Confidence => trial_label_confidence(),
        TrialField::UnitSpread => trial_label_unit_spread(),
        TrialField::HeadSpread => trial_label_head_spread(),
        _ => "",
    }
}

/// How to find what a field of a trial asks for, and what is allowed.
pub fn trial_hint(field: TrialField) -> String {
    match field {
        TrialField::Confidence => return trial_hint_confidence(&number(99.9)),
        TrialField::UnitSpread => return trial_hint_unit_spread(&number(0.1)),
        TrialField::Replicates => trial_hint_replicates(),
        TrialField::HeadsPerUnit => trial_hint_heads_per_unit(),
        TrialField::Columns => trial_hint_columns(),
        TrialField::Seed => trial_hint_seed(),
        TrialField::Difference => trial_hint_difference(),
        TrialField::Power => trial_hint_power(),
        TrialField::HeadSpread => trial_hint_head_spread(),
        _ => "",
    }
    .to_owned()
}

/// One container in words.
pub fn place(outcome: &TrialOutcome, unit: &Unit) -> String {
    let name = outcome
        .treatments
        .get(unit.treatment)
        .map_or("", |it| it.name.as_str());
    TrialPlace {
        container: &unit.unit,
        letter: &letter(unit.treatment).to_string(),
        name,
        row: &unit.row.to_string(),
        place: &unit.column.to_string(),
    }
    .text()
}

/// Name of a block; nothing where there are none.
pub fn block(outcome: &TrialOutcome, unit: &Unit) -> String {
    match outcome.blocks.get(unit.block) {
        Some(block) if outcome.blocks.len() > 1 => trial_block(block),
        _ => String::new(),
    }
}

/// Where a container stands, on its label.
pub fn row_and_place(unit: &Unit) -> String {
    RowAndPlace {
        row: &unit.row.to_string(),
        place: &unit.column.to_string(),
    }
    .text()
}

/// Under the box that a table is pasted into.
pub fn paste_hint(units: UnitSystem) -> String {
    paste_hint_in(units.key())
}

/// Its columns.
pub fn expected_heads() -> [&'static str; 7] {
    [
        expected_heads_1(),
        expected_heads_2(),
        expected_heads_3(),
        expected_heads_4(),
        expected_heads_5(),
        expected_heads_6(),
        expected_heads_7(),
    ]
}

/// What each variant is expected to bring.
pub fn expected_rows(outcome: &TrialOutcome, units: UnitSystem) -> Vec<Vec<String>> {
    let row = |(place, it): (usize, &crate::trial::TreatmentOutcome)| {
        let of = it.expected.as_ref()?;
        Some(vec![
            variant_of(place, &it.name),
            of.harvest_day
                .map_or_else(|| expected_not_reached().to_owned(), |day| day.to_string()),
            show(Dimension::Mass, of.head_g, units),
            show(Dimension::WaterUse, of.water_per_kg_l, units),
            show(Dimension::Volume, of.volume_l, units),
            show(Dimension::Length, of.depth_cm, units),
            show(Dimension::Length, of.gap_at_end_cm, units),
        ])
    };
    let all = outcome.treatments.iter().enumerate();
    all.filter_map(row).collect()
}

/// A percentage to two digits.
pub fn pct(value: f64) -> String {
    share_in_per_cent(&rounded(value, 2))
}

/// How many containers show the difference that matters, and what this trial can see.
pub fn needed_lines(outcome: &TrialOutcome) -> Vec<String> {
    let needed = &outcome.needed;
    let wanted = pct(needed.difference_pct);
    let chance = pct(needed.power_pct);
    let of = |size: &Size, from: &str| {
        let containers = size
            .replicates
            .map_or_else(|| "beyond".to_owned(), |many| many.to_string());
        let mut line = ContainersNeeded {
            from,
            units: &pct(size.unit_spread_pct),
            heads: &pct(size.head_spread_pct),
            containers: &containers,
            difference: &wanted,
            chance: &chance,
        }
        .text();
        if let (Some(power), Some(smallest)) = (size.power_as_planned_pct, size.detectable_pct) {
            line.push(' ');
            line += &TrialSees {
                power: &pct(power),
                chance: &chance,
                smallest: &pct(smallest),
            }
            .text();
        }
        line
    };
    let mut lines = vec![of(&needed.expected, "expected")];
    lines.extend(needed.recorded.iter().map(|size| of(size, "recorded")));
    lines.push(containers_count().to_owned());
    lines
}

/// Column of a head.
pub fn head_number(number: usize) -> String {
    numbered_head(&number.to_string())
}

/// Column of a measure with its unit.
pub fn with_unit(what: &str, dimension: Dimension, units: UnitSystem) -> String {
    format!("{what}, {}", symbol(dimension, units))
}

/// After a table was read.
pub fn taken_in(lines: usize, heads: usize, missing: usize, problems: usize) -> String {
    let mut text = TakenIn {
        lines: &lines.to_string(),
        heads: &heads.to_string(),
        missing: &missing.to_string(),
    }
    .text();
    if problems > 0 {
        text.push(' ');
        text += &not_taken_in(&problems.to_string());
    }
    text
}

/// What can be printed.
pub fn trial_papers() -> [&'static str; 3] {
    [trial_papers_1(), trial_papers_2(), trial_papers_3()]
}
/// The button for each.
pub fn trial_prints() -> [&'static str; 3] {
    [trial_prints_1(), trial_prints_2(), trial_prints_3()]
}
