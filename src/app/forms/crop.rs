//! Step 2: the crop.

use leptos::prelude::*;

use super::container::numbers;
use super::{ChoiceField, DateField, Group, NumberField};
use crate::app::words;
use crate::catalog::crops::CropKind;
use crate::plan::{DateMeaning, Field, Pattern, Pick};

/// The form.
#[component]
pub fn CropForm() -> impl IntoView {
    view! {
        <Group name=words::GROUP_PLANTS>
            <ChoiceField<CropKind>
                field=Field::CropKind
                pick=|plan| &plan.crop.kind
                choose=|plan, kind| plan.crop.kind = Pick::Known(kind)
            />
            {numbers(&[Field::PlantsPerContainer, Field::SpacingAcross, Field::SpacingAlong])}
            <ChoiceField<Pattern>
                field=Field::Pattern
                pick=|plan| &plan.crop.pattern
                choose=|plan, pattern| plan.crop.pattern = Pick::Known(pattern)
            />
        </Group>
        <Group name=words::GROUP_DATES>
            <DateField field=Field::Date/>
            <ChoiceField<DateMeaning>
                field=Field::DateMeaning
                pick=|plan| &plan.crop.date_meaning
                choose=|plan, meaning| plan.crop.date_meaning = Pick::Known(meaning)
            />
            <NumberField field=Field::SeedlingAge/>
        </Group>
        <Group name=words::GROUP_HARVEST>
            {numbers(&[
                Field::TargetHead,
                Field::GrowthFactor,
                Field::WaterFactor,
                Field::TurnaroundDays,
                Field::People,
                Field::HeadsPerPersonWeek,
            ])}
        </Group>
    }
}
