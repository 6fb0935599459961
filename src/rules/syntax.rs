//! Reading rule files: patterns and yields as written.
//!
//! | written | meaning |
//! |---|---|
//! | `colour` | a word of that kind, or the phrase of that name |
//! | `area[wing\|tail]` | a word of that kind with one of these ids |
//! | `"with"` | that word |
//! | `x?` `x*` `x+` | none or one, any number, one or more; never gives back what it took |
//! | `(x y \| z)` | the first that fits |
//! | `!x` `&x` | x does not follow, x follows |
//! | `!<x` `&<x` | the word before is not x, is x |
//! | `start` `end` | the edge of the note |
//! | `$name:x` | keep what x says under that name |
//!
//! | yield | meaning |
//! |---|---|
//! | `$a * $q` | each with each, the left one's slots kept |
//! | `$a + $q` | both lists |
//! | `$t?` | the records, or one empty record where there are none |
//! | `$t!` | the last of the records |
//! | `[$t]` | all merged into one record, empty where there are none |
//! | `{aspect=size, extent=$m.value}` | a record with these slots |
//! | `{upper=$n.number}` | a record that ends a range at the number kept |

use nom::branch::alt;
use nom::bytes::complete::{tag, take_while, take_while1};
use nom::character::complete::{char, multispace0, satisfy};
use nom::combinator::{cut, map, opt, recognize};
use nom::error::{ContextError, ErrorKind, ParseError, context};
use nom::multi::{many0, many1, separated_list0, separated_list1};
use nom::sequence::{delimited, preceded, separated_pair};
use nom::{IResult, Parser};

/// A pattern as written.
#[derive(Clone, Debug, PartialEq)]
pub enum Syntax {
    /// A kind or a phrase, perhaps limited to some ids; with the rest of the text at that place.
    Name(String, Vec<String>, usize),
    /// A word.
    Word(String),
    /// One after the other.
    Seq(Vec<Syntax>),
    /// The first that fits.
    Alt(Vec<Syntax>),
    /// None or one.
    Opt(Box<Syntax>),
    /// Any number.
    Star(Box<Syntax>),
    /// One or more.
    Plus(Box<Syntax>),
    /// Does not follow.
    Not(Box<Syntax>),
    /// Follows.
    And(Box<Syntax>),
    /// The word before is (or is not) of that name.
    Behind(bool, Box<Syntax>),
    /// The note's first place.
    Start,
    /// The note's end.
    End,
    /// Keep under a name.
    Capture(String, Box<Syntax>),
}

/// A yield as written.
#[derive(Clone, Debug, PartialEq)]
pub enum YieldSyntax {
    /// What was kept under a name.
    Var(String, usize),
    /// The same, or one empty record.
    OrEmpty(String, usize),
    /// The last record kept.
    Last(String, usize),
    /// Merged into one record.
    Folded(String, usize),
    /// A record of slots.
    Literal(Vec<(String, SlotValue, usize)>),
    /// Both lists.
    Sum(Vec<YieldSyntax>),
    /// Each with each.
    Product(Vec<YieldSyntax>),
}

/// What a slot of a literal record is set to.
#[derive(Clone, Debug, PartialEq)]
pub enum SlotValue {
    /// An id.
    Id(String),
    /// The slot of the first record kept under a name.
    Of(String, String),
}

/// Where reading failed and what was expected there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Failure<'a> {
    /// The text that was left.
    pub rest: &'a str,
    /// What would have been right.
    pub expected: Option<&'static str>,
}

impl<'a> ParseError<&'a str> for Failure<'a> {
    fn from_error_kind(rest: &'a str, _: ErrorKind) -> Self {
        Self { rest, expected: None }
    }

    fn append(_: &'a str, _: ErrorKind, other: Self) -> Self {
        other
    }

    /// Of two failures the one that got further speaks.
    fn or(self, other: Self) -> Self {
        if other.rest.len() < self.rest.len() { other } else { self }
    }
}

impl<'a> ContextError<&'a str> for Failure<'a> {
    fn add_context(_: &'a str, what: &'static str, other: Self) -> Self {
        Self { expected: other.expected.or(Some(what)), ..other }
    }
}

type Parsed<'a, T> = IResult<&'a str, T, Failure<'a>>;

fn word_of(input: &str) -> Parsed<'_, &str> {
    let first = satisfy(|c| c.is_ascii_alphanumeric());
    let rest = take_while(|c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_');
    recognize((first, rest)).parse(input)
}

fn spaced<'a, T>(
    inner: impl Parser<&'a str, Output = T, Error = Failure<'a>>,
) -> impl Parser<&'a str, Output = T, Error = Failure<'a>> {
    delimited(multispace0, inner, multispace0)
}

/// Reads `pattern -> yield`; gives both, or where and what was expected.
pub fn alternative(input: &str) -> Result<(Syntax, YieldSyntax), Failure<'_>> {
    let arrow = context("`->` and what the pattern yields", cut(spaced(tag("->"))));
    let whole = (sequence, arrow, cut(sum));
    match (whole, multispace0).parse(input) {
        Ok(("", ((pattern, _, yields), _))) => Ok((pattern, yields)),
        Ok((rest, _)) => Err(Failure { rest, expected: Some("the end of the line") }),
        Err(nom::Err::Error(e) | nom::Err::Failure(e)) => Err(e),
        Err(nom::Err::Incomplete(_)) => Err(Failure { rest: "", expected: None }),
    }
}

fn sequence(input: &str) -> Parsed<'_, Syntax> {
    let items = context("a kind, a phrase, a \"word\", `$name:` or `(`", many1(spaced(item)));
    map(items, |mut items| if items.len() == 1 { items.remove(0) } else { Syntax::Seq(items) })
        .parse(input)
}

fn choice(input: &str) -> Parsed<'_, Syntax> {
    map(separated_list1(char('|'), sequence), |mut ways| {
        if ways.len() == 1 { ways.remove(0) } else { Syntax::Alt(ways) }
    })
    .parse(input)
}

fn item(input: &str) -> Parsed<'_, Syntax> {
    alt((
        map(preceded(tag("!<"), cut(primary)), |x| Syntax::Behind(false, Box::new(x))),
        map(preceded(tag("&<"), cut(primary)), |x| Syntax::Behind(true, Box::new(x))),
        map(preceded(char('!'), cut(repeated)), |x| Syntax::Not(Box::new(x))),
        map(preceded(char('&'), cut(repeated)), |x| Syntax::And(Box::new(x))),
        captured,
        repeated,
    ))
    .parse(input)
}

fn captured(input: &str) -> Parsed<'_, Syntax> {
    let name = preceded(char('$'), cut(context("a name after `$`", word_of)));
    let colon = cut(context("`:` after the name", char(':')));
    map((name, colon, cut(repeated)), |(name, _, inner)| {
        Syntax::Capture(name.to_owned(), Box::new(inner))
    })
    .parse(input)
}

fn repeated(input: &str) -> Parsed<'_, Syntax> {
    let (rest, inner) = primary(input)?;
    let (rest, suffix) = opt(alt((char('?'), char('*'), char('+')))).parse(rest)?;
    let boxed = Box::new(inner);
    Ok((
        rest,
        match suffix {
            Some('?') => Syntax::Opt(boxed),
            Some('*') => Syntax::Star(boxed),
            Some(_) => Syntax::Plus(boxed),
            None => *boxed,
        },
    ))
}

fn primary(input: &str) -> Parsed<'_, Syntax> {
    let group =
        delimited(char('('), cut(choice), cut(context("`)`", preceded(multispace0, char(')')))));
    let quoted =
        delimited(char('"'), take_while(|c| c != '"'), cut(context("a closing `\"`", char('"'))));
    alt((group, map(quoted, |w: &str| Syntax::Word(w.to_owned())), named)).parse(input)
}

fn named(input: &str) -> Parsed<'_, Syntax> {
    let left = input.len();
    let (rest, name) = word_of(input)?;
    let ids = delimited(
        char('['),
        cut(separated_list1(char('|'), spaced(word_of))),
        cut(context("`]`", char(']'))),
    );
    let (rest, ids) = opt(ids).parse(rest)?;
    let ids = ids.unwrap_or_default().into_iter().map(str::to_owned).collect();
    Ok((
        rest,
        match name {
            "start" => Syntax::Start,
            "end" => Syntax::End,
            _ => Syntax::Name(name.to_owned(), ids, left),
        },
    ))
}

fn sum(input: &str) -> Parsed<'_, YieldSyntax> {
    map(separated_list1(spaced(char('+')), product), |mut parts| {
        if parts.len() == 1 { parts.remove(0) } else { YieldSyntax::Sum(parts) }
    })
    .parse(input)
}

fn product(input: &str) -> Parsed<'_, YieldSyntax> {
    map(separated_list1(spaced(char('*')), atom), |mut parts| {
        if parts.len() == 1 { parts.remove(0) } else { YieldSyntax::Product(parts) }
    })
    .parse(input)
}

fn atom(input: &str) -> Parsed<'_, YieldSyntax> {
    let left = input.len();
    let name = || preceded(char('$'), cut(context("a name after `$`", word_of)));
    let folded = delimited(char('['), cut(name()), cut(context("`]`", char(']'))));
    let group = delimited(char('('), cut(spaced(sum)), cut(context("`)`", char(')'))));
    context(
        "`$name`, `[$name]`, `{slot=value}` or `(`",
        alt((
            map(folded, move |n: &str| YieldSyntax::Folded(n.to_owned(), left)),
            map((name(), opt(satisfy(|c| c == '?' || c == '!'))), move |(n, q)| match q {
                Some('!') => YieldSyntax::Last(n.to_owned(), left),
                Some(_) => YieldSyntax::OrEmpty(n.to_owned(), left),
                None => YieldSyntax::Var(n.to_owned(), left),
            }),
            literal,
            group,
        )),
    )
    .parse(input)
}

fn literal(input: &str) -> Parsed<'_, YieldSyntax> {
    map(
        delimited(
            char('{'),
            cut(separated_list0(spaced(char(',')), preceded(multispace0, assignment))),
            cut(context("`}`", preceded(multispace0, char('}')))),
        ),
        YieldSyntax::Literal,
    )
    .parse(input)
}

fn assignment(input: &str) -> Parsed<'_, (String, SlotValue, usize)> {
    let of = map(
        separated_pair(preceded(char('$'), word_of), char('.'), word_of),
        |(name, slot): (&str, &str)| SlotValue::Of(name.to_owned(), slot.to_owned()),
    );
    let id = map(word_of, |id: &str| SlotValue::Id(id.to_owned()));
    let left = input.len();
    let equals = context("`=`", spaced(char('=')));
    let (rest, (slot, value)) = separated_pair(word_of, equals, alt((of, id))).parse(input)?;
    Ok((rest, (slot.to_owned(), value, left)))
}

/// One expected trait of an example: `area aspect value`, then `absent`, `unseen`, `hedged`.
pub type TraitWords<'a> = Vec<&'a str>;

/// Reads an example: a note in quotes and, after `:`, the expected traits parted by `;`.
pub fn example(input: &str) -> Result<(String, Vec<TraitWords<'_>>), Failure<'_>> {
    let note = delimited(
        context("a note in quotes", char('"')),
        take_while(|c| c != '"'),
        context("a closing `\"`", char('"')),
    );
    let words = many0(spaced(take_while1(|c: char| !c.is_whitespace() && c != ';')));
    let traits = separated_list1(char(';'), words);
    let whole = (spaced(note), opt(preceded(char(':'), traits)));
    match (whole, multispace0).parse(input) {
        Ok(("", ((note, traits), _))) => Ok((
            note.to_owned(),
            traits.unwrap_or_default().into_iter().filter(|t| !t.is_empty()).collect(),
        )),
        Ok((rest, _)) => Err(Failure { rest, expected: Some("`:` and the expected traits") }),
        Err(nom::Err::Error(e) | nom::Err::Failure(e)) => Err(e),
        Err(nom::Err::Incomplete(_)) => Err(Failure { rest: "", expected: None }),
    }
}
