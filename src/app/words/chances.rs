//! How sure a plan is, and what would make it sure.

use super::figures::{date, places, show};
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
    chances_under_heading(&seasons.to_string())
}

/// While seasons are lived through.
pub fn seasons_so_far(done: usize, all: usize) -> String {
    SeasonsSoFar {
        done: &done.to_string(),
        all: &all.to_string(),
    }
    .text()
}

/// What most seasons come to.
pub fn chances_sentences(chances: &ChancesOutcome) -> Vec<String> {
    let mut lines = vec![
        chances_lasts(&chances.lasts_of_100.to_string()),
        chances_feeds(&chances.feeds_of_100.to_string()),
    ];
    if let Some(day) = &chances.used_up_day {
        lines.push(chances_used_up(&places(day.middle, 0)));
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
            chances_row_harvest(),
            dates.each_ref().map(|written| date(written)),
        ));
    }
    for (name, dimension, band) in [
        (chances_row_head(), Dimension::Mass, &chances.head_g),
        (chances_row_water(), Dimension::Volume, &chances.water_l),
        (
            chances_row_water_use(),
            Dimension::WaterUse,
            &chances.water_per_kg_l,
        ),
        (chances_row_gap(), Dimension::Length, &chances.gap_at_end_cm),
        (
            chances_row_ec(),
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
    OffersHeading {
        aim: match aim {
            Aim::Lasts => "lasts",
            Aim::Feeds => "feeds",
        },
        wanted: &places(WANTED * 100.0, 0),
    }
    .text()
}

/// Where no change is offered.
pub fn no_offer(aim: Aim, chances: &ChancesOutcome) -> &'static str {
    let now = match aim {
        Aim::Lasts => chances.lasts,
        Aim::Feeds => chances.feeds,
    };
    if now >= WANTED {
        no_offer_needed()
    } else {
        no_offer_enough()
    }
}

/// What is drawn by chance, and where the spreads come from.
pub fn spreads_text(units: UnitSystem) -> [String; 3] {
    let spreads = Spreads::default();
    let percent = |share: f64| places(share * 100.0, 0);
    let (degrees, symbol) = temperature_difference(spreads.temperature_k, units);
    [
        SpreadsWeather {
            warmth: &format!("{}\u{a0}{symbol}", places(degrees, 1)),
            light: &percent(spreads.radiation),
            humidity: &percent(spreads.humidity),
        }
        .text(),
        SpreadsPlants {
            growth: &percent(spreads.growth),
            water: &percent(spreads.water),
            uptake: &percent(spreads.uptake),
        }
        .text(),
        spreads_seed().to_owned(),
    ]
}
