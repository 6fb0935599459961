//! Readings as other programs and people get them: JSON, CSV, the terminal view, the derivation.
//!
//! The serialised shapes live here and nowhere else; [`model`] is the published contract.

pub mod build;
pub mod compare;
pub mod csv;
pub(crate) mod digits;
pub mod explain;
pub(crate) mod json;
mod json_note;
pub mod model;
pub mod note_view;
pub mod text;

pub use build::{Analyst, Options};
pub use model::{NoteReading, schema};
