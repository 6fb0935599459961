//! Which species a loose kind of bird is said of, and how readily.
//!
//! Whoever says "some kind of gull" is mostly right, sometimes names a relation of the bird, now and then
//! a bird that only looks like one. `covers` entries of the lexicon say of each kind which species are of
//! it and which families are taken for it; `weight` entries say what each of these is worth.

use super::weights::Weights;
use crate::accounts::Accounts;
use crate::lexicon::Lexicon;
use crate::lexicon::entry::Entry;
use crate::lexicon::names::Name;
use rustc_hash::{FxHashMap, FxHashSet};

/// How many words of an English name can name a kind: "storm petrel".
const MOST_WORDS: usize = 3;

/// What a species is to a kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// It is of the kind.
    Member,
    /// It is of a family of which some are of the kind.
    Cousin,
    /// It is of a family whose species are taken for the kind.
    TakenFor,
    /// None of these.
    Stranger,
}

/// The loose kinds, and the species as far as they bear on those.
#[derive(Clone, Debug, Default)]
pub struct Groups {
    /// For each account its family, its English name in small letters with blanks for hyphens, and the
    /// kinds whose words that name ends in.
    species: Vec<Species>,
    /// For each kind, the kinds it lies within.
    within: FxHashMap<Name, Vec<Name>>,
    covers: FxHashMap<Name, Cover>,
    /// Every kind that the vocabulary has words for.
    known: FxHashSet<Name>,
}

#[derive(Clone, Debug)]
struct Species {
    family: String,
    english: String,
    bears: Vec<Name>,
    /// The logarithm of the mass in grams.
    mass: Option<f32>,
}

#[derive(Clone, Debug, Default)]
struct Cover {
    families: Vec<String>,
    except: Vec<Name>,
    members: Vec<String>,
    taken_for: Vec<String>,
}

/// How large the birds of a kind are, as logarithms of masses in grams.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// The mean.
    pub mean: f32,
    /// The standard deviation.
    pub deviation: f32,
}

impl Groups {
    /// The kinds of a lexicon.
    pub fn of(lexicon: &Lexicon, accounts: &Accounts) -> Self {
        let set = lexicon.kind_set("group");
        let vocabulary = &lexicon.vocabulary;
        let kinds_of = |form: &str| {
            let senses = vocabulary.senses(vocabulary.find(form)).iter();
            let of_kind = senses.filter(|s| s.kind.bit() & set != 0);
            of_kind.map(|s| vocabulary.terms[s.term as usize].id).collect::<Vec<Name>>()
        };
        let mut out = Self::default();
        for account in accounts.iter() {
            let english = plain(&account.english);
            let bears = endings(&english).map(kinds_of).find(|found| !found.is_empty());
            out.species.push(Species {
                family: account.family.clone(),
                bears: bears.unwrap_or_default(),
                english,
                mass: account.mass.map(f32::ln),
            });
        }
        let kinds = vocabulary.terms.iter().filter(|t| t.kind.bit() & set != 0);
        out.known = kinds.map(|t| t.id).collect();
        for entry in lexicon.others("covers") {
            let kind = lexicon.names.find(&entry.id);
            let names = |key: &str| entry.items(key).map(|i| lexicon.names.find(i)).collect();
            out.within.insert(kind, names("within"));
            out.covers.insert(kind, Cover::of(entry, names("except")));
        }
        out
    }

    /// Whether it is a loose kind.
    pub fn knows(&self, kind: Name) -> bool {
        self.known.contains(&kind)
    }

    /// What every species is to a kind, in the order of the accounts.
    pub fn standings(&self, kind: Name) -> Vec<Standing> {
        let none = Cover::default();
        let cover = self.covers.get(&kind).unwrap_or(&none);
        let member: Vec<bool> =
            self.species.iter().map(|s| self.is_member(kind, cover, s)).collect();
        let families: FxHashSet<&str> = self
            .species
            .iter()
            .zip(&member)
            .filter(|(_, member)| **member)
            .map(|(s, _)| s.family.as_str())
            .collect();
        let standing = |(one, member): (&Species, &bool)| {
            if *member {
                Standing::Member
            } else if families.contains(one.family.as_str()) {
                Standing::Cousin
            } else if cover.taken_for.contains(&one.family) {
                Standing::TakenFor
            } else {
                Standing::Stranger
            }
        };
        self.species.iter().zip(&member).map(standing).collect()
    }

    fn is_member(&self, kind: Name, cover: &Cover, one: &Species) -> bool {
        let ends = |word: &String| ends_in(&one.english, word);
        let bears = |kind: Name| one.bears.iter().any(|&b| self.lies_within(b, kind));
        if cover.members.iter().any(ends) || one.bears.contains(&kind) {
            return true;
        }
        let excepted = cover.except.iter().any(|&e| bears(e));
        !excepted && (bears(kind) || cover.families.contains(&one.family))
    }

    /// Whether a kind is another or lies within it.
    fn lies_within(&self, inner: Name, outer: Name) -> bool {
        let mut at = vec![inner];
        let mut seen = 0;
        while let Some(kind) = at.get(seen).copied() {
            if kind == outer {
                return true;
            }
            seen += 1;
            for &wider in self.within.get(&kind).into_iter().flatten() {
                if !at.contains(&wider) {
                    at.push(wider);
                }
            }
        }
        false
    }

    /// How large the birds of a kind are; nothing if no mass is known of any.
    pub fn sizes(&self, kind: Name) -> Option<Spread> {
        let standings = self.standings(kind);
        let members = self.species.iter().zip(standings);
        spread(members.filter(|(_, s)| *s == Standing::Member).filter_map(|(one, _)| one.mass))
    }

    /// The same of all species.
    pub fn all_sizes(&self) -> Option<Spread> {
        spread(self.species.iter().filter_map(|s| s.mass))
    }
}

impl Standing {
    /// How readily the kind is said of such a species, against one of the kind.
    pub const fn chance(self, weights: &Weights) -> f32 {
        match self {
            Self::Member => 1.0,
            Self::Cousin => weights.kind_cousin,
            Self::TakenFor => weights.kind_taken_for,
            Self::Stranger => weights.kind_stranger,
        }
    }
}

impl Cover {
    fn of(entry: &Entry, except: Vec<Name>) -> Self {
        let texts = |key: &str| entry.items(key).map(str::to_owned).collect();
        Self {
            families: texts("families"),
            except,
            members: entry.items("members").map(plain).collect(),
            taken_for: texts("taken-for"),
        }
    }
}

fn plain(name: &str) -> String {
    name.to_lowercase().replace('-', " ").replace('\u{2019}', "'")
}

/// The last words of a name, the longest ending first.
fn endings(name: &str) -> impl Iterator<Item = &str> {
    let starts = name.match_indices(' ').map(|(at, _)| at + 1);
    let mut starts: Vec<usize> = std::iter::once(0).chain(starts).collect();
    let keep = starts.len().saturating_sub(MOST_WORDS);
    starts.drain(..keep);
    starts.into_iter().map(|at| &name[at..])
}

/// Whether a name ends in whole words.
fn ends_in(name: &str, words: &str) -> bool {
    let start = name.strip_suffix(words);
    start.is_some_and(|start| start.is_empty() || start.ends_with(' '))
}

fn spread(masses: impl Iterator<Item = f32>) -> Option<Spread> {
    let masses: Vec<f32> = masses.collect();
    if masses.is_empty() {
        return None;
    }
    let count = f32::from(u16::try_from(masses.len()).unwrap_or(u16::MAX));
    let mean = masses.iter().sum::<f32>() / count;
    let square = masses.iter().map(|m| (m - mean) * (m - mean)).sum::<f32>() / count;
    Some(Spread { mean, deviation: square.sqrt() })
}
