//! What takes long to work out of the lexicon and the accounts: stored with the built-in tables.

use super::areas::Areas;
use super::forms::Forms;
use super::mention::Mentions;
use super::naming::Table;
use crate::knowledge::Knowledge;
use crate::lexicon::shelf::{Hand, List, Misplaced, Shelved};

/// Tables for matching, ready for use.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Layout {
    /// What parts are to each other.
    pub areas: Areas,
    /// What the forms show.
    pub forms: Forms,
    /// What colours are called.
    pub naming: Table,
    /// For each form, how many more colours than of an average bird one speaks of.
    pub talk: List<f32>,
    /// How readily each part and property is spoken of.
    pub mentions: Mentions,
}

impl Shelved for Layout {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        self.areas.shelve(hand)?;
        self.forms.shelve(hand)?;
        self.naming.shelve(hand)?;
        hand.list(&mut self.talk)?;
        self.mentions.shelve(hand)
    }
}

impl Layout {
    /// The one stored with these tables; nothing for a lexicon that was read anew.
    pub fn stored(knowledge: &Knowledge) -> Option<Self> {
        let mut out = Self::default();
        out.shelve(&mut knowledge.layout?).ok()?;
        Some(out)
    }
}
