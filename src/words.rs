//! Words and signs of a text, with their byte spans.
//!
//! | text | words |
//! |---|---|
//! | `wing-bar` | `wing` `-` `bar` |
//! | `25cm` | `25` `cm` |
//! | `couldn’t` | `couldn’t` |
//! | `black – or brown?` | `black` `–` (dash) `or` `brown` `?` |
//!
//! Word boundaries are those of UAX #29; a run of digits is parted from the letters that follow it
//! (common practice in notes: `25cm`). White space is not kept: what lies between two words is
//! known from their spans. What a word means is left to the vocabulary.

use crate::span::Span;
use unicode_segmentation::UnicodeSegmentation;

/// What a word is by its signs alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Class {
    /// Letters.
    Letters,
    /// Digits, perhaps with a decimal point.
    Digits,
    /// `,`
    Comma,
    /// `.` `…`
    Stop,
    /// `;`
    Semicolon,
    /// `:`
    Colon,
    /// A hyphen inside a compound.
    Hyphen,
    /// A dash that parts two thoughts.
    Dash,
    /// `/`
    Slash,
    /// `?`
    Question,
    /// `!`
    Exclamation,
    /// An opening bracket.
    Open,
    /// A closing bracket.
    Close,
    /// A quotation mark.
    Quote,
    /// One or more line ends.
    Newline,
    /// Any other sign.
    Symbol,
}

impl Class {
    /// The name under which rules speak of the class.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Letters => "letters",
            Self::Digits => "number",
            Self::Comma => "comma",
            Self::Stop => "stop",
            Self::Semicolon => "semicolon",
            Self::Colon => "colon",
            Self::Hyphen => "hyphen",
            Self::Dash => "dash",
            Self::Slash => "slash",
            Self::Question => "question",
            Self::Exclamation => "exclamation",
            Self::Open => "open",
            Self::Close => "close",
            Self::Quote => "quote",
            Self::Newline => "newline",
            Self::Symbol => "symbol",
        }
    }

    /// Every class of sign, in the order of their declaration, letters and digits left out.
    pub const SIGNS: [Self; 14] = [
        Self::Comma,
        Self::Stop,
        Self::Semicolon,
        Self::Colon,
        Self::Hyphen,
        Self::Dash,
        Self::Slash,
        Self::Question,
        Self::Exclamation,
        Self::Open,
        Self::Close,
        Self::Quote,
        Self::Newline,
        Self::Symbol,
    ];
}

/// A word or a sign, and where it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Word {
    /// Where it stands.
    pub span: Span,
    /// What it is by its signs.
    pub class: Class,
}

/// Splits `text` into words and signs.
pub fn words(text: &str) -> Vec<Word> {
    let mut out = Vec::with_capacity(text.len() / 4);
    words_into(text, &mut out);
    out
}

/// As [`words`], into a list that is emptied first, so that its space is used again.
pub fn words_into(text: &str, out: &mut Vec<Word>) {
    out.clear();
    for (start, piece) in text.split_word_bound_indices() {
        let span = Span::new(start, start + piece.len());
        let mut chars = piece.chars();
        let Some(first) = chars.next() else { continue };
        if piece == "/" && is_lone_w(out.last(), text, start) {
            if let Some(last) = out.last_mut() {
                last.span.end = span.end;
            }
        } else if first.is_alphabetic() {
            out.push(Word { span, class: Class::Letters });
        } else if first.is_numeric() {
            push_digits(piece, span, out);
        } else if first.is_whitespace() {
            if piece.contains(['\n', '\r']) {
                push_newline(span, out);
            }
        } else {
            let class = sign(first, piece, text, span);
            out.push(Word { span, class });
        }
    }
}

/// Whether the word that ends at `end` is the `w` of `w/`, the usual short form of "with".
fn is_lone_w(last: Option<&Word>, text: &str, end: usize) -> bool {
    last.is_some_and(|w| w.span.end == end && w.span.of(text).eq_ignore_ascii_case("w"))
}

/// Parts `25cm` into its digits and its letters; `1st` and `2nd` stay whole.
fn push_digits(piece: &str, span: Span, out: &mut Vec<Word>) {
    let digits = piece.find(|c: char| c.is_alphabetic()).unwrap_or(piece.len());
    let cut = span.start + digits;
    let ordinal = matches!(&piece[digits..], "st" | "nd" | "rd" | "th");
    if digits == piece.len() {
        out.push(Word { span, class: Class::Digits });
    } else if ordinal {
        out.push(Word { span, class: Class::Letters });
    } else {
        out.push(Word { span: Span::new(span.start, cut), class: Class::Digits });
        out.push(Word { span: Span::new(cut, span.end), class: Class::Letters });
    }
}

fn push_newline(span: Span, out: &mut Vec<Word>) {
    match out.last_mut() {
        Some(last) if last.class == Class::Newline => last.span = last.span.join(span),
        _ => out.push(Word { span, class: Class::Newline }),
    }
}

fn sign(first: char, piece: &str, text: &str, span: Span) -> Class {
    match first {
        ',' | '،' | '、' => Class::Comma,
        '.' | '…' => Class::Stop,
        ';' => Class::Semicolon,
        ':' => Class::Colon,
        '-' | '\u{2010}' | '\u{2011}' => hyphen_or_dash(text, span),
        '–' | '—' | '\u{2212}' => Class::Dash,
        '/' => Class::Slash,
        '?' => Class::Question,
        '!' => Class::Exclamation,
        '(' | '[' | '{' => Class::Open,
        ')' | ']' | '}' => Class::Close,
        '"' | '“' | '”' | '\'' | '‘' | '’' | '`' | '«' | '»' => Class::Quote,
        _ if piece.contains(['\n', '\r']) => Class::Newline,
        _ => Class::Symbol,
    }
}

/// A hyphen joins if a word touches it on its right; else it is a dash.
fn hyphen_or_dash(text: &str, span: Span) -> Class {
    let joins = |c: Option<char>| c.is_some_and(char::is_alphanumeric);
    let after = text[span.end..].chars().next();
    let before = text[..span.start].chars().next_back();
    match (joins(before), joins(after)) {
        (true, true) => Class::Hyphen,
        (true, false) if after.is_some_and(char::is_whitespace) => Class::Hyphen,
        _ => Class::Dash,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case("wing-bar", "wing|-|bar")]
    #[case("25cm long", "25|cm|long")]
    #[case("the 1st bird", "the|1st|bird")]
    #[case("bill w/ base", "bill|w/|base")]
    #[case("3.5 in", "3.5|in")]
    #[case("couldn’t see", "couldn’t|see")]
    #[case("a\r\nb\n\nc", "a|\r\n|b|\n\n|c")]
    #[case("", "")]
    fn splits(#[case] text: &str, #[case] expected: &str) {
        let found: Vec<&str> = words(text).iter().map(|w| w.span.of(text)).collect();
        assert_eq!(found.join("|"), expected);
    }

    #[rstest]
    #[case("a-b", Class::Hyphen)]
    #[case("a - b", Class::Dash)]
    #[case("a- b", Class::Hyphen)]
    #[case("a – b", Class::Dash)]
    fn hyphens_and_dashes(#[case] text: &str, #[case] class: Class) {
        assert_eq!(words(text)[1].class, class);
    }
}
