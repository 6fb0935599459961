//! What is worth trying at a node of the rules where a word of some class stands.
//!
//! Words that rules cannot tell apart are of one class: a few hundred in all. Which edges of a node can
//! lead anywhere from such a word, and which steps without a word of their own can be passed over, is the
//! same each time, so it is worked out when the two first meet and kept. Of the steps tried before, two
//! in five were passed over, and a third of the nodes led nowhere.

use crate::lexicon::kinds::KindSet;
use crate::lexicon::names::Name;
use crate::lexicon::vocabulary::{Node, WordId};
use crate::rules::program::{Op, Program, Set, SetId, Step};
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
/// there.
#[derive(Clone, Copy, Debug)]
pub struct Act {
    /// What must still come.
    pub needs: u128,
    /// What it asks for.
    pub op: Op,
    /// The node behind it.
    pub to: NodeId,
}

/// What a node comes to.
#[derive(Clone, Copy, Debug)]
pub struct Entry {
    /// What to try: places among the acts.
    first: u32,
    /// One past the last of them.
    last: u32,
    /// The rank of the first way to say a rule that ends here: [`MOST_WAYS`] less its number; 0 for none.
    pub end: u32,
}

/// The most ways that a tree can have; none comes near.
pub const MOST_WAYS: u32 = 0xffff;

impl Entry {
    /// Nothing to try.
    const EMPTY: Self = Self { first: 0, last: 0, end: 0 };

    /// The places of what to try.
    #[inline]
    pub const fn acts(self) -> std::ops::Range<u32> {
        self.first..self.last
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
    meets: Vec<u128>,
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
    /// The class of words met before, each at its place until another takes it.
    seen: Vec<(Looks, Class)>,
}

/// All of a word that its class hangs on: its kinds, its form, and the word itself where it is but one.
pub type Looks = (KindSet, Node, WordId);

/// How many words are remembered with their classes.
const SEEN: usize = 1_024;

impl Plan {
    /// Makes it one of these rules.
    pub fn serve(&mut self, program: &Program, region: Name) {
        let of = (std::ptr::from_ref(program).addr(), region);
        let full = self.words.len() > MOST_CLASSES || self.entries.len() > MOST_ENTRIES;
        if self.of != of || self.nodes != program.nodes.len() || full {
            self.of = of;
            self.classes.clear();
            self.words.clear();
            self.meets.clear();
            self.bits.clear();
            self.places.clear();
            self.entries.clear();
            self.entries.push(Entry::EMPTY);
            self.acts.clear();
            self.seen.clear();
            self.seen.resize(SEEN, Default::default());
            self.width = program.sets.len().div_ceil(u64::BITS as usize);
            self.nodes = program.nodes.len();
            self.room = 0;
            self.add(program, Set::default());
        }
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
        let meets =
            program.needs.iter().rev().fold(0, |all, n| all << 1 | u128::from(n.meets(word)));
        self.meets.push(meets);
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
    pub fn meets(&self, class: Class) -> u128 {
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
        let first = self.acts.len();
        let mut end = NONE;
        self.gather(program, node, class, &mut end);
        let small = |n: usize| u32::try_from(n).unwrap_or(NONE);
        let end = if end == NONE { 0 } else { MOST_WAYS.saturating_sub(end) };
        let made = Entry { first: small(first), last: small(self.acts.len()), end };
        // Where there are too many, this one is worked out anew each time, until all are forgotten.
        if let Ok(place) = u16::try_from(self.entries.len()) {
            let at = self.place(node, class);
            self.places[at] = place;
            self.entries.push(made);
        }
        made
    }

    /// Adds what is to be tried at a node and at those reached from it without a word; `end` becomes the
    /// first way that ends at any of them.
    fn gather(&mut self, program: &Program, node: NodeId, class: Class, end: &mut u32) {
        let word = self.words[usize::from(class)];
        let node = program.nodes[node as usize];
        *end = (*end).min(node.end);
        for edge in &program.edges[node.edges.places()] {
            if !program.starts(edge, word) {
                continue;
            }
            let step = program.steps[edge.step as usize];
            match outcome(program, step, word, class) {
                Outcome::Passed => self.gather(program, edge.to, class, end),
                Outcome::Taken(op) => self.acts.push(Act { needs: edge.needs, op, to: edge.to }),
                Outcome::Failed => {}
            }
        }
    }
}

/// What the word that stands there says of a step.
enum Outcome {
    /// It fits without a word.
    Passed,
    /// It is to be tried so.
    Taken(Op),
    /// It does not fit.
    Failed,
}

fn outcome(program: &Program, step: Step, word: Set, class: Class) -> Outcome {
    if !program.holds(step.gate, word) {
        return if step.skips { Outcome::Passed } else { Outcome::Failed };
    }
    let inner = |step: u32| program.steps[step as usize].op;
    match step.op {
        Op::Opt(one) if matches!(inner(one), Op::Token(_)) => Outcome::Taken(inner(one)),
        Op::Not(one) if matches!(inner(one), Op::Token(_)) => Outcome::Failed,
        Op::And(one) if matches!(inner(one), Op::Token(_)) => Outcome::Passed,
        Op::End => {
            if class == END {
                Outcome::Passed
            } else {
                Outcome::Failed
            }
        }
        op => Outcome::Taken(op),
    }
}
