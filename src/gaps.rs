//! Which marks of a full description a note records, and which it leaves out.

use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::traits::{Polarity, Trait};
use schemars::JsonSchema;
use serde::Serialize;

/// What a note says of a mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum State {
    /// It is recorded.
    Recorded,
    /// It was looked for and is not there.
    Absent,
    /// It could not be seen.
    Unseen,
    /// The note does not speak of it.
    LeftOut,
}

impl State {
    /// The words for it.
    pub const fn text(self) -> &'static str {
        match self {
            Self::Recorded => "recorded",
            Self::Absent => "looked for, not there",
            Self::Unseen => "not seen",
            Self::LeftOut => "left out",
        }
    }
}

/// A mark of a full description.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DescriptionMark {
    /// Its id.
    pub id: String,
    /// Its name, for people.
    pub title: String,
    areas: Vec<Name>,
    aspects: Vec<Name>,
    /// Why it matters, in a line.
    pub why: String,
    /// What to look for, in a line.
    pub look: String,
}

/// A mark and what a note says of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Gap<'a> {
    /// The mark.
    pub mark: &'a DescriptionMark,
    /// What the note says.
    pub state: State,
}

/// The marks of a full description, in their order.
pub fn description(lexicon: &Lexicon) -> Vec<DescriptionMark> {
    let names = |entry: &crate::lexicon::entry::Entry, key: &str| {
        entry.items(key).map(|item| lexicon.names.find(item)).collect()
    };
    lexicon
        .others("description")
        .map(|entry| DescriptionMark {
            id: entry.id.clone(),
            title: entry.get("title").unwrap_or(&entry.id).to_owned(),
            areas: names(entry, "areas"),
            aspects: names(entry, "aspects"),
            why: entry.get("why").unwrap_or_default().to_owned(),
            look: entry.get("look").unwrap_or_default().to_owned(),
        })
        .collect()
}

impl DescriptionMark {
    /// Whether a trait speaks of this mark.
    pub fn holds(&self, lexicon: &Lexicon, one: &Trait) -> bool {
        let bird = lexicon.names.find("bird");
        let in_area = self.areas.iter().any(|&area| {
            one.area == area || (area != bird && lexicon.topography.covers(area, one.area))
        });
        let unseen_part = one.polarity == Polarity::Unseen && one.area != bird;
        in_area && (unseen_part || self.aspects.contains(&one.aspect))
    }
}

/// What the traits say of each mark.
pub fn gaps<'a>(
    lexicon: &Lexicon,
    description: &'a [DescriptionMark],
    traits: &[Trait],
) -> Vec<Gap<'a>> {
    description
        .iter()
        .map(|mark| {
            let state = traits
                .iter()
                .filter(|t| mark.holds(lexicon, t))
                .map(|t| match t.polarity {
                    Polarity::Present => State::Recorded,
                    Polarity::Absent => State::Absent,
                    Polarity::Unseen => State::Unseen,
                })
                .min()
                .unwrap_or(State::LeftOut);
            Gap { mark, state }
        })
        .collect()
}
