//! What was found of words nobody knows, kept since people use their words again and misspell alike.

use rustc_hash::FxHashMap;

/// How many words are remembered; all are forgotten when there are more.
const MOST: usize = 4096;

/// What was found, by word.
#[derive(Clone, Debug)]
pub struct Remembered<T>(FxHashMap<Box<str>, T>);

impl<T> Default for Remembered<T> {
    fn default() -> Self {
        Self(FxHashMap::default())
    }
}

impl<T: Clone> Remembered<T> {
    /// What was found of a word before, or what `find` finds now.
    pub fn of(&mut self, word: &str, find: impl FnOnce() -> T) -> T {
        if let Some(known) = self.0.get(word) {
            return known.clone();
        }
        let found = find();
        if self.0.len() >= MOST {
            self.0.clear();
        }
        self.0.insert(word.into(), found.clone());
        found
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_is_looked_for_once_until_all_are_forgotten() {
        let (mut words, mut asked) = (Remembered::default(), 0);
        for n in (0..=MOST).chain([0, MOST]) {
            let found = words.of(&n.to_string(), || {
                asked += 1;
                n
            });
            assert_eq!(found, n);
        }
        assert_eq!(asked, MOST + 2);
    }
}
