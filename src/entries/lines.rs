//! The lines of a stream, decoded, with their bytes.
//!
//! A line ends in LF, CR LF or CR alone, as in old files; the last stands as LF in the text, which is as long.

use super::encoding::{Units, byte_order_mark};
use super::{Remark, Sink, Trouble};
use encoding_rs::{Encoding, UTF_8, UTF_16BE, UTF_16LE};
use std::io::{self, Read};

/// The longest piece of a line handed on at once. What is longer comes in pieces.
pub const MOST_LINE: usize = 64 * 1024;
/// The bytes of the longest line end, CR CR LF in UTF-16.
const LONGEST_END: usize = 6;
/// The bytes read at once.
const BLOCK: usize = 256 * 1024;

/// A line of a file.
#[derive(Clone, Debug, Default)]
pub struct Line {
    /// The text, its end included.
    pub text: String,
    /// How much of `text` stands before the line's end.
    pub content: usize,
    /// The first byte in the file.
    pub start: u64,
    /// One past the last byte, its end included.
    pub end: u64,
    /// The number, from 1.
    pub number: u64,
    /// How many bytes of the file a character takes.
    pub units: Units,
    /// Undecodable bytes: the byte of `text` of the sign that stands for them, and their place in the file.
    pub damage: Vec<(usize, u64, u64)>,
    /// Whether this goes on a line too long for one piece.
    pub continues: bool,
    /// Whether this is the end of the line.
    pub ended: bool,
}

impl Line {
    /// The line without its end.
    pub fn content(&self) -> &str {
        &self.text[..self.content]
    }

    /// Tells of undecodable bytes, once a line.
    pub fn tell_damage(&self, sink: &mut dyn Sink) {
        if let Some(first) = self.damage.first() {
            sink.remark(Remark { line: self.number, byte: first.1, what: Trouble::Undecodable });
        }
    }

    /// The byte of the file for a byte of the text.
    pub fn source(&self, at: usize) -> u64 {
        let upto = self.damage.partition_point(|d| d.0 < at);
        let (text, source) = match upto.checked_sub(1).map(|i| self.damage[i]) {
            Some((text, _, end)) => (text + '\u{fffd}'.len_utf8(), end),
            None => (0, self.start),
        };
        (source + self.units.length(self.text.get(text..at).unwrap_or(""))).min(self.end)
    }
}

/// Reads lines.
pub struct Lines<R> {
    input: R,
    encoding: &'static Encoding,
    units: Units,
    block: Vec<u8>,
    at: usize,
    filled: usize,
    /// The byte of the file of `block[at]`.
    place: u64,
    number: u64,
    continues: bool,
    done: bool,
    most: usize,
    mark: u64,
}

impl<R: Read> Lines<R> {
    /// Lines of a stream in an encoding. A byte order mark is looked past.
    ///
    /// # Errors
    /// What the stream says.
    pub fn new(input: R, encoding: &'static Encoding) -> io::Result<Self> {
        let mut lines = Self {
            input,
            encoding,
            units: Units::of(encoding),
            block: vec![0; BLOCK],
            at: 0,
            filled: 0,
            place: 0,
            number: 1,
            continues: false,
            done: false,
            most: MOST_LINE,
            mark: 0,
        };
        while lines.filled < BLOCK / 2 && !lines.done {
            lines.fill()?;
        }
        if let Some((marked, length)) = byte_order_mark(&lines.block[..lines.filled])
            && marked == encoding
        {
            lines.at = length;
            lines.place = length as u64;
            lines.mark = length as u64;
        }
        Ok(lines)
    }

    /// The bytes of the byte order mark; 0 if there is none.
    pub const fn mark(&self) -> u64 {
        self.mark
    }

    /// How many bytes of the file a character takes.
    pub const fn units(&self) -> Units {
        self.units
    }

    /// The text that is read already, decoded as well as it can be.
    pub fn peek(&self) -> String {
        let bytes = &self.block[self.at..self.filled];
        let text = self.encoding.decode_without_bom_handling(bytes).0;
        if text.contains('\r') {
            return text.replace("\r\n", "\n").replace('\r', "\n");
        }
        text.into_owned()
    }

    /// Lets lines be longer than [`MOST_LINE`], for formats that need a line whole.
    pub const fn allow(&mut self, most: usize) {
        self.most = most;
    }

    /// The byte up to which lines have been handed on.
    pub const fn place(&self) -> u64 {
        self.place
    }

    fn fill(&mut self) -> io::Result<()> {
        if self.at > 0 {
            self.block.copy_within(self.at..self.filled, 0);
            self.filled -= self.at;
            self.at = 0;
        }
        if self.filled == self.block.len() {
            self.block.resize(self.block.len() * 2, 0);
        }
        loop {
            match self.input.read(&mut self.block[self.filled..]) {
                Ok(0) => {
                    self.done = true;
                    return Ok(());
                }
                Ok(n) => {
                    self.filled += n;
                    return Ok(());
                }
                Err(error) if error.kind() == io::ErrorKind::Interrupted => {}
                Err(error) => return Err(error),
            }
        }
    }

    /// The end of the line that starts at `self.at`, its end included, looking from `from` on.
    fn line_end(&self, from: usize) -> Option<usize> {
        let bytes = &self.block[..self.filled];
        if self.units != Units::Utf16 {
            let found = from + memchr::memchr2(b'\n', b'\r', &bytes[from..])?;
            return self.sign_end(found, 1, |at| bytes.get(at).copied());
        }
        let (low, high) = if self.encoding == UTF_16LE { (0, 1) } else { (1, 0) };
        // A character outside ASCII is none of the two signs.
        let unit = |at: usize| {
            let pair = bytes.get(at..at + 2)?;
            Some(if pair[high] == 0 { pair[low] } else { 0 })
        };
        let mut at = from - (from - self.at) % 2;
        while !matches!(unit(at)?, b'\n' | b'\r') {
            at += 2;
        }
        self.sign_end(at, 2, unit)
    }

    /// The end of the line end that starts at `at`; none where more must be read to tell. CR CR LF, left
    /// by programs that put line ends in twice, is one.
    fn sign_end(
        &self,
        at: usize,
        size: usize,
        unit: impl Fn(usize) -> Option<u8>,
    ) -> Option<usize> {
        let mut next = at;
        for _ in 0..=2 {
            match unit(next) {
                Some(b'\n') => return Some(next + size),
                Some(b'\r') => next += size,
                Some(_) => break,
                None if self.done => break,
                None => return None,
            }
        }
        Some(at + size)
    }

    /// The next line; `false` at the end.
    ///
    /// # Errors
    /// What the stream says.
    pub fn next(&mut self, line: &mut Line) -> io::Result<bool> {
        let mut looked = self.at;
        let (end, whole) = loop {
            if let Some(end) = self.line_end(looked) {
                break (end, true);
            }
            if self.filled - self.at > self.most {
                break (self.cut(), false);
            }
            if self.done {
                break (self.filled, true);
            }
            let kept = self.filled - self.at;
            self.fill()?;
            // A CR at the very end is looked at again.
            looked = self.at + kept.saturating_sub(LONGEST_END);
        };
        let (end, whole) =
            if end - self.at > self.most + 4 { (self.cut(), false) } else { (end, whole) };
        if end == self.at {
            return Ok(false);
        }
        line.start = self.place;
        line.end = self.place + (end - self.at) as u64;
        line.number = self.number;
        line.units = self.units;
        line.continues = self.continues;
        line.ended = whole;
        self.decode(end, line);
        if whole && line.text.ends_with('\r') {
            line.text.pop();
            line.text.push('\n');
        }
        line.content = line.text.trim_end_matches(['\n', '\r']).len();
        self.place = line.end;
        self.at = end;
        self.continues = !whole;
        self.number += u64::from(whole);
        Ok(true)
    }

    /// Where to cut a line that is too long: behind its last space, else between two characters.
    fn cut(&self) -> usize {
        let piece = &self.block[self.at..(self.at + self.most).min(self.filled)];
        if self.units == Units::Utf16 {
            return self.at + (piece.len() & !3);
        }
        let space = memchr::memrchr(b' ', piece).map(|n| n + 1).filter(|n| *n > piece.len() / 2);
        self.at
            + space.unwrap_or_else(|| {
                let tail = piece.iter().rev().take(3).take_while(|b| **b & 0xC0 == 0x80).count();
                let lead = piece.len() - tail - 1;
                if piece[lead] >= 0xC0 { lead } else { piece.len() }
            })
    }

    fn decode(&self, end: usize, line: &mut Line) {
        let bytes = &self.block[self.at..end];
        line.text.clear();
        line.damage.clear();
        if self.encoding == UTF_8 {
            decode_utf8(bytes, line);
            return;
        }
        let (text, damaged) = self.encoding.decode_without_bom_handling(bytes);
        line.text.push_str(&text);
        if damaged {
            // Where exactly is known only to the decoder; the sign it put there tells roughly.
            for (at, _) in text.match_indices('\u{fffd}') {
                let source = line.start + self.units.length(&text[..at]);
                let one =
                    if self.encoding == UTF_16LE || self.encoding == UTF_16BE { 2 } else { 1 };
                let source = source.min(line.end - 1);
                line.damage.push((at, source, (source + one).min(line.end)));
            }
        }
    }
}

fn decode_utf8(bytes: &[u8], line: &mut Line) {
    let mut rest = bytes;
    let mut place = line.start;
    loop {
        match std::str::from_utf8(rest) {
            Ok(text) => {
                line.text.push_str(text);
                return;
            }
            Err(error) => {
                let upto = error.valid_up_to();
                let good = &rest[..upto];
                line.text.push_str(std::str::from_utf8(good).unwrap_or_default());
                place += upto as u64;
                let length = error.error_len().unwrap_or(rest.len() - upto);
                line.damage.push((line.text.len(), place, place + length as u64));
                line.text.push('\u{fffd}');
                place += length as u64;
                rest = &rest[upto + length..];
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn all(bytes: &[u8], encoding: &'static Encoding) -> Vec<Line> {
        let mut lines = Lines::new(bytes, encoding).unwrap();
        let mut out = Vec::new();
        let mut line = Line::default();
        while lines.next(&mut line).unwrap() {
            out.push(line.clone());
        }
        out
    }

    #[test]
    fn keeps_bytes_and_numbers() {
        let found = all(b"\xef\xbb\xbfone\r\n\ntwo", UTF_8);
        let places: Vec<_> =
            found.iter().map(|l| (l.content(), l.start, l.end, l.number)).collect();
        assert_eq!(places, [("one", 3, 8, 1), ("", 8, 9, 2), ("two", 9, 12, 3)]);
    }

    #[test]
    fn lines_end_in_cr_too() {
        for (units, encoding) in [(1, UTF_8), (2, UTF_16BE)] {
            let text = "one\r\rtwo\r\nthree\nfour\r\r\nfive\r";
            let bytes: Vec<u8> = match units {
                1 => text.as_bytes().to_vec(),
                _ => text.encode_utf16().flat_map(u16::to_be_bytes).collect(),
            };
            let places: Vec<_> = all(&bytes, encoding)
                .iter()
                .map(|l| (l.text.clone(), l.start / units, l.end / units, l.number))
                .collect();
            let wanted = [
                ("one\n", 0, 4, 1),
                ("\n", 4, 5, 2),
                ("two\r\n", 5, 10, 3),
                ("three\n", 10, 16, 4),
                ("four\r\r\n", 16, 23, 5),
                ("five\n", 23, 28, 6),
            ];
            assert_eq!(places, wanted.map(|(t, s, e, n)| (t.to_owned(), s, e, n)));
        }
    }

    #[test]
    fn a_line_end_parted_by_a_reading_is_one() {
        struct Slow<'a>(&'a [u8]);
        impl Read for Slow<'_> {
            fn read(&mut self, out: &mut [u8]) -> io::Result<usize> {
                let Some((first, rest)) = self.0.split_first() else { return Ok(0) };
                out[0] = *first;
                self.0 = rest;
                Ok(1)
            }
        }
        let text = format!("{}\r\nx\ry\r\r\nz", "a".repeat(BLOCK));
        let mut lines = Lines::new(Slow(text.as_bytes()), UTF_8).unwrap();
        lines.allow(BLOCK * 2);
        let mut line = Line::default();
        let mut ends = Vec::new();
        while lines.next(&mut line).unwrap() {
            ends.push((line.content, line.end - line.start));
        }
        let first = (BLOCK, BLOCK as u64 + 2);
        assert_eq!(ends, [first, (1, 2), (1, 4), (1, 1)]);
    }

    #[test]
    fn damage_keeps_its_place() {
        let found = all(b"ab\xffcd\n", UTF_8);
        assert_eq!(found[0].text, "ab\u{fffd}cd\n");
        assert_eq!(found[0].damage, [(2, 2, 3)]);
        assert_eq!(found[0].source(5), 3);
        assert_eq!(found[0].source(6), 4);
    }

    #[test]
    fn utf16_is_counted_in_its_own_bytes() {
        let bytes: Vec<u8> = "né\nx".encode_utf16().flat_map(u16::to_be_bytes).collect();
        let found = all(&bytes, UTF_16BE);
        assert_eq!((found[0].content(), found[0].start, found[0].end), ("né", 0, 6));
        assert_eq!(found[0].source("né".len()), 4);
        assert_eq!((found[1].content(), found[1].start), ("x", 6));
    }

    #[test]
    fn a_long_line_comes_in_pieces() {
        let text = "é".repeat(MOST_LINE);
        let found = all(text.as_bytes(), UTF_8);
        assert!(found.len() >= 2);
        assert!(found.iter().all(|l| l.damage.is_empty() && l.number == 1));
        assert!(!found[0].continues && found[1].continues);
        assert_eq!(found.iter().map(|l| l.text.as_str()).collect::<String>(), text);
    }
}
