//! Many short texts in one, found by their content: no allocation a text.

use super::packed;
use serde::{Deserialize, Serialize};

/// Texts numbered in the order in which they came.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Texts {
    joined: String,
    #[serde(with = "packed")]
    ends: Vec<u32>,
    /// Numbers plus one, each at the first free place from where its text's hash points; 0 is free.
    /// A power of two, at least half of it free, or nothing at all.
    #[serde(with = "packed")]
    index: Vec<u32>,
}

/// The same on every machine, since the tables are stored: eight bytes at a time.
fn hash(text: &str) -> usize {
    let mut out = text.len() as u64;
    for eight in text.as_bytes().chunks(8) {
        let bytes = eight.iter().rev().fold(0, |all, &b| (all << 8) | u64::from(b));
        out = (out ^ bytes).wrapping_mul(0x9e37_79b9_7f4a_7c15);
        out ^= out >> 32;
    }
    (out & 0xffff_ffff) as usize
}

impl Texts {
    /// The text of a number.
    pub fn get(&self, number: u32) -> &str {
        part(&self.joined, &self.ends, number)
    }

    /// The number of a text, if it is among them.
    pub fn find(&self, text: &str) -> Option<u32> {
        let mut at = hash(text);
        loop {
            let number = self.index.get(at & self.index.len().wrapping_sub(1))?.checked_sub(1)?;
            if self.get(number) == text {
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
        self.joined.push_str(text);
        self.ends.push(u32::try_from(self.joined.len()).unwrap_or(u32::MAX));
        if self.ends.len() * 2 > self.index.len() {
            self.index = vec![0; (self.ends.len() * 4).next_power_of_two()];
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
        self.index[at] = number + 1;
    }
}

#[inline]
fn part<'t>(joined: &'t str, ends: &[u32], number: u32) -> &'t str {
    let at = number as usize;
    let start = at.checked_sub(1).map_or(0, |before| ends[before] as usize);
    &joined[start..ends[at] as usize]
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
