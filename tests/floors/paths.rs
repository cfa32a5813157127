//! The paths of a source, with grouped imports written out.

use crate::tokens::{Token, tokens};

/// Every path of a source as its list of names, grouped imports written out and `self` and `super`
/// resolved; paths of this crate begin with `crate`. `module` is where the file stands.
pub fn paths(source: &str, module: &[&str]) -> Vec<Vec<String>> {
    let tokens = tokens(source);
    let mut found = Vec::new();
    // The inline modules around the present place, each with the depth of its braces.
    let mut inside: Vec<(String, usize)> = Vec::new();
    let mut depth = 0;
    let mut i = 0;
    while i < tokens.len() {
        match &tokens[i] {
            Token::Sign('{') => {
                depth += 1;
                i += 1;
            }
            Token::Sign('}') => {
                depth -= 1;
                inside.retain(|(_, opened)| *opened <= depth);
                i += 1;
            }
            Token::Word(word) if word == "mod" => {
                if let (Some(Token::Word(name)), Some(Token::Sign('{'))) =
                    (tokens.get(i + 1), tokens.get(i + 2))
                {
                    inside.push((name.clone(), depth + 1));
                }
                i += 2;
            }
            Token::Word(word) if word == "use" => {
                let mut trees = Vec::new();
                i = tree(&tokens, i + 1, &[], &mut trees);
                found.extend(trees.iter().map(|path| {
                    let mut path = resolved(path, module, &inside);
                    // The root itself, under another name.
                    if path.len() == 1 && path[0] == "crate" {
                        path.push("self".to_owned());
                    }
                    path
                }));
            }
            // The middle of a path was read with its start.
            Token::Word(_) if i > 0 && tokens[i - 1] == Token::Path => i += 1,
            Token::Word(_) => {
                let mut names = Vec::new();
                while let Some(Token::Word(name)) = tokens.get(i) {
                    names.push(name.clone());
                    i += 1;
                    if tokens.get(i) == Some(&Token::Path) {
                        i += 1;
                    } else {
                        break;
                    }
                }
                found.push(resolved(&names, module, &inside));
            }
            _ => i += 1,
        }
    }
    found
}

/// Reads one tree of an import from `at`; returns the place after it.
fn tree(tokens: &[Token], at: usize, before: &[String], found: &mut Vec<Vec<String>>) -> usize {
    let mut path = before.to_vec();
    let mut i = at;
    loop {
        match tokens.get(i) {
            Some(Token::Word(word)) if word == "as" => {
                // The other name does not matter: what is behind it is judged here.
                i += 2;
            }
            Some(Token::Word(word)) => {
                path.push(word.clone());
                i += 1;
            }
            Some(Token::Path) => i += 1,
            Some(Token::Sign('*')) => {
                path.push("*".to_owned());
                i += 1;
            }
            Some(Token::Sign('{')) => {
                i += 1;
                while i < tokens.len() && tokens[i] != Token::Sign('}') {
                    i = tree(tokens, i, &path, found);
                    if tokens.get(i) == Some(&Token::Sign(',')) {
                        i += 1;
                    }
                }
                return i + 1;
            }
            _ => {
                found.push(path);
                return i;
            }
        }
    }
}

/// A path from the crate's root, or from the name of another crate.
fn resolved(path: &[String], module: &[&str], inside: &[(String, usize)]) -> Vec<String> {
    let mut here: Vec<String> = module.iter().map(|&name| name.to_owned()).collect();
    here.extend(inside.iter().map(|(name, _)| name.clone()));
    let mut rest = path;
    match path.first().map(String::as_str) {
        Some("self") if path.len() > 1 => rest = &path[1..],
        Some("super") => {
            while rest.first().is_some_and(|name| name == "super") {
                here.pop();
                rest = &rest[1..];
            }
        }
        _ => return path.to_vec(),
    }
    let mut whole = vec!["crate".to_owned()];
    whole.extend(here);
    whole.extend(rest.iter().cloned());
    whole
}

#[test]
fn grouped_imports_are_written_out() {
    let source = "use crate::{plan::{self, Plan}, science::*, catalog::{salts::{Salt as S}}};";
    let found: Vec<String> = paths(source, &["season"])
        .iter()
        .map(|path| path.join("::"))
        .collect();
    assert_eq!(
        found,
        [
            "crate::plan::self",
            "crate::plan::Plan",
            "crate::science::*",
            "crate::catalog::salts::Salt",
        ]
    );
}
