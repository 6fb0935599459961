//! From words to matches: terms, rules, and the reach of denying and doubting words.

pub mod birds;
pub mod engine;
pub mod fit;
pub mod joins;
pub mod known;
pub mod look;
pub mod makings;
pub mod met;
pub mod nearest;
pub mod paths;
pub mod plan;
pub mod refer;
pub mod remembered;
pub mod repair;
pub mod scope;
pub mod spelling;
pub mod spoken;
pub mod tokens;
pub mod yields;

pub use engine::Match;
pub use repair::{Repair, Why};
pub use tokens::{Basics, Token};

use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::rules::Rules;

/// The longest stretch the engine takes at once; longer sentences are cut at a word, so that the
/// depth of phrases within phrases stays bounded.
const MOST_TOKENS: usize = 400;

/// Space for finding matches in.
#[derive(Clone, Debug, Default)]
pub struct Scratch {
    engine: engine::Scratch,
    view: Vec<Token>,
    places: Vec<usize>,
}

/// What matches are found with.
#[derive(Clone, Copy, Debug)]
pub struct Finder<'a> {
    /// The lexicon.
    pub lexicon: &'a Lexicon,
    /// The rules.
    pub rules: &'a Rules,
    /// What denies and doubts.
    pub forces: &'a scope::Forces,
    /// The region of yardsticks.
    pub region: Name,
    /// Whether to keep for each match the phrases it was built from.
    pub trace: bool,
}

impl Finder<'_> {
    /// The matches in `tokens`, with places that refer to `tokens`; skipped kinds are looked past and
    /// no match reaches over a full stop or a line end.
    pub fn matches(&self, tokens: &[Token], scratch: &mut Scratch) -> Vec<Match> {
        let Lexicon { kinds, ordinary, sentence_ends, .. } = self.lexicon;
        let mut out = Vec::with_capacity(8);
        scratch.view.clear();
        scratch.places.clear();
        for (place, token) in tokens.iter().enumerate() {
            // A word of degree that is also an ordinary word is looked past as well.
            let skipped = token.kinds & kinds.skipped != 0;
            let left_out = token.why.is_some_and(Why::leaves_out);
            if left_out || skipped && token.kinds & !(kinds.skipped | ordinary) == 0 {
                continue;
            }
            scratch.view.push(*token);
            scratch.places.push(place);
            if token.kinds & sentence_ends != 0 || scratch.view.len() >= MOST_TOKENS {
                self.sentence(scratch, &mut out);
            }
        }
        if !scratch.view.is_empty() {
            self.sentence(scratch, &mut out);
        }
        out
    }

    /// Adds the matches of the sentence in view, which is emptied.
    fn sentence(&self, scratch: &mut Scratch, out: &mut Vec<Match>) {
        let Scratch { engine, view, places } = scratch;
        let (lexicon, rules, region) = (self.lexicon, self.rules, self.region);
        let from = out.len();
        engine::Engine::new(lexicon, rules, region, view, engine, self.trace).run(out);
        let found = &mut out[from..];
        scope::retract(self.forces, view, found);
        scope::apply(lexicon, self.forces, region, view, found);
        for m in found {
            m.end = places[m.end - 1] + 1;
            m.start = places[m.start];
        }
        view.clear();
        places.clear();
    }
}
