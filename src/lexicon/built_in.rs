//! The lexicon that travels inside the program.

use crate::diagnostic::Source;
use include_dir::{Dir, include_dir};

static FILES: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/lexicon");

/// Every built-in file, in order of its path.
pub fn sources() -> Vec<Source> {
    let mut out = Vec::new();
    collect(&FILES, &mut out);
    out.sort_by(|a: &Source, b: &Source| a.name.cmp(&b.name));
    out
}

fn collect(dir: &Dir<'_>, out: &mut Vec<Source>) {
    for file in dir.files() {
        if let (Some(path), Some(text)) = (file.path().to_str(), file.contents_utf8()) {
            out.push(Source::new(format!("lexicon/{path}"), text));
        }
    }
    for inner in dir.dirs() {
        collect(inner, out);
    }
}
