//! Heading data in a line: which fields it gives, and where the note begins.
//!
//! | line | fields | note |
//! |---|---|---|
//! | `12 May 2026, 07:15, Boathouse hide` | date, time, place | |
//! | `Place: Boathouse hide; Weather: dull` | place, weather | |
//! | `12/5/26 6.40am Boathouse: small brown bird` | date, time, place | `small brown bird` |
//! | `07:15 two on the mud` | time | `two on the mud` |

use super::clock;
use super::date::{Date, DateOrder};
use super::dates::{date_at, time_at};
use super::labels::{Field, Labels};

/// The most words of a name that stands without its label.
const MOST_WORDS: usize = 5;

/// What a line gives as heading data.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Found {
    /// Fields and their texts.
    pub fields: Vec<(Field, String)>,
    /// The day.
    pub date: Option<Date>,
    /// How many bytes at the start are heading data, the signs after them included.
    pub used: usize,
    /// Whether a date stands in it.
    pub dated: bool,
    /// Whether it says that the day is the one before.
    pub same: bool,
    /// Whether it begins with a time without its label.
    pub timed: bool,
}

/// How a line may be read.
#[derive(Clone, Copy, Debug)]
pub struct Reading<'a> {
    /// The words of headings.
    pub labels: &'a Labels,
    /// Which number is the day.
    pub order: DateOrder,
    /// Whether the line is marked as a heading: then names may stand without date or time.
    pub marked: bool,
}

const GAPS: [char; 5] = [' ', '\t', '\u{a0}', '\r', '\n'];
const SIGNS: [char; 14] = [',', ';', '|', ':', '-', '–', '—', '·', '•', '.', '(', ')', '!', '?'];

/// Reads the heading data at the start of a line.
pub fn heading_of(line: &str, reading: Reading<'_>) -> Found {
    let mut found = Found::default();
    let mut at = line.len() - line.trim_start_matches(GAPS).len();
    let mut anchored = reading.marked.then_some(true);
    let (start, labels) = (&line[at..], reading.labels);
    if anchored.is_none() && cannot_start(start, labels) && label(start, labels).is_none() {
        // As nearly all notes.
        if !dated_later(start, reading) {
            return found;
        }
        anchored = Some(true);
    }
    // Whether a sign stands before the piece; a bare space does not part a name from a note.
    let mut parted = true;
    loop {
        let rest = &line[at..];
        if rest.is_empty() {
            break;
        }
        let piece = day(rest, reading, &mut found).or_else(|| {
            let anchored = *anchored.get_or_insert_with(|| dated_later(start, reading));
            piece(rest, reading, &mut found, (anchored, parted))
        });
        let Some((length, sure)) = piece else {
            break;
        };
        if sure {
            anchored = Some(true);
        }
        at += length;
        let rest = &line[at..];
        let after = rest.trim_start_matches(GAPS).trim_start_matches(SIGNS);
        let after = after.trim_start_matches(GAPS);
        let gap = rest.len() - after.len();
        parted = rest[..gap].contains(SIGNS);
        at += gap;
        found.used = at;
    }
    if found.fields.is_empty() && !found.same {
        found.used = 0;
    }
    found
}

/// Whether the first word of a line tells that neither a date nor a time nor words for the same day stand there.
fn cannot_start(line: &str, labels: &Labels) -> bool {
    let length = line.bytes().take_while(u8::is_ascii_alphabetic).count();
    let next = line.as_bytes().get(length);
    // Figures, and letters that are no plain ones, are looked at by those who know them.
    let whole = next.is_none_or(|b| b.is_ascii() && !b.is_ascii_digit());
    length > 0 && whole && !labels.starts_heading(&line[..length])
}

/// Whether a line of short pieces has its date behind its first: "Reserve walk, 20 May 2026, Boathouse".
fn dated_later(line: &str, reading: Reading<'_>) -> bool {
    let line = line.trim_end();
    // Its year is in figures; most lines have none, and are not looked at any further.
    let may = line.len() < 120 && line.contains(',') && line.bytes().any(|b| b.is_ascii_digit());
    let pieces = || line.split(',').map(str::trim);
    let dated = |piece: &str| {
        date_at(piece, reading.labels, reading.order)
            .is_some_and(|(d, used)| d.year.is_some() && used == piece.len())
    };
    may && pieces().all(|piece| piece.split_whitespace().count() <= 4)
        && pieces().any(dated)
        && !pieces().any(|piece| reading.labels.speaks_of_marks(piece))
}

/// A date that stands here.
fn day(rest: &str, reading: Reading<'_>, found: &mut Found) -> Option<(usize, bool)> {
    if found.dated {
        return None;
    }
    let (date, length) = date_at(rest, reading.labels, reading.order)?;
    found.date = Some(date);
    found.dated = true;
    found.fields.push((Field::Date, rest[..length].to_owned()));
    Some((length, true))
}

/// Another piece of heading data: its length, and whether it anchors what follows as heading data too.
fn piece(
    rest: &str,
    reading: Reading<'_>,
    found: &mut Found,
    (anchored, parted): (bool, bool),
) -> Option<(usize, bool)> {
    let Reading { labels, order, .. } = reading;
    let has = |field: Field| found.fields.iter().any(|(f, _)| *f == field);
    if !has(Field::Time)
        && let Some((time, length)) = time_at(rest, !found.dated)
    {
        found.timed |= found.fields.is_empty();
        found.fields.push((Field::Time, time));
        return Some((length, true));
    }
    if !has(Field::Time)
        && let Some(said) = said_time(rest, reading, (anchored, found.dated))
    {
        found.timed |= found.fields.is_empty();
        found.fields.push((Field::Time, said.time));
        return Some((said.used, true));
    }
    if let Some((field, value, length)) = labelled(rest, reading) {
        if field == Field::Date
            && let Some((date, _)) = date_at(&value, labels, order)
        {
            found.date = Some(date);
            found.dated = true;
        }
        found.fields.push((field, value));
        return Some((length, false));
    }
    if labels.may_be_same(rest) {
        let end = name_end(rest);
        if labels.is_same(&rest[..end]) {
            found.same = true;
            return Some((end, true));
        }
    }
    if !anchored {
        return None;
    }
    if let Some((count, length)) = count_at(rest) {
        found.fields.push((Field::Count, count));
        return Some((length, true));
    }
    unlabelled(rest, reading, found, parted)
}

/// A time that is said. Notes begin with numbers too ("five to ten of them"), so it wants a sign behind
/// it or the line's end, and what could be a number of birds wants a heading around it.
fn said_time(
    rest: &str,
    reading: Reading<'_>,
    (anchored, dated): (bool, bool),
) -> Option<clock::Said> {
    let said = clock::time_at(rest, reading.labels)?;
    let after = rest[said.used..].trim_start_matches(GAPS);
    let ends = after.is_empty();
    let parted = ends || after.starts_with(SIGNS);
    let heading = anchored || (!ends && remaining_is_heading(after, reading));
    let taken =
        if said.sure { parted || dated } else { parted && (heading || after.starts_with(':')) };
    taken.then_some(said)
}

/// `×2`, `x 3`.
fn count_at(rest: &str) -> Option<(String, usize)> {
    let digits = rest.strip_prefix(['x', '×', 'X'])?.trim_start();
    let length = digits.bytes().take_while(u8::is_ascii_digit).count();
    let after = digits[length..].chars().next();
    (length > 0 && after.is_none_or(|c| !c.is_alphanumeric()))
        .then(|| (digits[..length].to_owned(), rest.len() - digits.len() + length))
}

/// A name of a field, a colon, a value: the field, the value, the length of it all.
fn labelled(rest: &str, reading: Reading<'_>) -> Option<(Field, String, usize)> {
    let (field, start) = label(rest, reading.labels)?;
    // The text of a note goes on to the line's end, and is no heading data.
    if field == Field::Note {
        return None;
    }
    let value = &rest[start..];
    let end = value_end(value, reading);
    let text = value[..end].trim();
    (!text.is_empty()).then(|| (field, text.to_owned(), start + end))
}

/// A label at the start, and where its value begins.
pub fn label(rest: &str, labels: &Labels) -> Option<(Field, usize)> {
    let end = memchr::memchr2(b':', b'=', rest.as_bytes())?;
    let name = &rest[..end];
    if name.split_whitespace().count() > labels.longest() || name.contains([',', ';', '.']) {
        return None;
    }
    // A clock is no label.
    if rest[..end].ends_with(|c: char| c.is_ascii_digit()) {
        return None;
    }
    labels.field(name).map(|field| (field, end + 1))
}

/// Where a value ends: at a semicolon or a bar, and at a comma or a full stop before the next label.
fn value_end(value: &str, reading: Reading<'_>) -> usize {
    for (at, sign) in value.char_indices() {
        let after = value[at + sign.len_utf8()..].trim_start();
        let ends = match sign {
            ';' | '|' => true,
            ',' => label(after, reading.labels).is_some_and(|(f, _)| f != Field::Note),
            '.' => {
                let gap = value[at + 1..].starts_with(' ');
                gap && (label(after, reading.labels).is_some()
                    || reading.labels.speaks_of_marks(after))
            }
            _ => false,
        };
        if ends {
            return at;
        }
    }
    value.trim_end().len()
}

/// A name without its label: a place, words of weather, an observer.
fn unlabelled(
    rest: &str,
    reading: Reading<'_>,
    found: &mut Found,
    parted: bool,
) -> Option<(usize, bool)> {
    let labels = reading.labels;
    let mut end = name_end(rest);
    // "Main Mere 9.45": the time is read next.
    let clock = rest[..end]
        .match_indices(' ')
        .map(|(at, _)| at)
        .find(|at| time_at(&rest[at + 1..], false).is_some_and(|(_, used)| used > 2));
    end = clock.unwrap_or(end);
    let name = rest[..end].trim();
    if name.is_empty() || !name.contains(char::is_alphabetic) {
        return None;
    }
    if labels.is_time(name) && !found.fields.iter().any(|(f, _)| *f == Field::Time) {
        found.fields.push((Field::Time, name.to_owned()));
        return Some((end, true));
    }
    let words = name.split_whitespace().count();
    if words > MOST_WORDS || (labels.speaks_of_marks(name) && !labels.is_all_weather(name)) {
        return None;
    }
    let last = rest[end..].trim().is_empty();
    // What follows must be a heading to its end, or the name be written as one.
    // A line with a full stop is a sentence.
    let sentence = rest.trim_end().ends_with(['.', '!', '?']);
    let whole = parted && !sentence && (last || remaining_is_heading(&rest[end..], reading));
    let headed = rest[end..].starts_with(':') && words <= 3 && name.starts_with(char::is_uppercase);
    let aside = rest[end..].starts_with(')') && labels.is_observer(name);
    if !(whole || headed || aside || labels.is_named(name)) {
        return None;
    }
    let has = |field: Field| found.fields.iter().any(|(f, _)| *f == field);
    let weather = labels.is_weather(name) && (has(Field::Place) || !labels.is_named(name));
    let field = if !found.dated
        && !reading.marked
        && !has(Field::Title)
        && !found.same
        && !has(Field::Time)
    {
        Field::Title
    } else if weather {
        Field::Weather
    } else if (labels.is_observer(name) || numbered(name)) && !has(Field::Observer) {
        Field::Observer
    } else if !has(Field::Place) {
        Field::Place
    } else if !has(Field::Observer) && words <= 3 && labels.is_named(name) {
        Field::Observer
    } else {
        return None;
    };
    if let Some((_, value)) =
        found.fields.iter_mut().find(|(f, _)| *f == field && field == Field::Weather)
    {
        value.push_str(", ");
        value.push_str(name);
    } else {
        found.fields.push((field, name.to_owned()));
    }
    Some((end, true))
}

/// "child 1": a name in small letters with a number.
fn numbered(name: &str) -> bool {
    name.starts_with(char::is_lowercase) && name.ends_with(|c: char| c.is_ascii_digit())
}

/// Where a name ends: at a sign that parts.
fn name_end(rest: &str) -> usize {
    for (at, sign) in rest.char_indices() {
        let after = &rest[at + sign.len_utf8()..];
        let ends = match sign {
            ',' | ';' | '|' | '·' | '•' | '!' | '?' | '\n' | '\r' | '(' | ')' => true,
            ':' | '.' => after.is_empty() || after.starts_with(GAPS),
            '–' | '—' | '-' => {
                rest[..at].ends_with(GAPS) && (after.is_empty() || after.starts_with(GAPS))
            }
            _ => false,
        };
        if ends {
            return at;
        }
    }
    rest.len()
}

/// Whether every further piece is short and speaks of no mark.
fn remaining_is_heading(rest: &str, reading: Reading<'_>) -> bool {
    let mut rest = rest;
    loop {
        rest = rest.trim_start_matches(GAPS).trim_start_matches(SIGNS).trim_start_matches(GAPS);
        if rest.is_empty() {
            return true;
        }
        if let Some((_, _, length)) = labelled(rest, reading) {
            rest = &rest[length..];
            continue;
        }
        let end = name_end(rest);
        let name = rest[..end].trim();
        let words = name.split_whitespace().count();
        let marks = reading.labels.speaks_of_marks(name) && !reading.labels.is_all_weather(name);
        if end == 0 || words > 3 || marks {
            return false;
        }
        rest = &rest[end..];
    }
}

/// The day and the time in a file's name: `2026-05-12-boathouse`, `memo_20260512_0715`.
pub fn heading_of_name(
    stem: &str,
    labels: &Labels,
    order: DateOrder,
) -> (Option<Date>, Option<String>) {
    for (at, _) in stem.char_indices() {
        let starts = at == 0 || !stem[..at].ends_with(|c: char| c.is_alphanumeric());
        if !starts {
            continue;
        }
        let spaced = stem[at..].replace('_', " ");
        if let Some((date, length)) = date_at(&spaced, labels, order)
            && date.year.is_some()
        {
            let after = spaced[length..].trim_start_matches(['-', ' ', 'T']);
            let time = time_at(after, false).map(|(time, _)| time);
            return (Some(date), time);
        }
    }
    (None, None)
}
