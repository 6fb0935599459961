//! Rows of chances, worked out when first asked for and kept.
//!
//! What is asked comes back again and again ("wing black"), so a row is made once for all forms; from
//! then on comparing is adding rows.

use rustc_hash::FxHashMap;
use std::hash::Hash;
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
    /// A row with those chances.
    pub fn of(mut chances: Vec<f32>) -> Self {
        for chance in &mut chances {
            *chance = chance.max(LEAST);
        }
        let logs = chances.iter().map(|c| c.ln()).collect();
        Self { chances, logs }
    }
}

/// The rows kept so far, by what they answer to.
#[derive(Debug)]
pub struct Rows<K> {
    kept: RwLock<FxHashMap<K, Arc<Row>>>,
}

impl<K> Default for Rows<K> {
    fn default() -> Self {
        Self { kept: RwLock::default() }
    }
}

impl<K: Copy + Eq + Hash> Rows<K> {
    /// The row of a key, made if it is new.
    pub fn get(&self, key: K, chances: impl FnOnce() -> Vec<f32>) -> Arc<Row> {
        let kept = self.kept.read().unwrap_or_else(PoisonError::into_inner);
        if let Some(row) = kept.get(&key) {
            return Arc::clone(row);
        }
        drop(kept);
        let row = Arc::new(Row::of(chances()));
        let mut kept = self.kept.write().unwrap_or_else(PoisonError::into_inner);
        if kept.len() < MOST_KEPT {
            kept.insert(key, Arc::clone(&row));
        }
        row
    }
}
