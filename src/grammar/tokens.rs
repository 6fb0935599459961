//! From words to terms: the longest form that starts at each word, with every reading it has.
//!
//! Hyphens between the words of a form are looked past. A word nobody knows is first tried without
//! a possessive ending, then mended where its spelling is near a form and its neighbours speak of a
//! bird; what stays unknown stays unknown.

use super::joins::{Halves, mend_joins};
use super::known::{Known, Lookup};
use super::remembered::Remembered;
use super::repair::{Repair, Why};
use super::spelling::{Forms, mend};
use super::spoken::{Speech, numbers, said_twice, taken_back};
use crate::lexicon::Lexicon;
use crate::lexicon::context::Neighbours;
use crate::lexicon::kinds::{KindId, KindSet};
use crate::lexicon::names::Name;
use crate::lexicon::sense::Sense;
use crate::lexicon::vocabulary::{Node, WordId};
use crate::span::Span;
use crate::words::{Class, Word, words_into};
use std::sync::OnceLock;

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
    /// Why it is read otherwise than it stands, if it is.
    pub why: Option<Why>,
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
#[derive(Clone, Debug)]
pub struct Basics {
    /// By class; none for letters and digits.
    signs: [KindSet; Class::SIGNS.len() + 2],
    unknown: KindSet,
    number: KindSet,
    all_signs: KindSet,
    speech: Speech,
    /// Worked out when the first unknown word comes.
    forms: OnceLock<Forms>,
}

impl Basics {
    /// The built-in kinds of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let bit = |name: &str| lexicon.kinds.find(name).map_or(0, KindId::bit);
        let mut signs = [0; Class::SIGNS.len() + 2];
        for class in Class::SIGNS {
            signs[class as usize] = bit(class.name());
        }
        Self {
            signs,
            unknown: bit(crate::lexicon::kinds::UNKNOWN),
            number: bit(Class::Digits.name()),
            all_signs: signs.iter().fold(0, |set, s| set | s),
            speech: Speech::of(lexicon),
            forms: OnceLock::new(),
        }
    }

    /// The kinds of a class of signs.
    pub const fn sign(&self, class: Class) -> KindSet {
        self.signs[class as usize]
    }

    /// The forms that misspelt words may be mended into.
    pub fn forms(&self, lexicon: &Lexicon) -> &Forms {
        self.forms.get_or_init(|| Forms::of(lexicon))
    }

    /// The kind of unknown words.
    pub const fn unknown(&self) -> KindSet {
        self.unknown
    }
}

/// Space for making tokens in.
#[derive(Clone, Debug, Default)]
pub struct Scratch {
    words: Vec<Word>,
    /// What is known of each.
    known: Vec<Known>,
    lookup: Lookup,
    limits: Vec<(usize, usize)>,
    /// Tokens whose readings hang on what stands beside them.
    bound: Vec<usize>,
    /// What words nobody knows were mended into, and how they were parted.
    mended: Remembered<Option<WordId>>,
    parted: Remembered<Halves>,
}

/// Reads `text` into `out`, which is emptied first; gives back what was changed on the way.
pub fn tokens_into(
    text: &str,
    lexicon: &Lexicon,
    basics: &Basics,
    scratch: &mut Scratch,
    out: &mut Vec<Token>,
) -> Vec<Repair> {
    let Scratch { words, known, lookup, limits, bound, mended: mended_before, parted } = scratch;
    let mut repairs = Vec::new();
    words_into(text, words);
    known.clear();
    known.extend(words.iter().map(|word| match word.class {
        Class::Letters | Class::Digits | Class::Symbol | Class::Question => {
            lookup.word(text, word.span, lexicon)
        }
        _ => Known::NONE,
    }));
    let worth = lexicon.mendable | basics.number;
    mend_joins(text, words, known, lexicon, worth, parted, &mut repairs);
    let grouping = Grouping { text, lexicon, basics };
    grouping.group(words, known, limits, bound, out);
    let mut mended_spans: Vec<Span> = Vec::new();
    for _ in 0..MOST_ROUNDS {
        if !out.iter().any(|t| t.kinds == basics.unknown) {
            break;
        }
        let mended = mend(text, lexicon, basics, out, mended_before);
        if mended.is_empty() {
            break;
        }
        // A mended word may belong to a longer form and may support its neighbours, so the words
        // are grouped again and looked at once more.
        for &(at, word) in &mended {
            let span = out[at].span;
            let at = words.partition_point(|w| w.span.start < span.start);
            known[at] = Known::of(lexicon, word);
            mended_spans.push(span);
        }
        grouping.group(words, known, limits, bound, out);
    }
    for token in out.iter_mut().filter(|_| !mended_spans.is_empty()) {
        let holds = |s: &Span| token.span.start <= s.start && s.end <= token.span.end;
        if mended_spans.iter().any(holds) {
            token.why = Some(Why::Spelling);
        }
    }
    numbers(lexicon, &basics.speech, out);
    said_twice(&basics.speech, out);
    taken_back(lexicon, &basics.speech, out);
    repairs.extend(out.iter().filter_map(|t| {
        let why = why(basics, t)?;
        Some(Repair { span: t.span, read_as: read_as(lexicon, basics, t), why })
    }));
    repairs.sort_by_key(|r| r.span);
    repairs
}

/// Why a token is read otherwise than it stands: signs said aloud are told as well.
fn why(basics: &Basics, token: &Token) -> Option<Why> {
    let spoken = token.is_word && token.node != 0 && token.kinds & basics.all_signs != 0;
    token.why.or(spoken.then_some(Why::Sign))
}

/// What a token is read as, for people.
fn read_as(lexicon: &Lexicon, basics: &Basics, token: &Token) -> String {
    let vocabulary = &lexicon.vocabulary;
    let sense = vocabulary.senses(token.node).iter().find(|s| s.kind.bit() & token.kinds != 0);
    let term = sense.map(|s| &vocabulary.terms[s.term as usize]);
    let id = || term.map_or(String::new(), |t| lexicon.names.text(t.id).replace('-', " "));
    match why(basics, token) {
        Some(why) if why.leaves_out() => String::new(),
        Some(Why::Number) => token.number.map_or(String::new(), |n| n.to_string()),
        Some(Why::Sign) => lexicon
            .kinds
            .names_of(token.kinds & basics.all_signs)
            .first()
            .copied()
            .unwrap_or("")
            .to_owned(),
        Some(Why::Spelling) if token.first == token.last && token.first != NO_WORD => {
            vocabulary.word_text(token.first).to_owned()
        }
        _ => id(),
    }
}

/// What words are grouped with.
#[derive(Clone, Copy)]
struct Grouping<'a> {
    text: &'a str,
    lexicon: &'a Lexicon,
    basics: &'a Basics,
}

impl Grouping<'_> {
    /// Groups words into the longest forms. A form of several words whose readings are all ruled out by
    /// what stands beside it gives way to a shorter one.
    fn group(
        self,
        words: &[Word],
        known: &[Known],
        limits: &mut Vec<(usize, usize)>,
        bound: &mut Vec<usize>,
        out: &mut Vec<Token>,
    ) {
        limits.clear();
        for _ in 0..MOST_ROUNDS {
            out.clear();
            bound.clear();
            let mut at = 0;
            while at < words.len() {
                let most = limits.iter().find(|l| l.0 == at).map_or(words.len(), |l| l.1);
                let form = self.longest(&words[..most], &known[..most], at);
                if form.bound {
                    bound.push(out.len());
                }
                out.push(self.token(words, known, at, form));
                at = form.end;
            }
            apply_contexts(self.lexicon, bound, out);
            let before = limits.len();
            for token in out.iter().filter(|t| t.kinds == 0) {
                let start = words.partition_point(|w| w.span.start < token.span.start);
                let end = words.partition_point(|w| w.span.end <= token.span.end);
                if end > start + 1 {
                    limits.retain(|l| l.0 != start);
                    limits.push((start, end - 1));
                }
            }
            if limits.len() == before {
                break;
            }
        }
    }

    /// The longest form that starts at a word; where there is none, the word by itself.
    fn longest(self, words: &[Word], known: &[Known], at: usize) -> Form {
        let first = &known[at];
        let alone = Form { node: first.node, end: at + 1, kinds: first.kinds, bound: first.bound };
        let Some(next) = known.get(at + 1) else { return alone };
        if !first.may_go_on(next) && words[at + 1].class != Class::Hyphen {
            return alone;
        }
        let own = self.walk(words, known, at, first.first, KindSet::MAX);
        // A bent verb starts the forms of the verb it is bent from, too.
        let base = self.lexicon.vocabulary.base(first.id);
        let bent = if base == first.id {
            None
        } else {
            let base = self.lexicon.vocabulary.step(0, base);
            self.walk(words, known, at, base, self.lexicon.vocabulary.verbs)
        };
        match (own, bent) {
            (Some(own), Some(bent)) if bent.end > own.end => bent,
            (Some(own), _) => own,
            (None, Some(bent)) => bent,
            (None, None) => alone,
        }
    }

    /// The token of a form that was found.
    fn token(self, words: &[Word], known: &[Known], at: usize, form: Form) -> Token {
        let word = words[at];
        let mut token = Token {
            span: word.span,
            kinds: 0,
            node: 0,
            first: known[at].id,
            last: known[at].id,
            number: None,
            why: None,
            is_word: matches!(word.class, Class::Letters | Class::Digits),
        };
        if word.class == Class::Digits {
            token.kinds = self.basics.number;
            token.number = word.span.of(self.text).replace(',', ".").parse().ok();
        }
        if form.kinds != 0 {
            token.span = word.span.join(words[form.end - 1].span);
            // A sign that is also a term ("?" as a doubt) stays the sign it is.
            token.kinds |= form.kinds | self.basics.sign(word.class);
            token.node = form.node;
            token.last = known[form.end - 1].id;
        } else if token.kinds == 0 {
            token.kinds = match word.class {
                Class::Letters => self.basics.unknown,
                class => self.basics.sign(class),
            };
        }
        token
    }

    /// The longest form that starts at `at` with a word that leads to `first`, of some kind in `among`.
    fn walk(
        self,
        words: &[Word],
        known: &[Known],
        at: usize,
        first: Node,
        among: KindSet,
    ) -> Option<Form> {
        let vocabulary = &self.lexicon.vocabulary;
        let mut node = first;
        let mut best = None;
        let mut i = at + 1;
        while node != 0 {
            let kinds = vocabulary.kinds(node) & among;
            if kinds != 0 {
                best = Some((node, i, kinds));
            }
            while words.get(i).is_some_and(|w| w.class == Class::Hyphen) {
                i += 1;
            }
            match known.get(i) {
                Some(next) if next.id != NO_WORD => node = vocabulary.step(node, next.id),
                _ => break,
            }
            i += 1;
        }
        let (node, end, kinds) = best?;
        let bound = vocabulary.senses(node).iter().any(|s| s.bound());
        Some(Form { node, end, kinds, bound })
    }
}

/// A form found in a text.
#[derive(Clone, Copy)]
struct Form {
    node: Node,
    /// One past its last word.
    end: usize,
    /// None where there is no form.
    kinds: KindSet,
    /// Whether its readings hang on what stands beside it.
    bound: bool,
}

/// Takes away the readings that their surroundings rule out, of the tokens whose readings hang on them.
fn apply_contexts(lexicon: &Lexicon, bound: &[usize], tokens: &mut [Token]) {
    for &i in bound {
        let senses = lexicon.vocabulary.senses(tokens[i].node);
        let before = i.checked_sub(1).map(|b| (tokens[b].kinds, tokens[b].last));
        let after = tokens.get(i + 1).map(|t| (t.kinds, t.first));
        let near = |list: &Neighbours, side: Option<(KindSet, WordId)>| {
            side.is_some_and(|(kinds, word)| list.hold(kinds, word))
        };
        let had = tokens[i].kinds;
        let mut heard: KindSet = 0;
        let mut kinds: KindSet = had & !lexicon.vocabulary.kinds(tokens[i].node);
        for sense in senses {
            let context = lexicon.vocabulary.context(sense);
            let out = sense.bound()
                && (near(&context.unless_after, before)
                    || near(&context.unless_before, after)
                    || context.only_after.as_ref().is_some_and(|list| !near(list, before))
                    || context.only_before.as_ref().is_some_and(|list| !near(list, after)));
            if sense.heard() {
                let asked =
                    near(&context.heard_after, before) || near(&context.heard_before, after);
                heard |= if asked && !out { sense.kind.bit() } else { 0 };
            } else if !out {
                kinds |= sense.kind.bit();
            }
        }
        tokens[i].kinds = kinds & had;
        // Where the words beside it ask for it, the word that was meant stands in place of the one
        // that was written.
        if heard & had != 0 {
            tokens[i].kinds = heard & had;
            tokens[i].why = Some(Why::Sound);
        }
    }
}
