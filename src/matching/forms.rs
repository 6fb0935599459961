//! What every form of every species shows, laid out flat for comparing.

use super::areas::Areas;
use super::question::{Aspects, Reach};
use super::weights::Weights;
use crate::accounts::{Account, Accounts};
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::traits::{Certainty, Polarity, Trait, Value};
use crate::words::words;
use rustc_hash::FxHashMap;
use std::ops::Range;

/// A colour that a form shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShownColour {
    /// Where, by its place among the areas.
    pub area: u8,
    /// The colour and its tone, by its place in the palette.
    pub colour: u16,
    /// Ground colour 1, colour of a marking less.
    pub weight: f32,
    /// Whether it is the colour of a marking.
    pub marking: bool,
}

/// A colour as it is shown: what it is called may depend on the part that has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Hue {
    /// Which colour.
    pub colour: Name,
    /// Pale, dark, ...; none if not stated.
    pub tone: Name,
    /// The main part of the bird that shows it; none for the colour wherever it is.
    pub part: Name,
}

/// A pattern, a shape, a movement or the like, or a colour that the account denies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShownValue {
    /// Where, by its place among the areas.
    pub area: u8,
    /// Which property.
    pub aspect: Name,
    /// What.
    pub value: Name,
    /// Whether the account says it is not there.
    pub absent: bool,
}

/// A form of a species.
#[derive(Clone, Debug)]
pub struct Form {
    /// The species, by its place among the accounts.
    pub account: usize,
    /// The form, by its place in the account.
    pub form: usize,
    /// The sexes and ages that its label names.
    pub sex_age: Vec<Name>,
    /// Its share within its species.
    pub share: f32,
    colours: Range<usize>,
    values: Range<usize>,
}

/// All forms, those of a species together, in the order of the accounts.
#[derive(Clone, Debug, Default)]
pub struct Forms {
    /// The forms.
    pub list: Vec<Form>,
    /// Every different colour that some form shows.
    pub palette: Vec<Hue>,
    colours: Vec<ShownColour>,
    values: Vec<ShownValue>,
}

/// A trait of the pool, laid out.
enum Item {
    Colour(ShownColour),
    Value(ShownValue),
    /// Nothing that a note could be compared with.
    Idle,
}

impl Forms {
    /// Lays out all accounts.
    pub fn of(
        lexicon: &Lexicon,
        areas: &Areas,
        aspects: &Aspects,
        weights: &Weights,
        accounts: &Accounts,
    ) -> Self {
        let mut out = Self::default();
        let mut places: FxHashMap<Hue, u16> = FxHashMap::default();
        let items: Vec<Item> = accounts
            .pool
            .iter()
            .map(|one| item(areas, aspects, weights, one, lexicon, &mut out.palette, &mut places))
            .collect();
        let traits =
            |a: &Account| a.forms.iter().map(|f| f.traits.len() + a.shared.len()).sum::<usize>();
        let most = accounts.iter().map(traits).sum();
        out.colours.reserve(most);
        out.values.reserve(most);
        // A few labels come back again and again.
        let mut labels: FxHashMap<&str, Vec<Name>> = FxHashMap::default();
        for (account_index, account) in accounts.iter().enumerate() {
            let total: f32 = account.forms.iter().map(|f| f.weight).sum();
            for (form_index, form) in account.forms.iter().enumerate() {
                let (colours, values) = (out.colours.len(), out.values.len());
                for &at in form.traits.iter().chain(&account.shared) {
                    match items.get(at as usize) {
                        Some(Item::Colour(one)) => out.colours.push(*one),
                        Some(Item::Value(one)) => out.values.push(*one),
                        Some(Item::Idle) | None => {}
                    }
                }
                out.list.push(Form {
                    account: account_index,
                    form: form_index,
                    sex_age: labels
                        .entry(&form.label)
                        .or_insert_with(|| label_terms(lexicon, &form.label))
                        .clone(),
                    share: (form.weight / total).max(1e-6),
                    colours: colours..out.colours.len(),
                    values: values..out.values.len(),
                });
            }
        }
        out
    }

    /// The colours of a form.
    pub fn colours(&self, form: &Form) -> &[ShownColour] {
        &self.colours[form.colours.clone()]
    }

    /// Everything else of a form.
    pub fn values(&self, form: &Form) -> &[ShownValue] {
        &self.values[form.values.clone()]
    }
}

fn item(
    areas: &Areas,
    aspects: &Aspects,
    weights: &Weights,
    one: &Trait,
    lexicon: &Lexicon,
    palette: &mut Vec<Hue>,
    places: &mut FxHashMap<Hue, u16>,
) -> Item {
    let Some(area) = areas.index(one.area).and_then(|a| u8::try_from(a).ok()) else {
        return Item::Idle;
    };
    let absent = one.polarity == Polarity::Absent;
    if one.aspect == aspects.colour && !absent {
        let value = one.value.term();
        if !value.is_some() {
            return Item::Idle;
        }
        let mut place = |part| {
            let hue = Hue { colour: value, tone: one.tone, part };
            *places.entry(hue).or_insert_with(|| {
                palette.push(hue);
                u16::try_from(palette.len() - 1).unwrap_or(u16::MAX)
            })
        };
        place(Name::NONE);
        let at = place(areas.main_part(usize::from(area)));
        let marking = aspects.reach(one) == Reach::Marking;
        let weight = colour_weight(one, marking, weights);
        return Item::Colour(ShownColour { area, colour: at, weight, marking });
    }
    let value = match &one.value {
        Value::Term(term) => *term,
        Value::Made(text) => lexicon.names.find(text),
    };
    Item::Value(ShownValue { area, aspect: one.aspect, value, absent })
}

/// The colour of an edge, a tip or a marking counts for less than the ground; a doubted one too.
fn colour_weight(one: &Trait, marking: bool, weights: &Weights) -> f32 {
    let ground = if marking { weights.marking_colour } else { 1.0 };
    if one.certainty == Certainty::Hedged { ground * 0.8 } else { ground }
}

/// Sexes and ages that a form's label names.
fn label_terms(lexicon: &Lexicon, label: &str) -> Vec<Name> {
    let set = lexicon.kind_set("sexage");
    let mut found: Vec<Name> = words(label)
        .iter()
        .map(|w| w.span.of(label))
        .chain(std::iter::once(label))
        .flat_map(|text| lexicon.vocabulary.senses(lexicon.vocabulary.find(text)))
        .filter(|s| s.kind.bit() & set != 0)
        .map(|s| lexicon.vocabulary.terms[s.term as usize].id)
        .collect();
    found.sort_unstable();
    found.dedup();
    found
}
