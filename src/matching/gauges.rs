//! Proportions: how likely "long bill" or "short tail" is of a bird whose measures are published.
//!
//! People judge a part by the bird it is on, so each measure is taken against the cube root of the mass.
//! A `gauge` entry of the lexicon says which words of which part go by which measures, and at which
//! proportion half of all watchers use them.

use crate::accounts::Account;
use crate::lexicon::Lexicon;
use crate::lexicon::entry::Entry;
use crate::lexicon::names::Name;

/// One way of judging a proportion.
#[derive(Clone, Debug)]
pub struct Gauge {
    areas: Vec<Name>,
    aspect: Name,
    values: Vec<Name>,
    /// Measures by their names in the accounts, with the power each is taken to.
    measures: Vec<(String, f32)>,
    centre: f32,
    slope: f32,
    /// Whether the account's own words count beside the measure.
    beside_words: bool,
}

/// Every gauge of a lexicon.
#[derive(Clone, Debug, Default)]
pub struct Gauges(Vec<Gauge>);

impl Gauges {
    /// Reads the `gauge` entries.
    pub fn of(lexicon: &Lexicon) -> Self {
        Self(lexicon.others("gauge").filter_map(|e| gauge(lexicon, e)).collect())
    }

    /// The gauge for a word, if there is one.
    pub fn find(&self, area: Name, aspect: Name, value: Name) -> Option<&Gauge> {
        self.0
            .iter()
            .find(|g| g.aspect == aspect && g.areas.contains(&area) && g.values.contains(&value))
    }
}

impl Gauge {
    /// Whether the account's own words count beside the measure.
    pub const fn beside_words(&self) -> bool {
        self.beside_words
    }

    /// How many watchers of a hundred would use the word, from 0 to 1; nothing without measures.
    pub fn fits(&self, account: &Account) -> Option<f32> {
        let mass = account.mass?;
        let mut proportion = 0.0;
        for (name, power) in &self.measures {
            proportion += power * (account.measure(name)? / mass.cbrt()).ln();
        }
        Some(1.0 / (1.0 + (-self.slope * (proportion - self.centre)).exp()))
    }
}

fn gauge(lexicon: &Lexicon, entry: &Entry) -> Option<Gauge> {
    let names = |key: &str| entry.items(key).map(|i| lexicon.names.find(i)).collect();
    let number = |key: &str| entry.get(key).and_then(|v| v.parse::<f32>().ok());
    let measure = |item: &str| {
        let (name, power) = item.split_once(' ')?;
        Some((name.to_owned(), power.trim().parse().ok()?))
    };
    Some(Gauge {
        areas: names("areas"),
        aspect: lexicon.names.find(entry.get("aspect")?),
        values: names("values"),
        measures: entry.items("measures").filter_map(measure).collect(),
        centre: number("centre")?,
        slope: number("slope")?,
        beside_words: entry.get("beside-words") == Some("yes"),
    })
}
