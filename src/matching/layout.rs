//! What takes long to work out of the lexicon and the accounts: stored with the built-in tables.

use super::areas::Areas;
use super::mention::Mentions;
use super::naming::Table;
use crate::knowledge::Knowledge;
use serde::{Deserialize, Serialize};

/// Tables for matching, ready for use.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Layout {
    /// What parts are to each other.
    pub areas: Areas,
    /// What colours are called.
    pub naming: Table,
    /// For each form, how many more colours than of an average bird one speaks of.
    pub talk: Vec<f32>,
    /// How readily each part and property is spoken of.
    pub mentions: Mentions,
}

impl Layout {
    /// The one stored with these tables; nothing for a lexicon that was read anew.
    pub fn stored(knowledge: &Knowledge) -> Option<Self> {
        postcard::from_bytes(knowledge.layout?).ok()
    }

    /// The stored form.
    ///
    /// # Errors
    /// None that could be helped: writing to memory does not fail.
    pub fn store(&self) -> Result<Vec<u8>, postcard::Error> {
        postcard::to_allocvec(self)
    }
}
