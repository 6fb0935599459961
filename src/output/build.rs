//! From readings to the published shapes.

use super::model::{
    AnswerOut, Bird, Bytes, CandidateOut, GapOut, LookNextOut, NamedOut, Note, NoteReading,
    ReasonOut, Repair, SetAside, TraitOut, Unplaced, Yardstick,
};
use crate::diagnostic::Diagnostics;
use crate::gaps::{DescriptionMark, description, gaps};
use crate::grammar::spelling::suggestions;
use crate::knowledge::Knowledge;
use crate::lexicon::names::Name;
use crate::matching::{About, Candidate, Checklist, LookNext, Matcher, Reason};
use crate::reading::{Fate, Named, Reader, Reading};
use crate::span::Span;
use crate::traits::{Polarity, Trait};
use rustc_hash::FxHashMap;

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

/// Reads notes and ranks species: everything the program says of a note.
pub struct Analyst<'a> {
    knowledge: &'a Knowledge,
    reader: Reader<'a>,
    region: String,
    matcher: Option<Matcher<'a>>,
    description: Vec<DescriptionMark>,
    /// The outside id of each value that has one.
    pato: FxHashMap<Name, String>,
    options: Options,
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
        let matcher = if options.top > 0 { Some(Matcher::new(knowledge)?) } else { None };
        Ok(Self {
            knowledge,
            reader: knowledge.reader(region),
            region: region.to_owned(),
            matcher,
            description: description(&knowledge.lexicon),
            pato: knowledge
                .lexicon
                .vocabulary
                .terms
                .iter()
                .filter_map(|t| t.pato.clone().map(|pato| (t.id, pato)))
                .collect(),
            options,
        })
    }

    /// Reads a note and works out all that is published of it.
    pub fn analyse(&self, id: &str, text: &str) -> NoteReading {
        let reading = self.reader.read(text);
        NoteReading {
            note: Note { id: id.to_owned(), text: text.to_owned() },
            region: self.region.clone(),
            region_title: self.region_title(),
            yardsticks: self.yardsticks(text, &reading),
            birds: (1..=reading.birds).map(|bird| self.bird(text, &reading, bird)).collect(),
            unplaced: reading.unplaced().map(|span| self.unplaced(text, span)).collect(),
            set_aside: set_aside(text, &reading),
            repairs: reading
                .repairs
                .iter()
                .map(|m| Repair {
                    written: m.span.of(text).to_owned(),
                    span: bytes(m.span),
                    read_as: m.read_as.clone(),
                    kind: m.why.text().to_owned(),
                })
                .collect(),
        }
    }

    fn bird(&self, text: &str, reading: &Reading, number: u32) -> Bird {
        let lexicon = &self.knowledge.lexicon;
        let mut traits: Vec<&Trait> = reading.traits.iter().filter(|t| t.bird == number).collect();
        traits.sort_by_key(|t| {
            (lexicon.topography.order(t.area), self.aspect_order(t), t.parts.hull())
        });
        let traits: Vec<Trait> = traits.into_iter().cloned().collect();
        let named: Vec<Named> = reading.named.iter().filter(|n| n.of == number).copied().collect();
        let (candidates, none, look_next) = match &self.matcher {
            Some(matcher) if !traits.is_empty() || named.iter().any(|n| matcher.tells(n)) => {
                self.ranked(matcher, reading, &traits, &named)
            }
            _ => (Vec::new(), None, Vec::new()),
        };
        Bird {
            bird: number,
            traits: traits.iter().map(|t| self.trait_out(text, t)).collect(),
            named: named
                .iter()
                .map(|n| NamedOut {
                    text: n.span.of(text).to_owned(),
                    span: bytes(n.span),
                    bird: self.text(n.bird).to_owned(),
                    polarity: n.polarity,
                    certainty: n.certainty,
                    likeness: n.likeness,
                })
                .collect(),
            gaps: gaps(lexicon, &self.description, &traits)
                .into_iter()
                .map(|gap| GapOut {
                    mark: gap.mark.id.clone(),
                    title: gap.mark.title.clone(),
                    state: gap.state,
                    why: gap.mark.why.clone(),
                    look: gap.mark.look.clone(),
                })
                .collect(),
            candidates,
            none_of_these: none,
            look_next,
        }
    }

    /// Sizes before colours before patterns, and so on, in the order of the kinds.
    fn aspect_order(&self, one: &Trait) -> usize {
        const FIRST: [&str; 7] = ["size", "build", "count", "mark", "colour", "pattern", "shape"];
        let name = self.text(one.aspect);
        FIRST.iter().position(|a| *a == name).unwrap_or(FIRST.len())
    }

    fn ranked(
        &self,
        matcher: &Matcher<'_>,
        reading: &Reading,
        traits: &[Trait],
        named: &[Named],
    ) -> (Vec<CandidateOut>, Option<f32>, Vec<LookNextOut>) {
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

    fn candidate(&self, one: &Candidate, traits: &[Trait], named: &[Named]) -> CandidateOut {
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
        let mut unrecorded: Vec<String> =
            one.unrecorded.iter().map(|&i| self.in_words(shown[i])).collect();
        unrecorded.dedup();
        CandidateOut {
            species: account.english.clone(),
            scientific: account.scientific.clone(),
            form: form.label.clone(),
            share: rounded(one.share),
            fits: reasons(&one.fits),
            conflicts: reasons(&one.conflicts),
            unrecorded,
        }
    }

    fn question(&self, one: &LookNext) -> LookNextOut {
        let species = |&account: &usize| self.knowledge.accounts[account].english.clone();
        LookNextOut {
            area: self.text(one.area).to_owned(),
            aspect: self.text(one.aspect).to_owned(),
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

    fn region_title(&self) -> String {
        let found = self.knowledge.lexicon.others("region").find(|r| r.id == self.region);
        found.and_then(|r| r.get("title")).unwrap_or(&self.region).to_owned()
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

    fn trait_out(&self, note: &str, one: &Trait) -> TraitOut {
        let lexicon = &self.knowledge.lexicon;
        let some = |name: Name| name.is_some().then(|| self.text(name).to_owned());
        let pato = self.pato.get(&one.value.term()).cloned();
        TraitOut {
            bird: one.bird,
            area: self.text(one.area).to_owned(),
            aspect: self.text(one.aspect).to_owned(),
            value: one.value.text(lexicon).to_owned(),
            polarity: one.polarity,
            certainty: one.certainty,
            tone: some(one.tone),
            extent: some(one.extent),
            position: some(one.position),
            relation: some(one.relation),
            against: some(one.against),
            mass_g: one.mass.map(|m| [rounded(m.low), rounded(m.high)]),
            written_area: (one.written_area != one.area)
                .then(|| self.text(one.written_area).to_owned()),
            pato,
            as_written: one.as_written(note),
            span: bytes(one.span()),
            parts: one.parts.as_slice().iter().map(|&s| bytes(s)).collect(),
            rule: self.knowledge.rules.rules[one.rule].name.clone(),
        }
    }

    fn yardsticks(&self, note: &str, reading: &Reading) -> Vec<Yardstick> {
        let lexicon = &self.knowledge.lexicon;
        let mut out: Vec<Yardstick> = Vec::new();
        for one in reading.traits.iter().filter(|t| t.against.is_some() && t.mass.is_some()) {
            let Some(mass) = lexicon.scale.mass(one.against) else {
                continue;
            };
            let taken = match self.knowledge.account(one.against) {
                Some(account) => account.english.clone(),
                None => self.text(one.against).replace('-', " "),
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
                .map_or_else(String::new, |t| t.span.of(note).to_owned());
            if !out.iter().any(|y| y.taken == taken) {
                out.push(Yardstick { written, taken, mass_g: mass });
            }
        }
        out
    }

    fn unplaced(&self, note: &str, span: Span) -> Unplaced {
        let text = span.of(note).to_owned();
        let nearest = suggestions(&self.knowledge.lexicon, &text, MOST_NEAREST);
        Unplaced { text, span: bytes(span), nearest }
    }
}

fn set_aside(note: &str, reading: &Reading) -> Vec<SetAside> {
    let word = |s: &&crate::reading::Segment| s.span.of(note).chars().any(char::is_alphanumeric);
    reading
        .segments
        .iter()
        .filter(word)
        .filter_map(|segment| match &segment.fate {
            Fate::SetAside(reason) => Some(SetAside {
                text: segment.span.of(note).to_owned(),
                span: bytes(segment.span),
                reason: reason.to_string(),
            }),
            _ => None,
        })
        .collect()
}

fn bytes(span: Span) -> Bytes {
    [span.start, span.end]
}

/// Three places behind the point are enough for people and keep output stable.
pub fn rounded(number: f32) -> f32 {
    (number * 1000.0).round() / 1000.0
}
