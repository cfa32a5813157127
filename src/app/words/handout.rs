//! What a group takes along on paper.

use super::card::card_mark;
use super::doses::{capital, dose, doses_line, material};
use super::figures::{date, show};
use super::say::*;
use crate::advice::Outcome;
use crate::plan::{Dimension, UnitSystem};

/// Heads of the table.
pub fn group_heads() -> [&'static str; 2] {
    [group_heads_1(), group_heads_2()]
}
/// What to take care of where a group mixes.
pub fn group_care() -> [&'static str; 3] {
    [group_care_1(), group_care_2(), group_care_3()]
}
/// Heads of the table.
pub fn record_heads() -> [&'static str; 8] {
    [
        record_heads_1(),
        record_heads_2(),
        record_heads_3(),
        record_heads_4(),
        record_heads_5(),
        record_heads_6(),
        record_heads_7(),
        record_heads_8(),
    ]
}

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
