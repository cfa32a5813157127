//! Figures, units, dates and lists, as people of the reader's language and region write them.

use super::say::*;
use crate::plan::{Dimension, Figure, UnitSystem, figure, grams, significant};

/// A figure in the reader's units, as text.
pub fn show(dimension: Dimension, saved: f64, units: UnitSystem) -> String {
    written(figure(dimension, saved, units))
}

/// A mass for the scale, always in grams.
pub fn on_scale(mass_g: f64) -> String {
    written(grams(mass_g))
}

/// A plain number with so many significant digits.
pub fn rounded(value: f64, digits: usize) -> String {
    number(significant(value, digits))
}

/// A plain number with so many decimals.
pub fn places(value: f64, decimals: usize) -> String {
    number(format!("{value:.decimals$}"))
}

fn written(of: Figure) -> String {
    let Figure { text, symbol } = of;
    // A point in the symbol is no decimal mark.
    Figure {
        text: number(text),
        symbol: unit(symbol),
    }
    .to_string()
}

/// The symbol of a dimension's unit.
pub fn symbol(dimension: Dimension, units: UnitSystem) -> &'static str {
    unit(dimension.symbol(units))
}

/// A unit's symbol as the language writes it; those of the metric system are the same everywhere.
pub fn unit(symbol: &'static str) -> &'static str {
    match symbol {
        "in" => unit_inch(),
        "ft" => unit_foot(),
        "ft²" => unit_square_foot(),
        "lb/ft²" => unit_pound_per_square_foot(),
        "fl oz" => unit_fluid_ounce(),
        "days" => unit_days(),
        other => other,
    }
}

/// A date, from year-month-day, as people write it.
pub fn date(written: &str) -> String {
    let parts: Vec<&str> = written.split('-').collect();
    let (&[year, _, day], Some(name)) = (parts.as_slice(), month(&parts)) else {
        return written.to_owned();
    };
    Date {
        day: day.trim_start_matches('0'),
        month: name,
        year,
    }
    .text()
}

fn month(parts: &[&str]) -> Option<&'static str> {
    let names = [
        month_1, month_2, month_3, month_4, month_5, month_6, month_7, month_8, month_9, month_10,
        month_11, month_12,
    ];
    let month: usize = parts.get(1)?.parse().ok()?;
    Some(names.get(month.checked_sub(1)?)?())
}

/// Several things that belong together: `a`, `a and b`, `a, b and c`.
pub fn and_list(items: &[String]) -> String {
    match items {
        [] => String::new(),
        [only] => only.clone(),
        [before @ .., last] => ListAnd {
            before: &before.join(", "),
            last,
        }
        .text(),
    }
}
