//! Bringing what rules yield to standard terms.
//!
//! Everyday words for several areas become those areas ("hood": crown, nape, face, throat); a
//! position that makes an area of its own becomes that area ("tip of the tail": tail-tip); sizes
//! become ranges of mass. What was written is kept beside it.

use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::record::{Record, Said, Slot};
use crate::lexicon::scale::{Dimension, MassRange};
use crate::traits::{Certainty, Polarity, Trait, Value};

/// Names the stage needs, looked up once.
#[derive(Clone, Copy, Debug)]
pub struct Terms {
    bird: Name,
    size: Name,
    count: Name,
    mark: Name,
    absent: Name,
    unseen: Name,
    hedged: Name,
}

impl Terms {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let find = |text| lexicon.names.find(text);
        Self {
            bird: find("bird"),
            size: find("size"),
            count: find("count"),
            mark: find("mark"),
            absent: find("absent"),
            unseen: find("unseen"),
            hedged: find("hedged"),
        }
    }
}

/// Where a record comes from.
#[derive(Clone, Copy, Debug)]
pub struct From {
    /// The rule, by its place among the rules.
    pub rule: usize,
    /// The bird of the note.
    pub bird: u32,
}

/// Adds the traits that one record of a match stands for; none, where it only names a part that
/// every bird has.
pub fn traits_of(
    lexicon: &Lexicon,
    terms: &Terms,
    said: &Said,
    from: From,
    out: &mut Vec<Trait>,
) {
    let record = &said.record;
    let aspect = record.get(Slot::Aspect);
    if !aspect.is_some() {
        return;
    }
    let written = record.get(Slot::Area).or(terms.bird);
    let (area, position) = placed(lexicon, written, record.get(Slot::Position));
    let polarity = polarity(terms, record.get(Slot::Polarity));
    let optional = lexicon.topography.get(area).is_some_and(|a| a.optional);
    if aspect == terms.mark && polarity == Polarity::Present && !optional {
        return;
    }
    let Some((value, mass)) = value(lexicon, terms, record, aspect) else {
        return;
    };
    let aspect = lexicon
        .topography
        .get(area)
        .and_then(|a| a.reads)
        .filter(|(from, _)| *from == aspect)
        .map_or(aspect, |(_, to)| to);
    let hedged = record.get(Slot::Certainty) == terms.hedged;
    let one = Trait {
        bird: from.bird,
        area,
        written_area: written,
        aspect,
        value,
        tone: record.get(Slot::Tone),
        extent: record.get(Slot::Extent),
        position,
        relation: record.get(Slot::Relation),
        against: record.get(Slot::Against),
        mass,
        polarity,
        certainty: if hedged { Certainty::Hedged } else { Certainty::Sure },
        parts: said.parts,
        rule: from.rule,
    };
    let parts: &[Name] = lexicon.topography.get(area).map_or(&[], |a| &a.resolves);
    if parts.is_empty() {
        add(out, one);
    } else {
        for &part in parts {
            add(out, Trait { area: part, ..one.clone() });
        }
    }
}

/// The area that a position of another one has as a name of its own.
fn placed(lexicon: &Lexicon, area: Name, position: Name) -> (Name, Name) {
    match lexicon.topography.at(area, position) {
        Some(own) => (own, Name::NONE),
        None => (area, position),
    }
}

fn polarity(terms: &Terms, said: Name) -> Polarity {
    if said == terms.absent {
        Polarity::Absent
    } else if said == terms.unseen {
        Polarity::Unseen
    } else {
        Polarity::Present
    }
}

/// What was seen, and for sizes of the whole bird the range of mass.
fn value(
    lexicon: &Lexicon,
    terms: &Terms,
    record: &Record,
    aspect: Name,
) -> Option<(Value, Option<MassRange>)> {
    let of_bird = record.get(Slot::Area).or(terms.bird) == terms.bird;
    let relation = record.get(Slot::Relation);
    let against = record.get(Slot::Against);
    if aspect == terms.count {
        return record.number.map(|n| (Value::Made(format!("{n}")), None));
    }
    if let Some(number) = record.number
        && record.get(Slot::Unit).is_some()
    {
        return measured(lexicon, record, number, of_bird);
    }
    if relation.is_some() && against.is_some() {
        let names = &lexicon.names;
        let text = format!("{}-{}", names.text(relation), names.text(against));
        let mass = lexicon
            .scale
            .mass(against)
            .filter(|_| of_bird)
            .and_then(|mass| lexicon.scale.related(relation, mass));
        return Some((Value::Made(text), mass));
    }
    let said = record.get(Slot::Value);
    let mass = (aspect == terms.size && of_bird).then(|| lexicon.scale.word(said)).flatten();
    said.is_some().then_some((Value::Term(said), mass))
}

fn measured(
    lexicon: &Lexicon,
    record: &Record,
    number: f32,
    of_bird: bool,
) -> Option<(Value, Option<MassRange>)> {
    let (dimension, low) = lexicon.scale.measure(number, record.get(Slot::Unit))?;
    let (_, high) =
        lexicon.scale.measure(record.upper.unwrap_or(number), record.get(Slot::Unit))?;
    let (suffix, mass) = match dimension {
        Dimension::Length => ("cm", lexicon.scale.mass_of_length(low, high)),
        Dimension::Mass => ("g", Some(MassRange { low: low * 0.85, high: high * 1.18 })),
    };
    let shown = |n: f32| {
        if n < 10.0 { format!("{n:.1}") } else { format!("{n:.0}") }
    };
    let text = if (high - low).abs() < f32::EPSILON {
        format!("{}-{suffix}", shown(low))
    } else {
        format!("{}-{}-{suffix}", shown(low), shown(high))
    };
    Some((Value::Made(text), mass.filter(|_| of_bird)))
}

/// Adds a trait, or its evidence to one that says the same.
fn add(out: &mut Vec<Trait>, one: Trait) {
    match out.iter_mut().find(|t| t.says_same(&one)) {
        Some(same) => {
            same.parts.add_all(&one.parts);
            if one.certainty == Certainty::Sure {
                same.certainty = Certainty::Sure;
            }
            same.tone = same.tone.or(one.tone);
            same.extent = same.extent.or(one.extent);
        }
        None => out.push(one),
    }
}
