//! How alike two words for patterns and shapes are, and which exclude each other.

use crate::lexicon::Lexicon;
use rustc_hash::FxHashMap;

/// What two values are to each other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Relation {
    /// The same.
    Same,
    /// Alike, to a degree between 0 and 1.
    Alike(f32),
    /// They exclude each other.
    Contrary,
    /// Neither.
    Other,
}

/// The groups of like and contrary values.
#[derive(Clone, Debug, Default)]
pub struct Likeness {
    /// By the first value, then by the second: looked up without making a key.
    pairs: FxHashMap<String, FxHashMap<String, Relation>>,
}

impl Likeness {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let mut out = Self::default();
        for entry in lexicon.others("contrary") {
            for a in entry.items("values") {
                for b in entry.items("against") {
                    out.set(a, b, Relation::Contrary);
                }
            }
        }
        for entry in lexicon.others("likeness") {
            let degree = entry.get("degree").and_then(|d| d.parse().ok()).unwrap_or(0.5);
            for a in entry.items("values") {
                for b in entry.items("values").filter(|b| *b != a) {
                    if !matches!(out.relation(a, b), Relation::Alike(d) if d >= degree) {
                        out.set(a, b, Relation::Alike(degree));
                    }
                }
            }
        }
        out
    }

    fn set(&mut self, a: &str, b: &str, relation: Relation) {
        for (a, b) in [(a, b), (b, a)] {
            self.pairs.entry(a.to_owned()).or_default().insert(b.to_owned(), relation);
        }
    }

    /// What `a` is to `b`.
    pub fn relation(&self, a: &str, b: &str) -> Relation {
        if a == b {
            return Relation::Same;
        }
        self.pairs.get(a).and_then(|of_a| of_a.get(b)).copied().unwrap_or(Relation::Other)
    }
}
