//! The ways to say a set of rules as one tree: what several have in common at their start is tried once.
//!
//! From a node every edge that fits is followed; of all ends reached the farthest counts, of two alike
//! the one that stands first in the files. Edges of the root are found by the kinds of the first word.

use super::compile::{First, Pattern, Rules};
use crate::lexicon::kinds::KindSet;
use crate::lexicon::vocabulary::WordId;
use serde::{Deserialize, Serialize};

/// A tree of patterns.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Tree {
    /// The nodes; the root is the first.
    pub nodes: Vec<Node>,
    /// The rule and the alternative of each end, in the order of the files.
    pub ends: Vec<(usize, usize)>,
    /// For each kind the edges of the root that a word of that kind can start.
    by_kind: Vec<Edges>,
    /// Edges of the root that ask for a word of its own, or for none.
    always: Edges,
}

/// A place in the tree.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Node {
    /// Where it goes on.
    pub edges: Vec<Edge>,
    /// The first way to say a rule that ends here, by its place in [`Tree::ends`].
    pub end: Option<usize>,
}

/// A step from one node to the next.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Edge {
    /// What must stand in the note.
    pub pattern: Pattern,
    /// What the rest of the way can start with.
    pub first: First,
    /// The node behind it.
    pub to: usize,
}

/// The most edges a root can have.
const MOST_EDGES: usize = 256;

/// A set of edges of the root.
type Edges = [u64; MOST_EDGES / 64];

impl Tree {
    /// The tree of the alternatives of `of`, places in `rules`.
    pub fn of(rules: &Rules, of: &[usize]) -> Self {
        let mut out = Self { nodes: vec![Node::default()], ..Self::default() };
        for &rule in of {
            for (index, alternative) in rules.rules[rule].alternatives.iter().enumerate() {
                let mut items = Vec::new();
                flatten(&alternative.pattern, &mut items);
                let end = out.ends.len();
                out.ends.push((rule, index));
                out.add(rules, &items, end);
            }
        }
        out.index_root();
        out
    }

    fn add(&mut self, rules: &Rules, items: &[Pattern], end: usize) {
        let mut at = 0;
        for (i, item) in items.iter().enumerate() {
            let first = rules.first_of_all(&items[i..]);
            let known = self.nodes[at].edges.iter().position(|e| e.pattern == *item);
            at = if let Some(edge) = known {
                let edge = &mut self.nodes[at].edges[edge];
                edge.first.join(first);
                edge.to
            } else {
                let to = self.nodes.len();
                self.nodes.push(Node::default());
                self.nodes[at].edges.push(Edge { pattern: item.clone(), first, to });
                to
            };
        }
        let node = &mut self.nodes[at];
        node.end = node.end.or(Some(end));
    }

    fn index_root(&mut self) {
        self.by_kind = vec![Edges::default(); KindSet::BITS as usize];
        for (i, edge) in self.nodes[0].edges.iter().enumerate() {
            // A root with more edges than there is room for is searched whole.
            let (word, bit) = ((i % MOST_EDGES) / 64, 1u64 << (i % 64));
            if edge.first.any || !edge.first.words.is_empty() {
                self.always[word] |= bit;
            }
            for (kind, edges) in self.by_kind.iter_mut().enumerate() {
                if edge.first.kinds & (1 << kind) != 0 {
                    edges[word] |= bit;
                }
            }
        }
    }

    /// The edges of the root that a word of these kinds may start.
    pub fn starts(&self, kinds: KindSet) -> impl Iterator<Item = &Edge> {
        let mut set = self.always;
        let mut left = kinds;
        while left != 0 {
            let kind = left.trailing_zeros() as usize;
            left &= left - 1;
            for (all, some) in set.iter_mut().zip(&self.by_kind[kind]) {
                *all |= some;
            }
        }
        let edges = &self.nodes[0].edges;
        let rounds = edges.len().div_ceil(MOST_EDGES);
        let places = (0..set.len()).flat_map(move |word| {
            let mut bits = set[word];
            std::iter::from_fn(move || {
                let bit = bits.trailing_zeros() as usize;
                (bits != 0).then(|| {
                    bits &= bits - 1;
                    word * 64 + bit
                })
            })
        });
        places
            .flat_map(move |p| (0..rounds).map(move |r| p + r * MOST_EDGES))
            .filter_map(|p| edges.get(p))
    }
}

impl First {
    /// Whether a word of these kinds, or this one, can be the first.
    #[inline]
    pub fn holds(&self, kinds: KindSet, word: WordId) -> bool {
        self.any
            || self.kinds & kinds != 0
            || (!self.words.is_empty() && self.words.contains(&word))
    }

    fn join(&mut self, other: Self) {
        self.kinds |= other.kinds;
        self.any |= other.any;
        for word in other.words {
            if !self.words.contains(&word) {
                self.words.push(word);
            }
        }
    }
}

/// The steps of a pattern, what is kept left out.
fn flatten(pattern: &Pattern, out: &mut Vec<Pattern>) {
    match bare(pattern) {
        Pattern::Seq(items) => items.iter().for_each(|item| flatten(item, out)),
        other => out.push(other),
    }
}

/// A pattern without the names under which its parts are kept.
fn bare(pattern: &Pattern) -> Pattern {
    let all = |items: &[Pattern]| items.iter().map(bare).collect();
    let boxed = |inner: &Pattern| Box::new(bare(inner));
    match pattern {
        Pattern::Capture(_, inner) => bare(inner),
        Pattern::Seq(items) => Pattern::Seq(all(items)),
        Pattern::Alt(items) => Pattern::Alt(all(items)),
        Pattern::Opt(inner) => Pattern::Opt(boxed(inner)),
        Pattern::Star(inner) => Pattern::Star(boxed(inner)),
        Pattern::Plus(inner) => Pattern::Plus(boxed(inner)),
        Pattern::Not(inner) => Pattern::Not(boxed(inner)),
        Pattern::And(inner) => Pattern::And(boxed(inner)),
        Pattern::Behind(yes, inner) => Pattern::Behind(*yes, boxed(inner)),
        Pattern::Kind(_)
        | Pattern::KindOf(..)
        | Pattern::Word(_)
        | Pattern::Phrase(_)
        | Pattern::Start
        | Pattern::End => pattern.clone(),
    }
}
