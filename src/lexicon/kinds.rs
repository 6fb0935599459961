//! The kinds of words, as the lexicon declares them.

use super::entry::Entry;
use super::names::{Name, Names};
use super::record::{Record, Slot};
use crate::diagnostic::{Diagnostic, Diagnostics};
use crate::words::Class;
use serde::{Deserialize, Serialize};
use zerocopy::{FromBytes, Immutable, IntoBytes};

/// A kind of word; also the number of its bit in a [`KindSet`].
#[derive(
    Clone,
    Copy,
    Debug,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    Serialize,
    Deserialize,
    FromBytes,
    IntoBytes,
    Immutable,
)]
#[repr(transparent)]
pub struct KindId(pub u8);

/// A set of kinds.
pub type KindSet = u128;

impl KindId {
    /// The set that holds this kind alone.
    pub const fn bit(self) -> KindSet {
        1 << self.0
    }
}

/// How forms of a kind bend.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Inflection {
    /// Not at all.
    #[default]
    None,
    /// Plural.
    Noun,
    /// -s, -ing, -ed on the first word.
    Verb,
    /// -ish, which also makes the reading hedged.
    Ish,
}

/// What becomes of a word of this kind when no rule has used it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Rest {
    /// It is reported as unplaced: a word of the trade that found no place.
    #[default]
    Unplaced,
    /// It is set aside: an ordinary word.
    SetAside,
}

/// What a word does to the phrases near it, besides what rules make of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Force {
    /// Nothing.
    #[default]
    None,
    /// It gives what it says (absent, unseen, hedged) to the phrase in its reach.
    Scope,
    /// It ends the reach of such a word.
    Closes,
    /// It carries the reach over to the next phrase ("or").
    Links,
    /// It takes back the phrase before it ("no wait").
    Retracts,
}

/// A kind.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Kind {
    /// Its name in rules and files.
    pub name: String,
    /// The slot its entries' ids go into.
    pub slot: Option<Slot>,
    /// What every entry of the kind says besides.
    pub base: Record,
    /// How its forms bend.
    pub inflection: Inflection,
    /// The kind that `-ed` forms belong to (`crowned` from `crown`).
    pub ed: Option<KindId>,
    /// Whether rules look past its words.
    pub skip: bool,
    /// What its words do to the phrases near them.
    pub force: Force,
    /// Whether an unknown word may be mended into one of this kind.
    pub mend: bool,
    /// Whether denials and doubts pass over what it says.
    pub free: bool,
    /// Whether it says nothing and no rule asks for it.
    pub ordinary: bool,
    /// Whether saying such a word twice means something: "chip chip".
    pub echoes: bool,
    /// The kinds right after which a form that only sounds alike is read as one of this kind.
    pub heard_after: KindSet,
    /// The kinds right before which it is.
    pub heard_before: KindSet,
    /// What becomes of unused words.
    pub rest: Rest,
    /// Why such a word is set aside, for people.
    pub aside: String,
    /// What the kind is, for people.
    pub means: String,
}

impl Kind {
    /// A kind of that name that says nothing yet.
    fn named(name: &str) -> Self {
        Self {
            name: name.to_owned(),
            slot: None,
            base: Record::default(),
            inflection: Inflection::None,
            ed: None,
            skip: false,
            force: Force::None,
            mend: false,
            free: false,
            ordinary: false,
            echoes: false,
            heard_after: 0,
            heard_before: 0,
            rest: Rest::Unplaced,
            aside: String::new(),
            means: String::new(),
        }
    }
}

/// All kinds.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Kinds {
    kinds: Vec<Kind>,
    /// Kinds that rules look past.
    pub skipped: KindSet,
}

/// The name of the kind given to words nobody knows.
pub const UNKNOWN: &str = "unknown";

impl Kinds {
    /// The kinds that every text has, whatever the lexicon: signs, numbers, unknown words.
    fn built_in() -> Self {
        let mut kinds = Self::default();
        for class in Class::SIGNS {
            let mut kind = Kind::named(class.name());
            kind.rest = Rest::SetAside;
            "sign".clone_into(&mut kind.aside);
            kind.skip = matches!(class, Class::Quote | Class::Symbol);
            if matches!(
                class,
                Class::Stop | Class::Semicolon | Class::Dash | Class::Newline | Class::Exclamation
            ) {
                kind.force = Force::Closes;
            }
            if kind.skip {
                kinds.skipped |= 1 << kinds.kinds.len();
            }
            kinds.kinds.push(kind);
        }
        kinds.kinds.push(Kind::named(UNKNOWN));
        kinds
    }

    /// Reads `kind` entries; the order of the entries is the order of the kinds.
    pub fn read(entries: &[Entry], names: &mut Names, wrong: &mut Diagnostics) -> Self {
        let mut out = Self::built_in();
        for entry in entries.iter().filter(|e| e.kind == "kind") {
            if out.find(&entry.id).is_some() {
                wrong.push(Diagnostic::error(
                    "kind-twice",
                    &entry.source,
                    entry.span,
                    format!("the kind `{}` is declared twice", entry.id),
                ));
                continue;
            }
            if out.kinds.len() >= KindSet::BITS as usize {
                wrong.push(Diagnostic::error(
                    "too-many-kinds",
                    &entry.source,
                    entry.span,
                    format!("more than {} kinds", KindSet::BITS),
                ));
                break;
            }
            let kind = read_kind(entry, names, wrong);
            if kind.skip {
                out.skipped |= 1 << out.kinds.len();
            }
            out.kinds.push(kind);
        }
        for entry in entries.iter().filter(|e| e.kind == "kind") {
            let Some(at) = out.find(&entry.id) else { continue };
            out.refer(at, entry, wrong);
        }
        out
    }

    /// Resolves the lines of a kind that name other kinds.
    fn refer(&mut self, at: KindId, entry: &Entry, wrong: &mut Diagnostics) {
        for field in &entry.fields {
            let key = field.key.as_str();
            if !matches!(key, "ed" | "heard-after" | "heard-before") {
                continue;
            }
            for name in field.value.split(',').map(str::trim) {
                let Some(found) = self.find(name) else {
                    wrong.push(Diagnostic::error(
                        "unknown-kind",
                        &entry.source,
                        field.span,
                        format!("there is no kind `{name}`"),
                    ));
                    continue;
                };
                let kind = &mut self.kinds[usize::from(at.0)];
                match key {
                    "ed" => kind.ed = Some(found),
                    "heard-after" => kind.heard_after |= found.bit(),
                    _ => kind.heard_before |= found.bit(),
                }
            }
        }
    }

    /// The kind of that name.
    pub fn find(&self, name: &str) -> Option<KindId> {
        let at = self.kinds.iter().position(|k| k.name == name)?;
        u8::try_from(at).ok().map(KindId)
    }

    /// What is known of a kind.
    pub fn get(&self, id: KindId) -> &Kind {
        &self.kinds[usize::from(id.0)]
    }

    /// Every kind with its id.
    pub fn iter(&self) -> impl Iterator<Item = (KindId, &Kind)> {
        self.kinds.iter().enumerate().map(|(i, k)| (KindId(u8::try_from(i).unwrap_or(u8::MAX)), k))
    }

    /// The kinds of which something holds.
    pub fn set_where(&self, test: impl Fn(&Kind) -> bool) -> KindSet {
        self.iter().filter(|(_, k)| test(k)).fold(0, |set, (id, _)| set | id.bit())
    }

    /// The set of the kinds of these names; names that no kind has are passed over.
    pub fn set_of(&self, names: &[&str]) -> KindSet {
        names.iter().filter_map(|name| self.find(name)).fold(0, |set, id| set | id.bit())
    }

    /// The names of a set of kinds.
    pub fn names_of(&self, set: KindSet) -> Vec<&str> {
        self.iter().filter(|(id, _)| set & id.bit() != 0).map(|(_, k)| k.name.as_str()).collect()
    }
}

fn read_kind(entry: &Entry, names: &mut Names, wrong: &mut Diagnostics) -> Kind {
    let mut kind = Kind::named(&entry.id);
    for field in &entry.fields {
        let value = field.value.as_str();
        let mut bad = |expected: &str| {
            wrong.push(
                Diagnostic::error(
                    "bad-value",
                    &entry.source,
                    field.span,
                    format!("`{}` can't be `{value}`", field.key),
                )
                .hint(format!("expected {expected}")),
            );
        };
        match field.key.as_str() {
            "slot" => match Slot::find(value) {
                Some(slot) => kind.slot = Some(slot),
                None => bad("the name of a slot"),
            },
            "inflect" => match value {
                "noun" => kind.inflection = Inflection::Noun,
                "verb" => kind.inflection = Inflection::Verb,
                "ish" => kind.inflection = Inflection::Ish,
                _ => bad("noun, verb or ish"),
            },
            "skip" => kind.skip = value == "yes",
            "mend" => kind.mend = value == "yes",
            "ordinary" => kind.ordinary = value == "yes",
            "free" => kind.free = value == "yes",
            "echoes" => kind.echoes = value == "yes",
            "force" => match value {
                "scope" => kind.force = Force::Scope,
                "closes" => kind.force = Force::Closes,
                "links" => kind.force = Force::Links,
                "retracts" => kind.force = Force::Retracts,
                _ => bad("scope, closes, links or retracts"),
            },
            "aside" => {
                kind.rest = Rest::SetAside;
                value.clone_into(&mut kind.aside);
            }
            "means" => value.clone_into(&mut kind.means),
            "ed" | "heard-after" | "heard-before" => {}
            key => match Slot::find(key) {
                Some(slot) => kind.base.set(slot, names.intern(value)),
                None => wrong.push(
                    Diagnostic::error(
                        "unknown-key",
                        &entry.source,
                        field.span,
                        format!("a kind has no `{key}`"),
                    )
                    .hint("known: slot, inflect, ed, skip, mend, free, ordinary, echoes, force, aside, heard-after, heard-before, means, and the names of slots"),
                ),
            },
        }
    }
    kind
}

/// What an entry of a kind says: the kind's base, its id in the kind's slot, its own slots on top.
pub fn record_of(kind: &Kind, entry: &Entry, names: &mut Names) -> Record {
    let mut record = Record::default();
    for field in &entry.fields {
        if let Some(slot) = Slot::find(&field.key) {
            record.set(slot, names.intern(&field.value));
        }
    }
    if let Some(slot) = kind.slot
        && record.get(slot) == Name::NONE
    {
        record.set(slot, names.intern(&entry.id));
    }
    if kind.name == Class::Digits.name() {
        record.number = entry.get("value").and_then(|v| v.parse().ok());
        record.set(Slot::Value, Name::NONE);
    }
    record.merge(&kind.base)
}
