//! The report of a season: what observers leave out, words not placed, descriptions good enough for a
//! record. One page that stands by itself, or the same as Markdown.

use super::desk::Desk;
use super::plots;
use super::tally::{Described, Habit, Tally};
use crate::gaps::MarkSet;
use crate::grammar::nearest::Nearest;
use minijinja::{Environment, context};
use serde::Serialize;
use std::collections::BTreeMap;

/// How many words are listed that are in no list of the lexicon, and how many that are.
const MOST_WORDS: usize = 60;
const MOST_KNOWN: usize = 30;
/// How many descriptions are listed of each sort.
const MOST_DESCRIPTIONS: usize = 60;
/// How many observers have a row of their own, and from how many birds on: a share of two birds tells
/// nothing of a person.
const MOST_OBSERVERS: usize = 40;
const LEAST_BIRDS: u64 = 5;
/// How many words get suggestions; each is a walk over the vocabulary.
const MOST_NEAR: usize = 1;
/// How alike a term must be to be named; a wrong one does more harm than none.
const NEAR: f64 = 0.9;

const MONTHS: [&str; 13] =
    ["?", "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/// A form of the report.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// A page.
    Html,
    /// Markdown.
    Markdown,
}

#[derive(Serialize)]
struct Mark {
    title: String,
    percent: u64,
    why: String,
    look: String,
}

#[derive(Serialize)]
struct Row {
    name: String,
    birds: u64,
    enough: u64,
    cells: Vec<Cell>,
}

#[derive(Serialize)]
struct Cell {
    percent: u64,
    /// From 0 to 10, for its colour.
    shade: u64,
}

#[derive(Serialize)]
struct Word {
    word: String,
    count: u64,
    file: String,
    line: u64,
    around: String,
    add: String,
    aside: String,
}

#[derive(Serialize)]
struct Description {
    file: String,
    line: u64,
    observer: String,
    date: String,
    note: String,
    named: String,
    told: u32,
    lacks: String,
}

fn percent(part: u64, whole: u64) -> u64 {
    (part * 100 + whole / 2).checked_div(whole).unwrap_or(0)
}

fn row(name: &str, habit: &Habit) -> Row {
    let cells = habit
        .left_out
        .iter()
        .map(|left| Cell {
            percent: percent(*left, habit.birds),
            shade: percent(*left, habit.birds) / 10,
        })
        .collect();
    Row { name: name.to_owned(), birds: habit.birds, enough: habit.enough, cells }
}

fn summed<K: Ord + Clone>(tally: &Tally, key: impl Fn(&str, i8) -> K) -> BTreeMap<K, Habit> {
    let mut out: BTreeMap<K, Habit> = BTreeMap::new();
    for ((observer, month), habit) in &tally.habits {
        out.entry(key(observer, *month)).or_default().merge(habit);
    }
    out
}

/// A word as an argument of a command.
fn quoted(word: &str) -> String {
    let plain = word.chars().all(|c| c.is_alphanumeric() || c == '-') && !word.starts_with('-');
    if plain { word.to_owned() } else { format!("\"{}\"", word.replace(['"', '`', '$', '\\'], "")) }
}

/// The commonest words not placed: those the lexicon does not know, or those it knows but could not
/// bring together with anything where they stood.
fn words(desk: &Desk<'_>, tally: &Tally, known: bool, most: usize) -> Vec<Word> {
    let near = Nearest::of(&desk.knowledge.lexicon, MOST_NEAR);
    tally
        .ranked()
        .into_iter()
        .filter(|(word, _)| (desk.knowledge.lexicon.vocabulary.find(word) != 0) == known)
        .take(most)
        .map(|(word, lost)| {
            let nearest =
                near.to(word).into_iter().find(|near| strsim::jaro_winkler(near, word) >= NEAR);
            Word {
                add: nearest.map_or_else(
                    || format!("rectrix lexicon add {} --as TERM", quoted(word)),
                    |near| format!("rectrix lexicon add {} --as {}", quoted(word), quoted(near)),
                ),
                aside: format!("rectrix lexicon add {}", quoted(word)),
                word: word.to_owned(),
                count: lost.count,
                file: lost.place.file.clone(),
                line: lost.place.line,
                around: lost.around.clone(),
            }
        })
        .collect()
}

fn titles(desk: &Desk<'_>, set: MarkSet) -> String {
    let all: Vec<&str> = desk.description.of_set(set).map(|m| m.title.as_str()).collect();
    all.join(", ")
}

fn descriptions(desk: &Desk<'_>, list: &[Described]) -> Vec<Description> {
    list.iter()
        .take(MOST_DESCRIPTIONS)
        .map(|d| Description {
            file: d.place.file.clone(),
            line: d.place.line,
            observer: d.observer.clone(),
            date: d.date.clone(),
            note: d.note.clone(),
            named: d.named.join(", "),
            told: d.told.count_ones(),
            lacks: titles(desk, d.left_out),
        })
        .collect()
}

/// A row for each observer with enough birds, most birds first, and one for all the others.
fn observers(tally: &Tally) -> Vec<Row> {
    let by_observer = summed(tally, |observer, _| observer.to_owned());
    let mut all: Vec<(&String, &Habit)> = by_observer.iter().collect();
    all.sort_by(|a, b| b.1.birds.cmp(&a.1.birds).then(a.0.cmp(b.0)));
    let enough = all.iter().take_while(|(_, habit)| habit.birds >= LEAST_BIRDS).count();
    let others = all.split_off(enough.min(MOST_OBSERVERS));
    let named = |name: &str| if name.is_empty() { "not named".to_owned() } else { name.to_owned() };
    let mut out: Vec<Row> = all.into_iter().map(|(name, h)| row(&named(name), h)).collect();
    match others.as_slice() {
        [] => {}
        [(name, habit)] => out.push(row(&named(name), habit)),
        _ => {
            let mut sum = Habit::default();
            others.iter().for_each(|(_, habit)| sum.merge(habit));
            out.push(row(&format!("{} others", others.len()), &sum));
        }
    }
    out
}

/// Writes the report.
///
/// # Errors
/// Where a template is wrong, which a test excludes.
pub fn report(
    desk: &Desk<'_>,
    tally: &Tally,
    title: &str,
    form: Form,
) -> Result<String, minijinja::Error> {
    let all = summed(tally, |_, _| ()).remove(&()).unwrap_or_default();
    let mut marks: Vec<Mark> = desk
        .description
        .marks
        .iter()
        .enumerate()
        .map(|(n, mark)| Mark {
            title: mark.title.clone(),
            percent: percent(all.left_out.get(n).copied().unwrap_or(0), all.birds),
            why: mark.why.clone(),
            look: mark.look.clone(),
        })
        .collect();
    let heads: Vec<String> = marks.iter().map(|m| m.title.clone()).collect();
    marks.sort_by_key(|m| std::cmp::Reverse(m.percent));
    let by_month = summed(tally, |_, month| month);
    let observers = observers(tally);
    let month =
        |number: i8| MONTHS.get(usize::try_from(number).unwrap_or(0)).copied().unwrap_or(MONTHS[0]);
    let months: Vec<Row> = by_month.iter().map(|(number, h)| row(month(*number), h)).collect();
    let shares: Vec<(String, f64)> =
        marks.iter().map(|m| (m.title.clone(), m.percent as f64 / 100.0)).collect();
    let bars: Vec<(String, u64, u64)> =
        by_month.iter().map(|(m, h)| (month(*m).to_owned(), h.birds, h.enough)).collect();
    let mut environment = Environment::new();
    // Before the templates, which are read with them: empty lines would part the rows of Markdown's tables.
    environment.set_trim_blocks(true);
    environment.set_lstrip_blocks(true);
    environment.add_template("report.html", include_str!("report.html"))?;
    environment.add_template("report.md", include_str!("report.md"))?;
    environment.add_filter("cell", |text: String| text.replace('|', "\\|").replace('\n', " "));
    let name = if form == Form::Html { "report.html" } else { "report.md" };
    environment.get_template(name)?.render(context! {
        title,
        days => tally.days,
        entries => tally.entries,
        birds => tally.birds,
        marks_told => tally.marks,
        placed => tally.placed,
        aside => tally.aside,
        unplaced => tally.unplaced,
        silent => tally.silent.count,
        silent_list => tally.silent.first.iter().take(MOST_DESCRIPTIONS).collect::<Vec<_>>(),
        enough => desk.enough.words,
        good => tally.good.count,
        poor => tally.poor.count,
        good_list => descriptions(desk, &tally.good.first),
        poor_list => descriptions(desk, &tally.poor.first),
        marks,
        heads,
        observers,
        months,
        words => words(desk, tally, false, MOST_WORDS),
        known_words => words(desk, tally, true, MOST_KNOWN),
        shares_plot => plots::shares(&shares),
        months_plot => plots::months(&bars),
    })
}
