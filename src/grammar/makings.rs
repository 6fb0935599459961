//! What a rule says, not worked out yet.
//!
//! Which records a rule yields, and from which words, hangs on the kinds of the words alone; what those words
//! say comes last. So a record is the number of a making here, and what was put together once serves for
//! all words of the same kinds, see [`super::met`].

use super::yields::Place;
use crate::lexicon::record::{Parts, Record, Slot};
use crate::rules::program::{SetId, small};

/// A record that is not worked out yet, by its number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Value(u32);

/// Says nothing.
pub const NOTHING: Value = Value(u32::MAX);

/// How a record comes about.
#[derive(Clone, Copy, Debug)]
enum Making {
    /// It is what the word at a place says when read as one of these kinds.
    Read(u16, SetId),
    /// It stands in a rule.
    Ready(u32),
    /// It is one filled by another.
    Both(Value, Value),
    /// It is one with a slot set to what a slot of another says.
    Slot(Value, Slot, Value, Slot),
    /// It is one whose upper end is the number of another.
    Upper(Value, Value),
}

/// A record that was kept, where it is said, and under which number.
#[derive(Clone, Copy, Debug)]
pub struct Kept {
    /// What is said.
    pub what: Value,
    /// Where.
    pub parts: Parts<Place>,
    /// The number.
    pub of: u16,
}

impl Kept {
    /// Fills what is missing from another, and adds its evidence.
    pub fn fill(&mut self, other: &Self, makings: &mut Makings) {
        self.what = makings.both(self.what, other.what);
        self.parts.add_all(&other.parts);
    }
}

/// How records come about.
#[derive(Clone, Debug, Default)]
pub struct Makings {
    list: Vec<Making>,
    ready: Vec<Record>,
}

/// The makings of one match, by their places.
#[derive(Clone, Copy, Debug, Default)]
pub struct OfMatch {
    list: (u32, u32),
    ready: u32,
}

impl Makings {
    /// Forgets all.
    pub fn clear(&mut self) {
        self.list.clear();
        self.ready.clear();
    }

    /// How many there are.
    pub const fn count(&self) -> usize {
        self.list.len()
    }

    /// What the word at `at` says.
    pub fn read(&mut self, at: usize, kinds: SetId) -> Value {
        self.add(Making::Read(u16::try_from(at).unwrap_or(u16::MAX), kinds))
    }

    /// What stands in a rule.
    pub fn stands(&mut self, record: &Record) -> Value {
        if *record == Record::default() {
            return NOTHING;
        }
        self.ready.push(*record);
        self.add(Making::Ready(small(self.ready.len() - 1)))
    }

    /// One filled by another.
    pub fn both(&mut self, one: Value, other: Value) -> Value {
        match (one, other) {
            (one, NOTHING) => one,
            (NOTHING, other) => other,
            _ => self.add(Making::Both(one, other)),
        }
    }

    /// One with a slot set to what a slot of another says, which may be nothing.
    pub fn with_slot(&mut self, of: Value, to: Slot, from: Value, slot: Slot) -> Value {
        self.add(Making::Slot(of, to, from, slot))
    }

    /// One whose upper end is the number of another, which may be none.
    pub fn with_upper(&mut self, of: Value, from: Value) -> Value {
        self.add(Making::Upper(of, from))
    }

    fn add(&mut self, making: Making) -> Value {
        self.list.push(making);
        Value(small(self.list.len() - 1))
    }

    /// All of them.
    pub fn all(&self) -> OfMatch {
        OfMatch { list: (0, small(self.list.len())), ready: 0 }
    }

    /// Adds all of another, with places of words told from the one at `start` on.
    pub fn append(&mut self, other: &Self, start: u16) -> OfMatch {
        let (from, ready) = (small(self.list.len()), small(self.ready.len()));
        self.list.extend(other.list.iter().map(|making| match *making {
            Making::Read(at, kinds) => Making::Read(at - start, kinds),
            making => making,
        }));
        self.ready.extend_from_slice(&other.ready);
        OfMatch { list: (from, small(self.list.len())), ready }
    }

    /// Fills what is missing of a record from what a value of a match comes to; `read` tells what a word says.
    pub fn fill(
        &self,
        of: OfMatch,
        value: Value,
        record: &mut Record,
        read: &impl Fn(u16, SetId) -> Record,
    ) {
        let list = &self.list[of.list.0 as usize..of.list.1 as usize];
        let Some(making) = list.get(value.0 as usize) else { return };
        let worked_out = |value: Value| {
            let mut record = Record::default();
            self.fill(of, value, &mut record, read);
            record
        };
        match *making {
            Making::Read(at, kinds) => record.fill(&read(at, kinds)),
            Making::Ready(at) => record.fill(&self.ready[(of.ready + at) as usize]),
            Making::Both(one, other) => {
                self.fill(of, one, record, read);
                self.fill(of, other, record, read);
            }
            Making::Slot(one, to, other, slot) => {
                record.fill(&worked_out(one).with(to, worked_out(other).get(slot)));
            }
            Making::Upper(one, other) => {
                let mut made = worked_out(one);
                made.upper = worked_out(other).number;
                record.fill(&made);
            }
        }
    }
}
