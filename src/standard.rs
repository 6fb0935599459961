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
#[derive(Clone, Debug)]
pub struct Terms {
    bird: Name,
    size: Name,
    count: Name,
    mark: Name,
    absent: Name,
    unseen: Name,
    hedged: Name,
    like: Name,
    shape: Name,
    pattern: Name,
    shown: Name,
    /// Positions that only say which kind of marking it is; they count where a part has an area of
    /// its own there ("a bar on the wing").
    markings: Vec<Name>,
}

impl Terms {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let find = |text| lexicon.names.find(text);
        let pattern = find("pattern");
        let mut markings: Vec<Name> = lexicon
            .vocabulary
            .terms
            .iter()
            .filter(|t| t.get(Slot::Aspect) == pattern)
            .map(|t| t.get(Slot::Position))
            .filter(|p| p.is_some())
            .collect();
        markings.sort_unstable();
        markings.dedup();
        Self {
            pattern,
            markings,
            shape: find("shape"),
            shown: find("shown"),
            bird: find("bird"),
            size: find("size"),
            count: find("count"),
            mark: find("mark"),
            absent: find("absent"),
            unseen: find("unseen"),
            hedged: find("hedged"),
            like: find("like"),
        }
    }

    /// How sure a record is.
    pub fn certainty(&self, record: &Record) -> Certainty {
        let hedged = record.get(Slot::Certainty) == self.hedged;
        if hedged { Certainty::Hedged } else { Certainty::Sure }
    }

    /// Whether a record only likens to what it names.
    pub fn only_like(&self, record: &Record) -> bool {
        self.like.is_some() && record.get(Slot::Relation) == self.like
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
pub fn traits_of(lexicon: &Lexicon, terms: &Terms, said: &Said, from: From, out: &mut Vec<Trait>) {
    let record = &said.record;
    let aspect = record.get(Slot::Aspect);
    if !aspect.is_some() {
        return;
    }
    let written = record.get(Slot::Area).or(terms.bird);
    let (area, position) = placed(lexicon, terms, written, record);
    let polarity = polarity(terms, record.get(Slot::Polarity));
    let known = lexicon.topography.get(area);
    let optional = known.is_some_and(|a| a.optional);
    let named = polarity == Polarity::Present && !optional || area == terms.bird;
    if aspect == terms.mark && named {
        return;
    }
    let Some((mut value, mass)) = value(lexicon, terms, record, aspect) else {
        return;
    };
    // A bar on the wing is a wing bar, so it is there rather than a pattern of the wing.
    let is_marking = area != written && optional;
    let aspect = if is_marking && aspect == terms.pattern {
        value = Value::Term(terms.shown);
        if let Some(number) = record.number {
            let mut count = *said;
            count.record.set(Slot::Aspect, terms.count);
            count.record.number = Some(number);
            traits_of(lexicon, terms, &count, from, out);
        }
        terms.mark
    } else {
        aspect
    };
    let aspect = known
        .and_then(|a| a.reads)
        .filter(|(from, _)| *from == aspect)
        .map_or(aspect, |(_, to)| to);
    let one = Trait {
        bird: from.bird,
        area,
        written_area: written,
        aspect,
        value,
        tone: record.get(Slot::Tone),
        extent: if is_marking { Name::NONE } else { record.get(Slot::Extent) },
        position,
        relation: record.get(Slot::Relation),
        against: record.get(Slot::Against),
        mass,
        polarity,
        certainty: terms.certainty(record),
        parts: said.parts,
        rule: from.rule,
    };
    let parts: &[Name] = known.map_or(&[], |a| &a.resolves);
    if parts.is_empty() {
        add(out, one);
    } else {
        for &part in parts {
            add(out, Trait { area: part, ..one.clone() });
        }
    }
}

/// The area that a position or an extent of another one has as a name of its own, and what is left
/// of the position. Shapes and lengths stay with the part: a bill hooked at the tip is a hooked bill.
fn placed(lexicon: &Lexicon, terms: &Terms, area: Name, record: &Record) -> (Name, Name) {
    let aspect = record.get(Slot::Aspect);
    let position = record.get(Slot::Position);
    let surface = aspect != terms.shape;
    let own = |at: Name| lexicon.topography.at(area, at).filter(|_| surface && at.is_some());
    if let Some(own) = own(position) {
        return (own, Name::NONE);
    }
    let left = if terms.markings.contains(&position) { Name::NONE } else { position };
    (own(record.get(Slot::Extent)).unwrap_or(area), left)
}

/// Whether what is said was seen, denied, or could not be made out.
pub fn polarity(terms: &Terms, said: Name) -> Polarity {
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

/// Drops "there is one" of a part that the note describes: its colour says as much.
pub fn drop_bare_marks(terms: &Terms, traits: &mut Vec<Trait>) {
    let bare = |t: &Trait| t.aspect == terms.mark && t.polarity == Polarity::Present;
    if !traits.iter().any(bare) {
        return;
    }
    let described: Vec<(u32, Name)> = traits
        .iter()
        .filter(|t| !bare(t) && t.aspect != terms.count && t.polarity == Polarity::Present)
        .map(|t| (t.bird, t.area))
        .collect();
    traits.retain(|t| !bare(t) || !described.contains(&(t.bird, t.area)));
}

/// Drops "two birds" where the note tells them apart: each of them is one.
pub fn drop_counts_of_birds(terms: &Terms, traits: &mut Vec<Trait>) {
    traits.retain(|t| t.aspect != terms.count || t.area != terms.bird);
}
