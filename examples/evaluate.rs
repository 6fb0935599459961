//! How often the right kind is among the first, for labelled notes.
//!
//! `evaluate NOTES.tsv KINDS.tsv [LIST.txt] [MOST] [OWN.lex]`: NOTES has kind, bird, sentence on each line (no
//! head); KINDS has kind, English names (several parted by `|`) on each line after a head; LIST names
//! the species to choose among (the kinds themselves and every sixth other account if it is left out);
//! MOST bounds the birds a kind; OWN has entries that go before those of the lexicon, to try other numbers. Prints the share of birds whose kind is first, in the first five and
//! ten, for notes of 1, 3 and 10 sentences, calibration, and the kinds most confused.

use rectrix::diagnostic::Source;
use rectrix::knowledge::Knowledge;
use rectrix::matching::{Checklist, Matcher, checklist};
use rectrix::reading::{Named, Reading};
use rectrix::traits::Trait;
use std::collections::BTreeMap;
use std::error::Error;
use std::fs::read_to_string;

fn main() -> Result<(), Box<dyn Error>> {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [notes, kinds, rest @ ..] = args.as_slice() else {
        return Err("usage: evaluate NOTES.tsv KINDS.tsv [LIST.txt] [MOST] [OWN.lex]".into());
    };
    let mut layers = rectrix::built_in::layers();
    if let Some(own) = rest.get(2) {
        layers.own.push(Source::new(own.as_str(), read_to_string(own)?));
    }
    let knowledge = Knowledge::read(&layers)?;
    let matcher = Matcher::new(&knowledge)?;
    let reader = knowledge.reader("north-america");
    let mut names: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for line in read_to_string(kinds)?.lines().skip(1) {
        let mut fields = line.split('\t');
        let (Some(kind), Some(english)) = (fields.next(), fields.next()) else {
            continue;
        };
        names.insert(kind.to_owned(), english.split('|').map(str::to_owned).collect());
    }
    let list = match rest.first().filter(|f| f.as_str() != "-") {
        Some(file) => read_to_string(file)?,
        None => default_list(&knowledge, &names),
    };
    let (list, wrong) =
        checklist(&knowledge.lexicon, &knowledge.accounts, &Source::new("list", list), None);
    eprint!("{wrong}");
    let most: usize = rest.get(1).and_then(|m| m.parse().ok()).unwrap_or(usize::MAX);
    let mut birds: BTreeMap<(String, String), Vec<String>> = BTreeMap::new();
    for line in read_to_string(notes)?.lines() {
        let mut fields = line.splitn(3, '\t');
        let (Some(kind), Some(bird), Some(text)) = (fields.next(), fields.next(), fields.next())
        else {
            continue;
        };
        let birds = birds.entry((kind.to_owned(), bird.to_owned())).or_default();
        birds.push(text.to_owned());
    }
    let mut per_kind: BTreeMap<String, usize> = BTreeMap::new();
    birds.retain(|(kind, _), _| {
        let n = per_kind.entry(kind.clone()).or_default();
        *n += 1;
        *n <= most
    });
    println!("{} birds, {} species to choose among", birds.len(), list.len());
    let birds: Birds = birds
        .into_iter()
        .map(|(key, texts)| (key, texts.iter().map(|t| said(&reader.read(t))).collect()))
        .collect();
    let trial = Trial {
        knowledge: &knowledge,
        matcher: &matcher,
        names: &names,
        list: &list,
        birds: &birds,
    };
    for size in [1, 3, 10] {
        run(&trial, size);
    }
    for size in [1, 3, 10] {
        off_the_list(&trial, size);
    }
    Ok(())
}

/// What a sentence or a note says: marks, and kinds of bird that are named.
type Noted = (Vec<Trait>, Vec<Named>);

/// For each kind and bird, what each sentence says.
type Birds = BTreeMap<(String, String), Vec<Noted>>;

fn said(reading: &Reading) -> Noted {
    (reading.traits.clone(), reading.named.clone())
}

fn default_list(knowledge: &Knowledge, names: &BTreeMap<String, Vec<String>>) -> String {
    let wanted: Vec<&String> = names.values().flatten().collect();
    let others = knowledge.accounts.iter().map(|a| &a.english).filter(|e| !wanted.contains(e));
    let others: Vec<&String> = others.collect();
    let step = (others.len() / 100).max(1);
    let mut out = String::new();
    for name in wanted.into_iter().chain(others.into_iter().step_by(step).take(100)) {
        out.push_str(name);
        out.push('\n');
    }
    out
}

/// What is tried, and on what.
#[derive(Clone, Copy)]
struct Trial<'a> {
    knowledge: &'a Knowledge,
    matcher: &'a Matcher<'a>,
    /// The names of each kind.
    names: &'a BTreeMap<String, Vec<String>>,
    /// The species to choose among.
    list: &'a Checklist,
    birds: &'a Birds,
}

/// Notes of `size` sentences of one bird each; what is left over makes none.
fn notes_of(sentences: &[Noted], size: usize) -> impl Iterator<Item = Noted> {
    sentences.chunks_exact(size).map(|chunk| {
        let traits = chunk.iter().flat_map(|(traits, _)| traits).cloned().collect();
        (traits, chunk.iter().flat_map(|(_, named)| named).copied().collect())
    })
}

fn run(trial: &Trial<'_>, size: usize) {
    let Trial { knowledge, matcher, names, list, birds } = *trial;
    let mut found = [0usize; 3];
    let mut count = 0usize;
    let mut bins = vec![(0usize, 0.0f64, 0usize); 10];
    let mut confused: BTreeMap<(String, String), usize> = BTreeMap::new();
    let mut by_kind: BTreeMap<String, (usize, usize)> = BTreeMap::new();
    for ((kind, _), sentences) in birds {
        for (traits, named) in notes_of(sentences, size) {
            let ranking = matcher.rank_named(&traits, &named, list, 10);
            let right = |account: usize| names[kind].contains(&knowledge.accounts[account].english);
            let place = ranking.candidates.iter().position(|c| right(c.account));
            count += 1;
            let per = by_kind.entry(kind.clone()).or_default();
            per.1 += 1;
            for (slot, limit) in found.iter_mut().zip([1, 5, 10]) {
                if place.is_some_and(|p| p < limit) {
                    *slot += 1;
                }
            }
            if place.is_some_and(|p| p < 5) {
                per.0 += 1;
            }
            if let Some(first) = ranking.candidates.first() {
                let share = f64::from(first.share);
                let bin = &mut bins[((share * 10.0) as usize).min(9)];
                bin.0 += 1;
                bin.1 += share;
                bin.2 += usize::from(place == Some(0));
                if place != Some(0) {
                    let other = knowledge.accounts[first.account].english.clone();
                    *confused.entry((kind.clone(), other)).or_default() += 1;
                }
            }
        }
    }
    let percent = |n: usize| 100.0 * n as f64 / count.max(1) as f64;
    println!(
        "\n{size} sentence(s), {count} notes: first {:.1}%, first five {:.1}%, first ten {:.1}%",
        percent(found[0]),
        percent(found[1]),
        percent(found[2])
    );
    let mut error = 0.0;
    for (i, (n, shares, right)) in bins.iter().enumerate().filter(|(_, b)| b.0 > 0) {
        let (said, was) = (shares / *n as f64, *right as f64 / *n as f64);
        error += (said - was).abs() * *n as f64 / count as f64;
        println!(
            "  share {}0-{}0%: {n} notes, said {:.0}%, right {:.0}%",
            i,
            i + 1,
            100.0 * said,
            100.0 * was
        );
    }
    println!("  expected calibration error {error:.3}");
    let mut worst: Vec<_> = confused.into_iter().collect();
    worst.sort_by_key(|(_, n)| std::cmp::Reverse(*n));
    for ((kind, other), n) in worst.iter().take(8) {
        println!("  {n:>4}  {kind} taken for {other}");
    }
    let mut weak: Vec<_> = by_kind.into_iter().collect();
    weak.sort_by_key(|(_, (right, all))| right * 1000 / all.max(&1));
    let weak: Vec<String> =
        weak.iter().take(15).map(|(k, (r, a))| format!("{k} {r}/{a}")).collect();
    println!("  weakest in the first five: {}", weak.join(", "));
}

/// The share of "none of these" with the right kind on the list and with it taken off.
fn off_the_list(trial: &Trial<'_>, size: usize) {
    let Trial { knowledge, matcher, names, list, birds } = *trial;
    let (mut on, mut off, mut unknown, mut count, mut told) =
        (0.0f64, 0.0f64, 0.0f64, 0usize, 0usize);
    for ((kind, _), sentences) in birds {
        let right = |i: &usize| names[kind].contains(&knowledge.accounts[*i].english);
        let kinds: Vec<usize> = (0..knowledge.accounts.len()).filter(right).collect();
        let less = kinds.iter().copied().fold(list.clone(), Checklist::without);
        let hidden = kinds.iter().copied().fold(list.clone(), Checklist::hiding);
        for (traits, named) in notes_of(sentences, size).take(3) {
            let with = f64::from(matcher.rank_named(&traits, &named, list, 1).none_of_these);
            let without = f64::from(matcher.rank_named(&traits, &named, &less, 1).none_of_these);
            unknown += f64::from(matcher.rank_named(&traits, &named, &hidden, 1).none_of_these);
            on += with;
            off += without;
            told += usize::from(without > with);
            count += 1;
        }
    }
    let count = count.max(1) as f64;
    println!(
        "none of these, {size} sentence(s): mean share {:.3} with the kind on the list, {:.3} with it off the \
         list, {:.3} without its account; more off the list in {:.0}%",
        on / count,
        off / count,
        unknown / count,
        100.0 * told as f64 / count
    );
}
