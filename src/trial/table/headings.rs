//! What the headings of a table of records mean.

use crate::plan::UnitSystem;

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Column {
    Unit,
    Treatment,
    Block,
    Row,
    Place,
    /// The number of the head, or words.
    Ignored,
    /// Masses, in grams or ounces where the heading says so.
    Head(Option<UnitSystem>),
    /// Solution used, in litres or gallons where the heading says so.
    Water(Option<UnitSystem>),
}

const METRIC: Option<UnitSystem> = Some(UnitSystem::Metric);
const CUSTOMARY: Option<UnitSystem> = Some(UnitSystem::UsCustomary);

/// The headings that are understood, in English and Spanish; digits, spaces and signs do not count,
/// nor do capitals.
const HEADINGS: [(&str, Column); 49] = [
    ("unit", Column::Unit),
    ("container", Column::Unit),
    ("tank", Column::Unit),
    ("bucket", Column::Unit),
    ("unidad", Column::Unit),
    ("recipiente", Column::Unit),
    ("tanque", Column::Unit),
    ("cubeta", Column::Unit),
    ("treatment", Column::Treatment),
    ("tratamiento", Column::Treatment),
    ("block", Column::Block),
    ("bloque", Column::Block),
    ("row", Column::Row),
    ("fila", Column::Row),
    ("column", Column::Place),
    ("columna", Column::Place),
    ("headno", Column::Ignored),
    ("plant", Column::Ignored),
    ("planta", Column::Ignored),
    ("note", Column::Ignored),
    ("nota", Column::Ignored),
    ("head", Column::Head(None)),
    ("headg", Column::Head(METRIC)),
    ("headoz", Column::Head(CUSTOMARY)),
    ("mass", Column::Head(None)),
    ("massg", Column::Head(METRIC)),
    ("massoz", Column::Head(CUSTOMARY)),
    ("headmass", Column::Head(None)),
    ("headmassg", Column::Head(METRIC)),
    ("headmassoz", Column::Head(CUSTOMARY)),
    ("freshmassg", Column::Head(METRIC)),
    ("plantag", Column::Head(METRIC)),
    ("plantaoz", Column::Head(CUSTOMARY)),
    ("masa", Column::Head(None)),
    ("masag", Column::Head(METRIC)),
    ("peso", Column::Head(None)),
    ("pesog", Column::Head(METRIC)),
    ("pesooz", Column::Head(CUSTOMARY)),
    ("water", Column::Water(None)),
    ("waterl", Column::Water(METRIC)),
    ("watergal", Column::Water(CUSTOMARY)),
    ("litres", Column::Water(METRIC)),
    ("liters", Column::Water(METRIC)),
    ("gallons", Column::Water(CUSTOMARY)),
    ("agua", Column::Water(None)),
    ("agual", Column::Water(METRIC)),
    ("aguagal", Column::Water(CUSTOMARY)),
    ("litros", Column::Water(METRIC)),
    ("galones", Column::Water(CUSTOMARY)),
];

pub(super) fn heading(cell: &str) -> Option<Column> {
    let plain: String = cell
        .chars()
        .filter(char::is_ascii_alphabetic)
        .map(|c| c.to_ascii_lowercase())
        .collect();
    let found = HEADINGS.iter().find(|(name, _)| *name == plain);
    found.map(|(_, column)| *column)
}
