//! Laws of the calendar, its file, and the succession.

use std::collections::BTreeSet;

use slackwater::advice::{CalendarWords, Demand, calendar_entries, calendar_file, succession};
use slackwater::plan::{Entry, Example, Field};
use slackwater::solve;
use time::{Date, Month};

use crate::plans::{for_sound_plans, get, set};
use crate::seeded::Seeded;

#[test]
fn dates_come_in_their_order() {
    for_sound_plans(51, |plan, outcome| {
        let calendar = &outcome.calendar;
        // Year-month-day sorts as dates do.
        let in_order = [
            Some(&calendar.seeding),
            Some(&calendar.transplanting),
            calendar.harvest.as_ref(),
            calendar.harvest_until.as_ref(),
            calendar.clean.as_ref().or(calendar.refill.as_ref()),
            calendar.replant.as_ref(),
        ];
        let dates: Vec<&String> = in_order.into_iter().flatten().collect();
        assert!(dates.is_sorted(), "{calendar:?}");
        assert_eq!(
            calendar.harvest.is_some(),
            outcome.season.harvest_day.is_some()
        );
        assert_eq!(calendar.harvest.is_some(), calendar.replant.is_some());
        // Either drained or topped up.
        assert!(calendar.clean.is_none() || calendar.refill.is_none());
        if let (Some(sown), Some(planted)) = (&calendar.seed_next, &calendar.replant) {
            let days = day(planted) - day(sown);
            assert!((days.whole_days() as f64 - get(plan, Field::SeedlingAge)).abs() < 0.5);
        }
    });
}

pub fn day(written: &str) -> Date {
    let mut parts = written
        .split('-')
        .map(|part| part.parse::<u16>().expect("digits"));
    let mut next = || parts.next().expect("three parts");
    let (year, month, day) = (next(), next(), next());
    let month = Month::try_from(u8::try_from(month).expect("small")).expect("a month");
    Date::from_calendar_date(i32::from(year), month, u8::try_from(day).expect("small"))
        .expect("a date")
}

#[test]
fn the_file_holds_the_calendar_in_the_form_that_rfc_5545_asks_for() {
    for_sound_plans(52, |plan, outcome| {
        let write = || {
            calendar_file(plan, &outcome.calendar, |kind| CalendarWords {
                summary: format!("{}; {}, é", kind.key(), "long ".repeat(30)),
                description: "one\ntwo \\ three".to_owned(),
            })
        };
        let file = write();
        assert_eq!(file, write(), "the same plan gives the same file");
        assert!(file.ends_with("END:VCALENDAR\r\n"));
        for line in file.split("\r\n") {
            assert!(line.len() <= 75 && !line.contains(['\r', '\n']), "{line}");
        }
        let unfolded = file.replace("\r\n ", "");
        let all = |name: &str| -> Vec<&str> {
            unfolded
                .lines()
                .filter_map(|line| line.strip_prefix(name))
                .collect()
        };
        let entries = calendar_entries(&outcome.calendar);
        let starts: Vec<String> = entries
            .iter()
            .map(|(_, first, _)| first.to_string().replace('-', ""))
            .collect();
        assert_eq!(all("DTSTART;VALUE=DATE:"), starts);
        assert_eq!(all("BEGIN:VEVENT").len(), entries.len());
        for stamp in all("DTSTAMP:") {
            assert_eq!(
                stamp,
                format!("{}T000000Z", outcome.calendar.seeding.replace('-', ""))
            );
        }
        let identities = all("UID:");
        assert_eq!(
            identities.iter().collect::<BTreeSet<_>>().len(),
            entries.len()
        );
        for summary in all("SUMMARY:") {
            assert!(
                summary.contains("\\; long") && summary.contains("\\, é"),
                "{summary}"
            );
        }
        assert!(
            all("DESCRIPTION:")
                .iter()
                .all(|text| *text == "one\\ntwo \\\\ three")
        );
    });
}

#[test]
fn a_plan_worked_by_hand() {
    // 20 people, 2 heads each: 40 heads a week. Buckets of 3: 40 / 3 is 13.3, so 14 a week with 2
    // heads to spare. Ready after 40 days, cut for 7, cleaned for 2: 49 days are 7 weeks, so 7
    // groups and 98 buckets. The second group is planted on 8 Feb, sown 10 days earlier.
    let turn = succession(&Demand {
        heads_per_week: 40.0,
        heads_per_container: 3,
        container_m: None,
        harvest_day: 40,
        turnaround_days: 2,
        seedling_age: 10,
        first: Date::from_calendar_date(2027, Month::February, 1).expect("a date"),
    });
    assert_eq!(
        (turn.containers_per_week, turn.groups, turn.containers),
        (14, 7, 98)
    );
    assert!((turn.spare_heads_per_week - 2.0).abs() < 1e-12);
    assert_eq!((turn.days_in_container, turn.again_every_days), (47, 49));
    let second = &turn.plantings[1];
    assert_eq!(second.seeding, "2027-01-29");
    assert_eq!(second.transplanting, "2027-02-08");
    assert_eq!(second.harvest, "2027-03-20");
    assert_eq!(second.harvest_until, "2027-03-26");
}

#[test]
fn a_turn_is_long_enough_and_no_longer() {
    let mut random = Seeded::new(53);
    for _ in 0..2000 {
        let demand = Demand {
            heads_per_week: random.between(0.1, 5000.0),
            heads_per_container: random.whole(1, 400),
            container_m: Some(random.between(0.3, 40.0)),
            harvest_day: random.whole(10, 120),
            turnaround_days: random.whole(0, 30),
            seedling_age: 10,
            first: Date::from_calendar_date(2027, Month::May, 1).expect("a date"),
        };
        let turn = succession(&demand);
        let taken_up = demand.harvest_day + 7 + demand.turnaround_days;
        assert!(turn.again_every_days >= taken_up && turn.again_every_days < taken_up + 7);
        let heads = f64::from(turn.containers_per_week * demand.heads_per_container);
        assert!(heads >= demand.heads_per_week);
        assert!(heads < demand.heads_per_week + f64::from(demand.heads_per_container) + 1e-9);
        // A group is cut in the week after the one before, without a gap.
        for pair in turn.plantings.windows(2) {
            let gap = day(&pair[1].harvest) - day(&pair[0].harvest_until);
            assert_eq!(gap.whole_days(), 1);
        }
        let tank = turn.tank_m.expect("a tank");
        assert!(tank <= f64::from(turn.containers) * demand.container_m.unwrap_or(0.0) + 1e-6);
    }
}

#[test]
fn a_succession_is_planned_only_for_people() {
    for example in [Example::Bucket, Example::FloatingBoards] {
        let mut plan = example.plan();
        assert!(solve(&plan).expect("a plan").succession.is_none());
        set(&mut plan, Field::People, 20.0);
        let turn = solve(&plan)
            .expect("a plan")
            .succession
            .expect("a succession");
        assert!((turn.heads_per_week - 40.0).abs() < 1e-12);
        assert_eq!(turn.tank_m.is_some(), example == Example::FloatingBoards);
        *Field::HeadsPerPersonWeek
            .entry_mut(&mut plan)
            .expect("an entry") = Entry::blank();
        assert!(solve(&plan).is_err());
    }
}
