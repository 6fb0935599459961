//! How much a statement about one part says of another.

use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use rustc_hash::FxHashMap;

/// For each pair of parts, how much what is stated of the second says of the first.
#[derive(Clone, Debug)]
pub struct Areas {
    index: FxHashMap<Name, usize>,
    count: usize,
    /// Surface of the second within the first; 1 where they are the same, 0 where it lies outside.
    within: Vec<f32>,
    /// Steps from the first up to the second; 0 where it is the same or not above.
    above: Vec<u8>,
}

impl Areas {
    /// Works the table out from the tree of parts.
    pub fn of(lexicon: &Lexicon) -> Self {
        let all: Vec<Name> = lexicon.topography.iter().map(|a| a.id).collect();
        let index: FxHashMap<Name, usize> =
            all.iter().enumerate().map(|(i, &id)| (id, i)).collect();
        let count = all.len();
        let mut out =
            Self { index, count, within: vec![0.0; count * count], above: vec![0; count * count] };
        for (i, &inner) in all.iter().enumerate() {
            let mut at = inner;
            let mut surface = 1.0;
            let mut steps = 0;
            while let Some(&outer) = out.index.get(&at) {
                out.within[outer * count + i] = surface;
                if steps > 0 {
                    out.above[i * count + outer] = steps;
                }
                surface *= share_of(lexicon, at);
                steps += 1;
                at = lexicon.topography.parent(at);
            }
        }
        out
    }

    /// The place of an area in the table.
    pub fn index(&self, area: Name) -> Option<usize> {
        self.index.get(&area).copied()
    }

    /// How much of `asked` the part `stated` takes up; 0 if it lies elsewhere.
    pub fn within(&self, asked: usize, stated: usize) -> f32 {
        self.within[asked * self.count + stated]
    }

    /// How many steps `stated` lies above `asked`; 0 if it does not.
    pub fn above(&self, asked: usize, stated: usize) -> u8 {
        self.above[asked * self.count + stated]
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
