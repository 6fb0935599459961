//! A season of notes as tables: each entry read, and what comes of it written as rows.
//!
//! Everything here works on one entry at a time and holds nothing of the entries before it, save the
//! [`tally`] and the bytes of marks written before ([`again`]), which change no row. So entries can be read anywhere and in any order, and rows be put in order later.

pub mod again;
pub mod archive;
pub mod cells;
pub mod columns;
pub mod desk;
pub mod object;
mod plots;
pub mod report;
pub mod rows;
pub mod tally;

pub use desk::{BirdRead, Desk, Read};
pub use tally::Tally;
