//! The numbers of the model, as the lexicon gives them.

use crate::diagnostic::{Diagnostic, Diagnostics, Source};
use crate::lexicon::Lexicon;
use crate::span::Span;

/// Declares the numbers once: the field, the entry it comes from, its meaning.
macro_rules! weights {
    ($($(#[$about:meta])* $field:ident = $id:literal,)*) => {
        /// The numbers; each entry `weight` of the lexicon sets one and says why.
        #[derive(Clone, Copy, Debug, PartialEq)]
        pub struct Weights {
            $($(#[$about])* pub $field: f32,)*
        }

        impl Weights {
            /// The weights of a lexicon.
            ///
            /// # Errors
            /// Every weight that is missing or is no number.
            pub fn of(lexicon: &Lexicon) -> Result<Self, Diagnostics> {
                let mut wrong = Diagnostics::default();
                let out = Self { $($field: number(lexicon, $id, &mut wrong),)* };
                if wrong.has_errors() { Err(wrong) } else { Ok(out) }
            }
        }
    };
}

weights! {
    /// How far apart two colours may be and still be called by one name (CIEDE2000).
    colour_spread = "colour-spread",
    /// How much a name that is common in speech is preferred to a rare one: 0 not at all, 1 fully.
    common_names = "common-names",
    /// The share in speech of a colour name that the lexicon gives none.
    rare_name = "rare-name",
    /// The chance of a colour word where nothing like it is on the part.
    colour_slip = "colour-slip",
    /// How much an average bird counts beside what an account says of a part and its surroundings.
    unsaid = "unsaid",
    /// What a denied colour keeps of its chance.
    denied_colour = "denied-colour",
    /// The weight of the colour of streaks, spots, edges and patches against the ground colour.
    marking_colour = "marking-colour",
    /// How much of a part a colour must cover to be said of all of it: its share to this power more.
    whole_reach = "whole-reach",
    /// What ground colour counts for a colour said of a marking.
    marking_ground = "marking-ground",
    /// How much a statement about a whole says of each part.
    whole = "whole",
    /// How much of that is left a step further up.
    step_down = "step-down",
    /// How much a statement about the whole bird says of each part.
    whole_bird = "whole-bird",
    /// How much a statement about a part says of the part beside it.
    beside = "beside",
    /// How much a statement about a part says of parts elsewhere.
    elsewhere = "elsewhere",
    /// How much likelier a strong colour is spoken of than a dull one (logarithm).
    striking_colour = "striking-colour",
    /// How much likelier white is spoken of (logarithm).
    striking_white = "striking-white",
    /// How much likelier black is spoken of (logarithm).
    striking_black = "striking-black",
    /// How much it counts that a striking mark goes unspoken of; 0 not at all, 1 as the model has it.
    unspoken = "unspoken",
    /// How many colours a note speaks of, for each sentence.
    colours_said = "colours-said",
    /// How often a marking is spoken of where an account does not speak of it, against where it does.
    marking_silent = "marking-silent",
    /// The same where an account says that the bird has none.
    marking_denied = "marking-denied",
    /// The chance of "dark" or "pale" of a colour that is not.
    tone_slip = "tone-slip",
    /// The chance of a word for a pattern or shape that the bird shows.
    hit = "hit",
    /// The chance of such a word where the account has another one.
    miss = "miss",
    /// The chance of such a word where the account has the contrary.
    contrary = "contrary",
    /// The chance where the account is silent.
    silent = "silent",
    /// The chance of a word for a proportion of a bird that has the contrary one.
    gauge_slip = "gauge-slip",
    /// How badly masses are judged: standard deviation of the logarithm.
    size_spread = "size-spread",
    /// The chance of any size being said of any bird.
    size_slip = "size-slip",
    /// How often a size named beside a loose kind is meant for that kind, and not for all birds.
    size_by_kind = "size-by-kind",
    /// The chance of a sex or age that the form has.
    sex_right = "sex-right",
    /// The chance of one where the account tells no sexes and ages apart.
    sex_untold = "sex-untold",
    /// The chance of one that the form has not.
    sex_wrong = "sex-wrong",
    /// How much a doubted trait counts.
    hedged = "hedged",
    /// How much what was looked for and not found counts.
    absent = "absent",
    /// How much less each of several words for one property of one part counts.
    repeated = "repeated",
    /// How readily a loose kind is said of a species of its families that is not of it, against one that is.
    kind_cousin = "kind-cousin",
    /// The same of a species of a family that is taken for the kind.
    kind_taken_for = "kind-taken-for",
    /// The same of any other species.
    kind_stranger = "kind-stranger",
    /// How much it counts that a bird is only said to be like a kind.
    kind_likened = "kind-likened",
    /// How much it counts that a bird is said not to be of a kind.
    kind_denied = "kind-denied",
    /// Evidence of one note is not independent: the sum is multiplied by this.
    temper = "temper",
    /// How fast that falls as the note says more: traits of one bird repeat each other.
    temper_fall = "temper-fall",
    /// The most that one trait can speak for a bird, as a logarithm.
    most_for = "most-for",
    /// The most that one trait can speak against a bird, as a logarithm.
    most_against = "most-against",
    /// The prior of a bird that is not in the list.
    none_of_these = "none-of-these",
    /// How many of those have an account, where the checklist leaves some out.
    off_list = "off-list",
    /// The part of its marks in which a bird without an account differs from the account it is most like.
    unlike = "unlike",
    /// How often a part is seen well by who looks at it, where the lexicon does not say.
    else_seen = "else-seen",
    /// What is left of a species outside the region that was asked for.
    other_region = "other-region",
    /// What is left of a species that lives in none of the lands that the note names.
    told_region = "told-region",
    /// What is left of a species outside its months.
    other_month = "other-month",
}

fn number(lexicon: &Lexicon, id: &str, wrong: &mut Diagnostics) -> f32 {
    let Some(entry) = lexicon.others("weight").find(|e| e.id == id) else {
        wrong.push(
            Diagnostic::error(
                "no-weight",
                &Source::new("lexicon/matching.lex", ""),
                Span::default(),
                format!("the number `{id}` of the model of matching is missing"),
            )
            .hint(format!("add an entry `weight {id}` with a `value` and what it `means`")),
        );
        return 0.0;
    };
    match entry.get("value").and_then(|v| v.parse::<f32>().ok()).filter(|n| n.is_finite()) {
        Some(number) => number,
        None => {
            wrong.push(
                Diagnostic::error(
                    "bad-weight",
                    &entry.source,
                    entry.span,
                    format!("`weight {id}` needs a `value` that is a number"),
                )
                .hint("such as `value 0.6`"),
            );
            0.0
        }
    }
}
