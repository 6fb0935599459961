//! JSON Lines: one entry an object, its members found as the columns of a table are.
//!
//! An object of our own, parted before and not yet read, says itself where it comes from: its
//! `source` and `map` are taken over. A line that is no object is kept as a note, and told.

use super::columns::{self, Column, columns, heading_of_row};
use super::labels::Field;
use super::lines::{Line, Lines};
use super::map::SourceMap;
use super::{Broken, Entry, Heading, MARK, MOST_ENTRY, Plan, Remark, Sink, Trouble, Use};
use serde::Deserialize;
use serde::de::{Deserializer, MapAccess, Visitor};
use serde_json::value::RawValue;
use std::collections::BTreeMap;
use std::fmt;
use std::io::Read;
use std::sync::Arc;

/// The longest object, in bytes.
const MOST_OBJECT: usize = 4 << 20;
/// How many objects are looked at to find the members.
const SAMPLE: usize = 20;

/// A parted entry, as written by `season --split`.
#[derive(Debug, Deserialize)]
struct Parted {
    source: PartedSource,
    map: SourceMap,
    #[serde(flatten)]
    heading: Heading,
    note: String,
}

#[derive(Debug, Deserialize)]
struct PartedSource {
    file: String,
    bytes: [u64; 2],
}

/// Parts a file of objects.
pub fn part<R: Read>(
    plan: &Plan<'_>,
    lines: &mut Lines<R>,
    sink: &mut dyn Sink,
) -> Result<(), Broken> {
    lines.allow(MOST_OBJECT);
    let sample = lines.peek();
    let mut known: Option<Known> = None;
    let mut any = false;
    let mut first = None;
    let mut line = Line::default();
    while lines.next(&mut line)? {
        let content = line.content().trim_matches(|c: char| c.is_whitespace() || c == MARK);
        if content.is_empty() {
            sink.bytes(Use::Blank, line.start, line.end);
            continue;
        }
        line.tell_damage(sink);
        if line.continues || !line.ended {
            if !line.continues {
                tell_broken(&line, "it is longer than 4 MB", sink);
                first.get_or_insert((line.number, line.start));
            }
            kept(plan, &line, sink)?;
            continue;
        }
        if content.contains("\"map\"")
            && let Ok(parted) = serde_json::from_str::<Parted>(content)
        {
            any = true;
            sink.bytes(Use::Note, line.start, line.end);
            if !sink.entry(taken_over(plan, parted)) {
                return Err(Broken::Stopped);
            }
            continue;
        }
        let members: Members<'_> =
            match serde_json::from_str(line.content().trim_start_matches(MARK)) {
                Ok(members) => members,
                Err(error) => {
                    // The line is told already, and its own line in the library's words is always the first.
                    let what = error.to_string().replace(" at line 1 column ", ", column ");
                    tell_broken(&line, what.trim_end_matches(", column 0"), sink);
                    first.get_or_insert((line.number, line.start));
                    kept(plan, &line, sink)?;
                    continue;
                }
            };
        any = true;
        let known = match &mut known {
            Some(known) => known,
            None => known.insert(Known::of(plan, &sample, &line, sink)?),
        };
        object(plan, known, &members, &line, sink)?;
    }
    match first {
        // Not one object: the file is something else.
        Some((number, start)) if !any => {
            let what = "no JSON object on this line alone, nor on any other".to_owned();
            Err(Broken::At(number, start, what, ONE_A_LINE.to_owned()))
        }
        _ => Ok(()),
    }
}

const ONE_A_LINE: &str =
    "give one object a line, such as {\"note\": \"black crown\"}; an array is none";

/// An entry of our own; what the person says of all entries fills what it leaves open.
fn taken_over(plan: &Plan<'_>, parted: Parted) -> Entry {
    let mut heading = parted.heading;
    let all = &plan.heading;
    heading.place = heading.place.or_else(|| all.place.clone());
    heading.observer = heading.observer.or_else(|| all.observer.clone());
    if let (Some(date), Some(all)) = (&mut heading.date, all.date) {
        date.year = date.year.or(all.year);
    }
    Entry {
        text: parted.note,
        map: parted.map,
        span: parted.source.bytes,
        heading: Arc::new(heading),
        file: Some(parted.source.file),
    }
}

fn tell_broken(line: &Line, what: &str, sink: &mut dyn Sink) {
    let what = Trouble::NoObject(what.to_owned());
    sink.remark(Remark { line: line.number, byte: line.start, what });
}

/// Keeps a line that is no object as a note, in pieces where it is longer than a note may be.
fn kept(plan: &Plan<'_>, line: &Line, sink: &mut dyn Sink) -> Result<(), Broken> {
    let content = line.content();
    let mut from = line.start;
    let mut at = 0;
    while at < content.len() {
        let next = piece_end(content, at);
        let piece = &content[at..next];
        let start = at + piece.len() - piece.trim_start().len();
        let stop = start.max(at + piece.trim_end().len());
        at = next;
        sink_uses(sink, &mut from, Use::Blank, line.source(start), line);
        let text = &content[start..stop];
        if text.is_empty() {
            continue;
        }
        let (text, map) = unescaped(text, text, start, line);
        let end = line.source(stop);
        let span = [map.place(&text, 0).0.min(end), map.end(&text, text.len()).min(end)];
        let heading = Arc::new(plan.heading.clone());
        let going = sink.entry(Entry { text, map, span, heading, file: None });
        sink_uses(sink, &mut from, Use::Note, end, line);
        if !going {
            return Err(Broken::Stopped);
        }
    }
    sink_uses(sink, &mut from, Use::Blank, line.end, line);
    Ok(())
}

/// Where a piece ends that starts at byte `at`: behind its last space, else between two characters.
fn piece_end(content: &str, at: usize) -> usize {
    if content.len() - at <= MOST_ENTRY {
        return content.len();
    }
    let mut end = at + MOST_ENTRY;
    while !content.is_char_boundary(end) {
        end -= 1;
    }
    content[at..end].rfind(' ').filter(|n| *n > MOST_ENTRY / 2).map_or(end, |n| at + n + 1)
}

/// The members of an object by their names.
struct Members<'t>(BTreeMap<String, &'t RawValue>);

impl<'de> Deserialize<'de> for Members<'de> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(EachOnce)
    }
}

/// Takes every member, those of one name too.
struct EachOnce;

impl<'de> Visitor<'de> for EachOnce {
    type Value = Members<'de>;

    fn expecting(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str("an object")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut all: A) -> Result<Self::Value, A::Error> {
        let mut out = BTreeMap::new();
        while let Some((name, value)) = all.next_entry::<String, &RawValue>()? {
            let mut free = name.clone();
            let mut times = 1;
            while out.contains_key(&free) {
                times += 1;
                free = format!("{name} ({times})");
            }
            out.insert(free, value);
        }
        Ok(Members(out))
    }
}

/// The members of a file's objects, and what they are for.
struct Known {
    names: Vec<String>,
    columns: Vec<Column>,
}

impl Known {
    /// Found by the first objects of the file, of which `line` is one.
    fn of(plan: &Plan<'_>, sample: &str, line: &Line, sink: &mut dyn Sink) -> Result<Self, Broken> {
        let mut known = members(plan, sample);
        if known.names.is_empty() {
            known = members(plan, line.content());
        }
        if !known.columns.contains(&Column::Is(Field::Note)) {
            return Err(Broken::At(
                line.number,
                line.start,
                format!("no member holds the notes; the members are: {}", known.names.join(", ")),
                "say which it is, for example --column note=NAME".to_owned(),
            ));
        }
        columns::tell(plan, &known.columns, &known.names, sink);
        Ok(known)
    }
}

/// The members of the first objects, in order of their names, and what they are for.
fn members(plan: &Plan<'_>, sample: &str) -> Known {
    let objects: Vec<Members<'_>> =
        sample.lines().filter_map(|l| serde_json::from_str(l).ok()).take(SAMPLE).collect();
    let mut names: Vec<String> = Vec::new();
    for name in objects.iter().flat_map(|o| o.0.keys()) {
        if !names.contains(name) {
            names.push(name.clone());
        }
    }
    let row = |o: &Members<'_>| -> Vec<String> {
        names.iter().map(|n| o.0.get(n).map_or_else(String::new, |v| text_of(v))).collect()
    };
    let rows: Vec<Vec<String>> = objects.iter().map(row).collect();
    let columns = columns(plan, &names, &rows);
    Known { names, columns }
}

/// A value as text: strings without their marks, nothing for null, all else as written.
fn text_of(value: &RawValue) -> String {
    let raw = value.get();
    if raw == "null" {
        return String::new();
    }
    serde_json::from_str::<String>(raw).unwrap_or_else(|_| raw.to_owned())
}

fn object(
    plan: &Plan<'_>,
    Known { names, columns }: &Known,
    Members(members): &Members<'_>,
    line: &Line,
    sink: &mut dyn Sink,
) -> Result<(), Broken> {
    let content = line.content();
    let mut all_names: Vec<String> = names.to_vec();
    for name in members.keys() {
        if !names.contains(name) {
            all_names.push(name.clone());
        }
    }
    let cells: Vec<String> =
        all_names.iter().map(|n| members.get(n).map_or_else(String::new, |v| text_of(v))).collect();
    let holds = |at: &usize| !cells[*at].trim().is_empty();
    // Where this object has its note in a member of another name than the others, it is taken from there.
    let at =
        columns.iter().position(|c| *c == Column::Is(Field::Note)).filter(holds).or_else(|| {
            let named = |n: &String| plan.labels.field(n) == Some(Field::Note);
            (0..all_names.len()).find(|at| holds(at) && named(&all_names[*at]))
        });
    let other = cells.iter().enumerate();
    let other = other.map(|(n, cell)| if Some(n) == at { "" } else { cell.as_str() });
    let heading = heading_of_row(plan, columns, &all_names, other);
    let note = at.and_then(|at| members.get(&all_names[at]).map(|raw| (at, *raw)));
    let mut from = line.start;
    let mut going = true;
    if let Some((at, raw)) = note {
        // The raw value is a piece of the line, so its place is known.
        let offset = raw.get().as_ptr() as usize - content.as_ptr() as usize;
        let (text, map) = unescaped(&cells[at], raw.get(), offset, line);
        let place = |byte: u64| byte.min(line.end);
        let span = [place(map.place(&text, 0).0), place(map.end(&text, text.len()))];
        sink_uses(sink, &mut from, Use::Heading, span[0], line);
        sink_uses(sink, &mut from, Use::Note, span[1], line);
        let entry = Entry { text, map, span, heading: Arc::new(heading), file: None };
        going = sink.entry(entry);
    }
    if note.is_none() {
        sink.remark(Remark { line: line.number, byte: line.start, what: Trouble::NoNote });
    }
    sink_uses(sink, &mut from, Use::Heading, line.end, line);
    if going { Ok(()) } else { Err(Broken::Stopped) }
}

fn sink_uses(sink: &mut dyn Sink, from: &mut u64, used: Use, end: u64, line: &Line) {
    super::table::tell(
        sink,
        from,
        used,
        end,
        &line.damage.iter().map(|d| (d.1, d.2)).collect::<Vec<_>>(),
    );
}

/// The text of a JSON string with the places of its pieces: escapes are longer than what they say.
fn unescaped(text: &str, raw: &str, offset: usize, line: &Line) -> (String, SourceMap) {
    let mut map = SourceMap::new(line.units);
    // What can't be read as a string stands as it is written, marks and all.
    let quoted = raw.starts_with('"') && text != raw;
    let mut at = usize::from(quoted);
    let mut apart = true;
    for (here, sign) in text.char_indices() {
        if apart {
            map.push(here, line.source(offset + at), line.number);
        }
        let rest = &raw[at.min(raw.len())..];
        let escaped = quoted && rest.starts_with('\\');
        let length = match rest.as_bytes().get(1) {
            Some(b'u') if escaped => {
                if sign.len_utf16() == 2 {
                    12
                } else {
                    6
                }
            }
            _ if escaped => 2,
            _ => sign.len_utf8(),
        };
        // A line end in the text stands in one line of the file.
        apart = escaped || sign == '\u{fffd}';
        if sign == '\n' && !apart {
            apart = true;
        }
        at += length;
    }
    (text.to_owned(), map)
}
