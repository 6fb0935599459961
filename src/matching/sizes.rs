//! How likely a word for size is of a bird of that mass.

use super::weights::Weights;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::scale::MassRange;

/// Which masses a word takes in.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Side {
    /// All below the centre.
    Below,
    /// Those near the centre.
    About,
    /// All above the centre.
    Above,
}

/// A word that compares with nothing: `small`, `large`.
#[derive(Clone, Copy, Debug)]
struct SizeWord {
    word: Name,
    /// The logarithm of the mass in grams.
    centre: f32,
    spread: f32,
    side: Side,
}

/// The words for size.
#[derive(Clone, Debug, Default)]
pub struct Sizes(Vec<SizeWord>);

impl Sizes {
    /// Reads the `size-word` entries.
    pub fn of(lexicon: &Lexicon) -> Self {
        let number = |text: Option<&str>| text.and_then(|t| t.parse::<f32>().ok());
        let word = |entry: &crate::lexicon::entry::Entry| {
            Some(SizeWord {
                word: lexicon.names.find(&entry.id),
                centre: number(entry.get("grams"))?.ln(),
                spread: number(entry.get("spread"))?,
                side: match entry.get("side")? {
                    "below" => Side::Below,
                    "above" => Side::Above,
                    _ => Side::About,
                },
            })
        };
        Self(lexicon.others("size-word").filter_map(word).collect())
    }

    /// Whether the word compares with nothing.
    pub fn knows(&self, word: Name) -> bool {
        self.0.iter().any(|w| w.word == word)
    }

    /// How likely the word or the range is of a bird of `mass` grams, from 0 to 1.
    pub fn chance(&self, weights: &Weights, said: Name, range: MassRange, mass: f32) -> f32 {
        let mass = mass.ln();
        let fits = match self.0.iter().find(|w| w.word == said) {
            Some(word) => word.fits(mass),
            None => {
                let out = (range.low.ln() - mass).max(mass - range.high.ln()).max(0.0);
                let far = out / weights.size_spread;
                (-0.5 * far * far).exp()
            }
        };
        weights.size_slip + (1.0 - weights.size_slip) * fits
    }
}

impl SizeWord {
    fn fits(&self, mass: f32) -> f32 {
        let far = (mass - self.centre) / self.spread;
        match self.side {
            Side::Below => 1.0 / (1.0 + (STEEP * far).exp()),
            Side::Above => 1.0 / (1.0 + (-STEEP * far).exp()),
            Side::About => (-0.5 * far * far).exp(),
        }
    }
}

/// A logistic curve of this steepness is nearest to that of a normal spread.
const STEEP: f32 = 1.7;
