//! How each trait came about: the rule, the phrases within it, the words they stand on.

use crate::lexicon::Lexicon;
use crate::reading::{Reader, Reading};
use crate::span::Span;
use std::fmt::Write;

/// The derivation of every match of a reading made with a trace, as an indented tree.
pub fn explain(reader: &Reader<'_>, note: &str, reading: &Reading) -> String {
    let lexicon = reader.lexicon;
    let mut out = String::new();
    for one in &reading.matches {
        let span = hull(reading, one.start, one.end);
        let traits: Vec<_> = reading
            .traits
            .iter()
            .filter(|t| t.rule == one.rule && t.parts.as_slice().iter().any(|p| inside(*p, span)))
            .collect();
        let _ = writeln!(out, "\"{}\"", span.of(note).trim());
        for one in &traits {
            let _ = writeln!(
                out,
                "  gives {} {} {} ({}, {}) from \"{}\"",
                lexicon.names.text(one.area),
                lexicon.names.text(one.aspect),
                one.value.text(lexicon),
                one.polarity.text(),
                one.certainty.text(),
                one.as_written(note)
            );
            if one.written_area != one.area {
                let _ = writeln!(
                    out,
                    "    {} is a standard part of \"{}\"",
                    lexicon.names.text(one.area),
                    lexicon.names.text(one.written_area)
                );
            }
        }
        if traits.is_empty() {
            out.push_str("  gives no mark\n");
        }
        for step in &one.steps {
            let rule = &reader.rules.rules[step.rule];
            let what = if rule.is_phrase { "phrase" } else { "rule" };
            let pad = "  ".repeat(step.depth + 1);
            let text = step.span.of(note);
            let _ = writeln!(out, "{pad}{what} {} \"{text}\"", rule.name);
            if !rule.is_phrase {
                let (line, _) = rule.source.line_column(rule.span.start);
                let _ = writeln!(out, "{pad}  {} ({}:{line})", rule.means, rule.source.name);
            }
        }
        words(&mut out, lexicon, note, reading, one.start, one.end);
        out.push('\n');
    }
    for span in reading.unplaced() {
        let _ = writeln!(out, "\"{}\"\n  not placed\n", span.of(note));
    }
    out
}

/// The words of a match with every reading they have.
fn words(
    out: &mut String,
    lexicon: &Lexicon,
    note: &str,
    reading: &Reading,
    start: usize,
    end: usize,
) {
    for token in &reading.tokens[start..end] {
        let kinds = lexicon.kinds.names_of(token.kinds).join(" or ");
        let why = token.why.map_or(String::new(), |why| format!(", mended ({})", why.text()));
        let _ = writeln!(out, "  word \"{}\": {kinds}{why}", token.span.of(note));
    }
}

fn hull(reading: &Reading, start: usize, end: usize) -> Span {
    reading.tokens[start..end].iter().map(|t| t.span).reduce(Span::join).unwrap_or_default()
}

fn inside(part: Span, span: Span) -> bool {
    span.start <= part.start && part.end <= span.end
}
