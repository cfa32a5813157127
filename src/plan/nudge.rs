//! One step up or down from the value of a field, for a hand that would rather tap than type.

use super::{Dimension, Field, UnitSystem};

impl Field {
    /// The size of a step in the units of a system; `None` for fields that are read off a label, a
    /// meter or a tape to the last digit and so are typed.
    fn step(self, system: UnitSystem) -> Option<f64> {
        let us = system == UnitSystem::UsCustomary;
        let (metric, customary) = match self {
            Self::Count
            | Self::BoardCount
            | Self::PipeCount
            | Self::PropRows
            | Self::LinerLayers
            | Self::LegCount
            | Self::PlantsPerContainer
            | Self::CropsInARow
            | Self::SeedlingAge
            | Self::LampHours => (1.0, 1.0),
            Self::PotImmersion => (0.5, 0.25),
            Self::Height | Self::SpacingAcross | Self::SpacingAlong => (1.0, 0.5),
            Self::TargetHead => (10.0, 0.5),
            Self::GrowthFactor | Self::WaterFactor => (0.05, 0.05),
            Self::TargetConductivity | Self::TargetPh => (0.1, 0.1),
            Self::TargetNitrogen => (10.0, 10.0),
            Self::RecipeStrength | Self::RainShare | Self::Humidity | Self::LightThrough => {
                (5.0, 5.0)
            }
            Self::StoreTemperature | Self::TemperatureMin | Self::TemperatureMax => (1.0, 2.0),
            _ => return None,
        };
        Some(if us { customary } else { metric })
    }

    /// Whether the field has steps.
    pub fn has_steps(self) -> bool {
        self.step(UnitSystem::Metric).is_some()
    }

    /// The next round value above or below one, in the unit of the field's JSON name: a multiple of
    /// the step in the units of `system`, within the field's limits; the value itself at its end.
    /// `from`: the present value, in the unit of the JSON name.
    ///
    /// ```
    /// use slackwater::plan::{Field, UnitSystem};
    /// let next = Field::PotImmersion.nudged(2.7, true, UnitSystem::Metric);
    /// assert!(next.is_some_and(|it| (it - 3.0).abs() < 1e-12));
    /// ```
    pub fn nudged(self, from: f64, up: bool, system: UnitSystem) -> Option<f64> {
        // A value on a multiple, to within what a change of units costs, leaves it by a whole step.
        const ON_IT: f64 = 1e-6;
        let step = self.step(system)?;
        let limits = self.limits()?;
        let dimension: Dimension = limits.dimension;
        let steps = dimension.in_system(from, system) / step;
        let next = if up {
            libm::floor(steps + ON_IT) + 1.0
        } else {
            libm::ceil(steps - ON_IT) - 1.0
        };
        // Hundredths of a step hide what a product of doubles leaves behind.
        let shown = libm::round(next * step * 1e6) / 1e6;
        Some(
            dimension
                .saved(shown, system)
                .clamp(limits.low, limits.high),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::Keyed;

    #[test]
    fn steps_go_up_and_down_between_the_limits() {
        for &field in Field::ALL {
            for &system in UnitSystem::ALL {
                let Some(limits) = field.limits().filter(|_| field.has_steps()) else {
                    continue;
                };
                let mut value = limits.usual_low;
                for _ in 0..50 {
                    let up = field.nudged(value, true, system).expect("it has steps");
                    assert!(up > value || up >= limits.high, "{field:?} {value} {up}");
                    assert!(up <= limits.high);
                    let down = field.nudged(up, false, system).expect("it has steps");
                    assert!(down < up && down >= limits.low, "{field:?} {up} {down}");
                    value = up;
                }
            }
        }
    }

    #[test]
    fn a_value_between_steps_goes_to_the_next_one() {
        let near = |got: Option<f64>, wanted: f64| {
            assert!(got.is_some_and(|it| (it - wanted).abs() < 1e-9), "{got:?}");
        };
        near(
            Field::TargetHead.nudged(203.0, true, UnitSystem::Metric),
            210.0,
        );
        near(
            Field::TargetHead.nudged(203.0, false, UnitSystem::Metric),
            200.0,
        );
        // A quarter of an inch.
        near(
            Field::PotImmersion.nudged(2.54, true, UnitSystem::UsCustomary),
            1.25 * 2.54,
        );
        assert_eq!(Field::Latitude.nudged(10.0, true, UnitSystem::Metric), None);
    }
}
