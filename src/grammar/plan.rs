//! What is worth trying at a node of the rules where a word of some class stands.
//!
//! Words that rules cannot tell apart are of one class: a few hundred in all. Which edges of a node can
//! lead anywhere from such a word, and which steps without a word of their own can be passed over, is the
//! same each time, so it is worked out when the two first meet and kept. Of the steps tried before, two
//! in five were passed over, and a third of the nodes led nowhere.

use crate::lexicon::kinds::KindSet;
use crate::lexicon::names::Name;
use crate::lexicon::vocabulary::{Node, WordId};
use crate::rules::needs::Needed;
use crate::rules::program::{Op, Program, Set, SetId, StepId};
use crate::rules::tree::{NONE, NodeId};
use rustc_hash::FxHashMap;

/// The class of a word, or of the end behind the last one.
pub type Class = u16;

/// The end behind the last word.
pub const END: Class = 0;

/// How many classes, and how many meetings of a class and a node, are kept; all are forgotten when there
/// are more. The 29,300 sentences that the engine was measured with have 245 and some 9,000.
const MOST_CLASSES: usize = 512;
const MOST_ENTRIES: usize = 60_000;

/// Something to try: a step that takes words, or whose outcome hangs on more than the word that stands
/// there. Acts are small, so that those of all rules lie in the processor's nearest cache.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Act {
    /// What must still come.
    pub needs: Needed,
    /// What it asks for.
    pub ask: Ask,
    /// The node behind it.
    pub to: NodeId,
}

/// What an act asks for, in one number: 0 for the word that stands there, odd ones for a phrase, all
/// others for a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Ask(u32);

/// What an act asks for.
#[derive(Clone, Copy, Debug)]
pub enum Asked {
    /// The word that stands there, which is known to fit.
    Word,
    /// A phrase.
    Phrase(u32),
    /// What a step asks for.
    Step(StepId),
}

impl Ask {
    fn of(program: &Program, step: StepId) -> Self {
        match program.steps[step as usize].op {
            Op::Token(_) => Self(0),
            Op::Phrase(p) => Self(p << 1 | 1),
            _ => Self((step + 1) << 1),
        }
    }

    /// What it is.
    #[inline(always)]
    pub const fn asked(self) -> Asked {
        match (self.0, self.0 & 1) {
            (0, _) => Asked::Word,
            (ask, 1) => Asked::Phrase(ask >> 1),
            (ask, _) => Asked::Step((ask >> 1) - 1),
        }
    }
}

/// What a node comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Entry {
    /// What to try: the first place among the acts,
    first: u32,
    /// and how many from there.
    count: u16,
    /// The rank of the first way to say a rule that ends here: [`MOST_WAYS`] less its number; 0 for none.
    pub end: u16,
}

/// The most ways that a tree can have; none comes near.
pub const MOST_WAYS: u16 = u16::MAX;

impl Entry {
    /// Nothing to try.
    const EMPTY: Self = Self { first: 0, count: 0, end: 0 };

    /// The places of what to try.
    #[inline]
    pub const fn acts(self) -> std::ops::Range<u32> {
        self.first..self.first + self.count as u32
    }
}

/// What has been worked out so far, for one set of rules and one region.
#[derive(Clone, Debug, Default)]
pub struct Plan {
    /// Where the program lies, and the region.
    of: (usize, Name),
    classes: FxHashMap<Set, Class>,
    /// By class what such words are,
    words: Vec<Set>,
    /// and which of the program's needs they meet, as bits.
    meets: Vec<Needed>,
    /// By class a bit for each set that a gate asks for.
    bits: Vec<u64>,
    width: usize,
    /// By node and class where its entry lies; 0 for what was not worked out yet. The entries themselves
    /// lie side by side, since a list of them by node and class would be mostly holes. Common words come
    /// early and are of the first classes, so that those of a node that matter share a line of the cache.
    places: Vec<u16>,
    /// How many classes there is room for at each node: a power of two.
    room: usize,
    entries: Vec<Entry>,
    nodes: usize,
    acts: Vec<Act>,
    /// Entries and lists of acts made before: equal ones are kept once, since most are.
    known_entries: FxHashMap<Entry, u16>,
    known_acts: FxHashMap<Box<[Act]>, u32>,
    /// The class of words met before, each at its place until another takes it.
    seen: Vec<(Looks, Class)>,
}

/// All of a word that its class hangs on: its kinds, its form, and the word itself where it is but one.
pub type Looks = (KindSet, Node, WordId);

/// How many words are remembered with their classes.
const SEEN: usize = 4_096;

impl Plan {
    /// Makes it one of these rules; tells whether it starts anew, with other classes.
    pub fn serve(&mut self, program: &Program, region: Name) -> bool {
        let of = (std::ptr::from_ref(program).addr(), region);
        let full = self.words.len() > MOST_CLASSES || self.entries.len() > MOST_ENTRIES;
        let anew = self.of != of || self.nodes != program.nodes.len() || full;
        if anew {
            self.of = of;
            self.classes.clear();
            self.words.clear();
            self.meets.clear();
            self.bits.clear();
            self.places.clear();
            self.entries.clear();
            self.entries.push(Entry::EMPTY);
            self.acts.clear();
            self.known_entries.clear();
            self.known_acts.clear();
            self.seen.clear();
            self.seen.resize(SEEN, Default::default());
            self.width = program.sets.len().div_ceil(u64::BITS as usize);
            self.nodes = program.nodes.len();
            self.room = 0;
            self.add(program, Set::default());
        }
        anew
    }

    /// Puts the classes of words, and of the end behind them, into a list; `word` tells what rules see of
    /// a word.
    pub fn classes(
        &mut self,
        program: &Program,
        looks: impl Iterator<Item = Looks>,
        mut word: impl FnMut(usize) -> Set,
        out: &mut Vec<Class>,
    ) {
        out.clear();
        for (at, looks) in looks.enumerate() {
            let place = looks.1.wrapping_add(looks.0 as Node).wrapping_mul(0x9e37_79b1) >> 16;
            let place = place as usize & (SEEN - 1);
            if self.seen[place].0 != looks || self.seen[place].1 == END {
                self.seen[place] = (looks, self.class(program, word(at)));
            }
            out.push(self.seen[place].1);
        }
        out.push(END);
    }

    /// The class of a word.
    fn class(&mut self, program: &Program, word: Set) -> Class {
        if let Some(&known) = self.classes.get(&word) {
            return known;
        }
        let class = self.add(program, word);
        self.classes.insert(word, class);
        class
    }

    fn add(&mut self, program: &Program, word: Set) -> Class {
        let class = Class::try_from(self.words.len()).unwrap_or(END);
        self.words.push(word);
        let met = (0..).zip(&program.needs).filter(|(_, set)| set.meets(word));
        self.meets.push(met.fold(Needed::default(), |all, (n, _)| all.or(Needed::bit(n))));
        let from = self.bits.len();
        self.bits.resize(from + self.width, 0);
        for set in 0..program.sets.len() {
            if program.holds(SetId::try_from(set).unwrap_or(0), word) {
                self.bits[from + set / 64] |= 1 << (set % 64);
            }
        }
        self.make_room();
        class
    }

    /// Lays the places out anew where another class has no room.
    fn make_room(&mut self) {
        let (had, room) = (self.room, self.words.len().next_power_of_two().max(64));
        if room > had {
            let mut places = vec![0; self.nodes * room];
            for (new, old) in
                places.chunks_exact_mut(room).zip(self.places.chunks_exact(had.max(1)))
            {
                new[..had].copy_from_slice(&old[..had]);
            }
            (self.places, self.room) = (places, room);
        }
    }

    #[inline]
    fn place(&self, node: NodeId, class: Class) -> usize {
        node as usize * self.room + usize::from(class)
    }

    /// Whether words of a class are in a set that a gate asks for.
    #[inline]
    pub fn holds(&self, set: SetId, class: Class) -> bool {
        let set = set as usize;
        self.bits[usize::from(class) * self.width + set / 64] >> (set % 64) & 1 != 0
    }

    /// Of what is needed that of which a class is.
    pub fn meets(&self, class: Class) -> Needed {
        self.meets[usize::from(class)]
    }

    /// Something to try.
    #[inline]
    pub fn act(&self, at: u32) -> Act {
        self.acts[at as usize]
    }

    /// What a node comes to where a word of that class stands.
    #[inline]
    pub fn entry(&mut self, program: &Program, node: NodeId, class: Class) -> Entry {
        match self.places[self.place(node, class)] {
            0 => self.work_out(program, node, class),
            known => self.entries[usize::from(known)],
        }
    }

    #[cold]
    fn work_out(&mut self, program: &Program, node: NodeId, class: Class) -> Entry {
        let (mut acts, mut end) = (Vec::new(), NONE);
        self.gather(program, node, class, &mut acts, &mut end);
        let end = u16::try_from(end).map_or(0, |way| MOST_WAYS.saturating_sub(way));
        let made = Entry { first: self.first(&acts), count: small(acts.len()), end };
        // Where there are too many, this one is worked out anew each time, until all are forgotten.
        let next = u16::try_from(self.entries.len()).ok();
        let known = self.known_entries.get(&made).copied();
        if let Some(place) = known.or(next) {
            if known.is_none() {
                self.known_entries.insert(made, place);
                self.entries.push(made);
            }
            let at = self.place(node, class);
            self.places[at] = place;
        }
        made
    }

    /// Where such acts lie, added if there are none.
    fn first(&mut self, acts: &[Act]) -> u32 {
        if let Some(&known) = self.known_acts.get(acts) {
            return known;
        }
        let first = small(self.acts.len());
        self.known_acts.insert(acts.into(), first);
        self.acts.extend_from_slice(acts);
        first
    }

    /// Adds what is to be tried at a node and at those reached from it without a word; `end` becomes the
    /// first way that ends at any of them.
    fn gather(
        &self,
        program: &Program,
        node: NodeId,
        class: Class,
        acts: &mut Vec<Act>,
        end: &mut u32,
    ) {
        let word = self.words[usize::from(class)];
        let node = program.nodes[node as usize];
        *end = (*end).min(node.end);
        for edge in &program.edges[node.edges.places()] {
            if !program.starts(edge, word) {
                continue;
            }
            match outcome(program, edge.step, word, class) {
                Outcome::Passed => self.gather(program, edge.to, class, acts, end),
                Outcome::Taken(step) => {
                    let ask = Ask::of(program, step);
                    acts.push(Act { needs: edge.needs, ask, to: edge.to });
                }
                Outcome::Failed => {}
            }
        }
    }
}

fn small<T: TryFrom<usize> + Default>(n: usize) -> T {
    T::try_from(n).unwrap_or_default()
}

/// What the word that stands there says of a step.
enum Outcome {
    /// It fits without a word.
    Passed,
    /// It is to be tried so.
    Taken(StepId),
    /// It does not fit.
    Failed,
}

fn outcome(program: &Program, id: StepId, word: Set, class: Class) -> Outcome {
    let step = program.steps[id as usize];
    if !program.holds(step.gate, word) {
        return if step.skips { Outcome::Passed } else { Outcome::Failed };
    }
    let is_word = |step: StepId| matches!(program.steps[step as usize].op, Op::Token(_));
    match step.op {
        Op::Opt(one) if is_word(one) => Outcome::Taken(one),
        Op::Not(one) if is_word(one) => Outcome::Failed,
        Op::And(one) if is_word(one) => Outcome::Passed,
        Op::End => {
            if class == END {
                Outcome::Passed
            } else {
                Outcome::Failed
            }
        }
        _ => Outcome::Taken(id),
    }
}
