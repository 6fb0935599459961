//! Things that are read from their stored form one by one, when first asked for.

use super::shelf::{Hand, List, Misplaced, Shelved};
use serde::Serialize;
use serde::de::DeserializeOwned;
use std::sync::OnceLock;

/// Things by number, made or stored.
#[derive(Clone, Debug)]
pub struct Kept<T> {
    made: Vec<OnceLock<Box<T>>>,
    /// Where the stored form of each ends.
    ends: List<u32>,
    stored: List<u8>,
}

impl<T> Default for Kept<T> {
    fn default() -> Self {
        Self { made: Vec::new(), ends: List::default(), stored: List::default() }
    }
}

impl<T> Kept<T> {
    /// How many there are.
    pub const fn len(&self) -> usize {
        self.made.len()
    }

    /// Whether there are none.
    pub const fn is_empty(&self) -> bool {
        self.made.is_empty()
    }

    /// Adds one.
    pub fn push(&mut self, one: T) {
        self.made.push(OnceLock::from(Box::new(one)));
    }
}

impl<T: DeserializeOwned> Kept<T> {
    /// The thing of a number.
    ///
    /// # Panics
    /// If there is none of that number, or if what was stored is of another version of the program,
    /// which a test excludes.
    #[inline]
    pub fn get(&self, number: usize) -> &T {
        self.made[number].get_or_init(|| Box::new(self.read(number)))
    }

    /// All of them in order.
    pub fn iter(&self) -> impl ExactSizeIterator<Item = &T> {
        (0..self.len()).map(move |number| self.get(number))
    }

    #[cold]
    fn read(&self, number: usize) -> T {
        let start = number.checked_sub(1).map_or(0, |before| self.ends[before] as usize);
        let stored = &self.stored[start..self.ends[number] as usize];
        postcard::from_bytes(stored).expect("stored by the build script of this version")
    }
}

impl<T> FromIterator<T> for Kept<T> {
    fn from_iter<I: IntoIterator<Item = T>>(all: I) -> Self {
        let made = all.into_iter().map(|one| OnceLock::from(Box::new(one))).collect();
        Self { made, ..Self::default() }
    }
}

impl<T: Serialize + DeserializeOwned> Shelved for Kept<T> {
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
        if H::PUTS {
            let (mut ends, mut stored) = (Vec::new(), Vec::new());
            for one in self.iter() {
                stored.extend(postcard::to_allocvec(one).map_err(|_| Misplaced)?);
                ends.push(u32::try_from(stored.len()).map_err(|_| Misplaced)?);
            }
            let (mut ends, mut stored): (List<u32>, List<u8>) = (ends.into(), stored.into());
            hand.list(&mut ends)?;
            return hand.list(&mut stored);
        }
        hand.list(&mut self.ends)?;
        hand.list(&mut self.stored)?;
        self.made.clear();
        self.made.resize_with(self.ends.len(), OnceLock::new);
        Ok(())
    }
}
