//! The sound-alikes of the CMU Pronouncing Dictionary: words that a machine taking dictation may write
//! for a word of the vocabulary. `sounds.tsv` says of each what is to become of it.

use crate::fetched::{fetched, table};
use crate::pronouncing::Pronouncing;
use crate::wordnet::small_words;
use rectrix::built_in;
use rectrix::knowledge::Knowledge;
use rectrix::reading::Reading;
use rectrix::span::Span;
use std::collections::BTreeSet;

/// A row of `sounds.tsv`.
struct Row {
    heard: String,
    meant: String,
    what: String,
    note: String,
    everyday: String,
}

fn rows() -> Vec<Row> {
    table("sounds.tsv", 5)
        .into_iter()
        .map(|row| {
            let [heard, meant, what, note, everyday] =
                <[String; 5]>::try_from(row).unwrap_or_else(|row| panic!("five fields: {row:?}"));
            Row { heard, meant, what, note, everyday }
        })
        .collect()
}

/// The terms of a single word as written, not those it only sounds like.
fn terms(knowledge: &Knowledge, word: &str) -> BTreeSet<String> {
    let lexicon = &knowledge.lexicon;
    let vocabulary = &lexicon.vocabulary;
    let node = vocabulary.find(word);
    let id = |term: u32| lexicon.names.text(vocabulary.terms[term as usize].id).to_owned();
    vocabulary.senses(node).iter().filter(|s| !s.heard()).map(|s| id(s.term)).collect()
}

/// Whether people write such a word: it, or what it is bent from, stands in small letters in WordNet.
fn is_common(word: &str, small: &BTreeSet<String>) -> bool {
    let has =
        |stem: &str, ending: &str| stem.len() > 1 && small.contains(&format!("{stem}{ending}"));
    let verbal = |end: &str| {
        word.strip_suffix(end).is_some_and(|stem| {
            let undoubled = stem.char_indices().last().map_or("", |(at, c)| {
                let before = &stem[..at];
                if before.ends_with(c) { before } else { "" }
            });
            has(stem, "") || has(stem, "e") || has(undoubled, "")
        })
    };
    small.contains(word)
        || word.strip_suffix('s').is_some_and(|stem| has(stem, ""))
        || word.strip_suffix("ies").is_some_and(|stem| has(stem, "y"))
        || ["ed", "ing", "er", "est"].into_iter().any(verbal)
}

/// Every pair of a word that sounds like one of the vocabulary and that one, of kinds whose words are
/// mended.
fn pairs(knowledge: &Knowledge) -> BTreeSet<(String, String)> {
    let said = Pronouncing::read(&fetched("cmudict.dict"));
    let files = ["noun", "verb", "adj", "adv"].map(|part| fetched(&format!("data.{part}")));
    let small = small_words(&files);
    let lexicon = &knowledge.lexicon;
    let mut out = BTreeSet::new();
    for (form, node) in lexicon.vocabulary.single_words() {
        let senses = lexicon.vocabulary.senses(node);
        let able = |kind: rectrix::lexicon::kinds::KindId| kind.bit() & lexicon.mendable != 0;
        if form.len() < 2 || !senses.iter().any(|s| able(s.kind) && !s.heard()) {
            continue;
        }
        let own = terms(knowledge, form);
        for heard in said.alike(form) {
            let other_spelling = !own.is_disjoint(&terms(knowledge, heard));
            if heard.len() > 1 && !other_spelling && is_common(heard, &small) {
                out.insert((heard.to_owned(), form.to_owned()));
            }
        }
    }
    out
}

#[test]
fn every_sound_alike_is_judged() {
    let knowledge = built_in::knowledge();
    let judged: BTreeSet<String> = rows().into_iter().map(|row| row.heard).collect();
    let found = pairs(&knowledge);
    assert!(found.len() > 40, "only {} sound-alikes", found.len());
    let new: Vec<String> = found
        .iter()
        .filter(|(heard, _)| !judged.contains(heard))
        .map(|(heard, meant)| format!("{heard} for {meant}"))
        .collect();
    assert!(new.is_empty(), "say in sounds.tsv what becomes of {}", new.join(", "));
}

#[test]
fn the_judged_words_do_sound_alike() {
    let said = Pronouncing::read(&fetched("cmudict.dict"));
    for row in rows() {
        let alike = said.alike(&row.heard).contains(row.meant.as_str());
        assert!(alike, "{} and {} do not sound alike", row.heard, row.meant);
        assert!(matches!(row.what.as_str(), "read" | "open" | "leave"), "{}", row.what);
        assert!(!row.note.is_empty(), "{}: no note or reason", row.heard);
    }
}

/// Where a word stands in a text.
fn place(text: &str, word: &str) -> Span {
    let start = text.to_lowercase().find(word).unwrap_or_else(|| panic!("no {word} in {text}"));
    Span::new(start, start + word.len())
}

/// Whether a mark rests on that place.
fn gives_a_mark(reading: &Reading, at: Span) -> bool {
    let over = |part: &Span| part.start < at.end && at.start < part.end;
    reading.traits.iter().any(|one| one.parts.as_slice().iter().any(over))
}

#[test]
fn sound_alikes_are_put_right_where_only_a_bird_makes_sense() {
    let knowledge = built_in::knowledge();
    let reader = knowledge.reader(knowledge.lexicon.default_region());
    let mut wrong = Vec::new();
    for row in rows().iter().filter(|row| row.what != "leave") {
        let reading = reader.read(&row.note);
        let at = place(&row.note, &row.heard);
        let meant = terms(&knowledge, &row.meant);
        let told = reading.repairs.iter().any(|repair| {
            repair.span == at && !meant.is_disjoint(&terms(&knowledge, &repair.read_as))
        });
        let right = told && gives_a_mark(&reading, at);
        if right != (row.what == "read") {
            let now = if right { "is put right by now: read" } else { "is not put right" };
            let note = &row.note;
            wrong.push(format!("{} {now}: \"{note}\" {:?}", row.heard, reading.repairs));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn sound_alikes_are_no_marks_in_everyday_sentences() {
    let knowledge = built_in::knowledge();
    let reader = knowledge.reader(knowledge.lexicon.default_region());
    let mut wrong = Vec::new();
    for row in rows().iter().filter(|row| row.what != "leave") {
        let reading = reader.read(&row.everyday);
        if gives_a_mark(&reading, place(&row.everyday, &row.heard)) {
            wrong.push(row.everyday.clone());
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
