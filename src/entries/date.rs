//! A day, or as much of it as is known, as it is kept and shown.

use compact_str::{CompactString, ToCompactString};
use jiff::civil;
use serde::{Deserialize, Serialize};
use std::fmt;

/// Which number of `5/6/2026` is the day, where both could be.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum DateOrder {
    /// 5 June.
    #[default]
    DayFirst,
    /// 6 May.
    MonthFirst,
}

/// A day, or as much of it as is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Date {
    /// The year.
    pub year: Option<i16>,
    /// The month, from 1.
    pub month: Option<i8>,
    /// The day of the month, from 1.
    pub day: Option<i8>,
    /// Whether day and month could be the other way round.
    pub either: bool,
}

impl Date {
    /// A date that exists.
    pub(super) fn new(year: Option<i16>, month: i8, day: i8) -> Option<Self> {
        // Without a year, 29 February may be.
        civil::Date::new(year.unwrap_or(2000), month, day).ok()?;
        Some(Self { year, month: Some(month), day: Some(day), either: false })
    }

    /// Whether it is a whole day of a known year.
    pub const fn is_whole(&self) -> bool {
        self.year.is_some() && self.month.is_some() && self.day.is_some()
    }

    /// As it is shown; the formatting machinery took more instructions than the other cells of a heading together.
    pub fn text(self) -> CompactString {
        let (Some(year @ 0..=9999), Some(month @ 0..=99), Some(day @ 0..=99)) =
            (self.year, self.month, self.day)
        else {
            return self.to_compact_string();
        };
        let digit = |number: i16| b'0' + (number % 10) as u8;
        let two = |number: i16| [digit(number / 10), digit(number)];
        let ([a, b], [c, d]) = (two(year / 100), two(year));
        let ([e, f], [g, h]) = (two(month.into()), two(day.into()));
        let shown = [a, b, c, d, b'-', e, f, b'-', g, h];
        CompactString::from_utf8(shown).unwrap_or_else(|_| self.to_compact_string())
    }

    /// The date with the year of the one before it where none is written; a month far before that one is of the
    /// next year.
    #[must_use]
    pub fn after(self, last: Option<Self>) -> Self {
        let Some(last) = last.filter(|_| self.year.is_none()) else {
            return self;
        };
        let over = matches!((last.month, self.month), (Some(l), Some(m)) if l - m >= 6);
        Self { year: last.year.map(|y| y + i16::from(over)), ..self }
    }
}

impl fmt::Display for Date {
    /// ISO 8601: `2026-05-12`, `2026-05`, `2026`; `--05-12` without a year.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.year, self.month, self.day) {
            (Some(y), Some(m), Some(d)) => write!(f, "{y:04}-{m:02}-{d:02}"),
            (Some(y), Some(m), None) => write!(f, "{y:04}-{m:02}"),
            (Some(y), None, _) => write!(f, "{y:04}"),
            (None, Some(m), Some(d)) => write!(f, "--{m:02}-{d:02}"),
            (None, Some(m), None) => write!(f, "--{m:02}"),
            (None, None, _) => Ok(()),
        }
    }
}

impl Serialize for Date {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Date {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        iso(&text).ok_or_else(|| serde::de::Error::custom("expected a date such as 2026-05-12"))
    }
}

/// The inverse of the way dates are shown.
fn iso(text: &str) -> Option<Date> {
    let (year, rest) = match text.strip_prefix("--") {
        Some(rest) => (None, Some(rest)),
        None => (Some(text.get(..4)?.parse().ok()?), text.get(5..)),
    };
    let mut parts = rest.unwrap_or("").split('-').filter(|p| !p.is_empty());
    let month = parts.next().map(str::parse).transpose().ok()?;
    let day = parts.next().map(str::parse).transpose().ok()?;
    Some(Date { year, month, day, either: false })
}
