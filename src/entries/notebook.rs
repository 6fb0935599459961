//! Plain text and Markdown: entries are parted at headings, dates, empty lines and bullets.
//!
//! Heading data reach as far as the eye would take them: a date until the next date, what stands
//! under a title until the next title of its rank, what stands within an entry for that entry alone.

use super::context::{Context, apply, field_or_other, of_year, year_of};
use super::grid::{self, Head};
use super::heading::{Found, Reading, heading_of};
use super::labels::Field;
use super::lines::{Line, Lines};
use super::map::SourceMap;
use super::markup::{Clean, clean, lead};
use super::uses::Uses;
use super::{Broken, Entry, Format, Heading, MOST_ENTRY, Plan, Remark, Sink, Trouble, Use};
use std::io::Read;
use std::ops::Range;
use std::sync::Arc;

/// An entry being gathered.
#[derive(Default)]
struct Open {
    text: String,
    map: SourceMap,
    first: u64,
    /// Heading data of this entry alone.
    own: Option<Heading>,
    lines: usize,
    bullet: bool,
}

struct Notebook<'a, 'p> {
    plan: &'a Plan<'p>,
    markdown: bool,
    context: Context,
    open: Open,
    /// The uses of bytes not yet told, in order, side by side.
    uses: Uses,
    /// Whether the line before was heading data to its end.
    after_heading: bool,
    /// Within the block of fields at the top of a Markdown file.
    front: bool,
    /// The head of the table one is in.
    head: Option<Head>,
}

/// Parts a notebook.
pub fn part<R: Read>(
    plan: &Plan<'_>,
    lines: &mut Lines<R>,
    sink: &mut dyn Sink,
) -> Result<(), Broken> {
    let mut base = plan.heading.clone();
    if base.date.is_none_or(|d| d.year.is_none())
        && let Some(year) = year_in_sight(&lines.peek(), plan)
    {
        let date = base.date.get_or_insert(of_year(year));
        date.year = Some(year);
    }
    let mut book = Notebook {
        plan,
        markdown: plan.format == Format::Markdown,
        context: Context::new(base),
        open: Open { map: SourceMap::new(lines.units()), ..Open::default() },
        uses: Uses::default(),
        after_heading: false,
        front: false,
        head: None,
    };
    let mut line = Line::default();
    while lines.next(&mut line)? {
        line.tell_damage(sink);
        book.line(&line, sink)?;
    }
    book.close(sink)
}

/// The first year written in a date at the start of a line.
fn year_in_sight(sample: &str, plan: &Plan<'_>) -> Option<i16> {
    sample.lines().take(400).find_map(|line| {
        let text = line.trim_start_matches(['#', '*', '-', ' ', '>']);
        let reading = Reading { labels: plan.labels, order: plan.order, marked: false };
        heading_of(text, reading).date.and_then(|d| d.year)
    })
}

impl Notebook<'_, '_> {
    fn reading(&self, marked: bool) -> Reading<'_> {
        Reading { labels: self.plan.labels, order: self.plan.order, marked }
    }

    fn line(&mut self, line: &Line, sink: &mut dyn Sink) -> Result<(), Broken> {
        let content = line.content();
        if line.continues {
            return self.note(line, &Clean::from(content, 0), 0, sink);
        }
        if content.trim().is_empty() {
            self.close(sink)?;
            self.head = None;
            self.after_heading = false;
            self.uses.upto(line, Use::Blank, line.text.len());
            return Ok(());
        }
        if self.markdown && self.markdown_line(line, sink)? {
            return Ok(());
        }
        if is_rule(content) {
            return self.rule(line, sink);
        }
        let lead = lead(content, self.markdown);
        let cleaned = if self.markdown { clean(content, lead) } else { Clean::from(content, lead) };
        let bullet = lead > 0 && content[..lead].contains(|c: char| !c.is_whitespace() && c != '>');
        if bullet && self.open.lines > 0 && !self.goes_on(&cleaned.text) {
            self.close(sink)?;
        }
        let marked =
            self.after_heading && self.open.text.is_empty() && self.is_bare_name(&cleaned.text);
        let found = heading_of(&cleaned.text, self.reading(marked));
        let whole = found.used == cleaned.text.len() && found.used > 0;
        let starts = found.dated || found.same || found.timed;
        if found.used == 0 {
            self.uses.upto(line, Use::Syntax, lead);
            self.open.bullet |= bullet;
            return self.note(line, &cleaned, 0, sink);
        }
        if starts {
            self.close(sink)?;
        }
        let to = cleaned.source(found.used).min(line.content);
        let to = if whole { line.content } else { to };
        self.uses.line(line, &[(Use::Syntax, lead), (Use::Heading, to)]);
        self.take(&found, whole);
        if whole {
            self.uses.upto(line, Use::Blank, line.text.len());
            if !self.open.text.is_empty() {
                // A field within a note: the lines stay apart.
                self.open.text.push('\n');
            }
            self.after_heading = true;
            return Ok(());
        }
        self.open.bullet |= bullet;
        self.note(line, &cleaned, found.used, sink)
    }

    /// Whether a bullet tells of the same bird as the one before: "bill: short".
    fn goes_on(&self, text: &str) -> bool {
        let Some(end) = text.find([':', '–', '—']) else {
            return false;
        };
        let name = text[..end].trim();
        self.open.bullet
            && name.split_whitespace().count() <= 2
            && self.plan.labels.speaks_of_marks(&name.to_lowercase())
    }

    fn is_bare_name(&self, text: &str) -> bool {
        let text = text.trim();
        text.split_whitespace().count() <= 3
            && self.plan.labels.is_named(text)
            && !self.plan.labels.speaks_of_marks(text)
            && !text.ends_with(['.', '!', '?', ':'])
    }

    /// Titles, rules and the block of fields of Markdown. Whether the line was one of them.
    fn markdown_line(&mut self, line: &Line, sink: &mut dyn Sink) -> Result<bool, Broken> {
        let content = line.content();
        if content.trim_end() == "---" && (line.number == 1 || self.front) {
            self.front = line.number == 1;
            self.uses.upto(line, Use::Syntax, line.text.len());
            return Ok(true);
        }
        if self.front {
            if let Some((name, value)) = content.split_once(':') {
                let mut heading = self.context.base.clone();
                self.field(&mut heading, name, value.trim().trim_matches(['"', '\'']));
                self.context.now = Arc::new(heading.clone());
                self.context.base = heading;
            }
            self.uses.upto(line, Use::Heading, line.text.len());
            return Ok(true);
        }
        if let Some(cells) = grid::cells(content) {
            return self.row(line, &cells, sink);
        }
        self.head = None;
        let rank = content.bytes().take_while(|b| *b == b'#').count();
        let lead = content.len() - content[rank..].trim_start().len();
        if !(1..=6).contains(&rank) || lead == rank {
            return Ok(false);
        }
        self.close(sink)?;
        let cleaned = clean(content, lead);
        self.title(line, rank, lead, &cleaned, sink)?;
        Ok(true)
    }

    /// A row of a table: an entry of its own. Whether all of the line was used; where no column is known
    /// to hold the notes, the row is read as a line.
    fn row(
        &mut self,
        line: &Line,
        cells: &[Range<usize>],
        sink: &mut dyn Sink,
    ) -> Result<bool, Broken> {
        self.close(sink)?;
        let content = line.content();
        if grid::is_rule(content, cells) {
            self.uses.upto(line, Use::Syntax, line.text.len());
            return Ok(true);
        }
        let Some(head) = self.head.clone() else {
            self.head = Head::of(content, cells, self.plan.labels);
            if self.head.is_some() {
                self.uses.upto(line, Use::Heading, line.text.len());
            }
            return Ok(self.head.is_some());
        };
        let mut own = (*self.context.now).clone();
        let mut note = None;
        for (n, cell) in cells.iter().enumerate().filter(|(_, c)| !c.is_empty()) {
            if Some(n) == head.note() {
                note = Some(cell.clone());
            } else {
                let name = head.names.get(n).map_or("", String::as_str);
                self.field(&mut own, name, &content[cell.clone()]);
            }
        }
        let Some(note) = note else {
            sink.remark(Remark { line: line.number, byte: line.start, what: Trouble::NoNote });
            self.uses.upto(line, Use::Heading, line.text.len());
            return Ok(true);
        };
        self.open.own = Some(own);
        self.uses.upto(line, Use::Heading, note.start);
        self.note(line, &clean(&content[..note.end], note.start), 0, sink)?;
        self.close(sink)?;
        Ok(true)
    }

    fn field(&self, heading: &mut Heading, name: &str, value: &str) {
        field_or_other(heading, (name, value), self.plan.labels, self.plan.order);
    }

    /// A title: its heading data hold for what is below it; what is none may be a note.
    fn title(
        &mut self,
        line: &Line,
        rank: usize,
        lead: usize,
        cleaned: &Clean<'_>,
        sink: &mut dyn Sink,
    ) -> Result<(), Broken> {
        let mut heading = self.context.leave(rank);
        let last = self.context.now.date;
        let text = cleaned.text.trim().trim_end_matches('#').trim();
        let found = heading_of(&cleaned.text, self.reading(rank > 1));
        let whole = found.used == cleaned.text.len();
        heading.title = Some(text.to_owned());
        if let (Some(last), Some(_)) = (last, found.date) {
            heading.date = Some(last);
        }
        apply(&mut heading, &found, self.plan);
        if found.used == 0
            && let Some(year) = year_of(text)
        {
            heading.date = Some(of_year(year));
        }
        self.context.enter(rank, heading, found.dated);
        self.after_heading = true;
        let rest = &cleaned.text[found.used..];
        if rank > 1 && !whole && self.plan.labels.speaks_of_marks(rest) {
            let to = cleaned.source(found.used);
            let uses =
                [(Use::Syntax, lead), (Use::Heading, if found.used > 0 { to } else { lead })];
            self.uses.line(line, &uses);
            return self.note(line, cleaned, found.used, sink);
        }
        let uses =
            [(Use::Syntax, lead), (Use::Heading, line.content), (Use::Blank, line.text.len())];
        self.uses.line(line, &uses);
        Ok(())
    }

    /// A line of dashes: under a single line it makes a title of it, elsewhere it parts.
    fn rule(&mut self, line: &Line, sink: &mut dyn Sink) -> Result<(), Broken> {
        let rank = if line.content().starts_with('=') { 1 } else { 2 };
        let one = self.open.lines == 1 && self.open.own.is_none() && !self.open.bullet;
        if one && line.content().starts_with(['=', '-']) {
            let text = self.open.text.trim().to_owned();
            let found = heading_of(&text, self.reading(true));
            if !self.plan.labels.speaks_of_marks(&text) {
                self.uses.notes_are_headings();
                self.forget();
                let mut heading = self.context.leave(rank);
                heading.title = Some(text.clone());
                if found.dated || rank > 1 {
                    apply(&mut heading, &found, self.plan);
                }
                self.context.enter(rank, heading, found.dated);
            }
        }
        self.close(sink)?;
        self.uses.upto(line, Use::Syntax, line.text.len());
        Ok(())
    }

    /// Takes heading data of a line: for all that follows, or for this entry.
    fn take(&mut self, found: &Found, whole: bool) {
        if found.dated {
            self.context.day(found, self.plan);
            return;
        }
        let here = self.open.text.is_empty() && self.open.own.is_none();
        if whole && here && !time_alone(found) {
            self.context.more(found, self.plan);
            return;
        }
        let mut own = self.open.own.take().unwrap_or_else(|| (*self.context.now).clone());
        apply(&mut own, found, self.plan);
        self.open.own = Some(own);
    }

    /// Adds the line from byte `from` of its cleaned text to the entry.
    fn note(
        &mut self,
        line: &Line,
        cleaned: &Clean<'_>,
        from: usize,
        sink: &mut dyn Sink,
    ) -> Result<(), Broken> {
        self.after_heading = false;
        if self.open.text.len() + line.text.len() > MOST_ENTRY {
            let own = self.open.own.clone();
            self.close(sink)?;
            self.open.own = own;
            sink.remark(Remark { line: line.number, byte: line.start, what: Trouble::Parted });
        }
        if self.open.text.is_empty() {
            // Most entries are one line.
            self.open.text.reserve(line.text.len());
        }
        for (start, end) in cleaned.kept(from) {
            self.uses.upto(line, Use::Syntax, start);
            self.uses.upto(line, Use::Note, end);
            let byte = line.source(start);
            if self.open.text.is_empty() {
                self.open.first = byte;
            }
            self.open.map.push(self.open.text.len(), byte, line.number);
            let piece = &line.text[start..end];
            // Behind a damaged place text and file no longer go side by side.
            for (at, _, source) in line.damage.iter().filter(|d| start <= d.0 && d.0 < end) {
                let behind = at + '\u{fffd}'.len_utf8();
                self.open.map.push(self.open.text.len() + behind - start, *source, line.number);
            }
            self.open.text.push_str(piece);
        }
        self.uses.upto(line, Use::Syntax, line.content);
        self.uses.upto(line, Use::Note, line.text.len());
        // The line's end belongs to the entry, so that text and file go on side by side.
        self.open.map.push(self.open.text.len(), line.source(line.content), line.number);
        self.open.text.push_str(&line.text[line.content..]);
        self.open.lines += 1;
        Ok(())
    }

    fn forget(&mut self) {
        self.open.text.clear();
        self.open.map.segments.clear();
        self.open.own = None;
        self.open.lines = 0;
        self.open.bullet = false;
    }

    /// Ends the entry, if there is one, and tells the uses of bytes up to here.
    fn close(&mut self, sink: &mut dyn Sink) -> Result<(), Broken> {
        let kept = self.open.text.trim_end().len();
        let mut going = true;
        if kept > 0 {
            let mut text = std::mem::take(&mut self.open.text);
            text.truncate(kept);
            let units = self.open.map.units;
            let map = std::mem::replace(&mut self.open.map, SourceMap::new(units));
            let heading = match self.open.own.take() {
                Some(own) => Arc::new(own),
                None => Arc::clone(&self.context.now),
            };
            let span = [self.open.first, map.end(&text, kept)];
            going = sink.entry(Entry { text, map, span, heading, file: None });
        }
        self.forget();
        self.uses.tell(sink);
        if going { Ok(()) } else { Err(Broken::Stopped) }
    }
}

/// A time that stands alone on its line speaks of the entry that follows.
fn time_alone(found: &Found) -> bool {
    found.fields.len() == 1 && found.fields[0].0 == Field::Time && !found.same
}

/// Whether a line is nothing but dashes, stars or the like.
fn is_rule(content: &str) -> bool {
    let text = content.trim();
    text.len() >= 3 && text.chars().all(|c| matches!(c, '-' | '=' | '*' | '_' | '~' | '—' | ' '))
}
