//! `lexicon check` and `lexicon find`.

use super::args::{Args, CheckArgs, FindArgs};
use super::failure::Failure;
use super::files::{layers, render};
use super::note_commands::print;
use rectrix::diagnostic::Diagnostics;
use rectrix::knowledge::Knowledge;
use rectrix::lexicon::Lexicon;
use rectrix::lexicon::record::Slot;
use rectrix::proof;
use rectrix::rules::Rules;
use regex::RegexBuilder;
use std::fmt::Write;
use std::process::ExitCode;

/// Checks everything and says what it found.
pub fn check(args: &Args, check: &CheckArgs) -> Result<ExitCode, Failure> {
    let (knowledge, mut wrong) = Knowledge::read_with_remarks(&layers(&args.lexicon)?)?;
    if check.kinds {
        return print(&kinds(&knowledge.lexicon, &knowledge.rules));
    }
    wrong.0.extend(proof::check(&knowledge.reader(knowledge.lexicon.default_region())).0);
    let counts = format!(
        "{} terms, {} rules and phrases, {} accounts with {} forms: {}\n",
        knowledge.lexicon.vocabulary.terms.len(),
        knowledge.rules.rules.len(),
        knowledge.accounts.len(),
        knowledge.accounts.iter().map(|a| a.forms.len()).sum::<usize>(),
        verdict(&wrong)
    );
    anstream::eprint!("{}", render(&wrong));
    print(&counts)?;
    Ok(if wrong.has_errors() {
        ExitCode::from(2)
    } else if check.strict && !wrong.0.is_empty() {
        ExitCode::from(1)
    } else {
        ExitCode::SUCCESS
    })
}

fn verdict(wrong: &Diagnostics) -> String {
    match wrong.0.len() {
        0 => "all well".to_owned(),
        1 => "1 place needs a look".to_owned(),
        n => format!("{n} places need a look"),
    }
}

fn kinds(lexicon: &Lexicon, rules: &Rules) -> String {
    let mut out = String::from("Kinds of words\n");
    for (_, kind) in lexicon.kinds.iter() {
        let _ = writeln!(out, "  {:<14} {}", kind.name, kind.means);
    }
    out.push_str("\nSlots\n");
    for slot in Slot::ALL {
        let _ = writeln!(out, "  {}", slot.name());
    }
    out.push_str("\nPhrases\n");
    for rule in rules.rules.iter().filter(|r| r.is_phrase) {
        let _ = writeln!(out, "  {:<18} {}", rule.name, rule.means);
    }
    out
}

/// Finds terms.
pub fn find(args: &Args, find: &FindArgs) -> Result<ExitCode, Failure> {
    let (lexicon, _) = Knowledge::read_language(&layers(&args.lexicon)?)?;
    let pattern =
        RegexBuilder::new(&find.pattern).case_insensitive(true).build().map_err(|error| {
            Failure::Bad(
                format!("`{}` is no regular expression: {error}", find.pattern),
                "escape signs such as ( [ . with a backslash".to_owned(),
            )
        })?;
    if let Some(kind) = &find.kind
        && lexicon.kinds.find(kind).is_none()
    {
        return Err(Failure::Bad(
            format!("there is no kind `{kind}`"),
            "`rectrix lexicon check --kinds` lists them".to_owned(),
        ));
    }
    let mut out = String::new();
    let vocabulary = &lexicon.vocabulary;
    for (term, text) in vocabulary.terms.iter().zip(&vocabulary.texts) {
        let kind = &lexicon.kinds.get(term.kind).name;
        let id = lexicon.names.text(term.id);
        let wanted = find.kind.as_ref().is_none_or(|k| k == kind);
        let fits = pattern.is_match(id) || text.forms.iter().any(|f| pattern.is_match(f));
        if wanted && fits {
            let _ = writeln!(out, "{kind} {id}: {}", text.means);
            let forms = text.forms.join(", ");
            for line in textwrap::wrap(&forms, 74) {
                let _ = writeln!(out, "    {line}");
            }
        }
    }
    if out.is_empty() {
        anstream::eprintln!("nothing found for `{}`", find.pattern);
        return Ok(ExitCode::from(1));
    }
    print(&out)
}
