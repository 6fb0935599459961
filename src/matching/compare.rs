//! Look-alikes side by side: every mark in which their accounts differ.

use super::likeness::{Likeness, Relation};
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::traits::{Polarity, Trait};
use palette::color_difference::Ciede2000;

/// Two colours nearer than this (CIEDE2000) are no difference in the field.
const ONE_COLOUR: f32 = 16.0;
/// Two values at least this much alike are no difference.
const ONE_VALUE: f32 = 0.6;

/// A mark in which species differ.
#[derive(Clone, Debug, PartialEq)]
pub struct Difference<'a> {
    /// Where.
    pub area: Name,
    /// Which property; for markings that only some birds show, `mark`.
    pub aspect: Name,
    /// What each species shows, in their order; empty where its account does not say.
    pub shown: Vec<Vec<&'a Trait>>,
}

/// Compares what several forms show.
#[derive(Clone, Copy, Debug)]
pub struct Comparer<'a> {
    /// The words and parts.
    pub lexicon: &'a Lexicon,
    /// Which values are alike.
    pub likeness: &'a Likeness,
}

impl Comparer<'_> {
    /// Every mark in which the forms differ, in topographical order, the whole bird first; each form is
    /// given by its traits.
    pub fn differences<'t>(&self, forms: &[Vec<&'t Trait>]) -> Vec<Difference<'t>> {
        let mut keys: Vec<(Name, Name)> = Vec::new();
        for one in forms.iter().flatten() {
            let key = (one.area, self.topic(one));
            if !keys.contains(&key) {
                keys.push(key);
            }
        }
        let colour = self.lexicon.names.find("colour");
        keys.sort_by_key(|(area, aspect)| {
            (self.lexicon.topography.order(*area), *aspect != colour, *aspect)
        });
        keys.into_iter().filter_map(|key| self.difference(forms, key)).collect()
    }

    /// The property under which a trait is compared. A marking that only some birds show is one thing,
    /// whether its colour, its form or just its being there is stated.
    pub fn topic(&self, one: &Trait) -> Name {
        let optional = self.lexicon.topography.get(one.area).is_some_and(|a| a.optional);
        let mark = self.lexicon.names.find("mark");
        let looks = ["colour", "pattern", "mark", "shape", "size", "length", "count"]
            .iter()
            .any(|of| self.lexicon.names.find(of) == one.aspect);
        if optional && looks { mark } else { one.aspect }
    }

    fn difference<'t>(
        &self,
        forms: &[Vec<&'t Trait>],
        (area, aspect): (Name, Name),
    ) -> Option<Difference<'t>> {
        let mut shown: Vec<Vec<&'t Trait>> =
            forms.iter().map(|form| self.shown(form, area, aspect)).collect();
        let bird = area == self.lexicon.names.find("bird");
        if bird && self.is_list(aspect) {
            // Of habits and sounds those count that not all have.
            let common: Vec<Trait> = shown[0]
                .iter()
                .filter(|one| shown.iter().all(|s| s.iter().any(|o| o.says_same(one))))
                .map(|one| (*one).clone())
                .collect();
            for list in &mut shown {
                list.retain(|one| !common.iter().any(|c| c.says_same(one)));
            }
            let told = shown.iter().all(|s| !s.is_empty());
            return told.then_some(Difference { area, aspect, shown });
        }
        let differ = shown
            .iter()
            .enumerate()
            .any(|(i, a)| shown[i + 1..].iter().any(|b| self.apart(area, aspect, a, b)));
        differ.then_some(Difference { area, aspect, shown })
    }

    /// Properties of which a bird has many at once.
    fn is_list(&self, aspect: Name) -> bool {
        self.lexicon.colours.place(aspect).is_none()
            && ["colour", "pattern", "shape", "length", "size", "mark", "build"]
                .iter()
                .all(|single| self.lexicon.names.find(single) != aspect)
    }

    /// What a form shows on a part; of colours and patterns else that of the part it lies within.
    fn shown<'t>(&self, form: &[&'t Trait], area: Name, aspect: Name) -> Vec<&'t Trait> {
        let names = &self.lexicon.names;
        let inherits = [names.find("colour"), names.find("pattern")].contains(&aspect);
        let mut at = area;
        loop {
            let list: Vec<&Trait> = form
                .iter()
                .copied()
                .filter(|one| one.area == at && self.topic(one) == aspect)
                .filter(|one| at == area || !one.extent.is_some() && !one.position.is_some())
                .collect();
            if !list.is_empty() || !inherits {
                return list;
            }
            at = self.lexicon.topography.parent(at);
            if !at.is_some() || at == names.find("bird") {
                return list;
            }
        }
    }

    fn apart(&self, area: Name, aspect: Name, a: &[&Trait], b: &[&Trait]) -> bool {
        let names = &self.lexicon.names;
        if aspect == names.find("mark") {
            let optional = self.lexicon.topography.get(area).is_some_and(|a| a.optional);
            let there = |list: &[&Trait]| list.iter().any(|t| t.polarity == Polarity::Present);
            return optional
                && (there(a) != there(b) || (there(a) && self.colours_apart(a, b) == Some(true)));
        }
        if a.is_empty() || b.is_empty() {
            return false;
        }
        if aspect == names.find("colour") {
            return self.colours_apart(a, b).unwrap_or(false);
        }
        let present = |list: &[&Trait]| -> Vec<Name> {
            let there = list.iter().filter(|t| t.polarity == Polarity::Present);
            there.map(|t| names.find(t.value.text(self.lexicon))).collect()
        };
        let (a, b) = (present(a), present(b));
        let relation = |x: &Name, y: &Name| self.likeness.relation(*x, *y);
        let contrary = a.iter().any(|x| b.iter().any(|y| relation(x, y) == Relation::Contrary));
        let alike = a.iter().any(|x| {
            b.iter().any(|y| match relation(x, y) {
                Relation::Same => true,
                Relation::Alike(degree) => degree >= ONE_VALUE,
                Relation::Contrary | Relation::Other => false,
            })
        });
        let told = !a.is_empty() || !b.is_empty();
        contrary || (told && !alike)
    }

    /// Whether the ground colours differ; nothing if one of them states none.
    fn colours_apart(&self, a: &[&Trait], b: &[&Trait]) -> Option<bool> {
        let colour = self.lexicon.names.find("colour");
        let ground = |list: &[&Trait]| -> Vec<(Name, Name)> {
            let colours =
                list.iter().filter(|t| t.aspect == colour && t.polarity == Polarity::Present);
            let plain = |t: &&&Trait| !t.extent.is_some() && !t.position.is_some();
            let all: Vec<&&Trait> = colours.collect();
            let ground: Vec<_> = all.iter().copied().filter(|t| plain(t)).collect();
            let chosen = if ground.is_empty() { all } else { ground };
            chosen.into_iter().map(|t| (t.value.term(), t.tone)).collect()
        };
        let (a, b) = (ground(a), ground(b));
        if a.is_empty() || b.is_empty() {
            return None;
        }
        let near = |x: &(Name, Name), y: &(Name, Name)| {
            let colours = &self.lexicon.colours;
            match (colours.toned(x.0, x.1), colours.toned(y.0, y.1)) {
                (Some(p), Some(q)) => p.difference(q) < ONE_COLOUR,
                _ => x.0 == y.0,
            }
        };
        Some(!a.iter().any(|x| b.iter().any(|y| near(x, y))))
    }
}
