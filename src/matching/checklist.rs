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

use super::species::SpeciesNames;
use super::weights::Weights;
use crate::accounts::Accounts;
use crate::diagnostic::{Diagnostic, Diagnostics, Source};
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::span::Span;

/// A prior over the accounts.
#[derive(Clone, Debug, PartialEq)]
pub struct Checklist {
    priors: Vec<f32>,
    /// Accounts that are left out of everything, as if they had not been written.
    hidden: Vec<usize>,
}

impl Checklist {
    /// Every account alike.
    pub fn all(accounts: &Accounts) -> Self {
        Self { priors: vec![1.0; accounts.len()], hidden: Vec::new() }
    }

    /// The prior weight of an account; 0 if it is not on the list.
    pub fn prior(&self, account: usize) -> f32 {
        self.priors.get(account).copied().unwrap_or(0.0)
    }

    /// The same without a species.
    #[must_use]
    pub fn without(mut self, account: usize) -> Self {
        if let Some(prior) = self.priors.get_mut(account) {
            *prior = 0.0;
        }
        self
    }

    /// The same as if the account of a species had not been written.
    #[must_use]
    pub fn hiding(self, account: usize) -> Self {
        let mut out = self.without(account);
        out.hidden.push(account);
        out
    }

    /// Whether an account is there, on the list or off it.
    pub fn knows(&self, account: usize) -> bool {
        !self.hidden.contains(&account)
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
    pub fn in_region(self, accounts: &Accounts, region: Name, factor: f32) -> Self {
        self.in_regions(accounts, &[region], factor)
    }

    /// The same with `factor` on every species that lives in none of the regions.
    #[must_use]
    pub fn in_regions(mut self, accounts: &Accounts, regions: &[Name], factor: f32) -> Self {
        for (prior, account) in self.priors.iter_mut().zip(accounts.iter()) {
            if !account.regions.iter().any(|r| regions.contains(r)) {
                *prior *= factor;
            }
        }
        self
    }
}

/// Reads a checklist. Names that match no account come back as warnings, with the nearest name.
pub fn checklist(
    lexicon: &Lexicon,
    accounts: &Accounts,
    source: &Source,
    month: Option<u8>,
) -> (Checklist, Diagnostics) {
    let mut wrong = Diagnostics::default();
    // Birds linger, so a species out of its months is not ruled out.
    let other_month = match Weights::of(lexicon) {
        Ok(weights) => weights.other_month,
        Err(missing) => {
            wrong.0.extend(missing.0);
            return (Checklist { priors: vec![0.0; accounts.len()], hidden: Vec::new() }, wrong);
        }
    };
    let names = SpeciesNames::of(accounts);
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
        let Some(at) = names.find(name) else {
            wrong.push(unknown_name(&names, source, span, name));
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
        priors[at] = if there { weight } else { weight * other_month };
    }
    (Checklist { priors, hidden: Vec::new() }, wrong)
}

fn unknown_name(names: &SpeciesNames<'_>, source: &Source, span: Span, name: &str) -> Diagnostic {
    let diagnostic = Diagnostic::warning(
        "no-account",
        source,
        span,
        format!("`{name}` matches no account; it can't be a candidate"),
    );
    match names.nearest(name, MOST_NEAREST).as_slice() {
        [] => diagnostic.hint("add an account for it to your own lexicon"),
        [one] => diagnostic.hint(format!("the nearest name is `{one}`")),
        several => diagnostic.hint(format!("the nearest names are {}", several.join(", "))),
    }
}

/// How many names are offered for one that is not known.
const MOST_NEAREST: usize = 3;

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
