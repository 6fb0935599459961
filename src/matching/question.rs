//! What a trait asks of every form, without what the comparison does not need.

use super::areas::Areas;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::scale::MassRange;
use crate::traits::{Polarity, Trait, Value};

/// Names the comparison needs.
#[derive(Clone, Debug)]
pub struct Aspects {
    /// `colour`.
    pub colour: Name,
    /// `size`.
    pub size: Name,
    /// `mark`: a marking that is there or not.
    pub mark: Name,
    /// `sex-age`.
    pub sex_age: Name,
    /// The whole bird.
    pub bird: Name,
    /// Aspects that say nothing of the kind of bird.
    idle: [Name; 2],
    /// Extents that are said of a whole part.
    whole: Vec<Name>,
}

/// How much of a part a colour is said of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Reach {
    /// Nothing is said of it.
    #[default]
    Untold,
    /// All of the part, or most: its ground.
    Whole,
    /// A marking on it, an edge, a patch.
    Marking,
}

impl Aspects {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let find = |text| lexicon.names.find(text);
        Self {
            colour: find("colour"),
            size: find("size"),
            mark: find("mark"),
            sex_age: find("sex-age"),
            bird: find("bird"),
            idle: [find("count"), find("viewing")],
            whole: lexicon.others("reach").flat_map(|e| e.items("words")).map(find).collect(),
        }
    }

    /// How much of its part a colour is said of.
    pub fn reach(&self, one: &Trait) -> Reach {
        if self.whole.contains(&one.extent) {
            Reach::Whole
        } else if one.position.is_some() || one.extent.is_some() {
            Reach::Marking
        } else {
            Reach::Untold
        }
    }
}

/// The key of a row of chances.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Question {
    /// Where, by its place among the areas.
    pub area: usize,
    /// Which property.
    pub aspect: Name,
    /// What.
    pub value: Name,
    /// Pale, dark, ...; none if not said.
    pub tone: Name,
    /// How much of the part, if it is a colour.
    pub reach: Reach,
    /// The range of mass a size stands for, in grams, as bits: an exact key.
    mass: Option<(u32, u32)>,
    /// Whether it was looked for and is not there.
    pub absent: bool,
    /// The kind of bird by which a size is judged; none for all birds.
    pub among: Name,
}

impl Question {
    /// What a trait asks; nothing if no species could answer to it.
    pub fn of(lexicon: &Lexicon, areas: &Areas, aspects: &Aspects, one: &Trait) -> Option<Self> {
        if aspects.idle.contains(&one.aspect) || one.polarity == Polarity::Unseen {
            return None;
        }
        let value = match &one.value {
            Value::Term(name) => *name,
            Value::Made(text) => lexicon.names.find(text),
        };
        let whole_size = one.aspect == aspects.size && one.area == aspects.bird;
        if if whole_size { one.mass.is_none() } else { !value.is_some() } {
            return None;
        }
        Some(Self {
            area: areas.index(one.area)?,
            aspect: one.aspect,
            value,
            tone: if one.tone == value { Name::NONE } else { one.tone },
            reach: if one.aspect == aspects.colour { aspects.reach(one) } else { Reach::Untold },
            mass: one
                .mass
                .filter(|_| whole_size)
                .map(|range| (range.low.to_bits(), range.high.to_bits())),
            absent: one.polarity == Polarity::Absent,
            among: Name::NONE,
        })
    }

    /// The same, a size being judged among birds of a kind.
    #[must_use]
    pub const fn among(mut self, kind: Name) -> Self {
        self.among = kind;
        self
    }

    /// The range of mass, if it asks for the size of the bird.
    pub fn mass(&self) -> Option<MassRange> {
        self.mass
            .map(|(low, high)| MassRange { low: f32::from_bits(low), high: f32::from_bits(high) })
    }
}
