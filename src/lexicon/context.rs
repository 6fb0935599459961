//! Where a reading of a form holds: what must or must not stand beside it.

use super::entry::Entry;
use super::kinds::{KindId, KindSet, Kinds};
use super::vocabulary::{WordId, normalise_into};
use serde::{Deserialize, Serialize};

/// Words or kinds of words that may stand beside a reading.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Neighbours {
    /// Kinds.
    pub kinds: KindSet,
    /// Single words.
    pub words: Vec<WordId>,
}

impl Neighbours {
    /// Whether a neighbour of these kinds and that word is one of them.
    pub fn hold(&self, kinds: KindSet, word: WordId) -> bool {
        self.kinds & kinds != 0 || self.words.contains(&word)
    }

    /// Whether nothing is listed.
    pub fn is_empty(&self) -> bool {
        self.kinds == 0 && self.words.is_empty()
    }
}

/// Where a reading holds or does not.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Context {
    /// Not right after one of these.
    pub unless_after: Neighbours,
    /// Not right before one of these.
    pub unless_before: Neighbours,
    /// Only right after one of these.
    pub only_after: Option<Neighbours>,
    /// Only right before one of these.
    pub only_before: Option<Neighbours>,
    /// Forms that only sound alike are read right after one of these,
    pub heard_after: Neighbours,
    /// or right before one of these.
    pub heard_before: Neighbours,
}

impl Context {
    /// Whether there is nothing to look at for forms as written.
    pub fn is_free(&self) -> bool {
        self.unless_after.is_empty()
            && self.unless_before.is_empty()
            && self.only_after.is_none()
            && self.only_before.is_none()
    }
}

/// Reads the lines of an entry that say where its readings hold. `intern` numbers a word.
pub fn read_context(
    entry: &Entry,
    kinds: &Kinds,
    kind: KindId,
    mut intern: impl FnMut(&str) -> WordId,
) -> Context {
    let mut scratch = String::new();
    let mut list = |key: &str| {
        let mut found = Neighbours::default();
        for item in entry.items(key) {
            match item.strip_prefix(':').and_then(|k| kinds.find(k)) {
                Some(kind) => found.kinds |= kind.bit(),
                None => {
                    normalise_into(item, &mut scratch);
                    found.words.push(intern(&scratch));
                }
            }
        }
        found
    };
    // An entry's own line stands in place of what its kind says.
    let heard = |own: Neighbours, of_kind| {
        if own.is_empty() { Neighbours { kinds: of_kind, words: Vec::new() } } else { own }
    };
    let some = |found: Neighbours| (!found.is_empty()).then_some(found);
    Context {
        unless_after: list("unless-after"),
        unless_before: list("unless-before"),
        only_after: some(list("only-after")),
        only_before: some(list("only-before")),
        heard_after: heard(list("heard-after"), kinds.get(kind).heard_after),
        heard_before: heard(list("heard-before"), kinds.get(kind).heard_before),
    }
}
