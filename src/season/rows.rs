//! The rows of tables: one a mark, or one a bird with a column for each area.
//!
//! An entry without marks has a row too, with its mark left empty, so that no entry is lost.

use super::cells::{Cells, Column, Kind};
use super::desk::{BirdRead, Desk, Read};
use crate::entries::Date;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::output::build::rounded;
use crate::span::Span;
use crate::traits::{Certainty, Polarity, Trait, Value};
use compact_str::CompactString;
use std::fmt::Write;

/// What a row stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RowOf {
    /// A mark.
    Mark,
    /// A bird.
    Bird,
}

const PLACE: [(&str, Kind); 4] =
    [("file", Kind::Text), ("line", Kind::Int), ("start", Kind::Int), ("end", Kind::Int)];
const HEADING: [(&str, Kind); 8] = [
    ("date", Kind::Text),
    ("time", Kind::Text),
    ("place", Kind::Text),
    ("observer", Kind::Text),
    ("count", Kind::Text),
    ("weather", Kind::Text),
    ("habitat", Kind::Text),
    ("identification", Kind::Text),
];
const MARK: [(&str, Kind); 17] = [
    ("entry", Kind::Int),
    ("bird", Kind::Int),
    ("area", Kind::Text),
    ("aspect", Kind::Text),
    ("value", Kind::Text),
    ("tone", Kind::Text),
    ("extent", Kind::Text),
    ("position", Kind::Text),
    ("relation", Kind::Text),
    ("against", Kind::Text),
    ("polarity", Kind::Text),
    ("certainty", Kind::Text),
    ("mass_low_g", Kind::Float),
    ("mass_high_g", Kind::Float),
    ("pato", Kind::Text),
    ("as_written", Kind::Text),
    ("rule", Kind::Text),
];

/// The columns of a table.
pub fn columns(of: RowOf, lexicon: &Lexicon) -> Vec<Column> {
    let owned = |list: &[(&str, Kind)]| -> Vec<Column> {
        list.iter().map(|(name, kind)| ((*name).to_owned(), *kind)).collect()
    };
    let mut out = owned(&PLACE);
    out.extend(owned(&HEADING));
    match of {
        RowOf::Mark => out.extend(owned(&MARK)),
        RowOf::Bird => {
            // The whole bird is an area too, so the number has another name here.
            out.extend(owned(&[("bird_number", Kind::Int), ("named", Kind::Text)]));
            let areas = lexicon.topography.iter().map(|a| lexicon.names.text(a.id));
            out.extend(areas.map(|id| (id.replace('-', "_"), Kind::Text)));
            out.extend(owned(&[("left_out", Kind::Text), ("unplaced", Kind::Text)]));
            out.extend(owned(&[("note", Kind::Text)]));
        }
    }
    out.extend(owned(&[("other", Kind::Text)]));
    out
}

/// Writes the rows of an entry.
pub fn rows(of: RowOf, desk: &Desk<'_>, read: &Read<'_>, out: &mut impl Cells) {
    match of {
        RowOf::Mark => mark_rows(desk, read, out),
        RowOf::Bird => bird_rows(desk, read, out),
    }
}

/// The entry's day, put into words once for all its rows.
fn day(read: &Read<'_>) -> Option<CompactString> {
    read.entry.heading.date.map(Date::text)
}

fn heading(read: &Read<'_>, date: Option<&str>, out: &mut impl Cells) {
    let heading = &read.entry.heading;
    for cell in [
        date,
        heading.time.as_deref(),
        heading.place.as_deref(),
        heading.observer.as_deref(),
        heading.count.as_deref(),
        heading.weather.as_deref(),
        heading.habitat.as_deref(),
        heading.identification.as_deref(),
    ] {
        out.text(cell);
    }
}

fn place(read: &Read<'_>, bytes: [u64; 2], line: u64, out: &mut impl Cells) {
    out.text(Some(read.file));
    stretch(bytes, line, out);
}

fn stretch(bytes: [u64; 2], line: u64, out: &mut impl Cells) {
    out.ints([line, bytes[0], bytes[1]]);
}

/// `name=value; name=value`.
pub fn other(read: &Read<'_>) -> Option<String> {
    let mut out = String::new();
    for (name, value) in &read.entry.heading.other {
        let gap = if out.is_empty() { "" } else { "; " };
        let _ = write!(out, "{gap}{name}={value}");
    }
    (!out.is_empty()).then_some(out)
}

fn mark_rows(desk: &Desk<'_>, read: &Read<'_>, out: &mut impl Cells) {
    let other = other(read);
    let day = day(read);
    let first = read.entry.map.first_line();
    let (mut file, mut head, mut tail) = (None, None, None);
    for bird in &read.birds {
        for &at in &bird.traits {
            let one = &read.reading.traits[at];
            let (bytes, line) = read.place(one.span());
            out.same(&mut file, |out| out.text(Some(read.file)));
            stretch(bytes, line, out);
            out.same(&mut head, |out| {
                heading(read, day.as_deref(), out);
                out.int(Some(first));
            });
            mark(desk, read, one, out);
            match &other {
                Some(other) => out.same(&mut tail, |out| out.text(Some(other))),
                None => out.text(None),
            }
            out.end();
        }
    }
    if read.birds.is_empty() {
        place(read, read.entry.span, first, out);
        heading(read, day.as_deref(), out);
        out.int(Some(first));
        out.int(None);
        for (_, kind) in &MARK[2..] {
            match kind {
                Kind::Float => out.float(None),
                _ => out.text(None),
            }
        }
        out.text(other.as_deref());
        out.end();
    }
}

fn mark(desk: &Desk<'_>, read: &Read<'_>, one: &Trait, out: &mut impl Cells) {
    out.int(Some(u64::from(one.bird)));
    out.said(one, |out| said_of_it(desk, one, out));
    out.text(Some(&one.as_written(&read.entry.text)));
    id(desk, desk.knowledge.rules.rules.get(one.rule).map(|r| r.name.as_str()), out);
}

/// The cells of what a mark says.
fn said_of_it(desk: &Desk<'_>, one: &Trait, out: &mut impl Cells) {
    let some = |name: Name| name.is_some().then(|| desk.text(name));
    id(desk, some(one.area), out);
    id(desk, some(one.aspect), out);
    match &one.value {
        Value::Term(name) => id(desk, Some(desk.text(*name)), out),
        Value::Made(text) => out.text(Some(text)),
    }
    for name in [one.tone, one.extent, one.position, one.relation, one.against] {
        id(desk, some(name), out);
    }
    out.word(Some(one.polarity.text()));
    out.word(Some(one.certainty.text()));
    out.float(one.mass.map(|m| rounded(m.low)));
    out.float(one.mass.map(|m| rounded(m.high)));
    id(desk, desk.pato(one), out);
}

/// The id of a term or a rule.
fn id(desk: &Desk<'_>, id: Option<&str>, out: &mut impl Cells) {
    if desk.plain_ids { out.word(id) } else { out.text(id) }
}

fn bird_rows(desk: &Desk<'_>, read: &Read<'_>, out: &mut impl Cells) {
    let empty = BirdRead::default();
    let none = [empty];
    let birds: &[BirdRead] = if read.birds.is_empty() { &none } else { &read.birds };
    let other = other(read);
    let day = day(read);
    let unplaced: Vec<&str> =
        read.reading.unplaced().map(|span| span.of(&read.entry.text)).collect();
    for bird in birds {
        place(read, read.entry.span, read.entry.map.first_line(), out);
        heading(read, day.as_deref(), out);
        out.int((bird.bird > 0).then_some(u64::from(bird.bird)));
        let named: Vec<&str> = read.named.iter().map(|n| desk.text(*n)).collect();
        out.text(filled(&named.join("; ")));
        let mut left = bird.traits.as_slice();
        for area in desk.knowledge.lexicon.topography.iter() {
            // The traits stand in the order of the areas.
            let here = left.iter().take_while(|t| read.reading.traits[**t].area == area.id).count();
            let (cell, rest) = left.split_at(here);
            left = rest;
            out.text(filled(&said(desk, read, cell)));
        }
        let left_out: Vec<&str> = desk.ids(bird.told.left_out).collect();
        out.text(filled(&left_out.join("; ")));
        out.text(filled(&unplaced.join("; ")));
        out.text(Some(&read.entry.text));
        out.text(other.as_deref());
        out.end();
    }
}

fn filled(text: &str) -> Option<&str> {
    (!text.is_empty()).then_some(text)
}

/// What was said of an area: `dark brown; no streaked; pink?`.
fn said(desk: &Desk<'_>, read: &Read<'_>, traits: &[usize]) -> String {
    let mut out = String::new();
    for &at in traits {
        let one = &read.reading.traits[at];
        if !out.is_empty() {
            out.push_str("; ");
        }
        out.push_str(&in_words(desk, one));
    }
    out
}

/// A trait in a few words, its area left out.
pub fn in_words(desk: &Desk<'_>, one: &Trait) -> String {
    let mut out = String::new();
    match one.polarity {
        Polarity::Present => {}
        Polarity::Absent => out.push_str("no "),
        Polarity::Unseen => return "not seen".to_owned(),
    }
    let tone = desk.text(one.tone);
    let value = one.value.text(&desk.knowledge.lexicon);
    if !tone.is_empty() && tone != value {
        let _ = write!(out, "{tone} ");
    }
    out.push_str(value);
    for more in [one.position, one.extent] {
        if more.is_some() {
            let _ = write!(out, ", {}", desk.text(more));
        }
    }
    if one.certainty == Certainty::Hedged {
        out.push('?');
    }
    out
}

/// A stretch with any letter or digit in it: a word.
pub fn is_word(text: &str, span: Span) -> bool {
    let text = span.of(text);
    text.as_bytes().first().is_some_and(u8::is_ascii_alphanumeric)
        || text.chars().any(char::is_alphanumeric)
}
