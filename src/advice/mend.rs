//! The smallest change of one field that mends a finding.

use serde::Serialize;

use crate::catalog::Keyed;
use crate::plan::{Entry, Field};

/// A field and what to write into it, so that a finding goes away.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Mend {
    /// The field; its path in JSON.
    pub path: Field,
    /// What to write: a number in the unit of the field's name, or the key of a choice.
    pub entry: Entry,
}

impl Mend {
    /// A number for a numeric field.
    pub fn number(path: Field, value: f64) -> Self {
        Self {
            path,
            entry: Entry::from(value),
        }
    }

    /// A member of a list for a choice.
    pub fn choice(path: Field, item: impl Keyed) -> Self {
        Self {
            path,
            entry: Entry::from(item.key()),
        }
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
) -> Option<Mend> {
    let limits = field.limits()?;
    // Multiples of the step, so that what is written is round.
    let start = if step > 0.0 {
        (from / step + 1e-9).floor()
    } else {
        (from / step - 1e-9).floor()
    };
    (1..=steps)
        // Hundredths of a step hide what a product of doubles leaves behind.
        .map(|index| libm::round((start + f64::from(index)) * step * 1e4) / 1e4)
        .take_while(|value| (limits.low..=limits.high).contains(value))
        .find(|&value| mended(value))
        .map(|value| Mend::number(field, value))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_round_value_that_does_is_taken() {
        let up = first(Field::BoardThickness, 2.55, 0.1, 100, |value| value > 2.84);
        assert_eq!(up, Some(Mend::number(Field::BoardThickness, 2.9)));
        let down = first(Field::BraceSpacing, 120.0, -1.0, 200, |value| value < 118.0);
        assert_eq!(down, Some(Mend::number(Field::BraceSpacing, 117.0)));
        assert_eq!(
            first(Field::PropRows, 39.0, 1.0, 9, |value| value > 40.0),
            None
        );
    }
}
