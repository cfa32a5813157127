//! Catalog entries written into a plan's fields.

use super::choice::{AcidChoice, Method, Shape};
use super::model::Plan;
use super::{Entry, Field, Pick, UnitSystem};
use crate::catalog::blends::BlendChoice;
use crate::catalog::climates::ClimateChoice;
use crate::catalog::pipes::PipeChoice;
use crate::catalog::pots::PotChoice;
use crate::catalog::shelters::Shelter;
use crate::catalog::timber::Timber;
use crate::catalog::vessels::{VesselChoice, VesselFigures};
use crate::science::label::Label;
use crate::science::units::Ratio;
use crate::science::units::mass_density::gram_per_cubic_centimeter;
use crate::science::units::ratio::percent;

impl Plan {
    /// Writes a number into a field, in its unit.
    pub(super) fn set(&mut self, field: Field, value: f64) {
        if let Some(entry) = field.entry_mut(self) {
            *entry = Entry::from(value);
        }
    }

    fn set_all<const N: usize>(&mut self, fields: [Field; N], values: [f64; N]) {
        for (field, value) in fields.into_iter().zip(values) {
            self.set(field, value);
        }
    }

    /// Chooses a way of standing the plants over the solution; floating boards need a rectangle.
    pub fn choose_method(&mut self, method: Method) {
        self.container.method = Pick::Known(method);
        if method == Method::FloatingBoards {
            self.container.shape = Pick::Known(Shape::Rectangular);
        }
    }

    /// Writes the measures of a common container.
    pub fn choose_vessel(&mut self, vessel: VesselChoice) {
        let shape = match vessel.figures() {
            VesselFigures::Bottle(values) => {
                self.set_all(
                    [
                        Field::Diameter,
                        Field::BodyHeight,
                        Field::ShoulderHeight,
                        Field::NeckDiameter,
                        Field::NeckHeight,
                    ],
                    values,
                );
                Shape::Bottle
            }
            VesselFigures::Cylinder(values) => {
                self.set_all([Field::Diameter, Field::Height], values);
                Shape::Cylinder
            }
            VesselFigures::TaperedRound(values) => {
                self.set_all(
                    [Field::BottomDiameter, Field::TopDiameter, Field::Height],
                    values,
                );
                Shape::TaperedRound
            }
            VesselFigures::TaperedRectangular(values) => {
                self.set_all(
                    [
                        Field::BottomLength,
                        Field::BottomWidth,
                        Field::Length,
                        Field::Width,
                        Field::Height,
                    ],
                    values,
                );
                Shape::TaperedRectangular
            }
            VesselFigures::Rectangular(values) => {
                self.set_all([Field::Length, Field::Width, Field::Height], values);
                Shape::Rectangular
            }
        };
        self.container.shape = Pick::Known(shape);
    }

    /// Puts sizes that the shops of a system of units sell in the place of their like: pipes, timber,
    /// boards and the sheets they are cut from. For a new plan only; one that somebody has filled in
    /// keeps what it says.
    ///
    /// ```
    /// use slackwater::plan::{Example, UnitSystem};
    /// let mut plan = Example::Bucket.plan();
    /// plan.choose_sizes(UnitSystem::Metric);
    /// assert_eq!(plan, Example::Bucket.plan());
    /// ```
    pub fn choose_sizes(&mut self, units: UnitSystem) {
        if units == UnitSystem::Metric {
            return;
        }
        self.container.pipe = Pick::Known(PipeChoice::Drain4);
        self.build.timber = Pick::Known(Timber::Us2x8);
        // Sheets of 8 by 4 feet, quartered, an inch thick.
        self.set_all(
            [
                Field::SheetLength,
                Field::SheetWidth,
                Field::BoardLength,
                Field::BoardWidth,
                Field::BoardThickness,
            ],
            [243.84, 121.92, 121.92, 60.96, 2.54],
        );
    }

    /// Writes the measures of a common net pot.
    pub fn choose_pot(&mut self, pot: PotChoice) {
        let pot = pot.pot();
        self.set_all(
            [
                Field::PotHeight,
                Field::PotTopDiameter,
                Field::PotBottomDiameter,
                Field::PotFlangeDiameter,
            ],
            [
                pot.height_cm,
                pot.top_diameter_cm,
                pot.bottom_diameter_cm,
                pot.flange_diameter_cm,
            ],
        );
    }

    /// Chooses a blend and copies its typical label; the grower's own keeps what stands there.
    pub fn choose_blend(&mut self, blend: BlendChoice) {
        self.fertilizer.blend = Pick::Known(blend);
        if let Some(label) = blend.label() {
            self.set_label(&label);
        }
    }

    /// Chooses an acid and copies its usual strength and density.
    pub fn choose_acid(&mut self, acid: AcidChoice) {
        self.fertilizer.acid = Pick::Known(acid);
        let Some(figures) = acid.figures() else {
            return;
        };
        let strength = figures.usual_strength();
        self.set(Field::AcidStrength, tidy(strength.get::<percent>()));
        if let Ok(density) = figures.density(strength) {
            self.set(
                Field::AcidDensity,
                tidy(density.get::<gram_per_cubic_centimeter>()),
            );
        }
    }

    fn set_label(&mut self, label: &Label) {
        // The catalog holds per cents as fractions; back to what a label prints.
        let printed = |ratio: Ratio| tidy(ratio.get::<percent>());
        self.set_all(
            [
                Field::LabelNitrogen,
                Field::LabelNitrate,
                Field::LabelAmmonium,
                Field::LabelUrea,
                Field::LabelPhosphate,
                Field::LabelPotash,
                Field::LabelCalcium,
                Field::LabelMagnesium,
                Field::LabelSulfur,
                Field::LabelIron,
                Field::LabelManganese,
                Field::LabelZinc,
                Field::LabelCopper,
                Field::LabelBoron,
                Field::LabelMolybdenum,
            ],
            [
                label
                    .total_n
                    .unwrap_or(label.nitrate_n + label.ammonium_n + label.urea_n),
                label.nitrate_n,
                label.ammonium_n,
                label.urea_n,
                label.p2o5,
                label.k2o,
                label.ca,
                label.mg,
                label.s,
                label.fe,
                label.mn,
                label.zn,
                label.cu,
                label.b,
                label.mo,
            ]
            .map(printed),
        );
    }

    /// Chooses a ready climate and copies its figures; the grower's own keeps what stands there.
    pub fn choose_climate(&mut self, kind: ClimateChoice) {
        self.climate.kind = Pick::Known(kind);
        let Some(climate) = kind.climate() else {
            return;
        };
        self.set_all(
            [
                Field::Latitude,
                Field::Elevation,
                Field::TemperatureMin,
                Field::TemperatureMax,
                Field::Humidity,
                Field::SolarRadiation,
            ],
            [
                climate.latitude_deg,
                climate.elevation_m,
                climate.temperature_min_c,
                climate.temperature_max_c,
                climate.humidity_pct,
                climate.solar_mj_per_m2,
            ],
        );
        self.climate.daylight_by = Pick::Known(super::DaylightBy::Radiation);
        self.choose_shelter(climate.shelter);
    }

    /// Chooses a shelter and copies the share of light that it usually lets through.
    pub fn choose_shelter(&mut self, shelter: Shelter) {
        self.climate.shelter = Pick::Known(shelter);
        self.set(
            Field::LightThrough,
            (shelter.effect().light_through * 100.0).round(),
        );
    }
}

/// A catalog figure without the trailing digits that a change of units leaves.
fn tidy(value: f64) -> f64 {
    (value * 1e6).round() / 1e6
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Example;

    #[test]
    fn a_new_plan_in_us_units_gets_the_sizes_of_us_shops() {
        let mut plan = Example::Bucket.plan();
        plan.choose_sizes(UnitSystem::UsCustomary);
        assert_eq!(plan.container.pipe, Pick::Known(PipeChoice::Drain4));
        assert_eq!(plan.build.timber, Pick::Known(Timber::Us2x8));
        for (field, inches) in [
            (Field::SheetLength, "96"),
            (Field::SheetWidth, "48"),
            (Field::BoardLength, "48"),
            (Field::BoardWidth, "24"),
            (Field::BoardThickness, "1"),
        ] {
            let dimension = field.limits().expect("a number").dimension;
            let Some(Entry::Number(value)) = field.entry(&plan) else {
                panic!("{field:?} is no number");
            };
            assert_eq!(dimension.text(*value, UnitSystem::UsCustomary), inches);
        }
        assert!(crate::plan::check(&plan).is_ok(), "the new plan is sound");
    }
}
