//! Finding a species by a name that a person wrote.

use crate::accounts::Accounts;
use crate::lexicon::account::species_id;
use rustc_hash::FxHashMap;

/// How alike two names must be for one to be offered for the other (Jaro and Winkler's measure).
const NEAR: f64 = 0.75;

/// Every name of every species.
#[derive(Debug)]
pub struct SpeciesNames<'a> {
    accounts: &'a Accounts,
    index: FxHashMap<String, usize>,
}

impl<'a> SpeciesNames<'a> {
    /// Of those accounts.
    pub fn of(accounts: &'a Accounts) -> Self {
        let mut index = FxHashMap::default();
        for (i, account) in accounts.iter().enumerate() {
            index.insert(species_id(&account.english), i);
            index.insert(account.scientific.to_lowercase(), i);
        }
        Self { accounts, index }
    }

    /// The account of an English or scientific name, however it is written.
    pub fn find(&self, name: &str) -> Option<usize> {
        let found = self.index.get(&species_id(name));
        found.or_else(|| self.index.get(&name.trim().to_lowercase())).copied()
    }

    /// The names most like one that was not found, nearest first; none if nothing is like it.
    pub fn nearest(&self, name: &str, most: usize) -> Vec<&'a str> {
        let name = name.trim().to_lowercase();
        let mut near: Vec<(f64, &str)> = self
            .accounts
            .iter()
            .flat_map(|a| [a.english.as_str(), a.scientific.as_str()])
            .map(|n| (strsim::jaro_winkler(&n.to_lowercase(), &name), n))
            .filter(|(likeness, _)| *likeness > NEAR)
            .collect();
        near.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(b.1)));
        near.into_iter().take(most).map(|(_, n)| n).collect()
    }
}
