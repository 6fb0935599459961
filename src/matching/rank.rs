//! Ranking species for a reading, with reasons for and against.

use super::chances::Chances;
use super::checklist::Checklist;
use super::likeness::Likeness;
use super::none::{Model, sum, unknown};
use super::question::Question;
use super::regions::{Regions, told};
use super::rows::{Row, Rows};
use super::weights::Weights;
use crate::accounts::Accounts;
use crate::diagnostic::Diagnostics;
use crate::grammar::Token;
use crate::knowledge::Knowledge;
use crate::lexicon::names::Name;
use crate::reading::Named;
use crate::traits::{Certainty, Polarity, Trait};
use std::borrow::Cow;
use std::ops::Range;
use std::sync::Arc;

/// A trait's logarithm of odds from which on it is told as a reason.
const WORTH_TELLING: f32 = 0.15;
/// How many marks that the note does not speak of are told for a candidate.
const MOST_UNRECORDED: usize = 6;

/// What a reason is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum About {
    /// A trait, by its place among the note's traits.
    Trait(usize),
    /// A loose kind that the note names, by its place among the names.
    Named(usize),
}

/// A reason for or against a species.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reason {
    /// What was noted.
    pub about: About,
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
    rows: Rows<Question>,
    /// For kinds that are named, and denied.
    named: Rows<(Name, bool)>,
    regions: Regions,
    /// The forms of each account.
    forms_of: Vec<Range<usize>>,
    /// Logarithm of each form's share within its species.
    log_share: Vec<f32>,
}

/// What one trait or name says of all forms.
struct Evidence {
    about: About,
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

    /// Adds what it says to the score of each form.
    fn add_to(&self, scores: &mut [f32], weights: &Weights) {
        let (low, high) = (-weights.most_against, weights.most_for);
        for (score, log) in scores.iter_mut().zip(&self.row.logs) {
            *score += self.weight * (log - self.average).clamp(low, high);
        }
    }
}

/// The species of a checklist and those off it, scored.
struct Scores {
    on: Vec<Scored>,
    off: Vec<Scored>,
    /// By how much marks count more or less than their likelihoods.
    temper: f32,
}

/// The weight of each form in a checklist, and their sum.
struct Base {
    weights: Vec<f32>,
    all: f32,
}

impl Base {
    /// The logarithm of the mean chance.
    fn average(&self, row: &Row) -> f32 {
        let sum: f32 = row.chances.iter().zip(&self.weights).map(|(c, b)| c * b).sum();
        (sum / self.all).max(f32::MIN_POSITIVE).ln()
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
            match forms_of.get_mut(form.account()) {
                Some(range) => range.end = at + 1,
                None => forms_of.push(at..at + 1),
            }
        }
        let log_share = chances.forms.list.iter().map(|f| f.share.ln()).collect();
        let (rows, named) = (Rows::default(), Rows::default());
        let regions = Regions::of(&knowledge.lexicon);
        Ok(Self { knowledge, chances, rows, named, regions, forms_of, log_share })
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

    /// Whether a name of the note is evidence: that of a loose kind is, that of a species is not, since it is
    /// the observer's own identification.
    pub fn tells(&self, one: &Named) -> bool {
        one.polarity != Polarity::Unseen && self.chances.groups().knows(one.bird)
    }

    /// A checklist as the lands that the note names leave it: species that live in none of them count for less.
    pub fn where_told<'c>(&self, tokens: &[Token], checklist: &'c Checklist) -> Cow<'c, Checklist> {
        let regions = self.regions.told(&self.knowledge.lexicon, tokens);
        told(self.weights(), self.accounts(), checklist, &regions)
    }

    /// Ranks the species of `checklist` for the traits of one bird.
    pub fn rank(&self, traits: &[Trait], checklist: &Checklist, most: usize) -> Ranking {
        self.rank_named(traits, &[], checklist, most)
    }

    /// The same, with the names that the note gives that bird.
    pub fn rank_named(
        &self,
        traits: &[Trait],
        named: &[Named],
        checklist: &Checklist,
        most: usize,
    ) -> Ranking {
        let told = self.told(named);
        let kind = told.iter().find(|(_, n)| n.polarity == Polarity::Present && !n.likeness);
        let kind = kind.map_or(Name::NONE, |(_, n)| n.bird);
        let base = self.base(checklist);
        let mut evidence = self.evidence(traits, kind, &base);
        evidence.extend(self.named_evidence(&told, &base));
        let Scores { on: mut scored, off, temper } = self.scored(&evidence, traits, checklist);
        let none = self.none(&evidence, &scored, &off, temper);
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

    /// The weight of each form in the checklist.
    fn base(&self, checklist: &Checklist) -> Base {
        let forms = self.chances.forms.list.iter();
        let weights: Vec<f32> = forms.map(|f| f.share * checklist.prior(f.account())).collect();
        let all = weights.iter().sum::<f32>().max(f32::MIN_POSITIVE);
        Base { weights, all }
    }

    /// What each trait says, against what it says of an average bird of the checklist; sizes are judged among
    /// birds of `kind`, if one is named.
    fn evidence(&self, traits: &[Trait], kind: Name, base: &Base) -> Vec<Evidence> {
        let Chances { areas, aspects, weights, .. } = &self.chances;
        let lexicon = &self.knowledge.lexicon;
        let mut out = Vec::with_capacity(traits.len());
        for (at, one) in traits.iter().enumerate() {
            let Some(mut question) = Question::of(lexicon, areas, aspects, one) else {
                continue;
            };
            if self.chances.asks_bare_size(&question) {
                question = question.among(kind);
            }
            let row = self.rows.get(question, || self.chances.row(&question));
            let sure = if one.certainty == Certainty::Hedged { weights.hedged } else { 1.0 };
            let weight = sure * self.shared(traits, one);
            out.push(Evidence {
                about: About::Trait(at),
                average: base.average(&row),
                row,
                weight,
            });
        }
        out
    }

    /// The names that count, each kind once, as surely as it is said.
    fn told<'n>(&self, named: &'n [Named]) -> Vec<(usize, &'n Named)> {
        let doubt = |n: &Named| (n.likeness, n.certainty == Certainty::Hedged);
        let mut out: Vec<(usize, &Named)> = Vec::new();
        for (at, one) in named.iter().enumerate().filter(|(_, n)| self.tells(n)) {
            let same =
                |o: &&mut (usize, &Named)| o.1.bird == one.bird && o.1.polarity == one.polarity;
            match out.iter_mut().find(same) {
                Some(kept) if doubt(one) < doubt(kept.1) => *kept = (at, one),
                Some(_) => {}
                None => out.push((at, one)),
            }
        }
        out
    }

    /// What each name says. "A gull or a tern" names two, of which one is right, so each counts for less.
    fn named_evidence(&self, told: &[(usize, &Named)], base: &Base) -> Vec<Evidence> {
        let weights = self.weights();
        let shared = count(told.len()).powf(-weights.repeated);
        let evidence = |&(at, one): &(usize, &Named)| {
            let absent = one.polarity == Polarity::Absent;
            let row = self.named.get((one.bird, absent), || self.chances.named(one.bird, absent));
            let likened = if one.likeness { weights.kind_likened } else { 1.0 };
            let sure = if one.certainty == Certainty::Hedged { weights.hedged } else { 1.0 };
            let weight = shared * likened * sure;
            Evidence { about: About::Named(at), average: base.average(&row), row, weight }
        };
        told.iter().map(evidence).collect()
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
    fn scored(&self, evidence: &[Evidence], traits: &[Trait], checklist: &Checklist) -> Scores {
        let weights = self.weights();
        let (marks, names): (Vec<&Evidence>, Vec<&Evidence>) =
            evidence.iter().partition(|e| matches!(e.about, About::Trait(_)));
        let said: f32 = marks.iter().map(|e| e.weight).sum();
        let temper = weights.temper * said.max(1.0).powf(-weights.temper_fall);
        let colour = self.chances.aspects.colour;
        let is_colour =
            |e: &&&Evidence| matches!(e.about, About::Trait(at) if traits[at].aspect == colour);
        let colours = marks.iter().filter(is_colour).count();
        // A bird with striking marks that the note does not speak of is a little less likely.
        let sentences = if colours == 0 { 0.0 } else { count(colours) / weights.colours_said };
        let mut scores: Vec<f32> =
            self.chances.talk().iter().map(|talk| -weights.unspoken * sentences * talk).collect();
        for one in marks {
            one.add_to(&mut scores, weights);
        }
        for (score, share) in scores.iter_mut().zip(&self.log_share) {
            *score = temper * *score + share;
        }
        // A name is a judgement of its own; it is not tempered as marks are.
        for one in names {
            one.add_to(&mut scores, weights);
        }
        let total: f32 =
            (0..self.forms_of.len()).map(|a| checklist.prior(a)).sum::<f32>().max(1e-9);
        let (mut on, mut off) = (Vec::with_capacity(self.forms_of.len()), Vec::new());
        for (account, forms) in self.forms_of.iter().enumerate() {
            let prior = checklist.prior(account);
            if prior > 0.0 {
                let (form, score) = together(&scores, forms);
                on.push(Scored { account, form, score: score + (prior / total).ln() });
            } else if checklist.knows(account) {
                let (form, score) = together(&scores, forms);
                off.push(Scored { account, form, score });
            }
        }
        let alike = count(off.len()).ln();
        for one in &mut off {
            one.score -= alike;
        }
        Scores { on, off, temper }
    }

    /// The logarithm of the weight of "none of these", as those of the species.
    fn none(&self, evidence: &[Evidence], on: &[Scored], off: &[Scored], temper: f32) -> f32 {
        let weights = self.weights();
        let model = |s: &Scored| Model { score: s.score, form: s.form };
        let on: Vec<Model> = on.iter().map(model).collect();
        let off: Vec<Model> = off.iter().map(model).collect();
        let odds = |form: usize| {
            let tempered = |e: &Evidence| match e.about {
                About::Trait(_) => temper * e.of(form, weights),
                About::Named(_) => e.of(form, weights),
            };
            evidence.iter().map(tempered).collect::<Vec<f32>>()
        };
        let prior = weights.none_of_these / (1.0 - weights.none_of_these);
        let known = if off.is_empty() { 0.0 } else { weights.off_list };
        let scores: Vec<f32> = off.iter().map(|m| m.score).collect();
        // A bird without an account is like one of the list or one off it.
        let (own, others) = (unknown(weights, &on, odds), unknown(weights, &off, odds));
        let strange = (1.0 - known) * prior;
        sum(&[
            (known * prior).ln() + sum(&scores),
            (strange * (1.0 - known)).ln() + own,
            (strange * known).ln() + others,
        ])
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
            let reason = Reason { about: one.about, weight };
            if weight >= WORTH_TELLING {
                fits.push(reason);
            } else if weight <= -WORTH_TELLING {
                conflicts.push(reason);
            }
        }
        fits.sort_by(|a, b| b.weight.total_cmp(&a.weight));
        conflicts.sort_by(|a, b| a.weight.total_cmp(&b.weight));
        let account = &self.knowledge.accounts[scored.account];
        let form = self.chances.forms.list[scored.form].form();
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
        let mut found: Vec<(usize, &Trait)> = Vec::new();
        for (i, one) in shown.enumerate().filter(|(_, one)| visible(one)) {
            // What is true of all forms may be said of one again.
            if found.len() < MOST_UNRECORDED
                && !found.iter().any(|(_, before)| before.says_same(one))
            {
                found.push((i, one));
            }
        }
        found.into_iter().map(|(i, _)| i).collect()
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

/// A count as a number to reckon with; one at least.
fn count(n: usize) -> f32 {
    f32::from(u16::try_from(n.max(1)).unwrap_or(u16::MAX))
}
