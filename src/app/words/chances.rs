//! How sure a plan is, and what would make it sure.

use super::figures::{date, show};
use super::say::*;
use crate::advice::chances::{Aim, Band, ChancesOutcome, WANTED};
use crate::plan::{Dimension, UnitSystem, temperature_difference};
use crate::season::ensemble::Spreads;

/// Heads of the table.
pub fn chances_heads() -> [&'static str; 4] {
    ["", chances_heads_2(), chances_heads_3(), chances_heads_4()]
}

/// Under the heading.
pub fn chances_more(seasons: usize) -> String {
    format!(
        "The same plan in {seasons} seasons, each with other weather from day to day and with other luck in what the models do not know. The chances hold for such seasons, not for storms, pests or mistakes. One season in ten lies below what is called low, one in ten above what is called high."
    )
}

/// While seasons are lived through.
pub fn seasons_so_far(done: usize, all: usize) -> String {
    format!("{done} of {all} seasons so far.")
}

/// What most seasons come to.
pub fn chances_sentences(chances: &ChancesOutcome) -> Vec<String> {
    let mut lines = vec![
        format!(
            "The solution lasts to harvest in {} of 100 such seasons.",
            chances.lasts_of_100
        ),
        format!(
            "What is dissolved feeds the crop to harvest in {} of 100.",
            chances.feeds_of_100
        ),
    ];
    if let Some(day) = &chances.used_up_day {
        lines.push(format!(
            "Where it does not last, the last drop goes about day {:.0} after planting.",
            day.middle
        ));
    }
    lines
}

/// The lines of the table.
pub fn chances_rows(
    chances: &ChancesOutcome,
    units: UnitSystem,
) -> Vec<(&'static str, [String; 3])> {
    let cells = |dimension: Dimension, band: &Band| {
        [band.low, band.middle, band.high].map(|value| show(dimension, value, units))
    };
    let mut rows = Vec::new();
    if let Some(dates) = &chances.harvest_dates {
        rows.push((
            "Ready for harvest",
            dates.each_ref().map(|written| date(written)),
        ));
    }
    for (name, dimension, band) in [
        ("One head", Dimension::Mass, &chances.head_g),
        (
            "Drawn from one container",
            Dimension::Volume,
            &chances.water_l,
        ),
        (
            "Water for heads",
            Dimension::WaterUse,
            &chances.water_per_kg_l,
        ),
        (
            "Moist air at the end",
            Dimension::Length,
            &chances.gap_at_end_cm,
        ),
        (
            "EC at the end",
            Dimension::Conductivity,
            &chances.ec_at_end_ms_per_cm,
        ),
    ] {
        if let Some(band) = band {
            rows.push((name, cells(dimension, band)));
        }
    }
    rows
}

/// Heading of the changes that bring something about.
pub fn offers(aim: Aim) -> String {
    let what = match aim {
        Aim::Lasts => offers_lasts(),
        Aim::Feeds => offers_feeds(),
    };
    format!("So that the {what} lasts in {:.0} of 100", WANTED * 100.0)
}

/// Where no change is offered.
pub fn no_offer(aim: Aim, chances: &ChancesOutcome) -> &'static str {
    let now = match aim {
        Aim::Lasts => chances.lasts,
        Aim::Feeds => chances.feeds,
    };
    if now >= WANTED {
        "Nothing has to change."
    } else {
        "No single change within the usual limits is enough."
    }
}

/// Several changes that belong together.
pub fn joined(changes: impl Iterator<Item = String>) -> String {
    changes.collect::<Vec<_>>().join(" and ")
}

/// What is drawn by chance, and where the spreads come from.
pub fn spreads_text(units: UnitSystem) -> [String; 3] {
    let spreads = Spreads::default();
    let percent = |share: f64| format!("{:.0}\u{a0}%", share * 100.0);
    let (degrees, symbol) = temperature_difference(spreads.temperature_k, units);
    let warmth = format!("{degrees:.1}\u{a0}{symbol}");
    [
        format!(
            "Weather: how days follow one another is after Richardson and Wright (1984), matrices A and B. Assumed: highs and lows differ by {warmth} (a fifth of it in a room under lamps), light by {}, humidity by {:.0} points, each one standard deviation.",
            percent(spreads.radiation),
            spreads.humidity * 100.0
        ),
        format!(
            "Plants: growth, water drawn and nutrients taken up differ by {}, {} and {} (assumed; the published models were out by 9 to 21 % where they were tested).",
            percent(spreads.growth),
            percent(spreads.water),
            percent(spreads.uptake)
        ),
        "The seasons are drawn from a fixed seed: the same plan gives the same chances on every device.".to_owned(),
    ]
}
