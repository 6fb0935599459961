//! The invented notes with their expected readings.

use rectrix::built_in;
use rectrix::diagnostic::Source;
use rectrix::gold::{GoldNote, Score, notes};
use rstest::rstest;
use std::collections::BTreeSet;
use std::fs::{read_dir, read_to_string};

/// The notes of a file, or of all files.
fn notes_of(name: &str) -> Vec<GoldNote> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/corpus-synthetic/gold");
    let mut files: Vec<_> = read_dir(folder).unwrap().map(|e| e.unwrap().path()).collect();
    files.retain(|f| name == ALL || f.file_stem().is_some_and(|s| s == name));
    files.sort();
    let mut out = Vec::new();
    for file in files {
        let source = Source::new(file.display().to_string(), read_to_string(&file).unwrap());
        out.extend(notes(&source).unwrap());
    }
    assert!(!out.is_empty(), "no notes of {name}");
    out
}

const ALL: &str = "all";

#[test]
fn the_notes_are_many_and_well_formed() {
    let found = notes_of(ALL);
    assert!(found.len() >= 450, "{} notes", found.len());
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

/// A reader takes what it made of words met before; that must be what it would make of them anew, also where
/// they go on otherwise: half a note goes on with half of another here.
#[test]
fn a_reader_that_has_read_much_reads_as_a_new_one() {
    let knowledge = built_in::knowledge();
    let found = notes_of(ALL);
    let halves: Vec<(&str, &str)> = found
        .iter()
        .map(|note| {
            let at =
                note.text.char_indices().map(|(at, _)| at).filter(|at| at * 2 >= note.text.len());
            let space = |at: &usize| note.text[*at..].starts_with(' ');
            note.text.split_at(at.clone().find(space).unwrap_or(note.text.len()))
        })
        .collect();
    let mut texts: Vec<String> = found.iter().map(|note| note.text.clone()).collect();
    for apart in [1, 7] {
        let others = halves.iter().cycle().skip(apart);
        texts.extend(halves.iter().zip(others).map(|(one, other)| format!("{}{}", one.0, other.1)));
    }
    let reader = knowledge.reader("north-america");
    let fresh: Vec<_> =
        texts.iter().map(|text| knowledge.reader("north-america").read(text)).collect();
    for _ in 0..3 {
        for (text, fresh) in texts.iter().zip(&fresh) {
            let again = reader.read(text);
            assert_eq!(again.matches, fresh.matches, "{text}");
            assert_eq!(again.traits, fresh.traits, "{text}");
        }
    }
}

/// The floors are what was reached, to a hundredth; they may only be raised.
#[rstest]
#[case(ALL, 0.98, 0.98)]
#[case("adversarial", 0.90, 0.94)]
#[case("beginner", 0.99, 0.98)]
#[case("behaviour", 0.96, 0.97)]
#[case("casual", 0.98, 0.99)]
#[case("dictated", 0.94, 0.95)]
#[case("expert", 0.99, 0.99)]
#[case("misspelt", 0.99, 0.97)]
#[case("negation", 0.99, 0.97)]
#[case("paths", 0.99, 0.99)]
#[case("prose", 0.99, 0.98)]
#[case("severalbirds", 0.98, 0.98)]
#[case("size", 0.99, 0.99)]
#[case("telegraphic", 0.99, 0.99)]
fn notes_are_read_as_expected(#[case] name: &str, #[case] precision: f64, #[case] recall: f64) {
    let knowledge = built_in::knowledge();
    let mut score = Score::default();
    for note in notes_of(name) {
        score.add(&knowledge.reader(&note.region), &note);
    }
    let total = score.total();
    let report = score.misses.join("\n");
    assert!(total.precision() >= precision, "precision {:.3}\n{report}", total.precision());
    assert!(total.recall() >= recall, "recall {:.3}\n{report}", total.recall());
}
