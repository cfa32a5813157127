//! A bare list of ions, for those who want the chemistry without a plan.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::Entry;

/// What may stand in the list, and what each amount counts.
pub const IONS: [&str; 12] = [
    "Ca",
    "Mg",
    "Na",
    "K",
    "NH4",
    "NO3",
    "Cl",
    "SO4",
    "PO4",
    "CO3",
    "B",
    "alkalinity",
];

/// The document: `{"ions": {"K": 6, "NO3": 6}, "ph": "charge", "temperature_c": 25}`. Amounts in
/// mmol/L, alkalinity in me/L.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct IonList {
    /// Totals of the components, however they pair: `PO4` is all phosphate.
    pub ions: BTreeMap<String, Entry>,
    /// A pH, or `charge` for the balance of charges; empty counts as `charge`.
    #[serde(alias = "pH")]
    pub ph: Entry,
    /// Temperature, °C; empty counts as 25.
    pub temperature_c: Entry,
}

/// A sound list.
#[derive(Clone, Debug, PartialEq)]
pub struct SoundIons {
    /// Key and amount, mmol/L.
    pub amounts: Vec<(&'static str, f64)>,
    /// pH; `None` for the balance of charges.
    pub ph: Option<f64>,
    /// °C.
    pub temperature_c: f64,
}

/// What is wrong with a line of the list.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct IonProblem {
    /// The line: the key of an ion, `ph` or `temperature_c`; `None` for the whole document.
    pub field: Option<String>,
    /// What stands there.
    pub got: String,
    /// What is allowed.
    pub allowed: String,
}

impl IonList {
    /// Reads the document.
    ///
    /// # Errors
    /// One problem without a field when the text is no such document.
    pub fn from_json(text: &str) -> Result<Self, Vec<IonProblem>> {
        let no_list = |line, column| {
            vec![IonProblem {
                field: None,
                got: format!("line {line}, column {column}"),
                allowed: "{\"ions\": {\"K\": 6}, \"ph\": \"charge\", \"temperature_c\": 25}"
                    .to_owned(),
            }]
        };
        // An array would be taken for the members in their order.
        if text.trim_start().starts_with('[') {
            return Err(no_list(1, 1));
        }
        serde_json::from_str(text).map_err(|error| no_list(error.line(), error.column()))
    }

    /// Judges every line.
    ///
    /// # Errors
    /// All problems at once.
    pub fn check(&self) -> Result<SoundIons, Vec<IonProblem>> {
        let mut problems = Vec::new();
        let mut amounts = Vec::new();
        for (key, entry) in &self.ions {
            let known = IONS.iter().find(|ion| *ion == key);
            let amount = number(entry).filter(|amount| (0.0..=MOST_MMOL).contains(amount));
            match (known, amount) {
                (Some(ion), Some(amount)) => amounts.push((*ion, amount)),
                (None, _) => {
                    problems.push(problem(key, &Entry::from(key.as_str()), &IONS.join(", ")));
                }
                (Some(_), None) => problems.push(problem(key, entry, "0 to 10000 mmol/L")),
            }
        }
        let ph = match &self.ph {
            Entry::Text(text) if text.trim().is_empty() || text.trim() == "charge" => None,
            entry => {
                let ph = number(entry).filter(|ph| (0.0..=14.0).contains(ph));
                if ph.is_none() {
                    problems.push(problem("ph", entry, "0 to 14, or charge"));
                }
                ph
            }
        };
        let given = |key: &str| amounts.iter().any(|&(ion, _)| ion == key);
        if given("alkalinity") {
            // Each would say the same thing twice, or leave it open.
            if given("CO3") {
                let entry = Entry::from("alkalinity and CO3");
                problems.push(problem("alkalinity", &entry, "one of the two"));
            }
            if ph.is_none() && problems.iter().all(|it| it.field.as_deref() != Some("ph")) {
                let entry = Entry::from("charge");
                problems.push(problem("ph", &entry, "0 to 14 where alkalinity is given"));
            }
        }
        let temperature_c = if self.temperature_c.is_blank() {
            25.0
        } else {
            number(&self.temperature_c)
                .filter(|celsius| (0.0..=40.0).contains(celsius))
                .unwrap_or_else(|| {
                    problems.push(problem("temperature_c", &self.temperature_c, "0 to 40"));
                    25.0
                })
        };
        if problems.is_empty() {
            Ok(SoundIons {
                amounts,
                ph,
                temperature_c,
            })
        } else {
            Err(problems)
        }
    }
}

/// Stronger than any stock solution, mmol/L.
const MOST_MMOL: f64 = 10_000.0;

fn number(entry: &Entry) -> Option<f64> {
    match entry {
        Entry::Number(value) => Some(*value),
        Entry::Text(_) => None,
    }
}

fn problem(field: &str, entry: &Entry, allowed: &str) -> IonProblem {
    IonProblem {
        field: Some(field.to_owned()),
        got: match entry {
            Entry::Number(value) => value.to_string(),
            Entry::Text(text) => text.clone(),
        },
        allowed: allowed.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_no_list_is_refused_and_a_misspelt_member_too() {
        for text in ["", "[]", "null", "7", r#"{"ions": [1]}"#, r#"{"temp": 20}"#] {
            let problems = IonList::from_json(text).expect_err(text);
            assert_eq!(problems[0].field, None, "{text}");
        }
    }

    #[test]
    fn alkalinity_goes_with_a_ph_and_without_carbonate() {
        let named = |text: &str| -> Vec<String> {
            let list = IonList::from_json(text).expect("a document");
            let problems = list.check().err().unwrap_or_default();
            problems.into_iter().filter_map(|it| it.field).collect()
        };
        assert_eq!(named(r#"{"ions": {"Ca": 1, "alkalinity": 2}}"#), ["ph"]);
        let both = r#"{"ions": {"CO3": 1, "alkalinity": 2}, "ph": 8}"#;
        assert_eq!(named(both), ["alkalinity"]);
        assert!(named(r#"{"ions": {"alkalinity": 2}, "ph": 8}"#).is_empty());
    }

    #[test]
    fn every_wrong_line_is_named() {
        let list = IonList::from_json(
            r#"{"ions": {"K": -1, "Xy": 2, "Ca": "much"}, "ph": 20, "temperature_c": "hot"}"#,
        )
        .expect("a document");
        let problems = list.check().expect_err("five wrong lines");
        let fields: Vec<&str> = problems.iter().filter_map(|p| p.field.as_deref()).collect();
        assert_eq!(fields, ["Ca", "K", "Xy", "ph", "temperature_c"]);
    }
}
