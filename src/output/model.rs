//! The JSON contract: one object a note.

use crate::gaps::State;
use crate::traits::{Certainty, Polarity};
use schemars::{JsonSchema, Schema, schema_for};
use serde::Serialize;

/// A byte range `[start, end)` in the note's text.
pub type Bytes = [usize; 2];

/// A note, read.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct NoteReading {
    /// The note itself.
    pub note: Note,
    /// The region whose yardsticks were taken, by id.
    pub region: String,
    /// The same, for people.
    pub region_title: String,
    /// What was taken for each bird that sizes are told by.
    pub yardsticks: Vec<Yardstick>,
    /// The birds of the note.
    pub birds: Vec<Bird>,
    /// Words nobody could place.
    pub unplaced: Vec<Unplaced>,
    /// Words set aside on purpose.
    pub set_aside: Vec<SetAside>,
    /// Changes made to the note's words before reading.
    pub repairs: Vec<Repair>,
}

/// The note itself.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Note {
    /// Its id: its place in the input, from 1.
    pub id: String,
    /// Its text; all byte ranges refer to it.
    pub text: String,
}

/// A bird that a size was told by.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Yardstick {
    /// The note's word.
    pub written: String,
    /// The species taken.
    pub taken: String,
    /// Its mass in grams.
    pub mass_g: f32,
}

/// One bird of a note.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Bird {
    /// Its number in the note, from 1.
    pub bird: u32,
    /// Its field marks, in topographical order.
    pub traits: Vec<TraitOut>,
    /// Birds the note names, kept apart from the marks.
    pub named: Vec<NamedOut>,
    /// The marks of a full description, and what the note says of each.
    pub gaps: Vec<GapOut>,
    /// The species that fit, best first. Suggestions for a person to judge.
    pub candidates: Vec<CandidateOut>,
    /// The share of belief that it is none of them, from 0 to 1; null without matching.
    pub none_of_these: Option<f32>,
    /// What to look at next to part the leading candidates, best first.
    pub look_next: Vec<LookNextOut>,
}

/// A field mark.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct TraitOut {
    /// Which bird of the note, from 1.
    pub bird: u32,
    /// Where: the id of a standard area.
    pub area: String,
    /// Which property: colour, pattern, shape, length, size, build, behaviour, ...
    pub aspect: String,
    /// What was seen: the id of a term, or something measured, counted or compared.
    pub value: String,
    /// Whether it was seen, looked for and not there, or could not be seen.
    pub polarity: Polarity,
    /// Whether the observer was sure.
    pub certainty: Certainty,
    /// Pale, dark, bright, ...
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tone: Option<String>,
    /// How much of the area, or the marking that carries the colour.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub extent: Option<String>,
    /// Where within the area.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub position: Option<String>,
    /// How it compares.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub relation: Option<String>,
    /// What it is compared with.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub against: Option<String>,
    /// For sizes, the range of mass in grams.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mass_g: Option<[f32; 2]>,
    /// The area as the note has it, where that is not the standard one: hood, cap, mask.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub written_area: Option<String>,
    /// The id of the value in the PATO vocabulary of qualities.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pato: Option<String>,
    /// The note's own words.
    pub as_written: String,
    /// From the first byte of the evidence to the last.
    pub span: Bytes,
    /// The pieces of the note that say it.
    pub parts: Vec<Bytes>,
    /// The rule that made it.
    pub rule: String,
}

/// A bird that the note names.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct NamedOut {
    /// The note's words.
    pub text: String,
    /// Where.
    pub span: Bytes,
    /// The bird's id.
    pub bird: String,
    /// Whether it is said to be one, not to be one, or could not be made out.
    pub polarity: Polarity,
    /// Whether the observer was sure.
    pub certainty: Certainty,
    /// Whether it is only said to be like one.
    pub likeness: bool,
}

/// A mark of a full description.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct GapOut {
    /// Its id.
    pub mark: String,
    /// Its name.
    pub title: String,
    /// What the note says of it.
    pub state: State,
    /// Why it matters.
    pub why: String,
    /// What to look for.
    pub look: String,
}

/// A species that may be the bird.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CandidateOut {
    /// English name.
    pub species: String,
    /// Scientific name.
    pub scientific: String,
    /// The form that fits best: adult male, juvenile, ...
    pub form: String,
    /// The share of belief, from 0 to 1.
    pub share: f32,
    /// What speaks for it, strongest first.
    pub fits: Vec<ReasonOut>,
    /// What speaks against it, strongest first.
    pub conflicts: Vec<ReasonOut>,
    /// Marks it shows that the note does not speak of.
    pub unrecorded: Vec<String>,
}

/// A trait, or a loose kind that the note names, as a reason.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ReasonOut {
    /// The trait, by its place in the bird's `traits`.
    #[serde(rename = "trait", skip_serializing_if = "Option::is_none")]
    pub trait_index: Option<usize>,
    /// The name, by its place in the bird's `named`.
    #[serde(rename = "named", skip_serializing_if = "Option::is_none")]
    pub named_index: Option<usize>,
    /// The trait or the name in words.
    pub text: String,
    /// The natural logarithm of how much more likely it is of this bird than of any other.
    pub weight: f32,
}

/// A mark to look at next.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LookNextOut {
    /// Where.
    pub area: String,
    /// Which property.
    pub aspect: String,
    /// The question in words.
    pub question: String,
    /// What each answer would favour.
    pub answers: Vec<AnswerOut>,
    /// The expected gain in bits.
    pub gain_bits: f32,
}

/// An answer to such a question.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct AnswerOut {
    /// What would be seen.
    pub value: String,
    /// The species that show it.
    pub favours: Vec<String>,
}

/// A word nobody could place.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Unplaced {
    /// The word.
    pub text: String,
    /// Where.
    pub span: Bytes,
    /// Known terms nearest to it in spelling.
    pub nearest: Vec<String>,
}

/// A word set aside on purpose.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct SetAside {
    /// The word.
    pub text: String,
    /// Where.
    pub span: Bytes,
    /// Why.
    pub reason: String,
}

/// A change made to the note's words before reading.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Repair {
    /// The note's word.
    pub written: String,
    /// Where.
    pub span: Bytes,
    /// What it was read as; empty where the words were left out.
    pub read_as: String,
    /// Why: `spelling`, `sound`, `run-together`, `split-word`, `spoken-sign`, `spoken-number`,
    /// `said-twice` or `taken-back`.
    pub kind: String,
}

/// The JSON Schema of [`NoteReading`].
pub fn schema() -> Schema {
    schema_for!(NoteReading)
}
