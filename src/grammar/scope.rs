//! The reach of words that deny, doubt, or say that something could not be seen.
//!
//! Such a word (of a kind with `force scope`) gives what it says to the next match that starts
//! within a few words, and on from there over links ("or") to the matches that follow. A closing
//! word or sign ends its reach. A word that reaches back ("absent", "not seen", "?") gives it to
//! the match right before.

use super::engine::Match;
use super::tokens::Token;
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::{Force, KindSet};
use crate::lexicon::names::Name;
use crate::lexicon::record::{Said, Slot};
use crate::lexicon::term::Reach;

/// How many words may stand between such a word and what it is said of.
const MOST_BETWEEN: usize = 4;

/// The same for words that reach back.
const MOST_BETWEEN_BACK: usize = 1;

/// The kinds that matter here.
#[derive(Clone, Debug)]
pub struct Forces {
    /// Aspects that denials and doubts pass over: the place, the light, the sex.
    free: Vec<Name>,
    bird: Name,
    retracts: KindSet,
    scope: KindSet,
    closes: KindSet,
    links: KindSet,
    comma: KindSet,
    colon: KindSet,
}

impl Forces {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let of = |force| lexicon.kinds.set_where(|k| k.force == force);
        let free = lexicon.kinds.iter().filter(|(_, k)| k.free);
        Self {
            free: free.map(|(_, k)| k.base.get(Slot::Aspect)).collect(),
            bird: lexicon.names.find("bird"),
            retracts: of(Force::Retracts),
            scope: of(Force::Scope),
            closes: of(Force::Closes),
            links: of(Force::Links),
            comma: lexicon.kind_set("comma"),
            colon: lexicon.kind_set("colon"),
        }
    }
}

/// Takes back what was said before words such as "no wait".
///
/// What is said behind them tells what they take back: the last statement of the same part and kind, or else the
/// match right before. Said of no part ("they were brown"), it is said of the part taken back.
pub fn retract(forces: &Forces, tokens: &[Token], matches: &mut [Match]) {
    for (at, token) in tokens.iter().enumerate() {
        if token.kinds & forces.retracts == 0 || matches.iter().any(|m| m.start <= at && at < m.end)
        {
            continue;
        }
        let upto = matches.partition_point(|m| m.end <= at);
        let (before, behind) = matches.split_at_mut(upto);
        let mut says = behind.first_mut().filter(|m| m.start <= at + 1 + MOST_BETWEEN);
        let put_right = |old: &Said| {
            says.as_ref().is_some_and(|new| new.records.iter().any(|n| same_mark(forces, n, old)))
        };
        if let Some(old) = before.iter_mut().rfind(|m| m.records.iter().any(put_right)) {
            old.records.retain(|r| !put_right(r));
            old.taken_back = old.records.is_empty();
        } else if let Some(old) = before.last_mut().filter(|m| at - m.end <= MOST_BETWEEN_BACK) {
            let taken = std::mem::take(&mut old.records);
            old.taken_back = true;
            if let Some(new) = &mut says {
                give_part(forces, &taken, &mut new.records);
            }
        }
    }
}

/// Whether two records are of one kind of mark on one part.
fn same_mark(forces: &Forces, a: &Said, b: &Said) -> bool {
    let (area, aspect) = (a.get(Slot::Area), a.get(Slot::Aspect));
    let of_a_part = area.is_some() && area != forces.bird && aspect.is_some();
    of_a_part && area == b.get(Slot::Area) && aspect == b.get(Slot::Aspect)
}

/// Gives the part of what was taken back to what stands in its place and names none.
fn give_part(forces: &Forces, taken: &[Said], new: &mut [Said]) {
    let bird_only = |r: &&mut Said| r.get(Slot::Area) == forces.bird;
    for record in new.iter_mut().filter(bird_only) {
        let part = taken.iter().find(|t| {
            t.get(Slot::Area) != forces.bird && t.get(Slot::Aspect) == record.get(Slot::Aspect)
        });
        if let Some(part) = part {
            record.record.set(Slot::Area, part.get(Slot::Area));
        }
    }
}

/// Applies every such word among `tokens` that no match has taken into itself.
pub fn apply(
    lexicon: &Lexicon,
    forces: &Forces,
    region: Name,
    tokens: &[Token],
    matches: &mut [Match],
) {
    for (at, token) in tokens.iter().enumerate() {
        let scope = token.kinds & forces.scope;
        if scope == 0 || matches.iter().any(|m| m.start <= at && at < m.end) {
            continue;
        }
        let Some(sense) = token.sense(lexicon, scope, region) else {
            continue;
        };
        let says = Said::at(lexicon.vocabulary.record(sense), token.span);
        let reach = lexicon.vocabulary.terms[sense.term as usize].reach();
        if tokens.get(at + 1).is_some_and(|t| t.kinds & forces.colon != 0) {
            give_list(forces, tokens, matches, at + 1, &says);
            continue;
        }
        let ahead = || next_match(forces, tokens, matches, at + 1);
        let behind = || previous_match(forces, tokens, matches, at);
        match reach {
            Reach::Forward => {
                if let Some(first) = ahead() {
                    give_on(forces, tokens, matches, first, &says);
                }
            }
            Reach::Back => {
                if let Some(last) = behind() {
                    give_back(forces, &mut matches[last], &says);
                }
            }
            Reach::Either => match (ahead(), behind()) {
                (Some(first), _) => give_on(forces, tokens, matches, first, &says),
                (None, Some(last)) => give_back(forces, &mut matches[last], &says),
                (None, None) => {}
            },
        }
    }
}

/// The match that starts at or soon after `from`, with nothing between that ends the reach.
fn next_match(forces: &Forces, tokens: &[Token], matches: &[Match], from: usize) -> Option<usize> {
    let index = matches.iter().position(|m| m.start >= from)?;
    let between = tokens.get(from..matches[index].start)?;
    let ends = forces.closes | forces.comma | forces.scope;
    let near = between.len() <= MOST_BETWEEN && between.iter().all(|t| t.kinds & ends == 0);
    near.then_some(index)
}

/// The match that ends right before `to`.
fn previous_match(
    forces: &Forces,
    tokens: &[Token],
    matches: &[Match],
    to: usize,
) -> Option<usize> {
    let index = matches.iter().rposition(|m| m.end <= to)?;
    let between = tokens.get(matches[index].end..to)?;
    let ends = forces.closes | forces.scope;
    let near = between.len() <= MOST_BETWEEN_BACK && between.iter().all(|t| t.kinds & ends == 0);
    near.then_some(index)
}

/// Gives `says` to a match and to those linked behind it.
fn give_on(forces: &Forces, tokens: &[Token], matches: &mut [Match], first: usize, says: &Said) {
    give(forces, &mut matches[first], says);
    for next in first + 1..matches.len() {
        let between = &tokens[matches[next - 1].end..matches[next].start];
        let linked = between.iter().any(|t| t.kinds & forces.links != 0)
            && between.iter().all(|t| t.kinds & (forces.closes | forces.scope) == 0)
            && between.len() <= MOST_BETWEEN;
        if !linked {
            break;
        }
        give(forces, &mut matches[next], says);
    }
}

/// Gives `says` to all that is listed behind a colon: "absent: crest, wing bars".
fn give_list(forces: &Forces, tokens: &[Token], matches: &mut [Match], colon: usize, says: &Said) {
    let ends = |t: &Token| t.kinds & (forces.closes | forces.scope) != 0;
    let end = tokens[colon + 1..].iter().position(ends).map_or(tokens.len(), |n| colon + 1 + n);
    for found in matches.iter_mut().filter(|m| m.start > colon && m.end <= end) {
        give(forces, found, says);
    }
}

/// Gives `says` to a match it stands behind: a denial to all of it, a mere doubt to its last word.
fn give_back(forces: &Forces, found: &mut Match, says: &Said) {
    if says.get(Slot::Polarity).is_some() {
        return give(forces, found, says);
    }
    let end = |said: &Said| said.parts.hull().map_or(0, |h| h.end);
    let last = found.records.iter().map(end).max().unwrap_or(0);
    for record in found.records.iter_mut().filter(|r| end(r) == last) {
        if !forces.free.contains(&record.get(Slot::Aspect)) {
            *record = with_force(record, says);
        }
    }
}

fn give(forces: &Forces, found: &mut Match, says: &Said) {
    for record in &mut found.records {
        if forces.free.contains(&record.get(Slot::Aspect)) {
            continue;
        }
        *record = with_force(record, says);
    }
}

/// What a record says, with the force on top: a denial replaces, a doubt is added.
fn with_force(record: &Said, says: &Said) -> Said {
    let mut out = record.merge(says);
    for slot in [Slot::Polarity, Slot::Certainty] {
        out.record.set(slot, says.get(slot).or(record.get(slot)));
    }
    out
}
