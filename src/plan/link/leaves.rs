//! A plan document as a flat list of what stands where.

use std::collections::BTreeMap;

use serde_json::{Map, Value};

use super::decimal::Decimal;

/// A path such as `fertilizer.salts[].salt`, and the place in each list on the way.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Place {
    pub path: String,
    pub indices: Vec<usize>,
}

/// What stands there.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Leaf {
    Null,
    Flag(bool),
    Number(Decimal),
    Text(String),
    /// A list of this many.
    List(usize),
}

/// All of a document. A list comes before what is in it.
pub(super) type Leaves = BTreeMap<Place, Leaf>;

/// Lists what stands in a document.
pub(super) fn flatten(document: &Value, into: &mut Leaves) {
    walk(document, &Place::default(), into);
}

fn walk(value: &Value, place: &Place, into: &mut Leaves) {
    let leaf = match value {
        Value::Object(members) => {
            for (name, member) in members {
                let dot = if place.path.is_empty() { "" } else { "." };
                let inner = Place {
                    path: format!("{}{dot}{name}", place.path),
                    indices: place.indices.clone(),
                };
                walk(member, &inner, into);
            }
            return;
        }
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                let mut inner = Place {
                    path: format!("{}[]", place.path),
                    indices: place.indices.clone(),
                };
                inner.indices.push(index);
                walk(item, &inner, into);
            }
            Leaf::List(items.len())
        }
        Value::Null => Leaf::Null,
        Value::Bool(flag) => Leaf::Flag(*flag),
        Value::String(text) => Leaf::Text(text.clone()),
        Value::Number(number) => {
            let text = number.to_string();
            Decimal::read(&text).map_or(Leaf::Text(text), Leaf::Number)
        }
    };
    into.insert(place.clone(), leaf);
}

/// The document of which this is the list. What lies beyond the end of its list is left out.
pub(super) fn raise(leaves: &Leaves) -> Value {
    let mut document = Value::Object(Map::new());
    for (place, leaf) in leaves {
        if let Some(slot) = slot(&mut document, place) {
            *slot = match leaf {
                Leaf::Null => Value::Null,
                Leaf::Flag(flag) => Value::Bool(*flag),
                Leaf::Text(text) => Value::String(text.clone()),
                Leaf::Number(number) => number.text().parse().map_or(Value::Null, Value::Number),
                Leaf::List(length) => Value::Array(vec![Value::Object(Map::new()); *length]),
            };
        }
    }
    document
}

fn slot<'a>(document: &'a mut Value, place: &Place) -> Option<&'a mut Value> {
    let mut slot = document;
    let mut indices = place.indices.iter();
    for segment in place.path.split('.') {
        let name = segment.trim_end_matches("[]");
        if !slot.is_object() {
            *slot = Value::Object(Map::new());
        }
        slot = slot.as_object_mut()?.entry(name).or_insert(Value::Null);
        for _ in 0..(segment.len() - name.len()) / 2 {
            slot = slot.as_array_mut()?.get_mut(*indices.next()?)?;
        }
    }
    Some(slot)
}

/// The length of the longest list.
pub(super) fn longest_list(leaves: &Leaves) -> usize {
    leaves
        .values()
        .map(|leaf| match leaf {
            Leaf::List(length) => *length,
            _ => 0,
        })
        .max()
        .unwrap_or(0)
}
