//! Step 1: the container.

use leptos::prelude::*;

use super::build::BuildForm;
use super::number::MeasuredPairs;
use super::{ChoiceField, Group, NumberField, PresetField};
use crate::app::state::app;
use crate::app::words;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::{PipeChoice, PipeMaterial};
use crate::catalog::pots::PotChoice;
use crate::catalog::vessels::VesselChoice;
use crate::plan::{Field, Method, Pick, PipeEnds, Plan, Shape};

/// The form.
#[component]
#[expect(
    clippy::too_many_lines,
    reason = "one form, top to bottom, as it is seen"
)]
pub fn ContainerForm() -> impl IntoView {
    let app = app();
    let floats = Memo::new(move |_| {
        app.plan.with(|plan| {
            plan.as_ref().and_then(|plan| plan.container.method.known())
                == Some(Method::FloatingBoards)
        })
    });
    let pots = Signal::derive(move || {
        if floats.get() {
            words::GROUP_POT_BOARDS
        } else {
            words::GROUP_POT
        }
    });
    view! {
        <Group name=words::GROUP_VESSEL>
            <ChoiceField<Method>
                field=Field::Method
                pick=|plan| &plan.container.method
                choose=Plan::choose_method
            />
            <PresetField<VesselChoice>
                id="preset-vessel"
                label=words::LABEL_PRESET_VESSEL
                first=words::PRESET_VESSEL
                choose=Plan::choose_vessel
            />
            <ChoiceField<Shape>
                field=Field::Shape
                pick=|plan| &plan.container.shape
                choose=|plan, shape| plan.container.shape = Pick::Known(shape)
            />
            {numbers(&[
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
            ])}
            <MeasuredPairs/>
            <NumberField field=Field::Count/>
        </Group>
        <Show when=move || floats.get()>
            <Group name=words::GROUP_BOARDS>
                {numbers(&[
                    Field::BoardLength,
                    Field::BoardWidth,
                    Field::BoardThickness,
                    Field::BoardCount,
                ])}
                <ChoiceField<Foam>
                    field=Field::Foam
                    pick=|plan| &plan.container.foam
                    choose=|plan, foam| plan.container.foam = Pick::Known(foam)
                />
            </Group>
            <Group name=words::GROUP_PIPES>
                <ChoiceField<PipeChoice>
                    field=Field::Pipe
                    pick=|plan| &plan.container.pipe
                    choose=|plan, pipe| plan.container.pipe = Pick::Known(pipe)
                />
                {numbers(&[
                    Field::PipeOutsideDiameter,
                    Field::PipeWall,
                    Field::PipeCount,
                    Field::PipeSpacing,
                ])}
                <ChoiceField<PipeMaterial>
                    field=Field::PipeMaterial
                    pick=|plan| &plan.container.pipe_material
                    choose=|plan, material| plan.container.pipe_material = Pick::Known(material)
                />
                <ChoiceField<PipeEnds>
                    field=Field::PipeEnds
                    pick=|plan| &plan.container.pipe_ends
                    choose=|plan, ends| plan.container.pipe_ends = Pick::Known(ends)
                />
            </Group>
        </Show>
        <Group name=pots>
            <PresetField<PotChoice>
                id="preset-pot"
                label=words::LABEL_PRESET_POT
                first=words::PRESET_POT
                choose=Plan::choose_pot
            />
            {numbers(&[
                Field::CoverThickness,
                Field::PotHeight,
                Field::PotTopDiameter,
                Field::PotBottomDiameter,
                Field::PotFlangeDiameter,
                Field::PotImmersion,
            ])}
        </Group>
        <Group name=words::GROUP_FILL>
            <NumberField field=Field::FillDepth/>
        </Group>
        <BuildForm/>
    }
}

/// Number fields in a row.
pub(super) fn numbers(fields: &[Field]) -> impl IntoView + use<> {
    fields
        .iter()
        .map(|&field| view! { <NumberField field/> })
        .collect_view()
}
