//! Reading a note: from text to traits, with what became of every word.
//!
//! [`Reader::read`] never fails. Every byte of the note lies in exactly one [`Segment`]: evidence of a
//! trait, set aside on purpose, or unplaced. The segments in order are the note.

use crate::grammar::birds::{ALL, Turns, number};
use crate::grammar::paths::fill;
use crate::grammar::refer::{Referring, resolve};
use crate::grammar::scope::Forces;
use crate::grammar::tokens::tokens_into;
use crate::grammar::{Basics, Match, Repair, Token, Why, matches};
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::Rest;
use crate::lexicon::names::Name;
use crate::lexicon::record::{Parts, Slot};
use crate::rules::Rules;
use crate::span::Span;
use crate::standard::{From, Terms, drop_bare_marks, drop_counts_of_birds, polarity, traits_of};
use crate::traits::{Certainty, Polarity, Trait};
use crate::words::words;

/// What became of a stretch of the note.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fate {
    /// It speaks for a trait.
    Evidence,
    /// It was set aside, for that reason.
    SetAside(String),
    /// Nobody could place it.
    Unplaced,
    /// White space and what lies between words.
    Space,
}

/// A stretch of the note and what became of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Segment {
    /// Where.
    pub span: Span,
    /// What became of it.
    pub fate: Fate,
}

/// A bird that the note names, kept apart from the marks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Named {
    /// Where.
    pub span: Span,
    /// The bird's id.
    pub bird: Name,
    /// Which bird of the note it is said of, from 1.
    pub of: u32,
    /// Whether it is said to be one, said not to be one, or could not be made out.
    pub polarity: Polarity,
    /// How sure.
    pub certainty: Certainty,
    /// Whether it is only said to be like one.
    pub likeness: bool,
}

/// A note, read.
#[derive(Clone, Debug, Default)]
pub struct Reading {
    /// The note's terms.
    pub tokens: Vec<Token>,
    /// The rules that were applied.
    pub matches: Vec<Match>,
    /// The field marks.
    pub traits: Vec<Trait>,
    /// What became of every byte.
    pub segments: Vec<Segment>,
    /// What was changed in the note's words before they were read.
    pub repairs: Vec<Repair>,
    /// Birds that are named.
    pub named: Vec<Named>,
    /// How many birds the note tells apart.
    pub birds: u32,
}

impl Reading {
    /// The unplaced stretches.
    pub fn unplaced(&self) -> impl Iterator<Item = Span> {
        self.segments.iter().filter(|s| s.fate == Fate::Unplaced).map(|s| s.span)
    }
}

/// Reads notes with a lexicon and rules.
#[derive(Clone, Debug)]
pub struct Reader<'a> {
    /// The lexicon.
    pub lexicon: &'a Lexicon,
    /// The rules.
    pub rules: &'a Rules,
    basics: Basics,
    forces: Forces,
    referring: Referring,
    turns: Turns,
    terms: Terms,
    region: Name,
    trace: bool,
}

impl<'a> Reader<'a> {
    /// A reader for a region (an id such as `north-america`); yardsticks of that region are taken
    /// first.
    pub fn new(lexicon: &'a Lexicon, rules: &'a Rules, region: &str) -> Self {
        Self {
            lexicon,
            rules,
            basics: Basics::of(lexicon),
            forces: Forces::of(lexicon),
            referring: Referring::of(lexicon),
            turns: Turns::of(lexicon),
            terms: Terms::of(lexicon),
            region: lexicon.names.find(region),
            trace: false,
        }
    }

    /// The same, keeping for each match the phrases it was built from.
    #[must_use]
    pub const fn with_trace(mut self) -> Self {
        self.trace = true;
        self
    }

    /// The region of yardsticks.
    pub const fn region(&self) -> Name {
        self.region
    }

    /// Reads a note.
    pub fn read(&self, note: &str) -> Reading {
        let mut tokens = Vec::new();
        let repairs = tokens_into(note, words(note), self.lexicon, &self.basics, &mut tokens);
        let mut found =
            matches(self.lexicon, self.rules, &self.forces, self.region, &tokens, self.trace);
        resolve(&self.referring, &mut found);
        fill(self.lexicon, &mut found);
        let birds = number(self.lexicon, &self.turns, &tokens, &mut found);
        let mut traits = Vec::new();
        for one in &found {
            let of = if one.bird == ALL { 1..=birds } else { one.bird..=one.bird };
            for (bird, record) in of.flat_map(|b| one.records.iter().map(move |r| (b, r))) {
                let from = From { rule: one.rule, bird };
                traits_of(self.lexicon, &self.terms, record, from, &mut traits);
            }
        }
        let named = self.named(&found);
        drop_bare_marks(&self.terms, &mut traits);
        if birds > 1 {
            drop_counts_of_birds(&self.terms, &mut traits);
        }
        let segments = self.segments(note, &tokens, &found, &traits, &named);
        Reading { tokens, matches: found, traits, segments, repairs, named, birds }
    }

    /// Records that name a bird and say nothing of its marks.
    fn named(&self, found: &[Match]) -> Vec<Named> {
        let mut out: Vec<Named> = Vec::new();
        for (of, record) in found.iter().flat_map(|m| m.records.iter().map(|r| (m.bird.max(1), r)))
        {
            let bird = record.get(Slot::Against);
            if bird.is_some()
                && !record.get(Slot::Aspect).is_some()
                && let Some(span) = record.parts.hull()
            {
                out.push(Named {
                    span,
                    bird,
                    of,
                    polarity: polarity(&self.terms, record.get(Slot::Polarity)),
                    certainty: self.terms.certainty(&record.record),
                    likeness: self.terms.only_like(&record.record),
                });
            }
        }
        out
    }

    fn segments(
        &self,
        note: &str,
        tokens: &[Token],
        found: &[Match],
        traits: &[Trait],
        named: &[Named],
    ) -> Vec<Segment> {
        let mut inside = vec![None; tokens.len()];
        for one in found {
            if one.taken_back {
                inside[one.start..one.end].fill(Some("taken back"));
            } else if one.records.iter().any(|r| r.get(Slot::Aspect).is_some()) {
                inside[one.start..one.end].fill(Some("part of the phrase"));
            }
        }
        let mut evidence: Vec<Span> =
            traits.iter().flat_map(|t| Parts::as_slice(&t.parts)).copied().collect();
        evidence.sort_unstable();
        evidence.dedup();
        let mut out = Vec::with_capacity(tokens.len() * 2 + 1);
        let mut at = 0;
        for (token, inside) in tokens.iter().zip(inside) {
            if token.span.start > at {
                out.push(Segment { span: Span::new(at, token.span.start), fate: Fate::Space });
            }
            let fate = self.fate(token, inside, &evidence, named);
            out.push(Segment { span: token.span, fate });
            at = token.span.end;
        }
        if at < note.len() {
            out.push(Segment { span: Span::new(at, note.len()), fate: Fate::Space });
        }
        out
    }

    fn fate(
        &self,
        token: &Token,
        inside: Option<&str>,
        evidence: &[Span],
        named: &[Named],
    ) -> Fate {
        if let Some(why) = token.why.filter(|w| w.leaves_out()) {
            let reason = if why == Why::SaidTwice { "said twice" } else { "taken back" };
            return Fate::SetAside(reason.to_owned());
        }
        if covered(evidence, token.span) {
            return Fate::Evidence;
        }
        if named.iter().any(|n| n.span.start <= token.span.start && token.span.end <= n.span.end) {
            return Fate::SetAside("bird named".to_owned());
        }
        let aside = self
            .lexicon
            .kinds
            .iter()
            .filter(|(id, kind)| token.kinds & id.bit() != 0 && kind.rest == Rest::SetAside)
            .map(|(_, kind)| kind.aside.clone())
            .next();
        match aside {
            Some(reason) => Fate::SetAside(reason),
            // A known word that a rule has used without keeping it: "long" in "40 cm long".
            None => match inside.filter(|_| token.node != 0) {
                Some(reason) => Fate::SetAside(reason.to_owned()),
                None => Fate::Unplaced,
            },
        }
    }
}

/// Whether some evidence holds `span`; evidence is sorted.
fn covered(evidence: &[Span], span: Span) -> bool {
    let upto = evidence.partition_point(|e| e.start <= span.start);
    evidence[..upto].iter().rev().take(8).any(|e| span.end <= e.end)
}
