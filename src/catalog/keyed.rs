//! Closed lists whose members have stable keys for JSON, links and storage.

/// A closed list whose members each have a stable key.
pub trait Keyed: Copy + PartialEq + 'static {
    /// All members, in the order in which they are offered.
    const ALL: &'static [Self];

    /// The stable key.
    fn key(self) -> &'static str;

    /// The member with this key.
    fn from_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|item| item.key() == key)
    }
}

/// Defines an enum with stable keys, serialised as its key.
macro_rules! keyed {
    ($(#[$meta:meta])* $name:ident { $($(#[$item_meta:meta])* $item:ident = $key:literal,)+ }) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name { $($(#[$item_meta])* $item,)+ }

        impl $crate::catalog::Keyed for $name {
            const ALL: &'static [Self] = &[$(Self::$item,)+];

            fn key(self) -> &'static str {
                match self { $(Self::$item => $key,)+ }
            }
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str($crate::catalog::Keyed::key(*self))
            }
        }
    };
}
pub(crate) use keyed;
