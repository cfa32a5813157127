//! Figures as a person reads them: in their own units, rounded to what a tape, a jug or a scale can
//! follow.

use super::quantity::{Dimension, UnitSystem};

/// A rounded figure and the symbol of its unit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Figure {
    /// The number.
    pub text: String,
    /// The symbol; empty for a plain number.
    pub symbol: &'static str,
}

impl std::fmt::Display for Figure {
    fn fmt(&self, formatter: &mut std::fmt::Formatter) -> std::fmt::Result {
        formatter.write_str(&self.text)?;
        match self.symbol {
            "" => Ok(()),
            "%" | "°" => formatter.write_str(self.symbol),
            // A figure and its unit stay on one line.
            symbol => write!(formatter, "\u{a0}{symbol}"),
        }
    }
}

/// A saved value (in the unit of its dimension's JSON name) as it is shown in a system of units.
///
/// ```
/// use slackwater::plan::{Dimension, UnitSystem, figure};
/// let mark = figure(Dimension::Length, 5.13, UnitSystem::Metric);
/// assert_eq!(mark.to_string(), "5.1\u{a0}cm");
/// let mark = figure(Dimension::Length, 5.13, UnitSystem::UsCustomary);
/// assert_eq!(mark.to_string(), "2\u{a0}in");
/// ```
pub fn figure(dimension: Dimension, saved: f64, system: UnitSystem) -> Figure {
    let value = dimension.in_system(saved, system);
    let symbol = dimension.symbol(system);
    let us = system == UnitSystem::UsCustomary;
    let shown = |text: String| Figure { text, symbol };
    match dimension {
        Dimension::Length if us => shown(eighths(value)),
        Dimension::SmallLength if us => shown(thirty_seconds_or_eighths(value)),
        Dimension::Length | Dimension::DailyRadiation | Dimension::Latitude => {
            shown(decimals(value, 1))
        }
        Dimension::Volume => volume(saved, value, system),
        Dimension::Mass if !us && value >= 1000.0 => Figure {
            text: decimals(value / 1000.0, 2),
            symbol: "kg",
        },
        Dimension::Mass if us && value >= 16.0 => Figure {
            text: decimals(value / 16.0, 2),
            symbol: "lb",
        },
        Dimension::Mass if us => shown(decimals(value, 1)),
        Dimension::Mass if value > 0.0 && value < 0.1 => Figure {
            text: significant_decimals(value * 1000.0, 2),
            symbol: "mg",
        },
        Dimension::Mass if value < 1.0 => shown(decimals(value, 2)),
        Dimension::Mass | Dimension::SmallLength => {
            shown(decimals(value, usize::from(value < 10.0)))
        }
        Dimension::Conductivity
        | Dimension::Price
        | Dimension::PriceOfLength
        | Dimension::PriceOfArea
        | Dimension::Money
        | Dimension::Fine => shown(decimals(value, 2)),
        Dimension::WaterUse
        | Dimension::Factor
        | Dimension::Concentration
        | Dimension::Percent
        | Dimension::DailyLight
        | Dimension::Density
        | Dimension::Stress => shown(significant_decimals(value, 2)),
        Dimension::Temperature
        | Dimension::Hours
        | Dimension::Weight
        | Dimension::Run
        | Dimension::Area
        | Dimension::StockStrength => shown(decimals(value, usize::from(value.abs() < 10.0))),
        // Three digits.
        Dimension::Force | Dimension::Moment => {
            let places = usize::from(value.abs() < 100.0) + usize::from(value.abs() < 10.0);
            shown(decimals(value, places))
        }
        Dimension::Elevation
        | Dimension::PhotonFlux
        | Dimension::Days
        | Dimension::CarbonDioxide
        | Dimension::Count
        | Dimension::FloorLoad
        | Dimension::Date => shown(decimals(value, 0)),
    }
}

/// A mass for the scale, always in grams: kitchen scales everywhere show them, and ounces are too
/// coarse for a bottle's dose.
pub fn grams(mass_g: f64) -> Figure {
    figure(Dimension::Mass, mass_g, UnitSystem::Metric)
}

fn volume(litres: f64, value: f64, system: UnitSystem) -> Figure {
    let places = |value: f64| match value {
        v if v < 10.0 => 2 - usize::from(system == UnitSystem::Metric),
        v if v < 100.0 => 1,
        _ => 0,
    };
    let symbol = Dimension::Volume.symbol(system);
    if system == UnitSystem::UsCustomary && value < 0.25 {
        return Figure {
            text: significant_decimals(value * 128.0, 2),
            symbol: "fl oz",
        };
    }
    if system == UnitSystem::Metric && litres < 1.0 {
        return Figure {
            text: significant_decimals(litres * 1000.0, 2),
            symbol: "mL",
        };
    }
    Figure {
        text: decimals(value, places(value)),
        symbol,
    }
}

/// Fixed places, without a trailing zero fraction and without a minus before zero.
fn decimals(value: f64, places: usize) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let text = format!("{value:.places$}");
    let text = if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.')
    } else {
        &text
    };
    if text == "-0" {
        "0".to_owned()
    } else {
        text.replace('-', "−")
    }
}

/// At least `digits` significant digits, none of them after the point from ten times that on.
fn significant_decimals(value: f64, digits: usize) -> String {
    let size = value.abs();
    let places = match size {
        s if s >= 10.0 || s == 0.0 => 0,
        s if s >= 1.0 => digits - 1,
        s if s >= 0.1 => digits,
        _ => digits + 1,
    };
    decimals(value, places)
}

/// To the nearest eighth, as a tape measure shows it.
fn eighths(value: f64) -> String {
    const FRACTIONS: [&str; 8] = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];
    parts(value, FRACTIONS)
}

/// To the nearest eighth; what is less than one to the nearest thirty-second, as a ruler shows it.
fn thirty_seconds_or_eighths(value: f64) -> String {
    const FRACTIONS: [&str; 32] = {
        let mut all = [""; 32];
        (all[1], all[2], all[3]) = ("1/32", "1/16", "3/32");
        all
    };
    // Half a thirty-second below an eighth.
    if value.abs() < 3.5 / 32.0 {
        parts(value, FRACTIONS)
    } else {
        eighths(value)
    }
}

/// To the nearest of so many parts, named by `fractions`.
fn parts<const N: usize>(value: f64, fractions: [&str; N]) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let parts = N as f64;
    let all = (value.abs() * parts).round();
    let whole = (all / parts).floor();
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a whole number below the number of parts"
    )]
    let fraction = fractions[((all - whole * parts) as usize).min(N - 1)];
    let sign = if value < 0.0 && all > 0.0 { "−" } else { "" };
    match (whole, fraction) {
        (0.0, "") => "0".to_owned(),
        (0.0, fraction) => format!("{sign}{fraction}"),
        (whole, "") => format!("{sign}{whole}"),
        (whole, fraction) => format!("{sign}{whole}\u{a0}{fraction}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::Keyed;

    fn shown(dimension: Dimension, saved: f64, system: UnitSystem) -> String {
        figure(dimension, saved, system)
            .to_string()
            .replace('\u{a0}', " ")
    }

    #[test]
    fn figures_are_rounded_to_what_can_be_measured() {
        let metric = |dimension, saved| shown(dimension, saved, UnitSystem::Metric);
        assert_eq!(metric(Dimension::Volume, 4.064), "4.1 L");
        assert_eq!(metric(Dimension::Volume, 0.1743), "174 mL");
        assert_eq!(metric(Dimension::Volume, 358.8), "359 L");
        assert_eq!(metric(Dimension::Mass, 7.02), "7 g");
        assert_eq!(metric(Dimension::Mass, 33.3), "33 g");
        assert_eq!(metric(Dimension::Mass, 0.54), "0.54 g");
        assert_eq!(metric(Dimension::Mass, 0.031), "31 mg");
        assert_eq!(metric(Dimension::Mass, 1234.0), "1.23 kg");
        assert_eq!(metric(Dimension::Conductivity, 1.4999), "1.5 mS/cm");
        assert_eq!(metric(Dimension::Temperature, -0.04), "0 °C");
        assert_eq!(metric(Dimension::Temperature, -2.5), "−2.5 °C");
        assert_eq!(metric(Dimension::Percent, 0.05), "0.05%");
    }

    #[test]
    fn inches_come_in_eighths() {
        let us = |saved| shown(Dimension::Length, saved, UnitSystem::UsCustomary);
        assert_eq!(us(2.54 * 1.75), "1 3/4 in");
        assert_eq!(us(2.54 * 0.99), "1 in");
        assert_eq!(us(0.3), "1/8 in");
        assert_eq!(us(-2.54 * 0.5), "−1/2 in");
        assert_eq!(us(0.0), "0 in");
    }

    #[test]
    fn small_lengths_come_in_thirty_seconds_below_an_eighth() {
        let us = |saved| shown(Dimension::SmallLength, saved, UnitSystem::UsCustomary);
        assert_eq!(us(0.3), "0 in");
        assert_eq!(us(0.8), "1/32 in");
        assert_eq!(us(1.6), "1/16 in");
        assert_eq!(us(-2.4), "−3/32 in");
        assert_eq!(us(2.8), "1/8 in");
        assert_eq!(us(3.2), "1/8 in");
        assert_eq!(us(46.0), "1 3/4 in");
        assert_eq!(us(25.4), "1 in");
    }

    #[test]
    fn forces_stresses_and_strengths_are_rounded_alike_in_both_systems() {
        let both = |dimension, saved| {
            UnitSystem::ALL
                .iter()
                .map(|&system| shown(dimension, saved, system))
                .collect::<Vec<_>>()
        };
        assert_eq!(both(Dimension::Force, 176.7), ["177 N", "39.7 lbf"]);
        assert_eq!(
            both(Dimension::Moment, 13.0755),
            ["13.1 N·m", "9.64 lbf·ft"]
        );
        assert_eq!(both(Dimension::Stress, 1.23), ["1.2 MPa", "178 psi"]);
        assert_eq!(both(Dimension::Density, 25.0), ["25 kg/m³", "1.6 lb/ft³"]);
        assert_eq!(
            both(Dimension::StockStrength, 72.0),
            ["72 g/L", "9.6 oz/gal"]
        );
        assert_eq!(both(Dimension::PriceOfLength, 4.2), ["4.2 /m", "1.28 /ft"]);
    }
}
