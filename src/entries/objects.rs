//! JSON Lines: one entry an object, its members found as the columns of a table are.
//!
//! An object of our own, parted before and not yet read, says itself where it comes from: its
//! `source` and `map` are taken over.

use super::columns::{self, Column, columns, heading_of_row};
use super::labels::Field;
use super::lines::{Line, Lines};
use super::map::SourceMap;
use super::{Broken, Entry, Heading, Plan, Remark, Sink, Trouble, Use};
use serde::Deserialize;
use serde_json::value::RawValue;
use std::collections::BTreeMap;
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
    let (names, found) = members(plan, &lines.peek());
    let mut told_columns = false;
    let mut line = Line::default();
    while lines.next(&mut line)? {
        if line.continues || !line.ended {
            return Err(broken(&line, "an object longer than 4 MB", "give one object a line"));
        }
        let content = line.content().trim();
        if content.is_empty() {
            sink.bytes(Use::Blank, line.start, line.end);
            continue;
        }
        line.tell_damage(sink);
        if content.contains("\"map\"")
            && let Ok(parted) = serde_json::from_str::<Parted>(content)
        {
            sink.bytes(Use::Note, line.start, line.end);
            let entry = Entry {
                text: parted.note,
                map: parted.map,
                span: parted.source.bytes,
                heading: Arc::new(parted.heading),
                file: Some(parted.source.file),
            };
            if !sink.entry(entry) {
                return Err(Broken::Stopped);
            }
            continue;
        }
        if !std::mem::replace(&mut told_columns, true) {
            if names.is_empty() {
                return Err(broken(&line, "no JSON object on this line alone", ONE_A_LINE));
            }
            if !found.contains(&Column::Is(Field::Note)) {
                return Err(broken(
                    &line,
                    &format!("no member holds the notes; the members are: {}", names.join(", ")),
                    "say which it is, for example --column note=NAME",
                ));
            }
            columns::tell(plan, &found, &names, sink);
        }
        object(plan, &names, &found, &line, sink)?;
    }
    Ok(())
}

fn broken(line: &Line, what: &str, hint: &str) -> Broken {
    Broken::At(line.number, line.start, what.to_owned(), hint.to_owned())
}

const ONE_A_LINE: &str =
    "give one object a line, such as {\"note\": \"black crown\"}; an array is none";

type Members<'t> = BTreeMap<String, &'t RawValue>;

/// The members of the first objects, in order of their names, and what they are for.
fn members(plan: &Plan<'_>, sample: &str) -> (Vec<String>, Vec<Column>) {
    let objects: Vec<Members<'_>> = sample
        .lines()
        .filter(|l| !l.trim().is_empty())
        .take(SAMPLE)
        .filter_map(|l| serde_json::from_str(l).ok())
        .collect();
    let mut names: Vec<String> = Vec::new();
    for name in objects.iter().flat_map(BTreeMap::keys) {
        if !names.contains(name) {
            names.push(name.clone());
        }
    }
    let rows: Vec<Vec<String>> = objects
        .iter()
        .map(|o| names.iter().map(|n| o.get(n).map_or_else(String::new, |v| text_of(v))).collect())
        .collect();
    let found = columns(plan, &names, &rows);
    (names, found)
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
    names: &[String],
    columns: &[Column],
    line: &Line,
    sink: &mut dyn Sink,
) -> Result<(), Broken> {
    let content = line.content();
    let members: Members<'_> = serde_json::from_str(content).map_err(|error| {
        // The line is told already, and its own line in the library's words is always the first.
        let what = error.to_string().replace(" at line 1 column ", ", column ");
        broken(line, &format!("no JSON object: {what}"), ONE_A_LINE)
    })?;
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
    let quoted = raw.starts_with('"');
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
