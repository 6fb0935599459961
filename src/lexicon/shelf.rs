//! Lists and texts laid side by side in the form in which they are used, so that a program which holds
//! them takes them up in place, without reading them.
//!
//! Numbers lie in the order of bytes of the machine they were put for, each list at a multiple of
//! [`ALIGNMENT`]. A type tells what of it is kept so by [`Shelved`]; the same telling puts and takes.

use std::borrow::Cow;
use std::fmt;
use zerocopy::{FromBytes, Immutable, IntoBytes};

/// Where lists may start: the strictest that any number asks for.
pub const ALIGNMENT: usize = 16;

/// What may lie on a shelf: values of a fixed size, of which every pattern of bytes is one.
pub trait Plain: FromBytes + IntoBytes + Immutable + Copy + 'static {}

impl<T: FromBytes + IntoBytes + Immutable + Copy + 'static> Plain for T {}

/// A list that was made, or that lies on a shelf.
pub type List<T> = Cow<'static, [T]>;
/// A text that was made, or that lies on a shelf.
pub type Text = Cow<'static, str>;

/// What lies on a shelf is not what was asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Misplaced;

impl fmt::Display for Misplaced {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("the stored tables are not those of this version")
    }
}

impl std::error::Error for Misplaced {}

/// What puts lists on a shelf, or takes them from it.
pub trait Hand {
    /// Whether it puts.
    const PUTS: bool;

    /// Puts or takes a list.
    ///
    /// # Errors
    /// Where there is no such list to take.
    fn list<T: Plain>(&mut self, list: &mut List<T>) -> Result<(), Misplaced>;

    /// Puts or takes a text.
    ///
    /// # Errors
    /// Where there is no such text to take.
    fn text(&mut self, text: &mut Text) -> Result<(), Misplaced>;
}

/// What has lists that are kept on a shelf.
pub trait Shelved {
    /// Hands over every such list, always in the same order.
    ///
    /// # Errors
    /// Those of the hand.
    fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced>;
}

/// A shelf that is being filled.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shelf {
    /// The lists, each behind its count.
    pub numbers: Vec<u8>,
    /// The texts.
    pub texts: String,
}

impl Shelf {
    /// A shelf with the lists of `what`.
    ///
    /// # Errors
    /// None that could be helped: putting does not fail.
    pub fn of(what: &mut impl Shelved) -> Result<Self, Misplaced> {
        let mut shelf = Self::default();
        what.shelve(&mut shelf)?;
        Ok(shelf)
    }

    fn put(&mut self, bytes: &[u8]) {
        self.numbers.extend_from_slice(bytes);
        self.numbers.resize(self.numbers.len().next_multiple_of(ALIGNMENT), 0);
    }
}

impl Hand for Shelf {
    const PUTS: bool = true;

    fn list<T: Plain>(&mut self, list: &mut List<T>) -> Result<(), Misplaced> {
        self.put(&(list.len() as u64).to_ne_bytes());
        self.put(list.as_bytes());
        Ok(())
    }

    fn text(&mut self, text: &mut Text) -> Result<(), Misplaced> {
        self.put(&(text.len() as u64).to_ne_bytes());
        self.texts.push_str(text);
        Ok(())
    }
}

/// A full shelf, from which is taken in the order in which was put.
#[derive(Clone, Copy, Debug)]
pub struct Full {
    /// The lists left; they start at a multiple of [`ALIGNMENT`] in memory.
    pub numbers: &'static [u8],
    /// The texts left.
    pub texts: &'static str,
}

impl Full {
    fn count(&mut self) -> Result<usize, Misplaced> {
        let (count, _) = self.numbers.split_first_chunk().ok_or(Misplaced)?;
        self.numbers = self.numbers.get(ALIGNMENT..).ok_or(Misplaced)?;
        usize::try_from(u64::from_ne_bytes(*count)).map_err(|_| Misplaced)
    }
}

impl Hand for Full {
    const PUTS: bool = false;

    fn list<T: Plain>(&mut self, list: &mut List<T>) -> Result<(), Misplaced> {
        let count = self.count()?;
        let (found, _) =
            <[T]>::ref_from_prefix_with_elems(self.numbers, count).map_err(|_| Misplaced)?;
        let taken = size_of_val(found).next_multiple_of(ALIGNMENT);
        self.numbers = self.numbers.get(taken..).ok_or(Misplaced)?;
        *list = Cow::Borrowed(found);
        Ok(())
    }

    fn text(&mut self, text: &mut Text) -> Result<(), Misplaced> {
        let (found, rest) = self.texts.split_at_checked(self.count()?).ok_or(Misplaced)?;
        self.texts = rest;
        *text = Cow::Borrowed(found);
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[derive(Debug, Default, PartialEq)]
    struct Things {
        small: List<u16>,
        text: Text,
        large: List<u128>,
    }

    impl Shelved for Things {
        fn shelve<H: Hand>(&mut self, hand: &mut H) -> Result<(), Misplaced> {
            hand.list(&mut self.small)?;
            hand.text(&mut self.text)?;
            hand.list(&mut self.large)
        }
    }

    #[repr(C, align(16))]
    struct Aligned([u8; 96]);

    #[test]
    fn takes_what_was_put() {
        let list = vec![1, 2, 3].into();
        let mut things = Things { small: list, text: "wing bar".into(), large: vec![7].into() };
        let shelf = Shelf::of(&mut things).unwrap();
        let mut room = Box::new(Aligned([0; 96]));
        room.0[..shelf.numbers.len()].copy_from_slice(&shelf.numbers);
        let numbers = &Box::leak(room).0[..shelf.numbers.len()];
        let mut full = Full { numbers, texts: "wing bar" };
        let mut taken = Things::default();
        taken.shelve(&mut full).unwrap();
        assert_eq!(taken, things);
        assert_eq!((full.numbers.len(), full.texts.len()), (0, 0));
        assert_eq!(taken.shelve(&mut full), Err(Misplaced));
    }
}
