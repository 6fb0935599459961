//! The CMU Pronouncing Dictionary: a word and its sounds on each line, further ways to say it marked
//! `word(2)`, a remark behind `#`. Words that are not of small letters alone are passed over.

use std::collections::{BTreeMap, BTreeSet};

/// Words by their sounds, sounds by their words.
#[derive(Debug, Default)]
pub struct Pronouncing {
    sounds: BTreeMap<String, Vec<String>>,
    words: BTreeMap<String, BTreeSet<String>>,
}

impl Pronouncing {
    pub fn read(text: &str) -> Self {
        let mut out = Self::default();
        for line in text.lines() {
            let line = line.split('#').next().unwrap_or("").trim();
            let Some((word, sounds)) = line.split_once(' ') else {
                continue;
            };
            let word = word.split('(').next().unwrap_or("");
            if word.is_empty() || !word.bytes().all(|b| b.is_ascii_lowercase()) {
                continue;
            }
            out.sounds.entry(word.to_owned()).or_default().push(sounds.to_owned());
            out.words.entry(sounds.to_owned()).or_default().insert(word.to_owned());
        }
        out
    }

    /// The other words that are said just like `word`.
    pub fn alike(&self, word: &str) -> BTreeSet<&str> {
        self.sounds
            .get(word)
            .into_iter()
            .flatten()
            .flat_map(|sounds| &self.words[sounds])
            .map(String::as_str)
            .filter(|other| *other != word)
            .collect()
    }
}

#[test]
fn words_of_one_sound_are_found() {
    let few = Pronouncing::read("tail T EY1 L\ntale T EY1 L\ntale(2) T AH0 L\nTALE. X # no word\n");
    assert_eq!(few.alike("tail"), BTreeSet::from(["tale"]));
}
