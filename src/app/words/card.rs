//! The words of the printed card.

use super::doses::{all_doses_line, capital, dose, material};
use super::figures::{date, show};
use super::findings::fine;
use super::results::below_rim;
use super::say::*;
use crate::advice::Material;
use crate::advice::{Dose, Outcome};
use crate::plan::{Dimension, UnitSystem};

/// What to have at hand.
pub fn card_prepare(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    let fill = &outcome.fill;
    let mut lines = vec![format!(
        "A food-grade container that never held chemicals, washed, light-tight; {}",
        if outcome.boards.is_some() {
            "boards washed, pipes laid and level."
        } else {
            "cover with holes for the net pots."
        }
    )];
    lines.push(match fill.plants_per_board {
        Some(each) => format!(
            "{} net pots with wet medium and a seedling each, {each} to a board.",
            fill.plants
        ),
        None if fill.plants == 1 => "1 net pot with wet medium and a seedling.".to_owned(),
        None => format!(
            "{} net pots with wet medium and a seedling each.",
            fill.plants
        ),
    });
    for stock in &outcome.stocks {
        let contents: Vec<String> = stock
            .contents
            .iter()
            .map(|content| {
                format!(
                    "{} {}",
                    show(
                        Dimension::StockStrength,
                        content.g_per_l,
                        UnitSystem::Metric
                    ),
                    material(&content.material)
                )
            })
            .collect();
        lines.push(format!(
            "{}: {}.",
            capital(&material(&stock.material)),
            contents.join(" + ")
        ));
    }
    if fill.containers > 1 {
        lines.push(format!(
            "For {} containers: {} of solution in all. {}",
            fill.containers,
            show(Dimension::Volume, fill.total_volume_l, units),
            all_doses_line(outcome, units).unwrap_or_default()
        ));
    }
    lines
}

/// The fill mark in large type.
pub fn card_mark(outcome: &Outcome, units: UnitSystem) -> String {
    below_rim(outcome.fill.below_rim_cm, units)
}

/// What the mark means.
pub fn card_mark_more(outcome: &Outcome, units: UnitSystem) -> String {
    let fill = &outcome.fill;
    format!(
        "= {} above the floor = {}. Mark it before the {} go in; the pots then stand {} in the solution.",
        show(Dimension::Length, fill.depth_cm, units),
        show(Dimension::Volume, fill.volume_l, units),
        if outcome.boards.is_some() {
            "boards"
        } else {
            "pots"
        },
        show(Dimension::Length, fill.pot_immersion_cm, units)
    )
}

/// How to mix one container: half the water first; calcium apart from sulfate and phosphate until
/// dilute; acid last.
pub fn card_mix(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    let mut lines = vec!["Fill about half way with clean water.".to_owned()];
    let doses = &outcome.fertilizer.doses;
    let acid = |item: &&Dose| matches!(item.material, Material::Acid(_));
    let salts: Vec<&Dose> = doses.iter().filter(|item| !acid(item)).collect();
    match salts.as_slice() {
        [only] => lines.push(format!(
            "Weigh {} of {}. Stir it into a jug of water until clear, then pour it in.",
            dose(only, units),
            material(&only.material)
        )),
        [a, b] if outcome.stocks.len() == 2 => {
            lines.push(format!(
                "Pour in {} of {} and stir well.",
                dose(a, units),
                material(&a.material)
            ));
            lines.push(format!(
                "Only then pour in {} of {} and stir well.",
                dose(b, units),
                material(&b.material)
            ));
        }
        salts => {
            let line = |calcium: bool| {
                salts
                    .iter()
                    .filter(|item| item.brings_calcium == calcium)
                    .map(|item| format!("{} {}", dose(item, units), material(&item.material)))
                    .collect::<Vec<_>>()
                    .join(", ")
            };
            let jugs: Vec<String> = [line(false), line(true)]
                .into_iter()
                .filter(|jug| !jug.is_empty())
                .collect();
            for (index, jug) in jugs.iter().enumerate() {
                let how = if index == 0 {
                    "Dissolve in a jug, pour in, stir"
                } else {
                    "In a second jug, only after that"
                };
                lines.push(format!("{how}: {jug}."));
            }
        }
    }
    lines.push("Fill to the mark and stir.".to_owned());
    if let Some(item) = doses.iter().find(acid) {
        lines.push(format!(
            "Gloves, eye protection: stir in up to {} of {}, part by part, to pH {}.",
            dose(item, units),
            material(&item.material),
            fine(outcome.solution.ph)
        ));
    }
    lines.push(format!(
        "Measure: about {} at 25 °C, pH {}. Correct now; it cannot be corrected later.",
        show(
            Dimension::Conductivity,
            outcome.fertilizer.ec_ms_per_cm,
            units
        ),
        fine(outcome.solution.ph)
    ));
    lines
}

/// The dates: what, when.
pub fn card_dates(outcome: &Outcome) -> Vec<(&'static str, String)> {
    let calendar = &outcome.calendar;
    let mut rows = vec![
        ("Sow", date(&calendar.seeding)),
        ("Mix, fill and plant", date(&calendar.transplanting)),
    ];
    if let Some(rest) = &calendar.boards_rest {
        rows.push(("Boards rest, about", date(rest)));
    }
    rows.push((
        "Harvest, about",
        calendar
            .harvest
            .as_deref()
            .map_or_else(|| "not reached".to_owned(), date),
    ));
    rows
}

/// What to expect at harvest.
pub fn card_expect(outcome: &Outcome, units: UnitSystem) -> String {
    let season = &outcome.season;
    format!(
        "Expected then: heads of about {}, {} of solution left, moist air gap {}.",
        show(Dimension::Mass, season.head_g, units),
        show(Dimension::Volume, season.left_l, units),
        show(Dimension::Length, season.gap_at_end_cm, units)
    )
}

/// What to watch for; the same for every plan.
pub fn watch_lines() -> [&'static str; 4] {
    [
        watch_lines_1(),
        watch_lines_2(),
        watch_lines_3(),
        watch_lines_4(),
    ]
}
