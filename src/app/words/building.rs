//! What stands on the build sheet: headings, alarms, mends, captions of the drawings.

use super::build_figures::Shown;
use super::choices::Called;
use super::fields::label;
use super::figures::{and_list, in_full, rounded, show};
use super::findings::finding;
use super::say::*;
use crate::advice::{Change, Fact, LayoutOutcome, LoadStop, Outcome, StructureFact, Weight};
use crate::catalog::Keyed;
use crate::catalog::covers::CoverMaterial;
use crate::catalog::foams::Foam;
use crate::catalog::pipes::{PipeChoice, PipeMaterial};
use crate::catalog::timber::Timber;
use crate::plan::{Dimension, Entry, Field, PipeEnds, StandsOn, UnitSystem};

/// Columns of the figures.
pub fn build_check_heads() -> [&'static str; 3] {
    [
        build_check_heads_1(),
        build_check_heads_2(),
        build_check_heads_3(),
    ]
}
/// Columns of the materials.
pub fn build_material_heads() -> [&'static str; 4] {
    [
        build_material_heads_1(),
        build_material_heads_2(),
        build_material_heads_3(),
        build_material_heads_4(),
    ]
}
/// What can be printed.
pub fn papers() -> [&'static str; 6] {
    [
        papers_1(),
        papers_2(),
        papers_3(),
        papers_4(),
        papers_5(),
        papers_6(),
    ]
}
/// Buttons that print what is not the card.
pub fn print_other() -> [&'static str; 5] {
    [
        print_other_1(),
        print_other_2(),
        print_other_3(),
        print_other_4(),
        print_other_5(),
    ]
}

/// How many pages the template takes, and how to print it.
pub fn template_note(pages: usize) -> String {
    if pages == 0 {
        return template_too_large().to_owned();
    }
    template_pages(&pages.to_string())
}

/// The bar of the template, mm, and its words.
pub fn template_check(units: UnitSystem) -> (f64, String) {
    let mm = match units {
        UnitSystem::Metric => 100.0,
        // Four inches.
        UnitSystem::UsCustomary => 101.6,
    };
    (mm, template_bar(&show(Dimension::SmallLength, mm, units)))
}

/// At the head of a page of the template.
pub fn template_page(row: usize, column: usize, alarm: Option<&str>) -> String {
    let (row, column) = (&row.to_string(), &column.to_string());
    match alarm {
        Some(alarm) => TemplatePageAlarm { alarm, column, row }.text(),
        None => TemplatePage { column, row }.text(),
    }
}

/// What must not be missed on screen or paper: places that do not bear the tank, sides that a
/// competent person must see, boards that turn over.
pub fn alarms(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    outcome
        .findings
        .iter()
        .filter(|found| {
            found.weight != Weight::Sound
                && matches!(
                    found.fact,
                    Fact::Structure(
                        StructureFact::DoNotBuildThere { .. }
                            | StructureFact::AskCompetentPerson { .. }
                            | StructureFact::Sides { .. }
                            | StructureFact::TurnsOver { .. }
                    )
                )
        })
        .map(|found| finding(found, units))
        .collect()
}

/// The gravest of it in a few words, for the foot of a phone and the head of each page of paper.
pub fn alarm(outcome: &Outcome) -> Option<&'static str> {
    let build = outcome.build.as_ref()?;
    match build.stop {
        Some(LoadStop::AboveRating) => Some(alarm_above_rating()),
        Some(LoadStop::RatingUnknown) => Some(alarm_rating_unknown()),
        Some(LoadStop::BalconyOrRoof) => Some(alarm_balcony_or_roof()),
        None => build
            .timber
            .ask_competent_person
            .then(alarm_ask_competent_person),
    }
}

/// The button of a mend; what mends the plans of buckets is said as one would say it.
pub fn change_button(to: &Change, units: UnitSystem) -> String {
    match (to.field, &to.value) {
        (Field::PlantsPerContainer, Entry::Number(plants)) => mend_plants(&rounded(*plants, 6)),
        (Field::RainShare, Entry::Number(share)) => mend_rain(&rounded(*share, 6)),
        _ => change(to, units),
    }
}

/// Several changes that belong together.
pub fn changes(changes: &[Change], units: UnitSystem) -> String {
    let said: Vec<String> = changes.iter().map(|it| change(it, units)).collect();
    and_list(&said)
}

/// A change: the field and what it becomes.
fn change(change: &Change, units: UnitSystem) -> String {
    let to = match &change.value {
        Entry::Number(value) => change.field.limits().map_or_else(
            || rounded(*value, 6),
            |limits| in_full(limits.dimension, *value, units),
        ),
        Entry::Text(key) => chosen(change.field, key, units),
    };
    format!("{}: {to}", label(change.field))
}

/// The name of a choice by its key.
fn chosen(field: Field, key: &str, units: UnitSystem) -> String {
    fn word<T: Keyed + Called>(key: &str, units: UnitSystem) -> Option<String> {
        T::from_key(key).map(|item| item.called(units))
    }
    match field {
        Field::Pipe => word::<PipeChoice>(key, units),
        Field::Foam => word::<Foam>(key, units),
        Field::PipeEnds => word::<PipeEnds>(key, units),
        Field::PipeMaterial => word::<PipeMaterial>(key, units),
        Field::StandsOn => word::<StandsOn>(key, units),
        Field::Timber => word::<Timber>(key, units),
        Field::CoverMaterial => word::<CoverMaterial>(key, units),
        _ => None,
    }
    .unwrap_or_else(|| key.to_owned())
}

/// Under the drawing of the tank.
pub fn tank_caption(outcome: &Outcome, units: UnitSystem) -> String {
    let Some(layout) = &outcome.layout else {
        return String::new();
    };
    let strips = layout.boards.iter().filter(|board| board.strip).count();
    let size = &Shown(units).sheet((layout.board_length_mm, layout.board_width_mm));
    let boards = &(layout.boards.len() - strips).to_string();
    if outcome.boards.is_none() {
        tank_caption_cover(size)
    } else if strips == 0 {
        TankCaptionBoards { boards, size }.text()
    } else {
        TankCaptionStrip { boards, size }.text()
    }
}

/// Under the drawing of a board.
pub fn board_caption(layout: &LayoutOutcome, floats: bool, units: UnitSystem) -> String {
    let holes = &layout.holes.len().to_string();
    let size = &Shown(units).mm(layout.hole_diameter_mm);
    if floats {
        BoardCaptionBoard { holes, size }.text()
    } else {
        BoardCaptionCover { holes, size }.text()
    }
}

/// Under the drawing of sheets that are cut alike.
pub fn sheet_caption(count: usize, pieces: usize, offcuts: usize) -> String {
    SheetCaption {
        offcuts: &offcuts.to_string(),
        pieces: &pieces.to_string(),
        sheets: &count.to_string(),
    }
    .text()
}

/// A length in a drawing.
pub fn drawn_length(mm: f64, units: UnitSystem) -> String {
    show(Dimension::Length, mm / 10.0, units)
}
