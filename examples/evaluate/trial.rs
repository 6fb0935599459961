//! Ranking labelled notes, and counting how often the right kind is among the first.

use rectrix::knowledge::Knowledge;
use rectrix::matching::{Checklist, Matcher, Ranking};
use rectrix::reading::Named;
use rectrix::traits::Trait;
use std::collections::BTreeMap;
use std::fmt::Write;

/// What a sentence or a note says: marks, and kinds of bird that are named.
pub type Noted = (Vec<Trait>, Vec<Named>);

/// For each kind and bird, the sentences about it.
pub type Notes = BTreeMap<(String, String), Vec<String>>;

/// The same, as read: what each sentence says.
pub type Birds = BTreeMap<(String, String), Vec<Noted>>;

/// The English names of each kind.
pub type Kinds = BTreeMap<String, Vec<String>>;

/// Reads the sentences. What comes of it goes with that lexicon alone, since another may number its names otherwise.
pub fn read(knowledge: &Knowledge, notes: &Notes) -> Birds {
    let reader = knowledge.reader("north-america");
    let said = |text: &String| {
        let reading = reader.read(text);
        (reading.traits, reading.named)
    };
    let birds = notes.iter();
    birds.map(|(key, texts)| (key.clone(), texts.iter().map(said).collect())).collect()
}

/// What is tried, and on what.
#[derive(Clone, Copy)]
pub struct Trial<'a> {
    pub knowledge: &'a Knowledge,
    pub matcher: &'a Matcher<'a>,
    pub names: &'a Kinds,
    /// The species to choose among.
    pub list: &'a Checklist,
    pub birds: &'a Birds,
}

/// Notes of `size` sentences of one bird each; what is left over makes none.
fn notes_of(sentences: &[Noted], size: usize) -> impl Iterator<Item = Noted> {
    sentences.chunks_exact(size).map(|chunk| {
        let traits = chunk.iter().flat_map(|(traits, _)| traits).cloned().collect();
        (traits, chunk.iter().flat_map(|(_, named)| named).copied().collect())
    })
}

/// Notes whose first candidate has a share of so many tenths.
#[derive(Clone, Copy, Default)]
struct Bin {
    notes: usize,
    shares: f64,
    right: usize,
}

/// The shares of "none of these", added up.
#[derive(Default)]
struct None {
    notes: usize,
    on: f64,
    off: f64,
    unknown: f64,
    told: usize,
}

/// What came of notes of so many sentences.
pub struct Tally {
    size: usize,
    notes: usize,
    /// Right kind first, in the first five, in the first ten.
    found: [usize; 3],
    bins: [Bin; 10],
    confused: BTreeMap<(String, String), usize>,
    /// In the first five, of all, for each kind.
    by_kind: BTreeMap<String, (usize, usize)>,
    none: None,
}

impl Tally {
    /// Of notes of `size` sentences.
    pub fn of(size: usize) -> Self {
        Self {
            size,
            notes: 0,
            found: [0; 3],
            bins: [Bin::default(); 10],
            confused: BTreeMap::new(),
            by_kind: BTreeMap::new(),
            none: None::default(),
        }
    }

    /// Ranks every note of a trial.
    pub fn add(&mut self, trial: &Trial<'_>) {
        for ((kind, _), sentences) in trial.birds {
            for (traits, named) in notes_of(sentences, self.size) {
                let ranking = trial.matcher.rank_named(&traits, &named, trial.list, 10);
                self.count(trial, kind, &ranking);
            }
        }
    }

    fn count(&mut self, trial: &Trial<'_>, kind: &str, ranking: &Ranking) {
        let english = |account: usize| &trial.knowledge.accounts[account].english;
        let right = |account: usize| trial.names[kind].contains(english(account));
        let place = ranking.candidates.iter().position(|c| right(c.account));
        self.notes += 1;
        for (slot, limit) in self.found.iter_mut().zip([1, 5, 10]) {
            *slot += usize::from(place.is_some_and(|p| p < limit));
        }
        let of_kind = self.by_kind.entry(kind.to_owned()).or_default();
        of_kind.0 += usize::from(place.is_some_and(|p| p < 5));
        of_kind.1 += 1;
        let Some(first) = ranking.candidates.first() else {
            return;
        };
        let share = f64::from(first.share);
        let bin = &mut self.bins[((share * 10.0) as usize).min(9)];
        bin.notes += 1;
        bin.shares += share;
        if place == Some(0) {
            bin.right += 1;
        } else {
            let other = english(first.account).clone();
            *self.confused.entry((kind.to_owned(), other)).or_default() += 1;
        }
    }

    /// Adds up the share of "none of these" with the right kind on the list and with it taken off.
    pub fn off_the_list(&mut self, trial: &Trial<'_>) {
        let Trial { knowledge, matcher, names, list, birds } = *trial;
        for ((kind, _), sentences) in birds {
            let right = |i: &usize| names[kind].contains(&knowledge.accounts[*i].english);
            let kinds: Vec<usize> = (0..knowledge.accounts.len()).filter(right).collect();
            let less = kinds.iter().copied().fold(list.clone(), Checklist::without);
            let hidden = kinds.iter().copied().fold(list.clone(), Checklist::hiding);
            for (traits, named) in notes_of(sentences, self.size).take(3) {
                let none = |list: &Checklist| {
                    f64::from(matcher.rank_named(&traits, &named, list, 1).none_of_these)
                };
                let (on, off) = (none(list), none(&less));
                self.none.on += on;
                self.none.off += off;
                self.none.unknown += none(&hidden);
                self.none.told += usize::from(off > on);
                self.none.notes += 1;
            }
        }
    }

    /// All of it, to be read; the shares alone if it is to be brief.
    pub fn report(&self, brief: bool) -> String {
        let share = |n: usize| 100.0 * n as f64 / self.notes.max(1) as f64;
        let [first, five, ten] = self.found.map(share);
        let mut out = format!(
            "{} sentence(s), {} notes: first {first:.1}%, first five {five:.1}%, first ten {ten:.1}%, expected \
             calibration error {:.3}\n",
            self.size,
            self.notes,
            self.calibration_error(),
        );
        if !brief {
            self.details(&mut out).expect("writing to a string does not fail");
        }
        out
    }

    /// The mean distance of what is said from what is right, over all bins.
    fn calibration_error(&self) -> f64 {
        let off = |b: &Bin| (b.shares - b.right as f64).abs();
        self.bins.iter().map(off).sum::<f64>() / self.notes.max(1) as f64
    }

    fn details(&self, out: &mut String) -> std::fmt::Result {
        for (i, bin) in self.bins.iter().enumerate().filter(|(_, b)| b.notes > 0) {
            let percent = |x: f64| 100.0 * x / bin.notes as f64;
            let (said, was) = (percent(bin.shares), percent(bin.right as f64));
            let (from, notes) = (i * 10, bin.notes);
            writeln!(
                out,
                "  share {from}-{}%: {notes} notes, said {said:.0}%, right {was:.0}%",
                from + 10
            )?;
        }
        let mut worst: Vec<_> = self.confused.iter().collect();
        worst.sort_by_key(|(_, n)| std::cmp::Reverse(**n));
        for ((kind, other), n) in worst.iter().take(8) {
            writeln!(out, "  {n:>4}  {kind} taken for {other}")?;
        }
        let mut weak: Vec<_> = self.by_kind.iter().collect();
        weak.sort_by_key(|(_, (right, all))| right * 1000 / (*all).max(1));
        let weak: Vec<String> =
            weak.iter().take(15).map(|(k, (r, a))| format!("{k} {r}/{a}")).collect();
        writeln!(out, "  weakest in the first five: {}", weak.join(", "))?;
        let None { notes, on, off, unknown, told } = &self.none;
        let mean = |sum: &f64| sum / (*notes).max(1) as f64;
        writeln!(
            out,
            "  none of these: mean share {:.3} with the kind on the list, {:.3} with it off the list, {:.3} \
             without its account; more off the list in {:.0}%\n",
            mean(on),
            mean(off),
            mean(unknown),
            100.0 * *told as f64 / (*notes).max(1) as f64
        )
    }
}
