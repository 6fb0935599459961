//! From bytes of a note's text back to bytes and lines of the file it came from.

use super::encoding::Units;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;

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

/// The places of one text, laid out for many questions: each line is a piece of its own, so that no line end has to
/// be looked for.
#[derive(Clone, Debug)]
pub struct Places<'e> {
    map: &'e SourceMap,
    text: &'e str,
    /// None where a piece cannot be measured in bytes of the text.
    pieces: Cow<'e, [Segment]>,
}

impl<'e> Places<'e> {
    /// Those of a text.
    pub fn new(map: &'e SourceMap, text: &'e str) -> Self {
        let pieces = match memchr::memchr(b'\n', text.as_bytes()) {
            _ if !map.goes_by_bytes(text) => Cow::Borrowed(&[][..]),
            None => Cow::Borrowed(map.segments.as_slice()),
            Some(_) => Cow::Owned(map.by_lines(text)),
        };
        Self { map, text, pieces }
    }

    /// The byte and the line of the file for a byte of the text, as [`SourceMap::place`].
    pub fn place(&self, at: usize) -> (u64, u64) {
        let upto = self.pieces.partition_point(|s| s.text <= at);
        match upto.checked_sub(1).map(|i| self.pieces[i]) {
            Some(from) => (from.source.saturating_add((at - from.text) as u64), from.line),
            None => self.map.place(self.text, at),
        }
    }

    /// The byte of the file for the end of a stretch, as [`SourceMap::end`].
    pub fn end(&self, at: usize) -> u64 {
        let upto = self.pieces.partition_point(|s| s.text < at);
        let Some(from) = upto.checked_sub(1).map(|i| self.pieces[i]) else {
            return self.map.end(self.text, at);
        };
        let end = from.source.saturating_add((at - from.text) as u64);
        self.pieces.get(upto).map_or(end, |next| end.min(next.source))
    }
}

impl SourceMap {
    /// Whether text and file have the same bytes within a piece. The pieces may come from a file that is not ours.
    fn goes_by_bytes(&self, text: &str) -> bool {
        self.units == Units::Utf8
            && self.segments.iter().all(|s| text.is_char_boundary(s.text))
            && self.segments.windows(2).all(|pair| pair[0].text < pair[1].text)
    }

    /// The pieces, parted behind each line end too.
    fn by_lines(&self, text: &str) -> Vec<Segment> {
        let mut out = Vec::new();
        for (n, piece) in self.segments.iter().enumerate() {
            let next = self.segments.get(n + 1).map(|next| next.text);
            let end = next.unwrap_or(text.len());
            out.push(*piece);
            let lines = memchr::memchr_iter(b'\n', &text.as_bytes()[piece.text..end]);
            let behind = |(at, lines): (usize, u64)| Segment {
                text: piece.text + at + 1,
                source: piece.source.saturating_add(at as u64 + 1),
                line: piece.line.saturating_add(lines),
            };
            // Where the next piece starts, it says itself what its line is.
            out.extend(lines.zip(1..).map(behind).filter(|s| Some(s.text) != next));
        }
        out
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

    #[test]
    fn places_laid_out_are_those_of_the_map() {
        let text = "one\ntwo---twothree\n--four\n\nMöwe\n";
        let segment = |text, source, line| Segment { text, source, line };
        let maps: [&[Segment]; 8] = [
            &[],
            &[segment(0, 100, 7)],
            &[segment(0, 100, 7), segment(20, 140, 11)],
            &[segment(3, 100, 7), segment(4, 104, 9), segment(5, 90, 10)],
            &[segment(0, u64::MAX - 3, u64::MAX - 1)],
            // Not ours: out of order, within a letter, behind the end.
            &[segment(20, 100, 7), segment(4, 140, 11)],
            &[segment(0, 100, 7), segment(30, 140, 11)],
            &[segment(0, 100, 7), segment(99, 140, 11)],
        ];
        for units in [Units::Utf8, Units::Utf16, Units::Single] {
            for segments in maps {
                let map = SourceMap { units, segments: segments.to_vec() };
                let places = Places::new(&map, text);
                for at in (0..=text.len()).filter(|at| text.is_char_boundary(*at)) {
                    assert_eq!(places.place(at), map.place(text, at), "{map:?} {at}");
                    assert_eq!(places.end(at), map.end(text, at), "{map:?} {at}");
                }
            }
        }
    }
}
