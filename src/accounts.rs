//! Species accounts, read by the same grammar as notes.
//!
//! An account is plain field language under labels (see [`crate::lexicon::account`]). Lines that
//! name a form (`adult male`) give that form's marks; `all`, `habits` and the like hold for every
//! form; `bill`, `legs` and `eye` are read as said of that part. Every word must be placed or set
//! aside; those that are not come back as diagnostics.

use crate::diagnostic::{Diagnostic, Diagnostics};
use crate::lexicon::Lexicon;
use crate::lexicon::account::{AccountText, Line};
use crate::lexicon::entry::Entry;
use crate::lexicon::kept::Kept;
use crate::lexicon::names::{Name, Names};
use crate::lexicon::record::Parts;
use crate::lexicon::shelf::{Hand, List, Misplaced, Shelved};
use crate::reading::{Fate, Reader};
use crate::span::Span;
use crate::traits::{Polarity, Trait, Value};
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};
use std::ops::Index;

/// A form of a species: a sex, an age, a season, a colour form.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Form {
    /// Its label: `adult male`; `all` where the account tells none apart.
    pub label: String,
    /// Its own marks, by their places in the pool of all accounts; those of all forms are in
    /// [`Account::shared`].
    pub traits: Vec<u32>,
    /// How often such a bird is met, against an adult.
    pub weight: f32,
}

/// A published measure.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Measure {
    /// What was measured, as the account names it.
    pub name: String,
    /// Millimetres.
    pub mm: f32,
}

/// Another species taken for this one.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct LookAlike {
    /// Its English name.
    pub name: String,
    /// What it shows, in words.
    pub text: String,
}

/// A species.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Account {
    /// Its id.
    pub id: Name,
    /// English name.
    pub english: String,
    /// Scientific name.
    pub scientific: String,
    /// Family.
    pub family: String,
    /// Regions it lives in.
    pub regions: Vec<Name>,
    /// Mass in grams.
    pub mass: Option<f32>,
    /// Measures.
    pub measures: Vec<Measure>,
    /// Marks that every form shows, by their places in the pool of all accounts.
    pub shared: Vec<u32>,
    /// Its forms; at least one.
    pub forms: Vec<Form>,
    /// Species taken for it.
    pub look_alikes: Vec<LookAlike>,
}

impl Account {
    /// A measure by its name in the account, in millimetres.
    pub fn measure(&self, name: &str) -> Option<f32> {
        self.measures.iter().find(|m| m.name == name).map(|m| m.mm)
    }
}

/// All species. Marks that several forms show are kept once. Of stored ones each is read when it is first
/// asked for.
#[derive(Clone, Debug, Default)]
pub struct Accounts {
    /// Every different mark.
    pool: Kept<Trait>,
    /// The species.
    list: Kept<Account>,
    /// Their ids.
    ids: List<Name>,
    /// Their masses in grams; none is no number.
    masses: List<f32>,
}

impl Shelved for Accounts {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        self.pool.shelve(hand)?;
        self.list.shelve(hand)?;
        hand.list(&mut self.ids)?;
        hand.list(&mut self.masses)
    }
}

impl Index<usize> for Accounts {
    type Output = Account;

    fn index(&self, at: usize) -> &Account {
        self.list.get(at)
    }
}

impl Accounts {
    /// How many species there are.
    pub const fn len(&self) -> usize {
        self.list.len()
    }

    /// Whether there are none.
    pub const fn is_empty(&self) -> bool {
        self.list.is_empty()
    }

    /// Every species in order.
    pub fn iter(&self) -> impl ExactSizeIterator<Item = &Account> {
        self.list.iter()
    }

    /// The species of an id.
    pub fn of_id(&self, id: Name) -> Option<&Account> {
        self.ids.iter().position(|of| *of == id).map(|at| &self[at])
    }

    /// The mass of a species in grams, by its place.
    pub fn mass(&self, at: usize) -> Option<f32> {
        self.masses.get(at).copied().filter(|mass| !mass.is_nan())
    }

    /// Every different mark, in the order of the places that forms name.
    pub fn pool(&self) -> impl ExactSizeIterator<Item = &Trait> {
        self.pool.iter()
    }

    /// Adds a species whose marks are in the pool.
    pub fn push(&mut self, account: Account) {
        self.ids.to_mut().push(account.id);
        self.masses.to_mut().push(account.mass.unwrap_or(f32::NAN));
        self.list.push(account);
    }

    /// All marks of a form, its own first, then those every form shows.
    pub fn traits_of<'a>(
        &'a self,
        account: &'a Account,
        form: &'a Form,
    ) -> impl Iterator<Item = &'a Trait> + 'a {
        form.traits.iter().chain(&account.shared).map(|&at| self.pool.get(at as usize))
    }

    /// Gives every made value (`longer-than-head`) a name, so that the same value of a note is
    /// found to be the same.
    pub fn name_made_values(&self, names: &mut Names) {
        for one in self.pool.iter() {
            if let Value::Made(text) = &one.value {
                names.intern(text);
            }
        }
    }

    /// The places of `traits` in the pool; new ones are added.
    fn keep(&mut self, index: &mut PoolIndex, traits: Vec<Trait>) -> Vec<u32> {
        traits
            .into_iter()
            .map(|one| {
                let one = Trait { parts: Parts::default(), rule: 0, ..one };
                let near = index.entry((one.area, one.aspect)).or_default();
                if let Some(&at) = near.iter().find(|&&at| *self.pool.get(at as usize) == one) {
                    return at;
                }
                let at = u32::try_from(self.pool.len()).unwrap_or(u32::MAX);
                near.push(at);
                self.pool.push(one);
                at
            })
            .collect()
    }
}

/// Where the marks of an area and aspect lie in the pool.
type PoolIndex = FxHashMap<(Name, Name), Vec<u32>>;

/// What a label's lines are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Role {
    Heading,
    Shared,
    Part(Name),
    LookAlike,
    Form,
}

/// The labels as the lexicon declares them.
#[derive(Debug)]
struct Labels<'a> {
    roles: FxHashMap<&'a str, Role>,
    subjects: FxHashMap<Name, &'a str>,
    words: Vec<(&'a str, f32)>,
}

impl<'a> Labels<'a> {
    fn of(lexicon: &'a Lexicon) -> Self {
        let mut roles = FxHashMap::default();
        let mut subjects = FxHashMap::default();
        for entry in lexicon.others("label") {
            let role = match entry.get("role") {
                Some("heading") => Role::Heading,
                Some("shared") => Role::Shared,
                Some("part") => {
                    let subject = entry.get("subject").unwrap_or(&entry.id);
                    let name = lexicon.names.find(&entry.id);
                    subjects.insert(name, subject);
                    Role::Part(name)
                }
                Some("look-alike") => Role::LookAlike,
                _ => Role::Form,
            };
            roles.insert(entry.id.as_str(), role);
        }
        let words = lexicon.others("form-word").filter_map(word_weight).collect();
        Self { roles, subjects, words }
    }

    fn role(&self, label: &str) -> Role {
        self.roles.get(label).copied().unwrap_or(Role::Form)
    }

    fn weight(&self, label: &str) -> f32 {
        let spaced = label.replace('-', " ");
        self.words
            .iter()
            .filter(|(word, _)| contains_words(&spaced, &word.replace('-', " ")))
            .map(|(_, weight)| *weight)
            .product()
    }
}

fn word_weight(entry: &Entry) -> Option<(&str, f32)> {
    Some((entry.id.as_str(), entry.get("weight")?.trim().parse().ok()?))
}

/// Whether `words` stand in `label` as whole words.
fn contains_words(label: &str, words: &str) -> bool {
    format!(" {label} ").contains(&format!(" {words} "))
}

/// Reads every account of the reader's lexicon.
pub fn read_accounts(reader: &Reader<'_>) -> (Accounts, Diagnostics) {
    let labels = Labels::of(reader.lexicon);
    let mut wrong = Diagnostics::default();
    let mut out = Accounts::default();
    let mut index = PoolIndex::default();
    for text in &reader.lexicon.accounts {
        let account = read_account(reader, &labels, text, &mut out, &mut index, &mut wrong);
        out.push(account);
    }
    (out, wrong)
}

fn read_account(
    reader: &Reader<'_>,
    labels: &Labels<'_>,
    text: &AccountText,
    kept: &mut Accounts,
    index: &mut PoolIndex,
    wrong: &mut Diagnostics,
) -> Account {
    let lexicon = reader.lexicon;
    let heading = |label: &str| text.line(label).map(|l| l.text.as_str()).unwrap_or_default();
    let mut shared = Vec::new();
    let mut forms: Vec<Form> = Vec::new();
    let mut look_alikes = Vec::new();
    for line in &text.lines {
        match labels.role(&line.label) {
            Role::Heading => {}
            Role::Shared => shared.extend(read_line(reader, text, line, None, wrong)),
            Role::Part(part) => {
                let subject = labels.subjects.get(&part).copied();
                shared.extend(read_line(reader, text, line, subject, wrong));
            }
            Role::LookAlike => match line.text.split_once(':') {
                Some((name, marks)) => look_alikes.push(LookAlike {
                    name: name.trim().to_owned(),
                    text: marks.trim().to_owned(),
                }),
                None => wrong.push(
                    Diagnostic::error(
                        "bad-look-alike",
                        &text.source,
                        line.span,
                        "expected `lookalike: Name: its marks`",
                    )
                    .hint("such as `lookalike: Other Finch: longer bill; plain flanks`"),
                ),
            },
            Role::Form => forms.push(Form {
                label: line.label.clone(),
                traits: kept.keep(index, read_line(reader, text, line, None, wrong)),
                weight: labels.weight(&line.label),
            }),
        }
    }
    if forms.is_empty() {
        forms.push(Form { label: "all".to_owned(), traits: Vec::new(), weight: 1.0 });
    }
    let mass = number_before(heading("mass"), "g");
    if mass.is_none() {
        wrong.push(
            Diagnostic::warning(
                "no-mass",
                &text.source,
                text.span,
                format!("{} has no mass; size can't tell it from others", text.english),
            )
            .hint("add a line such as `mass: 21 g`"),
        );
    }
    Account {
        id: lexicon.names.find(&text.id()),
        english: text.english.clone(),
        scientific: text.scientific.clone(),
        family: heading("family").to_owned(),
        regions: heading("region")
            .split(',')
            .map(|r| lexicon.names.find(r.trim()))
            .filter(|r| r.is_some())
            .collect(),
        mass,
        measures: measures(heading("measures")),
        shared: kept.keep(index, shared),
        forms,
        look_alikes,
    }
}

/// Reads a line, sentence by sentence; a subject is put before each sentence.
fn read_line(
    reader: &Reader<'_>,
    account: &AccountText,
    line: &Line,
    subject: Option<&str>,
    wrong: &mut Diagnostics,
) -> Vec<Trait> {
    let mut out: Vec<Trait> = Vec::new();
    for (start, sentence) in sentences(&line.text) {
        let before = subject.map(|s| format!("{s}: ")).unwrap_or_default();
        let shift = before.len();
        let reading = reader.read(&format!("{before}{sentence}"));
        for segment in reading.segments.iter().filter(|s| s.fate == Fate::Unplaced) {
            let at = |offset: usize| line.span.start + start + offset.saturating_sub(shift);
            say_unplaced(account, Span::new(at(segment.span.start), at(segment.span.end)), wrong);
        }
        for one in reading.traits.into_iter().filter(|t| t.polarity != Polarity::Unseen) {
            if !out.iter().any(|t| t.says_same(&one)) {
                out.push(one);
            }
        }
    }
    out
}

fn say_unplaced(account: &AccountText, span: Span, wrong: &mut Diagnostics) {
    let word = span.of(&account.source.text);
    wrong.push(
        Diagnostic::warning(
            "unplaced-word",
            &account.source,
            span,
            format!("no place found for `{word}` ({})", account.english),
        )
        .hint("put it next to the part it is said of, or add it to the vocabulary"),
    );
}

/// The sentences of a line with their places.
fn sentences(text: &str) -> impl Iterator<Item = (usize, &str)> {
    let mut at = 0;
    text.split_inclusive(['.', ';']).filter_map(move |piece| {
        let start = at + (piece.len() - piece.trim_start().len());
        at += piece.len();
        let sentence = piece.trim();
        (!sentence.is_empty()).then_some((start, sentence))
    })
}

/// `26.5 g, AVONET` with `g` gives 26.5.
fn number_before(text: &str, unit: &str) -> Option<f32> {
    let mut words = text.split([' ', ',']);
    let number = words.next()?.parse().ok()?;
    (words.next() == Some(unit)).then_some(number)
}

/// `wing 76, tail 57 mm, AVONET` gives two measures.
fn measures(text: &str) -> Vec<Measure> {
    let one = |item: &str| {
        let (name, rest) = item.trim().split_once(' ')?;
        let mm = rest.split_whitespace().next()?.parse().ok()?;
        Some(Measure { name: name.to_owned(), mm })
    };
    text.split(',').filter_map(one).collect()
}
