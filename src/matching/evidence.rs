//! How likely a trait of a note is, said of a bird of a given form.

use super::areas::Areas;
use super::likeness::{Likeness, Relation};
use super::profile::{Profile, ShownColour};
use super::weights::Weights;
use crate::lexicon::Lexicon;
use crate::lexicon::colours::Place;
use crate::lexicon::names::Name;
use crate::traits::{Polarity, Trait};
use palette::color_difference::Ciede2000;
use rustc_hash::FxHashMap;

/// Names the comparison needs.
#[derive(Clone, Copy, Debug)]
pub struct Aspects {
    colour: Name,
    size: Name,
    mark: Name,
    count: Name,
    viewing: Name,
    sex_age: Name,
    bird: Name,
}

impl Aspects {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let find = |text| lexicon.names.find(text);
        Self {
            colour: find("colour"),
            size: find("size"),
            mark: find("mark"),
            count: find("count"),
            viewing: find("viewing"),
            sex_age: find("sex-age"),
            bird: find("bird"),
        }
    }

    /// The whole bird.
    pub const fn bird(&self) -> Name {
        self.bird
    }

    /// Whether a trait says anything that a species could answer to.
    pub fn compares(&self, one: &Trait) -> bool {
        one.aspect != self.count
            && one.aspect != self.viewing
            && one.polarity != Polarity::Unseen
            && !(one.aspect == self.size && one.area == self.bird && one.mass.is_none())
    }
}

/// A form with what the comparison needs besides its profile.
#[derive(Clone, Copy, Debug)]
pub struct Subject<'a> {
    /// What it shows.
    pub profile: &'a Profile,
    /// Its mass in grams.
    pub mass: Option<f32>,
    /// The sexes and ages that its label names.
    pub sex_age: &'a [Name],
}

/// A trait made ready for comparing with many forms.
#[derive(Debug)]
pub struct Question<'a> {
    lexicon: &'a Lexicon,
    areas: &'a Areas,
    likeness: &'a Likeness,
    weights: &'a Weights,
    aspects: &'a Aspects,
    one: &'a Trait,
    area: usize,
    /// The likeness of each colour (and tone) to the one asked about.
    kernel: FxHashMap<(Name, Name), f32>,
    place: Option<Place>,
}

impl<'a> Question<'a> {
    /// Prepares a trait; none if it can't be compared.
    pub fn new(
        lexicon: &'a Lexicon,
        areas: &'a Areas,
        likeness: &'a Likeness,
        weights: &'a Weights,
        aspects: &'a Aspects,
        one: &'a Trait,
    ) -> Option<Self> {
        let area = areas.index(one.area)?;
        let kernel = FxHashMap::default();
        let mut out =
            Self { lexicon, areas, likeness, weights, aspects, one, area, kernel, place: None };
        out.place = lexicon.colours.toned(one.value.term(), one.tone);
        out.aspects.compares(one).then_some(out)
    }

    /// The trait.
    pub const fn one(&self) -> &'a Trait {
        self.one
    }

    /// How likely the trait is, said of such a bird: between 0 and 1.
    pub fn chance(&mut self, subject: &Subject<'_>) -> f32 {
        let seen = if self.one.aspect == self.aspects.colour {
            self.colour_chance(subject)
        } else if self.one.aspect == self.aspects.mark {
            self.mark_chance(subject)
        } else if self.one.aspect == self.aspects.sex_age {
            return self.sex_chance(subject);
        } else if self.one.aspect == self.aspects.size && self.one.mass.is_some() {
            return self.size_chance(subject);
        } else {
            self.value_chance(subject)
        };
        match self.one.polarity {
            Polarity::Absent => {
                let kept = self.weights.absent;
                1.0 - kept * seen / self.weights.hit.max(seen)
            }
            _ => seen,
        }
    }

    fn colour_chance(&mut self, subject: &Subject<'_>) -> f32 {
        let mut sum = 0.0;
        let mut weight = 0.0;
        let mut best: f32 = 0.0;
        for shown in &subject.profile.colours {
            let here = self.reach(shown.area);
            if here == 0.0 {
                continue;
            }
            let alike = self.alike(shown);
            sum += here * shown.weight * alike;
            weight += here * shown.weight;
            let bare = shown.weight.sqrt() * if here < 0.05 { 0.4 } else { 1.0 };
            best = best.max(alike * bare);
        }
        let slip = self.weights.colour_slip;
        if weight == 0.0 {
            return self.weights.silent;
        }
        let denied = subject
            .profile
            .no_colours
            .iter()
            .any(|&(area, colour)| self.reach(area) > 0.0 && colour == self.one.value.term());
        let mean = sum / weight;
        let chance = (1.0 - self.weights.salience) * mean + self.weights.salience * best;
        let chance = if denied { chance * 0.2 } else { chance };
        slip + (1.0 - slip) * chance
    }

    /// How much a statement about an area of the account says of the area asked about.
    fn reach(&self, stated: usize) -> f32 {
        let within = self.areas.within(self.area, stated);
        if within > 0.0 {
            return within;
        }
        match self.areas.above(self.area, stated) {
            0 => 0.0,
            steps => 0.5 * self.weights.step_down.powi(i32::from(steps)),
        }
    }

    fn alike(&mut self, shown: &ShownColour) -> f32 {
        let key = (shown.colour, shown.tone);
        if let Some(&known) = self.kernel.get(&key) {
            return known;
        }
        let colours = &self.lexicon.colours;
        let value = self.one.value.term();
        let other = colours.toned(shown.colour, shown.tone);
        let alike = match (self.place, other) {
            (Some(a), Some(b)) => {
                let far = a.difference(b) / self.weights.colour_spread;
                (-0.5 * far * far).exp()
            }
            (None, Some(b)) => colours.tone(value).fits(b).unwrap_or(0.3),
            _ if value == shown.colour => 1.0,
            _ => 0.3,
        };
        self.kernel.insert(key, alike);
        alike
    }

    fn mark_chance(&self, subject: &Subject<'_>) -> f32 {
        let named = &subject.profile.named;
        let shown = named
            .iter()
            .enumerate()
            .any(|(area, &n)| n == 1 && self.areas.within(self.area, area) > 0.0);
        if shown {
            0.9
        } else if named.get(self.area) == Some(&2) {
            self.weights.contrary
        } else {
            self.weights.miss
        }
    }

    fn sex_chance(&self, subject: &Subject<'_>) -> f32 {
        if subject.sex_age.contains(&self.one.value.term()) {
            0.9
        } else if subject.sex_age.is_empty() {
            0.6
        } else {
            0.15
        }
    }

    fn size_chance(&self, subject: &Subject<'_>) -> f32 {
        let (Some(range), Some(mass)) = (self.one.mass, subject.mass) else {
            return self.weights.silent;
        };
        let mass = mass.ln();
        let out = (range.low.ln() - mass).max(mass - range.high.ln()).max(0.0);
        let far = out / self.weights.size_spread;
        let near = (-0.5 * far * far).exp();
        let chance = self.weights.size_slip + (1.0 - self.weights.size_slip) * near;
        if self.one.polarity == Polarity::Absent { 1.0 - 0.7 * chance } else { chance }
    }

    fn value_chance(&self, subject: &Subject<'_>) -> f32 {
        let asked = self.one.value.text(self.lexicon);
        let mut best: Option<f32> = None;
        let mut contrary = false;
        for shown in &subject.profile.values {
            if shown.aspect != self.one.aspect {
                continue;
            }
            let here = self.areas.within(self.area, shown.area) > 0.0
                || self.areas.above(self.area, shown.area) == 1
                || self.areas.above(shown.area, self.area) > 0;
            if !here {
                continue;
            }
            let relation = self.likeness.relation(asked, self.lexicon.names.text(shown.value));
            if shown.absent {
                contrary |= relation == Relation::Same;
                continue;
            }
            let chance = match relation {
                Relation::Same => self.weights.hit,
                Relation::Alike(degree) => {
                    self.weights.miss + (self.weights.hit - self.weights.miss) * degree
                }
                Relation::Contrary => {
                    contrary = true;
                    self.weights.contrary
                }
                Relation::Other => self.weights.miss,
            };
            best = Some(best.map_or(chance, |b| b.max(chance)));
        }
        match best {
            Some(chance) if contrary && chance < self.weights.hit * 0.8 => self.weights.contrary,
            Some(chance) => chance,
            None if contrary => self.weights.contrary,
            None => self.weights.silent,
        }
    }
}
