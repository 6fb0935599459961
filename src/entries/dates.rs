//! Dates and times in the forms in which people write them.

use super::date::{Date, DateOrder};
use super::labels::Labels;
use super::said;
use std::fmt;

/// Reads on in a text.
#[derive(Clone, Copy)]
struct At<'a> {
    text: &'a str,
    at: usize,
}

impl<'a> At<'a> {
    fn rest(&self) -> &'a str {
        &self.text[self.at..]
    }

    fn peek(&self) -> Option<char> {
        self.rest().chars().next()
    }

    fn skip(&mut self, signs: &[char]) -> bool {
        let length = self.rest().len() - self.rest().trim_start_matches(signs).len();
        self.at += length;
        length > 0
    }

    fn one_of(&mut self, signs: &[char]) -> Option<char> {
        let sign = self.peek().filter(|c| signs.contains(c))?;
        self.at += sign.len_utf8();
        Some(sign)
    }

    /// A run of digits: its number and how many there are.
    fn number(&mut self) -> Option<(u32, usize)> {
        let rest = self.rest();
        let length = rest.bytes().take_while(u8::is_ascii_digit).count();
        let number = rest[..length].parse().ok()?;
        self.at += length;
        Some((number, length))
    }

    /// A run of letters.
    fn word(&mut self) -> &'a str {
        let rest = self.rest();
        let length: usize =
            rest.chars().take_while(|c| c.is_alphabetic()).map(char::len_utf8).sum();
        self.at += length;
        &rest[..length]
    }

    fn year(&mut self, short: bool) -> Option<i16> {
        let mut next = *self;
        let apostrophe = next.one_of(&['\'', '\u{2019}']).is_some();
        let (number, digits) = next.number()?;
        let year = match digits {
            4 if (1700..=2200).contains(&number) => number,
            2 if short || apostrophe => number + if number < 70 { 2000 } else { 1900 },
            _ => return None,
        };
        if next.peek().is_some_and(|c| c.is_alphanumeric() && c != 'T') {
            return None;
        }
        *self = next;
        i16::try_from(year).ok()
    }
}

const GAPS: [char; 4] = [' ', '\t', '\u{a0}', '\u{202f}'];

/// A date at the start of a text, and how many bytes it takes.
pub fn date_at(text: &str, labels: &Labels, order: DateOrder) -> Option<(Date, usize)> {
    let mut at = At { text, at: 0 };
    let mut day = at;
    if !text.starts_with(|c: char| c.is_ascii_digit()) && !labels.starts_date(day.word()) {
        return None;
    }
    let mut day = at;
    let weekday = labels.is_weekday(day.word());
    if weekday {
        day.one_of(&['.', ',']);
        day.skip(&GAPS);
        at = day;
        at.one_of(&[',']);
        at.skip(&GAPS);
    }
    let start = at;
    let written = if at.peek()?.is_ascii_digit() {
        from_number(&mut at, labels, order)
    } else {
        from_month(&mut at, labels)
    };
    let date = match written {
        Some(date) if date.year.is_none() || date.day.is_none() => {
            // "12 May twenty twenty six"
            match date.day.and(said::year_at(at.rest(), labels)) {
                Some((year, length)) => {
                    at.at += length;
                    Date { year: Some(year), ..date }
                }
                None => date,
            }
        }
        Some(date) => date,
        None => {
            at = start;
            let (date, length) = said::date_at(at.rest(), labels)?;
            at.at += length;
            date
        }
    };
    let ended = match at.peek() {
        None => true,
        Some('T') => date.is_whole(),
        Some(c) => !c.is_alphanumeric(),
    };
    ended.then_some((date, at.at))
}

fn small(number: u32) -> Option<i8> {
    i8::try_from(number).ok()
}

/// `2026-05-12`, `20260512`, `12/5/26`, `12.05.2026`, `12th May 2026`, `12 May`.
fn from_number(at: &mut At<'_>, labels: &Labels, order: DateOrder) -> Option<Date> {
    let (first, digits) = at.number()?;
    if digits == 8 {
        let year = i16::try_from(first / 10_000).ok().filter(|y| (1700..=2200).contains(y))?;
        return Date::new(Some(year), small(first / 100 % 100)?, small(first % 100)?);
    }
    if digits == 4 {
        let year = i16::try_from(first).ok().filter(|y| (1700..=2200).contains(y))?;
        let sign = at.one_of(&['-', '/', '.'])?;
        let (month, digits) = at.number()?;
        if at.one_of(&[sign]).is_none() {
            let month =
                small(month).filter(|m| (1..=12).contains(m) && digits == 2 && sign == '-')?;
            return Some(Date { year: Some(year), month: Some(month), day: None, either: false });
        }
        let (day, _) = at.number()?;
        return Date::new(Some(year), small(month)?, small(day)?);
    }
    if digits > 2 {
        return None;
    }
    let mut next = *at;
    if labels.is_ordinal(next.word()) {
        *at = next;
    }
    // Digits alone: the sign between them is the same, and the year is there.
    if let Some(sign) = at.one_of(&['/', '.', '-'])
        && at.peek().is_some_and(|c| c.is_ascii_digit())
    {
        let (second, digits) = at.number()?;
        let mut more = *at;
        if more.one_of(&[sign]).is_some()
            && let Some(year) = more.year(true)
        {
            *at = more;
            return by_order(first, second, Some(year), order);
        }
        // "25/3: ..." or "25/3" alone; "5/6 of them" is none.
        let parted = at.rest().is_empty()
            || [". ", ", ", ": ", "; ", " - ", " – "].iter().any(|s| at.rest().starts_with(s));
        let plain = sign == '/' && digits <= 2 && parted;
        return plain.then(|| by_order(first, second, None, order)).flatten();
    }
    at.skip(&[' ', '\t', '\u{a0}', '-', '/', '.']);
    let mut of = *at;
    if labels.is_of(of.word()) && of.skip(&GAPS) {
        *at = of;
    }
    let word = at.word();
    let month = labels.month(word)?;
    let mut year = *at;
    let short = matches!(year.one_of(&['.', '-', '/']), Some('-' | '/'));
    year.one_of(&[',']);
    year.skip(&GAPS);
    // "4 may 26", and nothing more.
    let mut alone = year;
    let alone =
        alone.year(true).is_some() && (alone.rest().is_empty() || alone.peek() == Some(','));
    if let Some(found) = year.year(short || alone) {
        *at = year;
        return Date::new(Some(found), month, small(first)?);
    }
    // "3 may be two": without a year the month wants its capital.
    let capital = word.starts_with(char::is_uppercase);
    capital.then(|| Date::new(None, month, small(first)?)).flatten()
}

fn by_order(first: u32, second: u32, year: Option<i16>, order: DateOrder) -> Option<Date> {
    let (first, second) = (small(first)?, small(second)?);
    let day_first = Date::new(year, second, first);
    let month_first = Date::new(year, first, second);
    let either = day_first.is_some() && month_first.is_some() && first != second;
    let date = match order {
        DateOrder::DayFirst => day_first.or(month_first),
        DateOrder::MonthFirst => month_first.or(day_first),
    };
    date.map(|d| Date { either, ..d })
}

/// `May 12, 2026`, `May 12th`, `May 2026`.
fn from_month(at: &mut At<'_>, labels: &Labels) -> Option<Date> {
    let word = at.word();
    let month = labels.month(word)?;
    at.one_of(&['.', ',']);
    if !at.skip(&[' ', '\t', '\u{a0}', '-']) {
        return None;
    }
    let mut year = *at;
    if let Some(year_found) = year.year(false) {
        *at = year;
        return Some(Date { year: Some(year_found), month: Some(month), day: None, either: false });
    }
    let (day, _) = at.number().filter(|(_, digits)| *digits <= 2)?;
    let mut next = *at;
    let ordinal = labels.is_ordinal(next.word());
    if ordinal {
        *at = next;
    }
    let mut year = *at;
    year.one_of(&[',', '-']);
    year.skip(&GAPS);
    if let Some(found) = year.year(false) {
        *at = year;
        return Date::new(Some(found), month, small(day)?);
    }
    // "May 12:30" is no day.
    let clock =
        at.rest().starts_with(':') && at.rest()[1..].starts_with(|c: char| c.is_ascii_digit());
    (word.starts_with(char::is_uppercase) && !clock)
        .then(|| Date::new(None, month, small(day)?))
        .flatten()
}

/// A time of day at the start of a text: `07:15`, `7.15am`, `0715h`, `7 pm`, `07:15-08:30`, `6-7.30 am`,
/// `0600-0730`; and how many bytes it takes. `strict` refuses forms that could be a measure or a score.
pub fn time_at(text: &str, strict: bool) -> Option<(String, usize)> {
    let mut at = At { text, at: 0 };
    at.one_of(&['T']);
    let mut behind = at;
    let wanted = if strict { Sure::Itself } else { Sure::Dated };
    let first = clock(&mut behind, wanted);
    let told = first.is_some();
    let first = first.or_else(|| clock(&mut behind, Sure::Never))?;
    if let Some((second, end)) = until(&first, told, strict, behind) {
        // "7-8.30pm": the first half is of the same half of the day.
        let later = !first.half && second.half && second.hour >= 12;
        let hour =
            if later && first.hour + 12 <= second.hour { first.hour + 12 } else { first.hour };
        return Some((format!("{}/{second}", Clock { hour, ..first }), end));
    }
    (told && boundary(&behind)).then(|| (first.to_string(), behind.at))
}

/// The end of a range, and where it ends. Where the first number says by itself that it is a time (`told`), the
/// second must be as clear or alike; else the second must say it for both.
fn until(first: &Clock, told: bool, strict: bool, behind: At<'_>) -> Option<(Clock, usize)> {
    let mut next = behind;
    let spaced = next.skip(&GAPS);
    if next.one_of(&['-', '–', '—', '/']).is_none() && next.word() != "to" {
        return None;
    }
    let touching = !next.skip(&GAPS) && !spaced;
    let mut second = None;
    let kinds = [Sure::Itself, Sure::Dated, Sure::Never];
    for wanted in &kinds[..if first.digits == 4 || touching { 3 } else { 1 }] {
        let mut end = next;
        second = clock(&mut end, *wanted).filter(|_| boundary(&end)).map(|c| (c, *wanted, end.at));
        if second.is_some() {
            break;
        }
    }
    let (second, sure, end) = second?;
    let four = first.digits == 4 && second.digits == 4;
    let good = match sure {
        Sure::Itself => told || second.half || second.colon || four,
        _ if four => told || !strict || four_alone(first, &second, &behind.text[end..]),
        Sure::Dated => told && second.digits != 4,
        Sure::Never => false,
    };
    good.then_some((second, end))
}

/// Whether two numbers of four digits are times where no date stands before them: "0600-0730" are, "2010-2015"
/// are years, "1200-1500" birds, and the rest wants the end of a heading behind it.
fn four_alone(first: &Clock, second: &Clock, rest: &str) -> bool {
    let years = [first, second].iter().all(|c| (19..21).contains(&c.hour));
    let round = [first, second].iter().all(|c| matches!(c.minute, 0 | 50));
    let ends = rest.is_empty() || rest.starts_with([',', ';', ':']);
    first.hour < 10 || (ends && !years && !round)
}

fn boundary(at: &At<'_>) -> bool {
    at.peek().is_none_or(|c| !c.is_alphanumeric() && !matches!(c, '%' | '"' | '″'))
}

/// What a number needs to be a time.
#[derive(Clone, Copy, PartialEq)]
enum Sure {
    /// It says so itself: `7:15`, `7 pm`.
    Itself,
    /// A date before it: `7.15`, `0715`.
    Dated,
    /// Nothing: something behind it will say so.
    Never,
}

struct Clock {
    hour: u32,
    minute: u32,
    second: Option<u32>,
    half: bool,
    /// Whether minutes stand behind a colon.
    colon: bool,
    /// The digits of its first number.
    digits: usize,
}

impl fmt::Display for Clock {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}:{:02}", self.hour, self.minute)?;
        self.second.map_or(Ok(()), |s| write!(f, ":{s:02}"))
    }
}

fn clock(at: &mut At<'_>, wanted: Sure) -> Option<Clock> {
    let mut next = *at;
    let (first, digits) = next.number()?;
    let mut sure = false;
    let (mut loose, mut colon) = (false, false);
    let (mut hour, mut minute, mut second) = (first, 0, None);
    if digits == 4 {
        (hour, minute) = (first / 100, first % 100);
    } else if digits <= 2 {
        let mut inner = next;
        if let Some(sign) = inner.one_of(&[':', '.', 'h'])
            && let Some((m, 2)) = inner.number()
        {
            minute = m;
            sure = sign != '.';
            loose = sign == '.';
            colon = sign == ':';
            next = inner;
            if sign == ':'
                && inner.one_of(&[':']).is_some()
                && let Some((s, 2)) = inner.number()
            {
                second = Some(s);
                next = inner;
            }
        }
    } else {
        return None;
    }
    let mut half = next;
    half.skip(&GAPS);
    let rest = half.rest();
    let marks: [(&str, Option<u32>); 12] = [
        ("a.m.", Some(0)),
        ("p.m.", Some(12)),
        ("am", Some(0)),
        ("pm", Some(12)),
        ("AM", Some(0)),
        ("PM", Some(12)),
        ("hours", None),
        ("hrs", None),
        ("h", None),
        ("Z", None),
        ("a", Some(0)),
        ("p", Some(12)),
    ];
    let mut halved = false;
    for (mark, add) in marks {
        let after = rest.get(mark.len()..).unwrap_or("");
        let ends = !after.starts_with(char::is_alphanumeric);
        // A single letter must touch the number: "7a" but not "7 a bird".
        let touches = mark.len() > 1 || half.at == next.at;
        if rest.starts_with(mark) && ends && touches {
            if let Some(add) = add {
                if hour == 0 || hour > 12 {
                    return None;
                }
                hour = hour % 12 + add;
                halved = true;
            }
            half.at += mark.len();
            next = half;
            sure = true;
            break;
        }
    }
    let enough = match wanted {
        Sure::Itself => sure,
        Sure::Dated => sure || loose || digits == 4,
        Sure::Never => true,
    };
    if !enough || hour > 24 || minute > 59 || second.is_some_and(|s| s > 60) {
        return None;
    }
    *at = next;
    Some(Clock { hour, minute, second, half: halved, colon, digits })
}
