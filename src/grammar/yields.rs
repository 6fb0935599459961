//! What a rule yields: it is walked, what its captures say is kept, and sums and products are made of that.

use super::engine::{Engine, Step};
use super::makings::{Kept, Makings, NOTHING};
use crate::lexicon::record::{Parts, Piece};
use crate::rules::Yield;
use crate::rules::program::{Walk, WalkId};
use crate::span::Span;
use std::ops::Range;

/// A range of tokens: half a span's size, and records are copied often.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Place {
    /// The first.
    pub first: u16,
    /// The last.
    pub last: u16,
}

impl Place {
    /// The same, told from `start` on.
    #[must_use]
    pub const fn from(self, start: u16) -> Self {
        Self { first: self.first - start, last: self.last - start }
    }
}

impl Piece for Place {
    fn start(self) -> usize {
        usize::from(self.first)
    }

    fn with(self, other: Self) -> Self {
        Self { first: self.first.min(other.first), last: self.last.max(other.last) }
    }
}

/// The number of what is kept under none.
pub const UNKEPT: u16 = u16::MAX;

/// The place of one token.
fn place(at: usize) -> Place {
    let at = u16::try_from(at).unwrap_or(u16::MAX);
    Place { first: at, last: at }
}

impl Engine<'_> {
    /// Builds the records of a rule or phrase already known to fit `there`, kept under `of`.
    pub(super) fn evaluate(
        &mut self,
        rule: usize,
        way: usize,
        there: Range<usize>,
        depth: usize,
        of: u16,
    ) {
        let yields = &self.rules.rules[rule].alternatives[way].yields;
        let from = self.kept.len();
        if let Some(steps) = &mut self.steps {
            let words = &self.tokens[there.clone()];
            let span = match words {
                [first, .., last] => first.span.join(last.span),
                [one] => one.span,
                [] => Span::default(),
            };
            steps.push(Step { depth, rule, span });
        }
        self.walk(self.program.ways[rule][way], there.start, UNKEPT, depth);
        let kept = &mut *self.kept;
        let upto = kept.len();
        yielded(kept, self.makings, yields, &(from..upto), of);
        leave_out(kept, from..upto);
    }

    /// Walks a pattern that fits, keeping what its captures say; gives back where it ends, or, where
    /// that is known without it, where the last word that is kept does.
    fn walk(&mut self, walk: WalkId, at: usize, into: u16, depth: usize) -> Option<usize> {
        let program = self.program;
        let (mut walk, mut into) = (walk, into);
        while let Walk::Keep(of, inner) = program.walks[walk as usize] {
            (walk, into) = (inner, of);
        }
        match program.walks[walk as usize] {
            Walk::Fits(step) => self.fits(step, at),
            Walk::Read(kinds) => {
                let what = self.makings.read(at, kinds);
                self.kept.push(Kept { what, parts: Parts::one(place(at)), of: into });
                Some(at + 1)
            }
            Walk::Place => {
                self.kept.push(Kept { what: NOTHING, parts: Parts::one(place(at)), of: into });
                Some(at + 1)
            }
            Walk::Phrase(p) => {
                let best = self.phrase(p, at);
                let end = best.end()?;
                self.evaluate(p as usize, best.way(), at..end, depth + 1, into);
                Some(end)
            }
            Walk::Seq(run) => {
                let mut at = at;
                for &item in &program.items[run.places()] {
                    // What is passed over needs no call.
                    at = match program.walks[item as usize] {
                        Walk::Fits(step) => self.fits(step, at)?,
                        Walk::Opt(step, _) | Walk::Star(step, _) if !self.may(step, at) => at,
                        _ => self.walk(item, at, into, depth)?,
                    };
                }
                Some(at)
            }
            Walk::Alt(run) => {
                let choices = &program.choices[run.places()];
                let mut fit = choices.iter().filter_map(|&(s, w)| Some((self.fits(s, at)?, w)));
                let (end, walk) = fit.next()?;
                self.walk(walk, at, into, depth);
                Some(end)
            }
            Walk::Opt(step, walk) => {
                let Some(end) = self.fits(step, at) else { return Some(at) };
                self.walk(walk, at, into, depth);
                Some(end)
            }
            Walk::Star(step, walk) => {
                let mut at = at;
                while let Some(next) = self.fits(step, at).filter(|&next| next != at) {
                    self.walk(walk, at, into, depth);
                    at = next;
                }
                Some(at)
            }
            Walk::Keep(..) | Walk::Nothing => Some(at),
        }
    }
}

/// Leaves some records out. Behind them are one or two, which are sooner moved one by one than all together.
fn leave_out(all: &mut Vec<Kept>, out: Range<usize>) {
    for (to, from) in (out.start..).zip(out.end..all.len()) {
        all[to] = all[from];
    }
    all.truncate(all.len() - out.len());
}

/// Puts what `yields` makes of the records in `kept` behind the last one, under `of`.
fn yielded(
    all: &mut Vec<Kept>,
    makings: &mut Makings,
    yields: &Yield,
    kept: &Range<usize>,
    of: u16,
) {
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
                all.push(Kept { what: NOTHING, parts: Parts::default(), of });
            }
        }
        Yield::Last(name) => {
            if let Some(last) = all[kept.clone()].iter().rev().find(is(*name)).copied() {
                all.push(Kept { of, ..last });
            }
        }
        Yield::Folded(name) => {
            let mut said = Kept { what: NOTHING, parts: Parts::default(), of };
            let all_of = all[kept.clone()].iter().filter(is(*name));
            all_of.for_each(|one| said.fill(one, makings));
            all.push(said);
        }
        Yield::Literal(record, taken, upper) => {
            let mut said = Kept { what: makings.stands(record), parts: Parts::default(), of };
            let first = |name: usize| all[kept.clone()].iter().find(is(name));
            for &(to, name, from) in taken {
                if let Some(first) = first(name) {
                    said.what = makings.with_slot(said.what, to, first.what, from);
                    said.parts.add_all(&first.parts);
                }
            }
            if let Some(first) = upper.and_then(first) {
                said.what = makings.with_upper(said.what, first.what);
                said.parts.add_all(&first.parts);
            }
            all.push(said);
        }
        Yield::Sum(items) => items.iter().for_each(|item| yielded(all, makings, item, kept, of)),
        Yield::Product(items) => multiplied(all, makings, items, kept, of),
    }
}

/// Puts each of what the first of `items` yields, merged with each of the others, behind the last record.
fn multiplied(
    all: &mut Vec<Kept>,
    makings: &mut Makings,
    items: &[Yield],
    kept: &Range<usize>,
    of: u16,
) {
    let from = all.len();
    let Some((first, others)) = items.split_first() else { return };
    yielded(all, makings, first, kept, of);
    for item in others {
        product(all, makings, from, item, kept, of);
    }
}

/// Merges each record from `from` on with each that `item` yields.
fn product(
    all: &mut Vec<Kept>,
    makings: &mut Makings,
    from: usize,
    item: &Yield,
    kept: &Range<usize>,
    of: u16,
) {
    // What was not kept adds nothing to what it is merged with.
    if let Yield::Folded(name) | Yield::OrEmpty(name) = item
        && !all[kept.clone()].iter().any(|k| usize::from(k.of) == *name)
    {
        return;
    }
    let upto = all.len();
    yielded(all, makings, item, kept, of);
    let end = all.len();
    for left in from..upto {
        for right in upto..end {
            let (mut both, right) = (all[left], all[right]);
            both.fill(&right, makings);
            all.push(both);
        }
    }
    leave_out(all, from..end);
}
