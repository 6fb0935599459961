//! What the bytes of lines were used for, held back until their entry has been told.

use super::lines::Line;
use super::{Sink, Use};

/// Stretches of a file with their uses, in order, side by side.
#[derive(Default)]
pub(super) struct Uses {
    stretches: Vec<(Use, u64, u64)>,
}

impl Uses {
    /// Notes the use of a line up to a byte of its text, from where the last stretch ended.
    pub(super) fn upto(&mut self, line: &Line, used: Use, at: usize) {
        let from = self.stretches.last().map_or(line.start, |u| u.2.max(line.start));
        let end = if at >= line.text.len() { line.end } else { line.source(at) };
        self.add(line, used, from, end);
    }

    /// The same for several uses of a line.
    pub(super) fn line(&mut self, line: &Line, upto: &[(Use, usize)]) {
        for &(used, at) in upto {
            self.upto(line, used, at);
        }
    }

    /// What was taken for a note is a heading after all.
    pub(super) fn notes_are_headings(&mut self) {
        for one in self.stretches.iter_mut().filter(|one| one.0 == Use::Note) {
            one.0 = Use::Heading;
        }
    }

    /// Tells them all.
    pub(super) fn tell(&mut self, sink: &mut dyn Sink) {
        for (used, start, end) in self.stretches.drain(..) {
            sink.bytes(used, start, end);
        }
    }

    fn add(&mut self, line: &Line, used: Use, from: u64, end: u64) {
        let mut from = from;
        for &(_, start, stop) in &line.damage {
            let (start, stop) = (start.max(from), stop.min(end));
            if start < stop {
                self.push(used, from, start);
                self.push(Use::Undecodable, start, stop);
                from = stop;
            }
        }
        self.push(used, from, end);
    }

    fn push(&mut self, used: Use, from: u64, end: u64) {
        if from >= end {
            return;
        }
        match self.stretches.last_mut() {
            Some(last) if last.0 == used && last.2 == from => last.2 = end,
            _ => self.stretches.push((used, from, end)),
        }
    }
}
