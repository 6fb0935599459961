//! Which bird of the note each match speaks of.
//!
//! Words that point to a bird ("the first", "the other one", "both") and words of sex and age that a
//! clause begins with ("the female …") turn the talk to that bird; it stays there until the next such
//! word. A bird that is spoken of again ("the adult …, the young bird …, the adult …") is found again
//! by what sets it apart.

use super::engine::Match;
use super::tokens::Token;
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::KindSet;
use crate::lexicon::names::Name;
use crate::lexicon::term::{Points, Term};
use crate::span::Span;

/// The number that stands for every bird of the note.
pub const ALL: u32 = 0;

/// The kinds that matter here, looked up once.
#[derive(Clone, Debug)]
pub struct Turns {
    pointing: KindSet,
    labels: KindSet,
    /// What may stand between the start of a clause and the word that turns the talk.
    small: KindSet,
    /// What a clause starts after.
    bounds: KindSet,
    /// After these a bird is only compared with, or left open.
    compared: KindSet,
}

impl Turns {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let kinds = |names: &[&str]| lexicon.kinds.set_of(names);
        Self {
            pointing: kinds(&["bird-word"]),
            labels: kinds(&["sexage"]),
            small: kinds(&["det", "sexage", "with"]) | lexicon.kinds.skipped,
            bounds: kinds(&[
                "comma",
                "stop",
                "semicolon",
                "dash",
                "newline",
                "exclamation",
                "question",
                "colon",
                "open",
                "close",
                "and",
                "but",
                "bird-word",
            ]),
            compared: kinds(&["or", "like", "than", "as", "slash", "negator", "compared"]),
        }
    }
}

/// A word that turns the talk to a bird.
struct Turn<'a> {
    span: Span,
    to: To<'a>,
}

impl Turn<'_> {
    /// Whether it points in one of these ways.
    fn points(&self, ways: &[Points]) -> bool {
        matches!(self.to, To::Pointed(points) if ways.contains(&points))
    }
}

enum To<'a> {
    Pointed(Points),
    /// Words of sex and age that stand side by side.
    Labelled(Vec<&'a Term>),
}

/// What is known of a bird: what sets it apart, as class and value.
type Labels = Vec<(Name, Name)>;

/// Gives each match its bird; back comes how many birds there are.
pub fn number(lexicon: &Lexicon, turns: &Turns, tokens: &[Token], matches: &mut [Match]) -> u32 {
    let mut found = turns_in(lexicon, turns, tokens);
    drop_lone_ones(&mut found);
    if found.is_empty() {
        return 1;
    }
    let mut talk = Talk { current: 1, birds: vec![Labels::new()], started: false, ones: 0 };
    // What is said before "one … the other …" is said of both.
    let any = |ways: &[Points]| found.iter().any(|t| t.points(ways));
    if found[0].points(&[Points::One, Points::First]) && any(&[Points::Second, Points::Other])
        || found.iter().filter(|t| t.points(&[Points::One])).count() > 1
    {
        talk.current = ALL;
    }
    let mut next = found.into_iter().peekable();
    for one in matches.iter_mut() {
        let said =
            |m: &Match| m.records.iter().filter_map(|r| r.parts.hull()).map(|h| h.start).min();
        let at = said(one).unwrap_or_else(|| tokens[one.start].span.start);
        while let Some(turn) = next.next_if(|t| t.span.start <= at) {
            talk.turn(&turn.to);
        }
        one.bird = talk.current;
        talk.started |= one.records.iter().any(|r| !r.parts.as_slice().is_empty());
    }
    for turn in next {
        talk.turn(&turn.to);
    }
    u32::try_from(talk.birds.len()).unwrap_or(1)
}

struct Talk {
    current: u32,
    birds: Vec<Labels>,
    /// Whether anything has been said yet.
    started: bool,
    ones: usize,
}

impl Talk {
    fn turn(&mut self, to: &To<'_>) {
        match to {
            To::Pointed(points) => self.point(*points),
            To::Labelled(terms) => self.label(terms),
        }
    }

    fn upto(&mut self, count: usize) -> u32 {
        while self.birds.len() < count {
            self.birds.push(Labels::new());
        }
        u32::try_from(count).unwrap_or(1)
    }

    fn point(&mut self, points: Points) {
        self.current = match points {
            Points::First => self.upto(1),
            Points::Second => self.upto(2),
            Points::Third => self.upto(3),
            Points::Both => ALL,
            Points::Other if self.birds.len() == 2 && self.current == 2 => 1,
            Points::Other => self.upto(2),
            Points::Another => self.upto(self.birds.len() + usize::from(self.started)),
            Points::One => {
                self.ones += 1;
                self.upto(self.ones)
            }
        };
    }

    fn label(&mut self, terms: &[&Term]) {
        let said: Labels = terms.iter().filter_map(|t| t.apart()).collect();
        if said.is_empty() {
            return;
        }
        let apart =
            |known: &Labels| known.iter().any(|k| said.iter().any(|s| s.0 == k.0 && s.1 != k.1));
        let shares = |known: &Labels| known.iter().any(|k| said.contains(k));
        let current = self.current.max(1) as usize - 1;
        let at = if self.current != ALL && !apart(&self.birds[current]) {
            current
        } else if let Some(known) = self.birds.iter().position(|b| !apart(b) && shares(b)) {
            known
        } else if let Some(blank) =
            self.birds.iter().position(|b| b.is_empty() && self.current == ALL)
        {
            blank
        } else {
            self.birds.push(Labels::new());
            self.birds.len() - 1
        };
        for one in said {
            if !self.birds[at].contains(&one) {
                self.birds[at].push(one);
            }
        }
        self.current = u32::try_from(at + 1).unwrap_or(1);
    }
}

fn turns_in<'a>(lexicon: &'a Lexicon, turns: &Turns, tokens: &[Token]) -> Vec<Turn<'a>> {
    let wanted = turns.pointing | turns.labels;
    let mut out: Vec<Turn<'a>> = Vec::new();
    for (at, token) in tokens.iter().enumerate() {
        if token.kinds & wanted == 0 || token.why.is_some_and(super::Why::leaves_out) {
            continue;
        }
        let senses = lexicon.vocabulary.senses(token.node).iter();
        let mut terms = senses
            .filter(|s| s.kind.bit() & token.kinds & wanted != 0)
            .map(|s| &lexicon.vocabulary.terms[s.term as usize]);
        let Some(term) = terms.find(|t| t.points().is_some() || t.apart().is_some()) else {
            continue;
        };
        if let Some(points) = term.points() {
            if points != Points::One || begins_clause(turns, tokens, at) {
                out.push(Turn { span: token.span, to: To::Pointed(points) });
            }
            continue;
        }
        match out.last_mut() {
            // "adult male": one bird.
            Some(Turn { span, to: To::Labelled(list) }) if side_by_side(tokens, *span, at) => {
                list.push(term);
                *span = span.join(token.span);
            }
            _ if begins_clause(turns, tokens, at) => {
                out.push(Turn { span: token.span, to: To::Labelled(vec![term]) });
            }
            _ => {}
        }
    }
    out
}

fn side_by_side(tokens: &[Token], span: Span, at: usize) -> bool {
    at > 0 && tokens[at - 1].span.end == span.end
}

/// Whether the clause begins with the word at `at`, small words not counted.
fn begins_clause(turns: &Turns, tokens: &[Token], at: usize) -> bool {
    for token in tokens[..at].iter().rev() {
        if token.kinds & turns.compared != 0 {
            return false;
        }
        if token.kinds & turns.bounds != 0 {
            return true;
        }
        if token.kinds & turns.small == 0 {
            return false;
        }
    }
    true
}

/// A lone "one" is the bird itself; only with "the other" or a second "one" does it tell birds apart.
fn drop_lone_ones(turns: &mut Vec<Turn<'_>>) {
    let ones = turns.iter().filter(|t| t.points(&[Points::One])).count();
    let more = [Points::Other, Points::Second, Points::Another, Points::Third];
    if ones < 2 && !turns.iter().any(|t| t.points(&more)) {
        turns.retain(|t| !t.points(&[Points::One]));
    }
    // "Both" of one bird are its wings, legs or sides.
    if turns.iter().all(|t| t.points(&[Points::Both])) {
        turns.clear();
    }
}
