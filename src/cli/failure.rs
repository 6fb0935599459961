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
                write!(f, "error: can't read {}: {}", path.display(), plain(error))?;
                let help = match error.kind() {
                    io::ErrorKind::NotFound => "it is not there, or is a link that leads nowhere",
                    io::ErrorKind::PermissionDenied => {
                        "it may not be read by you; change its permissions, or name the others alone"
                    }
                    _ => return Ok(()),
                };
                write!(f, "\n  help: {help}")
            }
            Self::Input(error) => write!(f, "error: can't read standard input: {error}"),
            Self::Write(error) => {
                write!(f, "error: can't write the output: {}", plain(error))?;
                match error.kind() {
                    io::ErrorKind::StorageFull => {
                        write!(f, "\n  help: make room where it goes, or send it elsewhere")
                    }
                    _ => Ok(()),
                }
            }
            Self::WriteFile(path, error) => {
                let help = match error.kind() {
                    io::ErrorKind::NotFound => "make its folder first",
                    io::ErrorKind::PermissionDenied => "name a folder that you may write to",
                    io::ErrorKind::StorageFull => "make room, or name another place",
                    _ => "see that the folder is there, may be written to and has room",
                };
                let path = path.display();
                write!(
                    f,
                    "error: can't write {path}: {}\n  help: no file was changed; {help}",
                    plain(error)
                )
            }
            Self::Bad(what, hint) => write!(f, "error: {what}\n  help: {hint}"),
            Self::Lexicon(wrong) => write!(f, "{}", render(wrong).trim_end()),
        }
    }
}

/// What the system says, without the passing name that a file has while it is written.
fn plain(error: &io::Error) -> String {
    let text = error.to_string();
    text.split_once(" at path ").map_or(text.as_str(), |(said, _)| said).to_owned()
}

impl From<Diagnostics> for Failure {
    fn from(wrong: Diagnostics) -> Self {
        Self::Lexicon(wrong)
    }
}
