//! The shape every lexicon file shares: entries of a head and indented lines.
//!
//! ```text
//! # a comment
//! colour rufous
//!   also    foxy, fox-red
//!   lab     45 32 36
//!   means   red-brown, as a fox's coat
//! ```
//!
//! A head is a kind and an id at the line's start; each indented line is a key and its value.
//! What keys mean is left to the readers of each kind.

use crate::diagnostic::{Diagnostic, Diagnostics, Source};
use crate::span::Span;
use nom::bytes::complete::{take_while, take_while1};
use nom::character::complete::{space0, space1};
use nom::combinator::eof;
use nom::sequence::{preceded, terminated};
use nom::{IResult, Parser};
use serde::{Deserialize, Serialize};

/// A key with its value, and where the value stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Field {
    /// The key.
    pub key: String,
    /// The value, trimmed.
    pub value: String,
    /// Where the value stands in the file.
    #[serde(skip)]
    pub span: Span,
}

/// One entry as written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Entry {
    /// The kind in the head.
    pub kind: String,
    /// The id in the head.
    pub id: String,
    /// The indented lines, in order.
    pub fields: Vec<Field>,
    /// Where the head stands.
    #[serde(skip)]
    pub span: Span,
    /// The file.
    #[serde(skip)]
    pub source: Source,
}

impl Entry {
    /// The value of the first line with that key.
    pub fn get(&self, key: &str) -> Option<&str> {
        self.field(key).map(|f| f.value.as_str())
    }

    /// The first line with that key.
    pub fn field(&self, key: &str) -> Option<&Field> {
        self.fields.iter().find(|f| f.key == key)
    }

    /// Every comma-separated item of every line with that key.
    pub fn items<'a>(&'a self, key: &'a str) -> impl Iterator<Item = &'a str> + 'a {
        self.fields
            .iter()
            .filter(move |f| f.key == key)
            .flat_map(|f| f.value.split(','))
            .map(str::trim)
            .filter(|item| !item.is_empty())
    }

    /// Numbers on the line with that key, or an error that points at it.
    pub fn numbers(&self, key: &str, count: usize) -> Result<Option<Vec<f32>>, Box<Diagnostic>> {
        let Some(field) = self.field(key) else {
            return Ok(None);
        };
        let parsed: Result<Vec<f32>, _> =
            field.value.split_whitespace().map(str::parse::<f32>).collect();
        match parsed {
            Ok(found) if found.len() == count && found.iter().all(|n| n.is_finite()) => {
                Ok(Some(found))
            }
            _ => Err(Box::new(
                Diagnostic::error(
                    "bad-number",
                    &self.source,
                    field.span,
                    format!("`{key}` expects {count} number(s), found `{}`", field.value),
                )
                .hint("write plain numbers with spaces between, such as `45 32 36`"),
            )),
        }
    }
}

/// Reads the entries of a file; what is wrong comes back beside what could be read.
pub fn entries(source: &Source) -> (Vec<Entry>, Diagnostics) {
    let mut out: Vec<Entry> = Vec::new();
    let mut wrong = Diagnostics::default();
    let mut offset = 0;
    for raw in source.text.split_inclusive('\n') {
        let line = raw.trim_end();
        let span = Span::new(offset, offset + line.len());
        let start = offset;
        offset += raw.len();
        if line.is_empty() || line.trim_start().starts_with('#') {
            continue;
        }
        if line.starts_with([' ', '\t']) {
            match (field(line), out.last_mut()) {
                (Ok((_, (key, value))), Some(entry)) => {
                    let at = start + (value.as_ptr() as usize - line.as_ptr() as usize);
                    entry.fields.push(Field {
                        key: key.to_owned(),
                        value: value.to_owned(),
                        span: Span::new(at, at + value.len()),
                    });
                }
                (Ok(_), None) => wrong.push(
                    Diagnostic::error(
                        "no-head",
                        source,
                        span,
                        "an indented line with no entry above it",
                    )
                    .hint("start the entry with a line such as `colour rufous` at the left edge"),
                ),
                (Err(_), _) => wrong.push(
                    Diagnostic::error("no-value", source, span, "a key with no value after it")
                        .hint("write `key value`, such as `means red-brown`"),
                ),
            }
        } else {
            match head(line) {
                Ok((_, (kind, id))) => out.push(Entry {
                    kind: kind.to_owned(),
                    id: id.to_owned(),
                    fields: Vec::new(),
                    span,
                    source: source.clone(),
                }),
                Err(_) => wrong.push(
                    Diagnostic::error(
                        "bad-head",
                        source,
                        span,
                        format!("expected `kind id` at the start of an entry, found `{line}`"),
                    )
                    .hint("a kind, a space, an id in lower case with hyphens; indent the lines below it"),
                ),
            }
        }
    }
    (out, wrong)
}

/// Characters of a kind, an id or a key.
pub fn is_id_char(c: char) -> bool {
    c.is_alphanumeric() || matches!(c, '-' | '_' | '.' | '\'' | '/')
}

fn head(line: &str) -> IResult<&str, (&str, &str)> {
    let word = || take_while1(is_id_char);
    terminated((word(), preceded(space1, word())), (space0, eof)).parse(line)
}

fn field(line: &str) -> IResult<&str, (&str, &str)> {
    let key = take_while1(|c: char| !c.is_whitespace());
    let value = take_while(|_| true);
    let (rest, (key, value)) = (preceded(space1, key), preceded(space1, value)).parse(line)?;
    Ok((rest, (key, value)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_heads_and_fields() {
        let source = Source::new("t.lex", "# c\ncolour rufous\n  also  foxy, fox-red\n  means m\n");
        let (found, wrong) = entries(&source);
        assert_eq!(wrong.0, vec![]);
        assert_eq!(found[0].kind, "colour");
        assert_eq!(found[0].items("also").collect::<Vec<_>>(), ["foxy", "fox-red"]);
        assert_eq!(found[0].fields[1].span.of(&source.text), "m");
    }

    #[test]
    fn says_where_a_head_is_wrong() {
        let source = Source::new("t.lex", "colour\n  means m\n");
        let (_, wrong) = entries(&source);
        assert!(wrong.0[0].to_string().starts_with("t.lex:1:1: expected `kind id`"));
    }

    #[test]
    fn an_indented_line_needs_a_head() {
        let (_, wrong) = entries(&Source::new("t.lex", "  means m\n"));
        assert_eq!(wrong.0[0].code, "no-head");
    }
}
