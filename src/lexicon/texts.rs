//! Many short texts in one, found by their content: no allocation a text.

use super::shelf::{Hand, List, Misplaced, Shelved, Text};

/// Texts numbered in the order in which they came.
#[derive(Clone, Debug, Default)]
pub struct Texts {
    joined: Text,
    ends: List<u32>,
    /// Numbers plus one, each at the first free place from where its text's hash points; 0 is free.
    /// A power of two, at least half of it free, or nothing at all.
    index: List<u32>,
}

impl Shelved for Texts {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        hand.text(&mut self.joined)?;
        hand.list(&mut self.ends)?;
        hand.list(&mut self.index)
    }
}

/// The same on every machine, since the tables are stored: eight bytes at a time, the last of them,
/// overlapping where they must.
fn hash(text: &str) -> usize {
    let bytes = text.as_bytes();
    let mut out = bytes.len() as u64;
    let mut mix = |eight: u64| {
        out = (out ^ eight).wrapping_mul(0x9e37_79b9_7f4a_7c15);
        out ^= out >> 32;
    };
    let mut left = bytes;
    while let Some((&eight, rest)) = left.split_first_chunk::<8>() {
        mix(u64::from_le_bytes(eight));
        left = rest;
    }
    match (left.first_chunk::<4>(), left.last_chunk::<4>(), left) {
        (Some(&a), Some(&b), _) => {
            mix(u64::from(u32::from_le_bytes(a)) | u64::from(u32::from_le_bytes(b)) << 32);
        }
        (_, _, &[a, .., b]) => {
            let middle = left[left.len() / 2];
            mix(u64::from(a) | u64::from(middle) << 8 | u64::from(b) << 16);
        }
        (_, _, &[a]) => mix(u64::from(a)),
        _ => {}
    }
    (out & 0xffff_ffff) as usize
}

impl Texts {
    /// The text of a number.
    pub fn get(&self, number: u32) -> &str {
        &self.joined[self.place(number)]
    }

    /// The same as bytes, of which none are looked at to cut them out.
    #[inline]
    fn bytes(&self, number: u32) -> &[u8] {
        &self.joined.as_bytes()[self.place(number)]
    }

    #[inline]
    fn place(&self, number: u32) -> std::ops::Range<usize> {
        let at = number as usize;
        let start = at.checked_sub(1).map_or(0, |before| self.ends[before] as usize);
        start..self.ends[at] as usize
    }

    /// The number of a text, if it is among them.
    pub fn find(&self, text: &str) -> Option<u32> {
        let mut at = hash(text);
        loop {
            let number = self.index.get(at & self.index.len().wrapping_sub(1))?.checked_sub(1)?;
            if self.bytes(number) == text.as_bytes() {
                return Some(number);
            }
            at = at.wrapping_add(1);
        }
    }

    /// The number of a text, added if it is new.
    pub fn add(&mut self, text: &str) -> u32 {
        if let Some(number) = self.find(text) {
            return number;
        }
        let number = u32::try_from(self.ends.len()).unwrap_or(u32::MAX);
        self.joined.to_mut().push_str(text);
        self.ends.to_mut().push(u32::try_from(self.joined.len()).unwrap_or(u32::MAX));
        if self.ends.len() * 2 > self.index.len() {
            self.index = vec![0; (self.ends.len() * 4).next_power_of_two()].into();
            (0..=number).for_each(|n| self.put(n));
        } else {
            self.put(number);
        }
        number
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.ends.len()
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.ends.is_empty()
    }

    /// Every text in order.
    pub fn iter(&self) -> impl Iterator<Item = &str> {
        (0..self.ends.len()).map(|n| self.get(u32::try_from(n).unwrap_or(0)))
    }

    fn put(&mut self, number: u32) {
        let mask = self.index.len() - 1;
        let mut at = hash(self.get(number)) & mask;
        while self.index[at] != 0 {
            at = (at + 1) & mask;
        }
        self.index.to_mut()[at] = number + 1;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_what_was_added() {
        let mut texts = Texts::default();
        assert_eq!((texts.add("wing"), texts.add("bar"), texts.add("wing")), (0, 1, 0));
        assert_eq!((texts.get(1), texts.find("bar"), texts.find("tail")), ("bar", Some(1), None));
    }
}
