//! What can go wrong at the edges, said so that a person can mend it.

use super::files::render;
use rectrix::diagnostic::Diagnostics;
use std::fmt;
use std::io;
use std::path::PathBuf;

/// Why a command could not be done.
#[derive(Debug)]
pub enum Failure {
    /// A file could not be read.
    File(PathBuf, io::Error),
    /// Standard input could not be read.
    Input(io::Error),
    /// The output could not be written.
    Write(io::Error),
    /// A file could not be written.
    WriteFile(PathBuf, io::Error),
    /// Something given is not what it should be: what, and what to do.
    Bad(String, String),
    /// Lexicon files that can't be used.
    Lexicon(Diagnostics),
}

impl fmt::Display for Failure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::File(path, error) => {
                write!(f, "error: can't read {}: {error}", path.display())
            }
            Self::Input(error) => write!(f, "error: can't read standard input: {error}"),
            Self::Write(error) => write!(f, "error: can't write the output: {error}"),
            Self::WriteFile(path, error) => write!(
                f,
                "error: can't write {}: {error}\n  help: no file was changed; see that the folder is \
                 there, may be written to and has room",
                path.display()
            ),
            Self::Bad(what, hint) => write!(f, "error: {what}\n  help: {hint}"),
            Self::Lexicon(wrong) => write!(f, "{}", render(wrong).trim_end()),
        }
    }
}

impl From<Diagnostics> for Failure {
    fn from(wrong: Diagnostics) -> Self {
        Self::Lexicon(wrong)
    }
}
