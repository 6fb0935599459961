//! Long lists of numbers stored as plain bytes: taking them up is copying, not reading number by number.

use serde::de::Error;
use serde::{Deserialize, Deserializer, Serializer};

/// A number of a fixed count of bytes, the lowest first.
pub trait Fixed: Copy {
    /// How many bytes it has.
    const BYTES: usize;
    /// Adds its bytes.
    fn put(self, out: &mut Vec<u8>);
    /// The number of these bytes.
    fn of(bytes: &[u8]) -> Self;
}

macro_rules! fixed {
    ($($number:ty),*) => {$(
        impl Fixed for $number {
            const BYTES: usize = size_of::<Self>();

            fn put(self, out: &mut Vec<u8>) {
                out.extend_from_slice(&self.to_le_bytes());
            }

            fn of(bytes: &[u8]) -> Self {
                bytes.try_into().map_or(0, Self::from_le_bytes)
            }
        }
    )*};
}

fixed!(u16, u32, u64);

/// Writes a list.
///
/// # Errors
/// Those of the serializer.
pub fn serialize<T: Fixed, S: Serializer>(list: &[T], to: S) -> Result<S::Ok, S::Error> {
    let mut bytes = Vec::with_capacity(list.len() * T::BYTES);
    list.iter().for_each(|one| one.put(&mut bytes));
    to.serialize_bytes(&bytes)
}

/// Reads a list.
///
/// # Errors
/// Where it does not hold whole numbers, and those of the deserializer.
pub fn deserialize<'d, T: Fixed, D: Deserializer<'d>>(from: D) -> Result<Vec<T>, D::Error> {
    let bytes = <&[u8]>::deserialize(from)?;
    let numbers = bytes.chunks_exact(T::BYTES);
    if !numbers.remainder().is_empty() {
        return Err(D::Error::custom("a list of numbers is cut off"));
    }
    Ok(numbers.map(T::of).collect())
}
