//! The words of the printed card.

use super::doses::{all_doses_line, capital, dose, kind_of_blend, material, stock_parts};
use super::figures::{date, reference, show, unit};
use super::finding_parts::{fine, sentences};
use super::results::below_rim;
use super::say::*;
use crate::advice::{Dose, FirstWater, Material, Outcome};
use crate::plan::{Dimension, UnitSystem};

/// What to have at hand.
pub fn card_prepare(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    let fill = &outcome.fill;
    let plants = &fill.plants.to_string();
    let container = match fill.cover_hole_cm {
        Some(hole) => CardPrepareCover {
            plants,
            hole: &show(Dimension::Length, hole, units),
        }
        .text(),
        None if outcome.boards.is_some() => card_prepare_boards().to_owned(),
        None => card_prepare_neck().to_owned(),
    };
    let height = &show(Dimension::Length, fill.pot_height_cm, units);
    let pots = match fill.plants_per_board {
        Some(each) => CardPreparePotsOnBoards {
            plants,
            height,
            each: &each.to_string(),
        }
        .text(),
        None => CardPreparePots { height, plants }.text(),
    };
    let mut lines = vec![container, pots, card_prepare_seeds().to_owned()];
    lines.extend(kind_of_blend(outcome));
    for stock in &outcome.stocks {
        lines.push(
            CardStock {
                stock: &capital(&material(&stock.material)),
                parts: &stock_parts(stock, units),
            }
            .text(),
        );
    }
    if fill.containers > 1 {
        let all = CardPrepareAll {
            containers: &fill.containers.to_string(),
            volume: &show(Dimension::Volume, fill.total_volume_l, units),
        }
        .text();
        let doses = all_doses_line(outcome, units);
        lines.push(
            [Some(all), doses]
                .into_iter()
                .flatten()
                .collect::<Vec<_>>()
                .join(" "),
        );
    }
    lines
}

/// The fill mark in large type.
pub fn card_mark(outcome: &Outcome, units: UnitSystem) -> String {
    below_rim(outcome.fill.below_rim_cm, units)
}

/// What the doses are for, and how much it is for each litre where one material is weighed.
pub fn card_dose_more(outcome: &Outcome, units: UnitSystem) -> String {
    let alone = outcome.fertilizer.alone_g_per_l;
    let each = alone.map(|g_per_l| card_dose_each(&show(Dimension::StockStrength, g_per_l, units)));
    let plants = card_dose_for(&outcome.fill.plants.to_string());
    sentences(&[Some(plants), each])
}

/// What the mark means.
pub fn card_mark_more(outcome: &Outcome, units: UnitSystem) -> String {
    let fill = &outcome.fill;
    CardMarkMore {
        depth: &show(Dimension::Length, fill.depth_cm, units),
        height: &show(Dimension::Length, fill.container_depth_cm, units),
        volume: &show(Dimension::Volume, fill.volume_l, units),
        put_in: if outcome.boards.is_some() {
            "boards"
        } else {
            "pots"
        },
        immersion: &show(Dimension::Length, fill.pot_immersion_cm, units),
    }
    .text()
}

/// How to mix one container: half the water first; calcium apart from sulfate and phosphate until
/// dilute; acid last.
pub fn card_mix(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    let (raw, water) = (outcome.fertilizer.raw_water_ec_ms_per_cm, &outcome.water);
    let rain = show(Dimension::Volume, water.rain_l, units);
    let (first, fill) = match water.first {
        FirstWater::Raw => (
            card_mix_half(&show(Dimension::Conductivity, raw, units)),
            card_mix_fill(),
        ),
        FirstWater::Pure => (card_mix_half_pure().to_owned(), card_mix_fill()),
        FirstWater::Rain => (card_mix_rain(&rain), card_mix_fill_tap()),
        FirstWater::RainAndRaw => (card_mix_rain_and_tap(&rain), card_mix_fill_tap()),
    };
    let mut lines = vec![first];
    let doses = &outcome.fertilizer.doses;
    let acid = |item: &&Dose| matches!(item.material, Material::Acid(_));
    let salts: Vec<&Dose> = doses.iter().filter(|item| !acid(item)).collect();
    match salts.as_slice() {
        [only] => lines.push(
            CardMixOnly {
                dose: &dose(only, units),
                material: &material(&only.material),
            }
            .text(),
        ),
        [a, b] if outcome.stocks.len() == 2 => {
            lines.push(
                CardMixFirstStock {
                    dose: &dose(a, units),
                    material: &material(&a.material),
                }
                .text(),
            );
            lines.push(
                CardMixSecondStock {
                    dose: &dose(b, units),
                    material: &material(&b.material),
                }
                .text(),
            );
        }
        salts => lines.extend(jugs(salts, units)),
    }
    lines.push(fill.to_owned());
    if let Some(item) = doses.iter().find(acid) {
        lines.push(
            CardMixAcid {
                dose: &dose(item, units),
                material: &material(&item.material),
                ph: &fine(outcome.solution.ph),
            }
            .text(),
        );
    }
    lines.push(
        CardMixMeasure {
            ec: &show(
                Dimension::Conductivity,
                outcome.fertilizer.ec_ms_per_cm,
                units,
            ),
            reference: &reference(units),
            ph: &fine(outcome.solution.ph),
        }
        .text(),
    );
    lines
}

/// What goes into the first jug, and what into a second: those that bring calcium.
fn jugs(salts: &[&Dose], units: UnitSystem) -> Vec<String> {
    let jug = |calcium: bool| {
        salts
            .iter()
            .filter(|item| item.brings_calcium == calcium)
            .map(|item| {
                CardMixSalt {
                    dose: &dose(item, units),
                    material: &material(&item.material),
                }
                .text()
            })
            .collect::<Vec<_>>()
            .join(", ")
    };
    [jug(false), jug(true)]
        .into_iter()
        .filter(|jug| !jug.is_empty())
        .enumerate()
        .map(|(index, jug)| {
            if index == 0 {
                card_mix_first_jug(&jug)
            } else {
                card_mix_second_jug(&jug)
            }
        })
        .collect()
}

/// The dates: what, when.
pub fn card_dates(outcome: &Outcome) -> Vec<(&'static str, String)> {
    let calendar = &outcome.calendar;
    // Whoever plants on another day counts from there.
    let on_day = |(written, day): (&String, u32)| {
        CardDateDay {
            date: &date(written),
            day: &day.to_string(),
        }
        .text()
    };
    let mut rows = vec![
        (card_date_sow(), date(&calendar.seeding)),
        (card_date_plant(), on_day((&calendar.transplanting, 0))),
    ];
    if let Some(rest) = &calendar.boards_rest {
        rows.push((card_date_boards_rest(), date(rest)));
    }
    let harvest = calendar.harvest.as_ref().zip(outcome.season.harvest_day);
    rows.push((
        card_date_harvest(),
        harvest.map_or_else(|| card_date_no_harvest().to_owned(), on_day),
    ));
    rows
}

/// What to expect at harvest.
pub fn card_expect(outcome: &Outcome, units: UnitSystem) -> String {
    let season = &outcome.season;
    CardExpect {
        head: &show(Dimension::Mass, season.head_g, units),
        left: &show(Dimension::Volume, season.left_l, units),
        gap: &show(Dimension::Length, season.gap_at_end_cm, units),
    }
    .text()
}

/// The days of every second week, and how far below the rim the level should stand then.
pub fn card_levels(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    /// Two weeks.
    const APART: u32 = 14;
    /// Weeks beyond which a card has no room.
    const MOST: usize = 5;
    let told = |day: u32| day > 0 && day.is_multiple_of(APART);
    let readings = outcome.weeks.iter().filter(|reading| told(reading.day));
    readings
        .take(MOST)
        .map(|reading| {
            CardLevel {
                date: &date(&reading.date),
                level: &show(Dimension::Length, reading.below_rim_cm, units),
            }
            .text()
        })
        .collect()
}

/// What to watch for: the level as it should fall, and what is the same for every plan.
pub fn watch_lines(levels_told: bool, units: UnitSystem) -> Vec<String> {
    // What mosquitoes pass, in the sizes that meshes are sold by.
    let gap = match units {
        UnitSystem::Metric => show(Dimension::SmallLength, 1.0, units),
        UnitSystem::UsCustomary => format!("1/16\u{a0}{}", unit("in")),
    };
    let weekly = levels_told.then(|| watch_lines_5().to_owned());
    let always = [
        watch_lines_1(&gap),
        watch_lines_2().to_owned(),
        watch_lines_3().to_owned(),
        watch_lines_4().to_owned(),
        watch_lines_6().to_owned(),
    ];
    weekly.into_iter().chain(always).collect()
}
