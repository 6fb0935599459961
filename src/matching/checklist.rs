//! What is possible here, this month, and how common it is.
//!
//! ```text
//! # Quillmere Fen
//! Common Reed Warbler; 4-9; common
//! Passer domesticus
//! Water Rail; ; scarce
//! ```
//!
//! A line names a species by its English or scientific name; after semicolons may follow the months
//! in which it is there and a word for how common it is. `#` starts a remark.

use crate::accounts::Account;
use crate::diagnostic::{Diagnostic, Diagnostics, Source};
use crate::lexicon::Lexicon;
use crate::lexicon::account::species_id;
use crate::lexicon::names::Name;
use crate::span::Span;
use rustc_hash::FxHashMap;

/// A prior over the accounts.
#[derive(Clone, Debug, PartialEq)]
pub struct Checklist {
    priors: Vec<f32>,
}

impl Checklist {
    /// Every account alike.
    pub fn all(accounts: &[Account]) -> Self {
        Self { priors: vec![1.0; accounts.len()] }
    }

    /// The prior weight of an account; 0 if it is not on the list.
    pub fn prior(&self, account: usize) -> f32 {
        self.priors.get(account).copied().unwrap_or(0.0)
    }

    /// How many species it allows.
    pub fn len(&self) -> usize {
        self.priors.iter().filter(|&&p| p > 0.0).count()
    }

    /// Whether it allows none.
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// The same with `factor` on every species that does not live in the region.
    #[must_use]
    pub fn in_region(mut self, accounts: &[Account], region: Name, factor: f32) -> Self {
        for (prior, account) in self.priors.iter_mut().zip(accounts) {
            if !account.regions.contains(&region) {
                *prior *= factor;
            }
        }
        self
    }
}

/// Reads a checklist. Names that match no account come back as warnings, with the nearest name.
pub fn checklist(
    lexicon: &Lexicon,
    accounts: &[Account],
    source: &Source,
    month: Option<u8>,
) -> (Checklist, Diagnostics) {
    let mut wrong = Diagnostics::default();
    let mut index: FxHashMap<String, usize> = FxHashMap::default();
    for (i, account) in accounts.iter().enumerate() {
        index.insert(species_id(&account.english), i);
        index.insert(account.scientific.to_lowercase(), i);
    }
    let mut priors = vec![0.0; accounts.len()];
    let mut offset = 0;
    for raw in source.text.split_inclusive('\n') {
        let start = offset;
        offset += raw.len();
        let line = raw.split('#').next().unwrap_or("").trim_end();
        if line.trim().is_empty() {
            continue;
        }
        let mut fields = line.split(';').map(str::trim);
        let name = fields.next().unwrap_or("").trim_matches('\u{feff}');
        let months = fields.next().unwrap_or("");
        let abundance = fields.next().unwrap_or("");
        let span = Span::new(start, start + line.len());
        let found = index.get(&species_id(name)).or_else(|| index.get(&name.to_lowercase()));
        let Some(&at) = found else {
            wrong.push(unknown_name(accounts, source, span, name));
            continue;
        };
        let there = match (month, months_of(months)) {
            (_, Err(())) => {
                wrong.push(
                    Diagnostic::warning(
                        "bad-months",
                        source,
                        span,
                        format!("can't read the months `{months}`; all months taken"),
                    )
                    .hint("write months as numbers, such as `4-9` or `10-3` or `5`"),
                );
                true
            }
            (Some(month), Ok(Some((from, to)))) => {
                if from <= to {
                    (from..=to).contains(&month)
                } else {
                    month >= from || month <= to
                }
            }
            _ => true,
        };
        let weight = weight_of(lexicon, abundance).unwrap_or_else(|| {
            wrong.push(
                Diagnostic::warning(
                    "bad-abundance",
                    source,
                    span,
                    format!("`{abundance}` is no word for how common a bird is"),
                )
                .hint("use abundant, common, frequent, scarce or rare"),
            );
            1.0
        });
        priors[at] = if there { weight } else { weight * OUT_OF_SEASON };
    }
    (Checklist { priors }, wrong)
}

/// What is left of a species outside its months: birds linger.
const OUT_OF_SEASON: f32 = 0.02;

fn unknown_name(accounts: &[Account], source: &Source, span: Span, name: &str) -> Diagnostic {
    let near = accounts
        .iter()
        .flat_map(|a| [a.english.as_str(), a.scientific.as_str()])
        .map(|n| (strsim::jaro_winkler(&n.to_lowercase(), &name.to_lowercase()), n))
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .filter(|(likeness, _)| *likeness > 0.8);
    let diagnostic = Diagnostic::warning(
        "no-account",
        source,
        span,
        format!("`{name}` matches no account; it can't be a candidate"),
    );
    match near {
        Some((_, near)) => diagnostic.hint(format!("the nearest name is `{near}`")),
        None => diagnostic.hint("add an account for it to your own lexicon"),
    }
}

fn months_of(text: &str) -> Result<Option<(u8, u8)>, ()> {
    if text.is_empty() {
        return Ok(None);
    }
    let month = |t: &str| t.trim().parse::<u8>().ok().filter(|m| (1..=12).contains(m)).ok_or(());
    match text.split_once(['-', '\u{2013}']) {
        Some((from, to)) => Ok(Some((month(from)?, month(to)?))),
        None => month(text).map(|m| Some((m, m))),
    }
}

/// The weight of a word for how common a bird is; 1 for none, nothing for an unknown word.
fn weight_of(lexicon: &Lexicon, word: &str) -> Option<f32> {
    if word.is_empty() {
        return Some(1.0);
    }
    let word = word.to_lowercase();
    lexicon
        .others("abundance")
        .find(|e| e.id == word || e.items("also").any(|a| a == word))
        .and_then(|e| e.get("weight"))
        .and_then(|w| w.parse().ok())
}
