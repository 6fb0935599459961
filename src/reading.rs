//! Reading a note: from text to traits, with what became of every word.
//!
//! [`Reader::read`] never fails. Every byte of the note lies in exactly one [`Segment`]: evidence of a
//! trait, set aside on purpose, or unplaced. The segments in order are the note.

use crate::grammar::birds::{ALL, Turns, number};
use crate::grammar::paths::fill;
use crate::grammar::refer::{Referring, resolve};
use crate::grammar::scope::Forces;
use crate::grammar::tokens::{self, tokens_into};
use crate::grammar::{self, Basics, Finder, Match, Repair, Token, Why};
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::{KindSet, Rest};
use crate::lexicon::names::Name;
use crate::lexicon::record::{Parts, Slot};
use crate::rules::Rules;
use crate::span::Span;
use crate::standard::{From, Terms, drop_bare_marks, drop_counts_of_birds, polarity, traits_of};
use crate::traits::{Certainty, Polarity, Trait};
use compact_str::CompactString;
use std::sync::{Mutex, PoisonError};

/// What became of a stretch of the note.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fate {
    /// It speaks for a trait.
    Evidence,
    /// It was set aside, for that reason.
    SetAside(CompactString),
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
    /// Kinds whose words are set aside, and why, by kind.
    set_aside: KindSet,
    asides: Vec<CompactString>,
    region: Name,
    trace: bool,
    spare: Spare,
}

/// Space to read a note in, used for note after note.
#[derive(Debug, Default)]
struct Scratch {
    tokens: tokens::Scratch,
    grammar: grammar::Scratch,
    inside: Vec<Option<&'static str>>,
    evidence: Vec<Span>,
}

/// Space that no thread uses just now. A reading takes one and puts it back, so that there are as many
/// as there are threads; what they remember never changes a reading.
#[derive(Debug, Default)]
#[allow(clippy::vec_box, reason = "taking one and putting it back moves a pointer")]
struct Spare(Mutex<Vec<Box<Scratch>>>);

impl Spare {
    fn take(&self) -> Box<Scratch> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).pop().unwrap_or_default()
    }

    fn put_back(&self, scratch: Box<Scratch>) {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).push(scratch);
    }
}

impl Clone for Spare {
    fn clone(&self) -> Self {
        Self::default()
    }
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
            set_aside: lexicon.kinds.set_where(|k| k.rest == Rest::SetAside),
            asides: lexicon.kinds.iter().map(|(_, k)| k.aside.as_str().into()).collect(),
            region: lexicon.names.find(region),
            trace: false,
            spare: Spare::default(),
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
        let mut scratch = self.spare.take();
        let reading = self.read_in(note, &mut scratch);
        self.spare.put_back(scratch);
        reading
    }

    fn read_in(&self, note: &str, scratch: &mut Scratch) -> Reading {
        let mut tokens = Vec::with_capacity(note.len() / 4);
        let repairs =
            tokens_into(note, self.lexicon, &self.basics, &mut scratch.tokens, &mut tokens);
        let finder = Finder {
            lexicon: self.lexicon,
            rules: self.rules,
            forces: &self.forces,
            region: self.region,
            trace: self.trace,
        };
        let mut found = finder.matches(&tokens, &mut scratch.grammar);
        resolve(&self.referring, &mut found);
        fill(self.lexicon, &mut found);
        let birds = number(self.lexicon, &self.turns, &tokens, &mut found);
        let mut traits = Vec::with_capacity(found.len() * 2);
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
        let segments = self.segments(note, &tokens, &found, &traits, &named, scratch);
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
        scratch: &mut Scratch,
    ) -> Vec<Segment> {
        let Scratch { inside, evidence, .. } = scratch;
        inside.clear();
        inside.resize(tokens.len(), None);
        for one in found {
            if one.taken_back {
                inside[one.start..one.end].fill(Some("taken back"));
            } else if one.records.iter().any(|r| r.get(Slot::Aspect).is_some()) {
                inside[one.start..one.end].fill(Some("part of the phrase"));
            }
        }
        evidence.clear();
        evidence.extend(traits.iter().flat_map(|t| Parts::as_slice(&t.parts)));
        evidence.sort_unstable();
        evidence.dedup();
        let mut out = Vec::with_capacity(tokens.len() * 2 + 1);
        let (mut at, mut upto) = (0, 0);
        for (token, &inside) in tokens.iter().zip(inside.iter()) {
            if token.span.start > at {
                out.push(Segment { span: Span::new(at, token.span.start), fate: Fate::Space });
            }
            // Tokens come in order, and so does the evidence that starts before each.
            upto += evidence[upto..].iter().take_while(|e| e.start <= token.span.start).count();
            let fate = self.fate(token, inside, &evidence[..upto], named);
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
        inside: Option<&'static str>,
        evidence: &[Span],
        named: &[Named],
    ) -> Fate {
        if let Some(why) = token.why.filter(|w| w.leaves_out()) {
            let reason = if why == Why::SaidTwice { "said twice" } else { "taken back" };
            return Fate::SetAside(CompactString::const_new(reason));
        }
        if covered(evidence, token.span) {
            return Fate::Evidence;
        }
        if named.iter().any(|n| n.span.start <= token.span.start && token.span.end <= n.span.end) {
            return Fate::SetAside(CompactString::const_new("bird named"));
        }
        // Of several kinds the one declared first says why.
        let aside = token.kinds & self.set_aside;
        if aside != 0 {
            return Fate::SetAside(self.asides[aside.trailing_zeros() as usize].clone());
        }
        // A known word that a rule has used without keeping it: "long" in "40 cm long".
        match inside.filter(|_| token.node != 0) {
            Some(reason) => Fate::SetAside(CompactString::const_new(reason)),
            None => Fate::Unplaced,
        }
    }
}

/// Whether some evidence holds `span`; it is sorted, and none of it starts behind `span`.
fn covered(evidence: &[Span], span: Span) -> bool {
    evidence.iter().rev().take(8).any(|e| span.end <= e.end)
}
