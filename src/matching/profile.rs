//! What a form of a species shows, laid out for comparing.

use super::areas::Areas;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::traits::{Polarity, Trait, Value};

/// A colour that a form shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShownColour {
    /// Where.
    pub area: usize,
    /// The colour.
    pub colour: Name,
    /// Its tone; none if not said.
    pub tone: Name,
    /// Ground colour 1, colour of a marking less.
    pub weight: f32,
}

/// A pattern, a shape, a movement or the like.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShownValue {
    /// Where.
    pub area: usize,
    /// Which property.
    pub aspect: Name,
    /// What.
    pub value: Name,
    /// The relation of a compared length; none for plain values.
    pub relation: Name,
    /// Whether the account says it is not there.
    pub absent: bool,
}

/// What a form shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Profile {
    /// Colours.
    pub colours: Vec<ShownColour>,
    /// Colours the account says are not there.
    pub no_colours: Vec<(usize, Name)>,
    /// Everything else.
    pub values: Vec<ShownValue>,
    /// For each area, whether something is said of it: 1 shown, 2 said to be absent.
    pub named: Vec<u8>,
}

/// Lays out the traits of a form.
pub fn profile<'a>(
    lexicon: &Lexicon,
    areas: &Areas,
    traits: impl Iterator<Item = &'a Trait>,
    marking_colour: f32,
) -> Profile {
    let colour = lexicon.names.find("colour");
    let mark = lexicon.names.find("mark");
    let count = lexicon.topography.iter().count();
    let mut out = Profile { named: vec![0; count], ..Profile::default() };
    for one in traits {
        let Some(area) = areas.index(one.area) else {
            continue;
        };
        let absent = one.polarity == Polarity::Absent;
        if one.aspect == mark || one.aspect == colour {
            let named = if absent && one.aspect == mark { 2 } else { u8::from(!absent) };
            out.named[area] = out.named[area].max(named);
        }
        if one.aspect == colour {
            let Some(value) = Some(one.value.term()).filter(|v| v.is_some()) else {
                continue;
            };
            if absent {
                out.no_colours.push((area, value));
            } else {
                out.colours.push(ShownColour {
                    area,
                    colour: value,
                    tone: one.tone,
                    weight: colour_weight(one, marking_colour),
                });
            }
        } else if one.aspect != mark {
            out.values.push(ShownValue {
                area,
                aspect: one.aspect,
                value: match &one.value {
                    Value::Term(term) => *term,
                    Value::Made(text) => lexicon.names.find(text),
                },
                relation: one.relation,
                absent,
            });
        }
    }
    out
}

/// The colour of an edge, a tip or a marking counts for less than the ground.
fn colour_weight(one: &Trait, marking_colour: f32) -> f32 {
    if one.position.is_some() || one.extent.is_some() { marking_colour } else { 1.0 }
}
