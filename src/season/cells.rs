//! Rows of cells, for whatever takes them: CSV here, columns of Parquet elsewhere.

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

/// Rows as CSV, with commas or tabs. The library says what is to be quoted and quotes it; to let it copy all the
/// other cells too, mostly short words, took a tenth of the time of a season.
pub struct Csv {
    rows: Vec<u8>,
    library: csv_core::Writer,
    /// Whether a cell stands before the next one in its row.
    within: bool,
}

impl Csv {
    /// No rows yet.
    pub fn new(sign: u8) -> Self {
        let library = csv_core::WriterBuilder::new().delimiter(sign).build();
        Self { rows: Vec::new(), library, within: false }
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

    fn quoted(&mut self, text: &[u8]) {
        self.rows.push(b'"');
        let start = self.rows.len();
        // Each byte could be a quotation mark, written as two.
        self.rows.resize(start + 2 * text.len(), 0);
        let (_, _, wrote) = csv_core::quote(text, &mut self.rows[start..], b'"', b'"', true);
        self.rows.truncate(start + wrote);
        self.rows.push(b'"');
    }

    /// The rows.
    pub fn into_bytes(self) -> Vec<u8> {
        self.rows
    }
}

impl Cells for Csv {
    fn text(&mut self, cell: Option<&str>) {
        match cell {
            Some(text) if self.library.should_quote(text.as_bytes()) => {
                self.part();
                self.quoted(text.as_bytes());
            }
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

    fn float(&mut self, cell: Option<f32>) {
        match cell {
            Some(number) => self.copied(number.to_string().as_bytes()),
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
