//! From counted statements to entries of the lexicon.

use crate::fit::{Counts, anywhere};
use crate::trial::Birds;
use palette::color_difference::Ciede2000;
use rectrix::lexicon::Lexicon;
use rectrix::lexicon::names::Name;
use rectrix::matching::chances::Chances;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

/// Statements that the names of colours near it count for, in the names of a colour.
const NEAR_KNOWN: f64 = 100.0;
/// How near that is (CIEDE2000).
const NEAR: f64 = 5.0;
/// Statements that own estimates count for beside the names of colours near by.
const ESTIMATE_KNOWN: f64 = 100.0;
/// Statements that a colour anywhere on a bird counts for, in its names on one part.
const ANYWHERE_KNOWN: f64 = 30.0;
/// By how much, at most, own estimates move a name from a colour anywhere to that colour on one part.
const MOST_MOVED: f64 = 10.0;
/// The least estimate of a name that is told apart from none.
const LEAST_ESTIMATE: f32 = 1e-6;
/// Statements that the tree of parts counts for, in what is meant by a part.
const TREE_KNOWN: f64 = 20.0;
/// Statements of a colour below which its names are not listed: anywhere, and on one part.
const LEAST_SAID: (f64, f64) = (10.0, 30.0);
/// The least share of a name that is listed.
const LEAST_SHARE: f64 = 0.015;
/// By how much a weight of a part must differ from the tree's to be listed.
const LEAST_CHANGE: f64 = 0.03;
/// The least share in speech of a colour name, and the least rate of a part, that is listed.
const LEAST_SPOKEN: (f64, f64) = (0.0003, 0.01);
/// Entries that are not fitted say so.
const KEPT: &str = "own estimate";
/// The width of the lists.
const WIDTH: usize = 84;

/// Whether an entry is not to be fitted.
fn is_kept(lexicon: &Lexicon, kind: &str, id: &str) -> bool {
    let mut entries = lexicon.others(kind).filter(|e| e.id == id);
    entries.any(|e| e.get("means").is_some_and(|m| m.contains(KEPT)))
}

/// Entries that take the place of all fitted ones, and say nothing.
pub fn blank(lexicon: &Lexicon) -> String {
    let mut out = String::new();
    for kind in ["naming", "meant", "mention"] {
        for entry in lexicon.others(kind).filter(|e| !is_kept(lexicon, kind, &e.id)) {
            let _ = writeln!(out, "{kind} {}\n  means nothing yet\n", entry.id);
        }
    }
    out
}

/// Lines that break between items alone.
fn wrapped() -> textwrap::Options<'static> {
    textwrap::Options::new(WIDTH).word_splitter(textwrap::WordSplitter::NoHyphenation)
}

/// A list under a key, on as many lines as it takes.
pub fn list(out: &mut String, key: &str, items: &[String]) {
    // No line may end within an item.
    let whole: Vec<String> = items.iter().map(|item| item.replace(' ', "\u{a0}")).collect();
    for line in textwrap::wrap(&whole.join(", "), wrapped()) {
        let _ = writeln!(out, "  {key} {}", line.trim_end_matches(',').replace('\u{a0}', " "));
    }
}

/// How common colour names are, and how much is said of each part.
pub fn spoken(lexicon: &Lexicon, birds: &Birds) -> String {
    let colour = lexicon.names.find("colour");
    let mut names: BTreeMap<Name, f64> = BTreeMap::new();
    let mut areas: BTreeMap<Name, f64> = BTreeMap::new();
    let mut sentences = 0.0;
    for (traits, _) in birds.values().flatten() {
        sentences += 1.0;
        for one in traits.iter().filter(|t| t.aspect == colour && t.value.term().is_some()) {
            *names.entry(one.value.term()).or_default() += 1.0;
            *areas.entry(one.area).or_default() += 1.0;
        }
    }
    let all: f64 = names.values().sum();
    let items = |counts: &BTreeMap<Name, f64>, of: f64, scale: f64, least: f64| -> Vec<String> {
        let mut shares: Vec<(f64, &str)> =
            counts.iter().map(|(name, n)| (n / of, lexicon.names.text(*name))).collect();
        shares.retain(|(share, _)| *share >= least);
        shares.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(b.1)));
        shares.iter().map(|(share, name)| format!("{name} {:.3}", share * scale)).collect()
    };
    let mut out = "# Shares of colour names, in a hundred.\nspoken colours\n".to_owned();
    list(&mut out, "shares", &items(&names, all, 100.0, LEAST_SPOKEN.0));
    out += "  means how common a colour name is in speech\n\n";
    out += "# How many colours of a part a sentence speaks of, if the part looks as on an average bird.\n";
    out += "spoken-of colours\n";
    list(&mut out, "rates", &items(&areas, sentences, 1.0, LEAST_SPOKEN.1));
    out += "  means how much people talk of each part\n\n";
    out
}

/// The colours around one, with how near they are, and the statements of them in all.
struct Around {
    near: Vec<(usize, f64)>,
    said: f64,
}

/// For each name and colour of the palette, its share as the colours near it have it.
fn known(
    counts: &Counts,
    names: &[Name],
    lexicon: &Lexicon,
    now: &Chances<'_>,
    base: &Chances<'_>,
) -> Vec<Vec<f64>> {
    let palette = &now.forms.palette;
    let places: Vec<_> = palette.iter().map(|h| lexicon.colours.toned(h.colour, h.tone)).collect();
    let wide: Vec<usize> = anywhere(palette).map(|(_, at)| at).collect();
    let said: Vec<f64> = counts.names.iter().map(|n| n.values().sum()).collect();
    let near = |at: usize, other: usize| match (places[at], places[other]) {
        (Some(a), Some(b)) if at != other => {
            let far = f64::from(a.difference(b)) / NEAR;
            (-0.5 * far * far).exp()
        }
        _ => 0.0,
    };
    let around: Vec<Around> = (0..palette.len())
        .map(|at| {
            let near: Vec<(usize, f64)> = wide.iter().map(|&o| (o, near(at, o))).collect();
            let said = near.iter().map(|&(o, weight)| weight * said[o]).sum();
            Around { near, said }
        })
        .collect();
    let share = |name: &Name| {
        let base = base.names_of(*name);
        let share = |(at, around): (usize, &Around)| {
            let times = |o: usize| counts.names[o].get(name).copied().unwrap_or(0.0);
            let sum: f64 = around.near.iter().map(|&(o, weight)| weight * times(o)).sum();
            (sum + ESTIMATE_KNOWN * f64::from(base[at])) / (around.said + ESTIMATE_KNOWN)
        };
        around.iter().enumerate().map(share).collect()
    };
    names.iter().map(share).collect()
}

/// What each colour is called, anywhere and on each part of which enough is said.
pub fn names(counts: &Counts, lexicon: &Lexicon, now: &Chances<'_>, base: &Chances<'_>) -> String {
    let all: BTreeSet<Name> = counts.names.iter().flat_map(BTreeMap::keys).copied().collect();
    let all: Vec<Name> = all.into_iter().collect();
    let known = known(counts, &all, lexicon, now, base);
    let estimates: Vec<Vec<f32>> = all.iter().map(|name| base.names_of(*name)).collect();
    let palette = &now.forms.palette;
    let wide: BTreeMap<(Name, Name), usize> = anywhere(palette).collect();
    let said = |at: usize| counts.names[at].values().sum::<f64>();
    let mut lists: BTreeMap<&str, BTreeMap<String, Vec<String>>> = BTreeMap::new();
    for (at, hue) in palette.iter().enumerate() {
        let id = lexicon.names.text(hue.colour);
        let least = if hue.part.is_some() { LEAST_SAID.1 } else { LEAST_SAID.0 };
        let Some(&wide) = wide.get(&(hue.colour, hue.tone)) else {
            continue;
        };
        if said(at) < least || is_kept(lexicon, "naming", id) {
            continue;
        }
        let share = |((name, known), estimate): ((&Name, &Vec<f64>), &Vec<f32>)| {
            let times = |at: usize| counts.names[at].get(name).copied().unwrap_or(0.0);
            let anywhere = (times(wide) + NEAR_KNOWN * known[wide]) / (said(wide) + NEAR_KNOWN);
            let share = if hue.part.is_some() {
                // What is called otherwise on this part by own estimate.
                let moved = f64::from(estimate[at] / estimate[wide].max(LEAST_ESTIMATE));
                let known = anywhere * moved.clamp(1.0 / MOST_MOVED, MOST_MOVED);
                (times(at) + ANYWHERE_KNOWN * known) / (said(at) + ANYWHERE_KNOWN)
            } else {
                anywhere
            };
            (share, lexicon.names.text(*name))
        };
        let mut shares: Vec<(f64, &str)> =
            all.iter().zip(&known).zip(&estimates).map(share).collect();
        // What was moved on one part may come to more than all.
        let sum = shares.iter().map(|(share, _)| share).sum::<f64>().max(1.0);
        shares.iter_mut().for_each(|(share, _)| *share /= sum);
        shares.retain(|(share, _)| *share >= LEAST_SHARE);
        shares.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(b.1)));
        let items = shares.iter().map(|(share, name)| format!("{name} {:.0}", 100.0 * share));
        let tone = if hue.tone.is_some() { lexicon.names.text(hue.tone) } else { "untoned" };
        let key = match hue.part.is_some() {
            true => format!("{tone}-on-{}", lexicon.names.text(hue.part)),
            false => tone.to_owned(),
        };
        lists.entry(id).or_default().insert(key, items.collect());
    }
    let mut out = String::new();
    for (id, tones) in lists {
        let _ = writeln!(out, "naming {id}");
        for (key, items) in tones {
            list(&mut out, &key, &items);
        }
        out += "  means what it is called\n\n";
    }
    out
}

/// What is meant by each part.
pub fn parts(counts: &Counts, lexicon: &Lexicon, now: &Chances<'_>, base: &Chances<'_>) -> String {
    let ids: Vec<&str> = lexicon.topography.iter().map(|a| lexicon.names.text(a.id)).collect();
    let mut out = "# What is meant by a part where the tree of parts suggests otherwise, against 1 for the part \
                   itself.\n"
        .to_owned();
    for (area, id) in ids.iter().enumerate() {
        let fitted = |stated: usize| {
            let (meant, expected) = (counts.meant[area][stated], counts.expected[area][stated]);
            let step = (meant + TREE_KNOWN) / (expected + TREE_KNOWN);
            f64::from(now.areas.meant(area)[stated]) * step
        };
        let own = fitted(area).max(f64::MIN_POSITIVE);
        let tree = |stated: usize| f64::from(base.areas.meant(area)[stated]);
        let mut weights: Vec<(f64, &str)> = (0..ids.len())
            .filter(|&stated| stated != area)
            .map(|stated| ((fitted(stated) / own).min(1.0), stated))
            .filter(|&(weight, stated)| (weight - tree(stated)).abs() >= LEAST_CHANGE)
            .map(|(weight, stated)| (weight, ids[stated]))
            .collect();
        if weights.is_empty() {
            continue;
        }
        weights.sort_by(|a, b| b.0.total_cmp(&a.0));
        let items: Vec<String> = weights.iter().map(|(w, id)| format!("{id} {w:.2}")).collect();
        let why = lexicon.others("meant").find(|e| e.id == *id).and_then(|e| e.get("means"));
        let _ = writeln!(out, "meant {id}");
        list(&mut out, "weights", &items);
        let _ = writeln!(out, "  means {}\n", why.unwrap_or("what people call so"));
    }
    out
}
