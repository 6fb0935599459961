//! A field mark: where on which bird, what was seen there, how sure.

use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::record::Parts;
use crate::lexicon::scale::MassRange;
use crate::span::Span;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;

/// Whether a mark was seen.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, JsonSchema, Deserialize,
)]
#[serde(rename_all = "lowercase")]
pub enum Polarity {
    /// It was seen.
    Present,
    /// It was looked for and is not there.
    Absent,
    /// It could not be seen; says nothing either way.
    Unseen,
}

impl Polarity {
    /// The word for it.
    pub const fn text(self) -> &'static str {
        match self {
            Self::Present => "present",
            Self::Absent => "absent",
            Self::Unseen => "unseen",
        }
    }
}

/// How sure the observer is.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, JsonSchema, Deserialize,
)]
#[serde(rename_all = "lowercase")]
pub enum Certainty {
    /// Said outright.
    Sure,
    /// Said with "maybe", "-ish", "?" or the like.
    Hedged,
}

impl Certainty {
    /// The word for it.
    pub const fn text(self) -> &'static str {
        match self {
            Self::Sure => "sure",
            Self::Hedged => "hedged",
        }
    }
}

/// What was seen.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum Value {
    /// A term of the lexicon.
    Term(Name),
    /// Something measured, counted or compared, written out.
    Made(String),
}

impl Value {
    /// The value as text.
    pub fn text<'a>(&'a self, lexicon: &'a Lexicon) -> &'a str {
        match self {
            Self::Term(name) => lexicon.names.text(*name),
            Self::Made(text) => text,
        }
    }

    /// The term, if it is one.
    pub const fn term(&self) -> Name {
        match self {
            Self::Term(name) => *name,
            Self::Made(_) => Name::NONE,
        }
    }
}

/// A field mark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Trait {
    /// Which bird of the note, from 1.
    pub bird: u32,
    /// Where: a standard area.
    pub area: Name,
    /// The area as the note has it, before it was brought to standard terms.
    pub written_area: Name,
    /// Which property.
    pub aspect: Name,
    /// What was seen.
    pub value: Value,
    /// Pale, dark, ...; none if not said.
    pub tone: Name,
    /// How much of the area; none if not said.
    pub extent: Name,
    /// Where within the area; none if not said.
    pub position: Name,
    /// How a size compares; none if not said.
    pub relation: Name,
    /// With what it is compared.
    pub against: Name,
    /// The range of mass a size stands for, in grams.
    pub mass: Option<MassRange>,
    /// Whether it was seen.
    pub polarity: Polarity,
    /// How sure.
    pub certainty: Certainty,
    /// The pieces of the note that say it. Not stored with the built-in accounts.
    #[serde(skip)]
    pub parts: Parts,
    /// The rule that made it, by its place among the rules. Not stored with the built-in accounts.
    #[serde(skip)]
    pub rule: usize,
}

impl Trait {
    /// From the first byte of its evidence to the last.
    pub fn span(&self) -> Span {
        self.parts.hull().unwrap_or_default()
    }

    /// The note's own words, pieces parted by ` … `.
    pub fn as_written<'n>(&self, note: &'n str) -> Cow<'n, str> {
        let parts = self.parts.as_slice();
        let joined = |pair: &[Span]| {
            let between = note.get(pair[0].end..pair[1].start);
            // A space, nearly always.
            between == Some(" ")
                || between.is_some_and(|b| b.chars().all(|c| c.is_whitespace() || c == '-'))
        };
        if parts.windows(2).all(joined) {
            return Cow::Borrowed(self.span().of(note));
        }
        let mut out = String::new();
        let mut last: Option<Span> = None;
        for &part in parts {
            if let Some(last) = last {
                let between = note.get(last.end..part.start).unwrap_or("");
                let joined = between.chars().all(|c| c.is_whitespace() || c == '-');
                out.push_str(if joined { between } else { " … " });
            }
            out.push_str(part.of(note));
            last = Some(part);
        }
        Cow::Owned(out)
    }

    /// Whether two traits say the same.
    pub fn says_same(&self, other: &Self) -> bool {
        self.bird == other.bird
            && self.area == other.area
            && self.aspect == other.aspect
            && self.value == other.value
            && self.polarity == other.polarity
    }
}
