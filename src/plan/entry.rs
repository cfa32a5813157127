//! What a person wrote into a field: a number, or any text, kept exactly as it came.
//!
//! A field never loses a wrong value. It is judged later, beside its field, by [`crate::plan::check`].

use serde::de::{Deserialize, Deserializer, IgnoredAny, MapAccess, SeqAccess, Visitor};
use serde::ser::{Serialize, Serializer};

use super::double;

/// The content of a numeric or date field.
#[derive(Clone, Debug, PartialEq)]
pub enum Entry {
    /// A finite number in the field's own unit (the unit is part of the field's JSON name).
    Number(f64),
    /// Anything else, word for word: empty, a date, a quantity with a typed unit, nonsense.
    Text(String),
}

impl Entry {
    /// An entry that says nothing.
    pub const fn blank() -> Self {
        Self::Text(String::new())
    }

    /// Whether the field was left empty.
    pub fn is_blank(&self) -> bool {
        matches!(self, Self::Text(text) if text.trim().is_empty())
    }
}

impl Default for Entry {
    fn default() -> Self {
        Self::blank()
    }
}

impl From<f64> for Entry {
    /// A number that is not finite is kept as its text, for the check to refuse.
    fn from(value: f64) -> Self {
        if value.is_finite() {
            Self::Number(value)
        } else {
            Self::Text(value.to_string())
        }
    }
}

impl From<&str> for Entry {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl Serialize for Entry {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Number(value) => serializer.serialize_f64(*value),
            Self::Text(text) => serializer.serialize_str(text),
        }
    }
}

impl<'de> Deserialize<'de> for Entry {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(EntryVisitor)
    }
}

/// Takes any JSON value, so that one odd field never hides the problems of the others.
struct EntryVisitor;

impl<'de> Visitor<'de> for EntryVisitor {
    type Value = Entry;

    fn expecting(&self, formatter: &mut std::fmt::Formatter) -> std::fmt::Result {
        formatter.write_str("a number or a text")
    }

    fn visit_f64<E>(self, value: f64) -> Result<Entry, E> {
        Ok(value.into())
    }

    #[expect(clippy::cast_precision_loss, reason = "fields are far below 2^53")]
    fn visit_i64<E>(self, value: i64) -> Result<Entry, E> {
        Ok(Entry::Number(value as f64))
    }

    fn visit_u64<E>(self, value: u64) -> Result<Entry, E> {
        Ok(Entry::Number(value as f64))
    }

    fn visit_str<E>(self, text: &str) -> Result<Entry, E> {
        Ok(Entry::Text(text.to_owned()))
    }

    fn visit_bool<E>(self, value: bool) -> Result<Entry, E> {
        Ok(Entry::Text(value.to_string()))
    }

    fn visit_unit<E>(self) -> Result<Entry, E> {
        Ok(Entry::blank())
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Entry, A::Error> {
        while items.next_element::<IgnoredAny>()?.is_some() {}
        Ok(Entry::Text("[…]".to_owned()))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut members: A) -> Result<Entry, A::Error> {
        // With serde_json's `arbitrary_precision` a number arrives as a map of one text, which
        // is how a number too large for a double is still seen and named.
        let mut text = String::from("{…}");
        while let Some(key) = members.next_key::<String>()? {
            if key == "$serde_json::private::Number" {
                text = members.next_value()?;
            } else {
                members.next_value::<IgnoredAny>()?;
            }
        }
        Ok(match double(&text) {
            Some(value) if value.is_finite() => Entry::Number(value),
            _ => Entry::Text(text),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(json: &str) -> Entry {
        serde_json::from_str(json).expect("any JSON value is an entry")
    }

    #[test]
    fn numbers_stay_numbers() {
        assert_eq!(read("12.5"), Entry::Number(12.5));
        assert_eq!(read("-3"), Entry::Number(-3.0));
        assert_eq!(read("7"), Entry::Number(7.0));
    }

    #[test]
    fn a_number_too_large_keeps_its_text() {
        assert_eq!(read("1e+309"), Entry::from("1e+309"));
        assert_eq!(Entry::from(f64::NAN), Entry::from("NaN"));
    }

    #[test]
    fn odd_values_become_text_and_not_an_error() {
        assert_eq!(read("null"), Entry::blank());
        assert_eq!(read("true"), Entry::from("true"));
        assert_eq!(read("[1,2]"), Entry::from("[…]"));
        assert_eq!(read(r#"{"a":1}"#), Entry::from("{…}"));
    }

    #[test]
    fn every_kind_survives_its_saved_form() {
        for entry in [Entry::Number(0.1), Entry::blank(), Entry::from("12 in")] {
            let json = serde_json::to_string(&entry).expect("entries always serialise");
            assert_eq!(read(&json), entry);
        }
    }
}
