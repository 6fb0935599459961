//! The published shape of a comparison of look-alikes, and its view in the terminal.

use super::text::{Layout, heading, wrapped};
use crate::accounts::Account;
use crate::knowledge::Knowledge;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::matching::Matcher;
use crate::matching::compare::{Comparer, Difference};
use crate::matching::question::Question;
use crate::traits::{Polarity, Trait};
use comfy_table::{ContentArrangement, Table, presets};
use schemars::JsonSchema;
use serde::Serialize;
use std::fmt::Write;

/// How much likelier a noted mark must be of a species than of another to point to it.
const POINTS: f32 = 1.5;

/// Species set side by side.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Comparison {
    /// The species, in the order in which they were asked for.
    pub species: Vec<ComparedSpecies>,
    /// Published measures, each with a value for each species.
    pub measures: Vec<ComparedMeasure>,
    /// Marks in which they differ, in topographical order.
    pub differences: Vec<ComparedMark>,
}

/// A species of a comparison.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct ComparedSpecies {
    /// English name.
    pub species: String,
    /// Scientific name.
    pub scientific: String,
    /// The form that is compared, as its account labels it.
    pub form: String,
}

/// A measure of a comparison.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ComparedMeasure {
    /// What is measured: `mass`, `bill`, ...
    pub name: String,
    /// `g` or `mm`; `times` for a proportion against the first species.
    pub unit: String,
    /// One value for each species; null where it is not published.
    pub values: Vec<Option<f32>>,
}

/// A mark of a comparison.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ComparedMark {
    /// The areas, for those that differ in the same way.
    pub areas: Vec<String>,
    /// The property; `mark` for markings that only some birds show.
    pub aspect: String,
    /// What each species shows; empty where its account does not say.
    pub shown: Vec<Vec<String>>,
    /// What the note says of it, in its own words; null if nothing.
    pub noted: Option<String>,
    /// The species to which the note points by this mark.
    pub favours: Vec<String>,
}

/// Compares species by their places among the accounts; with `form` those forms whose label holds that
/// word, else the first of each account. A note tells which of the marks it records.
pub fn compare(
    knowledge: &Knowledge,
    matcher: &Matcher<'_>,
    species: &[usize],
    form: Option<&str>,
    note: Option<(&str, &[Trait])>,
) -> Comparison {
    let accounts: Vec<&Account> = species.iter().map(|&s| &knowledge.accounts[s]).collect();
    let chosen: Vec<usize> = accounts.iter().map(|a| form_of(a, form)).collect();
    let traits: Vec<Vec<&Trait>> = accounts
        .iter()
        .zip(&chosen)
        .map(|(a, &f)| knowledge.accounts.traits_of(a, &a.forms[f]).collect())
        .collect();
    let lexicon = &knowledge.lexicon;
    let comparer = Comparer { lexicon, likeness: matcher.likeness() };
    let mut differences: Vec<ComparedMark> = Vec::new();
    for difference in comparer.differences(&traits) {
        let mut mark = worded(lexicon, &difference);
        if let Some((text, noted)) = note {
            let found: Vec<&Trait> =
                noted.iter().filter(|t| records(lexicon, &comparer, t, &difference)).collect();
            if !found.is_empty() {
                let words: Vec<String> =
                    found.iter().map(|t| t.as_written(text).into_owned()).collect();
                mark.noted = Some(words.join("; "));
                mark.favours = favoured(knowledge, matcher, species, &found);
            }
        }
        match differences.last_mut() {
            Some(last) if same_but_area(last, &mark) => last.areas.extend(mark.areas),
            _ => differences.push(mark),
        }
    }
    let named = |(a, &f): (&&Account, &usize)| ComparedSpecies {
        species: a.english.clone(),
        scientific: a.scientific.clone(),
        form: a.forms[f].label.clone(),
    };
    Comparison {
        species: accounts.iter().zip(&chosen).map(named).collect(),
        measures: measures(&accounts),
        differences,
    }
}

fn form_of(account: &Account, wanted: Option<&str>) -> usize {
    let Some(wanted) = wanted else {
        return 0;
    };
    let fits = |label: &str| label.split([' ', '-']).any(|word| word.eq_ignore_ascii_case(wanted));
    account.forms.iter().position(|f| fits(&f.label)).unwrap_or(0)
}

fn same_but_area(a: &ComparedMark, b: &ComparedMark) -> bool {
    a.aspect == b.aspect && a.shown == b.shown && a.noted == b.noted && a.favours == b.favours
}

fn worded(lexicon: &Lexicon, difference: &Difference<'_>) -> ComparedMark {
    let words = |list: &Vec<&Trait>| {
        let mut out: Vec<String> = Vec::new();
        for text in list.iter().map(|one| shown(lexicon, one)) {
            if !out.contains(&text) {
                out.push(text);
            }
        }
        out
    };
    ComparedMark {
        areas: vec![lexicon.topography.title(difference.area, &lexicon.names)],
        aspect: lexicon.names.text(difference.aspect).to_owned(),
        shown: difference.shown.iter().map(words).collect(),
        noted: None,
        favours: Vec::new(),
    }
}

/// `dark brown`, `white, tip`, `none`.
fn shown(lexicon: &Lexicon, one: &Trait) -> String {
    let text = |name: Name| lexicon.names.text(name).replace('-', " ");
    let mark = one.aspect == lexicon.names.find("mark");
    if one.polarity == Polarity::Absent {
        let value = one.value.text(lexicon).replace('-', " ");
        return if mark { "none".to_owned() } else { format!("not {value}") };
    }
    let mut out = String::new();
    if one.tone.is_some() && one.tone != one.value.term() {
        out.push_str(&text(one.tone));
        out.push(' ');
    }
    if one.aspect == lexicon.names.find("count") {
        let _ = write!(out, "{} of them", one.value.text(lexicon));
    } else {
        out.push_str(&one.value.text(lexicon).replace('-', " "));
    }
    for more in [one.position, one.extent].into_iter().filter(|m| m.is_some()) {
        let _ = write!(out, ", {}", text(more));
    }
    out
}

/// Whether a trait of the note speaks of the mark.
fn records(
    lexicon: &Lexicon,
    comparer: &Comparer<'_>,
    noted: &Trait,
    difference: &Difference<'_>,
) -> bool {
    let bird = lexicon.names.find("bird");
    noted.polarity != Polarity::Unseen
        && comparer.topic(noted) == difference.aspect
        && (noted.area == difference.area
            || noted.area != bird && lexicon.topography.covers(noted.area, difference.area))
}

/// The species of which what is noted is likeliest, if it is clearly less likely of another.
fn favoured(
    knowledge: &Knowledge,
    matcher: &Matcher<'_>,
    species: &[usize],
    noted: &[&Trait],
) -> Vec<String> {
    let chances = matcher.chances();
    let mut odds = vec![1.0f32; species.len()];
    for one in noted {
        let question = Question::of(&knowledge.lexicon, &chances.areas, &chances.aspects, one);
        let Some(question) = question else {
            continue;
        };
        let row = chances.row(&question);
        for (odds, &account) in odds.iter_mut().zip(species) {
            let forms = chances.forms.list.iter().zip(&row).filter(|(f, _)| f.account() == account);
            *odds *= forms.map(|(_, chance)| *chance).fold(f32::MIN_POSITIVE, f32::max);
        }
    }
    let least = odds.iter().copied().fold(f32::INFINITY, f32::min);
    let most = odds.iter().copied().fold(f32::MIN_POSITIVE, f32::max);
    let named = species
        .iter()
        .zip(&odds)
        .filter(|(_, odds)| most > least * POINTS && **odds * POINTS > most);
    named.map(|(&s, _)| knowledge.accounts[s].english.clone()).collect()
}

fn measures(accounts: &[&Account]) -> Vec<ComparedMeasure> {
    let mut out = vec![ComparedMeasure {
        name: "mass".to_owned(),
        unit: "g".to_owned(),
        values: accounts.iter().map(|a| a.mass).collect(),
    }];
    let mut names: Vec<&str> = Vec::new();
    for measure in accounts.iter().flat_map(|a| &a.measures) {
        if !names.contains(&measure.name.as_str()) {
            names.push(&measure.name);
        }
    }
    for name in names {
        let values = accounts.iter().map(|a| a.measure(name)).collect();
        out.push(ComparedMeasure { name: name.to_owned(), unit: "mm".to_owned(), values });
        // Judged against the body, as people do: a bigger bird has a bigger everything.
        let relative: Vec<Option<f32>> =
            accounts.iter().map(|a| Some(a.measure(name)? / a.mass?.cbrt())).collect();
        if let Some(first) = relative.first().copied().flatten() {
            out.push(ComparedMeasure {
                name: format!("{name} for its body"),
                unit: "times".to_owned(),
                values: relative
                    .iter()
                    .map(|r| r.map(|r| (100.0 * r / first).round() / 100.0))
                    .collect(),
            });
        }
    }
    out.retain(|m| m.values.iter().any(Option::is_some));
    out
}

/// The comparison as a table, with styles as ANSI codes.
pub fn compare_view(comparison: &Comparison, layout: Layout, with_note: bool) -> String {
    let mut out = String::new();
    heading(&mut out, "Side by side", "");
    for one in &comparison.species {
        let line = format!("{}  {}, {}", one.species, one.scientific, one.form);
        wrapped(&mut out, &line, layout.width, 2);
    }
    let names: Vec<&str> = comparison.species.iter().map(|s| s.species.as_str()).collect();
    heading(&mut out, "Measures", "");
    let mut rows = Vec::new();
    for measure in &comparison.measures {
        let mut row = vec![measure.name.replace('-', " ")];
        row.extend(
            measure.values.iter().map(|v| v.map_or("-".to_owned(), |v| amount(v, &measure.unit))),
        );
        rows.push(row);
    }
    table(&mut out, &names, &rows, layout.width);
    heading(&mut out, "Marks that differ", "");
    if comparison.differences.is_empty() {
        wrapped(&mut out, "none that their accounts tell apart", layout.width, 2);
        return out;
    }
    let mut rows = Vec::new();
    for mark in &comparison.differences {
        let mut head = mark.areas.join(", ");
        if !["colour", "mark"].contains(&mark.aspect.as_str()) {
            let _ = write!(head, ": {}", mark.aspect);
        }
        let mut row = vec![head];
        row.extend(
            mark.shown.iter().map(|s| if s.is_empty() { "-".to_owned() } else { s.join("; ") }),
        );
        rows.push(row);
        if let Some(noted) = &mark.noted {
            let points = match mark.favours.as_slice() {
                [] => "points to none".to_owned(),
                some => format!("points to {}", some.join(", ")),
            };
            rows.push(vec!["  noted".to_owned(), format!("\"{noted}\""), points]);
        }
    }
    table(&mut out, &names, &rows, layout.width);
    if with_note {
        let noted = comparison.differences.iter().filter(|d| d.noted.is_some()).count();
        let line = format!("{noted} of {} noted", comparison.differences.len());
        wrapped(&mut out, &line, layout.width, 2);
    }
    out
}

fn amount(value: f32, unit: &str) -> String {
    let digits = if unit == "times" { 2 } else { usize::from(value < 100.0) };
    format!("{value:.digits$} {unit}")
}

fn table(out: &mut String, names: &[&str], rows: &[Vec<String>], width: usize) {
    let mut table = Table::new();
    table
        .load_style(presets::NOTHING)
        .set_content_arrangement(ContentArrangement::Dynamic)
        .set_width(u16::try_from(width.min(120)).unwrap_or(80));
    let head = std::iter::once(String::new()).chain(names.iter().map(|n| (*n).to_owned()));
    table.add_row(head);
    for row in rows {
        let blank = (row.len()..=names.len()).map(|_| String::new());
        table.add_row(row.iter().cloned().chain(blank));
    }
    for line in table.lines() {
        let _ = writeln!(out, " {}", line.trim_end());
    }
}
