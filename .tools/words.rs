//! Build script: reads the texts of every language (`src/app/words/languages/*.ftl`, in the syntax of Project Fluent)
//! and writes what the page needs of them.
//!
//! - `say.rs`: a typed function or structure for each message, so that a text that is missing, or one
//!   that wants other figures, does not compile.
//! - `<language>.txt`: the same messages in the order of those functions, one a line, made short.
//! - `<language>.json`: the messages whose key begins with `boot-`, which are read before the program is
//!   there; they are in neither of the others.
//!
//! The folder that the environment names in `SLACKWATER_TEXTS` gets the last two as well.
//!
//! Only a part of the syntax is allowed: messages with text, variables, string literals and selectors
//! on a variable. Everything else is refused with the place where it stands.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::{env, fs};

use fluent_syntax::ast::{
    Entry, Expression, InlineExpression, Message, Pattern, PatternElement, Resource, VariantKey,
};
use fluent_syntax::parser::parse;

/// The language that all others are held to.
const FIRST: &str = "en";
/// How the keys begin of what is read before the program is there.
const EARLY: &str = "boot-";
/// Marks of the short form; `src/app/words/say.rs` reads them.
const ARGUMENT: char = '\u{1}';
const SELECT: char = '\u{2}';
const NEXT: char = '\u{3}';
const END: char = '\u{4}';
/// The first of the characters that number a variable.
const FIRST_NUMBER: u8 = b'0';

/// A message of one language.
struct Text<'a> {
    key: &'a str,
    comment: Vec<&'a str>,
    value: Pattern<&'a str>,
}

type Failure = String;

fn main() {
    let folder = Path::new("src/app/words/languages");
    println!("cargo::rerun-if-changed={}", folder.display());
    println!("cargo::rerun-if-env-changed=SLACKWATER_TEXTS");
    if env::var_os("CARGO_FEATURE_PAGE").is_none() {
        return;
    }
    if let Err(failures) = write_all(folder) {
        for failure in failures {
            println!("cargo::error={failure}");
        }
    }
}

fn write_all(folder: &Path) -> Result<(), Vec<Failure>> {
    let alone = |failure: Failure| vec![failure];
    let out = PathBuf::from(env::var_os("OUT_DIR").ok_or_else(|| alone("no OUT_DIR".to_owned()))?);
    let mut sources = BTreeMap::new();
    for entry in fs::read_dir(folder).map_err(|error| alone(error.to_string()))? {
        let path = entry.map_err(|error| alone(error.to_string()))?.path();
        if path.extension().is_some_and(|end| end == "ftl") {
            let name = path
                .file_stem()
                .unwrap_or_default()
                .to_string_lossy()
                .into_owned();
            let text = fs::read_to_string(&path).map_err(|error| alone(error.to_string()))?;
            sources.insert(name, text);
        }
    }
    let first = sources
        .get(FIRST)
        .ok_or_else(|| alone(format!("{FIRST}.ftl is missing")))?;
    let (early, first) = parted(messages(FIRST, first)?);
    let variables: Vec<Vec<&str>> = first.iter().map(|text| variables(&text.value)).collect();
    write_if_new(
        &out.join("say.rs"),
        &functions(&first, &variables, &sources),
    )
    .map_err(|error| alone(error.to_string()))?;
    let mut failures = Vec::new();
    for (language, source) in &sources {
        let both = messages(language, source).and_then(|texts| {
            let (own_early, texts) = parted(texts);
            let none = vec![Vec::new(); early.len()];
            let before = packed(language, &own_early, &early, &none);
            let lines = packed(language, &texts, &first, &variables);
            match (before, lines) {
                (Ok(before), Ok(lines)) => Ok((json(&early, &before), lines)),
                (before, lines) => {
                    let failures = [before.err(), lines.err()];
                    Err(failures.into_iter().flatten().flatten().collect())
                }
            }
        });
        match both {
            Ok((before, lines)) => {
                let mut folders = vec![out.clone()];
                folders.extend(env::var_os("SLACKWATER_TEXTS").map(PathBuf::from));
                for folder in folders {
                    let file = |end: &str| folder.join(format!("{language}.{end}"));
                    let written = fs::create_dir_all(&folder)
                        .and_then(|()| write_if_new(&file("txt"), &lines))
                        .and_then(|()| write_if_new(&file("json"), &before));
                    failures.extend(written.err().map(|error| error.to_string()));
                }
            }
            Err(more) => failures.extend(more),
        }
    }
    if failures.is_empty() {
        Ok(())
    } else {
        Err(failures)
    }
}

/// What is read before the program is there, and all else.
fn parted(texts: Vec<Text>) -> (Vec<Text>, Vec<Text>) {
    texts
        .into_iter()
        .partition(|text| text.key.starts_with(EARLY))
}

/// An object with a member for each text, in the order of the lines.
fn json(texts: &[Text], lines: &str) -> String {
    let quoted = |text: &str| format!("\"{}\"", text.replace('\\', "\\\\").replace('"', "\\\""));
    let members = texts.iter().zip(lines.lines());
    let members = members
        .map(|(text, line)| format!("{}:{}", quoted(&text.key[EARLY.len()..]), quoted(line)));
    format!("{{{}}}\n", members.collect::<Vec<_>>().join(","))
}

/// Leaves a file alone that is as it should be, so that nothing is built anew because of it.
fn write_if_new(path: &Path, text: &str) -> std::io::Result<()> {
    if fs::read_to_string(path).is_ok_and(|before| before == text) {
        return Ok(());
    }
    fs::write(path, text)
}

/// The messages of a language, in the order of the file.
fn messages<'a>(language: &str, source: &'a str) -> Result<Vec<Text<'a>>, Vec<Failure>> {
    let Resource { body } = parse(source).map_err(|(_, errors)| {
        let line = |at: usize| source[..at.min(source.len())].lines().count();
        let said = |error: &fluent_syntax::parser::ParserError| {
            format!("{language}.ftl, line {}: {error}", line(error.pos.start))
        };
        errors.iter().map(said).collect::<Vec<_>>()
    })?;
    let mut texts: Vec<Text> = Vec::new();
    let mut failures = Vec::new();
    for entry in body {
        match entry {
            Entry::Message(Message {
                id,
                value: Some(value),
                attributes,
                comment,
            }) if attributes.is_empty() => {
                if texts.iter().any(|text| text.key == id.name) {
                    failures.push(format!("{language}.ftl: {} stands there twice", id.name));
                }
                let comment = comment.map(|comment| comment.content).unwrap_or_default();
                texts.push(Text {
                    key: id.name,
                    comment,
                    value,
                });
            }
            Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) => {}
            Entry::Message(Message { id, .. }) => {
                failures.push(format!(
                    "{language}.ftl: {} has no text, or attributes",
                    id.name
                ));
            }
            Entry::Term(term) => {
                failures.push(format!("{language}.ftl: no terms: -{}", term.id.name));
            }
            Entry::Junk { content } => {
                failures.push(format!("{language}.ftl: cannot be read: {content}"));
            }
        }
    }
    if failures.is_empty() {
        Ok(texts)
    } else {
        Err(failures)
    }
}

/// The variables of a text, in the order of their names.
fn variables<'a>(pattern: &Pattern<&'a str>) -> Vec<&'a str> {
    fn of_inline<'a>(inline: &InlineExpression<&'a str>, found: &mut Vec<&'a str>) {
        if let InlineExpression::VariableReference { id } = inline {
            found.push(id.name);
        }
    }
    fn of_pattern<'a>(pattern: &Pattern<&'a str>, found: &mut Vec<&'a str>) {
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { .. } => {}
                PatternElement::Placeable {
                    expression: Expression::Inline(inline),
                } => of_inline(inline, found),
                PatternElement::Placeable {
                    expression: Expression::Select { selector, variants },
                } => {
                    of_inline(selector, found);
                    for variant in variants {
                        of_pattern(&variant.value, found);
                    }
                }
            }
        }
    }
    let mut found = Vec::new();
    of_pattern(pattern, &mut found);
    found.sort_unstable();
    found.dedup();
    found
}

/// All messages of a language in the order of the first, one a line.
fn packed(
    language: &str,
    texts: &[Text],
    first: &[Text],
    variables: &[Vec<&str>],
) -> Result<String, Vec<Failure>> {
    let mut lines = String::new();
    let mut failures = Vec::new();
    for (wanted, variables) in first.iter().zip(variables) {
        match texts.iter().find(|text| text.key == wanted.key) {
            None => failures.push(format!("{language}.ftl: {} is missing", wanted.key)),
            Some(text) => {
                if let Err(failure) = pack(&text.value, variables, &mut lines) {
                    failures.push(format!("{language}.ftl: {}: {failure}", wanted.key));
                }
                lines.push('\n');
            }
        }
    }
    for text in texts {
        if !first.iter().any(|wanted| wanted.key == text.key) {
            failures.push(format!(
                "{language}.ftl: {} is not in {FIRST}.ftl",
                text.key
            ));
        }
    }
    if failures.is_empty() {
        Ok(lines)
    } else {
        Err(failures)
    }
}

/// The number of a variable among those of the message.
fn number(name: &str, variables: &[&str]) -> Result<char, Failure> {
    let place = variables.iter().position(|variable| *variable == name);
    let number = place.and_then(|place| u8::try_from(place).ok());
    number
        .map(|number| char::from(FIRST_NUMBER + number))
        .ok_or_else(|| format!("${name} is no variable of {FIRST}.ftl"))
}

/// Writes a text in its short form.
fn pack(pattern: &Pattern<&str>, variables: &[&str], to: &mut String) -> Result<(), Failure> {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => {
                // A text that goes on in the next line is one line.
                to.push_str(&value.replace('\n', " "));
            }
            PatternElement::Placeable {
                expression: Expression::Inline(inline),
            } => match inline {
                InlineExpression::StringLiteral { value } => {
                    to.push_str(&fluent_syntax::unicode::unescape_unicode_to_string(value));
                }
                InlineExpression::VariableReference { id } => {
                    to.push(ARGUMENT);
                    to.push(number(id.name, variables)?);
                }
                _ => {
                    return Err("only variables and string literals may stand in braces".to_owned());
                }
            },
            PatternElement::Placeable {
                expression: Expression::Select { selector, variants },
            } => {
                let InlineExpression::VariableReference { id } = selector else {
                    return Err("only a variable can select".to_owned());
                };
                to.push(SELECT);
                to.push(number(id.name, variables)?);
                // What holds where nothing else does comes last.
                let mut ordered: Vec<_> = variants.iter().collect();
                ordered.sort_by_key(|variant| variant.default);
                for variant in ordered {
                    let (VariantKey::Identifier { name: key }
                    | VariantKey::NumberLiteral { value: key }) = &variant.key;
                    // The last one needs no key: it holds whatever comes.
                    to.push_str(if variant.default { "" } else { key });
                    to.push(NEXT);
                    pack(&variant.value, variables, to)?;
                    to.push(NEXT);
                }
                to.push(END);
            }
        }
    }
    Ok(())
}

/// The typed functions and structures.
fn functions(
    first: &[Text],
    variables: &[Vec<&str>],
    sources: &BTreeMap<String, String>,
) -> String {
    let mut code = format!(
        "/// The languages there are.\npub const LANGUAGES: [&str; {}] = {:?};\n\
         /// How many texts a language has.\npub const TEXTS: usize = {};\n",
        sources.len(),
        sources.keys().collect::<Vec<_>>(),
        first.len()
    );
    for (place, (text, variables)) in first.iter().zip(variables).enumerate() {
        let name = text.key.replace('-', "_");
        let comment = match text.comment.join(" ") {
            none if none.is_empty() => format!("`{}`.", text.key),
            some => some,
        };
        // Writing to a `String` cannot fail.
        let _ = match variables.as_slice() {
            [] => writeln!(
                code,
                "/// {comment}\npub fn {name}() -> &'static str {{\n    whole({place})\n}}"
            ),
            [only] => writeln!(
                code,
                "/// {comment}\npub fn {name}({only}: &str) -> String {{\n    filled({place}, &[{only}])\n}}"
            ),
            several => {
                let kind: String = text
                    .key
                    .split('-')
                    .map(|word| word[..1].to_uppercase() + &word[1..])
                    .collect();
                let mut fields = String::new();
                for name in several {
                    let _ = writeln!(fields, "    /// `${name}`\n    pub {name}: &'a str,");
                }
                let given: Vec<String> =
                    several.iter().map(|name| format!("self.{name}")).collect();
                writeln!(
                    code,
                    "/// {comment}\npub struct {kind}<'a> {{\n{fields}}}\n\nimpl {kind}<'_> {{\n    /// The text.\n    \
                     pub fn text(&self) -> String {{\n        filled({place}, &[{}])\n    }}\n}}",
                    given.join(", ")
                )
            }
        };
    }
    code
}
