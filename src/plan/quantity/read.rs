//! Typed text to numbers: decimal comma or point, grouping, fractions, exponents, units.

use super::units::Unit;
use super::{Dimension, UnitSystem, double};

impl Dimension {
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
        let whole = after.trim().to_ascii_lowercase();
        if self
            .units()
            .iter()
            .any(|u| u.names.iter().any(|n| n.to_ascii_lowercase() == whole))
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
        let lower = name.to_ascii_lowercase();
        self.units()
            .iter()
            .find(|unit| {
                unit.names
                    .iter()
                    .any(|known| known.to_ascii_lowercase() == lower)
            })
            .ok_or(
                if name
                    .chars()
                    .any(|letter| letter.is_ascii_alphabetic() || !letter.is_ascii())
                    || name.chars().count() < 3
                {
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
    let mut value = double(&plain).ok_or(NotRead::NotANumber)?;
    if let Some((fraction, after)) = leading_fraction(rest) {
        value += fraction;
        rest = after;
    } else if let Some(after) = below_a_line(rest) {
        let length = after.chars().take_while(char::is_ascii_digit).count();
        let below = double(&after[..length]).ok_or(NotRead::NotANumber)?;
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

/// What follows the line of a fraction; a line before a letter begins a unit, as in `3/kg`.
fn below_a_line(text: &str) -> Option<&str> {
    let after = text.strip_prefix('/')?;
    (!after.starts_with(char::is_alphabetic)).then_some(after)
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
