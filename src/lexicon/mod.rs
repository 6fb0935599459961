//! Everything the program knows of birds and of English, read from data files.
//!
//! Files are read in layers: a person's own files come first and override the built-in ones, entry
//! by entry (same kind and id) and form by form.

pub mod account;
pub mod colours;
pub mod context;
pub mod entry;
pub mod kept;
pub mod kinds;
pub mod morphology;
pub mod names;
pub mod others;
pub mod record;
pub mod scale;
pub mod sense;
pub mod shelf;
pub mod term;
pub mod texts;
pub mod topography;
pub mod vocabulary;

use crate::diagnostic::{Diagnostics, Source};
use account::AccountText;
use colours::Colours;
use entry::{Entry, entries};
use kinds::{KindSet, Kinds, UNKNOWN};
use names::Names;
use others::Others;
use rustc_hash::FxHashSet;
use scale::Scale;
use serde::{Deserialize, Serialize};
use shelf::{Hand, Misplaced, Shelved};
use topography::Topography;
use vocabulary::Vocabulary;

/// The lexicon, ready for use.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Lexicon {
    /// Every id.
    #[serde(skip)]
    pub names: Names,
    /// The kinds of words.
    pub kinds: Kinds,
    /// The terms and their forms.
    pub vocabulary: Vocabulary,
    /// The parts of a bird.
    pub topography: Topography,
    /// The places of colours.
    pub colours: Colours,
    /// Sizes.
    pub scale: Scale,
    /// Kinds of words that show that a bird is spoken of.
    pub of_birds: KindSet,
    /// Kinds of names of birds.
    pub named: KindSet,
    /// Kinds an unknown word may be mended into.
    pub mendable: KindSet,
    /// Kinds that say nothing and that no rule asks for.
    pub ordinary: KindSet,
    /// Kinds no phrase reaches over.
    pub sentence_ends: KindSet,
    /// Entries of kinds the lexicon itself does not read: weights, marks of a full description, ...
    pub others: Others,
    /// The rules as written. Not stored with the built-in tables.
    #[serde(skip)]
    pub rules: Vec<Entry>,
    /// The accounts as written. Not stored with the built-in tables.
    #[serde(skip)]
    pub accounts: Vec<AccountText>,
}

/// A person's own files, and the built-in ones.
#[derive(Clone, Debug, Default)]
pub struct Layers {
    /// Read first; they override.
    pub own: Vec<Source>,
    /// Read last.
    pub base: Vec<Source>,
}

fn is_account_file(source: &Source) -> bool {
    source.name.ends_with(".acc")
}

impl Shelved for Lexicon {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        self.names.shelve(hand)?;
        self.vocabulary.shelve(hand)?;
        self.others.shelve(hand)
    }
}

impl Lexicon {
    /// Reads all files. What is wrong comes back beside what could be read; with an error among it
    /// the lexicon should not be used.
    pub fn read(layers: &Layers) -> (Self, Diagnostics) {
        let mut wrong = Diagnostics::default();
        let all_entries = merged(layers, &mut wrong);
        let accounts = merged_accounts(layers, &mut wrong);
        let mut names = Names::default();
        let kinds = Kinds::read(&all_entries, &mut names, &mut wrong);
        let topography = Topography::read(&all_entries, &mut names, &mut wrong);
        let colours = Colours::read(&all_entries, &mut names, &mut wrong);
        let mut scale = Scale::read(&all_entries, &mut names, &mut wrong);
        let mut vocabulary = Vocabulary::new();
        vocabulary.add_entries(&all_entries, &kinds, &mut names, &mut wrong);
        let drop: Vec<String> = all_entries
            .iter()
            .filter(|e| e.kind == "short-names")
            .flat_map(|e| e.items("drop").map(str::to_lowercase))
            .collect();
        let shorts = short_names(&accounts, &drop, &vocabulary);
        let species = species_entries(&accounts, &shorts, &mut names, &mut scale);
        vocabulary.add_entries(&species, &kinds, &mut names, &mut wrong);
        vocabulary.close();
        check_kinds(&all_entries, &kinds, &mut wrong);
        let named = kinds.set_where(|k| k.slot == Some(record::Slot::Against));
        let of_birds = kinds.set_of(&["bird-word", "topic", "area-ed"]);
        let mendable = kinds.set_where(|k| k.mend);
        let ordinary = kinds.set_where(|k| k.ordinary);
        let sentence_ends = kinds.set_of(&["stop", "newline", "semicolon", "exclamation"]);
        let (rules, others): (Vec<Entry>, Vec<Entry>) = all_entries
            .into_iter()
            .filter(|e| !is_read_here(&e.kind, &kinds))
            .partition(|e| e.kind == "rule" || e.kind == "phrase");
        let lexicon = Self {
            names,
            kinds,
            vocabulary,
            topography,
            colours,
            scale,
            of_birds,
            named,
            mendable,
            ordinary,
            sentence_ends,
            others: others.into_iter().collect(),
            rules,
            accounts,
        };
        (lexicon, wrong)
    }

    /// The set of the kind of that name; empty if there is none.
    pub fn kind_set(&self, name: &str) -> KindSet {
        self.kinds.find(name).map_or(0, kinds::KindId::bit)
    }

    /// The id of the region that is taken where none is named.
    pub fn default_region(&self) -> &str {
        self.others("region").find(|r| r.get("default") == Some("yes")).map_or("", |r| &r.id)
    }

    /// Entries of a kind that the lexicon itself does not read.
    pub fn others(&self, kind: &str) -> std::slice::Iter<'_, Entry> {
        self.others.of(kind).iter()
    }
}

/// Kinds of entries that are not kinds of words; each has its own reader.
pub const OTHER_ENTRIES: [&str; 29] = [
    "covers",
    "looked-at",
    "short-names",
    "kind",
    "path",
    "rule",
    "phrase",
    "description",
    "curve",
    "weight",
    "meant",
    "mention",
    "mention-by",
    "naming",
    "called",
    "reach",
    "spoken",
    "spoken-of",
    "gauge",
    "size-word",
    "silence",
    "enquiry",
    "region",
    "label",
    "form-word",
    "likeness",
    "abundance",
    "note",
    "contrary",
];

fn is_read_here(kind: &str, kinds: &Kinds) -> bool {
    kind == "kind" || kinds.find(kind).is_some()
}

fn check_kinds(entries: &[Entry], kinds: &Kinds, wrong: &mut Diagnostics) {
    use crate::diagnostic::Diagnostic;
    for entry in entries {
        let known = OTHER_ENTRIES.contains(&entry.kind.as_str())
            || kinds.find(&entry.kind).is_some_and(|_| entry.kind != UNKNOWN);
        if known {
            continue;
        }
        let near = kinds
            .iter()
            .map(|(_, k)| (strsim::jaro_winkler(&k.name, &entry.kind), k.name.as_str()))
            .max_by(|a, b| a.0.total_cmp(&b.0))
            .filter(|(likeness, _)| *likeness > 0.8);
        let end = entry.span.start + entry.kind.len();
        let at = crate::span::Span::new(entry.span.start, end);
        let diagnostic = Diagnostic::error(
            "unknown-kind",
            &entry.source,
            at,
            format!("there is no kind `{}`", entry.kind),
        );
        wrong.push(match near {
            Some((_, name)) => diagnostic.hint(format!("did you mean `{name}`?")),
            None => diagnostic.hint("kinds are declared in kinds.lex"),
        });
    }
}

/// The entries of all files; a person's own replace built-in ones of the same kind and id.
fn merged(layers: &Layers, wrong: &mut Diagnostics) -> Vec<Entry> {
    let mut own = Vec::new();
    let mut base = Vec::new();
    for (sources, out) in [(&layers.own, &mut own), (&layers.base, &mut base)] {
        for source in sources.iter().filter(|s| !is_account_file(s)) {
            let (found, problems) = entries(source);
            out.extend(found);
            wrong.0.extend(problems.0);
        }
    }
    let replaced: FxHashSet<(String, String)> =
        own.iter().map(|e: &Entry| (e.kind.clone(), e.id.clone())).collect();
    base.retain(|e| !replaced.contains(&(e.kind.clone(), e.id.clone())));
    own.append(&mut base);
    own
}

fn merged_accounts(layers: &Layers, wrong: &mut Diagnostics) -> Vec<AccountText> {
    let mut out: Vec<AccountText> = Vec::new();
    let mut taken: FxHashSet<String> = FxHashSet::default();
    for sources in [&layers.own, &layers.base] {
        let mut layer = Vec::new();
        for source in sources.iter().filter(|s| is_account_file(s)) {
            let (found, problems) = account::accounts(source);
            layer.extend(found);
            wrong.0.extend(problems.0);
        }
        layer.retain(|a| !taken.contains(&a.id()));
        taken.extend(layer.iter().map(AccountText::id));
        out.append(&mut layer);
    }
    out
}

/// Names of species as vocabulary; their masses as yardsticks.
/// The short name of each species that has one, in the order of the accounts: "Common Pochard" is
/// called pochard, where no other species or word is called so.
fn short_names(
    accounts: &[AccountText],
    drop: &[String],
    vocabulary: &Vocabulary,
) -> Vec<Option<String>> {
    let all: Vec<Option<String>> = accounts
        .iter()
        .map(|account| {
            let (first, rest) = account.english.split_once(' ')?;
            drop.contains(&first.to_lowercase()).then(|| rest.to_lowercase())
        })
        .collect();
    let alone = |name: &String| {
        all.iter().flatten().filter(|other| *other == name).count() == 1
            && vocabulary.find(name) == 0
            && accounts.iter().all(|a| !a.english.eq_ignore_ascii_case(name))
    };
    all.iter().map(|name| name.clone().filter(alone)).collect()
}

fn species_entries(
    accounts: &[AccountText],
    shorts: &[Option<String>],
    names: &mut Names,
    scale: &mut Scale,
) -> Vec<Entry> {
    accounts
        .iter()
        .zip(shorts)
        .map(|(account, short)| {
            let id = account.id();
            if let Some(mass) = account
                .line("mass")
                .and_then(|l| l.text.split_whitespace().next().and_then(|n| n.parse::<f32>().ok()))
            {
                scale.add_yardstick(names.intern(&id), mass);
            }
            let also = account.english.to_lowercase();
            let field = |key: &str, value: String| entry::Field {
                key: key.to_owned(),
                value,
                span: account.span,
            };
            let without = also.replace(['\'', '\u{2019}'], "");
            let mut forms =
                if without == also { also.clone() } else { format!("{also}, {without}") };
            if let Some(short) = short {
                forms.push_str(", ");
                forms.push_str(short);
            }
            Entry {
                kind: "species".to_owned(),
                id,
                fields: vec![
                    field("hidden", "yes".to_owned()),
                    field("also", forms),
                    field("means", account.scientific.clone()),
                ],
                span: account.span,
                source: account.source.clone(),
            }
        })
        .collect()
}
