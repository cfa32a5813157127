//! The fields in which a plan differs from a ready one, as bytes.
//!
//! Each is the step from the number of the last field to that of this one, the places in lists on
//! the way to it, and its value. Numbers of fields, places and values are integers of seven bits a
//! byte, the lowest first, the high bit set on all bytes but the last. A value's lowest three bits
//! say what the others are:
//!
//! | bits | the others |
//! | --- | --- |
//! | 0 to 3 | digits of a number, so many of them behind the decimal point |
//! | 4 | number of a choice's key |
//! | 5 | bytes of a text, which follow |
//! | 6 | a date: days of months of 31 days since the year 2000 |
//! | 7 | 0 null, 1 false, 2 true, 3 a list, its length follows; from 4: exponent and sign of a number, its digits follow |

use super::LinkError;
use super::decimal::Decimal;
use super::leaves::{Leaf, Leaves, Place};
use super::names::{PATHS, WORDS};

/// The longest list that is written or read.
pub(super) const LONGEST_LIST: usize = 255;

/// Writes what in `leaves` is not the same in `base`.
pub(super) fn write(leaves: &Leaves, base: &Leaves, bytes: &mut Vec<u8>) {
    let mut differing: Vec<(usize, &Place, &Leaf)> = leaves
        .iter()
        .filter(|(place, leaf)| match base.get(*place) {
            Some(before) => before != *leaf,
            // A new line of a list begins empty.
            None => !(starts_empty(place) && **leaf == Leaf::Text(String::new())),
        })
        .map(|(place, leaf)| {
            let known = PATHS.iter().position(|path| *path == place.path);
            (known.unwrap_or(0), place, leaf)
        })
        .collect();
    differing.sort();
    let mut last = 0;
    for (number, place, leaf) in differing {
        write_number((number - last) as u64, bytes);
        last = number;
        if number == 0 {
            write_text(&place.path, bytes);
        }
        for index in &place.indices {
            write_number(*index as u64, bytes);
        }
        write_leaf(leaf, bytes);
    }
}

/// Whether a place is a member of a line in a list.
fn starts_empty(place: &Place) -> bool {
    !place.indices.is_empty() && !place.path.ends_with(']')
}

fn write_number(mut number: u64, bytes: &mut Vec<u8>) {
    while number >= 0x80 {
        bytes.push((number & 0x7F) as u8 | 0x80);
        number >>= 7;
    }
    bytes.push((number & 0x7F) as u8);
}

fn write_text(text: &str, bytes: &mut Vec<u8>) {
    write_number(text.len() as u64, bytes);
    bytes.extend(text.as_bytes());
}

fn write_leaf(leaf: &Leaf, bytes: &mut Vec<u8>) {
    let mut tagged = |value: u64, kind: u64| write_number(value << 3 | kind, bytes);
    match leaf {
        Leaf::Null => tagged(0, 7),
        Leaf::Flag(flag) => tagged(1 + u64::from(*flag), 7),
        Leaf::List(length) => {
            tagged(3, 7);
            write_number(*length as u64, bytes);
        }
        Leaf::Text(text) => {
            if let Some(word) = WORDS.iter().position(|word| word == text) {
                tagged(word as u64, 4);
            } else if let Some(days) = days_of(text) {
                tagged(days, 6);
            } else {
                tagged(text.len() as u64, 5);
                bytes.extend(text.as_bytes());
            }
        }
        Leaf::Number(number) => match u64::try_from(number.exponent.saturating_neg()) {
            Ok(places @ 0..=3) if !number.negative && number.digits < 1 << 60 => {
                tagged(number.digits, places);
            }
            _ => {
                let folded =
                    u64::from(number.exponent.unsigned_abs()) << 1 | u64::from(number.exponent < 0);
                tagged((folded << 1 | u64::from(number.negative)) + 4, 7);
                write_number(number.digits, bytes);
            }
        },
    }
}

/// A date as it is written in plans; `None` for any other text.
fn days_of(text: &str) -> Option<u64> {
    let mut parts = text.splitn(3, '-').map(str::parse::<u64>);
    let (year, month, day) = (
        parts.next()?.ok()?,
        parts.next()?.ok()?,
        parts.next()?.ok()?,
    );
    let days = (year.checked_sub(2000)? * 12 + month.checked_sub(1)?) * 31 + day.checked_sub(1)?;
    (year < 10_000 && date_of(days) == text).then_some(days)
}

fn date_of(days: u64) -> String {
    let months = days / 31;
    format!(
        "{:04}-{:02}-{:02}",
        months / 12 + 2000,
        months % 12 + 1,
        days % 31 + 1
    )
}

/// Writes the differences into `leaves`.
pub(super) fn read(bytes: &[u8], leaves: &mut Leaves) -> Result<(), LinkError> {
    let mut rest = Rest(bytes);
    let mut number = 0_usize;
    while !rest.0.is_empty() {
        number = number.checked_add(rest.size()?).ok_or(LinkError::Damaged)?;
        let path = match number {
            0 => {
                let length = rest.size()?;
                rest.text(length)?
            }
            _ => (*PATHS.get(number).ok_or(LinkError::NewerVersion)?).to_owned(),
        };
        let lists = path.matches("[]").count();
        let indices = (0..lists).map(|_| rest.size()).collect::<Result<_, _>>()?;
        let leaf = rest.leaf()?;
        leaves.insert(Place { path, indices }, leaf);
    }
    Ok(())
}

/// Bytes that are still to be read.
struct Rest<'a>(&'a [u8]);

impl Rest<'_> {
    fn number(&mut self) -> Result<u64, LinkError> {
        let mut value = 0_u64;
        for shift in (0..64).step_by(7) {
            let (first, rest) = self.0.split_first().ok_or(LinkError::Damaged)?;
            self.0 = rest;
            value |= u64::from(first & 0x7F) << shift;
            if first & 0x80 == 0 {
                return Ok(value);
            }
        }
        Err(LinkError::Damaged)
    }

    fn size(&mut self) -> Result<usize, LinkError> {
        usize::try_from(self.number()?).map_err(|_| LinkError::Damaged)
    }

    fn text(&mut self, length: usize) -> Result<String, LinkError> {
        let (text, rest) = self.0.split_at_checked(length).ok_or(LinkError::Damaged)?;
        self.0 = rest;
        String::from_utf8(text.to_vec()).map_err(|_| LinkError::Damaged)
    }

    fn leaf(&mut self) -> Result<Leaf, LinkError> {
        let tagged = self.number()?;
        let value = tagged >> 3;
        let size = usize::try_from(value).map_err(|_| LinkError::Damaged)?;
        let kind = i32::try_from(tagged & 7).map_err(|_| LinkError::Damaged)?;
        Ok(match (kind, value) {
            (0..=3, digits) => Leaf::Number(Decimal {
                negative: false,
                digits,
                exponent: -kind,
            }),
            (4, _) => {
                let word = WORDS.get(size).ok_or(LinkError::NewerVersion)?;
                Leaf::Text((*word).to_owned())
            }
            (5, _) => Leaf::Text(self.text(size)?),
            (6, days) => Leaf::Text(date_of(days)),
            (_, 0) => Leaf::Null,
            (_, flag @ 1..=2) => Leaf::Flag(flag == 2),
            (_, 3) => {
                let length = self.size()?;
                if length > LONGEST_LIST {
                    return Err(LinkError::Damaged);
                }
                Leaf::List(length)
            }
            (_, folded) => {
                let folded = folded - 4;
                let size = i32::try_from(folded >> 2).map_err(|_| LinkError::Damaged)?;
                Leaf::Number(Decimal {
                    negative: folded & 1 == 1,
                    digits: self.number()?,
                    exponent: if folded & 2 == 2 { -size } else { size },
                })
            }
        })
    }
}
