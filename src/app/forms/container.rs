//! Step 1: the container.

use leptos::prelude::*;

use crate::app::browser::dom::{Node, el, given, live, several};

use super::build::build_form;
use super::number::measured_pairs;
use super::{choice_field, group, number_field, preset_field, wrong_within};
use crate::app::state::app;
use crate::app::words;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::{PipeChoice, PipeMaterial};
use crate::catalog::pots::PotChoice;
use crate::catalog::vessels::VesselChoice;
use crate::plan::{Field, Method, Pick, PipeEnds, Plan, Shape};

/// The form.
#[expect(
    clippy::too_many_lines,
    reason = "one form, top to bottom, as it is seen"
)]
pub fn container_form() -> Node {
    let app = app();
    let floats = Memo::new(move |_| {
        app.plan.with(|plan| {
            plan.as_ref().and_then(|plan| plan.container.method.known())
                == Some(Method::FloatingBoards)
        })
    });
    let pots = Signal::derive(move || {
        if floats.get() {
            words::group_pot_boards()
        } else {
            words::group_pot()
        }
    });
    several()
        .child(group(
            words::group_vessel(),
            several()
                .child(choice_field::<Method>(
                    Field::Method,
                    |plan| &plan.container.method,
                    Plan::choose_method,
                ))
                .child(preset_field::<VesselChoice>(
                    "preset-vessel",
                    words::label_preset_vessel(),
                    words::preset_vessel(),
                    Plan::choose_vessel,
                ))
                .child(choice_field::<Shape>(
                    Field::Shape,
                    |plan| &plan.container.shape,
                    |plan, shape| plan.container.shape = Pick::Known(shape),
                ))
                .child(numbers(&[
                    Field::Length,
                    Field::Width,
                    Field::BottomLength,
                    Field::BottomWidth,
                    Field::Diameter,
                    Field::TopDiameter,
                    Field::BottomDiameter,
                    Field::Height,
                    Field::BodyHeight,
                    Field::ShoulderHeight,
                    Field::NeckDiameter,
                    Field::NeckHeight,
                ]))
                .child(measured_pairs())
                .child(number_field(Field::Count)),
        ))
        .child(given(
            move || floats.get(),
            move || {
                several()
                    .child(group(
                        words::group_boards(),
                        several()
                            .child(numbers(&[
                                Field::BoardLength,
                                Field::BoardWidth,
                                Field::BoardThickness,
                                Field::BoardCount,
                            ]))
                            .child(choice_field::<Foam>(
                                Field::Foam,
                                |plan| &plan.container.foam,
                                |plan, foam| plan.container.foam = Pick::Known(foam),
                            )),
                    ))
                    .child(group(
                        words::group_pipes(),
                        several()
                            .child(choice_field::<PipeChoice>(
                                Field::Pipe,
                                |plan| &plan.container.pipe,
                                |plan, pipe| plan.container.pipe = Pick::Known(pipe),
                            ))
                            .child(numbers(&[
                                Field::PipeOutsideDiameter,
                                Field::PipeWall,
                                Field::PipeCount,
                                Field::PipeSpacing,
                            ]))
                            .child(choice_field::<PipeMaterial>(
                                Field::PipeMaterial,
                                |plan| &plan.container.pipe_material,
                                |plan, material| {
                                    plan.container.pipe_material = Pick::Known(material);
                                },
                            ))
                            .child(choice_field::<PipeEnds>(
                                Field::PipeEnds,
                                |plan| &plan.container.pipe_ends,
                                |plan, ends| plan.container.pipe_ends = Pick::Known(ends),
                            )),
                    ))
            },
        ))
        .child(group(
            live(move || pots.get()),
            several()
                .child(preset_field::<PotChoice>(
                    "preset-pot",
                    words::label_preset_pot(),
                    words::preset_pot(),
                    Plan::choose_pot,
                ))
                .child(number_field(Field::CoverThickness)),
        ))
        .child(pot_measures())
        .child(group(words::group_fill(), number_field(Field::FillDepth)))
        .child(build_form())
}

/// The measures of a pot, folded away unless one of them is wrong: whoever has no pots yet takes the
/// common ones.
fn pot_measures() -> Node {
    let unfold = wrong_within(|field| field.path().starts_with("container.pot_"));
    el("details")
        .class("fold")
        .open_live(move || unfold.get())
        .child(el("summary").child(words::group_pot_measures()))
        .child(el("div").class("fields").child(numbers(&[
            Field::PotHeight,
            Field::PotTopDiameter,
            Field::PotBottomDiameter,
            Field::PotFlangeDiameter,
            Field::PotImmersion,
        ])))
}

/// Number fields in a row.
pub(super) fn numbers(fields: &[Field]) -> Node {
    fields
        .iter()
        .map(|&field| number_field(field))
        .collect::<Node>()
}
