//! Rows of cells, for whatever takes them: CSV here, columns of Parquet elsewhere.

use crate::output::json::number;

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
    /// A whole number, or nothing.
    fn int(&mut self, cell: Option<u64>);
    /// A number, or nothing.
    fn float(&mut self, cell: Option<f32>);
    /// The row is complete.
    fn end(&mut self);
}

/// Rows as CSV, with commas or tabs; cells are quoted where they must be (RFC 4180).
pub struct Csv {
    out: Vec<u8>,
    sign: u8,
    /// Whether the row has no cell yet.
    first: bool,
}

impl Csv {
    /// No rows yet.
    pub const fn new(sign: u8) -> Self {
        Self { out: Vec::new(), sign, first: true }
    }

    /// The head line.
    pub fn head(&mut self, columns: &[Column]) {
        for (name, _) in columns {
            self.text(Some(name));
        }
        self.end();
    }

    fn part(&mut self) {
        if !std::mem::replace(&mut self.first, false) {
            self.out.push(self.sign);
        }
    }

    /// The rows.
    pub fn into_bytes(self) -> Vec<u8> {
        self.out
    }
}

impl Cells for Csv {
    fn text(&mut self, cell: Option<&str>) {
        self.part();
        let Some(text) = cell.filter(|text| !text.is_empty()) else { return };
        let must = |b: u8| b == self.sign || matches!(b, b'"' | b'\n' | b'\r');
        // Without an early end the machine looks at many bytes at once.
        if !text.bytes().fold(false, |found, b| found | must(b)) {
            self.out.extend_from_slice(text.as_bytes());
            return;
        }
        self.out.push(b'"');
        for (n, piece) in text.split('"').enumerate() {
            self.out.extend_from_slice(if n > 0 { b"\"\"" } else { b"" });
            self.out.extend_from_slice(piece.as_bytes());
        }
        self.out.push(b'"');
    }

    fn int(&mut self, cell: Option<u64>) {
        self.part();
        if let Some(cell) = cell {
            number(cell, &mut self.out);
        }
    }

    fn float(&mut self, cell: Option<f32>) {
        self.part();
        if let Some(number) = cell {
            self.out.extend_from_slice(number.to_string().as_bytes());
        }
    }

    fn end(&mut self) {
        self.out.push(b'\n');
        self.first = true;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

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
