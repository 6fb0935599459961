//! WordNet's database files, as its manual page wndb(5WN) lays them down: the licence on lines that
//! start with two blanks, then a synset a line,
//!
//! ```text
//! offset file type count(hex) word id [word id ...] pointers [symbol offset type source/target ...] | gloss
//! ```
//!
//! with `_` for blanks within a word and, for adjectives, a marker such as `(a)` behind it. The symbols
//! `~` and `~i` point at the kinds and instances of what a noun synset means.

use std::collections::{BTreeMap, BTreeSet};

/// Words of one meaning, what they are explained by, and the narrower synsets.
#[derive(Clone, Debug)]
pub struct Synset {
    pub offset: String,
    pub lemmas: Vec<String>,
    pub narrower: Vec<String>,
    pub gloss: String,
}

/// The synsets of a data file by their offsets.
pub fn synsets(data: &str) -> BTreeMap<String, Synset> {
    data.lines()
        .filter(|line| !line.starts_with("  "))
        .filter_map(synset)
        .map(|one| (one.offset.clone(), one))
        .collect()
}

fn synset(line: &str) -> Option<Synset> {
    let (head, gloss) = line.split_once(" | ")?;
    let mut fields = head.split_whitespace();
    let offset = fields.next()?.to_owned();
    let (_file, _type) = (fields.next()?, fields.next()?);
    let words = usize::from_str_radix(fields.next()?, 16).ok()?;
    let mut lemmas = Vec::with_capacity(words);
    for _ in 0..words {
        let word = fields.next()?;
        let word = word.split_once('(').map_or(word, |(word, _)| word);
        lemmas.push(word.replace('_', " "));
        fields.next()?;
    }
    let pointers: usize = fields.next()?.parse().ok()?;
    let mut narrower = Vec::new();
    for _ in 0..pointers {
        let (symbol, target) = (fields.next()?, fields.next()?);
        let (_type, _words) = (fields.next()?, fields.next()?);
        if matches!(symbol, "~" | "~i") {
            narrower.push(target.to_owned());
        }
    }
    // Examples of use stand behind the gloss in quotes.
    let gloss = gloss.split("; \"").next()?.trim().to_owned();
    Some(Synset { offset, lemmas, narrower, gloss })
}

/// The synset of `top` and all below it, each once, in the order of the file.
pub fn below<'a>(all: &'a BTreeMap<String, Synset>, top: &str) -> Vec<&'a Synset> {
    let mut seen = BTreeSet::new();
    let mut next = vec![top];
    while let Some(offset) = next.pop() {
        if let Some(one) = all.get(offset)
            && seen.insert(offset)
        {
            next.extend(one.narrower.iter().map(String::as_str));
        }
    }
    seen.into_iter().filter_map(|offset| all.get(offset)).collect()
}

/// Every word of one part that some synset writes in small letters: no names, no abbreviations in
/// capitals.
pub fn small_words(data: &[String]) -> BTreeSet<String> {
    data.iter()
        .flat_map(|file| synsets(file).into_values())
        .flat_map(|one| one.lemmas)
        .filter(|lemma| lemma.bytes().all(|b| b.is_ascii_lowercase()))
        .collect()
}

#[test]
fn a_line_is_read_as_the_manual_says() {
    let line = "00000001 05 n 02 reed_hen 0 Exempla_exempla 0 003 @ 00000002 n 0000 ~ 00000003 n 0000 \
                ~i 00000004 n 0000 | small brown bird; \"a reed hen ran off\"  ";
    let one = synset(line).unwrap();
    assert_eq!(one.lemmas, ["reed hen", "Exempla exempla"]);
    assert_eq!(one.narrower, ["00000003", "00000004"]);
    assert_eq!(one.gloss, "small brown bird");
}
