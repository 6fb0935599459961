//! Sizes: yardstick birds, comparisons and units on one scale of mass.
//!
//! Everything said of size becomes a range of mass in grams. Masses of yardsticks are AVONET's
//! (Tobias et al. 2022, Ecology Letters 25:581-597) and stand in the lexicon, as do the factors of
//! the comparing words and the curve from length to mass.

use super::entry::Entry;
use super::names::{Name, Names};
use crate::diagnostic::Diagnostics;
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};

/// What a unit measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Dimension {
    /// Centimetres.
    Length,
    /// Grams.
    Mass,
}

/// A range of mass, in grams.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct MassRange {
    /// From.
    pub low: f32,
    /// To.
    pub high: f32,
}

/// The scale.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Scale {
    yardsticks: FxHashMap<Name, f32>,
    relations: FxHashMap<Name, (f32, f32)>,
    units: FxHashMap<Name, (Dimension, f32)>,
    words: FxHashMap<Name, MassRange>,
    curve: Option<Curve>,
}

/// `mass = at_mass * (length / at_length) ^ power`, within a factor of `spread` either way.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
struct Curve {
    at_length: f32,
    at_mass: f32,
    power: f32,
    spread: f32,
}

impl Scale {
    /// Reads `yardstick`, `relation`, `unit`, `size` and `curve` entries.
    pub fn read(entries: &[Entry], names: &mut Names, wrong: &mut Diagnostics) -> Self {
        let mut out = Self::default();
        for entry in entries {
            let mut numbers = |key: &str, count: usize| match entry.numbers(key, count) {
                Ok(found) => found,
                Err(diagnostic) => {
                    wrong.push(*diagnostic);
                    None
                }
            };
            let id = names.intern(entry.get("value").unwrap_or(&entry.id));
            match entry.kind.as_str() {
                "yardstick" => {
                    if let Some(n) = numbers("mass", 1) {
                        out.yardsticks.insert(names.intern(&entry.id), n[0]);
                    }
                }
                "relation" => {
                    if let Some(n) = numbers("factors", 2) {
                        out.relations.insert(id, (n[0], n[1]));
                    }
                }
                "unit" => {
                    let dimension = match entry.get("dimension") {
                        Some("length") => Dimension::Length,
                        _ => Dimension::Mass,
                    };
                    if let Some(n) = numbers("factor", 1) {
                        out.units.insert(names.intern(&entry.id), (dimension, n[0]));
                    }
                }
                "size" => {
                    if let Some(n) = numbers("typical", 2) {
                        out.words.insert(id, MassRange { low: n[0], high: n[1] });
                    }
                }
                "curve" => {
                    if let Some(n) = numbers("from-length", 4) {
                        out.curve = Some(Curve {
                            at_length: n[0],
                            at_mass: n[1],
                            power: n[2],
                            spread: n[3],
                        });
                    }
                }
                _ => {}
            }
        }
        out
    }

    /// Adds a species' own mass, so that its name can serve as a yardstick.
    pub fn add_yardstick(&mut self, id: Name, mass: f32) {
        self.yardsticks.entry(id).or_insert(mass);
    }

    /// The mass of a yardstick, in grams.
    pub fn mass(&self, yardstick: Name) -> Option<f32> {
        self.yardsticks.get(&yardstick).copied()
    }

    /// What masses people mean by a size word: about two thirds of them lie in the range.
    pub fn word(&self, size: Name) -> Option<MassRange> {
        self.words.get(&size).copied()
    }

    /// The range that `relation` to a mass leaves.
    pub fn related(&self, relation: Name, mass: f32) -> Option<MassRange> {
        let (low, high) = self.relations.get(&relation).copied()?;
        Some(MassRange { low: mass * low, high: mass * high })
    }

    /// What a number of a unit measures, in centimetres or grams.
    pub fn measure(&self, number: f32, unit: Name) -> Option<(Dimension, f32)> {
        let (dimension, factor) = self.units.get(&unit).copied()?;
        Some((dimension, number * factor))
    }

    /// The range of mass of a bird of that length, bill tip to tail tip, in centimetres.
    pub fn mass_of_length(&self, low: f32, high: f32) -> Option<MassRange> {
        let curve = self.curve?;
        let mass = |cm: f32| curve.at_mass * (cm / curve.at_length).powf(curve.power);
        Some(MassRange { low: mass(low) / curve.spread, high: mass(high) * curve.spread })
    }
}
