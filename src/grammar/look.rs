//! How like another a form can be at most, seen at a glance, so that few have to be compared letter by letter.

use crate::rules::program::small;

/// What can be seen of a form at a glance.
#[derive(Clone, Copy, Debug)]
pub struct Look {
    /// Which letters it has, and above them which it has more than once. Where two letters share a bit it
    /// looks more like others than it is, never less.
    letters: u64,
    /// How it starts, a byte a letter.
    start: u32,
    /// How many letters it has,
    pub length: u32,
    /// and how many beyond those told above.
    more: u32,
}

/// As many letters at the start as count for likeness.
pub const START: usize = 4;

impl Look {
    /// How a form looks.
    pub fn at(text: &str) -> Self {
        let (mut once, mut twice, mut start, mut length) = (0u32, 0, 0, 0usize);
        for (n, letter) in text.chars().map(u32::from).enumerate() {
            let bit = 1 << (letter % u32::BITS);
            twice |= once & bit;
            once |= bit;
            start |= if n < START { (letter & 0xff) << (8 * n) } else { 0 };
            length = n + 1;
        }
        let letters = u64::from(twice) << u32::BITS | u64::from(once);
        let more = small(length - letters.count_ones() as usize);
        Self { letters, start, length: small(length), more }
    }

    /// Which letters it has, by number; one that it has more than once has another number besides.
    pub fn letters(self) -> impl Iterator<Item = usize> {
        places(self.letters)
    }

    /// The most letters that a form can have in common with this one.
    #[inline(always)]
    pub fn common(self, other: Self) -> u32 {
        (self.letters & other.letters).count_ones() + self.more.min(other.more)
    }

    /// How many letters alike both start with, at most.
    #[inline(always)]
    pub const fn alike(self, other: Self) -> usize {
        let alike = (self.start ^ other.start).trailing_zeros() as usize / 8;
        if alike < START { alike } else { START }
    }
}

/// The places of the bits that are set, the lowest first.
pub fn places(bits: u64) -> impl Iterator<Item = usize> {
    let rest = |bits: &u64| Some(bits & (bits - 1)).filter(|&rest| rest != 0);
    let each = std::iter::successors((bits != 0).then_some(bits), rest);
    each.map(|bits| bits.trailing_zeros() as usize)
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case("crown", "brown", 4, 0)]
    #[case("tail", "tial", 4, 1)]
    #[case("aaaa", "aaa", 3, 3)]
    #[case("aabb", "ab", 2, 1)]
    #[case("möwe", "möwen", 4, 4)]
    #[case("crown", "tail", 0, 0)]
    fn a_glance_tells_common_letters_and_starts(
        #[case] a: &str,
        #[case] b: &str,
        #[case] common: u32,
        #[case] alike: usize,
    ) {
        let (a, b) = (Look::at(a), Look::at(b));
        assert_eq!((a.common(b), a.alike(b)), (common, alike));
        assert_eq!((b.common(a), b.alike(a)), (common, alike));
    }
}
