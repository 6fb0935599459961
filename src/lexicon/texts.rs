//! Many short texts in one, found by their content: no allocation a text.

use hashbrown::HashTable;
use rustc_hash::FxBuildHasher;
use serde::{Deserialize, Serialize};
use std::hash::BuildHasher;

/// Texts numbered in the order in which they came.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Texts {
    joined: String,
    ends: Vec<u32>,
    /// Not stored; [`Texts::take_up`] works it out.
    #[serde(skip)]
    index: HashTable<u32>,
}

fn hash(text: &str) -> u64 {
    FxBuildHasher.hash_one(text)
}

impl Texts {
    /// The text of a number.
    pub fn get(&self, number: u32) -> &str {
        part(&self.joined, &self.ends, number)
    }

    /// The number of a text, if it is among them.
    pub fn find(&self, text: &str) -> Option<u32> {
        self.index.find(hash(text), |&n| self.get(n) == text).copied()
    }

    /// The number of a text, added if it is new.
    pub fn add(&mut self, text: &str) -> u32 {
        if let Some(number) = self.find(text) {
            return number;
        }
        let number = u32::try_from(self.ends.len()).unwrap_or(u32::MAX);
        self.joined.push_str(text);
        self.ends.push(u32::try_from(self.joined.len()).unwrap_or(u32::MAX));
        let Self { joined, ends, index } = self;
        index.insert_unique(hash(text), number, |&n| hash(part(joined, ends, n)));
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

    /// Works out the index.
    pub fn take_up(&mut self) {
        let Self { joined, ends, index } = self;
        *index = HashTable::with_capacity(ends.len());
        for number in 0..u32::try_from(ends.len()).unwrap_or(0) {
            let key = hash(part(joined, ends, number));
            index.insert_unique(key, number, |&n| hash(part(joined, ends, n)));
        }
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
