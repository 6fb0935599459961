//! What every form of every species shows, laid out flat for comparing.

use super::areas::Areas;
use super::question::{Aspects, Reach};
use super::weights::Weights;
use crate::accounts::Accounts;
use crate::lexicon::Lexicon;
use crate::lexicon::names::Name;
use crate::lexicon::shelf::{Hand, List, Misplaced, Shelved};
use crate::traits::{Certainty, Polarity, Trait, Value};
use crate::words::words;
use rustc_hash::FxHashMap;
use zerocopy::{FromBytes, Immutable, IntoBytes};

/// A colour that a form shows.
#[derive(Clone, Copy, Debug, PartialEq, FromBytes, IntoBytes, Immutable)]
#[repr(C)]
pub struct ShownColour {
    /// Ground colour 1, colour of a marking less.
    pub weight: f32,
    /// The colour and its tone, by its place in the palette.
    pub colour: u16,
    /// Where, by its place among the areas.
    pub area: u8,
    marking: u8,
}

impl ShownColour {
    /// Whether it is the colour of a marking.
    pub const fn marking(&self) -> bool {
        self.marking != 0
    }
}

/// A colour as it is shown: what it is called may depend on the part that has it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, FromBytes, IntoBytes, Immutable)]
#[repr(C)]
pub struct Hue {
    /// Which colour.
    pub colour: Name,
    /// Pale, dark, ...; none if not stated.
    pub tone: Name,
    /// The main part of the bird that shows it; none for the colour wherever it is.
    pub part: Name,
}

/// A pattern, a shape, a movement or the like, or a colour that the account denies.
#[derive(Clone, Copy, Debug, PartialEq, FromBytes, IntoBytes, Immutable)]
#[repr(C)]
pub struct ShownValue {
    /// Which property.
    pub aspect: Name,
    /// What.
    pub value: Name,
    /// Where, by its place among the areas.
    pub area: u8,
    absent: u8,
}

impl ShownValue {
    /// Whether the account says it is not there.
    pub const fn absent(&self) -> bool {
        self.absent != 0
    }
}

/// A form of a species.
#[derive(Clone, Copy, Debug, PartialEq, FromBytes, IntoBytes, Immutable)]
#[repr(C)]
pub struct Form {
    account: u32,
    form: u32,
    /// Its share within its species.
    pub share: f32,
    sex_age: [u32; 2],
    colours: [u32; 2],
    values: [u32; 2],
}

impl Form {
    /// The species, by its place among the accounts.
    pub const fn account(&self) -> usize {
        self.account as usize
    }

    /// The form, by its place in the account.
    pub const fn form(&self) -> usize {
        self.form as usize
    }
}

/// All forms, those of a species together, in the order of the accounts.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Forms {
    /// The forms.
    pub list: List<Form>,
    /// Every different colour that some form shows.
    pub palette: List<Hue>,
    colours: List<ShownColour>,
    values: List<ShownValue>,
    sexes_ages: List<Name>,
}

impl Shelved for Forms {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        hand.list(&mut self.list)?;
        hand.list(&mut self.palette)?;
        hand.list(&mut self.colours)?;
        hand.list(&mut self.values)?;
        hand.list(&mut self.sexes_ages)
    }
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
        let mut palette = Vec::new();
        let mut places: FxHashMap<Hue, u16> = FxHashMap::default();
        let items: Vec<Item> = accounts
            .pool()
            .map(|one| item(areas, aspects, weights, one, lexicon, &mut palette, &mut places))
            .collect();
        let (mut list, mut colours, mut values) = (Vec::new(), Vec::new(), Vec::new());
        // A few labels come back again and again.
        let mut labels: FxHashMap<&str, [u32; 2]> = FxHashMap::default();
        let mut sexes_ages = Vec::new();
        for (account_index, account) in accounts.iter().enumerate() {
            let total: f32 = account.forms.iter().map(|f| f.weight).sum();
            for (form_index, form) in account.forms.iter().enumerate() {
                let starts = (colours.len(), values.len());
                for &at in form.traits.iter().chain(&account.shared) {
                    match items.get(at as usize) {
                        Some(Item::Colour(one)) => colours.push(*one),
                        Some(Item::Value(one)) => values.push(*one),
                        Some(Item::Idle) | None => {}
                    }
                }
                list.push(Form {
                    account: place(account_index),
                    form: place(form_index),
                    sex_age: *labels.entry(&form.label).or_insert_with(|| {
                        let start = sexes_ages.len();
                        sexes_ages.extend(label_terms(lexicon, &form.label));
                        [place(start), place(sexes_ages.len())]
                    }),
                    share: (form.weight / total).max(1e-6),
                    colours: [place(starts.0), place(colours.len())],
                    values: [place(starts.1), place(values.len())],
                });
            }
        }
        Self {
            list: list.into(),
            palette: palette.into(),
            colours: colours.into(),
            values: values.into(),
            sexes_ages: sexes_ages.into(),
        }
    }

    /// The colours of a form.
    pub fn colours(&self, form: &Form) -> &[ShownColour] {
        &self.colours[range(form.colours)]
    }

    /// Everything else of a form.
    pub fn values(&self, form: &Form) -> &[ShownValue] {
        &self.values[range(form.values)]
    }

    /// The sexes and ages that its label names.
    pub fn sexes_ages(&self, form: &Form) -> &[Name] {
        &self.sexes_ages[range(form.sex_age)]
    }
}

/// A place as it is kept; lists are far shorter than what that can tell.
fn place(at: usize) -> u32 {
    u32::try_from(at).unwrap_or(u32::MAX)
}

const fn range([start, end]: [u32; 2]) -> std::ops::Range<usize> {
    start as usize..end as usize
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
        let marking = u8::from(marking);
        return Item::Colour(ShownColour { area, colour: at, weight, marking });
    }
    let value = match &one.value {
        Value::Term(term) => *term,
        Value::Made(text) => lexicon.names.find(text),
    };
    Item::Value(ShownValue { area, aspect: one.aspect, value, absent: u8::from(absent) })
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
