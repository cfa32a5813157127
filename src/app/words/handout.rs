//! What a group takes along on paper.

use super::doses::{capital, dose, doses_line, material, millilitres};
use super::figures::{and_list, date, show};
use super::say::*;
use crate::advice::Outcome;
use crate::catalog::Keyed;
use crate::plan::{Dimension, UnitSystem};

/// Heads of the table.
pub fn group_heads() -> [&'static str; 2] {
    [group_heads_1(), group_heads_2()]
}

/// What to take care of where a group mixes.
pub fn group_care(units: UnitSystem) -> [String; 3] {
    // Of water, a kilogram for each litre.
    let one = Dimension::Volume.saved(1.0, units);
    [
        group_care_1().to_owned(),
        GroupCare2 {
            units: units.key(),
            weight: &show(Dimension::Weight, one, units),
        }
        .text(),
        group_care_3().to_owned(),
    ]
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
    SmallCardsOf {
        cards: &cards.to_string(),
        containers: &containers.to_string(),
    }
    .text()
}

/// Fill and doses of one container in a line.
pub fn small_mix(outcome: &Outcome, units: UnitSystem) -> String {
    SmallMixLine {
        volume: &show(Dimension::Volume, outcome.fill.volume_l, units),
        doses: &doses_line(outcome, units),
    }
    .text()
}

/// Who the list is for.
pub fn group_of(outcome: &Outcome, units: UnitSystem) -> String {
    GroupLine {
        containers: &outcome.fill.containers.to_string(),
        plants: &outcome.group.plants.to_string(),
        below_rim: &show(Dimension::Length, outcome.fill.below_rim_cm, units),
    }
    .text()
}

/// Everything to buy and weigh.
pub fn group_supplies(outcome: &Outcome, units: UnitSystem) -> Vec<Vec<String>> {
    let water = vec![
        group_get_water().to_owned(),
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
            let parts: Vec<String> = stock
                .contents
                .iter()
                .map(|item| {
                    GroupStockPart {
                        dose: &dose(item, units),
                        material: &material(&item.material),
                    }
                    .text()
                })
                .collect();
            GroupStock {
                stock: &capital(&material(&stock.material)),
                parts: &and_list(&parts),
                volume: &show(Dimension::Volume, stock.volume_l, units),
                each: &millilitres(stock.each_ml, units),
            }
            .text()
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
