//! What a group takes along on paper: small cards to fill in names, the list for shopping and mixing,
//! and the sheet for what is read week by week.

use super::browser::dom::{Node, el, several};
use super::results::titled_table;
use super::words;
use crate::advice::Outcome;
use crate::plan::UnitSystem;

/// Small cards on a sheet: two across and four down.
const CARDS: usize = 8;
/// Most cards that are printed.
const MOST_CARDS: usize = 40;
/// Empty lines for heads at harvest.
const HEADS: usize = 3;

fn items<T: Into<Node>>(lines: impl IntoIterator<Item = T>) -> Node {
    lines.into_iter().map(|line| el("li").child(line)).collect()
}

fn rows(lines: Vec<Vec<String>>) -> Node {
    let cell = |text: String| el("td").child(text);
    lines
        .into_iter()
        .map(|line| el("tr").child(line.into_iter().map(cell).collect::<Node>()))
        .collect()
}

/// A card for each container, with a line for a name; of a single container, a sheet full.
pub fn cards(outcome: &Outcome, units: UnitSystem, name: &str) -> Node {
    let containers = outcome.fill.containers as usize;
    let count = if containers > 1 {
        containers.min(MOST_CARDS)
    } else {
        CARDS
    };
    let dates: Vec<String> = words::card_dates(outcome)
        .into_iter()
        .map(|(what, when)| format!("{what}: {when}"))
        .collect();
    let card = |_| {
        el("section")
            .class("small-card")
            .child(el("p").class("for-name").child(words::for_name()))
            .child(el("h3").child(name.to_owned()))
            .child(
                el("p")
                    .class("card-figure")
                    .child(words::card_mark(outcome, units)),
            )
            .child(el("p").child(words::small_mix(outcome, units)))
            .child(el("p").child(dates.join(". ")))
            .child(el("p").child(words::small_rule()))
    };
    let more = (containers > count).then(|| el("p").child(words::cards_of(count, containers)));
    several().child(more).child(
        el("div")
            .class("small-cards")
            .child((0..count).map(card).collect::<Node>()),
    )
}

/// What to buy and mix for all containers together.
pub fn group(outcome: &Outcome, units: UnitSystem) -> Node {
    let stocks = words::group_stocks(outcome, units);
    let prepare = (!stocks.is_empty()).then(|| {
        several()
            .child(el("h3").child(words::to_prepare()))
            .child(el("ul").child(items(stocks)))
    });
    several()
        .child(el("p").child(words::group_of(outcome, units)))
        .child(el("h3").child(words::group_get()))
        .child(titled_table(
            &words::group_heads(),
            words::group_get(),
            rows(words::group_supplies(outcome, units)),
        ))
        .child(prepare)
        .child(el("h3").child(words::group_each()))
        .child(el("ol").child(items(words::card_mix(outcome, units))))
        .child(el("h3").child(words::card_cautions()))
        .child(el("ul").child(items(words::group_care(units))))
}

/// A line for each week: what is expected, and room for what is read.
pub fn record(outcome: &Outcome, units: UnitSystem) -> Node {
    let blank = |count: usize| {
        (0..count)
            .map(|_| el("td").class("fill-in"))
            .collect::<Node>()
    };
    let weeks = words::record_rows(outcome, units).into_iter().map(|cells| {
        el("tr")
            .child(cells.map(|cell| el("td").child(cell)))
            .child(blank(4))
    });
    let heads = (0..HEADS).map(|_| el("tr").child(blank(8)));
    several()
        .child(el("p").class("for-name").child(words::for_name()))
        .child(el("p").child(words::record_how()))
        .child(titled_table(
            &words::record_heads(),
            words::weekly_record(),
            weeks.collect::<Node>(),
        ))
        .child(el("h3").child(words::record_harvest()))
        .child(el("table").child(el("tbody").child(heads.collect::<Node>())))
}
