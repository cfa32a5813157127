//! Documents made of named members, read and written by one walk for all of them.
//!
//! Derived code is made anew for each structure and weighs on the page; here a structure only lists
//! its members.

use std::fmt;

use serde::de::{DeserializeSeed, Deserializer, Error, IgnoredAny, MapAccess, SeqAccess, Visitor};
use serde::ser::{SerializeMap, SerializeSeq};
use serde::{Deserialize, Serialize, Serializer};

use super::{Entry, Pick};
use crate::catalog::Keyed;

/// A structure with named members; one that a document leaves out keeps its default.
pub(crate) trait Members {
    /// The names, in the order in which they are written.
    fn names(&self) -> &'static [&'static str];
    /// The member with this place in the names, to be written out.
    fn value(&self, place: usize) -> Value<'_>;
    /// The member with this place in the names, to be filled.
    fn slot(&mut self, place: usize) -> Slot<'_>;
}

/// What can be a member.
pub(crate) trait Member {
    /// Its content, to be written out.
    fn value(&self) -> Value<'_>;
    /// Its place, to be filled.
    fn slot(&mut self) -> Slot<'_>;
}

/// A list.
pub(crate) trait Lines {
    /// How many.
    fn count(&self) -> usize;
    /// One of them.
    fn line(&self, place: usize) -> Option<Value<'_>>;
    /// Takes all away.
    fn empty(&mut self);
    /// Adds one, empty so far.
    fn add(&mut self) -> Option<Slot<'_>>;
    /// Takes the last one away.
    fn drop_last(&mut self);
}

/// A member that may be absent: `null` in a document.
pub(crate) trait Perhaps {
    /// Takes it away.
    fn clear(&mut self);
    /// Puts an empty one there, to be filled.
    fn begin(&mut self) -> Slot<'_>;
}

/// A choice from a list, whichever list it is.
pub(crate) trait Choice {
    /// Makes the choice that was written.
    fn choose(&mut self, written: Entry);
}

/// A member's content.
pub(crate) enum Value<'a> {
    Number(f64),
    Whole(u32),
    Flag(bool),
    Text(&'a str),
    Group(&'a dyn Members),
    List(&'a dyn Lines),
    Nothing,
}

/// A member to be filled.
pub(crate) enum Slot<'a> {
    Entry(&'a mut Entry),
    Choice(&'a mut dyn Choice),
    Whole(&'a mut u32),
    Flag(&'a mut bool),
    Text(&'a mut String),
    Group(&'a mut dyn Members),
    List(&'a mut dyn Lines),
    Perhaps(&'a mut dyn Perhaps),
}

/// Defines structures whose members are read and written by name.
macro_rules! members {
    ($($(#[$meta:meta])* pub struct $name:ident {
        $($(#[$member_meta:meta])* pub $member:ident: $of:ty,)+
    })+) => {$(
        $(#[$meta])*
        pub struct $name { $($(#[$member_meta])* pub $member: $of,)+ }

        impl $crate::plan::members::Members for $name {
            fn names(&self) -> &'static [&'static str] {
                &[$(stringify!($member),)+]
            }

            fn value(&self, place: usize) -> $crate::plan::members::Value<'_> {
                let all: &[&dyn $crate::plan::members::Member] = &[$(&self.$member,)+];
                all.get(place).map_or($crate::plan::members::Value::Text(""), |it| it.value())
            }

            fn slot(&mut self, place: usize) -> $crate::plan::members::Slot<'_> {
                let mut all: Vec<&mut dyn $crate::plan::members::Member> = vec![$(&mut self.$member,)+];
                all.swap_remove(place).slot()
            }
        }

        impl $crate::plan::members::Member for $name {
            fn value(&self) -> $crate::plan::members::Value<'_> {
                $crate::plan::members::Value::Group(self)
            }

            fn slot(&mut self) -> $crate::plan::members::Slot<'_> {
                $crate::plan::members::Slot::Group(self)
            }
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                $crate::plan::members::Value::Group(self).serialize(serializer)
            }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let mut read = Self::default();
                $crate::plan::members::Slot::Group(&mut read).fill(deserializer)?;
                Ok(read)
            }
        }
    )+};
}
pub(crate) use members;

impl Member for Entry {
    fn value(&self) -> Value<'_> {
        match self {
            Self::Number(number) => Value::Number(*number),
            Self::Text(text) => Value::Text(text),
        }
    }

    fn slot(&mut self) -> Slot<'_> {
        Slot::Entry(self)
    }
}

impl<T: Keyed> Member for Pick<T> {
    fn value(&self) -> Value<'_> {
        Value::Text(self.key())
    }

    fn slot(&mut self) -> Slot<'_> {
        Slot::Choice(self)
    }
}

impl<T: Keyed> Choice for Pick<T> {
    fn choose(&mut self, written: Entry) {
        *self = written.into();
    }
}

impl Member for String {
    fn value(&self) -> Value<'_> {
        Value::Text(self)
    }

    fn slot(&mut self) -> Slot<'_> {
        Slot::Text(self)
    }
}

impl Member for u32 {
    fn value(&self) -> Value<'_> {
        Value::Whole(*self)
    }

    fn slot(&mut self) -> Slot<'_> {
        Slot::Whole(self)
    }
}

impl Member for bool {
    fn value(&self) -> Value<'_> {
        Value::Flag(*self)
    }

    fn slot(&mut self) -> Slot<'_> {
        Slot::Flag(self)
    }
}

impl<T: Member + Default> Member for Option<T> {
    fn value(&self) -> Value<'_> {
        self.as_ref().map_or(Value::Nothing, Member::value)
    }

    fn slot(&mut self) -> Slot<'_> {
        Slot::Perhaps(self)
    }
}

impl<T: Member + Default> Perhaps for Option<T> {
    fn clear(&mut self) {
        *self = None;
    }

    fn begin(&mut self) -> Slot<'_> {
        self.insert(T::default()).slot()
    }
}

impl<T: Member + Default> Member for Vec<T> {
    fn value(&self) -> Value<'_> {
        Value::List(self)
    }

    fn slot(&mut self) -> Slot<'_> {
        Slot::List(self)
    }
}

impl<T: Member + Default> Lines for Vec<T> {
    fn count(&self) -> usize {
        self.len()
    }

    fn line(&self, place: usize) -> Option<Value<'_>> {
        self.get(place).map(Member::value)
    }

    fn empty(&mut self) {
        self.clear();
    }

    fn add(&mut self) -> Option<Slot<'_>> {
        self.push(T::default());
        self.last_mut().map(Member::slot)
    }

    fn drop_last(&mut self) {
        self.pop();
    }
}

impl Serialize for Value<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match *self {
            Self::Number(number) => serializer.serialize_f64(number),
            Self::Whole(number) => serializer.serialize_u32(number),
            Self::Flag(flag) => serializer.serialize_bool(flag),
            Self::Text(text) => serializer.serialize_str(text),
            Self::Group(group) => {
                let mut map = serializer.serialize_map(Some(group.names().len()))?;
                for (place, name) in group.names().iter().enumerate() {
                    map.serialize_entry(name, &group.value(place))?;
                }
                map.end()
            }
            Self::List(lines) => {
                let mut list = serializer.serialize_seq(Some(lines.count()))?;
                for line in (0..lines.count()).filter_map(|place| lines.line(place)) {
                    list.serialize_element(&line)?;
                }
                list.end()
            }
            Self::Nothing => serializer.serialize_none(),
        }
    }
}

impl Slot<'_> {
    /// Fills the member from a document.
    pub(crate) fn fill<'de, D: Deserializer<'de>>(self, from: D) -> Result<(), D::Error> {
        match self {
            Self::Entry(entry) => *entry = Entry::deserialize(from)?,
            Self::Choice(choice) => choice.choose(Entry::deserialize(from)?),
            Self::Whole(number) => *number = u32::deserialize(from)?,
            Self::Flag(flag) => *flag = bool::deserialize(from)?,
            // A text as it came, a number as its digits: no odd value hides the rest of the plan.
            Self::Text(text) => {
                *text = match Entry::deserialize(from)? {
                    Entry::Text(written) => written,
                    Entry::Number(value) => value.to_string(),
                }
            }
            Self::Group(_) => return from.deserialize_map(self),
            Self::List(_) => return from.deserialize_seq(self),
            Self::Perhaps(_) => return from.deserialize_option(self),
        }
        Ok(())
    }
}

impl<'de> DeserializeSeed<'de> for Slot<'_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        self.fill(deserializer)
    }
}

impl<'de> Visitor<'de> for Slot<'_> {
    type Value = ();

    fn expecting(&self, formatter: &mut fmt::Formatter) -> fmt::Result {
        formatter.write_str("a group or a list")
    }

    fn visit_none<E: Error>(self) -> Result<(), E> {
        if let Self::Perhaps(member) = self {
            member.clear();
        }
        Ok(())
    }

    fn visit_some<D: Deserializer<'de>>(self, from: D) -> Result<(), D::Error> {
        match self {
            Self::Perhaps(member) => member.begin().fill(from),
            _ => Err(D::Error::custom("a group or a list")),
        }
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<(), A::Error> {
        let Self::Group(group) = self else {
            return Err(A::Error::custom("a group"));
        };
        let names = group.names();
        let mut seen = vec![false; names.len()];
        while let Some(key) = map.next_key::<String>()? {
            let place = names.iter().position(|name| *name == key);
            match place.zip(place.and_then(|place| seen.get_mut(place))) {
                Some((_, true)) => return Err(A::Error::custom("a member twice")),
                Some((place, seen)) => {
                    *seen = true;
                    map.next_value_seed(group.slot(place))?;
                }
                None => {
                    map.next_value::<IgnoredAny>()?;
                }
            }
        }
        Ok(())
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<(), A::Error> {
        let Self::List(lines) = self else {
            return Err(A::Error::custom("a list"));
        };
        lines.empty();
        // Whether there is another line is known only once a place for it stands ready.
        while let Some(line) = lines.add() {
            if items.next_element_seed(line)?.is_none() {
                break;
            }
        }
        lines.drop_last();
        Ok(())
    }
}
