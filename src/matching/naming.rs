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
use palette::color_difference::Ciede2000;
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};
use std::sync::OnceLock;

/// What every two colours have in common, so that no name is impossible.
const LEAST_LIKENESS: f32 = 1e-4;

/// What is worked out once, when a colour is first asked for, or was stored.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Table {
    /// For each colour of the palette what is left by its list, over the likeness of all other names.
    rest: Vec<f32>,
    /// For each colour of the palette, the chance of each common name.
    common: Vec<Vec<f32>>,
}

/// For each colour, names and their chances.
type Lists = FxHashMap<Hue, Vec<(Name, f32)>>;

/// The chances of names for the colours of a palette.
#[derive(Debug)]
pub struct Naming {
    /// The colours shown.
    palette: Vec<Hue>,
    spoken: Vec<(Name, f32)>,
    shares: FxHashMap<Name, f32>,
    /// By `naming` entries, fitted.
    lists: Lists,
    /// By `called` entries, estimated.
    estimates: Lists,
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
        palette: Vec<Hue>,
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
            lists: lists(lexicon, "naming"),
            estimates: lists(lexicon, "called"),
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
        let rest = &self.table(lexicon).rest;
        let asked = lexicon.colours.place(said);
        self.palette
            .iter()
            .zip(rest)
            .map(|(&shown, rest)| {
                let listed = self.list(shown).iter().find(|(name, _)| *name == said);
                listed.map_or_else(
                    || rest * self.likeness(lexicon, shown, said, asked),
                    |(_, chance)| *chance,
                )
            })
            .collect()
    }

    /// The names listed for a colour: on its part or else anywhere, of its tone or else without one; fitted or
    /// else estimated.
    fn list(&self, shown: Hue) -> &[(Name, f32)] {
        let anywhere = Hue { part: Name::NONE, ..shown };
        let untoned = Hue { tone: Name::NONE, ..anywhere };
        let lists = [
            self.lists.get(&shown).or_else(|| self.lists.get(&anywhere)),
            self.estimates.get(&shown).or_else(|| self.estimates.get(&anywhere)),
            self.lists.get(&untoned).or_else(|| self.estimates.get(&untoned)),
        ];
        lists.into_iter().flatten().next().map_or(&[], Vec::as_slice)
    }

    /// The table, worked out if it is not there yet.
    pub fn table(&self, lexicon: &Lexicon) -> &Table {
        self.table.get_or_init(|| {
            let places: Vec<Option<Place>> =
                self.spoken.iter().map(|&(name, _)| lexicon.colours.place(name)).collect();
            let (mut rest, mut common) = (Vec::new(), Vec::new());
            for &shown in &self.palette {
                let (left, row) = self.common_names(lexicon, &places, shown);
                rest.push(left);
                common.push(row);
            }
            Table { rest, common }
        })
    }

    /// The chance of each common name, said of a colour, and the chance for each likeness of others.
    fn common_names(
        &self,
        lexicon: &Lexicon,
        places: &[Option<Place>],
        shown: Hue,
    ) -> (f32, Vec<f32>) {
        let list = self.list(shown);
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

    /// The chance of each common name, said of each colour of the palette.
    pub fn called(&self, lexicon: &Lexicon) -> &[Vec<f32>] {
        &self.table(lexicon).common
    }

    /// How much the names of two colours are the same, from 0 to 1; nothing for colours that no form
    /// shows without a tone.
    pub fn overlap(&self, lexicon: &Lexicon, a: Name, b: Name) -> Option<f32> {
        let at = |colour: Name| {
            let hue = Hue { colour, tone: Name::NONE, part: Name::NONE };
            self.palette.iter().position(|&p| p == hue)
        };
        let (a, b) = (at(a)?, at(b)?);
        let common = &self.table(lexicon).common;
        Some(common[a].iter().zip(&common[b]).map(|(a, b)| a.min(*b)).sum())
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
        let (strong, white, black) = (of(Quality::Strong), of(Quality::White), of(Quality::Black));
        let striking = |at: usize| {
            (weights.striking_colour * strong[at]
                + weights.striking_white * white[at]
                + weights.striking_black * black[at])
                .exp()
        };
        (0..self.palette.len()).map(striking).collect()
    }

    /// How strong, white or black each colour of the palette is, from 0 to 1.
    pub fn quality(&self, lexicon: &Lexicon, quality: Quality) -> Vec<f32> {
        let degree = |hue: &Hue| {
            let Some(place) = lexicon.colours.place(hue.colour) else {
                return 0.0;
            };
            match quality {
                Quality::Strong => (place.a.hypot(place.b) / STRONG).min(1.0),
                Quality::White => f32::from(u8::from(place.l > WHITE)),
                Quality::Black => f32::from(u8::from(place.l < BLACK)),
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
