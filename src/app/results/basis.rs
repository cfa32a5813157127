//! What the figures rest on, in a few words that each lead to their field.

use leptos::prelude::*;

use crate::advice::Outcome;
use crate::app::browser::{
    self,
    dom::{Node, button, el, live},
};
use crate::app::state::app;
use crate::app::words;
use crate::app::words::Worded;
use crate::plan::{Dosing, Field, Pick, Plan};

/// A ready plan answers for the reader what it was not asked. Whoever sees its figures sees at once
/// what for, and changes with one touch what is not so.
pub fn basis() -> Node {
    let app = app();
    let buttons = move |outcome: &Outcome| {
        let leading = |(field, said): (Field, Option<String>)| {
            let to_field = button("quiet").on("click", move || app.go_to(field));
            Some(el("li").child(to_field.child(said?)))
        };
        app.plan.with_untracked(|plan| {
            let facts = plan.as_ref().map(|plan| facts(plan, outcome));
            facts
                .into_iter()
                .flatten()
                .filter_map(leading)
                .collect::<Node>()
        })
    };
    el("div")
        .class("basis")
        .child(el("p").class("hint").id("basis").child(words::basis()))
        .child(
            el("ul")
                .attr("aria-labelledby", "basis")
                .child(live(move || {
                    app.listed_with(|outcome| outcome.as_ref().map(buttons).unwrap_or_default())
                })),
        )
}

/// In the order of the steps. What is of no known kind is left to its own field.
fn facts(plan: &Plan, outcome: &Outcome) -> [(Field, Option<String>); 8] {
    let (crop, fertilizer, climate) = (&plan.crop, &plan.fertilizer, &plan.climate);
    let units = app().units.get();
    // Over a rectangle the spacing says how many plants there are.
    let counted = app()
        .used
        .with_untracked(|used| used.contains(&Field::PlantsPerContainer));
    let plants = if counted {
        Field::PlantsPerContainer
    } else {
        Field::SpacingAlong
    };
    let weighed = fertilizer.dosing == Pick::Known(Dosing::DryBlend);
    let measured = if weighed { Field::Blend } else { Field::Dosing };
    [
        (Field::Shape, Some(words::basis_container(outcome, units))),
        (Field::CropKind, crop.kind.known().map(Worded::word)),
        (plants, Some(words::basis_plants(outcome))),
        (
            Field::Date,
            Some(words::basis_date(outcome, &browser::today())),
        ),
        (measured, words::basis_fertilizer(fertilizer)),
        (Field::WaterKind, words::basis_water(&fertilizer.water_kind)),
        (Field::ClimateKind, climate.kind.known().map(Worded::word)),
        (Field::Shelter, climate.shelter.known().map(Worded::word)),
    ]
}
