//! The speeds as ratios, measured side by side: each thing is timed in turn, many rounds over, and its
//! fastest round counts, so that other work on the machine falls on all of them alike.

use aho_corasick::{AhoCorasick, AhoCorasickKind, MatchKind};
use rectrix::knowledge::Knowledge;
use rectrix::matching::{Checklist, Matcher};
use rectrix::output::{Analyst, Options};
use std::fmt::Write as _;
use std::hint::black_box;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};
use unicode_segmentation::UnicodeSegmentation;

/// How many of the vocabulary's forms the scan looks for.
const FORMS: usize = 1_500;
/// How many rounds each thing is timed.
const ROUNDS: usize = 25;
/// How many entries a season has here.
const ENTRIES: usize = 20_000;

/// The shortest of some rounds.
pub fn fastest(rounds: usize, timed: &mut dyn FnMut()) -> Duration {
    let once = |_| {
        let started = Instant::now();
        timed();
        started.elapsed()
    };
    (0..rounds).map(once).min().unwrap_or_default()
}

/// What is timed: its name, how many notes it goes over, and the thing itself.
type Row<'a> = (&'a str, usize, Box<dyn FnMut() + 'a>);

/// Prints the table of ratios.
pub fn print(knowledge: &Knowledge, notes: &[String]) {
    in_memory(knowledge, notes);
    season(notes);
    starts();
}

fn in_memory(knowledge: &Knowledge, notes: &[String]) {
    let region = "north-america";
    let reader = knowledge.reader(region);
    let options = Options { top: 0, checklist: Checklist::all(&knowledge.accounts) };
    let analyst = Analyst::new(knowledge, region, options).unwrap();
    let matcher = Matcher::new(knowledge).unwrap();
    let list = Checklist::all(&knowledge.accounts);
    let words = knowledge.lexicon.vocabulary.single_words();
    let forms: Vec<&str> = words.map(|(form, _)| form).take(FORMS).collect();
    let scan = AhoCorasick::builder()
        .kind(Some(AhoCorasickKind::DFA))
        .match_kind(MatchKind::LeftmostLongest)
        .ascii_case_insensitive(true)
        .build(&forms)
        .unwrap();
    let few: Vec<_> = notes.iter().take(200).map(|n| reader.read(n).traits).collect();
    let twice: Vec<&String> = notes.iter().chain(notes).collect();
    let split = |n: &String| black_box(n.as_str()).split_word_bounds().count();
    let read = |n: &String| reader.read(black_box(n)).traits.len();
    // As `rectrix read --format jsonl` writes a line: the bytes of serde_json.
    let mut line = Vec::new();
    let mut json = |n: &String| {
        line.clear();
        analyst.analyse("1", black_box(n)).write_json(&mut line);
        line.len()
    };
    let mut rows: Vec<Row<'_>> = vec![
        ("bare word splitting", notes.len(), Box::new(|| each(notes.iter().map(split)))),
        (
            "scan for 1,500 forms (Aho-Corasick)",
            notes.len(),
            Box::new(|| {
                each(notes.iter().map(|n| scan.find_iter(black_box(n)).count()));
            }),
        ),
        ("reading to traits", notes.len(), Box::new(|| each(notes.iter().map(read)))),
        (
            "the same, twice the notes",
            twice.len(),
            Box::new(|| each(twice.iter().map(|n| read(n)))),
        ),
        ("reading to JSON", notes.len(), Box::new(|| each(notes.iter().map(&mut json)))),
        (
            "matching with all accounts",
            few.len(),
            Box::new(|| {
                each(few.iter().map(|t| matcher.rank(black_box(t), &list, 10).candidates.len()));
            }),
        ),
    ];
    let mut best = vec![Duration::MAX; rows.len()];
    for _ in 0..ROUNDS {
        for (best, row) in best.iter_mut().zip(&mut rows) {
            *best = (*best).min(fastest(1, &mut *row.2));
        }
    }
    let a_note = |i: usize| best[i].as_secs_f64() * 1e6 / rows[i].1 as f64;
    let mut out = format!("\n{:<38} {:>12} {:>10}\n", "a note", "µs", "ratio");
    for (i, row) in rows.iter().enumerate() {
        let _ = writeln!(out, "{:<38} {:>12.2} {:>10.2}", row.0, a_note(i), a_note(i) / a_note(0));
    }
    println!("{out}");
}

fn each(all: impl Iterator<Item = usize>) {
    black_box(all.sum::<usize>());
}

fn rectrix(arguments: &[&str]) -> Duration {
    let mut command = Command::new(env!("CARGO_BIN_EXE_rectrix"));
    command.args(arguments).stdout(Stdio::null()).stderr(Stdio::null());
    let started = Instant::now();
    assert!(command.status().unwrap().success(), "{arguments:?}");
    started.elapsed()
}

/// Entries a second from a file of lines to JSON Lines, on one thread and on two.
fn season(notes: &[String]) {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    let mut lines = String::new();
    for note in notes.iter().cycle().take(ENTRIES) {
        let _ = writeln!(lines, "{}", serde_json::json!({ "note": note }));
    }
    std::fs::write(path("season.jsonl"), lines).unwrap();
    let text = |path: &Path| path.display().to_string();
    let (from, to) = (text(&path("season.jsonl")), text(&path("rows.jsonl")));
    println!("{:<38} {:>12} {:>10}", "a season", "entries/s", "ratio");
    let mut first = 0.0;
    for threads in ["1", "2"] {
        let took = (0..3)
            .map(|_| {
                let _ = std::fs::remove_file(&to);
                rectrix(&["season", &from, "--out", &to, "--threads", threads])
            })
            .min();
        let rate = ENTRIES as f64 / took.unwrap_or_default().as_secs_f64();
        first = if first == 0.0 { rate } else { first };
        println!("{:<38} {rate:>12.0} {:>10.2}", format!("threads: {threads}"), rate / first);
    }
}

/// How long the program takes from its start to its end.
fn starts() {
    let note = "small brown bird with a white eyebrow";
    let calls: [(&str, &[&str]); 3] = [
        ("rectrix --version", &["--version"]),
        ("rectrix read --top 0", &["read", "--top", "0", note]),
        ("rectrix read", &["read", note]),
    ];
    println!("\n{:<38} {:>12} {:>10}", "from start to end", "ms", "more");
    let mut best = [Duration::MAX; 3];
    for _ in 0..20 {
        for (best, (_, arguments)) in best.iter_mut().zip(&calls) {
            *best = (*best).min(rectrix(arguments));
        }
    }
    for (took, (name, _)) in best.iter().zip(&calls) {
        let (ms, more) = (took.as_secs_f64() * 1e3, (*took - best[0]).as_secs_f64() * 1e3);
        println!("{name:<38} {ms:>12.2} {more:>10.2}");
    }
}
