//! Tables: one entry a row, the columns found by their names or by what stands in them.

use super::columns::{self, Column, columns, heading_of_row};
use super::labels::Field;
use super::lines::Lines;
use super::records::{Row, Rows, joined};
use super::{Broken, Entry, Plan, Remark, Sink, Trouble, Use};
use std::io::Read;
use std::sync::Arc;

/// How many rows are looked at to find the columns.
const SAMPLE: usize = 20;

/// Parts a table.
pub fn part<R: Read>(
    plan: &Plan<'_>,
    sign: u8,
    lines: &mut Lines<R>,
    sink: &mut dyn Sink,
) -> Result<(), Broken> {
    lines.allow(1 << 20);
    let mut rows = Rows::new(lines, sign);
    let Some(head) = rows.next(sink)? else {
        return Ok(());
    };
    let names: Vec<String> = head.cells.iter().map(|c| c.text.trim().to_owned()).collect();
    let mut at = head.start;
    for one in &head.cells {
        tell(sink, &mut at, Use::Heading, one.end, &head.damage);
    }
    let mut sample = Vec::new();
    while sample.len() < SAMPLE {
        // The sample's bytes are told when its rows are.
        let mut hold = Hold::default();
        match rows.next(&mut hold)? {
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
    let table = Table { plan, sign, columns: &found, names: &names };
    for (row, hold) in sample {
        hold.release(sink);
        if !row.cells.is_empty() {
            table.entry(row, sink)?;
        }
    }
    while let Some(row) = rows.next(sink)? {
        table.entry(row, sink)?;
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
    fn release(self, sink: &mut dyn Sink) {
        for (start, end) in self.blanks {
            sink.bytes(Use::Blank, start, end);
        }
        for remark in self.remarks {
            sink.remark(remark);
        }
    }
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

/// A table of which the columns are known.
struct Table<'a, 'p> {
    plan: &'a Plan<'p>,
    sign: u8,
    columns: &'a [Column],
    names: &'a [String],
}

impl Table<'_, '_> {
    /// The cell that holds the note, if there is anything in it. A row with too many fields has signs in a
    /// note that is not quoted; one that can't be read by the columns is a note as a whole, which is told too.
    fn note(&self, row: &mut Row) -> (Option<usize>, bool) {
        let wanted = self.columns.iter().position(|c| *c == Column::Is(Field::Note));
        let (found, expected) = (row.cells.len(), self.names.len());
        if let Some(at) = wanted.filter(|at| at + 1 == expected && found > expected) {
            let rest = row.cells.split_off(at);
            row.cells.push(joined(rest, self.sign, row.line));
        }
        let filled = |n: &usize| row.cells.get(*n).is_some_and(|c| !c.text.trim().is_empty());
        let note = wanted.filter(filled);
        if note.is_some() || !(row.unclosed || found != expected) {
            return (note, false);
        }
        let whole = joined(row.cells.clone(), self.sign, row.line);
        let speaks = self.plan.labels.speaks_of_marks(&whole.text);
        if whole.text.trim().is_empty() || !(row.unclosed || speaks) {
            return (None, false);
        }
        row.cells = vec![whole];
        (Some(0), true)
    }

    fn remark(&self, row: &Row, sink: &mut dyn Sink) {
        let what = if row.unclosed {
            Trouble::Unclosed
        } else if row.cells.len() != self.names.len() {
            Trouble::Fields(row.cells.len(), self.names.len())
        } else {
            return;
        };
        sink.remark(Remark { line: row.line, byte: row.start, what });
    }

    fn entry(&self, mut row: Row, sink: &mut dyn Sink) -> Result<(), Broken> {
        self.remark(&row, sink);
        let (note, whole) = self.note(&mut row);
        let fields = if whole { &[] } else { row.cells.as_slice() };
        let texts = fields.iter().map(|c| c.text.as_str());
        let heading = heading_of_row(self.plan, self.columns, self.names, texts);
        if note.is_none() {
            sink.remark(Remark { line: row.line, byte: row.start, what: Trouble::NoNote });
        }
        let mut going = true;
        let mut span = None;
        if let Some(cell) = note.map(|n| std::mem::take(&mut row.cells[n])) {
            let mut text = cell.text;
            text.truncate(text.trim_end().len());
            let (end, map) = (cell.end, cell.map);
            let bytes = [map.place(&text, 0).0.min(end), map.end(&text, text.len()).min(end)];
            span = Some((bytes, end));
            let entry = Entry { text, map, span: bytes, heading: Arc::new(heading), file: None };
            going = sink.entry(entry);
        }
        let mut at = row.start;
        for (n, cell) in row.cells.iter().enumerate() {
            match span.filter(|_| Some(n) == note) {
                Some(([start, stop], end)) => {
                    tell(sink, &mut at, Use::Syntax, start, &row.damage);
                    tell(sink, &mut at, Use::Note, stop, &row.damage);
                    tell(sink, &mut at, Use::Syntax, end, &row.damage);
                }
                None => tell(sink, &mut at, Use::Heading, cell.end, &row.damage),
            }
        }
        if going { Ok(()) } else { Err(Broken::Stopped) }
    }
}
