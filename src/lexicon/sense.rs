//! One reading of a form.

use super::kinds::KindId;
use super::names::Name;
use zerocopy::{FromBytes, Immutable, IntoBytes};

/// The form itself is a doubt.
const HEDGED: u8 = 1;
/// The term has a context to look at.
const BOUND: u8 = 2;
/// The form only sounds like one of the term.
const HEARD: u8 = 4;

/// One reading of a form.
#[derive(Clone, Copy, Debug, PartialEq, Eq, FromBytes, IntoBytes, Immutable)]
#[repr(C)]
pub struct Sense {
    /// The term, by its place in the vocabulary.
    pub term: u32,
    /// The region it belongs to.
    pub region: Name,
    /// Which kind it is read as.
    pub kind: KindId,
    flags: u8,
}

impl Sense {
    /// A plain reading of a term; `bound` if the term has a context to look at.
    pub const fn of(kind: KindId, term: u32, region: Name, bound: bool) -> Self {
        Self { term, region, kind, flags: if bound { BOUND } else { 0 } }
    }

    /// The same of another kind.
    #[must_use]
    pub const fn as_kind(self, kind: KindId) -> Self {
        Self { kind, ..self }
    }

    /// The same of a form that is itself a doubt: "brownish".
    #[must_use]
    pub const fn as_doubt(self) -> Self {
        Self { flags: self.flags | HEDGED, ..self }
    }

    /// The same of a form that only sounds like one of the term: "tale". It holds where it is asked for.
    #[must_use]
    pub const fn as_heard(self) -> Self {
        Self { flags: self.flags | HEARD | BOUND, ..self }
    }

    /// Whether the form itself is a doubt.
    pub const fn hedged(self) -> bool {
        self.flags & HEDGED != 0
    }

    /// Whether there is a context to look at.
    pub const fn bound(self) -> bool {
        self.flags & BOUND != 0
    }

    /// Whether the form only sounds like one of the term.
    pub const fn heard(self) -> bool {
        self.flags & HEARD != 0
    }
}
