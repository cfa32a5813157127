//! From a notebook as it was entered to readings that can be weighed, or to all that is wrong.

use serde::Serialize;
use serde::ser::Serializer;
use time::Date;

use super::{LevelFrom, Notebook, Reading};
use crate::catalog::keyed::keyed;
use crate::plan::check::{read_date, reason};
use crate::plan::{
    DateMeaning, Dimension, Entry, Pick, Plan, Problem, ProblemKind, Sound, UnitSystem, check,
    double,
};
use crate::science::units::electrical_conductivity::siemens_per_meter;
use crate::science::units::length::centimeter;
use crate::science::units::mass::gram;
use crate::science::units::thermodynamic_temperature::degree_celsius;
use crate::science::units::volume::liter;
use crate::science::units::{
    ElectricalConductivity, Length, Mass, ThermodynamicTemperature, Volume,
};

/// Days after planting that a reading may lie: as long as seasons are followed.
const MOST_DAYS: f64 = 150.0;

keyed! {
    /// The columns of a reading.
    ReadingColumn {
        /// Date or day.
        Date = "date",
        /// Number of the container.
        Container = "container",
        /// Level below rim or mark.
        Level = "level_cm",
        /// From where it was measured.
        LevelFrom = "level_from",
        /// Electrical conductivity.
        Conductivity = "ec_ms_per_cm",
        /// Temperature.
        Temperature = "temperature_c",
        /// What was added.
        Added = "added_l",
        /// The grower's words.
        Note = "note",
    }
}

impl ReadingColumn {
    /// The name of a column whose figures are in US customary units, where they differ.
    pub const fn customary_key(self) -> Option<&'static str> {
        match self {
            Self::Level => Some("level_in"),
            Self::Temperature => Some("temperature_f"),
            Self::Added => Some("added_gal"),
            _ => None,
        }
    }

    /// Dimension, least and most of a numeric column, in the unit of its key.
    pub const fn limits(self) -> Option<(Dimension, f64, f64)> {
        match self {
            Self::Container => Some((Dimension::Count, 1.0, 10_000.0)),
            // Above a fill mark a level counts negative.
            Self::Level => Some((Dimension::Length, -100.0, 300.0)),
            Self::Conductivity => Some((Dimension::Conductivity, 0.0, 20.0)),
            Self::Temperature => Some((Dimension::Temperature, -10.0, 60.0)),
            Self::Added => Some((Dimension::Volume, 0.0, 100_000.0)),
            Self::Date | Self::LevelFrom | Self::Note => None,
        }
    }
}

/// Where in a notebook something is wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// The document as a whole.
    Document,
    /// The date of planting.
    Planted,
    /// A column of the reading with this index.
    Reading(usize, ReadingColumn),
    /// A column of the cut with this index: `date`, `heads` or `mass_g`.
    Cut(usize, &'static str),
}

impl Place {
    /// The path in the document, such as `readings[2].level_cm`; empty for the whole.
    pub fn path(self) -> String {
        use crate::catalog::Keyed;
        match self {
            Self::Document => String::new(),
            Self::Planted => "planted".to_owned(),
            Self::Reading(index, column) => format!("readings[{index}].{}", column.key()),
            Self::Cut(index, column) => format!("harvest[{index}].{column}"),
        }
    }
}

/// One thing that keeps a notebook from being weighed.
#[derive(Clone, Debug, PartialEq)]
pub struct NotebookProblem {
    /// Where.
    pub place: Place,
    /// What is wrong. A document that is no notebook is told as `NotAPlan`.
    pub kind: ProblemKind,
}

impl Serialize for NotebookProblem {
    /// `{"field": "readings[2].level_cm", "kind": "not_a_number", "got": …}`
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct Flat<'a> {
            field: Option<String>,
            #[serde(flatten)]
            kind: &'a ProblemKind,
        }
        let path = self.place.path();
        Flat {
            field: (!path.is_empty()).then_some(path),
            kind: &self.kind,
        }
        .serialize(serializer)
    }
}

/// A reading that can be weighed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Observed {
    /// Whole days after planting.
    pub day: u32,
    /// Number of the container, from 1; `None` for the group.
    pub container: Option<u32>,
    /// How far the surface lies below the rim.
    pub below_rim: Option<Length>,
    /// How far the surface lies below the fill mark.
    pub below_mark: Option<Length>,
    /// Conductivity at 25 °C.
    pub conductivity: Option<ElectricalConductivity>,
    /// Temperature of the solution; kept, and not weighed.
    pub temperature: Option<ThermodynamicTemperature>,
    /// What was then added to one container.
    pub added: Volume,
}

/// Heads that were cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Harvested {
    /// Whole days after planting.
    pub day: u32,
    /// How many.
    pub heads: u32,
    /// Their fresh mass together.
    pub mass: Mass,
}

/// A notebook that can be weighed.
#[derive(Clone, Debug, PartialEq)]
pub struct SoundNotebook {
    /// The plan, planted on the day that the notebook says.
    pub plan: Plan,
    /// The readings by their day.
    pub readings: Vec<Observed>,
    /// The heads by their day.
    pub harvest: Vec<Harvested>,
    /// Whether the crop is over.
    pub closed: bool,
}

/// Why a notebook cannot be weighed.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(untagged)]
pub enum NotebookRefusal {
    /// Its plan has problems.
    Plan(Vec<Problem>),
    /// Its own entries have.
    Notebook(Vec<NotebookProblem>),
}

/// Judges a notebook entry by entry.
///
/// # Errors
/// The problems of its plan; else all its own at once, in the order of the document.
pub fn check_notebook(notebook: &Notebook) -> Result<SoundNotebook, NotebookRefusal> {
    let sound = check(&notebook.plan).map_err(NotebookRefusal::Plan)?;
    let mut problems = Vec::new();
    let planted = planting_day(notebook, &sound, &mut problems);
    let rim_cm = sound.container.vessel.depth_max().get::<centimeter>();
    let mut readings: Vec<Observed> = notebook
        .readings
        .iter()
        .enumerate()
        .filter_map(|(index, reading)| {
            let mut found = Vec::new();
            let observed = judge(reading, planted, rim_cm, &mut found);
            problems.extend(found.into_iter().map(|(column, kind)| NotebookProblem {
                place: Place::Reading(index, column),
                kind,
            }));
            observed
        })
        .collect();
    let mut harvest = Vec::new();
    for (index, cut) in notebook.harvest.iter().enumerate() {
        let mut refuse = |column, kind| {
            problems.push(NotebookProblem {
                place: Place::Cut(index, column),
                kind,
            });
        };
        let day = day_of(&cut.date, planted).map_err(|kind| refuse("date", kind));
        let heads = read(&cut.heads, Dimension::Count, 1.0, 1e6)
            .and_then(whole)
            .map_err(|kind| refuse("heads", kind));
        let mass =
            read(&cut.mass_g, Dimension::Mass, 0.0, 1e9).map_err(|kind| refuse("mass_g", kind));
        if let (Ok(day), Ok(heads), Ok(mass)) = (day, heads, mass) {
            harvest.push(Harvested {
                day,
                heads,
                mass: Mass::new::<gram>(mass),
            });
        }
    }
    if !problems.is_empty() {
        return Err(NotebookRefusal::Notebook(problems));
    }
    // Stable: readings of one day keep their order.
    readings.sort_by_key(|reading| reading.day);
    harvest.sort_by_key(|cut| cut.day);
    let mut plan = notebook.plan.clone();
    plan.crop.date_meaning = Pick::Known(DateMeaning::Transplanting);
    plan.crop.date = Entry::Text(format!(
        "{:04}-{:02}-{:02}",
        planted.year(),
        u8::from(planted.month()),
        planted.day()
    ));
    Ok(SoundNotebook {
        plan,
        readings,
        harvest,
        closed: notebook.closed,
    })
}

fn planting_day(notebook: &Notebook, sound: &Sound, problems: &mut Vec<NotebookProblem>) -> Date {
    let own = sound.crop.transplanting;
    if notebook.planted.is_blank() {
        return own;
    }
    let text = text_of(&notebook.planted);
    read_date(&text).unwrap_or_else(|| {
        problems.push(NotebookProblem {
            place: Place::Planted,
            kind: ProblemKind::NotADate { got: text },
        });
        own
    })
}

fn text_of(entry: &Entry) -> String {
    match entry {
        Entry::Number(value) => value.to_string(),
        Entry::Text(text) => text.trim().to_owned(),
    }
}

/// Judges one reading; what is wrong goes to `problems` with its column. No surface lies above the
/// rim, or deeper than the container is (`rim_cm`).
pub(super) fn judge(
    reading: &Reading,
    planted: Date,
    rim_cm: f64,
    problems: &mut Vec<(ReadingColumn, ProblemKind)>,
) -> Option<Observed> {
    let before = problems.len();
    let day = match day_of(&reading.date, planted) {
        Ok(day) => Some(day),
        Err(kind) => {
            problems.push((ReadingColumn::Date, kind));
            None
        }
    };
    let from = reading.level_from.known();
    let marked = from == Some(LevelFrom::Mark);
    let mut number = |column: ReadingColumn, entry: &Entry| {
        let (dimension, mut low, mut high) = column.limits()?;
        if column == ReadingColumn::Level {
            low = if marked { low.max(-rim_cm) } else { 0.0 };
            high = high.min(rim_cm);
        }
        if entry.is_blank() {
            return None;
        }
        let value = read(entry, dimension, low, high);
        let value = if dimension == Dimension::Count {
            value.and_then(whole).map(f64::from)
        } else {
            value
        };
        value.map_err(|kind| problems.push((column, kind))).ok()
    };
    let container = number(ReadingColumn::Container, &reading.container);
    let level = number(ReadingColumn::Level, &reading.level_cm);
    let conductivity = number(ReadingColumn::Conductivity, &reading.ec_ms_per_cm);
    let temperature = number(ReadingColumn::Temperature, &reading.temperature_c);
    let added = number(ReadingColumn::Added, &reading.added_l);
    if from.is_none() && !reading.level_from.key().is_empty() {
        use crate::catalog::Keyed;
        problems.push((
            ReadingColumn::LevelFrom,
            ProblemKind::NotAChoice {
                got: reading.level_from.key().to_owned(),
                allowed: LevelFrom::ALL.iter().map(|from| from.key()).collect(),
            },
        ));
    }
    if problems.len() > before {
        return None;
    }
    let level = level.map(Length::new::<centimeter>);
    Some(Observed {
        day: day?,
        container: container.and_then(|value| whole(value).ok()),
        below_rim: level.filter(|_| !marked),
        below_mark: level.filter(|_| marked),
        // 1 mS/cm = 0.1 S/m.
        conductivity: conductivity
            .map(|value| ElectricalConductivity::new::<siemens_per_meter>(value / 10.0)),
        temperature: temperature.map(ThermodynamicTemperature::new::<degree_celsius>),
        added: Volume::new::<liter>(added.unwrap_or(0.0)),
    })
}

/// Whole days after planting of a date or a number of days.
fn day_of(entry: &Entry, planted: Date) -> Result<u32, ProblemKind> {
    if entry.is_blank() {
        return Err(ProblemKind::Missing);
    }
    let text = text_of(entry);
    let days = if let Some(date) = read_date(&text) {
        (date - planted).whole_days() as f64
    } else if let Some(days) = double(&text) {
        days
    } else {
        return Err(ProblemKind::NotADate { got: text });
    };
    if !(0.0..=MOST_DAYS).contains(&days) {
        return Err(ProblemKind::OutOfRange {
            got: days,
            low: 0.0,
            high: MOST_DAYS,
        });
    }
    whole(days)
}

fn whole(value: f64) -> Result<u32, ProblemKind> {
    if value.fract() != 0.0 {
        return Err(ProblemKind::NotWhole { got: value });
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "within limits that start at 0"
    )]
    Ok(value as u32)
}

fn read(entry: &Entry, dimension: Dimension, low: f64, high: f64) -> Result<f64, ProblemKind> {
    let value = match entry {
        Entry::Number(value) => *value,
        Entry::Text(text) => dimension
            .read(text, UnitSystem::Metric)
            .map_err(|not_read| reason(not_read, text))?,
    };
    if (low..=high).contains(&value) {
        Ok(value)
    } else {
        Err(ProblemKind::OutOfRange {
            got: value,
            low,
            high,
        })
    }
}
