//! What was changed in a note's words before they were read. Every change keeps its place in the
//! note and is told to the reader of the output.

use crate::span::Span;

/// Why a word is read otherwise than it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// Misspelt: `brest`.
    Spelling,
    /// It sounds like the word meant: `long tale`.
    Sound,
    /// Two words run together: `withwhite`.
    Split,
    /// One word written as two: `chest nut`.
    Joined,
    /// A sign said aloud: `comma`.
    Sign,
    /// A number said in several words: `twenty three`.
    Number,
    /// Said twice over: `with a with a`.
    SaidTwice,
    /// Taken back: `yellow, no wait, orange`.
    TakenBack,
}

impl Why {
    /// The word for it, as published.
    pub const fn text(self) -> &'static str {
        match self {
            Self::Spelling => "spelling",
            Self::Sound => "sound",
            Self::Split => "run-together",
            Self::Joined => "split-word",
            Self::Sign => "spoken-sign",
            Self::Number => "spoken-number",
            Self::SaidTwice => "said-twice",
            Self::TakenBack => "taken-back",
        }
    }

    /// Whether the words are left out of the reading.
    pub const fn leaves_out(self) -> bool {
        matches!(self, Self::SaidTwice | Self::TakenBack)
    }
}

/// A change.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Repair {
    /// Where in the note.
    pub span: Span,
    /// What the words were read as; empty where they are left out.
    pub read_as: String,
    /// Why.
    pub why: Why,
}
