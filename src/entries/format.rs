//! Which format a file is in: by the ending of its name, else by its first lines.

/// A format of notebooks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Format {
    /// Plain text.
    #[default]
    Plain,
    /// Markdown.
    Markdown,
    /// A table with commas.
    Comma,
    /// A table with semicolons.
    Semicolon,
    /// A table with tabs.
    Tab,
    /// One JSON object a line.
    Objects,
    /// SRT or WebVTT.
    Subtitles,
}

impl Format {
    /// The name people use.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Plain => "plain text",
            Self::Markdown => "Markdown",
            Self::Comma => "CSV",
            Self::Semicolon => "CSV with semicolons",
            Self::Tab => "TSV",
            Self::Objects => "JSON Lines",
            Self::Subtitles => "subtitles",
        }
    }

    /// Endings of files that a folder is searched for.
    pub const ENDINGS: [&'static str; 13] = [
        "txt", "text", "md", "markdown", "csv", "tsv", "tab", "jsonl", "ndjson", "json", "srt",
        "vtt", "note",
    ];

    /// By the ending of a file's name.
    pub fn of_ending(ending: &str) -> Option<Self> {
        Some(match ending.to_ascii_lowercase().as_str() {
            "txt" | "text" | "note" => Self::Plain,
            "md" | "markdown" => Self::Markdown,
            "csv" => Self::Comma,
            "tsv" | "tab" => Self::Tab,
            "jsonl" | "ndjson" | "json" => Self::Objects,
            "srt" | "vtt" => Self::Subtitles,
            _ => return None,
        })
    }

    /// By the first lines of a file.
    pub fn of_text(sample: &str) -> Self {
        let first = sample.lines().find(|l| !l.trim().is_empty()).unwrap_or("").trim();
        let mut lines = sample.lines().map(str::trim).filter(|l| !l.is_empty());
        let count = |sign: char| first.matches(sign).count();
        if first.starts_with('{') && first.contains('"') {
            Self::Objects
        } else if first.starts_with("WEBVTT") || lines.clone().take(3).any(|l| l.contains("-->")) {
            Self::Subtitles
        } else if lines.any(|l| l.starts_with("# ") || l.starts_with("## ") || l.starts_with("**"))
        {
            Self::Markdown
        } else if count('\t') > 0 && same_everywhere(sample, '\t') {
            Self::Tab
        } else {
            Self::Plain
        }
    }

    /// A table with commas whose head line has semicolons instead is one with semicolons.
    #[must_use]
    pub fn settled(self, sample: &str) -> Self {
        let first = sample.lines().next().unwrap_or("");
        let count = |sign: char| first.matches(sign).count();
        match self {
            Self::Comma if count(';') > count(',') => Self::Semicolon,
            Self::Comma if count('\t') > count(',') => Self::Tab,
            other => other,
        }
    }
}

fn same_everywhere(sample: &str, sign: char) -> bool {
    let mut counts =
        sample.lines().filter(|l| !l.is_empty()).take(20).map(|l| l.matches(sign).count());
    let first = counts.next().unwrap_or(0);
    counts.all(|n| n == first)
}
