//! Colours as places in a perceptual space.
//!
//! Each colour word has a place in CIE Lab (D65); how alike two are is CIEDE2000 through the
//! `palette` crate. A difference of about 2 is just visible; rusty and orange are some 25 apart,
//! rusty and blue over 60.

use super::entry::Entry;
use super::names::{Name, Names};
use crate::diagnostic::{Diagnostic, Diagnostics};
use palette::Lab;
use palette::color_difference::Ciede2000;
use palette::white_point::D65;
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};

/// A place in the space: lightness 0 to 100, a (green to red), b (blue to yellow).
pub type Place = Lab<D65, f32>;

/// What a word of tone does to a colour, and what it says alone.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Tone {
    /// How much lighter (or, below zero, darker) a colour is that has this tone.
    pub shift: f32,
    /// Said alone, the lightness above which it holds.
    pub above: Option<f32>,
    /// Said alone, the lightness below which it holds.
    pub below: Option<f32>,
}

/// Over how much lightness a tone said alone fades from holding to not holding.
const FADE: f32 = 7.0;

impl Tone {
    /// How well the tone alone fits a place, from 0 to 1; nothing for tones of no lightness.
    pub fn fits(&self, place: Place) -> Option<f32> {
        let out = match (self.above, self.below) {
            (Some(above), _) => above - place.l,
            (None, Some(below)) => place.l - below,
            (None, None) => return None,
        };
        Some(1.0 / (1.0 + (out / FADE).exp()))
    }
}

/// The places of all colour words.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Colours {
    places: Vec<(Name, [f32; 3])>,
    index: FxHashMap<Name, usize>,
    tones: FxHashMap<Name, Tone>,
}

impl Colours {
    /// Reads the `colour` entries; one without a place is an error.
    pub fn read(entries: &[Entry], names: &mut Names, wrong: &mut Diagnostics) -> Self {
        let mut out = Self::default();
        for entry in entries.iter().filter(|e| e.kind == "tone") {
            let mut number = |key: &str| match entry.numbers(key, 1) {
                Ok(found) => found.map(|n| n[0]),
                Err(diagnostic) => {
                    wrong.push(*diagnostic);
                    None
                }
            };
            let tone = Tone {
                shift: number("shift").unwrap_or(0.0),
                above: number("above"),
                below: number("below"),
            };
            out.tones.insert(names.intern(&entry.id), tone);
        }
        for entry in entries.iter().filter(|e| e.kind == "colour") {
            if let Some(value) = entry.get("value")
                && value != entry.id
            {
                continue;
            }
            match entry.numbers("lab", 3) {
                Ok(Some(n)) => {
                    let name = names.intern(&entry.id);
                    out.index.insert(name, out.places.len());
                    out.places.push((name, [n[0], n[1], n[2]]));
                }
                Ok(None) => wrong.push(
                    Diagnostic::error(
                        "colour-without-place",
                        &entry.source,
                        entry.span,
                        format!("`{}` has no place in the colour space", entry.id),
                    )
                    .hint("add `lab L a b`, or `value` with the id of a colour that has one"),
                ),
                Err(diagnostic) => wrong.push(*diagnostic),
            }
        }
        out
    }

    /// The place of a colour.
    pub fn place(&self, colour: Name) -> Option<Place> {
        self.index.get(&colour).map(|&at| place(self.places[at].1))
    }

    /// The place of a colour of a tone.
    pub fn toned(&self, colour: Name, tone: Name) -> Option<Place> {
        let mut place = self.place(colour)?;
        place.l = (place.l + self.tone(tone).shift).clamp(0.0, 100.0);
        Some(place)
    }

    /// What a word of tone does; nothing for words that are none.
    pub fn tone(&self, tone: Name) -> Tone {
        self.tones.get(&tone).copied().unwrap_or_default()
    }

    /// Every colour with its place.
    pub fn iter(&self) -> impl Iterator<Item = (Name, Place)> {
        self.places.iter().map(|&(name, lab)| (name, place(lab)))
    }

    /// How far two colours are apart (CIEDE2000).
    pub fn distance(&self, a: Name, b: Name) -> Option<f32> {
        Some(self.place(a)?.difference(self.place(b)?))
    }
}

fn place([lightness, a, b]: [f32; 3]) -> Place {
    Lab::new(lightness, a, b)
}
