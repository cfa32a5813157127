//! What is compared, and how it is laid out.

use leptos::prelude::*;

use super::kept::{Bench, Shown, new_variant};
use super::places::places;
use crate::app::browser::dom::{Node, action, el};
use crate::app::forms::{Options, options};
use crate::app::parts::{choice, field, part, read, row, text_box};
use crate::app::words;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::crops::CropKind;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::PipeChoice;
use crate::plan::trial::{Change, Treatment, Trial};
use crate::plan::{Dimension, Entry, Field, UnitSystem, used_fields};
use crate::trial::{MOST_TREATMENTS, TrialField};

/// What is worth comparing and can differ from one container to the next. Air, light and shelter are
/// left out: whole benches share them.
const FACTORS: [Field; 17] = [
    Field::Pipe,
    Field::PipeCount,
    Field::PipeSpacing,
    Field::FillDepth,
    Field::TargetConductivity,
    Field::TargetNitrogen,
    Field::RecipeStrength,
    Field::SeedlingAge,
    Field::CropKind,
    Field::PlantsPerContainer,
    Field::SpacingAcross,
    Field::SpacingAlong,
    Field::PotImmersion,
    Field::Foam,
    Field::BoardThickness,
    Field::CoverMaterial,
    Field::CoverThickness,
];

/// What the variants differ in.
#[derive(Clone, Copy, PartialEq)]
enum Differs {
    /// In one field of the plan.
    Field(Field),
    /// In something that no plan knows.
    Own,
    /// In more than one thing, as the variants of a file may.
    Several,
}

fn differs(bench: Bench, trial: &Trial) -> Differs {
    let mut found = None;
    for treatment in &trial.treatments {
        let path = match &treatment.changes[..] {
            [] => continue,
            [change] => change.field.trim(),
            _ => return Differs::Several,
        };
        match found {
            None => found = Some(path),
            Some(before) if before == path => {}
            Some(_) => return Differs::Several,
        }
    }
    match (found, bench.factor.get()) {
        (Some(path), _) => FACTORS
            .into_iter()
            .find(|field| field.path() == path)
            .map_or(Differs::Several, Differs::Field),
        (None, Some(place)) => FACTORS
            .get(place)
            .map_or(Differs::Own, |&field| Differs::Field(field)),
        (None, None) => Differs::Own,
    }
}

/// The form.
pub fn design(bench: Bench, shown: &Shown) -> Node {
    let locked = shown.recorded;
    let fixed = locked.then(|| el("p").class("hint").child(words::fixed()));
    [
        part(words::compared(), [fixed.into(), compared(bench, shown)]),
        part(words::laid_out(), places(bench, shown)),
    ]
    .into()
}

fn compared(bench: Bench, shown: &Shown) -> Node {
    let trial = &shown.trial;
    let locked = shown.recorded;
    let differs = differs(bench, trial);
    let variants: Node = trial
        .treatments
        .iter()
        .enumerate()
        .map(|(place, treatment)| variant(bench, shown, place, treatment, differs))
        .collect();
    let count = trial.treatments.len();
    let line = |text, disabled: bool, act: fn(&mut Trial)| {
        action("quiet", text, move || bench.edit(act)).attr("disabled", disabled)
    };
    let lines = row([
        line(
            words::add_variant(),
            locked || count >= MOST_TREATMENTS,
            |trial| {
                let place = trial.treatments.len();
                trial.treatments.push(new_variant(place));
            },
        ),
        line(words::remove_variant(), locked || count <= 2, |trial| {
            trial.treatments.pop();
        }),
    ]);
    [
        factor(bench, shown, differs),
        variants,
        said(shown.problem(TrialField::Treatments)),
        lines,
    ]
    .into()
}

/// The choice of what differs.
fn factor(bench: Bench, shown: &Shown, differs: Differs) -> Node {
    let (trial, units) = (&shown.trial, shown.units);
    let used = trial.plan.as_ref().map(used_fields).unwrap_or_default();
    let mut options: Vec<(String, String)> = FACTORS
        .into_iter()
        .enumerate()
        .filter(|(_, field)| used.contains(field) || differs == Differs::Field(*field))
        .map(|(place, field)| (place.to_string(), words::label(field)))
        .collect();
    options.push((String::new(), words::own_factor().to_owned()));
    let chosen = match differs {
        Differs::Field(field) => FACTORS
            .iter()
            .position(|it| *it == field)
            .unwrap_or_default()
            .to_string(),
        Differs::Own => String::new(),
        Differs::Several => {
            options.push(("several".to_owned(), words::several().to_owned()));
            "several".to_owned()
        }
    };
    let list = choice(options, chosen, move |key| {
        bench.factor.set(key.parse().ok());
        bench.edit(|trial| {
            for (place, treatment) in trial.treatments.iter_mut().enumerate() {
                // A name that told the value says nothing of another field.
                match differs {
                    Differs::Field(of) => set_value(treatment, place, of, Entry::blank(), units),
                    _ => treatment.changes.clear(),
                }
            }
        });
    })
    .attr("disabled", shown.recorded);
    let id = "trial-differs".to_owned();
    field(id, words::differs(), words::differs_hint(), None, list)
}

/// A variant: its value or how it differs, and its name.
fn variant(
    bench: Bench,
    shown: &Shown,
    place: usize,
    treatment: &Treatment,
    differs: Differs,
) -> Node {
    let problem = shown.problem(TrialField::TreatmentChange(place, 0));
    let of = |what: &str| format!("variant-{what}-{}", place + 1);
    let value = match differs {
        Differs::Field(of_plan) => {
            let change = treatment.changes.first().map(|change| &change.value);
            let control =
                value(bench, place, of_plan, change, shown.units).attr("disabled", shown.recorded);
            let symbol = of_plan
                .limits()
                .map_or("", |limits| words::symbol(limits.dimension, shown.units));
            let label = if symbol.is_empty() {
                words::value_heading().to_owned()
            } else {
                format!("{}, {symbol}", words::value_heading())
            };
            field(of("value"), label, "", problem, control)
        }
        Differs::Own => {
            let note = text_box(treatment.note.clone(), move |note| {
                bench.edit(|trial| trial.treatments[place].note = note);
            })
            .attr("maxlength", "200");
            field(of("note"), words::note(), "", problem, note)
        }
        Differs::Several => {
            let lines = treatment.changes.iter();
            let lines = lines.map(|change| words::change_line(change, shown.units));
            [
                el("p").child(lines.collect::<Vec<_>>().join("; ")),
                said(problem),
            ]
            .into()
        }
    };
    let name = text_box(treatment.name.clone(), move |name| {
        bench.edit(|trial| trial.treatments[place].name = name);
    })
    .attr("maxlength", "40");
    let problem = shown.problem(TrialField::TreatmentName(place));
    el("fieldset")
        .class("group")
        .child(el("legend").child(words::variant_of(place, treatment.name.trim())))
        .child(el("div").class("fields").child([
            value,
            field(of("name"), words::variant_name(), "", problem, name),
        ]))
}

fn list_of(field: Field, units: UnitSystem) -> Option<Options> {
    Some(match field {
        Field::Pipe => options::<PipeChoice>(units),
        Field::Foam => options::<Foam>(units),
        Field::CoverMaterial => options::<CoverMaterial>(units),
        Field::CropKind => options::<CropKind>(units),
        _ => return None,
    })
}

/// The control of a variant's value; empty for that of the plan.
fn value(
    bench: Bench,
    place: usize,
    field: Field,
    value: Option<&Entry>,
    units: UnitSystem,
) -> Node {
    let dimension = field
        .limits()
        .map_or(Dimension::Factor, |limits| limits.dimension);
    let written = value.map_or_else(String::new, |value| match value {
        Entry::Number(number) => words::number(dimension.text(*number, units)),
        Entry::Text(text) => text.clone(),
    });
    let list = list_of(field, units);
    let is_list = list.is_some();
    let take = move |text: String| {
        let value = if is_list {
            Entry::Text(text)
        } else {
            read(&text, dimension, units)
        };
        bench.edit(|trial| set_value(&mut trial.treatments[place], place, field, value, units));
    };
    match list {
        Some(list) => {
            let mut all = vec![(String::new(), words::as_planned().to_owned())];
            all.extend(list.into_iter().map(|(key, name)| (key.to_owned(), name)));
            choice(all, written, take)
        }
        None => text_box(written, take)
            .attr("inputmode", "decimal")
            .attr("placeholder", words::as_planned()),
    }
}

/// Gives a variant its value, and its name where that told the value before.
fn set_value(
    treatment: &mut Treatment,
    place: usize,
    field: Field,
    value: Entry,
    units: UnitSystem,
) {
    let told = |treatment: &Treatment| match treatment.changes.first() {
        Some(change) => words::changed_value(field, &change.value, units),
        None => new_variant(place).name,
    };
    let named = treatment.name == told(treatment) || treatment.name.trim().is_empty();
    treatment.changes.clear();
    if !value.is_blank() {
        treatment.changes.push(Change {
            field: field.path(),
            value,
        });
    }
    if named {
        treatment.name = told(treatment);
    }
}

/// What is wrong, without a field.
pub(super) fn said(problem: Option<String>) -> Node {
    let text = problem.map(|text| el("span").class("bad").child(text));
    el("p").class("problem").child(text)
}
