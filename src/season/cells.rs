//! Rows of cells, for whatever takes them: CSV here, columns of Parquet elsewhere.

use super::again::{Again, Says};
use crate::output::digits::Digits;
use crate::traits::Trait;
use std::io::Write;
use std::ops::Range;

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Text.
    Text,
    /// Whole numbers.
    Int,
    /// Numbers.
    Float,
}

/// A column: its name and what it holds.
pub type Column = (String, Kind);

/// Takes the cells of rows, in the order of the columns.
pub trait Cells {
    /// Text, or nothing.
    fn text(&mut self, cell: Option<&str>);
    /// Text in which no sign is one of a table's own, or nothing.
    fn word(&mut self, cell: Option<&str>) {
        self.text(cell);
    }
    /// A whole number, or nothing.
    fn int(&mut self, cell: Option<u64>);
    /// Three whole numbers.
    fn ints(&mut self, cells: [u64; 3]) {
        for cell in cells {
            self.int(Some(cell));
        }
    }
    /// A number, or nothing.
    fn float(&mut self, cell: Option<f32>);
    /// The row is complete.
    fn end(&mut self);
    /// Cells that are the same in every row of an entry, which `make` adds. Where a row is bytes they are
    /// made once, `kept` tells where, and copied from there on.
    fn same(&mut self, kept: &mut Kept, make: impl Fn(&mut Self))
    where
        Self: Sized,
    {
        let _ = kept;
        make(self);
    }
    /// Cells that say what a mark says, which `make` adds. Where a row is bytes those of marks said before are
    /// copied.
    fn said(&mut self, one: &Trait, make: impl Fn(&mut Self))
    where
        Self: Sized,
    {
        let _ = one;
        make(self);
    }
}

/// Whether no sign of a text could be one of a table's own.
pub fn is_plain(text: &str) -> bool {
    !text.bytes().any(|b| b < b' ' || matches!(b, b',' | b'"'))
}

/// Where cells stand that come again.
pub type Kept = Option<Range<usize>>;

/// Rows as CSV, with commas or tabs. The library says what is to be quoted and quotes it; to let it copy all the
/// other cells too, mostly short words, took a tenth of the time of a season.
pub struct Csv {
    rows: Vec<u8>,
    library: csv_core::Writer,
    /// Whether a cell stands before the next one in its row.
    within: bool,
    /// Cells of marks said before.
    again: Again,
}

impl Csv {
    /// No rows yet.
    pub fn new(sign: u8) -> Self {
        Self::after(sign, Again::default())
    }

    /// No rows yet, of marks of which some were said in earlier rows with the same sign.
    pub fn after(sign: u8, again: Again) -> Self {
        let library = csv_core::WriterBuilder::new().delimiter(sign).build();
        Self { rows: Vec::new(), library, within: false, again }
    }

    /// The head line.
    pub fn head(&mut self, columns: &[Column]) {
        for (name, _) in columns {
            self.text(Some(name));
        }
        self.end();
    }

    /// The sign before a cell that is not the first of its row.
    fn part(&mut self) {
        if std::mem::replace(&mut self.within, true) {
            self.rows.push(self.library.get_delimiter());
        }
    }

    /// A cell that needs no quoting.
    fn copied(&mut self, cell: &[u8]) {
        self.part();
        self.rows.extend_from_slice(cell);
    }

    /// A cell that is quoted if need be.
    fn judged(&mut self, cell: &[u8]) {
        if self.library.should_quote(cell) {
            self.part();
            self.quoted(cell);
        } else {
            self.copied(cell);
        }
    }

    fn quoted(&mut self, text: &[u8]) {
        self.rows.push(b'"');
        let start = self.rows.len();
        // Each byte could be a quotation mark, written as two.
        self.rows.resize(start + 2 * text.len(), 0);
        let (_, _, wrote) = csv_core::quote(text, &mut self.rows[start..], b'"', b'"', true);
        self.rows.truncate(start + wrote);
        self.rows.push(b'"');
    }

    /// Makes room for rows of so many bytes.
    pub fn reserve(&mut self, bytes: usize) {
        self.rows.reserve(bytes);
    }

    /// The rows.
    pub fn into_bytes(self) -> Vec<u8> {
        self.rows
    }

    /// The rows, and what is kept for later ones.
    pub fn into_parts(self) -> (Vec<u8>, Again) {
        (self.rows, self.again)
    }
}

impl Cells for Csv {
    fn same(&mut self, kept: &mut Kept, make: impl Fn(&mut Self)) {
        if let Some(range) = kept {
            self.rows.extend_from_within(range.clone());
            self.within = true;
            return;
        }
        let start = self.rows.len();
        make(self);
        *kept = Some(start..self.rows.len());
    }

    fn said(&mut self, one: &Trait, make: impl Fn(&mut Self)) {
        let says = Says::of(one);
        if let Some(bytes) = says.as_ref().and_then(|says| self.again.get(says)) {
            self.rows.extend_from_slice(bytes);
            self.within = true;
            return;
        }
        let start = self.rows.len();
        make(self);
        if let Some(says) = says {
            self.again.keep(says, &self.rows[start..]);
        }
    }

    #[inline]
    fn text(&mut self, cell: Option<&str>) {
        match cell {
            Some(text) => self.judged(text.as_bytes()),
            None => self.part(),
        }
    }

    #[inline]
    fn word(&mut self, cell: Option<&str>) {
        match cell {
            Some(text) => self.copied(text.as_bytes()),
            None => self.part(),
        }
    }

    fn int(&mut self, cell: Option<u64>) {
        match cell {
            Some(number) => self.copied(itoa::Buffer::new().format(number).as_bytes()),
            None => self.part(),
        }
    }

    fn ints(&mut self, [first, second, third]: [u64; 3]) {
        let sign = [self.library.get_delimiter()];
        self.part();
        let mut cells = Digits::new();
        cells.number(first);
        cells.signs(&sign);
        cells.number(second);
        cells.signs(&sign);
        cells.number(third);
        self.rows.extend_from_slice(cells.bytes());
    }

    fn float(&mut self, cell: Option<f32>) {
        match cell {
            Some(number) if number > 0.0 && number < 1e6 && number.fract() == 0.0 => {
                // Masses mostly are whole, and those are far below the limits of the type.
                self.copied(itoa::Buffer::new().format(number as u32).as_bytes());
            }
            Some(number) => {
                self.part();
                // Writing into memory does not fail.
                let _ = write!(self.rows, "{number}");
            }
            None => self.part(),
        }
    }

    fn end(&mut self) {
        self.rows.push(b'\n');
        self.within = false;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cells_that_come_again_are_copied_and_numbers_are_as_everywhere() {
        let mut kept = None;
        let mut csv = Csv::new(b',');
        for n in 0..2 {
            csv.int(Some(n));
            csv.same(&mut kept, |csv| {
                csv.text(Some("a,b"));
                csv.text(None);
            });
            csv.text(Some("end"));
            csv.end();
        }
        for number in [0.0, 23.0, 23.5, 0.1, 1e6, 1e10, -4.0, 999_999.0] {
            csv.float(Some(number));
        }
        let numbers = [0.0_f32, 23.0, 23.5, 0.1, 1e6, 1e10, -4.0, 999_999.0].map(|n| n.to_string());
        let wanted = format!("0,\"a,b\",,end\n1,\"a,b\",,end\n{}", numbers.join(","));
        assert_eq!(String::from_utf8(csv.into_bytes()).unwrap(), wanted);
    }

    #[test]
    fn the_bytes_are_those_of_the_csv_library() {
        for sign in [b',', b'\t'] {
            let cells = [
                "plain",
                "",
                "a,b",
                "a\tb",
                "say \"so\"",
                "\"",
                "two\nlines",
                "\r",
                "Möwe 🐦",
                "#x",
                " y ",
            ];
            let mut ours = Csv::new(sign);
            let mut theirs =
                csv::WriterBuilder::new().delimiter(sign).from_writer(Vec::<u8>::new());
            for _ in 0..2 {
                for cell in cells {
                    ours.text(Some(cell));
                    theirs.write_field(cell).unwrap();
                }
                for number in [0, 9, 10, 99, 100, u64::MAX] {
                    ours.int(Some(number));
                    theirs.write_field(number.to_string()).unwrap();
                }
                ours.ints([7, 0, 123_456]);
                for number in ["7", "0", "123456"] {
                    theirs.write_field(number).unwrap();
                }
                ours.int(None);
                theirs.write_field("").unwrap();
                ours.end();
                theirs.write_record(None::<&[u8]>).unwrap();
            }
            let theirs = String::from_utf8(theirs.into_inner().unwrap()).unwrap();
            assert_eq!(String::from_utf8(ours.into_bytes()).unwrap(), theirs);
        }
    }
}
