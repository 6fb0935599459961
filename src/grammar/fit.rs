//! How far a phrase reaches.

use super::plan::MOST_WAYS;

/// How far something reaches, and which of the ways to get there comes first in the files; 0 where
/// nothing fits. Of two the better one is the greater number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Best(pub(super) u32);

impl Best {
    /// Nothing fits.
    pub const NONE: Self = Self(0);

    /// What ends at `end` with the way of that rank; none where the rank is 0.
    #[inline(always)]
    pub const fn new(end: usize, rank: u16) -> Self {
        // Without a branch: whether something ends is hard to foretell.
        let found = (end as u32 + 1) << 16 | rank as u32;
        Self(if rank == 0 { 0 } else { found })
    }

    /// Where it ends, if it fits.
    #[inline(always)]
    pub fn end(self) -> Option<usize> {
        (self.0 != 0).then(|| (self.0 >> 16) as usize - 1)
    }

    /// The number of its way.
    pub const fn way(self) -> usize {
        (MOST_WAYS - self.0 as u16) as usize
    }
}
