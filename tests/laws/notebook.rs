//! Laws of a notebook: it survives its saved forms, nonsense in it is told and never a panic, the
//! same readings give the same forecast in any pieces, and a crop whose truth is known is found.
//!
//! Nonsense stands apart.

mod nonsense;

use slackwater::advice::chances::Chances;
use slackwater::advice::notebook::{NotebookOutcome, Tracker};
use slackwater::catalog::Keyed;
use slackwater::plan::notebook::{Cut, LevelFrom, Notebook, Reading};
use slackwater::plan::{Entry, Example, Field, Pick, Plan, check};
use slackwater::science::normal::Normals;
use slackwater::science::units::area::square_meter;
use slackwater::science::units::length::centimeter;
use slackwater::science::units::mass::gram;
use slackwater::science::units::volume::liter;
use slackwater::science::units::{Area, Length, Volume};
use slackwater::season::ensemble::{Draw, Seasons, Spreads};
use slackwater::season::{Hour, Tank};
use slackwater::solve;

use crate::plans::set;

fn reading(day: u32, below_rim_cm: f64) -> Reading {
    Reading {
        date: Entry::Number(f64::from(day)),
        level_cm: Entry::Number(below_rim_cm),
        ..Reading::default()
    }
}

fn weighed(notebook: &Notebook, size: usize, piece: usize) -> NotebookOutcome {
    let mut tracker = Tracker::new(notebook, size).expect("sound");
    while !tracker.advance(piece).expect("within the models") {}
    tracker.outcome()
}

/// A crop that chance drew: its levels below the rim on some days, read with a tape, and its heads.
struct Truth {
    factors: [f64; 3],
    notebook: Notebook,
}

/// Lives a plan's season as chance of this number draws it, apart from the tracker, and reads it
/// with errors.
fn synthetic(plan: &Plan, number: u64, days: &[u32], heads: bool) -> Truth {
    let sound = check(plan).expect("sound");
    let spreads = Spreads::default();
    let draw = Draw::of(77, number);
    let pot = sound.container.pot.top_diameter.get::<centimeter>() / 100.0;
    let open = pot * pot * std::f64::consts::FRAC_PI_4 * f64::from(sound.crop.plants);
    let mut seasons = Seasons::new(&sound, Area::new::<square_meter>(open), spreads);
    let mut course: Vec<Hour> = Vec::new();
    let harvest = seasons
        .live(&draw, (50, 150), &mut course)
        .expect("within the models")
        .expect("a harvest");
    let tank = Tank::new(&sound, None).expect("a tank");
    let start = Volume::new::<liter>(solve(plan).expect("sound").fill.volume_l);
    let rim = tank.basin().depth_max();
    let mut error = Normals::stream(78, number);
    let mut notebook = Notebook::begin(plan);
    for &day in days {
        let hour = course[day as usize];
        let level = tank.state(start - hour.drawn, Length::default(), rim).level;
        let below = (rim - level).get::<centimeter>() + 0.5 * error.draw();
        notebook
            .readings
            .push(reading(day, (below * 10.0).round() / 10.0));
    }
    if heads {
        let head = course[harvest as usize].head.get::<gram>();
        notebook.harvest.push(Cut {
            date: Entry::Number(f64::from(harvest)),
            heads: Entry::Number(3.0),
            mass_g: Entry::Number(3.0 * head * (1.0 + 0.08 * error.draw())),
            ..Cut::default()
        });
    }
    Truth {
        factors: draw.factors(&spreads),
        notebook,
    }
}

#[test]
fn a_known_crop_is_recovered_within_its_stated_uncertainty() {
    // 95 % intervals hold the truth in 95 of 100 trials on average; 90 is asked.
    const TRIALS: u64 = 100;
    const ASKED: u32 = 90;
    const THREADS: usize = 2;
    let plan = Example::Bucket.plan();
    let trial = |number: u64| {
        let truth = synthetic(&plan, number, &[10, 18, 24, 30, 34], true);
        let outcome = weighed(&truth.notebook, 100, 1000);
        let mut says = [0, 0, 1];
        for (i, learnt) in outcome.learnt.iter().enumerate() {
            let factor = learnt.was * truth.factors[i];
            says[i] = u32::from((learnt.low..=learnt.high).contains(&factor));
            // 0.15 in the logarithm is 0.59 between the ends of a 95 % interval.
            says[2] *= u32::from(libm::log(learnt.high / learnt.low) < 0.59);
        }
        says
    };
    let (mut held, mut narrower) = ([0, 0], 0);
    std::thread::scope(|scope| {
        let trial = &trial;
        let threads: Vec<_> = (0..THREADS)
            .map(|first| {
                scope.spawn(move || -> Vec<[u32; 3]> {
                    (0..TRIALS)
                        .skip(first)
                        .step_by(THREADS)
                        .map(trial)
                        .collect()
                })
            })
            .collect();
        for thread in threads {
            for says in thread.join().expect("no panic") {
                held[0] += says[0];
                held[1] += says[1];
                narrower += says[2];
            }
        }
    });
    println!(
        "growth {} and water {} of {TRIALS}; narrower {narrower}",
        held[0], held[1]
    );
    assert!(held[0] >= ASKED && held[1] >= ASKED, "{held:?}");
    assert!(narrower >= ASKED, "{narrower}");
}

#[test]
fn readings_bend_and_narrow_the_forecast() {
    let plan = Example::Bucket.plan();
    let mut chances = Chances::new(&plan, 300).expect("sound");
    while !chances.advance(300).expect("within the models") {}
    let before = chances.outcome();
    let mut thirsty = None;
    // A thirsty crop and a modest one, by their draws.
    for number in 0..40 {
        let truth = synthetic(&plan, number, &[12, 20, 26, 30, 33], false);
        if truth.factors[1] > 1.2 {
            thirsty = Some(truth);
            break;
        }
    }
    let truth = thirsty.expect("one in ten");
    let after = weighed(&truth.notebook, 300, 50);
    let width = |band: slackwater::advice::chances::Band| band.high - band.low;
    let (was, is) = (
        before.needed_l.expect("a band"),
        after.chances.needed_l.expect("a band"),
    );
    assert!(is.middle > was.middle, "{is:?} {was:?}");
    assert!(width(is) < width(was), "{is:?} {was:?}");
    assert!(after.learnt[1].now > 1.0, "{:?}", after.learnt);
    assert!(after.effective_size < 300.0);
    assert_eq!((after.readings, after.day), (5, 33));
    let top_up = after.top_up.expect("it may not last");
    assert!(top_up.litres <= top_up.most_l + 1e-12 && top_up.litres <= top_up.needed_l + 1e-12);
    // The ceiling is no higher than the surface was three days before the last reading.
    let on_day_30 = &truth.notebook.readings[3].level_cm;
    let Entry::Number(below) = on_day_30 else {
        panic!("a number")
    };
    assert!(top_up.ceiling_below_rim_cm >= *below - 1e-9, "{top_up:?}");
    assert!(top_up.ec_ms_per_cm >= 0.0 && (0.0..=2.0).contains(&top_up.mixture));
}

#[test]
fn what_was_added_does_not_raise_the_ceiling_over_the_air_roots() {
    let mut plan = Example::Bucket.plan();
    set(&mut plan, Field::Humidity, 60.0);
    set(&mut plan, Field::TargetHead, 320.0);
    let mut notebook = Notebook::begin(&plan);
    notebook.readings = vec![reading(20, 12.0), reading(30, 27.0)];
    let before = weighed(&notebook, 80, 1000).top_up.expect("too dry");
    // Air roots have formed at 27 cm below the rim less three days' fall; 2 L raise the surface.
    notebook.readings[1].added_l = Entry::Number(2.0);
    notebook.readings.push(reading(31, 25.0));
    let after = weighed(&notebook, 80, 1000).top_up.expect("still too dry");
    // A day more lays more roots open; a reading more may move what is expected of day 27 by what
    // a reading is out itself, half a centimetre.
    assert!(
        after.ceiling_below_rim_cm > before.ceiling_below_rim_cm - 0.5,
        "{after:?} {before:?}"
    );
    // Where the surface stands above them already, nothing may be added.
    notebook.readings[2].level_cm = Entry::Number(16.0);
    notebook.readings[1].added_l = Entry::Number(6.0);
    let full = weighed(&notebook, 80, 1000).top_up;
    assert!(
        full.is_none_or(|top_up| top_up.most_l == 0.0 && top_up.litres == 0.0),
        "{full:?}"
    );
}

#[test]
fn pieces_make_the_same_forecast() {
    let plan = Example::Bucket.plan();
    let truth = synthetic(&plan, 3, &[20, 28, 36], true);
    let whole = weighed(&truth.notebook, 60, 100_000);
    assert!(whole.resampled, "{}", whole.effective_size);
    assert_eq!(whole, weighed(&truth.notebook, 60, 7));
    let few = Notebook {
        readings: vec![reading(3, 6.0)],
        ..Notebook::begin(&plan)
    };
    let outcome = weighed(&few, 60, 11);
    assert!(!outcome.resampled);
    assert_eq!(outcome, weighed(&few, 60, 1));
}

#[test]
fn a_notebook_without_readings_is_the_plan_s_own_forecast() {
    for &example in Example::ALL {
        let plan = example.plan();
        let mut chances = Chances::new(&plan, 40).expect("sound");
        while !chances.advance(40).expect("within the models") {}
        let own = chances.outcome();
        let outcome = weighed(&Notebook::begin(&plan), 40, 40);
        assert!((outcome.effective_size - 40.0).abs() < 1e-9);
        // The weather takes its turn on day 0, so the seasons are others of the same kind.
        let (a, b) = (
            own.needed_l.expect("a band"),
            outcome.chances.needed_l.expect("a band"),
        );
        assert!((a.middle / b.middle - 1.0).abs() < 0.1, "{a:?} {b:?}");
        assert!(outcome.closing.is_none());
    }
}

#[test]
fn rim_and_mark_and_containers_are_told_apart() {
    let plan = Example::Bucket.plan();
    let fill = solve(&plan).expect("sound").fill;
    let with = |readings: Vec<Reading>| {
        let notebook = Notebook {
            readings,
            ..Notebook::begin(&plan)
        };
        weighed(&notebook, 60, 1000)
    };
    let below = fill.below_rim_cm + 5.0;
    let from_mark = Reading {
        level_from: Pick::Known(LevelFrom::Mark),
        ..reading(25, 5.0)
    };
    let (a, b) = (with(vec![reading(25, below)]), with(vec![from_mark]));
    assert_eq!(a.readings, b.readings);
    let (a, b) = (a.learnt[1].now, b.learnt[1].now);
    assert!((a - b).abs() < 1e-6, "{a} {b}");
    // Two containers on one day are their mean.
    let of = |container: f64, cm: f64| Reading {
        container: Entry::Number(container),
        ..reading(25, cm)
    };
    let two = with(vec![of(1.0, below - 1.0), of(2.0, below + 1.0)]);
    assert_eq!(two.readings, 1);
    assert!((two.learnt[1].now - a).abs() < 1e-6);
}

#[test]
fn a_top_up_counts_from_then_on_and_a_closed_crop_is_summed_up() {
    let mut plan = Example::Bucket.plan();
    set(&mut plan, Field::Humidity, 60.0);
    let mut notebook = Notebook::begin(&plan);
    notebook.readings = vec![reading(30, 20.0), reading(40, 25.0)];
    let dry = weighed(&notebook, 80, 1000);
    notebook.readings[0].added_l = Entry::Number(4.0);
    let helped = weighed(&notebook, 80, 1000);
    assert!(helped.learnt[1].now > dry.learnt[1].now);
    notebook.harvest.push(Cut {
        date: Entry::Number(41.0),
        heads: Entry::Number(3.0),
        mass_g: Entry::Number(600.0),
        ..Cut::default()
    });
    notebook.closed = true;
    let closed = weighed(&notebook, 80, 1000);
    assert!(closed.top_up.is_none());
    let closing = closed.closing.expect("heads were weighed");
    assert_eq!((closing.heads, closing.head_g.round()), (3, 200.0));
    assert!((closing.water_per_kg_l - closing.water_l / 0.6).abs() < 1e-9);
    assert_eq!(closed.next_plan.len(), 2);
    // The lesson fits into the plan's fields.
    let mut next = plan.clone();
    for edit in &closed.next_plan {
        *edit.field.entry_mut(&mut next).expect("a number") = edit.entry.clone();
    }
    assert!(check(&next).is_ok());
}
