//! Several wrong fields of one plan: all are told, each once.

use std::collections::BTreeSet;

use slackwater::plan::Field;

use super::{answer, named, plans, used, with_raw};
use crate::seeded::Seeded;

/// The choices on which the use of a field depends; where one of them is unknown the field is not
/// asked for.
fn asked_for_by(field: Field) -> &'static [Field] {
    match field {
        Field::PipeOutsideDiameter | Field::PipeWall => &[Field::Method, Field::Pipe],
        Field::LegCount | Field::SupportRating => &[Field::Method, Field::Shape, Field::StandsOn],
        Field::SpacingAlong => &[Field::Method, Field::Shape, Field::Pattern],
        Field::PotImmersion
        | Field::CoverThickness
        | Field::BoardLength
        | Field::BoardWidth
        | Field::BoardThickness
        | Field::BoardCount
        | Field::Foam
        | Field::Pipe
        | Field::PipeEnds
        | Field::PipeSpacing
        | Field::PipeMaterial
        | Field::PipeCount => &[Field::Method],
        Field::PlantsPerContainer | Field::Pattern => &[Field::Method, Field::Shape],
        Field::CalciumNitrate
        | Field::StockACalciumNitrate
        | Field::StockBBlend
        | Field::StockBMagnesiumSulfate
        | Field::StockVolume
        | Field::StoreTemperature
        | Field::Recipe
        | Field::RecipeStrength
        | Field::SaltChoice(_)
        | Field::SaltPurity(_)
        | Field::SaltPrice(_)
        | Field::PriceBlend
        | Field::PriceCalciumNitrate
        | Field::PriceMagnesiumSulfate => &[Field::Dosing],
        Field::AcidStrength | Field::AcidDensity | Field::TargetPh => &[Field::Acid],
        Field::RawWaterConductivity | Field::RainShare => &[Field::WaterKind],
        _ if field.path().starts_with("fertilizer.water.") => &[Field::WaterKind],
        Field::TargetConductivity | Field::TargetNitrogen => &[Field::StrengthBy],
        Field::SolarRadiation | Field::Sunshine => &[Field::Shelter, Field::DaylightBy],
        Field::Latitude
        | Field::DaylightBy
        | Field::LightThrough
        | Field::LampFlux
        | Field::LampHours => &[Field::Shelter],
        _ if field.path().starts_with("build.") => &[Field::Method, Field::Shape],
        _ if always_asked_for(field) => &[],
        // The measures of the vessel.
        _ => &[Field::Method, Field::Shape],
    }
}

/// Fields that every plan asks for.
fn always_asked_for(field: Field) -> bool {
    let path = field.path();
    !path.starts_with("container.")
        || path.starts_with("container.pot_")
        || matches!(
            field,
            Field::Count | Field::FillDepth | Field::Method | Field::Shape
        )
}

#[test]
fn all_bad_numbers_are_reported_at_once() {
    for (name, plan) in plans() {
        let numbers: Vec<Field> = used(&plan)
            .into_iter()
            .filter(|field| field.limits().is_some())
            .collect();
        let problems = answer(&with_raw(&plan, &numbers, "\"word\"")).expect_err(&name);
        let expected: BTreeSet<Field> = numbers.into_iter().collect();
        assert_eq!(named(&problems), expected, "{name}");
    }
}

#[test]
fn several_bad_fields_are_all_reported() {
    let mut random = Seeded::new(81);
    for (name, plan) in plans() {
        let used = used(&plan);
        for _ in 0..200 {
            let bad: BTreeSet<Field> = (0..random.whole(2, 6))
                .map(|_| random.pick(&used))
                .collect();
            let list: Vec<Field> = bad.iter().copied().collect();
            let problems = answer(&with_raw(&plan, &list, "\"word\"")).expect_err(&name);
            let named = named(&problems);
            for field in &bad {
                let asked_for = !asked_for_by(*field)
                    .iter()
                    .any(|choice| bad.contains(choice));
                assert!(
                    !asked_for || named.contains(field),
                    "{name}: {bad:?}, but {field:?} is not among {named:?}"
                );
            }
        }
    }
}

#[test]
fn one_problem_is_told_once() {
    for (name, plan) in plans() {
        for field in used(&plan) {
            let problems = answer(&with_raw(&plan, &[field], "\"word\"")).expect_err(&name);
            let of_field = problems.iter().filter(|it| it.field == Some(field)).count();
            assert_eq!(of_field, 1, "{name}: {problems:?}");
        }
    }
}
