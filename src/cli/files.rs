//! Reading lexicon files and notes from outside, and showing diagnostics.

use super::failure::Failure;
use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};
use rectrix::built_in;
use rectrix::diagnostic::{Diagnostic, Diagnostics, Severity, Source};
use rectrix::knowledge::Knowledge;
use rectrix::lexicon::Layers;
use std::cmp::Reverse;
use std::fmt::Write;
use std::fs;
use std::io::{self, Read};
use std::path::{Path, PathBuf};

/// The endings of lexicon files.
const ENDINGS: [&str; 3] = ["lex", "rules", "acc"];

/// What the program knows: the built-in tables, or, with a person's own files, all of it read anew.
pub fn knowledge(own: &[PathBuf]) -> Result<Knowledge, Failure> {
    if own.is_empty() {
        return Ok(built_in::knowledge());
    }
    Ok(Knowledge::read(&layers(own)?)?)
}

/// The built-in files, with a person's own before them.
pub fn layers(own: &[PathBuf]) -> Result<Layers, Failure> {
    let mut layers = built_in::layers();
    for path in own {
        collect(path, true, &mut layers.own)?;
    }
    if layers.own.len() > 1 {
        super::own_words::first_stands(&mut layers.own);
    }
    Ok(layers)
}

/// What lies in a folder, sorted by name.
///
/// # Errors
/// Where the folder can't be read.
pub fn listed(folder: &Path) -> Result<Vec<PathBuf>, Failure> {
    let fail = |error| Failure::File(folder.to_owned(), error);
    let mut inner: Vec<PathBuf> = fs::read_dir(folder)
        .map_err(fail)?
        .map(|entry| entry.map(|e| e.path()))
        .collect::<io::Result<_>>()
        .map_err(fail)?;
    inner.sort();
    Ok(inner)
}

fn collect(path: &Path, named: bool, out: &mut Vec<Source>) -> Result<(), Failure> {
    let fail = |error| Failure::File(path.to_owned(), error);
    if fs::metadata(path).map_err(fail)?.is_dir() {
        for path in listed(path)? {
            collect(&path, false, out)?;
        }
        return Ok(());
    }
    let known = path.extension().is_some_and(|e| ENDINGS.iter().any(|known| e == *known));
    if known {
        out.push(Source::new(path.display().to_string(), text_file(path)?));
    } else if named {
        return Err(Failure::Bad(
            format!("{} is no lexicon file", path.display()),
            "lexicon files end in .lex (vocabulary), .rules or .acc (accounts)".to_owned(),
        ));
    }
    Ok(())
}

/// A text file as UTF-8.
pub fn text_file(path: &Path) -> Result<String, Failure> {
    let bytes = fs::read(path).map_err(|error| Failure::File(path.to_owned(), error))?;
    utf8(bytes, &path.display().to_string())
}

/// Standard input as UTF-8.
pub fn standard_input() -> Result<String, Failure> {
    let mut bytes = Vec::new();
    io::stdin().lock().read_to_end(&mut bytes).map_err(Failure::Input)?;
    utf8(bytes, "standard input")
}

/// Bytes as text; what is no UTF-8, or no text at all, is refused with its place.
pub fn utf8(bytes: Vec<u8>, name: &str) -> Result<String, Failure> {
    let text = String::from_utf8(bytes).map_err(|error| {
        let at = error.utf8_error().valid_up_to();
        let before = &error.as_bytes()[..at];
        let line = before.split(|&b| b == b'\n').count();
        let column = before.iter().rev().take_while(|&&b| b != b'\n').count() + 1;
        Failure::Bad(
            format!(
                "{name} is not UTF-8: line {line}, byte {column} of the line (byte {at} in all)"
            ),
            "convert it first, for example with `iconv -f WINDOWS-1252 -t UTF-8`".to_owned(),
        )
    })?;
    if let Some(at) = text.find('\0') {
        return Err(Failure::Bad(
            format!("{name} is no text: a zero byte at byte {at}"),
            "give a plain text file".to_owned(),
        ));
    }
    Ok(text)
}

/// The most diagnostics shown at once: further ones often come of the first, and would push them off the screen.
const SHOWN: usize = 20;

/// Those that are shown: all, or the first, errors before warnings.
fn shown(wrong: &Diagnostics) -> Vec<&Diagnostic> {
    let mut all: Vec<&Diagnostic> = wrong.0.iter().collect();
    if all.len() > SHOWN {
        all.sort_by_key(|one| Reverse(one.severity));
        all.truncate(SHOWN);
    }
    all
}

/// Diagnostics with the lines they are about; of very many the first, and how many there are besides.
pub fn render(wrong: &Diagnostics) -> String {
    let renderer = Renderer::styled();
    let mut out = String::new();
    for one in shown(wrong) {
        let level = match one.severity {
            Severity::Error => Level::ERROR,
            Severity::Warning => Level::WARNING,
        };
        let text = &one.source.text;
        let mut end = one.span.end.min(text.len());
        let mut start = one.span.start.min(end);
        while !text.is_char_boundary(start) {
            start -= 1;
        }
        while !text.is_char_boundary(end) {
            end -= 1;
        }
        let snippet = Snippet::source(text.as_ref())
            .path(one.source.name.as_ref())
            .annotation(AnnotationKind::Primary.span(start..end.max(start)));
        let mut groups: Vec<Group<'_>> =
            vec![level.primary_title(one.message.as_str()).id(one.code).element(snippet)];
        if let Some(hint) = &one.hint {
            groups.push(Group::with_title(Level::HELP.secondary_title(hint.as_str())));
        }
        out.push_str(&renderer.render(&groups).to_string());
        out.push_str("\n\n");
    }
    if wrong.0.len() > SHOWN {
        let rest = wrong.0.len() - SHOWN;
        let _ = writeln!(out, "and {rest} more; put these right and run it again to see them");
    }
    out
}
