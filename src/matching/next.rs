//! What to look for next: the marks that would best part the leading species.
//!
//! For each part and property that the note does not speak of, the leaders are sorted by what each
//! would show. The gain of asking is the expected fall in uncertainty (Shannon's entropy, in bits),
//! an answer being taken as right nine times in ten, times how often a watcher who looks at that part
//! sees it well (`looked-at` entries of the lexicon).

use super::likeness::Relation;
use super::rank::{Candidate, Matcher};
use crate::lexicon::Lexicon;
use crate::lexicon::entry::Entry;
use crate::lexicon::names::Name;
use crate::lexicon::topography::Area;
use crate::traits::{Polarity, Trait, Value};
use palette::color_difference::Ciede2000;

/// How many leaders are told apart.
const LEADERS: usize = 8;
/// How often an answer in the field is right.
const RELIABLE: f32 = 0.9;
/// A word that fewer watchers would use of a part, by its published measures, is no answer for it.
const LEAST_FITTING: f32 = 0.25;
/// Two colours nearer than this (CIEDE2000) are one answer.
const ONE_ANSWER: f32 = 16.0;
/// Two colours whose names are this much the same are one answer.
const ONE_NAME: f32 = 0.45;
/// The least gain worth asking for, in bits.
const LEAST_GAIN: f32 = 0.05;
/// More answers than this are no question to ask in the field.
const MOST_ANSWERS: usize = 4;

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

/// Answers so far, each with the leaders that show it, by their place.
type Groups = Vec<(Name, Vec<usize>)>;

/// What it takes to ask.
struct Enquirer<'a> {
    matcher: &'a Matcher<'a>,
    lexicon: &'a Lexicon,
    names: Names,
    leaders: Vec<Leader<'a>>,
    /// How well each part is seen, by its name; the rest is seen as `else_seen`.
    seen: Vec<(Name, f32)>,
    else_seen: f32,
}

/// Names of the schema.
struct Names {
    bird: Name,
    mark: Name,
    colour: Name,
    pattern: Name,
    shown: Name,
    absent: Name,
}

/// A leader and what it shows.
struct Leader<'a> {
    account: usize,
    share: f32,
    shown: Vec<&'a Trait>,
}

/// What is said of a part of a leader.
struct Said {
    account: usize,
    area: Name,
    aspect: Name,
    values: Vec<Name>,
}

/// A kind of question.
struct Enquiry {
    aspect: Name,
    /// What a bird shows whose account says nothing of it on a part that it describes.
    otherwise: Name,
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
        let enquirer = Enquirer::of(self, lexicon, &leaders);
        let mut out = enquirer.questions(noted);
        out.sort_by(|a, b| {
            b.gain.total_cmp(&a.gain).then_with(|| {
                lexicon.topography.order(a.area).cmp(&lexicon.topography.order(b.area))
            })
        });
        // One question about each part is enough, and one for each way of parting the leaders.
        let mut areas: Vec<Name> = Vec::new();
        let mut partings: Vec<Vec<Answer>> = Vec::new();
        out.retain(|q: &LookNext| {
            let near = |a: &Name| {
                lexicon.topography.covers(*a, q.area) || lexicon.topography.covers(q.area, *a)
            };
            let new = !areas.iter().any(near) && !partings.contains(&q.answers);
            if new {
                areas.push(q.area);
                partings.push(q.answers.clone());
            }
            new
        });
        out.truncate(most);
        out
    }
}

impl<'a> Enquirer<'a> {
    fn of(matcher: &'a Matcher<'a>, lexicon: &'a Lexicon, leaders: &[&Candidate]) -> Self {
        let find = |text: &str| lexicon.names.find(text);
        let names = Names {
            bird: find("bird"),
            mark: find("mark"),
            colour: find("colour"),
            pattern: find("pattern"),
            shown: find("shown"),
            absent: find("absent"),
        };
        let leader = |one: &&Candidate| {
            let account = &matcher.accounts()[one.account];
            let traits = matcher.accounts().traits_of(account, &account.forms[one.form]);
            let here = |t: &&Trait| t.polarity == Polarity::Present && !t.position.is_some();
            Leader { account: one.account, share: one.share, shown: traits.filter(here).collect() }
        };
        let seen = |item: &str| {
            let (area, chance) = item.split_once(' ')?;
            Some((find(area), chance.trim().parse().ok()?))
        };
        let parts = || lexicon.others("looked-at");
        Self {
            matcher,
            lexicon,
            names,
            leaders: leaders.iter().map(leader).collect(),
            seen: parts().flat_map(|e| e.items("seen")).filter_map(seen).collect(),
            else_seen: matcher.weights().else_seen,
        }
    }

    /// Every question worth asking.
    fn questions(&self, noted: &[Trait]) -> Vec<LookNext> {
        let topography = &self.lexicon.topography;
        let enquiries: Vec<Enquiry> = self
            .lexicon
            .others("enquiry")
            .map(|entry| Enquiry {
                aspect: self.lexicon.names.find(&entry.id),
                otherwise: entry.get("else").map_or(Name::NONE, |v| self.lexicon.names.find(v)),
            })
            .collect();
        let mut out = Vec::new();
        for area in topography.iter().filter(|a| a.resolves.is_empty() && a.in_field) {
            for enquiry in &enquiries {
                // A marking whose colour is noted has been seen, so asking for it is moot.
                let asked = noted.iter().any(|n| {
                    (n.aspect == enquiry.aspect
                        || (enquiry.aspect == self.names.mark && n.area == area.id))
                        && n.polarity != Polarity::Unseen
                        && (topography.covers(area.id, n.area)
                            || topography.covers(n.area, area.id))
                });
                if !asked && let Some(found) = self.question(area, enquiry) {
                    out.push(found);
                }
            }
        }
        out
    }

    fn question(&self, area: &Area, enquiry: &Enquiry) -> Option<LookNext> {
        let mut groups: Groups = Vec::new();
        let (mut known, mut all, mut own) = (0.0, 0.0, 0);
        for (at, leader) in self.leaders.iter().enumerate() {
            all += leader.share;
            let (values, is_own) = self.shown(leader, area, enquiry);
            own += usize::from(is_own);
            let said =
                Said { account: leader.account, area: area.id, aspect: enquiry.aspect, values };
            if let Some(answer) = self.answer(&groups, &said) {
                known += leader.share;
                match groups.iter_mut().find(|(value, _)| *value == answer) {
                    Some((_, group)) => group.push(at),
                    None => groups.push((answer, vec![at])),
                }
            }
        }
        // A question whose answer is known for only a few of the leaders parts nothing.
        if own * 2 < self.leaders.len()
            || !(2..=MOST_ANSWERS).contains(&groups.len())
            || known < 0.7 * all
        {
            return None;
        }
        let share = |group: &Vec<usize>| {
            group.iter().map(|&at| self.leaders[at].share / known).sum::<f32>()
        };
        let shares: Vec<f32> = groups.iter().map(|(_, group)| share(group)).collect();
        let seen = self.seen.iter().find(|(of, _)| *of == area.id);
        let gain = gain(&shares) * seen.map_or(self.else_seen, |(_, chance)| *chance);
        if gain < LEAST_GAIN {
            return None;
        }
        let answers: Vec<Answer> = groups
            .iter()
            .map(|(value, group)| Answer {
                value: self.text(*value).to_owned(),
                favours: group.iter().map(|&at| self.leaders[at].account).collect(),
            })
            .collect();
        let question = worded(self.lexicon, area.id, enquiry.aspect, &answers);
        Some(LookNext { area: area.id, aspect: enquiry.aspect, question, answers, gain })
    }

    /// The answer that what a form shows comes down to: that of the first value which is like an
    /// answer already given, or excludes those given. Colours exclude each other if they are far
    /// apart; of other values only contraries do, so that "straight" and "thick" are no answers to
    /// one question. An answer that another value excludes is none ("conical, pointed": not thin), nor
    /// is one that the measures speak against.
    fn answer(&self, groups: &Groups, said: &Said) -> Option<Name> {
        let fits = |value: Name| {
            let fits = self.matcher.chances().measured(said.account, said.area, said.aspect, value);
            fits.is_none_or(|fits| fits >= LEAST_FITTING)
        };
        let excludes =
            |a: Name, b: Name| self.matcher.likeness().relation(a, b) == Relation::Contrary;
        let open = |group: Name| fits(group) && !said.values.iter().any(|v| excludes(*v, group));
        for &value in said.values.iter().filter(|value| fits(**value)) {
            let mut apart = true;
            for &(group, _) in groups {
                match self.compare(group, value) {
                    Answers::Same if !open(group) => apart = false,
                    Answers::Same => return Some(group),
                    Answers::Apart => {}
                    Answers::Neither => apart = false,
                }
            }
            if apart {
                return Some(value);
            }
        }
        None
    }

    fn compare(&self, a: Name, b: Name) -> Answers {
        if a == b {
            return Answers::Same;
        }
        let place = |name: Name| self.lexicon.colours.place(name);
        if let (Some(at), Some(other)) = (place(a), place(b)) {
            // What watchers call by one name is one answer.
            let named_alike = self.matcher.chances().overlap(a, b);
            let same = named_alike.is_some_and(|alike| alike > ONE_NAME)
                || at.difference(other) < ONE_ANSWER;
            return if same { Answers::Same } else { Answers::Apart };
        }
        if [a, b].contains(&self.names.absent) {
            return Answers::Apart;
        }
        match self.matcher.likeness().relation(a, b) {
            Relation::Same => Answers::Same,
            Relation::Alike(degree) if degree >= 0.6 => Answers::Same,
            Relation::Contrary => Answers::Apart,
            Relation::Alike(_) | Relation::Other => Answers::Neither,
        }
    }

    /// What a form shows on a part, or, for colours and patterns, on the part it lies within; and whether
    /// it is said of the part itself.
    fn shown(&self, leader: &Leader<'_>, area: &Area, enquiry: &Enquiry) -> (Vec<Name>, bool) {
        let topography = &self.lexicon.topography;
        if enquiry.aspect == self.names.mark {
            if !area.optional {
                return (Vec::new(), false);
            }
            let there = leader.shown.iter().any(|t| topography.covers(area.id, t.area));
            return (vec![if there { self.names.shown } else { self.names.absent }], true);
        }
        let mut at = area.id;
        let inherits = [self.names.colour, self.names.pattern].contains(&enquiry.aspect);
        while at.is_some() && at != self.names.bird {
            let said = leader
                .shown
                .iter()
                .filter(|t| t.area == at && t.aspect == enquiry.aspect && !t.extent.is_some());
            let list: Vec<Name> = said.map(|t| self.value(t)).collect();
            let described = || leader.shown.iter().any(|t| t.area == at);
            if !list.is_empty() || !inherits {
                return (list, at == area.id);
            }
            if enquiry.otherwise.is_some() && described() {
                return (vec![enquiry.otherwise], at == area.id);
            }
            at = topography.parent(at);
        }
        (Vec::new(), false)
    }

    /// An answer in words.
    fn text(&self, value: Name) -> &str {
        if value == self.names.shown {
            "yes"
        } else if value == self.names.absent {
            "no"
        } else {
            self.lexicon.names.text(value)
        }
    }

    fn value(&self, one: &Trait) -> Name {
        match &one.value {
            Value::Term(name) => *name,
            Value::Made(text) => self.lexicon.names.find(text),
        }
    }
}

/// The expected fall in uncertainty, in bits, for answers with those shares.
fn gain(shares: &[f32]) -> f32 {
    let others = f32::from(u8::try_from(shares.len().max(2) - 1).unwrap_or(u8::MAX));
    let wrong = (1.0 - RELIABLE) / others;
    let answer_entropy: f32 = shares
        .iter()
        .map(|&share| {
            let p = share * RELIABLE + (1.0 - share) * wrong;
            -p * p.log2()
        })
        .sum();
    let noise = -RELIABLE * RELIABLE.log2() - others * wrong * wrong.log2();
    (answer_entropy - noise).max(0.0)
}

/// An answer in words: as the question has it, or its name.
fn said(enquiry: &Entry, value: &str) -> String {
    let words = |item: &str| {
        let (of, words) = item.split_once(' ')?;
        (of == value).then(|| words.trim().to_owned())
    };
    enquiry.items("says").find_map(words).unwrap_or_else(|| value.replace('-', " "))
}

fn worded(lexicon: &Lexicon, area: Name, aspect: Name, answers: &[Answer]) -> String {
    let name = lexicon.names.text(aspect);
    let Some(entry) = lexicon.others("enquiry").find(|q| q.id == name) else {
        return String::new();
    };
    let key = if answers.len() == 2 { "either" } else { "text" };
    let plural = lexicon.topography.get(area).is_some_and(|a| a.plural);
    let (be, capital) = if plural { ("are", "Are") } else { ("is", "Is") };
    let value = |i: usize| answers.get(i).map_or_else(String::new, |a| said(entry, &a.value));
    let title = lexicon.topography.title(area, &lexicon.names);
    let article = match title.chars().next() {
        _ if plural => "",
        Some('a' | 'e' | 'i' | 'o' | 'u') => "an ",
        _ => "a ",
    };
    let mut out = entry
        .get(key)
        .unwrap_or_default()
        .replace("{be}", be)
        .replace("{Be}", capital)
        .replace("{an area}", &format!("{article}{title}"))
        .replace("{area}", &title)
        .replace("{a}", &value(0))
        .replace("{b}", &value(1));
    out.push('?');
    out
}
