//! The invented notes with their expected readings.

use rectrix::built_in;
use rectrix::diagnostic::Source;
use rectrix::gold::{GoldNote, Score, notes};
use rstest::rstest;
use std::collections::BTreeSet;
use std::fs::{read_dir, read_to_string};

fn all_notes(folder: &str) -> Vec<GoldNote> {
    let folder = format!("{}/corpus-synthetic/{folder}", env!("CARGO_MANIFEST_DIR"));
    let mut files: Vec<_> = read_dir(folder).unwrap().map(|e| e.unwrap().path()).collect();
    files.sort();
    let mut out = Vec::new();
    for file in files {
        let source = Source::new(file.display().to_string(), read_to_string(&file).unwrap());
        out.extend(notes(&source).unwrap());
    }
    out
}

#[test]
fn the_notes_are_many_and_well_formed() {
    let mut found = all_notes("notes");
    assert!(found.len() >= 150, "{} notes", found.len());
    found.extend(all_notes("gold"));
    let ids: BTreeSet<&str> = found.iter().map(|n| n.id.as_str()).collect();
    assert_eq!(ids.len(), found.len(), "an id stands twice");
    let knowledge = built_in::knowledge();
    let mut unknown = Vec::new();
    for note in &found {
        for one in &note.traits {
            if !knowledge.lexicon.names.find(&one.area).is_some() {
                unknown.push(format!("{}: {}", note.id, one.area));
            }
        }
    }
    assert!(unknown.is_empty(), "unknown areas: {unknown:?}");
}

/// The floors are what was reached; they may only be raised.
#[rstest]
#[case("notes", 0.99, 0.983)]
#[case("gold", 0.96, 0.97)]
fn notes_are_read_as_expected(#[case] folder: &str, #[case] precision: f64, #[case] recall: f64) {
    let knowledge = built_in::knowledge();
    let mut score = Score::default();
    for note in all_notes(folder) {
        score.add(&knowledge.reader(&note.region), &note);
    }
    let total = score.total();
    let report = score.misses.join("\n");
    assert!(total.precision() >= precision, "precision {:.3}\n{report}", total.precision());
    assert!(total.recall() >= recall, "recall {:.3}\n{report}", total.recall());
}
