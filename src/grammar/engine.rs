//! Running rules over the terms of a note. The engine knows no birds.
//!
//! At each place every rule that can start there is tried; the longest match is taken (of two alike,
//! the rule that stands first in the files), and reading goes on behind it. Patterns never give back
//! what they took, and what a phrase matches at a place is remembered, so time grows with the
//! length of the note. A rule is first only recognised; its records are built once it is chosen.
//!
//! Nothing is allocated while rules run: what is remembered and what is kept lie in a [`Scratch`] that
//! is used for note after note.

use super::tokens::{NO_WORD, Token};
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::KindId;
use crate::lexicon::names::Name;
use crate::lexicon::record::{Piece, Record, Said};
use crate::rules::program::{self, Op, Program, Set, SetId, StepId, Walk, WalkId};
use crate::rules::tree::{Edge, NONE, Node, Tree};
use crate::rules::{Rules, Yield};
use crate::span::Span;
use std::ops::Range;

/// A rule that was applied, and what it yielded.
#[derive(Clone, Debug, PartialEq)]
pub struct Match {
    /// The rule's place in [`Rules::rules`].
    pub rule: usize,
    /// First token, by its place in the list the engine was given.
    pub start: usize,
    /// One past the last token.
    pub end: usize,
    /// What it yielded.
    pub records: Vec<Said>,
    /// The phrases it was built from, outermost first.
    pub steps: Vec<Step>,
    /// Whether the note takes it back ("no wait"); it then has no records.
    pub taken_back: bool,
    /// Which bird of the note it speaks of, from 1; 0 for all of them.
    pub bird: u32,
}

/// One phrase or rule in the making of a match.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// How deep it lies.
    pub depth: usize,
    /// The rule or phrase.
    pub rule: usize,
    /// What it covers, in bytes.
    pub span: Span,
}

/// A range of tokens: half a span's size, and records are copied often.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
struct Place {
    first: u16,
    last: u16,
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
struct Kept {
    said: Said<Place>,
    of: u16,
}

/// The number of what is kept under none.
const UNKEPT: u16 = u16::MAX;

/// Space for the engine to work in.
#[derive(Clone, Debug, Default)]
pub struct Scratch {
    /// For each token, and for the end behind them, a bit for each set that rules ask for.
    rows: Vec<u64>,
    /// For each place each phrase: the round in which it was tried, and how it went. Entries of
    /// earlier rounds count as untried, so nothing has to be cleared.
    memo: Vec<u64>,
    round: u32,
    /// Records on their way from a phrase to what it is part of.
    kept: Vec<Kept>,
}

/// How far something reaches, and which of the ways to get there comes first in the files; 0 where
/// nothing fits. Of two the better one is the greater number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Best(u32);

impl Best {
    const NONE: Self = Self(0);

    /// The most ways that a tree can have; more are refused nowhere near.
    const WAYS: u32 = 0xffff;

    fn new(end: usize, way: u32) -> Self {
        let end = u32::try_from(end).unwrap_or(0) + 1;
        Self((end << 16) | Self::WAYS.saturating_sub(way))
    }

    const fn is_none(self) -> bool {
        self.0 == 0
    }

    /// Where it ends, if it fits.
    fn end(self) -> Option<usize> {
        (!self.is_none()).then(|| (self.0 >> 16) as usize - 1)
    }

    const fn way(self) -> usize {
        (Self::WAYS - (self.0 & Self::WAYS)) as usize
    }
}

/// Runs the rules over one stretch of tokens.
pub struct Engine<'a> {
    lexicon: &'a Lexicon,
    rules: &'a Rules,
    program: &'a Program,
    region: Name,
    tokens: &'a [Token],
    rows: &'a [u64],
    /// How many entries of `rows` a token has.
    width: usize,
    memo: &'a mut [u64],
    round: u32,
    kept: &'a mut Vec<Kept>,
    /// The steps of the match that is being made, if they are wanted.
    steps: Option<Vec<Step>>,
}

impl<'a> Engine<'a> {
    /// An engine over `tokens`, among which no skipped kinds remain.
    pub fn new(
        lexicon: &'a Lexicon,
        rules: &'a Rules,
        region: Name,
        tokens: &'a [Token],
        scratch: &'a mut Scratch,
        trace: bool,
    ) -> Self {
        let program = &rules.program;
        let Scratch { rows, memo, round, kept } = scratch;
        rows.clear();
        for token in tokens {
            program.add_row(seen_as(lexicon, program, region, token), rows);
        }
        program.add_row(Set::default(), rows);
        let slots = program.trees.len() * (tokens.len() + 1);
        if memo.len() < slots {
            memo.resize(slots, 0);
        }
        *round = round.wrapping_add(1);
        if *round == 0 {
            memo.fill(0);
            *round = 1;
        }
        Self {
            lexicon,
            rules,
            program,
            region,
            tokens,
            rows,
            width: program.width(),
            memo,
            round: *round,
            kept,
            steps: trace.then(Vec::new),
        }
    }

    /// Every match, left to right.
    pub fn run(mut self, out: &mut Vec<Match>) {
        let mut at = 0;
        while at < self.tokens.len() {
            let best = self.best(at);
            let Some(end) = best.end().filter(|&end| end > at) else {
                at += 1;
                continue;
            };
            let (rule, alternative) = self.program.top.ends[best.way()];
            self.kept.clear();
            self.evaluate(rule, alternative, at..end, 0, UNKEPT);
            let tokens = self.tokens;
            let span =
                |p: Place| tokens[usize::from(p.first)].span.join(tokens[usize::from(p.last)].span);
            let spoken = |k: &Kept| Said { record: k.said.record, parts: k.said.parts.map(span) };
            let records = self.kept.iter().map(spoken).collect();
            let steps = self.steps.as_mut().map(std::mem::take).unwrap_or_default();
            out.push(Match { rule, start: at, end, records, steps, taken_back: false, bird: 1 });
            at = end;
        }
    }

    /// The longest rule at a place.
    fn best(&mut self, at: usize) -> Best {
        let top = &self.program.top;
        self.follow(top, &top.nodes[0], at, Best::NONE)
    }

    /// The longest alternative of a phrase at a place where it can start.
    #[inline]
    fn phrase(&mut self, rule: u32, at: usize) -> Best {
        let slot = at * self.program.trees.len() + rule as usize;
        let known = self.memo[slot];
        if (known >> 32) as u32 == self.round {
            Best(known as u32)
        } else {
            self.try_phrase(rule, at, slot)
        }
    }

    #[inline(never)]
    fn try_phrase(&mut self, rule: u32, at: usize, slot: usize) -> Best {
        let tree = &self.program.trees[rule as usize];
        let root = &tree.nodes[0];
        let best = if root.end == NONE { Best::NONE } else { Best::new(at, root.end) };
        let best = self.along(tree, root, at, best);
        self.memo[slot] = (u64::from(self.round) << 32) | u64::from(best.0);
        best
    }

    fn follow(&mut self, tree: &'a Tree, node: &'a Node, at: usize, best: Best) -> Best {
        self.along(tree, node, at, best)
    }

    /// Goes along all edges of a node and on from there; gives back the best of the ends reached and
    /// `best`. Most nodes have one edge worth going along: the last one is gone along without a call.
    #[inline(always)]
    fn along(&mut self, tree: &'a Tree, mut node: &'a Node, mut at: usize, mut best: Best) -> Best {
        loop {
            if node.more != NONE {
                best = self.follow(tree, &tree.nodes[node.more as usize], at, best);
            }
            let mut open = self.open(node, at);
            if open == 0 {
                return best;
            }
            loop {
                let edge = &tree.edges[node.edges as usize + open.trailing_zeros() as usize];
                open &= open - 1;
                let next = self.takes_edge(edge, at);
                if let Some(next) = next {
                    let behind = &tree.nodes[edge.to as usize];
                    if behind.end != NONE {
                        best = best.max(Best::new(next, behind.end));
                    }
                    if open == 0 {
                        (node, at) = (behind, next);
                        break;
                    }
                    if behind.more != NONE || self.open(behind, next) != 0 {
                        best = self.follow(tree, behind, next, best);
                    }
                } else if open == 0 {
                    return best;
                }
            }
        }
    }

    /// The edges of a node whose ways can start with the word at `at`, as bits.
    #[inline(always)]
    fn open(&self, node: &Node, at: usize) -> u64 {
        let word = self.rows[at * self.width + (node.firsts / u64::BITS) as usize];
        (word >> (node.firsts % u64::BITS)) & node.all
    }

    /// Where the step of an edge ends whose way can start with the word at `at`.
    #[inline(always)]
    fn takes_edge(&mut self, edge: &Edge, at: usize) -> Option<usize> {
        // What the way can start with often opens the gate of its first step as well.
        if edge.open { self.takes_open(edge.step.op, at) } else { self.takes(edge.step, at) }
    }

    /// Whether the token at `at`, or the end there, is in a set.
    #[inline(always)]
    fn holds(&self, set: SetId, at: usize) -> bool {
        let word = self.rows[at * self.width + (set / u64::BITS) as usize];
        (word >> (set % u64::BITS)) & 1 != 0
    }

    /// Whether a step is worth trying at `at`.
    #[inline(always)]
    fn may(&self, step: StepId, at: usize) -> bool {
        self.holds(self.program.steps[step as usize].gate, at)
    }

    /// Where a step ends if it fits at `at`.
    #[inline(always)]
    fn fits(&mut self, step: StepId, at: usize) -> Option<usize> {
        self.takes(self.program.steps[step as usize], at)
    }

    /// The same. Most steps are settled by the word that stands there, a phrase tried before, or both;
    /// those are looked at in place.
    #[inline(always)]
    fn takes(&mut self, step: program::Step, at: usize) -> Option<usize> {
        if !self.holds(step.gate, at) {
            return step.skips.then_some(at);
        }
        self.takes_open(step.op, at)
    }

    /// The same for a step whose gate is open.
    #[inline(always)]
    fn takes_open(&mut self, op: Op, at: usize) -> Option<usize> {
        match op {
            Op::Token(_) => Some(at + 1),
            Op::Phrase(p) => self.phrase(p, at).end(),
            op => self.takes_whole(op, at),
        }
    }

    /// The same for all other steps.
    fn takes_whole(&mut self, op: Op, at: usize) -> Option<usize> {
        let program = self.program;
        match op {
            Op::Token(_) => Some(at + 1),
            Op::Phrase(p) => self.phrase(p, at).end(),
            Op::Seq(run) => {
                let mut at = at;
                for &item in &program.items[run.places()] {
                    at = self.fits(item, at)?;
                }
                Some(at)
            }
            Op::Alt(run) => program.items[run.places()].iter().find_map(|&i| self.fits(i, at)),
            Op::Opt(inner) => Some(self.fits(inner, at).unwrap_or(at)),
            Op::Star(inner) => Some(self.repeat(inner, at)),
            Op::Plus(inner) => {
                let first = self.fits(inner, at)?;
                Some(self.repeat(inner, first))
            }
            Op::Not(inner) => self.fits(inner, at).is_none().then_some(at),
            Op::And(inner) => self.fits(inner, at).map(|_| at),
            Op::Behind(yes, inner) => {
                let fits = at.checked_sub(1).is_some_and(|b| self.fits(inner, b) == Some(at));
                (fits == yes).then_some(at)
            }
            Op::Start => (at == 0).then_some(at),
            Op::End => (at == self.tokens.len()).then_some(at),
        }
    }

    fn repeat(&mut self, inner: StepId, from: usize) -> usize {
        let mut at = from;
        while let Some(next) = self.fits(inner, at) {
            if next == at {
                break;
            }
            at = next;
        }
        at
    }

    /// Builds the records of a rule or phrase already known to fit `there`, kept under `of`.
    fn evaluate(&mut self, rule: usize, way: usize, there: Range<usize>, depth: usize, of: u16) {
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
        if let Yield::Var(name) = yields
            && kept[from..].iter().all(|k| usize::from(k.of) == *name)
        {
            // All that was kept is what it yields, and lies where it should.
            kept[from..].iter_mut().for_each(|k| k.of = of);
            return;
        }
        let upto = kept.len();
        yielded(kept, yields, &(from..upto), of);
        kept.copy_within(upto.., from);
        kept.truncate(kept.len() - (upto - from));
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
                let said = self.record(at, kinds);
                self.kept.push(Kept { said, of: into });
                Some(at + 1)
            }
            Walk::Place => {
                let said = Said::at(Record::default(), place(at));
                self.kept.push(Kept { said, of: into });
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
                        Walk::Opt(step, _) if !self.may(step, at) => at,
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

    /// What the token at `at` says when read as one of `kinds`.
    fn record(&self, at: usize, kinds: SetId) -> Said<Place> {
        let token = &self.tokens[at];
        let kinds = self.program.sets[kinds as usize].kinds;
        let mut record = token
            .sense(self.lexicon, kinds, self.region)
            .map_or_else(Record::default, |s| self.lexicon.vocabulary.record(s));
        record.number = token.number.or(record.number);
        Said::at(record, place(at))
    }
}

/// What a token is for rules.
fn seen_as(lexicon: &Lexicon, program: &Program, region: Name, token: &Token) -> Set {
    let mut marks = 0;
    if token.first == token.last && token.first != NO_WORD {
        marks |= program.mark_of_word(token.first);
    }
    let mut left = token.kinds & program.listed_kinds;
    while left != 0 {
        let kind = KindId(u8::try_from(left.trailing_zeros()).unwrap_or(0));
        left &= left - 1;
        if let Some(sense) = token.sense(lexicon, kind.bit(), region) {
            let id = lexicon.vocabulary.terms[sense.term as usize].id;
            marks |= program.marks_of_id(kind, id);
        }
    }
    Set { kinds: token.kinds, marks }
}

/// The place of one token.
fn place(at: usize) -> Place {
    let at = u16::try_from(at).unwrap_or(u16::MAX);
    Place { first: at, last: at }
}

/// Puts what `yields` makes of the records in `kept` behind the last one, under `of`.
fn yielded(all: &mut Vec<Kept>, yields: &Yield, kept: &Range<usize>, of: u16) {
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
        Yield::Product(items) => {
            let from = all.len();
            let Some((first, others)) = items.split_first() else { return };
            yielded(all, first, kept, of);
            for item in others {
                product(all, from, item, kept, of);
            }
        }
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
