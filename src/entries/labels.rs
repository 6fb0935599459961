//! The words of headings: what fields are called, months, words of weather. All of them are entries
//! `note …` of the lexicon.

use super::clock::Word;
use crate::lexicon::Lexicon;
use compact_str::CompactString;
use rustc_hash::{FxHashMap, FxHashSet};

/// A field of a heading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Field {
    /// The day.
    Date,
    /// The time of day.
    Time,
    /// The place.
    Place,
    /// Who saw it.
    Observer,
    /// How many.
    Count,
    /// The weather.
    Weather,
    /// The habitat.
    Habitat,
    /// What the observer took it for.
    Identification,
    /// A title.
    Title,
    /// The year of what follows.
    Year,
    /// The note itself.
    Note,
}

impl Field {
    /// Every field.
    pub const ALL: [Self; 11] = [
        Self::Date,
        Self::Time,
        Self::Place,
        Self::Observer,
        Self::Count,
        Self::Weather,
        Self::Habitat,
        Self::Identification,
        Self::Title,
        Self::Year,
        Self::Note,
    ];

    /// Its name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Date => "date",
            Self::Time => "time",
            Self::Place => "place",
            Self::Observer => "observer",
            Self::Count => "count",
            Self::Weather => "weather",
            Self::Habitat => "habitat",
            Self::Identification => "identification",
            Self::Title => "title",
            Self::Year => "year",
            Self::Note => "note",
        }
    }

    /// The field of a name.
    pub fn find(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|f| f.name() == name)
    }
}

/// The words of headings.
#[derive(Clone, Debug, Default)]
pub struct Labels {
    fields: FxHashMap<String, Field>,
    longest: usize,
    months: FxHashMap<String, i8>,
    weekdays: FxHashSet<String>,
    ordinals: FxHashSet<String>,
    of: FxHashSet<String>,
    /// Days as they are said, "third", by their numbers.
    days: FxHashMap<String, i8>,
    /// Whole numbers as they are said.
    numbers: FxHashMap<String, i16>,
    thousand: FxHashSet<String>,
    and: FxHashSet<String>,
    /// What may stand before a day that is said: "on the".
    leads: FxHashSet<String>,
    weather: FxHashSet<String>,
    observers: FxHashSet<String>,
    small: FxHashSet<String>,
    times: FxHashSet<String>,
    same: FxHashSet<String>,
    same_starts: FxHashSet<char>,
    /// Every first word of dates, of times that are said and of words for the same day, in plain letters.
    heading_starts: FxHashSet<CompactString>,
    /// Every word that a date may start with, save figures.
    starters: FxHashSet<String>,
    /// Words and phrases of times that are said.
    clock: FxHashMap<String, Word>,
    /// Every word that a time that is said may start with, save figures.
    clock_starters: FxHashSet<String>,
    /// The first words of all its words and phrases.
    clock_firsts: FxHashSet<String>,
    /// Words that speak of a bird's marks, in lower case.
    marks: FxHashSet<String>,
    /// Names of birds, in lower case.
    birds: FxHashSet<String>,
}

/// The first word of a phrase in plain letters; of "it's" those before the sign.
fn first_word(phrase: &str) -> String {
    phrase.split(' ').next().unwrap_or(phrase).to_owned()
}

/// A name as it is looked up: lower case, letters and digits, single spaces.
pub fn plain(name: &str) -> String {
    let mut out = String::with_capacity(name.len());
    for c in name.chars() {
        if c.is_ascii_alphanumeric() {
            out.push(c.to_ascii_lowercase());
        } else if c.is_alphanumeric() {
            out.extend(c.to_lowercase());
        } else if !out.ends_with(' ') && !out.is_empty() {
            out.push(' ');
        }
    }
    out.truncate(out.trim_end().len());
    out
}

/// A word in lower case; short ones, as nearly all are, without an allocation.
pub(crate) fn lower(word: &str) -> CompactString {
    if word.is_ascii() {
        let mut out = CompactString::from(word);
        out.make_ascii_lowercase();
        return out;
    }
    CompactString::from(word.to_lowercase())
}

impl Labels {
    /// The words of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let mut out = Self::default();
        for entry in lexicon.others("note") {
            let words = || entry.items("also").map(plain).chain([plain(&entry.id)]);
            let set = match entry.get("role").unwrap_or_default() {
                "label" => {
                    if let Some(field) = entry.get("gives").and_then(Field::find) {
                        out.fields.extend(words().map(|w| (w, field)));
                    }
                    continue;
                }
                "month" => {
                    if let Some(number) = entry.get("number").and_then(|n| n.parse().ok()) {
                        out.months.extend(words().map(|w| (w, number)));
                    }
                    continue;
                }
                "day" => {
                    let words = entry.items("also").map(plain);
                    out.days.extend(words.zip(1..));
                    continue;
                }
                "clock" => {
                    if let Some(word) = entry.get("gives").and_then(Word::find) {
                        out.clock.extend(entry.items("also").map(|w| (plain(w), word)));
                    }
                    continue;
                }
                "thousand" => &mut out.thousand,
                "and" => &mut out.and,
                "leads-to-day" => &mut out.leads,
                "weekday" => &mut out.weekdays,
                "ordinal" => &mut out.ordinals,
                "of" => &mut out.of,
                "weather" => &mut out.weather,
                "observer" => &mut out.observers,
                "small" => &mut out.small,
                "time" => &mut out.times,
                "same" => &mut out.same,
                _ => continue,
            };
            set.extend(words());
        }
        out.numbers = numbers(lexicon);
        out.starters = [&out.weekdays, &out.leads]
            .into_iter()
            .flatten()
            .chain(out.months.keys())
            .chain(out.days.keys())
            .chain(out.numbers.keys())
            .map(|phrase| first_word(phrase))
            .collect();
        let first = [Word::Lead, Word::Half, Word::Quarter, Word::Nought];
        out.clock_starters = out
            .clock
            .iter()
            .filter(|(_, word)| first.contains(word))
            .map(|(phrase, _)| phrase)
            .chain(out.numbers.keys())
            .map(|phrase| first_word(phrase))
            .collect();
        out.clock_firsts = out.clock.keys().map(|phrase| first_word(phrase)).collect();
        out.heading_starts = [&out.starters, &out.clock_starters, &out.same]
            .into_iter()
            .flatten()
            .map(|phrase| {
                phrase.split(|c: char| !c.is_ascii_alphabetic()).next().unwrap_or_default().into()
            })
            .collect();
        out.same_starts = out.same.iter().filter_map(|s| s.chars().next()).collect();
        out.longest = out.fields.keys().map(|f| f.split(' ').count()).max().unwrap_or(0);
        out.marks = mark_words(lexicon);
        out.birds = bird_names(lexicon);
        out
    }

    /// The field that a label names.
    pub fn field(&self, label: &str) -> Option<Field> {
        self.fields.get(&plain(label)).copied()
    }

    /// The month of a word, from 1.
    pub fn month(&self, word: &str) -> Option<i8> {
        self.months.get(lower(word).as_str()).copied()
    }

    /// Whether a word is a day of the week.
    pub fn is_weekday(&self, word: &str) -> bool {
        !word.is_empty() && self.weekdays.contains(lower(word).as_str())
    }

    /// Whether a word is the end of "12th".
    pub fn is_ordinal(&self, word: &str) -> bool {
        word.len() == 2 && self.ordinals.contains(lower(word).as_str())
    }

    /// Whether a word is the "of" of "12th of May".
    pub fn is_of(&self, word: &str) -> bool {
        !word.is_empty() && self.of.contains(lower(word).as_str())
    }

    /// The number of a day said as one of a row: "third".
    pub fn day(&self, word: &str) -> Option<i8> {
        self.days.get(lower(word).as_str()).copied()
    }

    /// A whole number that is said.
    pub fn number(&self, word: &str) -> Option<i16> {
        self.numbers.get(lower(word).as_str()).copied()
    }

    /// Whether a word makes thousands of the number before it.
    pub fn is_thousand(&self, word: &str) -> bool {
        self.thousand.contains(lower(word).as_str())
    }

    /// Whether a word joins the parts of a number.
    pub fn is_and(&self, word: &str) -> bool {
        self.and.contains(lower(word).as_str())
    }

    /// Whether a date may start with a word.
    pub fn starts_date(&self, word: &str) -> bool {
        // No such word is long, and a line seldom starts with one.
        (1..=16).contains(&word.len()) && self.starters.contains(lower(word).as_str())
    }

    /// Whether a date, a time that is said or words for the same day may start with a word of plain letters.
    pub fn starts_heading(&self, word: &str) -> bool {
        self.heading_starts.contains(&lower(word))
    }

    /// Whether a time that is said may start with a word.
    pub fn starts_clock(&self, word: &str) -> bool {
        (1..=12).contains(&word.len())
            && (word.parse::<u8>().is_ok() || self.clock_starters.contains(lower(word).as_str()))
    }

    /// Whether a word or phrase of times that are said may start with a word.
    pub fn starts_clock_phrase(&self, word: &str) -> bool {
        // Of "it's" the letters before the sign.
        let word = word.split(['\'', '\u{2019}']).next().unwrap_or(word);
        (1..=12).contains(&word.len()) && self.clock_firsts.contains(lower(word).as_str())
    }

    /// What a word or phrase does in a time that is said.
    pub fn clock(&self, phrase: &str) -> Option<Word> {
        self.clock.get(&plain(phrase)).copied()
    }

    /// Whether a word may stand before a day that is said.
    pub fn leads_to_day(&self, word: &str) -> bool {
        self.leads.contains(&plain(word))
    }

    /// Whether a phrase is a time of day without a clock.
    pub fn is_time(&self, phrase: &str) -> bool {
        self.times.contains(&plain(phrase))
    }

    /// Whether a line may begin with words that say that the day is the one before.
    pub fn may_be_same(&self, line: &str) -> bool {
        let first = line.trim_start().chars().next().map(|c| c.to_ascii_lowercase());
        first.is_some_and(|c| self.same_starts.contains(&c))
    }

    /// Whether a phrase says that the day is the one before.
    pub fn is_same(&self, phrase: &str) -> bool {
        // A few words at most; most lines begin otherwise, and are not looked at any further.
        phrase.len() <= 40 && self.may_be_same(phrase) && self.same.contains(&plain(phrase))
    }

    /// Whether a phrase speaks of the weather.
    pub fn is_weather(&self, phrase: &str) -> bool {
        plain(phrase).split(' ').any(|w| {
            let word = w.trim_end_matches(|c: char| c.is_ascii_digit());
            self.weather.contains(w) || self.weather.contains(word)
        })
    }

    /// Whether each word of a phrase speaks of the weather.
    pub fn is_all_weather(&self, phrase: &str) -> bool {
        plain(phrase).split(' ').all(|w| {
            let word = w.trim_end_matches(|c: char| c.is_ascii_digit());
            word.is_empty() || self.weather.contains(word) || self.small.contains(word)
        })
    }

    /// Whether a phrase names an observer.
    pub fn is_observer(&self, phrase: &str) -> bool {
        plain(phrase).split(' ').any(|w| self.observers.contains(w))
    }

    /// Whether a phrase speaks of birds and their marks rather than of a place.
    pub fn speaks_of_marks(&self, phrase: &str) -> bool {
        if self.is_bird(phrase) {
            return true;
        }
        // "Black Mill" is a place, "black crown" is none.
        let (mut count, mut hits, mut named) = (0, 0, true);
        for word in phrase.split(|c: char| !c.is_alphanumeric()).filter(|w| !w.is_empty()) {
            let lower = lower(word);
            count += 1;
            hits += usize::from(self.marks.contains(lower.as_str()));
            named = named
                && (word.starts_with(|c: char| c.is_uppercase() || c.is_numeric())
                    || self.small.contains(lower.as_str()));
            if !named && hits > 0 {
                return true;
            }
        }
        named && hits == count && hits > 2
    }

    /// Whether a phrase is the name of a bird, or of several: "3 Heron", "Stonechats".
    fn is_bird(&self, phrase: &str) -> bool {
        let plain = plain(phrase);
        let name = plain.trim_matches(|c: char| c.is_ascii_digit() || c == ' ');
        let last = name.rsplit(' ').next().unwrap_or(name);
        [name, last].iter().any(|n| {
            self.birds.contains(*n)
                || n.strip_suffix('s').is_some_and(|one| self.birds.contains(one))
        }) && (name == last || name.split(' ').count() <= 3)
    }

    /// Whether a phrase is written as a name: its words have capitals, save the small ones, or at
    /// least two of few do.
    pub fn is_named(&self, phrase: &str) -> bool {
        let words: Vec<&str> = phrase.split_whitespace().collect();
        let capital = |w: &&&str| w.starts_with(char::is_uppercase);
        let capitals = words.iter().filter(capital).count();
        let others = words
            .iter()
            .filter(|w| w.starts_with(char::is_lowercase) && !self.small.contains(&plain(w)))
            .count();
        words.first().is_some_and(|w| w.starts_with(char::is_uppercase))
            && (others == 0 || (capitals >= 2 && words.len() <= 4))
    }

    /// How many words the longest label has.
    pub const fn longest(&self) -> usize {
        self.longest
    }
}

/// Single words of kinds that stand for parts of a bird and for what is seen there.
fn mark_words(lexicon: &Lexicon) -> FxHashSet<String> {
    let wanted = lexicon.kinds.set_of(&[
        "area", "area-ed", "colour", "tone", "pattern", "mark", "shape", "build", "size",
    ]);
    lexicon
        .vocabulary
        .single_words()
        .filter(|(_, node)| lexicon.vocabulary.kinds(*node) & wanted != 0)
        .map(|(word, _)| word.to_owned())
        .collect()
}

/// Single words that stand for whole numbers.
fn numbers(lexicon: &Lexicon) -> FxHashMap<String, i16> {
    let kind = lexicon.kinds.set_of(&["number"]);
    let vocabulary = &lexicon.vocabulary;
    let number = |node| {
        let sense =
            vocabulary.senses(node).iter().find(|s| s.kind.bit() & kind != 0 && !s.heard())?;
        let number = vocabulary.record(sense).number.filter(|n| n.fract() == 0.0)?;
        // Far below the limits of the type.
        (1.0..=1000.0).contains(&number).then_some(number as i16)
    };
    vocabulary.single_words().filter_map(|(w, node)| Some((w.to_owned(), number(node)?))).collect()
}

/// Names of species and of groups.
fn bird_names(lexicon: &Lexicon) -> FxHashSet<String> {
    let wanted = lexicon.kinds.set_of(&["species", "group", "yardstick"]);
    lexicon
        .vocabulary
        .terms
        .iter()
        .filter(|term| term.kind.bit() & wanted != 0)
        // Other forms are not stored with the built-in tables.
        .map(|term| plain(lexicon.names.text(term.id)))
        .collect()
}
