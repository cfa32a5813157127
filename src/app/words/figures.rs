//! Figures, units, dates and lists, as people of the reader's language and region write them.

use super::say::*;
use crate::plan::{Dimension, Figure, UnitSystem, figure, grams, significant};

/// A figure in the reader's units, as text.
pub fn show(dimension: Dimension, saved: f64, units: UnitSystem) -> String {
    written(figure(dimension, saved, units))
}

/// The temperature that meters reckon conductivity to.
pub(super) fn reference(units: UnitSystem) -> String {
    show(Dimension::Temperature, 25.0, units)
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
    counted(&text, symbol)
}

/// A number written with a point, and its unit, in the singular after exactly 1.
pub(super) fn counted(text: &str, symbol: &'static str) -> String {
    // A point in the symbol is no decimal mark.
    Figure {
        symbol: if text == "1" {
            unit_of_one(symbol)
        } else {
            unit(symbol)
        },
        text: number(text),
    }
    .to_string()
}

/// A limit or an entry in the reader's units, to the last digit that it has.
pub(super) fn in_full(dimension: Dimension, saved: f64, units: UnitSystem) -> String {
    let text = dimension.text(saved, units).replace('-', "−");
    counted(&text, dimension.symbol(units))
}

/// A weight that lies on each metre of a length, on each foot in US units.
pub(super) fn on_length(kg_per_m: f64, units: UnitSystem) -> String {
    let metres = Dimension::Run.saved(1.0, units);
    show(Dimension::Weight, kg_per_m * metres, units)
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
        "lb/ft³" => unit_pound_per_cubic_foot(),
        "lbf·ft" => unit_foot_pound_force(),
        "/ft" => unit_per_foot(),
        "/ft²" => unit_per_square_foot(),
        "fl oz" => unit_fluid_ounce(),
        "days" => unit_days(),
        other => other,
    }
}

/// The symbol where there is exactly one.
fn unit_of_one(symbol: &'static str) -> &'static str {
    match symbol {
        "ft" => unit_one_foot(),
        "ft²" => unit_one_square_foot(),
        "days" => unit_day(),
        other => unit(other),
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
