//! The JSON contract: one object a note.
//!
//! The shapes borrow from the note and the lexicon; only what is put together is their own.

use crate::gaps::State;
use crate::traits::{Certainty, Polarity};
use schemars::{JsonSchema, Schema, schema_for};
use serde::ser::SerializeStruct;
use serde::{Serialize, Serializer};
use std::borrow::Cow;

/// A byte range `[start, end)` in the note's text.
pub type Bytes = [usize; 2];

/// A note, read.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct NoteReading<'a> {
    /// The note itself.
    pub note: Note<'a>,
    /// The region whose yardsticks were taken, by id.
    pub region: &'a str,
    /// The same, for people.
    pub region_title: &'a str,
    /// What was taken for each bird that sizes are told by.
    pub yardsticks: Vec<Yardstick<'a>>,
    /// The birds of the note.
    pub birds: Vec<Bird<'a>>,
    /// Words nobody could place.
    pub unplaced: Vec<Unplaced<'a>>,
    /// Words set aside on purpose.
    pub set_aside: Vec<SetAside<'a>>,
    /// Changes made to the note's words before reading.
    pub repairs: Vec<Repair<'a>>,
}

/// The note itself.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Note<'a> {
    /// Its id: its place in the input, from 1.
    pub id: &'a str,
    /// Its text; all byte ranges refer to it.
    pub text: &'a str,
}

/// A bird that a size was told by.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Yardstick<'a> {
    /// The note's word.
    pub written: &'a str,
    /// The species taken.
    pub taken: Cow<'a, str>,
    /// Its mass in grams.
    pub mass_g: f32,
}

/// One bird of a note.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Bird<'a> {
    /// Its number in the note, from 1.
    pub bird: u32,
    /// Its field marks, in topographical order.
    pub traits: Vec<TraitOut<'a>>,
    /// Birds the note names, kept apart from the marks.
    pub named: Vec<NamedOut<'a>>,
    /// The marks of a full description, and what the note says of each.
    pub gaps: Vec<GapOut<'a>>,
    /// The species that fit, best first. Suggestions for a person to judge.
    pub candidates: Vec<CandidateOut<'a>>,
    /// The share of belief that it is none of them, from 0 to 1; null without matching.
    pub none_of_these: Option<f32>,
    /// What to look at next to part the leading candidates, best first.
    pub look_next: Vec<LookNextOut<'a>>,
}

/// What a mark says, without where the note says it.
#[derive(Clone, Debug, PartialEq, JsonSchema)]
pub struct Mark<'a> {
    /// Where: the id of a standard area.
    pub area: &'a str,
    /// Which property: colour, pattern, shape, length, size, build, behaviour, ...
    pub aspect: &'a str,
    /// What was seen: the id of a term, or something measured, counted or compared.
    pub value: Cow<'a, str>,
    /// Whether it was seen, looked for and not there, or could not be seen.
    pub polarity: Polarity,
    /// Whether the observer was sure.
    pub certainty: Certainty,
    /// Pale, dark, bright, ...
    pub tone: Option<&'a str>,
    /// How much of the area, or the marking that carries the colour.
    pub extent: Option<&'a str>,
    /// Where within the area.
    pub position: Option<&'a str>,
    /// How it compares.
    pub relation: Option<&'a str>,
    /// What it is compared with.
    pub against: Option<&'a str>,
    /// For sizes, the range of mass in grams.
    pub mass_g: Option<[f32; 2]>,
    /// The area as the note has it, where that is not the standard one: hood, cap, mask.
    pub written_area: Option<&'a str>,
    /// The id of the value in the PATO vocabulary of qualities.
    pub pato: Option<&'a str>,
    /// The note's own words.
    pub as_written: Cow<'a, str>,
}

impl Mark<'_> {
    /// Writes its fields as those of a larger object; `serde(flatten)` would do the same, slower.
    ///
    /// # Errors
    /// What the object says.
    pub fn fields<S: SerializeStruct>(&self, object: &mut S) -> Result<(), S::Error> {
        object.serialize_field("area", self.area)?;
        object.serialize_field("aspect", self.aspect)?;
        object.serialize_field("value", &self.value)?;
        object.serialize_field("polarity", &self.polarity)?;
        object.serialize_field("certainty", &self.certainty)?;
        if let Some(tone) = self.tone {
            object.serialize_field("tone", tone)?;
        }
        if let Some(extent) = self.extent {
            object.serialize_field("extent", extent)?;
        }
        if let Some(position) = self.position {
            object.serialize_field("position", position)?;
        }
        if let Some(relation) = self.relation {
            object.serialize_field("relation", relation)?;
        }
        if let Some(against) = self.against {
            object.serialize_field("against", against)?;
        }
        if let Some(mass) = &self.mass_g {
            object.serialize_field("mass_g", mass)?;
        }
        if let Some(area) = self.written_area {
            object.serialize_field("written_area", area)?;
        }
        if let Some(pato) = self.pato {
            object.serialize_field("pato", pato)?;
        }
        object.serialize_field("as_written", &self.as_written)
    }

    /// The most fields it has.
    pub const FIELDS: usize = 14;
}

/// A field mark.
#[derive(Clone, Debug, PartialEq, JsonSchema)]
pub struct TraitOut<'a> {
    /// Which bird of the note, from 1.
    pub bird: u32,
    /// What it says.
    #[schemars(flatten)]
    pub mark: Mark<'a>,
    /// From the first byte of the evidence to the last.
    pub span: Bytes,
    /// The pieces of the note that say it.
    pub parts: Vec<Bytes>,
    /// The rule that made it.
    pub rule: &'a str,
}

impl Serialize for TraitOut<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut object = serializer.serialize_struct("TraitOut", Mark::FIELDS + 4)?;
        object.serialize_field("bird", &self.bird)?;
        self.mark.fields(&mut object)?;
        object.serialize_field("span", &self.span)?;
        object.serialize_field("parts", &self.parts)?;
        object.serialize_field("rule", self.rule)?;
        object.end()
    }
}

/// A bird that the note names.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct NamedOut<'a> {
    /// The note's words.
    pub text: &'a str,
    /// Where.
    pub span: Bytes,
    /// The bird's id.
    pub bird: &'a str,
    /// Whether it is said to be one, not to be one, or could not be made out.
    pub polarity: Polarity,
    /// Whether the observer was sure.
    pub certainty: Certainty,
    /// Whether it is only said to be like one.
    pub likeness: bool,
}

/// A mark of a full description.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct GapOut<'a> {
    /// Its id.
    pub mark: &'a str,
    /// Its name.
    pub title: &'a str,
    /// What the note says of it.
    pub state: State,
    /// Why it matters.
    pub why: &'a str,
    /// What to look for.
    pub look: &'a str,
    /// The same as JSON, made ready.
    #[serde(skip)]
    pub ready: &'a str,
}

/// A species that may be the bird.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CandidateOut<'a> {
    /// English name.
    pub species: &'a str,
    /// Scientific name.
    pub scientific: &'a str,
    /// The form that fits best: adult male, juvenile, ...
    pub form: &'a str,
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
pub struct LookNextOut<'a> {
    /// Where.
    pub area: &'a str,
    /// Which property.
    pub aspect: &'a str,
    /// The question in words.
    pub question: String,
    /// What each answer would favour.
    pub answers: Vec<AnswerOut<'a>>,
    /// The expected gain in bits.
    pub gain_bits: f32,
}

/// An answer to such a question.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct AnswerOut<'a> {
    /// What would be seen.
    pub value: String,
    /// The species that show it.
    pub favours: Vec<&'a str>,
}

/// A word nobody could place.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Unplaced<'a> {
    /// The word.
    pub text: &'a str,
    /// Where.
    pub span: Bytes,
    /// Known terms nearest to it in spelling.
    pub nearest: Vec<&'a str>,
}

/// A word set aside on purpose.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct SetAside<'a> {
    /// The word.
    pub text: &'a str,
    /// Where.
    pub span: Bytes,
    /// Why.
    pub reason: Cow<'a, str>,
}

/// A change made to the note's words before reading.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct Repair<'a> {
    /// The note's word.
    pub written: &'a str,
    /// Where.
    pub span: Bytes,
    /// What it was read as; empty where the words were left out.
    pub read_as: Cow<'a, str>,
    /// Why: `spelling`, `sound`, `run-together`, `split-word`, `spoken-sign`, `spoken-number`,
    /// `said-twice` or `taken-back`.
    pub kind: &'a str,
}

/// The JSON Schema of [`NoteReading`].
pub fn schema() -> Schema {
    schema_for!(NoteReading<'_>)
}
