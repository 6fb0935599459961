//! Signs of Markdown and of lists that are no part of a note: bullets, `**`, `_`, `>`.

use std::borrow::Cow;

/// A line with its signs taken out.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Clean<'l> {
    /// The text that is left.
    pub text: Cow<'l, str>,
    /// Where it starts in the line.
    start: usize,
    /// Pieces behind the first one: the byte of `text`, the byte of the line.
    more: Vec<(usize, usize)>,
}

impl<'l> Clean<'l> {
    /// The line from a byte on, nothing taken out.
    pub fn from(line: &'l str, start: usize) -> Self {
        Self { text: Cow::Borrowed(&line[start..]), start, more: Vec::new() }
    }

    /// The byte of the line for a byte of the text.
    pub fn source(&self, at: usize) -> usize {
        let upto = self.more.partition_point(|p| p.0 <= at);
        let (text, source) = upto.checked_sub(1).map_or((0, self.start), |i| self.more[i]);
        source + (at - text)
    }

    /// The pieces of the line that make the text from byte `from` on.
    pub fn kept(&self, from: usize) -> impl Iterator<Item = (usize, usize)> + '_ {
        let first = std::iter::once((0, self.start));
        first.chain(self.more.iter().copied()).enumerate().filter_map(move |(i, (text, source))| {
            let end = self.more.get(i).map_or(self.text.len(), |next| next.0);
            let start = text.max(from);
            (start < end).then(|| (source + (start - text), source + (end - text)))
        })
    }
}

/// How many bytes at the start of a line are a bullet, a number of a list or a quotation sign.
pub fn lead(line: &str, markdown: bool) -> usize {
    if line.as_bytes().first().is_some_and(u8::is_ascii_alphabetic) {
        return 0;
    }
    // A byte order mark within a file is left by files that were joined.
    let mut at = line.len() - line.trim_start_matches([' ', '\t', '\u{a0}', '\u{feff}']).len();
    if markdown {
        while line[at..].starts_with('>') {
            at += 1;
            at += line[at..].len() - line[at..].trim_start_matches(' ').len();
        }
    }
    if markdown && line[at..].starts_with('|') {
        return at + line[at..].len() - line[at..].trim_start_matches(['|', ' ']).len();
    }
    let rest = &line[at..];
    let bullet = ["- ", "* ", "+ ", "• ", "– ", "-\t", "*\t", "•\t"]
        .iter()
        .find(|b| rest.starts_with(**b))
        .map_or(0, |b| b.len());
    if bullet > 0 {
        let boxed = ["[ ] ", "[x] ", "[X] "].iter().any(|b| rest[bullet..].starts_with(b));
        return at + bullet + if boxed { 4 } else { 0 };
    }
    let digits = rest.bytes().take_while(u8::is_ascii_digit).count();
    let numbered = (1..=2).contains(&digits)
        && (rest[digits..].starts_with(". ") || rest[digits..].starts_with(") "));
    at + if numbered { digits + 2 } else { 0 }
}

/// The line with emphasis taken out, from byte `from` on.
pub fn clean(line: &str, from: usize) -> Clean<'_> {
    let mut signs = memchr::memchr3_iter(b'*', b'_', b'`', &line.as_bytes()[from..])
        .map(|at| from + at)
        .filter_map(|at| Some((at, sign(line, at))).filter(|(_, length)| *length > 0))
        .peekable();
    if signs.peek().is_none() {
        return Clean::from(line, from);
    }
    let mut text = String::with_capacity(line.len() - from);
    let mut pieces = Vec::new();
    let mut start = from;
    let mut keep = |start: usize, end: usize| {
        if start < end {
            pieces.push((text.len(), start));
            text.push_str(&line[start..end]);
        }
    };
    for (at, length) in signs {
        // Signs of one run are taken together.
        if at >= start {
            keep(start, at);
            start = at + length;
        }
    }
    keep(start, line.len());
    let mut pieces = pieces.into_iter();
    let start = pieces.next().map_or(line.len(), |(_, source)| source);
    Clean { text: Cow::Owned(text), start, more: pieces.collect() }
}

/// The length of a sign of emphasis at a place; 0 if there is none.
fn sign(line: &str, at: usize) -> usize {
    let rest = &line[at..];
    let Some(first) = rest.chars().next().filter(|c| matches!(c, '*' | '_' | '`')) else {
        return 0;
    };
    let length = rest.chars().take_while(|c| *c == first).count().min(3);
    let before = line[..at].chars().next_back();
    let after = rest[length..].chars().next();
    // Emphasis touches a word on one side and none, or a sign, on the other.
    let word = |c: Option<char>| c.is_some_and(|c| !c.is_whitespace());
    let letter = |c: Option<char>| c.is_some_and(char::is_alphanumeric);
    let inside = letter(before) && letter(after);
    if (word(before) || word(after)) && !(inside && first == '_') { length } else { 0 }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn takes_out_emphasis_and_keeps_places() {
        let line = "- **Place:** _Boathouse_ hide, 2 * 3";
        let from = lead(line, true);
        let found = clean(line, from);
        assert_eq!(found.text, "Place: Boathouse hide, 2 * 3");
        let at = found.text.find("Boat").unwrap();
        assert!(line[found.source(at)..].starts_with("Boathouse_"));
    }

    #[test]
    fn knows_leads() {
        assert_eq!(lead("  • two", false), "  • ".len());
        assert_eq!(lead("1. two", false), 3);
        assert_eq!(lead("> - two", true), 4);
        assert_eq!(lead("12 May", false), 0);
        assert_eq!(lead("- [ ] two", true), 6);
    }
}
