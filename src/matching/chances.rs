//! How likely a statement is, said of a bird of each form.

use super::areas::Areas;
use super::forms::{Form, Forms, ShownColour};
use super::gauges::Gauges;
use super::groups::{Groups, Spread};
use super::layout::Layout;
use super::likeness::{Likeness, Relation};
use super::mention::{Mentions, Quality};
use super::naming::Naming;
use super::question::{Aspects, Question, Reach};
use super::sizes::Sizes;
use super::weights::Weights;
use crate::accounts::Accounts;
use crate::knowledge::Knowledge;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::shelf::List;
use std::sync::OnceLock;

/// How well a marking counts as shown if the account names it without a colour.
const NAMED: f32 = 0.8;
/// The chance of a marking being spoken of: shown, not spoken of by the account, denied by it.
const MARK: (f32, f32, f32) = (0.9, 0.15, 0.1);
/// Birds of one kind that differ in mass by less than a third (as a logarithm) are alike to watchers.
const LEAST_DEVIATION: f32 = 0.3;
/// What a pattern or shape of a neighbouring part still says.
const NEIGHBOUR: f32 = 0.5;

/// Works out rows of chances: one number for each form.
pub struct Chances<'a> {
    knowledge: &'a Knowledge,
    /// The numbers of the model.
    pub weights: Weights,
    /// What parts are to each other.
    pub areas: Areas,
    /// What the forms show.
    pub forms: Forms,
    /// The names of aspects.
    pub aspects: Aspects,
    /// What values are to each other.
    pub likeness: Likeness,
    naming: Naming,
    gauges: Gauges,
    sizes: Sizes,
    groups: OnceLock<Groups>,
    striking: Vec<f32>,
    /// For aspects with many words, the chance of one that the account does not have.
    silence: Vec<(Name, f32)>,
    talk: List<f32>,
    mentions: Mentions,
}

impl<'a> Chances<'a> {
    /// Lays out all accounts.
    pub fn new(knowledge: &'a Knowledge, weights: Weights) -> Self {
        let lexicon = &knowledge.lexicon;
        let aspects = Aspects::of(lexicon);
        let (areas, forms, naming, worked_out) = match Layout::stored(knowledge) {
            Some(Layout { areas, forms, naming, talk, mentions }) => {
                (areas, forms, Some(naming), Some((talk, mentions)))
            }
            None => {
                let areas = Areas::of(lexicon, &weights);
                let forms = Forms::of(lexicon, &areas, &aspects, &weights, &knowledge.accounts);
                (areas, forms, None, None)
            }
        };
        let naming = Naming::of(lexicon, &weights, forms.palette.clone(), naming);
        let mut out = Self {
            knowledge,
            weights,
            aspects,
            likeness: Likeness::of(lexicon),
            gauges: Gauges::of(lexicon),
            sizes: Sizes::of(lexicon),
            groups: OnceLock::new(),
            striking: naming.striking(lexicon, &weights),
            silence: silence(lexicon),
            talk: List::default(),
            mentions: Mentions::default(),
            areas,
            forms,
            naming,
        };
        (out.talk, out.mentions) = worked_out.unwrap_or_else(|| {
            let entries: Vec<_> = lexicon.others("mention").collect();
            (out.measure_talk().into(), Mentions::of(&out, &entries))
        });
        out
    }

    /// What of this is worth storing.
    pub fn layout(&self) -> Layout {
        Layout {
            areas: self.areas.clone(),
            forms: self.forms.clone(),
            naming: self.naming.table(&self.knowledge.lexicon).clone(),
            talk: self.talk.clone(),
            mentions: self.mentions.clone(),
        }
    }

    /// For each form, how many more colours than of an average bird one speaks of.
    pub fn talk(&self) -> &[f32] {
        &self.talk
    }

    /// The chance of what is asked, said of each form; the scale is the same for all forms of a row.
    pub fn row(&self, question: &Question) -> Vec<f32> {
        let mut row = if question.aspect == self.aspects.colour {
            self.colours(question)
        } else if question.aspect == self.aspects.mark {
            self.each(|form| self.mark(question, form))
        } else if question.aspect == self.aspects.sex_age {
            self.each(|form| self.sex_age(question, form))
        } else if let Some(range) = question.mass() {
            let scale = self.scale_among(question.among);
            let fits = |mass| self.sizes.chance(&self.weights, question.value, range, mass);
            self.each(|form| match (self.knowledge.accounts.mass(form.account()), scale) {
                (Some(mass), None) => fits(mass),
                // A small gull is small for a gull, or small for a bird.
                (Some(mass), Some((kind, all))) => {
                    let by_kind = self.weights.size_by_kind;
                    by_kind * fits(moved(mass, kind, all)) + (1.0 - by_kind) * fits(mass)
                }
                (None, _) => self.weights.silent,
            })
        } else {
            self.values(question)
        };
        if question.absent {
            let most = row.iter().copied().fold(f32::MIN_POSITIVE, f32::max);
            for chance in &mut row {
                *chance = 1.0 - self.weights.absent * *chance / most;
            }
        } else {
            self.mentions.weigh(&mut row, question.area, question.aspect, question.value);
        }
        row
    }

    /// The lexicon behind the chances.
    pub const fn lexicon(&self) -> &Lexicon {
        &self.knowledge.lexicon
    }

    /// The accounts behind the forms.
    pub const fn accounts(&self) -> &Accounts {
        &self.knowledge.accounts
    }

    /// How readily parts are spoken of.
    pub const fn mentions(&self) -> &Mentions {
        &self.mentions
    }

    /// The chance of each common colour name, said of a colour of the palette.
    pub fn called(&self, colour: usize) -> &[f32] {
        self.naming.called(&self.knowledge.lexicon, colour)
    }

    /// How strong, light or dark each colour of the palette is, from 0 to 1.
    pub fn quality(&self, quality: Quality) -> Vec<f32> {
        self.naming.quality(&self.knowledge.lexicon, quality)
    }

    /// The loose kinds of bird.
    pub fn groups(&self) -> &Groups {
        self.groups.get_or_init(|| Groups::of(&self.knowledge.lexicon, &self.knowledge.accounts))
    }

    /// The chance of a loose kind being named, said of each form.
    pub fn named(&self, kind: Name, absent: bool) -> Vec<f32> {
        let standings = self.groups().standings(kind);
        self.each(|form| {
            let chance = standings[form.account()].chance(&self.weights);
            if absent { 1.0 - self.weights.kind_denied * chance } else { chance }
        })
    }

    /// Whether a question is for a size in a word that compares with nothing.
    pub fn asks_bare_size(&self, question: &Question) -> bool {
        question.mass().is_some() && self.sizes.knows(question.value)
    }

    /// The sizes of birds of a kind, and of all; nothing where size is judged among all.
    fn scale_among(&self, kind: Name) -> Option<(Spread, Spread)> {
        if !kind.is_some() {
            return None;
        }
        Some((self.groups().sizes(kind)?, self.groups().all_sizes()?))
    }

    fn each(&self, chance: impl FnMut(&Form) -> f32) -> Vec<f32> {
        self.forms.list.iter().map(chance).collect()
    }

    /// How likely a colour name is, said of each colour of the palette.
    pub fn names_of(&self, said: Name) -> Vec<f32> {
        self.naming.column(&self.knowledge.lexicon, said)
    }

    /// The share of a name in all colour names said.
    pub fn share_of(&self, name: Name) -> f32 {
        self.naming.share(name)
    }

    /// How readily each colour of the palette is spoken of, against a dull one.
    pub fn striking(&self) -> &[f32] {
        &self.striking
    }

    /// How much people's names of two colours are the same, from 0 to 1.
    pub fn overlap(&self, a: Name, b: Name) -> Option<f32> {
        self.naming.overlap(&self.knowledge.lexicon, a, b)
    }

    /// The name is drawn from the names of the colours on the parts that may be meant, each by its
    /// weight, its surface and how striking it is.
    fn colours(&self, question: &Question) -> Vec<f32> {
        let lexicon = &self.knowledge.lexicon;
        let weights = &self.weights;
        let slip = weights.colour_slip;
        let share = self.naming.share(question.value);
        let column: Vec<f32> = self
            .naming
            .column(lexicon, question.value)
            .into_iter()
            .map(|chance| (1.0 - slip) * chance + slip * share)
            .collect();
        let toned = self.naming.toned(lexicon, question.tone);
        let meant = self.areas.meant(question.area);
        self.each(|form| {
            let mut named = weights.unsaid * share;
            let mut all = weights.unsaid;
            let (mut right_tone, mut any_tone) = (0.0, f32::MIN_POSITIVE);
            for shown in self.forms.colours(form) {
                let colour = usize::from(shown.colour);
                let weight = self.sought(shown, question.reach) * meant[usize::from(shown.area)];
                let chance = column[colour];
                named += weight * self.striking[colour] * chance;
                all += weight;
                if let Some(toned) = &toned {
                    right_tone += weight * chance * toned[colour];
                    any_tone += weight * chance;
                }
            }
            let covered = named / all;
            let mut chance = covered * self.marking(form, question.area);
            if question.reach == Reach::Whole {
                chance *= covered.powf(weights.whole_reach);
            }
            if toned.is_some() {
                let fits = right_tone / any_tone;
                chance *= weights.tone_slip + (1.0 - weights.tone_slip) * fits;
            }
            if self.denies_colour(form, question) { chance * weights.denied_colour } else { chance }
        })
    }

    /// How much a colour counts for one that is said: of markings those of markings are meant.
    fn sought(&self, shown: &ShownColour, reach: Reach) -> f32 {
        match (reach, shown.marking()) {
            (Reach::Marking, true) => shown.weight / self.weights.marking_colour,
            (Reach::Marking, false) => shown.weight * self.weights.marking_ground,
            _ => shown.weight,
        }
    }

    fn denies_colour(&self, form: &Form, question: &Question) -> bool {
        self.forms.values(form).iter().any(|v| {
            v.absent()
                && v.aspect == self.aspects.colour
                && v.value == question.value
                && self.areas.near(question.area, usize::from(v.area)) >= 0.5
        })
    }

    /// How readily a marking is spoken of: 1 for parts that every bird has.
    fn marking(&self, form: &Form, area: usize) -> f32 {
        if !self.areas.optional(area) {
            return 1.0;
        }
        let mut shown: f32 = 0.0;
        let mut denied = false;
        for one in self.forms.colours(form) {
            let stated = usize::from(one.area);
            if stated == area {
                shown = shown.max(one.weight);
            } else if one.marking() || self.areas.optional(stated) {
                // A crescent by the eye goes for a ring, a patch in the wing for a bar.
                shown = shown.max(one.weight * self.areas.meant(area)[stated]);
            }
        }
        for one in self.forms.values(form).iter().filter(|v| usize::from(v.area) == area) {
            if one.absent() {
                denied |= one.aspect == self.aspects.mark;
            } else {
                shown = shown.max(NAMED);
            }
        }
        if denied && shown == 0.0 {
            self.weights.marking_denied
        } else {
            self.weights.marking_silent + (1.0 - self.weights.marking_silent) * shown
        }
    }

    /// For each form, how many colours one speaks of on average, over the mean of all forms.
    fn measure_talk(&self) -> Vec<f32> {
        let mut talk = self.colours_spoken_of(&self.spoken_of());
        let forms = f32::from(u16::try_from(talk.len().max(1)).unwrap_or(u16::MAX));
        let mean = talk.iter().sum::<f32>() / forms;
        for one in &mut talk {
            *one -= mean;
        }
        talk
    }

    /// How often the colour of each part is spoken of in a sentence, as the lexicon has it.
    fn spoken_of(&self) -> Vec<(usize, f32)> {
        let lexicon = &self.knowledge.lexicon;
        let rate = |item: &str| {
            let (area, rate) = item.split_once(' ')?;
            Some((self.areas.index(lexicon.names.find(area))?, rate.trim().parse().ok()?))
        };
        lexicon.others("spoken-of").flat_map(|e| e.items("rates")).filter_map(rate).collect()
    }

    /// For each form, how many colours one speaks of, on average; `rates` are those of the areas.
    fn colours_spoken_of(&self, rates: &[(usize, f32)]) -> Vec<f32> {
        let unsaid = self.weights.unsaid;
        let count = rates.len();
        // For each area that an account speaks of, what it counts for the areas people speak of.
        let mut meant = vec![0.0; self.areas.count() * count];
        for (at, &(area, _)) in rates.iter().enumerate() {
            for (stated, &weight) in self.areas.meant(area).iter().enumerate() {
                meant[stated * count + at] = weight;
            }
        }
        let (mut all, mut said) = (vec![0.0; count], vec![0.0; count]);
        self.each(|form| {
            all.fill(unsaid);
            said.fill(unsaid);
            for shown in self.forms.colours(form) {
                let from = usize::from(shown.area) * count;
                let striking = self.striking[usize::from(shown.colour)];
                for ((all, said), weight) in
                    all.iter_mut().zip(&mut said).zip(&meant[from..from + count])
                {
                    let weight = shown.weight * weight;
                    *all += weight;
                    *said += weight * striking;
                }
            }
            rates
                .iter()
                .enumerate()
                .map(|(at, &(area, rate))| rate * said[at] / all[at] * self.marking(form, area))
                .sum()
        })
    }

    fn mark(&self, question: &Question, form: &Form) -> f32 {
        let within = |area: u8| {
            let near = self.areas.near(question.area, usize::from(area));
            near > 0.5
        };
        let (shown, silent, denied) = MARK;
        let values = self.forms.values(form);
        if self.forms.colours(form).iter().any(|c| within(c.area))
            || values.iter().any(|v| !v.absent() && within(v.area))
        {
            shown
        } else if values.iter().any(|v| {
            v.absent() && usize::from(v.area) == question.area && v.aspect == self.aspects.mark
        }) {
            denied
        } else {
            silent
        }
    }

    fn sex_age(&self, question: &Question, form: &Form) -> f32 {
        let told = self.forms.sexes_ages(form);
        if told.contains(&question.value) {
            self.weights.sex_right
        } else if told.is_empty() {
            self.weights.sex_untold
        } else {
            self.weights.sex_wrong
        }
    }

    /// How many watchers, from 0 to 1, would use a word of a part by the measures of an account; nothing
    /// where they do not tell.
    pub fn measured(&self, account: usize, area: Name, aspect: Name, value: Name) -> Option<f32> {
        self.gauges.find(area, aspect, value)?.fits(&self.knowledge.accounts[account])
    }

    /// Patterns, shapes, lengths, habits: by measures where they are published, else by the words.
    fn values(&self, question: &Question) -> Vec<f32> {
        let area = self.knowledge.lexicon.topography.iter().nth(question.area).map(|a| a.id);
        let gauge = area.and_then(|a| self.gauges.find(a, question.aspect, question.value));
        let slip = self.weights.gauge_slip;
        let mut known: Option<(usize, Option<f32>)> = None;
        let forms = &self.forms.list;
        forms
            .iter()
            .map(|form| {
                let measured = gauge.and_then(|gauge| match known {
                    Some((account, fits)) if account == form.account() => fits,
                    _ => {
                        let fits = gauge.fits(&self.knowledge.accounts[form.account()]);
                        known = Some((form.account(), fits));
                        fits
                    }
                });
                match (measured, gauge) {
                    (Some(fits), Some(gauge)) if gauge.beside_words() => {
                        (slip + (1.0 - slip) * fits) * self.value(question, form)
                    }
                    (Some(fits), _) => slip + (1.0 - slip) * fits,
                    (None, _) => self.value(question, form),
                }
            })
            .collect()
    }

    /// The chance of a word where the account has another one, and where it is silent.
    fn otherwise(&self, aspect: Name) -> (f32, f32) {
        match self.silence.iter().find(|(of, _)| *of == aspect) {
            Some(&(_, chance)) => (chance, chance),
            None => (self.weights.miss, self.weights.silent),
        }
    }

    fn value(&self, question: &Question, form: &Form) -> f32 {
        let weights = &self.weights;
        let (miss, silent) = self.otherwise(question.aspect);
        let mut best: Option<f32> = None;
        let mut contrary = false;
        for shown in self.forms.values(form).iter().filter(|v| v.aspect == question.aspect) {
            let near = self.areas.near(question.area, usize::from(shown.area));
            if near == 0.0 {
                continue;
            }
            let relation = self.likeness.relation(question.value, shown.value);
            if shown.absent() {
                contrary |= relation == Relation::Same;
                continue;
            }
            let degree = match relation {
                Relation::Same => 1.0,
                Relation::Alike(degree) => degree,
                Relation::Contrary | Relation::Other => 0.0,
            };
            let degree = if near < 0.3 { degree * NEIGHBOUR } else { degree };
            let chance = if relation == Relation::Contrary {
                contrary = true;
                weights.contrary
            } else {
                miss + (weights.hit - miss) * degree
            };
            best = Some(best.map_or(chance, |b| b.max(chance)));
        }
        match best {
            Some(chance) if contrary && chance < weights.hit * 0.8 => weights.contrary,
            Some(chance) => chance,
            None if contrary => weights.contrary,
            None => silent,
        }
    }
}

/// The mass that stands among all birds where `mass` stands among those of a kind.
fn moved(mass: f32, kind: Spread, all: Spread) -> f32 {
    let far = (mass.ln() - kind.mean) / kind.deviation.max(LEAST_DEVIATION);
    (all.mean + far * all.deviation).exp()
}

/// The `silence` entries.
fn silence(lexicon: &Lexicon) -> Vec<(Name, f32)> {
    let chance = |entry: &crate::lexicon::entry::Entry| {
        Some((lexicon.names.find(&entry.id), entry.get("value")?.parse().ok()?))
    };
    lexicon.others("silence").filter_map(chance).collect()
}
