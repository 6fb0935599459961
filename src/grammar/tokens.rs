//! From words to terms: the longest form that starts at each word, with every reading it has.
//!
//! Hyphens between the words of a form are looked past. A word nobody knows is first tried without
//! a possessive ending, then mended where its spelling is near a form and its neighbours speak of a
//! bird; what stays unknown stays unknown.

use super::spelling::mend;
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::{KindId, KindSet};
use crate::lexicon::names::Name;
use crate::lexicon::vocabulary::{Neighbours, Node, Sense, WordId, normalise_into};
use crate::span::Span;
use crate::words::{Class, Word};

/// A word number that stands for no word.
pub const NO_WORD: WordId = WordId::MAX;

/// How often spelling is looked at, so that one mended word can support the next.
const MOST_ROUNDS: usize = 3;

/// A term found in a text, or a word or sign that is none.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Token {
    /// Where it stands.
    pub span: Span,
    /// The kinds it can be read as, its surroundings considered.
    pub kinds: KindSet,
    /// The form in the vocabulary; 0 for signs, digits and unknown words.
    pub node: Node,
    /// Its first word.
    pub first: WordId,
    /// Its last word.
    pub last: WordId,
    /// The number that digits say.
    pub number: Option<f32>,
    /// Whether its spelling was mended.
    pub mended: bool,
    /// Whether it is made of letters or digits.
    pub is_word: bool,
}

impl Token {
    /// The reading of this token as one of `kinds`, that of `region` first.
    pub fn sense<'l>(
        &self,
        lexicon: &'l Lexicon,
        kinds: KindSet,
        region: Name,
    ) -> Option<&'l Sense> {
        let wanted = self.kinds & kinds;
        let mut fallback = None;
        for sense in lexicon.vocabulary.senses(self.node) {
            if sense.kind.bit() & wanted == 0 || !self.fits_kind(sense.kind) {
                continue;
            }
            if !sense.region.is_some() || sense.region == region {
                return Some(sense);
            }
            fallback = fallback.or(Some(sense));
        }
        fallback
    }

    const fn fits_kind(&self, kind: KindId) -> bool {
        self.kinds & kind.bit() != 0
    }
}

/// What is looked up often, once.
#[derive(Clone, Copy, Debug)]
pub struct Basics {
    signs: [KindSet; Class::SIGNS.len()],
    unknown: KindSet,
    number: KindSet,
}

impl Basics {
    /// The built-in kinds of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let bit = |name: &str| lexicon.kinds.find(name).map_or(0, KindId::bit);
        let mut signs = [0; Class::SIGNS.len()];
        for (slot, class) in signs.iter_mut().zip(Class::SIGNS) {
            *slot = bit(class.name());
        }
        Self {
            signs,
            unknown: bit(crate::lexicon::kinds::UNKNOWN),
            number: bit(Class::Digits.name()),
        }
    }

    /// The kinds of a class of signs.
    pub fn sign(&self, class: Class) -> KindSet {
        Class::SIGNS.iter().position(|&c| c == class).map_or(0, |i| self.signs[i])
    }

    /// The kind of unknown words.
    pub const fn unknown(&self) -> KindSet {
        self.unknown
    }
}

/// Reads `words` of `text` into `out`, which is emptied first.
pub fn tokens_into(
    text: &str,
    words: &[Word],
    lexicon: &Lexicon,
    basics: &Basics,
    out: &mut Vec<Token>,
) {
    let mut ids = Vec::with_capacity(words.len());
    look_up(text, words, lexicon, &mut ids);
    group(text, words, &ids, lexicon, basics, out);
    let mut mended_spans: Vec<Span> = Vec::new();
    for _ in 0..MOST_ROUNDS {
        if !out.iter().any(|t| t.kinds == basics.unknown) {
            break;
        }
        let mended = mend(text, lexicon, basics, out);
        if mended.is_empty() {
            break;
        }
        // A mended word may belong to a longer form and may support its neighbours, so the words
        // are grouped again and looked at once more.
        for &(at, word) in &mended {
            let span = out[at].span;
            ids[words.partition_point(|w| w.span.start < span.start)] = word;
            mended_spans.push(span);
        }
        group(text, words, &ids, lexicon, basics, out);
    }
    for token in out.iter_mut().filter(|_| !mended_spans.is_empty()) {
        let holds = |s: &Span| token.span.start <= s.start && s.end <= token.span.end;
        token.mended = mended_spans.iter().any(holds);
    }
}

/// Groups words into the longest forms.
fn group(
    text: &str,
    words: &[Word],
    ids: &[WordId],
    lexicon: &Lexicon,
    basics: &Basics,
    out: &mut Vec<Token>,
) {
    out.clear();
    let mut at = 0;
    while at < words.len() {
        let (token, next) = longest(text, words, ids, at, lexicon, basics);
        out.push(token);
        at = next;
    }
    apply_contexts(lexicon, out);
}

/// The number of each word, [`NO_WORD`] for signs and unknown words.
fn look_up(text: &str, words: &[Word], lexicon: &Lexicon, ids: &mut Vec<WordId>) {
    let vocabulary = &lexicon.vocabulary;
    let mut scratch = String::new();
    for word in words {
        if matches!(word.class, Class::Letters | Class::Digits | Class::Symbol | Class::Question) {
            normalise_into(word.span.of(text), &mut scratch);
            let known = vocabulary
                .word(&scratch)
                .or_else(|| scratch.strip_suffix("'s").and_then(|stem| vocabulary.word(stem)));
            ids.push(known.unwrap_or(NO_WORD));
        } else {
            ids.push(NO_WORD);
        }
    }
}

fn longest(
    text: &str,
    words: &[Word],
    ids: &[WordId],
    at: usize,
    lexicon: &Lexicon,
    basics: &Basics,
) -> (Token, usize) {
    let vocabulary = &lexicon.vocabulary;
    let all = KindSet::MAX;
    let mut best = walk(words, ids, at, ids[at], all, lexicon);
    // A bent verb starts the forms of the verb it is bent from, too.
    if ids[at] != NO_WORD {
        let base = vocabulary.base(ids[at]);
        if base != ids[at] {
            let bent = walk(words, ids, at, base, vocabulary.verbs, lexicon);
            if bent.is_some_and(|b| best.is_none_or(|own| b.end > own.end)) {
                best = bent;
            }
        }
    }
    let word = words[at];
    let mut token = Token {
        span: word.span,
        kinds: 0,
        node: 0,
        first: ids[at],
        last: ids[at],
        number: None,
        mended: false,
        is_word: matches!(word.class, Class::Letters | Class::Digits),
    };
    if word.class == Class::Digits {
        token.kinds = basics.number;
        token.number = word.span.of(text).replace(',', ".").parse().ok();
    }
    if let Some(form) = best {
        token.span = word.span.join(words[form.end - 1].span);
        // A sign that is also a term ("?" as a doubt) stays the sign it is.
        token.kinds |= form.kinds | basics.sign(word.class);
        token.node = form.node;
        token.last = ids[form.end - 1];
        return (token, form.end);
    }
    if token.kinds == 0 {
        token.kinds = match word.class {
            Class::Letters => basics.unknown,
            class => basics.sign(class),
        };
    }
    (token, at + 1)
}

/// A form found in a text.
#[derive(Clone, Copy)]
struct Form {
    node: Node,
    /// One past its last word.
    end: usize,
    kinds: KindSet,
}

/// The longest form that starts at `at`, its first word taken to be `first`, of some kind in `among`.
fn walk(
    words: &[Word],
    ids: &[WordId],
    at: usize,
    first: WordId,
    among: KindSet,
    lexicon: &Lexicon,
) -> Option<Form> {
    let vocabulary = &lexicon.vocabulary;
    if first == NO_WORD {
        return None;
    }
    let mut node = vocabulary.step(0, first);
    let mut best = None;
    let mut i = at + 1;
    while node != 0 {
        let kinds = vocabulary.kinds(node) & among;
        if kinds != 0 {
            best = Some(Form { node, end: i, kinds });
        }
        while words.get(i).is_some_and(|w| w.class == Class::Hyphen) {
            i += 1;
        }
        match ids.get(i) {
            Some(&next) if next != NO_WORD => node = vocabulary.step(node, next),
            _ => break,
        }
        i += 1;
    }
    best
}

/// Takes away the readings that their surroundings rule out.
fn apply_contexts(lexicon: &Lexicon, tokens: &mut [Token]) {
    for i in 0..tokens.len() {
        let senses = lexicon.vocabulary.senses(tokens[i].node);
        if !senses.iter().any(|s| s.bound) {
            continue;
        }
        let before = i.checked_sub(1).map(|b| (tokens[b].kinds, tokens[b].last));
        let after = tokens.get(i + 1).map(|t| (t.kinds, t.first));
        let near = |list: &Neighbours, side: Option<(KindSet, WordId)>| {
            side.is_some_and(|(kinds, word)| list.hold(kinds, word))
        };
        let had = tokens[i].kinds;
        let mut kinds: KindSet = had & !lexicon.vocabulary.kinds(tokens[i].node);
        for sense in senses {
            let context = &lexicon.vocabulary.terms[sense.term as usize].context;
            let out = sense.bound
                && (near(&context.unless_after, before)
                    || near(&context.unless_before, after)
                    || context.only_after.as_ref().is_some_and(|list| !near(list, before))
                    || context.only_before.as_ref().is_some_and(|list| !near(list, after)));
            if !out {
                kinds |= sense.kind.bit();
            }
        }
        tokens[i].kinds = kinds & had;
    }
}
