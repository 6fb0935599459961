//! Every id of the lexicon, once, as a small number.

use super::shelf::{Hand, Misplaced, Shelved};
use super::texts::Texts;
use serde::{Deserialize, Serialize};
use zerocopy::{FromBytes, Immutable, IntoBytes};

/// An interned id. `Name::NONE` stands for "not said".
#[derive(
    Clone,
    Copy,
    Debug,
    Default,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    Serialize,
    Deserialize,
    FromBytes,
    IntoBytes,
    Immutable,
)]
#[repr(transparent)]
pub struct Name(pub u16);

impl Name {
    /// No id.
    pub const NONE: Self = Self(0);

    /// Whether there is an id.
    #[inline]
    pub const fn is_some(self) -> bool {
        self.0 != 0
    }

    /// This id, or the other where there is none.
    #[inline]
    #[must_use]
    pub const fn or(self, other: Self) -> Self {
        if self.is_some() { self } else { other }
    }
}

/// The ids in the order in which they were first met.
#[derive(Clone, Debug)]
pub struct Names {
    texts: Texts,
}

impl Default for Names {
    fn default() -> Self {
        let mut texts = Texts::default();
        texts.add("");
        Self { texts }
    }
}

impl Shelved for Names {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        self.texts.shelve(hand)
    }
}

impl Names {
    /// The name of `text`, made if it is new.
    ///
    /// # Panics
    /// Past 65,535 different ids, which no lexicon comes near.
    pub fn intern(&mut self, text: &str) -> Name {
        Name(u16::try_from(self.texts.add(text)).expect("fewer than 65,536 ids"))
    }

    /// The name of `text`, if some entry uses it.
    pub fn find(&self, text: &str) -> Name {
        let found = self.texts.find(text).and_then(|n| u16::try_from(n).ok());
        found.map_or(Name::NONE, Name)
    }

    /// The text of a name; empty for [`Name::NONE`].
    pub fn text(&self, name: Name) -> &str {
        self.texts.get(u32::from(name.0))
    }

    /// How many names there are, [`Name::NONE`] included.
    pub fn len(&self) -> usize {
        self.texts.len()
    }

    /// Whether nothing has been named yet.
    pub fn is_empty(&self) -> bool {
        self.texts.len() <= 1
    }
}
