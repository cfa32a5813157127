//! Step 4: the climate.

use crate::app::browser::dom::{Node, several};

use super::container::numbers;
use super::{choice_field, group, number_field};
use crate::app::words;
use crate::catalog::climates::ClimateChoice;
use crate::catalog::shelters::Shelter;
use crate::plan::{DaylightBy, Field, Pick, Plan};

/// The form.
pub fn climate_form() -> Node {
    several()
        .child(group(
            words::group_place(),
            several()
                .child(choice_field::<ClimateChoice>(
                    Field::ClimateKind,
                    |plan| &plan.climate.kind,
                    Plan::choose_climate,
                ))
                .child(choice_field::<Shelter>(
                    Field::Shelter,
                    |plan| &plan.climate.shelter,
                    Plan::choose_shelter,
                ))
                .child(numbers(&[Field::Latitude, Field::Elevation])),
        ))
        .child(group(
            words::group_air(),
            numbers(&[
                Field::TemperatureMin,
                Field::TemperatureMax,
                Field::Humidity,
            ]),
        ))
        .child(group(
            words::group_light(),
            several()
                .child(choice_field::<DaylightBy>(
                    Field::DaylightBy,
                    |plan| &plan.climate.daylight_by,
                    |plan, by| plan.climate.daylight_by = Pick::Known(by),
                ))
                .child(numbers(&[
                    Field::SolarRadiation,
                    Field::Sunshine,
                    Field::LightThrough,
                    Field::LampFlux,
                    Field::LampHours,
                ]))
                .child(number_field(Field::CarbonDioxide)),
        ))
}
