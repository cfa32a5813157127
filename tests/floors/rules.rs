//! Which path may stand on which floor.

use crate::paths::paths;
use crate::tokens::{Token, tokens};

/// From the ground up: a floor may use itself and those before it.
pub const FLOORS: [&str; 7] = [
    "science", "catalog", "plan", "season", "advice", "trial", "app",
];
/// The folder that may touch the browser.
const BROWSER: [&str; 2] = ["app", "browser"];
/// Crates of the page.
pub const OF_THE_PAGE: [&str; 8] = [
    "leptos",
    "web_sys",
    "js_sys",
    "wasm_bindgen",
    "wasm_bindgen_futures",
    "gloo",
    "gloo_storage",
    "console_error_panic_hook",
];
/// Those that touch the browser itself.
const OF_THE_BROWSER: [&str; 6] = [
    "web_sys",
    "js_sys",
    "wasm_bindgen",
    "wasm_bindgen_futures",
    "gloo",
    "gloo_storage",
];

/// What is wrong with one path of a file in `module`; `None` when nothing is.
fn fault(path: &[String], module: &[&str]) -> Option<String> {
    let place = FLOORS
        .iter()
        .position(|floor| module.first() == Some(floor));
    let height = place?;
    let first = path.first()?.as_str();
    let told = || path.join("::");
    if first == "crate" {
        let Some(second) = path.get(1) else {
            // `crate` alone, as in `pub(crate)`.
            return None;
        };
        return match FLOORS.iter().position(|floor| floor == second) {
            Some(other) if other > height => Some(format!("{} is above", told())),
            Some(_) => None,
            // What the root itself offers comes from any floor: only the highest may ask there.
            None if FLOORS[height] == "app" => None,
            None => Some(format!("{} comes from the root", told())),
        };
    }
    if first == "slackwater" {
        return Some(format!("{} names the crate from outside", told()));
    }
    if FLOORS[height] != "app" && OF_THE_PAGE.contains(&first) {
        return Some(format!("{} belongs to the page", told()));
    }
    let browser = module.len() >= 2 && module[..2] == BROWSER;
    if !browser && OF_THE_BROWSER.contains(&first) {
        return Some(format!("{} touches the browser", told()));
    }
    None
}

/// Every fault of a source, `file` for the message.
pub fn faults(source: &str, module: &[&str]) -> Vec<String> {
    let mut found: Vec<String> = paths(source, module)
        .iter()
        .filter_map(|path| fault(path, module))
        .collect();
    // Ways to bring in what the tokens of a file do not show.
    let tokens = tokens(source);
    for pair in tokens.windows(2) {
        if let (Token::Word(word), Token::Sign('!')) = (&pair[0], &pair[1])
            && word == "include"
            // The highest floor may hide nothing that it could not use openly.
            && module.first() != Some(&"app")
        {
            found.push("include! hides what it brings in".to_owned());
        }
    }
    for triple in tokens.windows(3) {
        if triple[0] == Token::Sign('[')
            && triple[1] == Token::Word("path".to_owned())
            && triple[2] == Token::Sign('=')
        {
            found.push("#[path] puts a module where its file does not stand".to_owned());
        }
        if let [Token::Word(first), Token::Word(second), _] = triple
            && first == "extern"
            && second == "crate"
        {
            found.push("extern crate gives a crate another name".to_owned());
        }
    }
    found
}

/// Sources that try to reach upwards, each with the module that it stands in.
const FORBIDDEN: &[(&str, &str)] = &[
    ("science/air", "use crate::plan::Plan;"),
    ("science/air", "use crate::{units, catalog::salts::Salt};"),
    (
        "plan/entry",
        "use crate::{catalog::Keyed, season::{self, Tank}};",
    ),
    (
        "plan/entry",
        "use crate::{\n    catalog, // a comment, }\n    advice as a,\n};",
    ),
    ("plan/entry", "fn f() { crate::season::plants(x, y); }"),
    ("plan/check/crop", "use super::super::super::season::Tank;"),
    ("plan/entry", "use super::super::{plan, advice};"),
    ("plan/entry", "use super::super as root;"),
    (
        "season/day",
        "mod tests { use super::super::super::advice::solve; }",
    ),
    ("catalog/salts", "pub(crate) use crate::r#plan::Plan;"),
    (
        "catalog/salts",
        "type P = <crate::plan::Plan as Default>::Output;",
    ),
    ("catalog/salts", "use crate::solve;"),
    ("catalog/salts", "use crate::*;"),
    ("catalog/salts", "use crate as root;"),
    ("catalog/salts", "use crate::{self as root};"),
    (
        "catalog/keyed",
        "macro_rules! m { () => { $crate::plan::Plan } }",
    ),
    ("advice/fill", "fn f() -> crate::app::App { todo() }"),
    ("advice/fill", "use leptos::prelude::*;"),
    ("advice/fill", "let w = web_sys::window();"),
    (
        "advice/fill",
        "#[wasm_bindgen::prelude::wasm_bindgen] fn f() {}",
    ),
    ("advice/fill", "use ::{js_sys::Date, std::fmt};"),
    ("advice/fill", "use ::gloo_storage::Storage;"),
    ("advice/fill", "use crate::trial::Trial;"),
    ("trial/model", "use crate::app::App;"),
    ("app/card", "use web_sys::Event;"),
    (
        "app/card",
        "use {leptos::prelude::*, gloo_storage::LocalStorage};",
    ),
    ("app/browserlike", "let d = js_sys::Date::now();"),
    ("app/card", "use slackwater::solve;"),
    ("season/day", "include!(\"../advice/mod.rs\");"),
    ("season/day", "#[path = \"../advice/mod.rs\"] mod hidden;"),
    ("season/day", "extern crate self as whole;"),
];

/// Sources that stay on their floor.
const ALLOWED: &[(&str, &str)] = &[
    (
        "plan/entry",
        "// crate::app\n/* /* crate::app */ crate::season */ use crate::catalog::Keyed;",
    ),
    ("plan/entry", "const T: &str = \"use crate::app::App;\";"),
    (
        "plan/entry",
        "const T: &str = r#\"crate::\"app\" \"#; const C: char = '\"'; use super::Field;",
    ),
    ("plan/entry", "fn f<'a>(x: &'a str) -> char { '\\'' }"),
    (
        "plan/entry",
        "mod tests { use super::*; use super::super::model::Plan; }",
    ),
    (
        "plan/entry",
        "pub(in crate::plan) fn f() {} pub(crate) fn g() {}",
    ),
    (
        "season/day",
        "use crate::{plan::{Climate, Light}, science::{air, sun::Sun}};",
    ),
    ("trial/variants", "use crate::{advice::solve, plan::Plan};"),
    ("science/sun/ground", "use super::{Sun, super::units};"),
    (
        "app/card",
        "use leptos::{prelude::*, web_sys::Event}; use crate::{solve, plan};",
    ),
    ("app/card", "fn f(e: leptos::web_sys::Event) {}"),
    (
        "app/browser/storage",
        "use gloo_storage::Storage; use web_sys::window;",
    ),
];

fn faults_in((module, source): &(&str, &str)) -> Vec<String> {
    let module: Vec<&str> = module.split('/').collect();
    faults(source, &module)
}

#[test]
fn no_way_of_writing_an_import_hides_it() {
    for case in FORBIDDEN {
        assert!(!faults_in(case).is_empty(), "{case:?} was let through");
    }
    for case in ALLOWED {
        assert_eq!(faults_in(case), [""; 0], "{case:?} was refused");
    }
}
