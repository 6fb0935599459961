//! The account of a season: how much was read, what became of it, what observers leave out.
//!
//! A tally is added to entry by entry and merged with others in the order of the entries, so it is
//! the same however the work was shared out. Its memory is bounded: lists are cut at fixed lengths
//! and say how much longer they would be.

use super::desk::{Desk, Read};
use super::rows::is_word;
use crate::entries::Date;
use crate::entries::labels::lower;
use crate::gaps::MarkSet;
use crate::reading::Fate;
use rustc_hash::FxHashMap;
use serde::Serialize;
use std::collections::BTreeMap;

/// The longest list of entries that gave no mark.
pub const MOST_SILENT: usize = 20_000;
/// The longest lists of descriptions.
pub const MOST_DESCRIBED: usize = 1_000;
/// The most words and observers held.
const MOST_WORDS: usize = 100_000;
const MOST_OBSERVERS: usize = 2_000;

/// A place in a file.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Place {
    /// The file.
    pub file: String,
    /// The line, from 1.
    pub line: u64,
    /// The bytes.
    pub bytes: [u64; 2],
}

/// A list cut at `MOST` items.
#[derive(Clone, Debug, Serialize)]
pub struct Places<T, const MOST: usize> {
    /// How many there are in all.
    pub count: u64,
    /// The first of them.
    pub first: Vec<T>,
}

impl<T, const MOST: usize> Default for Places<T, MOST> {
    fn default() -> Self {
        Self { count: 0, first: Vec::new() }
    }
}

impl<T, const MOST: usize> Places<T, MOST> {
    /// Adds one; `make` runs only where there is room.
    pub fn add(&mut self, make: impl FnOnce() -> T) {
        self.count += 1;
        if self.first.len() < MOST {
            self.first.push(make());
        }
    }

    fn merge(&mut self, other: Self) {
        self.count += other.count;
        let room = MOST.saturating_sub(self.first.len());
        self.first.extend(other.first.into_iter().take(room));
    }
}

/// A word that was not placed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Lost {
    /// How often.
    pub count: u64,
    /// Where first.
    pub place: Place,
    /// The words around it, there.
    pub around: String,
}

/// What an observer's descriptions of one month say.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Habit {
    /// Birds described.
    pub birds: u64,
    /// Of them, with a description good enough for a record.
    pub enough: u64,
    /// For each mark of a full description, how many leave it out.
    pub left_out: Vec<u64>,
}

impl Habit {
    /// Adds another's numbers.
    pub fn merge(&mut self, other: &Self) {
        self.birds += other.birds;
        self.enough += other.enough;
        self.left_out.resize(self.left_out.len().max(other.left_out.len()), 0);
        for (mine, theirs) in self.left_out.iter_mut().zip(&other.left_out) {
            *mine += theirs;
        }
    }
}

/// A description that is not good enough for a record.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Described {
    /// Where.
    pub place: Place,
    /// Who.
    pub observer: String,
    /// When.
    pub date: String,
    /// The start of the note.
    pub note: String,
    /// The marks it tells, as a set.
    pub told: MarkSet,
    /// The marks it leaves out, as a set.
    pub left_out: MarkSet,
    /// Birds it names.
    pub named: Vec<String>,
}

/// The account.
#[derive(Clone, Debug, Default)]
pub struct Tally {
    /// Entries read.
    pub entries: u64,
    /// Birds with any mark.
    pub birds: u64,
    /// Marks.
    pub marks: u64,
    /// Bytes of note text read.
    pub bytes: u64,
    /// Words that speak for a mark.
    pub placed: u64,
    /// Words set aside on purpose.
    pub aside: u64,
    /// Words that could not be placed.
    pub unplaced: u64,
    /// Entries that gave no mark.
    pub silent: Places<Place, MOST_SILENT>,
    /// Words not placed, in lower case.
    pub words: FxHashMap<String, Lost>,
    /// Whether rare words were dropped to keep within memory.
    pub words_cut: bool,
    /// By observer and month (0: not known).
    pub habits: BTreeMap<(String, i8), Habit>,
    /// Birds described well enough for a record.
    pub good: Places<Described, MOST_DESCRIBED>,
    /// Birds that are not.
    pub poor: Places<Described, MOST_DESCRIBED>,
    /// The first and the last whole day.
    pub days: Option<(Date, Date)>,
    /// Entries without a date.
    pub undated: u64,
    /// Dates whose day and month could be the other way round.
    pub either: u64,
}

/// What to keep besides the counts.
#[derive(Clone, Copy, Debug, Default)]
pub struct Keep {
    /// Descriptions and what observers leave out, for the report.
    pub descriptions: bool,
    /// The words that were not placed, each with its first place.
    pub words: bool,
}

impl Tally {
    /// Adds an entry.
    pub fn add(&mut self, desk: &Desk<'_>, read: &Read<'_>, keep: Keep) {
        let text = &read.entry.text;
        self.entries += 1;
        self.bytes += text.len() as u64;
        self.birds += read.birds.len() as u64;
        self.marks += read.reading.traits.len() as u64;
        let place = |span: Option<crate::span::Span>| match span {
            Some(span) => {
                let (bytes, line) = read.place(span);
                Place { file: read.file.to_owned(), line, bytes }
            }
            None => Place {
                file: read.file.to_owned(),
                line: read.entry.map.first_line(),
                bytes: read.entry.span,
            },
        };
        for segment in &read.reading.segments {
            if segment.fate == Fate::Space || !is_word(text, segment.span) {
                continue;
            }
            match segment.fate {
                Fate::Evidence => self.placed += 1,
                Fate::SetAside(_) => self.aside += 1,
                Fate::Space => {}
                Fate::Unplaced => {
                    self.unplaced += 1;
                    if !keep.words {
                        continue;
                    }
                    let word = lower(segment.span.of(text));
                    if let Some(lost) = self.words.get_mut(word.as_str()) {
                        lost.count += 1;
                        continue;
                    }
                    let place = place(Some(segment.span));
                    let lost = Lost { count: 1, place, around: around(text, segment.span) };
                    self.words.insert(word.to_string(), lost);
                }
            }
        }
        if read.birds.is_empty() {
            self.silent.add(|| place(None));
        }
        self.dates(read);
        let heading = &read.entry.heading;
        if read.birds.is_empty() || !keep.descriptions {
            return;
        }
        let key = (
            heading.observer.clone().unwrap_or_default(),
            heading.date.and_then(|d| d.month).unwrap_or(0),
        );
        let habit = self.habits.entry(key).or_default();
        habit.left_out.resize(desk.description.marks.len(), 0);
        for bird in &read.birds {
            let enough = bird.is_enough(&desk.enough);
            habit.birds += 1;
            habit.enough += u64::from(enough);
            for (mark, count) in habit.left_out.iter_mut().enumerate() {
                *count += bird.told.left_out >> mark & 1;
            }
            let list = if enough { &mut self.good } else { &mut self.poor };
            list.add(|| Described {
                place: place(None),
                observer: heading.observer.clone().unwrap_or_default(),
                date: heading.date.map(|d| d.to_string()).unwrap_or_default(),
                note: start_of(text),
                told: bird.told.recorded | bird.told.absent,
                left_out: bird.told.left_out,
                named: read.named.iter().map(|n| desk.text(*n).replace('-', " ")).collect(),
            });
        }
    }

    fn dates(&mut self, read: &Read<'_>) {
        let Some(date) = read.entry.heading.date.filter(|d| d.month.is_some()) else {
            self.undated += 1;
            return;
        };
        self.either += u64::from(date.either);
        if date.is_whole() {
            // Which of two numbers is the day is no part of a day.
            let day = Date { either: false, ..date };
            self.widen(day, day);
        }
    }

    fn widen(&mut self, from: Date, to: Date) {
        let (first, last) = self.days.unwrap_or((from, to));
        self.days = Some((first.min(from), last.max(to)));
    }

    /// Adds a tally of later entries.
    pub fn merge(&mut self, other: Self) {
        self.entries += other.entries;
        self.birds += other.birds;
        self.marks += other.marks;
        self.bytes += other.bytes;
        self.placed += other.placed;
        self.aside += other.aside;
        self.unplaced += other.unplaced;
        self.undated += other.undated;
        self.either += other.either;
        self.silent.merge(other.silent);
        self.good.merge(other.good);
        self.poor.merge(other.poor);
        self.words_cut |= other.words_cut;
        // In order of the words, so that what is cut does not hang on the order of a hash map.
        let mut words: Vec<(String, Lost)> = other.words.into_iter().collect();
        words.sort_unstable_by(|a, b| a.0.cmp(&b.0));
        for (word, lost) in words {
            match self.words.get_mut(&word) {
                Some(mine) => mine.count += lost.count,
                None => {
                    self.words.insert(word, lost);
                }
            }
        }
        if self.words.len() > MOST_WORDS {
            let mut least = 1;
            while self.words.len() > MOST_WORDS / 2 {
                self.words.retain(|_, lost| lost.count > least);
                least += 1;
            }
            self.words_cut = true;
        }
        for (key, habit) in other.habits {
            let key = if self.habits.len() >= MOST_OBSERVERS && !self.habits.contains_key(&key) {
                (String::new(), key.1)
            } else {
                key
            };
            self.habits.entry(key).or_default().merge(&habit);
        }
        if let Some((first, last)) = other.days {
            self.widen(first, last);
        }
    }

    /// The words that were not placed, commonest first.
    pub fn ranked(&self) -> Vec<(&str, &Lost)> {
        let mut out: Vec<(&str, &Lost)> =
            self.words.iter().map(|(word, lost)| (word.as_str(), lost)).collect();
        out.sort_unstable_by(|a, b| b.1.count.cmp(&a.1.count).then(a.0.cmp(b.0)));
        out
    }
}

/// A few words on both sides.
fn around(text: &str, span: crate::span::Span) -> String {
    const REACH: usize = 30;
    let mut start = span.start.saturating_sub(REACH);
    while !text.is_char_boundary(start) {
        start -= 1;
    }
    let mut end = (span.end + REACH).min(text.len());
    while !text.is_char_boundary(end) {
        end += 1;
    }
    let left = &text[start..span.start];
    let left = if start > 0 { left.split_once(' ').map_or(left, |l| l.1) } else { left };
    let right = &text[span.end..end];
    let right =
        if end < text.len() { right.rsplit_once(' ').map_or(right, |r| r.0) } else { right };
    let joined = format!("{left}{}{right}", span.of(text));
    joined.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The first words of a note, on one line.
fn start_of(text: &str) -> String {
    const LENGTH: usize = 140;
    let mut out = String::new();
    for word in text.split_whitespace() {
        if out.len() + word.len() > LENGTH {
            out.push_str(" …");
            break;
        }
        if !out.is_empty() {
            out.push(' ');
        }
        out.push_str(word);
    }
    out
}
