//! "None of these": how well a bird that is not on the list would explain the note.
//!
//! Such a bird is one of the accounts that the checklist leaves out, or one of which no account tells.
//! The latter looks like some bird that has an account, but for a part of its marks, which are those
//! of any bird. So where even the best species has marks against it, the share of "none" rises; a good fit
//! costs the unknown bird a little for each mark.

use super::weights::Weights;

/// How many of the best species stand for all that an unknown bird may be like.
const MODELS: usize = 24;

/// A species as a model of an unknown bird.
#[derive(Clone, Copy, Debug)]
pub struct Model {
    /// The logarithm of its share, not normed: prior and all that is said.
    pub score: f32,
    /// Its best form.
    pub form: usize,
}

/// The logarithm of the weight of a bird without an account; `odds` gives what each statement says of a
/// form, as it counts in the scores.
pub fn unknown(weights: &Weights, models: &[Model], odds: impl Fn(usize) -> Vec<f32>) -> f32 {
    if models.is_empty() {
        return f32::NEG_INFINITY;
    }
    let mut best: Vec<Model> = models.to_vec();
    if best.len() > MODELS {
        best.select_nth_unstable_by(MODELS, |a, b| b.score.total_cmp(&a.score));
        best.truncate(MODELS);
    }
    let own = weights.unlike;
    let score = |model: &Model| {
        let changed = |odds: &f32| ((1.0 - own) * odds.exp() + own).ln() - odds;
        model.score + odds(model.form).iter().map(changed).sum::<f32>()
    };
    let scores: Vec<f32> = best.iter().map(score).collect();
    // The others lose as much as these.
    let shown: Vec<f32> = best.iter().map(|m| m.score).collect();
    let all: Vec<f32> = models.iter().map(|m| m.score).collect();
    sum(&scores) - sum(&shown) + sum(&all)
}

/// The logarithm of a sum of numbers that are given by their logarithms.
pub fn sum(logs: &[f32]) -> f32 {
    let top = logs.iter().copied().fold(f32::NEG_INFINITY, f32::max);
    if top == f32::NEG_INFINITY {
        return top;
    }
    top + logs.iter().map(|l| (l - top).exp()).sum::<f32>().ln()
}
