//! Ranking species for a reading, with reasons for and against.

use super::areas::Areas;
use super::checklist::Checklist;
use super::evidence::{Aspects, Question, Subject};
use super::likeness::Likeness;
use super::profile::{Profile, profile};
use super::weights::Weights;
use crate::accounts::Accounts;
use crate::knowledge::Knowledge;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::traits::{Certainty, Polarity, Trait};
use crate::words::words;

/// A trait's logarithm of odds from which on it is told as a reason.
const WORTH_TELLING: f32 = 0.15;
/// How many marks that the note does not speak of are told for a candidate.
const MOST_UNRECORDED: usize = 6;

/// A trait as a reason, by its place among the note's traits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reason {
    /// Which trait.
    pub trait_index: usize,
    /// The natural logarithm of how much more (or less) likely it is of this bird than of any.
    pub weight: f32,
}

/// A species that may be the bird.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// Its place among the accounts.
    pub account: usize,
    /// The form that fits best, by its place.
    pub form: usize,
    /// The share of belief, from 0 to 1.
    pub share: f32,
    /// What speaks for it, strongest first.
    pub fits: Vec<Reason>,
    /// What speaks against it, strongest first.
    pub conflicts: Vec<Reason>,
    /// Marks of that form that the note does not speak of, by their place among the form's traits.
    pub unrecorded: Vec<usize>,
}

/// All candidates, best first, and the share of "none of these".
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ranking {
    /// Species, best first.
    pub candidates: Vec<Candidate>,
    /// The share of a bird that is not in the list.
    pub none_of_these: f32,
}

struct Entry {
    account: usize,
    form: usize,
    profile: Profile,
    sex_age: Vec<Name>,
    /// Logarithm of the form's share within its species.
    prior: f32,
}

/// Compares readings with every account.
pub struct Matcher<'a> {
    knowledge: &'a Knowledge,
    areas: Areas,
    likeness: Likeness,
    /// The numbers of the model.
    pub weights: Weights,
    aspects: Aspects,
    entries: Vec<Entry>,
}

impl<'a> Matcher<'a> {
    /// Lays out all accounts for comparing.
    pub fn new(knowledge: &'a Knowledge) -> Self {
        let lexicon = &knowledge.lexicon;
        let areas = Areas::of(lexicon);
        let weights = Weights::of(lexicon);
        let mut entries = Vec::new();
        for (account_index, account) in knowledge.accounts.iter().enumerate() {
            let total: f32 = account.forms.iter().map(|f| f.weight).sum();
            for (form_index, form) in account.forms.iter().enumerate() {
                entries.push(Entry {
                    account: account_index,
                    form: form_index,
                    profile: profile(
                        lexicon,
                        &areas,
                        knowledge.accounts.traits_of(account, form),
                        weights.marking_colour,
                    ),
                    sex_age: label_terms(lexicon, &form.label),
                    prior: (form.weight / total).max(1e-6).ln(),
                });
            }
        }
        Self {
            knowledge,
            areas,
            likeness: Likeness::of(lexicon),
            weights,
            aspects: Aspects::of(lexicon),
            entries,
        }
    }

    /// The accounts behind the candidates.
    pub fn accounts(&self) -> &'a Accounts {
        &self.knowledge.accounts
    }

    /// The groups of like and contrary values.
    pub const fn likeness(&self) -> &Likeness {
        &self.likeness
    }

    /// Ranks the species of `checklist` for the traits of one bird.
    pub fn rank(&self, traits: &[Trait], checklist: &Checklist, most: usize) -> Ranking {
        let table = self.table(traits, checklist);
        let mut scored = self.scored(&table, checklist);
        let none = (self.weights.none_of_these / (1.0 - self.weights.none_of_these)).ln();
        let top = scored.iter().map(|s| s.score).fold(none, f32::max);
        let total: f32 =
            scored.iter().map(|s| (s.score - top).exp()).sum::<f32>() + (none - top).exp();
        scored.sort_by(|a, b| b.score.total_cmp(&a.score).then(a.account.cmp(&b.account)));
        let candidates = scored
            .iter()
            .take(most)
            .map(|s| self.candidate(s, (s.score - top).exp() / total, traits, &table))
            .collect();
        Ranking { candidates, none_of_these: (none - top).exp() / total }
    }

    /// The weight of every trait for every form that the checklist allows.
    fn table(&self, traits: &[Trait], checklist: &Checklist) -> Table {
        let lexicon = &self.knowledge.lexicon;
        let allowed: Vec<usize> = (0..self.entries.len())
            .filter(|&e| checklist.prior(self.entries[e].account) > 0.0)
            .collect();
        let mut columns = Vec::new();
        for (index, one) in traits.iter().enumerate() {
            let Some(mut question) = Question::new(
                lexicon,
                &self.areas,
                &self.likeness,
                &self.weights,
                &self.aspects,
                one,
            ) else {
                continue;
            };
            let chances: Vec<f32> =
                allowed.iter().map(|&e| question.chance(&self.subject(&self.entries[e]))).collect();
            let weight = self.weight_of(traits, index);
            columns.push(self.column(index, &chances, weight));
        }
        Table { allowed, columns }
    }

    fn subject<'s>(&'s self, entry: &'s Entry) -> Subject<'s> {
        Subject {
            profile: &entry.profile,
            mass: self.knowledge.accounts[entry.account].mass,
            sex_age: &entry.sex_age,
        }
    }

    /// Doubted traits count less; several words for one property of one part share their weight.
    fn weight_of(&self, traits: &[Trait], index: usize) -> f32 {
        let one = &traits[index];
        let alike = traits
            .iter()
            .filter(|t| t.area == one.area && t.aspect == one.aspect && t.polarity == one.polarity)
            .count();
        let shared = 1.0 / f32::from(u8::try_from(alike.max(1)).unwrap_or(u8::MAX)).sqrt();
        let sure = if one.certainty == Certainty::Hedged { self.weights.hedged } else { 1.0 };
        shared * sure
    }

    /// Logarithms of the odds against an average bird.
    fn column(&self, index: usize, chances: &[f32], weight: f32) -> Column {
        let count = u16::try_from(chances.len().max(1)).unwrap_or(u16::MAX);
        let mean = (chances.iter().sum::<f32>() / f32::from(count)).max(1e-4);
        let odds = chances
            .iter()
            .map(|&c| {
                let odds = (c.max(1e-4) / mean).ln();
                weight * odds.clamp(-self.weights.most_against, self.weights.most_for)
            })
            .collect();
        Column { trait_index: index, odds }
    }

    fn scored(&self, table: &Table, checklist: &Checklist) -> Vec<Scored> {
        let mut out: Vec<Scored> = Vec::new();
        let count = f32::from(u16::try_from(table.columns.len().max(1)).unwrap_or(u16::MAX));
        let temper = self.weights.temper * count.powf(-self.weights.temper_fall);
        for (row, &e) in table.allowed.iter().enumerate() {
            let entry = &self.entries[e];
            let odds: f32 = table.columns.iter().map(|c| c.odds[row]).sum();
            let score = temper * odds + entry.prior;
            match out.last_mut() {
                Some(last) if last.account == entry.account => {
                    last.all.push(score);
                    if score > last.best {
                        last.best = score;
                        last.row = row;
                    }
                }
                _ => out.push(Scored {
                    account: entry.account,
                    row,
                    best: score,
                    all: vec![score],
                    score: 0.0,
                }),
            }
        }
        let total: f32 = out.iter().map(|s| checklist.prior(s.account)).sum();
        for one in &mut out {
            let sum: f32 = one.all.iter().map(|s| (s - one.best).exp()).sum();
            let prior = (checklist.prior(one.account) / total.max(1e-9)).max(1e-9).ln();
            one.score = one.best + sum.ln() + prior;
        }
        out
    }

    fn candidate(&self, scored: &Scored, share: f32, traits: &[Trait], table: &Table) -> Candidate {
        let entry = &self.entries[table.allowed[scored.row]];
        let mut fits = Vec::new();
        let mut conflicts = Vec::new();
        for column in &table.columns {
            let weight = column.odds[scored.row];
            let reason = Reason { trait_index: column.trait_index, weight };
            if weight >= WORTH_TELLING {
                fits.push(reason);
            } else if weight <= -WORTH_TELLING {
                conflicts.push(reason);
            }
        }
        fits.sort_by(|a, b| b.weight.total_cmp(&a.weight));
        conflicts.sort_by(|a, b| a.weight.total_cmp(&b.weight));
        let account = &self.knowledge.accounts[entry.account];
        let shown = self.knowledge.accounts.traits_of(account, &account.forms[entry.form]);
        let unrecorded = self.unrecorded(shown, traits);
        Candidate { account: entry.account, form: entry.form, share, fits, conflicts, unrecorded }
    }

    /// Marks of a form on parts that the note does not speak of.
    fn unrecorded<'t>(
        &self,
        shown: impl Iterator<Item = &'t Trait>,
        noted: &[Trait],
    ) -> Vec<usize> {
        let topography = &self.knowledge.lexicon.topography;
        let spoken_of = |one: &Trait| {
            noted.iter().any(|n| {
                n.aspect == one.aspect
                    && (topography.covers(n.area, one.area) || topography.covers(one.area, n.area))
            })
        };
        let visible = |one: &Trait| {
            one.area != self.aspects.bird() && one.polarity == Polarity::Present && !spoken_of(one)
        };
        let found = shown.enumerate().filter(|(_, one)| visible(one)).map(|(i, _)| i);
        found.take(MOST_UNRECORDED).collect()
    }
}

/// Sexes and ages that a form's label names.
fn label_terms(lexicon: &Lexicon, label: &str) -> Vec<Name> {
    let set = lexicon.kind_set("sexage");
    let mut found: Vec<Name> = words(label)
        .iter()
        .map(|w| w.span.of(label))
        .chain(std::iter::once(label))
        .flat_map(|text| lexicon.vocabulary.senses(lexicon.vocabulary.find(text)))
        .filter(|s| s.kind.bit() & set != 0)
        .map(|s| lexicon.vocabulary.terms[s.term as usize].id)
        .collect();
    found.sort_unstable();
    found.dedup();
    found
}

struct Table {
    /// Rows: places among the entries.
    allowed: Vec<usize>,
    columns: Vec<Column>,
}

struct Column {
    trait_index: usize,
    odds: Vec<f32>,
}

struct Scored {
    account: usize,
    /// The row of the best form.
    row: usize,
    best: f32,
    all: Vec<f32>,
    score: f32,
}
