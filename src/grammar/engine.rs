//! Running rules over the terms of a note. The engine knows no birds.
//!
//! At each place every rule that can start there is tried; the longest match is taken (of two alike,
//! the rule that stands first in the files), and reading goes on behind it. Patterns never give back
//! what they took, and what a phrase matches at a place is remembered, so time grows with the
//! length of the note. A rule is first only recognised; its records are built once it is chosen.
//!
//! What rules made of words of the same kinds before is taken as it stands ([`super::met`]). Nothing is
//! allocated while rules run: what is remembered and what is kept lie in a [`Scratch`] that is used for
//! note after note.

use super::fit::Best;
use super::makings::{self, Kept, Makings};
use super::met::{Looked, Made, Met, Stretch};
use super::plan::{Ask, Asked, Class, END, Entry, Plan};
use super::tokens::{NO_WORD, Token};
use super::yields::{Place, UNKEPT};
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::KindId;
use crate::lexicon::names::Name;
use crate::lexicon::record::{Record, Said};
use crate::lexicon::vocabulary::WordId;
use crate::rules::Rules;
use crate::rules::needs::Needed;
use crate::rules::program::{self, Op, Program, Set, SetId, StepId};
use crate::rules::tree::NodeId;
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

impl Match {
    const fn of(rule: usize, there: Range<usize>, records: Vec<Said>, steps: Vec<Step>) -> Self {
        let Range { start, end } = there;
        Self { rule, start, end, records, steps, taken_back: false, bird: 1 }
    }
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
    /// What rules made of words met before.
    met: Met,
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
    makings: Makings,
}

/// Runs the rules over one stretch of tokens.
pub struct Engine<'a> {
    lexicon: &'a Lexicon,
    pub(super) rules: &'a Rules,
    pub(super) program: &'a Program,
    region: Name,
    pub(super) tokens: &'a [Token],
    plan: &'a mut Plan,
    met: &'a mut Met,
    classes: &'a [Class],
    ahead: &'a [Needed],
    memo: &'a mut [u64],
    round: &'a mut u32,
    /// What was looked at for the match that is sought: the farthest word,
    far: usize,
    /// one past the first,
    low: usize,
    /// and what would have been looked at if it came.
    missed: Needed,
    pub(super) kept: &'a mut Vec<Kept>,
    pub(super) makings: &'a mut Makings,
    /// The steps of the match that is being made, if they are wanted.
    pub(super) steps: Option<Vec<Step>>,
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
        let Scratch { plan, met, classes, ahead, memo, round, kept, makings } = scratch;
        if plan.serve(program, region) || met.is_full() {
            met.clear();
        }
        let looks = tokens.iter().map(|t| (t.kinds, t.node, single_word(t)));
        plan.classes(program, looks, |at| seen_as(lexicon, program, region, &tokens[at]), classes);
        ahead.clear();
        ahead.resize(classes.len() + 1, Needed::default());
        let mut all = Needed::default();
        for (ahead, &class) in ahead.iter_mut().zip(classes.iter()).rev() {
            all = all.or(plan.meets(class));
            *ahead = all;
        }
        let slots = program.trees.len() * (tokens.len() + 1);
        if memo.len() < slots {
            memo.resize(slots, 0);
        }
        Self {
            lexicon,
            rules,
            program,
            region,
            tokens,
            plan,
            met,
            classes,
            ahead,
            memo,
            round,
            far: 0,
            low: 0,
            missed: Needed::default(),
            kept,
            makings,
            steps: trace.then(Vec::new),
        }
    }

    /// Every match, left to right.
    pub fn run(mut self, out: &mut Vec<Match>) {
        let mut at = 0;
        while at < self.tokens.len() {
            at += self.take(at, out).max(1);
        }
    }

    /// Adds the longest match at a place; gives back how many words it takes.
    fn take(&mut self, at: usize, out: &mut Vec<Match>) -> usize {
        let start = self.plan.entry(self.program, self.program.top.root, self.classes[at]);
        // Many words start nothing.
        if start.acts().is_empty() {
            return 0;
        }
        let before = at.checked_sub(1).map_or(END, |before| self.classes[before]);
        let stretch = Stretch { words: &self.classes[at..], ahead: &self.ahead[at..], before };
        let met = self.met.find(stretch);
        if let (Ok(found), None) = (met, &self.steps) {
            if found.length > 0 {
                let (makings, of) = (&self.met.makings, found.makings);
                let records = self.met.kept(found).iter();
                let records = records.map(|kept| self.said(makings, of, kept, at)).collect();
                let (rule, end) = (found.rule as usize, at + found.length as usize);
                out.push(Match::of(rule, at..end, records, Vec::new()));
            }
            return found.length as usize;
        }
        let (rule, length) = self.found(at);
        if length > 0 {
            let all = self.makings.all();
            let records = self.kept.iter();
            let records = records.map(|kept| self.said(self.makings, all, kept, 0)).collect();
            let steps = self.steps.as_mut().map(std::mem::take).unwrap_or_default();
            out.push(Match::of(rule, at..at + length, records, steps));
        }
        let (words, before) = (self.far + 1 - at, self.low == at);
        let looked = Looked { words, before, missed: self.missed };
        if let Err(miss) = met
            && self.low >= at
            && self.met.is_met_again(stretch, looked)
        {
            let start = u16::try_from(at).unwrap_or(u16::MAX);
            let made = Made { start, rule, length, kept: self.kept, makings: self.makings };
            self.met.keep(stretch, miss, looked, made);
        }
        length
    }

    /// The rule of the longest match at a place, and how many words it takes; what it yields is kept.
    fn found(&mut self, at: usize) -> (usize, usize) {
        (self.far, self.low, self.missed) = (at, at + 1, Needed::default());
        // What phrases looked at is told for this match alone, so what they came to before is not taken.
        *self.round = self.round.wrapping_add(1);
        if *self.round == 0 {
            self.memo.fill(0);
            *self.round = 1;
        }
        self.kept.clear();
        self.makings.clear();
        let best = self.best(at);
        let Some(end) = best.end().filter(|&end| end > at) else { return (0, 0) };
        let (rule, alternative) = self.program.top.ends[best.way()];
        self.evaluate(rule, alternative, at..end, 0, UNKEPT);
        (rule, end - at)
    }

    /// What was kept, as the words say it; its places are told from `start` on.
    fn said(&self, makings: &Makings, of: makings::OfMatch, kept: &Kept, start: usize) -> Said {
        let tokens = &self.tokens[start..];
        let read = |at: u16, kinds: SetId| self.record(&tokens[usize::from(at)], kinds);
        let span =
            |p: Place| tokens[usize::from(p.first)].span.join(tokens[usize::from(p.last)].span);
        let mut record = Record::default();
        makings.fill(of, kept.what, &mut record, &read);
        Said { record, parts: kept.parts.map(span) }
    }

    /// What a token says when read as one of `kinds`.
    fn record(&self, token: &Token, kinds: SetId) -> Record {
        let kinds = self.program.sets[kinds as usize].kinds;
        let mut record = token
            .sense(self.lexicon, kinds, self.region)
            .map_or_else(Record::default, |s| self.lexicon.vocabulary.record(s));
        record.number = token.number.or(record.number);
        record
    }

    /// The longest rule at a place.
    fn best(&mut self, at: usize) -> Best {
        self.follow(self.program.top.root, at, Best::NONE)
    }

    /// The longest alternative of a phrase at a place where it can start.
    #[inline]
    pub(super) fn phrase(&mut self, rule: u32, at: usize) -> Best {
        let slot = at * self.program.trees.len() + rule as usize;
        let known = self.memo[slot];
        if (known >> 32) as u32 == *self.round {
            return Best(known as u32);
        }
        let best = self.follow(self.program.trees[rule as usize].root, at, Best::NONE);
        self.memo[slot] = u64::from(*self.round) << 32 | u64::from(best.0);
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
        self.far = self.far.max(at);
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
                if self.may_come(act.needs, ahead)
                    && let Some(next) = self.asked(act.ask, at)
                {
                    let behind = self.entry(act.to, next, &mut best);
                    if !behind.acts().is_empty() {
                        best = self.along(behind, next, best);
                    }
                }
            }
            let act = self.plan.act(last);
            if !self.may_come(act.needs, ahead) {
                return best;
            }
            let Some(next) = self.asked(act.ask, at) else { return best };
            entry = self.entry(act.to, next, &mut best);
            at = next;
        }
    }

    /// Whether all comes that is needed.
    #[inline(always)]
    fn may_come(&mut self, needs: Needed, ahead: Needed) -> bool {
        let lacking = needs.without(ahead);
        if lacking.is_none() {
            return true;
        }
        self.missed = self.missed.or(lacking.one());
        false
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
    fn holds(&mut self, set: SetId, at: usize) -> bool {
        self.far = self.far.max(at);
        self.plan.holds(set, self.classes[at])
    }

    /// Whether a step is worth trying at `at`.
    #[inline(always)]
    pub(super) fn may(&mut self, step: StepId, at: usize) -> bool {
        self.holds(self.program.steps[step as usize].gate, at)
    }

    /// Where a step ends if it fits at `at`.
    #[inline(always)]
    pub(super) fn fits(&mut self, step: StepId, at: usize) -> Option<usize> {
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
                self.low = self.low.min(at);
                let fits = at.checked_sub(1).is_some_and(|b| self.fits(inner, b) == Some(at));
                (fits == yes).then_some(at)
            }
            Op::Start => {
                self.low = self.low.min(at);
                (at == 0).then_some(at)
            }
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
