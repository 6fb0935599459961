//! The known forms most like a word that could not be placed, for the person to choose from.
//!
//! Likeness is Jaro and Winkler's. For almost all forms a glance at their letters shows that they can't be
//! like enough, so only a few are compared; and what was found once is kept, since people use their
//! words again.

use super::joins::LONGEST_MENDED;
use super::spelling::{letter, written_kinds};
use crate::lexicon::Lexicon;
use crate::lexicon::vocabulary::normalise_into;
use rustc_hash::FxHashMap;
use std::sync::{Mutex, OnceLock};

/// The likeness from which on forms of the same first letter are enough.
const GOOD: f64 = 0.84;
/// The least likeness of a form worth telling.
const LEAST: f64 = 0.72;
/// How many answers are kept.
const MOST_KEPT: usize = 10_000;

/// A form with what can be seen of it at a glance.
#[derive(Clone, Copy, Debug)]
struct Form<'a> {
    text: &'a str,
    /// Which letters it has, and which of them more than once; none where it is not plain ASCII, since
    /// the glance is of bytes.
    letters: Option<(u32, u32)>,
}

fn letters(text: &str) -> (u32, u32) {
    text.bytes().map(letter).fold((0, 0), |(once, twice), l| (once | l, twice | once & l))
}

impl<'a> Form<'a> {
    fn new(text: &'a str) -> Self {
        Self { text, letters: text.is_ascii().then(|| letters(text)) }
    }

    fn first(&self) -> Option<char> {
        self.text.chars().next()
    }

    /// The likeness to another, if it is `least` or more.
    fn likeness(&self, other: &Self, least: f64) -> Option<f64> {
        if let (Some((mine, twice)), Some((theirs, their_twice))) = (self.letters, other.letters) {
            // Letters that the other lacks, or has once less, match nothing.
            let lacking = |all: u32, more: u32| f64::from(all.count_ones() + more.count_ones());
            let (a, b) = (self.text.len(), other.text.len());
            let mine_left = lacking(mine & !theirs, twice & !their_twice);
            let theirs_left = lacking(theirs & !mine, their_twice & !twice);
            let matched = (a as f64 - mine_left).min(b as f64 - theirs_left);
            let most = (matched / a as f64 + matched / b as f64 + 1.0) / 3.0;
            let pairs = self.text.bytes().zip(other.text.bytes()).take(4);
            let start = pairs.take_while(|(a, b)| a == b).count() as f64;
            if most + 0.1 * start * (1.0 - most) < least - 1e-9 {
                return None;
            }
        }
        Some(strsim::jaro_winkler(self.text, other.text)).filter(|&likeness| likeness >= least)
    }
}

/// Finds the nearest forms.
#[derive(Debug)]
pub struct Nearest<'a> {
    lexicon: &'a Lexicon,
    /// Worked out when the first word is asked for: the forms by their first letters.
    forms: OnceLock<FxHashMap<char, Vec<Form<'a>>>>,
    kept: Mutex<FxHashMap<(String, usize), Vec<&'a str>>>,
}

impl<'a> Nearest<'a> {
    /// Among the forms of a lexicon that misspelt words may be mended into.
    pub fn of(lexicon: &'a Lexicon) -> Self {
        Self { lexicon, forms: OnceLock::new(), kept: Mutex::default() }
    }

    fn forms(&self) -> &FxHashMap<char, Vec<Form<'a>>> {
        self.forms.get_or_init(|| {
            let mut out: FxHashMap<char, Vec<Form<'a>>> = FxHashMap::default();
            for (text, node) in self.lexicon.vocabulary.single_words() {
                let usable = written_kinds(self.lexicon, node) & self.lexicon.mendable != 0;
                if let (true, Some(first)) = (usable && text.len() >= 3, text.chars().next()) {
                    out.entry(first).or_default().push(Form::new(text));
                }
            }
            out
        })
    }

    /// At most `count` forms, the most like first; none for what is longer than any word. Those that start with
    /// the same letter come first; the others are looked at only if those are too few.
    pub fn to(&self, word: &str, count: usize) -> Vec<&'a str> {
        if word.len() > LONGEST_MENDED {
            return Vec::new();
        }
        let mut normal = String::new();
        normalise_into(word, &mut normal);
        let key = (normal, count);
        if let Ok(kept) = self.kept.lock()
            && let Some(found) = kept.get(&key)
        {
            return found.clone();
        }
        let found = self.find(&key.0, count);
        if let Ok(mut kept) = self.kept.lock() {
            if kept.len() >= MOST_KEPT {
                kept.clear();
            }
            kept.insert(key, found.clone());
        }
        found
    }

    fn find(&self, word: &str, count: usize) -> Vec<&'a str> {
        let word = Form::new(word);
        let forms = self.forms();
        let alike = word.first().and_then(|first| forms.get(&first));
        let mut out = best(&word, alike.into_iter().flatten(), count, GOOD);
        if out.len() < count {
            // Those that start alike are likely to be the most like, so they are looked at first.
            let others = forms.iter().filter(|(first, _)| Some(**first) != word.first());
            let all = alike.into_iter().chain(others.map(|(_, forms)| forms)).flatten();
            let more = best(&word, all, count, LEAST);
            let new: Vec<&str> = more.into_iter().filter(|m| !out.contains(m)).collect();
            out.extend(new);
            out.truncate(count);
        }
        out
    }
}

/// The most like of some forms. In the end their order hangs on likeness and spelling alone.
fn best<'f, 'a: 'f>(
    word: &Form<'_>,
    forms: impl Iterator<Item = &'f Form<'a>>,
    count: usize,
    least: f64,
) -> Vec<&'a str> {
    let mut found: Vec<(f64, &str)> = Vec::new();
    let mut least = least;
    for form in forms {
        let Some(likeness) = word.likeness(form, least) else { continue };
        let before = |(other, text): &(f64, &str)| {
            likeness.total_cmp(other).then(text.cmp(&form.text)).is_lt()
        };
        found.insert(found.partition_point(before), (likeness, form.text));
        found.truncate(count);
        // Once there are enough, only what is as like as the last of them is worth comparing.
        if let Some((last, _)) = found.last().filter(|_| found.len() == count) {
            least = least.max(*last);
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
        let forms: Vec<Form<'_>> = texts.map(Form::new).into();
        for word in ["crwon", "rown", "tail", "crownd"] {
            let word = Form::new(word);
            let mut all: Vec<(f64, &str)> = texts
                .iter()
                .map(|text| (strsim::jaro_winkler(word.text, text), *text))
                .filter(|(likeness, _)| *likeness >= LEAST)
                .collect();
            all.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(b.1)));
            for count in 1..=all.len().max(1) {
                let wanted: Vec<&str> = all.iter().take(count).map(|(_, text)| *text).collect();
                assert_eq!(best(&word, forms.iter(), count, LEAST), wanted, "{}", word.text);
                assert_eq!(best(&word, forms.iter().rev(), count, LEAST), wanted, "{}", word.text);
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
        for a in words {
            for b in words {
                let likeness = strsim::jaro_winkler(a, b);
                for least in [LEAST, GOOD, likeness] {
                    let wanted = (likeness >= least).then_some(likeness);
                    assert_eq!(Form::new(a).likeness(&Form::new(b), least), wanted, "{a} {b}");
                }
            }
        }
    }
}
