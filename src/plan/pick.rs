//! A choice from a short list, kept word for word even when the word is not on the list.

use serde::de::{Deserialize, Deserializer};
use serde::ser::{Serialize, Serializer};

use super::Entry;
use crate::catalog::Keyed;

/// A choice as it was made: a member of the list, or the text that stood there instead.
#[derive(Clone, Debug, PartialEq)]
pub enum Pick<T> {
    /// A member of the list.
    Known(T),
    /// A text that is no key of the list; the check refuses it by name.
    Other(String),
}

impl<T: Keyed> Pick<T> {
    /// The chosen member, if it is one.
    pub fn known(&self) -> Option<T> {
        match self {
            Self::Known(item) => Some(*item),
            Self::Other(_) => None,
        }
    }

    /// The key as saved.
    pub fn key(&self) -> &str {
        match self {
            Self::Known(item) => item.key(),
            Self::Other(text) => text,
        }
    }

    /// The choice with this key, on the list or not.
    pub fn from_key(key: &str) -> Self {
        T::from_key(key).map_or_else(|| Self::Other(key.to_owned()), Self::Known)
    }
}

impl<T: Keyed> Default for Pick<T> {
    /// A choice not made.
    fn default() -> Self {
        Self::Other(String::new())
    }
}

impl<T: Keyed> Serialize for Pick<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.key())
    }
}

impl<T: Keyed> From<Entry> for Pick<T> {
    fn from(written: Entry) -> Self {
        match written {
            Entry::Text(text) => Self::from_key(&text),
            Entry::Number(value) => Self::Other(value.to_string()),
        }
    }
}

impl<'de, T: Keyed> Deserialize<'de> for Pick<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Ok(Entry::deserialize(deserializer)?.into())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalog::keyed::keyed;

    keyed! {
        /// Two members for the test.
        Side { /// Left.
            Left = "left", /// Right.
            Right = "right", }
    }

    #[test]
    fn keys_find_their_member_and_strange_words_are_kept() {
        let known: Pick<Side> = serde_json::from_str(r#""right""#).expect("a text");
        assert_eq!(known, Pick::Known(Side::Right));
        let strange: Pick<Side> = serde_json::from_str("4").expect("any value");
        assert_eq!(strange, Pick::Other("4".to_owned()));
        assert_eq!(
            serde_json::to_string(&strange).expect("serialises"),
            r#""4""#
        );
    }
}
