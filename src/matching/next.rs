//! What to look for next: the marks that would best part the leading species.
//!
//! For each part and property that the note does not speak of, the leaders are sorted by what each
//! would show. The gain of asking is the expected fall in uncertainty (Shannon's entropy, in bits),
//! an answer being taken as right nine times in ten.

use super::likeness::Relation;
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
/// Two colours whose names are this much the same are one answer.
const ONE_NAME: f32 = 0.45;
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

/// What two values are as answers to one question.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Answers {
    Same,
    Apart,
    Neither,
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
        let leaders: Vec<&Candidate> =
            candidates.iter().filter(|c| c.share > 0.005).take(LEADERS).collect();
        if leaders.len() < 2 {
            return Vec::new();
        }
        let aspects: Vec<Name> =
            lexicon.others("enquiry").map(|q| lexicon.names.find(&q.id)).collect();
        let mark = lexicon.names.find("mark");
        let mut out = Vec::new();
        for area in lexicon.topography.iter().filter(|a| a.resolves.is_empty() && a.in_field) {
            for &aspect in &aspects {
                // A marking whose colour is noted has been seen, so asking for it is moot.
                let asked = noted.iter().any(|n| {
                    (n.aspect == aspect || (aspect == mark && n.area == area.id))
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
                lexicon.topography.order(a.area).cmp(&lexicon.topography.order(b.area))
            })
        });
        // One question about each part is enough, and one for each way of parting the leaders.
        let mut areas: Vec<Name> = Vec::new();
        let mut partings: Vec<Vec<Answer>> = Vec::new();
        out.retain(|q: &LookNext| {
            let new = !areas.contains(&q.area) && !partings.contains(&q.answers);
            areas.push(q.area);
            partings.push(q.answers.clone());
            new
        });
        out.truncate(most);
        out
    }

    /// The answer that what a form shows comes down to: that of the first value which is like an
    /// answer already given, or excludes those given. Colours exclude each other if they are far
    /// apart; of other values only contraries do, so that "straight" and "thick" are no answers to
    /// one question.
    fn answer(
        &self,
        lexicon: &Lexicon,
        groups: &BTreeMap<String, Vec<&Candidate>>,
        values: &[String],
    ) -> Option<String> {
        for value in values {
            let relations: Vec<(&String, Answers)> =
                groups.keys().map(|g| (g, self.compare(lexicon, g, value))).collect();
            if let Some((group, _)) = relations.iter().find(|(_, r)| *r == Answers::Same) {
                return Some((*group).clone());
            }
            if relations.iter().all(|(_, r)| *r == Answers::Apart) {
                return Some(value.clone());
            }
        }
        None
    }

    fn compare(&self, lexicon: &Lexicon, a: &str, b: &str) -> Answers {
        if a == b {
            return Answers::Same;
        }
        let name = |text: &str| lexicon.names.find(text);
        let place = |text: &str| lexicon.colours.place(name(text));
        if let (Some(at), Some(other)) = (place(a), place(b)) {
            // What watchers call by one name is one answer.
            let named_alike = self.chances().overlap(name(a), name(b));
            let same = at.difference(other) < ONE_ANSWER
                || named_alike.is_some_and(|alike| alike > ONE_NAME);
            return if same { Answers::Same } else { Answers::Apart };
        }
        if [a, b] == ["yes", "no"] || [a, b] == ["no", "yes"] {
            return Answers::Apart;
        }
        match self.likeness().relation(name(a), name(b)) {
            Relation::Same => Answers::Same,
            Relation::Alike(degree) if degree >= 0.6 => Answers::Same,
            Relation::Contrary => Answers::Apart,
            Relation::Alike(_) | Relation::Other => Answers::Neither,
        }
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
        let mut own = 0;
        for &leader in leaders {
            all += leader.share;
            let account = &self.accounts()[leader.account];
            let traits: Vec<&Trait> =
                self.accounts().traits_of(account, &account.forms[leader.form]).collect();
            let values = shown(lexicon, &traits, area, aspect);
            own += usize::from(values.own);
            if let Some(group) = self.answer(lexicon, &groups, &values.list) {
                known += leader.share;
                groups.entry(group).or_default().push(leader);
            }
        }
        if own * 2 < leaders.len() {
            return None;
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
        Some(LookNext { area, aspect, question, answers, gain })
    }
}

/// What a form shows on a part.
struct Shown {
    list: Vec<String>,
    /// Whether it is said of the part itself, not of what it lies within.
    own: bool,
}

/// What a form shows on a part, or, for colours and patterns, on the part it lies within.
fn shown(lexicon: &Lexicon, traits: &[&Trait], area: Name, aspect: Name) -> Shown {
    let here = |one: &&&Trait| one.polarity == Polarity::Present && !one.position.is_some();
    if aspect == lexicon.names.find("mark") {
        let optional = lexicon.topography.get(area).is_some_and(|a| a.optional);
        let yes = traits.iter().filter(here).any(|t| lexicon.topography.covers(area, t.area));
        let list =
            if optional { vec![if yes { "yes" } else { "no" }.to_owned()] } else { Vec::new() };
        return Shown { list, own: optional };
    }
    let mut at = area;
    let inherits = ["colour", "pattern"].contains(&lexicon.names.text(aspect));
    while at.is_some() && at != lexicon.names.find("bird") {
        let said = |one: &&&Trait| one.area == at && one.aspect == aspect && !one.extent.is_some();
        let list: Vec<String> = traits
            .iter()
            .filter(here)
            .filter(said)
            .map(|t| t.value.text(lexicon).to_owned())
            .collect();
        if !list.is_empty() || !inherits {
            return Shown { list, own: at == area };
        }
        at = lexicon.topography.parent(at);
    }
    Shown { list: Vec::new(), own: false }
}

/// The expected fall in uncertainty, in bits.
fn gain(groups: &BTreeMap<String, Vec<&Candidate>>, known: f32) -> f32 {
    let shares: Vec<f32> =
        groups.values().map(|g| g.iter().map(|c| c.share / known).sum()).collect();
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
    let value = |i: usize| answers.get(i).map_or("", |a| a.value.as_str()).replace('-', " ");
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
