//! The rule language: how phrases of a note become traits.
//!
//! ```text
//! rule qualities-before-areas
//!   means a quality stands before the parts it describes
//!   | $q:qualities $a:areas -> $a * $q
//!   => "black head and nape" : head colour black; nape colour black
//!   =/ "black cat"
//! ```
//!
//! A `rule` yields traits; a `phrase` yields records for rules and other phrases. Each line `|` is
//! one way to say it: a pattern over kinds of words, words in quotes, and phrases; after `->`, what
//! it yields. `=>` gives a note and the traits it must give; `=/` a note in which the rule must
//! stay silent. A rule without both is refused.

pub mod compile;
pub mod examples;
pub mod needs;
mod plain;
pub mod program;
pub mod syntax;
pub mod tree;

pub use compile::{Alternative, Pattern, Rules, Yield};
