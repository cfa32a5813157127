//! `slackwater-solve [FILE]`: reads a plan as JSON from a file or standard input and prints the
//! outcome as JSON. `slackwater-solve --example NAME` prints a ready plan.
//!
//! Exit 0: an outcome or example was printed. Exit 2: the plan has problems, all of them printed
//! as JSON on standard error. Exit 1: the command was not understood or the file not read.
#![forbid(unsafe_code)]

use std::io::{Read, Write};
use std::process::ExitCode;

use slackwater::catalog::Keyed;
use slackwater::plan::{Example, Plan, Problem};
use slackwater::solve;

const USAGE: &str = "usage: slackwater-solve [FILE]      plan as JSON from FILE or standard input
       slackwater-solve --example bottle|bucket|covered-tank|floating-boards";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match arguments[..] {
        ["--help" | "-h"] => print(USAGE),
        ["--example", name] => match Example::from_key(name) {
            Some(example) => print(&example.plan().to_json()),
            None => misunderstood(&format!("there is no example '{name}'\n{USAGE}")),
        },
        [] | ["-"] => answer(read_all(std::io::stdin())),
        [file] if !file.starts_with('-') => answer(std::fs::File::open(file).and_then(read_all)),
        _ => misunderstood(USAGE),
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
            Ok(outcome) => match serde_json::to_string_pretty(&outcome) {
                Ok(json) => print(&json),
                Err(error) => misunderstood(&error.to_string()),
            },
            Err(problems) => refuse(&problems),
        },
    }
}

fn print(text: &str) -> ExitCode {
    // A reader that stops early (`| head`) is no failure of the plan.
    let _ = writeln!(std::io::stdout(), "{text}");
    ExitCode::SUCCESS
}

fn refuse(problems: &[Problem]) -> ExitCode {
    #[derive(serde::Serialize)]
    struct Refusal<'a> {
        problems: &'a [Problem],
    }
    let json = serde_json::to_string_pretty(&Refusal { problems }).unwrap_or_default();
    let _ = writeln!(std::io::stderr(), "{json}");
    ExitCode::from(2)
}

fn misunderstood(message: &str) -> ExitCode {
    let _ = writeln!(std::io::stderr(), "{message}");
    ExitCode::from(1)
}
