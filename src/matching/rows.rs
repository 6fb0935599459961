//! Rows of chances, worked out when first asked for and kept.
//!
//! What is asked comes back again and again ("wing black"), so a row is made once for all forms; from
//! then on comparing is adding rows.

use super::chances::Chances;
use super::question::Question;
use rustc_hash::FxHashMap;
use std::sync::{Arc, PoisonError, RwLock};

/// How many rows are kept: about 30 MB with 1,700 forms.
const MOST_KEPT: usize = 2_048;

/// The chance of a statement, said of each form, and its logarithm.
#[derive(Debug, PartialEq)]
pub struct Row {
    /// Between 0 and 1, up to a factor common to all forms.
    pub chances: Vec<f32>,
    /// Natural logarithms of the chances.
    pub logs: Vec<f32>,
}

/// The least chance that is told apart from none.
const LEAST: f32 = 1e-9;

impl Row {
    /// Works a row out.
    pub fn of(chances: &Chances<'_>, question: &Question) -> Self {
        let mut row = chances.row(question);
        for chance in &mut row {
            *chance = chance.max(LEAST);
        }
        let logs = row.iter().map(|c| c.ln()).collect();
        Self { chances: row, logs }
    }
}

/// The rows kept so far.
#[derive(Debug, Default)]
pub struct Rows {
    kept: RwLock<FxHashMap<Question, Arc<Row>>>,
}

impl Rows {
    /// The row of a question, made if it is new.
    pub fn get(&self, chances: &Chances<'_>, question: &Question) -> Arc<Row> {
        let kept = self.kept.read().unwrap_or_else(PoisonError::into_inner);
        if let Some(row) = kept.get(question) {
            return Arc::clone(row);
        }
        drop(kept);
        let row = Arc::new(Row::of(chances, question));
        let mut kept = self.kept.write().unwrap_or_else(PoisonError::into_inner);
        if kept.len() < MOST_KEPT {
            kept.insert(*question, Arc::clone(&row));
        }
        row
    }
}
