//! A term of the vocabulary, as plain values of a fixed size; what is for people stands in [`TermText`].

use super::kinds::KindId;
use super::names::Name;
use super::record::{Record, Slot};
use crate::diagnostic::Source;
use crate::span::Span;
use zerocopy::{FromBytes, Immutable, IntoBytes};

/// A term of the vocabulary.
#[derive(Clone, Copy, Debug, FromBytes, IntoBytes, Immutable)]
#[repr(C)]
pub struct Term {
    /// Numbers that it says; none is no number.
    number: f32,
    upper: f32,
    slots: [Name; Slot::ALL.len()],
    /// Its id.
    pub id: Name,
    /// The region it belongs to; none for everywhere.
    pub region: Name,
    apart: [Name; 2],
    /// Where a reading of it may or may not stand, by its place among the contexts.
    pub(super) context: u16,
    /// Its kind.
    pub kind: KindId,
    reach: u8,
    points: u8,
    _rest: u8,
}

/// What of a term is for people. Not stored with the built-in tables.
#[derive(Clone, Debug, Default)]
pub struct TermText {
    /// What it means.
    pub means: String,
    /// The forms as written in the lexicon, its own id first.
    pub forms: Vec<String>,
    /// Forms that only sound like one of those, as a machine that takes dictation writes them.
    pub heard: Vec<String>,
    /// The file it comes from.
    pub source: Source,
    /// Where in that file.
    pub span: Span,
}

/// What there is to say of a term beside its kind and id.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Bearing {
    pub region: Name,
    pub context: u16,
    pub reach: Reach,
    pub points: Option<Points>,
    pub apart: Option<(Name, Name)>,
}

impl Term {
    pub(super) fn of(kind: KindId, id: Name, record: Record, bearing: Bearing) -> Self {
        let Bearing { region, context, reach, points, apart } = bearing;
        Self {
            number: record.number.unwrap_or(f32::NAN),
            upper: record.upper.unwrap_or(f32::NAN),
            slots: Slot::ALL.map(|slot| record.get(slot)),
            id,
            region,
            apart: apart.map_or([Name::NONE; 2], |(class, value)| [class, value]),
            context,
            kind,
            reach: reach as u8,
            points: points.map_or(0, |p| p as u8 + 1),
            _rest: 0,
        }
    }

    /// What it says.
    pub fn record(&self) -> Record {
        let said = |number: f32| (!number.is_nan()).then_some(number);
        Record::of(self.slots, said(self.number), said(self.upper))
    }

    /// What it says in one slot.
    pub const fn get(&self, slot: Slot) -> Name {
        self.slots[slot as usize]
    }

    /// Which way its force reaches, for kinds that have one.
    pub fn reach(&self) -> Reach {
        Reach::ALL.into_iter().find(|r| *r as u8 == self.reach).unwrap_or_default()
    }

    /// Which bird of several it points to, if it does.
    pub fn points(&self) -> Option<Points> {
        let at = usize::from(self.points).checked_sub(1)?;
        Points::ALL.get(at).map(|(_, points)| *points)
    }

    /// What sets a bird apart from others of the note, as class and value: sex and female.
    pub fn apart(&self) -> Option<(Name, Name)> {
        let [class, value] = self.apart;
        class.is_some().then_some((class, value))
    }
}

/// Which way a word's force reaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Reach {
    /// To what follows.
    #[default]
    Forward,
    /// To what stands before.
    Back,
    /// To what follows; where nothing does, to what stands before.
    Either,
}

impl Reach {
    const ALL: [Self; 3] = [Self::Forward, Self::Back, Self::Either];
}

/// Which bird of several a word points to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Points {
    /// The first.
    First,
    /// The second.
    Second,
    /// The third.
    Third,
    /// One of them, where more follow.
    One,
    /// The other of two.
    Other,
    /// One more.
    Another,
    /// All of them.
    Both,
}

impl Points {
    /// Each as written in the lexicon, in the order of its number.
    const ALL: [(&'static str, Self); 7] = [
        ("first", Self::First),
        ("second", Self::Second),
        ("third", Self::Third),
        ("one", Self::One),
        ("other", Self::Other),
        ("another", Self::Another),
        ("both", Self::Both),
    ];

    /// As written in the lexicon.
    pub(super) fn find(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|(name, _)| *name == text).map(|(_, points)| points)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gives_back_what_it_was_made_of() {
        let mut record = Record::default().with(Slot::Tone, Name(7));
        record.number = Some(3.0);
        let bearing = Bearing {
            reach: Reach::Either,
            points: Some(Points::Both),
            apart: Some((Name(4), Name(5))),
            ..Bearing::default()
        };
        let term = Term::of(KindId(2), Name(9), record, bearing);
        assert_eq!(term.record(), record);
        assert_eq!((term.reach(), term.points()), (bearing.reach, bearing.points));
        assert_eq!(term.apart(), bearing.apart);
        let plain = Term::of(KindId(2), Name(9), Record::default(), Bearing::default());
        assert_eq!((plain.reach(), plain.points(), plain.apart()), (Reach::Forward, None, None));
    }
}
