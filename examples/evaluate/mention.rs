//! How readily a part or property is spoken of, fitted by the features of the forms.
//!
//! What is said of a kind is counted for each part and property and held against what the model without
//! mentions expects of it. The logarithm of the two is fitted by the features, kept near nothing (ridge).

use crate::tables::list;
use crate::trial::{Birds, Kinds};
use rectrix::knowledge::Knowledge;
use rectrix::lexicon::entry::Entry;
use rectrix::lexicon::names::Name;
use rectrix::matching::chances::Chances;
use rectrix::matching::mention::{Feature, Looks};
use rectrix::matching::question::Question;
use rectrix::traits::{Certainty, Polarity};
use std::collections::{BTreeMap, HashMap};
use std::fmt::Write;
use std::hash::{BuildHasherDefault, DefaultHasher};

/// Statements of a part and property below which nothing is fitted.
const LEAST_SAID: f64 = 300.0;
/// Statements that the model counts for, in what is said of a kind.
const MODEL_KNOWN: f64 = 3.0;
/// Beyond how many statements a kind counts little more: kinds differ by more than chance.
const MOST_OF_A_KIND: f64 = 7.0;
/// How strongly a weight is kept near nothing, in kinds.
const RIDGE: f64 = 4.0;
/// How often the weights are worked out in turn.
const ROUNDS: usize = 300;
/// In how many parts kinds are left out in turn, to see what the features foretell.
const PARTS: usize = 5;
/// The least part of the differences between kinds left out that must be foretold.
const LEAST_FORETOLD: f64 = 0.1;
/// The least weight that is listed.
const LEAST_WEIGHT: f64 = 0.01;

/// How features begin that are of one value.
const BY_VALUE: &str = "called ";

/// What is said of each part and property; by one value, or by any.
type About = (usize, Name, Name);

/// Statements of one kind about one part and property.
#[derive(Clone, Copy, Default)]
struct Times {
    counted: f64,
    expected: f64,
}

/// The `mention` entries by the features of one `mention-by` entry, beyond the mentions that the lexicon has already.
pub fn mentions(
    knowledge: &Knowledge,
    chances: &Chances<'_>,
    birds: &Birds,
    kinds: &Kinds,
    by: &Entry,
) -> String {
    let lexicon = &knowledge.lexicon;
    let text = |area: usize| lexicon.topography.iter().nth(area).map(|a| lexicon.names.text(a.id));
    let index = |text: &str| chances.areas.index(lexicon.names.find(text));
    let aspects: Vec<Name> = by.items("aspects").map(|a| lexicon.names.find(a)).collect();
    let shares = shares(knowledge, chances, kinds, birds);
    let looks = Looks::of(chances);
    let mut known: HashMap<String, Vec<f64>> = HashMap::new();
    let by_value = by.items("by").any(|item| item.starts_with(BY_VALUE));
    let mut out = String::new();
    for ((area, aspect, value), times) in counted(knowledge, chances, birds, &shares, by_value) {
        let said: f64 = times.iter().map(|t| t.counted).sum();
        if said < LEAST_SAID || !aspects.contains(&aspect) {
            continue;
        }
        let mut features = Vec::new();
        let mut used = Vec::new();
        for text in by.items("by") {
            let Some(feature) = Feature::parse(text, area, value, index) else {
                continue;
            };
            let of_kinds = known.entry(format!("{feature:?}")).or_insert_with(|| {
                let values = looks.values(&feature);
                let mean = |forms: &Vec<(usize, f64)>| {
                    forms.iter().map(|&(form, share)| share * f64::from(values[form])).sum()
                };
                shares.values().map(mean).collect()
            });
            features.push(of_kinds.clone());
            used.push(text);
        }
        let sought = Sought::of(&times);
        if sought.foretold(&features) < LEAST_FORETOLD {
            continue;
        }
        let mut items: Vec<(f64, &str)> = sought.ridge(&features).into_iter().zip(used).collect();
        items.retain(|(weight, _)| weight.abs() >= LEAST_WEIGHT);
        if items.is_empty() {
            continue;
        }
        items.sort_by(|a, b| b.0.abs().total_cmp(&a.0.abs()).then(a.1.cmp(b.1)));
        let items: Vec<String> = items.iter().map(|(w, text)| format!("{text} {w:.2}")).collect();
        let (area, aspect) = (text(area).unwrap_or_default(), lexicon.names.text(aspect));
        if by_value {
            let value = lexicon.names.text(value);
            let _ =
                writeln!(out, "mention {area}-{aspect}-{value}\n  area {area}\n  aspect {aspect}");
            let _ = writeln!(out, "  value {value}");
        } else {
            let _ = writeln!(out, "mention {area}-{aspect}\n  area {area}\n  aspect {aspect}");
        }
        list(&mut out, "by", &items);
        out += "  means how readily it is spoken of\n\n";
    }
    out
}

/// The forms of each kind with their shares, of all kinds that something is said of.
fn shares<'k>(
    knowledge: &Knowledge,
    chances: &Chances<'_>,
    kinds: &'k Kinds,
    birds: &Birds,
) -> BTreeMap<&'k String, Vec<(usize, f64)>> {
    let said = |kind: &String| birds.keys().any(|(of, _)| of == kind);
    let forms = |names: &Vec<String>| {
        let list = chances.forms.list.iter().enumerate();
        let of_kind: Vec<(usize, f64)> = list
            .filter(|(_, f)| names.contains(&knowledge.accounts[f.account()].english))
            .map(|(at, f)| (at, f64::from(f.share)))
            .collect();
        let all: f64 = of_kind.iter().map(|(_, share)| share).sum();
        of_kind.into_iter().map(|(at, share)| (at, share / all)).collect()
    };
    kinds.iter().filter(|(kind, _)| said(kind)).map(|(kind, names)| (kind, forms(names))).collect()
}

/// For each part and property, how often each kind has it said of it, and how often that is expected.
fn counted(
    knowledge: &Knowledge,
    chances: &Chances<'_>,
    birds: &Birds,
    shares: &BTreeMap<&String, Vec<(usize, f64)>>,
    by_value: bool,
) -> BTreeMap<About, Vec<Times>> {
    let place: BTreeMap<&&String, usize> = shares.keys().zip(0..).collect();
    let mut sentences = vec![0.0; place.len()];
    // Sums come out the same each time.
    let mut said: HashMap<Question, Vec<f64>, BuildHasherDefault<DefaultHasher>> =
        HashMap::default();
    for ((kind, _), notes) in birds {
        let at = place[&kind];
        sentences[at] += f64::from(u32::try_from(notes.len()).unwrap_or(u32::MAX));
        let traits = notes.iter().flat_map(|(traits, _)| traits);
        let sure =
            traits.filter(|t| t.polarity == Polarity::Present && t.certainty != Certainty::Hedged);
        for one in sure {
            let question = Question::of(&knowledge.lexicon, &chances.areas, &chances.aspects, one);
            if let Some(question) = question {
                said.entry(question).or_insert_with(|| vec![0.0; place.len()])[at] += 1.0;
            }
        }
    }
    let mut out: BTreeMap<About, Vec<Times>> = BTreeMap::new();
    for (question, counts) in said {
        let row = chances.row(&question);
        let mean = |forms: &Vec<(usize, f64)>| -> f64 {
            forms.iter().map(|&(form, share)| share * f64::from(row[form])).sum()
        };
        let chance: Vec<f64> =
            shares.values().zip(&sentences).map(|(forms, n)| n * mean(forms)).collect();
        let scale = counts.iter().sum::<f64>() / chance.iter().sum::<f64>().max(f64::MIN_POSITIVE);
        let times = out
            .entry((
                question.area,
                question.aspect,
                if by_value { question.value } else { Name::NONE },
            ))
            .or_insert_with(|| vec![Times::default(); place.len()]);
        for ((times, count), chance) in times.iter_mut().zip(counts).zip(chance) {
            times.counted += count;
            times.expected += chance * scale;
        }
    }
    out
}

/// What is sought of each kind, the logarithm of what is said over what is expected, and how much it counts.
struct Sought {
    logs: Vec<f64>,
    counts: Vec<f64>,
}

impl Sought {
    fn of(times: &[Times]) -> Self {
        let log = |t: &Times| ((t.counted + MODEL_KNOWN) / (t.expected + MODEL_KNOWN)).ln();
        let count = |t: &Times| t.expected / (1.0 + t.expected / MOST_OF_A_KIND);
        Self { logs: times.iter().map(log).collect(), counts: times.iter().map(count).collect() }
    }

    fn mean(&self, values: &[f64]) -> f64 {
        let sum: f64 = values.iter().zip(&self.counts).map(|(v, n)| v * n).sum();
        sum / self.counts.iter().sum::<f64>().max(f64::MIN_POSITIVE)
    }

    /// The part of the differences between kinds that features foretell of kinds left out of the fitting; less
    /// than nothing where they lead astray.
    fn foretold(&self, features: &[Vec<f64>]) -> f64 {
        let (mut off, mut all) = (0.0, 0.0);
        for part in 0..PARTS {
            let mut others = Self { logs: self.logs.clone(), counts: self.counts.clone() };
            others.counts.iter_mut().skip(part).step_by(PARTS).for_each(|n| *n = 0.0);
            let weights = others.ridge(features);
            let means: Vec<f64> = features.iter().map(|f| others.mean(f)).collect();
            let mean = others.mean(&others.logs);
            for at in (part..self.logs.len()).step_by(PARTS) {
                let features = features.iter().zip(&means).zip(&weights);
                let said: f64 = features.map(|((f, mean), weight)| weight * (f[at] - mean)).sum();
                let sought = self.logs[at] - mean;
                off += self.counts[at] * (sought - said).powi(2);
                all += self.counts[at] * sought.powi(2);
            }
        }
        1.0 - off / all.max(f64::MIN_POSITIVE)
    }

    /// The weights of the features that bring what is expected nearest to what was counted.
    fn ridge(&self, features: &[Vec<f64>]) -> Vec<f64> {
        let kinds = self.counts.iter().filter(|n| **n > 0.0).count();
        let all: f64 = self.counts.iter().sum();
        let kept = RIDGE * all / f64::from(u32::try_from(kinds.max(1)).unwrap_or(u32::MAX));
        let centred = |values: &Vec<f64>| -> Vec<f64> {
            let mean = self.mean(values);
            values.iter().map(|v| v - mean).collect()
        };
        let features: Vec<Vec<f64>> = features.iter().map(centred).collect();
        let mut left = centred(&self.logs);
        let mut weights = vec![0.0; features.len()];
        for _ in 0..ROUNDS {
            for (weight, feature) in weights.iter_mut().zip(&features) {
                let (mut with, mut own) = (0.0, kept);
                for ((x, y), n) in feature.iter().zip(&left).zip(&self.counts) {
                    with += n * x * (y + *weight * x);
                    own += n * x * x;
                }
                let step = with / own - *weight;
                *weight += step;
                for (y, x) in left.iter_mut().zip(feature) {
                    *y -= step * x;
                }
            }
        }
        weights
    }
}
