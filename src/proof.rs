//! Running the examples that rules carry.

use crate::diagnostic::{Diagnostic, Diagnostics};
use crate::reading::{Reader, Reading};
use crate::rules::examples::{Expectation, Expected};
use crate::traits::{Certainty, Trait};

/// A trait as examples state it.
pub fn stated(reader: &Reader<'_>, one: &Trait) -> Expected {
    let names = &reader.lexicon.names;
    Expected {
        bird: one.bird,
        area: names.text(one.area).to_owned(),
        aspect: names.text(one.aspect).to_owned(),
        value: one.value.text(reader.lexicon).to_owned(),
        polarity: one.polarity.text().to_owned(),
        hedged: one.certainty == Certainty::Hedged,
    }
}

/// The traits of a reading as examples state them, in order.
pub fn stated_all(reader: &Reader<'_>, reading: &Reading) -> Vec<Expected> {
    let mut out: Vec<Expected> = reading.traits.iter().map(|t| stated(reader, t)).collect();
    out.sort();
    out.dedup();
    out
}

/// Runs every example and counter-example; whatever fails comes back, all of it.
pub fn check(reader: &Reader<'_>) -> Diagnostics {
    let mut wrong = Diagnostics::default();
    for (index, rule) in reader.rules.rules.iter().enumerate() {
        for expectation in &rule.expectations {
            match expectation {
                Expectation::Gives { note, traits, span } => {
                    let reading = reader.read(note);
                    let found = stated_all(reader, &reading);
                    let mut expected = traits.clone();
                    expected.sort();
                    let fired = rule.is_phrase || reading.matches.iter().any(|m| m.rule == index);
                    if found != expected {
                        let message = format!(
                            "`{}` gives {} for \"{note}\", not {}",
                            rule.name,
                            listed(&found),
                            listed(&expected)
                        );
                        wrong.push(Diagnostic::error(
                            "example-fails",
                            &rule.source,
                            *span,
                            message,
                        ));
                    } else if !fired {
                        let message = format!("`{}` takes no part in \"{note}\"", rule.name);
                        wrong.push(
                            Diagnostic::error("example-elsewhere", &rule.source, *span, message)
                                .hint("give an example that only this rule can read"),
                        );
                    }
                }
                Expectation::Silent { note, span } => {
                    if reader.read(note).matches.iter().any(|m| m.rule == index) {
                        let message = format!("`{}` fires in \"{note}\"", rule.name);
                        wrong.push(Diagnostic::error("not-silent", &rule.source, *span, message));
                    }
                }
            }
        }
    }
    wrong
}

/// Traits on one line.
pub fn listed(traits: &[Expected]) -> String {
    if traits.is_empty() {
        return "nothing".to_owned();
    }
    traits.iter().map(shown).collect::<Vec<_>>().join("; ")
}

/// A trait as examples write it.
pub fn shown(one: &Expected) -> String {
    let bird = if one.bird == 1 { String::new() } else { format!("{}: ", one.bird) };
    let mut out = format!("{bird}{} {} {}", one.area, one.aspect, one.value);
    if one.polarity != "present" {
        out.push(' ');
        out.push_str(&one.polarity);
    }
    if one.hedged {
        out.push_str(" hedged");
    }
    out
}
