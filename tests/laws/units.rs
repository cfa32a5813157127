//! What a field shows in either system of units reads back to what was saved.

use slackwater::catalog::Keyed;
use slackwater::plan::{Dimension, Field, Limits, UnitSystem, read_text, significant};

use crate::seeded::Seeded;

/// A value of many digits, as a change of units leaves it, is shown with four: half a unit of the
/// last, at worst.
const SHOWN: f64 = 5.000_001e-4;
/// A value as a person types it comes back but for the last bits of a conversion.
const TYPED: f64 = 1e-12;

/// The fields that hold numbers, with limits.
fn numeric() -> impl Iterator<Item = (Field, Limits)> {
    Field::ALL
        .iter()
        .filter_map(|&field| Some((field, field.limits()?)))
        .filter(|(_, limits)| limits.dimension != Dimension::Date)
}

#[test]
fn shown_texts_read_back_in_both_systems() {
    let mut random = Seeded::new(60);
    for (field, limits) in numeric() {
        let mut values = vec![
            limits.low,
            limits.high,
            limits.usual_low,
            limits.usual_high,
            0.0,
        ];
        for _ in 0..200 {
            values.push(random.between(limits.low, limits.high));
            values.push(random.between(limits.usual_low, limits.usual_high));
        }
        for value in values {
            for &system in UnitSystem::ALL {
                let (shown, back) = shown_and_back(field, limits.dimension, value, system);
                // Around the zero of a scale the digits count from what is shown.
                let scale = limits.dimension.in_system(value, system).abs();
                assert!(
                    (back - value).abs() <= SHOWN * scale.max(value.abs()),
                    "{field:?}: {value} shown as {shown}, read as {back}"
                );
                same_with_symbol_and_comma(field, limits.dimension, &shown, back, system);
            }
        }
    }
}

#[test]
fn typed_figures_are_shown_as_they_were_typed() {
    let mut random = Seeded::new(62);
    for (field, limits) in numeric() {
        let dimension = limits.dimension;
        for &system in UnitSystem::ALL {
            let low = dimension.in_system(limits.usual_low, system);
            let high = dimension.in_system(limits.usual_high, system);
            for _ in 0..100 {
                let digits = random.pick(&[1, 2, 3, 4, 5, 6]);
                let typed = significant(random.between(low, high), digits);
                let saved = read_text(field, &typed, system).expect("a plain number");
                let (shown, back) = shown_and_back(field, dimension, saved, system);
                assert_eq!(shown, typed, "{field:?} saved as {saved}");
                assert!((back - saved).abs() <= TYPED * saved.abs().max(1.0));
            }
        }
    }
}

fn shown_and_back(
    field: Field,
    dimension: Dimension,
    value: f64,
    system: UnitSystem,
) -> (String, f64) {
    let shown = dimension.text(value, system);
    let back = read_text(field, &shown, system)
        .unwrap_or_else(|problem| panic!("{field:?} {value} as {shown}: {problem:?}"));
    (shown, back)
}

fn same_with_symbol_and_comma(
    field: Field,
    dimension: Dimension,
    shown: &str,
    back: f64,
    system: UnitSystem,
) {
    // With its symbol a figure means the same in either system.
    let symbol = dimension.symbol(system);
    for &other in UnitSystem::ALL {
        if !symbol.is_empty() {
            let read = read_text(field, &format!("{shown} {symbol}"), other);
            assert_eq!(read, Ok(back), "{field:?} {shown} {symbol}");
        }
    }
    // So does it with a decimal comma, where that cannot be taken for thousands.
    if let Some((_, decimals)) = shown.split_once('.')
        && decimals.len() != 3
    {
        let comma = shown.replace('.', ",");
        assert_eq!(read_text(field, &comma, system), Ok(back), "{comma}");
    }
}

#[test]
fn no_text_makes_the_reader_panic_or_answer_with_no_number() {
    const PIECES: &[&str] = &[
        "1", "12", "0", "7", ".", ",", "-", "−", "+", "e", "E", "/", " ", "cm", "in", "\"", "ft",
        "'", "L", "gal", "°F", "c", "%", "S", "N", "µS", "MJ/m2", "kWh", "1/2", "999", "1e308",
        "e9", "NaN", "inf", "½", "٣", "e-400", "\u{a0}", "m³", "fl oz", "//", "--",
    ];
    let mut random = Seeded::new(61);
    let mut read = 0;
    for _ in 0..40_000 {
        let text: String = (0..random.whole(0, 7))
            .map(|_| random.pick(PIECES))
            .collect();
        let field = random.pick(Field::ALL);
        let system = random.pick(UnitSystem::ALL);
        if let Ok(value) = read_text(field, &text, system) {
            assert!(value.is_finite(), "{text}");
            read += 1;
        }
    }
    assert!(read > 500, "only {read} were numbers");
}
