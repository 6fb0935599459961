//! Notes with their expected readings, and how well a reader does on them.
//!
//! ```text
//! note telegraphic-01
//!   text   orange below, no wing bars
//!   gives  underparts colour orange; wing-bar mark shown absent
//!   unplaced glorp
//! ```

use crate::diagnostic::{Diagnostic, Diagnostics, Source};
use crate::lexicon::entry::entries;
use crate::proof::{shown, stated_all};
use crate::reading::Reader;
use crate::rules::examples::{Expected, expected_trait};
use std::collections::BTreeMap;

/// A note with its expected reading.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GoldNote {
    /// Its id.
    pub id: String,
    /// Its text.
    pub text: String,
    /// The region whose yardsticks it means.
    pub region: String,
    /// The traits it must give, and no others.
    pub traits: Vec<Expected>,
    /// The words that must be reported as unplaced, and no others.
    pub unplaced: Vec<String>,
}

/// Reads the notes of a file.
///
/// # Errors
/// What is wrong in the file.
pub fn notes(source: &Source) -> Result<Vec<GoldNote>, Diagnostics> {
    let (found, mut wrong) = entries(source);
    let mut out = Vec::new();
    for entry in &found {
        let joined = |key: &str, by: &str| {
            let values: Vec<&str> =
                entry.fields.iter().filter(|f| f.key == key).map(|f| f.value.as_str()).collect();
            values.join(by)
        };
        let gives = joined("gives", "; ");
        let mut traits = Vec::new();
        for text in gives.split(';').map(str::trim).filter(|t| !t.is_empty()) {
            match expected_trait(&text.split_whitespace().collect()) {
                Ok(one) => traits.push(one),
                Err(message) => {
                    wrong.push(Diagnostic::error("bad-gold", source, entry.span, message));
                }
            }
        }
        traits.sort();
        traits.dedup();
        out.push(GoldNote {
            id: entry.id.clone(),
            text: joined("text", "\n"),
            region: entry.get("region").unwrap_or("north-america").to_owned(),
            traits,
            unplaced: entry.items("unplaced").map(str::to_lowercase).collect(),
        });
    }
    if wrong.has_errors() { Err(wrong) } else { Ok(out) }
}

/// Counts for one aspect.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Count {
    /// Expected and found.
    pub right: usize,
    /// Found, not expected.
    pub extra: usize,
    /// Expected, not found.
    pub missed: usize,
}

impl Count {
    /// Share of what was found that is right.
    pub fn precision(self) -> f64 {
        ratio(self.right, self.right + self.extra)
    }

    /// Share of what was expected that was found.
    pub fn recall(self) -> f64 {
        ratio(self.right, self.right + self.missed)
    }

    /// The harmonic mean of both.
    pub fn f1(self) -> f64 {
        ratio(2 * self.right, 2 * self.right + self.extra + self.missed)
    }
}

#[expect(clippy::cast_precision_loss, reason = "counts of notes are small")]
fn ratio(part: usize, whole: usize) -> f64 {
    if whole == 0 { 1.0 } else { part as f64 / whole as f64 }
}

/// How a reader did.
#[derive(Clone, Debug, Default)]
pub struct Score {
    /// By aspect.
    pub by_aspect: BTreeMap<String, Count>,
    /// One line for each note that was not read as expected.
    pub misses: Vec<String>,
}

impl Score {
    /// All aspects together.
    pub fn total(&self) -> Count {
        self.by_aspect.values().fold(Count::default(), |a, b| Count {
            right: a.right + b.right,
            extra: a.extra + b.extra,
            missed: a.missed + b.missed,
        })
    }

    /// Adds a note. Hedging is not scored here: area, aspect, value and polarity are.
    pub fn add(&mut self, reader: &Reader<'_>, note: &GoldNote) {
        let reading = reader.read(&note.text);
        let unhedged = |one: &Expected| Expected { hedged: false, ..one.clone() };
        let mut found: Vec<Expected> = stated_all(reader, &reading).iter().map(unhedged).collect();
        let mut expected: Vec<Expected> = note.traits.iter().map(unhedged).collect();
        found.dedup();
        expected.dedup();
        let extra: Vec<&Expected> = found.iter().filter(|f| !expected.contains(f)).collect();
        let missed: Vec<&Expected> = expected.iter().filter(|e| !found.contains(e)).collect();
        for one in &found {
            let count = self.by_aspect.entry(one.aspect.clone()).or_default();
            if extra.contains(&one) {
                count.extra += 1;
            } else {
                count.right += 1;
            }
        }
        for one in &missed {
            self.by_aspect.entry(one.aspect.clone()).or_default().missed += 1;
        }
        let mut unplaced: Vec<String> =
            reading.unplaced().map(|s| s.of(&note.text).to_lowercase()).collect();
        let mut expected_unplaced = note.unplaced.clone();
        unplaced.sort();
        expected_unplaced.sort();
        if extra.is_empty() && missed.is_empty() && unplaced == expected_unplaced {
            return;
        }
        let list =
            |traits: &[&Expected]| traits.iter().map(|t| shown(t)).collect::<Vec<_>>().join("; ");
        let mut line = format!("{}: {}", note.id, note.text.replace('\n', " / "));
        if !extra.is_empty() {
            line.push_str(&format!("\n    extra:  {}", list(&extra)));
        }
        if !missed.is_empty() {
            line.push_str(&format!("\n    missed: {}", list(&missed)));
        }
        if unplaced != expected_unplaced {
            line.push_str(&format!("\n    unplaced: {}", unplaced.join(", ")));
        }
        self.misses.push(line);
    }
}
