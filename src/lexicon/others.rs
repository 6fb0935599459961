//! Entries of kinds that the lexicon itself does not read: weights, marks of a full description, ...

use super::entry::Entry;
use super::kept::Kept;
use super::shelf::{Hand, Misplaced, Shelved};
use serde::{Deserialize, Serialize};

/// The entries by their kind, each in the order of the files; those of a kind that nobody asks for
/// stay as they are stored.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Others {
    kinds: Vec<String>,
    #[serde(skip)]
    of_kind: Kept<Vec<Entry>>,
}

impl Shelved for Others {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        self.of_kind.shelve(hand)
    }
}

impl FromIterator<Entry> for Others {
    fn from_iter<I: IntoIterator<Item = Entry>>(entries: I) -> Self {
        let mut kinds: Vec<String> = Vec::new();
        let mut of_kind: Vec<Vec<Entry>> = Vec::new();
        for entry in entries {
            match kinds.iter().position(|kind| *kind == entry.kind) {
                Some(at) => of_kind[at].push(entry),
                None => {
                    kinds.push(entry.kind.clone());
                    of_kind.push(vec![entry]);
                }
            }
        }
        Self { kinds, of_kind: of_kind.into_iter().collect() }
    }
}

impl Others {
    /// The entries of a kind.
    pub fn of(&self, kind: &str) -> &[Entry] {
        let at = self.kinds.iter().position(|k| k == kind);
        at.map_or(&[], |at| self.of_kind.get(at).as_slice())
    }

    /// All entries, kind by kind.
    pub fn iter(&self) -> impl Iterator<Item = &Entry> {
        self.of_kind.iter().flatten()
    }
}
