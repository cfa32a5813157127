//! Rust sources as tokens, as far as paths are concerned.

/// One token: a word, a path separator, or another sign.
#[derive(Clone, Debug, PartialEq)]
pub enum Token {
    /// A word or number.
    Word(String),
    /// `::`
    Path,
    /// Any other sign.
    Sign(char),
}

/// The tokens of a source without comments, texts, characters and lifetimes.
pub fn tokens(source: &str) -> Vec<Token> {
    let chars: Vec<char> = source.chars().collect();
    let at = |index: usize| chars.get(index).copied().unwrap_or('\0');
    let mut found = Vec::new();
    let mut i = 0;
    while i < chars.len() {
        let c = chars[i];
        if c == '/' && at(i + 1) == '/' {
            while i < chars.len() && chars[i] != '\n' {
                i += 1;
            }
        } else if c == '/' && at(i + 1) == '*' {
            i = after_block_comment(&chars, i);
        } else if c == '"' {
            i = after_text(&chars, i);
        } else if c == '\'' {
            // A character, unless it is a lifetime.
            if at(i + 1) == '\\' {
                i += 3;
                while i < chars.len() && chars[i] != '\'' {
                    i += 1;
                }
                i += 1;
            } else if at(i + 2) == '\'' {
                i += 3;
            } else {
                i += 1;
            }
        } else if c.is_alphabetic() || c == '_' {
            let start = i;
            while i < chars.len() && (chars[i].is_alphanumeric() || chars[i] == '_') {
                i += 1;
            }
            let word: String = chars[start..i].iter().collect();
            let raw = matches!(word.as_str(), "r" | "br" | "cr") && matches!(at(i), '#' | '"');
            if raw && let Some(end) = after_raw_text(&chars, i) {
                i = end;
            } else if word == "r" && at(i) == '#' {
                // A raw identifier names the same thing as a plain one.
                i += 1;
            } else {
                found.push(Token::Word(word));
            }
        } else if c == ':' && at(i + 1) == ':' {
            found.push(Token::Path);
            i += 2;
        } else {
            if !c.is_whitespace() {
                found.push(Token::Sign(c));
            }
            i += 1;
        }
    }
    found
}

fn after_block_comment(chars: &[char], start: usize) -> usize {
    let mut depth = 0;
    let mut i = start;
    while i + 1 < chars.len() {
        match (chars[i], chars[i + 1]) {
            ('/', '*') => {
                depth += 1;
                i += 2;
            }
            ('*', '/') => {
                depth -= 1;
                i += 2;
                if depth == 0 {
                    return i;
                }
            }
            _ => i += 1,
        }
    }
    chars.len()
}

fn after_text(chars: &[char], start: usize) -> usize {
    let mut i = start + 1;
    while i < chars.len() && chars[i] != '"' {
        i += if chars[i] == '\\' { 2 } else { 1 };
    }
    i + 1
}

/// After `#"…"#` with any number of marks; `None` when no text begins here.
fn after_raw_text(chars: &[char], start: usize) -> Option<usize> {
    let marks = chars[start..].iter().take_while(|&&c| c == '#').count();
    if chars.get(start + marks) != Some(&'"') {
        return None;
    }
    let mut i = start + marks + 1;
    while i < chars.len() {
        let closes = chars[i] == '"'
            && chars[i + 1..]
                .iter()
                .take(marks)
                .filter(|&&c| c == '#')
                .count()
                == marks;
        if closes {
            return Some(i + 1 + marks);
        }
        i += 1;
    }
    Some(chars.len())
}
