//! Typed text to numbers and back: decimal comma or point, typed units, metric and US customary.

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

/// One way to write a quantity: `saved = typed × scale + offset`.
struct Unit {
    /// How it is shown, then what else is understood; compared in lower case.
    names: &'static [&'static str],
    scale: f64,
    offset: f64,
}

const fn unit(names: &'static [&'static str], scale: f64) -> Unit {
    Unit {
        names,
        scale,
        offset: 0.0,
    }
}

// The factors of inch, foot, US gallon, ounce and pound are exact by definition (international
// yard and pound agreement of 1959; US gallon of 231 cubic inches).
const LITRES_PER_GALLON: f64 = 3.785_411_784;
const GRAMS_PER_OUNCE: f64 = 28.349_523_125;

const LENGTH: &[Unit] = &[
    unit(
        &[
            "cm",
            "centimetre",
            "centimetres",
            "centimeter",
            "centimeters",
        ],
        1.0,
    ),
    unit(&["in", "inch", "inches", "\"", "”", "″"], 2.54),
    unit(
        &[
            "mm",
            "millimetre",
            "millimetres",
            "millimeter",
            "millimeters",
        ],
        0.1,
    ),
    unit(&["m", "metre", "metres", "meter", "meters"], 100.0),
    unit(&["ft", "foot", "feet", "'", "’", "′"], 30.48),
];
const ELEVATION: &[Unit] = &[
    unit(&["m", "metre", "metres", "meter", "meters"], 1.0),
    unit(&["ft", "foot", "feet", "'", "’", "′"], 0.3048),
    unit(&["km"], 1000.0),
];
const VOLUME: &[Unit] = &[
    unit(&["L", "litre", "litres", "liter", "liters"], 1.0),
    unit(&["gal", "gallon", "gallons"], LITRES_PER_GALLON),
    unit(
        &[
            "mL",
            "millilitre",
            "millilitres",
            "milliliter",
            "milliliters",
        ],
        0.001,
    ),
    unit(&["qt", "quart", "quarts"], LITRES_PER_GALLON / 4.0),
    unit(&["pt", "pint", "pints"], LITRES_PER_GALLON / 8.0),
    unit(&["fl oz", "floz"], LITRES_PER_GALLON / 128.0),
    unit(&["m3", "m³"], 1000.0),
];
const MASS: &[Unit] = &[
    unit(&["g", "gram", "grams"], 1.0),
    unit(&["oz", "ounce", "ounces"], GRAMS_PER_OUNCE),
    unit(&["kg", "kilogram", "kilograms"], 1000.0),
    unit(&["lb", "lbs", "pound", "pounds"], GRAMS_PER_OUNCE * 16.0),
    unit(&["mg"], 0.001),
];
const TEMPERATURE: &[Unit] = &[
    unit(&["°C", "c", "celsius"], 1.0),
    Unit {
        names: &["°F", "f", "fahrenheit"],
        scale: 5.0 / 9.0,
        offset: -160.0 / 9.0,
    },
];
const PERCENT: &[Unit] = &[unit(&["%", "percent", "per cent"], 1.0)];
const CONDUCTIVITY: &[Unit] = &[
    unit(&["mS/cm", "ms", "ds/m"], 1.0),
    unit(&["µS/cm", "μs/cm", "us/cm", "µs", "μs", "us"], 0.001),
];
const CONCENTRATION: &[Unit] = &[
    unit(&["mg/L", "ppm", "g/m3", "g/m³"], 1.0),
    unit(&["g/L"], 1000.0),
];
const STOCK_STRENGTH: &[Unit] = &[
    unit(&["g/L"], 1.0),
    unit(&["oz/gal"], GRAMS_PER_OUNCE / LITRES_PER_GALLON),
    unit(&["lb/gal"], GRAMS_PER_OUNCE * 16.0 / LITRES_PER_GALLON),
    unit(&["kg/L"], 1000.0),
];
const DAILY_RADIATION: &[Unit] = &[
    unit(&["MJ/m²", "mj/m2", "mj", "mj/m²/day", "mj/m2/day"], 1.0),
    unit(
        &["kWh/m²", "kwh/m2", "kwh", "kwh/m²/day", "kwh/m2/day"],
        3.6,
    ),
    // Mean power over 24 hours.
    unit(&["W/m²", "w/m2", "w"], 0.0864),
];
const PHOTON_FLUX: &[Unit] = &[unit(
    &[
        "µmol/m²/s",
        "μmol/m²/s",
        "umol/m2/s",
        "µmol",
        "μmol",
        "umol",
    ],
    1.0,
)];
const HOURS: &[Unit] = &[
    unit(&["h", "hour", "hours", "hr"], 1.0),
    unit(&["min", "minutes"], 1.0 / 60.0),
];
const DAYS: &[Unit] = &[
    unit(&["days", "d", "day"], 1.0),
    unit(&["weeks", "week", "wk"], 7.0),
];
const LATITUDE: &[Unit] = &[
    unit(&["°", "deg", "degrees", "n", "°n"], 1.0),
    unit(&["s", "°s"], -1.0),
];
const CARBON_DIOXIDE: &[Unit] = &[unit(&["ppm", "µmol/mol"], 1.0)];
const FLOOR_LOAD: &[Unit] = &[
    unit(&["kg/m²", "kg/m2"], 1.0),
    unit(
        &["lb/ft²", "lb/ft2"],
        GRAMS_PER_OUNCE * 16.0 / 1000.0 / (0.3048 * 0.3048),
    ),
];
const WATER_USE: &[Unit] = &[
    unit(&["L/kg"], 1.0),
    unit(
        &["gal/lb"],
        LITRES_PER_GALLON / (GRAMS_PER_OUNCE * 16.0 / 1000.0),
    ),
];
const WEIGHT: &[Unit] = &[
    unit(&["kg"], 1.0),
    unit(&["lb"], GRAMS_PER_OUNCE * 16.0 / 1000.0),
];
const SMALL_LENGTH: &[Unit] = &[unit(&["mm"], 1.0), unit(&["in"], 25.4)];
const DAILY_LIGHT: &[Unit] = &[unit(&["mol/m²"], 1.0)];
const NO_UNIT: &[Unit] = &[unit(&[""], 1.0)];

impl Dimension {
    fn units(self) -> &'static [Unit] {
        match self {
            Self::Length => LENGTH,
            Self::Elevation => ELEVATION,
            Self::Volume => VOLUME,
            Self::Mass => MASS,
            Self::Temperature => TEMPERATURE,
            Self::Percent => PERCENT,
            Self::Conductivity => CONDUCTIVITY,
            Self::Concentration => CONCENTRATION,
            Self::StockStrength => STOCK_STRENGTH,
            Self::DailyRadiation => DAILY_RADIATION,
            Self::PhotonFlux => PHOTON_FLUX,
            Self::Hours => HOURS,
            Self::Days => DAYS,
            Self::Latitude => LATITUDE,
            Self::CarbonDioxide => CARBON_DIOXIDE,
            Self::FloorLoad => FLOOR_LOAD,
            Self::WaterUse => WATER_USE,
            Self::Weight => WEIGHT,
            Self::SmallLength => SMALL_LENGTH,
            Self::DailyLight => DAILY_LIGHT,
            Self::Count | Self::Factor | Self::Date => NO_UNIT,
        }
    }

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
                text.parse::<f64>()
                    .is_ok_and(|read| (read - value).abs() <= SAME * value.abs())
            })
            .unwrap_or_else(|| significant(value, 4))
    }

    /// Reads typed text. A bare number is in the unit of `system`; a typed unit always wins.
    /// `2 ft 6 in` adds up; `7 1/2` is a mixed fraction.
    ///
    /// # Errors
    /// [`NotRead`] says what could not be read.
    ///
    /// ```
    /// use slackwater::plan::{Dimension, UnitSystem};
    /// assert_eq!(Dimension::Length.read("2,5", UnitSystem::Metric), Ok(2.5));
    /// assert_eq!(Dimension::Length.read("1 in", UnitSystem::Metric), Ok(2.54));
    /// ```
    pub fn read(self, text: &str, system: UnitSystem) -> Result<f64, NotRead> {
        let text = text.trim();
        if text.is_empty() {
            return Err(NotRead::Empty);
        }
        let mut rest = text;
        let mut total: Option<f64> = None;
        while !rest.is_empty() {
            let (number, after) = leading_number(rest)?;
            let unit_length = after
                .char_indices()
                .find(|(_, c)| c.is_ascii_digit() || matches!(c, '-' | '+' | '−'))
                .map_or(after.len(), |(index, _)| self.unit_end(after, index));
            let (name, next) = after.split_at(unit_length);
            let unit = self.named_unit(
                name.trim(),
                system,
                total.is_some() || !next.trim().is_empty(),
            )?;
            let value = number * unit.scale + unit.offset;
            // Only lengths, volumes, masses and times add up; 20 °C 3 °C is a slip of the finger.
            total = match total {
                None => Some(value),
                Some(sum) if unit.offset == 0.0 && self != Self::Latitude => Some(sum + value),
                Some(_) => return Err(NotRead::NotANumber),
            };
            rest = next.trim_start();
        }
        match total {
            Some(value) if value.is_finite() => Ok(value),
            _ => Err(NotRead::TooLarge),
        }
    }

    /// The end of a unit's name in `after` when a digit stands at `index`: the digit belongs to
    /// the unit in `MJ/m2`, and to the next number in `2 ft 6 in`.
    fn unit_end(self, after: &str, index: usize) -> usize {
        let whole = after.trim().to_lowercase();
        if self
            .units()
            .iter()
            .any(|u| u.names.iter().any(|n| n.to_lowercase() == whole))
        {
            after.len()
        } else {
            index
        }
    }

    fn named_unit(
        self,
        name: &str,
        system: UnitSystem,
        several: bool,
    ) -> Result<&'static Unit, NotRead> {
        if name.is_empty() {
            // `2 ft 6` leaves open what the 6 is.
            return if several {
                Err(NotRead::NotANumber)
            } else {
                Ok(self.unit_in(system))
            };
        }
        let lower = name.to_lowercase();
        self.units()
            .iter()
            .find(|unit| unit.names.iter().any(|known| known.to_lowercase() == lower))
            .ok_or(
                if name.chars().any(char::is_alphabetic) || name.chars().count() < 3 {
                    NotRead::UnknownUnit
                } else {
                    NotRead::NotANumber
                },
            )
    }
}

/// Why a typed text is no quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotRead {
    /// Nothing was typed.
    Empty,
    /// No number at its start, or something after it that is neither unit nor number.
    NotANumber,
    /// A number followed by a unit that this field does not know.
    UnknownUnit,
    /// `1,234` may be one and a bit or more than a thousand.
    CommaOrThousands,
    /// Larger than any number that can be held.
    TooLarge,
}

/// Splits a number (sign, digits, decimal comma or point, grouping, exponent, mixed fraction) off
/// the start of a text.
fn leading_number(text: &str) -> Result<(f64, &str), NotRead> {
    let (negative, body) = match text.strip_prefix(['-', '−']) {
        Some(body) => (true, body.trim_start()),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    if !body.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '.' | ',')) {
        return Err(NotRead::NotANumber);
    }
    let end = body
        .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',')))
        .unwrap_or(body.len());
    let (digits, mut rest) = body.split_at(end);
    let mut plain = plain_digits(digits)?;
    // An exponent: 1e3, 1E-3; but not the e of a unit.
    let mut tail = rest.chars();
    if matches!(tail.next(), Some('e' | 'E')) {
        let exponent = tail.as_str();
        let sign = usize::from(exponent.starts_with(['-', '+']));
        let length = exponent[sign..]
            .chars()
            .take_while(char::is_ascii_digit)
            .count();
        if length > 0 {
            plain.push('e');
            plain.push_str(&exponent[..sign + length]);
            rest = &exponent[sign + length..];
        }
    }
    let mut value: f64 = plain.parse().map_err(|_| NotRead::NotANumber)?;
    if let Some((fraction, after)) = leading_fraction(rest) {
        value += fraction;
        rest = after;
    } else if let Some(after) = rest.strip_prefix('/') {
        let length = after.chars().take_while(char::is_ascii_digit).count();
        let below: f64 = after[..length].parse().map_err(|_| NotRead::NotANumber)?;
        if below == 0.0 {
            return Err(NotRead::NotANumber);
        }
        value /= below;
        rest = &after[length..];
    }
    if !value.is_finite() {
        return Err(NotRead::TooLarge);
    }
    Ok((if negative { -value } else { value }, rest.trim_start()))
}

/// ` 1/2` after a whole number, as in `7 1/2`.
fn leading_fraction(text: &str) -> Option<(f64, &str)> {
    let body = text.strip_prefix(' ')?.trim_start();
    let (above, rest) = body.split_once('/')?;
    let length = rest.chars().take_while(char::is_ascii_digit).count();
    let above: u32 = above.parse().ok()?;
    let below: u32 = rest[..length].parse().ok()?;
    (below > 0 && above < below).then(|| (f64::from(above) / f64::from(below), &rest[length..]))
}

/// Digits with at most a decimal point, from digits with points and commas in either role.
fn plain_digits(digits: &str) -> Result<String, NotRead> {
    let last = digits.rfind([',', '.']);
    let Some(last) = last else {
        return Ok(digits.to_owned());
    };
    let mark = digits[last..].chars().next().unwrap_or('.');
    let other = if mark == ',' { '.' } else { ',' };
    let (before, after) = (&digits[..last], &digits[last + 1..]);
    let grouped = |separator| {
        let mut groups = before.split(separator);
        let first = groups.next().unwrap_or_default();
        (1..=3).contains(&first.len()) && groups.all(|group| group.len() == 3)
    };
    if before.contains(mark) {
        // 1,234,567: every mark groups.
        return if !before.contains(other) && grouped(mark) && after.len() == 3 {
            Ok(digits.replace(mark, ""))
        } else {
            Err(NotRead::NotANumber)
        };
    }
    if before.contains(other) {
        return if grouped(other) {
            Ok(format!("{}.{after}", before.replace(other, "")))
        } else {
            Err(NotRead::NotANumber)
        };
    }
    if mark == ',' && after.len() == 3 && !before.is_empty() && before.len() <= 3 && before != "0" {
        return Err(NotRead::CommaOrThousands);
    }
    if before.is_empty() && after.is_empty() {
        return Err(NotRead::NotANumber);
    }
    Ok(format!("{before}.{after}"))
}

/// A number rounded to `digits` significant digits, written without trailing zeros; with an
/// exponent only where hundreds of zeros would be written else.
pub fn significant(value: f64, digits: usize) -> String {
    if value == 0.0 || !value.is_finite() {
        return "0".to_owned();
    }
    let scientific = format!("{:.*e}", digits.saturating_sub(1), value);
    let rounded: f64 = scientific.parse().unwrap_or(value);
    // Both write the shortest text that reads back to the same number.
    if (1e-9..1e15).contains(&rounded.abs()) {
        format!("{rounded}")
    } else {
        format!("{rounded:e}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::science::units::{Length, Mass, ThermodynamicTemperature, Volume};
    use crate::science::units::{length, mass, thermodynamic_temperature, volume};

    const METRIC: UnitSystem = UnitSystem::Metric;
    const US: UnitSystem = UnitSystem::UsCustomary;

    #[test]
    fn comma_and_point_mean_the_same() {
        for text in [
            "12.5", "12,5", " 12,50 ", "+12.5", "12 1/2", "25/2", "1,25e1",
        ] {
            assert_eq!(Dimension::Length.read(text, METRIC), Ok(12.5), "{text}");
        }
        assert_eq!(Dimension::Length.read("1,234.5", METRIC), Ok(1234.5));
        assert_eq!(Dimension::Length.read("1.234,5", METRIC), Ok(1234.5));
        assert_eq!(Dimension::Length.read("0,125", METRIC), Ok(0.125));
        assert_eq!(Dimension::Latitude.read("−33.9", METRIC), Ok(-33.9));
    }

    #[test]
    fn what_cannot_be_told_is_refused() {
        assert_eq!(
            Dimension::Length.read("1,234", METRIC),
            Err(NotRead::CommaOrThousands)
        );
        assert_eq!(Dimension::Length.read("", METRIC), Err(NotRead::Empty));
        assert_eq!(
            Dimension::Length.read("deep", METRIC),
            Err(NotRead::NotANumber)
        );
        assert_eq!(
            Dimension::Length.read("NaN", METRIC),
            Err(NotRead::NotANumber)
        );
        assert_eq!(
            Dimension::Length.read("1e309", METRIC),
            Err(NotRead::TooLarge)
        );
        assert_eq!(
            Dimension::Length.read("12 L", METRIC),
            Err(NotRead::UnknownUnit)
        );
        assert_eq!(
            Dimension::Length.read("2 ft 6", METRIC),
            Err(NotRead::NotANumber)
        );
        assert_eq!(
            Dimension::Temperature.read("20 C 3 F", METRIC),
            Err(NotRead::NotANumber)
        );
        assert_eq!(
            Dimension::Length.read("1/0", METRIC),
            Err(NotRead::NotANumber)
        );
        assert_eq!(
            Dimension::Length.read("1.2.3", METRIC),
            Err(NotRead::NotANumber)
        );
    }

    #[test]
    fn a_typed_unit_wins_over_the_system() {
        assert_eq!(Dimension::Length.read("10 cm", US), Ok(10.0));
        assert_eq!(Dimension::Length.read("2 ft 6 in", METRIC), Ok(2.5 * 30.48));
        assert_eq!(Dimension::Length.read("7 1/2\"", METRIC), Ok(7.5 * 2.54));
        assert_eq!(Dimension::Conductivity.read("1500 µS/cm", METRIC), Ok(1.5));
        assert_eq!(Dimension::DailyRadiation.read("5 kWh/m2", METRIC), Ok(18.0));
        assert_eq!(Dimension::Latitude.read("34 S", METRIC), Ok(-34.0));
    }

    #[test]
    fn factors_agree_with_the_units_library() {
        let near = |ours: Result<f64, NotRead>, theirs: f64| {
            let ours = ours.expect("a quantity");
            // The library holds the gallon and the pound to seven digits; ours are exact.
            assert!(
                (ours - theirs).abs() <= 1e-6 * theirs.abs(),
                "{ours} {theirs}"
            );
        };
        near(
            Dimension::Length.read("7 ft", METRIC),
            Length::new::<length::foot>(7.0).get::<length::centimeter>(),
        );
        near(
            Dimension::Volume.read("5", US),
            Volume::new::<volume::gallon>(5.0).get::<volume::liter>(),
        );
        near(
            Dimension::Mass.read("3 lb", METRIC),
            Mass::new::<mass::pound>(3.0).get::<mass::gram>(),
        );
        let fahrenheit =
            ThermodynamicTemperature::new::<thermodynamic_temperature::degree_fahrenheit>(77.0);
        let celsius = fahrenheit.get::<thermodynamic_temperature::degree_celsius>();
        let ours = Dimension::Temperature
            .read("77 F", METRIC)
            .expect("a temperature");
        // The library passes through kelvin, which costs it a few digits.
        assert!((ours - celsius).abs() < 1e-10, "{ours} {celsius}");
    }

    #[test]
    fn shown_text_reads_back_to_what_is_shown() {
        for system in [METRIC, US] {
            for saved in [0.3, 2.54, 30.48, 61.0, 122.0, 1234.56] {
                let text = Dimension::Length.text(saved, system);
                let back = Dimension::Length.read(&text, system).expect("our own text");
                // Half a unit of the fourth digit.
                assert!(
                    (back - saved).abs() <= 5e-4 * saved,
                    "{text} {back} {saved}"
                );
            }
        }
        assert_eq!(Dimension::Length.text(30.48, US), "12");
        assert_eq!(Dimension::Length.text(28.8925, US), "11.375");
        assert_eq!(Dimension::Length.text(29.0, US), "11.42");
        assert_eq!(Dimension::Length.text(12.3456, METRIC), "12.3456");
        assert_eq!(Dimension::Temperature.text(25.0, US), "77");
    }
}
