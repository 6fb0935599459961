//! One JSON object an entry.
//!
//! `span` counts bytes of `note`, `bytes` those of the file.

use super::again::Again;
use super::desk::{BirdRead, Desk, Read};
use super::rows::is_word;
use crate::entries::{Entry, Heading, SourceMap};
use crate::gaps::MarkSet;
use crate::output::digits::Digits;
use crate::output::json;
use crate::output::model::Mark;
use crate::reading::Fate;
use crate::span::Span;
use crate::traits::Trait;
use schemars::{JsonSchema, Schema, schema_for};
use serde::Serialize;

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
#[derive(JsonSchema)]
struct Row<'a> {
    /// Where it stands.
    source: Source<'a>,
    #[schemars(flatten)]
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
    #[schemars(default, skip_serializing_if = "Vec::is_empty")]
    repairs: Vec<Repair<'a>>,
}

impl Row<'_> {
    fn write(&self, again: &mut Again, out: &mut Vec<u8>) {
        out.extend_from_slice(b"{\"source\":");
        self.source.write(out);
        heading(self.heading, out);
        json::field(",\"note\":", self.note, out);
        out.extend_from_slice(b",\"birds\":");
        self.birds.write(again, out);
        out.extend_from_slice(b",\"named\":");
        json::list(&self.named, out, |name, out| json::text(name, out));
        out.extend_from_slice(b",\"unplaced\":");
        self.unplaced.write(out);
        out.extend_from_slice(b",\"set_aside\":");
        self.set_aside.write(out);
        if !self.repairs.is_empty() {
            out.extend_from_slice(b",\"repairs\":");
            json::value(&self.repairs, out);
        }
        out.extend_from_slice(b"}\n");
    }
}

impl Source<'_> {
    fn write(&self, out: &mut Vec<u8>) {
        json::field("{\"file\":", self.file, out);
        let mut place = Digits::new();
        in_file(self.line, self.bytes, &mut place);
        place.signs(b"]}");
        out.extend_from_slice(place.bytes());
    }
}

/// The fields of a heading, to stand beside others: the bytes that serde gives.
fn heading(heading: &Heading, out: &mut Vec<u8>) {
    if let Some(date) = heading.date {
        json::word(",\"date\":", &date.text(), out);
    }
    for (name, text) in [
        (",\"date_as_written\":", &heading.date_as_written),
        (",\"time\":", &heading.time),
        (",\"place\":", &heading.place),
        (",\"observer\":", &heading.observer),
        (",\"count\":", &heading.count),
        (",\"weather\":", &heading.weather),
        (",\"habitat\":", &heading.habitat),
        (",\"identification\":", &heading.identification),
        (",\"title\":", &heading.title),
    ] {
        json::maybe(name, text.as_deref(), out);
    }
    if !heading.other.is_empty() {
        out.extend_from_slice(b",\"other\":");
        json::value(&heading.other, out);
    }
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

impl Birds<'_> {
    fn write(&self, again: &mut Again, out: &mut Vec<u8>) {
        let &Self { desk, read } = self;
        json::list(&read.birds, out, |bird, out| {
            let bird = Bird {
                bird: bird.bird,
                traits: Traits { desk, read, bird },
                enough: bird.is_enough(&desk.enough),
                unseen: Marks { desk, set: bird.told.unseen },
                left_out: Marks { desk, set: bird.told.left_out },
            };
            bird.write(again, out);
        });
    }
}

/// A bird of the entry.
#[derive(JsonSchema)]
struct Bird<'a> {
    /// Its number in the note, from 1.
    bird: u32,
    /// Its field marks, in topographical order.
    #[schemars(with = "Vec<PlacedMark<'_>>")]
    traits: Traits<'a>,
    /// Whether the description is good enough for a record, by the lexicon's measure.
    enough: bool,
    /// Marks of a full description that could not be seen.
    #[schemars(with = "Vec<&str>")]
    unseen: Marks<'a>,
    /// Marks of a full description of which the note does not speak.
    #[schemars(with = "Vec<&str>")]
    left_out: Marks<'a>,
}

impl Bird<'_> {
    fn write(&self, again: &mut Again, out: &mut Vec<u8>) {
        out.extend_from_slice(b"{\"bird\":");
        json::number(u64::from(self.bird), out);
        out.extend_from_slice(b",\"traits\":");
        self.traits.write(again, out);
        let enough: &[u8] = if self.enough { b",\"enough\":true" } else { b",\"enough\":false" };
        out.extend_from_slice(enough);
        out.extend_from_slice(b",\"unseen\":");
        self.unseen.write(out);
        out.extend_from_slice(b",\"left_out\":");
        self.left_out.write(out);
        out.push(b'}');
    }
}

/// Marks of a full description, by their ids.
struct Marks<'a> {
    desk: &'a Desk<'a>,
    set: MarkSet,
}

impl Marks<'_> {
    fn write(&self, out: &mut Vec<u8>) {
        json::list(self.desk.ids(self.set), out, json::text);
    }
}

struct Traits<'a> {
    desk: &'a Desk<'a>,
    read: &'a Read<'a>,
    bird: &'a BirdRead,
}

impl Traits<'_> {
    fn write(&self, again: &mut Again, out: &mut Vec<u8>) {
        json::list(&self.bird.traits, out, |&at, out| {
            let mark = placed(self.desk, self.read, &self.read.reading.traits[at]);
            mark.write(self.desk, &self.read.entry.text, again, out);
        });
    }
}

/// A field mark.
#[derive(JsonSchema)]
struct PlacedMark<'a> {
    #[schemars(flatten, with = "Mark<'_>")]
    mark: &'a Trait,
    /// Its bytes in the note.
    span: [usize; 2],
    /// The line of the file, from 1.
    line: u64,
    /// Its bytes in the file.
    bytes: [u64; 2],
    /// The rule that made it.
    rule: &'a str,
}

impl PlacedMark<'_> {
    fn write(&self, desk: &Desk<'_>, note: &str, again: &mut Again, out: &mut Vec<u8>) {
        out.push(b'{');
        again.write(self.mark, out, |out| desk.mark(note, self.mark).write_said(out));
        json::field(",\"as_written\":", &self.mark.as_written(note), out);
        let mut place = place(self.span, self.line, self.bytes);
        place.signs(b"],\"rule\":");
        out.extend_from_slice(place.bytes());
        json::text(self.rule, out);
        out.push(b'}');
    }
}

/// Where a mark or a word stands, in its note and in the file.
fn place(span: [usize; 2], line: u64, bytes: [u64; 2]) -> Digits {
    let mut place = Digits::new();
    place.signs(b",\"span\":[");
    place.number(span[0] as u64);
    place.signs(b",");
    place.number(span[1] as u64);
    place.signs(b"]");
    in_file(line, bytes, &mut place);
    place
}

/// Adds a line and bytes of the file; the list is left open.
#[inline]
fn in_file(line: u64, bytes: [u64; 2], place: &mut Digits) {
    place.signs(b",\"line\":");
    place.number(line);
    place.signs(b",\"bytes\":[");
    place.number(bytes[0]);
    place.signs(b",");
    place.number(bytes[1]);
}

fn placed<'a>(desk: &'a Desk<'a>, read: &'a Read<'a>, one: &'a Trait) -> PlacedMark<'a> {
    let span = one.span();
    let (bytes, line) = read.place(span);
    PlacedMark {
        mark: one,
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
#[derive(JsonSchema)]
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
    #[schemars(skip_serializing_if = "Option::is_none")]
    reason: Option<&'a str>,
}

impl Word<'_> {
    fn write(&self, out: &mut Vec<u8>) {
        json::field("{\"text\":", self.text, out);
        let mut place = place(self.span, self.line, self.bytes);
        match self.reason {
            Some(reason) => {
                place.signs(b"],\"reason\":");
                out.extend_from_slice(place.bytes());
                json::text(reason, out);
                out.push(b'}');
            }
            None => {
                place.signs(b"]}");
                out.extend_from_slice(place.bytes());
            }
        }
    }
}

impl Words<'_> {
    fn write(&self, out: &mut Vec<u8>) {
        let note = self.read.entry.text.as_str();
        let mut first = true;
        out.push(b'[');
        for segment in &self.read.reading.segments {
            let reason = match &segment.fate {
                Fate::Unplaced if !self.aside => None,
                Fate::SetAside(reason) if self.aside && is_word(note, segment.span) => Some(reason),
                _ => continue,
            };
            if !std::mem::take(&mut first) {
                out.push(b',');
            }
            let Span { start, end } = segment.span;
            let (bytes, line) = self.read.place(segment.span);
            let text = segment.span.of(note);
            let reason = reason.map(AsRef::as_ref);
            Word { text, span: [start, end], line, bytes, reason }.write(out);
        }
        out.push(b']');
    }
}

/// Writes an entry with all that was read; `again` keeps the bytes of its marks for the next.
pub fn object(desk: &Desk<'_>, read: &Read<'_>, again: &mut Again, out: &mut Vec<u8>) {
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
    row.write(again, out);
}

/// The JSON Schema of the objects of [`object`], one a line.
pub fn schema() -> Schema {
    schema_for!(Row<'_>)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entries::Date;

    #[test]
    fn a_heading_is_as_serde_writes_it() {
        let some = |text: &str| Some(text.to_owned());
        let date = |year, month, day| Some(Date { year, month, day, either: true });
        let full = Heading {
            date: date(Some(2026), Some(5), Some(2)),
            date_as_written: some("2 May"),
            time: some("07:15"),
            place: some("\"Boathouse\" hide"),
            observer: some("warden"),
            count: some("2"),
            weather: some("dull"),
            habitat: some("reeds"),
            identification: some("\\"),
            title: some("May\t"),
            other: vec![("gate".to_owned(), "o\"pen".to_owned())],
        };
        let odd = [
            date(None, Some(5), Some(31)),
            date(Some(999), Some(10), Some(1)),
            date(Some(-9), Some(-1), Some(101)),
            date(Some(2026), Some(12), None),
            date(None, None, None),
        ];
        let odd = odd.map(|date| Heading { date, place: some("sluice"), ..Heading::default() });
        for one in odd.into_iter().chain([full, Heading::default()]) {
            let mut out = b"{".to_vec();
            heading(&one, &mut out);
            out.push(b'}');
            let ours = String::from_utf8(out).unwrap().replacen("{,", "{", 1);
            assert_eq!(ours, serde_json::to_string(&one).unwrap());
        }
    }
}
