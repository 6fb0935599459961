//! How well the notes with expected readings are read: precision, recall and F1 by aspect, and every
//! note that is read otherwise.
//!
//! `cargo run --release --example measure [FILE...]`; without files, those of `corpus-synthetic`.

use rectrix::diagnostic::Source;
use rectrix::gold::{Score, notes};
use rectrix::knowledge::Knowledge;
use std::error::Error;
use std::path::PathBuf;

fn main() -> Result<(), Box<dyn Error>> {
    let mut files: Vec<PathBuf> = std::env::args_os().skip(1).map(PathBuf::from).collect();
    if files.is_empty() {
        let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/corpus-synthetic/gold");
        files =
            std::fs::read_dir(folder)?.map(|e| e.map(|e| e.path())).collect::<Result<_, _>>()?;
        files.sort();
    }
    let (lexicon, rules) = Knowledge::read_language(&rectrix::built_in::layers())?;
    let knowledge = Knowledge {
        lexicon,
        rules,
        accounts: rectrix::accounts::Accounts::default(),
        layout: None,
    };
    let mut score = Score::default();
    let mut count = 0;
    for file in &files {
        let source = Source::new(file.display().to_string(), std::fs::read_to_string(file)?);
        for note in notes(&source)? {
            score.add(&knowledge.reader(&note.region), &note);
            count += 1;
        }
    }
    for line in &score.misses {
        println!("{line}");
    }
    println!(
        "\n{:<12} {:>6} {:>6} {:>6}  {:>5} {:>5} {:>5}",
        "aspect", "right", "extra", "missed", "P", "R", "F1"
    );
    let total = score.total();
    let all = std::iter::once(("all".to_owned(), total));
    for (aspect, c) in score.by_aspect.clone().into_iter().chain(all) {
        println!(
            "{aspect:<12} {:>6} {:>6} {:>6}  {:.3} {:.3} {:.3}",
            c.right,
            c.extra,
            c.missed,
            c.precision(),
            c.recall(),
            c.f1()
        );
    }
    println!("{count} notes, {} read otherwise than expected", score.misses.len());
    Ok(())
}
