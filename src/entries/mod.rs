//! A season's notebooks, parted into entries.
//!
//! Each reader here goes through one file once, in bounded memory, and tells a [`Sink`] two things:
//! every entry it finds, and what every byte of the file was used for. It never prints, and of the
//! outside world it knows nothing but a stream of bytes.

pub mod clock;
pub mod columns;
mod context;
pub mod date;
pub mod dates;
pub mod encoding;
pub mod format;
pub mod grid;
pub mod heading;
pub mod labels;
pub mod lines;
pub mod map;
pub mod markup;
pub mod notebook;
pub mod objects;
mod records;
pub mod said;
pub mod subtitles;
pub mod table;
mod uses;

pub use date::{Date, DateOrder};
pub use encoding::{Guess, Units};
pub use format::Format;
pub use labels::{Field, Labels};
pub use lines::{Line, Lines};
pub use map::SourceMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::io::Read;
use std::sync::Arc;

/// A byte order mark where it is none: inside a file, left by files that were joined.
const MARK: char = '\u{feff}';

/// The longest entry, in bytes of text. What is longer is parted, and the sink is told.
pub const MOST_ENTRY: usize = 64 * 1024;

/// What stands at the head of an entry.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Heading {
    /// The day, or as much of it as is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(with = "Option<String>")]
    pub date: Option<Date>,
    /// The day as written.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub date_as_written: Option<String>,
    /// The time of day, `07:15` or `07:15/08:30`; as written where it is no clock time.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub time: Option<String>,
    /// The place.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<String>,
    /// Who saw it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub observer: Option<String>,
    /// How many.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub count: Option<String>,
    /// The weather.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weather: Option<String>,
    /// The habitat.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub habitat: Option<String>,
    /// What the observer took it for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub identification: Option<String>,
    /// The title above the entry.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// What else stands there: name and value.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub other: Vec<(String, String)>,
}

impl Heading {
    /// Sets a field from its text.
    pub fn set(&mut self, field: Field, value: &str, labels: &Labels, order: DateOrder) {
        let value = value.trim();
        if value.is_empty() {
            return;
        }
        let slot = match field {
            Field::Date => return self.set_date(value, labels, order),
            Field::Time => {
                let time = dates::time_at(value, false).map(|(time, _)| time).or_else(|| {
                    let said = clock::time_at(value, labels);
                    said.filter(|s| s.used == value.len()).map(|s| s.time)
                });
                self.time = Some(time.unwrap_or_else(|| value.to_owned()));
                return;
            }
            Field::Count => &mut self.count,
            Field::Place => &mut self.place,
            Field::Observer => &mut self.observer,
            Field::Weather => &mut self.weather,
            Field::Habitat => &mut self.habitat,
            Field::Identification => &mut self.identification,
            Field::Title => &mut self.title,
            Field::Note | Field::Year => return,
        };
        *slot = Some(value.to_owned());
    }

    fn set_date(&mut self, value: &str, labels: &Labels, order: DateOrder) {
        self.date_as_written = Some(value.to_owned());
        if let Some((date, used)) = dates::date_at(value, labels, order) {
            self.date = Some(self.with_year(date));
            let rest = value[used..].trim_start_matches([',', ' ']);
            if let Some((time, _)) = dates::time_at(rest, false) {
                self.time = Some(time);
            } else if let Some(said) = clock::time_at(rest, labels) {
                self.time = Some(said.time);
            }
        } else {
            self.date = None;
        }
    }

    /// The date with the year of the one before it where none is written.
    #[must_use]
    pub fn with_year(&self, date: Date) -> Date {
        date.after(self.date)
    }

    /// The value of a field, as text.
    pub fn get(&self, field: Field) -> Option<&str> {
        match field {
            Field::Date => self.date_as_written.as_deref(),
            Field::Time => self.time.as_deref(),
            Field::Place => self.place.as_deref(),
            Field::Observer => self.observer.as_deref(),
            Field::Count => self.count.as_deref(),
            Field::Weather => self.weather.as_deref(),
            Field::Habitat => self.habitat.as_deref(),
            Field::Identification => self.identification.as_deref(),
            Field::Title => self.title.as_deref(),
            Field::Note | Field::Year => None,
        }
    }
}

/// One entry of a notebook.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// The note, decoded.
    pub text: String,
    /// From bytes of `text` to bytes and lines of the file.
    pub map: SourceMap,
    /// The bytes of the file from the first of the note to the last.
    pub span: [u64; 2],
    /// What stands at its head.
    pub heading: Arc<Heading>,
    /// The file, where the entry itself names another than the one it was read from.
    pub file: Option<String>,
}

/// What a stretch of a file is used for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Use {
    /// Text of a note.
    Note,
    /// Heading data.
    Heading,
    /// White space and empty lines between entries.
    Blank,
    /// Signs of the format: `##`, `-->`, commas and quotation marks.
    Syntax,
    /// Bytes that are no text in the file's encoding; the line is kept without them.
    Undecodable,
}

/// Something a person should know of a place in a file. The reading goes on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remark {
    /// The line, from 1.
    pub line: u64,
    /// The byte of the file.
    pub byte: u64,
    /// What.
    pub what: Trouble,
}

/// Kinds of remarks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// Bytes that are no text in the file's encoding.
    Undecodable,
    /// An entry longer than [`MOST_ENTRY`], parted.
    Parted,
    /// A row with fewer or more fields than the head line: found, expected.
    Fields(usize, usize),
    /// A row or an object without a note: nothing comes of it.
    NoNote,
    /// Times of a cue that can't be read; its words are kept.
    NoTimes,
    /// Words under no cue's times; they are kept.
    Stray,
    /// A quotation mark that is opened and never closed; its line was read by itself.
    Unclosed,
    /// A line that is no JSON object, and why; it was kept as a note.
    NoObject(String),
}

/// Takes what a reader finds, in the file's order.
pub trait Sink {
    /// The bytes from `start` up to `end` are used so. Called for every byte once, in order.
    fn bytes(&mut self, used: Use, start: u64, end: u64);
    /// An entry. `false` asks the reader to stop.
    fn entry(&mut self, entry: Entry) -> bool;
    /// A remark.
    fn remark(&mut self, remark: Remark);
    /// Which columns were taken for what, in words.
    fn columns(&mut self, _told: String) {}
    /// A column that the person named was found.
    fn named_column(&mut self, _name: &str) {}
}

/// Why a file can't be read to its end.
#[derive(Debug)]
pub enum Broken {
    /// The stream failed.
    Io(std::io::Error),
    /// The file is not what it should be: line, byte, what, what to do.
    At(u64, u64, String, String),
    /// The sink asked to stop.
    Stopped,
}

impl From<std::io::Error> for Broken {
    fn from(error: std::io::Error) -> Self {
        Self::Io(error)
    }
}

/// How to part a file.
#[derive(Clone, Debug)]
pub struct Plan<'a> {
    /// Words of headings, names of columns.
    pub labels: &'a Labels,
    /// The format.
    pub format: Format,
    /// Which number of `5/6/2026` is the day.
    pub order: DateOrder,
    /// Columns named by the person: field and column.
    pub columns: &'a [(Field, String)],
    /// Seconds of silence that part two dictated notes.
    pub pause: f64,
    /// What is known before the file is read: from its name, from the person.
    pub heading: Heading,
}

/// Parts a file into entries.
///
/// # Errors
/// Where the stream fails or is not of its format, and where the sink asks to stop.
pub fn part<R: Read>(
    plan: &Plan<'_>,
    lines: &mut Lines<R>,
    sink: &mut dyn Sink,
) -> Result<(), Broken> {
    // The byte order mark is a sign of the format, whatever the format is.
    if lines.mark() > 0 {
        sink.bytes(Use::Syntax, 0, lines.mark());
    }
    match plan.format {
        Format::Plain | Format::Markdown => notebook::part(plan, lines, sink),
        Format::Comma => table::part(plan, b',', lines, sink),
        Format::Semicolon => table::part(plan, b';', lines, sink),
        Format::Tab => table::part(plan, b'\t', lines, sink),
        Format::Objects => objects::part(plan, lines, sink),
        Format::Subtitles => subtitles::part(plan, lines, sink),
    }
}
