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
    pieces(text, |start, end| push_piece(text, start, end, out));
}

/// Tells the pieces between the word boundaries of `text`, in order.
///
/// Plain text is split by [`ascii_end`], many times as fast as by the tables of Unicode. Signs beyond
/// ASCII are left to those, from the start of the word around them to its end.
fn pieces(text: &str, mut piece: impl FnMut(usize, usize)) {
    let bytes = text.as_bytes();
    let mut at = 0;
    while at < bytes.len() {
        let foreign = first_foreign(&bytes[at..]).map(|n| at + n);
        let plain = foreign.map_or(bytes.len(), |foreign| word_start(bytes, at, foreign));
        while at < plain {
            let end = ascii_end(&bytes[..plain], at);
            piece(at, end);
            at = end;
        }
        if let Some(foreign) = foreign {
            let end = word_end(bytes, foreign);
            for (start, part) in text[at..end].split_word_bound_indices() {
                piece(at + start, at + start + part.len());
            }
            at = end;
        }
    }
}

/// The first byte beyond ASCII.
fn first_foreign(bytes: &[u8]) -> Option<usize> {
    if bytes.is_ascii() { None } else { bytes.iter().position(|b| !b.is_ascii()) }
}

/// Whether a word ends at `at` whatever stands around: behind a space, before a plain sign that is none.
fn parts(bytes: &[u8], at: usize) -> bool {
    bytes[at - 1] == b' ' && bytes[at] != b' ' && bytes[at].is_ascii()
}

/// The last sure start of a word in `from..=upto`, or `from`.
fn word_start(bytes: &[u8], from: usize, upto: usize) -> usize {
    (from + 1..=upto).rev().find(|&at| parts(bytes, at)).unwrap_or(from)
}

/// The first sure start of a word behind `from`, or the end.
fn word_end(bytes: &[u8], from: usize) -> usize {
    (from + 1..bytes.len()).find(|&at| parts(bytes, at)).unwrap_or(bytes.len())
}

/// Where the piece that starts at `start` ends, by the rules of UAX #29 for ASCII text.
#[inline]
fn ascii_end(bytes: &[u8], start: usize) -> usize {
    let mut at = start + 1;
    match bytes[start] {
        b' ' => {
            while bytes.get(at) == Some(&b' ') {
                at += 1;
            }
        }
        b'\r' if bytes.get(at) == Some(&b'\n') => at += 1,
        first if IN_WORD[usize::from(first)] => loop {
            match bytes.get(at) {
                Some(&next) if IN_WORD[usize::from(next)] => at += 1,
                Some(b'.' | b'\'' | b':' | b',' | b';') if joins(bytes, at) => at += 2,
                _ => break,
            }
        },
        _ => {}
    }
    at
}

/// Letters, digits and what joins them.
const IN_WORD: [bool; 256] = {
    let mut table = [false; 256];
    let mut byte = 0u8;
    while byte < 128 {
        table[byte as usize] = byte.is_ascii_alphanumeric() || byte == b'_';
        byte += 1;
    }
    table
};

/// Whether the sign at `at` joins two letters or two digits.
fn joins(bytes: &[u8], at: usize) -> bool {
    let (before, behind) = (bytes[at - 1], bytes.get(at + 1).copied().unwrap_or(b' '));
    let letters = before.is_ascii_alphabetic() && behind.is_ascii_alphabetic();
    let digits = before.is_ascii_digit() && behind.is_ascii_digit();
    match bytes[at] {
        b':' => letters,
        b',' | b';' => digits,
        _ => letters || digits,
    }
}

/// Adds one piece between word boundaries.
#[inline]
fn push_piece(text: &str, start: usize, end: usize, out: &mut Vec<Word>) {
    let span = Span::new(start, end);
    match text.as_bytes()[start] {
        b' ' => {}
        first if first.is_ascii_alphabetic() => out.push(Word { span, class: Class::Letters }),
        _ => push_other(text, span, out),
    }
}

/// The same for pieces that are neither spaces nor begin with a plain letter.
fn push_other(text: &str, span: Span, out: &mut Vec<Word>) {
    let (piece, start) = (&text[span.start..span.end], span.start);
    let Some(first) = piece.chars().next() else { return };
    if first.is_alphabetic() {
        out.push(Word { span, class: Class::Letters });
    } else if first.is_whitespace() {
        if piece.contains(['\n', '\r']) {
            push_newline(span, out);
        }
    } else if first.is_numeric() {
        push_digits(piece, span, out);
    } else if piece == "/" && is_lone_w(out.last(), text, start) {
        if let Some(last) = out.last_mut() {
            last.span.end = span.end;
        }
    } else {
        let class = sign(first, piece, text, span);
        out.push(Word { span, class });
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
    use proptest::prelude::*;
    use rstest::rstest;

    proptest! {
        #[test]
        fn boundaries_are_those_of_unicode(
            text in "([ a-cA-Z0-9_.,;:'\\r\\n\\t/-]{0,6}|[’é\u{301}\u{200d}–２ \u{2028}א\"🐦🇬🇧]{1,2}| [a-z]{1,4} ){0,12}"
        ) {
            let mut found = Vec::new();
            pieces(&text, |start, end| found.push((start, &text[start..end])));
            prop_assert_eq!(found, text.split_word_bound_indices().collect::<Vec<_>>());
        }
    }

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
