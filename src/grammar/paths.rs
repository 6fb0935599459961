//! "From the forehead to the nape": the parts between two that a note names the way over.
//!
//! A rule marks the parts it goes over with the position `path`; between each and the next the parts
//! that lie between on one of the lexicon's `path` entries are filled in. Where no path holds both,
//! only the parts that were named are said.

use super::engine::Match;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::record::{Said, Slot};

/// Fills in the parts between.
pub fn fill(lexicon: &Lexicon, matches: &mut [Match]) {
    let on_path = lexicon.names.find("path");
    if !on_path.is_some() {
        return;
    }
    let goes = |r: &Said| r.get(Slot::Position) == on_path;
    for one in matches.iter_mut().filter(|m| m.records.iter().any(goes)) {
        let mut out: Vec<Said> = Vec::with_capacity(one.records.len() * 2);
        let mut last: Option<Said> = None;
        for record in &one.records {
            if !goes(record) {
                out.push(*record);
                last = None;
                continue;
            }
            if let Some(before) = last.filter(|b| same_but_area(b, record)) {
                let (from, to) = (before.get(Slot::Area), record.get(Slot::Area));
                out.extend(between(lexicon, from, to).iter().map(|&area| at(record, area)));
            }
            out.push(at(record, record.get(Slot::Area)));
            last = Some(*record);
        }
        one.records = out;
    }
}

fn at(record: &Said, area: Name) -> Said {
    let mut out = *record;
    out.record.set(Slot::Area, area);
    out.record.set(Slot::Position, Name::NONE);
    out
}

fn same_but_area(a: &Said, b: &Said) -> bool {
    Slot::ALL.iter().filter(|s| **s != Slot::Area).all(|&s| a.get(s) == b.get(s))
}

/// The areas strictly between two on the shortest stretch of a path that holds both.
fn between(lexicon: &Lexicon, from: Name, to: Name) -> Vec<Name> {
    let stretches = lexicon.topography.paths.iter().filter_map(|path| {
        let a = path.iter().position(|&area| area == from)?;
        let b = path.iter().position(|&area| area == to)?;
        Some((a.min(b), a.max(b), path))
    });
    stretches
        .min_by_key(|(a, b, _)| b - a)
        .map(|(a, b, path)| path.get(a + 1..b).unwrap_or(&[]).to_vec())
        .unwrap_or_default()
}
