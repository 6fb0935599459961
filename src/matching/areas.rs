//! How much a statement about one part says of another.
//!
//! People name the part they mean, a part near it, or a coarser one. For each part that is said there
//! is a weight for each part an account can speak of: by their places in the tree of parts, and by
//! `meant` entries of the lexicon where people mean something else than the tree suggests.

use super::weights::Weights;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::shelf::{Hand, List, Misplaced, Shelved};

/// No place in the table.
const NOWHERE: u8 = u8::MAX;

/// For each pair of parts, what they are to each other.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Areas {
    /// The place of an area by its name.
    index: List<u8>,
    names: List<Name>,
    /// 1 for those that only some birds show.
    optional: List<u8>,
    /// The main part of the bird that each area belongs to.
    main: List<Name>,
    /// Said times stated: how much what is stated counts for what is said.
    meant: List<f32>,
    /// The same: how near they are, for values that are not colours.
    near: List<f32>,
}

impl Shelved for Areas {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        hand.list(&mut self.index)?;
        hand.list(&mut self.names)?;
        hand.list(&mut self.optional)?;
        hand.list(&mut self.main)?;
        hand.list(&mut self.meant)?;
        hand.list(&mut self.near)
    }
}

impl Areas {
    /// Works the tables out from the tree of parts.
    pub fn of(lexicon: &Lexicon, weights: &Weights) -> Self {
        let names: Vec<Name> = lexicon.topography.iter().map(|a| a.id).collect();
        let mut index = vec![NOWHERE; lexicon.names.len()];
        for (i, name) in names.iter().enumerate() {
            index[usize::from(name.0)] = u8::try_from(i).unwrap_or(NOWHERE);
        }
        let optional = lexicon.topography.iter().map(|a| u8::from(a.optional)).collect();
        let main = names.iter().map(|name| main_part(lexicon, *name)).collect();
        let pairs = names.iter().flat_map(|&said| names.iter().map(move |&stated| (said, stated)));
        let relations: Vec<Relation> =
            pairs.map(|(said, stated)| Relation::of(lexicon, said, stated)).collect();
        let mut out = Self {
            index: index.into(),
            optional,
            main,
            meant: relations.iter().map(|relation| relation.meant(weights)).collect(),
            near: relations.iter().map(Relation::near).collect(),
            names: names.into(),
        };
        out.correct(lexicon);
        out
    }

    /// What the lexicon says people mean, in place of what the tree suggests.
    fn correct(&mut self, lexicon: &Lexicon) {
        for entry in lexicon.others("meant") {
            let Some(said) = self.index(lexicon.names.find(&entry.id)) else {
                continue;
            };
            for item in entry.items("weights") {
                let parsed = item.split_once(' ').and_then(|(area, weight)| {
                    let stated = self.index(lexicon.names.find(area))?;
                    Some((stated, weight.trim().parse::<f32>().ok()?))
                });
                if let Some((stated, weight)) = parsed {
                    let at = said * self.count() + stated;
                    self.meant.to_mut()[at] = weight;
                }
            }
        }
    }

    /// How many areas there are.
    pub fn count(&self) -> usize {
        self.names.len()
    }

    /// The place of an area in the table.
    pub fn index(&self, area: Name) -> Option<usize> {
        let at = *self.index.get(usize::from(area.0))?;
        (at != NOWHERE).then_some(usize::from(at))
    }

    /// Whether only some birds show it.
    pub fn optional(&self, area: usize) -> bool {
        self.optional[area] != 0
    }

    /// The main part of the bird (bill, wing, ...) that an area belongs to; none for the bird itself.
    pub fn main_part(&self, area: usize) -> Name {
        self.main[area]
    }

    /// For an area that is said, the weight of each area an account can speak of.
    pub fn meant(&self, said: usize) -> &[f32] {
        &self.meant[said * self.count()..(said + 1) * self.count()]
    }

    /// How near two areas are as places of a pattern or a shape: 1 the same, 0 unrelated.
    pub fn near(&self, said: usize, stated: usize) -> f32 {
        self.near[said * self.count() + stated]
    }
}

/// Where a stated area lies, seen from the one that is said.
enum Relation {
    Same,
    /// Within it, as that share of its surface.
    Within(f32),
    /// That many steps above it.
    Above(u8),
    /// The whole bird.
    Whole,
    /// Another part of the same part of the bird.
    Beside,
    /// Another of the main parts.
    Main,
    Elsewhere,
}

impl Relation {
    fn of(lexicon: &Lexicon, said: Name, stated: Name) -> Self {
        if said == stated {
            return Self::Same;
        }
        let topography = &lexicon.topography;
        if topography.covers(said, stated) {
            let (mut at, mut share) = (stated, 1.0);
            while at != said {
                share *= share_of(lexicon, at);
                at = topography.parent(at);
            }
            return Self::Within(share);
        }
        if topography.covers(stated, said) {
            if !topography.parent(stated).is_some() {
                return Self::Whole;
            }
            let (mut at, mut steps) = (said, 0);
            while at != stated {
                at = topography.parent(at);
                steps += 1;
            }
            return Self::Above(steps);
        }
        let parent = topography.parent(said);
        if parent != topography.parent(stated) || !parent.is_some() {
            Self::Elsewhere
        } else if topography.parent(parent).is_some() {
            Self::Beside
        } else {
            Self::Main
        }
    }

    fn meant(&self, weights: &Weights) -> f32 {
        match self {
            Self::Same => 1.0,
            Self::Within(share) => share.min(0.5) + weights.elsewhere,
            Self::Above(steps) => weights.whole * weights.step_down.powi(i32::from(*steps)),
            Self::Whole => weights.whole_bird,
            Self::Beside | Self::Main => weights.beside,
            Self::Elsewhere => weights.elsewhere,
        }
    }

    /// Patterns and shapes are told by whole parts: of a neighbour they say little, of other main parts
    /// nothing.
    const fn near(&self) -> f32 {
        match self {
            Self::Same => 1.0,
            Self::Within(_) => 0.6,
            Self::Above(_) | Self::Whole => 0.5,
            Self::Beside => 0.15,
            Self::Main | Self::Elsewhere => 0.0,
        }
    }
}

/// The ancestor of an area that lies right below the bird.
fn main_part(lexicon: &Lexicon, area: Name) -> Name {
    let topography = &lexicon.topography;
    let mut at = area;
    loop {
        let above = topography.parent(at);
        if !above.is_some() {
            return Name::NONE;
        }
        if !topography.parent(above).is_some() {
            return at;
        }
        at = above;
    }
}

/// The part of its parent's surface that an area takes up.
fn share_of(lexicon: &Lexicon, area: Name) -> f32 {
    let Some(one) = lexicon.topography.get(area) else {
        return 1.0;
    };
    let all: f32 = lexicon
        .topography
        .iter()
        .filter(|a| a.within == one.within && a.resolves.is_empty())
        .map(|a| a.share)
        .sum();
    if all > 0.0 { one.share / all } else { 1.0 }
}
