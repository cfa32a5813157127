//! The smallest change of one field that mends a finding.

use super::Change;
use crate::catalog::Keyed;
use crate::plan::{Entry, Field, UnitSystem};

/// A number for a numeric field, in the unit of its name.
pub(super) fn number(field: Field, value: f64) -> Change {
    Change {
        field,
        value: Entry::from(value),
        unit: field
            .limits()
            .map(|limits| limits.dimension.symbol(UnitSystem::Metric))
            .filter(|symbol| !symbol.is_empty()),
    }
}

/// A member of a list for a choice.
pub(super) fn choice(field: Field, item: impl Keyed) -> Change {
    Change {
        field,
        value: Entry::from(item.key()),
        unit: None,
    }
}

/// The first of `steps` values from `from` in steps of `step` (either way) at which `mended` holds,
/// within the limits of the field; none where no value does.
pub(super) fn first(
    field: Field,
    from: f64,
    step: f64,
    steps: u32,
    mended: impl Fn(f64) -> bool,
) -> Option<Change> {
    let limits = field.limits()?;
    // Multiples of the step, so that what is written is round; a value on one to within rounding
    // leaves it by a whole step.
    let start = (from / step + 1e-9).floor();
    (1..=steps)
        // Hundredths of a step hide what a product of doubles leaves behind.
        .map(|index| libm::round((start + f64::from(index)) * step * 1e4) / 1e4)
        .take_while(|value| (limits.low..=limits.high).contains(value))
        .find(|&value| mended(value))
        .map(|value| number(field, value))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_round_value_that_does_is_taken() {
        let up = first(Field::BoardThickness, 2.55, 0.1, 100, |value| value > 2.84);
        assert_eq!(up, Some(number(Field::BoardThickness, 2.9)));
        let down = first(Field::BraceSpacing, 120.0, -1.0, 200, |value| value < 118.0);
        assert_eq!(down, Some(number(Field::BraceSpacing, 117.0)));
        assert_eq!(
            first(Field::PropRows, 39.0, 1.0, 9, |value| value > 40.0),
            None
        );
    }
}
