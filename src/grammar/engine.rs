//! Running rules over the terms of a note. The engine knows no birds.
//!
//! At each place every rule that can start there is tried; the longest match is taken (of two alike,
//! the rule that stands first in the files), and reading goes on behind it. Patterns never give back
//! what they took, and what a phrase matches at a place is remembered, so time grows with the
//! length of the note. A rule is first only recognised; its records are built once it is chosen.
//!
//! Nothing is allocated while rules run: what is remembered and what is kept lie in a [`Scratch`] that
//! is used for note after note.

use super::plan::{Ask, Asked, Class, Entry, MOST_WAYS, Plan};
use super::tokens::{NO_WORD, Token};
use super::yields::{Kept, Place, Product, UNKEPT, multiplied, place, yielded};
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::KindId;
use crate::lexicon::names::Name;
use crate::lexicon::record::{Record, Said};
use crate::lexicon::vocabulary::WordId;
use crate::rules::needs::Needed;
use crate::rules::program::{self, Op, Program, Set, SetId, StepId, Walk, WalkId};
use crate::rules::tree::NodeId;
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

/// Space for the engine to work in.
#[derive(Clone, Debug, Default)]
pub struct Scratch {
    /// What has been worked out of the rules.
    plan: Plan,
    /// The class of each token, and of the end behind them.
    classes: Vec<Class>,
    /// For each of them which of what rules need stands there or comes behind it.
    ahead: Vec<Needed>,
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

    /// What ends at `end` with the way of that rank; none where the rank is 0.
    #[inline(always)]
    const fn new(end: usize, rank: u16) -> Self {
        // Without a branch: whether something ends is hard to foretell.
        let found = (end as u32 + 1) << 16 | rank as u32;
        Self(if rank == 0 { 0 } else { found })
    }

    const fn is_none(self) -> bool {
        self.0 == 0
    }

    /// Where it ends, if it fits.
    fn end(self) -> Option<usize> {
        (!self.is_none()).then(|| (self.0 >> 16) as usize - 1)
    }

    const fn way(self) -> usize {
        (MOST_WAYS - self.0 as u16) as usize
    }
}

/// Runs the rules over one stretch of tokens.
pub struct Engine<'a> {
    lexicon: &'a Lexicon,
    rules: &'a Rules,
    program: &'a Program,
    region: Name,
    tokens: &'a [Token],
    plan: &'a mut Plan,
    classes: &'a [Class],
    ahead: &'a [Needed],
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
        let Scratch { plan, classes, ahead, memo, round, kept } = scratch;
        plan.serve(program, region);
        let looks = tokens.iter().map(|t| (t.kinds, t.node, single_word(t)));
        plan.classes(program, looks, |at| seen_as(lexicon, program, region, &tokens[at]), classes);
        ahead.clear();
        ahead.resize(classes.len(), Needed::default());
        let mut all = Needed::default();
        for (ahead, &class) in ahead.iter_mut().zip(classes.iter()).rev() {
            all = all.or(plan.meets(class));
            *ahead = all;
        }
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
            plan,
            classes,
            ahead,
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
        self.follow(self.program.top.root, at, Best::NONE)
    }

    /// The longest alternative of a phrase at a place where it can start.
    #[inline]
    fn phrase(&mut self, rule: u32, at: usize) -> Best {
        let slot = at * self.program.trees.len() + rule as usize;
        let known = self.memo[slot];
        if (known >> 32) as u32 == self.round {
            return Best(known as u32);
        }
        let best = self.follow(self.program.trees[rule as usize].root, at, Best::NONE);
        self.memo[slot] = (u64::from(self.round) << 32) | u64::from(best.0);
        best
    }

    /// The best of the ends that can be reached from a node, and of `best`.
    fn follow(&mut self, node: NodeId, at: usize, mut best: Best) -> Best {
        let entry = self.entry(node, at, &mut best);
        self.along(entry, at, best)
    }

    /// What is to be tried at a node; `best` is made the end there, if that is better.
    #[inline(always)]
    fn entry(&mut self, node: NodeId, at: usize, best: &mut Best) -> Entry {
        let entry = self.plan.entry(self.program, node, self.classes[at]);
        *best = (*best).max(Best::new(at, entry.end));
        entry
    }

    /// Tries all that is to be tried, and goes on from there. Most nodes have one way on: the last one is
    /// gone along without a call.
    fn along(&mut self, mut entry: Entry, mut at: usize, mut best: Best) -> Best {
        loop {
            let mut acts = entry.acts();
            let Some(last) = acts.next_back() else { return best };
            let ahead = self.ahead[at];
            for act in acts {
                let act = self.plan.act(act);
                if act.needs.within(ahead)
                    && let Some(next) = self.asked(act.ask, at)
                {
                    let behind = self.entry(act.to, next, &mut best);
                    if !behind.acts().is_empty() {
                        best = self.along(behind, next, best);
                    }
                }
            }
            let act = self.plan.act(last);
            if !act.needs.within(ahead) {
                return best;
            }
            let Some(next) = self.asked(act.ask, at) else { return best };
            entry = self.entry(act.to, next, &mut best);
            at = next;
        }
    }

    /// Where what an act asks for ends if it fits at `at`.
    #[inline(always)]
    fn asked(&mut self, ask: Ask, at: usize) -> Option<usize> {
        match ask.asked() {
            Asked::Word => Some(at + 1),
            Asked::Phrase(p) => self.phrase(p, at).end(),
            Asked::Step(step) => self.takes_whole(self.program.steps[step as usize].op, at),
        }
    }

    /// Whether the token at `at`, or the end there, is in a set.
    #[inline(always)]
    fn holds(&self, set: SetId, at: usize) -> bool {
        self.plan.holds(set, self.classes[at])
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
            Op::Token(_) | Op::Phrase(_) => self.takes_open(op, at),
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
        let upto = kept.len();
        let alone = match yields {
            Yield::Var(name) => Some(*name),
            Yield::Product(items) => match Product::of(items, &kept[from..]) {
                Product::Kept(name) => Some(name),
                Product::Of(items) => {
                    multiplied(kept, items, &(from..upto), of);
                    None
                }
            },
            yields => {
                yielded(kept, yields, &(from..upto), of);
                None
            }
        };
        if let Some(name) = alone {
            // All that is kept under that name is what it yields; most often that is all there is, and lies
            // where it should.
            let own = |k: &Kept| usize::from(k.of) == name;
            let mut to = from;
            for at in from..upto {
                if own(&kept[at]) {
                    if to != at {
                        kept[to] = kept[at];
                    }
                    kept[to].of = of;
                    to += 1;
                }
            }
            kept.truncate(to);
            return;
        }
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

/// The word that a token is, if it is but one.
const fn single_word(token: &Token) -> WordId {
    if token.first == token.last { token.first } else { NO_WORD }
}

/// What a token is for rules.
fn seen_as(lexicon: &Lexicon, program: &Program, region: Name, token: &Token) -> Set {
    let mut marks = 0;
    let word = single_word(token);
    if word != NO_WORD {
        marks |= program.mark_of_word(word);
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
