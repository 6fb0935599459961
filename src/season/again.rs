//! The bytes of marks written before.
//!
//! Most marks of a season were said before, in the same standard terms. To copy their bytes takes one look-up in
//! place of a dozen fields, each of a few bytes.

use crate::traits::{Trait, Value};
use rustc_hash::FxHashMap;
use std::ops::Range;

/// How many different marks are kept; all are forgotten when there are more. Some 2,000 make up most of 29,300
/// sentences.
const MOST: usize = 8_192;

/// What a mark says, as numbers: all of it but where it was said, by which rule and of which bird.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Says([u64; 4]);

impl Says {
    /// What a trait says; none where its value was made for it.
    pub fn of(one: &Trait) -> Option<Self> {
        let Value::Term(value) = one.value else { return None };
        let four = |names: [u16; 4]| names.iter().fold(0, |all, name| all << 16 | u64::from(*name));
        let bits = |number: f32| u64::from(number.to_bits());
        Some(Self([
            four([one.area.0, one.written_area.0, one.aspect.0, value.0]),
            four([one.tone.0, one.extent.0, one.position.0, one.relation.0]),
            four([
                one.against.0,
                one.polarity as u16,
                one.certainty as u16,
                u16::from(one.mass.is_some()),
            ]),
            one.mass.map_or(0, |mass| bits(mass.low) << 32 | bits(mass.high)),
        ]))
    }
}

/// Bytes of marks, in the form of one output.
#[derive(Clone, Debug, Default)]
pub struct Again {
    places: FxHashMap<Says, Range<usize>>,
    bytes: Vec<u8>,
}

impl Again {
    /// The bytes of a mark written before.
    pub fn get(&self, says: &Says) -> Option<&[u8]> {
        self.places.get(says).map(|place| &self.bytes[place.clone()])
    }

    /// Keeps the bytes of a mark.
    pub fn keep(&mut self, says: Says, bytes: &[u8]) {
        if self.places.len() >= MOST {
            self.places.clear();
            self.bytes.clear();
        }
        let start = self.bytes.len();
        self.bytes.extend_from_slice(bytes);
        self.places.insert(says, start..self.bytes.len());
    }

    /// Adds what a mark says to `out`: its bytes of before, or else those of `make`.
    pub fn write(&mut self, one: &Trait, out: &mut Vec<u8>, make: impl FnOnce(&mut Vec<u8>)) {
        let says = Says::of(one);
        if let Some(bytes) = says.as_ref().and_then(|says| self.get(says)) {
            out.extend_from_slice(bytes);
            return;
        }
        let start = out.len();
        make(out);
        if let Some(says) = says {
            self.keep(says, &out[start..]);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lexicon::names::Name;
    use crate::lexicon::record::Parts;
    use crate::lexicon::scale::MassRange;
    use crate::traits::{Certainty, Polarity};

    fn plain() -> Trait {
        Trait {
            bird: 1,
            area: Name(1),
            written_area: Name(1),
            aspect: Name(2),
            value: Value::Term(Name(3)),
            tone: Name::NONE,
            extent: Name::NONE,
            position: Name::NONE,
            relation: Name::NONE,
            against: Name::NONE,
            mass: None,
            polarity: Polarity::Present,
            certainty: Certainty::Sure,
            parts: Parts::default(),
            rule: 0,
        }
    }

    #[test]
    fn marks_that_differ_in_anything_are_kept_apart() {
        let changes: [fn(&mut Trait); 13] = [
            |_| {},
            |t| t.area = Name(9),
            |t| t.written_area = Name(9),
            |t| t.aspect = Name(9),
            |t| t.value = Value::Term(Name(9)),
            |t| t.tone = Name(9),
            |t| t.extent = Name(9),
            |t| t.position = Name(9),
            |t| t.relation = Name(9),
            |t| t.against = Name(9),
            |t| t.mass = Some(MassRange { low: 0.0, high: 0.0 }),
            |t| t.polarity = Polarity::Absent,
            |t| t.certainty = Certainty::Hedged,
        ];
        let traits = changes.map(|change| {
            let mut one = plain();
            change(&mut one);
            one
        });
        let mut again = Again::default();
        for _ in 0..2 {
            for (n, one) in traits.iter().enumerate() {
                let (mut out, mine) = (b"before ".to_vec(), format!("{n};"));
                again.write(one, &mut out, |out| out.extend_from_slice(mine.as_bytes()));
                assert_eq!(out, [b"before ", mine.as_bytes()].concat());
            }
        }
    }

    #[test]
    fn what_was_made_is_never_kept_and_too_many_are_forgotten() {
        let mut again = Again::default();
        let made = Trait { value: Value::Made("25 cm".to_owned()), ..plain() };
        assert_eq!(Says::of(&made), None);
        for n in 0..=u16::try_from(MOST).unwrap() {
            let one = Trait { value: Value::Term(Name(n)), ..plain() };
            again.write(&one, &mut Vec::new(), |out| out.push(b'x'));
        }
        assert_eq!((again.places.len(), again.bytes.len()), (1, 1));
    }
}
