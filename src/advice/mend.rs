//! The smallest change of one field that mends a finding.

use super::Change;
use crate::catalog::Keyed;
use crate::plan::{Entry, Field, Pick, Plan, UnitSystem};

impl Change {
    /// Makes the change in a plan: any number, and each choice that a mend can name.
    ///
    /// ```
    /// use slackwater::{plan::Example, solve};
    /// let mut plan = Example::FloatingBoards.plan();
    /// plan.build.floor_drop_cm = 4.0.into();
    /// let outcome = solve(&plan).expect("a sound plan");
    /// let mend = outcome.findings.iter().find_map(|finding| finding.mends.first());
    /// let before = plan.clone();
    /// mend.expect("a level floor mends it").apply(&mut plan);
    /// assert_ne!(plan, before);
    /// ```
    pub fn apply(&self, plan: &mut Plan) {
        if let Some(entry) = self.field.entry_mut(plan) {
            entry.clone_from(&self.value);
            return;
        }
        let Entry::Text(key) = &self.value else {
            return;
        };
        let (container, build) = (&mut plan.container, &mut plan.build);
        match self.field {
            Field::Pipe => container.pipe = Pick::from_key(key),
            Field::Foam => container.foam = Pick::from_key(key),
            Field::PipeEnds => container.pipe_ends = Pick::from_key(key),
            Field::PipeMaterial => container.pipe_material = Pick::from_key(key),
            Field::StandsOn => build.stands_on = Pick::from_key(key),
            Field::Timber => build.timber = Pick::from_key(key),
            Field::CoverMaterial => build.cover = Pick::from_key(key),
            _ => {}
        }
    }
}

/// A number for a numeric field, in the unit of its name.
pub(super) fn number(field: Field, value: f64) -> Change {
    Change {
        field,
        // No -0, which a step down to nothing may give.
        value: Entry::from(value + 0.0),
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
