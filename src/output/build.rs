//! From readings to the published shapes.

use super::model::{
    AnswerOut, Bird, Bytes, CandidateOut, GapOut, LookNextOut, Mark, NamedOut, Note, NoteReading,
    ReasonOut, Repair, SetAside, TraitOut, Unplaced, Yardstick,
};
use crate::diagnostic::Diagnostics;
use crate::gaps::{Description, DescriptionMark, State};
use crate::grammar::nearest::Nearest;
use crate::knowledge::Knowledge;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::matching::{About, Candidate, Checklist, LookNext, Matcher, Reason};
use crate::reading::{Fate, Named, Reader, Reading, Segment};
use crate::span::Span;
use crate::traits::{Polarity, Trait, Value};
use rustc_hash::FxHashMap;
use std::borrow::Cow;

/// How many near terms are told for an unplaced word.
const MOST_NEAREST: usize = 3;
/// How many marks to look at next are told.
const MOST_QUESTIONS: usize = 4;

/// What to work out for each note.
#[derive(Clone, Debug)]
pub struct Options {
    /// How many candidates; 0 reads without matching.
    pub top: usize,
    /// Which species are possible.
    pub checklist: Checklist,
}

/// What stands first in a list of marks of one area.
const FIRST: [&str; 7] = ["size", "build", "count", "mark", "colour", "pattern", "shape"];

/// Reads notes and ranks species: everything the program says of a note.
pub struct Analyst<'a> {
    knowledge: &'a Knowledge,
    reader: Reader<'a>,
    region: String,
    region_title: String,
    matcher: Option<Matcher<'a>>,
    description: Description,
    /// The marks of the description as JSON, one for each state.
    ready: Vec<[String; State::ALL.len()]>,
    pato: Pato<'a>,
    nearest: Nearest<'a>,
    first: [Name; FIRST.len()],
    options: Options,
}

/// The outside id of each value that has one.
pub type Pato<'a> = FxHashMap<Name, &'a str>;

/// Those of a lexicon.
pub fn pato(lexicon: &Lexicon) -> Pato<'_> {
    lexicon.vocabulary.pato.iter().map(|(id, pato)| (*id, pato.as_str())).collect()
}

/// What a trait says, as published.
pub fn mark<'a>(lexicon: &'a Lexicon, pato: &Pato<'a>, note: &'a str, one: &Trait) -> Mark<'a> {
    let text = |name: Name| lexicon.names.text(name);
    let some = |name: Name| name.is_some().then(|| text(name));
    Mark {
        area: text(one.area),
        aspect: text(one.aspect),
        value: match &one.value {
            Value::Term(name) => Cow::Borrowed(text(*name)),
            Value::Made(made) => Cow::Owned(made.clone()),
        },
        polarity: one.polarity,
        certainty: one.certainty,
        tone: some(one.tone),
        extent: some(one.extent),
        position: some(one.position),
        relation: some(one.relation),
        against: some(one.against),
        mass_g: one.mass.map(|m| [rounded(m.low), rounded(m.high)]),
        written_area: (one.written_area != one.area).then(|| text(one.written_area)),
        pato: pato.get(&one.value.term()).copied(),
        as_written: one.as_written(note),
    }
}

impl<'a> Analyst<'a> {
    /// An analyst for a region.
    ///
    /// # Errors
    /// What the lexicon lacks for matching.
    pub fn new(
        knowledge: &'a Knowledge,
        region: &str,
        options: Options,
    ) -> Result<Self, Diagnostics> {
        let lexicon = &knowledge.lexicon;
        let matcher = if options.top > 0 { Some(Matcher::new(knowledge)?) } else { None };
        let description = Description::of(lexicon);
        let title = lexicon.others("region").find(|r| r.id == region).and_then(|r| r.get("title"));
        Ok(Self {
            knowledge,
            reader: knowledge.reader(region),
            region: region.to_owned(),
            region_title: title.unwrap_or(region).to_owned(),
            matcher,
            ready: description.marks.iter().map(|m| State::ALL.map(|s| ready(m, s))).collect(),
            description,
            pato: pato(lexicon),
            nearest: Nearest::of(lexicon, MOST_NEAREST),
            first: FIRST.map(|aspect| lexicon.names.find(aspect)),
            options,
        })
    }

    /// Reads a note and works out all that is published of it.
    pub fn analyse<'s>(&'s self, id: &'s str, text: &'s str) -> NoteReading<'s> {
        let mut reading = self.reader.read(text);
        let yardsticks = self.yardsticks(text, &reading);
        let mut traits = std::mem::take(&mut reading.traits);
        let topography = &self.knowledge.lexicon.topography;
        traits.sort_by_cached_key(|t| {
            (t.bird, topography.order(t.area), self.aspect_order(t), t.parts.hull())
        });
        let birds = 1..=reading.birds;
        NoteReading {
            note: Note { id, text },
            region: &self.region,
            region_title: &self.region_title,
            yardsticks,
            birds: birds.map(|bird| self.bird(text, &reading, &traits, bird)).collect(),
            unplaced: reading.unplaced().map(|span| self.unplaced(text, span)).collect(),
            set_aside: set_aside(text, reading.segments),
            repairs: reading
                .repairs
                .into_iter()
                .map(|m| Repair {
                    written: m.span.of(text),
                    span: bytes(m.span),
                    read_as: m.read_as.into(),
                    kind: m.why.text(),
                })
                .collect(),
        }
    }

    /// One bird; `sorted` holds the traits of all, bird by bird.
    fn bird<'s>(
        &'s self,
        text: &'s str,
        reading: &Reading,
        sorted: &[Trait],
        number: u32,
    ) -> Bird<'s> {
        let start = sorted.partition_point(|t| t.bird < number);
        let end = sorted.partition_point(|t| t.bird <= number);
        let traits = &sorted[start..end];
        let named: Vec<Named> = reading.named.iter().filter(|n| n.of == number).copied().collect();
        let (candidates, none, look_next) = match &self.matcher {
            Some(matcher) if !traits.is_empty() || named.iter().any(|n| matcher.tells(n)) => {
                self.ranked(matcher, reading, traits, &named)
            }
            _ => (Vec::new(), None, Vec::new()),
        };
        Bird {
            bird: number,
            traits: traits.iter().map(|t| self.trait_out(text, t)).collect(),
            named: named
                .iter()
                .map(|n| NamedOut {
                    text: n.span.of(text),
                    span: bytes(n.span),
                    bird: self.text(n.bird),
                    polarity: n.polarity,
                    certainty: n.certainty,
                    likeness: n.likeness,
                })
                .collect(),
            gaps: self.gaps(traits),
            candidates,
            none_of_these: none,
            look_next,
        }
    }

    fn gaps(&self, traits: &[Trait]) -> Vec<GapOut<'_>> {
        let told = self.description.told(traits);
        let marks = self.description.marks.iter().zip(&self.ready).enumerate();
        marks
            .map(|(n, (mark, ready))| {
                let state = told.state(n);
                GapOut { ready: &ready[state as usize], ..gap(mark, state) }
            })
            .collect()
    }

    /// Sizes before colours before patterns, and so on.
    fn aspect_order(&self, one: &Trait) -> usize {
        self.first.iter().position(|&a| a == one.aspect).unwrap_or(FIRST.len())
    }

    fn ranked<'s>(
        &'s self,
        matcher: &Matcher<'_>,
        reading: &Reading,
        traits: &[Trait],
        named: &[Named],
    ) -> (Vec<CandidateOut<'s>>, Option<f32>, Vec<LookNextOut<'s>>) {
        let lexicon = &self.knowledge.lexicon;
        let checklist = matcher.where_told(&reading.tokens, &self.options.checklist);
        // Questions part more than the few candidates that are shown.
        let ranking = matcher.rank_named(traits, named, &checklist, self.options.top.max(10));
        let questions = matcher.look_next(lexicon, &ranking.candidates, traits, MOST_QUESTIONS);
        let candidates = ranking
            .candidates
            .iter()
            .take(self.options.top)
            .map(|c| self.candidate(c, traits, named));
        (
            candidates.collect(),
            Some(rounded(ranking.none_of_these)),
            questions.iter().map(|q| self.question(q)).collect(),
        )
    }

    fn candidate<'s>(
        &'s self,
        one: &Candidate,
        traits: &[Trait],
        named: &[Named],
    ) -> CandidateOut<'s> {
        let account = &self.knowledge.accounts[one.account];
        let form = &account.forms[one.form];
        let reason = |one: &Reason| {
            let weight = rounded(one.weight);
            match one.about {
                About::Trait(at) => ReasonOut {
                    trait_index: Some(at),
                    named_index: None,
                    text: self.in_words(&traits[at]),
                    weight,
                },
                About::Named(at) => ReasonOut {
                    trait_index: None,
                    named_index: Some(at),
                    text: self.named_in_words(&named[at]),
                    weight,
                },
            }
        };
        let reasons = |list: &[Reason]| list.iter().map(reason).collect();
        let shown: Vec<&Trait> = self.knowledge.accounts.traits_of(account, form).collect();
        let mut unrecorded: Vec<String> = Vec::new();
        for text in one.unrecorded.iter().map(|&i| self.in_words(shown[i])) {
            // Marks that differ may be the same in words.
            if !unrecorded.contains(&text) {
                unrecorded.push(text);
            }
        }
        CandidateOut {
            species: &account.english,
            scientific: &account.scientific,
            form: &form.label,
            share: rounded(one.share),
            fits: reasons(&one.fits),
            conflicts: reasons(&one.conflicts),
            unrecorded,
        }
    }

    fn question<'s>(&'s self, one: &LookNext) -> LookNextOut<'s> {
        let species = |&account: &usize| self.knowledge.accounts[account].english.as_str();
        LookNextOut {
            area: self.text(one.area),
            aspect: self.text(one.aspect),
            question: one.question.clone(),
            answers: one
                .answers
                .iter()
                .map(|a| AnswerOut {
                    value: a.value.clone(),
                    favours: a.favours.iter().map(species).collect(),
                })
                .collect(),
            gain_bits: rounded(one.gain),
        }
    }

    fn text(&self, name: Name) -> &str {
        self.knowledge.lexicon.names.text(name)
    }

    /// A trait in a few words: `black crown`, `no wing bar`, `tail: bob`.
    pub fn in_words(&self, one: &Trait) -> String {
        let lexicon = &self.knowledge.lexicon;
        let area = lexicon.topography.title(one.area, &lexicon.names);
        let value = one.value.text(lexicon).replace('-', " ");
        let aspect = self.text(one.aspect);
        let tone = self.text(one.tone);
        let value =
            if tone.is_empty() || tone == value { value } else { format!("{tone} {value}") };
        let text = match aspect {
            "mark" => area,
            "size" | "build" | "sex-age" | "voice" | "habitat" | "flight" | "posture"
                if area == "bird" =>
            {
                format!("{}: {value}", aspect.replace('-', " "))
            }
            "behaviour" if area == "bird" => value,
            "behaviour" => format!("{area}: {value}"),
            "count" => format!("{value} {area}"),
            _ if area == "bird" => format!("{value} overall"),
            _ => format!("{value} {area}"),
        };
        match one.polarity {
            Polarity::Present => text,
            Polarity::Absent => format!("no {text}"),
            Polarity::Unseen => format!("{text} not seen"),
        }
    }

    /// A name as a reason: `named as gull`.
    fn named_in_words(&self, one: &Named) -> String {
        let bird = self.text(one.bird).replace('-', " ");
        match (one.polarity, one.likeness) {
            (Polarity::Absent, _) => format!("said to be no {bird}"),
            (_, true) => format!("likened to {bird}"),
            (_, false) => format!("named as {bird}"),
        }
    }

    fn trait_out<'s>(&'s self, note: &'s str, one: &Trait) -> TraitOut<'s> {
        TraitOut {
            bird: one.bird,
            mark: mark(&self.knowledge.lexicon, &self.pato, note, one),
            span: bytes(one.span()),
            parts: one.parts.as_slice().iter().map(|&s| bytes(s)).collect(),
            rule: &self.knowledge.rules.rules[one.rule].name,
        }
    }

    fn yardsticks<'s>(&'s self, note: &'s str, reading: &Reading) -> Vec<Yardstick<'s>> {
        let lexicon = &self.knowledge.lexicon;
        let mut out: Vec<Yardstick<'_>> = Vec::new();
        for one in reading.traits.iter().filter(|t| t.against.is_some() && t.mass.is_some()) {
            let Some(mass) = lexicon.scale.mass(one.against) else {
                continue;
            };
            let taken = match self.knowledge.account(one.against) {
                Some(account) => Cow::Borrowed(account.english.as_str()),
                None => Cow::Owned(self.text(one.against).replace('-', " ")),
            };
            let written = reading
                .tokens
                .iter()
                .filter(|t| one.parts.as_slice().contains(&t.span))
                .find(|t| {
                    let senses = lexicon.vocabulary.senses(t.node);
                    senses.iter().any(|s| {
                        lexicon.vocabulary.record(s).get(crate::lexicon::record::Slot::Against)
                            == one.against
                    })
                })
                .map_or("", |t| t.span.of(note));
            if !out.iter().any(|y| y.taken == taken) {
                out.push(Yardstick { written, taken, mass_g: mass });
            }
        }
        out
    }

    fn unplaced<'s>(&'s self, note: &'s str, span: Span) -> Unplaced<'s> {
        let text = span.of(note);
        Unplaced { text, span: bytes(span), nearest: self.nearest.to(text) }
    }
}

fn gap(mark: &DescriptionMark, state: State) -> GapOut<'_> {
    let DescriptionMark { id, title, why, look } = mark;
    GapOut { mark: id, title, state, why, look, ready: "" }
}

fn ready(mark: &DescriptionMark, state: State) -> String {
    // An object of texts always has a text.
    serde_json::to_string(&gap(mark, state)).unwrap_or_default()
}

fn set_aside(note: &str, segments: Vec<Segment>) -> Vec<SetAside<'_>> {
    let mut out = Vec::with_capacity(segments.len() / 2);
    for segment in segments {
        let Fate::SetAside(reason) = segment.fate else { continue };
        let text = segment.span.of(note);
        if text.chars().any(char::is_alphanumeric) {
            out.push(SetAside { text, span: bytes(segment.span), reason: reason.into() });
        }
    }
    out
}

fn bytes(span: Span) -> Bytes {
    [span.start, span.end]
}

/// Three places behind the point are enough for people and keep output stable.
pub fn rounded(number: f32) -> f32 {
    (number * 1000.0).round() / 1000.0
}
