//! Step 2: the crop.

use crate::app::browser::dom::{Node, several};

use super::container::numbers;
use super::{choice_field, date_field, group, number_field};
use crate::app::words;
use crate::catalog::crops::CropKind;
use crate::plan::{DateMeaning, Field, Pattern, Pick};

/// The form.
pub fn crop_form() -> Node {
    several()
        .child(group(
            words::group_plants(),
            several()
                .child(choice_field::<CropKind>(
                    Field::CropKind,
                    |plan| &plan.crop.kind,
                    |plan, kind| plan.crop.kind = Pick::Known(kind),
                ))
                .child(numbers(&[
                    Field::PlantsPerContainer,
                    Field::SpacingAcross,
                    Field::SpacingAlong,
                ]))
                .child(choice_field::<Pattern>(
                    Field::Pattern,
                    |plan| &plan.crop.pattern,
                    |plan, pattern| plan.crop.pattern = Pick::Known(pattern),
                )),
        ))
        .child(group(
            words::group_dates(),
            several()
                .child(choice_field::<DateMeaning>(
                    Field::DateMeaning,
                    |plan| &plan.crop.date_meaning,
                    |plan, meaning| plan.crop.date_meaning = Pick::Known(meaning),
                ))
                .child(date_field(Field::Date))
                .child(number_field(Field::SeedlingAge)),
        ))
        .child(group(
            words::group_harvest(),
            numbers(&[
                Field::TargetHead,
                Field::GrowthFactor,
                Field::WaterFactor,
                Field::TurnaroundDays,
                Field::People,
                Field::HeadsPerPersonWeek,
            ]),
        ))
}
