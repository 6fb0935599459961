//! From bytes of a note's text back to bytes and lines of the file it came from.

use super::encoding::Units;
use serde::{Deserialize, Serialize};

/// From here on text and file go side by side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Segment {
    /// The byte of the text.
    pub text: usize,
    /// The byte of the file.
    pub source: u64,
    /// The line of the file, from 1.
    pub line: u64,
}

/// Where each piece of a text stands in its file.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct SourceMap {
    /// How many bytes of the file a character takes.
    #[serde(default, skip_serializing_if = "Units::is_utf8")]
    pub units: Units,
    /// The pieces, in order.
    pub segments: Vec<Segment>,
}

impl SourceMap {
    /// A map with nothing in it.
    pub const fn new(units: Units) -> Self {
        Self { units, segments: Vec::new() }
    }

    /// From byte `text` on, the text stands at byte `source` and line `line` of the file.
    pub fn push(&mut self, text: usize, source: u64, line: u64) {
        if let Some(last) = self.segments.last_mut() {
            if last.text == text {
                *last = Segment { text, source, line };
                return;
            }
            // Side by side with the piece before: nothing new. Lines then follow from the text.
            let same = self.units == Units::Utf8
                && source >= last.source
                && source - last.source == (text - last.text) as u64;
            if same {
                return;
            }
        }
        self.segments.push(Segment { text, source, line });
    }

    /// As [`SourceMap::push`], where the text before does not tell the line: a line's end left out of it.
    pub fn push_line(&mut self, text: usize, source: u64, line: u64) {
        match self.segments.last_mut() {
            Some(last) if last.text == text => *last = Segment { text, source, line },
            _ => self.segments.push(Segment { text, source, line }),
        }
    }

    /// Leaves out what lies before byte `at` of the text.
    pub fn cut(&mut self, text: &str, at: usize) {
        let (source, line) = self.place(text, at);
        self.segments.retain(|s| s.text > at);
        for segment in &mut self.segments {
            segment.text -= at;
        }
        self.segments.insert(0, Segment { text: 0, source, line });
    }

    /// The byte and the line of the file for a byte of the text.
    pub fn place(&self, text: &str, at: usize) -> (u64, u64) {
        let upto = self.segments.partition_point(|s| s.text <= at);
        let Some(from) = upto.checked_sub(1).map(|i| self.segments[i]) else {
            return (0, 0);
        };
        let between = text.get(from.text..at).unwrap_or("");
        let lines = memchr::memchr_iter(b'\n', between.as_bytes()).count() as u64;
        // The numbers may come from a file that is not ours.
        let source = from.source.saturating_add(self.units.length(between));
        (source, from.line.saturating_add(lines))
    }

    /// As [`SourceMap::place`], for the end of a stretch: right behind the byte before it.
    pub fn end(&self, text: &str, at: usize) -> u64 {
        let upto = self.segments.partition_point(|s| s.text < at);
        let Some(from) = upto.checked_sub(1).map(|i| self.segments[i]) else {
            return self.place(text, at).0;
        };
        let length = self.units.length(text.get(from.text..at).unwrap_or(""));
        let end = from.source.saturating_add(length);
        // A sign that stands for undecodable bytes may be longer than they are.
        self.segments.get(upto).map_or(end, |next| end.min(next.source))
    }

    /// The line of the first byte.
    pub fn first_line(&self) -> u64 {
        self.segments.first().map_or(0, |s| s.line)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pieces_side_by_side_become_one() {
        let mut map = SourceMap::new(Units::Utf8);
        map.push(0, 100, 7);
        map.push(10, 110, 8);
        map.push(20, 140, 11);
        assert_eq!(map.segments.len(), 2);
        let text = "one\ntwo---twothree\n--four";
        assert_eq!(map.place(text, 5), (105, 8));
        assert_eq!(map.place(text, 21), (141, 11));
        assert_eq!(map.end(text, 20), 120);
    }
}
