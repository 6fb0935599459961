//! Reading one entry: its marks by bird, and what the description leaves out.

use super::cells::is_plain;
use crate::entries::Entry;
use crate::entries::map::Places;
use crate::gaps::{Description, MarkSet, Told};
use crate::knowledge::Knowledge;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::output::build::{Pato, mark, pato};
use crate::output::model::Mark;
use crate::reading::{Reader, Reading};
use crate::span::Span;
use crate::traits::Trait;

/// When a description is good enough for a record, as the lexicon says.
#[derive(Clone, Debug, Default)]
pub struct Enough {
    /// How many marks must be told.
    pub least: u32,
    /// Marks that must be among them.
    pub needs: MarkSet,
    /// The same, in words.
    pub words: String,
}

/// Reads entries; one for each thread.
pub struct Desk<'a> {
    /// Everything the program knows.
    pub knowledge: &'a Knowledge,
    /// The marks of a full description.
    pub description: Description,
    /// When a description is good enough.
    pub enough: Enough,
    /// Whether every id is such that no table has to quote it.
    pub plain_ids: bool,
    reader: Reader<'a>,
    pato: Pato<'a>,
}

/// One bird of an entry.
#[derive(Clone, Debug, Default)]
pub struct BirdRead {
    /// Its number in the note, from 1.
    pub bird: u32,
    /// Its traits in topographical order, by their places in the reading.
    pub traits: Vec<usize>,
    /// What they say of each mark of a full description.
    pub told: Told,
}

impl BirdRead {
    /// Whether the description is good enough for a record.
    pub const fn is_enough(&self, enough: &Enough) -> bool {
        let told = self.told.recorded | self.told.absent;
        told.count_ones() >= enough.least && told & enough.needs == enough.needs
    }
}

/// An entry, read.
#[derive(Clone, Debug)]
pub struct Read<'e> {
    /// The entry.
    pub entry: &'e Entry,
    /// The file's name.
    pub file: &'e str,
    /// Where its bytes stand in the file.
    pub places: Places<'e>,
    /// What was read.
    pub reading: Reading,
    /// Its birds, by number; none where no mark was found.
    pub birds: Vec<BirdRead>,
    /// Birds named by the observer, each once: in the note or as its identification.
    pub named: Vec<Name>,
}

impl Read<'_> {
    /// The bytes and the line of the file for a stretch of the note.
    pub fn place(&self, span: Span) -> ([u64; 2], u64) {
        let (start, line) = self.places.place(span.start);
        ([start, self.places.end(span.end)], line)
    }
}

impl<'a> Desk<'a> {
    /// A desk for a region.
    pub fn new(knowledge: &'a Knowledge, region: &str) -> Self {
        let description = Description::of(&knowledge.lexicon);
        let enough = enough(&knowledge.lexicon, &description);
        let pato = pato(&knowledge.lexicon);
        let names = &knowledge.lexicon.names;
        let count = u16::try_from(names.len()).unwrap_or(u16::MAX);
        let plain_ids = (0..count).map(|n| names.text(Name(n))).all(is_plain)
            && knowledge.rules.rules.iter().all(|rule| is_plain(&rule.name))
            && pato.values().all(|id| is_plain(id));
        Self { knowledge, reader: knowledge.reader(region), pato, plain_ids, description, enough }
    }

    /// The text of a name.
    pub fn text(&self, name: Name) -> &'a str {
        self.knowledge.lexicon.names.text(name)
    }

    /// The outside id of a trait's value.
    pub fn pato(&self, one: &Trait) -> Option<&'a str> {
        self.pato.get(&one.value.term()).copied()
    }

    /// The ids of the marks in a set.
    pub fn ids(&self, set: MarkSet) -> impl Iterator<Item = &str> {
        self.description.of_set(set).map(|m| m.id.as_str())
    }

    /// What a trait says, as published.
    pub fn mark<'s>(&'s self, note: &'s str, one: &Trait) -> Mark<'s> {
        mark(&self.knowledge.lexicon, &self.pato, note, one)
    }

    /// Reads an entry.
    pub fn read<'e>(&self, entry: &'e Entry, file: &'e str) -> Read<'e> {
        let reading = self.reader.read(&entry.text);
        let birds = self.birds(&reading);
        let mut named: Vec<Name> = Vec::new();
        let mut add = |list: &[crate::reading::Named]| {
            for one in list {
                if !named.contains(&one.bird) {
                    named.push(one.bird);
                }
            }
        };
        match &entry.heading.identification {
            Some(text) => add(&self.reader.read(text).named),
            None => add(&reading.named),
        }
        let file = entry.file.as_deref().unwrap_or(file);
        let places = Places::new(&entry.map, &entry.text);
        Read { entry, file, places, reading, birds, named }
    }

    fn birds(&self, reading: &Reading) -> Vec<BirdRead> {
        let lexicon = &self.knowledge.lexicon;
        let mut order: Vec<_> = (0..)
            .zip(&reading.traits)
            .map(|(i, one): (usize, &Trait)| {
                (one.bird, lexicon.topography.order(one.area), one.parts.hull(), i)
            })
            .collect();
        // No two have the same key.
        order.sort_unstable();
        let mut out: Vec<BirdRead> = Vec::new();
        for (.., i) in order {
            let one = &reading.traits[i];
            if out.last().is_none_or(|b| b.bird != one.bird) {
                let traits = Vec::with_capacity(reading.traits.len());
                out.push(BirdRead { bird: one.bird, traits, ..BirdRead::default() });
            }
            if let Some(bird) = out.last_mut() {
                bird.traits.push(i);
            }
        }
        for bird in &mut out {
            bird.told = self.description.told(bird.traits.iter().map(|&i| &reading.traits[i]));
        }
        out
    }
}

fn enough(lexicon: &Lexicon, description: &Description) -> Enough {
    let Some(entry) = lexicon.others("note").find(|e| e.get("role") == Some("record")) else {
        return Enough::default();
    };
    let needs = entry
        .items("needs")
        .filter_map(|id| description.marks.iter().position(|m| m.id == id))
        .fold(0, |set, i| set | 1 << i);
    Enough {
        least: entry.get("least").and_then(|n| n.parse().ok()).unwrap_or(0),
        needs,
        words: entry.get("means").unwrap_or_default().to_owned(),
    }
}
