//! The note with its words marked by what became of them.
//!
//! Each line of the note is followed by a line of marks: `=` under what speaks for a mark, `?` under
//! what could not be placed, nothing under what was set aside. Colour says the same once more.

use super::model::{Bytes, NoteReading};
use anstyle::{AnsiColor, Style};
use unicode_segmentation::UnicodeSegmentation;
use unicode_width::UnicodeWidthStr;

/// The style of words that speak for a mark.
pub const PLACED: Style =
    Style::new().fg_color(Some(anstyle::Color::Ansi(AnsiColor::Green))).bold();
/// The style of words that could not be placed.
pub const LOST: Style = Style::new().fg_color(Some(anstyle::Color::Ansi(AnsiColor::Red))).bold();
/// The style of words set aside.
pub const ASIDE: Style = Style::new().dimmed();

#[derive(Clone, Copy, PartialEq, Eq)]
enum Mark {
    Placed,
    Lost,
    Aside,
}

impl Mark {
    const fn sign(self) -> &'static str {
        match self {
            Self::Placed => "=",
            Self::Lost => "?",
            Self::Aside => " ",
        }
    }

    const fn style(self) -> Style {
        match self {
            Self::Placed => PLACED,
            Self::Lost => LOST,
            Self::Aside => ASIDE,
        }
    }
}

/// The note in lines of at most `width` columns, each with its line of marks.
pub fn note_view(reading: &NoteReading<'_>, width: usize, indent: &str) -> String {
    let text = reading.note.text;
    let placed: Vec<Bytes> =
        reading.birds.iter().flat_map(|b| &b.traits).flat_map(|t| t.parts.clone()).collect();
    let lost: Vec<Bytes> = reading.unplaced.iter().map(|u| u.span).collect();
    let within = |list: &[Bytes], at: usize| list.iter().any(|s| s[0] <= at && at < s[1]);
    let mark = |at: usize| {
        if within(&placed, at) {
            Mark::Placed
        } else if within(&lost, at) {
            Mark::Lost
        } else {
            Mark::Aside
        }
    };
    let mut out = String::new();
    for (start, line) in lines(text, width.saturating_sub(indent.len()).max(10)) {
        let mut words = String::new();
        let mut marks = String::new();
        let mut last: Option<Mark> = None;
        for (offset, piece) in line.grapheme_indices(true) {
            let columns = piece.width();
            let now = mark(start + offset);
            if last != Some(now) {
                if let Some(last) = last {
                    words.push_str(&last.style().render_reset().to_string());
                }
                words.push_str(&now.style().render().to_string());
                last = Some(now);
            }
            words.push_str(if piece.chars().any(char::is_control) { " " } else { piece });
            marks.push_str(&now.sign().repeat(columns));
        }
        if let Some(last) = last {
            words.push_str(&last.style().render_reset().to_string());
        }
        out.push_str(&format!("{indent}{}\n", words.trim_end()));
        let marks = marks.trim_end();
        if !marks.is_empty() {
            out.push_str(&format!("{indent}{marks}\n"));
        }
    }
    out
}

/// The lines of a text, long ones broken at spaces, each with the byte where it starts.
fn lines(text: &str, width: usize) -> Vec<(usize, &str)> {
    let mut out = Vec::new();
    let mut offset = 0;
    for raw in text.split('\n') {
        let line = raw.trim_end_matches('\r');
        let mut rest = line;
        let mut start = offset;
        while rest.width() > width {
            let cut = break_at(rest, width);
            out.push((start, rest[..cut].trim_end()));
            let next = &rest[cut..];
            let trimmed = next.trim_start();
            start += cut + (next.len() - trimmed.len());
            rest = trimmed;
        }
        out.push((start, rest));
        offset += raw.len() + 1;
    }
    out
}

/// Where to break a line that is too wide: after the last space that fits, else at the width.
fn break_at(line: &str, width: usize) -> usize {
    let mut columns = 0;
    let mut space = None;
    for (at, piece) in line.grapheme_indices(true) {
        columns += piece.width();
        if columns > width {
            return space.unwrap_or(at.max(1));
        }
        if piece.chars().all(char::is_whitespace) {
            space = Some(at + piece.len());
        }
    }
    line.len()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_lines_break_at_spaces_and_keep_their_place() {
        let found = lines("one two three\nfour", 8);
        assert_eq!(found, [(0, "one two"), (8, "three"), (14, "four")]);
    }

    #[test]
    fn a_word_wider_than_the_line_is_cut() {
        let found = lines("abcdefghij", 4);
        assert_eq!(found, [(0, "abcd"), (4, "efgh"), (8, "ij")]);
    }
}
