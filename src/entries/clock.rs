//! Times of day as they are said: "half past seven", "quarter to nine in the evening", "oh six thirty",
//! "about seven a.m.".

use super::labels::Labels;
use super::said::Words;

/// What a word or phrase does in a time that is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Word {
    /// Stands before it, and says nothing: "at", "about", "a".
    Lead,
    /// Half an hour.
    Half,
    /// A quarter of an hour.
    Quarter,
    /// After the hour.
    Past,
    /// Before the hour.
    To,
    /// "minutes".
    Minutes,
    /// "o'clock".
    Hour,
    /// The nought of "oh six thirty".
    Nought,
    /// The hundred of "seventeen hundred hours".
    Hundred,
    /// "hours".
    Hours,
    /// Before noon.
    Morning,
    /// After noon.
    Afternoon,
    /// The evening before midnight, or the hours after it.
    Night,
    /// Between the first and the last time.
    Until,
}

impl Word {
    /// By its name in the lexicon.
    pub fn find(name: &str) -> Option<Self> {
        Some(match name {
            "lead" => Self::Lead,
            "half" => Self::Half,
            "quarter" => Self::Quarter,
            "past" => Self::Past,
            "to" => Self::To,
            "minutes" => Self::Minutes,
            "hour" => Self::Hour,
            "nought" => Self::Nought,
            "hundred" => Self::Hundred,
            "hours" => Self::Hours,
            "morning" => Self::Morning,
            "afternoon" => Self::Afternoon,
            "night" => Self::Night,
            "until" => Self::Until,
            _ => return None,
        })
    }
}

/// A time that was said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// `07:30` or `07:30/08:45`. Without a word for the half of the day it is the morning's.
    pub time: String,
    /// How many bytes it takes.
    pub used: usize,
    /// Whether it can be nothing but a time: "six thirty" and "five to ten" can.
    pub sure: bool,
}

/// A time that is said at the start of a text.
pub fn time_at(text: &str, labels: &Labels) -> Option<Said> {
    let first = text.split(|c: char| !c.is_alphanumeric()).next()?;
    if !labels.starts_clock(first) {
        return None;
    }
    let mut words = Words::new(text);
    leads(&mut words, labels);
    let Some(from) = one(&mut words, labels) else {
        return from_an_hour(words, labels);
    };
    let mut more = words.fork();
    let until = word(&mut more, labels, &[Word::Until, Word::To])
        .and_then(|_| {
            leads(&mut more, labels);
            one(&mut more, labels).or_else(|| last_hour(&mut more, labels))
        })
        .filter(|until| from.sure || until.sure);
    Some(match until {
        Some(until) => range(from, until, more.at()),
        None => Said { time: from.text(), used: words.at(), sure: from.sure },
    })
}

fn range(mut from: Clock, until: Clock, used: usize) -> Said {
    // "six o'clock until half past seven in the evening": both are of the same half of the day.
    if !from.halved && until.hour >= 12 && from.hour + 12 <= until.hour {
        from.hour += 12;
    }
    Said { time: format!("{}/{}", from.text(), until.text()), used, sure: true }
}

/// "six to half past seven": a number alone is an hour where what follows can be nothing but a time.
fn from_an_hour(mut words: Words<'_>, labels: &Labels) -> Option<Said> {
    let from = hour_alone(&mut words, labels)?;
    word(&mut words, labels, &[Word::Until, Word::To])?;
    leads(&mut words, labels);
    let until = one(&mut words, labels).filter(|until| until.sure)?;
    Some(range(from, until, words.at()))
}

/// "half past six to seven": an hour alone, and nothing of the sentence behind it.
fn last_hour(words: &mut Words<'_>, labels: &Labels) -> Option<Clock> {
    let mut next = words.fork();
    let hour = hour_alone(&mut next, labels)?;
    let rest = words.text()[next.at()..].trim_start();
    let ends =
        rest.is_empty() || rest.starts_with([',', ';', ':', '.', '|', '\u{2013}', '\u{2014}']);
    ends.then(|| {
        words.go(next.at());
        hour
    })
}

/// Passes over what says nothing of the time: "at about".
fn leads(words: &mut Words<'_>, labels: &Labels) {
    while word(words, labels, &[Word::Lead]).is_some() {}
}

fn hour_alone(words: &mut Words<'_>, labels: &Labels) -> Option<Clock> {
    let hour = number(words, labels, 1..25)?;
    Some(Clock { hour, minute: 0, sure: false, halved: hour > 12 })
}

#[derive(Clone, Copy)]
struct Clock {
    hour: i16,
    minute: i16,
    sure: bool,
    halved: bool,
}

impl Clock {
    fn text(&self) -> String {
        format!("{:02}:{:02}", self.hour, self.minute)
    }

    /// So many minutes before the hour.
    const fn before(hour: i16, minutes: i16) -> (i16, i16) {
        (if hour == 1 { 12 } else { hour - 1 }, 60 - minutes)
    }
}

/// The next word or phrase, where it is one of those wanted.
fn word(words: &mut Words<'_>, labels: &Labels, wanted: &[Word]) -> Option<Word> {
    words.peek(false).filter(|(first, _)| labels.starts_clock_phrase(first))?;
    let mut found = None;
    let mut ahead = words.fork();
    // The longest phrase has three words: "in the morning".
    for _ in 0..3 {
        if ahead.take(false, Some).is_none() {
            break;
        }
        let phrase = &words.text()[words.at()..ahead.at()];
        if let Some(word) = labels.clock(phrase).filter(|w| wanted.contains(w)) {
            found = Some((word, ahead.at()));
        }
        ahead.pass('.');
    }
    let (word, end) = found?;
    words.go(end);
    // "a.m." ends in a full stop of its own.
    if words.text()[..end].trim_end_matches(char::is_alphanumeric).ends_with('.') {
        words.pass('.');
    }
    Some(word)
}

fn number(words: &mut Words<'_>, labels: &Labels, wanted: std::ops::Range<i16>) -> Option<i16> {
    let mut next = words.fork();
    let figures = |w: &str| w.parse().ok().filter(|_| w.len() <= 2);
    let number = next.take(false, figures).or_else(|| next.below_hundred(labels, false));
    let number = number.filter(|n| wanted.contains(n))?;
    words.go(next.at());
    Some(number)
}

/// Whether the next word is one that a time may start with.
fn may_be_time(words: &Words<'_>, labels: &Labels) -> bool {
    words.peek(false).is_some_and(|(word, _)| {
        // Of "o'clock" the letters before the sign.
        let first = word.split(['\'', '\u{2019}']).next().unwrap_or(word);
        labels.starts_clock(first) || labels.number(word).is_some()
    })
}

/// One time, with what is said of the half of the day.
fn one(words: &mut Words<'_>, labels: &Labels) -> Option<Clock> {
    if !may_be_time(words, labels) {
        return None;
    }
    let mut next = words.fork();
    let mut found = by_hour(&mut next, labels).or_else(|| by_figures(&mut next, labels))?;
    let half = word(&mut next, labels, &[Word::Morning, Word::Afternoon, Word::Night]);
    if let Some(half) = half.filter(|_| found.hour <= 12) {
        let early = found.hour % 12;
        let late = half == Word::Afternoon || (half == Word::Night && early >= 6);
        found.hour = early + if late { 12 } else { 0 };
        found.halved = true;
        found.sure = true;
    }
    // "seven" alone is a number.
    let told = found.minute >= 0 || found.sure;
    found.minute = found.minute.max(0);
    told.then(|| {
        words.go(next.at());
        found
    })
}

/// "half past seven", "quarter to nine", "ten minutes past six".
fn by_hour(words: &mut Words<'_>, labels: &Labels) -> Option<Clock> {
    let mut next = words.fork();
    let (minutes, named) = match word(&mut next, labels, &[Word::Half, Word::Quarter]) {
        Some(Word::Half) => (30, true),
        Some(_) => (15, true),
        None => {
            let minutes = number(&mut next, labels, 1..30)?;
            let named = word(&mut next, labels, &[Word::Minutes]).is_some();
            // "seven to nine" are hours, or birds.
            (minutes, if named || minutes % 5 == 0 { named } else { return None })
        }
    };
    let side = word(&mut next, labels, &[Word::Past, Word::To]);
    let hour = number(&mut next, labels, 1..13)?;
    let (hour, minute) = match side {
        Some(Word::To) => Clock::before(hour, minutes),
        Some(_) => (hour, minutes),
        // "half seven", as it is said on some islands.
        None if minutes == 30 && named => (hour, 30),
        None => return None,
    };
    word(&mut next, labels, &[Word::Hour]);
    words.go(next.at());
    let sure = side.is_some() && (named || side == Some(Word::Past));
    Some(Clock { hour, minute, sure, halved: false })
}

/// "seven", "seven o'clock", "six thirty", "oh six oh five", "seventeen hundred hours".
fn by_figures(words: &mut Words<'_>, labels: &Labels) -> Option<Clock> {
    let nought = word(words, labels, &[Word::Nought]).is_some();
    let spoken = words.take(false, |w| labels.number(w));
    let hour = spoken.or_else(|| words.take(false, |w| w.parse().ok().filter(|_| w.len() <= 2)));
    let mut hour = hour.filter(|h| (i16::from(!nought)..25).contains(h))?;
    if hour == 20
        && let Some(more) = words.take(false, |w| labels.number(w).filter(|n| (1..4).contains(n)))
    {
        // "twenty one thirty" is half past nine.
        hour += more;
    }
    let mut clock = Clock { hour, minute: -1, sure: nought, halved: nought || hour > 12 };
    if word(words, labels, &[Word::Hour]).is_some() {
        clock.sure = true;
        return Some(clock);
    }
    if word(words, labels, &[Word::Hundred]).is_some() {
        clock.minute = 0;
        // "Two hundred" are birds.
        clock.sure = word(words, labels, &[Word::Hours]).is_some() || nought;
        return clock.sure.then_some(clock);
    }
    let mut next = words.fork();
    let small = word(&mut next, labels, &[Word::Nought]).is_some();
    let wanted = if small { 1..10 } else { 10..60 };
    // "5-10" are birds.
    match number(&mut next, labels, wanted).filter(|_| spoken.is_some()) {
        Some(minute) => {
            clock.minute = minute;
            clock.sure |= small;
            words.go(next.at());
            word(words, labels, &[Word::Hours]);
        }
        // "Oh six" alone is no time.
        None => clock.sure = false,
    }
    Some(clock)
}
