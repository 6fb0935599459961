//! One JSON object an entry.
//!
//! `span` counts bytes of `note`, `bytes` those of the file.

use super::desk::{BirdRead, Desk, Read};
use super::rows::is_word;
use crate::entries::{Entry, Heading, SourceMap};
use crate::output::json::to_buffer;
use crate::output::model::Mark;
use crate::reading::Fate;
use crate::span::Span;
use crate::traits::Trait;
use serde::ser::{SerializeSeq, SerializeStruct};
use serde::{Serialize, Serializer};

#[derive(Serialize)]
struct Source<'a> {
    file: &'a str,
    line: u64,
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
    to_buffer(&parted, out)?;
    out.push(b'\n');
    Ok(())
}

fn source<'a>(entry: &Entry, file: &'a str) -> Source<'a> {
    Source { file, line: entry.map.first_line(), bytes: entry.span }
}

#[derive(Serialize)]
struct Row<'a> {
    source: Source<'a>,
    #[serde(flatten)]
    heading: &'a Heading,
    note: &'a str,
    birds: Birds<'a>,
    named: Vec<&'a str>,
    unplaced: Words<'a>,
    set_aside: Words<'a>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    repairs: Vec<Repair<'a>>,
}

#[derive(Serialize)]
struct Repair<'a> {
    written: &'a str,
    span: [usize; 2],
    read_as: &'a str,
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

#[derive(Serialize)]
struct Bird<'a> {
    bird: u32,
    traits: Traits<'a>,
    enough: bool,
    unseen: Vec<&'a str>,
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

struct PlacedMark<'a> {
    mark: Mark<'a>,
    span: [usize; 2],
    line: u64,
    bytes: [u64; 2],
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

#[derive(Serialize)]
struct Word<'a> {
    text: &'a str,
    span: [usize; 2],
    line: u64,
    bytes: [u64; 2],
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
    to_buffer(&row, out)?;
    out.push(b'\n');
    Ok(())
}
