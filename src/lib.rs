//! `rectrix` reads free field notes about birds and turns them into field marks in standard terms:
//! where on the bird, what was seen there, how sure.

pub mod accounts;
pub mod built_in;
pub mod diagnostic;
pub mod entries;
pub mod gaps;
pub mod gold;
pub mod grammar;
pub mod knowledge;
pub mod lexicon;
pub mod matching;
pub mod output;
pub mod proof;
pub mod reading;
pub mod rules;
pub mod season;
pub mod span;
pub mod standard;
pub mod traits;
pub mod words;
