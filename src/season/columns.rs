//! Rows gathered as columns, and columns written as Parquet.

use super::cells::{Cells, Column, Kind};
use parquet::basic::{Compression, LogicalType, Repetition, Type as Physical};
use parquet::column::writer::ColumnWriter;
use parquet::data_type::ByteArray;
use parquet::errors::Result;
use parquet::file::properties::WriterProperties;
use parquet::file::writer::SerializedFileWriter;
use parquet::schema::types::Type;
use std::io::Write;
use std::sync::Arc;

/// The rows of a row group. With the longest notes it stays well within memory.
const GROUP_ROWS: usize = 20_000;
/// The most bytes of text gathered before a row group is written.
const GROUP_BYTES: usize = 8 << 20;

/// The cells of one column; a cell without a value has level 0.
enum Gathered {
    Text(Vec<u8>, Vec<u32>),
    Int(Vec<i64>),
    Float(Vec<f32>),
}

/// Rows, column by column.
pub struct Columns {
    cells: Vec<(Gathered, Vec<i16>)>,
    at: usize,
    rows: usize,
    bytes: usize,
}

impl Columns {
    /// No rows yet.
    pub fn new(columns: &[Column]) -> Self {
        let empty = |kind: Kind| match kind {
            Kind::Text => Gathered::Text(Vec::new(), Vec::new()),
            Kind::Int => Gathered::Int(Vec::new()),
            Kind::Float => Gathered::Float(Vec::new()),
        };
        let cells = columns.iter().map(|(_, kind)| (empty(*kind), Vec::new())).collect();
        Self { cells, at: 0, rows: 0, bytes: 0 }
    }

    fn cell(&mut self, filled: bool) -> &mut Gathered {
        let at = self.at;
        self.at += 1;
        let (gathered, levels) = &mut self.cells[at];
        levels.push(i16::from(filled));
        gathered
    }
}

impl Cells for Columns {
    fn text(&mut self, cell: Option<&str>) {
        self.bytes += cell.map_or(0, str::len);
        if let (Gathered::Text(all, lengths), Some(text)) = (self.cell(cell.is_some()), cell) {
            all.extend_from_slice(text.as_bytes());
            lengths.push(u32::try_from(text.len()).unwrap_or(u32::MAX));
        }
    }

    fn int(&mut self, cell: Option<u64>) {
        if let (Gathered::Int(all), Some(number)) = (self.cell(cell.is_some()), cell) {
            all.push(i64::try_from(number).unwrap_or(i64::MAX));
        }
    }

    fn float(&mut self, cell: Option<f32>) {
        if let (Gathered::Float(all), Some(number)) = (self.cell(cell.is_some()), cell) {
            all.push(number);
        }
    }

    fn end(&mut self) {
        self.at = 0;
        self.rows += 1;
    }
}

/// Writes columns to a Parquet file, a row group at a time.
pub struct Parquet<W: Write + Send> {
    writer: SerializedFileWriter<W>,
    waiting: Vec<Columns>,
    rows: usize,
    bytes: usize,
}

impl<W: Write + Send> Parquet<W> {
    /// A file with these columns.
    ///
    /// # Errors
    /// What the writer says.
    pub fn new(out: W, columns: &[Column]) -> Result<Self> {
        let fields: Result<Vec<_>> = columns
            .iter()
            .map(|(name, kind)| {
                let (physical, logical) = match kind {
                    Kind::Text => (Physical::BYTE_ARRAY, Some(LogicalType::String)),
                    Kind::Int => (Physical::INT64, None),
                    Kind::Float => (Physical::FLOAT, None),
                };
                let field = Type::primitive_type_builder(name, physical)
                    .with_repetition(Repetition::OPTIONAL)
                    .with_logical_type(logical);
                field.build().map(Arc::new)
            })
            .collect();
        let schema = Type::group_type_builder("season").with_fields(fields?).build()?;
        let properties = WriterProperties::builder()
            .set_compression(Compression::SNAPPY)
            .set_created_by(concat!("rectrix ", env!("CARGO_PKG_VERSION")).to_owned())
            .build();
        let writer = SerializedFileWriter::new(out, Arc::new(schema), Arc::new(properties))?;
        Ok(Self { writer, waiting: Vec::new(), rows: 0, bytes: 0 })
    }

    /// Takes rows.
    ///
    /// # Errors
    /// What the writer says.
    pub fn add(&mut self, columns: Columns) -> Result<()> {
        self.rows += columns.rows;
        self.bytes += columns.bytes;
        if columns.rows > 0 {
            self.waiting.push(columns);
        }
        if self.rows >= GROUP_ROWS || self.bytes >= GROUP_BYTES { self.group() } else { Ok(()) }
    }

    fn group(&mut self) -> Result<()> {
        let waiting = std::mem::take(&mut self.waiting);
        (self.rows, self.bytes) = (0, 0);
        if waiting.is_empty() {
            return Ok(());
        }
        let mut group = self.writer.next_row_group()?;
        let mut pieces: Vec<_> = waiting.into_iter().map(|c| c.cells.into_iter()).collect();
        while let Some(mut column) = group.next_column()? {
            for (cells, levels) in pieces.iter_mut().filter_map(Iterator::next) {
                write(column.untyped(), cells, &levels)?;
            }
            column.close()?;
        }
        group.close()?;
        Ok(())
    }

    /// Writes what is left and ends the file.
    ///
    /// # Errors
    /// What the writer says.
    pub fn finish(mut self) -> Result<W> {
        self.group()?;
        self.writer.into_inner()
    }
}

fn write(column: &mut ColumnWriter<'_>, cells: Gathered, levels: &[i16]) -> Result<()> {
    match (column, cells) {
        (ColumnWriter::ByteArrayColumnWriter(writer), Gathered::Text(all, lengths)) => {
            let mut at = 0;
            let values: Vec<ByteArray> = lengths
                .iter()
                .map(|length| {
                    let end = at + *length as usize;
                    let value = ByteArray::from(all[at..end].to_vec());
                    at = end;
                    value
                })
                .collect();
            writer.write_batch(&values, Some(levels), None)?;
        }
        (ColumnWriter::Int64ColumnWriter(writer), Gathered::Int(all)) => {
            writer.write_batch(&all, Some(levels), None)?;
        }
        (ColumnWriter::FloatColumnWriter(writer), Gathered::Float(all)) => {
            writer.write_batch(&all, Some(levels), None)?;
        }
        // Columns and schema are made from one list.
        _ => {}
    }
    Ok(())
}
