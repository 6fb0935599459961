//! Species accounts as written: a head, then labelled lines of plain field language.
//!
//! ```text
//! # Quill Finch · Exempla exempla
//! region: europe
//! mass: 21 g
//! male: Crimson crown, throat and breast. Brown above.
//! bill: short, thick, conical
//! lookalike: Other Finch: longer bill
//! ```
//!
//! Here the lines are only told apart; reading what they say is the work of `accounts`.

use crate::diagnostic::{Diagnostic, Diagnostics, Source};
use crate::span::Span;
use serde::{Deserialize, Serialize};

/// A labelled line.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Line {
    /// The label, in lower case.
    pub label: String,
    /// The text after it.
    pub text: String,
    /// Where the text stands.
    pub span: Span,
}

/// An account as written.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct AccountText {
    /// English name.
    pub english: String,
    /// Scientific name.
    pub scientific: String,
    /// The labelled lines, in order.
    pub lines: Vec<Line>,
    /// The head.
    pub span: Span,
    /// The file.
    pub source: Source,
}

impl AccountText {
    /// The first line with that label.
    pub fn line(&self, label: &str) -> Option<&Line> {
        self.lines.iter().find(|l| l.label == label)
    }

    /// The id made of the English name.
    pub fn id(&self) -> String {
        species_id(&self.english)
    }
}

/// `Clark's Nutcracker` gives `clarks-nutcracker`.
pub fn species_id(english: &str) -> String {
    let mut id = String::with_capacity(english.len());
    for c in english.chars() {
        match c {
            '\'' | '\u{2019}' | '.' => {}
            c if c.is_alphanumeric() => id.extend(c.to_lowercase()),
            _ if !id.ends_with('-') => id.push('-'),
            _ => {}
        }
    }
    id
}

/// Reads the accounts of a file.
pub fn accounts(source: &Source) -> (Vec<AccountText>, Diagnostics) {
    let mut out: Vec<AccountText> = Vec::new();
    let mut wrong = Diagnostics::default();
    let mut offset = 0;
    for raw in source.text.split_inclusive('\n') {
        let line = raw.trim_end();
        let start = offset;
        let span = Span::new(start, start + line.len());
        offset += raw.len();
        if line.trim().is_empty() || line.starts_with("##") {
            continue;
        }
        if let Some(head) = line.strip_prefix('#') {
            let Some((english, scientific)) = head.split_once('·') else {
                wrong.push(
                    Diagnostic::error(
                        "bad-account-head",
                        source,
                        span,
                        "expected `# English name · Scientific name`",
                    )
                    .hint("the two names are parted by ` · `; a remark starts with `##`"),
                );
                continue;
            };
            out.push(AccountText {
                english: english.trim().to_owned(),
                scientific: scientific.trim().to_owned(),
                lines: Vec::new(),
                span,
                source: source.clone(),
            });
            continue;
        }
        let Some((label, text)) = line.split_once(':') else {
            wrong.push(
                Diagnostic::error("no-label", source, span, "expected `label: text`")
                    .hint("such as `bill: short, thick, conical`"),
            );
            continue;
        };
        let Some(account) = out.last_mut() else {
            wrong.push(
                Diagnostic::error("no-account-head", source, span, "a line before any account")
                    .hint("start with `# English name · Scientific name`"),
            );
            continue;
        };
        let text_start = start + label.len() + 1 + (text.len() - text.trim_start().len());
        account.lines.push(Line {
            label: label.trim().to_lowercase(),
            text: text.trim().to_owned(),
            span: Span::new(text_start, text_start + text.trim().len()),
        });
    }
    (out, wrong)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tells_lines_apart() {
        let text =
            "# Quill Finch · Exempla exempla\nmale: Red crown.\nlookalike: Other: longer bill\n";
        let source = Source::new("a.acc", text);
        let (found, wrong) = accounts(&source);
        assert_eq!(wrong.0, vec![]);
        assert_eq!(found[0].english, "Quill Finch");
        assert_eq!(found[0].lines[0].span.of(text), "Red crown.");
        assert_eq!(found[0].lines[1].text, "Other: longer bill");
    }

    #[test]
    fn ids_drop_apostrophes() {
        assert_eq!(species_id("Clark's Nutcracker"), "clarks-nutcracker");
        assert_eq!(species_id("Black-and-white Warbler"), "black-and-white-warbler");
    }
}
