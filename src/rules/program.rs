//! Patterns made ready to run: small numbered steps in a few tables, each with what it can start with.
//!
//! A word that rules quote and a list of ids ("area[bill|wing]") become *marks*, kinds of their own, so
//! that every question about one word is one test of a [`Set`]. Choices between such questions are one
//! question; equal steps are one step. What is kept for the yield has steps of its own ([`Walk`]), since
//! it is asked only of the rule that was chosen.

use super::compile::{Pattern, Rule};
use super::needs::{self, Needed, Needs};
use super::plain::{Plain, Plains};
use super::tree::{Edge, Node, Tree};
use crate::lexicon::kinds::{KindId, KindSet};
use crate::lexicon::names::Name;
use crate::lexicon::vocabulary::WordId;
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};

/// The most different words and lists of ids that all rules together can ask for.
pub const MOST_MARKS: usize = u128::BITS as usize;

/// What a word is, for rules: its kinds, and which of the words and lists they ask for it is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Set {
    /// Its kinds.
    pub kinds: KindSet,
    /// Its marks.
    pub marks: u128,
}

impl Set {
    /// Whether both hold something alike.
    pub const fn meets(self, other: Self) -> bool {
        self.kinds & other.kinds != 0 || self.marks & other.marks != 0
    }

    /// What either holds.
    #[must_use]
    pub const fn or(self, other: Self) -> Self {
        Self { kinds: self.kinds | other.kinds, marks: self.marks | other.marks }
    }
}

/// The place of a [`Set`] in [`Program::sets`].
pub type SetId = u32;
/// The place of a step in [`Program::steps`].
pub type StepId = u32;
/// The place of a walk in [`Program::walks`].
pub type WalkId = u32;

/// A run of entries of a list kept elsewhere.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Run {
    start: u32,
    end: u32,
}

impl Run {
    /// As places.
    pub const fn places(self) -> std::ops::Range<usize> {
        self.start as usize..self.end as usize
    }

    /// Adds `items` to `to`.
    pub(super) fn push<T>(to: &mut Vec<T>, items: impl IntoIterator<Item = T>) -> Self {
        let start = small(to.len());
        to.extend(items);
        Self { start, end: small(to.len()) }
    }
}

/// What must stand in the note.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub enum Op {
    /// A word of that set.
    Token(SetId),
    /// A phrase, by its place among the rules.
    Phrase(u32),
    /// One after the other; places in [`Program::items`].
    Seq(Run),
    /// The first that fits.
    Alt(Run),
    /// None or one.
    Opt(StepId),
    /// Any number.
    Star(StepId),
    /// One or more.
    Plus(StepId),
    /// Does not follow.
    Not(StepId),
    /// Follows.
    And(StepId),
    /// The word before fits, or does not.
    Behind(bool, StepId),
    /// The first place.
    Start,
    /// The end.
    End,
}

/// The set of all words and of the end behind them.
pub const ANYTHING: SetId = 0;

/// A step, with the words it is worth trying at.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub struct Step {
    /// What it asks for.
    pub op: Op,
    /// Where none of these words stands the outcome is known without trying:
    pub gate: SetId,
    /// it takes nothing and fits, or it does not fit.
    pub skips: bool,
}

/// How what is kept is gathered, of a pattern known to fit.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub enum Walk {
    /// Nothing is kept in this step.
    Fits(StepId),
    /// A word, kept as what it says when read as one of the kinds of that set.
    Read(SetId),
    /// A word kept for its place alone.
    Place,
    /// A phrase, with what it yields.
    Phrase(u32),
    /// One after the other; places in [`Program::items`].
    Seq(Run),
    /// The first that fits; places in [`Program::choices`].
    Alt(Run),
    /// If the step fits.
    Opt(StepId, WalkId),
    /// As long as the step fits.
    Star(StepId, WalkId),
    /// Keep under a number.
    Keep(u16, WalkId),
    /// Takes no word.
    Nothing,
}

/// Every rule and phrase, ready to run.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Program {
    /// What steps ask for.
    pub sets: Vec<Set>,
    /// What the ways along the edges of the trees can start with. They are asked for but once for each
    /// class of words, so that they do not lie among the others, of which each word has a bit.
    pub firsts: Vec<Set>,
    /// Sets of which some word must still come for a way to fit.
    pub needs: Vec<Set>,
    /// The steps.
    pub steps: Vec<Step>,
    /// The steps of sequences and choices.
    pub items: Vec<u32>,
    /// How what is kept is gathered.
    pub walks: Vec<Walk>,
    /// Choices of what is kept: the step that decides and the walk.
    pub choices: Vec<(StepId, WalkId)>,
    /// For each rule its alternatives' walks.
    pub ways: Vec<Vec<WalkId>>,
    /// The nodes of all trees, and the edges between them.
    pub nodes: Vec<Node>,
    /// Those of one node side by side.
    pub edges: Vec<Edge>,
    /// All that are rules, as one tree.
    pub top: Tree,
    /// The tree of each rule and phrase by itself.
    pub trees: Vec<Tree>,
    /// Kinds whose ids are listed somewhere.
    pub listed_kinds: KindSet,
    /// For each kind the marks that ask for ids of that kind.
    marks_of_kind: Vec<u128>,
    /// For each id that is listed its marks, by place in the list behind; 0 for none.
    place_of_id: Vec<u16>,
    marks_of_id: Vec<u128>,
    /// For each word that is quoted its mark, from 1; 0 for none.
    mark_of_word: Vec<u8>,
}

/// A mark.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
enum Mark {
    Word(WordId),
    Listed(KindSet, Box<[Name]>),
}

/// Gives each word and list that rules ask for its bit.
#[derive(Default)]
pub(super) struct Marks {
    all: Vec<Mark>,
}

impl Marks {
    /// The question whether a word is that word.
    pub(super) fn word(&mut self, word: WordId) -> Set {
        self.bit(Mark::Word(word))
    }

    /// The question whether a word is of one of these kinds and ids.
    pub(super) fn listed(&mut self, kinds: KindSet, ids: &[Name]) -> Set {
        self.bit(Mark::Listed(kinds, ids.into()))
    }

    fn bit(&mut self, mark: Mark) -> Set {
        let at = self.all.iter().position(|m| *m == mark).unwrap_or_else(|| {
            self.all.push(mark);
            self.all.len() - 1
        });
        let marks = u32::try_from(at).ok().and_then(|at| 1u128.checked_shl(at)).unwrap_or(0);
        Set { kinds: 0, marks }
    }
}

/// The place of a set in a list, added if it is new. The first stands for anything.
fn place_of(sets: &mut Vec<Set>, set: Set) -> SetId {
    let known = sets.iter().skip(1).position(|s| *s == set).map(|at| at + 1);
    small(known.unwrap_or_else(|| {
        sets.push(set);
        sets.len() - 1
    }))
}

/// A place in a list that stays small.
pub(crate) fn small(n: usize) -> u32 {
    u32::try_from(n).unwrap_or(u32::MAX)
}

/// Sets an entry of a list that grows as far as it must.
fn put<T: Copy + Default>(list: &mut Vec<T>, at: usize, value: T) {
    list.resize(list.len().max(at + 1), T::default());
    list[at] = value;
}

impl Program {
    /// Makes the rules ready to run; none if they ask for too many different words.
    pub fn of(rules: &[Rule]) -> Option<Self> {
        let mut marks = Marks::default();
        let plains = Plains::of(rules, &mut marks);
        let mut out = Maker {
            needs: Needs::of(&plains, rules.len()),
            edge_needs: Vec::new(),
            plains,
            marks,
            known: FxHashMap::default(),
            made: Self::default(),
        };
        // All that is known of "anything" is its number.
        let anything = Set { kinds: KindSet::MAX, marks: u128::MAX };
        out.made.sets.push(anything);
        out.made.firsts.push(anything);
        out.made.ways = rules
            .iter()
            .map(|r| r.alternatives.iter().map(|a| out.walk(&a.pattern, false, true)).collect())
            .collect();
        let all: Vec<usize> = (0..rules.len()).filter(|&i| !rules[i].is_phrase).collect();
        out.made.top = out.tree(&all);
        out.made.trees = (0..rules.len()).map(|i| out.tree(&[i])).collect();
        if out.marks.all.len() > MOST_MARKS {
            return None;
        }
        let Maker { marks, mut made, edge_needs, .. } = out;
        made.set_marks(&marks);
        made.set_needs(&edge_needs);
        Some(made)
    }

    /// Whether such a word is in the set that a gate or a step asks for.
    pub fn holds(&self, set: SetId, word: Set) -> bool {
        set == ANYTHING || self.sets[set as usize].meets(word)
    }

    /// Whether the way along an edge can start with such a word.
    pub fn starts(&self, edge: &Edge, word: Set) -> bool {
        edge.first == ANYTHING || self.firsts[edge.first as usize].meets(word)
    }

    fn set_needs(&mut self, edge_needs: &[Vec<Set>]) {
        self.needs = needs::chosen(edge_needs);
        let bits: FxHashMap<Set, Needed> =
            (0..).zip(&self.needs).map(|(i, s)| (*s, Needed::bit(i))).collect();
        for (edge, needs) in self.edges.iter_mut().zip(edge_needs) {
            let bits = needs.iter().filter_map(|set| bits.get(set));
            edge.needs = bits.fold(Needed::default(), |all, bit| all.or(*bit));
        }
    }

    fn set_marks(&mut self, marks: &Marks) {
        self.marks_of_kind = vec![0; KindSet::BITS as usize];
        self.marks_of_id = vec![0];
        for (bit, mark) in marks.all.iter().enumerate() {
            match mark {
                Mark::Word(word) => {
                    put(&mut self.mark_of_word, *word as usize, u8::try_from(bit + 1).unwrap_or(0));
                }
                Mark::Listed(kinds, ids) => {
                    self.listed_kinds |= kinds;
                    for (kind, marks) in self.marks_of_kind.iter_mut().enumerate() {
                        *marks |= if *kinds & (1 << kind) != 0 { 1 << bit } else { 0 };
                    }
                    for id in ids {
                        let id = usize::from(id.0);
                        if self.place_of_id.get(id).is_none_or(|&place| place == 0) {
                            let place = u16::try_from(self.marks_of_id.len()).unwrap_or(0);
                            put(&mut self.place_of_id, id, place);
                            self.marks_of_id.push(0);
                        }
                        self.marks_of_id[usize::from(self.place_of_id[id])] |= 1 << bit;
                    }
                }
            }
        }
    }

    /// The mark of a word that rules quote.
    #[inline]
    pub fn mark_of_word(&self, word: WordId) -> u128 {
        match self.mark_of_word.get(word as usize) {
            None | Some(0) => 0,
            Some(mark) => 1 << (mark - 1),
        }
    }

    /// The marks of an id when read as of that kind.
    #[inline]
    pub fn marks_of_id(&self, kind: KindId, id: Name) -> u128 {
        match self.place_of_id.get(usize::from(id.0)) {
            None | Some(0) => 0,
            Some(&place) => {
                self.marks_of_id[usize::from(place)] & self.marks_of_kind[usize::from(kind.0)]
            }
        }
    }
}

/// Makes a program.
pub(super) struct Maker {
    plains: Plains,
    marks: Marks,
    known: FxHashMap<Plain, StepId>,
    needs: Needs,
    /// By edge.
    edge_needs: Vec<Vec<Set>>,
    pub(super) made: Program,
}

impl Maker {
    fn set(&mut self, set: Set) -> SetId {
        place_of(&mut self.made.sets, set)
    }

    /// What a sequence can start with.
    fn first(&mut self, items: &[Plain]) -> SetId {
        let (set, any) = self.plains.first_of_all(items);
        if any { ANYTHING } else { self.set(set) }
    }

    /// The number of what the ways along an edge can start with.
    pub(super) fn first_of_edge(&mut self, ways: Vec<Plain>) -> SetId {
        let (set, any) = self.plains.first_of_all(&[Plain::Alt(ways)]);
        if any { ANYTHING } else { place_of(&mut self.made.firsts, set) }
    }

    /// Notes what the ways along the next edge need, whichever it is.
    pub(super) fn add_needs(&mut self, ways: &[Plain]) {
        let needs = self.needs.of_any(&self.plains, ways);
        self.edge_needs.push(needs);
    }

    /// The step of a pattern in which nothing is kept.
    pub(super) fn step(&mut self, plain: &Plain) -> StepId {
        if let Some(&known) = self.known.get(plain) {
            return known;
        }
        let op = match plain {
            Plain::Token(set) => Op::Token(self.set(*set)),
            Plain::Phrase(p) => Op::Phrase(small(*p)),
            Plain::Seq(items) => Op::Seq(self.run(items)),
            Plain::Alt(items) => Op::Alt(self.run(items)),
            Plain::Opt(inner) => Op::Opt(self.step(inner)),
            Plain::Star(inner) => Op::Star(self.step(inner)),
            Plain::Plus(inner) => Op::Plus(self.step(inner)),
            Plain::Not(inner) => Op::Not(self.step(inner)),
            Plain::And(inner) => Op::And(self.step(inner)),
            Plain::Behind(yes, inner) => Op::Behind(*yes, self.step(inner)),
            Plain::Start => Op::Start,
            Plain::End => Op::End,
        };
        let (inner, skips) = match plain {
            Plain::Opt(inner) | Plain::Star(inner) | Plain::Not(inner) => (&**inner, true),
            Plain::And(inner) => (&**inner, false),
            _ => (plain, false),
        };
        let gate = self.first(std::slice::from_ref(inner));
        self.made.steps.push(Step { op, gate, skips });
        let id = small(self.made.steps.len() - 1);
        self.known.insert(plain.clone(), id);
        id
    }

    fn run(&mut self, items: &[Plain]) -> Run {
        let steps: Vec<StepId> = items.iter().map(|item| self.step(item)).collect();
        Run::push(&mut self.made.items, steps)
    }

    fn tree(&mut self, of: &[usize]) -> Tree {
        let ways: Vec<(usize, usize, Vec<Plain>)> = of
            .iter()
            .flat_map(|&rule| {
                let ways = self.plains.ways(rule).iter().enumerate();
                ways.map(move |(i, plain)| (rule, i, plain.items().to_vec()))
            })
            .collect();
        Tree::of(self, &ways)
    }

    /// How what is kept in `pattern` is gathered; `kept` says whether all of it is, `last` whether
    /// nothing depends on where it ends, so that what stands behind the last that is kept is left out.
    fn walk(&mut self, pattern: &Pattern, kept: bool, last: bool) -> WalkId {
        let walk = self.walk_of(pattern, kept, last);
        self.made.walks.push(walk);
        small(self.made.walks.len() - 1)
    }

    fn walk_of(&mut self, pattern: &Pattern, kept: bool, last: bool) -> Walk {
        match pattern {
            Pattern::Capture(name, inner) => {
                Walk::Keep(u16::try_from(*name).unwrap_or(u16::MAX), self.walk(inner, true, last))
            }
            Pattern::Not(_)
            | Pattern::And(_)
            | Pattern::Behind(..)
            | Pattern::Start
            | Pattern::End => Walk::Nothing,
            _ if !kept && !keeps(pattern) => Walk::Fits(self.plain_step(pattern)),
            Pattern::Kind(kinds) | Pattern::KindOf(kinds, _) => {
                Walk::Read(self.set(Set { kinds: *kinds, marks: 0 }))
            }
            Pattern::Word(_) => Walk::Place,
            Pattern::Phrase(p) => Walk::Phrase(small(*p)),
            Pattern::Seq(items) => {
                let takes = |i: &&Pattern| !matches!(i, Pattern::Not(_) | Pattern::And(_));
                let mut items: Vec<&Pattern> = items.iter().filter(takes).collect();
                while last && !kept && items.last().is_some_and(|item| !keeps(item)) {
                    items.pop();
                }
                let upto = items.len();
                let walks: Vec<WalkId> = (1..)
                    .zip(items)
                    .map(|(n, item)| self.walk(item, kept, last && n == upto))
                    .collect();
                Walk::Seq(Run::push(&mut self.made.items, walks))
            }
            Pattern::Alt(items) => {
                let choices: Vec<(StepId, WalkId)> =
                    items.iter().map(|i| (self.plain_step(i), self.walk(i, kept, true))).collect();
                Walk::Alt(Run::push(&mut self.made.choices, choices))
            }
            Pattern::Opt(inner) => Walk::Opt(self.plain_step(inner), self.walk(inner, kept, true)),
            Pattern::Star(inner) | Pattern::Plus(inner) => {
                Walk::Star(self.plain_step(inner), self.walk(inner, kept, true))
            }
        }
    }

    fn plain_step(&mut self, pattern: &Pattern) -> StepId {
        let plain = self.plains.plain(pattern, &mut self.marks);
        self.step(&plain)
    }
}

/// Whether something is kept in it.
fn keeps(pattern: &Pattern) -> bool {
    match pattern {
        Pattern::Capture(..) => true,
        Pattern::Seq(items) | Pattern::Alt(items) => items.iter().any(keeps),
        Pattern::Opt(inner) | Pattern::Star(inner) | Pattern::Plus(inner) => keeps(inner),
        _ => false,
    }
}
