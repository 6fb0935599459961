//! The known forms most like a word that could not be placed, for the person to choose from.
//!
//! Likeness is Jaro and Winkler's. For almost all forms a glance at their letters shows that they can't be
//! like enough, so only a few are compared; and what was found once is kept, since people use their
//! words again.

use super::joins::LONGEST_MENDED;
use super::look::{Look, START, places};
use super::remembered::Remembered;
use super::spelling::written_kinds;
use crate::lexicon::Lexicon;
use crate::lexicon::vocabulary::normalise_into;
use crate::rules::program::small;
use std::collections::BTreeMap;
use std::ops::Range;
use std::sync::{Mutex, OnceLock, PoisonError};

/// The likeness from which on forms of the same first letter are enough.
const GOOD: f64 = 0.84;
/// A likeness between that and the least.
const MIDDLING: f64 = 0.78;
/// The least likeness of a form worth telling.
const LEAST: f64 = 0.72;

/// From which share of letters in common on a form can be like enough, by how many letters alike it starts with.
struct Bar([f64; START + 1]);

impl Bar {
    /// With c of a and b letters in common, Jaro's likeness is at most (c/a + c/b + 1) / 3, and Winkler takes off
    /// a tenth of what lacks to 1 for each letter alike at the start. Both are solved for c * (a + b) / (a * b).
    fn at(least: f64) -> Self {
        Self([0.0, 0.1, 0.2, 0.3, 0.4].map(|bonus| {
            let jaro = (least - 1e-9 - bonus) / (1.0 - bonus);
            3.0 * jaro - 1.0
        }))
    }

    /// Whether forms with so many letters in common can be like enough.
    fn lets(&self, word: Look, form: Look, common: u32) -> bool {
        f64::from(common) >= self.letters(word, form.length, word.alike(form))
    }

    /// How many letters in common a form of that length must have that starts with so many letters alike.
    fn letters(&self, word: Look, length: u32, alike: usize) -> f64 {
        let (a, b) = (f64::from(word.length), f64::from(length));
        self.0[alike] * a * b / (a + b)
    }
}

/// A word that forms are compared with.
struct Word<'a> {
    text: &'a str,
    look: Look,
    /// Its letters by number, as many as are counted.
    letters: Vec<usize>,
    /// Where each letter stands, a bit a place.
    places: [u128; 32],
}

impl<'a> Word<'a> {
    fn of(text: &'a str) -> Self {
        let look = Look::at(text);
        let mut places = [0; 32];
        for (at, letter) in (0..).zip(text.chars()) {
            places[letter as usize % 32] |= 1u128.checked_shl(at).unwrap_or(0);
        }
        Self { text, look, letters: look.letters().take(COUNTED).collect(), places }
    }

    /// How many letters of a form it has near the same place, as Jaro understands it: the others are not in common.
    /// To count them takes a fraction of the instructions of a comparison, and spares every other one.
    fn near(&self, form: &str, look: Look) -> u32 {
        let range = (self.look.length.max(look.length) as usize / 2).saturating_sub(1);
        let window = (1u128 << (2 * range + 1)) - 1;
        let near = |(at, letter): &(usize, char)| {
            let here = if *at > range { window << (at - range) } else { window >> (range - at) };
            self.places[*letter as usize % 32] & here != 0
        };
        small(form.chars().enumerate().filter(near).count())
    }

    /// The likeness of a form, if it can be enough.
    fn likeness(&self, form: &str, look: Look, bar: &Bar) -> Option<f64> {
        let common = self.look.common(look);
        let lets = |common| bar.lets(self.look, look, common);
        let worth_comparing = lets(common) && lets(common.min(self.near(form, look)));
        worth_comparing.then(|| strsim::jaro_winkler(self.text, form))
    }
}

/// How many forms a block holds.
const BLOCK: usize = u64::BITS as usize;

/// The most letters that are counted.
const COUNTED: usize = 15;

/// Forms, in blocks that are seen together: each holds forms that start with the same letter and are of about one
/// length.
#[derive(Clone, Debug, Default)]
struct Forms<'a> {
    /// Block by block; where one is not full, nothing.
    texts: Vec<&'a str>,
    looks: Vec<Look>,
    /// How long the shortest of each block is.
    shortest: Vec<u32>,
    /// For each letter that a form can have, and each block, which of its forms have it.
    having: Vec<u64>,
    /// The blocks of the forms that start with a letter.
    starting: Vec<(char, Range<usize>)>,
}

impl<'a> Forms<'a> {
    fn of(texts: impl Iterator<Item = &'a str>) -> Self {
        let mut by_first: BTreeMap<char, Vec<&'a str>> = BTreeMap::new();
        for text in texts {
            if let Some(first) = text.chars().next() {
                by_first.entry(first).or_default().push(text);
            }
        }
        let mut out = Self::default();
        for (first, mut texts) in by_first {
            texts.sort_by_key(|text| text.len());
            let from = out.shortest.len();
            texts.chunks(BLOCK).for_each(|texts| out.add(texts));
            out.starting.push((first, from..out.shortest.len()));
        }
        out.having = vec![0; BLOCK * out.shortest.len()];
        for (n, look) in out.looks.iter().enumerate() {
            for letter in look.letters() {
                out.having[letter * out.shortest.len() + n / BLOCK] |= 1 << (n % BLOCK);
            }
        }
        out
    }

    /// Adds a block.
    fn add(&mut self, texts: &[&'a str]) {
        let from = self.texts.len();
        self.texts.extend(texts);
        self.looks.extend(texts.iter().map(|text| Look::at(text)));
        self.shortest.push(self.looks.get(from).map_or(0, |look| look.length));
        self.texts.resize(from + BLOCK, "");
        self.looks.resize(from + BLOCK, Look::at(""));
    }

    /// Those of a block that have at least so many of some letters. The letters of all forms are counted together, a
    /// digit of each count in one number: one by one it takes some 30 times as many instructions.
    fn with_letters(&self, block: usize, letters: &[usize], least: usize) -> u64 {
        let mut digits = [0u64; 4];
        for letter in letters {
            let mut carry = self.having[letter * self.shortest.len() + block];
            for digit in &mut digits {
                (*digit, carry) = (*digit ^ carry, *digit & carry);
            }
        }
        let at_least = |all: u64, (n, digit): (usize, &u64)| match least >> n & 1 {
            1 => all & digit,
            _ => all | digit,
        };
        digits.iter().enumerate().fold(u64::MAX, at_least)
    }

    /// The places of the forms of a block that may be like enough, `alike` letters at the start.
    fn in_sight(
        &self,
        block: usize,
        word: &Word<'_>,
        bar: &Bar,
        alike: usize,
    ) -> impl Iterator<Item = usize> + use<> {
        // Letters that are not counted may all be in common.
        let uncounted = word.look.length as usize - word.letters.len();
        let least = bar.letters(word.look, self.shortest[block], alike).ceil().max(0.0) as usize;
        let least = least.saturating_sub(uncounted);
        let found =
            if least > COUNTED { 0 } else { self.with_letters(block, &word.letters, least) };
        places(found).map(move |at| block * BLOCK + at)
    }
}

/// Finds the nearest forms.
#[derive(Debug)]
pub struct Nearest<'a> {
    lexicon: &'a Lexicon,
    /// How many are told of a word.
    count: usize,
    /// Worked out when the first word is asked for.
    forms: OnceLock<Forms<'a>>,
    found: Mutex<Remembered<Vec<&'a str>>>,
}

impl<'a> Nearest<'a> {
    /// Tells at most `count` of the forms of a lexicon that misspelt words may be mended into, those left out that no
    /// mark comes near in length.
    pub fn of(lexicon: &'a Lexicon, count: usize) -> Self {
        Self { lexicon, count, forms: OnceLock::new(), found: Mutex::default() }
    }

    fn forms(&self) -> &Forms<'a> {
        self.forms.get_or_init(|| {
            let usable = |node| written_kinds(self.lexicon, node) & self.lexicon.mendable != 0;
            let words = self.lexicon.vocabulary.single_words();
            let long = |text: &str| (3..=LONGEST_MENDED).contains(&text.len());
            let words = words.filter(|&(text, node)| long(text) && usable(node));
            Forms::of(words.map(|(text, _)| text))
        })
    }

    /// The forms most like a word, the most like first; none for what is longer than any word. Those that start with
    /// the same letter come first; the others are looked at only if those are too few.
    pub fn to(&self, word: &str) -> Vec<&'a str> {
        if word.len() > LONGEST_MENDED {
            return Vec::new();
        }
        let mut normal = String::new();
        normalise_into(word, &mut normal);
        let mut found = self.found.lock().unwrap_or_else(PoisonError::into_inner);
        found.of(&normal, || self.find(&Word::of(&normal)))
    }

    fn find(&self, word: &Word<'_>) -> Vec<&'a str> {
        let (forms, count) = (self.forms(), self.count);
        let mut out = best(word, forms, false, count, GOOD);
        if out.len() < count {
            // To ask for much first leaves few to compare, and most often enough is found.
            let among_all = |least| best(word, forms, true, count, least);
            let mut likely = [GOOD, MIDDLING].into_iter().map(among_all);
            let more =
                likely.find(|found| found.len() == count).unwrap_or_else(|| among_all(LEAST));
            let new: Vec<&str> = more.into_iter().filter(|m| !out.contains(m)).collect();
            out.extend(new);
            out.truncate(count);
        }
        out
    }
}

/// The most like of the forms that start with the same letter, and, if they are asked for, of the others. In the
/// end their order hangs on likeness and spelling alone.
fn best<'a>(
    word: &Word<'_>,
    forms: &Forms<'a>,
    others: bool,
    count: usize,
    least: f64,
) -> Vec<&'a str> {
    let first = word.text.chars().next();
    let (same, other): (Vec<_>, Vec<_>) =
        forms.starting.iter().partition(|(letter, _)| Some(*letter) == first);
    // Those that start alike are likely to be the most like, so they are looked at first.
    let same = same.into_iter().map(|(_, blocks)| (blocks, START));
    let other = other.into_iter().filter(|_| others).map(|(_, blocks)| (blocks, 0));
    let blocks =
        same.chain(other).flat_map(|(blocks, alike)| blocks.clone().map(move |b| (b, alike)));
    let mut found: Vec<(f64, &str)> = Vec::new();
    let (mut least, mut bar) = (least, Bar::at(least));
    for (block, alike) in blocks {
        for at in forms.in_sight(block, word, &bar, alike) {
            let text = forms.texts[at];
            let likeness = word.likeness(text, forms.looks[at], &bar);
            let Some(likeness) = likeness.filter(|&likeness| likeness >= least) else { continue };
            let before = |(other, known): &(f64, &str)| {
                likeness.total_cmp(other).then((*known).cmp(text)).is_lt()
            };
            found.insert(found.partition_point(before), (likeness, text));
            found.truncate(count);
            // Once there are enough, only what is as like as the last of them is worth comparing.
            if let Some((last, _)) = found.last().filter(|_| found.len() == count)
                && *last > least
            {
                (least, bar) = (*last, Bar::at(*last));
            }
        }
    }
    found.into_iter().map(|(_, text)| text).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_best_are_the_first_of_all_in_order() {
        let texts =
            ["crown", "crowned", "corwn", "crow", "brown", "grown", "frown", "throne", "corn"];
        let mut back = texts;
        back.reverse();
        for word in ["crwon", "rown", "tail", "crownd"] {
            let mut all: Vec<(f64, &str)> = texts
                .iter()
                .map(|text| (strsim::jaro_winkler(word, text), *text))
                .filter(|(likeness, _)| *likeness >= LEAST)
                .collect();
            all.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(b.1)));
            for count in 1..=all.len().max(1) {
                let wanted: Vec<&str> = all.iter().take(count).map(|(_, text)| *text).collect();
                for forms in [Forms::of(texts.into_iter()), Forms::of(back.into_iter())] {
                    assert_eq!(best(&Word::of(word), &forms, true, count, LEAST), wanted, "{word}");
                }
            }
        }
    }

    #[test]
    fn a_glance_never_hides_a_form_that_is_like_enough() {
        let words = [
            "crown",
            "crowned",
            "corwn",
            "nape",
            "tial",
            "tail",
            "tails",
            "aaaa",
            "aab",
            "abba",
            "möwe",
            "x'y",
            "white-crowned-and-streaked-all-over",
            "crownedandstreakedallover",
        ];
        let forms = Forms::of(words.into_iter());
        let mut hidden = 0;
        for text in words {
            let word = Word::of(text);
            for least in [LEAST, MIDDLING, GOOD, 0.95] {
                let bar = Bar::at(least);
                for (at, form) in forms.texts.iter().enumerate().filter(|(_, t)| !t.is_empty()) {
                    let look = forms.looks[at];
                    let alike = if word.look.alike(look) > 0 { START } else { 0 };
                    let seen =
                        forms.in_sight(at / BLOCK, &word, &bar, alike).any(|seen| seen == at);
                    let common = word.look.common(look);
                    let near = common.min(word.near(form, look));
                    let lets = |common| bar.lets(word.look, look, common);
                    let like = strsim::jaro_winkler(text, form) >= least;
                    assert!(seen && lets(common) && lets(near) || !like, "{text} {form}");
                    assert!(seen || !lets(common), "{text} {form}");
                    hidden += usize::from(!seen);
                }
            }
        }
        assert!(hidden > 2 * words.len(), "what is not like at all is hidden: {hidden}");
    }

    #[test]
    fn letters_are_counted_for_all_forms_of_a_block() {
        let texts: Vec<String> = (0..64).map(|n| "abcdefghij"[..1 + n % 10].to_owned()).collect();
        let forms = Forms::of(texts.iter().map(String::as_str));
        let letters: Vec<usize> = Look::at("abcdefghijklmno").letters().collect();
        for least in 0..=COUNTED {
            let long = forms.texts.iter().enumerate().filter(|(_, text)| text.len() >= least);
            let wanted = long.fold(0, |all, (n, _)| all | 1u64 << n);
            assert_eq!(forms.with_letters(0, &letters, least), wanted, "{least}");
        }
    }
}
