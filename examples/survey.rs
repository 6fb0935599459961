//! How much of many notes is read: the share that gives a mark, the share that gives one on a named
//! part, the share of words left unplaced, and which words those are.
//!
//! `survey [--show] [--repairs] < NOTES`, one note a line; `--show` prints every reading,
//! `--repairs` every change made to words before reading, with how often and one note it is made in.

use rectrix::built_in;
use rectrix::knowledge::Knowledge;
use rectrix::reading::{Fate, Reading};
use rectrix::traits::{Certainty, Trait};
use std::collections::BTreeMap;
use std::error::Error;
use std::io::read_to_string;
use std::time::Instant;

fn main() -> Result<(), Box<dyn Error>> {
    let show = std::env::args().any(|a| a == "--show");
    let (lexicon, rules) = Knowledge::read_language(&built_in::layers())?;
    let knowledge = Knowledge { lexicon, rules, accounts: Default::default(), layout: None };
    let reader = knowledge.reader(knowledge.lexicon.default_region());
    let bird = knowledge.lexicon.names.find("bird");
    let input = read_to_string(std::io::stdin())?;
    let mut counts = [0usize; 3];
    let mut words = 0usize;
    let mut lost: BTreeMap<String, usize> = BTreeMap::new();
    let list_repairs = std::env::args().any(|a| a == "--repairs");
    let mut repairs: BTreeMap<(&str, String, String), (usize, &str)> = BTreeMap::new();
    let start = Instant::now();
    for note in input.lines() {
        let reading = reader.read(note);
        counts[0] += 1;
        counts[1] += usize::from(!reading.traits.is_empty());
        counts[2] += usize::from(reading.traits.iter().any(|t| t.area != bird));
        words += reading.tokens.iter().filter(|t| t.is_word).count();
        for span in reading.unplaced() {
            *lost.entry(span.of(note).to_lowercase()).or_default() += 1;
        }
        for one in reading.repairs.iter().filter(|_| list_repairs) {
            let key = (one.why.text(), one.span.of(note).to_lowercase(), one.read_as.clone());
            repairs.entry(key).or_insert((0, note)).0 += 1;
        }
        if show {
            print(&knowledge, note, &reading);
        }
    }
    let taken = start.elapsed();
    let percent = |n: usize, of: usize| 100.0 * n as f64 / of.max(1) as f64;
    let unplaced: usize = lost.values().sum();
    println!("{} notes, {words} words, read in {taken:.2?}", counts[0]);
    println!("a mark of any kind: {:.2}%", percent(counts[1], counts[0]));
    println!("a mark on a named part: {:.2}%", percent(counts[2], counts[0]));
    println!("words unplaced: {:.2}%", percent(unplaced, words));
    let mut lost: Vec<_> = lost.into_iter().collect();
    lost.sort_by_key(|(word, n)| (std::cmp::Reverse(*n), word.clone()));
    let most: Vec<String> = lost.iter().take(80).map(|(w, n)| format!("{w} {n}")).collect();
    for ((why, written, read_as), (times, note)) in &repairs {
        println!("{why}\t{times}\t{written}\t{read_as}\t{note}");
    }
    println!("most often unplaced: {}", most.join(", "));
    Ok(())
}

fn print(knowledge: &Knowledge, note: &str, reading: &Reading) {
    println!("{note}");
    for one in &reading.traits {
        println!(
            "    {}  <{}> {}",
            line(knowledge, one),
            one.as_written(note),
            knowledge.rules.rules[one.rule].name
        );
    }
    for segment in &reading.segments {
        match &segment.fate {
            Fate::Unplaced => println!("    unplaced: {}", segment.span.of(note)),
            Fate::SetAside(why) if why != "sign" && why != "joining word" => {
                println!("    set aside: {} ({why})", segment.span.of(note));
            }
            _ => {}
        }
    }
}

fn line(knowledge: &Knowledge, one: &Trait) -> String {
    let name = |n| knowledge.lexicon.names.text(n);
    let bird = if one.bird == 1 { String::new() } else { format!("{}: ", one.bird) };
    let mut out = format!(
        "{bird}{} {} {}",
        name(one.area),
        name(one.aspect),
        one.value.text(&knowledge.lexicon)
    );
    for (key, value) in [("tone", one.tone), ("extent", one.extent), ("position", one.position)] {
        if value.is_some() {
            out.push_str(&format!(" {key}={}", name(value)));
        }
    }
    if one.polarity != rectrix::traits::Polarity::Present {
        out.push_str(&format!(" {}", one.polarity.text()));
    }
    if one.certainty == Certainty::Hedged {
        out.push_str(" hedged");
    }
    out
}
