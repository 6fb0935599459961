//! How alike two words for patterns and shapes are, and which exclude each other.

use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
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
    pairs: FxHashMap<(Name, Name), Relation>,
}

impl Likeness {
    /// Those of a lexicon. A contrary stands, whatever else is said of the two.
    pub fn of(lexicon: &Lexicon) -> Self {
        let mut out = Self::default();
        for entry in lexicon.others("likeness") {
            let degree = entry.get("degree").and_then(|d| d.parse().ok()).unwrap_or(0.5);
            let values: Vec<Name> = entry.items("values").map(|v| lexicon.names.find(v)).collect();
            for &a in &values {
                for &b in values.iter().filter(|b| **b != a) {
                    if !matches!(out.relation(a, b), Relation::Alike(d) if d >= degree) {
                        out.set(a, b, Relation::Alike(degree));
                    }
                }
            }
        }
        for entry in lexicon.others("contrary") {
            for a in entry.items("values") {
                for b in entry.items("against") {
                    out.set(lexicon.names.find(a), lexicon.names.find(b), Relation::Contrary);
                }
            }
        }
        out
    }

    fn set(&mut self, a: Name, b: Name, relation: Relation) {
        self.pairs.insert((a, b), relation);
        self.pairs.insert((b, a), relation);
    }

    /// What `a` is to `b`.
    pub fn relation(&self, a: Name, b: Name) -> Relation {
        if a == b {
            return Relation::Same;
        }
        self.pairs.get(&(a, b)).copied().unwrap_or(Relation::Other)
    }
}
