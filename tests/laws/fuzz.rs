//! Mutated links, files and stored texts: no panic, nothing that takes long, nothing that grows.
//! The short run is part of every test run; `make fuzz` runs a million.

use std::fmt::Write as _;
use std::time::{Duration, Instant};

use slackwater::catalog::Keyed;
use slackwater::plan::notebook::{Cut, Notebook, Reading};
use slackwater::plan::{
    Example, Kept, Plan, Store, notebooks_from_file, plans_from_file, plans_to_file,
    trials_from_file,
};

use crate::links::fixtures;
use crate::saved::odd_plan;
use crate::seeded::Seeded;

/// What a person does not notice.
const LONGEST: Duration = Duration::from_millis(10);
/// A mutated text is at most this much longer than what it came from, so a plan read from it may
/// hold at most as much again.
const MOST_GROWTH: usize = 40;

/// Texts that found a fault once, or stand at a limit; each on its own line of the file.
const CORPUS: &str = include_str!("links/corpus.txt");

/// Pieces of texts that readers of links, JSON or numbers may stumble over.
const PIECES: &[&str] = &[
    "\"",
    "\\",
    "{",
    "}",
    "[",
    "]",
    ":",
    ",",
    "null",
    "true",
    "NaN",
    "Infinity",
    "1e309",
    "-0",
    "1e-400",
    "99999999999999999999999",
    "\u{0}",
    "\u{feff}",
    "\u{202e}",
    "é",
    "P-",
    "#",
    "%",
    "0",
    "ZZZZ",
    "version",
    "\"version\":2,",
    "\"plans\":",
    "[[[[[[[[",
    "{\"a\":{\"a\":",
];

fn seeds(random: &mut Seeded) -> Vec<String> {
    let mut texts: Vec<String> = fixtures()
        .iter()
        .map(|(link, _)| (*link).to_owned())
        .collect();
    texts.extend(CORPUS.lines().map(str::to_owned));
    let plans: Vec<Plan> = Example::ALL
        .iter()
        .map(|example| example.plan())
        .chain((0..4).map(|_| odd_plan(random)))
        .collect();
    texts.extend(plans.iter().map(Plan::to_json));
    let mut notebook = Notebook::begin(&plans[0]);
    notebook.readings = vec![Reading::default(); 2];
    notebook.harvest = vec![Cut::default()];
    texts.push(notebook.to_json());
    texts.push(plans_to_file(
        &plans,
        &[slackwater::trial::example()],
        &[notebook],
    ));
    let store = Store {
        plans: (1..)
            .zip(&plans)
            .map(|(id, plan)| Kept {
                id,
                plan: plan.clone(),
            })
            .collect(),
        open: Some(1),
        ..Store::default()
    };
    texts.push(store.write());
    texts
}

fn mutate(text: &str, others: &[String], random: &mut Seeded) -> String {
    let mut bytes = text.as_bytes().to_vec();
    for _ in 0..random.whole(1, 6) {
        let at = random.index(bytes.len());
        let until = (at + random.index(40)).min(bytes.len());
        match random.whole(0, 6) {
            0 if !bytes.is_empty() => bytes[at] ^= 1 << random.index(8),
            1 if !bytes.is_empty() => bytes[at] = random.bits().to_le_bytes()[0],
            2 => drop(bytes.drain(at..until)),
            3 => {
                let copy = bytes[at..until].to_vec();
                bytes.splice(at..at, copy);
            }
            4 => bytes.truncate(at),
            5 => {
                let other = others[random.index(others.len())].as_bytes();
                let from = random.index(other.len());
                bytes.splice(at..until, other[from..].iter().copied().take(40));
            }
            _ => {
                bytes.splice(at..at, random.pick(PIECES).bytes());
            }
        }
    }
    String::from_utf8_lossy(&bytes).into_owned()
}

/// Letters that are no accident: a sound frame around mutated bytes, so that the checksum does not
/// keep the fuzz from the reader behind it.
fn resealed(link: &str, random: &mut Seeded) -> Option<String> {
    const LETTERS: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    let mut bits = String::new();
    for letter in link.strip_prefix("P-")?.bytes() {
        let value = LETTERS.iter().position(|known| *known == letter)?;
        write!(bits, "{value:05b}").ok()?;
    }
    let mut bytes: Vec<u8> = (0..bits.len() / 8)
        .filter_map(|at| u8::from_str_radix(&bits[at * 8..at * 8 + 8], 2).ok())
        .collect();
    bytes.truncate(bytes.len().checked_sub(4)?);
    for _ in 0..random.whole(1, 4) {
        // Mostly behind the version and the number of the ready plan.
        let at = random
            .index(bytes.len())
            .max(usize::from(random.chance(0.9)) * 2);
        let new = random.bits().to_le_bytes()[0];
        match random.whole(0, 2) {
            0 if at < bytes.len() => bytes[at] = new,
            1 if at < bytes.len() => drop(bytes.drain(at..)),
            _ => bytes.extend([new, random.bits().to_le_bytes()[0], new & 0x7F]),
        }
    }
    let sum = !bytes.iter().fold(!0_u32, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| {
            (sum >> 1) ^ (0xEDB8_8320 * (sum & 1))
        })
    });
    bytes.extend(sum.to_be_bytes());
    bits.clear();
    for byte in bytes {
        write!(bits, "{byte:08b}").ok()?;
    }
    while !bits.len().is_multiple_of(5) {
        bits.push('0');
    }
    let letters = (0..bits.len() / 5).filter_map(|at| {
        let value = usize::from_str_radix(&bits[at * 5..at * 5 + 5], 2).ok()?;
        Some(char::from(LETTERS[value]))
    });
    Some("P-".chars().chain(letters).collect())
}

struct Campaign {
    read: usize,
    refused: usize,
    slowest: Duration,
    over: usize,
    largest: usize,
}

fn run(count: usize, seed: u64) -> Campaign {
    let mut random = Seeded::new(seed);
    let seeds = seeds(&mut random);
    let mut campaign = Campaign {
        read: 0,
        refused: 0,
        slowest: Duration::ZERO,
        over: 0,
        largest: 0,
    };
    for _ in 0..count {
        let from = &seeds[random.index(seeds.len())];
        let text = match resealed(from, &mut random) {
            Some(sealed) if random.chance(0.6) => sealed,
            _ => mutate(from, &seeds, &mut random),
        };
        let took = time(&text, &mut campaign);
        // A machine that does something else in between is no fault of the reader's.
        let again = (0..10).map(|_| time(&text, &mut campaign));
        let took = if took > LONGEST {
            again.fold(took, Duration::min)
        } else {
            took
        };
        if took > LONGEST {
            campaign.over += 1;
            println!("{took:?}: {}", &text.chars().take(2000).collect::<String>());
        }
        campaign.slowest = campaign.slowest.max(took);
    }
    campaign
}

fn time(text: &str, campaign: &mut Campaign) -> Duration {
    let start = Instant::now();
    let plans = if text.starts_with("P-") {
        Plan::from_link(text).map(|plan| vec![plan]).ok()
    } else {
        let _ = Store::read(text);
        let _ = trials_from_file(text);
        let _ = notebooks_from_file(text);
        plans_from_file(text).ok()
    };
    let took = start.elapsed();
    if let Some(plans) = &plans {
        campaign.read += 1;
        let size: usize = plans.iter().map(|plan| plan.to_json().len()).sum();
        // An empty plan's document is about 5 KB whatever made it; lists are bounded by 255 lines.
        let empty = Plan::default().to_json().len() * (plans.len() + 1);
        campaign.largest = campaign.largest.max(size);
        assert!(
            size < empty + text.len() * MOST_GROWTH + 2 * 255 * 200,
            "{size} from {}",
            text.len()
        );
    } else {
        campaign.refused += 1;
    }
    took
}

fn report(campaign: &Campaign, count: usize) {
    println!(
        "{count} mutated texts: {} read, {} refused, slowest {:?}, {} over 10 ms, largest plans {} bytes",
        campaign.read, campaign.refused, campaign.slowest, campaign.over, campaign.largest
    );
    assert!(
        campaign.read > count / 100,
        "hardly anything gets behind the first check"
    );
    assert!(campaign.refused > count / 100);
}

#[test]
fn mutated_texts_are_read_or_refused() {
    report(&run(5_000, 76), 5_000);
}

#[test]
#[ignore = "some minutes: make fuzz"]
fn a_million_mutated_texts() {
    let campaign = run(1_000_000, 77);
    report(&campaign, 1_000_000);
    // Judged here only, where nothing else runs beside it.
    assert_eq!(campaign.over, 0);
}
