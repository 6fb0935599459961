//! The numbers of the model, as the lexicon gives them.

use crate::lexicon::Lexicon;

/// The numbers; each entry `weight` of the lexicon sets one and says why.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weights {
    /// How far apart two colours may be and still be called by one name (CIEDE2000).
    pub colour_spread: f32,
    /// The chance of a colour word where nothing like it is on the part.
    pub colour_slip: f32,
    /// How much of the weight of colours goes to the most like one, however small its patch.
    pub salience: f32,
    /// The weight of the colour of streaks, spots, edges and patches against the ground colour.
    pub marking_colour: f32,
    /// How much a statement about a whole says of each part, a step down.
    pub step_down: f32,
    /// The chance of a word for a pattern or shape that the bird shows.
    pub hit: f32,
    /// The chance of such a word where the account has another one.
    pub miss: f32,
    /// The chance of such a word where the account has the contrary.
    pub contrary: f32,
    /// The chance where the account is silent.
    pub silent: f32,
    /// How badly masses are judged: standard deviation of the logarithm.
    pub size_spread: f32,
    /// The chance of any size being said of any bird.
    pub size_slip: f32,
    /// How much a doubted trait counts.
    pub hedged: f32,
    /// How much what was looked for and not found counts.
    pub absent: f32,
    /// Evidence of one note is not independent: the sum is multiplied by this.
    pub temper: f32,
    /// How fast that falls as the note says more: traits of one bird repeat each other.
    pub temper_fall: f32,
    /// The most that one trait can speak for a bird, as a logarithm.
    pub most_for: f32,
    /// The most that one trait can speak against a bird, as a logarithm.
    pub most_against: f32,
    /// The prior of a bird that is not in the list.
    pub none_of_these: f32,
    /// What is left of a species outside the region that was asked for.
    pub other_region: f32,
}

impl Weights {
    /// The weights of a lexicon. One that is missing or no number keeps its neutral value.
    pub fn of(lexicon: &Lexicon) -> Self {
        let get = |id: &str, neutral: f32| {
            lexicon
                .others("weight")
                .find(|e| e.id == id)
                .and_then(|e| e.get("value"))
                .and_then(|v| v.parse().ok())
                .unwrap_or(neutral)
        };
        Self {
            colour_spread: get("colour-spread", 14.0),
            colour_slip: get("colour-slip", 0.05),
            salience: get("salience", 0.5),
            marking_colour: get("marking-colour", 0.35),
            step_down: get("step-down", 0.6),
            hit: get("hit", 0.7),
            miss: get("miss", 0.1),
            contrary: get("contrary", 0.05),
            silent: get("silent", 0.2),
            size_spread: get("size-spread", 0.6),
            size_slip: get("size-slip", 0.05),
            hedged: get("hedged", 0.5),
            absent: get("absent", 0.8),
            temper: get("temper", 0.7),
            temper_fall: get("temper-fall", 0.0),
            most_for: get("most-for", 3.0),
            most_against: get("most-against", 3.0),
            none_of_these: get("none-of-these", 0.04),
            other_region: get("other-region", 0.02),
        }
    }
}
