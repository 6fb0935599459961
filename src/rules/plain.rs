//! Patterns without what is kept, made simple: what matches is the same, with fewer questions.

use super::compile::{Pattern, Rule};
use super::program::{Marks, Set};
use rustc_hash::FxHashMap;

/// A pattern in which nothing is kept.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub(super) enum Plain {
    Token(Set),
    Phrase(usize),
    Seq(Vec<Plain>),
    Alt(Vec<Plain>),
    Opt(Box<Plain>),
    Star(Box<Plain>),
    Plus(Box<Plain>),
    Not(Box<Plain>),
    And(Box<Plain>),
    Behind(bool, Box<Plain>),
    Start,
    End,
}

impl Plain {
    /// The parts of a sequence; itself where it is none.
    pub(super) fn items(&self) -> &[Self] {
        match self {
            Self::Seq(items) => items,
            one => std::slice::from_ref(one),
        }
    }

    /// Does something with the number of every phrase in it.
    fn for_each_phrase(&mut self, with: &mut impl FnMut(&mut usize)) {
        match self {
            Self::Phrase(p) => with(p),
            Self::Seq(items) | Self::Alt(items) => {
                items.iter_mut().for_each(|item| item.for_each_phrase(with));
            }
            Self::Opt(inner)
            | Self::Star(inner)
            | Self::Plus(inner)
            | Self::Not(inner)
            | Self::And(inner)
            | Self::Behind(_, inner) => inner.for_each_phrase(with),
            Self::Token(_) | Self::Start | Self::End => {}
        }
    }
}

/// The plain form of every alternative of every rule.
pub(super) struct Plains {
    ways: Vec<Vec<Plain>>,
    /// Phrases that are one question about one word stand for that question.
    questions: Vec<Option<Plain>>,
    /// For each rule the first one that is tried in the same ways.
    alike: Vec<usize>,
}

impl Plains {
    pub(super) fn of(rules: &[Rule], marks: &mut Marks) -> Self {
        let mut out = Self {
            ways: Vec::new(),
            questions: vec![None; rules.len()],
            alike: (0..rules.len()).collect(),
        };
        // Each round finds the phrases that are made of those found before.
        loop {
            out.ways = rules
                .iter()
                .map(|r| r.alternatives.iter().map(|a| out.plain(&a.pattern, marks)).collect())
                .collect();
            let found: Vec<Option<Plain>> = out.ways.iter().map(|ways| question(ways)).collect();
            if found == out.questions {
                break;
            }
            out.questions = found;
        }
        out.alike = out.told_apart();
        for way in out.ways.iter_mut().flatten() {
            way.for_each_phrase(&mut |p| *p = out.alike[*p]);
        }
        out
    }

    /// For each rule the first one that fits the same words in the same ways, so that what several files
    /// say alike is tried once. All are taken to be alike until they are seen to differ.
    fn told_apart(&self) -> Vec<usize> {
        let mut alike = vec![0; self.ways.len()];
        loop {
            let mut firsts: FxHashMap<Vec<Plain>, usize> = FxHashMap::default();
            let first = |(i, ways): (usize, &Vec<Plain>)| {
                let mut ways = ways.clone();
                ways.iter_mut().for_each(|way| way.for_each_phrase(&mut |p| *p = alike[*p]));
                *firsts.entry(ways).or_insert(i)
            };
            let next: Vec<usize> = self.ways.iter().enumerate().map(first).collect();
            if next == alike {
                return alike;
            }
            alike = next;
        }
    }

    /// The alternatives of a rule.
    pub(super) fn ways(&self, rule: usize) -> &[Plain] {
        &self.ways[rule]
    }

    /// The plain form of a pattern.
    pub(super) fn plain(&self, pattern: &Pattern, marks: &mut Marks) -> Plain {
        let mut boxed = |inner: &Pattern| Box::new(self.plain(inner, marks));
        match pattern {
            Pattern::Kind(kinds) => Plain::Token(Set { kinds: *kinds, marks: 0 }),
            Pattern::KindOf(kinds, ids) => Plain::Token(marks.listed(*kinds, ids)),
            Pattern::Word(word) => Plain::Token(marks.word(*word)),
            Pattern::Phrase(p) => {
                self.questions[*p].clone().unwrap_or(Plain::Phrase(self.alike[*p]))
            }
            Pattern::Capture(_, inner) => self.plain(inner, marks),
            Pattern::Seq(items) => {
                let mut out = Vec::new();
                for item in items {
                    match self.plain(item, marks) {
                        Plain::Seq(inner) => out.extend(inner),
                        one => out.push(one),
                    }
                }
                if out.len() == 1 { out.remove(0) } else { Plain::Seq(out) }
            }
            Pattern::Alt(items) => {
                choice(items.iter().map(|item| self.plain(item, marks)).collect())
            }
            Pattern::Opt(inner) => Plain::Opt(boxed(inner)),
            Pattern::Star(inner) => Plain::Star(boxed(inner)),
            Pattern::Plus(inner) => Plain::Plus(boxed(inner)),
            Pattern::Not(inner) => Plain::Not(boxed(inner)),
            Pattern::And(inner) => Plain::And(boxed(inner)),
            Pattern::Behind(yes, inner) => Plain::Behind(*yes, boxed(inner)),
            Pattern::Start => Plain::Start,
            Pattern::End => Plain::End,
        }
    }

    /// What a rule can start with, and whether it may take nothing. No rule starts with itself.
    fn first_of_rule(&self, rule: usize) -> (Set, bool) {
        self.ways[rule]
            .iter()
            .map(|way| self.first(way))
            .fold((Set::default(), false), |(set, any), (more, also)| (set.or(more), any | also))
    }

    /// The same of a sequence.
    pub(super) fn first_of_all(&self, items: &[Plain]) -> (Set, bool) {
        let mut all = Set::default();
        for item in items {
            let (set, any) = self.first(item);
            all = all.or(set);
            if !any {
                return (all, false);
            }
        }
        (all, true)
    }

    fn first(&self, plain: &Plain) -> (Set, bool) {
        match plain {
            Plain::Token(set) => (*set, false),
            Plain::Phrase(p) => self.first_of_rule(*p),
            Plain::Seq(items) => self.first_of_all(items),
            Plain::Alt(items) => items
                .iter()
                .map(|item| self.first(item))
                .fold((Set::default(), false), |(set, any), (more, also)| {
                    (set.or(more), any | also)
                }),
            Plain::Opt(inner) | Plain::Star(inner) => (self.first(inner).0, true),
            Plain::Plus(inner) => self.first(inner),
            Plain::Not(_) | Plain::And(_) | Plain::Behind(..) | Plain::Start | Plain::End => {
                (Set::default(), true)
            }
        }
    }
}

/// A choice: choices in it are its own, and questions side by side are one.
fn choice(items: Vec<Plain>) -> Plain {
    let mut flat: Vec<Plain> = Vec::new();
    for item in items {
        match item {
            Plain::Alt(inner) => flat.extend(inner),
            one => flat.push(one),
        }
    }
    // The end is no word, so its place among questions does not matter.
    if flat.iter().all(|item| matches!(item, Plain::Token(_) | Plain::End)) {
        flat.sort_by_key(|item| matches!(item, Plain::End));
        flat.dedup_by(|one, before| *one == Plain::End && *before == Plain::End);
    }
    let mut out: Vec<Plain> = Vec::new();
    for item in flat {
        if let (Some(Plain::Token(before)), Plain::Token(set)) = (out.last_mut(), &item) {
            *before = before.or(*set);
        } else {
            out.push(item);
        }
    }
    if out.len() == 1 { out.remove(0) } else { Plain::Alt(out) }
}

/// The one question that these alternatives come to, if they do.
fn question(ways: &[Plain]) -> Option<Plain> {
    let end = |items: &[Plain]| matches!(items, [Plain::Token(_), Plain::End]);
    match ways {
        [Plain::Alt(items)] if end(items) => Some(ways[0].clone()),
        [] => None,
        _ => {
            let all = ways.iter().all(|way| matches!(way, Plain::Token(_)));
            all.then(|| choice(ways.to_vec()))
        }
    }
}
