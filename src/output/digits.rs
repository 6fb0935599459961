//! Numbers and the signs between them, made together and added at once: most of what stands beside the words of a
//! season is places in files.

/// As many bytes as five numbers and the names before them take.
const ROOM: usize = 192;
/// One more than the largest number of eight digits.
const EIGHT: u64 = 100_000_000;

/// A short text of numbers and signs.
pub(crate) struct Digits {
    space: [u8; ROOM],
    at: usize,
}

impl Digits {
    /// Nothing yet.
    #[inline]
    pub(crate) const fn new() -> Self {
        Self { space: [0; ROOM], at: 0 }
    }

    /// Adds signs.
    #[inline]
    pub(crate) fn signs<const N: usize>(&mut self, signs: &[u8; N]) {
        if let Some(room) = self.space[self.at..].first_chunk_mut() {
            *room = *signs;
            self.at += N;
        }
    }

    /// Adds a number.
    #[inline]
    pub(crate) fn number(&mut self, number: u64) {
        if number >= EIGHT {
            self.long(number);
            return;
        }
        let digits = eight_digits(number);
        // Of nought the last digit stays.
        let leading = (digits | (1 << 56)).trailing_zeros() / 8;
        self.signs(&(shown(digits) >> (leading * 8)).to_le_bytes());
        self.at -= leading as usize;
    }

    fn long(&mut self, number: u64) {
        self.number(number / EIGHT);
        self.signs(&shown(eight_digits(number % EIGHT)).to_le_bytes());
    }

    /// All of it.
    #[inline]
    pub(crate) fn bytes(&self) -> &[u8] {
        &self.space[..self.at]
    }
}

/// The eight digits of a number below [`EIGHT`], one a byte, the first in the lowest. Halves, pairs and digits are
/// parted in all places at once.
#[inline]
const fn eight_digits(number: u64) -> u64 {
    let halves = (number / 10_000) | ((number % 10_000) << 32);
    let hundreds = ((halves * 10_486) >> 20) & 0x7F_0000_007F;
    let pairs = hundreds | ((halves - hundreds * 100) << 16);
    let tens = ((pairs * 103) >> 10) & 0x000F_000F_000F_000F;
    tens | ((pairs - tens * 10) << 8)
}

/// Digits as they are written.
const fn shown(digits: u64) -> u64 {
    digits | u64::from_ne_bytes([b'0'; 8])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(number: u64) {
        let mut out = Digits::new();
        out.signs(b"[");
        out.number(number);
        out.signs(b"]");
        assert_eq!(out.bytes(), format!("[{number}]").as_bytes());
    }

    #[test]
    fn numbers_are_as_everywhere() {
        let powers = (0..20).map(|n| 10_u64.pow(n));
        powers.flat_map(|p| [p - 1, p, p + 1, p / 10 * 18]).chain([u64::MAX]).for_each(check);
        // Each half of eight digits by itself.
        (0..10_000).flat_map(|n| [n, n * 10_000, n * 10_000 + 9_999]).for_each(check);
    }

    #[test]
    fn there_is_room_for_five_of_the_longest() {
        let mut out = Digits::new();
        for _ in 0..5 {
            out.signs(b",\"bytes\":[");
            out.number(u64::MAX);
        }
        assert_eq!(out.bytes().len(), 5 * 30);
    }
}
