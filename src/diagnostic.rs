//! What a stage has to say about a file it was given: where, what is wrong, what to do.
//!
//! A stage never prints. It returns these beside its value; the program renders them.

use crate::span::Span;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use std::sync::Arc;

/// A named text: a lexicon file, a checklist, a note.
#[derive(Clone, PartialEq, Eq)]
pub struct Source {
    /// The path or name shown to people.
    pub name: Arc<str>,
    /// Its whole text.
    pub text: Arc<str>,
}

impl Serialize for Source {
    /// The name alone: what was compiled in points at places, it does not repeat the texts.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.name.serialize(serializer)
    }
}

impl<'de> Deserialize<'de> for Source {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Ok(Self::new(String::deserialize(deserializer)?, ""))
    }
}

impl Default for Source {
    fn default() -> Self {
        Self::new("", "")
    }
}

impl fmt::Debug for Source {
    /// The name alone; the text would drown what is being debugged.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Source").field(&self.name).finish()
    }
}

impl Source {
    /// A source of that name and text.
    pub fn new(name: impl Into<Arc<str>>, text: impl Into<Arc<str>>) -> Self {
        Self { name: name.into(), text: text.into() }
    }

    /// Line and column (characters, both from 1) of a byte offset.
    pub fn line_column(&self, offset: usize) -> (usize, usize) {
        let mut offset = offset.min(self.text.len());
        while !self.text.is_char_boundary(offset) {
            offset -= 1;
        }
        let before = &self.text[..offset];
        let line = before.matches('\n').count() + 1;
        let start = before.rfind('\n').map_or(0, |at| at + 1);
        (line, before[start..].chars().count() + 1)
    }
}

/// How much a diagnostic matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// The work went on; somebody should look.
    Warning,
    /// The file can't be used.
    Error,
}

/// One thing to say about one place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Diagnostic {
    /// How much it matters.
    pub severity: Severity,
    /// A short fixed name, for tests and for looking it up.
    pub code: &'static str,
    /// What is wrong.
    pub message: String,
    /// The file.
    pub source: Source,
    /// Where in it.
    pub span: Span,
    /// What to do.
    pub hint: Option<String>,
}

impl Diagnostic {
    /// An error at a place.
    pub fn error(
        code: &'static str,
        source: &Source,
        span: Span,
        message: impl Into<String>,
    ) -> Self {
        Self {
            severity: Severity::Error,
            code,
            message: message.into(),
            source: source.clone(),
            span,
            hint: None,
        }
    }

    /// A warning at a place.
    pub fn warning(
        code: &'static str,
        source: &Source,
        span: Span,
        message: impl Into<String>,
    ) -> Self {
        Self { severity: Severity::Warning, ..Self::error(code, source, span, message) }
    }

    /// The same, with what to do.
    #[must_use]
    pub fn hint(mut self, hint: impl Into<String>) -> Self {
        self.hint = Some(hint.into());
        self
    }
}

impl fmt::Display for Diagnostic {
    /// `file:line:column: message (hint)`, on one line.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (line, column) = self.source.line_column(self.span.start);
        write!(f, "{}:{line}:{column}: {}", self.source.name, self.message)?;
        if let Some(hint) = &self.hint {
            write!(f, " ({hint})")?;
        }
        Ok(())
    }
}

/// Several diagnostics that together stop the work.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Diagnostics(pub Vec<Diagnostic>);

impl Diagnostics {
    /// Whether any of them is an error.
    pub fn has_errors(&self) -> bool {
        self.0.iter().any(|d| d.severity == Severity::Error)
    }

    /// Adds one.
    pub fn push(&mut self, diagnostic: Diagnostic) {
        self.0.push(diagnostic);
    }
}

impl fmt::Display for Diagnostics {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (i, d) in self.0.iter().enumerate() {
            if i > 0 {
                writeln!(f)?;
            }
            write!(f, "{d}")?;
        }
        Ok(())
    }
}

impl std::error::Error for Diagnostics {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn says_where_in_characters() {
        let source = Source::new("a.lex", "one\ntwö three");
        let three = source.text.find("three").unwrap();
        assert_eq!(source.line_column(three), (2, 5));
        let d = Diagnostic::error("x", &source, Span::new(three, three + 5), "odd").hint("mend it");
        assert_eq!(d.to_string(), "a.lex:2:5: odd (mend it)");
    }
}
