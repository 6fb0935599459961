//! What words like "it", "the same" and "too" stand for: the part, or the properties, named last.
//!
//! A rule yields `as-before` as the area, the aspect or the value; here it is filled from the match
//! before. Where there is nothing to refer to, the record says nothing.

use super::engine::Match;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::record::{Said, Slot};

/// The names that matter here, looked up once.
#[derive(Clone, Copy, Debug)]
pub struct Referring {
    as_before: Name,
    bird: Name,
}

impl Referring {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        Self { as_before: lexicon.names.find("as-before"), bird: lexicon.names.find("bird") }
    }

    /// Whether a record stands for something said before.
    fn refers(&self, record: &Said) -> bool {
        [Slot::Area, Slot::Aspect, Slot::Value].iter().any(|&s| record.get(s) == self.as_before)
    }
}

/// Fills what refers to something said before, left to right.
pub fn resolve(referring: &Referring, matches: &mut [Match]) {
    if !referring.as_before.is_some() {
        return;
    }
    for at in 0..matches.len() {
        let (before, rest) = matches.split_at_mut(at);
        let records = &mut rest[0].records;
        if records.iter().any(|r| referring.refers(r)) {
            let mut filled: Vec<Said> = Vec::with_capacity(records.len());
            for record in records.iter() {
                // Within one match what stands before counts as well.
                let given = filled.clone();
                fill(referring, record, &given, before, &mut filled);
            }
            *records = filled;
        }
    }
}

fn fill(
    referring: &Referring,
    record: &Said,
    given: &[Said],
    before: &[Match],
    out: &mut Vec<Said>,
) {
    let wanted = referring.as_before;
    let is = |slot| record.get(slot) == wanted;
    if !referring.refers(record) {
        out.push(*record);
        return;
    }
    let groups = std::iter::once(given).chain(before.iter().rev().map(|m| m.records.as_slice()));
    let says = |r: &Said| r.get(Slot::Aspect).is_some();
    let mut found: Vec<Said> = Vec::new();
    for group in groups {
        found = group
            .iter()
            .filter(|r| {
                if is(Slot::Area) {
                    r.get(Slot::Area).is_some() && r.get(Slot::Area) != referring.bird
                } else {
                    says(r) && (is(Slot::Aspect) || r.get(Slot::Aspect) == record.get(Slot::Aspect))
                }
            })
            .copied()
            .collect();
        if !found.is_empty() {
            break;
        }
    }
    let mut made: Vec<Said> = Vec::new();
    for one in found {
        let mut filled = *record;
        if is(Slot::Area) {
            filled.record.set(Slot::Area, one.get(Slot::Area));
        } else {
            for slot in [Slot::Aspect, Slot::Value, Slot::Tone] {
                filled.record.set(slot, one.get(slot));
            }
        }
        if made.iter().all(|m| m.record != filled.record) {
            made.push(filled);
        }
    }
    out.append(&mut made);
}
