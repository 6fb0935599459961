//! Which species fit a reading, and why.
//!
//! Each trait of the note is weighed against each form of each species: how likely are these words
//! of such a bird, against how likely they are of any bird? The logarithms of those ratios are
//! added up over the traits, forms are summed out, and a prior from a checklist comes on top. "None
//! of these" stands for a bird on which every word is as likely as on any other.
//!
//! A loose kind that the note names ("some kind of ...") is evidence of its families; a species that it
//! names is not: that is for people to judge by the marks.
//!
//! What weighs how much is data: `lexicon/matching.lex`, with the reason beside each number.

pub mod areas;
pub mod chances;
pub mod checklist;
pub mod compare;
pub mod forms;
pub mod gauges;
pub mod groups;
pub mod layout;
pub mod likeness;
pub mod mention;
pub mod naming;
pub mod next;
pub mod none;
pub mod question;
pub mod rank;
pub mod regions;
pub mod rows;
pub mod sizes;
pub mod species;
pub mod weights;

pub use checklist::{Checklist, checklist};
pub use next::{Answer, LookNext};
pub use rank::{About, Candidate, Matcher, Ranking, Reason};
