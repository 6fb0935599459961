//! What a rule yields of what was kept while it was walked: sums and products of records.

use crate::lexicon::record::{Piece, Said};
use crate::rules::Yield;
use std::ops::Range;

/// A range of tokens: half a span's size, and records are copied often.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Place {
    /// The first.
    pub first: u16,
    /// The last.
    pub last: u16,
}

impl Piece for Place {
    fn start(self) -> usize {
        usize::from(self.first)
    }

    fn with(self, other: Self) -> Self {
        Self { first: self.first.min(other.first), last: self.last.max(other.last) }
    }
}

/// A record that was kept, and under which number.
#[derive(Clone, Copy, Debug)]
pub struct Kept {
    /// The record.
    pub said: Said<Place>,
    /// The number.
    pub of: u16,
}

/// What a product of records comes to where some of its parts are empty, which leaves the others as they are.
pub enum Product<'y> {
    /// To one part that yields no more than what was kept under that number.
    Kept(usize),
    /// To these parts, the first of which is not empty.
    Of(&'y [Yield]),
}

impl<'y> Product<'y> {
    /// That of `items`, of which at most the first ones and the last ones are left out.
    pub fn of(items: &'y [Yield], kept: &[Kept]) -> Self {
        let is_kept = |name: usize| kept.iter().any(|k| usize::from(k.of) == name);
        let empty = |item: &Yield| match item {
            Yield::Folded(name) | Yield::OrEmpty(name) => !is_kept(*name),
            _ => false,
        };
        let mut items = items;
        while let [first, rest @ ..] = items
            && !rest.is_empty()
            && empty(first)
        {
            items = rest;
        }
        while let [rest @ .., last] = items
            && !rest.is_empty()
            && empty(last)
        {
            items = rest;
        }
        match items {
            [Yield::Var(name)] => Self::Kept(*name),
            // It is kept: else there was nothing to leave out, or it is left as the last.
            [Yield::OrEmpty(name)] if is_kept(*name) => Self::Kept(*name),
            _ => Self::Of(items),
        }
    }
}

/// The number of what is kept under none.
pub const UNKEPT: u16 = u16::MAX;

/// The place of one token.
pub fn place(at: usize) -> Place {
    let at = u16::try_from(at).unwrap_or(u16::MAX);
    Place { first: at, last: at }
}

/// Puts what `yields` makes of the records in `kept` behind the last one, under `of`.
pub fn yielded(all: &mut Vec<Kept>, yields: &Yield, kept: &Range<usize>, of: u16) {
    let is = |name: usize| move |k: &&Kept| usize::from(k.of) == name;
    match yields {
        Yield::Var(name) | Yield::OrEmpty(name) => {
            let before = all.len();
            for i in kept.clone() {
                if usize::from(all[i].of) == *name {
                    all.push(Kept { of, ..all[i] });
                }
            }
            if all.len() == before && matches!(yields, Yield::OrEmpty(_)) {
                all.push(Kept { said: Said::default(), of });
            }
        }
        Yield::Last(name) => {
            if let Some(last) = all[kept.clone()].iter().rev().find(is(*name)).copied() {
                all.push(Kept { of, ..last });
            }
        }
        Yield::Folded(name) => {
            let mut said = Said::default();
            all[kept.clone()].iter().filter(is(*name)).for_each(|one| said.fill(&one.said));
            all.push(Kept { said, of });
        }
        Yield::Literal(record, taken, upper) => {
            let mut said = Said { record: **record, ..Said::default() };
            let first = |name: usize| all[kept.clone()].iter().find(is(name)).map(|k| &k.said);
            for &(to, name, from) in taken {
                if let Some(first) = first(name) {
                    said.record.set(to, first.get(from));
                    said.parts.add_all(&first.parts);
                }
            }
            if let Some(first) = upper.and_then(first) {
                said.record.upper = first.record.number;
                said.parts.add_all(&first.parts);
            }
            all.push(Kept { said, of });
        }
        Yield::Sum(items) => items.iter().for_each(|item| yielded(all, item, kept, of)),
        Yield::Product(items) => match Product::of(items, &all[kept.clone()]) {
            Product::Kept(name) => yielded(all, &Yield::Var(name), kept, of),
            Product::Of(items) => multiplied(all, items, kept, of),
        },
    }
}

/// Puts each of what the first of `items` yields, merged with each of the others, behind the last record.
pub fn multiplied(all: &mut Vec<Kept>, items: &[Yield], kept: &Range<usize>, of: u16) {
    let from = all.len();
    let Some((first, others)) = items.split_first() else { return };
    yielded(all, first, kept, of);
    for item in others {
        product(all, from, item, kept, of);
    }
}

/// Merges each record from `from` on with each that `item` yields.
fn product(all: &mut Vec<Kept>, from: usize, item: &Yield, kept: &Range<usize>, of: u16) {
    // What was not kept adds nothing to what it is merged with.
    if let Yield::Folded(name) | Yield::OrEmpty(name) = item
        && !all[kept.clone()].iter().any(|k| usize::from(k.of) == *name)
    {
        return;
    }
    // Most often that is one record, taken from where it lies.
    if let Yield::Var(name) | Yield::OrEmpty(name) = item {
        let mut found = kept.clone().filter(|&i| usize::from(all[i].of) == *name);
        if let (Some(one), None) = (found.next(), found.next()) {
            let (before, made) = all.split_at_mut(from);
            made.iter_mut().for_each(|left| left.said.fill(&before[one].said));
            return;
        }
    }
    let upto = all.len();
    yielded(all, item, kept, of);
    let end = all.len();
    if end == upto + 1 {
        if let Some(right) = all.pop() {
            all[from..].iter_mut().for_each(|left| left.said.fill(&right.said));
        }
        return;
    }
    for left in from..upto {
        for right in upto..end {
            let mut both = all[left];
            both.said.fill(&all[right].said);
            all.push(both);
        }
    }
    all.copy_within(end.., from);
    all.truncate(all.len() - (end - from));
}
