//! `slackwater-solve [FILE]`: reads a plan as JSON from a file or standard input and prints the
//! outcome as JSON. `slackwater-solve --example NAME` prints a ready plan. `slackwater-solve
//! --materials [FILE]` prints what a plan's tanks are built of, as CSV. `slackwater-solve
//! --solution [FILE]` reads a bare list of ions and prints what such a solution reads and holds.
//! `slackwater-solve --ensemble N [FILE]` lives through N seasons of a plan and prints the chances
//! and the changes that make it sure; with `--readings TABLE` it prints the forecast after the
//! readings of a crop under way. `slackwater-solve --notebook FILE` reads a whole notebook.
//! `--link` and `--from-link` turn a plan into the end of an address and back.
//! `slackwater-solve --calendar [FILE]` reads a plan and prints its dates as an iCalendar file.
//! `slackwater-solve --trial [FILE]` reads a trial and prints its layout, the replicates it takes and,
//! with records, what they allow to be said; `--example-trial` prints a ready one.
//!
//! Exit 0: what was asked for was printed. Exit 2: the plan has problems, all of them printed
//! as JSON on standard error. Exit 1: the command was not understood or the file not read.
#![forbid(unsafe_code)]

use std::io::{Read, Write};
use std::process::ExitCode;

use serde::Serialize;
use slackwater::advice::chances::{self, Chances, ChancesOutcome, ChangesOutcome};
use slackwater::advice::notebook::{self, NotebookOutcome, Tracker};
use slackwater::advice::{
    Beyond, CalendarKind, CalendarWords, SolutionOutcome, calendar_file, materials_csv,
    solution_of_ions,
};
use slackwater::catalog::Keyed;
use slackwater::plan::notebook::{Notebook, NotebookRefusal, readings_from_csv};
use slackwater::plan::{Example, IonList, IonProblem, Plan, UnitSystem, check};
use slackwater::solve;
use slackwater::trial::{self, Trial, solve_trial};

const USAGE: &str = "usage: slackwater-solve [FILE]      plan as JSON from FILE or standard input
       slackwater-solve --example bottle|bucket|covered-tank|floating-boards
       slackwater-solve --ensemble N [FILE]           chances of N seasons, 1 to 10000
       slackwater-solve [--ensemble N] --readings TABLE [FILE]
           forecast of a crop under way; TABLE has columns such as date,level_cm,ec_ms_per_cm
       slackwater-solve [--ensemble N] --notebook [FILE]
       slackwater-solve --link [FILE]       plan as JSON to a link
       slackwater-solve --from-link LINK    link, or address that ends in one, to plan as JSON
       slackwater-solve --materials [FILE]  what to build a plan's tanks of, as CSV
       slackwater-solve --calendar [FILE]   plan as JSON, its dates as an iCalendar file
       slackwater-solve --solution [FILE]   ions as JSON, such as
           {\"ions\": {\"K\": 6, \"NO3\": 6}, \"ph\": \"charge\", \"temperature_c\": 25}
       slackwater-solve --trial [FILE]      trial as JSON, with or without records
       slackwater-solve --example-trial";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match arguments[..] {
        ["--help" | "-h"] => print(USAGE),
        ["--example", name] => match Example::from_key(name) {
            Some(example) => print(&example.plan().to_json()),
            None => misunderstood(&format!("there is no example '{name}'\n{USAGE}")),
        },
        ["--materials"] | ["--materials", "-"] => materials(read_all(std::io::stdin())),
        ["--materials", file] => materials(std::fs::File::open(file).and_then(read_all)),
        ["--calendar"] | ["--calendar", "-"] => calendar(read_all(std::io::stdin())),
        ["--calendar", file] => calendar(std::fs::File::open(file).and_then(read_all)),
        ["--solution"] | ["--solution", "-"] => ions(read_all(std::io::stdin())),
        ["--solution", file] => ions(std::fs::File::open(file).and_then(read_all)),
        ["--link"] | ["--link", "-"] => link(read_all(std::io::stdin())),
        ["--link", file] => link(std::fs::File::open(file).and_then(read_all)),
        ["--from-link", link] => match Plan::from_link(link) {
            Ok(plan) => print(&plan.to_json()),
            Err(error) => refuse(&[error]),
        },
        ["--example-trial"] => print(&trial::example().to_json()),
        ["--trial"] | ["--trial", "-"] => compare(read_all(std::io::stdin())),
        ["--trial", file] => compare(std::fs::File::open(file).and_then(read_all)),
        [] | ["-"] => answer(read_all(std::io::stdin())),
        [file] if !file.starts_with('-') => answer(std::fs::File::open(file).and_then(read_all)),
        _ => many(&arguments),
    }
}

/// What stands on the command line for many seasons.
#[derive(Default)]
struct Many<'a> {
    seasons: Option<usize>,
    readings: Option<&'a str>,
    notebook: bool,
    file: Option<&'a str>,
}

impl<'a> Many<'a> {
    fn read(arguments: &[&'a str]) -> Option<Self> {
        let mut many = Self::default();
        let mut rest = arguments.iter();
        while let Some(&argument) = rest.next() {
            match argument {
                "--ensemble" => {
                    let count = rest.next()?.parse().ok()?;
                    many.seasons = (1..=10_000).contains(&count).then_some(count);
                    many.seasons?;
                }
                "--readings" => many.readings = Some(rest.next()?),
                "--notebook" => many.notebook = true,
                file if file == "-" || !file.starts_with('-') => {
                    if many.file.replace(file).is_some() {
                        return None;
                    }
                }
                _ => return None,
            }
        }
        (!(many.notebook && many.readings.is_some())).then_some(many)
    }
}

/// Many seasons of a plan, or a crop under way.
fn many(arguments: &[&str]) -> ExitCode {
    let Some(many) = Many::read(arguments) else {
        return misunderstood(USAGE);
    };
    let text = match many.file {
        None | Some("-") => read_all(std::io::stdin()),
        Some(file) => std::fs::File::open(file).and_then(read_all),
    };
    let text = match text {
        Ok(text) => text,
        Err(error) => return misunderstood(&error.to_string()),
    };
    if many.notebook {
        return match Notebook::from_json(&text) {
            Ok(notebook) => follow(&notebook, many.seasons),
            Err(problem) => refuse(&[problem]),
        };
    }
    let plan = match Plan::from_json(&text) {
        Ok(plan) => plan,
        Err(problems) => return refuse(&problems),
    };
    let Some(table) = many.readings else {
        return chances(&plan, many.seasons.unwrap_or(chances::SEASONS));
    };
    let table = match std::fs::File::open(table).and_then(read_all) {
        Ok(table) => table,
        Err(error) => return misunderstood(&error.to_string()),
    };
    let planted = match check(&plan) {
        Ok(sound) => sound.crop.transplanting,
        Err(problems) => return refuse(&problems),
    };
    match readings_from_csv(&table, planted) {
        Ok(readings) => follow(
            &Notebook {
                readings,
                ..Notebook::begin(&plan)
            },
            many.seasons,
        ),
        Err(problems) => refuse(&problems),
    }
}

fn chances(plan: &Plan, seasons: usize) -> ExitCode {
    #[derive(Serialize)]
    struct Answer<'a> {
        chances: ChancesOutcome,
        changes: &'a ChangesOutcome,
    }
    let lived = Chances::new(plan, seasons).and_then(|mut chances| {
        while !chances.advance(seasons)? {}
        Ok(chances)
    });
    match lived {
        Err(problems) => refuse(&problems),
        Ok(chances) => {
            let mut changes = chances.changes();
            while !changes.advance(usize::MAX) {}
            print_json(&Answer {
                chances: chances.outcome(),
                changes: changes.outcome(),
            })
        }
    }
}

fn follow(notebook: &Notebook, seasons: Option<usize>) -> ExitCode {
    #[derive(Serialize)]
    struct Answer {
        notebook: NotebookOutcome,
    }
    let tracked =
        Tracker::new(notebook, seasons.unwrap_or(notebook::SEASONS)).and_then(|mut tracker| {
            while !tracker.advance(1000)? {}
            Ok(tracker.outcome())
        });
    match tracked {
        Ok(outcome) => print_json(&Answer { notebook: outcome }),
        Err(NotebookRefusal::Plan(problems)) => refuse(&problems),
        Err(NotebookRefusal::Notebook(problems)) => refuse(&problems),
    }
}

fn read_all(mut from: impl Read) -> std::io::Result<String> {
    let mut bytes = Vec::new();
    from.read_to_end(&mut bytes)?;
    // Bytes that are no text make a plan with problems, not a crash.
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

fn answer(text: std::io::Result<String>) -> ExitCode {
    match text {
        Err(error) => misunderstood(&error.to_string()),
        Ok(text) => match Plan::from_json(&text).and_then(|plan| solve(&plan)) {
            Ok(outcome) => print_json(&outcome),
            Err(problems) => refuse(&problems),
        },
    }
}

/// What the tanks of a plan are built of; only the heading for containers that nobody builds.
fn materials(text: std::io::Result<String>) -> ExitCode {
    match text {
        Err(error) => misunderstood(&error.to_string()),
        Ok(text) => match Plan::from_json(&text).and_then(|plan| solve(&plan)) {
            Ok(outcome) => print(materials_csv(&outcome, UnitSystem::Metric).trim_end()),
            Err(problems) => refuse(&problems),
        },
    }
}

/// The dates of a plan.
fn calendar(text: std::io::Result<String>) -> ExitCode {
    let text = match text {
        Err(error) => return misunderstood(&error.to_string()),
        Ok(text) => text,
    };
    let solved = Plan::from_json(&text).and_then(|plan| Ok((solve(&plan)?, plan)));
    match solved {
        Err(problems) => refuse(&problems),
        Ok((outcome, plan)) => {
            let file = calendar_file(&plan, &outcome.calendar, calendar_words);
            // Every line of the file brings its own end.
            let _ = std::io::stdout().write_all(file.as_bytes());
            ExitCode::SUCCESS
        }
    }
}

/// The words of the calendar file: the page has its own.
fn calendar_words(kind: CalendarKind) -> CalendarWords {
    let (summary, description) = match kind {
        CalendarKind::Seeding => ("Sow", "Sow the seed in plugs."),
        CalendarKind::Transplanting => (
            "Fill, mix and plant",
            "Fill to the mark, mix in the fertilizer, hang in the pots.",
        ),
        CalendarKind::BoardsRest => (
            "Boards come to rest",
            "From now on moist air opens under the boards. Do not top up.",
        ),
        CalendarKind::PotsLeave => (
            "Pots hang above the solution",
            "The roots must be in the solution. Do not top up: air roots drown.",
        ),
        CalendarKind::Harvest => ("Harvest", "Cut with clean hands and a clean knife."),
        CalendarKind::Clean => (
            "Drain and clean",
            "Spread what is left on soil that can use it, never into a stream or storm drain.",
        ),
        CalendarKind::Refill => (
            "Top up for the next crop",
            "Raw water and the share of fertilizer that the plan names; boards float off.",
        ),
        CalendarKind::SeedNext => ("Sow the next crop", "So that it is ready to plant in time."),
        CalendarKind::Replant => ("Plant the next crop", "As the first."),
    };
    CalendarWords {
        summary: summary.to_owned(),
        description: description.to_owned(),
    }
}

/// The plan as a link; it need not be sound.
fn link(text: std::io::Result<String>) -> ExitCode {
    match text {
        Err(error) => misunderstood(&error.to_string()),
        Ok(text) => match Plan::from_json(&text) {
            Err(problems) => refuse(&problems),
            Ok(plan) => match plan.to_link() {
                Ok(link) => print(&link),
                Err(error) => refuse(&[error]),
            },
        },
    }
}

/// The chemistry of a bare list of ions, under the same name as in the outcome of a plan.
fn ions(text: std::io::Result<String>) -> ExitCode {
    #[derive(Serialize)]
    struct Answer {
        solution: SolutionOutcome,
    }
    match text {
        Err(error) => misunderstood(&error.to_string()),
        Ok(text) => match IonList::from_json(&text).and_then(|list| list.check()) {
            Err(problems) => refuse(&problems),
            Ok(ions) => match solution_of_ions(&ions) {
                Ok(solution) => print_json(&Answer { solution }),
                Err(Beyond) => refuse(&[IonProblem {
                    field: None,
                    got: text,
                    allowed: "a solution that can be solved".to_owned(),
                }]),
            },
        },
    }
}

/// A trial: its layout, and with records what they allow to be said.
fn compare(text: std::io::Result<String>) -> ExitCode {
    match text {
        Err(error) => misunderstood(&error.to_string()),
        Ok(text) => match Trial::from_json(&text).and_then(|trial| solve_trial(&trial)) {
            Ok(outcome) => print_json(&outcome),
            Err(problems) => refuse(&problems),
        },
    }
}

fn print_json(value: &impl Serialize) -> ExitCode {
    match serde_json::to_string_pretty(value) {
        Ok(json) => print(&json),
        Err(error) => misunderstood(&error.to_string()),
    }
}

fn print(text: &str) -> ExitCode {
    // A reader that stops early (`| head`) is no failure of the plan.
    let _ = writeln!(std::io::stdout(), "{text}");
    ExitCode::SUCCESS
}

fn refuse<T: Serialize>(problems: &[T]) -> ExitCode {
    #[derive(Serialize)]
    struct Refusal<'a, T> {
        problems: &'a [T],
    }
    let json = serde_json::to_string_pretty(&Refusal { problems }).unwrap_or_default();
    let _ = writeln!(std::io::stderr(), "{json}");
    ExitCode::from(2)
}

fn misunderstood(message: &str) -> ExitCode {
    let _ = writeln!(std::io::stderr(), "{message}");
    ExitCode::from(1)
}
