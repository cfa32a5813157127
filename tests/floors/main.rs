//! The floors of the source tree, lowest first, use only what lies below them; the browser is
//! touched in one folder only; and the core builds without any browser crate.
//!
//! Paths are read from the tokens of each file, so that comments and texts do not count and
//! grouped imports such as `crate::{plan::Plan, app}` are seen through.

mod paths;
mod rules;
mod tokens;

use std::path::{Path, PathBuf};
use std::process::Command;

use rules::{FLOORS, OF_THE_PAGE, faults};

/// All Rust files below a folder.
fn files(folder: &Path, found: &mut Vec<PathBuf>) {
    let entries = std::fs::read_dir(folder).expect("a readable folder");
    for entry in entries {
        let path = entry.expect("a readable entry").path();
        if path.is_dir() {
            files(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

/// The module that a file holds: `src/plan/check/mod.rs` is `plan::check`.
fn module_of(file: &Path, root: &Path) -> Vec<String> {
    let relative = file.strip_prefix(root).expect("a file below the root");
    let mut names: Vec<String> = relative
        .with_extension("")
        .iter()
        .map(|name| name.to_str().expect("a plain name").to_owned())
        .collect();
    if names.last().is_some_and(|name| name == "mod") {
        names.pop();
    }
    names
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("src")
}

#[test]
fn each_floor_uses_only_what_lies_below() {
    let root = root();
    let mut sources = Vec::new();
    files(&root, &mut sources);
    let mut seen = [0; FLOORS.len()];
    let mut wrong = Vec::new();
    for file in sources {
        let module = module_of(&file, &root);
        let module: Vec<&str> = module.iter().map(String::as_str).collect();
        if let Some(floor) = FLOORS
            .iter()
            .position(|floor| module.first() == Some(floor))
        {
            seen[floor] += 1;
        }
        let source = std::fs::read_to_string(&file).expect("text");
        for fault in faults(&source, &module) {
            wrong.push(format!("{}: {fault}", file.display()));
        }
    }
    assert!(seen.iter().all(|&count| count > 0), "{seen:?}");
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_folder_of_the_source_is_a_floor() {
    let entries = std::fs::read_dir(root()).expect("a readable folder");
    for entry in entries {
        let path = entry.expect("a readable entry").path();
        let name = path.file_stem().and_then(|name| name.to_str());
        let name = name.expect("a plain name");
        // `lib` opens the floors, `main` and `bin` stand outside and use the crate by its name.
        assert!(
            FLOORS.contains(&name) || ["lib", "main", "bin"].contains(&name),
            "{} stands on no floor",
            path.display()
        );
    }
}

#[test]
fn the_core_depends_on_no_crate_of_the_browser() {
    let output = Command::new(env!("CARGO"))
        .args(["tree", "--no-default-features", "--edges", "normal"])
        .args(["--prefix", "none", "--offline", "--locked"])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .expect("cargo runs");
    let error = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{error}");
    let tree = String::from_utf8(output.stdout).expect("text");
    // Else an empty answer would pass.
    assert!(tree.lines().any(|line| line.starts_with("serde_json ")));
    for line in tree.lines() {
        let name = line.split(' ').next().unwrap_or_default().replace('-', "_");
        let of_the_page = OF_THE_PAGE.contains(&name.as_str())
            || name.starts_with("leptos")
            || name.starts_with("wasm_bindgen")
            || name.starts_with("gloo");
        assert!(!of_the_page, "the core depends on {line}");
    }
}
