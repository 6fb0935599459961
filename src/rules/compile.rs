//! From rules as written to rules that run: names become numbers, mistakes become diagnostics.

use super::examples::{Expectation, read_examples};
use super::program::{MOST_MARKS, Program};
use super::syntax::{Failure, SlotValue, Syntax, YieldSyntax, alternative};
use crate::diagnostic::{Diagnostic, Diagnostics, Source};
use crate::lexicon::entry::{Entry, Field};
use crate::lexicon::kinds::{KindSet, Kinds};
use crate::lexicon::names::{Name, Names};
use crate::lexicon::record::{Record, Slot};
use crate::lexicon::vocabulary::{Vocabulary, WordId};
use crate::span::Span;
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};

/// A compiled pattern.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Pattern {
    /// A word of one of these kinds.
    Kind(KindSet),
    /// A word of one of these kinds whose id is listed.
    KindOf(KindSet, Box<[Name]>),
    /// That word.
    Word(WordId),
    /// A phrase, by its place in [`Rules::rules`].
    Phrase(usize),
    /// One after the other.
    Seq(Box<[Pattern]>),
    /// The first that fits.
    Alt(Box<[Pattern]>),
    /// None or one.
    Opt(Box<Pattern>),
    /// Any number.
    Star(Box<Pattern>),
    /// One or more.
    Plus(Box<Pattern>),
    /// Does not follow.
    Not(Box<Pattern>),
    /// Follows.
    And(Box<Pattern>),
    /// The word before fits, or does not.
    Behind(bool, Box<Pattern>),
    /// The first place.
    #[default]
    Start,
    /// The end.
    End,
    /// Keep under a number.
    Capture(usize, Box<Pattern>),
}

/// A compiled yield.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub enum Yield {
    /// What was kept.
    Var(usize),
    /// What was kept, or one empty record.
    OrEmpty(usize),
    /// The last that was kept.
    Last(usize),
    /// All merged into one.
    Folded(usize),
    /// A record, with slots taken from what was kept, and the number that ends a range.
    Literal(Box<Record>, Box<[(Slot, usize, Slot)]>, Option<usize>),
    /// Both lists.
    Sum(Box<[Yield]>),
    /// Each with each.
    Product(Box<[Yield]>),
}

/// One way to say a rule.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Alternative {
    /// What must stand in the note. Not stored with the built-in tables: the program is.
    #[serde(skip)]
    pub pattern: Pattern,
    /// What it yields.
    pub yields: Yield,
}

/// A rule or a phrase.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Rule {
    /// Its name.
    pub name: String,
    /// What it is for.
    pub means: String,
    /// Whether only other rules use it.
    pub is_phrase: bool,
    /// The ways to say it.
    pub alternatives: Vec<Alternative>,
    /// What it must give, and where it must stay silent.
    #[serde(skip)]
    pub expectations: Vec<Expectation>,
    /// Its file.
    pub source: Source,
    /// Its head.
    pub span: Span,
}

/// Every rule and phrase.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Rules {
    /// All of them.
    pub rules: Vec<Rule>,
    /// The same, ready to run.
    pub program: Program,
}

struct Compiler<'a> {
    kinds: &'a Kinds,
    names: &'a mut Names,
    vocabulary: &'a mut Vocabulary,
    phrases: FxHashMap<String, usize>,
}

impl Rules {
    /// Compiles the `rule` and `phrase` entries.
    pub fn read(
        entries: &[Entry],
        kinds: &Kinds,
        names: &mut Names,
        vocabulary: &mut Vocabulary,
        wrong: &mut Diagnostics,
    ) -> Self {
        let heads: Vec<&Entry> =
            entries.iter().filter(|e| e.kind == "rule" || e.kind == "phrase").collect();
        let mut compiler = Compiler { kinds, names, vocabulary, phrases: FxHashMap::default() };
        for (i, entry) in heads.iter().enumerate() {
            if kinds.find(&entry.id).is_some() {
                wrong.push(name_clash(entry, "a kind of word"));
            }
            if compiler.phrases.insert(entry.id.clone(), i).is_some() {
                wrong.push(name_clash(entry, "another rule or phrase"));
            }
        }
        let rules: Vec<Rule> = heads.iter().map(|e| compiler.rule(e, wrong)).collect();
        let mut out = Self { rules, ..Self::default() };
        if wrong.has_errors() {
            return out;
        }
        out.check_starts(wrong);
        match Program::of(&out.rules) {
            Some(program) => out.program = program,
            None => wrong.push(too_many_words(heads[0])),
        }
        out
    }

    /// Refuses a phrase that starts with itself.
    fn check_starts(&self, wrong: &mut Diagnostics) {
        for (i, rule) in self.rules.iter().enumerate() {
            let starts = |a: &Alternative| self.may_be_empty(&a.pattern, &mut vec![i]).err();
            if let Some(at) = rule.alternatives.iter().find_map(starts) {
                wrong.push(
                    Diagnostic::error(
                        "starts-with-itself",
                        &rule.source,
                        rule.span,
                        format!(
                            "`{}` starts with itself, by way of `{}`",
                            rule.name, self.rules[at].name
                        ),
                    )
                    .hint("let some word come first"),
                );
                return;
            }
        }
    }

    /// Whether `pattern` can take nothing; the phrase that starts with itself, if one does.
    fn may_be_empty(&self, pattern: &Pattern, path: &mut Vec<usize>) -> Result<bool, usize> {
        Ok(match pattern {
            Pattern::Kind(_) | Pattern::KindOf(..) | Pattern::Word(_) => false,
            Pattern::Phrase(p) => {
                if path.contains(p) {
                    return Err(*p);
                }
                path.push(*p);
                let mut empty = false;
                for alternative in &self.rules[*p].alternatives {
                    empty |= self.may_be_empty(&alternative.pattern, path)?;
                }
                path.pop();
                empty
            }
            Pattern::Seq(items) => {
                for item in items {
                    if !self.may_be_empty(item, path)? {
                        return Ok(false);
                    }
                }
                true
            }
            Pattern::Alt(items) => {
                let mut empty = false;
                for item in items {
                    empty |= self.may_be_empty(item, path)?;
                }
                empty
            }
            Pattern::Opt(inner) | Pattern::Star(inner) => {
                self.may_be_empty(inner, path)?;
                true
            }
            Pattern::Plus(inner) | Pattern::Capture(_, inner) => self.may_be_empty(inner, path)?,
            Pattern::Not(_)
            | Pattern::And(_)
            | Pattern::Behind(..)
            | Pattern::Start
            | Pattern::End => true,
        })
    }
}

fn too_many_words(entry: &Entry) -> Diagnostic {
    Diagnostic::error(
        "too-many-words",
        &entry.source,
        entry.span,
        format!("the rules ask for more than {MOST_MARKS} different words and lists of ids"),
    )
    .hint("make a kind of words that are asked for together")
}

fn name_clash(entry: &Entry, with: &str) -> Diagnostic {
    Diagnostic::error(
        "name-twice",
        &entry.source,
        entry.span,
        format!("`{}` is also the name of {with}", entry.id),
    )
    .hint("choose another name")
}

impl Compiler<'_> {
    fn rule(&mut self, entry: &Entry, wrong: &mut Diagnostics) -> Rule {
        let mut rule = Rule {
            name: entry.id.clone(),
            means: entry.get("means").unwrap_or_default().to_owned(),
            is_phrase: entry.kind == "phrase",
            alternatives: Vec::new(),
            expectations: Vec::new(),
            source: entry.source.clone(),
            span: entry.span,
        };
        for field in &entry.fields {
            match field.key.as_str() {
                "|" => match self.alternative(entry, field) {
                    Ok(alternative) => rule.alternatives.push(alternative),
                    Err(diagnostic) => wrong.push(*diagnostic),
                },
                "means" | "=>" | "=/" => {}
                other => wrong.push(
                    Diagnostic::error(
                        "unknown-key",
                        &entry.source,
                        field.span,
                        format!("a rule has no line `{other}`"),
                    )
                    .hint("known: `means`, `|` a pattern, `=>` an example, `=/` a counter-example"),
                ),
            }
        }
        read_examples(entry, &mut rule.expectations, wrong);
        if rule.alternatives.is_empty() {
            wrong.push(missing(entry, "no pattern", "| $a:area -> $a"));
        }
        if !rule.is_phrase {
            if !rule.expectations.iter().any(|e| matches!(e, Expectation::Gives { .. })) {
                wrong.push(missing(entry, "no example", "=> \"a note\" : area aspect value"));
            }
            if !rule.expectations.iter().any(|e| matches!(e, Expectation::Silent { .. })) {
                wrong.push(missing(entry, "no counter-example", "=/ \"a note it must not touch\""));
            }
        }
        if rule.means.is_empty() {
            wrong.push(missing(entry, "no meaning", "means what it is for"));
        }
        rule
    }

    fn alternative(
        &mut self,
        entry: &Entry,
        field: &Field,
    ) -> Result<Alternative, Box<Diagnostic>> {
        let (syntax, yields) = alternative(&field.value).map_err(|f| failed(entry, field, &f))?;
        let mut captures = Vec::new();
        let here = Here { entry, field };
        let pattern = self.pattern(&syntax, &mut captures, &here)?;
        let yields = self.yields(&yields, &captures, &here)?;
        Ok(Alternative { pattern, yields })
    }

    fn pattern(
        &mut self,
        syntax: &Syntax,
        captures: &mut Vec<String>,
        here: &Here<'_>,
    ) -> Result<Pattern, Box<Diagnostic>> {
        let mut boxed = |inner: &Syntax| self.pattern(inner, captures, here).map(Box::new);
        Ok(match syntax {
            Syntax::Name(name, ids, left) => return self.named(name, ids, *left, here),
            Syntax::Word(text) => Pattern::Word(self.vocabulary.intern(&text.to_lowercase())),
            Syntax::Seq(items) => Pattern::Seq(
                items.iter().map(|i| self.pattern(i, captures, here)).collect::<Result<_, _>>()?,
            ),
            Syntax::Alt(items) => Pattern::Alt(
                items.iter().map(|i| self.pattern(i, captures, here)).collect::<Result<_, _>>()?,
            ),
            Syntax::Opt(inner) => Pattern::Opt(boxed(inner)?),
            Syntax::Star(inner) => Pattern::Star(boxed(inner)?),
            Syntax::Plus(inner) => Pattern::Plus(boxed(inner)?),
            Syntax::Not(inner) => Pattern::Not(boxed(inner)?),
            Syntax::And(inner) => Pattern::And(boxed(inner)?),
            Syntax::Behind(yes, inner) => Pattern::Behind(*yes, boxed(inner)?),
            Syntax::Start => Pattern::Start,
            Syntax::End => Pattern::End,
            Syntax::Capture(name, inner) => {
                let at = captures.iter().position(|c| c == name).unwrap_or_else(|| {
                    captures.push(name.clone());
                    captures.len() - 1
                });
                Pattern::Capture(at, Box::new(self.pattern(inner, captures, here)?))
            }
        })
    }

    fn named(
        &mut self,
        name: &str,
        ids: &[String],
        left: usize,
        here: &Here<'_>,
    ) -> Result<Pattern, Box<Diagnostic>> {
        if let Some(&phrase) = self.phrases.get(name) {
            return Ok(Pattern::Phrase(phrase));
        }
        let Some(kind) = self.kinds.find(name) else {
            return Err(here.unknown("unknown-name", left, &format!("no kind or phrase `{name}`")));
        };
        if ids.is_empty() {
            return Ok(Pattern::Kind(kind.bit()));
        }
        let names = ids.iter().map(|id| self.names.intern(id)).collect();
        Ok(Pattern::KindOf(kind.bit(), names))
    }

    fn yields(
        &mut self,
        syntax: &YieldSyntax,
        captures: &[String],
        here: &Here<'_>,
    ) -> Result<Yield, Box<Diagnostic>> {
        let find = |name: &str, left: usize| {
            captures.iter().position(|c| c == name).ok_or_else(|| {
                here.unknown("unknown-name", left, &format!("nothing was kept as `${name}`"))
            })
        };
        Ok(match syntax {
            YieldSyntax::Var(name, left) => Yield::Var(find(name, *left)?),
            YieldSyntax::OrEmpty(name, left) => Yield::OrEmpty(find(name, *left)?),
            YieldSyntax::Last(name, left) => Yield::Last(find(name, *left)?),
            YieldSyntax::Folded(name, left) => Yield::Folded(find(name, *left)?),
            YieldSyntax::Sum(items) => Yield::Sum(
                items.iter().map(|i| self.yields(i, captures, here)).collect::<Result<_, _>>()?,
            ),
            YieldSyntax::Product(items) => Yield::Product(
                items.iter().map(|i| self.yields(i, captures, here)).collect::<Result<_, _>>()?,
            ),
            YieldSyntax::Literal(slots) => {
                let mut record = Record::default();
                let mut taken = Vec::new();
                let mut upper = None;
                for (slot, value, left) in slots {
                    if let ("upper", SlotValue::Of(name, _)) = (slot.as_str(), value) {
                        upper = Some(find(name, *left)?);
                        continue;
                    }
                    let unknown = |name: &str| {
                        here.unknown("unknown-slot", *left, &format!("there is no slot `{name}`"))
                    };
                    let to = Slot::find(slot).ok_or_else(|| unknown(slot))?;
                    match value {
                        SlotValue::Id(id) => record.set(to, self.names.intern(id)),
                        SlotValue::Of(name, from) => {
                            let from = Slot::find(from).ok_or_else(|| unknown(from))?;
                            taken.push((to, find(name, *left)?, from));
                        }
                    }
                }
                Yield::Literal(Box::new(record), taken.into(), upper)
            }
        })
    }
}

/// The line a diagnostic is about.
struct Here<'a> {
    entry: &'a Entry,
    field: &'a Field,
}

impl Here<'_> {
    /// A diagnostic at the place where `left` bytes of the line were left.
    fn unknown(&self, code: &'static str, left: usize, message: &str) -> Box<Diagnostic> {
        let start = self.field.span.end.saturating_sub(left);
        let text = &self.entry.source.text[start..self.field.span.end];
        let len = text.find(|c: char| !(c.is_alphanumeric() || "-_$".contains(c)));
        let span = Span::new(start, start + len.unwrap_or(text.len()).max(1));
        Box::new(
            Diagnostic::error(code, &self.entry.source, span, message)
                .hint("`rectrix lexicon check` lists kinds, phrases and slots with --kinds"),
        )
    }
}

fn failed(entry: &Entry, field: &Field, failure: &Failure<'_>) -> Box<Diagnostic> {
    let start = field.span.end.saturating_sub(failure.rest.len());
    let found = failure.rest.chars().next();
    let end = start + found.map_or(0, char::len_utf8);
    let expected = failure.expected.unwrap_or("something else");
    let found = found.map_or("the end of the line".to_owned(), |c| format!("`{c}`"));
    Box::new(
        Diagnostic::error(
            "bad-rule",
            &entry.source,
            Span::new(start, end.max(start)),
            format!("expected {expected}, found {found}"),
        )
        .hint("a pattern line is `| pattern -> yield`, such as `| $q:colour $a:area -> $a * $q`"),
    )
}

fn missing(entry: &Entry, what: &str, line: &str) -> Diagnostic {
    Diagnostic::error(
        "rule-incomplete",
        &entry.source,
        entry.span,
        format!("`{}` has {what}", entry.id),
    )
    .hint(format!("add a line such as `{line}`"))
}
