//! What a word or a phrase contributes to a trait: a few named slots.
//!
//! Rules build traits out of records with two operations: `+` puts lists of records side by side,
//! `*` merges each with each. On a merge the left record keeps what it has and the right one
//! fills what is missing.

use super::names::Name;
use crate::span::Span;
use serde::{Deserialize, Serialize};

/// What a record can say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[repr(u8)]
pub enum Slot {
    /// Where on the bird.
    Area,
    /// Which property is spoken of: colour, pattern, shape, ...
    Aspect,
    /// What was seen.
    Value,
    /// Pale, dark, bright, ...
    Tone,
    /// How much of the area.
    Extent,
    /// Where within the area.
    Position,
    /// How it compares.
    Relation,
    /// What it is compared with.
    Against,
    /// The unit of a number.
    Unit,
    /// Present, absent or unseen.
    Polarity,
    /// Sure or hedged.
    Certainty,
}

impl Slot {
    /// Every slot, in the order of its number.
    pub const ALL: [Self; 11] = [
        Self::Area,
        Self::Aspect,
        Self::Value,
        Self::Tone,
        Self::Extent,
        Self::Position,
        Self::Relation,
        Self::Against,
        Self::Unit,
        Self::Polarity,
        Self::Certainty,
    ];

    /// The name used in lexicon files.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Area => "area",
            Self::Aspect => "aspect",
            Self::Value => "value",
            Self::Tone => "tone",
            Self::Extent => "extent",
            Self::Position => "position",
            Self::Relation => "relation",
            Self::Against => "against",
            Self::Unit => "unit",
            Self::Polarity => "polarity",
            Self::Certainty => "certainty",
        }
    }

    /// The slot of that name.
    pub fn find(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|slot| slot.name() == name)
    }
}

/// The most separate pieces of a note one trait's evidence is kept as; more are joined.
const MOST_PARTS: usize = 6;

/// A piece of a note: a range of its bytes, or of its words while rules run.
pub trait Piece: Copy + Default + PartialEq {
    /// Where it starts.
    fn start(self) -> usize;
    /// The smallest piece that holds both.
    #[must_use]
    fn with(self, other: Self) -> Self;
}

impl Piece for Span {
    fn start(self) -> usize {
        self.start
    }

    fn with(self, other: Self) -> Self {
        self.join(other)
    }
}

/// The pieces of a note that speak for a record, in order.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Parts<P = Span> {
    spans: [P; MOST_PARTS],
    count: u8,
}

impl<P: Piece> Parts<P> {
    /// One piece.
    pub fn one(span: P) -> Self {
        let mut parts = Self::default();
        parts.add(span);
        parts
    }

    /// The pieces.
    pub fn as_slice(&self) -> &[P] {
        &self.spans[..usize::from(self.count)]
    }

    /// Adds a piece and keeps them in order, joined where they touch or there are too many.
    #[inline]
    pub fn add(&mut self, span: P) {
        let n = usize::from(self.count);
        // Most often it comes last.
        let last = n.checked_sub(1).map(|last| self.spans[last].start());
        if n < MOST_PARTS && last.is_none_or(|last| last < span.start()) {
            self.spans[n] = span;
            self.count += 1;
        } else {
            self.put_between(span);
        }
    }

    fn put_between(&mut self, span: P) {
        if self.as_slice().contains(&span) {
            return;
        }
        let n = usize::from(self.count);
        let at = self.as_slice().iter().position(|s| s.start() > span.start()).unwrap_or(n);
        if n == MOST_PARTS {
            let at = at.saturating_sub(1);
            self.spans[at] = self.spans[at].with(span);
            return;
        }
        self.spans.copy_within(at..n, at + 1);
        self.spans[at] = span;
        self.count += 1;
    }

    /// Adds every piece of another.
    #[inline]
    pub fn add_all(&mut self, other: &Self) {
        for &span in other.as_slice() {
            self.add(span);
        }
    }

    /// From the first byte to the last.
    pub fn hull(&self) -> Option<P> {
        self.as_slice().iter().copied().reduce(P::with)
    }

    /// The same pieces told in another way, which keeps their order.
    #[inline]
    pub fn map<Q: Piece>(&self, mut to: impl FnMut(P) -> Q) -> Parts<Q> {
        let mut out = Parts::default();
        for (new, &old) in out.spans.iter_mut().zip(self.as_slice()) {
            *new = to(old);
        }
        out.count = self.count;
        out
    }
}

/// A record: what is said.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Record {
    slots: [Name; Slot::ALL.len()],
    /// A number that was said.
    pub number: Option<f32>,
    /// The upper end, where a range was said.
    pub upper: Option<f32>,
}

impl Record {
    /// A record that says this, slot by slot.
    pub const fn of(
        slots: [Name; Slot::ALL.len()],
        number: Option<f32>,
        upper: Option<f32>,
    ) -> Self {
        Self { slots, number, upper }
    }

    /// What a slot says.
    pub const fn get(&self, slot: Slot) -> Name {
        self.slots[slot as usize]
    }

    /// Sets a slot.
    pub const fn set(&mut self, slot: Slot, name: Name) {
        self.slots[slot as usize] = name;
    }

    /// The same with a slot set.
    #[must_use]
    pub const fn with(mut self, slot: Slot, name: Name) -> Self {
        self.set(slot, name);
        self
    }

    /// Both together; where both say something, the left one stays.
    #[must_use]
    pub fn merge(&self, other: &Self) -> Self {
        let mut out = *self;
        out.fill(other);
        out
    }

    /// Fills what is missing from another.
    #[inline]
    pub fn fill(&mut self, other: &Self) {
        for (mine, theirs) in self.slots.iter_mut().zip(other.slots) {
            *mine = mine.or(theirs);
        }
        self.number = self.number.or(other.number);
        self.upper = self.upper.or(other.upper);
    }
}

/// A record in a note, with the pieces of the note that say it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Said<P = Span> {
    /// What is said.
    pub record: Record,
    /// Where.
    pub parts: Parts<P>,
}

impl<P: Piece> Said<P> {
    /// A record said in one piece.
    #[inline]
    pub fn at(record: Record, span: P) -> Self {
        Self { record, parts: Parts::one(span) }
    }

    /// What a slot says.
    pub const fn get(&self, slot: Slot) -> Name {
        self.record.get(slot)
    }

    /// Both together, with the evidence of both.
    #[must_use]
    pub fn merge(&self, other: &Self) -> Self {
        let mut out = *self;
        out.fill(other);
        out
    }

    /// Fills what is missing from another, and adds its evidence.
    #[inline]
    pub fn fill(&mut self, other: &Self) {
        self.record.fill(&other.record);
        self.parts.add_all(&other.parts);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn merging_keeps_the_left_and_fills_from_the_right() {
        let a = Record::default().with(Slot::Area, Name(3));
        let b = Record::default().with(Slot::Area, Name(4)).with(Slot::Value, Name(5));
        let both = a.merge(&b);
        assert_eq!((both.get(Slot::Area), both.get(Slot::Value)), (Name(3), Name(5)));
    }

    #[test]
    fn parts_stay_in_order_and_bounded() {
        let mut parts = Parts::default();
        for start in [30, 10, 20, 50, 40, 60, 70, 5] {
            parts.add(Span::new(start, start + 2));
        }
        let starts: Vec<usize> = parts.as_slice().iter().map(|s| s.start).collect();
        assert!(starts.is_sorted());
        assert_eq!(parts.hull(), Some(Span::new(5, 72)));
    }
}
