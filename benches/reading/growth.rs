//! What more rules and more accounts cost, and how much memory one note takes.
//!
//! What comes on top is made here: the rules there are, about other words, and the accounts there are, under
//! other names.

use crate::ratios::took;
use rectrix::accounts::Account;
use rectrix::built_in;
use rectrix::diagnostic::Source;
use rectrix::knowledge::Knowledge;
use rectrix::lexicon::kinds::{Kind, Kinds};
use rectrix::lexicon::{Layers, Lexicon};
use rectrix::matching::{Checklist, Matcher};
use rectrix::reading::Reader;
use rectrix::rules::Rules;
use std::hint::black_box;
use std::process::{Command, Stdio};
use std::time::Duration;

/// How many times as many rules and accounts there are.
const TIMES: usize = 3;
/// How many rounds each thing is timed.
const ROUNDS: usize = 9;

/// Prints what growing costs.
pub fn print(knowledge: &Knowledge, notes: &[String]) {
    println!("{:<38} {:>12} {:>10}", "growing", "µs a note", "ratio");
    let (plain, accounts) = (built_in::layers(), more_accounts());
    let rules = more_rules(&knowledge.lexicon.kinds);
    let languages: Vec<(&str, (Lexicon, Rules))> = [
        ("reading, the rules and names there are", plain),
        ("reading, three times the rules", rules),
        ("reading, three times the names of birds", accounts),
    ]
    .map(|(name, layers)| (name, Knowledge::read_language(&layers).unwrap()))
    .into();
    let readers: Vec<Reader<'_>> =
        languages.iter().map(|(_, (l, r))| Reader::new(l, r, "north-america")).collect();
    let mut timed: Vec<Box<dyn FnMut() -> Duration + '_>> = Vec::new();
    for reader in &readers {
        timed.push(Box::new(|| took(notes.iter().map(|n| reader.read(black_box(n)).traits.len()))));
    }
    let names: Vec<&str> = languages.iter().map(|l| l.0).collect();
    rows(&names, notes.len(), &mut timed);
    let steps = |at: usize| languages[at].1.1.program.steps.len() as f64;
    println!("{:<38} {:>23.2}\n", "  steps of three times the rules", steps(1) / steps(0));

    let many = with_more_accounts(knowledge);
    let both = [knowledge, &many];
    let matchers = both.map(|k| (Matcher::new(k).unwrap(), Checklist::all(&k.accounts)));
    let reader = knowledge.reader("north-america");
    let few: Vec<_> = notes.iter().take(200).map(|n| reader.read(n).traits).collect();
    let mut timed: Vec<Box<dyn FnMut() -> Duration + '_>> = Vec::new();
    for (matcher, list) in &matchers {
        timed.push(Box::new(|| {
            let rank = |t: &Vec<_>| matcher.rank(black_box(t), list, 10).candidates.len();
            took(few.iter().map(rank))
        }));
    }
    rows(
        &["matching, the accounts there are", "matching, three times the accounts"],
        few.len(),
        &mut timed,
    );
    println!("\npeak memory of `rectrix read` of one note: {}", peak());
}

/// Times each in turn, many rounds over; ratios are to the first.
fn rows(names: &[&str], count: usize, timed: &mut [Box<dyn FnMut() -> Duration + '_>]) {
    let mut best = vec![f64::MAX; timed.len()];
    for _ in 0..ROUNDS {
        for (best, timed) in best.iter_mut().zip(timed.iter_mut()) {
            *best = best.min(timed().as_secs_f64() * 1e6 / count as f64);
        }
    }
    for (name, one) in names.iter().zip(&best) {
        println!("{name:<38} {one:>12.2} {:>10.2}", one / best[0]);
    }
}

/// All built-in files, those of an ending given again, changed for each copy.
fn grown(ending: &str, changed: impl Fn(&str, usize) -> String) -> Layers {
    let mut layers = built_in::layers();
    let files: Vec<Source> =
        layers.base.iter().filter(|s| s.name.ends_with(ending)).cloned().collect();
    for n in 1..TIMES {
        for file in &files {
            let name = file.name.replace(ending, &format!("-{n}{ending}"));
            layers.base.push(Source::new(name, changed(&file.text, n)));
        }
    }
    layers
}

/// Every rule and phrase again under other names, about other words: the same shapes, in which every kind of
/// word that says something gives way to another such kind, a different one in each copy. So a copy stands for
/// a rule of its own; none has the steps of another.
fn more_rules(kinds: &Kinds) -> Layers {
    let all = built_in::layers();
    let head = |line: &str| {
        let mut words = line.split_whitespace();
        matches!(words.next(), Some("rule" | "phrase")).then(|| words.next().map(str::to_owned))?
    };
    let rules = all.base.iter().filter(|s| s.name.ends_with(".rules"));
    let names: Vec<String> =
        rules.flat_map(|s| s.text.lines().filter_map(head).collect::<Vec<_>>()).collect();
    let says = |(_, kind): (_, &Kind)| kind.slot.is_some().then(|| kind.name.clone());
    let kinds: Vec<String> = kinds.iter().filter_map(says).collect();
    grown(".rules", |text, n| {
        let other = |word: &str| match kinds.iter().position(|kind| kind == word) {
            Some(at) => kinds[(at + n) % kinds.len()].clone(),
            None if names.iter().any(|name| name == word) => format!("{word}-copy{n}"),
            None => word.to_owned(),
        };
        let line = |line: &str| match line.trim_start().strip_prefix('|') {
            Some(way) => {
                let (pattern, yields) = way.split_once("->").unwrap_or((way, ""));
                format!("  | {} -> {yields}\n", in_pattern(pattern, &other))
            }
            None if head(line).is_some() => format!("{line}-copy{n}\n"),
            None => format!("{line}\n"),
        };
        text.lines().map(line).collect()
    })
}

/// A pattern with other phrases and kinds; quoted words, lists of ids with their kinds and the names under
/// which something is kept stay.
fn in_pattern(pattern: &str, other: &dyn Fn(&str) -> String) -> String {
    let mut out = String::new();
    let mut word = String::new();
    let (mut quoted, mut listed) = (false, false);
    for c in pattern.chars().chain([' ']) {
        if c.is_ascii_alphanumeric() || c == '-' {
            word.push(c);
            continue;
        }
        let stays = quoted || listed || c == '[' || out.ends_with('$');
        out.push_str(&if stays { word.clone() } else { other(&word) });
        word.clear();
        quoted ^= c == '"';
        listed = !quoted && (listed || c == '[') && c != ']';
        out.push(c);
    }
    out
}

/// Every account again for a bird of another name.
fn more_accounts() -> Layers {
    grown(".acc", |text, n| {
        let line = |line: &str| match line.strip_prefix("# ").and_then(|l| l.split_once(" · ")) {
            Some((english, scientific)) => format!("# {english} copy{n} · {scientific} copy{n}\n"),
            None => format!("{line}\n"),
        };
        text.lines().map(line).collect()
    })
}

/// The same for matching, which asks for accounts that have been read.
fn with_more_accounts(knowledge: &Knowledge) -> Knowledge {
    let mut many = knowledge.clone();
    many.layout = None;
    for n in 1..TIMES {
        for one in knowledge.accounts.iter() {
            let english = format!("{} copy{n}", one.english);
            many.accounts.push(Account { english, ..one.clone() });
        }
    }
    many
}

/// The most memory the program holds while it reads one note.
fn peak() -> String {
    // GNU time tells it; there is no way to ask of a process that has ended without unsafe code.
    let mut command = Command::new("/usr/bin/time");
    command.args(["-f", "%M kB", env!("CARGO_BIN_EXE_rectrix"), "read"]);
    command.arg("small brown bird with a white eyebrow").stdout(Stdio::null());
    match command.output() {
        Ok(done) => String::from_utf8_lossy(&done.stderr).trim().to_owned(),
        Err(_) => "not told, there is no /usr/bin/time".to_owned(),
    }
}
