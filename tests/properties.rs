//! What holds of any note whatever: nothing is lost, nothing panics, places are true.

use proptest::prelude::*;
use rectrix::built_in;
use rectrix::knowledge::Knowledge;
use rectrix::matching::Checklist;
use rectrix::output::{Analyst, Options};
use rectrix::reading::Fate;
use std::sync::LazyLock;

static KNOWLEDGE: LazyLock<Knowledge> = LazyLock::new(built_in::knowledge);

/// Words of the trade, words of grammar, signs, and whatever Unicode brings.
fn note() -> impl Strategy<Value = String> {
    let word = prop_oneof![
        4 => prop::sample::select(vec![
            "black", "white", "brownish", "streaked", "wing", "bars", "wingbars", "tail", "bill", "breast",
            "robin", "sized", "no", "not", "maybe", "couldn't", "see", "is", "has", "with", "and", "or",
            "the", "a", "on", "above", "below", "two", "9", "inches", "25cm", "otherwise", "rest", "of",
            "bobs", "hops", "in", "reedbed", "male", "short", "conical", "spots", "tipped", "from", "to",
        ]).prop_map(str::to_owned),
        1 => "[a-z]{1,9}",
        1 => prop::sample::select(vec![",", ".", ";", ":", "-", "–", "/", "?", "!", "(", ")", "\n", "\r\n",
            "\"", "’", "&", "w/", "🐦", "é", "\u{feff}", "\u{0301}"]).prop_map(str::to_owned),
    ];
    prop::collection::vec(
        (word, prop_oneof![8 => Just(" "), 1 => Just(""), 1 => Just("\t")]),
        0..40,
    )
    .prop_map(|words| words.into_iter().map(|(w, s)| w + s).collect())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn segments_give_the_note_back(text in note()) {
        let reader = KNOWLEDGE.reader("north-america");
        let reading = reader.read(&text);
        let joined: String = reading.segments.iter().map(|s| s.span.of(&text)).collect();
        prop_assert_eq!(joined, text.clone());
        for one in &reading.traits {
            prop_assert!(!one.parts.as_slice().is_empty());
            for part in one.parts.as_slice() {
                prop_assert!(text.get(part.start..part.end).is_some_and(|t| !t.is_empty()));
            }
        }
    }

    /// What a reader remembers of notes read before never changes what it reads.
    #[test]
    fn a_reader_reads_the_same_each_time(texts in prop::collection::vec(note(), 1..6)) {
        let reader = KNOWLEDGE.reader("north-america");
        for _ in 0..3 {
            for text in &texts {
                let fresh = KNOWLEDGE.reader("north-america").read(text);
                let again = reader.read(text);
                prop_assert_eq!(again.matches, fresh.matches, "{}", text);
                prop_assert_eq!(again.traits, fresh.traits, "{}", text);
                prop_assert_eq!(again.segments, fresh.segments, "{}", text);
            }
        }
    }

    #[test]
    fn evidence_and_unplaced_words_never_meet(text in note()) {
        let reading = KNOWLEDGE.reader("europe").read(&text);
        for segment in reading.segments.iter().filter(|s| s.fate == Fate::Unplaced) {
            for part in reading.traits.iter().flat_map(|t| t.parts.as_slice()) {
                let apart = part.end <= segment.span.start || segment.span.end <= part.start;
                prop_assert!(apart, "{:?} in {:?}", segment, part);
            }
        }
    }

    #[test]
    fn any_text_at_all_is_read(text in "\\PC{0,200}") {
        let reading = KNOWLEDGE.reader("north-america").read(&text);
        let joined: String = reading.segments.iter().map(|s| s.span.of(&text)).collect();
        prop_assert_eq!(joined, text);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    #[test]
    fn shares_are_shares(text in note()) {
        let options = Options { top: 1000, checklist: Checklist::all(&KNOWLEDGE.accounts) };
        let analyst = Analyst::new(&KNOWLEDGE, "north-america", options).unwrap();
        let reading = analyst.analyse("1", &text);
        let mut json = Vec::new();
        reading.write_json(&mut json);
        prop_assert_eq!(String::from_utf8(json).unwrap(), serde_json::to_string(&reading).unwrap());
        let bird = &reading.birds[0];
        if let Some(none) = bird.none_of_these {
            let sum: f32 = none + bird.candidates.iter().map(|c| c.share).sum::<f32>();
            prop_assert!((sum - 1.0).abs() < 0.3, "{sum}");
            prop_assert!(bird.candidates.is_sorted_by(|a, b| a.share >= b.share));
        }
    }
}

#[test]
fn very_long_notes_are_read_in_step() {
    let sentence = "black head, nape and breast with white spots and ";
    for count in [10, 1_000, 20_000] {
        let text = sentence.repeat(count);
        let reading = KNOWLEDGE.reader("north-america").read(&text);
        let joined: usize = reading.segments.iter().map(|s| s.span.end - s.span.start).sum();
        assert_eq!(joined, text.len());
        assert!(reading.traits.len() >= 3);
    }
}

#[test]
fn one_endless_word_is_one_word_not_placed() {
    let text = format!("a black cap {} and red legs", "abcdefghij".repeat(100_000));
    let reading = KNOWLEDGE.reader("north-america").read(&text);
    assert_eq!(reading.traits.len(), 2);
    let longest = reading.segments.iter().map(|s| s.span.end - s.span.start).max();
    assert_eq!(longest, Some(1_000_000));
}

#[test]
fn deep_nesting_is_no_danger() {
    let text = "tail long ".repeat(5_000);
    assert!(!KNOWLEDGE.reader("north-america").read(&text).traits.is_empty());
}
