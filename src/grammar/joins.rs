//! Words run together ("withwhite") and words written as two ("chest nut").
//!
//! A word nobody knows is parted where both halves are known and speak of a bird's marks, or one
//! does and the other is a word of grammar. Two words are joined where the whole is a word for a
//! mark and one of the halves is none that matters.

use super::known::Known;
use super::remembered::Remembered;
use super::repair::{Repair, Why};
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::KindSet;
use crate::lexicon::vocabulary::{WordId, normalise_into};
use crate::span::Span;
use crate::words::{Class, Word};

/// The shortest word that is parted, and the shortest whole of two words.
const LEAST_LETTERS: usize = 6;
/// The longest word that is mended, in bytes. No word for a bird's marks comes near it, and looking for one costs
/// as the square of the length.
pub(super) const LONGEST_MENDED: usize = 64;
/// The shortest half.
const LEAST_HALF: usize = 2;

/// Where a word falls into two known ones, and which those are.
pub type Halves = Option<(usize, WordId, WordId)>;

/// Parts and joins words; `known` and `words` stay in step. Of two halves one must be of a kind in `worth`.
pub fn mend_joins(
    text: &str,
    words: &mut Vec<Word>,
    known: &mut Vec<Known>,
    lexicon: &Lexicon,
    worth: KindSet,
    parted_before: &mut Remembered<Halves>,
    repairs: &mut Vec<Repair>,
) {
    // A word that is none by itself is unknown, or half of something: "nut".
    if !known.iter().zip(words.iter()).any(|(known, w)| known.odd && is_letters(w)) {
        return;
    }
    let mut scratch = String::new();
    let mut i = 0;
    while i < words.len() {
        if !is_letters(&words[i]) {
            i += 1;
            continue;
        }
        if let Some((span, whole)) = joined(text, words, known, i, lexicon, &mut scratch) {
            let read_as = lexicon.vocabulary.word_text(whole).to_owned();
            repairs.push(Repair { span, read_as, why: Why::Joined });
            words[i].span = span;
            known[i] = Known::of(lexicon, whole);
            words.remove(i + 1);
            known.remove(i + 1);
        } else if !known[i].starts
            && let written = words[i].span.of(text)
            && may_part(written)
            && let Some((at, first, second)) =
                parted_before.of(written, || parted(written, lexicon, worth, &mut scratch))
        {
            let span = words[i].span;
            let text_of = |id| lexicon.vocabulary.word_text(id);
            let read_as = format!("{} {}", text_of(first), text_of(second));
            repairs.push(Repair { span, read_as, why: Why::Split });
            words[i].span = Span::new(span.start, span.start + at);
            known[i] = Known::of(lexicon, first);
            let rest = Word { span: Span::new(span.start + at, span.end), class: words[i].class };
            words.insert(i + 1, rest);
            known.insert(i + 1, Known::of(lexicon, second));
            i += 1;
        }
        i += 1;
    }
}

const fn is_letters(word: &Word) -> bool {
    matches!(word.class, Class::Letters)
}

/// The whole of the word at `i` and the next, if they should be one.
fn joined(
    text: &str,
    words: &[Word],
    known: &[Known],
    i: usize,
    lexicon: &Lexicon,
    scratch: &mut String,
) -> Option<(Span, WordId)> {
    let next = words.get(i + 1).filter(|w| is_letters(w))?;
    let (a, b) = (words[i].span, next.span);
    let length = whole_len(a, b);
    if b.start != a.end + 1 || !(LEAST_LETTERS..=LONGEST_MENDED).contains(&length) {
        return None;
    }
    if !known[i].says_nothing && !known[i + 1].says_nothing {
        return None;
    }
    let vocabulary = &lexicon.vocabulary;
    if vocabulary.step(vocabulary.step(0, known[i].id), known[i + 1].id) != 0 {
        return None;
    }
    let whole = [a.of(text), b.of(text)].concat();
    normalise_into(&whole, scratch);
    let id = lexicon.vocabulary.word(scratch)?;
    let kinds = lexicon.vocabulary.kinds(lexicon.vocabulary.step(0, id));
    (kinds & (lexicon.mendable | lexicon.named) != 0).then_some((Span::new(a.start, b.end), id))
}

/// Whether a word is neither too short nor too long to be parted.
fn may_part(word: &str) -> bool {
    word.is_ascii() && (LEAST_LETTERS..=LONGEST_MENDED).contains(&word.len())
}

/// Where a word nobody knows falls into two known ones.
fn parted(word: &str, lexicon: &Lexicon, worth: KindSet, scratch: &mut String) -> Halves {
    let vocabulary = &lexicon.vocabulary;
    let mut kinds_of = |part: &str| {
        normalise_into(part, scratch);
        let id = vocabulary.word(scratch)?;
        let kinds = vocabulary.kinds(vocabulary.step(0, id)) & !lexicon.ordinary;
        (kinds != 0).then_some((id, kinds))
    };
    let mut best: Option<(usize, usize, WordId, WordId)> = None;
    for at in LEAST_HALF..=word.len() - LEAST_HALF {
        let Some((first, a)) = kinds_of(&word[..at]) else { continue };
        let Some((second, b)) = kinds_of(&word[at..]) else { continue };
        let marks = [a, b].iter().filter(|k| **k & worth != 0).count();
        // Of two short words at least one must be long enough not to be there by chance.
        let long = at.max(word.len() - at) >= 4;
        let short_mark = (at < 3 && a & lexicon.mendable != 0)
            || (word.len() - at < 3 && b & lexicon.mendable != 0);
        if marks == 0 || !long || short_mark {
            continue;
        }
        if best.is_none_or(|(m, ..)| marks > m) {
            best = Some((marks, at, first, second));
        }
    }
    best.map(|(_, at, first, second)| (at, first, second))
}

const fn whole_len(a: Span, b: Span) -> usize {
    a.end - a.start + b.end - b.start
}
