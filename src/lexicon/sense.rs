//! One reading of a form; a list of them is stored as one number each.

use super::kinds::KindId;
use super::names::Name;
use super::packed;
use serde::{Deserializer, Serializer};

/// One reading of a form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sense {
    /// Which kind it is read as.
    pub kind: KindId,
    /// The term, by its place in the vocabulary.
    pub term: u32,
    /// The region it belongs to.
    pub region: Name,
    /// Whether the form itself is a doubt: "brownish".
    pub hedged: bool,
    /// Whether its term has a context to look at.
    pub bound: bool,
    /// Whether the form only sounds like one of the term: "tale".
    pub heard: bool,
}

/// Writes readings, each as one number.
///
/// # Errors
/// Those of the serializer.
pub fn serialize<S: Serializer>(list: &[Sense], to: S) -> Result<S::Ok, S::Error> {
    let flags = |s: &Sense| u64::from(s.hedged) | u64::from(s.bound) << 1 | u64::from(s.heard) << 2;
    let number = |s: &Sense| {
        u64::from(s.term) | u64::from(s.kind.0) << 32 | flags(s) << 40 | u64::from(s.region.0) << 48
    };
    packed::serialize(&list.iter().map(number).collect::<Vec<u64>>(), to)
}

/// Reads them.
///
/// # Errors
/// Those of the deserializer.
pub fn deserialize<'d, D: Deserializer<'d>>(from: D) -> Result<Vec<Sense>, D::Error> {
    let sense = |number: u64| {
        let [a, b, c, d, kind, flags, e, f] = number.to_le_bytes();
        Sense {
            kind: KindId(kind),
            term: u32::from_le_bytes([a, b, c, d]),
            region: Name(u16::from_le_bytes([e, f])),
            hedged: flags & 1 != 0,
            bound: flags & 2 != 0,
            heard: flags & 4 != 0,
        }
    };
    Ok(packed::deserialize::<u64, D>(from)?.into_iter().map(sense).collect())
}
