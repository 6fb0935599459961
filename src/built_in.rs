//! The lexicon that travels inside the program: its files, and the tables made of them.
//!
//! The build script reads the files and stores the finished tables, so that starting the program
//! parses nothing. A test proves that both are the same.

use crate::diagnostic::Source;
use crate::knowledge::Knowledge;
use crate::lexicon::Layers;
use include_dir::{Dir, include_dir};

static FILES: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/lexicon");
static TABLES: &[u8] = include_bytes!(concat!(env!("OUT_DIR"), "/knowledge.bin"));
static LAYOUT: &[u8] = include_bytes!(concat!(env!("OUT_DIR"), "/layout.bin"));

/// The built-in tables, ready for use.
///
/// # Panics
/// If the tables were not written by this version's build script, which a test excludes.
pub fn knowledge() -> Knowledge {
    let mut knowledge: Knowledge =
        postcard::from_bytes(TABLES).expect("tables written by the build script of this version");
    knowledge.lexicon.take_up();
    knowledge.layout = Some(LAYOUT);
    knowledge
}

/// The stored form of the built-in tables.
pub fn tables() -> &'static [u8] {
    TABLES
}

/// The built-in files alone.
pub fn layers() -> Layers {
    Layers { own: Vec::new(), base: sources() }
}

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
