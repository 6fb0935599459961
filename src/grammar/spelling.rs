//! Mending the spelling of unknown words.
//!
//! A word is mended only if
//! - it is at least four letters long and in no list of the lexicon, the ordinary words included;
//! - one form of a kind that may be mended is nearer than any other (restricted edits: a letter
//!   more, less, wrong, or two swapped), within a distance that grows with its length;
//! - one of the two words on either side is itself a word of such a kind.
//!
//! So "brest" next to "white" becomes breast, and alone it stays what it is.

use super::tokens::{Basics, Token};
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::KindSet;
use crate::lexicon::vocabulary::{Node, normalise_into};

/// How many words on either side may lend support.
const NEAR: usize = 2;

/// Mends what can be mended.
pub fn mend(text: &str, lexicon: &Lexicon, basics: &Basics, tokens: &mut [Token]) {
    let able = lexicon.mendable;
    let mut scratch = String::new();
    for i in 0..tokens.len() {
        if tokens[i].kinds != basics.unknown() || !supported(tokens, i, able) {
            continue;
        }
        normalise_into(tokens[i].span.of(text), &mut scratch);
        if let Some(node) = nearest_form(lexicon, &scratch, able) {
            tokens[i].node = node;
            tokens[i].kinds = lexicon.vocabulary.kinds(node);
            tokens[i].mended = true;
        }
    }
}

fn supported(tokens: &[Token], i: usize, able: KindSet) -> bool {
    let from = i.saturating_sub(NEAR);
    let to = (i + NEAR).min(tokens.len().saturating_sub(1));
    (from..=to).any(|j| j != i && tokens[j].kinds & able != 0)
}

/// How many edits a word of that length may be away.
const fn most_edits(len: usize) -> usize {
    match len {
        0..=3 => 0,
        4..=5 => 1,
        6..=9 => 2,
        _ => 3,
    }
}

/// The one form that is nearest, if it is near enough and alone.
fn nearest_form(lexicon: &Lexicon, word: &str, able: KindSet) -> Option<Node> {
    let len = word.chars().count();
    let most = most_edits(len);
    if most == 0 {
        return None;
    }
    let mut best: Option<(usize, f64, Node)> = None;
    let mut tied = false;
    for (form, node) in lexicon.vocabulary.single_words() {
        let kinds = lexicon.vocabulary.kinds(node);
        if form.len().abs_diff(word.len()) > most || form.len() < 4 || kinds & able == 0 {
            continue;
        }
        let edits = strsim::osa_distance(word, form);
        // A short form may not lose half its letters.
        if edits > most || edits > most_edits(form.len()) {
            continue;
        }
        let likeness = strsim::jaro_winkler(word, form);
        match best {
            Some((e, l, n)) if (edits, -likeness) >= (e, -l) => {
                tied |= edits == e && (likeness - l).abs() < f64::EPSILON && !same(lexicon, n, node);
            }
            _ => {
                tied = false;
                best = Some((edits, likeness, node));
            }
        }
    }
    best.filter(|_| !tied).map(|(_, _, node)| node)
}

/// Whether two forms are read as the same term.
fn same(lexicon: &Lexicon, a: Node, b: Node) -> bool {
    let first = |n: Node| lexicon.vocabulary.senses(n).first().map(|s| (s.kind, s.term));
    first(a) == first(b)
}

/// The forms most like an unknown word, for the person to choose from: at most `count`.
pub fn suggestions(lexicon: &Lexicon, word: &str, count: usize) -> Vec<String> {
    let mut scratch = String::new();
    normalise_into(word, &mut scratch);
    let mut found: Vec<(f64, &str)> = lexicon
        .vocabulary
        .single_words()
        .filter(|&(form, node)| {
            form.len() >= 3 && lexicon.vocabulary.kinds(node) & lexicon.mendable != 0
        })
        .map(|(form, _)| (strsim::jaro_winkler(&scratch, form), form))
        .filter(|&(likeness, _)| likeness >= 0.72)
        .collect();
    found.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(b.1)));
    found.into_iter().take(count).map(|(_, form)| form.to_owned()).collect()
}
