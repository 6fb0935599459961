//! Every id of the lexicon, once, as a small number.

use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};

/// An interned id. `Name::NONE` stands for "not said".
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Name(pub u16);

impl Name {
    /// No id.
    pub const NONE: Self = Self(0);

    /// Whether there is an id.
    pub const fn is_some(self) -> bool {
        self.0 != 0
    }

    /// This id, or the other where there is none.
    #[must_use]
    pub const fn or(self, other: Self) -> Self {
        if self.is_some() { self } else { other }
    }
}

/// The ids in the order in which they were first met.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Names {
    texts: Vec<Box<str>>,
    #[serde(skip)]
    index: FxHashMap<Box<str>, Name>,
}

impl Default for Names {
    fn default() -> Self {
        Self { texts: vec!["".into()], index: FxHashMap::default() }
    }
}

impl Names {
    /// Works out the index, which is not stored.
    pub fn take_up(&mut self) {
        self.index.reserve(self.texts.len());
        for (at, text) in self.texts.iter().enumerate().skip(1) {
            self.index.insert(text.clone(), Name(u16::try_from(at).unwrap_or(0)));
        }
    }

    /// The name of `text`, made if it is new.
    ///
    /// # Panics
    /// Past 65,535 different ids, which no lexicon comes near.
    pub fn intern(&mut self, text: &str) -> Name {
        if text.is_empty() {
            return Name::NONE;
        }
        if let Some(&name) = self.index.get(text) {
            return name;
        }
        let name = Name(u16::try_from(self.texts.len()).expect("fewer than 65,536 ids"));
        self.texts.push(text.into());
        self.index.insert(text.into(), name);
        name
    }

    /// The name of `text`, if some entry uses it.
    pub fn find(&self, text: &str) -> Name {
        self.index.get(text).copied().unwrap_or(Name::NONE)
    }

    /// The text of a name; empty for [`Name::NONE`].
    pub fn text(&self, name: Name) -> &str {
        &self.texts[usize::from(name.0)]
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
