//! Ranking species for a reading, with reasons for and against.

use super::chances::Chances;
use super::checklist::Checklist;
use super::likeness::Likeness;
use super::question::Question;
use super::rows::{Row, Rows};
use super::weights::Weights;
use crate::accounts::Accounts;
use crate::diagnostic::Diagnostics;
use crate::knowledge::Knowledge;
use crate::traits::{Certainty, Polarity, Trait};
use std::ops::Range;
use std::sync::Arc;

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

/// Compares readings with every account.
pub struct Matcher<'a> {
    knowledge: &'a Knowledge,
    chances: Chances<'a>,
    rows: Rows,
    /// The forms of each account.
    forms_of: Vec<Range<usize>>,
    /// For each form, how many more colours than of an average bird one speaks of.
    talk: Vec<f32>,
    /// Logarithm of each form's share within its species.
    log_share: Vec<f32>,
}

/// What one trait says of all forms.
struct Evidence {
    trait_index: usize,
    row: Arc<Row>,
    /// The logarithm of the chance of an average bird.
    average: f32,
    /// How much it counts.
    weight: f32,
}

impl Evidence {
    /// What it says of a form, within the bounds that no single trait may pass.
    fn of(&self, form: usize, weights: &Weights) -> f32 {
        let odds = self.row.logs[form] - self.average;
        self.weight * odds.clamp(-weights.most_against, weights.most_for)
    }
}

/// A species with its score, and its best form.
#[derive(Clone, Copy)]
struct Scored {
    account: usize,
    form: usize,
    score: f32,
}

impl<'a> Matcher<'a> {
    /// Lays out all accounts for comparing.
    ///
    /// # Errors
    /// The numbers of the model that the lexicon lacks.
    pub fn new(knowledge: &'a Knowledge) -> Result<Self, Diagnostics> {
        let weights = Weights::of(&knowledge.lexicon)?;
        let chances = Chances::new(knowledge, weights);
        let mut forms_of: Vec<Range<usize>> = Vec::with_capacity(knowledge.accounts.len());
        for (at, form) in chances.forms.list.iter().enumerate() {
            match forms_of.get_mut(form.account) {
                Some(range) => range.end = at + 1,
                None => forms_of.push(at..at + 1),
            }
        }
        let mut talk = chances.talk(&spoken_of(knowledge, &chances));
        let mean = talk.iter().sum::<f32>() / count(talk.len());
        for one in &mut talk {
            *one -= mean;
        }
        let log_share = chances.forms.list.iter().map(|f| f.share.ln()).collect();
        Ok(Self { knowledge, chances, rows: Rows::default(), forms_of, talk, log_share })
    }

    /// The accounts behind the candidates.
    pub fn accounts(&self) -> &'a Accounts {
        &self.knowledge.accounts
    }

    /// The numbers of the model.
    pub const fn weights(&self) -> &Weights {
        &self.chances.weights
    }

    /// The groups of like and contrary values.
    pub const fn likeness(&self) -> &Likeness {
        &self.chances.likeness
    }

    /// Works out the chances themselves.
    pub const fn chances(&self) -> &Chances<'a> {
        &self.chances
    }

    /// Ranks the species of `checklist` for the traits of one bird.
    pub fn rank(&self, traits: &[Trait], checklist: &Checklist, most: usize) -> Ranking {
        let evidence = self.evidence(traits, checklist);
        let mut scored = self.scored(&evidence, traits, checklist);
        let none = self.weights().none_of_these;
        let none = (none / (1.0 - none)).ln();
        let top = scored.iter().map(|s| s.score).fold(none, f32::max);
        let total: f32 =
            scored.iter().map(|s| (s.score - top).exp()).sum::<f32>() + (none - top).exp();
        let order =
            |a: &Scored, b: &Scored| b.score.total_cmp(&a.score).then(a.account.cmp(&b.account));
        if most < scored.len() {
            scored.select_nth_unstable_by(most, order);
            scored.truncate(most);
        }
        scored.sort_unstable_by(order);
        let candidates = scored
            .iter()
            .map(|s| self.candidate(s, (s.score - top).exp() / total, traits, &evidence))
            .collect();
        Ranking { candidates, none_of_these: (none - top).exp() / total }
    }

    /// What each trait says, against what it says of an average bird of the checklist.
    fn evidence(&self, traits: &[Trait], checklist: &Checklist) -> Vec<Evidence> {
        let Chances { areas, aspects, forms, weights, .. } = &self.chances;
        let lexicon = &self.knowledge.lexicon;
        let base: Vec<f32> =
            forms.list.iter().map(|f| f.share * checklist.prior(f.account)).collect();
        let all = base.iter().sum::<f32>().max(f32::MIN_POSITIVE);
        let mut out = Vec::with_capacity(traits.len());
        for (trait_index, one) in traits.iter().enumerate() {
            let Some(question) = Question::of(lexicon, areas, aspects, one) else {
                continue;
            };
            let row = self.rows.get(&self.chances, &question);
            let sum: f32 = row.chances.iter().zip(&base).map(|(c, b)| c * b).sum();
            let average = (sum / all).max(f32::MIN_POSITIVE).ln();
            let sure = if one.certainty == Certainty::Hedged { weights.hedged } else { 1.0 };
            let weight = sure * self.shared(traits, one);
            out.push(Evidence { trait_index, row, average, weight });
        }
        out
    }

    /// Several words for one property of one part repeat each other.
    fn shared(&self, traits: &[Trait], one: &Trait) -> f32 {
        let alike = traits
            .iter()
            .filter(|t| t.area == one.area && t.aspect == one.aspect && t.polarity == one.polarity)
            .count();
        count(alike).powf(-self.weights().repeated)
    }

    /// The score of every species that the checklist allows.
    fn scored(
        &self,
        evidence: &[Evidence],
        traits: &[Trait],
        checklist: &Checklist,
    ) -> Vec<Scored> {
        let weights = self.weights();
        let said: f32 = evidence.iter().map(|e| e.weight).sum();
        let temper = weights.temper * said.max(1.0).powf(-weights.temper_fall);
        let colour = self.chances.aspects.colour;
        let colours = evidence.iter().filter(|e| traits[e.trait_index].aspect == colour).count();
        // A bird with striking marks that the note does not speak of is a little less likely.
        let sentences = if colours == 0 { 0.0 } else { count(colours) / weights.colours_said };
        let mut scores: Vec<f32> =
            self.talk.iter().map(|talk| -weights.unspoken * sentences * talk).collect();
        for one in evidence {
            let (low, high) = (-weights.most_against, weights.most_for);
            for (score, log) in scores.iter_mut().zip(&one.row.logs) {
                *score += one.weight * (log - one.average).clamp(low, high);
            }
        }
        for (score, share) in scores.iter_mut().zip(&self.log_share) {
            *score = temper * *score + share;
        }
        let total: f32 =
            (0..self.forms_of.len()).map(|a| checklist.prior(a)).sum::<f32>().max(1e-9);
        let mut out = Vec::with_capacity(self.forms_of.len());
        for (account, forms) in self.forms_of.iter().enumerate() {
            let prior = checklist.prior(account);
            if prior > 0.0 {
                let (form, score) = together(&scores, forms);
                out.push(Scored { account, form, score: score + (prior / total).ln() });
            }
        }
        out
    }

    fn candidate(
        &self,
        scored: &Scored,
        share: f32,
        traits: &[Trait],
        evidence: &[Evidence],
    ) -> Candidate {
        let mut fits = Vec::new();
        let mut conflicts = Vec::new();
        for one in evidence {
            let weight = one.of(scored.form, self.weights());
            let reason = Reason { trait_index: one.trait_index, weight };
            if weight >= WORTH_TELLING {
                fits.push(reason);
            } else if weight <= -WORTH_TELLING {
                conflicts.push(reason);
            }
        }
        fits.sort_by(|a, b| b.weight.total_cmp(&a.weight));
        conflicts.sort_by(|a, b| a.weight.total_cmp(&b.weight));
        let account = &self.knowledge.accounts[scored.account];
        let form = self.chances.forms.list[scored.form].form;
        let shown = self.knowledge.accounts.traits_of(account, &account.forms[form]);
        let unrecorded = self.unrecorded(shown, traits);
        Candidate { account: scored.account, form, share, fits, conflicts, unrecorded }
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
        let bird = self.chances.aspects.bird;
        let visible =
            |one: &Trait| one.area != bird && one.polarity == Polarity::Present && !spoken_of(one);
        let found = shown.enumerate().filter(|(_, one)| visible(one)).map(|(i, _)| i);
        found.take(MOST_UNRECORDED).collect()
    }
}

/// The best form of a species, and the logarithm of the sum over all of its forms.
fn together(scores: &[f32], forms: &Range<usize>) -> (usize, f32) {
    let (mut best, mut top) = (forms.start, f32::NEG_INFINITY);
    for form in forms.clone() {
        if scores[form] > top {
            (best, top) = (form, scores[form]);
        }
    }
    let sum: f32 = scores[forms.clone()].iter().map(|s| (s - top).exp()).sum();
    (best, top + sum.ln())
}

/// How often the colour of each part is spoken of in a sentence, as the lexicon has it.
fn spoken_of(knowledge: &Knowledge, chances: &Chances<'_>) -> Vec<(usize, f32)> {
    let rate = |item: &str| {
        let (area, rate) = item.split_once(' ')?;
        let area = chances.areas.index(knowledge.lexicon.names.find(area))?;
        Some((area, rate.trim().parse().ok()?))
    };
    let entries = knowledge.lexicon.others("spoken-of");
    entries.flat_map(|e| e.items("rates")).filter_map(rate).collect()
}

/// A count as a number to reckon with; one at least.
fn count(n: usize) -> f32 {
    f32::from(u16::try_from(n.max(1)).unwrap_or(u16::MAX))
}
