//! Step 4: the climate.

use leptos::prelude::*;

use super::container::numbers;
use super::{ChoiceField, Group, NumberField};
use crate::app::words;
use crate::catalog::climates::ClimateChoice;
use crate::catalog::shelters::Shelter;
use crate::plan::{DaylightBy, Field, Pick, Plan};

/// The form.
#[component]
pub fn ClimateForm() -> impl IntoView {
    view! {
        <Group name=words::GROUP_PLACE>
            <ChoiceField<ClimateChoice>
                field=Field::ClimateKind
                pick=|plan| &plan.climate.kind
                choose=Plan::choose_climate
            />
            <ChoiceField<Shelter>
                field=Field::Shelter
                pick=|plan| &plan.climate.shelter
                choose=Plan::choose_shelter
            />
            {numbers(&[Field::Latitude, Field::Elevation])}
        </Group>
        <Group name=words::GROUP_AIR>
            {numbers(&[Field::TemperatureMin, Field::TemperatureMax, Field::Humidity])}
        </Group>
        <Group name=words::GROUP_LIGHT>
            <ChoiceField<DaylightBy>
                field=Field::DaylightBy
                pick=|plan| &plan.climate.daylight_by
                choose=|plan, by| plan.climate.daylight_by = Pick::Known(by)
            />
            {numbers(&[
                Field::SolarRadiation,
                Field::Sunshine,
                Field::LightThrough,
                Field::LampFlux,
                Field::LampHours,
            ])}
            <NumberField field=Field::CarbonDioxide/>
        </Group>
    }
}
