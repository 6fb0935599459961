//! What rules made of stretches of words of the same kinds, met before.
//!
//! What a rule comes to at a place hangs on the classes of the words from there up to the farthest one that
//! was looked at, and now and then on that of the word before. Notes are built alike ("a white belly and", "a black
//! wing with"), so what was found is kept under those classes, and met again it is taken as it stands.
//!
//! It never changes a reading: what the words themselves say is read anew each time.
//!
//! The stretches are a tree of words: a place where something is known lies behind the words it hangs on. Rules
//! also leave out what needs a word that does not come any more ([`crate::rules::needs`]); so what was found holds
//! only where none of the words missed comes behind the stretch either.

use super::makings::{self, Kept, Makings};
use super::plan::{Class, END};
use crate::rules::needs::Needed;
use crate::rules::program::small;
use rustc_hash::FxHashMap;

/// How many places of the tree, and how many records of what was found with their makings, are kept; all are
/// forgotten when there are more. Some 10 MB at most.
const MOST_NODES: usize = 1 << 16;
const MOST_KEPT: usize = 1 << 15;
const MOST_MAKINGS: usize = 1 << 18;

/// How many stretches that were met once are remembered, four at a place.
const ONCE: usize = 1 << 15;

/// What rules made of a stretch.
#[derive(Clone, Copy, Debug, Default)]
pub struct Found {
    /// The rule,
    pub rule: u32,
    /// and how many words it took; none where no rule fits.
    pub length: u32,
    /// How its records come about,
    pub makings: makings::OfMatch,
    kept: (u32, u32),
    /// What must not come behind the stretch.
    missed: Needed,
}

/// What is known at a place of the tree, in one number, since places should be small.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Known(u32);

impl Known {
    /// Nothing yet: the next word decides.
    const NOTHING: Self = Self(0);
    /// The word before the stretch decides.
    const ASK_BEFORE: Self = Self(1);

    /// What was found, by its place in the list.
    const fn found(place: u32) -> Self {
        Self(place + 2)
    }

    const fn place(self) -> Option<u32> {
        self.0.checked_sub(2)
    }
}

/// A way on from a place: the class of a word, or, marked by a bit, that of the word before. There are
/// less than a thousand classes, see [`super::plan`].
type Way = u16;

const WAY_BITS: u32 = 11;
const BEFORE: Way = 1 << (WAY_BITS - 1);

/// A place of the tree. Most have one way on, which is kept in place.
#[derive(Clone, Copy, Debug)]
struct Node {
    known: Known,
    way: Way,
    to: u32,
}

impl Node {
    /// No way leads to the first place.
    const NEW: Self = Self { known: Known::NOTHING, way: 0, to: 0 };
}

/// Where a stretch that is not known left the tree.
#[derive(Clone, Copy, Debug)]
pub struct Miss {
    node: u32,
    /// How many of its words the tree has, with that of the way that is missing.
    depth: usize,
    /// The way that is missing.
    way: Way,
    /// Whether the word before is told.
    told_before: bool,
}

/// A stretch: the classes of words, up to the end of what is read.
#[derive(Clone, Copy, Debug)]
pub struct Stretch<'a> {
    /// The words, and the end behind them.
    pub words: &'a [Class],
    /// For each of them what rules need and is there or comes behind it.
    pub ahead: &'a [Needed],
    /// The word before.
    pub before: Class,
}

impl Stretch<'_> {
    /// The way on behind so many words.
    fn way(&self, depth: usize) -> Way {
        self.words.get(depth).copied().unwrap_or(END)
    }
}

/// What was made of a stretch, told in places of the tokens.
#[derive(Clone, Copy, Debug)]
pub struct Made<'a> {
    /// Where it starts.
    pub start: u16,
    /// The rule,
    pub rule: usize,
    /// and how many words it took; none where no rule fits.
    pub length: usize,
    /// Its records,
    pub kept: &'a [Kept],
    /// and how they come about.
    pub makings: &'a Makings,
}

/// How far rules looked.
#[derive(Clone, Copy, Debug)]
pub struct Looked {
    /// At how many words from the stretch's start on,
    pub words: usize,
    /// whether at the word before as well,
    pub before: bool,
    /// and what of that which rules need did not come: had it, they would have looked farther.
    pub missed: Needed,
}

/// Stretches of words, with what rules made of them.
#[derive(Clone, Debug)]
pub struct Met {
    nodes: Vec<Node>,
    /// Ways on from places that have several.
    ways: FxHashMap<u32, u32>,
    found: Vec<Found>,
    /// How the records of what was found come about, told from the start of the stretch on,
    pub makings: Makings,
    /// and the records.
    kept: Vec<Kept>,
    /// Marks of stretches met once, at each place the last few.
    once: Box<[[u16; 4]]>,
}

impl Default for Met {
    fn default() -> Self {
        Self {
            nodes: vec![Node::NEW],
            ways: FxHashMap::default(),
            found: Vec::new(),
            makings: Makings::default(),
            kept: Vec::new(),
            once: vec![[0; 4]; ONCE / 4].into(),
        }
    }
}

impl Met {
    /// Forgets everything.
    pub fn clear(&mut self) {
        self.nodes.clear();
        self.nodes.push(Node::NEW);
        self.ways.clear();
        self.found.clear();
        self.makings.clear();
        self.kept.clear();
    }

    /// Whether so much is kept that it is time to forget it.
    pub fn is_full(&self) -> bool {
        self.nodes.len() > MOST_NODES
            || self.kept.len() > MOST_KEPT
            || self.makings.count() > MOST_MAKINGS
    }

    /// What rules made of a stretch that starts so.
    pub fn find(&self, stretch: Stretch<'_>) -> Result<Found, Miss> {
        let (mut node, mut depth, mut told_before) = (0, 0, false);
        loop {
            let here = self.nodes[node as usize];
            let way = if here.known == Known::ASK_BEFORE {
                told_before = true;
                BEFORE | stretch.before
            } else {
                if let Some(found) = here.known.place()
                    && self.holds(found, stretch, depth)
                {
                    return Ok(self.found[found as usize]);
                }
                depth += 1;
                stretch.way(depth - 1)
            };
            node = match here.to {
                to if to != 0 && here.way == way => to,
                _ => match self.ways.get(&both(node, way)) {
                    Some(&to) => to,
                    None => return Err(Miss { node, depth, way, told_before }),
                },
            };
        }
    }

    /// Whether a stretch was met before, so that what was found of it is worth keeping: most are never met again.
    pub fn is_met_again(&mut self, stretch: Stretch<'_>, looked: Looked) -> bool {
        let words = stretch.words.iter().take(looked.words);
        let before = looked.before.then_some(&stretch.before);
        let mix = |hash: u64, &class: &Class| {
            (hash.rotate_left(5) ^ u64::from(class)).wrapping_mul(0x517c_c1b7_2722_0a95)
        };
        let hash = words.chain(before).fold(looked.words as u64, mix);
        let (place, mark) = ((hash >> 48) as usize % (ONCE / 4), (hash >> 32) as u16 | 1);
        let marks = &mut self.once[place];
        if marks.contains(&mark) {
            return true;
        }
        let [first, second, third, _] = *marks;
        *marks = [mark, first, second, third];
        false
    }

    /// Keeps what was made of a stretch that was not known.
    pub fn keep(&mut self, stretch: Stretch<'_>, miss: Miss, looked: Looked, made: Made<'_>) {
        let mut node = self.add(miss.node, miss.way);
        for depth in miss.depth..looked.words {
            node = self.add(node, stretch.way(depth));
        }
        if looked.before && !miss.told_before {
            self.nodes[node as usize].known = Known::ASK_BEFORE;
            node = self.add(node, BEFORE | stretch.before);
        }
        self.nodes[node as usize].known = Known::found(small(self.found.len()));
        let from = small(self.kept.len());
        self.kept.extend(
            made.kept.iter().map(|kept| Kept {
                parts: kept.parts.map(|place| place.from(made.start)),
                ..*kept
            }),
        );
        self.found.push(Found {
            rule: small(made.rule),
            length: small(made.length),
            makings: self.makings.append(made.makings, made.start),
            kept: (from, small(self.kept.len())),
            missed: looked.missed,
        });
    }

    /// The records of what was found.
    pub fn kept(&self, found: Found) -> &[Kept] {
        &self.kept[found.kept.0 as usize..found.kept.1 as usize]
    }

    /// Whether what was found of so many words holds in view of those behind them.
    fn holds(&self, found: u32, stretch: Stretch<'_>, depth: usize) -> bool {
        let ahead = stretch.ahead.get(depth).copied().unwrap_or_default();
        !self.found[found as usize].missed.meets(ahead)
    }

    /// A new place, behind another.
    fn add(&mut self, node: u32, way: Way) -> u32 {
        let to = small(self.nodes.len());
        self.nodes.push(Node::NEW);
        let from = &mut self.nodes[node as usize];
        if from.to == 0 {
            (from.way, from.to) = (way, to);
        } else {
            self.ways.insert(both(node, way), to);
        }
        to
    }
}

/// A place and a way on from it.
const fn both(node: u32, way: Way) -> u32 {
    node << WAY_BITS | way as u32
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What is kept of a match of `length` words among `words` that looked at `looked` of them.
    fn keep(met: &mut Met, words: &[Class], before: Class, length: usize, looked: Looked) {
        let ahead = vec![Needed::default(); words.len()];
        let stretch = Stretch { words, ahead: &ahead, before };
        let Err(miss) = met.find(stretch) else { panic!("{words:?} is known") };
        let makings = &Makings::default();
        met.keep(stretch, miss, looked, Made { start: 0, rule: 7, length, kept: &[], makings });
    }

    fn found(met: &Met, words: &[Class], before: Class, ahead: Needed) -> Option<u32> {
        let ahead = vec![ahead; words.len()];
        met.find(Stretch { words, ahead: &ahead, before }).ok().map(|found| found.length)
    }

    fn looked(words: usize) -> Looked {
        Looked { words, before: false, missed: Needed::default() }
    }

    #[test]
    fn a_stretch_is_known_by_the_words_that_were_looked_at() {
        let mut met = Met::default();
        let none = Needed::default();
        keep(&mut met, &[1, 2, 3, 4, END], 9, 2, looked(3));
        assert_eq!(found(&met, &[1, 2, 3, 8, 8, END], 5, none), Some(2));
        assert_eq!(found(&met, &[1, 2, 4, 3, END], 9, none), None);
        assert_eq!(found(&met, &[1, 2, END], 9, none), None);
        keep(&mut met, &[1, 2, END], 9, 1, looked(3));
        assert_eq!(found(&met, &[1, 2, END], 5, none), Some(1));
        assert_eq!(found(&met, &[1, 2, 3, END], 5, none), Some(2));
    }

    #[test]
    fn the_word_before_counts_where_it_was_looked_at() {
        let mut met = Met::default();
        let none = Needed::default();
        let back = |words| Looked { before: true, ..looked(words) };
        keep(&mut met, &[1, 2, END], 9, 2, back(2));
        assert_eq!(found(&met, &[1, 2, 3, END], 9, none), Some(2));
        assert_eq!(found(&met, &[1, 2, 3, END], 8, none), None);
        // With another word before it, it looked farther, or not so far.
        keep(&mut met, &[1, 2, 3, END], 8, 1, back(3));
        keep(&mut met, &[1, 2, 3, END], 7, 0, back(1));
        let all = [9, 8, 7].map(|before| found(&met, &[1, 2, 3, END], before, none));
        assert_eq!(all, [Some(2), Some(1), Some(0)]);
    }

    #[test]
    fn what_was_missed_must_not_come_behind_the_stretch() {
        let mut met = Met::default();
        let missed = Needed::bit(70);
        keep(&mut met, &[1, 2, END], 9, 2, Looked { missed, ..looked(2) });
        let words = [1, 2, 3, 4, END];
        assert_eq!(found(&met, &words, 9, Needed::bit(6)), Some(2));
        assert_eq!(found(&met, &words, 9, missed.or(Needed::bit(6))), None);
    }

    #[test]
    fn what_is_met_a_second_time_is_met_again() {
        let mut met = Met::default();
        let stretch = |words| Stretch { words, ahead: &[], before: 9 };
        let again: Vec<bool> = [&[1, 2, 3][..], &[1, 2, 4], &[1, 2, 3], &[1, 2]]
            .map(|words| met.is_met_again(stretch(words), looked(words.len())))
            .into();
        assert_eq!(again, [false, false, true, false]);
    }
}
