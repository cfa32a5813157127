//! What is taken for a figure that the grower does not know and leaves empty.

use super::choice::Shape;
use super::{Field, Plan};
use crate::catalog::pots::PotChoice;
use crate::science::units::mass_density::gram_per_cubic_centimeter;
use crate::science::units::ratio::percent;

impl Field {
    /// The usual value that stands in for an empty field under the plan's other choices, in the
    /// unit of the field's JSON name; `None` where nobody can know but who measures: the size of a
    /// container, a date, an analysis. Figures of the chosen climate, shelter, acid and of a small
    /// net pot come from the catalog; the others are common practice, no source.
    ///
    /// ```
    /// use slackwater::plan::{Example, Field};
    /// let plan = Example::Bucket.plan();
    /// assert_eq!(Field::PotImmersion.if_unknown(&plan), Some(2.5));
    /// assert_eq!(Field::Height.if_unknown(&plan), None);
    /// ```
    pub fn if_unknown(self, plan: &Plan) -> Option<f64> {
        let pot = PotChoice::Small.pot();
        let shape = plan.container.shape.known();
        let climate = || {
            let kind = plan.climate.kind.known()?;
            kind.climate()
        };
        let acid = || {
            let figures = plan.fertilizer.acid.known()?.figures()?;
            Some((figures, figures.usual_strength()))
        };
        Some(match self {
            Self::Count
            | Self::BoardCount
            | Self::CropsInARow
            | Self::PlantsPerContainer
            | Self::WaterFactor => 1.0,
            Self::CoverThickness => match shape {
                Some(Shape::Bottle) => 0.0,
                // The lid of a bucket.
                Some(Shape::TaperedRound | Shape::Cylinder) => 0.2,
                _ => 2.5,
            },
            Self::PotHeight => pot.height_cm,
            Self::PotTopDiameter => pot.top_diameter_cm,
            Self::PotBottomDiameter => pot.bottom_diameter_cm,
            Self::PotFlangeDiameter => pot.flange_diameter_cm,
            Self::PotImmersion | Self::BoardThickness => 2.5,
            Self::PipeWall => 0.3,
            Self::PipeCount | Self::LinerLayers => 2.0,
            Self::FloorDrop => 0.5,
            Self::BraceSpacing => 100.0,
            Self::PropRows | Self::RainShare => 0.0,
            Self::SheetLength => 244.0,
            Self::SheetWidth => 122.0,
            Self::SpacingAcross | Self::SpacingAlong => 25.0,
            Self::SeedlingAge => 14.0,
            Self::TargetHead | Self::LampFlux => 200.0,
            Self::GrowthFactor => 0.75,
            Self::TargetConductivity => 1.5,
            Self::TargetNitrogen => 150.0,
            Self::RawWaterConductivity => 0.4,
            Self::StockACalciumNitrate | Self::StockBBlend => 120.0,
            Self::StockBMagnesiumSulfate => 72.0,
            Self::StockVolume => 10.0,
            Self::StoreTemperature => 5.0,
            Self::RecipeStrength => 75.0,
            Self::WaterPh => 7.5,
            Self::TargetPh | Self::LegCount => 6.0,
            Self::AcidStrength => acid()?.1.get::<percent>(),
            Self::AcidDensity => {
                let (figures, strength) = acid()?;
                let density = figures.density(strength).ok()?;
                density.get::<gram_per_cubic_centimeter>()
            }
            Self::Latitude => climate()?.latitude_deg,
            Self::Elevation => climate().map_or(0.0, |climate| climate.elevation_m),
            Self::TemperatureMin => climate()?.temperature_min_c,
            Self::TemperatureMax => climate()?.temperature_max_c,
            Self::Humidity => climate().map_or(70.0, |climate| climate.humidity_pct),
            Self::SolarRadiation => climate()?.solar_mj_per_m2,
            Self::LightThrough => {
                (plan.climate.shelter.known()?.effect().light_through * 100.0).round()
            }
            Self::LampHours => 16.0,
            Self::CarbonDioxide => 420.0,
            _ => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::Keyed;
    use crate::plan::{Example, check, used_fields};

    #[test]
    fn what_stands_in_is_within_the_usual_bounds_of_its_field() {
        for &example in Example::ALL {
            let plan = example.plan();
            for &field in Field::ALL {
                if let (Some(value), Some(limits)) = (field.if_unknown(&plan), field.limits()) {
                    assert!(
                        (limits.usual_low..=limits.usual_high).contains(&value),
                        "{field:?}: {value}"
                    );
                }
            }
        }
    }

    #[test]
    fn an_example_without_its_small_figures_is_still_sound_and_says_what_it_took() {
        for &example in Example::ALL {
            let mut plan = example.plan();
            let used = used_fields(&plan);
            let mut emptied = Vec::new();
            for field in [
                Field::PotImmersion,
                Field::SeedlingAge,
                Field::TargetHead,
                Field::GrowthFactor,
                Field::TargetConductivity,
                Field::Humidity,
            ] {
                *field.entry_mut(&mut plan).expect("a number") = crate::plan::Entry::blank();
                if used.contains(&field) {
                    emptied.push(field);
                }
            }
            let sound = check(&plan).expect("sound without them");
            let mut taken: Vec<Field> = sound.assumed.iter().map(|it| it.field).collect();
            taken.sort();
            emptied.sort();
            assert!(taken.len() > 4);
            assert_eq!(taken, emptied);
        }
    }
}
