//! What dictation leaves in a text: numbers in several words, things said twice, things taken back.

use super::tokens::{NO_WORD, Token};
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::{Force, KindSet};
use crate::lexicon::record::Slot;
use crate::lexicon::vocabulary::WordId;

use super::repair::Why;

/// The longest stretch that is compared when something is said twice or put right.
const MOST_WORDS: usize = 4;

/// The kinds and words that matter here, looked up once.
#[derive(Clone, Debug)]
pub struct Speech {
    number: KindSet,
    /// Kinds that say something of a bird.
    content: KindSet,
    /// Kinds whose repetition means something: sounds, degrees.
    repeatable: KindSet,
    correction: KindSet,
    no: WordId,
    comma: KindSet,
    part: KindSet,
    be: KindSet,
    /// Small words that may stand between what is taken back and what is put in its place.
    small: KindSet,
    signs: KindSet,
    hundred: WordId,
    point: WordId,
    and: KindSet,
}

impl Speech {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let kind = |name: &str| lexicon.kind_set(name);
        let word = |text: &str| lexicon.vocabulary.word(text).unwrap_or(NO_WORD);
        let says = |slot: Option<Slot>| slot.is_some_and(|s| s != Slot::Against);
        let voices = lexicon.kinds.set_where(|k| k.echoes);
        Self {
            number: kind("number"),
            content: lexicon.kinds.set_where(|k| says(k.slot)) | kind("number") | kind("bird-word"),
            repeatable: voices | lexicon.kinds.skipped | kind("number"),
            correction: lexicon.kinds.set_where(|k| k.force == Force::Retracts),
            no: word("no"),
            comma: kind("comma"),
            part: kind("area"),
            be: kind("be"),
            small: kind("det") | kind("be") | kind("have") | kind("hedge") | lexicon.kinds.skipped,
            signs: crate::words::Class::SIGNS
                .iter()
                .filter(|c| !matches!(c, crate::words::Class::Hyphen))
                .fold(0, |set, c| set | kind(c.name())),
            hundred: word("hundred"),
            point: word("point"),
            and: kind("and"),
        }
    }
}

/// Puts numbers said in several words together: "twenty three", "a hundred and ten", "two point five".
pub fn numbers(lexicon: &Lexicon, speech: &Speech, tokens: &mut Vec<Token>) {
    let is_number = |t: &Token| t.kinds & speech.number != 0 && t.is_word;
    let spoken = |t: &Token| is_number(t) && t.node != 0;
    if tokens
        .windows(2)
        .all(|w| !spoken(&w[0]) || !(is_number(&w[1]) || w[1].first == speech.point))
    {
        return;
    }
    let value = |t: &Token| {
        let sense =
            lexicon.vocabulary.senses(t.node).iter().find(|s| s.kind.bit() == speech.number);
        t.number.or_else(|| lexicon.vocabulary.record(sense?).number)
    };
    let mut i = 0;
    while i < tokens.len() {
        if let Some((whole, end)) = number_from(speech, tokens, i, value)
            && end > i + 1
        {
            tokens[i].span = tokens[i].span.join(tokens[end - 1].span);
            tokens[i].number = Some(whole);
            tokens[i].kinds = speech.number;
            tokens[i].last = tokens[end - 1].last;
            tokens[i].why = Some(Why::Number);
            tokens.drain(i + 1..end);
        }
        i += 1;
    }
}

/// The number that starts at `i`, and where it ends.
fn number_from(
    speech: &Speech,
    tokens: &[Token],
    i: usize,
    value: impl Fn(&Token) -> Option<f32>,
) -> Option<(f32, usize)> {
    let number = |at: usize| {
        let token = tokens.get(at).filter(|t| t.kinds & speech.number != 0 && t.is_word)?;
        value(token)
    };
    let below_hundred = |at: usize| -> Option<(f32, usize)> {
        let tens = number(at)?;
        match number(at + 1) {
            Some(ones) if (20.0..100.0).contains(&tens) && tens % 10.0 == 0.0 && ones < 10.0 => {
                Some((tens + ones, at + 2))
            }
            _ => Some((tens, at + 1)),
        }
    };
    let (mut whole, mut end) = below_hundred(i)?;
    if tokens.get(end).is_some_and(|t| t.first == speech.hundred && t.last == speech.hundred) {
        whole *= 100.0;
        end += 1;
        let over = usize::from(tokens.get(end).is_some_and(|t| t.kinds & speech.and != 0));
        if let Some((rest, after)) = below_hundred(end + over).filter(|(rest, _)| *rest < 100.0) {
            whole += rest;
            end = after;
        }
    }
    if tokens.get(end).is_some_and(|t| t.first == speech.point)
        && let Some(tenths) = number(end + 1).filter(|n| *n < 10.0)
    {
        return Some((whole + tenths / 10.0, end + 2));
    }
    Some((whole, end))
}

/// Leaves out the first of two like stretches: "with a with a cocked tail".
pub fn said_twice(speech: &Speech, tokens: &mut [Token]) {
    let usable = |t: &Token| t.is_word && t.first != NO_WORD && t.kinds & speech.repeatable == 0;
    let mut i = 0;
    while i < tokens.len() {
        let near = &tokens[i + 1..tokens.len().min(i + 1 + MOST_WORDS)];
        if !near.iter().any(|t| t.first == tokens[i].first) || !usable(&tokens[i]) {
            i += 1;
            continue;
        }
        let twice = (1..=MOST_WORDS).rev().find(|&n| {
            i + 2 * n <= tokens.len()
                && (i..i + n).all(|a| {
                    let (one, other) = (&tokens[a], &tokens[a + n]);
                    one.first == other.first && one.last == other.last && usable(one)
                })
        });
        match twice {
            Some(n) => {
                tokens[i..i + n].iter_mut().for_each(|t| t.why = Some(Why::SaidTwice));
                i += n;
            }
            None => i += 1,
        }
    }
}

/// Leaves out what is put right by the words behind it: "yellow, no wait, orange". A bare "no" before a part that
/// only some birds have denies that part.
pub fn taken_back(lexicon: &Lexicon, speech: &Speech, tokens: &mut [Token]) {
    let unpunctuated =
        |tokens: &[Token]| tokens.iter().all(|t| t.is_word || t.kinds & speech.signs == 0);
    for at in 0..tokens.len() {
        if tokens[at].why.is_some() {
            continue;
        }
        let plain = tokens[at].kinds & speech.correction != 0;
        // A bare "no" puts right only in speech, which has no commas, and between like things.
        let is_no = tokens[at].first == speech.no && tokens[at].last == speech.no;
        let bare = !plain
            && is_no
            && unpunctuated(tokens)
            && !tokens.get(at + 1).is_some_and(|next| only_some_have(lexicon, speech, next));
        if !plain && !bare {
            continue;
        }
        let Some(count) = put_right(speech, tokens, at, plain) else { continue };
        let upto = before(speech, tokens, at, plain);
        for token in &mut tokens[upto - count..=at] {
            token.why = Some(Why::TakenBack);
        }
    }
}

/// Whether a word names a part that only some birds have: a crest, a wing bar.
fn only_some_have(lexicon: &Lexicon, speech: &Speech, token: &Token) -> bool {
    let senses = lexicon.vocabulary.senses(token.node).iter();
    let mut areas = senses.filter(|s| s.kind.bit() & token.kinds & speech.part != 0);
    areas.any(|sense| {
        let area = lexicon.vocabulary.record(sense).get(Slot::Area);
        lexicon.topography.get(area).is_some_and(|area| area.optional)
    })
}

/// One past the last word before the correction at `at`.
fn before(speech: &Speech, tokens: &[Token], at: usize, over_comma: bool) -> usize {
    let is_comma = |i: usize| tokens[i].kinds & speech.comma != 0;
    if over_comma && at > 0 && is_comma(at - 1) { at - 1 } else { at }
}

/// How many words before the correction at `at` the words behind it stand for.
fn put_right(speech: &Speech, tokens: &[Token], at: usize, over_comma: bool) -> Option<usize> {
    let upto = before(speech, tokens, at, over_comma);
    let mut from = at + 1;
    let skip = speech.small | if over_comma { speech.comma | speech.correction } else { 0 };
    while tokens.get(from).is_some_and(|t| t.kinds & skip != 0 && t.kinds & speech.content == 0) {
        from += 1;
    }
    let alike = |a: &Token, b: &Token| {
        // "one" is a number as well as a bird.
        let number = (a.kinds & speech.number != 0) == (b.kinds & speech.number != 0);
        a.why.is_none_or(|w| !w.leaves_out()) && number && a.kinds & b.kinds & speech.content != 0
    };
    (1..=MOST_WORDS)
        .filter(|&n| n <= upto && from + n <= tokens.len())
        .find(|&n| (0..n).all(|k| alike(&tokens[upto - n + k], &tokens[from + k])))
        .filter(|&n| !starts_a_statement(speech, tokens, from + n - 1))
        .filter(|&n| {
            // "black no black" takes nothing back.
            (0..n).any(|k| tokens[upto - n + k].node != tokens[from + k].node)
        })
}

/// Whether the part at `last` has words of its own behind it: "no wait legs yellow" stands for more than one word.
fn starts_a_statement(speech: &Speech, tokens: &[Token], last: usize) -> bool {
    let is_part = tokens[last].kinds & speech.part != 0;
    let says =
        |t: &Token| t.kinds & (speech.content | speech.be) != 0 && t.kinds & speech.part == 0;
    is_part && tokens.get(last + 1).is_some_and(says)
}
