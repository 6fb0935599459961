//! Tables: one entry a row, the columns found by their names or by what stands in them.

use super::columns::{self, Column, columns, heading_of_row};
use super::labels::Field;
use super::lines::{Line, Lines};
use super::map::SourceMap;
use super::{Broken, Entry, Plan, Remark, Sink, Trouble, Use};
use csv_core::{ReadFieldResult, Reader, ReaderBuilder};
use std::io::Read;
use std::sync::Arc;

/// The longest row, in bytes. A quotation mark that is never closed makes one row of the rest.
pub const MOST_ROW: u64 = 4 << 20;
/// How many rows are looked at to find the columns.
const SAMPLE: usize = 20;

/// A field of a row.
#[derive(Clone, Debug, Default)]
struct Cell {
    text: String,
    map: SourceMap,
    /// The end in the file, quotation marks and the sign behind it included.
    end: u64,
    /// How many quotation marks were met.
    quotes: usize,
    /// Whether it is not quoted.
    bare: bool,
}

#[derive(Default)]
struct Row {
    cells: Vec<Cell>,
    start: u64,
    line: u64,
    damage: Vec<(u64, u64)>,
}

struct Rows<'l, R> {
    lines: &'l mut Lines<R>,
    reader: Reader,
    line: Line,
    buffer: Vec<u8>,
}

/// Parts a table.
pub fn part<R: Read>(
    plan: &Plan<'_>,
    sign: u8,
    lines: &mut Lines<R>,
    sink: &mut dyn Sink,
) -> Result<(), Broken> {
    lines.allow(1 << 20);
    let reader =
        ReaderBuilder::new().delimiter(sign).terminator(csv_core::Terminator::Any(b'\n')).build();
    let mut rows = Rows { lines, reader, line: Line::default(), buffer: vec![0; 1 << 16] };
    let mut at = rows.lines.mark();
    let Some(head) = rows.next(sink, &mut at)? else {
        return Ok(());
    };
    let names: Vec<String> = head.cells.iter().map(|c| c.text.trim().to_owned()).collect();
    for one in &head.cells {
        tell(sink, &mut at, Use::Heading, one.end, &head.damage);
    }
    let mut sample = Vec::new();
    while sample.len() < SAMPLE {
        // The sample's bytes are told when its rows are.
        let mut looked = rows.lines.place();
        let mut hold = Hold::default();
        match rows.next(&mut hold, &mut looked)? {
            Some(row) => sample.push((row, hold)),
            None => {
                sample.push((Row::default(), hold));
                break;
            }
        }
    }
    let texts: Vec<Vec<String>> =
        sample.iter().map(|(row, _)| row.cells.iter().map(|c| c.text.clone()).collect()).collect();
    let found = columns(plan, &names, &texts);
    if !found.contains(&Column::Is(Field::Note)) {
        return Err(no_note(&names));
    }
    columns::tell(plan, &found, &names, sink);
    for (row, hold) in sample {
        hold.release(sink, &mut at);
        if !row.cells.is_empty() {
            entry(plan, &found, &names, row, sink, &mut at)?;
        }
    }
    while let Some(row) = rows.next(sink, &mut at)? {
        entry(plan, &found, &names, row, sink, &mut at)?;
    }
    Ok(())
}

fn no_note(names: &[String]) -> Broken {
    Broken::At(
        1,
        0,
        format!("no column holds the notes; the columns are: {}", names.join(", ")),
        "say which it is, for example --column note=NAME, and see that the first line names the columns"
            .to_owned(),
    )
}

/// Keeps what is told while the columns are not yet known.
#[derive(Default)]
struct Hold {
    blanks: Vec<(u64, u64)>,
    remarks: Vec<Remark>,
}

impl Sink for Hold {
    fn bytes(&mut self, _: Use, start: u64, end: u64) {
        self.blanks.push((start, end));
    }
    fn entry(&mut self, _: Entry) -> bool {
        true
    }
    fn remark(&mut self, remark: Remark) {
        self.remarks.push(remark);
    }
}

impl Hold {
    fn release(self, sink: &mut dyn Sink, at: &mut u64) {
        for (start, end) in self.blanks {
            sink.bytes(Use::Blank, start, end);
            *at = end;
        }
        for remark in self.remarks {
            sink.remark(remark);
        }
    }
}

/// A byte order mark where it is none: inside a file.
const MARK: char = '\u{feff}';

impl<R: Read> Rows<'_, R> {
    /// The next row that is not empty; empty lines before it are told as such.
    fn next(&mut self, sink: &mut dyn Sink, at: &mut u64) -> Result<Option<Row>, Broken> {
        let mut row = Row::default();
        let mut cell = Cell::default();
        let mut open = false;
        loop {
            if !self.lines.next(&mut self.line)? {
                if open {
                    return Err(unclosed(&row));
                }
                return Ok(None);
            }
            let line = &self.line;
            line.tell_damage(sink);
            row.damage.extend(line.damage.iter().map(|d| (d.1, d.2)));
            if !open {
                let empty = |c: char| c.is_whitespace() || c == MARK;
                if line.content().chars().all(empty) && !line.content().contains('\t') {
                    sink.bytes(Use::Blank, *at, line.end);
                    *at = line.end;
                    continue;
                }
                row.start = line.start;
                row.line = line.number;
                cell = Cell { map: SourceMap::new(line.units), ..Cell::default() };
                open = true;
            } else if line.end - row.start > MOST_ROW {
                return Err(unclosed(&row));
            }
            if self.feed(&mut row, &mut cell)? {
                self.reader.reset();
                return Ok(Some(row));
            }
        }
    }

    /// Reads the line's fields into the row; whether the row ended with it.
    fn feed(&mut self, row: &mut Row, cell: &mut Cell) -> Result<bool, Broken> {
        let line = &self.line;
        let bytes = line.text.as_bytes();
        // A byte order mark before a row, left by tables that were joined, is no part of its first cell.
        let marked = line.start == row.start && line.text.starts_with(MARK);
        let mut from = if marked { MARK.len_utf8() } else { 0 };
        if self.buffer.len() < bytes.len() + 16 {
            self.buffer.resize(bytes.len() + 16, 0);
        }
        loop {
            let left = &bytes[from..];
            if left.is_empty() {
                // Within quotation marks a row goes on in the next line.
                if line.text.ends_with('\n') || !line.ended {
                    return Ok(false);
                }
                if cell.quotes % 2 == 1 {
                    return Err(unclosed(row));
                }
            }
            let (result, read, wrote) = self.reader.read_field(left, &mut self.buffer);
            keep(cell, line, from, read, &self.buffer[..wrote]);
            from += read;
            if let ReadFieldResult::Field { record_end } = result {
                cell.end = if record_end { line.end } else { line.source(from) };
                let next = Cell { map: SourceMap::new(line.units), ..Cell::default() };
                row.cells.push(std::mem::replace(cell, next));
                if record_end {
                    return Ok(true);
                }
            } else if left.is_empty() {
                return Ok(true);
            }
        }
    }
}

/// Adds what was read to the cell, with the places of its pieces.
fn keep(cell: &mut Cell, line: &Line, from: usize, read: usize, wrote: &[u8]) {
    let raw = &line.text.as_bytes()[from..from + read];
    // What was read lies between signs of ASCII, so it is whole characters.
    let Ok(text) = std::str::from_utf8(wrote) else {
        return;
    };
    let quotes = memchr::memchr_iter(b'"', raw).count();
    if cell.text.is_empty() && cell.quotes == 0 && !raw.trim_ascii_start().starts_with(b"\"") {
        // Within a field that is not quoted, marks are marks of inches.
        cell.bare |= !raw.is_empty();
    }
    if !cell.bare {
        cell.quotes += quotes;
    }
    if quotes == 0 && line.damage.is_empty() {
        if !text.is_empty() {
            cell.map.push(cell.text.len(), line.source(from), line.number);
        }
        cell.text.push_str(text);
        return;
    }
    let mut at = 0;
    let mut apart = true;
    for (offset, sign) in text.char_indices() {
        let before = at;
        let first = text.as_bytes()[offset];
        while at < raw.len() && raw[at] != first {
            at += 1;
        }
        // Of two quotation marks the second is kept; the first of a field opens it.
        if sign == '"' && !cell.bare && raw.get(at + 1) == Some(&b'"') {
            at += 1;
        }
        if apart || at != before {
            cell.map.push(cell.text.len() + offset, line.source(from + at), line.number);
        }
        apart = sign == '\u{fffd}';
        at += sign.len_utf8();
    }
    cell.text.push_str(text);
}

fn unclosed(row: &Row) -> Broken {
    Broken::At(
        row.line,
        row.start,
        "a quotation mark is opened and not closed".to_owned(),
        "close it, or write two quotation marks for one within a field".to_owned(),
    )
}

/// Tells the use of the bytes up to `end`, undecodable ones apart.
pub(super) fn tell(sink: &mut dyn Sink, at: &mut u64, used: Use, end: u64, damage: &[(u64, u64)]) {
    for &(start, stop) in damage {
        let (start, stop) = (start.max(*at), stop.min(end));
        if start < stop {
            if *at < start {
                sink.bytes(used, *at, start);
            }
            sink.bytes(Use::Undecodable, start, stop);
            *at = stop;
        }
    }
    if *at < end {
        sink.bytes(used, *at, end);
        *at = end;
    }
}

fn entry(
    plan: &Plan<'_>,
    columns: &[Column],
    names: &[String],
    mut row: Row,
    sink: &mut dyn Sink,
    at: &mut u64,
) -> Result<(), Broken> {
    if row.cells.len() != names.len() {
        let what = Trouble::Fields(row.cells.len(), names.len());
        sink.remark(Remark { line: row.line, byte: row.start, what });
    }
    let heading = heading_of_row(plan, columns, names, row.cells.iter().map(|c| c.text.as_str()));
    let note = columns.iter().position(|c| *c == Column::Is(Field::Note));
    let note = note.filter(|n| row.cells.get(*n).is_some_and(|c| !c.text.trim().is_empty()));
    if note.is_none() {
        sink.remark(Remark { line: row.line, byte: row.start, what: Trouble::NoNote });
    }
    let mut going = true;
    let mut span = None;
    if let Some(cell) = note.map(|n| std::mem::take(&mut row.cells[n])) {
        let mut text = cell.text;
        text.truncate(text.trim_end().len());
        let end = cell.end;
        let bytes = [cell.map.place(&text, 0).0.min(end), cell.map.end(&text, text.len()).min(end)];
        span = Some((bytes, cell.end));
        let entry =
            Entry { text, map: cell.map, span: bytes, heading: Arc::new(heading), file: None };
        going = sink.entry(entry);
    }
    for (n, cell) in row.cells.iter().enumerate() {
        match span.filter(|_| Some(n) == note) {
            Some(([start, stop], end)) => {
                tell(sink, at, Use::Syntax, start, &row.damage);
                tell(sink, at, Use::Note, stop, &row.damage);
                tell(sink, at, Use::Syntax, end, &row.damage);
            }
            None => tell(sink, at, Use::Heading, cell.end, &row.damage),
        }
    }
    if going { Ok(()) } else { Err(Broken::Stopped) }
}
