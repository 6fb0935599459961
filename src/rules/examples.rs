//! The examples that each rule carries, and how traits are written in them.

use super::syntax::{TraitWords, example};
use crate::diagnostic::{Diagnostic, Diagnostics};
use crate::lexicon::entry::Entry;
use crate::span::Span;

/// A trait as an example states it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Expected {
    /// Which bird of the note, from 1.
    pub bird: u32,
    /// The area's id.
    pub area: String,
    /// The aspect.
    pub aspect: String,
    /// The value.
    pub value: String,
    /// `present`, `absent` or `unseen`.
    pub polarity: String,
    /// Whether it is hedged; none where the example does not say.
    pub hedged: bool,
}

/// One line of a rule: what must come out, or that the rule must stay out.
#[derive(Clone, Debug)]
pub enum Expectation {
    /// The note must give exactly these traits.
    Gives {
        /// The note.
        note: String,
        /// The traits.
        traits: Vec<Expected>,
        /// Where the line stands.
        span: Span,
    },
    /// The rule must not fire in the note.
    Silent {
        /// The note.
        note: String,
        /// Where the line stands.
        span: Span,
    },
}

/// Reads the `=>` and `=/` lines of a rule.
pub fn read_examples(entry: &Entry, out: &mut Vec<Expectation>, wrong: &mut Diagnostics) {
    for field in entry.fields.iter().filter(|f| f.key == "=>" || f.key == "=/") {
        let bad = |message: String| {
            Diagnostic::error("bad-example", &entry.source, field.span, message)
                .hint("write `=> \"a note\" : area aspect value; area aspect value absent`")
        };
        match example(&field.value) {
            Err(failure) => {
                let expected = failure.expected.unwrap_or("something else");
                wrong.push(bad(format!("expected {expected} before `{}`", failure.rest)));
            }
            Ok((note, _)) if field.key == "=/" => {
                out.push(Expectation::Silent { note, span: field.span });
            }
            Ok((note, found)) => {
                match found.iter().map(expected_trait).collect::<Result<Vec<_>, _>>() {
                    Ok(traits) if !traits.is_empty() => {
                        out.push(Expectation::Gives { note, traits, span: field.span });
                    }
                    Ok(_) => wrong.push(bad("an example without a trait".to_owned())),
                    Err(message) => wrong.push(bad(message)),
                }
            }
        }
    }
}

/// Reads `[2:] area aspect value [absent|unseen] [hedged]`; the number is that of the bird.
pub fn expected_trait(words: &TraitWords<'_>) -> Result<Expected, String> {
    let (bird, words) = match words.split_first() {
        Some((first, rest)) if first.ends_with(':') => {
            let number = first.trim_end_matches(':').parse();
            (number.map_err(|_| format!("`{first}` is no number of a bird"))?, rest)
        }
        _ => (1, words.as_slice()),
    };
    let [area, aspect, value, rest @ ..] = words else {
        return Err(format!("a trait is `area aspect value`, found `{}`", words.join(" ")));
    };
    let mut out = Expected {
        bird,
        area: (*area).to_owned(),
        aspect: (*aspect).to_owned(),
        value: (*value).to_owned(),
        polarity: "present".to_owned(),
        hedged: false,
    };
    for word in rest {
        match *word {
            "absent" | "unseen" => (*word).clone_into(&mut out.polarity),
            "hedged" => out.hedged = true,
            other => return Err(format!("`{other}` is none of absent, unseen, hedged")),
        }
    }
    Ok(out)
}
