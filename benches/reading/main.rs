//! Speeds, with the bare splitting of words beside them in the same run.
//!
//! Input: the invented notes, many times over, and the lines of the file that `RECTRIX_BENCH_NOTES` names, if it
//! names one. The ratios to `word_splitting` matter, not the times: `cargo bench -- ratios` prints them alone,
//! `cargo bench -- growth` what more rules and accounts cost, and every run without a filter ends with both.

mod growth;
mod ratios;

use divan::counter::BytesCount;
use divan::{Bencher, black_box};
use rectrix::built_in;
use rectrix::diagnostic::Source;
use rectrix::gold::notes;
use rectrix::knowledge::Knowledge;
use rectrix::matching::{Checklist, Matcher};
use rectrix::output::{Analyst, Options};
use std::fs::{read_dir, read_to_string};
use std::sync::LazyLock;
use unicode_segmentation::UnicodeSegmentation;

static KNOWLEDGE: LazyLock<Knowledge> = LazyLock::new(built_in::knowledge);

static NOTES: LazyLock<Vec<String>> = LazyLock::new(|| {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/corpus-synthetic/gold");
    let mut files: Vec<_> = read_dir(folder).unwrap().map(|e| e.unwrap().path()).collect();
    files.sort();
    let mut out: Vec<String> = Vec::new();
    for file in files {
        let source = Source::new("notes", read_to_string(file).unwrap());
        out.extend(notes(&source).unwrap().into_iter().map(|n| n.text));
    }
    if let Ok(file) = std::env::var("RECTRIX_BENCH_NOTES") {
        out.extend(read_to_string(file).unwrap().lines().take(5_000).map(str::to_owned));
    }
    out
});

fn bytes() -> BytesCount {
    BytesCount::new(NOTES.iter().map(String::len).sum::<usize>())
}

fn main() {
    let filters: Vec<String> = std::env::args().skip(1).filter(|a| !a.starts_with('-')).collect();
    let asked = |table: &str| filters.is_empty() || filters.iter().any(|f| f == table);
    if filters.is_empty() || filters.iter().any(|f| f != "ratios" && f != "growth") {
        divan::main();
    }
    if std::env::args().any(|a| a == "--list" || a == "--test") {
        return;
    }
    if asked("ratios") {
        ratios::print(&KNOWLEDGE, &NOTES);
    }
    if asked("growth") {
        growth::print(&KNOWLEDGE, &NOTES);
    }
}

#[divan::bench]
fn word_splitting(bencher: Bencher) {
    bencher.counter(bytes()).bench(|| {
        NOTES.iter().map(|n| black_box(n.as_str()).split_word_bounds().count()).sum::<usize>()
    });
}

#[divan::bench]
fn reading_to_traits(bencher: Bencher) {
    let reader = KNOWLEDGE.reader("north-america");
    bencher
        .counter(bytes())
        .bench(|| NOTES.iter().map(|n| reader.read(black_box(n)).traits.len()).sum::<usize>());
}

#[divan::bench]
fn reading_to_json(bencher: Bencher) {
    let options = Options { top: 0, checklist: Checklist::all(&KNOWLEDGE.accounts) };
    let analyst = Analyst::new(&KNOWLEDGE, "north-america", options).unwrap();
    bencher.counter(bytes()).with_inputs(Vec::new).bench_refs(|line: &mut Vec<u8>| {
        let json = |n: &String| {
            line.clear();
            analyst.analyse("1", black_box(n)).write_json(line);
            line.len()
        };
        NOTES.iter().map(json).sum::<usize>()
    });
}

#[divan::bench]
fn matching_one_note(bencher: Bencher) {
    let matcher = Matcher::new(&KNOWLEDGE).unwrap();
    let reader = KNOWLEDGE.reader("north-america");
    let traits = reader.read("robin-sized, orange below, black hood, bobs tail").traits;
    let list = Checklist::all(&KNOWLEDGE.accounts);
    bencher.bench(|| matcher.rank(black_box(&traits), &list, 10));
}

/// With a matcher that has seen no note before: every row is made anew.
#[divan::bench]
fn matching_a_first_note(bencher: Bencher) {
    let reader = KNOWLEDGE.reader("north-america");
    let traits = reader.read("robin-sized, orange below, black hood, bobs tail").traits;
    let list = Checklist::all(&KNOWLEDGE.accounts);
    bencher
        .with_inputs(|| Matcher::new(&KNOWLEDGE).unwrap())
        .bench_refs(|matcher| matcher.rank(black_box(&traits), &list, 10));
}

#[divan::bench]
fn laying_out_accounts(bencher: Bencher) {
    bencher.bench(|| Matcher::new(&KNOWLEDGE));
}

#[divan::bench]
fn taking_up_the_tables(bencher: Bencher) {
    bencher.bench(built_in::knowledge);
}
