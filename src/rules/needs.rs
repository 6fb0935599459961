//! What must still come for a way to fit: where the rest of a sentence holds no marking, nothing that
//! needs one is worth trying.

use super::plain::{Plain, Plains};
use super::program::Set;
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};
use std::cmp::Reverse;

/// The most sets that are asked for in one sentence.
const MOST_NEEDS: usize = 2 * u64::BITS as usize;

/// Of all sets that are asked for those of which a word must come, one bit each. Two numbers, since
/// one of twice the bits would lie at every other place only and make what holds it larger.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Needed([u64; 2]);

impl Needed {
    /// The set of that number alone.
    pub const fn bit(number: usize) -> Self {
        let bit = 1 << (number % 64);
        Self(if number < 64 { [bit, 0] } else { [0, bit] })
    }

    /// Those of either.
    #[must_use]
    pub const fn or(self, other: Self) -> Self {
        Self([self.0[0] | other.0[0], self.0[1] | other.0[1]])
    }

    /// Those that are not among `others`.
    #[must_use]
    #[inline(always)]
    pub const fn without(self, others: Self) -> Self {
        Self([self.0[0] & !others.0[0], self.0[1] & !others.0[1]])
    }

    /// Whether there is none.
    #[inline(always)]
    pub const fn is_none(self) -> bool {
        self.0[0] | self.0[1] == 0
    }

    /// Whether both have one in common.
    #[inline(always)]
    pub const fn meets(self, other: Self) -> bool {
        self.0[0] & other.0[0] | self.0[1] & other.0[1] != 0
    }

    /// One of them, if there is any.
    #[must_use]
    #[inline(always)]
    pub const fn one(self) -> Self {
        let [low, high] = self.0;
        Self([low & low.wrapping_neg(), if low == 0 { high & high.wrapping_neg() } else { 0 }])
    }
}

/// How many sets are kept for a pattern: those of the fewest kinds.
const MOST_SETS: usize = 4;

/// For each rule the sets of which some word must come.
pub(super) struct Needs(Vec<Option<Vec<Set>>>);

impl Needs {
    /// Those of some rules.
    pub(super) fn of(plains: &Plains, rules: usize) -> Self {
        let mut out = Self(vec![None; rules]);
        for rule in 0..rules {
            out.of_rule(plains, rule);
        }
        out
    }

    fn of_rule(&mut self, plains: &Plains, rule: usize) -> Vec<Set> {
        if let Some(known) = &self.0[rule] {
            return known.clone();
        }
        // A rule that comes back to itself needs what the rest of it needs.
        self.0[rule] = Some(Vec::new());
        let found = self.of_any(plains, plains.ways(rule));
        self.0[rule] = Some(found.clone());
        found
    }

    /// What one of these ways needs whichever it is.
    pub(super) fn of_any(&mut self, plains: &Plains, ways: &[Plain]) -> Vec<Set> {
        let mut lists =
            ways.iter().map(|way| self.of_one(plains, way)).collect::<Vec<_>>().into_iter();
        let Some(first) = lists.next() else { return Vec::new() };
        lists.fold(first, |all, more| {
            few(all.iter().flat_map(|a| more.iter().map(move |b| a.or(*b))).collect())
        })
    }

    fn of_one(&mut self, plains: &Plains, plain: &Plain) -> Vec<Set> {
        match plain {
            Plain::Token(set) => vec![*set],
            Plain::Phrase(p) => self.of_rule(plains, *p),
            Plain::Seq(items) => {
                let found = items.iter().flat_map(|item| self.of_one(plains, item));
                few(found.collect())
            }
            Plain::Alt(items) => self.of_any(plains, items),
            Plain::Plus(inner) | Plain::And(inner) => self.of_one(plains, inner),
            _ => Vec::new(),
        }
    }
}

/// The smallest of some sets, those left out that come with another.
fn few(mut sets: Vec<Set>) -> Vec<Set> {
    sets.sort_by_key(|set| (size(set), set.kinds, set.marks));
    let mut out: Vec<Set> = Vec::new();
    for set in sets {
        if out.len() < MOST_SETS && !out.iter().any(|small| small.or(set) == set) {
            out.push(set);
        }
    }
    out
}

fn size(set: &Set) -> u32 {
    set.kinds.count_ones() + set.marks.count_ones()
}

/// The sets worth asking for, given what each edge needs: small ones that many edges need.
pub(super) fn chosen(edges: &[Vec<Set>]) -> Vec<Set> {
    let mut tally: FxHashMap<Set, u32> = FxHashMap::default();
    edges.iter().flatten().for_each(|set| *tally.entry(*set).or_default() += 1);
    let mut all: Vec<(Set, u32)> = tally.into_iter().collect();
    all.sort_by_key(|(set, edges)| (Reverse(edges * 64 / size(set).max(1)), set.kinds, set.marks));
    all.into_iter().take(MOST_NEEDS).map(|(set, _)| set).collect()
}
