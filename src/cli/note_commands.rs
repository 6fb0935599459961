//! `read`, `gaps`, `explain` and `schema`.

use super::args::{Args, Format, NoteArgs, ReadArgs, SchemaOf};
use super::failure::Failure;
use super::files::{knowledge, layers, render, standard_input, text_file, utf8};
use anstream::{AutoStream, ColorChoice, StripStream};
use rectrix::diagnostic::Source;
use rectrix::knowledge::Knowledge;
use rectrix::matching::{Checklist, checklist};
use rectrix::output::text::{Layout, gaps_view, view};
use rectrix::output::{Analyst, NoteReading, Options, csv, explain::explain as derivation};
use std::io::{self, BufRead, Write};
use std::process::ExitCode;

/// Columns to lay out for where there is no terminal to ask.
const DEFAULT_WIDTH: usize = 80;

/// Reads notes.
pub fn read(args: &Args, read: &ReadArgs) -> Result<ExitCode, Failure> {
    let knowledge = knowledge(&args.lexicon)?;
    let region = region(&knowledge, read.note.region.as_deref())?;
    let options = Options { top: read.top, checklist: prior(&knowledge, read, &region)? };
    let analyst = Analyst::new(&knowledge, &region, options)?;
    let layout = layout(&read.note);
    // Styles are for people only; looking through data for them would cost more than making it.
    let stdout: Box<dyn Write> = match read.format {
        Format::Text => styled_output(),
        _ => Box::new(io::stdout().lock()),
    };
    let mut out = io::BufWriter::with_capacity(1 << 16, stdout);
    let mut printer = Printer::new(read.format, layout, &mut out)?;
    if read.each_line {
        if !read.note.text.is_empty() && read.note.text != ["-"] {
            return Err(Failure::Bad(
                "--each-line reads standard input, not a note on the command line".to_owned(),
                "pipe the notes in: rectrix read --each-line - < notes.txt".to_owned(),
            ));
        }
        each_line(&analyst, &mut printer, &mut out)?;
    } else {
        let note = note(&read.note)?;
        printer.print(&analyst.analyse("1", &note), &mut out)?;
    }
    out.flush().map_err(Failure::Write)?;
    // The process ends here; taking the tables apart piece by piece would only cost time.
    std::mem::forget(analyst);
    std::mem::forget(knowledge);
    Ok(ExitCode::SUCCESS)
}

/// One note a line, one output a line, in order.
fn each_line(
    analyst: &Analyst<'_>,
    printer: &mut Printer,
    out: &mut impl Write,
) -> Result<(), Failure> {
    let mut input = io::stdin().lock();
    let mut bytes = Vec::new();
    let mut number = 0usize;
    loop {
        bytes.clear();
        if input.read_until(b'\n', &mut bytes).map_err(Failure::Input)? == 0 {
            return Ok(());
        }
        number += 1;
        while matches!(bytes.last(), Some(b'\n' | b'\r')) {
            bytes.pop();
        }
        let line = match utf8(std::mem::take(&mut bytes), &format!("line {number}")) {
            Ok(line) => line,
            Err(failure) => {
                out.flush().map_err(Failure::Write)?;
                return Err(failure);
            }
        };
        printer.print(&analyst.analyse(&number.to_string(), &line), out)?;
        bytes = line.into_bytes();
    }
}

/// Prints readings in one format.
struct Printer {
    format: Format,
    layout: Layout,
    first: bool,
    /// Kept from note to note, so that its room is used again.
    line: Vec<u8>,
}

impl Printer {
    fn new(format: Format, layout: Layout, out: &mut impl Write) -> Result<Self, Failure> {
        if format == Format::Csv {
            let mut rows = ::csv::Writer::from_writer(Vec::new());
            csv::head(&mut rows).map_err(csv_failure)?;
            write_rows(rows, out)?;
        }
        Ok(Self { format, layout, first: true, line: Vec::new() })
    }

    fn print(&mut self, reading: &NoteReading<'_>, out: &mut impl Write) -> Result<(), Failure> {
        let first = std::mem::replace(&mut self.first, false);
        match self.format {
            Format::Text => {
                if !first {
                    writeln!(out, "\n{}\n", "-".repeat(self.layout.width.min(80)))
                        .map_err(Failure::Write)?;
                }
                write!(out, "{}", view(reading, self.layout)).map_err(Failure::Write)
            }
            Format::Json => {
                serde_json::to_writer_pretty(&mut *out, reading).map_err(json_failure)?;
                writeln!(out).map_err(Failure::Write)
            }
            Format::Jsonl => {
                self.line.clear();
                reading.write_json(&mut self.line);
                self.line.push(b'\n');
                out.write_all(&self.line).map_err(Failure::Write)
            }
            Format::Csv => {
                let mut rows = ::csv::Writer::from_writer(Vec::new());
                csv::rows(&mut rows, reading).map_err(csv_failure)?;
                write_rows(rows, out)
            }
        }
    }
}

fn write_rows(rows: ::csv::Writer<Vec<u8>>, out: &mut impl Write) -> Result<(), Failure> {
    let bytes = rows.into_inner().map_err(|e| Failure::Write(io::Error::other(e.to_string())))?;
    out.write_all(&bytes).map_err(Failure::Write)
}

fn csv_failure(error: ::csv::Error) -> Failure {
    Failure::Write(io::Error::other(error))
}

pub fn json_failure(error: serde_json::Error) -> Failure {
    Failure::Write(io::Error::from(error))
}

/// Shows what a note leaves out.
pub fn gaps(args: &Args, note_args: &NoteArgs) -> Result<ExitCode, Failure> {
    let knowledge = knowledge(&args.lexicon)?;
    let region = region(&knowledge, note_args.region.as_deref())?;
    let options = Options { top: 0, checklist: Checklist::all(&knowledge.accounts) };
    let analyst = Analyst::new(&knowledge, &region, options)?;
    let note = note(note_args)?;
    let reading = analyst.analyse("1", &note);
    print(&gaps_view(&reading, layout(note_args)))
}

/// Shows how each mark came about.
pub fn explain(args: &Args, note_args: &NoteArgs) -> Result<ExitCode, Failure> {
    // The stored tables do not know the lines of the rule files; the files do.
    let knowledge = Knowledge::read(&layers(&args.lexicon)?)?;
    let region = region(&knowledge, note_args.region.as_deref())?;
    let reader = knowledge.reader(&region).with_trace();
    let note = note(note_args)?;
    print(&derivation(&reader, &note, &reader.read(&note)))
}

/// Prints a JSON Schema.
pub fn schema(of: SchemaOf) -> Result<ExitCode, Failure> {
    let schema = match of {
        SchemaOf::Read => rectrix::output::schema(),
        SchemaOf::Season => rectrix::season::object::schema(),
    };
    let text = serde_json::to_string_pretty(&schema).map_err(json_failure)?;
    print(&format!("{text}\n"))
}

/// Standard output, with styles where they are wanted. Without them what is left of a text between two
/// styles is not written by itself.
fn styled_output() -> Box<dyn Write> {
    match AutoStream::choice(&io::stdout()) {
        ColorChoice::Never => {
            let out: Box<dyn Write> = Box::new(io::BufWriter::new(io::stdout().lock()));
            Box::new(StripStream::new(out))
        }
        _ => Box::new(anstream::stdout().lock()),
    }
}

/// Prints a text.
pub fn print(text: &str) -> Result<ExitCode, Failure> {
    let mut out = styled_output();
    out.write_all(text.as_bytes()).and_then(|()| out.flush()).map_err(Failure::Write)?;
    Ok(ExitCode::SUCCESS)
}

/// The note on the command line, or on standard input.
fn note(args: &NoteArgs) -> Result<String, Failure> {
    let text = if args.text.is_empty() || args.text == ["-"] {
        standard_input()?
    } else {
        args.text.join(" ")
    };
    if text.trim().is_empty() {
        return Err(Failure::Bad(
            "the note is empty".to_owned(),
            "write what was seen, such as: rectrix read \"streaked breast, no wing bars\""
                .to_owned(),
        ));
    }
    Ok(text)
}

/// The id of the region named, or the usual one.
pub fn region(knowledge: &Knowledge, named: Option<&str>) -> Result<String, Failure> {
    let lexicon = &knowledge.lexicon;
    let Some(named) = named else {
        return Ok(lexicon.default_region().to_owned());
    };
    let wanted = named.to_lowercase().replace([' ', '_'], "-");
    let found =
        lexicon.others("region").find(|r| r.id == wanted || r.items("also").any(|a| a == wanted));
    found.map(|r| r.id.clone()).ok_or_else(|| {
        let known: Vec<&str> = lexicon.others("region").map(|r| r.id.as_str()).collect();
        Failure::Bad(
            format!("there is no region `{named}`"),
            format!("known regions: {}", known.join(", ")),
        )
    })
}

/// What is possible, and how likely before the note is read.
fn prior(knowledge: &Knowledge, read: &ReadArgs, region: &str) -> Result<Checklist, Failure> {
    let mut list = Checklist::all(&knowledge.accounts);
    if let Some(path) = &read.among {
        let source = Source::new(path.display().to_string(), text_file(path)?);
        let (found, wrong) =
            checklist(&knowledge.lexicon, &knowledge.accounts, &source, read.month);
        if !wrong.0.is_empty() {
            anstream::eprint!("{}", render(&wrong));
        }
        if found.is_empty() {
            return Err(Failure::Bad(
                format!("{} names no species that has an account", path.display()),
                "write one English or scientific name a line".to_owned(),
            ));
        }
        list = found;
    } else if read.note.region.is_some() {
        let factor = rectrix::matching::weights::Weights::of(&knowledge.lexicon)?.other_region;
        let region = knowledge.lexicon.names.find(region);
        list = list.in_region(&knowledge.accounts, region, factor);
    }
    Ok(list)
}

fn layout(args: &NoteArgs) -> Layout {
    layout_for(args.region.is_some())
}

/// The layout for this terminal; whether a region was named decides on a remark.
pub fn layout_for(region_named: bool) -> Layout {
    let width = terminal_size::terminal_size()
        .map_or(DEFAULT_WIDTH, |(width, _)| usize::from(width.0))
        .clamp(40, 120);
    Layout { width, region_named }
}
