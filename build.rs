//! Reads the lexicon once, when the program is built, and stores the finished tables.
//!
//! The modules that do the reading are the library's own, taken in by their paths.

#![allow(dead_code, unused_imports, reason = "only the reading half of these modules is used here")]

use std::error::Error;
use std::path::{Path, PathBuf};
use std::{env, fs};

#[path = "src/accounts.rs"]
mod accounts;
#[path = "src/diagnostic.rs"]
mod diagnostic;
#[path = "src/grammar/mod.rs"]
mod grammar;
#[path = "src/knowledge.rs"]
mod knowledge;
#[path = "src/lexicon/mod.rs"]
mod lexicon;
#[path = "src/matching/mod.rs"]
mod matching;
#[path = "src/reading.rs"]
mod reading;
#[path = "src/rules/mod.rs"]
mod rules;
#[path = "src/span.rs"]
mod span;
#[path = "src/standard.rs"]
mod standard;
#[path = "src/traits.rs"]
mod traits;
#[path = "src/words.rs"]
mod words;

use lexicon::shelf::{Shelf, Shelved};

fn main() -> Result<(), Box<dyn Error>> {
    let big = cfg!(target_endian = "big");
    if (env::var("CARGO_CFG_TARGET_ENDIAN")? == "big") != big {
        return Err("lists of numbers lie as the building machine has them: build on one of that order of bytes".into());
    }
    println!("cargo:rerun-if-changed=lexicon");
    println!("cargo:rerun-if-changed=src");
    println!("cargo:rerun-if-changed=build.rs");
    let folder = PathBuf::from(env::var("CARGO_MANIFEST_DIR")?);
    let mut base = Vec::new();
    collect(&folder, &folder.join("lexicon"), &mut base)?;
    base.sort_by(|a, b| a.name.cmp(&b.name));
    let layers = lexicon::Layers { own: Vec::new(), base };
    let mut knowledge = match knowledge::Knowledge::read(&layers) {
        Ok(knowledge) => knowledge,
        Err(wrong) => {
            eprintln!("{wrong}");
            return Err("the lexicon has errors".into());
        }
    };
    let out = PathBuf::from(env::var("OUT_DIR")?);
    fs::write(out.join("knowledge.bin"), postcard::to_allocvec(&knowledge)?)?;
    let matcher = match matching::Matcher::new(&knowledge) {
        Ok(matcher) => matcher,
        Err(wrong) => {
            eprintln!("{wrong}");
            return Err("the lexicon lacks numbers of matching".into());
        }
    };
    let mut layout = matcher.chances().layout();
    drop(matcher);
    let mut shelf = Shelf::of(&mut knowledge)?;
    layout.shelve(&mut shelf)?;
    fs::write(out.join("numbers.bin"), shelf.numbers)?;
    fs::write(out.join("texts.txt"), shelf.texts)?;
    Ok(())
}

fn collect(
    root: &Path,
    folder: &Path,
    out: &mut Vec<diagnostic::Source>,
) -> Result<(), Box<dyn Error>> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            collect(root, &path, out)?;
        } else {
            let name = path.strip_prefix(root)?.display().to_string().replace('\\', "/");
            out.push(diagnostic::Source::new(name, fs::read_to_string(&path)?));
        }
    }
    Ok(())
}
