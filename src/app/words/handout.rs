//! What a group takes along on paper.

use super::card::card_mark;
use super::doses::{capital, dose, doses_line, material};
use super::results::{date, show};
use crate::advice::Outcome;
use crate::plan::{Dimension, UnitSystem};

/// A line for a name.
pub const FOR_NAME: &str = "Name";
/// On a small card.
pub const SMALL_RULE: &str = "Never raise the level later: air roots drown. Keep light, rain and mosquitoes out. An adult mixes; wash your hands.";
/// Heading.
pub const GROUP_GET: &str = "To get and weigh, in all";
/// Heads of the table.
pub const GROUP_HEADS: [&str; 2] = ["What", "How much"];
/// Heading.
pub const TO_PREPARE: &str = "Stock solutions to prepare, each in its own jug";
/// Heading.
pub const GROUP_EACH: &str = "For each container, in this order";
/// What to take care of where a group mixes.
pub const GROUP_CARE: [&str; 3] = [
    "Salts irritate eyes and skin, acids burn: gloves and goggles, adults only, children stand back. Acid goes into water, never water into acid. Follow the product labels.",
    "A litre of water weighs a kilogram. Fill containers where they will stand.",
    "Cover every container of water where small children are.",
];
/// Heading.
pub const WEEKLY_RECORD: &str = "Week by week";
/// How to keep the record.
pub const RECORD_HOW: &str = "Measure from the rim straight down to the solution, in the morning. What is expected is a forecast: what you read counts.";
/// Heads of the table.
pub const RECORD_HEADS: [&str; 8] = [
    "Day",
    "Date",
    "Expected below the rim",
    "Expected EC",
    "Below the rim",
    "EC",
    "Temperature",
    "What you see",
];
/// Heading.
pub const RECORD_HARVEST: &str = "Heads at harvest, one by one";

/// Where there are more containers than cards.
pub fn cards_of(cards: usize, containers: usize) -> String {
    format!("{cards} cards for {containers} containers: print more of them.")
}

/// Fill and doses of one container in a line.
pub fn small_mix(outcome: &Outcome, units: UnitSystem) -> String {
    format!(
        "{} of water with {}.",
        show(Dimension::Volume, outcome.fill.volume_l, units),
        doses_line(outcome, units)
    )
}

/// Who the list is for.
pub fn group_of(outcome: &Outcome, units: UnitSystem) -> String {
    let fill = &outcome.fill;
    let containers = if fill.containers == 1 {
        "1 container".to_owned()
    } else {
        format!("{} containers", fill.containers)
    };
    format!(
        "{containers}, {} net pots and seedlings in all, each filled to {}.",
        outcome.group.plants,
        card_mark(outcome, units)
    )
}

/// Everything to buy and weigh.
pub fn group_supplies(outcome: &Outcome, units: UnitSystem) -> Vec<Vec<String>> {
    let water = vec![
        "Water".to_owned(),
        show(Dimension::Volume, outcome.fill.total_volume_l, units),
    ];
    let supplies = outcome
        .group
        .supplies
        .iter()
        .map(|item| vec![capital(&material(&item.material)), dose(item, units)]);
    std::iter::once(water).chain(supplies).collect()
}

/// The stock solutions.
pub fn group_stocks(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    outcome
        .group
        .stocks
        .iter()
        .map(|stock| {
            let contents: Vec<String> = stock
                .contents
                .iter()
                .map(|item| format!("{} of {}", dose(item, units), material(&item.material)))
                .collect();
            format!(
                "{}: dissolve {} and fill up to {}. {:.0}\u{a0}mL go into each container.",
                capital(&material(&stock.material)),
                contents.join(" and "),
                show(Dimension::Volume, stock.volume_l, units),
                stock.each_ml
            )
        })
        .collect()
}

/// Day, date and what is expected.
pub fn record_rows(outcome: &Outcome, units: UnitSystem) -> Vec<[String; 4]> {
    outcome
        .weeks
        .iter()
        .map(|week| {
            [
                week.day.to_string(),
                date(&week.date),
                show(Dimension::Length, week.below_rim_cm, units),
                show(Dimension::Conductivity, week.ec_ms_per_cm, units),
            ]
        })
        .collect()
}
