//! The texts of the language in use, and how figures are put into them. The functions themselves are
//! written by the build (`.tools/words.rs`) from `languages/en.ftl`, one for each message.

use std::cell::Cell;

/// Marks of the short form that the build writes.
const ARGUMENT: char = '\u{1}';
const SELECT: char = '\u{2}';
const NEXT: char = '\u{3}';
const END: char = '\u{4}';

#[derive(Clone, Copy)]
struct Table {
    texts: &'static [&'static str],
    /// The key of the language.
    language: &'static str,
    /// What stands between the whole part of a number and its fraction.
    decimal_mark: char,
}

thread_local! {
    static TABLE: Cell<Table> = const {
        Cell::new(Table { texts: &[], language: "", decimal_mark: '.' })
    };
}

/// Speaks a language from now on. `lines`: its texts as the build wrote them, one a line.
/// False, and nothing changes, where they are not the texts of this release.
pub fn speak(language: &str, lines: &str, decimal_mark: char) -> bool {
    let Some(language) = LANGUAGES.into_iter().find(|known| *known == language) else {
        return false;
    };
    // Kept for good: a reader changes languages a few times at most.
    let lines: &'static str = Box::leak(lines.to_owned().into_boxed_str());
    let texts: Vec<&'static str> = lines.lines().collect();
    if texts.len() != TEXTS {
        return false;
    }
    TABLE.set(Table {
        texts: Box::leak(texts.into_boxed_slice()),
        language,
        decimal_mark,
    });
    true
}

/// The key of the language in use.
pub fn language() -> &'static str {
    TABLE.get().language
}

/// A number written with a point, with the mark of the reader's region in its place.
pub fn number(written: impl std::fmt::Display) -> String {
    let written = written.to_string();
    match TABLE.get().decimal_mark {
        '.' => written,
        mark => written.replace('.', mark.encode_utf8(&mut [0; 4])),
    }
}

/// A number as somebody typed it, for the core: where a comma is the decimal mark, a single comma is
/// one, even before three digits.
pub fn as_typed(text: &str) -> String {
    let mark = TABLE.get().decimal_mark;
    if mark != '.' && text.matches(mark).count() == 1 && !text.contains('.') {
        text.replace(mark, ".")
    } else {
        text.to_owned()
    }
}

fn whole(place: usize) -> &'static str {
    TABLE.get().texts.get(place).copied().unwrap_or_default()
}

fn filled(place: usize, arguments: &[&str]) -> String {
    let mut to = String::new();
    write(whole(place), arguments, &mut to);
    to
}

/// Writes a text up to the end of its variant; what follows is given back.
fn write<'a>(mut text: &'a str, arguments: &[&str], to: &mut String) -> &'a str {
    while let Some(at) = text.find([ARGUMENT, SELECT, NEXT]) {
        to.push_str(&text[..at]);
        let mut rest = text[at..].chars();
        match rest.next() {
            Some(ARGUMENT) => {
                to.push_str(argument(rest.next(), arguments));
                text = rest.as_str();
            }
            Some(SELECT) => {
                let by = argument(rest.next(), arguments);
                text = select(rest.as_str(), by, arguments, to);
            }
            _ => return rest.as_str(),
        }
    }
    to.push_str(text);
    ""
}

/// Writes the first variant that holds, which the last always does.
fn select<'a>(mut text: &'a str, by: &str, arguments: &[&str], to: &mut String) -> &'a str {
    let mut unused = String::new();
    let mut chosen = false;
    loop {
        if let Some(rest) = text.strip_prefix(END) {
            return rest;
        }
        let Some((key, rest)) = text.split_once(NEXT) else {
            return "";
        };
        // The last one has no key.
        let here = !chosen && (key.is_empty() || key == by || key == category(by));
        chosen |= here;
        text = write(rest, arguments, if here { &mut *to } else { &mut unused });
        unused.clear();
    }
}

/// The plural category of a written number, as in English and Spanish.
fn category(number: &str) -> &'static str {
    if number == "1" { "one" } else { "other" }
}

fn argument<'a>(number: Option<char>, arguments: &[&'a str]) -> &'a str {
    let place = number.and_then(|number| number.to_digit(10));
    place
        .and_then(|place| arguments.get(place as usize).copied())
        .unwrap_or_default()
}

include!(concat!(env!("OUT_DIR"), "/say.rs"));
