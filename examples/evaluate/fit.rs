//! The tables of the model, fitted to labelled notes: what colours are called, what people mean by a part,
//! and how much they speak of each. Every number is for all kinds together; accounts are not touched.
//!
//! A statement ("wing black") is drawn from one of the colours that the bird's form shows; from which is not
//! known, so it is shared out among them by how likely each is (expectation), and the tables are counted from
//! the shares (maximisation), again and again. Where there are few statements a table stays near what it
//! is without them: names on one part near those of the colour anywhere, those near what it and colours like
//! it are called by own estimate (`called` entries of the lexicon) and by what is said of those, parts near
//! the tree of parts.

use crate::mention::mentions;
use crate::tables;
use crate::trial::{Birds, Kinds, Notes, read};
use rectrix::diagnostic::Source;
use rectrix::knowledge::Knowledge;
use rectrix::lexicon::Layers;
use rectrix::lexicon::names::Name;
use rectrix::matching::Matcher;
use rectrix::matching::chances::Chances;
use rectrix::matching::forms::Hue;
use rectrix::matching::question::Question;
use rectrix::traits::{Certainty, Polarity, Trait};
use std::collections::BTreeMap;
use std::error::Error;

/// How often shares and tables are worked out in turn.
const ROUNDS: usize = 6;
/// However much is said of one kind of a colour, it counts for no more statements than this.
const MOST_OF_A_KIND: f64 = 40.0;
/// Forms that are less likely than this of a bird are not asked.
const LEAST_FORM: f64 = 0.02;

/// What is said of one bird: area and colour name, with how often.
type Said = BTreeMap<(usize, Name), f64>;

/// For each colour name, its chance of being said of each colour of the palette.
type Columns = BTreeMap<Name, Vec<f32>>;

/// Fitted tables as entries of a lexicon file.
pub struct Fitted {
    /// Entries that take the place of those fitted before, and say nothing.
    blank: String,
    /// The tables.
    pub entries: String,
}

impl Fitted {
    /// Fits the tables to what is said of birds of known kinds.
    pub fn of(layers: &Layers, notes: &Notes, kinds: &Kinds) -> Result<Self, Box<dyn Error>> {
        let built_in = Knowledge::read(layers)?;
        let blank = tables::blank(&built_in.lexicon);
        let spoken = tables::spoken(&built_in.lexicon, &read(&built_in, notes));
        let mut out = Self { blank, entries: spoken.clone() };
        let base = out.over(layers)?;
        let base = Matcher::new(&base)?;
        for _ in 0..ROUNDS {
            let knowledge = out.over(layers)?;
            let matcher = Matcher::new(&knowledge)?;
            let birds = read(&knowledge, notes);
            let (now, base) = (matcher.chances(), base.chances());
            let counts = Counts::of(&knowledge, now, &birds, kinds);
            let names = tables::names(&counts, &knowledge.lexicon, now, base);
            let parts = tables::parts(&counts, &knowledge.lexicon, now, base);
            out.entries = format!("{spoken}{parts}{names}");
        }
        out.entries +=
            "# How readily a part or property is spoken of, by what the bird looks like.\n";
        for by in built_in.lexicon.others("mention-by") {
            let knowledge = out.over(layers)?;
            let matcher = Matcher::new(&knowledge)?;
            let birds = read(&knowledge, notes);
            out.entries += &mentions(&knowledge, matcher.chances(), &birds, kinds, by);
        }
        Ok(out)
    }

    /// A lexicon with these tables.
    fn over(&self, layers: &Layers) -> Result<Knowledge, Box<dyn Error>> {
        Ok(Knowledge::read(&self.layered(layers))?)
    }

    /// The files of a lexicon with these tables before all others.
    pub fn layered(&self, layers: &Layers) -> Layers {
        let mut layers = layers.clone();
        let text = format!("{}{}", self.blank, self.entries);
        layers.own.insert(0, Source::new("fitted", text));
        layers
    }
}

/// Statements, shared out among what forms show.
pub struct Counts {
    /// For each colour of the palette, how often each name is said of it.
    pub names: Vec<BTreeMap<Name, f64>>,
    /// For each part that is said, how often each part is meant.
    pub meant: Vec<Vec<f64>>,
    /// The same, as would be expected of what the tables say now.
    pub expected: Vec<Vec<f64>>,
}

impl Counts {
    fn of(knowledge: &Knowledge, chances: &Chances<'_>, birds: &Birds, kinds: &Kinds) -> Self {
        let (areas, palette) = (chances.areas.count(), &chances.forms.palette);
        let mut out = Self {
            names: vec![BTreeMap::new(); palette.len()],
            meant: vec![vec![0.0; areas]; areas],
            expected: vec![vec![0.0; areas]; areas],
        };
        let mut columns = Columns::new();
        let mut of_kind = out.names.clone();
        let mut last = None;
        for ((kind, _), sentences) in birds {
            if last.replace(kind) != Some(kind) {
                out.take_up(&mut of_kind);
            }
            let said = said(knowledge, chances, sentences.iter().flat_map(|(traits, _)| traits));
            for &(_, name) in said.keys() {
                columns.entry(name).or_insert_with(|| chances.names_of(name));
            }
            for (form, share) in forms(knowledge, chances, &kinds[kind], &said, &columns) {
                out.add(&mut of_kind, chances, (form, share), &said, &columns);
            }
        }
        out.take_up(&mut of_kind);
        out.sum_anywhere(palette);
        out
    }

    /// Adds the names said of one kind; however much is said of it, it is one kind.
    fn take_up(&mut self, of_kind: &mut [BTreeMap<Name, f64>]) {
        for (sum, names) in self.names.iter_mut().zip(of_kind) {
            let said: f64 = names.values().sum();
            let counts = MOST_OF_A_KIND / (MOST_OF_A_KIND + said);
            for (name, times) in std::mem::take(names) {
                *sum.entry(name).or_default() += counts * times;
            }
        }
    }

    /// Adds up what is said of each colour on all parts.
    fn sum_anywhere(&mut self, palette: &[Hue]) {
        let at: BTreeMap<(Name, Name), usize> = anywhere(palette).collect();
        for (from, hue) in palette.iter().enumerate().filter(|(_, h)| h.part.is_some()) {
            if let Some(&to) = at.get(&(hue.colour, hue.tone)) {
                for (name, times) in self.names[from].clone() {
                    *self.names[to].entry(name).or_default() += times;
                }
            }
        }
    }

    /// Adds what is said of a bird, of a form as likely as its share.
    fn add(
        &mut self,
        of_kind: &mut [BTreeMap<Name, f64>],
        chances: &Chances<'_>,
        (form, share): (usize, f64),
        said: &Said,
        columns: &Columns,
    ) {
        for (&(area, name), times) in said {
            let times = times * share;
            let mut all = f64::from(chances.weights.unsaid);
            let mut named = all * f64::from(chances.share_of(name));
            let of: Vec<Seen> = seen(chances, form, (area, name), columns).collect();
            let striking = |one: &Seen| f64::from(chances.striking()[one.colour]);
            for one in &of {
                all += one.weight;
                named += one.weight * striking(one) * one.taken;
            }
            for one in &of {
                let told = one.weight * striking(one) / named;
                self.expected[area][one.part] += times * one.weight / all;
                self.meant[area][one.part] += times * told * one.taken;
                *of_kind[one.colour].entry(name).or_default() += times * told * one.right;
            }
        }
    }
}

/// Where each colour stands in the palette, wherever it is on a bird.
pub fn anywhere(palette: &[Hue]) -> impl Iterator<Item = ((Name, Name), usize)> + '_ {
    let hues = palette.iter().enumerate().filter(|(_, hue)| !hue.part.is_some());
    hues.map(|(at, hue)| ((hue.colour, hue.tone), at))
}

/// A colour that a form shows, beside a name that is said.
struct Seen {
    /// Its place in the palette.
    colour: usize,
    /// Where it is.
    part: usize,
    /// How much it counts for the part that is said.
    weight: f64,
    /// The chance of the name, rightly said of it.
    right: f64,
    /// The same, with what is mistaken for it.
    taken: f64,
}

/// The colours of a form, beside an area and a colour name that are said.
fn seen<'c>(
    chances: &'c Chances<'_>,
    form: usize,
    (area, name): (usize, Name),
    columns: &'c Columns,
) -> impl Iterator<Item = Seen> + 'c {
    let (meant, column) = (chances.areas.meant(area), &columns[&name]);
    let slip = f64::from(chances.weights.colour_slip);
    let slipped = slip * f64::from(chances.share_of(name));
    chances.forms.colours(&chances.forms.list[form]).iter().map(move |one| {
        let (colour, part) = (usize::from(one.colour), usize::from(one.area));
        let right = (1.0 - slip) * f64::from(column[colour]);
        let weight = f64::from(one.weight * meant[part]);
        Seen { colour, part, weight, right, taken: right + slipped }
    })
}

/// The colours that are said to be there.
fn said<'a>(
    knowledge: &Knowledge,
    chances: &Chances<'_>,
    traits: impl Iterator<Item = &'a Trait>,
) -> Said {
    let mut out = Said::new();
    let sure = |t: &&Trait| t.polarity == Polarity::Present && t.certainty != Certainty::Hedged;
    for one in traits.filter(sure) {
        let question = Question::of(&knowledge.lexicon, &chances.areas, &chances.aspects, one);
        if let Some(question) = question.filter(|q| q.aspect == chances.aspects.colour) {
            *out.entry((question.area, question.value)).or_default() += 1.0;
        }
    }
    out
}

/// The forms of a kind that what is said may be of, with the share of belief in each.
fn forms(
    knowledge: &Knowledge,
    chances: &Chances<'_>,
    names: &[String],
    said: &Said,
    columns: &Columns,
) -> Vec<(usize, f64)> {
    let score = |form: usize| {
        let mut score = f64::from(chances.forms.list[form].share).ln();
        for (&about, times) in said {
            let mut all = f64::from(chances.weights.unsaid);
            let mut named = all * f64::from(chances.share_of(about.1));
            for one in seen(chances, form, about, columns) {
                all += one.weight;
                named += one.weight * one.taken;
            }
            score += times * (named / all).ln();
        }
        score
    };
    let list = chances.forms.list.iter().enumerate();
    let of_kind = list.filter(|(_, f)| names.contains(&knowledge.accounts[f.account()].english));
    let scores: Vec<(usize, f64)> = of_kind.map(|(at, _)| (at, score(at))).collect();
    let top = scores.iter().map(|(_, s)| *s).fold(f64::NEG_INFINITY, f64::max);
    let all: f64 = scores.iter().map(|(_, s)| (s - top).exp()).sum();
    let shares = scores.into_iter().map(|(form, s)| (form, (s - top).exp() / all));
    shares.filter(|(_, share)| *share >= LEAST_FORM).collect()
}
