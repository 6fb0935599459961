//! What to look for next: the marks that would best part the leading species.
//!
//! For each part and property that the note does not speak of, the leaders are sorted by what each
//! would show. The gain of asking is the expected fall in uncertainty (Shannon's entropy, in bits),
//! an answer being taken as right nine times in ten.

use super::rank::{Candidate, Matcher};
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::traits::{Polarity, Trait};
use palette::color_difference::Ciede2000;
use std::collections::BTreeMap;

/// How many leaders are told apart.
const LEADERS: usize = 8;
/// How often an answer in the field is right.
const RELIABLE: f32 = 0.9;
/// Two colours nearer than this (CIEDE2000) are one answer.
const ONE_ANSWER: f32 = 16.0;
/// The least gain worth asking for, in bits.
const LEAST_GAIN: f32 = 0.05;

/// One answer to a question, and whom it favours.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// What would be seen.
    pub value: String,
    /// The accounts that show it, by their place, likeliest first.
    pub favours: Vec<usize>,
}

/// A mark to look at.
#[derive(Clone, Debug, PartialEq)]
pub struct LookNext {
    /// Where.
    pub area: Name,
    /// Which property.
    pub aspect: Name,
    /// The question in words.
    pub question: String,
    /// The answers that part the leaders.
    pub answers: Vec<Answer>,
    /// The expected gain in bits.
    pub gain: f32,
}

impl Matcher<'_> {
    /// The marks most worth looking at, best first.
    pub fn look_next(
        &self,
        lexicon: &Lexicon,
        candidates: &[Candidate],
        noted: &[Trait],
        most: usize,
    ) -> Vec<LookNext> {
        let leaders: Vec<&Candidate> = candidates
            .iter()
            .filter(|c| c.share > 0.005)
            .take(LEADERS)
            .collect();
        if leaders.len() < 2 {
            return Vec::new();
        }
        let aspects: Vec<Name> = lexicon
            .others("enquiry")
            .map(|q| lexicon.names.find(&q.id))
            .collect();
        let mut out = Vec::new();
        for area in lexicon
            .topography
            .iter()
            .filter(|a| a.resolves.is_empty() && a.in_field)
        {
            for &aspect in &aspects {
                let asked = noted.iter().any(|n| {
                    n.aspect == aspect
                        && n.polarity != Polarity::Unseen
                        && (lexicon.topography.covers(area.id, n.area)
                            || lexicon.topography.covers(n.area, area.id))
                });
                if !asked
                    && let Some(found) = self.question(lexicon, &leaders, area.id, aspect)
                    && found.gain >= LEAST_GAIN
                {
                    out.push(found);
                }
            }
        }
        out.sort_by(|a, b| {
            b.gain.total_cmp(&a.gain).then_with(|| {
                lexicon
                    .topography
                    .order(a.area)
                    .cmp(&lexicon.topography.order(b.area))
            })
        });
        // One question about each part is enough.
        let mut seen: Vec<Name> = Vec::new();
        out.retain(|q| {
            let new = !seen.contains(&q.area);
            seen.push(q.area);
            new
        });
        out.truncate(most);
        out
    }

    fn question(
        &self,
        lexicon: &Lexicon,
        leaders: &[&Candidate],
        area: Name,
        aspect: Name,
    ) -> Option<LookNext> {
        let mut groups: BTreeMap<String, Vec<&Candidate>> = BTreeMap::new();
        let mut known = 0.0;
        let mut all = 0.0;
        for &leader in leaders {
            all += leader.share;
            let account = &self.accounts()[leader.account];
            let traits: Vec<&Trait> = self
                .accounts()
                .traits_of(account, &account.forms[leader.form])
                .collect();
            if let Some(value) = shown(lexicon, &traits, area, aspect) {
                known += leader.share;
                let group = match groups.keys().find(|k| alike(lexicon, k, &value)) {
                    Some(key) => key.clone(),
                    None => value,
                };
                groups.entry(group).or_default().push(leader);
            }
        }
        // A question whose answer is known for only a few of the leaders parts nothing.
        if groups.len() < 2 || known < 0.7 * all {
            return None;
        }
        let gain = gain(&groups, known);
        let mut answers: Vec<Answer> = groups
            .into_iter()
            .map(|(value, favours)| Answer {
                value,
                favours: favours.iter().map(|c| c.account).collect(),
            })
            .collect();
        answers.sort_by_key(|a| std::cmp::Reverse(a.favours.len()));
        let question = worded(lexicon, area, aspect, &answers);
        Some(LookNext {
            area,
            aspect,
            question,
            answers,
            gain,
        })
    }
}

/// What a form shows on a part: the first statement about it, or about the part it lies within.
fn shown(lexicon: &Lexicon, traits: &[&Trait], area: Name, aspect: Name) -> Option<String> {
    let mark = lexicon.names.find("mark");
    if aspect == mark {
        let optional = lexicon.topography.get(area).is_some_and(|a| a.optional);
        let yes = traits
            .iter()
            .any(|t| t.polarity == Polarity::Present && lexicon.topography.covers(area, t.area));
        return optional.then(|| if yes { "yes" } else { "no" }.to_owned());
    }
    let mut at = area;
    while at.is_some() && at != lexicon.names.find("bird") {
        let found = traits.iter().find(|t| {
            t.area == at
                && t.aspect == aspect
                && t.polarity == Polarity::Present
                && !t.position.is_some()
        });
        if let Some(found) = found {
            return Some(found.value.text(lexicon).to_owned());
        }
        at = lexicon.topography.parent(at);
    }
    None
}

fn alike(lexicon: &Lexicon, a: &str, b: &str) -> bool {
    let place = |text: &str| lexicon.colours.place(lexicon.names.find(text));
    match (place(a), place(b)) {
        (Some(a), Some(b)) => a.difference(b) < ONE_ANSWER,
        _ => a == b,
    }
}

/// The expected fall in uncertainty, in bits.
fn gain(groups: &BTreeMap<String, Vec<&Candidate>>, known: f32) -> f32 {
    let shares: Vec<f32> = groups
        .values()
        .map(|g| g.iter().map(|c| c.share / known).sum())
        .collect();
    let wrong = (1.0 - RELIABLE) / (f32::from(u8::try_from(shares.len()).unwrap_or(2)) - 1.0);
    let answer_entropy: f32 = shares
        .iter()
        .map(|&share| {
            let p = share * RELIABLE + (1.0 - share) * wrong;
            -p * p.log2()
        })
        .sum();
    let others = f32::from(u8::try_from(shares.len() - 1).unwrap_or(1));
    let noise = -RELIABLE * RELIABLE.log2() - others * wrong * wrong.log2();
    (answer_entropy - noise).max(0.0)
}

fn worded(lexicon: &Lexicon, area: Name, aspect: Name, answers: &[Answer]) -> String {
    let name = lexicon.names.text(aspect);
    let Some(entry) = lexicon.others("enquiry").find(|q| q.id == name) else {
        return String::new();
    };
    let key = if answers.len() == 2 { "either" } else { "text" };
    let plural = lexicon.topography.get(area).is_some_and(|a| a.plural);
    let (be, capital) = if plural { ("are", "Are") } else { ("is", "Is") };
    let value = |i: usize| {
        answers
            .get(i)
            .map_or("", |a| a.value.as_str())
            .replace('-', " ")
    };
    let mut out = entry
        .get(key)
        .unwrap_or_default()
        .replace("{be}", be)
        .replace("{Be}", capital)
        .replace("{area}", &lexicon.topography.title(area, &lexicon.names))
        .replace("{a}", &value(0))
        .replace("{b}", &value(1));
    out.push('?');
    out
}
