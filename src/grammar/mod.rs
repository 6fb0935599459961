//! From words to matches: terms, rules, and the reach of denying and doubting words.

pub mod birds;
pub mod engine;
pub mod joins;
pub mod nearest;
pub mod paths;
pub mod refer;
pub mod repair;
pub mod scope;
pub mod spelling;
pub mod spoken;
pub mod tokens;

pub use engine::Match;
pub use repair::{Repair, Why};
pub use tokens::{Basics, Token};

use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::rules::Rules;

/// The longest stretch the engine takes at once; longer sentences are cut at a word, so that the
/// depth of phrases within phrases stays bounded.
const MOST_TOKENS: usize = 400;

/// The matches in `tokens`, with places that refer to `tokens`; skipped kinds are looked past and
/// no match reaches over a full stop or a line end.
pub fn matches(
    lexicon: &Lexicon,
    rules: &Rules,
    forces: &scope::Forces,
    region: Name,
    tokens: &[Token],
    trace: bool,
) -> Vec<Match> {
    let mut out = Vec::new();
    let mut view: Vec<Token> = Vec::with_capacity(tokens.len());
    let mut places: Vec<usize> = Vec::with_capacity(tokens.len());
    let mut flush = |view: &mut Vec<Token>, places: &mut Vec<usize>| {
        let mut found = engine::Engine::new(lexicon, rules, region, view, trace).run();
        scope::retract(forces, view, &mut found);
        scope::apply(lexicon, forces, region, view, &mut found);
        for m in &mut found {
            m.end = places[m.end - 1] + 1;
            m.start = places[m.start];
        }
        out.append(&mut found);
        view.clear();
        places.clear();
    };
    for (place, token) in tokens.iter().enumerate() {
        // A word of degree that is also an ordinary word is looked past as well.
        let skipped = token.kinds & lexicon.kinds.skipped != 0;
        let left_out = token.why.is_some_and(Why::leaves_out);
        if left_out || skipped && token.kinds & !(lexicon.kinds.skipped | lexicon.ordinary) == 0 {
            continue;
        }
        view.push(*token);
        places.push(place);
        if token.kinds & lexicon.sentence_ends != 0 || view.len() >= MOST_TOKENS {
            flush(&mut view, &mut places);
        }
    }
    if !view.is_empty() {
        flush(&mut view, &mut places);
    }
    out
}
