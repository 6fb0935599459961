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
    /// All of them, each at the place of its number.
    pub const ALL: [Self; 4] = [Self::Recorded, Self::Absent, Self::Unseen, Self::LeftOut];

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
    /// Why it matters, in a line.
    pub why: String,
    /// What to look for, in a line.
    pub look: String,
}

/// Marks of a full description, one bit each by their places.
pub type MarkSet = u64;

/// The marks of a full description, and which of them a trait speaks of.
#[derive(Clone, Debug)]
pub struct Description {
    /// The marks, in their order.
    pub marks: Vec<DescriptionMark>,
    bird: Name,
    /// By area, at the place of its name, the marks that a trait there may speak of.
    in_area: Vec<MarkSet>,
    /// By property, likewise, the marks it may speak of.
    of_aspect: Vec<MarkSet>,
}

impl Description {
    /// That of a lexicon: as many marks as a [`MarkSet`] holds.
    pub fn of(lexicon: &Lexicon) -> Self {
        let names = |entry: &crate::lexicon::entry::Entry, key: &str| -> Vec<Name> {
            entry.items(key).map(|item| lexicon.names.find(item)).collect()
        };
        let bird = lexicon.names.find("bird");
        let mut out = Self {
            marks: Vec::new(),
            bird,
            in_area: vec![0; lexicon.names.len()],
            of_aspect: vec![0; lexicon.names.len()],
        };
        for (n, entry) in lexicon.others("description").take(MarkSet::BITS as usize).enumerate() {
            out.marks.push(DescriptionMark {
                id: entry.id.clone(),
                title: entry.get("title").unwrap_or(&entry.id).to_owned(),
                why: entry.get("why").unwrap_or_default().to_owned(),
                look: entry.get("look").unwrap_or_default().to_owned(),
            });
            for outer in names(entry, "areas") {
                out.in_area[usize::from(outer.0)] |= 1 << n;
                // The bird as a whole is its own mark; any other area holds what lies within it.
                let within = lexicon.topography.iter().map(|a| a.id);
                for inner in
                    within.filter(|&i| outer != bird && lexicon.topography.covers(outer, i))
                {
                    out.in_area[usize::from(inner.0)] |= 1 << n;
                }
            }
            for aspect in names(entry, "aspects") {
                out.of_aspect[usize::from(aspect.0)] |= 1 << n;
            }
        }
        out
    }

    /// The marks a trait speaks of. A part that could not be seen speaks of all its marks.
    pub fn spoken_of(&self, one: &Trait) -> MarkSet {
        let marks = |of: &[MarkSet], name: Name| of.get(usize::from(name.0)).copied().unwrap_or(0);
        let in_area = marks(&self.in_area, one.area);
        if one.polarity == Polarity::Unseen && one.area != self.bird {
            return in_area;
        }
        in_area & marks(&self.of_aspect, one.aspect)
    }

    /// What traits say of the marks.
    pub fn told<'t>(&self, traits: impl IntoIterator<Item = &'t Trait>) -> Told {
        let mut told = Told::default();
        for one in traits {
            *match one.polarity {
                Polarity::Present => &mut told.recorded,
                Polarity::Absent => &mut told.absent,
                Polarity::Unseen => &mut told.unseen,
            } |= self.spoken_of(one);
        }
        let all = (0..self.marks.len()).fold(0, |set, n| set | 1 << n);
        // What was seen stands before what was not.
        told.absent &= !told.recorded;
        told.unseen &= !(told.recorded | told.absent);
        told.left_out = all & !(told.recorded | told.absent | told.unseen);
        told
    }

    /// The marks of a set.
    pub fn of_set(&self, set: MarkSet) -> impl Iterator<Item = &DescriptionMark> {
        self.marks.iter().enumerate().filter(move |(n, _)| set >> n & 1 == 1).map(|(_, m)| m)
    }
}

/// What a description of one bird says of each mark; no mark is in two of the sets.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// Marks that were seen.
    pub recorded: MarkSet,
    /// Marks that were looked for and are not there.
    pub absent: MarkSet,
    /// Marks that could not be seen.
    pub unseen: MarkSet,
    /// Marks it does not speak of.
    pub left_out: MarkSet,
}

impl Told {
    /// What it says of a mark, by its place.
    pub const fn state(&self, mark: usize) -> State {
        if self.recorded >> mark & 1 == 1 {
            State::Recorded
        } else if self.absent >> mark & 1 == 1 {
            State::Absent
        } else if self.unseen >> mark & 1 == 1 {
            State::Unseen
        } else {
            State::LeftOut
        }
    }
}
