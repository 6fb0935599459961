//! Dictated memos as subtitles, SRT or WebVTT: cues that follow one another without a long silence
//! are one entry; its time within the recording is kept.

use super::clock;
use super::date::DateOrder;
use super::heading::{Found, Reading, heading_of};
use super::labels::Field;
use super::lines::{Line, Lines};
use super::map::SourceMap;
use super::{Broken, Entry, Heading, MOST_ENTRY, Plan, Remark, Sink, Trouble, Use};
use std::io::Read;
use std::sync::Arc;

/// An entry being gathered.
struct Open {
    text: String,
    map: SourceMap,
    first: u64,
    start: Time,
    end: Time,
    speaker: Option<String>,
}

/// A time within a recording.
#[derive(Clone, Debug, Default, PartialEq)]
struct Time {
    seconds: f64,
    written: String,
}

#[derive(Clone, Copy, PartialEq)]
enum Within {
    /// Between cues.
    Nothing,
    /// In the text of a cue.
    Cue,
    /// In a comment or a style sheet.
    Aside,
}

/// Parts a memo.
pub fn part<R: Read>(
    plan: &Plan<'_>,
    lines: &mut Lines<R>,
    sink: &mut dyn Sink,
) -> Result<(), Broken> {
    let now = plan.heading.clone();
    let mut memo =
        Memo { plan, now, open: None, within: Within::Nothing, held: None, uses: Vec::new() };
    let mut line = Line::default();
    let mut cues = 0usize;
    while lines.next(&mut line)? {
        line.tell_damage(sink);
        cues += usize::from(memo.line(&line, sink)?);
    }
    memo.settle_held(false, sink)?;
    memo.close(sink)?;
    if cues == 0 && lines.place() > 0 {
        return Err(Broken::At(
            1,
            0,
            "no cue with its times".to_owned(),
            "a cue is a line such as `00:00:01,000 --> 00:00:04,000` with the words below it; plain text goes in a .txt file".to_owned(),
        ));
    }
    Ok(())
}

struct Memo<'a, 'p> {
    plan: &'a Plan<'p>,
    /// What was said of day and place so far; it holds until something else is said.
    now: Heading,
    open: Option<Open>,
    within: Within,
    /// A line before a cue: its number or name if times follow, else words.
    held: Option<Line>,
    uses: Vec<(Use, u64, u64)>,
}

impl Memo<'_, '_> {
    /// Takes a line; whether it began a cue.
    fn line(&mut self, line: &Line, sink: &mut dyn Sink) -> Result<bool, Broken> {
        let content = line.content().trim();
        let timed = is_timed(content);
        self.settle_held(timed, sink)?;
        if content.is_empty() {
            self.within = Within::Nothing;
            self.tell(line, Use::Blank, line.text.len());
            return Ok(false);
        }
        if timed {
            let Some((start, end)) = times(content) else {
                sink.remark(Remark { line: line.number, byte: line.start, what: Trouble::NoTimes });
                self.tell(line, Use::Heading, line.content);
                self.tell(line, Use::Blank, line.text.len());
                self.open_untimed(line, sink)?;
                return Ok(true);
            };
            let apart = self
                .open
                .as_ref()
                .is_some_and(|o| start.seconds - o.end.seconds >= self.plan.pause);
            if apart {
                self.close(sink)?;
            }
            self.tell(line, Use::Heading, line.content);
            self.tell(line, Use::Blank, line.text.len());
            let open = self.open.get_or_insert_with(|| Open {
                text: String::new(),
                map: SourceMap::new(line.units),
                first: line.end,
                start,
                end: Time::default(),
                speaker: None,
            });
            open.end = end;
            self.within = Within::Cue;
            return Ok(true);
        }
        let aside = ["NOTE", "STYLE", "REGION", "WEBVTT"].iter().any(|w| {
            content.strip_prefix(w).is_some_and(|r| r.is_empty() || r.starts_with([' ', '\t', ':']))
        });
        if self.within == Within::Nothing && aside {
            self.within = Within::Aside;
        }
        match self.within {
            Within::Cue => self.words(line, sink)?,
            Within::Aside => self.tell(line, Use::Syntax, line.text.len()),
            Within::Nothing => self.held = Some(line.clone()),
        }
        Ok(false)
    }

    /// Uses the line that was held: before times, or as a bare number, it names a cue.
    fn settle_held(&mut self, before_times: bool, sink: &mut dyn Sink) -> Result<(), Broken> {
        let Some(line) = self.held.take() else {
            return Ok(());
        };
        if before_times || line.content().trim().bytes().all(|b| b.is_ascii_digit()) {
            self.tell(&line, Use::Syntax, line.text.len());
            return Ok(());
        }
        sink.remark(Remark { line: line.number, byte: line.start, what: Trouble::Stray });
        self.open_untimed(&line, sink)?;
        self.words(&line, sink)
    }

    /// Begins an entry of which the times are not known.
    fn open_untimed(&mut self, line: &Line, sink: &mut dyn Sink) -> Result<(), Broken> {
        // What is told so far belongs to the entry before, save for this line.
        let own = self.uses.iter().position(|u| u.1 >= line.start).unwrap_or(self.uses.len());
        let own = self.uses.split_off(own);
        self.close(sink)?;
        self.uses = own;
        self.open = Some(Open {
            text: String::new(),
            map: SourceMap::new(line.units),
            first: line.end,
            start: Time::default(),
            end: Time::default(),
            speaker: None,
        });
        self.within = Within::Cue;
        Ok(())
    }

    /// Adds the words of a cue; tags in angle brackets are left out.
    fn words(&mut self, line: &Line, sink: &mut dyn Sink) -> Result<(), Broken> {
        if self.open.as_ref().is_some_and(|o| o.text.len() + line.text.len() > MOST_ENTRY) {
            let (start, end) =
                self.open.as_ref().map(|o| (o.end.clone(), o.end.clone())).unwrap_or_default();
            self.close(sink)?;
            sink.remark(Remark { line: line.number, byte: line.start, what: Trouble::Parted });
            let map = SourceMap::new(line.units);
            let first = line.start;
            self.open = Some(Open { text: String::new(), map, first, start, end, speaker: None });
        }
        let content = line.content();
        let mut at = 0;
        while at < content.len() {
            let rest = &content[at..];
            let tag = rest.starts_with('<').then(|| rest.find('>')).flatten().map(|n| n + 1);
            if let Some(length) = tag {
                if let Some(open) = &mut self.open
                    && let Some(name) = speaker(&rest[..length])
                {
                    open.speaker.get_or_insert(name);
                }
                self.tell(line, Use::Syntax, at + length);
                at += length;
                continue;
            }
            let first = rest.chars().next().map_or(1, char::len_utf8);
            let length = rest[first..].find('<').map_or(rest.len(), |n| n + first);
            if let Some(open) = &mut self.open {
                let source = line.source(at);
                if open.text.is_empty() {
                    open.first = source;
                }
                open.map.push_line(open.text.len(), source, line.number);
                for damage in line.damage.iter().filter(|d| at <= d.0 && d.0 < at + length) {
                    let behind = damage.0 + '\u{fffd}'.len_utf8() - at;
                    open.map.push(open.text.len() + behind, damage.2, line.number);
                }
                open.text.push_str(&rest[..length]);
            }
            self.tell(line, Use::Note, at + length);
            at += length;
        }
        if let Some(open) = &mut self.open {
            open.map.push(open.text.len(), line.source(line.content), line.number);
            open.text.push(' ');
        }
        self.tell(line, Use::Blank, line.text.len());
        Ok(())
    }

    fn tell(&mut self, line: &Line, used: Use, upto: usize) {
        let from = self.uses.last().map_or(line.start, |u| u.2.max(line.start));
        let end = if upto >= line.text.len() { line.end } else { line.source(upto) };
        let end = end.max(from);
        let mut from = from;
        for &(_, start, stop) in &line.damage {
            let (start, stop) = (start.max(from), stop.min(end));
            if start < stop {
                self.uses.push((used, from, start));
                self.uses.push((Use::Undecodable, start, stop));
                from = stop;
            }
        }
        self.uses.push((used, from, end));
    }

    fn close(&mut self, sink: &mut dyn Sink) -> Result<(), Broken> {
        let mut going = true;
        if let Some(mut open) = self.open.take() {
            open.text.truncate(open.text.trim_end().len());
            let mut heading = self.spoken_heading(&mut open);
            if !open.text.is_empty() {
                if let Some(speaker) = &open.speaker {
                    let order = DateOrder::default();
                    heading.set(Field::Observer, speaker, self.plan.labels, order);
                }
                let span = [open.first, open.map.end(&open.text, open.text.len())];
                if !open.start.written.is_empty() {
                    let recording = format!("{} - {}", open.start.written, open.end.written);
                    heading.other.push(("recording".to_owned(), recording));
                }
                let entry = Entry {
                    text: open.text,
                    map: open.map,
                    span,
                    heading: Arc::new(heading),
                    file: None,
                };
                going = sink.entry(entry);
            }
        }
        for (used, start, end) in self.uses.drain(..).filter(|u| u.1 < u.2) {
            sink.bytes(used, start, end);
        }
        if going { Ok(()) } else { Err(Broken::Stopped) }
    }
}

impl Memo<'_, '_> {
    /// Heading data that are said at the start of an entry: they are taken off its text.
    fn spoken_heading(&mut self, open: &mut Open) -> Heading {
        let Plan { labels, order, .. } = *self.plan;
        let mut found = heading_of(&open.text, Reading { labels, order, marked: false });
        if !(found.dated || found.timed) {
            // Nobody says a comma: here a time needs none behind it, if it can be nothing else.
            let Some(said) = clock::time_at(&open.text, labels).filter(|s| s.sure) else {
                return self.now.clone();
            };
            let gap = open.text[said.used..].len() - open.text[said.used..].trim_start().len();
            let fields = vec![(Field::Time, said.time)];
            found = Found { fields, used: said.used + gap, ..Found::default() };
        }
        let (byte, _) = open.map.place(&open.text, found.used);
        let end = if found.used < open.text.len() { byte } else { u64::MAX };
        self.uses = std::mem::take(&mut self.uses)
            .into_iter()
            .flat_map(|(used, start, stop)| {
                let cut = if used == Use::Note { end.clamp(start, stop) } else { start };
                [(Use::Heading, start, cut), (used, cut, stop)]
            })
            .collect();
        open.map.cut(&open.text, found.used);
        open.text.drain(..found.used);
        open.first = open.map.place(&open.text, 0).0;
        let mut heading = self.now.clone();
        for (field, value) in &found.fields {
            heading.set(*field, value, labels, order);
        }
        if let Some(date) = found.date {
            heading.date = Some(self.now.with_year(date));
        }
        self.now.date = heading.date;
        self.now.date_as_written.clone_from(&heading.date_as_written);
        self.now.place.clone_from(&heading.place);
        heading
    }
}

/// `<v Warden>` or `<v.loud Warden>`: who speaks.
fn speaker(tag: &str) -> Option<String> {
    let inner = tag.strip_prefix("<v")?.strip_suffix('>')?;
    let name = if inner.starts_with('.') { inner.split_once(' ')?.1 } else { inner };
    let name = name.trim();
    (!name.is_empty()).then(|| name.to_owned())
}

/// Whether a line is one of a cue's times, even if they can't be read.
fn is_timed(line: &str) -> bool {
    line.contains("-->") || (line.contains("->") && line.starts_with(|c: char| c.is_ascii_digit()))
}

/// `00:00:02,100 --> 00:00:14,800`, with what may stand behind it.
fn times(line: &str) -> Option<(Time, Time)> {
    let (start, rest) = line.split_once("-->")?;
    let end = rest.trim_start().split(char::is_whitespace).next()?;
    Some((time(start.trim())?, time(end.trim())?))
}

fn time(text: &str) -> Option<Time> {
    let mut seconds = 0.0;
    let mut parts = 0;
    for part in text.split(':') {
        seconds =
            seconds * 60.0 + part.replace(',', ".").parse::<f64>().ok().filter(|n| *n >= 0.0)?;
        parts += 1;
    }
    (2..=3).contains(&parts).then(|| Time { seconds, written: text.replace(',', ".") })
}
