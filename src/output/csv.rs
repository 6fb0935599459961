//! One row a mark, for spreadsheets.

use super::model::NoteReading;
use csv::Writer;
use std::io::Write;

/// The columns.
pub const COLUMNS: [&str; 16] = [
    "note",
    "bird",
    "area",
    "aspect",
    "value",
    "tone",
    "extent",
    "position",
    "polarity",
    "certainty",
    "mass_low_g",
    "mass_high_g",
    "as_written",
    "start",
    "end",
    "rule",
];

/// Writes the head line.
///
/// # Errors
/// What the writer says.
pub fn head<W: Write>(out: &mut Writer<W>) -> csv::Result<()> {
    out.write_record(COLUMNS)
}

/// Writes the marks of a note.
///
/// # Errors
/// What the writer says.
pub fn rows<W: Write>(out: &mut Writer<W>, reading: &NoteReading<'_>) -> csv::Result<()> {
    for one in reading.birds.iter().flat_map(|b| &b.traits) {
        let mark = &one.mark;
        let mass = |i: usize| mark.mass_g.map_or_else(String::new, |m| m[i].to_string());
        out.write_record([
            reading.note.id,
            &one.bird.to_string(),
            mark.area,
            mark.aspect,
            &mark.value,
            mark.tone.unwrap_or_default(),
            mark.extent.unwrap_or_default(),
            mark.position.unwrap_or_default(),
            mark.polarity.text(),
            mark.certainty.text(),
            &mass(0),
            &mass(1),
            &mark.as_written,
            &one.span[0].to_string(),
            &one.span[1].to_string(),
            one.rule,
        ])?;
    }
    Ok(())
}
