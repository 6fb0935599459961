//! Lands that a note names, as a hint at where its kind of bird lives.
//!
//! Reference works say "small brown bird of North America"; so do some watchers. Words for lands are terms of
//! the vocabulary; the `told-by` line of a region lists those that point to it.

use super::checklist::Checklist;
use super::weights::Weights;
use crate::accounts::Accounts;
use crate::grammar::Token;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use std::borrow::Cow;

/// Which words point to which regions.
#[derive(Clone, Debug, Default)]
pub struct Regions(Vec<(Name, Vec<Name>)>);

impl Regions {
    /// The regions of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let region = |entry: &crate::lexicon::entry::Entry| {
            let words = entry.items("told-by").map(|w| lexicon.names.find(w)).collect();
            (lexicon.names.find(&entry.id), words)
        };
        Self(lexicon.others("region").map(region).collect())
    }

    /// The regions that the words of a note point to.
    pub fn told(&self, lexicon: &Lexicon, tokens: &[Token]) -> Vec<Name> {
        let vocabulary = &lexicon.vocabulary;
        let says = |words: &[Name]| {
            tokens.iter().any(|token| {
                let mut senses = vocabulary.senses(token.node).iter();
                senses.any(|s| words.contains(&vocabulary.terms[s.term as usize].id))
            })
        };
        let regions = self.0.iter().filter(|(_, words)| says(words));
        regions.map(|(region, _)| *region).collect()
    }
}

/// A checklist in which species of other lands than those told count for less.
pub fn told<'c>(
    weights: &Weights,
    accounts: &Accounts,
    checklist: &'c Checklist,
    regions: &[Name],
) -> Cow<'c, Checklist> {
    if regions.is_empty() {
        return Cow::Borrowed(checklist);
    }
    Cow::Owned(checklist.clone().in_regions(accounts, regions, weights.told_region))
}
