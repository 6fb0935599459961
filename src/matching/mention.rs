//! How readily watchers speak of a part or property at all, by what the bird looks like.
//!
//! Of a black bird few name the belly; where it stands out against the rest, or the bill is heavy, many do. A
//! `mention` entry of the lexicon weighs features of a form for one part and property:
//!
//! ```text
//! mention belly-colour
//!   area belly
//!   aspect colour
//!   by like bird -0.40, mixed bird 0.30, tail 0.28
//! ```
//!
//! With a `value` the entry is about that colour alone. The feature is `called A`, how likely a part is called by
//! that colour; `like A` or `A like B`, how much of their colours two parts are called the same; `strong`,
//! `lightest`, `darkest`, `mixed`, how much of the part is, or of another part named behind; `mass`, a logarithm, and
//! `far-mass`, how far that is from the middling; or a measure by its name in the accounts, as the logarithm of
//! its proportion to the cube root of the mass. Parts without a name are the entry's own.

use super::chances::Chances;
use crate::accounts::Account;
use crate::lexicon::entry::Entry;
use crate::lexicon::names::Name;
use crate::lexicon::shelf::{Hand, List, Misplaced, Shelved};

/// Logarithms are stored in steps of this size.
const STEP: f32 = 0.02;
/// However a bird looks, a part is spoken of up to about twice as readily as another, or half.
const MOST: f32 = 0.9;

/// For each part and property with an entry, how readily it is spoken of, for each form.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Mentions {
    areas: List<u16>,
    aspects: List<Name>,
    /// One colour; none for all that is said of the property.
    values: List<Name>,
    /// For each entry and form: logarithms, in steps, over that of an average form.
    readily: List<i8>,
}

impl Shelved for Mentions {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        hand.list(&mut self.areas)?;
        hand.list(&mut self.aspects)?;
        hand.list(&mut self.values)?;
        hand.list(&mut self.readily)
    }
}

/// One entry, worked out.
struct Mention {
    area: u16,
    aspect: Name,
    value: Name,
    readily: Vec<i8>,
}

impl FromIterator<Mention> for Mentions {
    fn from_iter<I: IntoIterator<Item = Mention>>(mentions: I) -> Self {
        let mut out = Self::default();
        for one in mentions {
            out.areas.to_mut().push(one.area);
            out.aspects.to_mut().push(one.aspect);
            out.values.to_mut().push(one.value);
            out.readily.to_mut().extend(one.readily);
        }
        out
    }
}

impl Mentions {
    /// By the `mention` entries of the lexicon.
    pub fn of(chances: &Chances<'_>, entries: &[&Entry]) -> Self {
        let looks = Looks::of(chances);
        entries.iter().filter_map(|entry| mention(chances, &looks, entry)).collect()
    }

    /// How readily a part and property is spoken of at all, or beyond that by a value, as the logarithm over that
    /// of an average form, for each form; nothing where all are alike.
    pub fn readily(
        &self,
        area: usize,
        aspect: Name,
        value: Name,
    ) -> impl Iterator<Item = f32> + '_ {
        let about = |at: &usize| {
            usize::from(self.areas[*at]) == area
                && self.aspects[*at] == aspect
                && self.values[*at] == value
        };
        let forms = self.readily.len() / self.areas.len().max(1);
        let found = (0..self.areas.len()).find(about);
        let steps = found.map_or(&[][..], |at| &self.readily[at * forms..][..forms]);
        steps.iter().map(|steps| f32::from(*steps) * STEP)
    }

    /// Multiplies a row of chances of a statement by how readily it is made.
    pub fn weigh(&self, row: &mut [f32], area: usize, aspect: Name, value: Name) {
        for about in [Name::NONE, value] {
            for (chance, readily) in row.iter_mut().zip(self.readily(area, aspect, about)) {
                *chance *= readily.exp();
            }
        }
    }
}

/// A feature that a mention goes by.
#[derive(Clone, Debug, PartialEq)]
pub enum Feature {
    /// How likely a part is called by a colour, from 0 to 1.
    Called(usize, Name),
    /// How much of their colours two parts are called the same, from 0 to 1.
    Like(usize, usize),
    /// How strong, light or dark a part is, from 0 to 1.
    Hue(usize, Quality),
    /// How many names the colours of a part go by: the entropy.
    Mixed(usize),
    /// The logarithm of the mass.
    Mass,
    /// How far that lies from the mean.
    FarMass,
    /// The logarithm of a measure over the cube root of the mass.
    Measure(String),
}

/// What a colour is beside its name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Quality {
    /// Full of colour.
    Strong,
    /// As light as feathers get.
    Lightest,
    /// As dark as feathers get.
    Darkest,
}

impl Feature {
    /// What a text names; `own` is the part meant where none is named, `value` the colour. Nothing for parts that
    /// are not there.
    pub fn parse(
        text: &str,
        own: usize,
        value: Name,
        area: impl Fn(&str) -> Option<usize>,
    ) -> Option<Self> {
        let words: Vec<&str> = text.split_whitespace().collect();
        let quality = |word: &str| match word {
            "strong" => Some(Quality::Strong),
            "lightest" => Some(Quality::Lightest),
            "darkest" => Some(Quality::Darkest),
            _ => None,
        };
        match *words {
            ["called", a] if value.is_some() => Some(Self::Called(area(a)?, value)),
            ["like", b] => Some(Self::Like(own, area(b)?)),
            [a, "like", b] => Some(Self::Like(area(a)?, area(b)?)),
            ["mixed"] => Some(Self::Mixed(own)),
            ["mixed", a] => Some(Self::Mixed(area(a)?)),
            ["mass"] => Some(Self::Mass),
            ["far-mass"] => Some(Self::FarMass),
            [word] => Some(match quality(word) {
                Some(quality) => Self::Hue(own, quality),
                None => Self::Measure(word.to_owned()),
            }),
            [word, a] => Some(Self::Hue(area(a)?, quality(word)?)),
            _ => None,
        }
    }
}

/// What the forms look like, part by part.
pub struct Looks<'a> {
    chances: &'a Chances<'a>,
    mean_mass: f32,
}

impl<'a> Looks<'a> {
    /// Those of all forms.
    pub fn of(chances: &'a Chances<'a>) -> Self {
        let accounts = chances.accounts();
        let mean_mass = mean(accounts.iter().filter_map(|a| Some(a.mass?.ln())));
        Self { chances, mean_mass }
    }

    /// A feature of each form; where it is not known, that of the others on average.
    pub fn values(&self, feature: &Feature) -> Vec<f32> {
        match feature {
            Feature::Like(a, b) => {
                let (a, b) = (self.names(*a), self.names(*b));
                let alike = |(a, b): (&Vec<f32>, &Vec<f32>)| {
                    a.iter().zip(b).map(|(a, b)| a.min(*b)).sum::<f32>()
                };
                a.iter().zip(&b).map(alike).collect()
            }
            Feature::Called(area, value) => {
                let of = self.chances.names_of(*value);
                self.shares(*area, |sum: &mut f32, colour, share| *sum += share * of[colour])
            }
            Feature::Mixed(area) => {
                let entropy = |names: &Vec<f32>| -> f32 {
                    names.iter().filter(|n| **n > 0.0).map(|n| -n * n.ln()).sum()
                };
                self.names(*area).iter().map(entropy).collect()
            }
            Feature::Hue(area, quality) => {
                let of = self.chances.quality(*quality);
                self.shares(*area, |sum: &mut f32, colour, share| *sum += share * of[colour])
            }
            Feature::Mass => self.measured(|a| Some(a.mass?.ln())),
            Feature::FarMass => self.measured(|a| Some((a.mass?.ln() - self.mean_mass).abs())),
            Feature::Measure(name) => {
                self.measured(|a| Some((a.measure(name)? / a.mass?.cbrt()).ln()))
            }
        }
    }

    /// For each form, the chance of each common colour name, said of a part.
    fn names(&self, area: usize) -> Vec<Vec<f32>> {
        self.shares(area, |names: &mut Vec<f32>, colour, share| {
            let called = self.chances.called(colour);
            names.resize(called.len(), 0.0);
            for (sum, chance) in names.iter_mut().zip(called) {
                *sum += share * chance;
            }
        })
    }

    /// For each form, what `add` makes of the colours of a part, each with its share.
    fn shares<T: Default>(&self, area: usize, add: impl Fn(&mut T, usize, f32)) -> Vec<T> {
        let forms = &self.chances.forms;
        let meant = self.chances.areas.meant(area);
        let of_form = |form| {
            let colours = forms.colours(form).iter();
            let weights =
                colours.map(|c| (usize::from(c.colour), c.weight * meant[usize::from(c.area)]));
            let all: f32 = weights.clone().map(|(_, weight)| weight).sum();
            let mut out = T::default();
            for (colour, weight) in weights {
                add(&mut out, colour, weight / all.max(f32::MIN_POSITIVE));
            }
            out
        };
        forms.list.iter().map(of_form).collect()
    }

    fn measured(&self, measure: impl Fn(&Account) -> Option<f32>) -> Vec<f32> {
        let accounts = self.chances.accounts();
        let known: Vec<Option<f32>> = accounts.iter().map(measure).collect();
        let mean = mean(known.iter().flatten().copied());
        self.chances.forms.list.iter().map(|f| known[f.account()].unwrap_or(mean)).collect()
    }
}

fn mention(chances: &Chances<'_>, looks: &Looks<'_>, entry: &Entry) -> Option<Mention> {
    let names = &chances.lexicon().names;
    let index = |text: &str| chances.areas.index(names.find(text));
    let own = index(entry.get("area")?)?;
    let value = entry.get("value").map_or(Name::NONE, |value| names.find(value));
    let mut readily = vec![0.0; chances.forms.list.len()];
    for item in entry.items("by") {
        let (text, weight) = item.rsplit_once(' ')?;
        let weight: f32 = weight.parse().ok()?;
        let values = looks.values(&Feature::parse(text, own, value, index)?);
        for (sum, value) in readily.iter_mut().zip(values) {
            *sum += weight * value;
        }
    }
    let middle = mean(readily.iter().copied());
    #[expect(clippy::cast_possible_truncation, reason = "clamped to 45 steps either way")]
    let steps = |sum: &f32| ((sum - middle).clamp(-MOST, MOST) / STEP).round() as i8;
    Some(Mention {
        area: u16::try_from(own).ok()?,
        aspect: names.find(entry.get("aspect")?),
        value,
        readily: readily.iter().map(steps).collect(),
    })
}

fn mean(values: impl Iterator<Item = f32>) -> f32 {
    let (mut sum, mut count) = (0.0, 0.0);
    for value in values {
        sum += value;
        count += 1.0;
    }
    if count > 0.0 { sum / count } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn area(text: &str) -> Option<usize> {
        ["bird", "belly", "back"].iter().position(|a| *a == text)
    }

    #[test]
    fn features_are_of_the_own_part_or_of_the_one_that_is_named() {
        let parse = |text| Feature::parse(text, 1, Name::NONE, area);
        let white = Name(7);
        let of_white = Feature::parse("called back", 1, white, area);
        assert_eq!(of_white, Some(Feature::Called(2, white)));
        assert_eq!(parse("like bird"), Some(Feature::Like(1, 0)));
        assert_eq!(parse("back like bird"), Some(Feature::Like(2, 0)));
        assert_eq!(parse("strong"), Some(Feature::Hue(1, Quality::Strong)));
        assert_eq!(parse("darkest back"), Some(Feature::Hue(2, Quality::Darkest)));
        assert_eq!(parse("mixed bird"), Some(Feature::Mixed(0)));
        assert_eq!(parse("mass"), Some(Feature::Mass));
        assert_eq!(parse("bill-depth"), Some(Feature::Measure("bill-depth".to_owned())));
        for unknown in
            ["", "called back", "like elbow", "elbow like bird", "brown back", "like bird and back"]
        {
            assert_eq!(parse(unknown), None, "{unknown}");
        }
    }

    #[test]
    fn a_row_is_weighed_for_its_part_and_property_alone() {
        let aspect = Name(3);
        let (white, black) = (Name(7), Name(8));
        let of = |value, readily| Mention { area: 1, aspect, value, readily };
        let entries = [of(Name::NONE, vec![-35, 0, 35]), of(white, vec![0, 35, 0])];
        let mentions: Mentions = entries.into_iter().collect();
        let weighed = |area, aspect, value| {
            let mut row = [0.5; 3];
            mentions.weigh(&mut row, area, aspect, value);
            row
        };
        assert_eq!(weighed(1, Name(4), black), [0.5; 3]);
        assert_eq!(weighed(2, aspect, white), [0.5; 3]);
        // Half as readily, and twice: the logarithm of two is 0.69.
        let near = |row: [f32; 3], sought: [f32; 3]| {
            row.iter().zip(sought).all(|(a, b)| (a - b).abs() < 0.02)
        };
        assert!(near(weighed(1, aspect, black), [0.25, 0.5, 1.0]));
        assert!(near(weighed(1, aspect, white), [0.25, 1.0, 1.0]));
    }
}
