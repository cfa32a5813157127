//! Typed text to numbers and back: decimal comma or point, typed units, metric and US customary.

mod double;
mod read;
#[cfg(test)]
mod tests;
mod units;

pub use double::double;
pub use read::NotRead;
pub use units::temperature_difference;

use units::Unit;

use crate::catalog::keyed::keyed;

/// The kind of quantity that a field holds. It decides the unit of the field's JSON name and the
/// units that may be typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dimension {
    /// A length of container, pot, board or pipe; saved in cm.
    Length,
    /// Height above sea level; saved in m.
    Elevation,
    /// A volume of solution; saved in L.
    Volume,
    /// A mass of plant or salt; saved in g.
    Mass,
    /// Air temperature; saved in °C.
    Temperature,
    /// A share; saved in per cent.
    Percent,
    /// Electrical conductivity at 25 °C; saved in mS/cm.
    Conductivity,
    /// Mass of an element per volume of solution; saved in mg/L.
    Concentration,
    /// Mass of a salt per volume of stock solution; saved in g/L.
    StockStrength,
    /// Solar radiation of a day; saved in MJ/m².
    DailyRadiation,
    /// Photosynthetic photon flux density; saved in µmol m⁻² s⁻¹.
    PhotonFlux,
    /// Hours of a day.
    Hours,
    /// Whole days.
    Days,
    /// Degrees of latitude, north positive.
    Latitude,
    /// Parts of carbon dioxide in a million parts of air.
    CarbonDioxide,
    /// A whole number of things.
    Count,
    /// A plain number.
    Factor,
    /// A calendar date, written year-month-day.
    Date,
    /// Load on a floor; in kg/m².
    FloorLoad,
    /// Water per fresh mass; in L/kg.
    WaterUse,
    /// A mass that is carried or stands; in kg.
    Weight,
    /// A level or thickness too small for centimetres; in mm.
    SmallLength,
    /// Photons of a day; in mol/m².
    DailyLight,
    /// Price of a kilogram, in the plan's own currency.
    Price,
    /// Price of a metre, in the plan's own currency.
    PriceOfLength,
    /// Price of a square metre, in the plan's own currency.
    PriceOfArea,
    /// Price of a piece, in the plan's own currency.
    Money,
    /// A length of timber or pipe; in m.
    Run,
    /// An area of liner or fabric; in m².
    Area,
    /// Density of a solid; in kg/m³.
    Density,
    /// A force; in N.
    Force,
    /// Moment of a force; in N·m.
    Moment,
    /// Stress of a material; in MPa.
    Stress,
    /// A pH, or a density in g/mL: a plain number with two places.
    Fine,
}

keyed! {
    /// The units in which figures are shown and bare numbers are read.
    UnitSystem {
        /// Litres, centimetres, degrees Celsius.
        Metric = "metric",
        /// US gallons, inches, degrees Fahrenheit.
        UsCustomary = "us",
    }
}

impl Dimension {
    fn unit_in(self, system: UnitSystem) -> &'static Unit {
        // The first unit of each list is the saved one, the second its US customary counterpart
        // where growers use one.
        let us = matches!(
            self,
            Self::Length
                | Self::Elevation
                | Self::Volume
                | Self::Mass
                | Self::Temperature
                | Self::StockStrength
                | Self::FloorLoad
                | Self::WaterUse
                | Self::Weight
                | Self::SmallLength
                | Self::Run
                | Self::Area
                | Self::Price
                | Self::PriceOfLength
                | Self::PriceOfArea
                | Self::Density
                | Self::Force
                | Self::Moment
                | Self::Stress
        ) && system == UnitSystem::UsCustomary;
        &self.units()[usize::from(us)]
    }

    /// The symbol beside a field of this dimension.
    pub fn symbol(self, system: UnitSystem) -> &'static str {
        self.unit_in(system).names[0]
    }

    /// A saved value (in the unit of the JSON name) expressed in the unit of a system.
    ///
    /// ```
    /// use slackwater::plan::{Dimension, UnitSystem};
    /// let inches = Dimension::Length.in_system(30.48, UnitSystem::UsCustomary);
    /// assert!((inches - 12.0).abs() < 1e-12);
    /// ```
    pub fn in_system(self, saved: f64, system: UnitSystem) -> f64 {
        let unit = self.unit_in(system);
        (saved - unit.offset) / unit.scale
    }

    /// A value in the unit of a system as it is saved: the way back from [`Self::in_system`].
    pub fn saved(self, value: f64, system: UnitSystem) -> f64 {
        let unit = self.unit_in(system);
        value * unit.scale + unit.offset
    }

    /// The text of a saved value in the unit of a system, without the symbol: the shortest that
    /// reads back to the same value, which is what was typed; where it takes more than six digits,
    /// as after a change of units, four significant ones. The saved value is not touched by how it
    /// is shown.
    pub fn text(self, saved: f64, system: UnitSystem) -> String {
        // What a conversion there and back costs in the last bits.
        const SAME: f64 = 1e-12;
        let value = self.in_system(saved, system);
        (1..=6)
            .map(|digits| significant(value, digits))
            .find(|text| {
                double(text).is_some_and(|read| (read - value).abs() <= SAME * value.abs())
            })
            .unwrap_or_else(|| significant(value, 4))
    }
}

/// A number rounded to `digits` significant digits, written without trailing zeros; with an
/// exponent only where hundreds of zeros would be written else.
pub fn significant(value: f64, digits: usize) -> String {
    if value == 0.0 || !value.is_finite() {
        return "0".to_owned();
    }
    let scientific = format!("{:.*e}", digits.saturating_sub(1), value);
    let rounded = double(&scientific).unwrap_or(value);
    // Both write the shortest text that reads back to the same number.
    if (1e-9..1e15).contains(&rounded.abs()) {
        format!("{rounded}")
    } else {
        format!("{rounded:e}")
    }
}
