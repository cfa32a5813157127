//! The words of the printed card.

use super::doses::{all_doses_line, capital, dose, material, stock_parts};
use super::figures::{date, reference, show, unit};
use super::findings::fine;
use super::results::below_rim;
use super::say::*;
use crate::advice::Material;
use crate::advice::{Dose, Outcome};
use crate::plan::{Dimension, UnitSystem};

/// What to have at hand.
pub fn card_prepare(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    let fill = &outcome.fill;
    let container = if outcome.boards.is_some() {
        card_prepare_boards()
    } else {
        card_prepare_cover()
    };
    let plants = &fill.plants.to_string();
    let pots = match fill.plants_per_board {
        Some(each) => CardPreparePotsOnBoards {
            plants,
            each: &each.to_string(),
        }
        .text(),
        None => card_prepare_pots(plants),
    };
    let mut lines = vec![container.to_owned(), pots];
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

/// What the doses are for.
pub fn card_dose_more(outcome: &Outcome) -> String {
    card_dose_for(&outcome.fill.plants.to_string())
}

/// What the mark means.
pub fn card_mark_more(outcome: &Outcome, units: UnitSystem) -> String {
    let fill = &outcome.fill;
    CardMarkMore {
        depth: &show(Dimension::Length, fill.depth_cm, units),
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
    /// Below it a meter shows nothing worth a word.
    const PURE_MS_PER_CM: f64 = 0.05;
    let raw = outcome.fertilizer.raw_water_ec_ms_per_cm;
    let (rain_l, all_l) = (outcome.water.rain_l, outcome.fill.volume_l);
    let rain = show(Dimension::Volume, rain_l, units);
    let mixes = rain_l > 0.0 && rain_l < 0.999 * all_l;
    let mut lines = vec![if mixes && rain_l >= all_l / 2.0 {
        card_mix_rain(&rain)
    } else if mixes {
        card_mix_rain_and_tap(&rain)
    } else if raw < PURE_MS_PER_CM {
        card_mix_half_pure().to_owned()
    } else {
        card_mix_half(&show(Dimension::Conductivity, raw, units))
    }];
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
    let fill = if mixes {
        card_mix_fill_tap()
    } else {
        card_mix_fill()
    };
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
    let mut rows = vec![
        (card_date_sow(), date(&calendar.seeding)),
        (card_date_plant(), date(&calendar.transplanting)),
    ];
    if let Some(rest) = &calendar.boards_rest {
        rows.push((card_date_boards_rest(), date(rest)));
    }
    rows.push((
        card_date_harvest(),
        calendar
            .harvest
            .as_deref()
            .map_or_else(|| card_date_no_harvest().to_owned(), date),
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

/// What to watch for: the level as it should fall, and what is the same for every plan.
pub fn watch_lines(outcome: &Outcome, units: UnitSystem) -> Vec<String> {
    /// Two weeks.
    const APART: u32 = 14;
    /// Weeks beyond which a card has no room.
    const MOST: usize = 5;
    let told = |day: u32| day > 0 && day.is_multiple_of(APART);
    let readings = outcome
        .weeks
        .iter()
        .filter(|reading| told(reading.day))
        .take(MOST);
    let levels: Vec<String> = readings
        .map(|reading| {
            WatchLevel {
                date: &date(&reading.date),
                level: &show(Dimension::Length, reading.below_rim_cm, units),
            }
            .text()
        })
        .collect();
    // What mosquitoes pass, in the sizes that meshes are sold by.
    let gap = match units {
        UnitSystem::Metric => show(Dimension::SmallLength, 1.0, units),
        UnitSystem::UsCustomary => format!("1/16\u{a0}{}", unit("in")),
    };
    let weekly = (!levels.is_empty()).then(|| watch_lines_5(&levels.join(", ")));
    let always = [
        watch_lines_1(&gap),
        watch_lines_2().to_owned(),
        watch_lines_3().to_owned(),
        watch_lines_4().to_owned(),
    ];
    weekly.into_iter().chain(always).collect()
}
