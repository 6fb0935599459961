//! Dates as they are said: "the third of May", "May third, twenty twenty six", "on the 14th of June two
//! thousand and twenty-six".

use super::date::Date;
use super::labels::Labels;

/// The words of a text, each with where it starts and ends. A hyphen parts words.
pub(super) struct Words<'a> {
    text: &'a str,
    at: usize,
}

impl<'a> Words<'a> {
    /// The words of a text from its start.
    pub(super) const fn new(text: &'a str) -> Self {
        Self { text, at: 0 }
    }

    /// The text.
    pub(super) const fn text(&self) -> &'a str {
        self.text
    }

    /// Where the last word taken ends.
    pub(super) const fn at(&self) -> usize {
        self.at
    }

    /// Goes on from there.
    pub(super) const fn go(&mut self, to: usize) {
        self.at = to;
    }

    /// Passes over a sign, if it is the next.
    pub(super) fn pass(&mut self, sign: char) {
        if self.text[self.at..].starts_with(sign) {
            self.at += sign.len_utf8();
        }
    }

    /// The next word and where it ends, if nothing but space or a hyphen lies before it (`comma`: or a
    /// comma).
    pub(super) fn peek(&self, comma: bool) -> Option<(&'a str, usize)> {
        let rest = &self.text[self.at..];
        let gap =
            |c: char| c == ' ' || c == '\t' || c == '\u{a0}' || c == '-' || (comma && c == ',');
        let word = rest.trim_start_matches(gap);
        let start = self.at + rest.len() - word.len();
        if self.at > 0 && start == self.at && !self.text[..start].ends_with('.') {
            return None;
        }
        let inside = |c: char| c.is_alphanumeric() || c == '\'' || c == '\u{2019}';
        let length: usize = word.chars().take_while(|&c| inside(c)).map(char::len_utf8).sum();
        (length > 0).then(|| (&word[..length], start + length))
    }

    /// The next word, if it is such a one.
    pub(super) fn take<T>(
        &mut self,
        comma: bool,
        wanted: impl FnOnce(&'a str) -> Option<T>,
    ) -> Option<T> {
        let (word, end) = self.peek(comma)?;
        let found = wanted(word)?;
        self.at = end;
        Some(found)
    }

    pub(super) fn fork(&self) -> Self {
        Self { text: self.text, at: self.at }
    }

    /// A number below a hundred: "six", "twenty", "twenty six".
    pub(super) fn below_hundred(&mut self, labels: &Labels, comma: bool) -> Option<i16> {
        let tens = self.take(comma, |w| labels.number(w).filter(|n| (1..100).contains(n)))?;
        if tens >= 20 && tens % 10 == 0 {
            let ones = self.take(false, |w| labels.number(w).filter(|n| (1..10).contains(n)));
            return Some(tens + ones.unwrap_or(0));
        }
        Some(tens)
    }

    /// A day: "third", "twenty first", "3rd"; whether it is said as one of a row.
    fn day(&mut self, labels: &Labels) -> Option<(i8, bool)> {
        if let Some(day) = self.take(false, |w| labels.day(w)) {
            return Some((day, true));
        }
        if let Some(day) = self.take(false, |w| digits_of_day(w, labels)) {
            return Some((day, true));
        }
        let mut more = self.fork();
        let tens = more.take(false, |w| labels.number(w).filter(|n| matches!(n, 20 | 30)));
        if let Some(tens) = tens
            && let Some(ones) = more.take(false, |w| labels.day(w).filter(|d| *d < 10))
        {
            self.at = more.at;
            return Some((i8::try_from(tens).ok()? + ones, true));
        }
        let day = self.below_hundred(labels, false)?;
        Some((i8::try_from(day).ok()?, false))
    }

    /// A year: "2026", "twenty twenty six", "two thousand and six".
    fn year(&mut self, labels: &Labels) -> Option<i16> {
        let known = |year: &i16| (1700..=2200).contains(year);
        let figures = |w: &str| w.parse().ok().filter(|y| w.len() == 4 && known(y));
        if let Some(year) = self.take(true, figures) {
            return Some(year);
        }
        let mut words = self.fork();
        let first = words.below_hundred(labels, true)?;
        let year = if words.take(false, |w| labels.is_thousand(w).then_some(())).is_some() {
            let mut rest = words.fork();
            rest.take(false, |w| labels.is_and(w).then_some(()));
            // "two thousand starlings" is no year.
            let more = rest.below_hundred(labels, false)?;
            words.at = rest.at;
            first.checked_mul(1000)? + more
        } else {
            first * 100 + words.below_hundred(labels, false).filter(|n| *n >= 10)?
        };
        known(&year).then(|| {
            self.at = words.at;
            year
        })
    }
}

/// `3rd`.
fn digits_of_day(word: &str, labels: &Labels) -> Option<i8> {
    let length = word.bytes().take_while(u8::is_ascii_digit).count();
    let (digits, end) = word.split_at(length);
    labels.is_ordinal(end).then(|| digits.parse().ok()).flatten()
}

/// A year that is said behind a day and month, and how many bytes it takes.
pub fn year_at(text: &str, labels: &Labels) -> Option<(i16, usize)> {
    let mut words = Words::new(text);
    let year = words.year(labels)?;
    Some((year, words.at))
}

/// A said date at the start of a text, and how many bytes it takes.
pub fn date_at(text: &str, labels: &Labels) -> Option<(Date, usize)> {
    let mut words = Words::new(text);
    // "today is the", "on the"
    for _ in 0..3 {
        if words.take(false, |w| labels.leads_to_day(w).then_some(())).is_none() {
            break;
        }
    }
    let month = words.take(false, |w| labels.month(w));
    let (month, day, sure) = match month {
        Some(month) => {
            words.take(false, |w| labels.leads_to_day(w).then_some(()));
            let (day, ordinal) = words.day(labels)?;
            // "May two of them have been": only a day said as one of a row needs no year.
            (month, day, ordinal)
        }
        None => {
            let (day, ordinal) = words.day(labels)?;
            let of = words.take(false, |w| labels.is_of(w).then_some(())).is_some();
            let (month, capital) = words
                .take(false, |w| labels.month(w).map(|m| (m, w.starts_with(char::is_uppercase))))?;
            (month, day, ordinal && (of || capital))
        }
    };
    let year = words.year(labels);
    let date = Date::new(year, month, day)?;
    (sure || year.is_some()).then_some((date, words.at))
}
