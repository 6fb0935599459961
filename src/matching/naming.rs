//! What people call a colour: the chance of each colour name, said of each colour that is shown.
//!
//! A `naming` entry of the lexicon lists the names commonly given to a colour, for each tone. What the
//! list leaves, and every colour without a list, goes by how near the name's colour lies and how common
//! the name is in speech, so that the chances of all common names of one colour add up to one.

use super::forms::Hue;
use super::mention::Quality;
use super::weights::Weights;
use crate::lexicon::Lexicon;
use crate::lexicon::colours::Place;
use crate::lexicon::names::Name;
use crate::lexicon::shelf::{Hand, List, Misplaced, Shelved};
use palette::color_difference::Ciede2000;
use rustc_hash::FxHashMap;
use std::sync::OnceLock;

/// What every two colours have in common, so that no name is impossible.
const LEAST_LIKENESS: f32 = 1e-4;

/// What is worked out once, when a colour is first asked for, or was stored.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Table {
    /// For each colour of the palette what is left by its list, over the likeness of all other names.
    rest: List<f32>,
    /// For each colour of the palette, the chance of each common name.
    common: List<f32>,
    /// For each colour of the palette, where its list of names ends.
    ends: List<u32>,
    names: List<Name>,
    chances: List<f32>,
}

impl Shelved for Table {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        hand.list(&mut self.rest)?;
        hand.list(&mut self.common)?;
        hand.list(&mut self.ends)?;
        hand.list(&mut self.names)?;
        hand.list(&mut self.chances)
    }
}

impl Table {
    /// The chance of a name that is listed for a colour of the palette.
    fn listed(&self, at: usize, said: Name) -> Option<f32> {
        let start = at.checked_sub(1).map_or(0, |before| self.ends[before] as usize);
        let list = start..self.ends[at] as usize;
        let found = self.names[list].iter().position(|name| *name == said)?;
        Some(self.chances[start + found])
    }
}

/// For each colour, names and their chances.
type Lists = FxHashMap<Hue, Vec<(Name, f32)>>;

/// The chances of names for the colours of a palette.
#[derive(Debug)]
pub struct Naming {
    /// The colours shown.
    palette: List<Hue>,
    spoken: Vec<(Name, f32)>,
    shares: FxHashMap<Name, f32>,
    table: OnceLock<Table>,
    spread: f32,
    common: f32,
    rare: f32,
}

impl Naming {
    /// Reads `spoken` and `naming` entries.
    pub fn of(
        lexicon: &Lexicon,
        weights: &Weights,
        palette: List<Hue>,
        stored: Option<Table>,
    ) -> Self {
        let mut spoken = Vec::new();
        for entry in lexicon.others("spoken") {
            spoken.extend(entry.items("shares").filter_map(|item| percent(lexicon, item)));
        }
        Self {
            palette,
            shares: spoken.iter().copied().collect(),
            spoken,
            table: stored.map_or_else(OnceLock::new, OnceLock::from),
            spread: weights.colour_spread,
            common: weights.common_names,
            rare: weights.rare_name,
        }
    }

    /// The share of a name in all colour names said.
    pub fn share(&self, name: Name) -> f32 {
        self.shares.get(&name).copied().unwrap_or(self.rare)
    }

    /// The chance of a name, said of each colour of the palette.
    pub fn column(&self, lexicon: &Lexicon, said: Name) -> Vec<f32> {
        let table = self.table(lexicon);
        let asked = lexicon.colours.place(said);
        let chance = |(at, (&shown, rest)): (usize, (&Hue, &f32))| {
            let likeness = || self.likeness(lexicon, shown, said, asked);
            table.listed(at, said).unwrap_or_else(|| rest * likeness())
        };
        self.palette.iter().zip(&*table.rest).enumerate().map(chance).collect()
    }

    /// The table, worked out if it is not there yet.
    pub fn table(&self, lexicon: &Lexicon) -> &Table {
        self.table.get_or_init(|| {
            let places: Vec<Option<Place>> =
                self.spoken.iter().map(|&(name, _)| lexicon.colours.place(name)).collect();
            let listings = Listings::of(lexicon);
            let (mut rest, mut common) = (Vec::new(), Vec::new());
            let (mut ends, mut names, mut chances) = (Vec::new(), Vec::new(), Vec::new());
            for &shown in &*self.palette {
                let list = listings.list(shown);
                let (left, row) = self.common_names(lexicon, &places, shown, list);
                rest.push(left);
                common.extend(row);
                names.extend(list.iter().map(|(name, _)| *name));
                chances.extend(list.iter().map(|(_, chance)| *chance));
                ends.push(u32::try_from(names.len()).unwrap_or(u32::MAX));
            }
            Table {
                rest: rest.into(),
                common: common.into(),
                ends: ends.into(),
                names: names.into(),
                chances: chances.into(),
            }
        })
    }

    /// The chance of each common name, said of a colour, and the chance for each likeness of others.
    fn common_names(
        &self,
        lexicon: &Lexicon,
        places: &[Option<Place>],
        shown: Hue,
        list: &[(Name, f32)],
    ) -> (f32, Vec<f32>) {
        let listed = |name| list.iter().find(|(of, _)| *of == name).map(|(_, chance)| *chance);
        let near: Vec<f32> = self
            .spoken
            .iter()
            .zip(places)
            .map(|(&(name, _), &place)| match listed(name) {
                Some(_) => 0.0,
                None => self.likeness(lexicon, shown, name, place),
            })
            .collect();
        let left = 1.0 - list.iter().map(|(_, chance)| chance).sum::<f32>();
        let left = left.max(0.0) / near.iter().sum::<f32>().max(LEAST_LIKENESS);
        let row = self
            .spoken
            .iter()
            .zip(&near)
            .map(|(&(name, _), near)| listed(name).unwrap_or(left * near))
            .collect();
        (left, row)
    }

    /// The chance of each common name, said of a colour of the palette.
    pub fn called(&self, lexicon: &Lexicon, colour: usize) -> &[f32] {
        &self.table(lexicon).common[colour * self.spoken.len()..][..self.spoken.len()]
    }

    /// How much the names of two colours are the same, from 0 to 1; nothing for colours that no form
    /// shows without a tone.
    pub fn overlap(&self, lexicon: &Lexicon, a: Name, b: Name) -> Option<f32> {
        let at = |colour: Name| {
            let hue = Hue { colour, tone: Name::NONE, part: Name::NONE };
            self.palette.iter().position(|&p| p == hue)
        };
        let (a, b) = (at(a)?, at(b)?);
        let row = |at: usize| self.called(lexicon, at).iter();
        Some(row(a).zip(row(b)).map(|(a, b)| a.min(*b)).sum())
    }

    /// How near a name lies to a colour, weighed by how common it is.
    fn likeness(&self, lexicon: &Lexicon, shown: Hue, said: Name, asked: Option<Place>) -> f32 {
        let colours = &lexicon.colours;
        let near = match (colours.toned(shown.colour, shown.tone), asked) {
            (Some(a), Some(b)) => {
                let far = a.difference(b) / self.spread;
                (-0.5 * far * far).exp()
            }
            // "dark" and "pale" name a lightness.
            (Some(a), None) => colours.tone(said).fits(a).unwrap_or(0.1),
            (None, Some(b)) => colours.tone(shown.colour).fits(b).unwrap_or(0.1),
            (None, None) if said == shown.colour => 1.0,
            (None, None) => 0.0,
        };
        (near + LEAST_LIKENESS) * self.share(said).powf(self.common)
    }

    /// How likely "dark", "pale" or another word of lightness is of each colour of the palette; nothing
    /// for tones that say nothing of lightness.
    pub fn toned(&self, lexicon: &Lexicon, tone: Name) -> Option<Vec<f32>> {
        let said = lexicon.colours.tone(tone);
        said.above.or(said.below)?;
        let fits = |hue: &Hue| match lexicon.colours.toned(hue.colour, hue.tone) {
            Some(place) => said.fits(place).unwrap_or(0.5),
            None if hue.colour == tone => 1.0,
            None => 0.0,
        };
        Some(self.palette.iter().map(fits).collect())
    }

    /// How readily each colour of the palette is spoken of, against a dull one.
    pub fn striking(&self, lexicon: &Lexicon, weights: &Weights) -> Vec<f32> {
        let of = |quality| self.quality(lexicon, quality);
        let (strong, white, black) =
            (of(Quality::Strong), of(Quality::Lightest), of(Quality::Darkest));
        let striking = |at: usize| {
            (weights.striking_colour * strong[at]
                + weights.striking_white * white[at]
                + weights.striking_black * black[at])
                .exp()
        };
        (0..self.palette.len()).map(striking).collect()
    }

    /// How strong, light or dark each colour of the palette is, from 0 to 1.
    pub fn quality(&self, lexicon: &Lexicon, quality: Quality) -> Vec<f32> {
        let degree = |hue: &Hue| {
            let Some(place) = lexicon.colours.place(hue.colour) else {
                return 0.0;
            };
            match quality {
                Quality::Strong => (place.a.hypot(place.b) / STRONG).min(1.0),
                Quality::Lightest => f32::from(u8::from(place.l > WHITE)),
                Quality::Darkest => f32::from(u8::from(place.l < BLACK)),
            }
        };
        self.palette.iter().map(degree).collect()
    }
}

/// The chroma from which on a colour is as strong as feathers get.
const STRONG: f32 = 70.0;
/// Lightness above which a colour is white, and below which black.
const WHITE: f32 = 88.0;
const BLACK: f32 = 20.0;

/// The names that the lexicon lists for colours.
struct Listings {
    /// By `naming` entries, fitted.
    fitted: Lists,
    /// By `called` entries, estimated.
    estimates: Lists,
}

impl Listings {
    fn of(lexicon: &Lexicon) -> Self {
        Self { fitted: lists(lexicon, "naming"), estimates: lists(lexicon, "called") }
    }

    /// The names listed for a colour: on its part or else anywhere, of its tone or else without one; fitted or
    /// else estimated.
    fn list(&self, shown: Hue) -> &[(Name, f32)] {
        let anywhere = Hue { part: Name::NONE, ..shown };
        let untoned = Hue { tone: Name::NONE, ..anywhere };
        let lists = [
            self.fitted.get(&shown).or_else(|| self.fitted.get(&anywhere)),
            self.estimates.get(&shown).or_else(|| self.estimates.get(&anywhere)),
            self.fitted.get(&untoned).or_else(|| self.estimates.get(&untoned)),
        ];
        lists.into_iter().flatten().next().map_or(&[], Vec::as_slice)
    }
}

/// The lists of all entries of a kind.
fn lists(lexicon: &Lexicon, kind: &str) -> Lists {
    let mut out = Lists::default();
    for entry in lexicon.others(kind) {
        let colour = lexicon.names.find(&entry.id);
        for field in entry.fields.iter().filter(|f| f.key != "means") {
            let (tone, part) = field.key.split_once("-on-").unwrap_or((&field.key, ""));
            let tone = if tone == "untoned" { Name::NONE } else { lexicon.names.find(tone) };
            let part = lexicon.names.find(part);
            let items = field.value.split(',').filter_map(|i| percent(lexicon, i.trim()));
            out.entry(Hue { colour, tone, part }).or_default().extend(items);
        }
    }
    out
}

/// `rusty 12` is a name and its chance of 12 in a hundred.
fn percent(lexicon: &Lexicon, item: &str) -> Option<(Name, f32)> {
    let (name, number) = item.rsplit_once(' ')?;
    let name = lexicon.names.find(name.trim());
    Some((name, number.parse::<f32>().ok()? / 100.0)).filter(|(name, _)| name.is_some())
}
