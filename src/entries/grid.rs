//! Rows of a table drawn with bars, as Markdown has them: `| 08:15 | black head |`.

use super::labels::{Field, Labels};
use std::ops::Range;

/// The cells of a row, without the space around them; none if the line is no row.
pub fn cells(line: &str) -> Option<Vec<Range<usize>>> {
    let start = line.len() - line.trim_start().len();
    if !line[start..].starts_with('|') {
        return None;
    }
    let end = line.trim_end().len();
    let mut bars: Vec<usize> = line[..end]
        .match_indices('|')
        .map(|(at, _)| at)
        .filter(|&at| !line[..at].ends_with('\\'))
        .collect();
    // The last bar may be left out.
    if bars.last().is_some_and(|&bar| bar + 1 < end) {
        bars.push(end);
    }
    let cell = |pair: &[usize]| {
        let text = &line[pair[0] + 1..pair[1]];
        let start = pair[0] + 1 + text.len() - text.trim_start().len();
        start..start.max(pair[0] + 1 + text.trim_end().len())
    };
    Some(bars.windows(2).map(cell).collect())
}

/// Whether a row is the rule under the head: `|---|:-:|`.
pub fn is_rule(line: &str, cells: &[Range<usize>]) -> bool {
    !cells.is_empty()
        && cells.iter().all(|cell| {
            let text = &line[cell.clone()];
            text.contains('-') && text.chars().all(|c| matches!(c, '-' | ':'))
        })
}

/// What the columns of a table are for, and their names.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Head {
    /// The names.
    pub names: Vec<String>,
    fields: Vec<Option<Field>>,
}

impl Head {
    /// The head of a table, if the row is one: a column holds the notes.
    pub fn of(line: &str, cells: &[Range<usize>], labels: &Labels) -> Option<Self> {
        let names: Vec<String> = cells.iter().map(|c| line[c.clone()].to_owned()).collect();
        let fields: Vec<Option<Field>> = names.iter().map(|n| labels.field(n)).collect();
        fields.contains(&Some(Field::Note)).then_some(Self { names, fields })
    }

    /// The column of the notes.
    pub fn note(&self) -> Option<usize> {
        self.fields.iter().position(|f| *f == Some(Field::Note))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(line: &str) -> Option<Vec<&str>> {
        cells(line).map(|found| found.into_iter().map(|c| &line[c]).collect())
    }

    #[test]
    fn finds_cells() {
        assert_eq!(texts("| a | b c |"), Some(vec!["a", "b c"]));
        assert_eq!(texts("  |a|| b \\| c"), Some(vec!["a", "", "b \\| c"]));
        assert_eq!(texts("|"), Some(vec![]));
        assert_eq!(texts("a | b"), None);
        let rule = "|---|:-:|";
        assert!(is_rule(rule, &cells(rule).unwrap()));
        assert!(!is_rule("| - | a |", &cells("| - | a |").unwrap()));
    }
}
