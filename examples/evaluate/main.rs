//! How often the right kind is among the first, for labelled notes; and the tables of the model fitted to notes.
//!
//! NOTES has kind, bird, sentence on each line (no head); KINDS has kind, English names (several parted
//! by `|`) on each line after a head. Prints the share of birds whose kind is first, in the first five and
//! ten, for notes of 1, 3 and 10 sentences, calibration, and the kinds most confused.

mod fit;
mod mention;
mod tables;
mod trial;

use clap::Parser;
use fit::Fitted;
use rectrix::diagnostic::Source;
use rectrix::knowledge::Knowledge;
use rectrix::lexicon::Layers;
use rectrix::matching::{Matcher, checklist};
use std::collections::BTreeMap;
use std::error::Error;
use std::fs::{read_to_string, write};
use std::hash::{BuildHasher, BuildHasherDefault, DefaultHasher};
use std::path::{Path, PathBuf};
use trial::{Kinds, Notes, Tally, Trial};

#[derive(Parser)]
#[command(about = "Ranks labelled notes and counts how often the right kind is among the first")]
struct Args {
    /// Lines of kind, bird, sentence
    notes: PathBuf,
    /// Lines of kind, English names, after a head
    kinds: PathBuf,
    /// Species to choose among; the kinds and a hundred other accounts if left out
    #[arg(long, value_name = "FILE")]
    list: Option<PathBuf>,
    /// Most birds of a kind
    #[arg(long, value_name = "N")]
    most: Option<usize>,
    /// Entries that go before those of the lexicon, to try other numbers
    #[arg(long, value_name = "FILE")]
    own: Option<PathBuf>,
    /// Judge each of N parts of the kinds by tables that were fitted to the other kinds alone
    #[arg(long, value_name = "N")]
    left_out: Option<usize>,
    /// Fit the tables to all notes and write them here, below the comment that the file opens with
    #[arg(long, value_name = "FILE")]
    fit: Option<PathBuf>,
    /// How the kinds are dealt out to the parts; another number, another deal
    #[arg(long, default_value_t = 0)]
    deal: usize,
    /// Print the shares alone
    #[arg(long)]
    brief: bool,
}

fn main() -> Result<(), Box<dyn Error>> {
    let args = Args::parse();
    let mut layers = rectrix::built_in::layers();
    if let Some(own) = &args.own {
        layers.own.push(Source::new(own.display().to_string(), read_to_string(own)?));
    }
    let knowledge = Knowledge::read(&layers)?;
    let names = names(&read_to_string(&args.kinds)?);
    let list = match &args.list {
        Some(file) => read_to_string(file)?,
        None => default_list(&knowledge, &names),
    };
    let notes = notes(&read_to_string(&args.notes)?, args.most.unwrap_or(usize::MAX));
    if let Some(file) = &args.fit {
        let entries = Fitted::of(&layers, &notes, &names)?.entries;
        write(file, opening(file) + entries.trim_end() + "\n")?;
        return Ok(());
    }
    // The tables that judge each kind.
    let parts: Vec<(Layers, Notes)> = match args.left_out {
        None => vec![(layers, notes)],
        Some(parts) => left_out(&layers, &notes, &names, parts.max(2), args.deal)?,
    };
    let mut tallies: Vec<Tally> = [1, 3, 10].into_iter().map(Tally::of).collect();
    for (layers, notes) in &parts {
        let knowledge = Knowledge::read(layers)?;
        let birds = &trial::read(&knowledge, notes);
        let source = Source::new("list", list.clone());
        let (list, wrong) = checklist(&knowledge.lexicon, &knowledge.accounts, &source, None);
        eprint!("{wrong}");
        let matcher = Matcher::new(&knowledge)?;
        let trial =
            Trial { knowledge: &knowledge, matcher: &matcher, names: &names, list: &list, birds };
        for tally in &mut tallies {
            tally.add(&trial);
            if !args.brief {
                tally.off_the_list(&trial);
            }
        }
        eprintln!("{} birds, {} species to choose among", birds.len(), list.len());
    }
    for tally in &tallies {
        print!("{}", tally.report(args.brief));
    }
    Ok(())
}

/// The comment that a file opens with, which stays; what stands right above an entry belongs to that.
fn opening(file: &Path) -> String {
    let text = read_to_string(file).unwrap_or_default();
    let comment = |head: &&str| head.lines().all(|line| line.starts_with('#'));
    let head = text.split_once("\n\n").map(|(head, _)| head).filter(comment);
    head.map_or_else(String::new, |head| format!("{head}\n\n"))
}

/// The English names of each kind.
fn names(text: &str) -> Kinds {
    let mut out = Kinds::new();
    for line in text.lines().skip(1) {
        let mut fields = line.split('\t');
        if let (Some(kind), Some(english)) = (fields.next(), fields.next()) {
            out.insert(kind.to_owned(), english.split('|').map(str::to_owned).collect());
        }
    }
    out
}

/// The sentences about each bird.
fn notes(text: &str, most: usize) -> Notes {
    let mut out = Notes::new();
    for line in text.lines() {
        let mut fields = line.splitn(3, '\t');
        let (Some(kind), Some(bird), Some(text)) = (fields.next(), fields.next(), fields.next())
        else {
            continue;
        };
        out.entry((kind.to_owned(), bird.to_owned())).or_default().push(text.to_owned());
    }
    let mut per_kind: BTreeMap<String, usize> = BTreeMap::new();
    out.retain(|(kind, _), _| {
        let n = per_kind.entry(kind.clone()).or_default();
        *n += 1;
        *n <= most
    });
    out
}

/// The kinds in parts, each with the tables fitted to all others.
fn left_out(
    layers: &Layers,
    notes: &Notes,
    names: &Kinds,
    parts: usize,
    deal: usize,
) -> Result<Vec<(Layers, Notes)>, Box<dyn Error>> {
    let mut order: Vec<&String> = names.keys().collect();
    order.sort_by_key(|kind| BuildHasherDefault::<DefaultHasher>::default().hash_one((deal, kind)));
    let part_of: BTreeMap<&String, usize> =
        order.into_iter().enumerate().map(|(at, kind)| (kind, at % parts)).collect();
    let mut out = Vec::new();
    for part in 0..parts {
        let (inside, outside): (Notes, Notes) = notes
            .iter()
            .map(|(key, said)| (key.clone(), said.clone()))
            .partition(|((kind, _), _)| part_of.get(kind) == Some(&part));
        let fitted = Fitted::of(layers, &outside, names)?.layered(layers);
        out.push((fitted, inside));
    }
    Ok(out)
}

fn default_list(knowledge: &Knowledge, names: &Kinds) -> String {
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
