//! The rows of a table, field by field with their places.
//!
//! A quotation mark that is opened and never closed must not take the rest of the file with it: the line it
//! stands in is read once more with its marks as ordinary signs, and the lines behind it as rows of their own.

use super::lines::{Line, Lines};
use super::map::SourceMap;
use super::{Broken, MARK, Sink, Use};
use csv_core::{ReadFieldResult, Reader, ReaderBuilder};
use std::collections::VecDeque;
use std::io::Read;

/// The longest row, in bytes. A quotation mark that is never closed makes one row of the rest.
pub const MOST_ROW: u64 = 4 << 20;

/// A field of a row.
#[derive(Clone, Debug, Default)]
pub(super) struct Cell {
    /// What stands in it.
    pub text: String,
    /// Where.
    pub map: SourceMap,
    /// The end in the file, quotation marks and the sign behind it included.
    pub end: u64,
    /// How many quotation marks were met.
    quotes: usize,
    /// Whether it is not quoted.
    bare: bool,
}

/// A row.
#[derive(Clone, Debug, Default)]
pub(super) struct Row {
    /// Its fields.
    pub cells: Vec<Cell>,
    /// Its first byte.
    pub start: u64,
    /// Its first line.
    pub line: u64,
    /// Undecodable bytes.
    pub damage: Vec<(u64, u64)>,
    /// Whether a quotation mark in it is not closed, so that its marks were taken for ordinary signs.
    pub unclosed: bool,
}

/// Where one is in a field that may be quoted.
#[derive(Clone, Copy, Default, PartialEq)]
enum Quoted {
    /// Within the marks.
    #[default]
    Open,
    /// Behind a mark that closes it, or is the first of two; whether it stands where a field may begin.
    Closed(bool),
    /// Before a field.
    Outside,
    /// In a field that is not quoted.
    Bare,
}

/// Reads rows.
pub(super) struct Rows<'l, R> {
    lines: &'l mut Lines<R>,
    sign: u8,
    reader: Reader,
    /// For lines whose quotation marks are ordinary signs.
    plain: Reader,
    line: Line,
    /// The lines of the row before this one.
    held: Vec<Line>,
    /// Lines to be read again.
    again: VecDeque<Line>,
    /// Up to this byte each line is a row of its own.
    single: u64,
    buffer: Vec<u8>,
}

impl<'l, R: Read> Rows<'l, R> {
    /// The rows of a table with this sign between fields.
    pub fn new(lines: &'l mut Lines<R>, sign: u8) -> Self {
        let reader = |quoting: bool| {
            let mut builder = ReaderBuilder::new();
            builder.delimiter(sign).terminator(csv_core::Terminator::Any(b'\n')).quoting(quoting);
            builder.build()
        };
        Self {
            lines,
            sign,
            reader: reader(true),
            plain: reader(false),
            line: Line::default(),
            held: Vec::new(),
            again: VecDeque::new(),
            single: 0,
            buffer: vec![0; 1 << 16],
        }
    }

    /// The next line, from those to be read again or from the file.
    fn next_line(&mut self, sink: &mut dyn Sink) -> Result<bool, Broken> {
        if let Some(line) = self.again.pop_front() {
            self.line = line;
            return Ok(true);
        }
        let there = self.lines.next(&mut self.line)?;
        if there {
            self.line.tell_damage(sink);
        }
        Ok(there)
    }

    /// The next row that is not empty; empty lines before it are told as such.
    pub fn next(&mut self, sink: &mut dyn Sink) -> Result<Option<Row>, Broken> {
        let mut row = Row::default();
        let mut cell = Cell::default();
        let mut quoted = Quoted::default();
        loop {
            let open = !self.held.is_empty();
            if !self.next_line(sink)? {
                return Ok(open.then(|| self.recover(true)));
            }
            if !open {
                if self.line.content().chars().all(|c| c.is_whitespace() || c == MARK)
                    && !self.line.content().contains('\t')
                {
                    sink.bytes(Use::Blank, self.line.start, self.line.end);
                    continue;
                }
                row = started(&self.line);
                cell = empty(&self.line);
                quoted = Quoted::default();
            } else {
                let torn =
                    self.line.number > row.line && torn(&self.line.text, self.sign, &mut quoted);
                let long = self.line.end - row.start > MOST_ROW;
                if torn || long {
                    self.held.push(std::mem::take(&mut self.line));
                    return Ok(Some(self.recover(long)));
                }
                row.damage.extend(self.line.damage.iter().map(|d| (d.1, d.2)));
            }
            if feed(&mut self.reader, &self.line, &mut self.buffer, &mut row, &mut cell, false) {
                self.reader.reset();
                self.held.clear();
                return Ok(Some(row));
            }
            self.held.push(std::mem::take(&mut self.line));
            if self.held.last().is_some_and(|l| l.end <= self.single) {
                return Ok(Some(self.recover(true)));
            }
        }
    }

    /// The first line of the row that can't be read as one, its marks taken for ordinary signs; the lines
    /// behind it come again, each as a row of its own (`single`) where no mark in them can be of this row.
    fn recover(&mut self, single: bool) -> Row {
        self.reader.reset();
        let mut held = std::mem::take(&mut self.held).into_iter();
        // There is a first line, or no row would be open.
        let first = held.next().unwrap_or_default();
        let behind: Vec<Line> = held.collect();
        if single {
            self.single = self.single.max(behind.last().map_or(first.end, |l| l.end));
        }
        for line in behind.into_iter().rev() {
            self.again.push_front(line);
        }
        let mut row = started(&first);
        row.unclosed = true;
        let mut cell = empty(&first);
        feed(&mut self.plain, &first, &mut self.buffer, &mut row, &mut cell, true);
        self.plain.reset();
        row
    }
}

fn started(line: &Line) -> Row {
    let damage = line.damage.iter().map(|d| (d.1, d.2)).collect();
    Row { start: line.start, line: line.number, damage, ..Row::default() }
}

fn empty(line: &Line) -> Cell {
    Cell { map: SourceMap::new(line.units), ..Cell::default() }
}

/// Whether a quotation mark in a line that goes on a quoted field opens a field, so that the mark that seemed
/// to be open before was never closed: it stands where a field begins, and words follow it.
fn torn(line: &str, sign: u8, quoted: &mut Quoted) -> bool {
    let mut last = sign;
    for byte in line.bytes() {
        let begins = std::mem::replace(&mut last, byte) == sign;
        *quoted = match (*quoted, byte) {
            (Quoted::Open, b'"') => Quoted::Closed(begins),
            (Quoted::Open, _) => Quoted::Open,
            // Two of them stand for one.
            (Quoted::Closed(_), b'"') | (Quoted::Outside, b'"') => Quoted::Open,
            (_, b'\n' | b'\r') => return false,
            (_, b) if b == sign => Quoted::Outside,
            (Quoted::Closed(true), b) if b != b' ' => return true,
            _ => Quoted::Bare,
        };
    }
    false
}

/// Reads the line's fields into the row; whether the row ended with it. A `literal` line is a row of its own
/// in which quotation marks are ordinary signs.
fn feed(
    reader: &mut Reader,
    line: &Line,
    buffer: &mut Vec<u8>,
    row: &mut Row,
    cell: &mut Cell,
    literal: bool,
) -> bool {
    let bytes = line.text.as_bytes();
    // A byte order mark before a row, left by tables that were joined, is no part of its first cell.
    let marked = line.start == row.start && line.text.starts_with(MARK);
    let mut from = if marked { MARK.len_utf8() } else { 0 };
    if buffer.len() < bytes.len() + 16 {
        buffer.resize(bytes.len() + 16, 0);
    }
    loop {
        cell.bare |= literal;
        let left = &bytes[from..];
        if left.is_empty() && !literal {
            // Within quotation marks a row goes on in the next line.
            if line.text.ends_with('\n') || !line.ended || cell.quotes % 2 == 1 {
                return false;
            }
        }
        let (result, read, wrote) = reader.read_field(left, buffer);
        keep(cell, line, from, read, &buffer[..wrote]);
        from += read;
        if let ReadFieldResult::Field { record_end } = result {
            cell.end = if record_end { line.end } else { line.source(from) };
            row.cells.push(std::mem::replace(cell, empty(line)));
            if record_end {
                return true;
            }
        } else if left.is_empty() {
            return true;
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

/// Several cells as one text, the sign between them put back. Blank ones at the end are left out.
pub(super) fn joined(mut cells: Vec<Cell>, sign: u8, line: u64) -> Cell {
    let end = cells.last().map_or(0, |c| c.end);
    while cells.len() > 1 && cells.last().is_some_and(|c| c.text.trim().is_empty()) {
        cells.pop();
    }
    let sign = char::from(sign);
    let mut cells = cells.into_iter();
    let mut out = cells.next().unwrap_or_default();
    let mut stop = out.end;
    for cell in cells {
        let before = out.text.len();
        let line = out.map.segments.last().map_or(line, |s| s.line).max(cell.map.first_line());
        // The sign is the last before the end of its cell.
        let width = out.map.units.length(sign.encode_utf8(&mut [0; 4]));
        out.map.push(before, stop.saturating_sub(width), line);
        out.text.push(sign);
        for segment in &cell.map.segments {
            out.map.push(out.text.len() + segment.text, segment.source, segment.line);
        }
        out.text.push_str(&cell.text);
        stop = cell.end;
    }
    out.end = end;
    out
}
