//! Reads fields one by one and gathers every problem on the way.

use std::collections::BTreeSet;

use serde::Serialize;
use time::{Date, Month};

use crate::catalog::Keyed;
use crate::plan::{
    Dimension, Entry, Field, NotRead, Pick, Plan, Problem, ProblemKind, Rule, UnitSystem,
};

/// A value that is allowed but seldom met in practice.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unusual {
    /// The field.
    pub field: Field,
    /// What was given, in the unit of the field's JSON name.
    pub got: f64,
    /// The usual least.
    pub low: f64,
    /// The usual most.
    pub high: f64,
}

/// A usual value that stands in for a field left empty.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Assumed {
    /// The field.
    pub field: Field,
    /// What was taken, in the unit of the field's JSON name.
    pub value: f64,
}

/// Reads a plan's fields; what cannot be read becomes a problem and `None`.
pub(super) struct Reader<'a> {
    pub plan: &'a Plan,
    pub problems: Vec<Problem>,
    pub unusual: Vec<Unusual>,
    pub assumed: Vec<Assumed>,
    /// The fields that this plan's choices make use of.
    pub used: BTreeSet<Field>,
}

impl<'a> Reader<'a> {
    pub const fn new(plan: &'a Plan) -> Self {
        Self {
            plan,
            problems: Vec::new(),
            unusual: Vec::new(),
            assumed: Vec::new(),
            used: BTreeSet::new(),
        }
    }

    /// Notes a problem.
    pub fn problem(&mut self, field: Field, kind: ProblemKind) {
        self.problems.push(Problem::at(field, kind));
    }

    /// Notes that a field is at odds with others.
    pub fn conflict(&mut self, field: Field, got: f64, rule: Rule, limit: f64) {
        self.problem(field, ProblemKind::Conflict { got, rule, limit });
    }

    /// A number within the limits of its field, in the unit of its JSON name.
    pub fn number(&mut self, field: Field) -> Option<f64> {
        self.used.insert(field);
        let entry = field.entry(self.plan)?;
        let limits = field.limits()?;
        if entry.is_blank()
            && let Some(value) = field.if_unknown(self.plan)
        {
            self.assumed.push(Assumed { field, value });
            return Some(value);
        }
        let value = match within(entry, limits.dimension, limits.low, limits.high) {
            Ok(value) => value,
            Err(kind) => {
                self.problem(field, kind);
                return None;
            }
        };
        if !(limits.usual_low..=limits.usual_high).contains(&value) {
            self.unusual.push(Unusual {
                field,
                got: value,
                low: limits.usual_low,
                high: limits.usual_high,
            });
        }
        Some(value)
    }

    /// A number already judged elsewhere, read again without repeating its problems.
    pub fn plan_number(&self, field: Field) -> Option<f64> {
        let limits = field.limits()?;
        let value = match field.entry(self.plan)? {
            entry if entry.is_blank() => field.if_unknown(self.plan)?,
            Entry::Number(value) => *value,
            Entry::Text(text) => limits.dimension.read(text, UnitSystem::Metric).ok()?,
        };
        (limits.low..=limits.high).contains(&value).then_some(value)
    }

    /// Whether a field was left empty.
    pub fn left_out(&mut self, field: Field) -> bool {
        self.used.insert(field);
        field.entry(self.plan).is_none_or(Entry::is_blank)
    }

    /// A number that counts as zero when it is left out.
    pub fn number_or_zero(&mut self, field: Field) -> Option<f64> {
        if self.left_out(field) {
            Some(0.0)
        } else {
            self.number(field)
        }
    }

    /// A whole number.
    pub fn whole(&mut self, field: Field) -> Option<u32> {
        let value = self.number(field)?;
        if value.fract() != 0.0 {
            self.problem(field, ProblemKind::NotWhole { got: value });
            return None;
        }
        // The limits of every counting field lie within u32.
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "checked"
        )]
        Some(value as u32)
    }

    /// A member of a list.
    pub fn choice<T: Keyed>(&mut self, field: Field, pick: &Pick<T>) -> Option<T> {
        self.used.insert(field);
        let known = pick.known();
        if known.is_none() {
            let kind = if pick.key().is_empty() {
                ProblemKind::Missing
            } else {
                ProblemKind::NotAChoice {
                    got: pick.key().to_owned(),
                    allowed: T::ALL.iter().map(|item| item.key()).collect(),
                }
            };
            self.problem(field, kind);
        }
        known
    }

    /// A member of a list; the usual one where none was chosen.
    pub fn choice_or<T: Keyed>(&mut self, field: Field, pick: &Pick<T>, usual: T) -> Option<T> {
        if pick.key().is_empty() {
            self.used.insert(field);
            return Some(usual);
        }
        self.choice(field, pick)
    }

    /// A number that may stay empty: `Some(None)` where it does.
    #[expect(
        clippy::option_option,
        reason = "outside: whether it could be read; inside: whether there is one"
    )]
    pub fn optional(&mut self, field: Field) -> Option<Option<f64>> {
        if self.left_out(field) {
            Some(None)
        } else {
            self.number(field).map(Some)
        }
    }

    /// A calendar date, year-month-day.
    pub fn date(&mut self, field: Field) -> Option<Date> {
        self.used.insert(field);
        let text = match field.entry(self.plan)? {
            Entry::Number(value) => value.to_string(),
            Entry::Text(text) => text.trim().to_owned(),
        };
        let date = read_date(&text);
        if date.is_none() {
            let kind = if text.is_empty() {
                ProblemKind::Missing
            } else {
                ProblemKind::NotADate { got: text }
            };
            self.problem(field, kind);
        }
        date
    }
}

/// A date from `2027-03-01`; years 1900 to 2200.
pub(in crate::plan) fn read_date(text: &str) -> Option<Date> {
    let mut parts = text.splitn(3, '-');
    let mut digits = |length: usize| {
        parts
            .next()
            .filter(|part| part.len() == length && part.bytes().all(|b| b.is_ascii_digit()))
    };
    let year: i32 = digits(4)?.parse().ok()?;
    let month: u8 = digits(2)?.parse().ok()?;
    let day: u8 = digits(2)?.parse().ok()?;
    if !(1900..=2200).contains(&year) {
        return None;
    }
    Date::from_calendar_date(year, Month::try_from(month).ok()?, day).ok()
}

/// An entry's value within bounds, in the first unit of its dimension.
pub(crate) fn within(
    entry: &Entry,
    dimension: Dimension,
    low: f64,
    high: f64,
) -> Result<f64, ProblemKind> {
    let got = match entry {
        Entry::Number(value) => *value,
        Entry::Text(text) => dimension
            .read(text, UnitSystem::Metric)
            .map_err(|reason| self::reason(reason, text))?,
    };
    if (low..=high).contains(&got) {
        Ok(got)
    } else {
        Err(ProblemKind::OutOfRange { got, low, high })
    }
}

pub(crate) fn reason(reason: NotRead, text: &str) -> ProblemKind {
    let got = text.to_owned();
    match reason {
        NotRead::Empty => ProblemKind::Missing,
        NotRead::NotANumber => ProblemKind::NotANumber { got },
        NotRead::UnknownUnit => ProblemKind::UnknownUnit { got },
        NotRead::CommaOrThousands => ProblemKind::CommaOrThousands { got },
        NotRead::TooLarge => ProblemKind::TooLarge { got },
    }
}

/// Whether a text would be accepted by a numeric field; used by the page while typing.
///
/// # Errors
/// The problem of the text.
pub fn read_text(field: Field, text: &str, system: UnitSystem) -> Result<f64, ProblemKind> {
    let dimension = field
        .limits()
        .map_or(Dimension::Factor, |limits| limits.dimension);
    dimension
        .read(text, system)
        .map_err(|reason| self::reason(reason, text))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_are_calendar_dates() {
        assert!(read_date("2027-02-28").is_some());
        for text in [
            "2027-02-29",
            "2027-2-3",
            "27-02-03",
            "2027/02/03",
            "1800-01-01",
            "2027-13-01",
            "",
        ] {
            assert!(read_date(text).is_none(), "{text}");
        }
    }
}
