//! Every form of every term, found by its words.
//!
//! Forms are sequences of words; a trie over word numbers finds the longest one that starts at a
//! place. Hyphens and spaces are alike, and a form of two words is also known written as one.

use super::context::{Context, read_context};
use super::entry::Entry;
use super::kinds::{Inflection, KindId, KindSet, Kinds, record_of};
use super::morphology::{bend_last, plural, with_ed, with_er, with_ing, with_ish, with_s};
use super::names::{Name, Names};
use super::record::{Record, Slot};
use super::sense::Sense;
use super::shelf::{Hand, List, Misplaced, Shelved};
use super::term::{Bearing, Points, Reach, Term, TermText};
use super::texts::Texts;
use crate::diagnostic::{Diagnostic, Diagnostics};
use crate::words::words;
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};

/// The number of a word.
pub type WordId = u32;
/// A node of the trie of forms; 0 is the root and stands for "nothing".
pub type Node = u32;

/// The vocabulary.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Vocabulary {
    /// Every term.
    #[serde(skip)]
    pub terms: List<Term>,
    /// What of each term is for people. Not stored with the built-in tables.
    #[serde(skip)]
    pub texts: Vec<TermText>,
    /// The outside ids of terms that have one.
    pub pato: Vec<(Name, String)>,
    /// Every different context.
    contexts: Vec<Context>,
    #[serde(skip)]
    words: Texts,
    #[serde(skip)]
    first: List<Node>,
    /// For each node the first of its branches, and of its readings; one more for the end.
    #[serde(skip)]
    branch_starts: List<u32>,
    #[serde(skip)]
    sense_starts: List<u32>,
    /// The words of the branches, in order, and the nodes behind them.
    #[serde(skip)]
    branch_words: List<WordId>,
    #[serde(skip)]
    branches: List<Node>,
    #[serde(skip)]
    senses: List<Sense>,
    /// For a bent verb ("hopping") the word it is bent from ("hop"); itself elsewhere.
    #[serde(skip)]
    bases: List<WordId>,
    /// The kinds whose first word may be bent.
    pub verbs: KindSet,
    hedged: Name,
    /// The kinds of the readings of each node.
    #[serde(skip)]
    kinds: List<KindSet>,
    /// Branches and readings by node while the vocabulary grows; branches stay here until it is stored.
    #[serde(skip)]
    growing_branches: FxHashMap<(Node, WordId), Node>,
    #[serde(skip)]
    growing: Vec<(Node, Sense)>,
}

/// The bit of a word among sixty-four, for a quick look at whether some words may hold it.
pub const fn among(word: WordId) -> u64 {
    1 << (word.wrapping_mul(0x9e37_79b1) >> 26)
}

/// Brings a word to the form it is looked up in: lower case, straight apostrophes.
pub fn normalise_into(word: &str, out: &mut String) {
    out.clear();
    if word.is_ascii() {
        out.push_str(word);
        out.make_ascii_lowercase();
        return;
    }
    for c in word.chars() {
        match c {
            '\u{2019}' | '\u{2018}' | '\u{02bc}' | '`' => out.push('\''),
            _ => out.extend(c.to_lowercase()),
        }
    }
}

impl Shelved for Vocabulary {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        self.words.shelve(hand)?;
        hand.list(&mut self.terms)?;
        hand.list(&mut self.first)?;
        hand.list(&mut self.branch_starts)?;
        hand.list(&mut self.sense_starts)?;
        hand.list(&mut self.branch_words)?;
        hand.list(&mut self.branches)?;
        hand.list(&mut self.senses)?;
        hand.list(&mut self.bases)?;
        hand.list(&mut self.kinds)
    }
}

impl Vocabulary {
    /// An empty one.
    pub fn new() -> Self {
        let starts = List::from(vec![0, 0]);
        Self {
            kinds: vec![0].into(),
            branch_starts: starts.clone(),
            sense_starts: starts,
            contexts: vec![Context::default()],
            ..Self::default()
        }
    }

    /// The number of a word, if any form or rule uses it.
    pub fn word(&self, text: &str) -> Option<WordId> {
        self.words.find(text)
    }

    /// Whether some form starts with that word.
    pub fn starts_form(&self, word: WordId) -> bool {
        self.first.get(word as usize).is_some_and(|&node| node != 0)
    }

    /// The text of a word.
    pub fn word_text(&self, word: WordId) -> &str {
        self.words.get(word)
    }

    /// The number of a word, made if it is new.
    pub fn intern(&mut self, text: &str) -> WordId {
        let id = self.words.add(text);
        if id as usize == self.first.len() {
            self.first.to_mut().push(0);
            self.bases.to_mut().push(id);
        }
        id
    }

    /// The node after `word` from `node`; 0 if no form goes on that way.
    pub fn step(&self, node: Node, word: WordId) -> Node {
        if node == 0 {
            return self.first.get(word as usize).copied().unwrap_or(0);
        }
        if !self.growing_branches.is_empty() {
            return self.growing_branches.get(&(node, word)).copied().unwrap_or(0);
        }
        let own = run(&self.branch_starts, node);
        // Few forms go on.
        if own.is_empty() {
            return 0;
        }
        let found = self.branch_words[own.clone()].binary_search(&word);
        found.map_or(0, |at| self.branches[own.start + at])
    }

    /// The words with which forms may go on from a node, each as its bit of [`among`].
    pub fn goes_on(&self, node: Node) -> u64 {
        if node != 0 && !self.growing_branches.is_empty() {
            return u64::MAX;
        }
        let words = &self.branch_words[run(&self.branch_starts, node)];
        words.iter().fold(0, |all, &word| all | among(word))
    }

    /// The word that a bent verb is bent from; the word itself if it is none.
    pub fn base(&self, word: WordId) -> WordId {
        self.bases.get(word as usize).copied().unwrap_or(word)
    }

    /// The readings of the form that ends at a node.
    pub fn senses(&self, node: Node) -> &[Sense] {
        &self.senses[run(&self.sense_starts, node)]
    }

    /// What a reading says.
    pub fn record(&self, sense: &Sense) -> Record {
        let record = self.terms[sense.term as usize].record();
        if sense.hedged() { record.with(Slot::Certainty, self.hedged) } else { record }
    }

    /// Where that reading holds.
    pub fn context(&self, sense: &Sense) -> &Context {
        &self.contexts[usize::from(self.terms[sense.term as usize].context)]
    }

    /// The kinds of those readings.
    pub fn kinds(&self, node: Node) -> KindSet {
        self.kinds[node as usize]
    }

    /// Every form of one word with its text and node, bent verbs included.
    pub fn single_words(&self) -> impl Iterator<Item = (&str, Node)> {
        self.single_word_nodes().map(|(word, node)| (self.word_text(word), node))
    }

    /// The same by the number of the word.
    pub fn single_word_nodes(&self) -> impl Iterator<Item = (WordId, Node)> {
        (0..).zip(self.first.iter().zip(&*self.bases)).filter_map(|(word, (&own, &base))| {
            let bent = self.first.get(base as usize).copied().unwrap_or(0);
            let node = if own != 0 && self.kinds(own) != 0 { own } else { bent };
            let usable = if node == own { KindSet::MAX } else { self.verbs };
            (node != 0 && self.kinds(node) & usable != 0).then_some((word, node))
        })
    }

    /// The node of a form written out, 0 if it is none.
    pub fn find(&self, form: &str) -> Node {
        let mut scratch = String::new();
        let mut node = 0;
        for word in form_words(form) {
            normalise_into(word, &mut scratch);
            let Some(id) = self.word(&scratch) else {
                return 0;
            };
            node = self.step(node, id);
            if node == 0 {
                return 0;
            }
        }
        node
    }

    fn node_of(&mut self, form: &str) -> Node {
        let mut scratch = String::new();
        let mut node = 0;
        for word in form_words(form) {
            normalise_into(word, &mut scratch);
            let id = self.intern(&scratch);
            let next = self.step(node, id);
            node = if next != 0 { next } else { self.grow(node, id) };
        }
        node
    }

    fn grow(&mut self, node: Node, word: WordId) -> Node {
        let next = Node::try_from(self.kinds.len()).unwrap_or(0);
        self.kinds.to_mut().push(0);
        if node == 0 {
            self.first.to_mut()[word as usize] = next;
        } else {
            self.growing_branches.insert((node, word), next);
        }
        next
    }

    /// Adds a reading to a form. A second reading of the same kind and region is refused, and the
    /// term that stands is given back.
    fn add(&mut self, form: &str, sense: Sense, taken: &mut Taken) -> Option<u32> {
        let node = self.node_of(form);
        if node == 0 {
            return None;
        }
        if !sense.bound() {
            let key = (node, sense.kind, sense.region);
            if let Some(&term) = taken.get(&key) {
                return Some(term);
            }
            taken.insert(key, sense.term);
        }
        self.kinds.to_mut()[node as usize] |= sense.kind.bit();
        self.growing.push((node, sense));
        None
    }

    /// Puts the readings of each node side by side, and its branches.
    fn settle(&mut self) {
        let nodes = Node::try_from(self.kinds.len()).unwrap_or(0);
        let known = Node::try_from(self.sense_starts.len() - 1).unwrap_or(0);
        let mut all: Vec<(Node, Sense)> =
            (0..known).flat_map(|node| self.senses(node).iter().map(move |s| (node, *s))).collect();
        all.append(&mut self.growing);
        all.sort_by_key(|&(node, _)| node);
        self.senses = all.iter().map(|&(_, sense)| sense).collect();
        self.sense_starts = starts(nodes, all.iter().map(|&(node, _)| node)).into();
        let mut branches: Vec<((Node, WordId), Node)> =
            self.growing_branches.iter().map(|(&from, &to)| (from, to)).collect();
        branches.sort_unstable();
        self.branch_starts = starts(nodes, branches.iter().map(|&((node, _), _)| node)).into();
        self.branch_words = branches.iter().map(|&((_, word), _)| word).collect();
        self.branches = branches.iter().map(|&(_, to)| to).collect();
    }

    /// Says that no more forms come, so that they are found in the lists alone, which is quicker than in
    /// what they grew from.
    pub fn close(&mut self) {
        self.growing_branches = FxHashMap::default();
    }

    /// Notes that the first word of a verb form may be bent.
    fn add_bent(&mut self, form: &str) {
        let Some(first) = form_words(form).next() else {
            return;
        };
        let mut scratch = String::new();
        normalise_into(first, &mut scratch);
        let base = self.intern(&scratch);
        let mut bents: Vec<String> = [with_s, with_ing, with_ed].map(|bend| bend(&scratch)).into();
        // British spelling doubles a final l: travelling, spiralled.
        if scratch.ends_with('l') {
            bents.extend(["ling", "led"].map(|end| format!("{scratch}{end}")));
        }
        for bent in bents {
            let bent = self.intern(&bent);
            if self.bases[bent as usize] == bent {
                self.bases.to_mut()[bent as usize] = base;
            }
        }
    }

    /// Adds every vocabulary entry.
    pub fn add_entries(
        &mut self,
        entries: &[Entry],
        kinds: &Kinds,
        names: &mut Names,
        wrong: &mut Diagnostics,
    ) {
        self.hedged = names.intern("hedged");
        let mut taken = Taken::default();
        let mut derived = Vec::new();
        for entry in entries {
            let Some(kind_id) = kinds.find(&entry.kind) else {
                continue;
            };
            let kind = kinds.get(kind_id);
            let term_id = u32::try_from(self.terms.len()).unwrap_or(u32::MAX);
            let (term, text) = self.term_of(entry, kind_id, kinds, names);
            let bound = !self.contexts[usize::from(term.context)].is_free();
            let sense = Sense::of(kind_id, term_id, term.region, bound);
            if kind.inflection == Inflection::Verb {
                self.verbs |= kind_id.bit();
            }
            for form in &text.forms {
                // Two ordinary words of one form say the same: nothing.
                if let Some(other) = self.add(form, sense, &mut taken)
                    && other != term_id
                    && kind.slot.is_some()
                {
                    self.say_clash(entry, form, other, names, wrong);
                }
                if kind.inflection == Inflection::Verb {
                    self.add_bent(form);
                }
                derive(form, kind.inflection, kind.ed, sense, &mut derived);
            }
            for form in &text.heard {
                let heard = sense.as_heard();
                self.add(form, heard, &mut taken);
                if kind.inflection == Inflection::Noun {
                    derived.extend(plural(form).map(|many| (many, heard)));
                }
            }
            self.terms.to_mut().push(term);
            self.texts.push(text);
        }
        // What is written stands before what is derived.
        for (form, sense) in derived {
            self.add(&form, sense, &mut taken);
        }
        self.settle();
        self.add_joined(&mut taken);
        self.settle();
    }

    fn term_of(
        &mut self,
        entry: &Entry,
        kind: KindId,
        kinds: &Kinds,
        names: &mut Names,
    ) -> (Term, TermText) {
        let mut forms: Vec<String> = Vec::new();
        if entry.get("hidden").is_none() {
            forms.push(entry.id.replace('-', " "));
        }
        forms.extend(entry.items("also").map(str::to_owned));
        let region = entry.get("region").filter(|r| *r != "both");
        let id = names.intern(&entry.id);
        let record = record_of(kinds.get(kind), entry, names);
        self.pato.extend(entry.get("pato").map(|pato| (id, pato.to_owned())));
        let region = region.map_or(Name::NONE, |r| names.intern(r));
        let context = read_context(entry, kinds, kind, |word| self.intern(word));
        let bearing = Bearing {
            region,
            context: self.keep_context(context),
            reach: match entry.get("reach") {
                Some("backwards") => Reach::Back,
                Some("either") => Reach::Either,
                _ => Reach::Forward,
            },
            points: entry.get("points").and_then(Points::find),
            apart: entry
                .get("apart")
                .and_then(|text| text.split_once(' '))
                .map(|(class, value)| (names.intern(class.trim()), names.intern(value.trim()))),
        };
        let text = TermText {
            means: entry.get("means").unwrap_or_default().to_owned(),
            forms,
            heard: entry.items("heard").map(str::to_owned).collect(),
            source: entry.source.clone(),
            span: entry.span,
        };
        (Term::of(kind, id, record, bearing), text)
    }

    /// The place of a context among them; most are alike.
    fn keep_context(&mut self, context: Context) -> u16 {
        let at = self.contexts.iter().position(|known| *known == context).unwrap_or_else(|| {
            self.contexts.push(context);
            self.contexts.len() - 1
        });
        u16::try_from(at).expect("fewer than 65,536 contexts")
    }

    fn say_clash(
        &self,
        entry: &Entry,
        form: &str,
        other: u32,
        names: &Names,
        wrong: &mut Diagnostics,
    ) {
        let (term, text) = (&self.terms[other as usize], &self.texts[other as usize]);
        let (line, _) = text.source.line_column(text.span.start);
        let at = entry
            .fields
            .iter()
            .find(|f| f.key == "also" && f.value.contains(form))
            .map_or(entry.span, |f| f.span);
        wrong.push(
            Diagnostic::error(
                "form-twice",
                &entry.source,
                at,
                format!(
                    "`{form}` is already a form of `{} {}` ({}:{line})",
                    entry.kind,
                    names.text(term.id),
                    text.source.name
                ),
            )
            .hint("keep it under one of the two"),
        );
    }

    /// Two words written as one ("wingbar"), wherever that is no word of its own.
    fn add_joined(&mut self, taken: &mut Taken) {
        let starts: FxHashMap<Node, WordId> = (0..)
            .zip(&*self.first)
            .filter(|&(_, &node)| node != 0)
            .map(|(word, &node)| (node, word))
            .collect();
        let mut joined = Vec::new();
        for (&(node, second), &end) in &self.growing_branches {
            let Some(&first) = starts.get(&node) else {
                continue;
            };
            if self.kinds(end) == 0 {
                continue;
            }
            let text = format!("{}{}", self.words.get(first), self.words.get(second));
            if text.len() >= 7 && self.word(&text).is_none() {
                joined.push((text, end));
            }
        }
        joined.sort();
        for (text, end) in joined {
            for sense in self.senses(end).to_vec() {
                self.add(&text, sense, taken);
            }
        }
    }
}

/// Where the entries of a node lie in a list sorted by node; nowhere for nodes that are still growing.
#[inline]
fn run(starts: &[u32], node: Node) -> std::ops::Range<usize> {
    match starts.get(node as usize..node as usize + 2) {
        Some(&[start, end]) => start as usize..end as usize,
        _ => 0..0,
    }
}

/// Where the entries of each of `nodes` nodes start, given the node of each in order, and the end.
fn starts(nodes: Node, mut of: impl Iterator<Item = Node>) -> Vec<u32> {
    let mut out = Vec::with_capacity(nodes as usize + 1);
    let (mut at, mut next) = (0, of.next());
    for node in 0..nodes {
        out.push(at);
        while next == Some(node) {
            at += 1;
            next = of.next();
        }
    }
    out.push(at);
    out
}

/// Which term has a form, by node, kind and region.
type Taken = FxHashMap<(Node, KindId, Name), u32>;

/// The words of a form as the lexicon writes it; hyphens count as spaces.
fn form_words(form: &str) -> impl Iterator<Item = &str> {
    form.split([' ', '-']).filter(|piece| !piece.is_empty()).flat_map(|piece| {
        // Almost every piece is one plain word; only the others need the full word rules.
        let plain = piece.bytes().all(|b| b.is_ascii_alphabetic() || b == b'\'');
        let plain = plain && !piece.starts_with('\'') && !piece.ends_with('\'');
        let parts = if plain { Vec::new() } else { words(piece) };
        let whole = plain.then_some(piece);
        whole.into_iter().chain(parts.into_iter().map(move |w| w.span.of(piece)))
    })
}

fn derive(
    form: &str,
    inflection: Inflection,
    ed: Option<KindId>,
    sense: Sense,
    out: &mut Vec<(String, Sense)>,
) {
    match inflection {
        // Verbs are bent when they are looked up.
        Inflection::None | Inflection::Verb => {}
        Inflection::Noun => out.extend(plural(form).map(|many| (many, sense))),
        Inflection::Ish => {
            let hedged = sense.as_doubt();
            out.push((bend_last(form, with_ish), hedged));
            if form.ends_with('e') {
                out.push((format!("{form}ish"), hedged));
            }
            if !form.contains([' ', '-']) {
                out.push((with_er(form), sense));
                out.push((with_s(form), sense));
            }
        }
    }
    // Of one word only: "crowned" from "crown", but no "tail barred" from "tail bar".
    if let Some(kind) = ed
        && !form.contains([' ', '-'])
    {
        out.push((bend_last(form, with_ed), sense.as_kind(kind)));
    }
}
