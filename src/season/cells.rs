//! Rows of cells, for whatever takes them: CSV here, columns of Parquet elsewhere.

use csv::{Writer, WriterBuilder};
use std::io;

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

/// Rows as CSV, with commas or tabs.
pub struct Csv {
    writer: Writer<Vec<u8>>,
}

impl Csv {
    /// No rows yet.
    pub fn new(sign: u8) -> Self {
        Self { writer: WriterBuilder::new().delimiter(sign).from_writer(Vec::new()) }
    }

    /// The head line.
    pub fn head(&mut self, columns: &[Column]) {
        for (name, _) in columns {
            self.text(Some(name));
        }
        self.end();
    }

    /// Writing to memory does not fail.
    fn field(&mut self, text: impl AsRef<[u8]>) {
        let _ = self.writer.write_field(text);
    }

    /// The rows.
    ///
    /// # Errors
    /// None in practice: the rows are in memory.
    pub fn into_bytes(self) -> io::Result<Vec<u8>> {
        self.writer.into_inner().map_err(|error| io::Error::other(error.to_string()))
    }
}

impl Cells for Csv {
    fn text(&mut self, cell: Option<&str>) {
        self.field(cell.unwrap_or(""));
    }

    fn int(&mut self, cell: Option<u64>) {
        match cell {
            Some(number) => self.field(itoa::Buffer::new().format(number)),
            None => self.field(""),
        }
    }

    fn float(&mut self, cell: Option<f32>) {
        match cell {
            Some(number) => self.field(number.to_string()),
            None => self.field(""),
        }
    }

    fn end(&mut self) {
        let _ = self.writer.write_record(None::<&[u8]>);
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
            assert_eq!(String::from_utf8(ours.into_bytes().unwrap()).unwrap(), theirs);
        }
    }
}
