//! Lexicon, rules and accounts, read together and checked.

use crate::accounts::{Account, Accounts, read_accounts};
use crate::diagnostic::Diagnostics;
use crate::lexicon::names::Name;
use crate::lexicon::shelf::{Full, Hand, Misplaced, Shelved};
use crate::lexicon::{Layers, Lexicon};
use crate::reading::Reader;
use crate::rules::Rules;
use serde::{Deserialize, Serialize};

/// Everything the program works with.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Knowledge {
    /// The lexicon.
    pub lexicon: Lexicon,
    /// The rules.
    pub rules: Rules,
    /// The species.
    #[serde(skip)]
    pub accounts: Accounts,
    /// Tables for matching that were stored with the built-in ones; none for files read anew.
    #[serde(skip)]
    pub layout: Option<Full>,
}

impl Shelved for Knowledge {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        self.lexicon.shelve(hand)?;
        self.accounts.shelve(hand)
    }
}

impl Knowledge {
    /// Reads the built-in files and a person's own.
    ///
    /// # Errors
    /// What is wrong in the files, if anything stops them from being used.
    pub fn read(layers: &Layers) -> Result<Self, Diagnostics> {
        let (knowledge, wrong) = Self::read_with_remarks(layers)?;
        if wrong.has_errors() { Err(wrong) } else { Ok(knowledge) }
    }

    /// As [`Knowledge::read`], with the remarks on what could be read.
    ///
    /// # Errors
    /// What is wrong in the lexicon or the rules, if they can't be used.
    pub fn read_with_remarks(layers: &Layers) -> Result<(Self, Diagnostics), Diagnostics> {
        let (mut lexicon, rules) = Self::read_language(layers)?;
        let (accounts, wrong) = read_accounts(&Reader::new(&lexicon, &rules, ""));
        accounts.name_made_values(&mut lexicon.names);
        Ok((Self { lexicon, rules, accounts, layout: None }, wrong))
    }

    /// Reads vocabulary and rules without the accounts.
    ///
    /// # Errors
    /// What is wrong in the files.
    pub fn read_language(layers: &Layers) -> Result<(Lexicon, Rules), Diagnostics> {
        let (mut lexicon, mut wrong) = Lexicon::read(layers);
        let entries = std::mem::take(&mut lexicon.rules);
        let Lexicon { kinds, names, vocabulary, .. } = &mut lexicon;
        let rules = Rules::read(&entries, kinds, names, vocabulary, &mut wrong);
        if wrong.has_errors() { Err(wrong) } else { Ok((lexicon, rules)) }
    }

    /// A reader for a region.
    pub fn reader(&self, region: &str) -> Reader<'_> {
        Reader::new(&self.lexicon, &self.rules, region)
    }

    /// The account of an id.
    pub fn account(&self, id: Name) -> Option<&Account> {
        self.accounts.of_id(id)
    }
}
