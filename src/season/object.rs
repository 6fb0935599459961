//! One JSON object an entry.
//!
//! `span` counts bytes of `note`, `bytes` those of the file.

use super::desk::{BirdRead, Desk, Read};
use super::rows::is_word;
use crate::entries::{Entry, Heading, SourceMap};
use crate::output::model::Mark;
use crate::reading::Fate;
use crate::span::Span;
use crate::traits::Trait;
use schemars::{JsonSchema, Schema, schema_for};
use serde::ser::{SerializeSeq, SerializeStruct};
use serde::{Serialize, Serializer};

/// Where an entry stands.
#[derive(Serialize, JsonSchema)]
struct Source<'a> {
    /// The file.
    file: &'a str,
    /// The line, from 1.
    line: u64,
    /// The first byte in the file and the one behind the last.
    bytes: [u64; 2],
}

#[derive(Serialize)]
struct Parted<'a> {
    source: Source<'a>,
    #[serde(flatten)]
    heading: &'a Heading,
    note: &'a str,
    map: &'a SourceMap,
}

/// Writes an entry that is parted and not yet read, with all that is needed to read it elsewhere.
///
/// # Errors
/// None in practice: the object is in memory.
pub fn parted(entry: &Entry, file: &str, out: &mut Vec<u8>) -> serde_json::Result<()> {
    let parted = Parted {
        source: source(entry, entry.file.as_deref().unwrap_or(file)),
        heading: &entry.heading,
        note: &entry.text,
        map: &entry.map,
    };
    serde_json::to_writer(&mut *out, &parted)?;
    out.push(b'\n');
    Ok(())
}

fn source<'a>(entry: &Entry, file: &'a str) -> Source<'a> {
    Source { file, line: entry.map.first_line(), bytes: entry.span }
}

/// An entry, read.
#[derive(Serialize, JsonSchema)]
struct Row<'a> {
    /// Where it stands.
    source: Source<'a>,
    #[serde(flatten)]
    heading: &'a Heading,
    /// The note itself.
    note: &'a str,
    /// Its birds with their marks; none where no mark was found.
    #[schemars(with = "Vec<Bird<'_>>")]
    birds: Birds<'a>,
    /// Birds named by the observer, by their ids.
    named: Vec<&'a str>,
    /// Words nobody could place.
    #[schemars(with = "Vec<Word<'_>>")]
    unplaced: Words<'a>,
    /// Words set aside on purpose.
    #[schemars(with = "Vec<Word<'_>>")]
    set_aside: Words<'a>,
    /// Changes made to the note's words before reading.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    repairs: Vec<Repair<'a>>,
}

/// A change made to the note's words before reading.
#[derive(Serialize, JsonSchema)]
struct Repair<'a> {
    /// The note's word.
    written: &'a str,
    /// Its bytes in the note.
    span: [usize; 2],
    /// What it was read as; empty where the words were left out.
    read_as: &'a str,
    /// Why, as in the readings of single notes.
    kind: &'static str,
}

struct Birds<'a> {
    desk: &'a Desk<'a>,
    read: &'a Read<'a>,
}

impl Serialize for Birds<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut list = serializer.serialize_seq(Some(self.read.birds.len()))?;
        for bird in &self.read.birds {
            list.serialize_element(&Bird {
                bird: bird.bird,
                traits: Traits { desk: self.desk, read: self.read, bird },
                enough: bird.is_enough(&self.desk.enough),
                unseen: self.desk.ids(bird.told.unseen).collect(),
                left_out: self.desk.ids(bird.told.left_out).collect(),
            })?;
        }
        list.end()
    }
}

/// A bird of the entry.
#[derive(Serialize, JsonSchema)]
struct Bird<'a> {
    /// Its number in the note, from 1.
    bird: u32,
    /// Its field marks, in topographical order.
    #[schemars(with = "Vec<PlacedMark<'_>>")]
    traits: Traits<'a>,
    /// Whether the description is good enough for a record, by the lexicon's measure.
    enough: bool,
    /// Marks of a full description that could not be seen.
    unseen: Vec<&'a str>,
    /// Marks of a full description of which the note does not speak.
    left_out: Vec<&'a str>,
}

struct Traits<'a> {
    desk: &'a Desk<'a>,
    read: &'a Read<'a>,
    bird: &'a BirdRead,
}

impl Serialize for Traits<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut list = serializer.serialize_seq(Some(self.bird.traits.len()))?;
        for &at in &self.bird.traits {
            list.serialize_element(&placed(self.desk, self.read, &self.read.reading.traits[at]))?;
        }
        list.end()
    }
}

/// A field mark.
#[derive(JsonSchema)]
struct PlacedMark<'a> {
    #[schemars(flatten)]
    mark: Mark<'a>,
    /// Its bytes in the note.
    span: [usize; 2],
    /// The line of the file, from 1.
    line: u64,
    /// Its bytes in the file.
    bytes: [u64; 2],
    /// The rule that made it.
    rule: &'a str,
}

impl Serialize for PlacedMark<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut object = serializer.serialize_struct("Mark", Mark::FIELDS + 4)?;
        self.mark.fields(&mut object)?;
        object.serialize_field("span", &self.span)?;
        object.serialize_field("line", &self.line)?;
        object.serialize_field("bytes", &self.bytes)?;
        object.serialize_field("rule", self.rule)?;
        object.end()
    }
}

fn placed<'a>(desk: &'a Desk<'a>, read: &'a Read<'a>, one: &'a Trait) -> PlacedMark<'a> {
    let span = one.span();
    let (bytes, line) = read.place(span);
    PlacedMark {
        mark: desk.mark(&read.entry.text, one),
        span: [span.start, span.end],
        line,
        bytes,
        rule: desk.knowledge.rules.rules.get(one.rule).map_or("", |r| r.name.as_str()),
    }
}

/// Words that were not placed, or set aside.
struct Words<'a> {
    read: &'a Read<'a>,
    aside: bool,
}

/// A word of the note.
#[derive(Serialize, JsonSchema)]
struct Word<'a> {
    /// The word.
    text: &'a str,
    /// Its bytes in the note.
    span: [usize; 2],
    /// The line of the file, from 1.
    line: u64,
    /// Its bytes in the file.
    bytes: [u64; 2],
    /// Why it was set aside.
    #[serde(skip_serializing_if = "Option::is_none")]
    reason: Option<&'a str>,
}

impl Serialize for Words<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut list = serializer.serialize_seq(None)?;
        for segment in &self.read.reading.segments {
            let reason = match &segment.fate {
                Fate::Unplaced if !self.aside => None,
                Fate::SetAside(reason) if self.aside => Some(reason),
                _ => continue,
            };
            let Span { start, end } = segment.span;
            if self.aside && !is_word(&self.read.entry.text, segment.span) {
                continue;
            }
            let (bytes, line) = self.read.place(segment.span);
            let text = segment.span.of(&self.read.entry.text);
            let reason = reason.map(AsRef::as_ref);
            list.serialize_element(&Word { text, span: [start, end], line, bytes, reason })?;
        }
        list.end()
    }
}

/// Writes an entry with all that was read.
///
/// # Errors
/// None in practice: the object is in memory.
pub fn object(desk: &Desk<'_>, read: &Read<'_>, out: &mut Vec<u8>) -> serde_json::Result<()> {
    let row = Row {
        source: source(read.entry, read.file),
        heading: &read.entry.heading,
        note: &read.entry.text,
        birds: Birds { desk, read },
        named: read.named.iter().map(|n| desk.text(*n)).collect(),
        unplaced: Words { read, aside: false },
        set_aside: Words { read, aside: true },
        repairs: read
            .reading
            .repairs
            .iter()
            .map(|m| Repair {
                written: m.span.of(&read.entry.text),
                span: [m.span.start, m.span.end],
                read_as: &m.read_as,
                kind: m.why.text(),
            })
            .collect(),
    };
    serde_json::to_writer(&mut *out, &row)?;
    out.push(b'\n');
    Ok(())
}

/// The JSON Schema of the objects of [`object`], one a line.
pub fn schema() -> Schema {
    schema_for!(Row<'_>)
}
