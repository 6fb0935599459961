//! What the vocabulary says of a word by itself, kept for words met before.
//!
//! A few hundred words make up most of all notes. To look one up takes a walk through five tables, whose lines
//! no cache of the processor keeps; what comes of it fits into one line here. It never changes a reading.

use super::tokens::NO_WORD;
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::KindSet;
use crate::lexicon::vocabulary::{Node, WordId, among, normalise_into};
use crate::span::Span;

/// What is known of a word by itself.
#[derive(Clone, Copy, Debug)]
pub struct Known {
    /// The kinds of the form that it is alone; 0 if it is none.
    pub kinds: KindSet,
    /// The words with which longer forms may go on, as in [`crate::lexicon::vocabulary::among`].
    goes_on: u64,
    /// Its number, or [`NO_WORD`].
    pub id: WordId,
    /// The form that it is alone.
    pub node: Node,
    /// Where forms that start with it begin; 0 where none does.
    pub first: Node,
    /// Whether what stands beside it matters to its readings.
    pub bound: bool,
    /// Whether some form starts with it, or with the verb it is bent from.
    pub starts: bool,
    /// Whether it is no form by itself, bent or not.
    pub odd: bool,
    /// Whether alone it says nothing of a bird.
    pub says_nothing: bool,
}

impl Known {
    /// A sign, or a word nobody knows.
    pub const NONE: Self = Self {
        kinds: 0,
        goes_on: 0,
        id: NO_WORD,
        node: 0,
        first: 0,
        bound: false,
        starts: false,
        odd: true,
        says_nothing: true,
    };

    /// What is known of a word.
    pub fn of(lexicon: &Lexicon, id: WordId) -> Self {
        if id == NO_WORD {
            return Self::NONE;
        }
        let vocabulary = &lexicon.vocabulary;
        let base = vocabulary.base(id);
        let own = vocabulary.step(0, id);
        // A bent verb starts the forms of the verb it is bent from, too.
        let bent = vocabulary.step(0, base);
        let alone = vocabulary.kinds(own) | vocabulary.kinds(bent);
        let (node, kinds) = match (vocabulary.kinds(own), vocabulary.kinds(bent)) {
            (0, kinds) if kinds & vocabulary.verbs != 0 => (bent, kinds & vocabulary.verbs),
            (0, _) => (0, 0),
            (kinds, _) => (own, kinds),
        };
        let starts = vocabulary.starts_form(id) || vocabulary.starts_form(base);
        Self {
            kinds,
            goes_on: vocabulary.goes_on(own) | vocabulary.goes_on(bent),
            id,
            node,
            first: own,
            bound: vocabulary.senses(node).iter().any(|s| s.bound()),
            starts,
            odd: alone == 0,
            says_nothing: !starts || alone & !lexicon.ordinary == 0,
        }
    }

    /// Whether some form may start with these two words; if it may not, it does not.
    pub const fn may_go_on(&self, next: &Self) -> bool {
        next.id != NO_WORD && self.goes_on & among(next.id) != 0
    }
}

/// The longest word that is kept.
const LONGEST: usize = 15;
/// How many are, each in its place until another takes it.
const MOST: usize = 4_096;

/// Words met before, as they are written.
#[derive(Clone, Debug)]
pub struct Lookup {
    kept: Box<[(u128, Known)]>,
    lower: String,
}

impl Default for Lookup {
    fn default() -> Self {
        Self { kept: vec![(0, Known::NONE); MOST].into(), lower: String::new() }
    }
}

impl Lookup {
    /// What is known of the word at `span`.
    #[inline]
    pub fn word(&mut self, text: &str, span: Span, lexicon: &Lexicon) -> Known {
        let Some(key) = key(text.as_bytes(), span) else {
            return self.look_up(span.of(text), lexicon);
        };
        let place = place(key);
        if self.kept[place].0 != key {
            self.kept[place] = (key, self.look_up(span.of(text), lexicon));
        }
        self.kept[place].1
    }

    #[cold]
    fn look_up(&mut self, written: &str, lexicon: &Lexicon) -> Known {
        let vocabulary = &lexicon.vocabulary;
        normalise_into(written, &mut self.lower);
        let form = self.lower.as_str();
        let known = vocabulary.word(form).or_else(|| vocabulary.word(form.strip_suffix("'s")?));
        Known::of(lexicon, known.unwrap_or(NO_WORD))
    }
}

/// A short word and its length as one number.
#[inline]
fn key(text: &[u8], span: Span) -> Option<u128> {
    let length = span.end - span.start;
    if length > LONGEST {
        return None;
    }
    let bytes = match text[span.start..].first_chunk::<16>() {
        Some(&bytes) => u128::from_le_bytes(bytes) & !(u128::MAX << (8 * length)),
        None => {
            let mut bytes = [0; 16];
            bytes[..length].copy_from_slice(&text[span.start..span.end]);
            u128::from_le_bytes(bytes)
        }
    };
    Some(bytes | (length as u128) << 120)
}

/// Where a word is kept.
#[inline]
fn place(key: u128) -> usize {
    let folded = (key as u64).wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ (key >> 64) as u64;
    (folded.wrapping_mul(0xff51_afd7_ed55_8ccd) >> 48) as usize & (MOST - 1)
}
