//! The dates of a plan as an iCalendar file (RFC 5545), for any calendar program.
//!
//! The core has no clock and no words: every text is handed in, and the stamp is the day of seeding,
//! so that the same plan gives the same file, byte for byte.

use time::{Date, Duration, Month};

use super::calendar::Calendar;
use crate::plan::Plan;

/// What an entry of the calendar is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CalendarKind {
    /// Seed is sown.
    Seeding,
    /// The container is filled and the seedlings move onto it.
    Transplanting,
    /// Boards come to rest on their pipes.
    BoardsRest,
    /// The foot of the pots leaves the solution.
    PotsLeave,
    /// Heads are ready, for several days.
    Harvest,
    /// The container is drained and cleaned.
    Clean,
    /// The same solution is topped up for the next crop; boards float off.
    Refill,
    /// Seed of the next crop is sown.
    SeedNext,
    /// The next crop moves onto the solution.
    Replant,
}

impl CalendarKind {
    /// A short name that never changes: a part of the entry's identity.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Seeding => "seeding",
            Self::Transplanting => "transplanting",
            Self::BoardsRest => "boards-rest",
            Self::PotsLeave => "pots-leave",
            Self::Harvest => "harvest",
            Self::Clean => "clean",
            Self::Refill => "refill",
            Self::SeedNext => "seed-next",
            Self::Replant => "replant",
        }
    }
}

/// The words of one entry.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct CalendarWords {
    /// The title, one line.
    pub summary: String,
    /// What is to be done; may have several lines.
    pub description: String,
}

/// The entries of a calendar: what, first day, last day.
pub fn calendar_entries(calendar: &Calendar) -> Vec<(CalendarKind, Date, Date)> {
    let one = |kind, day: Option<&String>| {
        let date = read(day?)?;
        Some((kind, date, date))
    };
    let harvest = || {
        let first = read(calendar.harvest.as_ref()?)?;
        let last = calendar.harvest_until.as_ref().and_then(|day| read(day));
        Some((CalendarKind::Harvest, first, last.unwrap_or(first)))
    };
    let mut entries: Vec<_> = [
        one(CalendarKind::Seeding, Some(&calendar.seeding)),
        one(CalendarKind::Transplanting, Some(&calendar.transplanting)),
        one(CalendarKind::BoardsRest, calendar.boards_rest.as_ref()),
        one(CalendarKind::PotsLeave, calendar.pots_leave.as_ref()),
        harvest(),
        one(CalendarKind::Clean, calendar.clean.as_ref()),
        one(CalendarKind::Refill, calendar.refill.as_ref()),
        one(CalendarKind::SeedNext, calendar.seed_next.as_ref()),
        one(CalendarKind::Replant, calendar.replant.as_ref()),
    ]
    .into_iter()
    .flatten()
    .collect();
    entries.sort_by_key(|entry| entry.1);
    entries
}

/// Writes the file: one entry for the whole day or days of each date that the plan has.
///
/// `words`: the words of each kind. The lines end with CR LF and are folded at 75 octets; the identity of an entry depends on the plan alone,
/// so that a file read twice makes no entries twice.
///
/// Source: RFC 5545 (2009), sections 3.1 (folding), 3.3.4 (dates), 3.3.11 (escapes), 3.6.1.
///
/// ```
/// use slackwater::advice::{CalendarWords, calendar_file};
/// use slackwater::{plan::Example, solve};
/// let plan = Example::Bottle.plan();
/// let calendar = solve(&plan).expect("a ready plan is sound").calendar;
/// let file = calendar_file(&plan, &calendar, |kind| CalendarWords {
///     summary: kind.key().to_owned(),
///     ..CalendarWords::default()
/// });
/// assert!(file.starts_with("BEGIN:VCALENDAR\r\n") && file.contains("SUMMARY:harvest\r\n"));
/// ```
pub fn calendar_file(
    plan: &Plan,
    calendar: &Calendar,
    words: impl Fn(CalendarKind) -> CalendarWords,
) -> String {
    let stamp = format!("{}T000000Z", calendar.seeding.replace('-', ""));
    let identity = identity(plan);
    let mut file = String::new();
    let mut line = |text: &str| fold(text, &mut file);
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Slackwater//Planner//EN");
    line("CALSCALE:GREGORIAN");
    for (kind, first, last) in calendar_entries(calendar) {
        let words = words(kind);
        line("BEGIN:VEVENT");
        line(&format!(
            "UID:{identity:016x}-{}@slackwater.invalid",
            kind.key()
        ));
        line(&format!("DTSTAMP:{stamp}"));
        line(&format!("DTSTART;VALUE=DATE:{}", digits(first)));
        // The end is the first day that no longer belongs to it.
        let end = last.saturating_add(Duration::days(1));
        line(&format!("DTEND;VALUE=DATE:{}", digits(end)));
        line(&format!("SUMMARY:{}", escaped(&words.summary)));
        if !words.description.is_empty() {
            line(&format!("DESCRIPTION:{}", escaped(&words.description)));
        }
        line("TRANSP:TRANSPARENT");
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    file
}

/// FNV-1a, 64 bits, of the plan's document: the same on every device and in every version.
fn identity(plan: &Plan) -> u64 {
    plan.to_json()
        .bytes()
        .fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
            (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
        })
}

fn digits(date: Date) -> String {
    format!(
        "{:04}{:02}{:02}",
        date.year(),
        u8::from(date.month()),
        date.day()
    )
}

/// A date of the calendar, year-month-day.
fn read(text: &str) -> Option<Date> {
    let mut parts = text.splitn(3, '-');
    let year = parts.next()?.parse().ok()?;
    let month: u8 = parts.next()?.parse().ok()?;
    let day = parts.next()?.parse().ok()?;
    Date::from_calendar_date(year, Month::try_from(month).ok()?, day).ok()
}

/// Marks what has a meaning of its own, and leaves out control characters.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for sign in text.chars() {
        match sign {
            '\\' | ';' | ',' => {
                out.push('\\');
                out.push(sign);
            }
            '\n' => out.push_str("\\n"),
            _ if sign.is_control() => {}
            _ => out.push(sign),
        }
    }
    out
}

/// Octets of a line without its end.
const LINE_OCTETS: usize = 75;

/// Adds a line, folded between characters.
fn fold(text: &str, file: &mut String) {
    let mut used = 0;
    for sign in text.chars() {
        if used + sign.len_utf8() > LINE_OCTETS {
            file.push_str("\r\n ");
            used = 1;
        }
        file.push(sign);
        used += sign.len_utf8();
    }
    file.push_str("\r\n");
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_lines_are_folded_between_characters_and_unfold_to_themselves() {
        for text in [
            "é".repeat(200),
            "a".repeat(75),
            "x".repeat(76),
            "°a".repeat(99),
        ] {
            let mut file = String::new();
            fold(&text, &mut file);
            assert!(file.ends_with("\r\n"));
            assert!(file.split("\r\n").all(|line| line.len() <= LINE_OCTETS));
            assert_eq!(file.replace("\r\n ", ""), format!("{text}\r\n"));
        }
        let mut file = String::new();
        fold(&"a".repeat(75), &mut file);
        assert_eq!(file.matches("\r\n").count(), 1);
    }

    #[test]
    fn what_has_a_meaning_is_escaped() {
        assert_eq!(escaped("a, b; c\\d\r\ne\u{7}"), "a\\, b\\; c\\\\d\\ne");
    }
}
