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
/// How many times a season is read, and the program started.
const SEASONS: usize = 3;
const STARTS: usize = 40;
/// How many entries a season has here.
const ENTRIES: usize = 100_000;

/// What is timed: its name, how many notes it goes over, and the thing itself, which tells how long it took.
type Row<'a> = (&'a str, usize, Box<dyn FnMut() -> Duration + 'a>);

/// Prints the table of ratios.
pub fn print(knowledge: &Knowledge, notes: &[String]) {
    in_memory(knowledge, notes);
    season(notes);
    starts();
}

fn in_memory(knowledge: &Knowledge, notes: &[String]) {
    let region = "north-america";
    let reader = knowledge.reader(region);
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
    let words = |n: &String| black_box(n.as_str()).unicode_words().count();
    let read = |n: &String| reader.read(black_box(n)).traits.len();
    let mut json = to_json(knowledge, region);
    // New notes come to a reader that has read others: every other note is read before.
    let (before, new): (Vec<_>, Vec<_>) = notes.iter().enumerate().partition(|(n, _)| n % 2 == 0);
    let new_notes = || {
        let reader = knowledge.reader(region);
        each(before.iter().map(|(_, n)| reader.read(n).traits.len()));
        took(new.iter().map(|(_, n)| reader.read(black_box(n)).traits.len()))
    };
    let new_to_json = || {
        let mut json = to_json(knowledge, region);
        each(before.iter().map(|(_, n)| json(n)));
        took(new.iter().map(|(_, n)| json(n)))
    };
    let mut rows: Vec<Row<'_>> = vec![
        ("bare word splitting", notes.len(), Box::new(|| took(notes.iter().map(split)))),
        ("the words alone", notes.len(), Box::new(|| took(notes.iter().map(words)))),
        (
            "scan for 1,500 forms (Aho-Corasick)",
            notes.len(),
            Box::new(|| took(notes.iter().map(|n| scan.find_iter(black_box(n)).count()))),
        ),
        (
            "reading to traits, notes come again",
            notes.len(),
            Box::new(|| took(notes.iter().map(read))),
        ),
        (
            "the same, twice the notes",
            twice.len(),
            Box::new(|| took(twice.iter().map(|n| read(n)))),
        ),
        ("reading to traits, new notes", new.len(), Box::new(new_notes)),
        (
            "reading to JSON, notes come again",
            notes.len(),
            Box::new(|| took(notes.iter().map(|n| json(n)))),
        ),
        ("reading to JSON, new notes", new.len(), Box::new(new_to_json)),
        (
            "matching with all accounts",
            few.len(),
            Box::new(|| {
                took(few.iter().map(|t| matcher.rank(black_box(t), &list, 10).candidates.len()))
            }),
        ),
    ];
    let mut best = vec![Duration::MAX; rows.len()];
    for _ in 0..ROUNDS {
        for (best, row) in best.iter_mut().zip(&mut rows) {
            *best = (*best).min(row.2());
        }
    }
    let a_note = |i: usize| best[i].as_secs_f64() * 1e6 / rows[i].1 as f64;
    let mut out = format!("\n{:<38} {:>12} {:>10}\n", "a note", "µs", "ratio");
    for (i, row) in rows.iter().enumerate() {
        let _ = writeln!(out, "{:<38} {:>12.2} {:>10.2}", row.0, a_note(i), a_note(i) / a_note(0));
    }
    println!("{out}");
}

/// Writes notes as `rectrix read --format jsonl` writes them, the bytes of serde_json; tells the length of a line.
fn to_json<'k>(knowledge: &'k Knowledge, region: &str) -> impl FnMut(&str) -> usize + use<'k> {
    let options = Options { top: 0, checklist: Checklist::all(&knowledge.accounts) };
    let analyst = Analyst::new(knowledge, region, options).unwrap();
    let mut line = Vec::new();
    move |note| {
        line.clear();
        analyst.analyse("1", black_box(note)).write_json(&mut line);
        line.len()
    }
}

fn each(all: impl Iterator<Item = usize>) {
    black_box(all.sum::<usize>());
}

/// How long that takes.
pub fn took(all: impl Iterator<Item = usize>) -> Duration {
    let started = Instant::now();
    each(all);
    started.elapsed()
}

const PROGRAM: &str = env!("CARGO_BIN_EXE_rectrix");

/// How long a program runs, from its start to its end.
fn run(program: &str, arguments: &[&str]) -> Duration {
    let mut command = Command::new(program);
    command.args(arguments).stdout(Stdio::null()).stderr(Stdio::null());
    let started = Instant::now();
    assert!(command.status().unwrap().success(), "{program} {arguments:?}");
    started.elapsed()
}

/// Whether there is a program of that name that runs so.
fn is_there(program: &str, arguments: &[&str]) -> bool {
    let mut command = Command::new(program);
    command.args(arguments).stdout(Stdio::null()).stderr(Stdio::null());
    command.status().is_ok_and(|status| status.success())
}

/// Entries a second from a file of lines to JSON Lines. Parting and writing have threads of their own, so that
/// one thread that reads is not one core: that takes all threads bound to one, by `taskset`.
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
    let on_one = ["-c", "0", PROGRAM];
    let rows: [(&str, &[&str], &str); 3] = [
        ("one core, all threads bound to it", &on_one, "1"),
        ("all cores, one thread that reads", &[], "1"),
        ("all cores, two threads that read", &[], "2"),
    ];
    println!("{:<38} {:>12} {:>10}", "a season", "entries/s", "ratio");
    let mut best = [Duration::MAX; 3];
    let can_bind = is_there("taskset", &["-c", "0", "true"]);
    for _ in 0..SEASONS {
        for (best, (_, bound, threads)) in best.iter_mut().zip(&rows) {
            if !bound.is_empty() && !can_bind {
                continue;
            }
            let program = if bound.is_empty() { PROGRAM } else { "taskset" };
            let season = ["season", &from, "--out", &to, "--threads", threads];
            let _ = std::fs::remove_file(&to);
            *best = (*best).min(run(program, &[*bound, &season].concat()));
        }
    }
    for (took, (name, ..)) in best.iter().zip(&rows) {
        if *took == Duration::MAX {
            println!("{name:<38} {:>12}", "no taskset");
            continue;
        }
        let ratio = best[0].as_secs_f64() / took.as_secs_f64();
        println!("{name:<38} {:>12.0} {ratio:>10.2}", ENTRIES as f64 / took.as_secs_f64());
    }
}

/// How long the program takes from its start to its end, against a program that prints one line: `echo`, in C.
fn starts() {
    let note = "small brown bird with a white eyebrow";
    let calls: [(&str, &str, &[&str]); 4] = [
        ("echo, a program that prints one line", "echo", &[note]),
        ("rectrix --version", PROGRAM, &["--version"]),
        ("rectrix read --top 0", PROGRAM, &["read", "--top", "0", note]),
        ("rectrix read", PROGRAM, &["read", note]),
    ];
    // Where there is no such program, the rest is told against the second.
    let first = usize::from(!is_there("echo", &[]));
    println!("\n{:<38} {:>12} {:>10}", "from start to end", "ms", "more");
    let mut best = [Duration::MAX; 4];
    for _ in 0..STARTS {
        for (best, (_, program, arguments)) in best.iter_mut().zip(&calls).skip(first) {
            *best = (*best).min(run(program, arguments));
        }
    }
    for (took, (name, ..)) in best.iter().zip(&calls).skip(first) {
        let (ms, more) = (took.as_secs_f64() * 1e3, (*took - best[first]).as_secs_f64() * 1e3);
        println!("{name:<38} {ms:>12.2} {more:>10.2}");
    }
}
