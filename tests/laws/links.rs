//! Links carry a plan exactly, and whatever is changed in one is noticed. Fixtures are a contract:
//! every link ever made opens to the plan that it was made of, and fixtures are only added to.

use slackwater::catalog::Keyed;
use slackwater::catalog::blends::BlendChoice;
use slackwater::catalog::climates::ClimateChoice;
use slackwater::catalog::covers::CoverMaterial;
use slackwater::catalog::crops::CropKind;
use slackwater::catalog::foams::Foam;
use slackwater::catalog::pipes::PipeChoice;
use slackwater::catalog::pipes::PipeMaterial;
use slackwater::catalog::recipes::RecipeChoice;
use slackwater::catalog::salts::Salt;
use slackwater::catalog::shelters::Shelter;
use slackwater::catalog::timber::Timber;
use slackwater::plan::{
    AcidChoice, CalciumNitrate, DateMeaning, DaylightBy, Dosing, Entry, Example, Field, LINK_PATHS,
    LINK_WORDS, LONGEST_LINK, LinkError, Method, Pattern, PipeEnds, Plan, Shape, StandsOn,
    StrengthBy, WaterKind,
};

use crate::plans::{for_sound_plans, wild_plan};
use crate::saved::odd_plan;
use crate::seeded::Seeded;

/// Each fixture: a link, and the plan document that it opens to, compact, on the next line.
pub const FIXTURES: &str = include_str!("links/version-1.txt");

/// A typical address: 41 characters before the link.
const ADDRESS: &str = "https://example.org/sandpiper/slackwater/#";

pub fn fixtures() -> Vec<(&'static str, Plan)> {
    let mut lines = FIXTURES.lines();
    let mut all = Vec::new();
    while let (Some(link), Some(document)) = (lines.next(), lines.next()) {
        all.push((link, Plan::from_json(document).expect("a plan")));
    }
    all
}

fn round_trip(plan: &Plan) -> Result<String, LinkError> {
    let link = plan.to_link()?;
    let back = Plan::from_link(&link).unwrap_or_else(|error| panic!("{error:?}: {link}"));
    assert_eq!(back.to_json(), plan.to_json(), "{link}");
    Ok(link)
}

#[test]
fn every_fixture_opens_to_its_plan() {
    let all = fixtures();
    assert!(all.len() >= 10);
    for (link, plan) in all {
        assert_eq!(Plan::from_link(link).as_ref(), Ok(&plan), "{link}");
    }
}

#[test]
fn the_same_plan_makes_the_same_link_again() {
    // Else a link that is shared twice is two, and a change of how links are written goes unnoticed.
    for (link, plan) in fixtures() {
        assert_eq!(plan.to_link().as_deref(), Ok(link));
    }
}

#[test]
fn fixtures_are_only_added_to() {
    // The letters of the fixtures that stood here at first, added up; a changed or lost one shows.
    const FIRST: usize = 30;
    const SUM: u64 = 0xFB92_E4EA_3425_3452;
    let sum = FIXTURES
        .lines()
        .take(FIRST)
        .flat_map(str::bytes)
        .fold(0_u64, |sum, byte| {
            sum.wrapping_mul(31).wrapping_add(u64::from(byte))
        });
    assert_eq!(sum, SUM);
}

#[test]
fn the_numbers_of_the_first_names_stay() {
    assert_eq!(LINK_PATHS[1], "version");
    assert_eq!(LINK_PATHS[2], "name");
    assert_eq!(
        LINK_PATHS
            .iter()
            .position(|path| *path == "climate.co2_ppm"),
        Some(LAST_PATH)
    );
    assert_eq!(
        LINK_WORDS.iter().position(|word| *word == "expanded_ix"),
        Some(LAST_WORD)
    );
}
/// Where the last names of the first lists stand; a number before them that moves moves these too.
const LAST_PATH: usize = 114;
const LAST_WORD: usize = 111;

/// Asserts that each key of a list of choices has its number.
///
/// # Panics
/// When one has none.
fn listed<T: Keyed>() {
    for item in T::ALL {
        let key = item.key();
        assert!(
            LINK_WORDS.contains(&key),
            "add \"{key}\" at the end of WORDS"
        );
    }
}

#[test]
fn every_field_and_choice_has_a_number() {
    for field in Field::ALL {
        let path = field.path();
        assert!(
            LINK_PATHS.contains(&path.as_str()),
            "add \"{path}\" at the end of PATHS"
        );
    }
    listed::<Method>();
    listed::<Shape>();
    listed::<Pattern>();
    listed::<DateMeaning>();
    listed::<Dosing>();
    listed::<StrengthBy>();
    listed::<CalciumNitrate>();
    listed::<DaylightBy>();
    listed::<PipeEnds>();
    listed::<WaterKind>();
    listed::<AcidChoice>();
    listed::<CropKind>();
    listed::<Shelter>();
    listed::<Salt>();
    listed::<ClimateChoice>();
    listed::<PipeChoice>();
    listed::<RecipeChoice>();
    listed::<BlendChoice>();
    listed::<Foam>();
    listed::<StandsOn>();
    listed::<Timber>();
    listed::<CoverMaterial>();
    listed::<PipeMaterial>();
    for list in [LINK_PATHS, LINK_WORDS] {
        for (index, name) in list.iter().enumerate() {
            assert_eq!(
                list.iter().position(|other| other == name),
                Some(index),
                "{name} twice"
            );
        }
    }
}

#[test]
fn examples_and_sound_plans_survive_and_are_short() {
    round_trip(&Plan::default()).expect("short");
    for example in Example::ALL {
        let link = round_trip(&example.plan()).expect("short");
        assert!(ADDRESS.len() + link.len() < 400, "{link}");
    }
    for_sound_plans(72, |plan, _| {
        round_trip(plan).expect("a plan of numbers and choices is short");
    });
}

#[test]
fn plans_within_the_limits_survive() {
    let longest = (0..500)
        .map(|seed| round_trip(&wild_plan(seed)).expect("short").len())
        .max();
    println!("longest link of 500 plans with every field changed: {longest:?}");
}

#[test]
fn any_text_and_any_number_survive_or_are_too_long() {
    let mut random = Seeded::new(73);
    let mut carried = 0;
    for _ in 0..1000 {
        match round_trip(&odd_plan(&mut random)) {
            Ok(_) => carried += 1,
            Err(error) => assert!(matches!(error, LinkError::TooLong { .. })),
        }
    }
    assert!(carried < 1000, "the longest link bounds nothing");
    for _ in 0..500 {
        let mut plan = random.pick(Example::ALL).plan();
        for _ in 0..random.whole(1, 12) {
            let odd = odd_plan(&mut random);
            let field = random.pick(Field::ALL);
            if let (Some(slot), Some(entry)) = (field.entry_mut(&mut plan), field.entry(&odd)) {
                *slot = entry.clone();
            }
            plan.fertilizer.salts = odd.fertilizer.salts;
            plan.container.measured = odd.container.measured;
            plan.container.method = odd.container.method;
        }
        round_trip(&plan).expect("short");
    }
}

#[test]
fn typed_units_are_kept_as_typed() {
    for text in [
        "12 in",
        "2 ft 6 in",
        "2,5",
        " 7 1/2\" ",
        "2027-02-30",
        "1999-12-31",
        "2027-2-1",
        "٣",
    ] {
        let mut plan = Example::Bucket.plan();
        plan.container.height_cm = Entry::from(text);
        plan.crop.date = Entry::from(text);
        let link = round_trip(&plan).expect("short");
        assert!(link.len() < 130, "{link}");
    }
}

#[test]
fn every_single_bit_flip_of_the_fixtures_is_noticed() {
    let (mut refused, mut same) = (0, 0);
    for (link, plan) in fixtures() {
        let bytes = link.as_bytes();
        for at in 0..bytes.len() {
            for bit in 0..8 {
                let mut flipped = bytes.to_vec();
                flipped[at] ^= 1 << bit;
                // As any reader of bytes would hand it on.
                let text = String::from_utf8_lossy(&flipped);
                match Plan::from_link(&text) {
                    Ok(read) => {
                        assert_eq!(read, plan, "{text}");
                        same += 1;
                    }
                    Err(_) => refused += 1,
                }
            }
        }
    }
    println!("bit flips: {refused} refused, {same} give the same plan");
    assert!(refused > 10_000);
}

#[test]
fn letters_lost_swapped_or_added_are_noticed() {
    let mut random = Seeded::new(74);
    for (link, plan) in fixtures() {
        for _ in 0..200 {
            let mut letters: Vec<char> = link.chars().collect();
            let (one, other) = (random.index(letters.len()), random.index(letters.len()));
            match random.whole(0, 3) {
                0 => letters.swap(one, other),
                1 => letters.truncate(one),
                2 => letters.insert(one, letters[other]),
                _ => {
                    letters.remove(one);
                }
            }
            let changed: String = letters.into_iter().collect();
            match Plan::from_link(&changed) {
                Ok(read) => assert_eq!(read, plan, "{changed}"),
                Err(_) => assert_ne!(changed, link),
            }
        }
    }
}

#[test]
fn what_is_too_long_is_refused_unread() {
    let long = "P-".to_owned() + &"0".repeat(10_000_000);
    assert!(matches!(
        Plan::from_link(&long),
        Err(LinkError::TooLong {
            most: LONGEST_LINK,
            ..
        })
    ));
    let plan = Plan {
        name: "n".repeat(3000),
        ..Plan::default()
    };
    assert!(matches!(plan.to_link(), Err(LinkError::TooLong { .. })));
}

/// Prints fixtures, to be added at the end of the file: `cargo test ... -- --ignored --nocapture new_fixtures`.
#[test]
#[ignore = "writes nothing; prints lines for a new version's fixtures"]
fn new_fixtures() {
    let mut plans: Vec<Plan> = Example::ALL.iter().map(|example| example.plan()).collect();
    plans.push(Plan::default());
    plans.extend((0..6).map(wild_plan));
    let mut random = Seeded::new(75);
    while plans.len() < 14 {
        let plan = odd_plan(&mut random);
        if plan.to_link().is_ok() {
            plans.push(plan);
        }
    }
    // One with something in every field that is unlike any ready plan.
    let mut all = Example::Bottle.plan();
    all.name = "Every field".to_owned();
    for (index, field) in (1_u32..).zip(Field::ALL) {
        if let Some(slot) = field.entry_mut(&mut all) {
            *slot = Entry::Number(f64::from(index) + 0.0625);
        }
    }
    plans.push(all);
    for plan in plans {
        println!("FIXTURE {}", plan.to_link().expect("short"));
        println!(
            "FIXTURE {}",
            serde_json::to_string(&plan).expect("serialises")
        );
    }
}
