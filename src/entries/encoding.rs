//! What encoding a file is in, and how many of its bytes a character takes.

use chardetng::{EncodingDetector, Iso2022JpDetection, Utf8Detection};
use encoding_rs::{Encoding, UTF_8, UTF_16BE, UTF_16LE};
use serde::{Deserialize, Serialize};

/// How many bytes of the file a character takes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Units {
    /// As many as in memory.
    #[default]
    Utf8,
    /// Two or four.
    Utf16,
    /// One.
    Single,
    /// One, or two outside ASCII.
    Double,
}

impl Units {
    /// The units of an encoding.
    pub fn of(encoding: &'static Encoding) -> Self {
        if encoding == UTF_8 {
            Self::Utf8
        } else if encoding == UTF_16LE || encoding == UTF_16BE {
            Self::Utf16
        } else if encoding.is_single_byte() {
            Self::Single
        } else {
            Self::Double
        }
    }

    /// How many bytes of the file a text takes.
    pub fn length(self, text: &str) -> u64 {
        let count = match self {
            Self::Utf8 => text.len(),
            Self::Utf16 => text.chars().map(|c| c.len_utf16() * 2).sum(),
            Self::Single => text.chars().count(),
            Self::Double => text.chars().map(double).sum(),
        };
        count as u64
    }

    /// Whether these are the usual ones.
    pub fn is_utf8(&self) -> bool {
        *self == Self::Utf8
    }
}

/// Of East Asian encodings: one byte for ASCII and for half-width kana, two for most others.
const fn double(c: char) -> usize {
    if c.is_ascii() || matches!(c, '\u{ff61}'..='\u{ff9f}') { 1 } else { 2 }
}

/// The mark at the start of a file that says its encoding, and its length.
pub fn byte_order_mark(head: &[u8]) -> Option<(&'static Encoding, usize)> {
    Encoding::for_bom(head)
}

/// Guesses an encoding from the bytes of a file, fed piece by piece.
pub struct Guess {
    /// What the detector is shown if the file turns out not to be UTF-8; it is slow, and seldom asked.
    sample: Vec<u8>,
    first: bool,
    marked: Option<&'static Encoding>,
    carry: Vec<u8>,
    good: u64,
    bad: u64,
    zeros: [u64; 2],
    seen: u64,
    first_zero: Option<u64>,
}

/// The most bytes shown to the detector; letters tell soon what they are.
const MOST_FED: usize = 1 << 20;
/// Where English is written, as the detector has it.
const ENGLISH: &[u8] = b"uk";
/// The bytes at the start in which zeros tell UTF-16 from text.
const ZEROS_IN: u64 = 1 << 16;

impl Default for Guess {
    fn default() -> Self {
        Self {
            sample: Vec::new(),
            first: true,
            marked: None,
            carry: Vec::new(),
            good: 0,
            bad: 0,
            zeros: [0; 2],
            seen: 0,
            first_zero: None,
        }
    }
}

impl Guess {
    /// Takes the next bytes.
    pub fn push(&mut self, bytes: &[u8]) {
        if self.first {
            self.marked = byte_order_mark(bytes).map(|(encoding, _)| encoding);
            self.first = false;
        }
        for at in memchr::memchr_iter(0, bytes) {
            let place = self.seen + at as u64;
            self.first_zero.get_or_insert(place);
            if place >= ZEROS_IN {
                break;
            }
            self.zeros[usize::from(place % 2 == 1)] += 1;
        }
        self.seen += bytes.len() as u64;
        if bytes.is_ascii() && self.carry.is_empty() {
            return;
        }
        if self.sample.len() < MOST_FED {
            self.sample.extend_from_slice(bytes);
        }
        self.count(bytes);
    }

    /// Counts characters of UTF-8 outside ASCII, and places that are no UTF-8.
    fn count(&mut self, bytes: &[u8]) {
        let joined;
        let mut rest = bytes;
        if !self.carry.is_empty() {
            self.carry.extend_from_slice(bytes);
            joined = std::mem::take(&mut self.carry);
            rest = &joined;
        }
        // In steps whose sums fit a byte, many bytes are looked at together.
        let few = |bytes: &[u8]| u64::from(bytes.iter().map(|b| u8::from(*b >= 0xC0)).sum::<u8>());
        let leads = |text: &[u8]| text.chunks(192).map(few).sum::<u64>();
        loop {
            match std::str::from_utf8(rest) {
                Ok(text) => {
                    self.good += leads(text.as_bytes());
                    return;
                }
                Err(error) => {
                    let upto = error.valid_up_to();
                    self.good += leads(&rest[..upto]);
                    match error.error_len() {
                        Some(length) => {
                            self.bad += 1;
                            rest = &rest[upto + length..];
                        }
                        None => {
                            self.carry = rest[upto..].to_vec();
                            return;
                        }
                    }
                }
            }
        }
    }

    /// The encoding; `Err` with the place of a zero byte where the file is no text.
    ///
    /// # Errors
    /// The byte of the first zero in a file that is not UTF-16.
    pub fn finish(mut self) -> Result<&'static Encoding, u64> {
        if let Some(marked) = self.marked {
            return Ok(marked);
        }
        if let Some(zero) = self.first_zero {
            // In UTF-16 of Western text every second byte is zero.
            let pairs = (self.seen.min(ZEROS_IN) / 2).max(1);
            return match self.zeros {
                [even, odd] if odd * 10 >= pairs * 7 && even * 10 < pairs => Ok(UTF_16LE),
                [even, odd] if even * 10 >= pairs * 7 && odd * 10 < pairs => Ok(UTF_16BE),
                _ => Err(zero),
            };
        }
        self.bad += u64::from(!self.carry.is_empty());
        // A UTF-8 file with a few damaged places is still one.
        if self.bad == 0 || self.good > self.bad {
            return Ok(UTF_8);
        }
        let mut detector = EncodingDetector::new(Iso2022JpDetection::Deny);
        detector.feed(&self.sample, true);
        // The notes are English: in a few letters the encodings of the Baltic or of Turkey look the same.
        Ok(detector.guess(Some(ENGLISH), Utf8Detection::Deny))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn guess(bytes: &[u8]) -> Result<&'static str, u64> {
        let mut guess = Guess::default();
        for piece in bytes.chunks(5) {
            guess.push(piece);
        }
        guess.finish().map(Encoding::name)
    }

    #[test]
    fn names_the_usual_encodings() {
        assert_eq!(guess(b"plain"), Ok("UTF-8"));
        assert_eq!(guess("naïve – “café”".as_bytes()), Ok("UTF-8"));
        assert_eq!(
            guess(b"caf\xe9 \x93gull\x94, it\x92s na\xefve and 12\xb0 warm"),
            Ok("windows-1252")
        );
        assert_eq!(
            guess(b"na\xefve bird \x96 black cap, it\x92s \x93white\x94 rump"),
            Ok("windows-1252")
        );
        assert_eq!(
            guess(
                b"\xf7\xb8\xf0\xed\xe0\xff \xf8\xe0\xef\xee\xf7\xea\xe0 \xf3 \xef\xf2\xe8\xf6\xfb"
            ),
            Ok("windows-1251")
        );
        let utf16: Vec<u8> = "black crown".encode_utf16().flat_map(u16::to_le_bytes).collect();
        assert_eq!(guess(&utf16), Ok("UTF-16LE"));
        assert_eq!(guess("é “x” ü é à ö é\u{fffd}".as_bytes()), Ok("UTF-8"));
        assert_eq!(
            guess(
                "é “x” ü é à ö é"
                    .as_bytes()
                    .iter()
                    .chain(b" \xff")
                    .copied()
                    .collect::<Vec<_>>()
                    .as_slice()
            ),
            Ok("UTF-8")
        );
    }

    #[test]
    fn a_zero_byte_is_no_text() {
        assert_eq!(guess(b"abc\0defghijkl"), Err(3));
    }
}
