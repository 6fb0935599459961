//! Running rules over the terms of a note. The engine knows no birds.
//!
//! At each place every rule that can start there is tried; the longest match is taken (of two alike,
//! the rule that stands first in the files), and reading goes on behind it. Patterns never give back
//! what they took, and what a phrase matches at a place is remembered, so time grows with the
//! length of the note. A rule is first only recognised; its records are built once it is chosen.

use super::tokens::Token;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::record::{Record, Said};
use crate::rules::tree::{Edge, Tree};
use crate::rules::{Pattern, Rules, Yield};
use crate::span::Span;

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

const UNTRIED: u32 = 0;
const FAILS: u32 = 1;

/// Runs the rules over one stretch of tokens.
pub struct Engine<'a> {
    lexicon: &'a Lexicon,
    rules: &'a Rules,
    region: Name,
    tokens: &'a [Token],
    /// For each phrase at each place: untried, fails, or the end and the alternative.
    memo: Vec<u32>,
    /// Whether to keep the steps.
    trace: bool,
}

impl<'a> Engine<'a> {
    /// An engine over `tokens`, among which no skipped kinds remain.
    pub fn new(
        lexicon: &'a Lexicon,
        rules: &'a Rules,
        region: Name,
        tokens: &'a [Token],
        trace: bool,
    ) -> Self {
        let memo = vec![UNTRIED; rules.rules.len() * (tokens.len() + 1)];
        Self { lexicon, rules, region, tokens, memo, trace }
    }

    /// Every match, left to right.
    pub fn run(mut self) -> Vec<Match> {
        let mut out = Vec::new();
        let mut at = 0;
        while at < self.tokens.len() {
            let Some((rule, alternative, end)) = self.best(at) else {
                at += 1;
                continue;
            };
            let mut steps = Vec::new();
            let records = self.evaluate(rule, alternative, at, 0, &mut steps);
            out.push(Match { rule, start: at, end, records, steps, taken_back: false, bird: 1 });
            at = end;
        }
        out
    }

    fn best(&mut self, at: usize) -> Option<(usize, usize, usize)> {
        let rules = self.rules;
        let (end, place) = self.farthest(&rules.top, at).filter(|&(end, _)| end > at)?;
        let (rule, alternative) = rules.top.ends[place];
        Some((rule, alternative, end))
    }

    /// The longest alternative of a rule or phrase at a place.
    fn phrase(&mut self, rule: usize, at: usize) -> Option<(usize, usize)> {
        let slot = rule * (self.tokens.len() + 1) + at;
        match self.memo[slot] {
            UNTRIED => {}
            FAILS => return None,
            packed => return Some(((packed >> 8) as usize - 1, (packed & 0xff) as usize)),
        }
        let rules = self.rules;
        let best = self.farthest(&rules.trees[rule], at);
        self.memo[slot] = best.map_or(FAILS, |(end, alternative)| {
            let packed = ((end + 1) << 8) | (alternative & 0xff);
            u32::try_from(packed).unwrap_or(FAILS)
        });
        best
    }

    /// The farthest end of a tree from `at`, and which end it is; of two alike the first.
    fn farthest(&mut self, tree: &'a Tree, at: usize) -> Option<(usize, usize)> {
        let mut best = tree.nodes[0].end.map(|place| (at, place));
        let kinds = self.tokens.get(at).map_or(0, |t| t.kinds);
        for edge in tree.starts(kinds) {
            self.follow(tree, edge, at, &mut best);
        }
        best
    }

    /// Goes along `edge` and on from there, keeping the best end.
    fn follow(
        &mut self,
        tree: &'a Tree,
        edge: &'a Edge,
        at: usize,
        best: &mut Option<(usize, usize)>,
    ) {
        let starts = match self.tokens.get(at) {
            Some(token) => edge.first.holds(token.kinds, token.first),
            None => edge.first.any,
        };
        if !starts {
            return;
        }
        let Some(next) = self.fits(&edge.pattern, at) else { return };
        let node = &tree.nodes[edge.to];
        if let Some(place) = node.end
            && best.is_none_or(|(end, other)| next > end || next == end && place < other)
        {
            *best = Some((next, place));
        }
        for edge in &node.edges {
            self.follow(tree, edge, next, best);
        }
    }

    /// Where `pattern` ends if it fits at `at`. Most patterns are a kind or a phrase: those are looked
    /// at in place, which saves a call and a jump for each.
    #[inline]
    fn fits(&mut self, pattern: &'a Pattern, at: usize) -> Option<usize> {
        match pattern {
            Pattern::Kind(set) => {
                self.tokens.get(at).filter(|t| t.kinds & set != 0).map(|_| at + 1)
            }
            Pattern::Phrase(p) => self.phrase(*p, at).map(|(end, _)| end),
            other => self.fits_whole(other, at),
        }
    }

    /// The same for all other patterns.
    fn fits_whole(&mut self, pattern: &'a Pattern, at: usize) -> Option<usize> {
        match pattern {
            Pattern::Kind(_) | Pattern::Phrase(_) => self.fits(pattern, at),
            Pattern::KindOf(set, ids) => {
                let token = self.tokens.get(at)?;
                let sense = token.sense(self.lexicon, *set, self.region)?;
                let id = self.lexicon.vocabulary.terms[sense.term as usize].id;
                ids.contains(&id).then_some(at + 1)
            }
            Pattern::Word(word) => {
                self.tokens.get(at).filter(|t| t.first == *word && t.last == *word).map(|_| at + 1)
            }
            Pattern::Seq(items) => items.iter().try_fold(at, |at, item| self.fits(item, at)),
            Pattern::Alt(items) => items.iter().find_map(|item| self.fits(item, at)),
            Pattern::Opt(inner) => Some(self.fits(inner, at).unwrap_or(at)),
            Pattern::Star(inner) => Some(self.repeat(inner, at)),
            Pattern::Plus(inner) => {
                let first = self.fits(inner, at)?;
                Some(self.repeat(inner, first))
            }
            Pattern::Not(inner) => self.fits(inner, at).is_none().then_some(at),
            Pattern::And(inner) => self.fits(inner, at).map(|_| at),
            Pattern::Behind(yes, inner) => {
                let fits = at.checked_sub(1).is_some_and(|b| self.fits(inner, b) == Some(at));
                (fits == *yes).then_some(at)
            }
            Pattern::Start => (at == 0).then_some(at),
            Pattern::End => (at == self.tokens.len()).then_some(at),
            Pattern::Capture(_, inner) => self.fits(inner, at),
        }
    }

    fn repeat(&mut self, inner: &'a Pattern, from: usize) -> usize {
        let mut at = from;
        while let Some(next) = self.fits(inner, at) {
            if next == at {
                break;
            }
            at = next;
        }
        at
    }

    /// Builds the records of a rule or phrase already known to fit at `at`.
    fn evaluate(
        &mut self,
        rule: usize,
        alternative: usize,
        at: usize,
        depth: usize,
        steps: &mut Vec<Step>,
    ) -> Vec<Said> {
        let rules = self.rules;
        let alternative = &rules.rules[rule].alternatives[alternative];
        let mut kept: Vec<Vec<Said>> = vec![Vec::new(); alternative.captures.len()];
        let mine = steps.len();
        if self.trace {
            steps.push(Step { depth, rule, span: Span::default() });
        }
        let end = self.walk(&alternative.pattern, at, None, &mut kept, depth, steps);
        if let (true, Some(end)) = (self.trace, end)
            && end > at
        {
            steps[mine].span = self.tokens[at].span.join(self.tokens[end - 1].span);
        }
        yielded(&alternative.yields, &kept)
    }

    /// Walks a pattern that fits, keeping what its captures say.
    fn walk(
        &mut self,
        pattern: &'a Pattern,
        at: usize,
        into: Option<usize>,
        kept: &mut Vec<Vec<Said>>,
        depth: usize,
        steps: &mut Vec<Step>,
    ) -> Option<usize> {
        match pattern {
            Pattern::Kind(set) | Pattern::KindOf(set, _) => {
                let end = self.fits(pattern, at)?;
                if let Some(into) = into {
                    kept[into].push(self.record(at, *set));
                }
                Some(end)
            }
            Pattern::Word(_) => {
                let end = self.fits(pattern, at)?;
                if let Some(into) = into {
                    kept[into].push(Said::at(Record::default(), self.tokens[at].span));
                }
                Some(end)
            }
            Pattern::Phrase(p) => {
                let (end, alternative) = self.phrase(*p, at)?;
                if let Some(into) = into {
                    let records = self.evaluate(*p, alternative, at, depth + 1, steps);
                    kept[into].extend(records);
                }
                Some(end)
            }
            Pattern::Seq(items) => {
                items.iter().try_fold(at, |at, item| self.walk(item, at, into, kept, depth, steps))
            }
            Pattern::Alt(items) => {
                let item = items.iter().find(|item| self.fits(item, at).is_some())?;
                self.walk(item, at, into, kept, depth, steps)
            }
            Pattern::Opt(inner) => match self.fits(inner, at) {
                Some(_) => self.walk(inner, at, into, kept, depth, steps),
                None => Some(at),
            },
            Pattern::Star(inner) | Pattern::Plus(inner) => {
                let mut at = at;
                while let Some(next) = self.fits(inner, at) {
                    if next == at {
                        break;
                    }
                    self.walk(inner, at, into, kept, depth, steps)?;
                    at = next;
                }
                Some(at)
            }
            Pattern::Capture(name, inner) => self.walk(inner, at, Some(*name), kept, depth, steps),
            Pattern::Not(_)
            | Pattern::And(_)
            | Pattern::Behind(..)
            | Pattern::Start
            | Pattern::End => Some(at),
        }
    }

    /// What the token at `at` says when read as one of `kinds`.
    fn record(&self, at: usize, kinds: u128) -> Said {
        let token = &self.tokens[at];
        let mut record = token
            .sense(self.lexicon, kinds, self.region)
            .map_or_else(Record::default, |s| self.lexicon.vocabulary.record(s));
        record.number = token.number.or(record.number);
        Said::at(record, token.span)
    }
}

fn yielded(yields: &Yield, kept: &[Vec<Said>]) -> Vec<Said> {
    match yields {
        Yield::Var(name) => kept[*name].clone(),
        Yield::Last(name) => kept[*name].last().copied().into_iter().collect(),
        Yield::OrEmpty(name) if kept[*name].is_empty() => vec![Said::default()],
        Yield::OrEmpty(name) => kept[*name].clone(),
        Yield::Folded(name) => {
            vec![kept[*name].iter().fold(Said::default(), |all, one| all.merge(one))]
        }
        Yield::Literal(record, taken, upper) => {
            let mut said = Said { record: **record, ..Said::default() };
            for &(to, name, from) in taken {
                if let Some(first) = kept[name].first() {
                    said.record.set(to, first.get(from));
                    said.parts.add_all(&first.parts);
                }
            }
            if let Some(first) = upper.and_then(|name| kept[name].first()) {
                said.record.upper = first.record.number;
                said.parts.add_all(&first.parts);
            }
            vec![said]
        }
        Yield::Sum(items) => items.iter().flat_map(|item| yielded(item, kept)).collect(),
        Yield::Product(items) => {
            let mut lists = items.iter().map(|item| yielded(item, kept));
            let first = lists.next().unwrap_or_default();
            lists.fold(first, |left, right| {
                left.iter().flat_map(|l| right.iter().map(|r| l.merge(r))).collect()
            })
        }
    }
}
