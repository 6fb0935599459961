//! The lexicon that travels inside the program: its files, and the tables made of them.
//!
//! The build script reads the files and stores the finished tables, so that starting the program
//! parses nothing. A test proves that both are the same.

use crate::diagnostic::Source;
use crate::knowledge::Knowledge;
use crate::lexicon::Layers;
use crate::lexicon::shelf::{Full, Shelved};
use include_dir::{Dir, include_dir};

static FILES: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/lexicon");
static TABLES: &[u8] = include_bytes!(concat!(env!("OUT_DIR"), "/knowledge.bin"));
static NUMBERS: &Aligned<[u8]> =
    &Aligned(*include_bytes!(concat!(env!("OUT_DIR"), "/numbers.bin")));
static TEXTS: &str = include_str!(concat!(env!("OUT_DIR"), "/texts.txt"));

/// Bytes that start where any list of numbers may start.
#[repr(C, align(16))]
struct Aligned<B: ?Sized>(B);

/// The built-in tables, ready for use.
///
/// # Panics
/// If the tables were not written by this version's build script, which a test excludes.
pub fn knowledge() -> Knowledge {
    let mut knowledge: Knowledge =
        postcard::from_bytes(TABLES).expect("tables written by the build script of this version");
    let mut shelf = shelf();
    knowledge.shelve(&mut shelf).expect("lists written by the build script of this version");
    knowledge.layout = Some(shelf);
    knowledge
}

/// What is read at the start, as it is stored.
pub fn tables() -> &'static [u8] {
    TABLES
}

/// What is used in the form in which it is stored.
pub const fn shelf() -> Full {
    Full { numbers: &NUMBERS.0, texts: TEXTS }
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
